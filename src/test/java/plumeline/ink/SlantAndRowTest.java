package plumeline.ink;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/// Ink that is pushed aside, and ink from a slot: limits, inversions, conservation, refusals.
final class SlantAndRowTest {
    private static final double NU = 1e-6;
    private static final Coefficients USUAL = Coefficients.USUAL;

    private static Descent tilted(double degrees, double reduced, double speed) {
        return new Descent(new Release(1e-5, reduced, 0.006, speed, NU), -0.01, Math.toRadians(degrees));
    }

    @ParameterizedTest
    @EnumSource(names = {"PUFF", "STREAM"})
    void withoutTilt_orWithoutPush_itGoesStraightDown(Regime regime) {
        Descent straight = tilted(0, 0.5, 0.4);
        Descent hardly = tilted(0.01, 0.5, 0.4);
        for (double depth : new double[] {0.03, 0.1, 0.25}) {
            double seconds = straight.findSeconds(depth, regime, USUAL).orElseThrow();
            assertThat(hardly.findSeconds(depth, regime, USUAL).orElseThrow())
                    .isCloseTo(seconds, within(1e-3 * seconds));
            assertThat(hardly.radiusMetres(depth, regime, USUAL))
                    .isCloseTo(straight.radiusMetres(depth, regime, USUAL), within(1e-7));
            assertThat(straight.asideMetres(depth, regime, USUAL)).isZero();
        }
        assertThat(tilted(60, 0.5, 0).findSeconds(0.1, Regime.PUFF, USUAL))
                .isEqualTo(tilted(0, 0.5, 0).findSeconds(0.1, Regime.PUFF, USUAL));
    }

    @ParameterizedTest
    @EnumSource(names = {"PUFF", "STREAM"})
    void withoutWeight_itGoesWhereItPoints(Regime regime) {
        Descent jet = tilted(40, 0, 1);
        double down = 0.08;
        assertThat(jet.asideMetres(0.01 + down, regime, USUAL))
                .isCloseTo(down * Math.tan(Math.toRadians(40)), within(1e-6));
        double way = down / Math.cos(Math.toRadians(40));
        double straight = tilted(0, 0, 1).findSeconds(0.01 + way, regime, USUAL).orElseThrow();
        assertThat(jet.findSeconds(0.01 + down, regime, USUAL).orElseThrow())
                .isCloseTo(straight, within(1e-3 * straight));
        assertThat(tilted(90, 0, 1).findSeconds(0.02, regime, USUAL)).isEmpty();
        assertThat(tilted(90, 0, 1).deepestMetres(regime, USUAL)).isEqualTo(0.01);
    }

    @ParameterizedTest
    @EnumSource(names = {"PUFF", "STREAM"})
    void front_isTheInverseOfArrival_andAsideGrowsWithTilt(Regime regime) {
        double before = 0;
        for (double degrees : new double[] {10, 30, 60, 90}) {
            Descent descent = tilted(degrees, 0.5, 0.4);
            double seconds = descent.findSeconds(0.1, regime, USUAL).orElseThrow();
            assertThat(descent.frontMetres(seconds, regime, USUAL)).isCloseTo(0.1, within(1e-7));
            double aside = descent.asideMetres(0.1, regime, USUAL);
            assertThat(aside).isGreaterThan(before);
            before = aside;
        }
    }

    /// The bent puff by Euler's small steps in time, which doesn't know its way's arc.
    @Test
    void bentPuff_keepsItsMomentum() {
        double radius = Math.cbrt(0.75 * 1e-5 / Math.PI);
        double x = 0;
        double z = 0;
        double t = 0;
        double dt = 2e-6;
        double tilt = Math.toRadians(50);
        while (z < 0.09) {
            double mass = 4 * Math.PI / 3 * radius * radius * radius;
            double across = 1e-5 * 0.4 * Math.sin(tilt) / mass;
            double down = (1e-5 * 0.4 * Math.cos(tilt) + 0.5e-5 * t) / mass;
            x += across * dt;
            z += down * dt;
            radius += 0.25 * Math.hypot(across, down) * dt;
            t += dt;
        }
        Descent descent = tilted(50, 0.5, 0.4);
        assertThat(descent.findSeconds(0.1, Regime.PUFF, USUAL).orElseThrow()).isCloseTo(t, within(2e-4 * t));
        assertThat(descent.asideMetres(0.1, Regime.PUFF, USUAL)).isCloseTo(x, within(2e-4 * x));
        assertThat(descent.radiusMetres(0.1, Regime.PUFF, USUAL)).isCloseTo(radius, within(2e-4 * radius));
    }

    @Test
    void lightInkPushedAside_turns() {
        Descent light = tilted(45, -0.1, 0.3);
        for (Regime regime : new Regime[] {Regime.PUFF, Regime.STREAM}) {
            double deepest = light.deepestMetres(regime, USUAL);
            assertThat(deepest).isBetween(0.01, tilted(0, -0.1, 0.3).deepestMetres(regime, USUAL));
            assertThat(light.findSeconds(deepest + 1e-3, regime, USUAL)).isEmpty();
        }
    }

    @Test
    void fromAbove_theAirTakesItAsideToo() {
        Descent above = new Descent(new Release(1e-5, 0.5, 0.006, 0.4, NU), 0.1, Math.toRadians(30));
        double down = 0.4 * Math.cos(Math.toRadians(30));
        double seconds = (Math.sqrt(down * down + 2 * 9.80665 * 0.1) - down) / 9.80665;
        assertThat(above.airSeconds()).isCloseTo(seconds, within(1e-12));
        assertThat(above.asideMetres(1e-9, Regime.PUFF, USUAL))
                .isCloseTo(0.4 * Math.sin(Math.toRadians(30)) * seconds, within(1e-6));
    }

    @Test
    void roll_keepsItsMomentum_andIsABallOfTheSameVolumeAtThreeQuarters() {
        RowPuff roll = (RowPuff) RowPuff.of(row(0.08, 0.3), 0.3, USUAL);
        double radius = roll.radiusMetres();
        assertThat(radius).isCloseTo(Math.sqrt(1e-5 / (Math.PI * 0.08)), within(1e-12));
        double z = 0;
        double t = 0;
        double dt = 2e-6;
        while (z < 0.1) {
            double mass = Math.PI * radius * radius * 0.08;
            double speed = (1e-5 * 0.3 + 0.5e-5 * t) / mass;
            z += speed * dt;
            radius += 0.25 * speed * dt;
            t += dt;
        }
        assertThat(roll.findSeconds(0.1).orElseThrow()).isCloseTo(t, within(2e-4 * t));
        double turning = (0.06 - roll.radiusMetres()) / 0.25;
        assertThat(roll.dilution(turning)).isCloseTo(4 * Math.PI / 3 * 0.06 * 0.06 * 0.06 / 1e-5, within(1e-6));
        for (double way : new double[] {0.01, turning - 1e-9, turning + 1e-9, 0.4}) {
            assertThat(roll.frontMetres(roll.findSeconds(way).orElseThrow())).isCloseTo(way, within(1e-9));
        }
        double step = roll.findSeconds(turning + 1e-6).orElseThrow()
                - roll.findSeconds(turning - 1e-6).orElseThrow();
        assertThat(step).isBetween(0.0, 1e-4);
        assertThat(roll.deepestMetres()).isInfinite();
    }

    private static Release row(double metres, double speed) {
        return new Release(1e-5, 0.5, 0.004, speed, NU, metres);
    }

    @Test
    void shortRow_isABall_andLightInkFromASlotTurns() {
        assertThat(RowPuff.of(row(0.015, 0), 0, USUAL)).isInstanceOf(Puff.class);
        Course light = RowPuff.of(row(0.08, 0.1).withReducedGravity(-0.2), 0.1, USUAL);
        assertThat(light.deepestMetres()).isBetween(0.01, 0.1);
        assertThat(light.findSeconds(light.deepestMetres() * 1.01)).isEmpty();
        assertThat(light.frontMetres(1e9)).isEqualTo(light.deepestMetres());
    }

    @Test
    void slotThatFlowsOn_isUnknown() {
        Descent slow = new Descent(row(0.08, 0).withSqueeze(5), -0.01);
        assertThat(Ink.predict(slow, 0.1)).isInstanceOfSatisfying(Prediction.Unknown.class, unknown -> {
            assertThat(unknown.limit()).isEqualTo(Prediction.Limit.ROW_SECONDS);
            assertThat(unknown.given()).isCloseTo(5, within(1e-9));
            Release faster = row(0.08, 0).withSqueeze(unknown.bound() * 0.5);
            assertThat(Ink.predict(slow.with(faster), 0.1)).isInstanceOf(Prediction.Reached.class);
        });
    }

    @Test
    void touch_countsTheWayAside() {
        Descent descent = tilted(30, 0.5, 0.4);
        double seconds = descent.findSeconds(0.1).orElseThrow();
        assertThat(Ink.aheadMetres(descent, seconds).value())
                .isCloseTo(
                        descent.radiusMetres(0.1)
                                + Ink.asideMetres(descent, 0.1).value(),
                        within(1e-6));
    }

    @Test
    void outOfRange_isRefused() {
        assertThatThrownBy(() -> tilted(91, 0.5, 0.4)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new Descent(row(0.08, 0.1), 0, 0.1)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> row(0.003, 0.1)).isInstanceOf(IllegalArgumentException.class);
    }
}
