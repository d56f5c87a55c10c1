package plumeline.plume;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.DataInputStream;
import java.io.DataOutputStream;
import java.io.EOFException;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.zip.GZIPInputStream;
import java.util.zip.GZIPOutputStream;

/// How a record is kept. Its form is in `docs/ink-files.md`.
public final class RecordBytes {
    private static final long MAGIC = 0x504c_554d_4552_4543L; // PLUMEREC
    private static final int EDITION = 2;

    private RecordBytes() {}

    /// Keeps a record.
    ///
    /// @param record the record
    /// @return its bytes
    public static byte[] write(InkRecord record) {
        var bytes = new ByteArrayOutputStream();
        try (var out = new DataOutputStream(new GZIPOutputStream(bytes))) {
            out.writeLong(MAGIC);
            out.writeInt(EDITION);
            writeHead(record.head(), out);
            out.writeInt(record.subjects().size());
            for (Subject subject : record.subjects()) {
                out.writeUTF(subject.thing());
                out.writeUTF(subject.unseen());
                out.writeInt(subject.heights().size());
                for (Subject.Height height : subject.heights()) {
                    out.writeDouble(height.metres());
                    out.writeDouble(height.zMetres());
                }
            }
            out.writeInt(record.runs().size());
            for (InkRecord.Run run : record.runs()) {
                out.writeInt(run.number());
                out.writeInt(run.frames());
                for (float[] series : run.series()) {
                    for (float value : series) {
                        out.writeFloat(value);
                    }
                }
            }
        } catch (IOException e) {
            throw new UncheckedIOException("bytes in memory can't be written", e);
        }
        return bytes.toByteArray();
    }

    private static void writeHead(InkRecord.Head head, DataOutputStream out) throws IOException {
        out.writeUTF(head.shot());
        out.writeUTF(head.flow().hex());
        out.writeUTF(head.view().hex());
        out.writeDouble(head.course().cellMetres());
        out.writeLong(head.course().seed());
        out.writeDouble(
                switch (head.course().until()) {
                    case InkCourse.Until.Time(double seconds) -> seconds;
                    case InkCourse.Until.ShotAndFloor() -> 0;
                });
        out.writeDouble(head.strength().perMetre());
        out.writeBoolean(head.strength().measured());
        out.writeDouble(head.levels().floorMetres());
        out.writeDouble(head.levels().depthMetres());
        out.writeDouble(head.levels().mouthMetres());
        out.writeDouble(head.framesPerSecond());
    }

    /// Reads a record.
    ///
    /// @param bytes what was kept
    /// @return the record; empty where the bytes are damaged, cut short or no record
    public static Optional<InkRecord> read(byte[] bytes) {
        byte[] content;
        try (var zipped = new GZIPInputStream(new ByteArrayInputStream(bytes))) {
            // Read whole, its sum is checked before anything in it is believed.
            content = zipped.readAllBytes();
        } catch (IOException e) {
            return Optional.empty();
        }
        try (var in = new DataInputStream(new ByteArrayInputStream(content))) {
            if (in.readLong() != MAGIC || in.readInt() != EDITION) {
                return Optional.empty();
            }
            InkRecord.Head head = readHead(in);
            List<Subject> subjects = new ArrayList<>();
            for (int left = in.readInt(); left > 0; left--) {
                subjects.add(readSubject(in));
            }
            List<InkRecord.Run> runs = new ArrayList<>();
            for (int left = in.readInt(); left > 0; left--) {
                runs.add(readRun(in, subjects));
            }
            return in.read() < 0 ? Optional.of(new InkRecord(head, subjects, runs)) : Optional.empty();
        } catch (IOException | IllegalArgumentException e) {
            return Optional.empty();
        }
    }

    private static InkRecord.Head readHead(DataInputStream in) throws IOException {
        String shot = in.readUTF();
        InkKey flow = new InkKey(in.readUTF());
        InkKey view = new InkKey(in.readUTF());
        double cell = in.readDouble();
        long seed = in.readLong();
        double until = in.readDouble();
        InkCourse course = new InkCourse(
                cell, seed, until > 0 ? new InkCourse.Until.Time(until) : new InkCourse.Until.ShotAndFloor());
        Strength strength = new Strength(in.readDouble(), in.readBoolean());
        var levels = new InkRecord.Levels(in.readDouble(), in.readDouble(), in.readDouble());
        return new InkRecord.Head(shot, flow, view, course, strength, levels, in.readDouble());
    }

    private static Subject readSubject(DataInputStream in) throws IOException {
        String thing = in.readUTF();
        String unseen = in.readUTF();
        List<Subject.Height> heights = new ArrayList<>();
        for (int left = in.readInt(); left > 0; left--) {
            heights.add(new Subject.Height(in.readDouble(), in.readDouble()));
        }
        return new Subject(thing, heights, unseen);
    }

    private static InkRecord.Run readRun(DataInputStream in, List<Subject> subjects) throws IOException {
        int number = in.readInt();
        int frames = in.readInt();
        float[] low = floats(in, frames);
        float[] halfWidth = floats(in, frames);
        List<float[]> clear = new ArrayList<>();
        for (Subject subject : subjects) {
            clear.add(floats(in, frames * subject.heights().size()));
        }
        return new InkRecord.Run(number, low, halfWidth, clear);
    }

    private static float[] floats(DataInputStream in, int count) throws IOException {
        if (count < 0 || count > in.available() / Float.BYTES) {
            throw new EOFException("fewer figures than promised");
        }
        float[] values = new float[count];
        for (int n = 0; n < count; n++) {
            values[n] = in.readFloat();
        }
        return values;
    }
}
