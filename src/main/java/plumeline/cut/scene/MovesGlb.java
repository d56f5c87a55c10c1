package plumeline.cut.scene;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.LongStream;
import plumeline.quantity.FrameRate;
import plumeline.solve.FilmAnswer;
import plumeline.solve.ShotAnswer;
import plumeline.stage.Scene;
import plumeline.stage.Stage;

/// A solved shot, or one of its passes, as an animated scene: binary glTF 2.0 in one piece (GLB).
///
/// The camera, the placed things, the lamps, the tank and the table's top are nodes by their names. What moves has a
/// key at each screen frame, at the frame's start, straight between them (`LINEAR`); what stands has none. The one
/// animation bears the name of the shot, or of shot and pass. Figures in the binary part are single precision: a place
/// a metre off is kept to 1e-7 m. The same shot gives the same bytes.
///
/// The picture of the camera is the solved one: `yfov` is twice the arctangent of half the height's tangent, with the
/// scale that the focus at the start gives. What can't be carried is told by [#notes] and in the file
/// (`asset.extras`).
///
/// **Source:** glTF 2.0, Khronos Group, sections 3.11 (animations), 3.10 (cameras), 4 (GLB).
public final class MovesGlb {
    private static final int MAGIC = 0x46546C67;
    private static final int VERSION = 2;
    private static final int JSON_CHUNK = 0x4E4F534A;
    private static final int BINARY_CHUNK = 0x004E4942;
    private static final int HEADER_BYTES = 12;
    private static final int CHUNK_HEADER_BYTES = 8;

    private final About about;
    private final Parts parts;

    /// What a scene is of.
    ///
    /// @param film the film's title
    /// @param shot the shot's name
    /// @param pass the pass's name; empty for the shot itself
    /// @param rate the film's rate
    /// @param notes what it doesn't carry, in sentences
    record About(String film, String shot, String pass, FrameRate rate, List<String> notes) {
        About {
            notes = List.copyOf(notes);
        }

        String name() {
            return pass.isEmpty() ? shot : shot + "." + pass;
        }
    }

    private MovesGlb(About about, Parts parts) {
        this.about = about;
        this.parts = parts;
    }

    /// Prepares a solved film's scenes.
    ///
    /// @param film the findings
    /// @return one a shot, or a pass where a shot has passes (and of the shot itself where it is cut to), in the
    /// plan's order
    public static List<MovesGlb> listAll(FilmAnswer film) {
        List<MovesGlb> all = new ArrayList<>();
        for (ShotAnswer shot : film.shots()) {
            for (ShotAnswer.Run run : film.listRuns(shot)) {
                all.add(of(film, shot, run));
            }
        }
        return all;
    }

    private static MovesGlb of(FilmAnswer film, ShotAnswer shot, ShotAnswer.Run run) {
        Stage stage = run.stage();
        Stage.Laid laid = stage.laid(shot.posed().values());
        List<Scene> scenes = LongStream.range(0, stage.frames())
                .mapToObj(frame -> laid.scene((double) frame))
                .toList();
        FrameRate rate = FrameRate.of(film.plan().film().rate());
        About about = new About(
                film.plan().film().title().orElse(""),
                shot.shot(),
                run.pass(),
                rate,
                NotCarried.list(shot, run, scenes));
        return new MovesGlb(about, Parts.of(scenes, stage, rate));
    }

    /// Gives the shot.
    ///
    /// @return its name
    public String shot() {
        return about.shot();
    }

    /// Gives the pass.
    ///
    /// @return its name; empty for the shot itself
    public String pass() {
        return about.pass();
    }

    /// Gives what the animation and a file of it are called.
    ///
    /// @return the shot's name, or `shot-pass`
    public String name() {
        return about.name();
    }

    /// Tells what the scene doesn't carry.
    ///
    /// @return sentences; the file says them too
    public List<String> notes() {
        return about.notes();
    }

    /// Gives the file.
    ///
    /// @return its bytes
    public byte[] bytes() {
        byte[] json = padded(SceneJson.of(about, parts).getBytes(UTF_8), ' ');
        byte[] binary = padded(parts.figures().bytes(), 0);
        int length = HEADER_BYTES + 2 * CHUNK_HEADER_BYTES + json.length + binary.length;
        ByteBuffer out = ByteBuffer.allocate(length).order(ByteOrder.LITTLE_ENDIAN);
        out.putInt(MAGIC).putInt(VERSION).putInt(length);
        out.putInt(json.length).putInt(JSON_CHUNK).put(json);
        out.putInt(binary.length).putInt(BINARY_CHUNK).put(binary);
        return out.array();
    }

    /// A chunk ends at a multiple of four bytes.
    private static byte[] padded(byte[] bytes, int with) {
        byte[] padded = Arrays.copyOf(bytes, (bytes.length + 3) / 4 * 4);
        Arrays.fill(padded, bytes.length, padded.length, (byte) with);
        return padded;
    }
}
