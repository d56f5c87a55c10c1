package plumeline.want;

import java.util.Optional;
import plumeline.plan.WantLine;
import plumeline.stage.Scene;

/// A thing is equally large in two shots.
///
/// Compared is the share of the picture's height at the thing's middle plane, as in `fills`. Margin in % of the other
/// shot's size: the tolerance less the difference.
///
/// @param line as written
/// @param thing index of the thing
/// @param other the share in the other shot, dimensionless
/// @param tolerance share of that size by which it may differ, dimensionless
record SameSize(WantLine line, int thing, double other, double tolerance) implements Want {
    @Override
    public String unit() {
        return "%";
    }

    @Override
    public double[] parts(Moments moments) {
        return Parts.worst(moments.during(line.when()), this::partsIn);
    }

    private double[] partsIn(Scene scene) {
        double ratio = Parts.inFrontMetres(scene, scene.things().get(thing)) <= 0
                ? -10
                : Fills.middlePlaneShare(scene, scene.things().get(thing)) / other;
        return new double[] {
            Parts.PERCENT * (ratio - 1 + tolerance), Parts.PERCENT * (1 + tolerance - ratio),
        };
    }

    @Override
    public Optional<Relaxed> findRelaxed(double lack) {
        double easier = Math.ceil((tolerance * Parts.PERCENT + lack) * 10) / 10 / Parts.PERCENT;
        return easier > 1
                ? Optional.empty()
                : Optional.of(new Relaxed(
                        new SameSize(line, thing, other, easier),
                        "within " + Parts.percent(easier) + " instead of " + Parts.percent(tolerance) + "."));
    }
}
