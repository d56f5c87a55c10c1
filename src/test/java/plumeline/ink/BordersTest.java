package plumeline.ink;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Random;
import java.util.function.DoubleFunction;
import org.junit.jupiter.api.Test;

/// Where one law goes over into another nothing steps; elsewhere each stands alone.
final class BordersTest {
    private static final Coefficients USUAL = Coefficients.USUAL;
    private static final double STEP = 1e-4;

    /// A stream at 70 mm, a puff at 100 mm.
    private static final Release SQUIRT = squeeze(6, 0.3, 5, 0.3);

    private static Release squeeze(double millilitres, double reduced, double boreMillimetres, double seconds) {
        return Release.ofSqueeze(millilitres * 1e-6, reduced, boreMillimetres * 1e-3, seconds, 1e-6);
    }

    private static Prediction.Reached reached(Descent descent, double depth) {
        return (Prediction.Reached) Ink.predict(descent, depth);
    }

    private static Descent some(Random random) {
        Release release = squeeze(
                1 + 20 * random.nextDouble(),
                0.05 + random.nextDouble(),
                1 + 12 * random.nextDouble(),
                0.1 * Math.exp(4 * random.nextDouble()));
        return new Descent(release, random.nextBoolean() ? 0 : 0.08 * random.nextDouble() - 0.04);
    }

    /// A hand can't set a tenth of a millimetre, so that it moves nothing by more than 2 %: depth or nozzle.
    @Test
    void noStep_overDepthsAndNozzles() {
        Regime top = new Descent(SQUIRT, 0).regime(0.05);
        assertThat(top).isEqualTo(Regime.STREAM);
        assertThat(new Descent(SQUIRT, 0).regime(0.12)).isEqualTo(Regime.PUFF);
        assertNoStep(at -> reached(new Descent(SQUIRT, 0), 0.05 + at));
        assertNoStep(at -> reached(new Descent(SQUIRT, at - 0.12), 0.17));
        DoubleFunction<Prediction.Reached> taught =
                at -> (Prediction.Reached) Learnt.of(List.of()).predict(new Descent(SQUIRT, 0), 0.05 + at);
        assertNoStep(taught);
    }

    private static void assertNoStep(DoubleFunction<Prediction.Reached> at) {
        Prediction.Reached before = at.apply(0);
        for (int i = 1; i < 1000; i++) {
            Prediction.Reached now = at.apply(STEP * i);
            assertNear(now.seconds(), before.seconds());
            assertNear(now.radiusMetres(), before.radiusMetres());
            assertNear(now.dilution(), before.dilution());
            before = now;
        }
    }

    private static void assertNear(Estimate now, Estimate before) {
        assertThat(now.value() / before.value()).isCloseTo(1, within(0.02));
        assertThat(now.value()).isBetween(now.low(), now.high());
    }

    /// Whatever is let go, from water or air: the deeper the later, and a front at a time is its arrival turned round.
    @Test
    void deeperIsLater_andFrontsAreArrivalsTurnedRound() {
        Random random = new Random(5);
        int between = 0;
        for (int n = 0; n < 200; n++) {
            Descent descent = some(random);
            double before = 0;
            for (int i = 1; i <= 200; i++) {
                double depth = descent.startMetres() + 0.0015 * i;
                double seconds = descent.findSeconds(depth).orElseThrow();
                assertThat(seconds).isGreaterThan(before);
                if (!Borders.of(descent, depth).isAlone()) {
                    between++;
                    assertThat(descent.frontMetres(seconds)).isCloseTo(depth, within(1e-6));
                }
                before = seconds;
            }
            double depth = descent.startMetres() + 0.02 + 0.3 * random.nextDouble();
            double there = descent.findSeconds(depth).orElseThrow();
            assertThat(descent.frontMetres(there)).isCloseTo(depth, within(1e-6));
        }
        assertThat(between).isGreaterThan(2000);
    }

    /// The higher the nozzle stands under water, the later the front is at a place.
    @Test
    void higherNozzle_isLater() {
        double before = 0;
        for (int i = 0; i < 2000; i++) {
            double seconds =
                    new Descent(SQUIRT, -0.12 + 6e-5 * i).findSeconds(0.17).orElseThrow();
            assertThat(seconds).isGreaterThan(before);
            before = seconds;
        }
    }

    @Test
    void outsideTheBand_aLawStandsAlone() {
        Random random = new Random(6);
        int alone = 0;
        for (int n = 0; n < 2000; n++) {
            Descent descent = some(random);
            double depth = descent.startMetres() + 0.02 + 0.3 * random.nextDouble();
            Borders borders = Borders.of(descent, depth);
            Regime regime = borders.regime();
            double sum = 0;
            for (Regime one : Regime.values()) {
                sum += borders.weight(one);
            }
            assertThat(sum).isCloseTo(1, within(1e-12));
            boolean isFar = borders.smooth() > Borders.BAND && Math.abs(borders.longAsPuff()) > Borders.BAND;
            if (isFar) {
                alone++;
                assertThat(descent.findSeconds(depth)).isEqualTo(descent.findSeconds(depth, regime, USUAL));
                assertThat(descent.radiusMetres(depth)).isEqualTo(descent.radiusMetres(depth, regime, USUAL));
                assertThat(descent.dilution(depth)).isEqualTo(descent.dilution(depth, regime, USUAL));
            }
        }
        assertThat(alone).isGreaterThan(800);
    }

    /// At the border itself both laws weigh the same: the value is the root of their product.
    @Test
    void atTheBorder_bothWeighTheSame() {
        Borders border = new Borders(9, 0, 0);
        assertThat(border.weight(Regime.STREAM)).isEqualTo(0.5);
        assertThat(border.weight(Regime.PUFF)).isEqualTo(0.5);
        assertThat(new Borders(0, 0, 9).weight(Regime.LAMINAR)).isEqualTo(0.25);
        Descent descent = new Descent(SQUIRT, 0);
        double half = SQUIRT.seconds() * 2;
        double depth = descent.frontMetres(half, Regime.PUFF, USUAL);
        double puff = descent.findSeconds(depth, Regime.PUFF, USUAL).orElseThrow();
        double stream = descent.findSeconds(depth, Regime.STREAM, USUAL).orElseThrow();
        assertThat(descent.findSeconds(depth).orElseThrow()).isCloseTo(Math.sqrt(puff * stream), within(1e-6));
    }

    /// Light ink whose puff has turned already goes on as a stream without a step.
    @Test
    void lightInk_goesOnWhereItsPuffHasTurned() {
        Descent light = new Descent(squeeze(14.2, -0.39, 10.2, 0.48), -0.035);
        double before = 0;
        int steps = 0;
        for (double depth = 0.06; light.findSeconds(depth).isPresent(); depth += 1e-6) {
            double seconds = light.findSeconds(depth).orElseThrow();
            assertThat(seconds).isGreaterThan(before);
            assertThat(before == 0 ? 1 : seconds / before).isLessThan(1.02);
            before = seconds;
            steps++;
        }
        assertThat(steps).isGreaterThan(20_000);
    }
}
