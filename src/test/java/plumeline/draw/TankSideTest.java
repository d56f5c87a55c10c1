package plumeline.draw;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import plumeline.solve.FilmAnswer;

final class TankSideTest {
    private static final String LEVEL = "lens: macro, at: [0 mm, -1000 mm, 141 mm], aim: a, f_number: 8";
    private static final String WET = "tank: {tank: glass, at: [0 mm, 0 mm], water: 260 mm}\n";
    private static final String WANT = "wants: [{fills: a, height: 10 %}]";

    private static MadeSet set(String camera, String place, String tank) {
        return MadeSet.of(camera, place).with(tank + WANT);
    }

    private static MadeSet hung() {
        // The carton's middle hangs in the tank's middle: 150 mm behind the inner face of a pane 1 mm thick.
        return set(LEVEL, MadeSet.thing("a", "carton", "at: [0 mm, 0 mm, 96 mm], lines: 2"), WET);
    }

    private static Document draw(MadeSet set) {
        return SvgReader.parse(
                Drawings.tankSide(set.film().plan(), set.shot()).getFirst().toSvg());
    }

    private static double pixelsPerMetre(Document svg) {
        assertThat(svg.getDocumentElement().getTextContent()).contains("100 mm");
        return DrawnChecks.pixelsPerMetre(svg, "one.tank", 0.1);
    }

    /// Common practice: 150 mm of water looks about 38 mm nearer (n − 1 over n, n = 1.333); here 37.5 mm, and a third
    /// of a millimetre by the pane.
    @Test
    void middleBehind150MillimetresOfWater_looks38Nearer() {
        Document svg = draw(hung());
        double scale = pixelsPerMetre(svg);
        double real = DrawnChecks.number(DrawnChecks.element(svg, "one.tank.seen.a", "circle", 0), "cx");
        double seen = DrawnChecks.number(DrawnChecks.element(svg, "one.tank.seen.a", "circle", 1), "cx");
        double paraxial = 0.150 * (1 - 1 / 1.333) + 0.001 * (1 - 1 / 1.52);
        assertThat((real - seen) / scale).isCloseTo(paraxial, within(0.0003)).isCloseTo(0.038, within(0.0005));
        assertThat(svg.getDocumentElement().getTextContent()).contains("looks 38 mm nearer", "(dashed)");
    }

    /// Near the axis each place d behind the glass looks d/n behind it: the carton's 40 mm look 30 mm deep.
    @Test
    void apparentOutline_isShallowerByTheIndex() {
        Document svg = draw(hung());
        double scale = pixelsPerMetre(svg);
        Element path = DrawnChecks.element(svg, "one.tank.seen.a", "path", 0);
        assertThat(path.getAttribute("stroke-dasharray")).isNotEmpty();
        assertThat(DrawnChecks.box(path).width() / scale).isCloseTo(0.040 / 1.333, within(0.0006));
        Element real = DrawnChecks.element(svg, "one.tank.thing.a", "path", 0);
        assertThat(real.getAttribute("stroke-dasharray")).isEmpty();
        assertThat(DrawnChecks.box(real).width() / scale).isCloseTo(0.040, within(0.0003));
    }

    @Test
    void figures_areThoseOfTheTank() {
        Document svg = draw(hung());
        double scale = pixelsPerMetre(svg);
        // 300 mm deep inside, 260 mm water, carton 40 mm deep and 90 mm tall from 96 mm over the table, floor at 1 mm.
        assertThat(svg.getDocumentElement().getTextContent())
                .contains("water 260", "130", "75", "on 2 lines", "front glass 1 mm", "up 96");
        Element glass = DrawnChecks.element(svg, "one.tank.distance.a", "line", 0);
        assertThat((DrawnChecks.number(glass, "x2") - DrawnChecks.number(glass, "x1")) / scale)
                .isCloseTo(0.130, within(0.0003));
        Element depth = DrawnChecks.element(svg, "one.tank.depth.a", "line", 0);
        assertThat((DrawnChecks.number(depth, "y1") - DrawnChecks.number(depth, "y2")) / scale)
                .isCloseTo(0.075, within(0.0003));
        Element water = DrawnChecks.element(svg, "one.tank.height.water", "line", 0);
        assertThat((DrawnChecks.number(water, "y1") - DrawnChecks.number(water, "y2")) / scale)
                .isCloseTo(0.260, within(0.0003));
    }

    @Test
    void sightThroughTheSurface_isSaidToBeUnknown() {
        Document svg = draw(set(
                "lens: macro, at: [0 mm, -400 mm, 700 mm], aim: a, f_number: 8",
                MadeSet.thing("a", "carton", "at: [0 mm, 100 mm, 96 mm], lines: 2"),
                WET));
        assertThat(svg.getDocumentElement().getTextContent())
                .contains("where it looks to be: unknown", "(sight ")
                .doesNotContain("nearer");
        assertThat(SvgReader.ids(svg)).doesNotContain("one.tank.seen.a").contains("one.tank.thing.a");
    }

    @Test
    void thingCutByTheWaterLine_isSaidToBeUnknown() {
        Document svg = draw(set(LEVEL, MadeSet.thing("a", "carton", "at: [0 mm, 0 mm, 200 mm], lines: 1"), WET));
        assertThat(svg.getDocumentElement().getTextContent()).contains("unknown", "(the water line cuts it)", "29");
        assertThat(SvgReader.ids(svg)).doesNotContain("one.tank.seen.a");
    }

    @Test
    void dryTank_hasNoWaterAndSaysSo() {
        Document svg = draw(set(
                LEVEL,
                MadeSet.thing("a", "carton", "at: [0 mm, 0 mm, 96 mm], lines: 2"),
                "tank: {tank: glass, at: [0 mm, 0 mm]}\n"));
        assertThat(SvgReader.ids(svg)).doesNotContain("one.tank.water", "one.tank.height.water");
        assertThat(svg.getDocumentElement().getTextContent())
                .contains("without water")
                .doesNotContain("over the floor");
    }

    @Test
    void release_isSaidOverOrUnderTheWater() {
        String place = MadeSet.thing("a", "carton", "at: [0 mm, 0 mm, 96 mm]");
        for (int z : new int[] {298, 250}) {
            String ink = "release: {ink: rose_ink, volume: 3 ml, at: [0 mm, -90 mm, " + z + " mm], start: 0.2 s}\n";
            Document svg = draw(set(LEVEL, place, WET + ink));
            // The water's surface is 261 mm over the table; the inner face is 150 mm before the tank's middle.
            assertThat(svg.getDocumentElement().getTextContent())
                    .contains(z == 298 ? "37 over the water" : "11 under the surface", "60 behind the glass");
        }
    }

    @Test
    void shotWithoutTank_hasNoDrawing() {
        MadeSet set = MadeSet.of(LEVEL, MadeSet.crowd(1));
        assertThat(Drawings.tankSide(set.film().plan(), set.shot())).isEmpty();
        FilmAnswer film = Made.film(Made.text());
        assertThat(Drawings.tankSide(film.plan(), Made.shot(film, "reveal"))).isEmpty();
        assertThat(Drawings.tankSide(film.plan(), Made.shot(film, "plume"))).hasSize(1);
    }

    @Test
    void labels_meetNeitherEachOtherNorTheSheetsEdge() {
        int compared = 0;
        List<MadeSet> sets = new ArrayList<>(MadeSet.many());
        sets.add(hung());
        sets.add(hung().inInches());
        StringBuilder hung = new StringBuilder();
        for (int i = 0; i < 12; i++) {
            hung.append(MadeSet.thing(
                    i == 0 ? "a" : "very_long_name_of_a_hung_thing_" + i,
                    i % 2 == 0 ? "flacon" : "carton",
                    "at: [" + (60 * (i % 4) - 90) + " mm, " + (60 * (i / 4) - 80) + " mm, " + (20 + 15 * (i % 4))
                            + " mm], lines: 1"));
        }
        sets.add(set(LEVEL, hung.toString(), WET));
        for (MadeSet set : sets) {
            compared += DrawnChecks.checkSheets(Drawings.tankSide(set.film().plan(), set.shot()));
        }
        assertThat(compared).isGreaterThan(400);
    }

    /// A can that hangs on two lines with its base 96 mm over the table, 1 mm of it the floor's pane; the mouth of the
    /// nozzle 37 mm over the water.
    @Test
    void linesBaseAndNozzle_areDrawnToScale() {
        MadeSet set = set(
                "lens: macro, at: [0 mm, -400 mm, 150 mm], aim: a, f_number: 8",
                MadeSet.thing("a", "can", "at: [0 mm, 100 mm, 96 mm], lines: 2"),
                WET + "release: {ink: rose_ink, volume: 3 ml, at: [0 mm, -30 mm, 298 mm], start: 0.2 s}\n");
        Document svg = draw(set);
        double scale = pixelsPerMetre(svg);
        Element over = DrawnChecks.element(svg, "one.tank.over.release", "line", 0);
        assertThat(Math.abs(DrawnChecks.number(over, "y1") - DrawnChecks.number(over, "y2")) / scale)
                .isCloseTo(0.037, within(0.0005));
        Element base = DrawnChecks.element(svg, "one.tank.base.a", "line", 0);
        assertThat(Math.abs(DrawnChecks.number(base, "y1") - DrawnChecks.number(base, "y2")) / scale)
                .isCloseTo(0.095, within(0.0005));
        double first = DrawnChecks.number(DrawnChecks.element(svg, "one.tank.thing.a", "line", 0), "x1");
        double second = DrawnChecks.number(DrawnChecks.element(svg, "one.tank.thing.a", "line", 1), "x1");
        assertThat(second - first).as("two lines, not one").isGreaterThan(10);
        assertThat(svg.getDocumentElement().getTextContent()).contains("Tank sideways: outside from x −226 to x 226");
    }

    /// z = k tⁿ through 70 mm at 0.40 s and 188 mm at 1.90 s; half as wide as a fifth of that to either side. The
    /// water's surface is drawn; the fronts lie so far below it.
    @Test
    void ink_isDrawnAtItsTimes_withItsBand() {
        Document svg = draw(released());
        double scale = pixelsPerMetre(svg);
        double water = DrawnChecks.number(DrawnChecks.element(svg, "one.tank.water", "line", 0), "y1");
        double n = Math.log(188.0 / 70) / Math.log(1.9 / 0.4);
        double[] times = {0.25, 0.5, 1, 2};
        for (int i = 0; i < times.length; i++) {
            double metres = 0.07 * Math.pow(times[i] / 0.4, n);
            Element front = DrawnChecks.element(svg, "one.tank.plume", "line", 2 + 4 * i);
            assertThat((DrawnChecks.number(front, "y1") - water) / scale).isCloseTo(metres, within(0.0005));
            assertThat((DrawnChecks.number(front, "x2") - DrawnChecks.number(front, "x1")) / scale)
                    .isCloseTo(0.4 * metres, within(0.0005));
            Element bar = DrawnChecks.element(svg, "one.tank.plume", "line", 3 + 4 * i);
            assertThat(DrawnChecks.number(bar, "y1")).isLessThan(DrawnChecks.number(front, "y1"));
            assertThat(DrawnChecks.number(bar, "y2")).isGreaterThan(DrawnChecks.number(front, "y1"));
        }
        assertThat(svg.getDocumentElement().getTextContent())
                .contains("0.25 s", "0.5 s", "1 s", "2 s", "0.25 s 52 mm (", "four takes in five");
    }

    private static MadeSet released() {
        return set(
                LEVEL,
                MadeSet.thing("a", "carton", "at: [0 mm, 0 mm, 96 mm], lines: 2"),
                WET + "release: {ink: read_ink, volume: 3 ml, at: [0 mm, -70 mm, 291 mm]}\n");
    }

    @Test
    void inkOfWhichNothingIsKnown_isNotDrawn() {
        Document svg = draw(set(
                LEVEL,
                MadeSet.thing("a", "carton", "at: [0 mm, 0 mm, 96 mm], lines: 2"),
                WET + "release: {ink: rose_ink, volume: 3 ml, at: [0 mm, -70 mm, 291 mm]}\n"));
        assertThat(SvgReader.ids(svg)).doesNotContain("one.tank.plume").contains("one.tank.release");
    }
}
