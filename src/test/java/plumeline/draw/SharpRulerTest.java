package plumeline.draw;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import plumeline.sketch.Drawing;
import plumeline.solve.FilmAnswer;

final class SharpRulerTest {
    /// 100 mm lens at f/8, focused on the middle of a can 961.4 mm off; sensor 36 mm wide with 3840 px.
    private static final String FRAMED = "lens: macro, at: [0 mm, -961.4 mm, 61 mm], aim: a, f_number: 8";

    private static MadeSet framed(String wants) {
        return MadeSet.of(FRAMED, MadeSet.thing("a", "can", "at: [0 mm, 0 mm]")).with("wants: [" + wants + "]");
    }

    private static List<Drawing> draw(MadeSet set) {
        return Drawings.sharpRuler(set.film().plan(), set.shot());
    }

    private static Document one(MadeSet set) {
        List<Drawing> all = draw(set);
        assertThat(all).hasSize(1);
        return SvgReader.parse(all.getFirst().toSvg());
    }

    /// From a page's x to millimetres, by the two outermost numbered ticks of the ruler itself.
    private static double millimetres(Document svg, double x) {
        TreeMap<Double, Double> ticks = new TreeMap<>();
        var all = svg.getElementsByTagName("g");
        for (int i = 0; i < all.getLength(); i++) {
            Element group = (Element) all.item(i);
            if (group.getAttribute("id").startsWith("one.ruler.start.name.scale.")) {
                Element text = (Element) group.getElementsByTagName("text").item(0);
                double middle = DrawnChecks.number(text, "x") + DrawnChecks.number(text, "textLength") / 2;
                ticks.put(middle, Double.parseDouble(text.getTextContent()));
            }
        }
        assertThat(ticks).hasSizeGreaterThan(3);
        double share = (x - ticks.firstKey()) / (ticks.lastKey() - ticks.firstKey());
        return ticks.firstEntry().getValue()
                + share * (ticks.lastEntry().getValue() - ticks.firstEntry().getValue());
    }

    /// Near and far limit by the hyperfocal distance, as any text on depth of field has them (from memory of common
    /// practice), a form the engine doesn't use: H = f²/(Nc) + f, near s(H − f)/(H + s − 2f), far s(H − f)/(H − s).
    private static double[] limits(double f, double n, double c, double s) {
        double h = f * f / (n * c) + f;
        return new double[] {s * (h - f) / (h + s - 2 * f), s * (h - f) / (h - s)};
    }

    @Test
    void framingExample_is949To974() {
        Document svg = one(framed("{sharp: a}"));
        double[] limits = limits(100, 8, 2 * 36.0 / 3840, 961.4);
        assertThat(limits[0]).isCloseTo(949.14, within(0.01));
        assertThat(limits[1]).isCloseTo(973.99, within(0.01));
        assertThat(svg.getDocumentElement().getTextContent())
                .contains("sharp 949 to 974, blur 2 px", "focus 961")
                .doesNotContain("No want says");
        Element bracket = DrawnChecks.element(svg, "one.ruler.start.want.one.1", "line", 0);
        assertThat(millimetres(svg, DrawnChecks.number(bracket, "x1"))).isCloseTo(limits[0], within(0.05));
        assertThat(millimetres(svg, DrawnChecks.number(bracket, "x2"))).isCloseTo(limits[1], within(0.05));
    }

    /// A can 66 mm across from 961.4 mm: front at d − r, outline at d − r²/d, back at d + r (plane geometry: the sight
    /// line touches it there).
    @Test
    void bar_goesFromTheFrontToTheOutlineAndDashedToTheBack() {
        Document svg = one(framed("{sharp: a}"));
        Element hidden = DrawnChecks.element(svg, "one.ruler.start.thing.a", "rect", 0);
        Element shown = DrawnChecks.element(svg, "one.ruler.start.thing.a", "rect", 1);
        assertThat(hidden.getAttribute("stroke-dasharray")).isNotEmpty();
        double left = DrawnChecks.number(shown, "x");
        double middle = left + DrawnChecks.number(shown, "width");
        double right = DrawnChecks.number(hidden, "x") + DrawnChecks.number(hidden, "width");
        assertThat(millimetres(svg, left)).isCloseTo(961.4 - 33, within(0.1));
        assertThat(millimetres(svg, middle)).isCloseTo(961.4 - 33 * 33 / 961.4, within(0.1));
        assertThat(millimetres(svg, right)).isCloseTo(961.4 + 33, within(0.1));
    }

    @Test
    void everyBlurThatIsAccepted_hasALine() {
        Document svg = one(framed("{sharp: a, sharp_to: 4 px}, {sharp: a}, {sharp: a, sharp_to: 4 px, at: axis}"));
        double[] wide = limits(100, 8, 4 * 36.0 / 3840, 961.4);
        assertThat(svg.getDocumentElement().getTextContent())
                .contains(
                        "sharp 949 to 974, blur 2 px (a)",
                        "sharp " + Math.round(wide[0]) + " to " + Math.round(wide[1]) + ", blur 4 px (a)");
        assertThat(SvgReader.ids(svg))
                .contains("one.ruler.start.want.one.1", "one.ruler.start.want.one.2")
                .doesNotContain("one.ruler.start.want.one.3");
    }

    @Test
    void withoutAWant_twoPixelsAreTakenAndSaid() {
        Document svg = one(framed("{fills: a, height: 10 %}"));
        assertThat(svg.getDocumentElement().getTextContent())
                .contains("sharp 949 to 974, blur 2 px", "No want says how sharp: a blur of 2 px is taken.");
        assertThat(SvgReader.ids(svg)).contains("one.ruler.start.blur");
    }

    /// Past the hyperfocal distance, 100²/(32 · 0.075) + 100 mm = 4267 mm here, all is sharp.
    @Test
    void endlessFarLimit_isAnArrow() {
        Document svg = one(MadeSet.of(
                        "lens: macro, at: [0 mm, -4400 mm, 61 mm], aim: a, f_number: 32",
                        MadeSet.thing("a", "can", "at: [0 mm, 0 mm]"))
                .with("wants: [{sharp: a, sharp_to: 8 px}]"));
        assertThat(svg.getDocumentElement().getTextContent()).contains("sharp from 2", " on, blur 8 px");
        assertThat(DrawnChecks.group(svg, "one.ruler.start.want.one.1")
                        .getElementsByTagName("path")
                        .getLength())
                .as("an arrow at either end, as the near limit is far off too")
                .isEqualTo(2);
    }

    @Test
    void inchPlan_saysInchesOnly() {
        Document svg = one(framed("{sharp: a}").inInches());
        // 949.14 mm are 37.37 in, 973.99 mm are 38.35 in: to a sixteenth 37 3/8 and 38 3/8.
        assertThat(svg.getDocumentElement().getTextContent())
                .contains("sharp 37 3/8 to 38 3/8, blur 2 px", "inches from the lens point")
                .doesNotContain("mm");
    }

    /// Common practice: 150 mm of water look 38 mm nearer, so the focus on the middle of the tank is that much nearer.
    @Test
    void throughATank_depthsAreAsSeen() {
        Document svg = one(MadeSet.of(
                        "lens: macro, at: [0 mm, -1000 mm, 141 mm], aim: a, f_number: 8",
                        MadeSet.thing("a", "carton", "at: [0 mm, 0 mm, 96 mm], lines: 2"))
                .with("tank: {tank: glass, at: [0 mm, 0 mm], water: 260 mm}\nwants: [{sharp: a}]"));
        assertThat(svg.getDocumentElement().getTextContent())
                .contains("focus 962", "as seen", "depths are where things look to be");
    }

    @Test
    void cameraThatMoves_hasARulerAtItsEndToo() {
        MadeSet set = framed("{sharp: a}");
        assertThat(draw(set)).extracting(Drawing::id).containsExactly("one.ruler.start");
        MadeSet moving = set.with(
                "moves: {slide: {machine: slider, by: [0 mm, 300 mm], in: 1 s, profile: even}}\n" + set.rest());
        assertThat(draw(moving)).extracting(Drawing::id).containsExactly("one.ruler.start", "one.ruler.end");
    }

    @Test
    void thingBehindTheLens_isSaid() {
        Document svg = one(MadeSet.of(
                        FRAMED,
                        MadeSet.thing("a", "can", "at: [0 mm, 0 mm]")
                                + MadeSet.thing("late", "can", "at: [0 mm, -1200 mm]"))
                .with("wants: [{sharp: a}]"));
        assertThat(svg.getDocumentElement().getTextContent()).contains("late: it isn't wholly in front of the lens.");
        assertThat(SvgReader.ids(svg)).doesNotContain("one.ruler.start.thing.late");
    }

    @Test
    void labels_meetNeitherEachOtherNorTheSheetsEdge() {
        int compared = 0;
        for (MadeSet set : MadeSet.many()) {
            compared += DrawnChecks.checkSheets(draw(set));
        }
        assertThat(compared).isGreaterThan(1000);
    }

    @Test
    void allDrawingsOfAFilm_haveIdsOfTheirOwn() {
        FilmAnswer film = Made.film(Made.text());
        List<Drawing> all = new ArrayList<>();
        film.shots().forEach(shot -> {
            all.add(Drawings.planFromAbove(film.plan(), shot));
            all.add(Drawings.sideElevation(film.plan(), shot));
            all.addAll(Drawings.tankSide(film.plan(), shot));
            all.addAll(Drawings.sharpRuler(film.plan(), shot));
        });
        assertThat(all).hasSize(11);
        DrawnChecks.checkSheets(all);
    }

    /// Whom a blur is for is told in full, below the ruler where it finds no room.
    @Test
    void thingsOfABlur_areAllNamed() {
        MadeSet set = MadeSet.of("lens: fifty, at: [0 mm, -961 mm, 61 mm], aim: a, f_number: 11", MadeSet.crowd(12))
                .with("wants: [{sharp: a}, {sharp: [a, b1, b2, b3, b4, b5, b7, b8, b9, b10, b11,"
                        + " the_very_long_name_of_a_flacon_in_this_row_from_the_left], sharp_to: 5 px}]");
        Document svg = SvgReader.parse(
                Drawings.sharpRuler(set.film().plan(), set.shot()).getFirst().toSvg());
        assertThat(DrawnChecks.group(svg, "one.ruler.start.note.want.one.2.things")
                        .getTextContent())
                .contains("Blur 5", "b10", "b11", "the_very_long_name_of_a_flacon_in_this_row_from_the_left");
    }
}
