package plumeline.draw;

import plumeline.plan.Shot;
import plumeline.quantity.Print;
import plumeline.sketch.Labels;
import plumeline.sketch.Page;
import plumeline.stage.Scene;
import plumeline.stage.Stage;

/// What all parts of one plan from above share: the shot at its start and end, the page, its scale, its labels.
///
/// @param stage the shot
/// @param marks the answers on its marks
/// @param first the shot at its start
/// @param last the shot at its end
/// @param print how lengths are printed
/// @param page the page
/// @param scale from the table to the page
/// @param labels where labels may stand
/// @param lettering the labels in waiting
/// @param detail what is shown of things
record PlanBoard(
        Stage stage,
        MarkBook marks,
        Scene first,
        Scene last,
        Print print,
        Page page,
        PlanScale scale,
        Labels labels,
        PlanLettering lettering,
        Detail detail) {
    /// What a plan from above shows of things.
    enum Detail {
        /// All, in one piece.
        WHOLE,
        /// Where they are; names and figures stand in an enlarged part.
        OVERVIEW,
        /// Things and what is between them.
        ENLARGED
    }

    Shot shot() {
        return stage.shot();
    }

    /// A coordinate as a tape reads it.
    String signed(double metres) {
        return print.lengthNumber(metres, Print.Hand.TAPE).replace('-', '−');
    }

    /// A mark's leeway in brackets, after its value and the word for a measured one; empty where it has no answer.
    String leewayWords(String path) {
        LeewayText leeway = new LeewayText(print.unit());
        return marks.measuredWord(path)
                + marks.find(path)
                        .map(answer -> " (" + leeway.both(answer) + ")")
                        .orElse("");
    }
}
