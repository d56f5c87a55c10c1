package plumeline.flow;

/// Even noise from numbers: the same numbers give the same noise, whoever asks and in whatever order.
///
/// **Source:** the mixing of G. Steele, D. Lea and C. Flood, "Fast splittable pseudorandom number generators", OOPSLA
/// 2014 (from memory).
final class Noise {
    private static final long GOLDEN = 0x9E3779B97F4A7C15L;
    private static final long LATTICE = 1 << 20;
    private static final double UNIT = 1.0 / (1L << 52);

    private Noise() {}

    /// Noise from −1 to 1.
    ///
    /// @param seed the run's seed
    /// @param stream which noise
    /// @param place which value of it
    /// @return the value
    static double at(long seed, long stream, long place) {
        long mixed = mix(mix(seed + GOLDEN * (stream + 1)) + GOLDEN * (place + 1));
        return (mixed >>> 11) * UNIT - 1;
    }

    /// Noise that changes evenly between the points of a lattice of spacing one, where it is that of [#at].
    ///
    /// @param seed the run's seed
    /// @param stream which noise
    /// @param x place along the first axis
    /// @param y place along the second
    /// @param z place along the third
    /// @return the value, −1 to 1
    static double smooth(long seed, long stream, double x, double y, double z) {
        long i = (long) Math.floor(x);
        long j = (long) Math.floor(y);
        long k = (long) Math.floor(z);
        double sum = 0;
        for (int corner = 0; corner < 8; corner++) {
            int a = corner & 1;
            int b = corner >> 1 & 1;
            int c = corner >> 2;
            double weight = part(x - i, a) * part(y - j, b) * part(z - k, c);
            sum += weight * at(seed, stream, (i + a) + LATTICE * ((j + b) + LATTICE * (k + c)));
        }
        return sum;
    }

    private static double part(double from, int corner) {
        return corner == 1 ? from : 1 - from;
    }

    private static long mix(long value) {
        long z = (value ^ (value >>> 30)) * 0xBF58476D1CE4E5B9L;
        z = (z ^ (z >>> 27)) * 0x94D049BB133111EBL;
        return z ^ (z >>> 31);
    }
}
