package plumeline.ink;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import plumeline.ink.SyntheticTakes.Kind;
import plumeline.ink.SyntheticTakes.Truth;

/// Learning from takes: coverage and gain on synthetic takes, limits, what narrows what.
final class LearntTest {
    private static final int CREWS = 400;

    /// What became of next takes that were foretold.
    ///
    /// @param covered share within the interval of 80 %
    /// @param error median of |ln(foretold/average take)|
    /// @param errorBefore the same by the laws alone
    private record Told(double covered, double error, double errorBefore) {}

    /// Which crews, and what they hand in.
    private record Row(Kind kind, Truth truth, int takes, int readings, int widths, boolean isOther) {
        Row(Kind kind, Truth truth, int takes, int readings) {
            this(kind, truth, takes, readings, 0, false);
        }
    }

    private static Told tell(Row row) {
        Random random = new Random(2026);
        int covered = 0;
        List<Double> errors = new ArrayList<>();
        List<Double> before = new ArrayList<>();
        for (int i = 0; i < CREWS; i++) {
            var crew = new SyntheticTakes(random, row.kind, row.truth);
            Descent read = crew.descent();
            List<ReadTake> list = new ArrayList<>();
            for (int take = 0; take < row.takes; take++) {
                list.add(crew.take(read, row.readings, row.widths));
            }
            Descent next = row.isOther ? crew.other(read) : read;
            double depth = next.startMetres() + 0.05 + 0.12 * random.nextDouble();
            Estimate seconds = reached(Learnt.of(list).predict(next, depth)).seconds();
            double came = crew.nextTake(next, depth);
            covered += seconds.low() <= came && came <= seconds.high() ? 1 : 0;
            double average = crew.seconds(next, depth);
            errors.add(Math.abs(Math.log(seconds.value() / average)));
            before.add(Math.abs(
                    Math.log(reached(Ink.predict(next, depth)).seconds().value() / average)));
        }
        return new Told((double) covered / CREWS, median(errors), median(before));
    }

    private static Prediction.Reached reached(Prediction prediction) {
        return (Prediction.Reached) prediction;
    }

    private static double median(List<Double> values) {
        return values.stream().sorted().toList().get(values.size() / 2);
    }

    /// **Source:** the bars are the issue's: 80 % intervals hold 72 to 88 times in 100.
    @Test
    void intervalsOfEighty_holdSeventyTwoToEightyEightTimes() {
        for (Truth truth : Truth.values()) {
            for (Kind kind : Kind.values()) {
                for (int takes = 1; takes <= 3; takes++) {
                    // One reading can't tell a front that follows no law from one that does.
                    for (int readings = truth == Truth.POWER ? 2 : 1; readings <= 3; readings++) {
                        checkCovered(new Row(kind, truth, takes, readings));
                    }
                }
            }
        }
    }

    @Test
    void intervalsOfEighty_holdForAnotherRelease_andWithWidths() {
        for (Kind kind : new Kind[] {Kind.PUFF, Kind.STREAM}) {
            for (int takes = 1; takes <= 3; takes++) {
                for (int readings = 1; readings <= 2; readings++) {
                    checkCovered(new Row(kind, Truth.COEFFICIENTS, takes, readings, readings - 1, true));
                }
            }
        }
    }

    private static void checkCovered(Row row) {
        assertThat(tell(row).covered()).as(row.toString()).isBetween(0.72, 0.88);
    }

    /// **Source:** the bar is the issue's: after one lesson at most half of the error without. The strength is spread
    /// as in the project's page on learning from takes, section 2: ln S to ± 0.35.
    @Test
    void oneLesson_halvesTheErrorInArrival() {
        for (Kind kind : Kind.values()) {
            for (int readings = 2; readings <= 3; readings++) {
                checkHalved(new Row(kind, Truth.STRENGTH, 1, readings));
                checkHalved(new Row(kind, Truth.COEFFICIENTS, 1, readings));
            }
            checkHalved(new Row(kind, Truth.POWER, 1, 3));
        }
    }

    /// One take can't be told from the average take, nor its start from its pace by one reading: nobody could halve the
    /// error then. **Source:** the best guess of someone who knows all that is drawn from,
    /// [SyntheticTakes#bestSeconds].
    @Test
    void oneLesson_leavesLittleMoreThanCouldBeKnown() {
        for (Kind kind : Kind.values()) {
            for (int readings = 1; readings <= 3; readings++) {
                checkNearBest(kind, readings);
            }
        }
    }

    private static void checkNearBest(Kind kind, int readings) {
        Random random = new Random(2027);
        List<Double> errors = new ArrayList<>();
        List<Double> least = new ArrayList<>();
        for (int i = 0; i < CREWS; i++) {
            var crew = new SyntheticTakes(random, kind, Truth.STRENGTH);
            Descent descent = crew.descent();
            ReadTake take = crew.take(descent, readings, 0);
            double depth = descent.startMetres() + 0.05 + 0.12 * random.nextDouble();
            double average = crew.seconds(descent, depth);
            Estimate seconds =
                    reached(Learnt.of(List.of(take)).predict(descent, depth)).seconds();
            errors.add(Math.abs(Math.log(seconds.value() / average)));
            least.add(Math.abs(Math.log(crew.bestSeconds(take, depth) / average)));
        }
        assertThat(median(errors) / median(least))
                .as("%s, %d readings", kind, readings)
                .isLessThan(1.15);
    }

    private static void checkHalved(Row row) {
        Told told = tell(row);
        assertThat(told.error() / told.errorBefore()).as(row.toString()).isLessThan(0.5);
    }

    @Test
    void furtherTakes_lessenTheError() {
        for (Kind kind : Kind.values()) {
            assertThat(tell(new Row(kind, Truth.COEFFICIENTS, 3, 2)).error())
                    .as(kind.toString())
                    .isLessThan(tell(new Row(kind, Truth.COEFFICIENTS, 1, 2)).error());
        }
    }

    @Test
    void anotherRelease_isForetoldLessSurely() {
        var crew = new SyntheticTakes(new Random(4), Kind.PUFF, Truth.COEFFICIENTS);
        Descent read = crew.descent();
        Learnt learnt = Learnt.of(List.of(crew.take(read, 3, 1)));
        assertThat(ratio(learnt, heavier(read, 2))).isGreaterThan(1.01 * ratio(learnt, read));
        assertThat(ratio(learnt, heavier(read, 4))).isGreaterThan(1.03 * ratio(learnt, heavier(read, 2)));
    }

    private static Descent heavier(Descent from, double times) {
        Release one = from.release();
        return from.with(new Release(
                one.volumeMetres3(),
                times * one.reducedGravityMetresPerSecond2(),
                one.boreMetres(),
                one.speedMetresPerSecond(),
                one.viscosityMetres2PerSecond()));
    }

    private static double ratio(Learnt learnt, Descent descent) {
        Estimate seconds =
                reached(learnt.predict(descent, descent.startMetres() + 0.1)).seconds();
        return seconds.high() / seconds.low();
    }

    /// A take that is read without fault teaches all but how far the next one is from it.
    @Test
    void faultlessReadings_leaveWhatTakesDifferBy() {
        Descent descent = new Descent(new Release(1e-5, 0.5, 0.004, 0, 1e-6), 0);
        Puff puff = Puff.of(descent.release(), 0, Coefficients.USUAL);
        List<ReadTake.FrontReading> fronts = new ArrayList<>();
        for (double depth = 0.05; depth < 0.21; depth += 0.025) {
            fronts.add(new ReadTake.FrontReading(puff.findSeconds(depth).orElseThrow(), 1e-4, depth, 1e-5));
        }
        Learnt learnt = Learnt.of(List.of(new ReadTake(descent, 0, fronts, List.of())));
        Estimate seconds = reached(learnt.predict(descent, 0.1)).seconds();
        assertThat(Math.log(seconds.value() / puff.findSeconds(0.1).orElseThrow()))
                .isCloseTo(0, within(0.05));
        double two = Math.sqrt(2) * Math.log(learnt.takeRatio());
        assertThat(Math.log(seconds.high() / seconds.value())).isCloseTo(two, within(0.1 * two));
    }

    @Test
    void widths_decideTheGrowth_andFrontsThePace() {
        Descent descent = new Descent(new Release(1e-5, 0.5, 0.004, 0, 1e-6), 0);
        Puff wide = Puff.of(descent.release(), 0, Coefficients.USUAL.withPuffEntrainment(0.32));
        List<ReadTake.WidthReading> widths = new ArrayList<>();
        for (double depth = 0.08; depth < 0.2; depth += 0.03) {
            widths.add(new ReadTake.WidthReading(depth, wide.radiusMetres(depth), 0.001));
        }
        Learnt learnt = Learnt.of(List.of(new ReadTake(descent, 0, List.of(), widths)));
        Estimate growth = learnt.growth(Regime.PUFF);
        assertThat(growth.value()).isBetween(0.28, 0.34);
        assertThat(growth.low()).isLessThan(0.32);
        assertThat(growth.high()).isGreaterThan(0.32);
        assertThat(learnt.growth(Regime.STREAM).value())
                .isCloseTo(Learnt.of(List.of()).growth(Regime.STREAM).value(), within(1e-9));
    }

    /// An ink that is nothing like the published ones is believed after one take.
    @Test
    void takeFarFromTheLaws_isBelieved() {
        Descent descent = new Descent(Release.ofSqueeze(6e-6, 0.31, 0.006, 0.3, 1e-6), -0.01);
        double law =
                reached(Learnt.of(List.of()).predict(descent, 0.08)).seconds().value();
        for (double times : new double[] {0.25, 4}) {
            var front = new ReadTake.FrontReading(times * law, 0.01, 0.08, 0.003);
            Learnt learnt = Learnt.of(List.of(new ReadTake(descent, 0.02, List.of(front), List.of())));
            double after = reached(learnt.predict(descent, 0.08)).seconds().value();
            assertThat(Math.log(after / (times * law))).isCloseTo(0, within(0.35));
        }
    }

    @Test
    void takesThatDifferWidely_raiseTheirScatter() {
        Descent descent = new Descent(new Release(1e-5, 0.5, 0.004, 0, 1e-6), 0);
        List<ReadTake> alike = new ArrayList<>();
        List<ReadTake> apart = new ArrayList<>();
        for (int i = 0; i < 8; i++) {
            alike.add(new ReadTake(descent, 0.01, List.of(front(1.9)), List.of()));
            apart.add(new ReadTake(descent, 0.01, List.of(front(i % 2 == 0 ? 1.2 : 3)), List.of()));
        }
        double before = Math.log(Learnt.of(List.of()).takeRatio());
        assertThat(Math.log(Learnt.of(alike).takeRatio())).isLessThan(before);
        assertThat(Math.log(Learnt.of(apart).takeRatio())).isGreaterThan(1.3 * before);
    }

    private static ReadTake.FrontReading front(double seconds) {
        return new ReadTake.FrontReading(seconds, 0.01, 0.1, 0.002);
    }

    @Test
    void orderOfTakes_countsForNothing() {
        var crew = new SyntheticTakes(new Random(9), Kind.PUFF, Truth.COEFFICIENTS);
        Descent descent = crew.descent();
        ReadTake one = crew.take(descent, 3, 1);
        ReadTake two = crew.take(descent, 2, 0);
        Estimate there =
                reached(Learnt.of(List.of(one, two)).predict(descent, 0.12)).seconds();
        Estimate back =
                reached(Learnt.of(List.of(two, one)).predict(descent, 0.12)).seconds();
        assertThat(there.value()).isCloseTo(back.value(), within(1e-9));
        assertThat(there.high()).isCloseTo(back.high(), within(1e-9));
    }

    @Test
    void odds_areEightyWithinTheInterval_andNoneOfWhatNeverComes() {
        var crew = new SyntheticTakes(new Random(3), Kind.PUFF, Truth.COEFFICIENTS);
        Descent descent = crew.descent();
        Learnt learnt = Learnt.of(List.of(crew.take(descent, 2, 0)));
        Estimate seconds = reached(learnt.predict(descent, 0.1)).seconds();
        assertThat(learnt.odds(descent, 0.1, seconds.low(), seconds.high())).isCloseTo(0.8, within(1e-6));
        assertThat(learnt.odds(descent, 0.1, 0, 1e6)).isCloseTo(1, within(1e-6));
        Descent light = descent.with(new Release(1e-5, -0.5, 0.004, 0.1, 1e-6));
        assertThat(learnt.odds(light, 1, 0, 1e6)).isZero();
        assertThat(learnt.predict(light, 1)).isInstanceOf(Prediction.Never.class);
    }

    @Test
    void readingsThatNoLawReaches_teachNothing() {
        Descent light = new Descent(new Release(1e-5, -0.5, 0.004, 0.1, 1e-6), 0);
        Learnt learnt = Learnt.of(
                List.of(new ReadTake(light, 0.01, List.of(new ReadTake.FrontReading(1, 0.01, 2, 0.003)), List.of())));
        Descent heavy = new Descent(new Release(1e-5, 0.5, 0.004, 0, 1e-6), 0);
        assertThat(learnt.growth(Regime.PUFF)).isEqualTo(Learnt.of(List.of()).growth(Regime.PUFF));
        assertThat(learnt.predict(heavy, 0.1)).isInstanceOf(Prediction.Reached.class);
    }

    @Test
    void readingsThatAreNoInks_areSurvived() {
        Descent descent = new Descent(new Release(1e-5, 0.5, 0.004, 0, 1e-6), 0);
        for (double seconds : new double[] {1e-3, 1, 1e3}) {
            for (double deviation : new double[] {0, 1e-3, 100}) {
                var front = new ReadTake.FrontReading(seconds, deviation, 0.1, 0);
                var late = new ReadTake.FrontReading(0.9 * seconds, deviation, 0.3, 0);
                Learnt learnt = Learnt.of(List.of(new ReadTake(descent, 0.04, List.of(front, late), List.of())));
                Estimate arrival = reached(learnt.predict(descent, 0.2)).seconds();
                assertThat(arrival.low()).isPositive().isLessThan(arrival.value());
                assertThat(arrival.high()).isFinite().isGreaterThan(arrival.value());
            }
        }
    }
}
