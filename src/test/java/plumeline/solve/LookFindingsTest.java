package plumeline.solve;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import plumeline.plan.Plan;
import plumeline.plan.Plans;

/// Findings on looks, pulses and cuts, and whether what they say to try helps.
final class LookFindingsTest {
    private static final String PLAN = """
        plumeline: 1
        film: {title: looks, rate: 24 fps, papers: mm}
        things:
          flacon:
            diameter: 42 mm
            height: 118 mm
            body: opaque
            label: {width: 30 mm, height: 50 mm, bottom: 20 mm}
            variants: {bergamot: {hue: 95 deg}, rose: {hue: 345 deg}, cedar: {hue: 28 deg}, lavender: {hue: 265 deg}}
        kit:
          cameras:
            main:
              sensor: {width: 36 mm, height: 20.25 mm, across: 3840 px}
              modes: [{rate: 24 fps}, {rate: 25 fps}, {rate: 120 fps}]
              iso: {base: 800, highest: 3200}
          lenses: {macro: {focal_length: 100 mm, nearest: 300 mm, f_numbers: [2.8, 32]}}
          lights:
            strip: {panel: [300 mm, 1200 mm], gives: 4000 lx at 1 m measured, white: 5600 K}
            tubes: {tube: [600 mm, 30 mm], gives: 300 lx at 1 m measured, gives_with: set, primaries: typical,
              pulse_rate: 100 Hz, depth: 60 %}
        shots:
          looks:
            camera: {body: main, lens: macro, at: [0 mm, -877 mm, 59 mm], aim: hero,
              f_number: 11, rate: 24 fps, shutter: 180 deg}
            place: {hero: {thing: flacon.lavender, at: [0 mm, 0 mm]}}
            lights:
              key: {light: strip, at: [500 mm, -500 mm, 400 mm]}
              wash: {light: tubes, at: [-300 mm, -300 mm, 200 mm], hue: complement}
            frames: 72
            passes: {green: {lights.key.level: 0 %}, white: {lights.wash.level: 0 %}}
            wants:
              - {flash_safe: [green, white]}
              - {matched: [green, white], within: 0.3 stops}
              - {steady_light: wash}
        cut: [{shot: looks, frames: 72, alternate: [green, white], each: 3 frames}]
        wants: [{flash_safe: cuts}]
        """;

    private static FilmAnswer solved(String text) {
        var reading = Plans.read(text.getBytes(StandardCharsets.UTF_8), "p.yaml");
        assertThat(reading.problems()).isEmpty();
        return Solve.film(reading.plan().orElseThrow());
    }

    private static WantAnswer want(String text, int index) {
        return solved(text).shots().getFirst().wants().get(index);
    }

    private static double margin(WantAnswer want) {
        return ((WantAnswer.Margin.Of) want.margin()).value();
    }

    private static String changed(String text, String part, String by) {
        assertThat(text).contains(part);
        return text.replace(part, by);
    }

    /// A crew's brief: looks cut every 3 frames at 24 fps are four pairs a second, four frames or more each.
    @Test
    void cutEveryThreeFrames_fails_everyFour_isTight_everyFive_raisesNoObjection() {
        WantAnswer three = want(PLAN, 0);
        assertThat(three.verdict()).isEqualTo(Verdict.FAILS);
        assertThat(three.margin()).isEqualTo(new WantAnswer.Margin.Of(-1, "frames"));
        assertThat(three.pass()).isEqualTo("green");
        assertThat(three.namesPass()).isTrue();
        assertThat(three.because().getFirst()).startsWith("The worst second has 8 changes of look, 4 pairs; three are");
        assertThat(three.attempts()).hasSize(1);
        WantAnswer four = want(changed(PLAN, "each: 3", "each: 4"), 0);
        assertThat(four.verdict()).isEqualTo(Verdict.TIGHT);
        assertThat(margin(four)).isZero();
        assertThat(four.attempts()).hasSize(1);
        WantAnswer five = want(changed(PLAN, "each: 3", "each: 5"), 0);
        assertThat(five.verdict()).isEqualTo(Verdict.NO_OBJECTION_FOUND);
        assertThat(margin(five)).isEqualTo(1);
        assertThat(five.attempts()).isEmpty();
    }

    @Test
    void flashes_areAlwaysCautioned_andNeverCalledSafe() {
        for (int each = 2; each < 9; each++) {
            FilmAnswer film = solved(changed(PLAN, "each: 3", "each: " + each));
            for (WantAnswer want : List.of(
                    film.shots().getFirst().wants().getFirst(), film.wants().getFirst())) {
                assertThat(String.join(" ", want.because())).contains("no permission");
                assertThat(want.verdict()).isNotEqualTo(Verdict.HOLDS);
                assertThat(String.join(" ", want.because())).doesNotContainIgnoringCase(" safe");
            }
        }
    }

    @Test
    void allCuts_areCountedTogether() {
        FilmAnswer film = solved(PLAN);
        assertThat(film.wants().getFirst().verdict()).isEqualTo(Verdict.FAILS);
        assertThat(film.wants().getFirst().margin()).isEqualTo(new WantAnswer.Margin.Of(-1, "frames"));
        String calm = changed(
                PLAN,
                "alternate: [green, white], each: 3 frames",
                "pass: green}, {shot: looks, pass: white, frames: 48");
        assertThat(solved(calm).wants().getFirst().verdict()).isEqualTo(Verdict.NO_OBJECTION_FOUND);
        String none = calm.replaceAll("(?s)\ncut: .*?]\n", "\n");
        assertThat(solved(none).wants().getFirst().verdict()).isEqualTo(Verdict.UNKNOWN);
    }

    private static final Pattern LEVEL = Pattern.compile("[Ii]n (\\w+) (\\w+) at ([0-9.]+ %)");

    /// Writes the levels that a sentence names into its looks.
    private static String set(String text, String sentence) {
        String changed = text;
        Matcher level = LEVEL.matcher(sentence);
        int found = 0;
        while (level.find()) {
            int passes = changed.indexOf("passes:");
            changed = changed.substring(0, passes)
                    + changed.substring(passes)
                            .replaceFirst(
                                    level.group(1) + ": \\{",
                                    level.group(1) + ": {lights." + level.group(2) + ".level: " + level.group(3)
                                            + (changed.contains(level.group(1) + ": {}") ? "" : ", "));
            found++;
        }
        assertThat(found).isPositive();
        return changed;
    }

    @Test
    void matched_saysTheLevel_andWithThatItHolds() {
        WantAnswer apart = want(PLAN, 1);
        assertThat(apart.verdict()).isEqualTo(Verdict.FAILS);
        assertThat(apart.attempts().getFirst()).startsWith("In white key at ").endsWith(": the looks then match.");
        WantAnswer set = want(set(PLAN, apart.attempts().getFirst()), 1);
        assertThat(margin(set)).isCloseTo(0.3, within(0.06));
        assertThat(set.verdict()).isIn(Verdict.HOLDS, Verdict.TIGHT);
    }

    /// A look a variant on a turntable: each label's complement, all brought down to the darkest.
    @Test
    void looksOfVariants_areComplements_andMatchAtTheirLevels() {
        String spin = changed(
                changed(
                        changed(
                                PLAN,
                                "{green: {lights.key.level: 0 %}, white: {lights.wash.level: 0 %}}",
                                "{bergamot: {place.hero.thing: flacon.bergamot}, rose: {place.hero.thing: flacon.rose},"
                                        + " cedar: {place.hero.thing: flacon.cedar}, lavender: {}}"),
                        "gives_with: set, ",
                        ""),
                "alternate: [green, white], each: 3 frames",
                "pass: rose");
        spin = spin.replace(
                        "key: {light: strip, at: [500 mm, -500 mm, 400 mm]}",
                        "key: {light: strip, at: [500 mm, -500 mm, 400 mm], level: 0 %}")
                .replace("[green, white]", "[bergamot, rose, cedar, lavender]");
        Plan plan = Plans.read(spin.getBytes(StandardCharsets.UTF_8), "p.yaml")
                .plan()
                .orElseThrow();
        assertThat(plan.shots().getFirst().passes().stream()
                        .map(pass -> pass.effective()
                                .findLight("wash")
                                .orElseThrow()
                                .written()
                                .findQuantity("hue")
                                .orElseThrow()
                                .value()))
                .containsExactly(275.0, 165.0, 208.0, 85.0);
        WantAnswer apart = want(spin, 1);
        assertThat(apart.verdict()).isEqualTo(Verdict.FAILS);
        String attempt = apart.attempts().getFirst();
        assertThat(attempt).startsWith("In rose wash at ").contains("in cedar wash at ", "in lavender wash at ");
        String set = set(spin, attempt);
        assertThat(margin(want(set, 1))).isCloseTo(0.3, within(0.06));
        assertThat(want(spin, 0).verdict()).isEqualTo(Verdict.UNKNOWN);
    }

    @Test
    void aFreeLevel_isFoundSoThatLooksMatch() {
        String free = changed(PLAN, "at: [500 mm, -500 mm, 400 mm]}", "at: [500 mm, -500 mm, 400 mm], level: free}");
        assertThat(margin(want(free, 1))).isPositive();
    }

    private static final Pattern CAMERA = Pattern.compile("Camera (shutter|rate) ([0-9.]+ \\w+):");

    @Test
    void steadyLight_saysWhatToSet_andWithThatItHolds() {
        WantAnswer pulsing = want(changed(PLAN, "depth: 60 %", "depth: 100 %"), 2);
        assertThat(pulsing.verdict()).isEqualTo(Verdict.FAILS);
        assertThat(pulsing.margin()).isInstanceOfSatisfying(WantAnswer.Margin.Of.class, margin -> {
            assertThat(margin.unit()).isEqualTo("%");
            double n = 100.0 / 48;
            assertThat(margin.value()).isCloseTo(3 - 100 * Math.sin(Math.PI * n) / (Math.PI * n), within(1e-6));
        });
        assertThat(pulsing.attempts()).hasSize(2);
        for (String attempt : pulsing.attempts()) {
            Matcher setting = CAMERA.matcher(attempt);
            assertThat(setting.find()).as(attempt).isTrue();
            String set = PLAN.replace("depth: 60 %", "depth: 100 %")
                    .replaceFirst(
                            "(f_number: 11, .*)" + setting.group(1) + ": [0-9]+ (fps|deg)",
                            "$1" + setting.group(1) + ": " + setting.group(2));
            assertThat(set).contains(setting.group(1) + ": " + setting.group(2));
            assertThat(want(set, 2).verdict()).as(attempt).isEqualTo(Verdict.HOLDS);
        }
    }

    /// At a fifth of the speed 24 frames a second need 120: the body's 25 fps would repeat frames.
    @Test
    void steadyLight_offersNoRateThatRepeatsFrames() {
        String slow = changed(PLAN, "frames: 72\n", "frames: 72\n    speed: 20 %\n")
                .replace("rate: 24 fps, shutter", "rate: 120 fps, shutter");
        assertThat(want(slow, 2).verdict()).isEqualTo(Verdict.FAILS);
        assertThat(want(slow, 2).attempts()).isEmpty();
    }

    /// 1e6/3200 − 1e6/5600 = 133.9: the difference of mireds.
    @Test
    void look_ofAnotherWhite_saysTheGel() {
        WantAnswer white = want(changed(PLAN, "steady_light: wash", "look: white, light: key, colour: 3200 K"), 2);
        assertThat(white.verdict()).isEqualTo(Verdict.FAILS);
        assertThat(white.attempts())
                .singleElement()
                .asString()
                .startsWith("A gel of +134 mired on key, or its white set to 3200 K where it has one.");
    }

    @Test
    void look_inAnotherWhite_saysTheBalance_andWithThatItHolds() {
        String warm = changed(PLAN, "steady_light: wash", "look: white, upon: hero, colour: \"#9d94c8\"")
                .replace("diameter: 42 mm", "colour: \"#9d94c8\"\n    diameter: 42 mm")
                .replace("white: 5600 K", "white: 3200 K");
        assertThat(want(warm, 2).verdict()).isEqualTo(Verdict.FAILS);
        assertThat(want(warm, 2).attempts())
                .contains("Balance the camera to that light: camera.white 3200 K. All that it shows changes with it.");
        assertThat(want(changed(warm, "f_number: 11, rate", "f_number: 11, white: 3200 K, rate"), 2)
                        .verdict())
                .isEqualTo(Verdict.HOLDS);
    }

    /// The key is off in the first look; where it is on its margin is the same, and that one is told.
    @Test
    void steadyLight_isToldOfTheLookInWhichTheLampIsOn() {
        WantAnswer key = want(changed(PLAN, "steady_light: wash", "steady_light: key"), 2);
        assertThat(key.verdict()).isEqualTo(Verdict.HOLDS);
        assertThat(key.pass()).isEqualTo("white");
        assertThat(key.because()).noneMatch(line -> line.contains("is off"));
    }

    /// With a readout bars count; another mode without one would hide them.
    @Test
    void steadyLight_offersNoRateWhoseBarsArentKnown() {
        String barred =
                changed(PLAN, "depth: 60 %", "depth: 100 %").replace("{rate: 24 fps}", "{rate: 24 fps, readout: 8 ms}");
        assertThat(want(barred, 2).verdict()).isEqualTo(Verdict.FAILS);
        assertThat(want(barred, 2).attempts()).isNotEmpty().noneMatch(attempt -> attempt.startsWith("Camera rate"));
    }

    @Test
    void steadyLight_overOnePercent_isTight_andSaysWhatToSet() {
        WantAnswer some = want(changed(PLAN, "depth: 60 %", "depth: 50 %"), 2);
        assertThat(some.verdict()).isEqualTo(Verdict.TIGHT);
        assertThat(some.attempts()).isNotEmpty();
    }
}
