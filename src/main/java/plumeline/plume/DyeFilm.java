package plumeline.plume;

import java.nio.ByteBuffer;
import java.util.HexFormat;
import java.util.Optional;
import plumeline.flow.Grid;
import plumeline.geom.Vec;

/// The dye of one run, frame after frame: how it is kept for pictures, and read.
public final class DyeFilm {
    private static final long MAGIC = 0x504c_554d_4544_5945L; // PLUMEDYE
    private static final long END = 0x504c_554d_4545_4e44L; // PLUMEEND
    private static final int EDITION = 1;
    private static final int KEY_BYTES = 32;
    private static final int HEAD_BYTES = 8 + 4 + KEY_BYTES + 4 + 8 + 3 * 4 + 6 * 8 + 8 + 8;

    private final ByteBuffer bytes;
    private final Head head;
    private final int[] at;

    private DyeFilm(ByteBuffer bytes, Head head, int[] at) {
        this.bytes = bytes;
        this.head = head;
        this.at = at;
    }

    /// What a film is of.
    ///
    /// @param key the key of its shot's runs
    /// @param run the run's number, from 1
    /// @param seed the run's seed
    /// @param grid the cells
    /// @param corner where the grid's origin is, table frame, metres
    /// @param framesPerSecond its rate, 1/s
    public record Head(InkKey key, int run, long seed, Grid grid, Vec corner, double framesPerSecond) {
        /// How a film begins.
        ///
        /// @return its first bytes
        public byte[] toBytes() {
            ByteBuffer out = ByteBuffer.allocate(HEAD_BYTES).putLong(MAGIC).putInt(EDITION);
            out.put(HexFormat.of().parseHex(key.hex())).putInt(run).putLong(seed);
            out.putInt(grid.nx()).putInt(grid.ny()).putInt(grid.nz());
            out.putDouble(grid.widthMetres()).putDouble(grid.depthMetres()).putDouble(grid.heightMetres());
            out.putDouble(corner.x()).putDouble(corner.y()).putDouble(corner.z());
            return out.putDouble(framesPerSecond).putDouble(DyeFrame.LEAST).array();
        }

        private static Optional<Head> read(ByteBuffer in) {
            if (in.remaining() < HEAD_BYTES || in.getLong() != MAGIC || in.getInt() != EDITION) {
                return Optional.empty();
            }
            byte[] key = new byte[KEY_BYTES];
            in.get(key);
            int run = in.getInt();
            long seed = in.getLong();
            Grid grid = new Grid(in.getInt(), in.getInt(), in.getInt(), in.getDouble(), in.getDouble(), in.getDouble());
            Vec corner = new Vec(in.getDouble(), in.getDouble(), in.getDouble());
            double rate = in.getDouble();
            return in.getDouble() == DyeFrame.LEAST
                    ? Optional.of(new Head(new InkKey(HexFormat.of().formatHex(key)), run, seed, grid, corner, rate))
                    : Optional.empty();
        }
    }

    /// How a film ends: without this it isn't whole.
    ///
    /// @param frames how many it has
    /// @return its last bytes
    public static byte[] end(int frames) {
        return ByteBuffer.allocate(12).putLong(END).putInt(frames).array();
    }

    /// Reads a film.
    ///
    /// @param bytes the file's bytes
    /// @return the film; empty where the bytes are no whole one
    public static Optional<DyeFilm> read(ByteBuffer bytes) {
        ByteBuffer in = bytes.duplicate();
        int size = in.limit();
        if (size < HEAD_BYTES + 12 || in.getLong(size - 12) != END) {
            return Optional.empty();
        }
        int frames = in.getInt(size - 4);
        Optional<Head> head = Head.read(in);
        if (head.isEmpty() || frames < 0 || frames > size / 8) {
            return Optional.empty();
        }
        in.limit(size - 12);
        int[] at = new int[frames];
        for (int n = 0; n < frames; n++) {
            at[n] = in.position();
            if (!DyeFrame.skip(in)) {
                return Optional.empty();
            }
        }
        return in.hasRemaining() ? Optional.empty() : Optional.of(new DyeFilm(bytes.duplicate(), head.get(), at));
    }

    /// What it is of.
    ///
    /// @return the head
    public Head head() {
        return head;
    }

    /// How many frames it has.
    ///
    /// @return frames
    public int frames() {
        return at.length;
    }

    /// One frame.
    ///
    /// @param number its number, 0 to frames − 1
    /// @return the frame
    public DyeFrame frame(int number) {
        return DyeFrame.read(bytes.duplicate().position(at[number]));
    }
}
