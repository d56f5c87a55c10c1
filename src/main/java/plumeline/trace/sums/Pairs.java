package plumeline.trace.sums;

/// What [Draws] draws for many rays at once, in loops without choices, so that the compiler works out several together.
public final class Pairs {
    private long[] bits = new long[0];
    private int[] part = new int[0];
    private int[] stirred = new int[0];
    private int[] order = new int[0];
    private int[] sum = new int[0];

    /// Makes one without room.
    public Pairs() {}

    /// Makes room.
    ///
    /// @param room for so many rays
    public void grow(int room) {
        bits = new long[room];
        part = new int[room];
        stirred = new int[room];
        order = new int[room];
        sum = new int[room];
    }

    /// Draws a branch's first pair and the first number of its second, as [Draws#next] does.
    ///
    /// @param count how many rays there are
    /// @param keys of their own numbers
    /// @param branch which of the keys' branches
    /// @param turned which ray of its pixel each is, its bits turned round
    /// @param u takes the pair's number
    /// @param v takes its other number
    /// @param third takes the second's number
    public void draw(int count, long[] keys, int branch, int[] turned, double[] u, double[] v, double[] third) {
        begin(count, keys, branch + Draws.GOLDEN, turned);
        stir(count, order, bits, 32, u);
        sum(count, order, sum);
        stir(count, sum, bits, 16, v);
        begin(count, keys, branch + Draws.TWICE, turned);
        stir(count, order, bits, 32, third);
    }

    private void begin(int count, long[] keys, long by, int[] turned) {
        mix(count, keys, by, bits);
        part(count, bits, 0, part);
        order(count, turned, part, order);
    }

    private static void mix(int count, long[] keys, long by, long[] into) {
        for (int k = 0; k < count; k++) {
            into[k] = Draws.mixed(keys[k] + by);
        }
    }

    private static void part(int count, long[] bits, int from, int[] into) {
        for (int k = 0; k < count; k++) {
            into[k] = (int) (bits[k] >>> from);
        }
    }

    private static void order(int count, int[] turned, int[] by, int[] into) {
        for (int k = 0; k < count; k++) {
            into[k] = Integer.reverse(Draws.stirred(turned[k], by[k]));
        }
    }

    private static void sum(int count, int[] bits, int[] into) {
        for (int k = 0; k < count; k++) {
            into[k] = Draws.pascal(bits[k]);
        }
    }

    private void stir(int count, int[] of, long[] bits, int from, double[] into) {
        part(count, bits, from, part);
        stir(count, of, part, stirred);
        share(count, stirred, into);
    }

    private static void stir(int count, int[] of, int[] by, int[] into) {
        for (int k = 0; k < count; k++) {
            into[k] = Draws.stirred(of[k], by[k]);
        }
    }

    private static void share(int count, int[] bits, double[] into) {
        for (int k = 0; k < count; k++) {
            into[k] = Draws.share(bits[k]);
        }
    }
}
