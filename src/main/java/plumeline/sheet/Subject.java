package plumeline.sheet;

import java.util.ArrayList;
import java.util.List;
import plumeline.plan.Pass;
import plumeline.plan.Plan;
import plumeline.plan.Playback;
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
/// @param pass which of its passes, from 0
record Subject(Plan plan, ShotAnswer answer, PaperUnit unit, int pass) {
    /// In the plan's own unit.
    Subject(Plan plan, ShotAnswer answer) {
        this(plan, answer, plan.film().papersOrDefault());
    }

    /// In a unit.
    Subject(Plan plan, ShotAnswer answer, PaperUnit unit) {
        this(plan, answer, unit, 0);
    }

    String name() {
        return answer.shot();
    }

    /// The passes, as the plan has them.
    List<Pass> passes() {
        return plan.findShot(name()).map(Shot::passes).orElse(List.of());
    }

    /// The shot as each of its passes has it.
    List<Subject> eachPass() {
        List<Subject> all = new ArrayList<>();
        for (int i = 0; i < answer.posed().stages().size(); i++) {
            all.add(new Subject(plan, answer, unit, i));
        }
        return all;
    }

    /// To follow a heading: what is described is the first pass's.
    String inFirstPass() {
        return passes().isEmpty() ? "" : ", in pass " + passes().getFirst().name();
    }

    Stage stage() {
        return answer.posed().stages().get(pass).stage();
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

    /// How fast it plays, where not as shot.
    private String played() {
        return switch (shot().playback()) {
            case Playback.Constant(double speed, var _) -> speed == 1 ? "" : " at " + Print.share(speed, 0);
            case Playback.Curve _ -> ", ramped";
        };
    }

    String length() {
        Stage stage = stage();
        return stage.frames() + (stage.frames() == 1 ? " frame / " : " frames / ")
                + Print.seconds(stage.lastSeconds(), 2) + " real" + played();
    }
}
