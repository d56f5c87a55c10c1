package plumeline.plume;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import plumeline.ink.Learnt;

/// What several runs say of the next.
final class TimesTest {
    @Test
    void middle_countsRunsThatNeverCameAsLate() {
        assertThat(new Times(List.of(3.0, 1.0, 2.0), 3, 5).middle()).hasValue(2);
        assertThat(new Times(List.of(1.0, 2.0, 4.0, 3.0), 4, 5).middle()).hasValue(2.5);
        assertThat(new Times(List.of(1.0, 2.0, 3.0), 5, 5).middle()).hasValue(3);
        assertThat(new Times(List.of(1.0, 2.0), 5, 5).middle()).isEmpty();
        assertThat(new Times(List.of(1.0, 2.0), 4, 5).middle()).isEmpty();
        assertThat(new Times(List.of(), 5, 5).low()).isEmpty();
    }

    @Test
    void interval_neverNarrowerThanWhatTakesDifferBy() {
        Times same = new Times(List.of(1.0, 1.0, 1.0, 1.0, 1.0), 5, 5);
        assertThat(same.low().orElseThrow()).isLessThanOrEqualTo(1 / 1.2);
        assertThat(same.high().orElseThrow()).isGreaterThanOrEqualTo(1.2);
        List<Double> many = java.util.Collections.nCopies(50, 1.0);
        assertThat(new Times(many, 50, 5).low()).hasValue(1 / Learnt.TAKE_RATIO);
        assertThat(new Times(many, 50, 5).high()).hasValue(Learnt.TAKE_RATIO);
    }

    @Test
    void interval_hasNoLateEndWhereOneNeverCame() {
        Times some = new Times(List.of(1.0, 1.3), 3, 5);
        assertThat(some.low()).isPresent();
        assertThat(some.high()).isEmpty();
    }

    @Test
    void interval_holdsFourFurtherTakesOfFive() {
        long seed = 5;
        var random = new Random(seed);
        int held = 0;
        int all = 4000;
        for (int n = 0; n < all; n++) {
            List<Double> runs = new ArrayList<>();
            for (int run = 0; run < 5; run++) {
                runs.add(Math.exp(0.2 * random.nextGaussian()));
            }
            Times times = new Times(runs, 5, 100);
            double next = Math.exp(0.2 * random.nextGaussian());
            held += next >= times.low().orElseThrow() && next <= times.high().orElseThrow() ? 1 : 0;
        }
        assertThat(held / (double) all).as("seed " + seed).isEqualTo(0.8, within(0.03));
    }

    @Test
    void within_countsRuns() {
        Times times = new Times(List.of(0.5, 1.0, 1.5), 4, 5);
        assertThat(times.within(0.9, 1.1)).isEqualTo(1);
        assertThat(times.within(0, 2)).isEqualTo(3);
    }

    /// A length has the take-to-take difference too, however alike the runs are, counted from where it began.
    @Test
    void lengths_neverNarrowerThanAFifthOfWhatHasGrown() {
        for (int runs : new int[] {1, 2, 5, 50}) {
            Lengths same = new Lengths(java.util.Collections.nCopies(runs, 0.16), 0.04, 0.3);
            assertThat(same.middle()).hasValue(0.16);
            assertThat(same.low().orElseThrow()).as(runs + " runs").isLessThanOrEqualTo(0.04 + 0.12 / 1.2 + 1e-12);
            assertThat(same.high().orElseThrow()).as(runs + " runs").isGreaterThanOrEqualTo(0.04 + 0.12 * 1.2 - 1e-12);
        }
    }

    @Test
    void lengths_intervalHoldsFourFurtherTakesOfFive() {
        long seed = 6;
        var random = new Random(seed);
        int held = 0;
        int all = 4000;
        for (int n = 0; n < all; n++) {
            List<Double> runs = new ArrayList<>();
            for (int run = 0; run < 5; run++) {
                runs.add(0.02 + 0.1 * Math.exp(0.2 * random.nextGaussian()));
            }
            Lengths lengths = new Lengths(runs, 0.02, 1);
            double next = 0.02 + 0.1 * Math.exp(0.2 * random.nextGaussian());
            held += next >= lengths.low().orElseThrow()
                            && next <= lengths.high().orElseThrow()
                    ? 1
                    : 0;
        }
        assertThat(held / (double) all).as("seed " + seed).isEqualTo(0.8, within(0.03));
    }

    @Test
    void lengths_stayWithinTheirBounds() {
        Lengths depth = new Lengths(List.of(0.09, 0.12, 0.25), 0.05, 0.25);
        assertThat(depth.middle()).hasValue(0.12);
        assertThat(depth.low().orElseThrow()).isBetween(0.05, 0.12);
        assertThat(depth.high()).hasValue(0.25);
        // What has hardly begun reaches back to where it began, not before.
        Lengths begun = new Lengths(List.of(0.05, 0.05), 0.05, 0.26);
        assertThat(begun.low()).hasValue(0.05);
        assertThat(begun.high().orElseThrow()).isBetween(0.05, 0.053);
        assertThat(new Lengths(List.of(), 0, 1).middle()).isEmpty();
        assertThat(new Lengths(List.of(), 0, 1).low()).isEmpty();
        assertThat(new Lengths(List.of(), 0, 1).high()).isEmpty();
    }
}
