package plumeline.ink;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import plumeline.ink.FrontFit.Reading;

/// Inversions, limits, regimes, ranges and refusals of the laws of ink.
final class InkTest {
    private static final double NU = 1e-6;
    private static final Coefficients USUAL = Coefficients.USUAL;

    private static Release squeeze(double millilitres, double reduced, double boreMillimetres, double seconds) {
        return Release.ofSqueeze(millilitres * 1e-6, reduced, boreMillimetres * 1e-3, seconds, NU);
    }

    @Test
    void front_isTheInverseOfArrival() {
        int compared = 0;
        for (double reduced : new double[] {-0.2, 0, 0.05, 0.5, 1}) {
            for (double speed : new double[] {0, 0.1, 2}) {
                Release release = new Release(1e-5, reduced, 0.004, speed, NU);
                Puff puff = Puff.of(release, speed, USUAL);
                for (double way : new double[] {0.001, 0.03, 0.2}) {
                    var seconds = puff.findSeconds(way);
                    if (seconds.isPresent()) {
                        assertThat(puff.frontMetres(seconds.getAsDouble())).isCloseTo(way, within(1e-9));
                        compared++;
                    }
                    if (speed > 0) {
                        Stream stream = Stream.of(release, speed, USUAL);
                        var later = stream.findSeconds(way);
                        if (later.isPresent()) {
                            assertThat(stream.frontMetres(later.getAsDouble())).isCloseTo(way, within(1e-9));
                            compared++;
                        }
                    }
                }
            }
        }
        assertThat(compared).isGreaterThan(50);
        LaminarThread thread = LaminarThread.of(squeeze(1, 0.3, 2, 10));
        assertThat(thread.frontMetres(thread.findSeconds(0.1).orElseThrow())).isCloseTo(0.1, within(1e-12));
    }

    @Test
    void stream_withoutPush_isAPlume_andWithoutWeightAJet() {
        Stream plume = new Stream(2.5e-6, 0, 5e-6, 0.004, 0.13, 0.6);
        assertThat(plume.frontMetres(plume.findSeconds(0.1).orElseThrow())).isCloseTo(0.1, within(1e-12));
        assertThat(plume.findSeconds(0.2).orElseThrow() / plume.findSeconds(0.1).orElseThrow())
                .isCloseTo(Math.pow(2, 4.0 / 3), within(1e-9));
        Stream jet = new Stream(0, 2e-6, 5e-6, 0.004, 0.13, 0.6);
        assertThat(jet.findSeconds(0.2).orElseThrow() / jet.findSeconds(0.1).orElseThrow())
                .isCloseTo(4, within(0.1));
        assertThat(jet.turnoverMetres()).isInfinite();
        assertThat(jet.deepestMetres()).isInfinite();
    }

    @Test
    void push_makesEveryFrontSooner_andNeverSlower() {
        double before = Double.POSITIVE_INFINITY;
        for (double push : new double[] {0, 1e-8, 1e-7, 1e-6, 1e-5}) {
            double seconds = new Stream(2.5e-6, push, 5e-6, 0.004, 0.13, 0.6)
                    .findSeconds(0.1)
                    .orElseThrow();
            assertThat(seconds).isLessThanOrEqualTo(before);
            before = seconds;
        }
        assertThat(before).isLessThan(1);
    }

    /// A jet's front is never faster than the ink out of the nozzle.
    @Test
    void stream_doesntOutrunItsNozzle() {
        Release release = squeeze(10, 0.5, 20, 0.1);
        Stream stream = Stream.of(release, release.speedMetresPerSecond(), USUAL);
        assertThat(stream.findSeconds(0.03).orElseThrow())
                .isGreaterThanOrEqualTo(0.03 / release.speedMetresPerSecond() * 0.95);
        assertThat(stream.frontMetresPerSecond(0.02)).isLessThanOrEqualTo(release.speedMetresPerSecond());
    }

    /// A drop's height takes next to nothing of the push, two centimetres as much as any.
    @Test
    void surface_takesPushByDegrees() {
        Release release = squeeze(10, 0.5, 6, 0.1);
        double under =
                new Descent(release, 0).findSeconds(0.07, Regime.PUFF, USUAL).orElseThrow();
        double hardly =
                new Descent(release, 1e-4).findSeconds(0.07, Regime.PUFF, USUAL).orElseThrow();
        assertThat(hardly).isCloseTo(under, within(0.02 * under));
    }

    @Test
    void lightInk_turns() {
        Release release = squeeze(5, -0.1, 4, 0.5);
        Puff puff = Puff.of(release, release.speedMetresPerSecond(), USUAL);
        double deepest = puff.frontMetres(1e9);
        assertThat(puff.findSeconds(deepest - 1e-6)).isPresent();
        assertThat(puff.findSeconds(deepest + 1e-6)).isEmpty();
        Stream stream = Stream.of(release, release.speedMetresPerSecond(), USUAL);
        assertThat(stream.deepestMetres()).isCloseTo(1.85 * release.jetMetres(), within(1e-12));
        assertThat(stream.findSeconds(stream.deepestMetres() * 1.01)).isEmpty();
        assertThat(stream.frontMetres(1e9)).isEqualTo(stream.deepestMetres());
        assertThat(Ink.predict(new Descent(release, -0.01), 1)).isInstanceOf(Prediction.Never.class);
        assertThat(new Puff(0, 0, 0.01, 0.25, 0).findSeconds(0.1)).isEmpty();
        assertThat(new Descent(new Release(1e-5, 0, 0.01, 0, NU), -0.01).deepestMetres(Regime.PUFF, USUAL))
                .isEqualTo(0.01);
    }

    /// How deep light ink comes is as unsure as its push: at the usual depth half of the takes come, no share steps.
    @Test
    void lightInk_turnsSomewhereBetween_andSharesFollow() {
        Descent above = new Descent(squeeze(200, -0.3, 15, 5), 0.13);
        Estimate deepest = Ink.deepestMetres(above, Regime.STREAM);
        assertThat(deepest.low()).isLessThan(0.75 * deepest.value());
        assertThat(deepest.high()).isGreaterThan(1.3 * deepest.value());
        assertThat(Ink.comingShare(above, deepest.value())).isCloseTo(0.5, within(1e-6));
        assertThat(Ink.comingShare(above, deepest.low())).isCloseTo(0.9, within(1e-6));
        assertThat(Ink.comingShare(above, deepest.high())).isCloseTo(0.1, within(1e-6));
        assertThat(Ink.comingShare(new Descent(squeeze(20, 0.3, 15, 1), 0.13), 1))
                .isEqualTo(1);
        Descent still = new Descent(new Release(1e-5, -0.3, 0.01, 0, NU), -0.01);
        assertThat(Ink.comingShare(still, 0.02)).isZero();
    }

    @Test
    void regime_goesByReynoldsNumberAndByReleaseAgainstArrival() {
        // Reynolds number 3183, flows for longer than half of the puff's time.
        assertThat(new Descent(squeeze(10, 0.5, 2, 2), 0).regime(0.1)).isEqualTo(Regime.STREAM);
        assertThat(new Descent(squeeze(10, 0.5, 10, 0.1), 0).regime(0.1)).isEqualTo(Regime.PUFF);
        assertThat(new Descent(new Release(1e-5, 0.5, 0.004, 0, NU), 0).regime(0.1))
                .isEqualTo(Regime.PUFF);
        assertThat(new Descent(squeeze(2, 0.3, 2, 12), -0.01).regime(0.1)).isEqualTo(Regime.LAMINAR);
        // The same from above the surface, or so deep that the plume is turbulent.
        assertThat(new Descent(squeeze(2, 0.3, 2, 12), 0.01).regime(0.1)).isEqualTo(Regime.STREAM);
        assertThat(new Descent(squeeze(10, 0.5, 8, 4), -0.01).regime(0.11)).isEqualTo(Regime.STREAM);
        // Both sides of half the puff's time.
        double half = new Descent(new Release(1e-5, 0.5, 0.05, 0, NU), 0)
                        .findSeconds(0.1, Regime.PUFF, USUAL)
                        .orElseThrow()
                / 2;
        assertThat(new Descent(squeeze(10, 0.5, 50, half * 0.97), 0).regime(0.1))
                .isEqualTo(Regime.PUFF);
        assertThat(new Descent(squeeze(10, 0.5, 50, half * 1.03), 0).regime(0.1))
                .isNotEqualTo(Regime.PUFF);
    }

    /// Where one regime ends and the next begins, intervals go on without a step: each covers what the other says.
    @Test
    void atABorder_intervalsGoOn() {
        int borders = 0;
        for (double bore : new double[] {3, 6, 12}) {
            Prediction.Reached before = null;
            for (double time = 0.05; time < 30; time *= 1.002) {
                if (!(Ink.predict(new Descent(squeeze(8, 0.5, bore, time), -0.02), 0.11)
                        instanceof Prediction.Reached now)) {
                    continue;
                }
                if (before != null && before.regime() != now.regime()) {
                    borders++;
                    assertGoOn(before.seconds(), now.seconds());
                    assertGoOn(before.radiusMetres(), now.radiusMetres());
                    assertGoOn(before.dilution(), now.dilution());
                }
                before = now;
            }
        }
        assertThat(borders).isEqualTo(5);
    }

    private static void assertGoOn(Estimate one, Estimate next) {
        assertThat(next.low() / one.low()).isCloseTo(1, within(0.02));
        assertThat(next.high() / one.high()).isCloseTo(1, within(0.02));
    }

    /// Far from every border a law stands alone; half-way to one factor of two it counts by a third.
    @Test
    void farFromABorder_noOtherRegimeCounts() {
        Release release = squeeze(10, 0.5, 10, 0.02);
        assertThat(Borders.of(new Descent(release, 0), 0.1).share(Regime.STREAM, Regime.PUFF))
                .isZero();
        Borders near = new Borders(9, 0, -0.5);
        assertThat(near.regime()).isEqualTo(Regime.PUFF);
        assertThat(near.share(Regime.STREAM, Regime.PUFF)).isCloseTo(1.0 / 3, within(1e-12));
        assertThat(new Borders(9, 0, 0).share(Regime.STREAM, Regime.PUFF)).isEqualTo(1);
    }

    /// A hand can't set a thousandth of a millimetre: over the surface, and into a ring, by degrees.
    @Test
    void surfaceAndRing_makeNoStep() {
        Release thread = squeeze(1, 1.25, 4.8, 2.1);
        Prediction.Reached at = (Prediction.Reached) Ink.predict(new Descent(thread, 0), 0.055);
        Prediction.Reached over = (Prediction.Reached) Ink.predict(new Descent(thread, 1e-6), 0.055);
        assertThat(at.regime()).isEqualTo(Regime.LAMINAR);
        assertThat(over.seconds().value() / at.seconds().value()).isCloseTo(1, within(0.01));
        assertGoOn(at.seconds(), over.seconds());
        assertThat(new Descent(thread, 0.02).regime(0.055)).isEqualTo(Regime.STREAM);
        double before = Double.NaN;
        for (double bore = 5; bore < 12; bore *= 1.005) {
            Descent slug = new Descent(squeeze(1.2, 0.98, bore, 0.14), -0.02);
            Prediction.Reached now = (Prediction.Reached) Ink.predict(slug, 0.0724);
            double low = now.dilution().low();
            assertThat(Double.isNaN(before) ? 1 : low / before).isCloseTo(1, within(0.08));
            before = low;
        }
    }

    /// The nearer to where it turns, the later it may come: the interval never shrinks toward that.
    @Test
    void lightInk_nearlyTurning_isNoSurer() {
        double before = 0;
        for (double bore = 3; bore < 4.2; bore += 0.01) {
            Descent descent = new Descent(squeeze(19.55, -0.48, bore, 1.475542), -0.01);
            if (Ink.predict(descent, 0.1466) instanceof Prediction.Reached reached) {
                double high = reached.seconds().high();
                assertThat(high).isGreaterThan(0.97 * before);
                before = high;
            }
        }
        assertThat(before).isGreaterThan(1.8);
    }

    /// Readings that grow as no front does, or that the law says can't be, are told and not followed.
    @Test
    void readingsOfNoFront_areUnknown() {
        Descent descent = new Descent(squeeze(10, 0.5, 6, 0.3), -0.01);
        Prediction law = Ink.predict(descent, 0.09);
        assertLimit(
                Arrival.of(law, descent, List.of(new Reading(0.4, 0.06), new Reading(40, 0.065)), 0.09),
                Prediction.Limit.EXPONENT);
        assertLimit(
                Arrival.of(law, descent, List.of(new Reading(0.4, 0.06), new Reading(0.45, 0.15)), 0.09),
                Prediction.Limit.EXPONENT);
        assertThat(Arrival.of(law, descent, List.of(new Reading(0.4, 0.07), new Reading(1.9, 0.188)), 0.09))
                .isInstanceOf(Arrival.At.class);
        Descent light = new Descent(new Release(1e-5, -0.47, 0.006, 0.1, NU), -0.01);
        assertLimit(
                Arrival.of(Ink.predict(light, 0.09), light, List.of(new Reading(0.4, 0.06)), 0.09),
                Prediction.Limit.READING);
    }

    private static void assertLimit(Arrival arrival, Prediction.Limit limit) {
        assertThat(arrival)
                .isInstanceOfSatisfying(
                        Arrival.Unknown.class,
                        unknown -> assertThat(unknown.reason().limit()).isEqualTo(limit));
    }

    /// Turner's (1962) starting plumes have caps of 0.18 to 0.25 of their way (from memory): within a stream's
    /// interval, whose value is the even stream's 0.156.
    @Test
    void streamsHead_mayBeWiderThanTheStream() {
        Release release = squeeze(15, 0.5, 3, 4);
        Prediction.Reached reached = (Prediction.Reached) Ink.predict(new Descent(release, 0), 0.12);
        assertThat(reached.regime()).isEqualTo(Regime.STREAM);
        assertThat(reached.radiusMetres().value()).isCloseTo(0.0015 + 0.156 * 0.12, within(1e-9));
        assertThat(reached.radiusMetres().high()).isGreaterThan(0.25 * 0.12);
        Estimate ahead =
                Ink.aheadMetres(new Descent(release, 0), reached.seconds().value());
        assertThat(ahead.high()).isGreaterThan(0.25 * 0.12);
    }

    /// A short thick slug goes into one ring that hardly mixes: our own flow solver brings it in about half of the
    /// law's time.
    @Test
    void shortThickSlug_mayComeInHalfTheTime() {
        Prediction.Reached thick =
                (Prediction.Reached) Ink.predict(new Descent(squeeze(10, 0.5, 20, 0.3), -0.01), 0.09);
        Prediction.Reached atOnce = (Prediction.Reached)
                Ink.predict(new Descent(squeeze(10, 0.5, 20, 0.3).withSpeed(0), -0.01), 0.09);
        assertThat(thick.seconds().low() / thick.seconds().value()).isLessThan(0.5);
        assertThat(atOnce.seconds().low() / atOnce.seconds().value()).isBetween(0.55, 0.75);
    }

    @Test
    void laterAndDeeper_goTogether() {
        Descent descent = new Descent(squeeze(10, 0.5, 4, 2), -0.02);
        double before = 0;
        for (double depth = 0.03; depth < 0.1; depth += 0.01) {
            double seconds = descent.findSeconds(depth, Regime.STREAM, USUAL).orElseThrow();
            assertThat(seconds).isGreaterThan(before);
            assertThat(descent.frontMetres(seconds, Regime.STREAM, USUAL)).isCloseTo(depth, within(1e-9));
            before = seconds;
        }
    }

    @Test
    void fromAboveTheSurface_fallsAndLosesPush() {
        Release release = squeeze(10, 0.5, 4, 0.5);
        Descent above = new Descent(release, 0.1);
        double speed = release.speedMetresPerSecond();
        double lands = Math.sqrt(speed * speed + 2 * 9.80665 * 0.1);
        assertThat(above.airSeconds()).isCloseTo((lands - speed) / 9.80665, within(1e-12));
        assertThat(above.pushMetresPerSecond(USUAL)).isCloseTo(lands / 2, within(1e-12));
        assertThat(new Descent(release, 0).pushMetresPerSecond(USUAL)).isEqualTo(speed);
        assertThat(above.startMetres()).isZero();
        assertThat(above.frontMetres(above.airSeconds() / 2, Regime.PUFF, USUAL))
                .isZero();
        assertThat(Ink.predict(new Descent(release, 0.16), 0.1))
                .isEqualTo(new Prediction.Unknown(
                        new Descent(release, 0.16).regime(0.1), Prediction.Limit.HEIGHT, 0.16, 0.15));
    }

    @Test
    void tooLittleInk_isUnknown_andALittleIsLessSure() {
        Release drop = new Release(1e-8, 0.1, 0.001, 0, NU);
        assertThat(Ink.predict(new Descent(drop, 0), 0.1)).isInstanceOfSatisfying(Prediction.Unknown.class, unknown -> {
            assertThat(unknown.limit()).isEqualTo(Prediction.Limit.PUFF_REYNOLDS);
            assertThat(unknown.given()).isCloseTo(Math.sqrt(1e-9) / NU, within(1e-9));
        });
        assertThat(width(new Release(2e-6, 0.1, 0.05, 0, NU)))
                .isGreaterThan(1.1 * width(new Release(4.1e-6, 0.1, 0.05, 0, NU)));
    }

    private static double width(Release release) {
        return Ink.predict(new Descent(release, 0), 0.1) instanceof Prediction.Reached reached
                ? reached.seconds().high() / reached.seconds().low()
                : 0;
    }

    @Test
    void touch_isTheFrontsHalfWidthThen() {
        Descent descent = new Descent(new Release(1e-5, 0.5, 0.1, 0, NU), 0);
        double seconds = descent.findSeconds(0.16, Regime.PUFF, USUAL).orElseThrow();
        Estimate ahead = Ink.aheadMetres(descent, seconds);
        // d = r0 + α z: about 5 cm for 10 ml and 16 cm.
        assertThat(ahead.value()).isCloseTo(0.013365 + 0.25 * 0.16, within(1e-6));
        assertThat(ahead.low()).isLessThan(ahead.value());
        assertThat(Ink.frontMetres(descent, seconds).value()).isCloseTo(0.16, within(1e-9));
    }

    @Test
    void reading_movesTheTimeAndNarrowsIt() {
        Descent descent = new Descent(squeeze(10, 0.5, 4, 2), 0);
        Prediction.Reached law = (Prediction.Reached) Ink.predict(descent, 0.1);
        Estimate corrected = Ink.findCorrected(
                        descent, new Reading(law.seconds().value() / 2, 0.1), 0.1)
                .orElseThrow();
        assertThat(corrected.value()).isCloseTo(law.seconds().value() / 2, within(1e-9));
        assertThat(corrected.high() / corrected.low())
                .isLessThan(law.seconds().high() / law.seconds().low());
        Estimate deeper = Ink.findCorrected(descent, new Reading(1, 0.1), 0.2).orElseThrow();
        assertThat(deeper.high() / deeper.value()).isGreaterThan(corrected.high() / corrected.value());
    }

    @Test
    void clarity_countsTakesThatBeginClear_andChangesJustEnough() {
        // Absorbance 0.01 a take; 95 % is 0.02228: takes 1, 2, 3 begin with 0, 0.01, 0.02.
        Clarity clarity = new Clarity(1000, 0.1, 0.1);
        assertThat(clarity.takes(1e-5, 0.95)).isEqualTo(3);
        assertThat(clarity.takes(1e-5, Math.pow(10, -0.02))).isEqualTo(3);
        assertThat(clarity.takes(1e-3, 0.95)).isEqualTo(1);
        double share = clarity.changeShare(1e-5, 0.95);
        double ink = 0;
        for (int take = 0; take < 500; take++) {
            ink = (ink + 1e-5) * (1 - share);
            assertThat(clarity.clearShare(ink)).isGreaterThan(0.95 - 1e-9);
        }
        assertThat(clarity.clearShare(ink)).isCloseTo(0.95, within(1e-6));
        assertThat(Clarity.strengthPerMetre(clarity.clearShare(1e-5), 0.1, 1e-4))
                .isCloseTo(1000, within(1e-6));
    }

    @Test
    void outsideTheRanges_isRefused() {
        assertThatThrownBy(() -> new Release(0, 0.5, 0.004, 1, NU)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new Release(1e-5, Double.NaN, 0.004, 1, NU))
                .isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new Puff(1, -1, 0.01, 0.25, 0)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new Stream(1, 1, 0, 0.01, 0.1, 0.6)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new LaminarThread(-1, 1, NU)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new Clarity(1, 0, 1)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new Reading(0, 1)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> Release.ofSqueeze(1e-5, 0.5, 0.004, 0, NU))
                .isInstanceOf(IllegalArgumentException.class);
    }
}
