package plumeline.ink;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import plumeline.tidy.Outside;

/// What is known before takes and after one, against published ranges and a trial's figures.
final class LearntOutsideTest {
    private static final Release RELEASE = new Release(1e-5, 0.5, 0.004, 0, 1e-6);
    private static final double EIGHTY = 1.2816;

    /// Strength over √B is 5.5, and 5.5 times e to ± 0.35 at least; ours leaves more room.
    @Test
    @Outside(
            source = "the project's page on learning from takes, section 2",
            place = "prior of ln S: N(ln(5.5 √B), 0.35²)",
            kind = "worked example",
            printedDigits = 2)
    void beforeTakes_strengthIsThatOfPublishedCoefficients() {
        Estimate strength = Learnt.of(List.of()).strengthMetres2PerSecond(RELEASE);
        double root = Math.sqrt(RELEASE.buoyancyMetres4PerSecond2());
        assertThat(Math.log(strength.value() / (5.5 * root))).isCloseTo(0, within(0.35 / 2));
        assertThat(Math.log(strength.high() / strength.value()) / EIGHTY).isBetween(0.35, 0.70);
    }

    @Test
    @Outside(
            source = "a trial solver's thermals over four seeds, as the project's page on ink reports them",
            place = "section 4: k 2.38 to 2.80, growth by visible half-width 0.14 to 0.27",
            kind = "measurement",
            printedDigits = 2)
    void beforeTakes_simulatedThermalsLieWithinTheInterval() {
        Learnt none = Learnt.of(List.of());
        Estimate strength = none.strengthMetres2PerSecond(RELEASE);
        double fourth = Math.pow(RELEASE.buoyancyMetres4PerSecond2(), 0.25);
        assertThat(Math.sqrt(strength.low()) / fourth).isLessThan(2.38);
        assertThat(Math.sqrt(strength.high()) / fourth).isGreaterThan(2.80);
        Estimate growth = none.growth(Regime.PUFF);
        assertThat(growth.value()).isBetween(0.14, 0.27);
        assertThat(growth.low()).isLessThan(0.16);
        assertThat(growth.high()).isGreaterThan(0.27);
    }

    @Test
    @Outside(
            source = "seven simulated takes, as the project's page on learning from takes reports them",
            place = "section 2: rms error 0.20 to 0.24 in ln t after one take",
            kind = "measurement",
            printedDigits = 2)
    void afterOneTake_theNextIsAsSureAsSimulatedOnesWere() {
        Descent descent = new Descent(RELEASE, 0);
        Puff puff = Puff.of(RELEASE, 0, Coefficients.USUAL);
        List<ReadTake.FrontReading> fronts = new ArrayList<>();
        for (double depth : new double[] {0.06, 0.10, 0.15}) {
            fronts.add(new ReadTake.FrontReading(puff.findSeconds(depth).orElseThrow(), 0.02, depth, 0.003));
        }
        Learnt learnt = Learnt.of(List.of(new ReadTake(descent, 0.02, fronts, List.of())));
        Prediction.Reached reached = (Prediction.Reached) learnt.predict(descent, 0.12);
        double deviation = Math.log(reached.seconds().high() / reached.seconds().value()) / EIGHTY;
        assertThat(deviation).isBetween(0.20, 0.24);
    }

    @Test
    @Outside(
            source = "the normal distribution's shares within one, two and three standard deviations, any table",
            place = "0.6827, 0.9545, 0.9973",
            kind = "standard's table",
            printedDigits = 4)
    void odds_areThoseOfTheNormalDistribution() {
        Estimate estimate = new Estimate(1, Math.exp(-1.2815515655), Math.exp(1.2815515655));
        double[] shares = {0.6827, 0.9545, 0.9973};
        for (int n = 1; n <= 3; n++) {
            assertThat(estimate.odds(Math.exp(-n), Math.exp(n))).isCloseTo(shares[n - 1], within(5e-5));
        }
    }
}
