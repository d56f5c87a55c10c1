package plumeline.motion;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import plumeline.tidy.Outside;

/// Fastest moves within limits, in millimetres where the source has them.
@Outside(
        source = "L. Biagiotti and C. Melchiorri, Trajectory Planning for Automatic Machines and Robots (2008),"
                + " from memory of its formulas; figures worked by hand from them",
        place = "3.2 trapezoidal, 3.4 double S",
        kind = "worked example",
        printedDigits = 7)
final class RampsOutsideTest {
    private static final double FREE = Double.POSITIVE_INFINITY;

    @ParameterizedTest
    @CsvSource({
        "600, 200, 400, 3.5, 200, 0.5",
        "600, 400, 200, 3.4641016, 346.4102, 1.7320508",
        "50, 200, 400, 0.7071068, 141.4214, 0.3535534",
        "1000, 250, 500, 4.5, 250, 0.5",
        "1000, 100, 50, 12, 100, 2"
    })
    void trapezoidAndTriangle(double distance, double v, double a, double time, double peak, double ramp) {
        Limits limits = Limits.of(v, a, FREE);
        Travel fastest = Travel.fastest(distance, Profile.TRAPEZOID, limits);
        assertThat(Travel.leastSeconds(distance, Profile.TRAPEZOID, limits)).isEqualTo(time, within(1e-6));
        assertThat(fastest.seconds()).isEqualTo(time, within(1e-6));
        assertThat(fastest.peakSpeed()).isEqualTo(peak, within(1e-3));
        assertThat(fastest.rampSeconds()).isEqualTo(ramp, within(1e-6));
        assertThat(fastest.peakAcceleration()).isEqualTo(a, within(1e-6 * a));
    }

    /// Cruise reached; acceleration just reached; not reached; cruise not reached; neither reached.
    @ParameterizedTest
    @CsvSource({
        "600, 200, 400, 2000, 0.2, 0.7, 3.7, 200, 400",
        "600, 200, 400, 800, 0.5, 1.0, 4.0, 200, 400",
        "600, 100, 400, 200, 0.7071068, 1.4142136, 7.4142136, 100, 141.42136",
        "100, 200, 400, 2000, 0.2, 0.609902, 1.219804, 163.96078, 400",
        "10, 200, 400, 2000, 0.1357209, 0.2714418, 0.5428835, 36.84032, 271.44176"
    })
    void sevenSegmentsAndTheirShortCases(
            double distance,
            double v,
            double a,
            double j,
            double jerkTime,
            double ramp,
            double time,
            double peak,
            double hardest) {
        Limits limits = Limits.of(v, a, j);
        Travel fastest = Travel.fastest(distance, Profile.S_CURVE, limits);
        assertThat(Travel.leastSeconds(distance, Profile.S_CURVE, limits)).isEqualTo(time, within(1e-5));
        assertThat(fastest.jerkSeconds()).isEqualTo(jerkTime, within(1e-6));
        assertThat(fastest.rampSeconds()).isEqualTo(ramp, within(1e-6));
        assertThat(fastest.peakSpeed()).isEqualTo(peak, within(1e-5 * peak));
        assertThat(fastest.peakAcceleration()).isEqualTo(hardest, within(1e-5 * hardest));
        assertThat(fastest.peakJerk()).isEqualTo(j, within(1e-6 * j));
        // The same with its ends free to run, here at rest.
        SevenSegments segments = SevenSegments.find(distance, 0, 0, limits).orElseThrow();
        assertThat(segments.seconds()).isEqualTo(time, within(1e-5));
        CubicRun run = segments.toRun();
        for (double share : List.of(0.07, 0.2, 0.5, 0.61, 0.93)) {
            assertThat(run.at(share * time)).isEqualTo(fastest.at(share * time), within(1e-4 * distance));
        }
    }

    @ParameterizedTest
    @CsvSource({
        // v0, top speed, speeding up, even, slowing down, peak
        "1, 5, 0.7333, 1.1433, 0.8333, 5",
        "1, 10, 1.0747, 0, 1.1747, 8.4136"
    })
    void sevenSegments_fromARunningStart(double start, double top, double up, double even, double down, double peak) {
        SevenSegments found =
                SevenSegments.find(10, start, 0, Limits.of(top, 10, 30)).orElseThrow();
        assertThat(found.up().seconds()).isEqualTo(up, within(5e-5));
        assertThat(found.evenSeconds()).isEqualTo(even, within(5e-5));
        assertThat(found.down().seconds()).isEqualTo(down, within(5e-5));
        assertThat(found.peakSpeed()).isEqualTo(peak, within(5e-5));
        assertThat(found.up().jerkSeconds()).isEqualTo(1.0 / 3, within(5e-5));
    }

    /// The book's own steps of a lower acceleration end in slowing down alone, 2.6667 s; the shortest run speeds up
    /// first.
    @Test
    void sevenSegments_fromAFastStart_takesNoLongerThanTheBook() {
        Limits limits = Limits.of(10, 10, 30);
        SevenSegments found = SevenSegments.find(10, 7.5, 0, limits).orElseThrow();
        assertThat(found.seconds()).isLessThan(2.6667);
        CubicRun run = found.toRun();
        assertThat(run.at(found.seconds())).isEqualTo(10, within(1e-9));
        assertThat(run.speedAt(0)).isEqualTo(7.5);
        assertThat(run.speedAt(found.seconds())).isEqualTo(0, within(1e-9));
        assertThat(run.peakAcceleration()).isLessThanOrEqualTo(10 * (1 + 1e-9));
        assertThat(run.peakSpeed()).isLessThanOrEqualTo(10 * (1 + 1e-9));
        assertThat(run.peakJerk()).isLessThanOrEqualTo(30 * (1 + 1e-9));
        assertThat(SevenSegments.find(1, 7.5, 0, limits)).isEmpty();
    }
}
