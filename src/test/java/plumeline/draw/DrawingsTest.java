package plumeline.draw;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import plumeline.sketch.Drawing;
import plumeline.solve.FilmAnswer;
import plumeline.solve.ShotAnswer;

final class DrawingsTest {
    private static final String LONG = "the_very_long_name_of_the_second_flacon_in_this_row_from_the_left_side";

    private static List<Drawing> draw(FilmAnswer film) {
        List<Drawing> all = new ArrayList<>();
        for (ShotAnswer shot : film.shots()) {
            for (Moment moment : List.of(Moment.START, Moment.MIDDLE, Moment.END, Moment.atFrame(30))) {
                all.add(Drawings.cameraView(film.plan(), shot, moment));
            }
            all.add(Drawings.planFromAbove(film.plan(), shot));
            all.addAll(Drawings.leewayBoxes(film.plan(), shot));
            all.addAll(Drawings.unrolledLabel(film.plan(), shot));
            all.addAll(Drawings.travel(film.plan(), shot));
        }
        return all;
    }

    private static List<FilmAnswer> films() {
        String text = Made.text()
                .replace("thing: flacon,", "thing: flacon, turn: 20 deg,")
                .replace("body: opaque}", "body: opaque, label: {width: 30 mm, height: 50 mm, bottom: 20 mm}}");
        return List.of(
                Made.film(text),
                Made.film(text.replace("papers: mm", "papers: in")),
                Made.film(text.replace("second", LONG)),
                Made.film(crowded(text, 12)),
                Made.film(crowded(
                        text.replace("things:\n", "  square: {ratio: \"1:1\", size: [1080 px, 1080 px]}\nthings:\n")
                                .replace("turn: -30 deg", "turn: -30 deg, tilt: 14 deg")
                                .replace("f_number: 11", "f_number: 4"),
                        1)));
    }

    /// The row with more things on the table.
    private static String crowded(String text, int count) {
        StringBuilder more = new StringBuilder();
        for (int i = 0; i < count; i++) {
            more.append("      extra")
                    .append(i)
                    .append(": {thing: carton, at: [")
                    .append(70 * (i % 4) - 100)
                    .append(" mm, ")
                    .append(150 + 60 * (i / 4))
                    .append(" mm]}\n");
        }
        return text.replace(
                "    lights: {key: {light: strip, at: free}}\n",
                more + "    lights: {key: {light: strip, at: free}}\n");
    }

    @Test
    void drawings_areWellFormedWithWholeSizesAndUniqueIds() {
        for (FilmAnswer film : films()) {
            List<String> ids = new ArrayList<>();
            List<Drawing> drawings = draw(film);
            assertThat(drawings).hasSizeGreaterThan(12);
            for (Drawing drawing : drawings) {
                Document svg = SvgReader.parse(drawing.toSvg());
                assertThat(svg.getDocumentElement().getAttribute("width")).matches("\\d+");
                assertThat(svg.getDocumentElement().getAttribute("height")).matches("\\d+");
                assertThat(drawing.toSvg()).doesNotContain("NaN").doesNotContain("Infinity");
                ids.addAll(SvgReader.ids(svg));
            }
            assertThat(ids).doesNotHaveDuplicates();
        }
    }

    @Test
    void labels_meetNeitherEachOtherNorTheSheetsEdge() {
        int examined = 0;
        for (FilmAnswer film : films()) {
            examined += DrawnChecks.checkSheets(draw(film));
        }
        assertThat(examined).isGreaterThan(1000);
    }

    @Test
    void everyThingLampAndDelivery_isNamedOnItsDrawing() {
        FilmAnswer film = Made.film(Made.text());
        ShotAnswer reveal = Made.shot(film, "reveal");
        String plan = Drawings.planFromAbove(film.plan(), reveal).toSvg();
        assertThat(plan)
                .contains(">first<", ">second<", ">third<", ">fourth<", ">zero mark<", ">centreline<", ">crew side<");
        assertThat(plan)
                .as("a lamp without a place")
                .doesNotContain("key (lamp)")
                .contains(">key: its place is still open");
        assertThat(Drawings.planFromAbove(film.plan(), Made.shot(film, "looks")).toSvg())
                .contains("key (lamp)", "back (lamp)");
        assertThat(Drawings.cameraView(film.plan(), reveal, Moment.END).toSvg())
                .contains(">wide 16:9<", ">phone 9:16<", ">first (soft)<", ">fourth (soft)<");
    }

    @Test
    void planFromAbove_givesTheAnswersFigures() {
        FilmAnswer film = Made.film(Made.text());
        String plan =
                Drawings.planFromAbove(film.plan(), Made.shot(film, "reveal")).toSvg();
        // Set by hand in Made: lens 600 mm before first; second at (0, 104), third at (4, 209), fourth at (−6, 312).
        assertThat(plan)
                .contains(
                        ">600<",
                        ">104<",
                        ">" + Math.round(Math.hypot(4, 105)) + "<",
                        ">" + Math.round(Math.hypot(10, 103)) + "<");
        assertThat(plan).contains("x 0 (±3)", "y 104 (−9 + loose)", "x 4 (−6 +1.2)", "slide 600.0 mm to camera left");
    }

    @Test
    void planFromAbove_isToScale() {
        FilmAnswer film = Made.film(Made.text());
        Document svg = SvgReader.parse(
                Drawings.planFromAbove(film.plan(), Made.shot(film, "reveal")).toSvg());
        double pixelsPerMetre = barPixels(svg) / 0.2;
        Element line = first(svg, "reveal.plan.distances", "line");
        double length = Math.hypot(number(line, "x1") - number(line, "x2"), number(line, "y1") - number(line, "y2"));
        assertThat(length / pixelsPerMetre).isCloseTo(0.600, org.assertj.core.api.Assertions.within(0.0005));
    }

    private static double barPixels(Document svg) {
        Element bar = first(svg, "reveal.plan.scale", "line");
        assertThat(svg.getDocumentElement().getTextContent()).contains("200 mm");
        return number(bar, "x2") - number(bar, "x1");
    }

    private static Element first(Document svg, String id, String name) {
        var groups = svg.getElementsByTagName("g");
        for (int i = 0; i < groups.getLength(); i++) {
            Element group = (Element) groups.item(i);
            if (group.getAttribute("id").equals(id)) {
                return (Element) group.getElementsByTagName(name).item(0);
            }
        }
        throw new AssertionError("no " + id);
    }

    private static double number(Element element, String attribute) {
        return Double.parseDouble(element.getAttribute(attribute));
    }

    @Test
    void hiddenThings_areDashed() {
        FilmAnswer film = Made.film(Made.text());
        Document svg = SvgReader.parse(Drawings.cameraView(film.plan(), Made.shot(film, "reveal"), Moment.START)
                .toSvg());
        Element second = first(svg, "reveal.view.start.thing.second", "path");
        assertThat(second.getAttribute("stroke-dasharray")).isNotEmpty();
        Element front = first(svg, "reveal.view.start.thing.first", "path");
        assertThat(front.getAttribute("stroke-dasharray")).isEmpty();
    }

    @Test
    void drawings_areTheSameUnderAnyLocale() {
        Locale before = Locale.getDefault();
        try {
            Locale.setDefault(Locale.forLanguageTag("ar-EG"));
            String one = svg();
            Locale.setDefault(Locale.GERMANY);
            assertThat(svg()).isEqualTo(one);
        } finally {
            Locale.setDefault(before);
        }
    }

    private static String svg() {
        FilmAnswer film = Made.film(Made.text());
        return Drawings.planFromAbove(film.plan(), Made.shot(film, "reveal")).toSvg();
    }

    /// Things and lamps named like parts of the drawings, in a tank and on the table, still and moving, one and twelve.
    @Test
    void everyShapeAndText_liesWithinAnIdOfItsOwn() {
        String odd = MadeSet.thing("a", "can", "at: [0 mm, 0 mm, 40 mm]")
                + MadeSet.thing("lens", "carton", "at: [-80 mm, 40 mm]")
                + MadeSet.thing("zero", "flacon", "at: [free, 40 mm]")
                + MadeSet.thing("tank", "flacon", "at: [90 mm, 60 mm]")
                + MadeSet.thing("scale", "can", "at: [90 mm, 140 mm]");
        MadeSet strange = MadeSet.of("lens: fifty, at: [0 mm, -961 mm, 61 mm], aim: a, f_number: 11", odd)
                .with("lights: {water: {light: strip, at: [500 mm, -300 mm, 100 mm]}, near: {light: strip, at: free}}\n"
                        + "moves: {way: {machine: slider, by: [0 mm, 300 mm], in: 2 s, profile: even}}\n"
                        + "wants: [{sharp: a}, {sharp: lens, sharp_to: 4 px}]");
        List<FilmAnswer> films = new ArrayList<>(films());
        films.add(strange.film());
        MadeSet.many().forEach(set -> films.add(set.film()));
        int checked = 0;
        int leaders = 0;
        for (FilmAnswer film : films) {
            List<Drawing> drawings = draw(film);
            for (ShotAnswer shot : film.shots()) {
                drawings.add(Drawings.sideElevation(film.plan(), shot));
                drawings.addAll(Drawings.tankSide(film.plan(), shot));
                drawings.addAll(Drawings.sharpRuler(film.plan(), shot));
            }
            List<String> ids = new ArrayList<>();
            for (Drawing drawing : drawings) {
                Document svg = SvgReader.parse(drawing.toSvg());
                checked += DrawnChecks.checkOwners(drawing, svg);
                ids.addAll(SvgReader.ids(svg));
                leaders += DrawnChecks.leaders(svg).size();
            }
            assertThat(ids).doesNotHaveDuplicates();
        }
        assertThat(leaders).isGreaterThan(100);
        assertThat(checked).isGreaterThan(10_000);
    }
}
