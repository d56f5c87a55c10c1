package plumeline.want;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import plumeline.ink.Estimate;
import plumeline.plan.When;
import plumeline.stage.Stage;

/// When ink veils a thing from the camera, by its law and by a simulation; the plan is [Inked].
final class VeiledByTest {
    @Test
    void veiledBy_isWhenTheFrontHasPassedTheSightLine_whereItIsWideEnough() {
        Inked top =
                Inked.changed(Inked.AHEAD, "{veiled_by: hero, part: top, time: 1 s}", "spread: 0.20", "spread: 0.40");
        // 28 mm of half-width before 21 mm: all of it, from level with the top on.
        assertThat(top.margin()).isGreaterThan(0);
        assertThat(top.standing()).startsWith("By its law the plume veils hero's top after 0.4 s");
        Inked narrow =
                Inked.changed(Inked.AHEAD, "{veiled_by: hero, part: top, time: 1 s}", "spread: 0.20", "spread: 0.10");
        assertThat(narrow.margin()).isNegative();
        assertThat(narrow.standing()).startsWith("The plume is too narrow before hero's top: it covers ");
        Inked behind = Inked.of("ink: read, at: [0 mm, 80 mm, 298 mm]", "{veiled_by: hero, time: 1 s}");
        assertThat(behind.lack()).contains("doesn't go down before hero");
        Inked soon =
                Inked.changed(Inked.AHEAD, "{veiled_by: hero, part: top, time: 0.3 s}", "spread: 0.20", "spread: 0.40");
        assertThat(soon.margin()).isCloseTo(0.3 - Inked.seconds(70), within(1e-4));
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
        Inked light = Inked.of(Inked.MIXED.replace("mixed", "light"), "{veiled_by: hero, part: base, time: 5 s}");
        assertThat(light.standing())
                .startsWith("light is lighter than the water: it turns about ")
                .contains("sight line to hero's base", "never veils it")
                .doesNotContain("600 s");
        assertThat(light.want((_, _, _) -> Optional.empty()).isMeasured(light.moments()))
                .isFalse();
        assertThat(light.margin()).isNegative();
        assertThat(light.caution()).contains("may come so deep");
        Inked dense = Inked.of(Inked.MIXED, "{veiled_by: hero, part: base, time: 5 s}");
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

    /// Seen level with the top, which is at 198 mm.
    @Test
    void veiledBy_aMouthUnderTheSightLine_fails_andSaysSo() {
        Inked below = Inked.of(Inked.AHEAD.replace("298 mm", "180 mm"), "{veiled_by: hero, part: top, time: 1 s}");
        assertThat(below.unknown()).isEqualTo("known");
        assertThat(below.margin()).isNegative();
        assertThat(below.standing())
                .isEqualTo("The nozzle's mouth is 18 mm under the camera's sight line to hero's top: no front passes"
                        + " it. Raise the nozzle.");
        Inked rising = Inked.of(
                Inked.MIXED.replace("mixed", "light").replace("258 mm", "180 mm"),
                "{veiled_by: hero, part: top, time: 1 s}");
        assertThat(rising.unknown()).startsWith("Not computed: ink lighter than the water rises");
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
        Inked inked = Inked.of(Inked.AHEAD, "{veiled_by: hero, part: middle, time: 1.2 s}");
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
                Inked.changed(Inked.AHEAD, "{veiled_by: hero, part: top, time: 1.2 s}", "spread: 0.20", "spread: 0.10");
        Want seen = narrow.want(new Simulated(1));
        double[] written = seen.parts(narrow.moments());
        assertThat(seen.margin(written)).isCloseTo(0.3, within(1e-9));
        assertThat(written[1]).isZero();
        assertThat(seen.parts(moved(narrow, "release.x", 0.015))[1]).isNegative();
        double[] under = seen.parts(moved(narrow, "release.z", -0.050));
        assertThat(under[0]).isCloseTo(1.2 - 0.9 * Inked.seconds(50) / Inked.seconds(70), within(0.02));
    }

    @Test
    void veiledBy_aSimulation_decidesWhereOneWasRun() {
        Inked inked = Inked.of(Inked.AHEAD, "{veiled_by: hero, part: middle, time: 1.2 s}");
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
        String free = Inked.AHEAD.replace("at: [0 mm, -70 mm", "at: [0 mm, free between -80 mm and -60 mm");
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
}
