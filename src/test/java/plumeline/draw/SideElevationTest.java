package plumeline.draw;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import plumeline.sketch.Box;
import plumeline.sketch.Drawing;
import plumeline.solve.FilmAnswer;

final class SideElevationTest {
    private static final double HALF_PIXEL_METRES = 0.0005;

    private static Document reveal() {
        FilmAnswer film = Made.film(Made.text());
        return parse(Drawings.sideElevation(film.plan(), Made.shot(film, "reveal")));
    }

    private static Document parse(Drawing drawing) {
        return SvgReader.parse(drawing.toSvg());
    }

    private static Document draw(MadeSet set) {
        return parse(Drawings.sideElevation(set.film().plan(), set.shot()));
    }

    private static double tablePixels(Document svg, String drawing) {
        return DrawnChecks.number(DrawnChecks.element(svg, drawing + ".table", "line", 0), "y1");
    }

    @Test
    void lensAndThings_areToScale() {
        Document svg = reveal();
        double scale = DrawnChecks.pixelsPerMetre(svg, "reveal.side", 0.2);
        assertThat(svg.getDocumentElement().getTextContent()).contains("200 mm");
        double table = tablePixels(svg, "reveal.side");
        Element lens = DrawnChecks.element(svg, "reveal.side.camera.start", "circle", 0);
        // Set by hand in Made: the lens is 600 mm before the zero mark and 52 mm up.
        assertThat((table - DrawnChecks.number(lens, "cy")) / scale).isCloseTo(0.052, within(HALF_PIXEL_METRES));
        double zero = DrawnChecks.number(DrawnChecks.element(svg, "reveal.side.zero", "line", 0), "x1");
        assertThat((zero - DrawnChecks.number(lens, "cx")) / scale).isCloseTo(0.600, within(HALF_PIXEL_METRES));
        // As written: a flacon 42 mm wide and 118 mm tall, its middle at y 104 (Made).
        Box second = DrawnChecks.box(DrawnChecks.element(svg, "reveal.side.thing.second", "path", 0));
        assertThat(second.width() / scale).isCloseTo(0.042, within(HALF_PIXEL_METRES));
        assertThat((table - second.top()) / scale).isCloseTo(0.118, within(HALF_PIXEL_METRES));
        assertThat((second.middle().x() - zero) / scale).isCloseTo(0.104, within(HALF_PIXEL_METRES));
    }

    @Test
    void heights_areDimensionLinesFromTheTable() {
        Document svg = reveal();
        double scale = DrawnChecks.pixelsPerMetre(svg, "reveal.side", 0.2);
        Element line = DrawnChecks.element(svg, "reveal.side.height.camera", "line", 0);
        double length = DrawnChecks.number(line, "y1") - DrawnChecks.number(line, "y2");
        assertThat(length / scale).isCloseTo(0.052, within(HALF_PIXEL_METRES));
        assertThat(DrawnChecks.number(line, "y1")).isEqualTo(tablePixels(svg, "reveal.side"));
        assertThat(svg.getDocumentElement().getTextContent())
                .contains("52", "118", "y −600 (−244 +567)", "up 52 (−52 +38)", "second, y 104 (−9 + loose)");
    }

    /// Thin lens, from memory of any optics text: focused at 600 mm a 50 mm lens has its picture 50(1 + 50/550) mm
    /// behind it; half of a 20.25 mm tall sensor is seen under the angle whose tangent is their ratio.
    @Test
    void upperSightLine_hasThePicturesSlope() {
        Document svg = reveal();
        Element upper = DrawnChecks.element(svg, "reveal.side.sight.start", "line", 1);
        double slope = (DrawnChecks.number(upper, "y1") - DrawnChecks.number(upper, "y2"))
                / (DrawnChecks.number(upper, "x2") - DrawnChecks.number(upper, "x1"));
        // The axis goes through the first flacon's middle, 59 mm up; it is focused on along the slanted axis.
        double focus = Math.hypot(600, 7);
        double image = 50 * (1 + 50 / (focus - 50));
        double angle = Math.atan(10.125 / image) + Math.atan(7.0 / 600);
        assertThat(slope).isCloseTo(Math.tan(angle), within(2e-4));
    }

    @Test
    void lowerSightLine_endsAtTheTable() {
        Document svg = reveal();
        Element lower = DrawnChecks.element(svg, "reveal.side.sight.start", "line", 2);
        assertThat(DrawnChecks.number(lower, "y2")).isCloseTo(tablePixels(svg, "reveal.side"), within(0.02));
    }

    /// A cylinder that leans by 30 degrees toward the camera or away is h cos 30 + d sin 30 tall and
    /// h sin 30 + d cos 30 wide: plane geometry.
    @Test
    void leaningCan_isItsTrueSilhouette() {
        MadeSet set = MadeSet.of(
                "lens: macro, at: [0 mm, -961 mm, 61 mm], aim: a, f_number: 8",
                MadeSet.thing("a", "can", "at: [0 mm, 0 mm, 40 mm], tilt: 30 deg, turn: 90 deg"));
        Document svg = draw(set);
        double scale = DrawnChecks.pixelsPerMetre(svg, "one.side", 0.2);
        Box box = DrawnChecks.box(DrawnChecks.element(svg, "one.side.thing.a", "path", 0));
        double c = Math.cos(Math.PI / 6);
        assertThat(box.height() / scale).isCloseTo(0.122 * c + 0.066 / 2, within(HALF_PIXEL_METRES));
        assertThat(box.width() / scale).isCloseTo(0.122 / 2 + 0.066 * c, within(HALF_PIXEL_METRES));
    }

    /// Where the slide stops, with the end of the last of 48 frames at 24 a second: not where that frame begins.
    @Test
    void cameraThatGoesIn_standsDashedAtItsEnd() {
        MadeSet set = MadeSet.of("lens: macro, at: [0 mm, -961 mm, 61 mm], aim: a, f_number: 8", MadeSet.crowd(1));
        MadeSet moving = set.with(
                "moves: {slide: {machine: slider, by: [0 mm, 300 mm], in: 2 s, profile: even}}\n" + set.rest());
        Document svg = draw(moving);
        double start = DrawnChecks.number(DrawnChecks.element(svg, "one.side.camera.start", "circle", 0), "cx");
        double end = DrawnChecks.number(DrawnChecks.element(svg, "one.side.camera.end", "circle", 0), "cx");
        double scale = DrawnChecks.pixelsPerMetre(svg, "one.side", 0.2);
        assertThat((end - start) / scale).isCloseTo(0.3, within(HALF_PIXEL_METRES));
        Element sensor = DrawnChecks.element(svg, "one.side.camera.end", "line", 1);
        assertThat(sensor.getAttribute("stroke-dasharray")).isNotEmpty();
        assertThat(SvgReader.ids(draw(set))).doesNotContain("one.side.camera.end");
    }

    @Test
    void whatHasNoPlaceYet_isSaid() {
        assertThat(reveal().getDocumentElement().getTextContent())
                .contains("key (lamp): its place is still open, so it isn't drawn.");
    }

    @Test
    void lineAimedOverATanksRim_isNotDrawnIntoIt() {
        MadeSet set = MadeSet.of(
                        "lens: macro, at: [0 mm, -600 mm, 520 mm], aim: a, f_number: 8",
                        MadeSet.thing("a", "carton", "at: [0 mm, 0 mm, 20 mm]"))
                .with("tank: {tank: glass, at: [0 mm, 60 mm], water: 260 mm}\nwants: [{fills: a, height: 10 %}]");
        Document svg = draw(set);
        double scale = DrawnChecks.pixelsPerMetre(svg, "one.side", 0.2);
        double table = tablePixels(svg, "one.side");
        var lines = DrawnChecks.group(svg, "one.side.sight.start").getElementsByTagName("line");
        Element water = DrawnChecks.element(svg, "one.side.water", "line", 0);
        double surface = DrawnChecks.number(water, "y1");
        // The surface is the pane and the water over the table.
        assertThat((table - surface) / scale).isCloseTo(0.261, within(HALF_PIXEL_METRES));
        int inside = 0;
        for (int i = 0; i < lines.getLength(); i++) {
            Element line = (Element) lines.item(i);
            boolean startsInside = DrawnChecks.number(line, "x1") >= DrawnChecks.number(water, "x1") - 2;
            if (startsInside) {
                inside++;
                double y1 = DrawnChecks.number(line, "y1");
                double y2 = DrawnChecks.number(line, "y2");
                assertThat((y1 - surface) * (y2 - surface))
                        .as("no line crosses the surface")
                        .isGreaterThan(-1);
            }
        }
        assertThat(inside).isPositive();
    }

    @Test
    void labels_meetNeitherEachOtherNorTheSheetsEdge() {
        int compared = 0;
        for (MadeSet set : MadeSet.many()) {
            compared += DrawnChecks.checkSheets(
                    List.of(Drawings.sideElevation(set.film().plan(), set.shot())));
        }
        assertThat(compared).isGreaterThan(1000);
    }

    @Test
    void everyThing_isNamedOnce() {
        for (int count : new int[] {1, 4, 12}) {
            MadeSet set =
                    MadeSet.of("lens: fifty, at: [0 mm, -961 mm, 61 mm], aim: a, f_number: 11", MadeSet.crowd(count));
            Document svg = draw(set);
            List<String> words = SvgReader.letters(svg).stream()
                    .map(SvgReader.Lettered::text)
                    .toList();
            for (var placed : set.film().plan().shots().getFirst().placed()) {
                // A long name is cut within: it keeps its first ten letters and its last, by which names differ.
                String name = placed.name();
                assertThat(words)
                        .filteredOn(word -> word.startsWith(name + ",")
                                || name.length() > 20
                                        && word.startsWith(name.substring(0, 10))
                                        && word.contains("..." + name.substring(name.length() - 6)))
                        .as(name)
                        .hasSize(1);
                assertThat(SvgReader.ids(svg)).contains("one.side.thing." + placed.name());
            }
        }
    }

    /// A panel of 400 mm with its middle 100 mm up reaches 100 mm below the table top; tilted 30 deg down it points so.
    @Test
    void aLamp_saysThatItReachesBelowTheTableAndShowsItsTilt() {
        MadeSet set = MadeSet.of(
                        "lens: fifty, at: [0 mm, -961 mm, 61 mm], aim: a, f_number: 11",
                        MadeSet.thing("a", "can", "at: [0 mm, 0 mm]"))
                .with("lights: {key: {light: strip, at: [500 mm, -300 mm, 100 mm], turn: 0 deg, tilt: -30 deg}}");
        Document svg = SvgReader.parse(
                Drawings.sideElevation(set.film().plan(), set.shot()).toSvg());
        String text = svg.getDocumentElement().getTextContent();
        assertThat(text)
                .contains("key (lamp) reaches 73 mm below the table top", "tilt −30 deg", "lens at start")
                .doesNotContain("no room above");
        org.w3c.dom.Element arrow = DrawnChecks.element(svg, "one.side.lamp.key", "line", 2);
        double across = DrawnChecks.number(arrow, "x2") - DrawnChecks.number(arrow, "x1");
        double down = DrawnChecks.number(arrow, "y2") - DrawnChecks.number(arrow, "y1");
        assertThat(Math.toDegrees(Math.atan2(down, across))).isCloseTo(30, org.assertj.core.api.Assertions.within(0.1));
    }

    /// Things behind one another share a label; with their figures names would be too long for its rows.
    @Test
    void namesThatShareALabel_areNeverCutAway() {
        List<String> names = List.of("the_first_can_of_three", "the_second_can_of_three", "the_third_can_of_three");
        StringBuilder place = new StringBuilder(MadeSet.thing("a", "can", "at: [0 mm, 300 mm]"));
        for (int i = 0; i < names.size(); i++) {
            place.append(MadeSet.thing(
                    names.get(i), "can", "at: [" + 90 * i + " mm, " + 2 * i + " mm, " + (30 + 2 * i) + " mm]"));
        }
        MadeSet set = MadeSet.of("lens: macro, at: [0 mm, -1500 mm, 150 mm], aim: a, f_number: 11", place.toString());
        List<String> words = SvgReader.letters(draw(set)).stream()
                .map(SvgReader.Lettered::text)
                .toList();
        assertThat(words).containsAll(names).noneMatch(word -> word.contains("..."));
        // The can stands 30 mm up and is 122 mm tall.
        assertThat(words.get(words.indexOf(names.getFirst()) + 1)).startsWith("top 152, y 0");
    }

    /// A thing up on another has a label of its own: what stands is named under the table top.
    @Test
    void whatStandsOnSomething_isNamedApartFromIt() {
        MadeSet set = MadeSet.of(
                "lens: macro, at: [0 mm, -1500 mm, 150 mm], aim: a, f_number: 11",
                MadeSet.thing("a", "can", "at: [0 mm, 0 mm, 90 mm]")
                        + MadeSet.thing("base", "carton", "at: [0 mm, 0 mm]"));
        Document svg = draw(set);
        double table = tablePixels(svg, "one.side");
        for (SvgReader.Lettered text : SvgReader.letters(svg)) {
            if (text.text().startsWith("base, ")) {
                assertThat(text.top()).isGreaterThan(table);
            }
            if (text.text().startsWith("a, ")) {
                assertThat(text.bottom()).isLessThan(table);
            }
        }
        assertThat(DrawnChecks.group(svg, "one.side.name.thing.base").getTextContent())
                .startsWith("base, ");
        assertThat(DrawnChecks.group(svg, "one.side.name.thing.a").getTextContent())
                .startsWith("a, ");
    }

    /// Half-way in time each ball has fallen freely by a quarter of the way at most, from within the hand's disc.
    @Test
    void aHandful_isDrawnOnItsWayDown() {
        MadeSet set = MadeSet.of(
                        "lens: macro, at: [0 mm, -1000 mm, 61 mm], aim: a, f_number: 8",
                        MadeSet.thing("a", "can", "at: [0 mm, 0 mm]"))
                .with("release: {piece: berry, at: [0 mm, 0 mm, 400 mm], count: 12, spread: 20 mm}\n"
                        + "wants: [{fills: a, height: 10 %}]");
        var svg = SvgReader.parse(
                Drawings.sideElevation(set.film().plan(), set.shot()).toSvg());
        double scale = DrawnChecks.pixelsPerMetre(svg, "one.side", 0.2);
        var hand = DrawnChecks.element(svg, "one.side.release", "circle", 0);
        for (int i = 0; i < 12; i++) {
            var piece = DrawnChecks.element(svg, "one.side.pieces", "circle", i);
            double down = (DrawnChecks.number(piece, "cy") - DrawnChecks.number(hand, "cy")) / scale;
            double aside = (DrawnChecks.number(piece, "cx") - DrawnChecks.number(hand, "cx")) / scale;
            assertThat(down).isBetween(0.09, 0.102);
            assertThat(Math.abs(aside)).isLessThan(0.0201);
        }
        assertThat(svg.getDocumentElement().getTextContent()).contains("Pieces as they may be 0.14 s after");
    }
}
