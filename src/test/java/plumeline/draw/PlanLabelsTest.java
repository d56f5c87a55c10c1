package plumeline.draw;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.w3c.dom.Document;
import plumeline.sketch.Box;
import plumeline.sketch.Drawing;
import plumeline.sketch.Stretch;

/// Labels of plans from above against the lines as they are drawn, read back from the SVG.
final class PlanLabelsTest {
    /// A can in a tank, its figures wider than the tank is on the page.
    static final String TANK = "tank: {tank: glass, at: [0 mm, 60 mm], water: 260 mm}\n"
            + "lights: {key: {light: strip, at: [500 mm, -200 mm, 500 mm]}}\n"
            + "release: {ink: rose_ink, volume: 3 ml, at: [0 mm, -30 mm, 298 mm], start: 0.2 s}\n"
            + "wants: [{fills: a, height: 10 %}, {sharp: a}]";

    static MadeSet tank(double lens) {
        return MadeSet.of(
                        "lens: fifty, at: [0 mm, " + -lens + " mm, 150 mm], aim: a, f_number: 11",
                        MadeSet.thing("a", "can", "at: [0 mm, 60 mm, 100 mm]"))
                .with(TANK);
    }

    private static void check(MadeSet set) {
        Drawing plan = Drawings.planFromAbove(set.film().plan(), set.shot());
        Document svg = SvgReader.parse(plan.toSvg());
        List<Stretch> edges = DrawnChecks.strokes(svg, ".thing.", ".tank", ".lamp.", ".leeway.", ".rail.", ".way.");
        assertThat(edges).hasSizeGreaterThan(8);
        for (SvgReader.Lettered text : SvgReader.letters(svg)) {
            Box box = new Box(text.left(), text.top(), text.right(), text.bottom());
            assertThat(edges).as("%s on %s", text, set.place()).noneMatch(edge -> edge.crosses(box));
        }
    }

    @Test
    void noLabel_coversAThingATankALampOrALeewayBox() {
        check(tank(1386));
        check(tank(586));
        MadeSet.many().forEach(PlanLabelsTest::check);
    }

    /// The can stands on the zero mark: its name's leader stays outside the can.
    @Test
    void theZeroMark_isNamedWithoutALeaderOverAThing() {
        MadeSet set = MadeSet.of(
                "lens: fifty, at: [0 mm, -961 mm, 61 mm], aim: a, f_number: 11",
                MadeSet.thing("a", "can", "at: [0 mm, 0 mm]"));
        Document svg = SvgReader.parse(
                Drawings.planFromAbove(set.film().plan(), set.shot()).toSvg());
        Box can = DrawnChecks.box(DrawnChecks.element(svg, "one.plan.thing.a", "path", 0));
        List<Stretch> arms = DrawnChecks.strokes(svg, ".zero");
        assertThat(arms).as("arms past the can").anyMatch(arm -> arm.from().x() < can.left() - 8);
        assertThat(DrawnChecks.leaders(svg))
                .noneMatch(leader -> leader.crosses(can.grown(-0.5)) && !can.holds(leader.to()));
        assertThat(svg.getDocumentElement().getTextContent()).contains("zero mark");
    }

    /// Twelve cans of 66 mm, 90 mm apart, seen from 3 m: once more larger, every one named or numbered and listed with
    /// x and y, no taller than a page's 240 mm.
    @Test
    void twelveThingsFarFromTheLens_areEnlargedAndAllNamed() {
        MadeSet set = MadeSet.of("lens: macro, at: [0 mm, -3000 mm, 300 mm], aim: a, f_number: 22", MadeSet.crowd(12));
        Drawing plan = Drawings.planFromAbove(set.film().plan(), set.shot());
        Document svg = SvgReader.parse(plan.toSvg());
        Box left = DrawnChecks.box(DrawnChecks.element(svg, "one.plan.near.thing.a", "path", 0));
        Box right = DrawnChecks.box(DrawnChecks.element(svg, "one.plan.near.thing.b3", "path", 0));
        assertThat(left.with(right).width()).as("the row's share of 700").isGreaterThan(350);
        List<String> texts =
                SvgReader.letters(svg).stream().map(SvgReader.Lettered::text).toList();
        for (int i = 1; i < 12; i++) {
            String name = i == 6 ? "the_very_long" : "b" + i;
            assertThat(texts)
                    .as(name)
                    .anyMatch(text -> text.equals(name)
                            || text.startsWith(name + "_")
                            || text.contains(": " + name) && text.contains(", x "));
        }
        assertThat(texts).noneMatch(text -> text.startsWith("no room above: b"));
        assertThat(plan.heightPixels()).isLessThanOrEqualTo(907);
    }

    /// One millimetre is as long in both parts as their own scale bars say.
    @Test
    void theEnlargedPart_isToItsOwnScale() {
        MadeSet set = MadeSet.of("lens: macro, at: [0 mm, -3000 mm, 300 mm], aim: a, f_number: 22", MadeSet.crowd(4));
        Document svg = SvgReader.parse(
                Drawings.planFromAbove(set.film().plan(), set.shot()).toSvg());
        String bar = DrawnChecks.group(svg, "one.plan.near.name.scale").getTextContent();
        double metres = Double.parseDouble(bar.trim().replace(" mm", "")) / 1000;
        double pixelsPerMetre = DrawnChecks.pixelsPerMetre(svg, "one.plan.near", metres);
        Box can = DrawnChecks.box(DrawnChecks.element(svg, "one.plan.near.thing.a", "path", 0));
        assertThat(can.width() / pixelsPerMetre).isCloseTo(0.066, org.assertj.core.api.Assertions.within(0.0005));
    }

    /// What stands on something is drawn after it, whichever is written first: it isn't covered.
    @Test
    void whatStandsOnSomething_isDrawnOverIt() {
        String camera = "lens: fifty, at: [0 mm, -961 mm, 61 mm], aim: a, f_number: 11";
        String a = MadeSet.thing("a", "flacon", "at: [0 mm, 0 mm, 90 mm]");
        String base = MadeSet.thing("base", "carton", "at: [0 mm, 0 mm]");
        String beside = MadeSet.thing("c", "can", "at: [200 mm, 0 mm]");
        for (String place : List.of(a + base + beside, base + beside + a)) {
            MadeSet set = MadeSet.of(camera, place);
            List<String> ids = SvgReader.ids(SvgReader.parse(
                    Drawings.planFromAbove(set.film().plan(), set.shot()).toSvg()));
            assertThat(ids.indexOf("one.plan.thing.base")).isPositive().isLessThan(ids.indexOf("one.plan.thing.a"));
            assertThat(ids).contains("one.plan.thing.c", "one.plan.near.name.thing.a", "one.plan.near.name.thing.base");
        }
    }

    /// What hangs over everything is dashed, so that what is below shows through; beside the can, as low, it isn't.
    @Test
    void aLampThatHangsOverEverything_isDashedAndNamedSo() {
        MadeSet set = MadeSet.of(
                "lens: fifty, at: [0 mm, -961 mm, 61 mm], aim: a, f_number: 11",
                MadeSet.thing("a", "can", "at: [0 mm, 0 mm]"));
        MadeSet over = set.with("lights: {key: {light: strip, at: [0 mm, 0 mm, 600 mm], tilt: -90 deg}}");
        MadeSet beside = set.with("lights: {key: {light: strip, at: [300 mm, 0 mm, 300 mm], turn: -90 deg}}");
        Document above = SvgReader.parse(
                Drawings.planFromAbove(over.film().plan(), over.shot()).toSvg());
        Document aside = SvgReader.parse(
                Drawings.planFromAbove(beside.film().plan(), beside.shot()).toSvg());
        assertThat(above.getDocumentElement().getTextContent()).contains("key (lamp, overhead)");
        assertThat(aside.getDocumentElement().getTextContent()).contains("key (lamp)");
        assertThat(DrawnChecks.element(above, "one.plan.lamp.key", "path", 0).getAttribute("stroke-dasharray"))
                .isNotEmpty();
        assertThat(DrawnChecks.element(aside, "one.plan.lamp.key", "path", 0).getAttribute("stroke-dasharray"))
                .isEmpty();
    }
}
