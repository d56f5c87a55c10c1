package plumeline.timeline;

import java.util.Optional;
import java.util.OptionalLong;
import plumeline.plan.Pass;
import plumeline.plan.Plan;
import plumeline.plan.Shot;
import plumeline.plan.Written;
import plumeline.text.Node;

/// The take of a shot's pass that the film uses, as far as the plan knows it.
///
/// Frames are labels of the clip's timecode, counted at the film's rate from 00:00:00:00: the recorded frame k after GO
/// has the label `goFrame + k`. A take that the plan doesn't name is missing: it gets a name of shot and pass, and its
/// GO is at 01:00:00:00 unless its timecode is written.
///
/// @param name what it is called: its file's name without folder and ending, else the shot's with its pass
/// @param file its file from the plan's folder; empty where the take is missing
/// @param reel its reel
/// @param goFrame the label of the frame recorded at GO
/// @param startFrame the label of its first frame; where nothing is written, as many before GO as there are handles
/// @param frames how many were recorded, where known
public record Clip(
        String name, Optional<String> file, String reel, long goFrame, long startFrame, OptionalLong frames) {
    private static final String HOUR = "01:00:00:00";
    private static final String NONE = "00:00:00:00";

    /// Finds the clip of a shot's pass. Each pass has a take of its own: its file and reel are those that its overrides
    /// name (`clip.file`), whatever the shot's own take is called; the rest of `clip` counts for all passes.
    ///
    /// @param plan the plan
    /// @param shot the shot's name
    /// @param pass the pass's name; empty for the shot itself
    /// @return the clip
    public static Clip of(Plan plan, String shot, String pass) {
        Shot whole = plan.findShot(shot).orElseThrow();
        Optional<Pass> found = whole.findPass(pass);
        boolean isOwn = found.isEmpty() || writes(found.get(), "file");
        boolean hasReel = found.isEmpty() || writes(found.get(), "reel");
        Written written = found.map(Pass::effective).orElse(whole).written();
        Optional<String> file = isOwn ? written.findWord("clip.file") : Optional.empty();
        String name = file.map(Clip::bare).orElse(pass.isEmpty() ? shot : shot + "." + pass);
        OptionalLong go = written.findQuantity("clip.go").stream()
                .mapToLong(each -> Math.round(each.si()))
                .findFirst();
        Optional<String> starts = written.findWord("clip.starts");
        boolean isTold = file.isPresent() || starts.isPresent();
        long start = plan.film().frameOf(starts.orElse(isTold ? NONE : HOUR));
        long handles = go.orElse(plan.film().handlesOrDefault());
        OptionalLong frames = written.findQuantity("clip.frames").stream()
                .mapToLong(each -> Math.round(each.si()))
                .findFirst();
        return new Clip(
                name,
                file,
                written.findWord("clip.reel").filter(_ -> hasReel).orElse(name),
                isTold ? start + go.orElse(0) : start,
                isTold ? start : start - handles,
                frames);
    }

    private static boolean writes(Pass pass, String key) {
        return pass.overrides().containsKey("clip." + key)
                || pass.overrides().get("clip") instanceof Node.Mapping clip
                        && clip.find(key).isPresent();
    }

    private static String bare(String file) {
        String last = file.substring(Math.max(file.lastIndexOf('/'), file.lastIndexOf('\\')) + 1);
        int dot = last.lastIndexOf('.');
        return dot > 0 ? last.substring(0, dot) : last;
    }

    /// Tells whether the plan names no take.
    ///
    /// @return true where it is missing
    public boolean isMissing() {
        return file.isEmpty();
    }
}
