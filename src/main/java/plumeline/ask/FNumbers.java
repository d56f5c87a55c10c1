package plumeline.ask;

import java.util.Optional;

/// The f-numbers engraved on lenses, in thirds of a stop.
///
/// **Source:** the usual rounded series; common practice.
final class FNumbers {
    private static final double[] ENGRAVED = {
        1, 1.1, 1.2, 1.4, 1.6, 1.8, 2, 2.2, 2.5, 2.8, 3.2, 3.5, 4, 4.5, 5, 5.6, 6.3, 7.1, 8, 9, 10, 11, 13, 14, 16, 18, 20, 22,
        25, 29, 32
    };

    private FNumbers() {}

    /// An engraved f-number and the one it stands for: the series is 2^(n/6), so an engraved 11 is 11.31.
    record Stop(double engraved, double exact) {}

    /// The first engraved f-number that stands for no smaller one; none past f/32.
    static Optional<Stop> findAtLeast(double fNumber) {
        for (int i = 0; i < ENGRAVED.length; i++) {
            double exact = Math.pow(2, i / 6.0);
            if (exact >= fNumber * (1 - 1e-12)) {
                return Optional.of(new Stop(ENGRAVED[i], exact));
            }
        }
        return Optional.empty();
    }
}
