package plumeline.ink;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import plumeline.tidy.Outside;

/// One release before its take: readings, laws, bands and odds.
final class PlumeTest {
    private static final List<FrontFit.Reading> READ =
            List.of(new FrontFit.Reading(0.4, 0.07), new FrontFit.Reading(1.9, 0.188));
    private static final Plume.Width.Share FIFTH = new Plume.Width.Share(0.2, 1.2);

    private static Plume read(double startMetres) {
        return new Plume.Read(FrontFit.of(READ), startMetres, FIFTH);
    }

    private static Descent descent(double density, double millilitres) {
        return new Descent(new Release(millilitres * 1e-6, 9.80665 * (density - 1), 0.004, 0.8, 1e-6), -0.01);
    }

    private static Plume byLaw(Descent... off) {
        return new Plume.ByLaw(descent(1.05, 10), List.of(off), List.of(), new Plume.Width.ByLaw());
    }

    private static Estimate seconds(Plume plume, double depth) {
        assertThat(plume.arrival(depth)).isInstanceOf(Arrival.At.class);
        return ((Arrival.At) plume.arrival(depth)).seconds();
    }

    @Test
    @Outside(
            source = "common practice: two readings fix z = k·tⁿ (top 0.40 s at 70 mm, base 1.90 s at 188 mm)",
            place = "n 0.63, k 125; the front at 120 mm at 0.94 s",
            kind = "worked example",
            printedDigits = 2)
    void readings_fixTheFront() {
        assertThat(seconds(read(0), 0.07).value()).isCloseTo(0.40, within(1e-9));
        assertThat(seconds(read(0), 0.188).value()).isCloseTo(1.90, within(1e-9));
        assertThat(seconds(read(0), 0.12).value()).isCloseTo(0.94, within(0.005));
    }

    @Test
    void aLowerMouth_startsLower() {
        assertThat(seconds(read(0.03), 0.10).value()).isCloseTo(0.40, within(1e-9));
        assertThat(read(0.03).radiusMetres(0.13).value()).isCloseTo(0.02, within(1e-12));
    }

    @Test
    void band_isTheArrivalTurnedRound() {
        for (Plume plume : List.of(read(0), byLaw())) {
            Estimate there = seconds(plume, 0.12);
            assertThat(plume.frontMetres(there.value(), 0.3).value()).isCloseTo(0.12, within(1e-6));
            assertThat(plume.frontMetres(there.high(), 0.3).low()).isCloseTo(0.12, within(1e-6));
            assertThat(plume.frontMetres(there.low(), 0.3).high()).isCloseTo(0.12, within(1e-6));
            assertThat(plume.frontMetres(900, 0.3).value()).isCloseTo(0.3, within(1e-9));
        }
    }

    @Test
    void inputsThatMayBeOff_widenTheInterval_andReadingsDont() {
        Descent lighter = descent(1.03, 10);
        Descent heavier = descent(1.07, 10);
        Estimate sure = seconds(byLaw(), 0.2);
        Estimate unsure = seconds(byLaw(lighter, heavier), 0.2);
        assertThat(unsure.value()).isEqualTo(sure.value());
        assertThat(unsure.low()).isLessThan(sure.low());
        assertThat(unsure.high()).isGreaterThan(sure.high());
        List<FrontFit.Reading> one = List.of(new FrontFit.Reading(0.5, 0.1));
        Plume corrected = new Plume.ByLaw(descent(1.05, 10), List.of(lighter, heavier), one, new Plume.Width.ByLaw());
        assertThat(seconds(corrected, 0.1).value()).isCloseTo(0.5, within(1e-9));
        assertThat(seconds(corrected, 0.1).high()).isLessThan(0.7);
        List<FrontFit.Reading> aboveTheMouth = List.of(new FrontFit.Reading(0.5, 0.001));
        Plume unread =
                new Plume.ByLaw(descent(1.05, 10), List.of(lighter, heavier), aboveTheMouth, new Plume.Width.ByLaw());
        assertThat(seconds(unread, 0.2)).isEqualTo(unsure);
    }

    @Test
    void lightInk_neverComes_andIsSaidSo() {
        Plume light = new Plume.ByLaw(descent(0.9, 1), List.of(), List.of(), new Plume.Width.ByLaw());
        assertThat(light.arrival(0.28)).isInstanceOf(Arrival.Never.class);
        assertThat(light.frontMetres(5, 0.3).value()).isLessThan(0.28);
    }

    /// The middle 80 % of a normal spread end at 10 % and 90 %, half lies under its middle; one and two standard
    /// deviations bound 84.13 % and 97.72 % (any table).
    @Test
    void odds_areThoseOfANormalSpreadInLogarithms() {
        Estimate even = new Estimate(1, 1 / 1.5, 1.5);
        assertThat(even.oddsUnder(even.low())).isCloseTo(0.1, within(1e-6));
        assertThat(even.oddsUnder(1)).isCloseTo(0.5, within(1e-6));
        assertThat(even.oddsUnder(even.high())).isCloseTo(0.9, within(1e-6));
        assertThat(even.odds(even.low(), even.high())).isCloseTo(0.8, within(1e-6));
        double deviation = Math.log(1.5) / 1.2815515655446004;
        assertThat(even.oddsUnder(Math.exp(deviation))).isCloseTo(0.8413, within(5e-5));
        assertThat(even.oddsUnder(Math.exp(2 * deviation))).isCloseTo(0.9772, within(5e-5));
        assertThat(new Estimate(1, 0.9, 2).oddsUnder(2)).isCloseTo(0.9, within(1e-6));
        assertThat(new Estimate(3, 3, 3).oddsUnder(2.9)).isZero();
        assertThat(new Estimate(3, 3, 3).oddsUnder(3.1)).isEqualTo(1);
        assertThat(even.oddsUnder(-1)).isZero();
    }
}
