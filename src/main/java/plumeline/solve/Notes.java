package plumeline.solve;

import java.util.ArrayList;
import java.util.List;
import plumeline.quantity.PaperUnit;
import plumeline.quantity.Print;
import plumeline.stage.Stage;

/// What else a crew must know of a shot.
final class Notes {
    private Notes() {}

    static List<String> of(Judged judged, double[] si, PaperUnit unit) {
        List<String> notes = new ArrayList<>();
        Stage stage = judged.stage();
        double last = stage.retime().realSeconds((double) stage.frames());
        for (var move : stage.shot().moves()) {
            double end = stage.endSeconds(move.name());
            if (end > last + 1e-6) {
                notes.add(move.name() + " is not over when the last frame ends: it takes " + Print.seconds(end, 2)
                        + ", the shot " + Print.seconds(last, 2) + " of real time.");
            }
        }
        notes.addAll(MachineNotes.of(stage, si, unit));
        return notes;
    }
}
