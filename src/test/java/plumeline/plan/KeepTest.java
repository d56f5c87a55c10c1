package plumeline.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.HashMap;
import java.util.Map;
import java.util.Random;
import org.junit.jupiter.api.Test;
import plumeline.quantity.Origin;
import plumeline.quantity.Unit;

final class KeepTest {
    private static String keep(String text, Map<String, Double> values) {
        return Plans.keep(Texts.plan(text), Map.of("one", values));
    }

    @Test
    void freeMark_becomesASolvedOne() {
        var text = Texts.replacing("[0 mm, 0 mm]", "[free, free]");
        assertThat(keep(text, Map.of("hero.x", 0.012, "hero.y", -0.2504)))
                .isEqualTo(Texts.replacing("[0 mm, 0 mm]", "[12 mm solved, -250.4 mm solved]"));
        assertThat(keep(text, Map.of("hero.y", 0.1)))
                .isEqualTo(Texts.replacing("[0 mm, 0 mm]", "[free, 100 mm solved]"));
    }

    @Test
    void atFree_becomesAList() {
        var text = Texts.replacing("[0 mm, 0 mm]", "free");
        assertThat(keep(text, Map.of("hero.x", 0.012, "hero.y", 0.03)))
                .isEqualTo(Texts.replacing("[0 mm, 0 mm]", "[12 mm solved, 30 mm solved]"));
        assertThat(keep(text, Map.of("hero.x", 0.012)))
                .isEqualTo(Texts.replacing("[0 mm, 0 mm]", "[12 mm solved, free]"));
    }

    @Test
    void metricBounds_giveTheUnitOfMetricPapers() {
        var text = Texts.replacing("[0 mm, 0 mm]", "[free between 2 in and 8 in, free between -4 cm and 2 cm]");
        assertThat(keep(text, Map.of("hero.x", 0.067, "hero.y", -0.0125)))
                .isEqualTo(Texts.replacing("[0 mm, 0 mm]", "[67 mm solved, -1.25 cm solved]"));
    }

    @Test
    void papersInInches_giveWhatATapeShows() {
        var text = Texts.replacing("[0 mm, 0 mm]", "[free, free between -40 mm and 20 cm]")
                .replace("24 fps", "24 fps, papers: in");
        assertThat(keep(text, Map.of("hero.x", -0.0254 / 16, "hero.y", 2.75 * 0.0254)))
                .contains("[-1/16 in solved, 2 3/4 in solved]");
        assertThat(keep(text, Map.of("hero.x", -0.0254, "hero.y", 0.01)))
                .contains("[-1 in solved, 0.393700787402 in solved]");
    }

    /// A motor's axis is typed in, in decimals.
    @Test
    void papersInInches_giveAMotorDecimals() {
        var text = Texts.adding("moves: {slide: {machine: slider, by: [free, 0 mm]}}")
                .replace("24 fps", "24 fps, papers: in");
        assertThat(keep(text, Map.of("slide.by", -12.25 * 0.0254))).contains("by: [-12.25 in solved, 0 mm]");
    }

    @Test
    void everySixteenth_readsBackAsItself() {
        var text = Texts.replacing("[0 mm, 0 mm]", "free").replace("24 fps", "24 fps, papers: in");
        for (int sixteenths = -40; sixteenths <= 40; sixteenths++) {
            double metres = sixteenths * 0.0254 / 16;
            var shot = Texts.shot(keep(text, Map.of("hero.x", metres, "hero.y", -metres)));
            var marks = shot.placed().getFirst().at().marks();
            assertThat(marks).hasSize(2);
            for (var mark : marks) {
                var quantity = ((Mark.Fixed) mark).quantity();
                assertThat(Math.abs(quantity.value())).isEqualTo(Math.abs(sixteenths / 16.0));
                assertThat(quantity.unit()).isEqualTo(Unit.INCH);
            }
        }
    }

    /// Each is what stood there, and what must stand there afterwards, with 12 mm and 30 mm found.
    @Test
    void everyWayToWriteAFreePlace_isLeftAsItIsButForItself() {
        checkPlace("{hero: {thing: tin, at: free}}", "{hero: {thing: tin, at: [12 mm solved, 30 mm solved]}}");
        checkPlace(
                "{hero: {thing: tin, at: [free between 1 mm and 2 cm , free]}} # free",
                "{hero: {thing: tin, at: [12 mm solved , 30 mm solved]}} # free");
        checkPlace(
                "\n        # free\n        hero:\n            thing: tin\n            at: free   # where? free",
                "\n        # free\n        hero:\n            thing: tin\n"
                        + "            at: [12 mm solved, 30 mm solved]   # where? free");
        checkPlace(
                "\n        hero:\n          thing: tin\n          at:\n            - free # x, free\n"
                        + "            -   free between -1 mm\n                and 40 mm # y\n            # end",
                "\n        hero:\n          thing: tin\n          at:\n            - 12 mm solved # x, free\n"
                        + "            -   30 mm solved # y\n            # end");
        checkPlace(
                "{\"hero\": {\"thing\": \"tin\", \"at\": [\"free\", 'free between 1 mm and 9 cm']}}",
                "{\"hero\": {\"thing\": \"tin\", \"at\": [\"12 mm solved\", '30 mm solved']}}");
        checkPlace(
                "{\"hero\": {\"thing\": \"tin\", \"at\": \"free\"}}",
                "{\"hero\": {\"thing\": \"tin\", \"at\": [\"12 mm solved\", \"30 mm solved\"]}}");
    }

    private static void checkPlace(String before, String after) {
        String small = "{hero: {thing: tin, at: [0 mm, 0 mm]}}";
        var values = Map.of("hero.x", 0.012, "hero.y", 0.03);
        for (String start : new String[] {"", "\uFEFF", "# \uD83C\uDFA5 free \n"}) {
            for (String end : new String[] {"\n", "\r\n"}) {
                var text = (start + Texts.replacing(small, before)).replace("\n", end);
                var kept = (start + Texts.replacing(small, after)).replace("\n", end);
                assertThat(keep(text, values)).isEqualTo(kept);
                assertThat(Texts.shot(kept).marks().stream().noneMatch(Mark::isFree))
                        .isTrue();
            }
        }
    }

    @Test
    void anglesDialsAndMoves_haveUnitsOfTheirOwn() {
        var text = Texts.adding(
                        "lights: {key: {light: strip, at: free, level: free, tilt: free}}",
                        "moves: {slide: {machine: slider, by: [free between -600 mm and 0 mm, 0 mm]}}")
                .replace("aim: hero", "f_number: free between 4 and 16, focus: free");
        var kept = keep(
                text,
                Map.of(
                        "camera.f_number",
                        11.0,
                        "camera.focus",
                        0.6123,
                        "key.level",
                        0.5,
                        "key.tilt",
                        Math.toRadians(-30),
                        "slide.by",
                        -0.5));
        assertThat(kept)
                .contains("f_number: 11 solved, focus: 612.3 mm solved")
                .contains("at: free, level: 50 % solved, tilt: -30 deg solved")
                .contains("by: [-500 mm solved, 0 mm]");
    }

    @Test
    void example_keepsAnyValuesAndNothingElse() {
        long seed = 20260711;
        var random = new Random(seed);
        var plan = Texts.example();
        for (int round = 0; round < 50; round++) {
            var solved = new HashMap<String, Map<String, Double>>();
            for (var shot : plan.shots()) {
                var values = new HashMap<String, Double>();
                for (var mark : shot.marks()) {
                    if (mark.isFree() && random.nextInt(4) > 0)
                        values.put(mark.path(), random.nextInt(-4000, 4000) / 1e4);
                }
                solved.put(shot.name(), values);
            }
            checkKept(plan, solved, "seed " + seed + " round " + round);
        }
    }

    private static void checkKept(Plan plan, Map<String, Map<String, Double>> solved, String what) {
        var text = Plans.keep(plan, solved);
        var again = Texts.plan(text);
        var count = 0;
        for (var shot : again.shots()) {
            var values = solved.get(shot.name());
            for (var mark : shot.marks()) {
                var value = values.get(mark.path());
                assertThat(mark.isFree() && value != null)
                        .as(what + " " + mark.path())
                        .isFalse();
                if (value == null || !(mark instanceof Mark.Fixed fixed)) continue;
                assertThat(fixed.quantity().si()).as(what).isCloseTo(value, org.assertj.core.data.Offset.offset(1e-12));
                assertThat(fixed.quantity().origin()).isEqualTo(Origin.SOLVED);
                count++;
            }
        }
        assertThat(count)
                .as(what)
                .isEqualTo(solved.values().stream().mapToInt(Map::size).sum());
        assertThat(withoutMarks(text))
                .as(what)
                .isEqualTo(withoutMarks(plan.source().text()));
    }

    /// Blanks every list of coordinates and every free value, which are all that keeping may touch.
    private static String withoutMarks(String text) {
        return text.replaceAll("at: (free|\\[[^\\]]*\\])", "at: _");
    }

    @Test
    void keptPlan_keepsNothingMore() {
        var text = keep(Texts.replacing("[0 mm, 0 mm]", "free"), Map.of("hero.x", 0.012, "hero.y", 0.03));
        assertThat(keep(text, Map.of())).isEqualTo(text);
    }

    @Test
    void unknownOrFixedMark_isOurBug() {
        assertThatThrownBy(() -> keep(Texts.SMALL, Map.of("hero.x", 0.1)))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage("shot one has no free mark hero.x");
        assertThatThrownBy(() -> Plans.keep(Texts.plan(Texts.SMALL), Map.of("two", Map.of())))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage("no shot two");
    }
}
