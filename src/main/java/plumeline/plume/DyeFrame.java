package plumeline.plume;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.util.Optional;
import java.util.zip.CRC32;
import java.util.zip.DataFormatException;
import java.util.zip.Deflater;
import java.util.zip.Inflater;
import plumeline.flow.Dye;
import plumeline.flow.Grid;

/// The dye of one frame, a byte a cell, of the smallest box of cells that holds all of it.
///
/// A byte of 0 is less than [#LEAST] of dye; n from 1 to 255 is `LEAST^((255 − n)/254)`, so that two neighbours are 5.6
/// % apart and a share is kept to within 2.8 %.
public final class DyeFrame {
    /// The least share that is kept.
    public static final double LEAST = 1e-6;

    private static final float[] SHARES = shares();
    private static final double STEPS = 254;

    private final int number;
    private final Box box;
    private final byte[] codes;

    private DyeFrame(int number, Box box, byte[] codes) {
        this.number = number;
        this.box = box;
        this.codes = codes;
    }

    /// A box of cells.
    ///
    /// @param i its first cell to the right
    /// @param j its first cell away
    /// @param k its first cell up
    /// @param ni how many to the right
    /// @param nj how many away
    /// @param nk how many up
    public record Box(int i, int j, int k, int ni, int nj, int nk) {
        /// No cell at all.
        public static final Box EMPTY = new Box(0, 0, 0, 0, 0, 0);

        /// How many cells it has.
        ///
        /// @return cells
        public int cells() {
            return ni * nj * nk;
        }
    }

    /// Keeps the dye of a frame.
    ///
    /// @param number the frame's number, from 0
    /// @param dye the dye
    /// @return the frame
    public static DyeFrame of(int number, Dye dye) {
        Box box = box(dye);
        byte[] codes = new byte[box.cells()];
        int at = 0;
        for (int k = box.k(); k < box.k() + box.nk(); k++) {
            for (int j = box.j(); j < box.j() + box.nj(); j++) {
                for (int i = box.i(); i < box.i() + box.ni(); i++) {
                    codes[at++] = code(dye.share(i, j, k));
                }
            }
        }
        return new DyeFrame(number, box, codes);
    }

    private static Box box(Dye dye) {
        Grid grid = dye.grid();
        int[] low = {grid.nx(), grid.ny(), grid.nz()};
        int[] high = {-1, -1, -1};
        for (int k = 0; k < grid.nz(); k++) {
            for (int j = 0; j < grid.ny(); j++) {
                for (int i = 0; i < grid.nx(); i++) {
                    if (dye.share(i, j, k) >= LEAST) {
                        low[0] = Math.min(low[0], i);
                        low[1] = Math.min(low[1], j);
                        low[2] = Math.min(low[2], k);
                        high[0] = Math.max(high[0], i);
                        high[1] = Math.max(high[1], j);
                        high[2] = Math.max(high[2], k);
                    }
                }
            }
        }
        return high[0] < 0
                ? Box.EMPTY
                : new Box(low[0], low[1], low[2], high[0] - low[0] + 1, high[1] - low[1] + 1, high[2] - low[2] + 1);
    }

    /// The byte of a share.
    static byte code(float share) {
        if (!(share >= LEAST)) {
            return 0;
        }
        return (byte) Math.min(255, Math.round(255 - STEPS * StrictMath.log(share) / StrictMath.log(LEAST)));
    }

    private static float[] shares() {
        float[] shares = new float[256];
        for (int n = 1; n < shares.length; n++) {
            shares[n] = (float) StrictMath.pow(LEAST, (255 - n) / 254.0);
        }
        return shares;
    }

    /// The frame's number.
    ///
    /// @return from 0; its time is its number over the film's rate
    public int number() {
        return number;
    }

    /// The cells that are kept.
    ///
    /// @return the box
    public Box box() {
        return box;
    }

    /// The share in a cell of the whole grid.
    ///
    /// @param i cell to the right
    /// @param j cell away
    /// @param k cell up
    /// @return share of one, 0 outside the box
    public float share(int i, int j, int k) {
        int a = i - box.i();
        int b = j - box.j();
        int c = k - box.k();
        boolean within = a >= 0 && a < box.ni() && b >= 0 && b < box.nj() && c >= 0 && c < box.nk();
        return within ? SHARES[codes[(c * box.nj() + b) * box.ni() + a] & 0xff] : 0;
    }

    /// The dye in all cells.
    ///
    /// @param grid the film's grid
    /// @return the dye, to within 2.8 % of each share
    public Dye dye(Grid grid) {
        float[] all = new float[grid.nx() * grid.ny() * grid.nz()];
        int at = 0;
        for (int k = box.k(); k < box.k() + box.nk(); k++) {
            for (int j = box.j(); j < box.j() + box.nj(); j++) {
                int first = (k * grid.ny() + j) * grid.nx() + box.i();
                for (int i = 0; i < box.ni(); i++) {
                    all[first + i] = SHARES[codes[at++] & 0xff];
                }
            }
        }
        return Dye.of(grid, all);
    }

    /// Whether dye of at least a share is in the lowest cells.
    boolean isOnFloor(double share) {
        if (box.k() > 0) {
            return false;
        }
        for (int n = 0; n < box.ni() * box.nj(); n++) {
            if (SHARES[codes[n] & 0xff] >= share) {
                return true;
            }
        }
        return false;
    }

    /// The frame as it is kept in a film.
    ///
    /// @return its bytes
    public byte[] toBytes() {
        var deflater = new Deflater(Deflater.BEST_SPEED);
        deflater.setInput(codes);
        deflater.finish();
        byte[] packed = new byte[codes.length + 1024 + codes.length / 1000];
        int length = deflater.deflate(packed);
        deflater.end();
        ByteBuffer out = ByteBuffer.allocate(HEAD_BYTES + length).putInt(number);
        for (int each : new int[] {box.i(), box.j(), box.k(), box.ni(), box.nj(), box.nk()}) {
            out.putShort((short) each);
        }
        out.putInt(length).putInt(0).put(packed, 0, length);
        return out.putInt(SUM_AT, sum(out)).array();
    }

    private static final int SUM_AT = 4 + 6 * 2 + 4;
    private static final int HEAD_BYTES = SUM_AT + 4;

    /// The sum of all but itself.
    private static int sum(ByteBuffer kept) {
        var sum = new CRC32();
        sum.update(kept.duplicate().position(0).limit(SUM_AT));
        sum.update(kept.duplicate().position(HEAD_BYTES).limit(kept.limit()));
        return (int) sum.getValue();
    }

    /// A frame as it lies in a film, its sum found right.
    ///
    /// @param number its number
    /// @param box the cells that are kept
    /// @param packed their codes, packed
    record Kept(int number, Box box, ByteBuffer packed) {
        /// Reads one; empty where there is none, or a damaged one.
        static Optional<Kept> read(DyeFilm.Source source, long at, long end) throws IOException {
            if (end - at < HEAD_BYTES) {
                return Optional.empty();
            }
            int length = source.read(at, HEAD_BYTES).getInt(SUM_AT - 4);
            if (length < 0 || length > end - at - HEAD_BYTES || length > Integer.MAX_VALUE - HEAD_BYTES) {
                return Optional.empty();
            }
            ByteBuffer in = source.read(at, HEAD_BYTES + length);
            if (in.getInt(SUM_AT) != sum(in)) {
                return Optional.empty();
            }
            int number = in.getInt();
            Box box = new Box(in.getShort(), in.getShort(), in.getShort(), in.getShort(), in.getShort(), in.getShort());
            return Optional.of(new Kept(number, box, in.position(HEAD_BYTES)));
        }

        /// Whether it is the one of a number, of a film with such cells.
        boolean is(int wanted, Grid grid) {
            return number == wanted
                    && within(box.i(), box.ni(), grid.nx())
                    && within(box.j(), box.nj(), grid.ny())
                    && within(box.k(), box.nk(), grid.nz());
        }

        private static boolean within(int first, int count, int all) {
            return first >= 0 && count >= 0 && first + count <= all;
        }

        /// How long it is in the film, bytes.
        long bytes() {
            return packed.limit();
        }

        /// Unpacks it; empty where it isn't what its box says.
        Optional<DyeFrame> frame() {
            byte[] codes = new byte[box.cells()];
            var inflater = new Inflater();
            inflater.setInput(packed.duplicate());
            try {
                return inflater.inflate(codes) == codes.length
                        ? Optional.of(new DyeFrame(number, box, codes))
                        : Optional.empty();
            } catch (DataFormatException e) {
                return Optional.empty();
            } finally {
                inflater.end();
            }
        }
    }
}
