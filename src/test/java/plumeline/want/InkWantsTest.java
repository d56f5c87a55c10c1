package plumeline.want;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Optional;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/// When ink comes to a thing, how long it leaves it clear, and how much light the water lets through, against
/// z = k tⁿ through its two readings and other sums by hand; the plan is [Inked].
final class InkWantsTest {
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
        assertThat(Inked.of(Inked.AHEAD, want).margin()).isCloseTo(margin, within(1e-6));
    }

    @Test
    void inkReaches_middle_andDefaults() {
        assertThat(Inked.of(Inked.AHEAD, "{ink_reaches: hero, part: middle, after: 1 s, within: 0.5 s}")
                        .margin())
                .isCloseTo(0.5 - Math.abs(Inked.seconds(129) - 1), within(1e-6));
        assertThat(Inked.of(Inked.AHEAD, "{ink_reaches: hero, after: 0.5 s}").margin())
                .isCloseTo(0, within(1e-6));
    }

    /// With the mouth 20 mm under the surface the top is 50 mm away; read from 10 mm under it, the readings' ways were
    /// 60 and 178 mm.
    @Test
    void inkReaches_countsFromTheMouth() {
        String under = Inked.AHEAD.replace("298 mm", "248 mm");
        String want = "{ink_reaches: hero, after: 0.3 s, within: 0.3 s}";
        assertThat(Inked.of(under, want).margin()).isCloseTo(0.3 - Math.abs(Inked.seconds(50) - 0.3), within(1e-6));
        assertThat(Inked.of(under, want).caution()).contains("as if read with the nozzle at the surface");
        Inked told = Inked.changed(under, want, "spread: 0.20 measured", "tip: -10 mm");
        double n = Math.log(178.0 / 60) / Math.log(1.9 / 0.4);
        double there = 0.4 * Math.pow(50.0 / 60, 1 / n);
        assertThat(told.margin()).isCloseTo(0.3 - Math.abs(there - 0.3), within(1e-6));
        assertThat(told.caution()).doesNotContain("as if read").contains("half-width a fifth");
    }

    @Test
    void inkReaches_saysWhenHowSureAndHowOften() {
        Inked good = Inked.of(Inked.AHEAD, "{ink_reaches: hero, after: 0.4 s, within: 0.15 s}");
        assertThat(good.standing())
                .isEqualTo("The front is at hero's top after 0.4 s (four takes in five: 0.29 s to 0.55 s); wanted after"
                        + " 0.4 s ± 0.15 s.");
        assertThat(good.caution())
                .isEqualTo(
                        "About 9 takes in 10 are in time. It passes 35 mm clear of hero: no ink touches it by then.");
        assertThat(good.tight()).isEmpty();
        Inked narrow = Inked.of(Inked.AHEAD, "{ink_reaches: hero, after: 0.4 s, within: 0.05 s}");
        assertThat(narrow.margin()).isPositive();
        assertThat(narrow.tight()).hasValueSatisfying(why -> assertThat(why).startsWith("Takes differ by more"));
        Inked late = Inked.of(Inked.AHEAD, "{ink_reaches: hero, part: base, after: 0.5 s, within: 0.1 s}");
        assertThat(late.standing()).endsWith("wanted after 0.5 s ± 0.1 s: 1.4 s late.");
        assertThat(late.caution()).startsWith("Fewer than 1 take in 10 is in time. It passes ");
        Inked early = Inked.of(Inked.AHEAD, "{ink_reaches: hero, after: 0.9 s, within: 0.1 s}");
        assertThat(early.standing()).endsWith(": 0.5 s early.");
    }

    /// From nozzle to face less a fifth of the way: 70 − 21 − 37.6 mm at the base, 65 − 21 − 37.6; wider by a fifth, as
    /// takes differ, the second touches.
    @Test
    void inkReaches_saysWhatItPassesClearOf_howeverNear() {
        String base = "{ink_reaches: hero, part: base, after: 1.9 s, within: 1 s}";
        assertThat(Inked.of(Inked.AHEAD, base).caution())
                .isEqualTo("More than 9 takes in 10 are in time. It passes 11 mm clear of hero: no ink touches it by"
                        + " then.");
        assertThat(Inked.of(Inked.AHEAD.replace("-70 mm", "-65 mm"), base).caution())
                .endsWith("It passes 6 mm clear of hero; a take whose plume is wider touches it.");
        assertThat(Inked.of(Inked.AHEAD.replace("-70 mm", "-50 mm"), base).caution())
                .endsWith("in time.");
        assertThat(Inked.of(Inked.AHEAD.replace("-70 mm", "0 mm"), "{ink_reaches: hero, after: 0.4 s}")
                        .caution())
                .endsWith("in time.");
        assertThat(Inked.changed(Inked.AHEAD, base, "film: {rate: 24 fps}", "film: {rate: 24 fps, papers: in}")
                        .caution())
                .contains("passes 7/16 in clear of hero");
    }

    @Test
    void inkReaches_byLaw_asksForAReading() {
        Inked law = Inked.of(Inked.MIXED, "{ink_reaches: hero, after: 0.3 s, within: 0.1 s}");
        assertThat(law.margin()).isPositive();
        assertThat(law.tight())
                .hasValueSatisfying(why -> assertThat(why).contains("Film one take with a ruler beside it"));
        assertThat(Inked.of(Inked.MIXED.replace(", squeeze_time: 1 s", ""), "{ink_reaches: hero, after: 0.3 s}")
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
        assertThat(Inked.changed(Inked.AHEAD, "{ink_reaches: hero, after: 0.4 s}", "188 mm", "60 mm")
                        .unknown())
                .startsWith("The ink's front doesn't go down with time");
        assertThat(Inked.changed(
                                Inked.AHEAD,
                                "{ink_reaches: hero, after: 0.4 s}",
                                "place: {hero: {thing: flacon, at: [0 mm,",
                                "place: {hero: {thing: flacon, at: [600 mm,")
                        .unknown())
                .isEqualTo("hero stands outside the tank.");
    }

    @Test
    void aMouthBelow_andInkThatFloats_areSaid() {
        Inked below = Inked.of(Inked.AHEAD.replace("298 mm", "180 mm"), "{ink_reaches: hero, after: 0.4 s}");
        assertThat(below.margin()).isNegative();
        assertThat(below.standing())
                .isEqualTo("The nozzle's mouth is 18 mm under hero's top: no front passes it. Raise the nozzle.");
        Inked light = Inked.of(Inked.MIXED.replace("mixed", "light"), "{ink_reaches: hero, part: base, after: 0.4 s}");
        assertThat(light.margin()).isNegative();
        assertThat(light.standing()).startsWith("light is lighter than the water: it turns about ");
        assertThat(light.want((_, _, _) -> Optional.empty()).isMeasured(light.moments()))
                .isFalse();
        assertThat(light.caution()).contains("may come so deep");
        Inked rising = Inked.of(
                Inked.MIXED.replace("mixed", "light").replace("258 mm", "180 mm"), "{ink_reaches: hero, after: 0.4 s}");
        assertThat(rising.unknown()).startsWith("Not computed: ink lighter than the water rises past the nozzle");
        Inked clear = Inked.of(
                Inked.MIXED.replace("mixed", "light").replace("258 mm", "180 mm"), "{clear_until: hero, time: 0.4 s}");
        assertThat(clear.unknown()).startsWith("Not computed: ink lighter than the water rises past the nozzle");
    }

    /// A cone whose half-width is a fifth of its way touches a face 29 mm off after 145 mm: z = d/α (ink.md's inverse,
    /// without its first radius). From behind the bottle nothing is covered.
    @Test
    void clearUntil_touch_isWhereTheHalfWidthHasGrownToTheFace() {
        Inked behind = Inked.of("ink: read, at: [0 mm, 50 mm, 298 mm]", "{clear_until: hero, time: 0.5 s}");
        assertThat(behind.margin()).isCloseTo(Inked.seconds(29 / 0.2) - 0.5, within(1e-4));
        assertThat(behind.standing()).startsWith("The plume touches hero after ");
        Inked aside = Inked.of("ink: read, at: [55 mm, 0 mm, 298 mm]", "{clear_until: hero, time: 0.5 s}");
        assertThat(aside.margin()).isCloseTo(Inked.seconds(34 / 0.2) - 0.5, within(1e-4));
    }

    /// Seen level from the height of its top, which no glass bends, the top is covered once the front is level with it.
    @Test
    void clearUntil_cover_isWhereTheFrontComesBeforeIt() {
        Inked before = Inked.of(Inked.AHEAD, "{clear_until: hero, time: 0.3 s}");
        assertThat(before.margin()).isCloseTo(Inked.seconds(70) - 0.3, within(1e-4));
        assertThat(before.standing()).startsWith("Ink comes before hero in the picture after 0.4 s");
        assertThat(before.caution()).isEqualTo("About 9 takes in 10 are clear until then.");
        Inked tight = Inked.of(Inked.AHEAD, "{clear_until: hero, time: 0.35 s}");
        assertThat(tight.margin()).isPositive();
        assertThat(tight.tight()).isPresent();
        Inked never = Inked.of("ink: read, at: [-200 mm, 100 mm, 298 mm]", "{clear_until: hero, time: 0.3 s}");
        assertThat(never.standing()).startsWith("No ink before hero until the front is on the floor after ");
        assertThat(never.margin()).isCloseTo(Inked.seconds(260) - 0.3, within(1e-6));
    }

    /// The shot is over 0.3 s after the release; its readings have the front there after 0.4 s.
    @Test
    void whatComesAfterTheShotsEnd_isToldToShowInNoFrame() {
        String late = "No frame shows it: the shot is over 0.3 s after the release.";
        String start = Inked.AHEAD.replace("start: 0.2 s", "start: 3.7 s");
        assertThat(Inked.of(start, "{ink_reaches: hero, after: 0.4 s}").caution())
                .endsWith(late);
        assertThat(Inked.of(start, "{veiled_by: hero, time: 2 s}").caution()).endsWith(late);
        assertThat(Inked.of(Inked.AHEAD, "{ink_reaches: hero, after: 0.4 s}").caution())
                .doesNotContain("No frame");
        Inked rises = Inked.changed(
                "thing: hero, start: 3.9 s",
                "{rises: hero, by: 60 mm, within: 1 s}",
                "{thing: flacon, at: [0 mm, 0 mm, 80 mm], lines: 2}",
                "{thing: cork, at: [0 mm, 0 mm, 80 mm]}");
        assertThat(rises.caution()).contains("No frame shows it: the shot is over 0.1 s after the release.");
    }

    /// 96 frames at 24 a second are 4 s.
    @ParameterizedTest
    @CsvSource({"ink_reaches, after", "clear_until, time", "veiled_by, time"})
    void aReleaseAfterTheShotsEnd_isUnknown(String word, String time) {
        String want = "{" + word + ": hero, " + time + ": 0.4 s}";
        assertThat(Inked.of(Inked.AHEAD.replace("start: 0.2 s", "start: 4 s"), want)
                        .unknown())
                .isEqualTo("The release is after the shot's end. It starts at 4 s on the table, where the shot is over"
                        + " after 4 s: let it go earlier, or give the shot more frames.");
        assertThat(Inked.of(Inked.AHEAD.replace("start: 0.2 s", "start: 3.9 s"), want)
                        .unknown())
                .isEqualTo("known");
        assertThat(Inked.changed(Inked.AHEAD, want, "frames: 96", "frames: 1").unknown())
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
                Inked.MIXED,
                "{ink_reaches: hero, part: top, after: 0.7 s, within: 0.3 s}",
                "mixed: {density: 1.05 g/ml}",
                one);
        // Inked.MIXED's mouth is at 258 mm, 10 mm under the surface; the top is 70 mm deep.
        assertThat(inked.margin()).isCloseTo(0.3, within(1e-6));
    }

    @Test
    void readingsAboveTheMouth_areMissed_andWideSpreadsAndFloorsDontBreak() {
        String above = "read: {front: [[0.2 s, 5 mm], [1 s, 60 mm]], tip: -10 mm}";
        assertThat(Inked.changed(
                                Inked.AHEAD,
                                "{ink_reaches: hero, after: 1 s}",
                                "read: {front: [[0.40 s, 70 mm], [1.90 s, 188 mm]], spread: 0.20 measured}",
                                above)
                        .unknown())
                .isNotEqualTo("known");
        Inked wide = Inked.of(Inked.MIXED.replace("10 ml", "10 ml ± 20 ml"), "{ink_reaches: hero, after: 1 s}");
        assertThat(wide.unknown()).isEqualTo("known");
        assertThat(wide.standing()).isNotEmpty();
        assertThat(Inked.of(Inked.AHEAD.replace("298 mm", "0 mm"), "{clear_until: hero, time: 1 s}")
                        .unknown())
                .isEqualTo("The nozzle's mouth is in or under the tank's floor.");
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
