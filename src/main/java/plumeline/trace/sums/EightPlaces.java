package plumeline.trace.sums;

/// Gauss's rule with eight places on 0 to 1.
public final class EightPlaces {
    /// Places each way over a face where it isn't evenly bright, and what each counts: by Gauss's rule of eight.
    ///
    /// **Source:** Abramowitz and Stegun, Handbook of Mathematical Functions, 1964, table 25.4.
    private static final double[] PLACES = {
        0.0198550717512319, 0.1016667612931866, 0.2372337950418355, 0.4082826787521751,
        0.5917173212478248, 0.7627662049581645, 0.8983332387068134, 0.9801449282487681
    };

    private static final double[] COUNTS = {
        0.0506142681451885, 0.1111905172266872, 0.1568533229389434, 0.1813418916891808,
        0.1813418916891808, 0.1568533229389434, 0.1111905172266872, 0.0506142681451885
    };

    private EightPlaces() {}

    /// How many there are.
    ///
    /// @return eight
    public static int size() {
        return PLACES.length;
    }

    /// Gives a place.
    ///
    /// @param which from 0
    /// @return 0 to 1
    public static double place(int which) {
        return PLACES[which];
    }

    /// Gives what a place counts.
    ///
    /// @param which from 0
    /// @return share of one
    public static double count(int which) {
        return COUNTS[which];
    }
}
