package plumeline.draw;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import plumeline.solve.FilmAnswer;

final class PlanRailTest {
    private static Document plan(String text, String shot) {
        FilmAnswer film = Made.film(text);
        return SvgReader.parse(
                Drawings.planFromAbove(film.plan(), Made.shot(film, shot)).toSvg());
    }

    private static List<Element> lines(Document svg, String id) {
        List<Element> lines = new ArrayList<>();
        var all = svg.getElementsByTagName("line");
        for (int i = 0; i < all.getLength(); i++) {
            if (((Element) all.item(i).getParentNode()).getAttribute("id").equals(id)) {
                lines.add((Element) all.item(i));
            }
        }
        return lines;
    }

    private static double length(Element line) {
        return Math.hypot(
                Double.parseDouble(line.getAttribute("x1")) - Double.parseDouble(line.getAttribute("x2")),
                Double.parseDouble(line.getAttribute("y1")) - Double.parseDouble(line.getAttribute("y2")));
    }

    /// `looks` slides 120 mm on a rail of 600 mm: the rail is five times as long as the used way, whatever the scale.
    @Test
    void aRail_isToScaleBesideItsWay() {
        Document svg = plan(Made.text(), "looks");
        double way = length(lines(svg, "looks.plan.way.slide").getFirst());
        List<Element> rail = lines(svg, "looks.plan.rail.slide");
        assertThat(rail).as("two rails and two stops").hasSize(4);
        assertThat(length(rail.get(0))).isCloseTo(5 * way, within(0.1));
        assertThat(length(rail.get(1))).isCloseTo(5 * way, within(0.1));
        assertThat(length(rail.get(2))).isCloseTo(20, within(0.1));
        assertThat(rail.get(0).getAttribute("x1"))
                .as("starts at the stop")
                .isEqualTo(lines(svg, "looks.plan.way.slide").getFirst().getAttribute("x1"));
        assertThat(svg.getDocumentElement().getTextContent()).contains("slide 120.0 mm to camera right", "rail 600 mm");
    }

    @Test
    void aRail_isInThePapersUnitAndAbsentWhereItIsNotKnown() {
        String inches = plan(Made.text().replace("papers: mm", "papers: in"), "looks")
                .getDocumentElement()
                .getTextContent();
        // 600 mm are 23.62 in, which a tape reads as 23 5/8.
        assertThat(inches).contains("rail 23 5/8 in").doesNotContain("mm");
        Document without = plan(Made.text().replace("{travel: 600 mm, ", "{"), "looks");
        assertThat(lines(without, "looks.plan.rail.slide")).isEmpty();
        assertThat(lines(without, "looks.plan.way.slide")).isNotEmpty();
    }

    /// A thing that a slider carries has its way and rail at the thing.
    @Test
    void aCarriedThing_hasItsRail() {
        String text = Made.text()
                .replace(
                        "turn: {machine: plate, carries: hero, by: 60 deg, in: 6 s}",
                        "push: {machine: slider, carries: hero, by: [0 mm, 200 mm], in: 6 s}");
        Document svg = plan(text, "looks");
        double way = length(lines(svg, "looks.plan.way.push").getFirst());
        assertThat(length(lines(svg, "looks.plan.rail.push").getFirst())).isCloseTo(3 * way, within(0.1));
        assertThat(svg.getDocumentElement().getTextContent()).contains("push 200.0 mm away");
    }

    /// A push of 200 mm toward a can of 66 mm at 360 mm on a rail of 600 mm: laid back so that it ends 10 mm before the
    /// can, at 360 − 33 − 10 = 317 mm from the start.
    @Test
    void aRailTowardAThing_isLaidBackBeforeIt() {
        MadeSet set = MadeSet.of(
                        "lens: macro, at: [0 mm, -360 mm, 60 mm], aim: a, f_number: 8",
                        MadeSet.thing("a", "can", "at: [0 mm, 0 mm]"))
                .with("moves: {push: {machine: slider, by: [0 mm, 200 mm], in: 2 s, profile: even}}");
        Document svg = SvgReader.parse(
                Drawings.planFromAbove(set.film().plan(), set.shot()).toSvg());
        Element way = lines(svg, "one.plan.way.push").getFirst();
        double pixelsPerMetre = length(way) / 0.2;
        List<Element> rail = lines(svg, "one.plan.rail.push");
        assertThat(rail).hasSize(4);
        assertThat(length(rail.getFirst()) / pixelsPerMetre).isCloseTo(0.6, within(0.001));
        double start = Double.parseDouble(way.getAttribute("y1"));
        double end = Double.parseDouble(rail.getFirst().getAttribute("y2"));
        assertThat((start - end) / pixelsPerMetre).isCloseTo(0.317, within(0.002));
        assertThat(svg.getDocumentElement().getTextContent())
                .contains("rail 600 mm, laid back")
                .doesNotContain("meets");
    }

    /// A lens that goes on past the can's middle: the rail can't but meet it, and says so.
    @Test
    void aRailThatMeetsAThing_saysSo() {
        MadeSet set = MadeSet.of(
                        "lens: macro, at: [0 mm, -360 mm, 200 mm], aim: ahead, f_number: 8",
                        MadeSet.thing("a", "can", "at: [0 mm, 0 mm]"))
                .with("moves: {push: {machine: slider, by: [0 mm, 400 mm], in: 2 s, profile: even}}");
        String text = SvgReader.parse(
                        Drawings.planFromAbove(set.film().plan(), set.shot()).toSvg())
                .getDocumentElement()
                .getTextContent();
        assertThat(text).contains("rail 600 mm").contains("meets a");
    }
}
