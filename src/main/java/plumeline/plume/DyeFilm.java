package plumeline.plume;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.util.Arrays;
import java.util.HexFormat;
import java.util.Optional;
import java.util.zip.CRC32;
import plumeline.flow.Grid;
import plumeline.geom.Vec;

/// The dye of one run, frame after frame: how it is kept for pictures, and read. A film that was damaged or cut is
/// noticed as it is opened: each part stands under a sum, and opening reads all of them.
public final class DyeFilm {
    private static final long MAGIC = 0x504c_554d_4544_5945L; // PLUMEDYE
    private static final long END = 0x504c_554d_4545_4e44L; // PLUMEEND
    private static final int EDITION = 2;
    private static final int KEY_BYTES = 32;
    private static final int HEAD_BYTES = 8 + 4 + KEY_BYTES + 4 + 8 + 3 * 4 + 6 * 8 + 8 + 8 + 4;
    private static final int END_BYTES = 8 + 4;

    private final Source source;
    private final Head head;
    private final long[] at;

    private DyeFilm(Source source, Head head, long[] at) {
        this.source = source;
        this.head = head;
        this.at = at;
    }

    /// Where a film's bytes are, however many.
    public interface Source {
        /// How many there are.
        ///
        /// @return bytes
        /// @throws IOException where the world fails
        long size() throws IOException;

        /// Gives some of them.
        ///
        /// @param at the first one's place, from 0
        /// @param length how many, all of them within the size
        /// @return a buffer of just these
        /// @throws IOException where the world fails
        ByteBuffer read(long at, int length) throws IOException;
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
            out.putDouble(framesPerSecond).putDouble(DyeFrame.LEAST);
            return out.putInt(sum(out)).array();
        }

        private static int sum(ByteBuffer head) {
            var sum = new CRC32();
            sum.update(head.duplicate().position(0).limit(HEAD_BYTES - 4));
            return (int) sum.getValue();
        }

        private static Optional<Head> read(ByteBuffer in) {
            if (in.getInt(HEAD_BYTES - 4) != sum(in) || in.getLong() != MAGIC || in.getInt() != EDITION) {
                return Optional.empty();
            }
            byte[] key = new byte[KEY_BYTES];
            in.get(key);
            int run = in.getInt();
            long seed = in.getLong();
            try {
                Grid grid =
                        new Grid(in.getInt(), in.getInt(), in.getInt(), in.getDouble(), in.getDouble(), in.getDouble());
                Vec corner = new Vec(in.getDouble(), in.getDouble(), in.getDouble());
                double rate = in.getDouble();
                return in.getDouble() == DyeFrame.LEAST
                        ? Optional.of(
                                new Head(new InkKey(HexFormat.of().formatHex(key)), run, seed, grid, corner, rate))
                        : Optional.empty();
            } catch (IllegalArgumentException e) {
                return Optional.empty();
            }
        }
    }

    /// How a film ends: without this it isn't whole.
    ///
    /// @param frames how many it has
    /// @return its last bytes
    public static byte[] end(int frames) {
        return ByteBuffer.allocate(END_BYTES).putLong(END).putInt(frames).array();
    }

    /// Opens a film. All of it is read once, a frame at a time.
    ///
    /// @param source its bytes, which its frames are read from later
    /// @return the film; empty where the bytes are no whole one
    /// @throws IOException where the world fails
    public static Optional<DyeFilm> read(Source source) throws IOException {
        long framesEnd = source.size() - END_BYTES;
        if (framesEnd < HEAD_BYTES) {
            return Optional.empty();
        }
        ByteBuffer end = source.read(framesEnd, END_BYTES);
        if (end.getLong() != END) {
            return Optional.empty();
        }
        int frames = end.getInt();
        return readBegun(source, framesEnd).filter(film -> film.frames() == frames);
    }

    /// Opens what there is of a film that is still being made.
    ///
    /// @param source its bytes
    /// @param bytes how many of them count: head and frames without an end
    /// @return the film so far; empty where it is damaged or these bytes don't end with a frame
    /// @throws IOException where the world fails
    public static Optional<DyeFilm> readBegun(Source source, long bytes) throws IOException {
        if (bytes < HEAD_BYTES || bytes > source.size()) {
            return Optional.empty();
        }
        Optional<Head> head = Head.read(source.read(0, HEAD_BYTES));
        if (head.isEmpty()) {
            return Optional.empty();
        }
        long[] at = new long[256];
        int frames = 0;
        long next = HEAD_BYTES;
        while (next < bytes) {
            Optional<DyeFrame.Kept> kept = DyeFrame.Kept.read(source, next, bytes);
            if (kept.isEmpty() || !kept.get().is(frames, head.get().grid())) {
                return Optional.empty();
            }
            at = frames < at.length ? at : Arrays.copyOf(at, 2 * frames);
            at[frames++] = next;
            next += kept.get().bytes();
        }
        return Optional.of(new DyeFilm(source, head.get(), Arrays.copyOf(at, frames)));
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
    /// @throws IOException where the world fails, or the bytes have changed since the film was opened
    public DyeFrame frame(int number) throws IOException {
        return DyeFrame.Kept.read(source, at[number], source.size())
                .filter(kept -> kept.is(number, head.grid()))
                .flatMap(DyeFrame.Kept::frame)
                .orElseThrow(() -> new IOException("frame " + number + " of try " + head.run() + " is damaged"));
    }
}
