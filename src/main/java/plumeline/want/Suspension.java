package plumeline.want;

import java.util.List;
import java.util.Optional;
import plumeline.plan.Named;
import plumeline.plan.Placed;
import plumeline.plan.Plan;
import plumeline.plan.WantLine;
import plumeline.plan.When;
import plumeline.plan.Written;
import plumeline.quantity.PaperUnit;
import plumeline.stage.Stage;
import plumeline.text.Node;

/// How a hung thing hangs by a shot's marks: what `hangs` judges, for papers too.
public sealed interface Suspension {
    /// It is computed.
    ///
    /// @param standing how it hangs and what is wanted, in sentences
    /// @param pullsNewtons what each line pulls, in the order of its ties, newtons; empty where it floats or tips
    /// @param assumed what was assumed of the thing, as a sentence; empty where nothing was
    record Known(String standing, List<Double> pullsNewtons, String assumed) implements Suspension {
        /// Copies the list.
        public Known {
            pullsNewtons = List.copyOf(pullsNewtons);
        }
    }

    /// It isn't.
    ///
    /// @param reason what is missing
    record Unknown(String reason) implements Suspension {}

    /// Judges a hung thing by the first of the shot's wants on how it hangs; where there is none, against how it is
    /// placed.
    ///
    /// @param plan the plan
    /// @param stage the shot, or one of its passes
    /// @param values the marks' values, SI, in the order of the stage's marks
    /// @param thing its index in the stage's things; it hangs
    /// @param papers the unit of length that the papers speak
    /// @return how it hangs, or what is missing
    static Suspension of(Plan plan, Stage stage, double[] values, int thing, PaperUnit papers) {
        Placed placed = stage.shot().placed().get(thing);
        WantLine line = stage.shot().wants().stream()
                .filter(one -> one.word().equals("hangs") || one.word().equals("upright"))
                .filter(one -> one.subjects().getFirst().name().equals(placed.name()))
                .findFirst()
                .orElseGet(() -> asPlaced(placed));
        Moments moments = new Moments(stage, values, List.of(0.0), new Recall());
        Want want = WaterWants.of(line, plan, stage);
        Optional<String> unknown = want.findUnknown().or(() -> want.findUnknown(moments));
        if (unknown.isPresent()) {
            return new Unknown(unknown.get());
        }
        String standing = want.findStanding(moments, papers).orElseThrow();
        return want instanceof Hangs hangs
                ? new Known(standing, hangs.pullsNewtons(moments), hangs.loads().assumed())
                // It floats: its lines are slack.
                : new Known(standing, List.of(), "");
    }

    private static WantLine asPlaced(Placed placed) {
        var place = placed.written().place();
        Written nothing = new Written(new Node.Mapping(List.of(), place), place);
        List<Named> subjects = List.of(new Named(placed.name(), place));
        return new WantLine("", "hangs", subjects, new When.Start(), Optional.empty(), nothing, place);
    }
}
