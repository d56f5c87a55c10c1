package plumeline.cut.mask;

import java.util.Arrays;

/// Packs bytes that come in long runs of few values: one deflate block with a fixed code of our own, in which the
/// longest run takes two bits, and the checksum without touching a byte twice. The same bytes on every machine.
///
/// **Source:** RFC 1950 (zlib, Adler-32) and RFC 1951 (deflate), sections 3.2.2 to 3.2.7.
final class RunDeflate {
    private static final int LITERALS = 286;
    private static final int END = 256;
    private static final int LONGEST = 258;
    private static final int SHORTEST = 3;
    private static final long ADLER = 65521;
    private static final int MOST_AT_ONCE = 24;

    /// Lengths that are told by their code alone, the first of each code from 257 on.
    private static final int[] FIRSTS = {
        3, 4, 5, 6, 7, 8, 9, 10, 11, 13, 15, 17, 19, 23, 27, 31, 35, 43, 51, 59, 67, 83, 99, 115, 131, 163, 195, 227,
        258
    };

    private static final int[] EXTRAS = {
        0, 0, 0, 0, 0, 0, 0, 0, 1, 1, 1, 1, 2, 2, 2, 2, 3, 3, 3, 3, 4, 4, 4, 4, 5, 5, 5, 5, 0
    };

    /// The order in which the lengths of the code that tells lengths are written.
    private static final int[] ORDER = {16, 17, 18, 0, 8, 7, 9, 6, 10, 5, 11, 4, 12, 3, 13, 2, 14, 1, 15};

    private byte[] out = new byte[32768];
    private int count;
    private final int[] sizes = literalSizes();
    private final int[] codes = codes(sizes);
    private long bits;
    private int held;
    private long low = 1;
    private long high;
    private int last = -1;

    RunDeflate() {
        write(0x78);
        write(0x01);
        head();
    }

    /// How long the code of each literal and length is: the longest run 1 bit, black and a row's first byte 3.
    private static int[] literalSizes() {
        int[] sizes = new int[LITERALS];
        sizes[0] = 3;
        sizes[2] = 3;
        sizes[1] = 5;
        sizes[255] = 5;
        for (int i = END; i < LITERALS - 1; i++) {
            sizes[i] = i < END + 19 ? 7 : 8;
        }
        sizes[LITERALS - 1] = 1;
        return sizes;
    }

    /// Codes by their lengths, each turned about, as its first bit comes first.
    private static int[] codes(int[] sizes) {
        int[] codes = new int[sizes.length];
        int code = 0;
        for (int size = 1; size <= 15; size++) {
            for (int i = 0; i < sizes.length; i++) {
                if (sizes[i] == size) {
                    codes[i] = Integer.reverse(code) >>> 32 - size;
                    code++;
                }
            }
            code <<= 1;
        }
        return codes;
    }

    private void head() {
        int[] telling = new int[19];
        telling[1] = 2;
        telling[18] = 2;
        telling[3] = 3;
        telling[5] = 3;
        telling[7] = 3;
        telling[8] = 3;
        int[] told = codes(telling);
        put(1, 1);
        put(2, 2);
        put(LITERALS - 257, 5);
        put(0, 5);
        put(ORDER.length - 4, 4);
        for (int symbol : ORDER) {
            put(telling[symbol], 3);
        }
        for (int i = 0; i < LITERALS; ) {
            int zeros = 0;
            while (i + zeros < LITERALS && sizes[i + zeros] == 0 && zeros < 138) {
                zeros++;
            }
            if (zeros > 0) {
                put(told[18], telling[18]);
                put(zeros - 11, 7);
                i += zeros;
            } else {
                put(told[sizes[i]], telling[sizes[i]]);
                i++;
            }
        }
        // One distance, 1 back, in one bit.
        put(told[1], telling[1]);
    }

    /// Adds a run of one value: 0, 1, 2 or 255.
    void run(int value, int count) {
        sum(value, count);
        int left = count;
        if (left > 0 && last != value) {
            put(codes[value], sizes[value]);
            last = value;
            left--;
        }
        // The longest run's code is a bit of 0, and so is that of its distance.
        for (int whole = left / LONGEST - 1; whole > 0; ) {
            int now = Math.min(whole, MOST_AT_ONCE);
            put(0, 2 * now);
            whole -= now;
            left -= now * LONGEST;
        }
        while (left >= SHORTEST) {
            int length = Math.min(left, LONGEST);
            int rest = left - length;
            if (rest > 0 && rest < SHORTEST) {
                length -= SHORTEST;
            }
            match(length);
            left -= length;
        }
        for (; left > 0; left--) {
            put(codes[value], sizes[value]);
        }
    }

    private void match(int length) {
        int code = FIRSTS.length - 1;
        while (FIRSTS[code] > length) {
            code--;
        }
        put(codes[257 + code], sizes[257 + code]);
        put(length - FIRSTS[code], EXTRAS[code]);
        put(0, 1);
    }

    /// Adler-32 of a run in one step.
    private void sum(int value, long count) {
        long many = count * (count + 1) / 2 % ADLER;
        high = (high + count % ADLER * low + many * value) % ADLER;
        low = (low + count % ADLER * value) % ADLER;
    }

    private void put(int value, int count) {
        bits |= (long) value << held;
        held += count;
        while (held >= 8) {
            write((int) bits);
            bits >>>= 8;
            held -= 8;
        }
    }

    /// Ends the block and gives all of it.
    byte[] end() {
        put(codes[END], sizes[END]);
        if (held > 0) {
            put(0, 8 - held);
        }
        long adler = high << 16 | low;
        for (int shift = 24; shift >= 0; shift -= 8) {
            write((int) (adler >>> shift));
        }
        return Arrays.copyOf(out, count);
    }

    private void write(int value) {
        if (count == out.length) {
            out = Arrays.copyOf(out, 2 * count);
        }
        out[count++] = (byte) value;
    }
}
