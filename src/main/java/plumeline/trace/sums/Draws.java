package plumeline.trace.sums;

/// Draws numbers for a ray: the same for the same seed, pixel and ray, evenly spread over the rays of a pixel.
///
/// Each pair is a point of the first two of Sobol's sequences, scrambled bit by bit from the highest on, so that any
/// aligned power of two of rays has one in each cell of each even cut of the square.
///
/// **Source:** Sobol, USSR Comput. Math. Math. Phys. 7 (1967) 86; Owen, J. Complexity 14 (1998) 466, both from memory;
/// the scrambling by multiplying with even numbers is Laine's and Karras's idea (2011), constants are our own.
public final class Draws {
    /// The key of numbers that are all the middle.
    public static final long MIDDLE = 0;

    /// So much a key goes on from pair to pair.
    static final long GOLDEN = 0x9E3779B97F4A7C15L;

    /// And so much in two, past the end of the numbers and on from their beginning.
    static final long TWICE = 0x3C6EF372FE94F82AL;

    private static final double WHOLE = 0x1p-31;

    /// The number of the pair.
    private double u;

    /// The other.
    private double v;

    private boolean isMiddle;
    private int index;
    private long key;

    /// Makes one that is begun at nothing.
    public Draws() {}

    /// Begins a ray's numbers. Where there is one ray only, all are the middle.
    ///
    /// @param seed any number
    /// @param pixel its number
    /// @param ray which ray of the pixel, from 0
    /// @param all how many rays the pixel gets in all
    public void begin(long seed, long pixel, int ray, int all) {
        isMiddle = all <= 1;
        index = ray;
        key = mixed(seed * GOLDEN + mixed(pixel + 0x632BE59BD9B4E019L));
    }

    /// Draws a key of numbers of its own for the same ray.
    ///
    /// @return the key
    public long fork() {
        key += GOLDEN;
        return isMiddle ? MIDDLE : Math.max(MIDDLE + 1, mixed(key) >>> 1);
    }

    /// Which ray of its pixel it is.
    ///
    /// @return from 0
    public int ray() {
        return index;
    }

    /// Begins the numbers of a key.
    ///
    /// @param fork a key
    /// @param branch which of its own branches, from 0
    /// @param ray which ray of its pixel it is
    public void resume(long fork, int branch, int ray) {
        isMiddle = fork == MIDDLE;
        index = ray;
        key = fork + branch;
    }

    /// Whether all is drawn from the middle.
    ///
    /// @return true where there is one ray only
    public boolean isMiddle() {
        return isMiddle;
    }

    /// Draws the next pair into u and v.
    public void next() {
        if (isMiddle) {
            u = 0.5;
            v = 0.5;
            return;
        }
        key += GOLDEN;
        long bits = mixed(key);
        int order = Integer.reverse(stirred(Integer.reverse(index), (int) bits));
        u = share(stirred(order, (int) (bits >>> 32)));
        v = share(stirred(pascal(order), (int) (bits >>> 16)));
    }

    /// A share of one by bits of which the last counts most.
    static double share(int bits) {
        return ((Integer.reverse(bits) >>> 1) + 0.5) * WHOLE;
    }

    /// Bit k of what comes out is the sum of those bits j whose number holds all of k's: Pascal's triangle modulo 2,
    /// the second sequence's matrix.
    static int pascal(int bits) {
        int sum = bits;
        sum ^= (sum >>> 1) & 0x55555555;
        sum ^= (sum >>> 2) & 0x33333333;
        sum ^= (sum >>> 4) & 0x0F0F0F0F;
        sum ^= (sum >>> 8) & 0x00FF00FF;
        sum ^= (sum >>> 16) & 0x0000FFFF;
        return sum;
    }

    /// Flips each bit by the ones below it.
    static int stirred(int bits, int by) {
        int x = bits + by;
        x ^= x * 0x5A3C9E16;
        x ^= x * 0xB4D1726A;
        x += (by >>> 15) * 0x2C1B3C6D;
        x ^= x * 0xC9E57A34;
        x ^= x * 0x71D8B2AE;
        return x;
    }

    /// Mixes bits, so that near numbers come out far apart.
    ///
    /// @param bits any number
    /// @return another for each
    public static long mixed(long bits) {
        long x = bits;
        x = (x ^ (x >>> 30)) * 0xBF58476D1CE4E5B9L;
        x = (x ^ (x >>> 27)) * 0x94D049BB133111EBL;
        return x ^ (x >>> 31);
    }

    /// The number of the last pair, 0 to 1.
    ///
    /// @return it
    public double u() {
        return u;
    }

    /// Its other number.
    ///
    /// @return it
    public double v() {
        return v;
    }
}
