package plumeline.cut.mask;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import plumeline.plan.Plan;
import plumeline.quantity.Quantity;
import plumeline.solve.FilmAnswer;
import plumeline.solve.ShotAnswer;
import plumeline.stage.Scene;
import plumeline.stage.Stage;
import plumeline.stage.Strand;
import plumeline.time.SourceFrames;

/// One pass of a solved shot in which something is held by lines or rigs: its masks, captured frame by captured frame.
public final class Masked {
    private final String shot;
    private final String pass;
    private final Stage stage;
    private final double[] values;
    private final Stage.Laid laid;
    private final Shutter shutter;
    private final List<Strand> strands;
    private final List<Swings.Off> off = new ArrayList<>();
    private final List<String> notes;
    private final ClipSize size;

    Masked(String shot, ShotAnswer.Run run, double[] values, Quantity film) {
        this.shot = shot;
        pass = run.pass();
        stage = run.stage();
        this.values = values.clone();
        laid = stage.laid(values);
        shutter = Shutter.of(stage.shot(), film);
        strands = Strand.listAll(stage);
        Scene start = laid.sceneAt(0);
        size = ClipSize.of(start.picture());
        Swings swings = new Swings(stage, values);
        for (Strand strand : strands) {
            off.add(swings.off(strand, strand.at(stage, values, start)));
        }
        Set<String> all = new LinkedHashSet<>(swings.notes());
        strands.forEach(strand -> strand.assumed().forEach(assumed -> all.add("Assumed: " + assumed + ".")));
        List<MaskFrame> frames = List.of(frame(0), frame(lastShown() / 2), frame(lastShown()));
        all.addAll(MaskNotes.of(stage, frames, shutter));
        all.addAll(MaskNotes.gaps(frames, size));
        notes = List.copyOf(all);
    }

    /// Lists the passes of a film in which something is held by lines or rigs.
    ///
    /// @param film the findings on it
    /// @return the passes in the plan's order
    public static List<Masked> listAll(FilmAnswer film) {
        List<Masked> all = new ArrayList<>();
        for (ShotAnswer answer : film.shots()) {
            for (ShotAnswer.Run run : film.listRuns(answer)) {
                if (!Strand.listAll(run.stage()).isEmpty()) {
                    all.add(of(film.plan(), answer, run));
                }
            }
        }
        return all;
    }

    /// Prepares a pass.
    ///
    /// @param plan the plan
    /// @param answer the findings on the shot
    /// @param run one of its passes
    /// @return the pass
    public static Masked of(Plan plan, ShotAnswer answer, ShotAnswer.Run run) {
        return new Masked(
                answer.shot(), run, answer.posed().values(), plan.film().rate());
    }

    /// Gives the shot's name.
    ///
    /// @return the name
    public String shot() {
        return shot;
    }

    /// Gives the pass's name.
    ///
    /// @return the name; empty for the shot itself
    public String pass() {
        return pass;
    }

    /// Gives the shot as staged.
    ///
    /// @return the pass's where it is of one
    public Stage stage() {
        return stage;
    }

    /// Gives what is painted out.
    ///
    /// @return at least one line or rig
    public List<Strand> strands() {
        return strands;
    }

    /// Gives when its frames are exposed.
    ///
    /// @return the shutter
    public Shutter shutter() {
        return shutter;
    }

    /// Gives the clip's size.
    ///
    /// @return the size
    public ClipSize size() {
        return size;
    }

    /// Gives what was taken for what isn't known, and what the masks don't cover.
    ///
    /// @return sentences
    public List<String> notes() {
        return notes;
    }

    /// Finds which captured frame each screen frame of the shot shows.
    ///
    /// @return the frames, by the shot's own screen frames
    public SourceFrames sources() {
        return SourceFrames.of(stage.retime(), shutter.framesPerSecond(), (int) stage.frames());
    }

    /// Gives the last captured frame that the shot shows.
    ///
    /// @return its number, from 0 at GO
    public long lastShown() {
        SourceFrames sources = sources();
        long last = 0;
        for (int i = 0; i < sources.count(); i++) {
            last = Math.max(last, sources.shown(i));
        }
        return last;
    }

    /// Tells whether every captured frame's mask is the same.
    ///
    /// @return true where nothing moves
    public boolean isStill() {
        return !stage.isMoving();
    }

    Strand.Ends ends(Strand strand, Scene scene) {
        return strand.at(stage, values, scene);
    }

    Scene sceneAt(double realSeconds) {
        return laid.sceneAt(realSeconds);
    }

    double[] values() {
        return values.clone();
    }

    /// Works out the mask of a captured frame.
    ///
    /// @param captured the frame, 0 at GO; handles before it are below 0
    /// @return the mask
    public MaskFrame frame(long captured) {
        List<Scene> scenes = new ArrayList<>();
        for (double seconds : isStill() ? List.of(shutter.opensSeconds(captured)) : shutter.instants(captured)) {
            scenes.add(laid.sceneAt(seconds));
        }
        List<MaskFrame.Part> parts = new ArrayList<>();
        List<MaskFrame.Gap> gaps = new ArrayList<>();
        List<MaskFrame.Patches> patches = new ArrayList<>();
        Swings swings = new Swings(stage, values);
        for (int i = 0; i < strands.size(); i++) {
            Strand strand = strands.get(i);
            List<Strand.Ends> ends =
                    scenes.stream().map(scene -> ends(strand, scene)).toList();
            StrandMask mask = new StrandMask(
                    strand, new StrandMask.Course(scenes, ends, size, stage.findTank()), off.get(i), swings);
            mask.work();
            parts.addAll(mask.parts());
            gaps.addAll(mask.gaps());
            patches.add(mask.patches());
        }
        return new MaskFrame(captured, parts, gaps, patches);
    }
}
