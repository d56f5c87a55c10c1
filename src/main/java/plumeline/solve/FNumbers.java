package plumeline.solve;

/// The f-numbers engraved on lenses, in thirds of a stop.
///
/// **Source:** the usual rounded series; common practice.
final class FNumbers {
    private static final double[] ENGRAVED = {
        1, 1.1, 1.2, 1.4, 1.6, 1.8, 2, 2.2, 2.5, 2.8, 3.2, 3.5, 4, 4.5, 5, 5.6, 6.3, 7.1, 8, 9, 10, 11, 13, 14, 16, 18,
        20, 22, 25, 29, 32, 36, 40, 45, 51, 57, 64
    };

    private FNumbers() {}

    static double nearest(double fNumber) {
        double best = ENGRAVED[0];
        for (double engraved : ENGRAVED) {
            if (Math.abs(Math.log(engraved / fNumber)) < Math.abs(Math.log(best / fNumber))) {
                best = engraved;
            }
        }
        return best;
    }
}
