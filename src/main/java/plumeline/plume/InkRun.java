package plumeline.plume;

import java.nio.ByteBuffer;
import java.util.ArrayList;
import java.util.HexFormat;
import java.util.List;
import java.util.Optional;
import java.util.zip.CRC32;
import plumeline.flow.Flow;
import plumeline.flow.Grid;
import plumeline.flow.State;
import plumeline.flow.Workers;

/// One run of a shot's ink, stepped frame by frame. Each step of the flow ends at a frame's time at the latest, so that
/// a run that was put down between two frames and taken up again gives the same bits as one that never stopped.
public final class InkRun {
    /// Ink is on the floor where it is a thousandth there.
    private static final double ON_FLOOR = 1e-3;

    private static final long MAGIC = 0x504c_554d_4553_544fL; // PLUMESTO
    private static final int EDITION = 1;
    private static final int HEAD_BYTES = 8 + 4 + 32 + 3 * 4 + 8 + 8 + 8 + 8 + 8 + 4;

    private final Task task;
    private final Flow flow;
    private int next;
    private boolean over;

    private InkRun(Task task, Flow flow, int next) {
        this.task = task;
        this.flow = flow;
        this.next = next;
        this.over = next > 0 && isLast(DyeFrame.of(next - 1, flow.dye()));
    }

    /// Which run of what.
    ///
    /// @param key the key of the shot's runs, [InkKey#ofRuns]
    /// @param shot the shot's ink and water, as this run has them
    /// @param course how finely and how long
    /// @param number the run's number, from 1
    public record Task(InkKey key, InkShot shot, InkCourse course, int number) {
        /// What its film is of.
        ///
        /// @return the film's head
        public DyeFilm.Head head() {
            return new DyeFilm.Head(
                    key,
                    number,
                    course.seed(number),
                    grid(),
                    shot.waters().box().low(),
                    shot.timing().framesPerSecond());
        }

        Grid grid() {
            return shot.grid(course.cellMetres());
        }

        Flow.Setting setting() {
            return shot.setting(grid(), course.seed(number));
        }
    }

    /// A run that is put down.
    ///
    /// @param run the run
    /// @param filmBytes how long its film was, bytes
    public record Resumed(InkRun run, long filmBytes) {}

    /// Begins a run.
    ///
    /// @param task which
    /// @param workers who does the work
    /// @return the run
    public static InkRun start(Task task, Workers workers) {
        return new InkRun(task, Flow.start(task.setting(), workers), 0);
    }

    /// Takes a run up again.
    ///
    /// @param task which
    /// @param workers who does the work
    /// @param kept what [#checkpoint] gave
    /// @return the run; empty where that is damaged or of another run
    public static Optional<InkRun.Resumed> resume(Task task, Workers workers, byte[] kept) {
        Grid grid = task.grid();
        int expected = HEAD_BYTES + State.FIELDS * 4 * grid.length() + 4;
        ByteBuffer in = ByteBuffer.wrap(kept);
        if (kept.length != expected || in.getInt(kept.length - 4) != sum(kept)) {
            return Optional.empty();
        }
        byte[] key = new byte[32];
        boolean fits = in.getLong() == MAGIC && in.getInt() == EDITION;
        in.get(key);
        fits &= HexFormat.of().formatHex(key).equals(task.head().key().hex()) && in.getInt() == task.number();
        if (!fits) {
            return Optional.empty();
        }
        int next = in.getInt();
        int length = in.getInt();
        long filmBytes = in.getLong();
        var clock = new State.Clock(in.getDouble(), in.getLong(), in.getDouble(), in.getDouble());
        in.getInt();
        List<float[]> fields = new ArrayList<>();
        for (int n = 0; n < State.FIELDS; n++) {
            float[] field = new float[length];
            in.asFloatBuffer().get(field);
            in.position(in.position() + 4 * length);
            fields.add(field);
        }
        Flow flow = Flow.resume(task.setting(), workers, State.of(clock, fields));
        return Optional.of(new Resumed(new InkRun(task, flow, next), filmBytes));
    }

    /// All that is needed to take it up again between two frames.
    ///
    /// @param filmBytes how long its film is by now, bytes
    /// @return the bytes to keep
    public byte[] checkpoint(long filmBytes) {
        State state = flow.state();
        List<float[]> fields = state.fields();
        int length = fields.getFirst().length;
        byte[] kept = new byte[HEAD_BYTES + State.FIELDS * 4 * length + 4];
        ByteBuffer out = ByteBuffer.wrap(kept).putLong(MAGIC).putInt(EDITION);
        out.put(HexFormat.of().parseHex(task.head().key().hex()));
        out.putInt(task.number()).putInt(next).putInt(length).putLong(filmBytes);
        State.Clock clock = state.clock();
        out.putDouble(clock.seconds()).putLong(clock.steps());
        out.putDouble(clock.lastStepSeconds())
                .putDouble(clock.releasedMetres3())
                .putInt(State.FIELDS);
        for (float[] field : fields) {
            out.asFloatBuffer().put(field);
            out.position(out.position() + 4 * length);
        }
        out.putInt(sum(kept));
        return kept;
    }

    private static int sum(byte[] kept) {
        var sum = new CRC32();
        sum.update(kept, 0, kept.length - 4);
        return (int) sum.getValue();
    }

    /// Whether its last frame was given.
    ///
    /// @return true at its end
    public boolean isOver() {
        return over;
    }

    /// How many frames were given.
    ///
    /// @return frames
    public int frames() {
        return next;
    }

    /// How far it is.
    ///
    /// @return share of its likely length, 0 to 1; 1 at its end only
    public double share() {
        return over
                ? 1
                : Math.min(0.99, next / (task.course().likelyFrame(task.shot().timing()) + 1.0));
    }

    /// Steps to the next frame.
    ///
    /// @return the frame; the first one is of still water at time 0
    public DyeFrame next() {
        if (over) {
            throw new IllegalStateException("the run is over");
        }
        flow.run(next / task.shot().timing().framesPerSecond());
        DyeFrame frame = DyeFrame.of(next++, flow.dye());
        over = isLast(frame);
        return frame;
    }

    private boolean isLast(DyeFrame frame) {
        InkShot.Timing timing = task.shot().timing();
        return frame.number() >= task.course().lastFrame(timing)
                || frame.number() >= task.course().leastFrame(timing) && frame.isOnFloor(ON_FLOOR);
    }
}
