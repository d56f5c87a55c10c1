package plumeline.want;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import plumeline.ink.Estimate;
import plumeline.plan.When;
import plumeline.stage.Stage;

/// Wants on ink, against z = k tⁿ through its two readings and other sums by hand; the plan is [Inked].
final class InkWantsTest {
    private static final double N = Math.log(188.0 / 70) / Math.log(1.9 / 0.4);
    private static final String AHEAD = "ink: read, at: [0 mm, -70 mm, 298 mm], start: 0.2 s";
    private static final String MIXED =
            "ink: mixed, volume: 10 ml, bore: 4 mm, squeeze_time: 1 s, at: [0 mm, -70 mm, 258 mm]";

    /// When the front has come so far, by its readings.
    private static double seconds(double millimetres) {
        return 0.4 * Math.pow(millimetres / 70, 1 / N);
    }

    @ParameterizedTest
    @CsvSource({
        "top, 0.4, 0.15, 0.15",
        "top, 0.5, 0.15, 0.05",
        "top, 0.2, 0.15, -0.05",
        "base, 1.9, 0.3, 0.3",
        "base, 2.0, 0.05, -0.05"
    })
    void inkReaches_margin_isWithinLessHowFarOff(String part, double after, double within, double margin) {
        String want = "{ink_reaches: hero, part: " + part + ", after: " + after + " s, within: " + within + " s}";
        assertThat(Inked.of(AHEAD, want).margin()).isCloseTo(margin, within(1e-6));
    }

    @Test
    void inkReaches_middle_andDefaults() {
        assertThat(Inked.of(AHEAD, "{ink_reaches: hero, part: middle, after: 1 s, within: 0.5 s}")
                        .margin())
                .isCloseTo(0.5 - Math.abs(seconds(129) - 1), within(1e-6));
        assertThat(Inked.of(AHEAD, "{ink_reaches: hero, after: 0.5 s}").margin())
                .isCloseTo(0, within(1e-6));
    }

    /// With the mouth 20 mm under the surface the top is 50 mm away; read from 10 mm under it, the readings' ways were
    /// 60 and 178 mm.
    @Test
    void inkReaches_countsFromTheMouth() {
        String under = AHEAD.replace("298 mm", "248 mm");
        String want = "{ink_reaches: hero, after: 0.3 s, within: 0.3 s}";
        assertThat(Inked.of(under, want).margin()).isCloseTo(0.3 - Math.abs(seconds(50) - 0.3), within(1e-6));
        assertThat(Inked.of(under, want).caution()).contains("as if read with the nozzle at the surface");
        Inked told = Inked.changed(under, want, "spread: 0.20 measured", "tip: -10 mm");
        double n = Math.log(178.0 / 60) / Math.log(1.9 / 0.4);
        double there = 0.4 * Math.pow(50.0 / 60, 1 / n);
        assertThat(told.margin()).isCloseTo(0.3 - Math.abs(there - 0.3), within(1e-6));
        assertThat(told.caution()).doesNotContain("as if read").contains("half-width a fifth");
    }

    @Test
    void inkReaches_saysWhenHowSureAndHowOften() {
        Inked good = Inked.of(AHEAD, "{ink_reaches: hero, after: 0.4 s, within: 0.15 s}");
        assertThat(good.standing())
                .isEqualTo("The front is at hero's top after 0.4 s (four takes in five: 0.29 s to 0.55 s); wanted after"
                        + " 0.4 s ± 0.15 s.");
        assertThat(good.caution())
                .isEqualTo(
                        "About 9 takes in 10 are in time. It passes 35 mm clear of hero: no ink touches it by then.");
        assertThat(good.tight()).isEmpty();
        Inked narrow = Inked.of(AHEAD, "{ink_reaches: hero, after: 0.4 s, within: 0.05 s}");
        assertThat(narrow.margin()).isPositive();
        assertThat(narrow.tight()).hasValueSatisfying(why -> assertThat(why).startsWith("Takes differ by more"));
        Inked late = Inked.of(AHEAD, "{ink_reaches: hero, part: base, after: 0.5 s, within: 0.1 s}");
        assertThat(late.standing()).endsWith("wanted after 0.5 s ± 0.1 s: 1.4 s late.");
        assertThat(late.caution()).startsWith("Fewer than 1 take in 10 is in time. It passes ");
        Inked early = Inked.of(AHEAD, "{ink_reaches: hero, after: 0.9 s, within: 0.1 s}");
        assertThat(early.standing()).endsWith(": 0.5 s early.");
    }

    /// From nozzle to face less a fifth of the way: 70 − 21 − 37.6 mm at the base, 65 − 21 − 37.6; wider by a fifth, as
    /// takes differ, the second touches.
    @Test
    void inkReaches_saysWhatItPassesClearOf_howeverNear() {
        String base = "{ink_reaches: hero, part: base, after: 1.9 s, within: 1 s}";
        assertThat(Inked.of(AHEAD, base).caution())
                .isEqualTo("More than 9 takes in 10 are in time. It passes 11 mm clear of hero: no ink touches it by"
                        + " then.");
        assertThat(Inked.of(AHEAD.replace("-70 mm", "-65 mm"), base).caution())
                .endsWith("It passes 6 mm clear of hero; a take whose plume is wider touches it.");
        assertThat(Inked.of(AHEAD.replace("-70 mm", "-50 mm"), base).caution()).endsWith("in time.");
        assertThat(Inked.of(AHEAD.replace("-70 mm", "0 mm"), "{ink_reaches: hero, after: 0.4 s}")
                        .caution())
                .endsWith("in time.");
        assertThat(Inked.changed(AHEAD, base, "film: {rate: 24 fps}", "film: {rate: 24 fps, papers: in}")
                        .caution())
                .contains("passes 7/16 in clear of hero");
    }

    @Test
    void inkReaches_byLaw_asksForAReading() {
        Inked law = Inked.of(MIXED, "{ink_reaches: hero, after: 0.3 s, within: 0.1 s}");
        assertThat(law.margin()).isPositive();
        assertThat(law.tight())
                .hasValueSatisfying(why -> assertThat(why).contains("Film one take with a ruler beside it"));
        assertThat(Inked.of(MIXED.replace(", squeeze_time: 1 s", ""), "{ink_reaches: hero, after: 0.3 s}")
                        .caution())
                .endsWith("Assumed: squeezed out in 1 s.");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "ink: mixed, bore: 4 mm, at: [0 mm, -70 mm, 258 mm] | how much ink is let go",
                "ink: mixed, volume: 10 ml, at: [0 mm, -70 mm, 258 mm] | Measure the nozzle's bore",
                "thing: hero | No ink is let go in this shot",
                "ink: read, at: [0 mm, -130 mm, 298 mm] | outside the tank's glass",
                "ink: read, at: [0 mm, -70 mm, 440 mm] | breaks into drops. Lower the nozzle to 150 mm",
            })
    void whatIsMissing_isAskedFor(String release, String why) {
        assertThat(Inked.of(release, "{ink_reaches: hero, after: 0.4 s}").unknown())
                .contains(why);
        assertThat(Inked.of(release, "{clear_until: hero, time: 0.4 s}").unknown())
                .contains(why);
        assertThat(Inked.of(release, "{veiled_by: hero, time: 0.4 s}").unknown())
                .contains(why);
    }

    @Test
    void readingsThatGoUp_aren_t_read() {
        assertThat(Inked.changed(AHEAD, "{ink_reaches: hero, after: 0.4 s}", "188 mm", "60 mm")
                        .unknown())
                .startsWith("The ink's front doesn't go down with time");
        assertThat(Inked.changed(
                                AHEAD,
                                "{ink_reaches: hero, after: 0.4 s}",
                                "place: {hero: {thing: flacon, at: [0 mm,",
                                "place: {hero: {thing: flacon, at: [600 mm,")
                        .unknown())
                .isEqualTo("hero stands outside the tank.");
    }

    @Test
    void aMouthBelow_andInkThatFloats_areSaid() {
        Inked below = Inked.of(AHEAD.replace("298 mm", "180 mm"), "{ink_reaches: hero, after: 0.4 s}");
        assertThat(below.margin()).isNegative();
        assertThat(below.standing())
                .isEqualTo("The nozzle's mouth is 18 mm under hero's top: no front passes it. Raise the nozzle.");
        Inked light = Inked.of(MIXED.replace("mixed", "light"), "{ink_reaches: hero, part: base, after: 0.4 s}");
        assertThat(light.margin()).isNegative();
        assertThat(light.standing()).startsWith("light is lighter than the water: it turns about ");
        assertThat(light.want((_, _, _) -> Optional.empty()).isMeasured(light.moments()))
                .isFalse();
        assertThat(light.caution()).contains("may come so deep");
        Inked rising = Inked.of(
                MIXED.replace("mixed", "light").replace("258 mm", "180 mm"), "{ink_reaches: hero, after: 0.4 s}");
        assertThat(rising.unknown()).startsWith("Not computed: ink lighter than the water rises past the nozzle");
        Inked clear = Inked.of(
                MIXED.replace("mixed", "light").replace("258 mm", "180 mm"), "{clear_until: hero, time: 0.4 s}");
        assertThat(clear.unknown()).startsWith("Not computed: ink lighter than the water rises past the nozzle");
    }

    /// A cone whose half-width is a fifth of its way touches a face 29 mm off after 145 mm: z = d/α (ink.md's inverse,
    /// without its first radius). From behind the bottle nothing is covered.
    @Test
    void clearUntil_touch_isWhereTheHalfWidthHasGrownToTheFace() {
        Inked behind = Inked.of("ink: read, at: [0 mm, 50 mm, 298 mm]", "{clear_until: hero, time: 0.5 s}");
        assertThat(behind.margin()).isCloseTo(seconds(29 / 0.2) - 0.5, within(1e-4));
        assertThat(behind.standing()).startsWith("The plume touches hero after ");
        Inked aside = Inked.of("ink: read, at: [55 mm, 0 mm, 298 mm]", "{clear_until: hero, time: 0.5 s}");
        assertThat(aside.margin()).isCloseTo(seconds(34 / 0.2) - 0.5, within(1e-4));
    }

    /// Seen level from the height of its top, which no glass bends, the top is covered once the front is level with it.
    @Test
    void clearUntil_cover_isWhereTheFrontComesBeforeIt() {
        Inked before = Inked.of(AHEAD, "{clear_until: hero, time: 0.3 s}");
        assertThat(before.margin()).isCloseTo(seconds(70) - 0.3, within(1e-4));
        assertThat(before.standing()).startsWith("Ink comes before hero in the picture after 0.4 s");
        assertThat(before.caution()).isEqualTo("About 9 takes in 10 are clear until then.");
        Inked tight = Inked.of(AHEAD, "{clear_until: hero, time: 0.35 s}");
        assertThat(tight.margin()).isPositive();
        assertThat(tight.tight()).isPresent();
        Inked never = Inked.of("ink: read, at: [-200 mm, 100 mm, 298 mm]", "{clear_until: hero, time: 0.3 s}");
        assertThat(never.standing()).startsWith("No ink before hero until the front is on the floor after ");
        assertThat(never.margin()).isCloseTo(seconds(260) - 0.3, within(1e-6));
    }

    @Test
    void veiledBy_isWhenTheFrontHasPassedTheSightLine_whereItIsWideEnough() {
        Inked top = Inked.changed(AHEAD, "{veiled_by: hero, part: top, time: 1 s}", "spread: 0.20", "spread: 0.40");
        // 28 mm of half-width before 21 mm: all of it, from level with the top on.
        assertThat(top.margin()).isGreaterThan(0);
        assertThat(top.standing()).startsWith("By its law the plume veils hero's top after 0.4 s");
        Inked narrow = Inked.changed(AHEAD, "{veiled_by: hero, part: top, time: 1 s}", "spread: 0.20", "spread: 0.10");
        assertThat(narrow.margin()).isNegative();
        assertThat(narrow.standing()).startsWith("The plume is too narrow before hero's top: it covers ");
        Inked behind = Inked.of("ink: read, at: [0 mm, 80 mm, 298 mm]", "{veiled_by: hero, time: 1 s}");
        assertThat(behind.lack()).contains("doesn't go down before hero");
        Inked soon = Inked.changed(AHEAD, "{veiled_by: hero, part: top, time: 0.3 s}", "spread: 0.20", "spread: 0.40");
        assertThat(soon.margin()).isCloseTo(0.3 - seconds(70), within(1e-4));
    }

    /// With the mouth so near before the face, over it or behind it, the plume meets the thing: open water's law is not
    /// known there. 26 mm of half-width at the middle, the face at y ± 21 mm.
    @ParameterizedTest
    @CsvSource({
        "-26 mm, MEETS",
        "-21 mm, MEETS",
        "0 mm, MEETS",
        "15 mm, MEETS",
        "25 mm, MEETS",
        "-60 mm, known",
        "35 mm, BEHIND",
        "80 mm, BEHIND"
    })
    void veiledBy_whereThePlumeMeetsTheThing_isUnknown_andFailsOnlyBehind(String y, String is) {
        Inked inked = Inked.of("ink: read, at: [0 mm, " + y + ", 298 mm]", "{veiled_by: hero, time: 2 s}");
        String meets = "Not computed: the plume meets hero or comes down on it, and its law is of open water. Simulate"
                + " it, ./plumeline ink, or move the nozzle ahead of hero by more than the plume's half-width there,"
                + " 26 mm.";
        if (is.equals("BEHIND")) {
            assertThat(inked.lack()).startsWith("The ink doesn't go down before hero");
        } else {
            assertThat(inked.unknown()).isEqualTo(is.equals("MEETS") ? meets : "known");
            assertThat(inked.want((_, _, _) -> Optional.empty()).findLack(inked.moments()))
                    .isEmpty();
        }
        assertThat(inked.want(new Simulated(0.5)).findUnknown(inked.moments())).isEmpty();
        assertThat(inked.want(new Simulated(0.5)).findLack(inked.moments())).isEmpty();
    }

    /// Whoever looks down on it: ahead of it is level, not along the tipped axis.
    @Test
    void veiledBy_lookedDownOn_theMouthOverTheThingIsNotBeforeIt() {
        Inked down = Inked.changed(
                "ink: read, at: [0 mm, 5 mm, 298 mm]",
                "{veiled_by: hero, part: top, time: 2 s}",
                "at: [0 mm, -1100 mm, 198 mm], aim: ahead",
                "at: [0 mm, -1100 mm, 400 mm], aim: hero");
        assertThat(down.unknown()).startsWith("Not computed: the plume meets hero");
    }

    @ParameterizedTest
    @CsvSource({
        "'0 mm, -70 mm, 480 mm', breaks into drops",
        "'0 mm, 5 mm, 150 mm', is inside hero",
        "'0 mm, -200 mm, 298 mm', outside the tank's glass",
        "'0 mm, 200 mm, 298 mm', outside the tank's glass"
    })
    void veiledBy_aMouthOutOfPlace_isUnknownAsForTheOthers(String at, String why) {
        Inked inked = Inked.of("ink: read, at: [" + at + "]", "{veiled_by: hero, time: 1 s}");
        assertThat(inked.unknown()).contains(why);
        assertThat(inked.want((_, _, _) -> Optional.empty()).findLack(inked.moments()))
                .isEmpty();
    }

    @Test
    void veiledBy_inkThatTurnsBefore_neverDoes_andHasNoMargin() {
        Inked light = Inked.of(MIXED.replace("mixed", "light"), "{veiled_by: hero, part: base, time: 5 s}");
        assertThat(light.standing())
                .startsWith("light is lighter than the water: it turns about ")
                .contains("sight line to hero's base", "never veils it")
                .doesNotContain("600 s");
        assertThat(light.want((_, _, _) -> Optional.empty()).isMeasured(light.moments()))
                .isFalse();
        assertThat(light.margin()).isNegative();
        assertThat(light.caution()).contains("may come so deep");
        Inked dense = Inked.of(MIXED, "{veiled_by: hero, part: base, time: 5 s}");
        assertThat(dense.want((_, _, _) -> Optional.empty()).isMeasured(dense.moments()))
                .isTrue();
    }

    /// 5 ml of 0.90 g/ml in 0.5 s out of 4 mm turn 1.85 M^¾/F^½ = 89 mm under the surface (M 7.96e-6 m⁴/s², F 9.65e-6
    /// m⁴/s³), beside a bottle whose top is 70 mm deep, over one whose top is 130 mm deep.
    @Test
    void veiledBy_inkThatTurnsOverTheThing_neverDoes_howeverNearTheNozzle() {
        String release = "ink: light, volume: 5 ml, bore: 4 mm, squeeze_time: 0.5 s, at: [0 mm, -25 mm, 268 mm]";
        String want = "{veiled_by: hero, part: middle, time: 1 s}";
        Inked turns = Inked.changed(release, want, "0 mm, 80 mm]", "0 mm, 20 mm]");
        assertThat(turns.unknown()).isEqualTo("known");
        assertThat(turns.margin()).isNegative();
        assertThat(turns.standing()).contains("about 89 mm", "never veils it");
        Inked meets = Inked.of(release, want);
        assertThat(meets.unknown()).startsWith("Not computed: the plume meets hero");
    }

    /// The shot is over 0.3 s after the release; its readings have the front there after 0.4 s.
    @Test
    void whatComesAfterTheShotsEnd_isToldToShowInNoFrame() {
        String late = "No frame shows it: the shot is over 0.3 s after the release.";
        String start = AHEAD.replace("start: 0.2 s", "start: 3.7 s");
        assertThat(Inked.of(start, "{ink_reaches: hero, after: 0.4 s}").caution())
                .endsWith(late);
        assertThat(Inked.of(start, "{veiled_by: hero, time: 2 s}").caution()).endsWith(late);
        assertThat(Inked.of(AHEAD, "{ink_reaches: hero, after: 0.4 s}").caution())
                .doesNotContain("No frame");
        Inked rises = Inked.changed(
                "thing: hero, start: 3.9 s",
                "{rises: hero, by: 60 mm, within: 1 s}",
                "{thing: flacon, at: [0 mm, 0 mm, 80 mm], lines: 2}",
                "{thing: cork, at: [0 mm, 0 mm, 80 mm]}");
        assertThat(rises.caution()).contains("No frame shows it: the shot is over 0.1 s after the release.");
    }

    /// Seen level with the top, which is at 198 mm.
    @Test
    void veiledBy_aMouthUnderTheSightLine_fails_andSaysSo() {
        Inked below = Inked.of(AHEAD.replace("298 mm", "180 mm"), "{veiled_by: hero, part: top, time: 1 s}");
        assertThat(below.unknown()).isEqualTo("known");
        assertThat(below.margin()).isNegative();
        assertThat(below.standing())
                .isEqualTo("The nozzle's mouth is 18 mm under the camera's sight line to hero's top: no front passes"
                        + " it. Raise the nozzle.");
        Inked rising = Inked.of(
                MIXED.replace("mixed", "light").replace("258 mm", "180 mm"), "{veiled_by: hero, part: top, time: 1 s}");
        assertThat(rising.unknown()).startsWith("Not computed: ink lighter than the water rises");
    }

    /// 96 frames at 24 a second are 4 s.
    @ParameterizedTest
    @CsvSource({"ink_reaches, after", "clear_until, time", "veiled_by, time"})
    void aReleaseAfterTheShotsEnd_isUnknown(String word, String time) {
        String want = "{" + word + ": hero, " + time + ": 0.4 s}";
        assertThat(Inked.of(AHEAD.replace("start: 0.2 s", "start: 4 s"), want).unknown())
                .isEqualTo("The release is after the shot's end. It starts at 4 s on the table, where the shot is over"
                        + " after 4 s: let it go earlier, or give the shot more frames.");
        assertThat(Inked.of(AHEAD.replace("start: 0.2 s", "start: 3.9 s"), want).unknown())
                .isEqualTo("known");
        assertThat(Inked.changed(AHEAD, want, "frames: 96", "frames: 1").unknown())
                .isEqualTo("known");
    }

    /// What takes taught goes over to another volume: more ink comes sooner, and is less sure than the same again.
    @Test
    void inkReaches_afterTakes_countsWhatWasLetGo() {
        String want = "{ink_reaches: hero, part: top, after: 0.5 s, within: 0.3 s}";
        String same = "ink: taught, volume: 5 ml, bore: 4 mm, squeeze_time: 1 s, at: [0 mm, -60 mm, 298 mm]";
        String more = same.replace("5 ml", "10 ml").replace("bore: 4 mm", "bore: 6 mm");
        double[] ends = interval(Inked.of(same, want).standing());
        double[] other = interval(Inked.of(more, want).standing());
        // The law alone, as the ink mixed has it, doesn't know the take, whose front was at 70 mm after half a second.
        double[] law = interval(Inked.of(same.replace("taught", "mixed"), want).standing());
        assertThat(ends[2] / ends[1]).isLessThan(law[2] / law[1]);
        assertThat(ends[1]).isLessThan(0.5);
        assertThat(ends[2]).isGreaterThan(0.5);
        assertThat(other[2] / other[1]).isGreaterThan(ends[2] / ends[1]);
        assertThat(other[0]).isNotCloseTo(ends[0], within(0.02));
    }

    /// Middle, early and late end of a time in a sentence, s.
    private static double[] interval(String standing) {
        var found = Pattern.compile("after ([\\d.]+) s \\(four takes in five: ([\\d.]+) s to ([\\d.]+) s\\)")
                .matcher(standing);
        assertThat(found.find()).as(standing).isTrue();
        return new double[] {
            Double.parseDouble(found.group(1)), Double.parseDouble(found.group(2)), Double.parseDouble(found.group(3))
        };
    }

    /// A reading is as deep as it is read: with the mouth where it was read from, the front is there at that time.
    @Test
    void oneReading_withATip_isCountedOnce() {
        String one = "mixed: {density: 1.05 g/ml, front: [[0.7 s, 70 mm]], tip: -10 mm}";
        Inked inked = Inked.changed(
                MIXED,
                "{ink_reaches: hero, part: top, after: 0.7 s, within: 0.3 s}",
                "mixed: {density: 1.05 g/ml}",
                one);
        // MIXED's mouth is at 258 mm, 10 mm under the surface; the top is 70 mm deep.
        assertThat(inked.margin()).isCloseTo(0.3, within(1e-6));
    }

    @Test
    void readingsAboveTheMouth_areMissed_andWideSpreadsAndFloorsDontBreak() {
        String above = "read: {front: [[0.2 s, 5 mm], [1 s, 60 mm]], tip: -10 mm}";
        assertThat(Inked.changed(
                                AHEAD,
                                "{ink_reaches: hero, after: 1 s}",
                                "read: {front: [[0.40 s, 70 mm], [1.90 s, 188 mm]], spread: 0.20 measured}",
                                above)
                        .unknown())
                .isNotEqualTo("known");
        Inked wide = Inked.of(MIXED.replace("10 ml", "10 ml ± 20 ml"), "{ink_reaches: hero, after: 1 s}");
        assertThat(wide.unknown()).isEqualTo("known");
        assertThat(wide.standing()).isNotEmpty();
        assertThat(Inked.of(AHEAD.replace("298 mm", "0 mm"), "{clear_until: hero, time: 1 s}")
                        .unknown())
                .isEqualTo("The nozzle's mouth is in or under the tank's floor.");
    }

    /// A simulation that has it veiled after 0.9 s.
    private record Simulated(double heightShare) implements Wants.Elsewhere {
        @Override
        public Optional<Double> findShare(String shot, String thing, When when) {
            return Optional.empty();
        }

        @Override
        public Optional<Veiled> findVeiled(Wants.Elsewhere.Height height) {
            assertThat(height.thing()).isEqualTo("hero");
            assertThat(height.heightShare()).isCloseTo(heightShare, within(1e-9));
            assertThat(height.values()).hasSize(height.stage().marks().size());
            return Optional.of(new Veiled(new Estimate(0.9, 0.8, 1.0), 0.97));
        }
    }

    /// With a mark so many metres from where it is written.
    private static Moments moved(Inked inked, String mark, double metres) {
        Stage stage = Wanted.stage(inked.plan());
        double[] values = stage.startValues();
        for (int i = 0; i < values.length; i++) {
            values[i] += stage.marks().get(i).mark().path().equals(mark) ? metres : 0;
        }
        return new Moments(stage, values, List.of(0.0), new Recall());
    }

    /// A plume that has gone 129 mm is 26 mm to either side before a bottle of 21: it covers half of its width until it
    /// stands 26 mm aside, a little more as the lens is far.
    @Test
    void veiledBy_aSimulation_leewayEndsWhereTheLawCoversNoMore() {
        Inked inked = Inked.of(AHEAD, "{veiled_by: hero, part: middle, time: 1.2 s}");
        Want want = inked.want(new Simulated(0.5));
        assertThat(want.parts(inked.moments()))
                .satisfies(parts ->
                        assertThat(Arrays.stream(parts).min().orElseThrow()).isPositive());
        assertThat(want.parts(moved(inked, "release.x", 0.020)))
                .satisfies(parts ->
                        assertThat(Arrays.stream(parts).min().orElseThrow()).isPositive());
        double[] aside = want.parts(moved(inked, "release.x", 0.035));
        assertThat(aside[0]).isPositive();
        assertThat(aside[1]).isNegative();
        // Where the law has it too narrow even as written, it may get no narrower, and its time goes on counting.
        Inked narrow =
                Inked.changed(AHEAD, "{veiled_by: hero, part: top, time: 1.2 s}", "spread: 0.20", "spread: 0.10");
        Want seen = narrow.want(new Simulated(1));
        double[] written = seen.parts(narrow.moments());
        assertThat(seen.margin(written)).isCloseTo(0.3, within(1e-9));
        assertThat(written[1]).isZero();
        assertThat(seen.parts(moved(narrow, "release.x", 0.015))[1]).isNegative();
        double[] under = seen.parts(moved(narrow, "release.z", -0.050));
        assertThat(under[0]).isCloseTo(1.2 - 0.9 * seconds(50) / seconds(70), within(0.02));
    }

    @Test
    void veiledBy_aSimulation_decidesWhereOneWasRun() {
        Inked inked = Inked.of(AHEAD, "{veiled_by: hero, part: middle, time: 1.2 s}");
        Want want = inked.want(new Simulated(0.5));
        Moments moments = inked.moments();
        assertThat(want.margin(want.parts(moments))).isCloseTo(0.3, within(1e-9));
        assertThat(want.findStanding(moments, plumeline.quantity.PaperUnit.MILLIMETRES)
                        .orElseThrow())
                .isEqualTo("In the simulation hero's middle is veiled after 0.9 s (four takes in five: 0.8 s to 1 s);"
                        + " wanted by 1.2 s. (ink_reaches and clear_until go by the law.)");
        assertThat(want.findTight(moments)).isEmpty();
        assertThat(want.findCaution(moments)).hasValue("More than 9 takes in 10 are veiled by then.");
    }

    /// A search goes by the law, so a simulation of marks that are free still is told, and how to have it count.
    @Test
    void veiledBy_aSimulationOfFreeMarks_isTold() {
        String free = AHEAD.replace("at: [0 mm, -70 mm", "at: [0 mm, free between -80 mm and -60 mm");
        Inked inked = Inked.of(free, "{veiled_by: hero, part: middle, time: 1.2 s}");
        Want want = inked.want(new Simulated(0.5));
        assertThat(want.findStanding(inked.moments(), plumeline.quantity.PaperUnit.MILLIMETRES)
                        .orElseThrow())
                .startsWith("By its law ");
        assertThat(want.findCaution(inked.moments()).orElseThrow())
                .endsWith(
                        "The simulation of these marks, which are free, has it veiled after 0.9 s (four takes in five:"
                                + " 0.8 s to 1 s); it decides once they are kept, ./plumeline keep.");
    }

    /// A = strength · path · ink / water: 100 /cm · 9.9 cm · 3 ml / 35.1 l.
    @Test
    void seeThrough_isBeerAndLambert_afterTheTakesSoFar() {
        String release = "ink: strong, volume: 3 ml, at: [0 mm, -70 mm, 298 mm]";
        double absorbance = 100 * 9.9 * 3 / 35_100;
        Inked one = Inked.of(release, "{see_through: hero}");
        assertThat(one.margin()).isCloseTo(100 * (Math.pow(10, -absorbance) - 0.95), within(1e-6));
        assertThat(one.standing())
                .isEqualTo(
                        "After 1 take 82 % of the light comes through the water before hero; 95 % is wanted. Only the"
                                + " first take begins so: change at least 79 % of the water after every take.");
        Inked three =
                Inked.changed(release, "{see_through: hero, least: 50 %}", "water: 260 mm", "water: 260 mm, takes: 3");
        assertThat(three.margin()).isCloseTo(100 * (Math.pow(10, -3 * absorbance) - 0.5), within(1e-6));
        assertThat(three.standing()).contains("After 3 takes", "The first 4 takes begin so.");
    }

    @Test
    void seeThrough_isUnknownUnlessMeasured() {
        String release = "ink: mixed, volume: 3 ml, at: [0 mm, -70 mm, 298 mm]";
        assertThat(Inked.of(release, "{see_through: hero}").unknown())
                .startsWith("Not known: how strong mixed is. Put 1 ml of it into a litre");
        assertThat(Inked.changed(
                                release.replace("mixed", "strong"),
                                "{see_through: hero}",
                                "100 /cm measured",
                                "100 /cm typical")
                        .unknown())
                .startsWith("Not measured: strong's strength is typical.");
    }
}
