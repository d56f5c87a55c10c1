package plumeline.cut.mask;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import plumeline.plan.Move;
import plumeline.plan.Shot;
import plumeline.quantity.Print;
import plumeline.stage.Stage;

/// What an editor is told with the masks of a pass.
final class MaskNotes {
    private MaskNotes() {}

    static List<String> of(Stage stage, List<MaskFrame> frames, Shutter shutter) {
        Shot shot = stage.shot();
        List<String> notes = new ArrayList<>();
        notes.add(laying(frames));
        notes.add("A mask ends where its line enters its own thing, "
                + Print.number(Margins.EDGE_PIXELS, 0)
                + " px past it. What stands before a line, an edge of its own thing too, isn't cut out of its mask.");
        if (stage.isMoving() && shutter.slipSeconds() > 0) {
            notes.add("Camera and moves don't start together: the masks are wider by half a captured frame's travel.");
        }
        if (shot.moves().stream().anyMatch(Move::isEven)) {
            notes.add("Even moves are masked from their start to their end: the run-up before and the run-out after"
                    + " aren't.");
        }
        if (shutter.readoutSeconds() > 0) {
            notes.add("The sensor reads its rows within " + Print.number(shutter.readoutSeconds() * 1000, 1)
                    + " ms: the masks hold a line's place in the first row and in the last.");
        }
        return notes;
    }

    private static String laying(List<MaskFrame> frames) {
        double placing = frames.stream()
                .flatMap(frame -> frame.parts().stream())
                .mapToDouble(part -> Math.max(
                        part.from().margins().placingPixels(),
                        part.to().margins().placingPixels()))
                .max()
                .orElse(0);
        return "The masks follow the plan as it is solved. "
                + (placing > 0
                        ? "They don't hold the placing error: lay the first one over the take, and shift all of them by"
                                + " as much as the line lies beside it, up to ± " + Print.number(Math.ceil(placing), 0)
                                + " px (placing columns)."
                        : "Lay the first one over the take, and shift all of them by as much as the line lies beside"
                                + " it.");
    }

    /// What of a pass isn't masked.
    static List<String> gaps(List<MaskFrame> frames, ClipSize size) {
        Set<String> notes = new TreeSet<>();
        for (MaskFrame frame : frames) {
            for (MaskFrame.Gap gap : frame.gaps()) {
                if (gap.mayShow(size)) {
                    notes.add("A stretch of " + gap.strand() + " isn't masked, as it is " + MaskCsv.why(gap.trouble())
                            + ": look there by eye.");
                }
            }
        }
        return List.copyOf(notes);
    }
}
