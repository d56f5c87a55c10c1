package plumeline.want;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import plumeline.plan.WantLine;
import plumeline.quantity.PaperUnit;
import plumeline.stage.Scene;

/// A thing is equally large in two shots.
///
/// Compared is the share of the picture's height at the thing's middle plane, as in `fills`. Margin in % of the other
/// shot's size: the tolerance less the difference.
///
/// @param line as written
/// @param thing index of the thing
/// @param shot the shot that it is compared with
/// @param tolerance share of that size by which it may differ, dimensionless
record SameSize(WantLine line, int thing, Other shot, double tolerance) implements Want {
    /// The shot compared with.
    ///
    /// @param name its name
    /// @param share the share that the thing fills there, dimensionless
    record Other(String name, double share) {}

    @Override
    public String unit() {
        return "%";
    }

    @Override
    public double[] parts(Moments moments) {
        return Parts.worst(moments.during(line.when()), this::partsIn);
    }

    private double ratio(Scene scene) {
        return Parts.inFrontMetres(scene, scene.things().get(thing)) <= 0
                ? -10
                : Fills.middlePlaneShare(scene, scene.things().get(thing)) / shot.share();
    }

    private double[] partsIn(Scene scene) {
        double ratio = ratio(scene);
        return new double[] {
            Parts.PERCENT * (ratio - 1 + tolerance), Parts.PERCENT * (1 + tolerance - ratio),
        };
    }

    @Override
    public Optional<String> findStanding(Moments moments, PaperUnit papers) {
        return Parts.findBehind(moments, line.when(), List.of(thing)).or(() -> worstStanding(moments));
    }

    private Optional<String> worstStanding(Moments moments) {
        return moments.during(line.when()).stream()
                .map(this::ratio)
                .max(Comparator.comparingDouble(ratio -> Math.abs(ratio - 1)))
                .map(ratio -> Parts.name(moments, thing) + " fills " + Parts.percent(ratio * shot.share())
                        + " of the picture's height, " + Parts.percent(shot.share()) + " in " + shot.name() + ": "
                        + Parts.points(Parts.PERCENT * (ratio - 1)) + (ratio >= 1 ? " larger; " : " smaller; ")
                        + Parts.percent(tolerance) + " is allowed.");
    }

    @Override
    public List<Relaxed> listRelaxed(double lack, Moments moments) {
        double easier = Math.ceil((tolerance * Parts.PERCENT + lack) * 10) / 10 / Parts.PERCENT;
        return easier > 1
                ? List.of()
                : List.of(new Relaxed(
                        new SameSize(line, thing, shot, easier),
                        "within " + Parts.percent(easier) + " instead of " + Parts.percent(tolerance) + "."));
    }
}
