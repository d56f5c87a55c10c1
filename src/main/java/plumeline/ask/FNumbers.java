package plumeline.ask;

import java.util.Optional;

/// The f-numbers engraved on lenses, in thirds of a stop.
///
/// **Source:** the usual rounded series; common practice.
final class FNumbers {
    private static final double[] ENGRAVED = {
        1, 1.1, 1.2, 1.4, 1.6, 1.8, 2, 2.2, 2.5, 2.8, 3.2, 3.5, 4, 4.5, 5, 5.6, 6.3, 7.1, 8, 9, 10, 11, 13, 14, 16, 18,
        20, 22, 25, 29, 32
    };

    private FNumbers() {}

    /// An engraved f-number and the one it stands for: the series is 2^(n/6), so an engraved 11 is 11.31.
    record Stop(double engraved, double exact) {
        /// The smaller of both: as little as may be stopped down.
        double least() {
            return Math.min(engraved, exact);
        }

        /// The larger of both: as much as may be stopped down.
        double most() {
            return Math.max(engraved, exact);
        }
    }

    /// The largest engraved f-number that, taken either way, is no larger than asked; none below f/1.
    static Optional<Stop> findAtMost(double fNumber) {
        for (int i = ENGRAVED.length - 1; i >= 0; i--) {
            Stop stop = stop(i);
            if (stop.most() <= fNumber * (1 + 1e-12)) {
                return Optional.of(stop);
            }
        }
        return Optional.empty();
    }

    /// The first engraved f-number that, taken either way, is no smaller than asked; none past f/32.
    static Optional<Stop> findAtLeast(double fNumber) {
        for (int i = 0; i < ENGRAVED.length; i++) {
            Stop stop = stop(i);
            if (stop.least() >= fNumber * (1 - 1e-12)) {
                return Optional.of(stop);
            }
        }
        return Optional.empty();
    }

    private static Stop stop(int index) {
        return new Stop(ENGRAVED[index], Math.pow(2, index / 6.0));
    }
}
