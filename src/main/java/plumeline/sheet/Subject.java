package plumeline.sheet;

import plumeline.plan.Plan;
import plumeline.plan.Shot;
import plumeline.quantity.PaperUnit;
import plumeline.quantity.Print;
import plumeline.solve.ShotAnswer;
import plumeline.stage.Scene;
import plumeline.stage.Stage;

/// What a sheet is about: a shot of a plan with its marks set. A shot with passes is described by its first one; what
/// the others change is listed beside it.
///
/// @param plan the plan
/// @param answer the findings on the shot
/// @param unit the papers' unit of length
record Subject(Plan plan, ShotAnswer answer, PaperUnit unit) {
    /// In the plan's own unit.
    Subject(Plan plan, ShotAnswer answer) {
        this(plan, answer, plan.film().papersOrDefault());
    }

    String name() {
        return answer.shot();
    }

    Stage stage() {
        return answer.posed().stages().getFirst().stage();
    }

    Shot shot() {
        return stage().shot();
    }

    Scene first() {
        return stage().scene(answer.posed().values(), 0);
    }

    Print print() {
        return new Print(unit);
    }

    /// The shot's number on all papers: its place in the plan.
    int number() {
        return plan.shots().stream().map(Shot::name).toList().indexOf(name()) + 1;
    }

    String length() {
        Stage stage = stage();
        return stage.frames() + (stage.frames() == 1 ? " screen frame / " : " screen frames / ")
                + Print.seconds(stage.retime().realSeconds((double) stage.frames()), 2) + " real";
    }
}
