package plumeline.plume;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import plumeline.quantity.Quantity;

/// Where within its ± each value of a try lies: as written, or drawn by a seed.
///
/// The ± is a 95 % half-width, so draws are normal with that over 1.96; the one in twenty beyond it is drawn again, as
/// a crew that writes ± 0.2 ml throws such a syringe back. Each value has draws of its own, so that a ± more or less
/// changes no other's.
final class Chance {
    private static final double NINETY_FIVE = 1.96;

    /// What must be above nought stays at least at this share of what is written.
    private static final double LEAST_SHARE = 0.05;

    private static final long GOLDEN = 0x9E37_79B9_7F4A_7C15L;

    private final boolean drawn;
    private final long seed;
    private final List<InkShot.Spread> spreads = new ArrayList<>();

    private Chance(boolean drawn, long seed) {
        this.drawn = drawn;
        this.seed = seed;
    }

    /// Everything as written.
    static Chance none() {
        return new Chance(false, 0);
    }

    static Chance of(long seed) {
        return new Chance(true, seed);
    }

    /// What an amount is in this try.
    ///
    /// @param name what it is, as the plan's path says
    /// @param written the amount with its ±, above nought
    /// @return SI, above nought
    double amount(String name, Quantity written) {
        return value(name, written, LEAST_SHARE * written.si());
    }

    /// What a place is in this try.
    ///
    /// @param name what it is, as the plan's path says
    /// @param written the place with its ±
    /// @return SI
    double place(String name, Quantity written) {
        return value(name, written, Double.NEGATIVE_INFINITY);
    }

    /// What was asked for and had a ±, with its value in this try.
    List<InkShot.Spread> spreads() {
        return spreads;
    }

    private double value(String name, Quantity written, double leastSi) {
        double half = written.halfWidthSi();
        if (half == 0) {
            return written.si();
        }
        double value = written.si();
        if (drawn) {
            var random = new Random(mix(seed + GOLDEN * name.hashCode()));
            do {
                value = written.si() + half / NINETY_FIVE * random.nextGaussian();
            } while (Math.abs(value - written.si()) > half || value < leastSi);
        }
        spreads.add(new InkShot.Spread(name, written.withSi(value), half));
        return value;
    }

    /// Neighbouring seeds, far apart: S. Vigna's finaliser of splitmix64 (from memory).
    private static long mix(long value) {
        long z = (value ^ (value >>> 30)) * 0xBF58476D1CE4E5B9L;
        z = (z ^ (z >>> 27)) * 0x94D049BB133111EBL;
        return z ^ (z >>> 31);
    }
}
