package plumeline.lesson;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import plumeline.lit.Metered;
import plumeline.plan.Plan;
import plumeline.stage.Scene;
import plumeline.stage.Stage;

/// What a meter read on things of shots, by plans whose light is summed by hand: 2000 cd are 500 lx from 2 m and 2000
/// lx from 1 m.
final class LampReadingsTest {
    private static final String PLAN = """
        plumeline: 1
        film: {rate: 24 fps}
        things:
          tin: {diameter: 60 mm, height: 120 mm, body: opaque, label: {width: 40 mm, height: 40 mm, bottom: 40 mm}}
        kit:
          cameras: {main: {sensor: {width: 36 mm, height: 20.25 mm, across: 3840 px}, iso: {base: 100}}}
          lenses: {fifty: {focal_length: 50 mm}}
          lights:
            spot: {point: yes, gives: 2000 cd typical}
            other: {point: yes, gives: 4000 cd measured}
        shots:
          far:
            camera: {body: main, lens: fifty, at: [0 mm, -50 m, 60 mm], aim: ahead}
            place: {tin: {thing: tin, at: [0 mm, 0 mm]}}
            lights: {key: {light: spot, at: [0 mm, -2030 mm, 60 mm]}}
          near:
            camera: {body: main, lens: fifty, at: [0 mm, -50 m, 60 mm], aim: ahead}
            place: {tin: {thing: tin, at: [0 mm, 0 mm]}}
            lights:
              lamp: {light: spot, at: [0 mm, -1030 mm, 60 mm]}
              rest: {light: other, at: [0 mm, -1030 mm, 60 mm]}
            passes: {swapped: {lights.lamp.light: other}}
        """;

    private static String reading(String lux, String shot, String computed, String lamps) {
        return "  - {lux: " + lux + ", shot: " + shot + ", thing: tin, part: label, computed: " + computed
                + ", lamps: {" + lamps + "}}\n";
    }

    private static final String KEY = "key: {lamp: spot, gives: 2000 cd}";
    private static final String LAMP = "lamp: {lamp: spot, gives: 2000 cd}";

    private static Lessons lessons(String... readings) {
        var read = Lessons.read(("lessons: 1\nmeasured:\n" + String.join("", readings)).getBytes(UTF_8), "l.yaml");
        assertThat(read.problems()).isEmpty();
        return read.lessons().orElseThrow();
    }

    private static Plan measured(String plan, String... readings) {
        var applied = lessons(readings).applyTo(Noted.plan(plan));
        assertThat(applied.problems()).isEmpty();
        return applied.plan().orElseThrow();
    }

    private static Metered.Shown.Lux shown(Plan plan, String shot, int lamp) {
        Stage stage = Stage.of(plan, plan.findShot(shot).orElseThrow());
        return shown(plan, stage, lamp);
    }

    private static Metered.Shown.Lux shown(Plan plan, Stage stage, int lamp) {
        Scene scene = stage.scene(stage.startValues(), 0);
        return (Metered.Shown.Lux)
                Metered.of(stage, scene, 0, plan.film().rate()).alone().get(lamp);
    }

    @Test
    void reading_takesTheModelsPlace_andCorrectsTheLampElsewhere() {
        Plan plan = measured(PLAN, reading("400 lx", "far", "500 lx", KEY));
        Metered.Shown.Lux here = shown(plan, "far", 0);
        assertThat(here.lux()).isCloseTo(400, within(0.05));
        assertThat(here.halfShare()).isCloseTo(0.05, within(0.001));
        assertThat(here.toText()).isEqualTo("400 lx ± 5 % measured");
        Metered.Shown.Lux there = shown(plan, "near", 0);
        assertThat(there.lux()).isCloseTo(1600, within(0.5));
        assertThat(there.halfShare()).isCloseTo(Math.hypot(0.05, 0.1), within(0.005));
        assertThat(there.toText()).doesNotContain("measured");
        assertThat(shown(plan, "near", 1).lux()).isCloseTo(4000, within(0.5));
        assertThat(plan.findShot("near")
                        .orElseThrow()
                        .lights()
                        .getFirst()
                        .light()
                        .written()
                        .findQuantity("gives"))
                .hasValueSatisfying(gives -> assertThat(gives.toText()).isEqualTo("1600 cd ± 11 % measured"));
    }

    /// Its own ± counts.
    @Test
    void reading_hasItsOwnSpread() {
        assertThat(shown(measured(PLAN, reading("400 lx ± 2 %", "far", "500 lx", KEY)), "far", 0)
                        .halfShare())
                .isCloseTo(0.02, within(0.001));
    }

    /// 0.8 and 1.25 times what the kit says: each shot has its own, a shot without a reading their geometric mean, 1.
    @Test
    void readingsOfShots_countTogetherElsewhere() {
        String third = PLAN
                + PLAN.substring(PLAN.indexOf("  far:"))
                        .replace("  far:", "  third:")
                        .replaceAll("(?s)  near:.*", "");
        Plan plan =
                measured(third, reading("400 lx", "far", "500 lx", KEY), reading("2500 lx", "near", "2000 lx", LAMP));
        assertThat(shown(plan, "far", 0).lux()).isCloseTo(400, within(0.1));
        assertThat(shown(plan, "near", 0).lux()).isCloseTo(2500, within(0.5));
        Metered.Shown.Lux elsewhere = shown(plan, "third", 0);
        assertThat(elsewhere.lux()).isCloseTo(500, within(0.5));
        // Two logarithms, 0.223 to either side of their mean: 2 deviations of that mean.
        assertThat(elsewhere.halfShare()).isCloseTo(2 * 0.2231 * Math.sqrt(2) / Math.sqrt(2), within(0.01));
    }

    @Test
    void wildDisagreement_latestCounts_andIsSaid() {
        String[] readings = {reading("400 lx", "far", "500 lx", KEY), reading("6000 lx", "near", "2000 lx", LAMP)};
        Plan plan = measured(PLAN, readings);
        assertThat(shown(plan, "near", 0).lux()).isCloseTo(6000, within(1.0));
        assertThat(shown(plan, "far", 0).lux()).isCloseTo(1500, within(1.0));
        assertThat(lessons(readings).listLooks(Noted.plan(PLAN)))
                .containsExactly("Look: by the reading on tin in near spot gives 1.9 stops more than by that on tin in"
                        + " far; the latest counts. Was one of them at another level, or not alone?");
        assertThat(lessons(readings[0]).listLooks(Noted.plan(PLAN))).isEmpty();
    }

    /// Read again at the same place the latest counts, without a word.
    @Test
    void readAgain_replaces() {
        String[] readings = {reading("200 lx", "far", "500 lx", KEY), reading("450 lx", "far", "500 lx", KEY)};
        assertThat(shown(measured(PLAN, readings), "far", 0).lux()).isCloseTo(450, within(0.1));
        assertThat(lessons(readings).listLooks(Noted.plan(PLAN))).isEmpty();
    }

    /// All on at once: each is off by as much.
    @Test
    void allOn_scalesEach() {
        String both = LAMP + ", rest: {lamp: other, gives: 4000 cd}";
        Plan plan = measured(PLAN, reading("5400 lx", "near", "6000 lx", both));
        assertThat(shown(plan, "near", 0).lux()).isCloseTo(1800, within(0.5));
        assertThat(shown(plan, "near", 1).lux()).isCloseTo(3600, within(0.5));
        assertThat(shown(plan, "far", 0).lux()).isCloseTo(450, within(0.2));
    }

    /// Of another lamp in its place a reading says nothing; neither does it after the plan's own figure was changed.
    @Test
    void reading_isOfItsLamp() {
        Plan plan = measured(PLAN, reading("1000 lx", "near", "2000 lx", LAMP));
        Stage swapped = Stage.of(plan, plan.findShot("near").orElseThrow(), "swapped");
        assertThat(shown(plan, swapped, 0).lux()).isCloseTo(4000, within(0.5));
        Plan other = measured(
                PLAN.replace("lamp: {light: spot", "lamp: {light: other"), reading("1000 lx", "near", "2000 lx", LAMP));
        assertThat(shown(other, "near", 0).lux()).isCloseTo(4000, within(0.5));
        assertThat(shown(other, "far", 0).lux()).isCloseTo(250, within(0.2));
        Plan corrected =
                measured(PLAN.replace("gives: 2000 cd", "gives: 900 cd"), reading("400 lx", "far", "500 lx", KEY));
        assertThat(shown(corrected, "far", 0).lux()).isCloseTo(400, within(0.1));
    }

    /// What a lamp gives by itself stands for other shots; the shot of the reading keeps its own.
    @Test
    void byItself_standsElsewhere() {
        Plan plan =
                measured(PLAN, reading("400 lx", "far", "500 lx", KEY), "  - {light: spot, gives: 1900 lx at 1 m}\n");
        assertThat(shown(plan, "far", 0).lux()).isCloseTo(400, within(0.1));
        assertThat(shown(plan, "near", 0).lux()).isCloseTo(1900, within(0.5));
    }

    @Test
    void lesson_isWrittenAsItIsRead() {
        Lessons one = lessons(reading("400 lx ± 3 %", "far", "500 lx", KEY));
        Lessons two = Lessons.none("l.yaml", "p.yaml").with(one.list().getFirst(), "p.yaml");
        assertThat(two.list()).isEqualTo(one.list());
        assertThat(two.text()).contains("lamps: {key: {lamp: spot, gives: 2000 cd}}");
    }

    @Test
    void namesThatAreGone_areSaid() {
        List<String> problems = lessons(reading("400 lx", "far", "500 lx", "fill: {lamp: spot, gives: 1 cd}")
                        .replace("thing: tin", "thing: jar"))
                .applyTo(Noted.plan(PLAN))
                .problems()
                .stream()
                .map(problem -> problem.field() + " " + problem.given())
                .toList();
        assertThat(problems).containsExactly("measured[1].thing jar", "measured[1].lamps fill");
    }

    @Test
    void farOff_isThreeStops() {
        assertThat(look("3900 lx")).isEmpty();
        assertThat(look("4100 lx")).isPresent();
        assertThat(look("60 lx")).isPresent();
    }

    private static java.util.Optional<String> look(String lux) {
        return FarOff.find(
                lessons(reading(lux, "far", "500 lx", KEY)).list().getFirst().measured(), Noted.plan(PLAN));
    }
}
