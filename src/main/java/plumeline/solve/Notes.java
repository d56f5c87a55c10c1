package plumeline.solve;

import java.util.ArrayList;
import java.util.List;
import plumeline.pace.Coupling;
import plumeline.quantity.PaperUnit;
import plumeline.quantity.Print;
import plumeline.quantity.Quantity;
import plumeline.stage.Stage;

/// What else a crew must know of a shot.
final class Notes {
    private Notes() {}

    static List<String> of(Judged judged, double[] si, PaperUnit unit, Quantity film) {
        List<String> notes = new ArrayList<>();
        Stage stage = judged.stage();
        double last = stage.lastSeconds();
        for (var move : stage.shot().moves()) {
            double end = stage.endSeconds(move.name());
            if (last <= 0) {
                notes.add(move.name() + " is never seen: the shot holds one frame.");
            } else if (end > last + 1e-6) {
                notes.add(move.name() + " is not over when the last frame ends: it takes " + Print.seconds(end, 2)
                        + ", the shot " + Print.seconds(last, 2) + " of real time."
                        + MachineNotes.toEnd(stage, move, si));
            } else if (move.duration().isPresent() && end > 0) {
                long still = still(stage, end);
                if (still > 0) {
                    notes.add(move.name() + " is over after " + Print.seconds(end, 2) + "; "
                            + stands(still, isLast(stage, end)));
                }
            }
        }
        notes.addAll(MachineNotes.of(stage, si, unit));
        Coupling coupling = Coupling.of(stage, film);
        notes.addAll(coupling.listNotes());
        coupling.findMissed(si).ifPresent(notes::add);
        notes.addAll(LampNotes.of(stage, si));
        return notes;
    }

    private static boolean isLast(Stage stage, double end) {
        return stage.shot().moves().stream().allMatch(move -> stage.endSeconds(move.name()) <= end + 1e-6);
    }

    private static String stands(long still, boolean isLast) {
        String frames = still == 1 ? "the last frame" : "the last " + still + " frames";
        return isLast ? frames + (still == 1 ? " stands" : " stand") + " still." : "it stands still in " + frames + ".";
    }

    /// Counts the frames that begin when a move is over already, by halving; none of a shot in which real time runs
    /// back.
    private static long still(Stage stage, double endSeconds) {
        if (stage.retime().realSeconds((double) stage.frames()) < stage.lastSeconds()) {
            return 0;
        }
        long low = 0;
        long high = stage.frames();
        while (low < high) {
            long middle = low + (high - low) / 2;
            if (stage.retime().realSeconds((double) middle) >= endSeconds - 1e-6) {
                high = middle;
            } else {
                low = middle + 1;
            }
        }
        return stage.frames() - high;
    }
}
