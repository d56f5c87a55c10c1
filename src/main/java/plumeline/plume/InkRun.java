package plumeline.plume;

import java.io.DataInputStream;
import java.io.DataOutputStream;
import java.io.EOFException;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.ByteBuffer;
import java.util.ArrayList;
import java.util.HexFormat;
import java.util.List;
import java.util.Optional;
import java.util.zip.CRC32;
import java.util.zip.CheckedInputStream;
import java.util.zip.CheckedOutputStream;
import plumeline.flow.Flow;
import plumeline.flow.Grid;
import plumeline.flow.State;
import plumeline.flow.Workers;

/// One run of a shot's ink, stepped frame by frame. Each step of the flow ends at a frame's time at the latest, so that
/// a run that was put down between two frames and taken up again gives the same bits as one that never stopped.
public final class InkRun {
    /// Ink is on the floor where it is a thousandth there: the first that comes, before a front is seen there.
    private static final double ON_FLOOR = 1e-3;

    /// So much longer than the first ink takes to the floor a run goes on, for the front that is seen to come there
    /// too.
    private static final double LATER = 1.2;

    private static final int NOT_YET = -1;

    private static final long MAGIC = 0x504c_554d_4553_544fL; // PLUMESTO
    private static final int EDITION = 3;
    private static final int KEY_BYTES = 32;

    /// So much is written or read at a time.
    private static final int PART_BYTES = 1 << 16;

    private final Task task;
    private final Flow flow;
    private int next;
    private int floorFrame;

    private InkRun(Task task, Flow flow, int next, int floorFrame) {
        this.task = task;
        this.flow = flow;
        this.next = next;
        this.floorFrame = floorFrame;
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
        return new InkRun(task, Flow.start(task.setting(), workers), 0, NOT_YET);
    }

    /// Takes a run up again.
    ///
    /// @param task which
    /// @param workers who does the work
    /// @param kept what [#checkpoint] wrote
    /// @return the run; empty where that is damaged or of another run
    /// @throws IOException where the world fails
    public static Optional<InkRun.Resumed> resume(Task task, Workers workers, InputStream kept) throws IOException {
        var summed = new CheckedInputStream(kept, new CRC32());
        var in = new DataInputStream(summed);
        try {
            boolean fits = in.readLong() == MAGIC && in.readInt() == EDITION;
            fits &= HexFormat.of()
                    .formatHex(in.readNBytes(KEY_BYTES))
                    .equals(task.key().hex());
            fits &= in.readInt() == task.number();
            int next = in.readInt();
            int floorFrame = in.readInt();
            long filmBytes = in.readLong();
            double seconds = in.readDouble();
            long steps = in.readLong();
            double lastStep = in.readDouble();
            double released = in.readDouble();
            if (!fits
                    || in.readInt() != State.FIELDS
                    || in.readInt() != task.grid().length()) {
                return Optional.empty();
            }
            List<float[]> fields = new ArrayList<>();
            for (int n = 0; n < State.FIELDS; n++) {
                fields.add(readField(in, task.grid().length()));
            }
            int sum = (int) summed.getChecksum().getValue();
            if (in.readInt() != sum || in.read() >= 0) {
                return Optional.empty();
            }
            State state = State.of(new State.Clock(seconds, steps, lastStep, released), fields);
            Flow flow = Flow.resume(task.setting(), workers, state);
            return Optional.of(new Resumed(new InkRun(task, flow, next, floorFrame), filmBytes));
        } catch (EOFException e) {
            return Optional.empty();
        }
    }

    private static float[] readField(DataInputStream in, int length) throws IOException {
        float[] field = new float[length];
        byte[] part = new byte[PART_BYTES];
        for (int done = 0; done < length; ) {
            int floats = Math.min(length - done, PART_BYTES / Float.BYTES);
            in.readFully(part, 0, floats * Float.BYTES);
            ByteBuffer.wrap(part).asFloatBuffer().get(field, done, floats);
            done += floats;
        }
        return field;
    }

    /// Writes all that is needed to take it up again between two frames.
    ///
    /// @param filmBytes how long its film is by now, bytes
    /// @param to where to
    /// @throws IOException where the world fails
    public void checkpoint(long filmBytes, OutputStream to) throws IOException {
        var summed = new CheckedOutputStream(to, new CRC32());
        var out = new DataOutputStream(summed);
        State state = flow.state();
        State.Clock clock = state.clock();
        out.writeLong(MAGIC);
        out.writeInt(EDITION);
        out.write(HexFormat.of().parseHex(task.key().hex()));
        out.writeInt(task.number());
        out.writeInt(next);
        out.writeInt(floorFrame);
        out.writeLong(filmBytes);
        out.writeDouble(clock.seconds());
        out.writeLong(clock.steps());
        out.writeDouble(clock.lastStepSeconds());
        out.writeDouble(clock.releasedMetres3());
        out.writeInt(State.FIELDS);
        out.writeInt(task.grid().length());
        for (int n = 0; n < State.FIELDS; n++) {
            writeField(state.field(n), out);
        }
        out.writeInt((int) summed.getChecksum().getValue());
        out.flush();
    }

    private static void writeField(float[] field, DataOutputStream out) throws IOException {
        byte[] part = new byte[PART_BYTES];
        for (int done = 0; done < field.length; ) {
            int floats = Math.min(field.length - done, PART_BYTES / Float.BYTES);
            ByteBuffer.wrap(part).asFloatBuffer().put(field, done, floats);
            out.write(part, 0, floats * Float.BYTES);
            done += floats;
        }
    }

    /// Whether its last frame was given.
    ///
    /// @return true at its end
    public boolean isOver() {
        return next > lastFrame();
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
        return isOver()
                ? 1
                : Math.min(0.99, next / (task.course().likelyFrame(task.shot().timing()) + 1.0));
    }

    /// Steps to the next frame.
    ///
    /// @return the frame; the first one is of still water at time 0
    public DyeFrame next() {
        if (isOver()) {
            throw new IllegalStateException("the run is over");
        }
        flow.run(next / task.shot().timing().framesPerSecond());
        DyeFrame frame = DyeFrame.of(next++, flow.dye());
        if (floorFrame == NOT_YET && frame.isOnFloor(ON_FLOOR)) {
            floorFrame = frame.number();
        }
        return frame;
    }

    /// The frame with which it ends, as far as is known by now.
    private int lastFrame() {
        InkShot.Timing timing = task.shot().timing();
        int last = task.course().lastFrame(timing);
        return floorFrame == NOT_YET
                ? last
                : Math.clamp((long) Math.ceil(LATER * floorFrame), task.course().leastFrame(timing), last);
    }
}
