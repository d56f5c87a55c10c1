package plumeline.motion;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;

/// Every kind of run against stepping through it: its acceleration adds up to its speed, its speed to its place, and no
/// peak is higher than said.
final class RunsTest {
    private static final int STEPS = 200_000;
    private static final double FREE = Double.POSITIVE_INFINITY;

    private static List<Run> runs() {
        List<Run> runs = new ArrayList<>();
        for (Profile profile : Profile.values()) {
            runs.add(Travel.inThirds(-0.6, 8, profile));
            runs.add(Travel.within(0.6, 8, profile, 0.2));
            runs.add(Travel.within(0.6, 4, profile, Limits.of(FREE, 0.2, 0.4)));
            runs.add(Travel.within(0.6, 4, profile, Limits.of(FREE, FREE, 0.4)));
            runs.add(Travel.within(0.6, 4, profile, Limits.of(0.1, 0.1, 0.1)));
            runs.add(Travel.fastest(0.31, profile, Limits.of(0.08, 0.2, 0.9)));
        }
        runs.add(SevenSegments.find(10, 7.5, 2, Limits.of(10, 10, 30))
                .orElseThrow()
                .toRun());
        List<FreeKeys.Key> keys = List.of(
                new FreeKeys.Key(0.5, 0),
                new FreeKeys.Key(1, 0.3),
                new FreeKeys.Key(3, 0.2),
                new FreeKeys.Key(4.5, 0.2),
                new FreeKeys.Key(5, 0.7));
        for (SlopeRule rule : SlopeRule.values()) {
            for (FreeKeys.Ends ends : FreeKeys.Ends.values()) {
                runs.add(new FreeKeys(keys, rule, ends).toRun());
            }
        }
        return runs;
    }

    @Test
    void everyRun_addsUp() {
        for (Run run : runs()) {
            double from = run.firstSeconds();
            double h = (run.lastSeconds() - from) / STEPS;
            double place = run.at(from);
            double speed = run.speedAt(from);
            double fastest = Math.abs(speed);
            double hardest = 0;
            boolean jumps = run instanceof CubicRun || run.peakJerk() > 1e6;
            for (int i = 0; i < STEPS; i++) {
                double middle = from + (i + 0.5) * h;
                double acceleration = run.accelerationAt(middle);
                place += h * run.speedAt(middle);
                speed += h * acceleration;
                fastest = Math.max(fastest, Math.abs(run.speedAt(middle)));
                hardest = Math.max(hardest, Math.abs(acceleration));
                if (i % 1000 == 0) {
                    assertThat(run.at(middle + h / 2)).as("%s", run).isEqualTo(place, within(1e-7 * STEPS * h));
                    assertThat(run.speedAt(middle + h / 2))
                            .as("%s", run)
                            .isEqualTo(speed, within((jumps ? 3 * hardest * h : 0) + 1e-6 * run.peakSpeed()));
                }
            }
            assertThat(run.at(run.lastSeconds() + 9)).isEqualTo(place, within(1e-7));
            assertThat(fastest).isEqualTo(run.peakSpeed(), within(1e-4 * run.peakSpeed()));
            assertThat(hardest).as("%s", run).isEqualTo(run.peakAcceleration(), within(1e-3 * run.peakAcceleration()));
        }
    }

    @Test
    void peakJerk_isTheSteepestChangeOfAcceleration() {
        for (Run run : List.of(
                Travel.inThirds(0.6, 8, Profile.S_CURVE),
                Travel.inThirds(0.6, 8, Profile.SMOOTH),
                Travel.within(0.6, 4, Profile.S_CURVE, Limits.of(FREE, 0.2, 0.4)),
                SevenSegments.find(10, 7.5, 2, Limits.of(10, 10, 30))
                        .orElseThrow()
                        .toRun())) {
            double from = run.firstSeconds();
            double h = (run.lastSeconds() - from) / 20_000;
            double steepest = 0;
            for (int i = 1; i < 19_999; i++) {
                double t = from + i * h;
                steepest = Math.max(steepest, Math.abs(run.accelerationAt(t + h) - run.accelerationAt(t)) / h);
            }
            assertThat(steepest).isEqualTo(run.peakJerk(), within(1e-3 * run.peakJerk()));
        }
    }

    /// The least acceleration and jerk with which a move can be made are those of the fastest move in that very time.
    @Test
    void usage_isOneForTheFastestMove() {
        for (double jerk : new double[] {FREE, 900, 2000, 1e5}) {
            for (Profile profile : List.of(Profile.TRAPEZOID, Profile.S_CURVE)) {
                Limits limits = Limits.of(FREE, 400, jerk);
                for (double distance : new double[] {5, 40, 800}) {
                    double least = Travel.leastSeconds(distance, profile, limits);
                    assertThat(Usage.of(Travel.within(distance, least, profile, limits), limits)
                                    .worst())
                            .isEqualTo(1, within(1e-6));
                    assertThat(Usage.of(Travel.within(distance, least * 1.01, profile, limits), limits)
                                    .worst())
                            .isLessThan(1);
                    assertThat(Usage.of(Travel.within(distance, least * 0.99, profile, limits), limits)
                                    .worst())
                            .isGreaterThan(1);
                    assertThat(Travel.within(distance, least * 1.3, profile, limits)
                                    .peakAcceleration())
                            .isLessThanOrEqualTo(400 * (1 + 1e-9));
                }
            }
        }
    }

    @Test
    void usage_ofAnEvenMove_countsRunUpAndRunOut() {
        // Brief A, A1: an even 75 mm/s on a rail of 600 mm with 200 mm/s2 overruns it by its run-up.
        Limits limits = Limits.of(0.08, 0.2, FREE).withTravel(0.6);
        Travel even = Travel.inThirds(0.6, 8, Profile.EVEN);
        assertThat(Usage.way(even, limits)).isEqualTo(0.6 + 0.075 * 0.075 / 0.2, within(1e-12));
        assertThat(Usage.of(even, limits).travel()).isGreaterThan(1);
        assertThat(Usage.of(even, limits).speed()).isEqualTo(75.0 / 80, within(1e-12));
        assertThat(Usage.of(Travel.within(0.6, 8, Profile.TRAPEZOID, limits), limits)
                        .worst())
                .isEqualTo(1, within(1e-12));
        assertThat(RunUp.find(0.075, Limits.UNKNOWN)).isEmpty();
        assertThat(Usage.of(even, Limits.UNKNOWN).worst()).isZero();
    }

    /// Drawn speeds, limits and distances: it gets there, at the end's speed, within every limit, and runs even only at
    /// the top speed.
    @Test
    void sevenSegments_getThereWithinTheirLimits() {
        Random random = new Random(15);
        int found = 0;
        for (int i = 0; i < 2000; i++) {
            Limits limits =
                    Limits.of(0.1 + random.nextDouble(), 0.1 + 3 * random.nextDouble(), 0.1 + 30 * random.nextDouble());
            double start = limits.speed() * random.nextDouble();
            double end = limits.speed() * random.nextDouble();
            double distance = 2 * random.nextDouble();
            Optional<SevenSegments> segments = SevenSegments.find(distance, start, end, limits);
            if (segments.isPresent()) {
                checkWithin(segments.get(), distance, limits);
                found++;
            }
        }
        assertThat(found).isGreaterThan(1000).isLessThan(2000);
    }

    private static void checkWithin(SevenSegments segments, double distance, Limits limits) {
        CubicRun run = segments.toRun();
        double last = run.lastSeconds();
        assertThat(last).isEqualTo(segments.seconds(), within(1e-12 * last));
        assertThat(run.at(last)).isEqualTo(distance, within(1e-9));
        assertThat(run.speedAt(0)).isEqualTo(segments.startSpeed(), within(1e-9));
        assertThat(run.speedAt(last)).isEqualTo(segments.endSpeed(), within(1e-6));
        assertThat(run.peakSpeed()).isLessThanOrEqualTo(limits.speed() * (1 + 1e-9));
        assertThat(run.peakAcceleration()).isLessThanOrEqualTo(limits.acceleration() * (1 + 1e-6));
        assertThat(run.peakJerk()).isLessThanOrEqualTo(limits.jerk() * (1 + 1e-6));
        boolean isEven = segments.evenSeconds() > 1e-9;
        assertThat(!isEven || segments.peakSpeed() >= limits.speed() * (1 - 1e-9))
                .isTrue();
    }

    @Test
    void within_whatCantBe_isToldAndStillGetsThere() {
        Limits limits = Limits.of(FREE, 0.02, 0.01);
        Travel travel = Travel.within(0.6, 4, Profile.S_CURVE, limits);
        assertThat(travel.rampSeconds()).isEqualTo(2);
        assertThat(travel.peakJerk()).isEqualTo(32 * 0.6 / 64, within(1e-12));
        assertThat(Usage.of(travel, limits).jerk()).isEqualTo(30, within(1e-9));
        assertThat(travel.at(4)).isEqualTo(0.6);
    }
}
