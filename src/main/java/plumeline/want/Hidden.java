package plumeline.want;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;
import java.util.stream.Stream;
import plumeline.geom.Aim;
import plumeline.geom.Body;
import plumeline.geom.Pinhole;
import plumeline.geom.Projection;
import plumeline.optics.TankView;
import plumeline.plan.Thing;
import plumeline.plan.WantLine;
import plumeline.quantity.PaperUnit;
import plumeline.sight.Sides;
import plumeline.sight.Sight;
import plumeline.stage.Scene;
import plumeline.stage.Stage;

/// Things are hidden behind others, seen from the lens point.
///
/// Margin in mm at the depth of the hidden thing's axis: the smallest distance from its outline to the edge of the
/// union of what hides it; outside, minus the largest protrusion. One part a side of each hidden thing.
///
/// @param line as written
/// @param things indices of the hidden things
/// @param behind indices of what hides them
/// @param clear names of hiders that are clear, through which the thing would show
record Hidden(WantLine line, List<Integer> things, List<Integer> behind, List<String> clear) implements Want {
    private static final List<String> SIDES = List.of("to camera left", "to camera right", "below", "above");

    Hidden {
        things = List.copyOf(things);
        behind = List.copyOf(behind);
        clear = List.copyOf(clear);
    }

    static Hidden of(WantLine line, Stage stage, List<Integer> things, List<Integer> behind) {
        List<String> clear = new ArrayList<>();
        for (int index : behind) {
            var placed = stage.shot().placed().get(index);
            if (placed.thing().body().filter(body -> body == Thing.Body.CLEAR).isPresent()) {
                clear.add(placed.name());
            }
        }
        return new Hidden(line, things, behind, clear);
    }

    @Override
    public String unit() {
        return "mm";
    }

    @Override
    public Optional<String> findUnknown() {
        return clear.isEmpty()
                ? Optional.empty()
                : Optional.of("Clear glass: what stands behind " + String.join(", ", clear)
                        + " shows through, bent. Look through the lens.");
    }

    @Override
    public Optional<String> findStanding(Moments moments, PaperUnit papers) {
        return Parts.findBehind(
                        moments,
                        line.when(),
                        Stream.concat(things.stream(), behind.stream()).toList())
                .or(() -> Optional.of(standing(moments, papers)));
    }

    private String standing(Moments moments, PaperUnit papers) {
        double[] parts = parts(moments);
        int worst = Parts.worstOf(parts);
        String size = Parts.distance(parts[worst], papers);
        return parts[worst] >= 0
                ? "Hidden; " + size + " to spare."
                : Parts.name(moments, things.get(worst / 4)) + " sticks out by " + size + " " + SIDES.get(worst % 4)
                        + ".";
    }

    @Override
    public double[] parts(Moments moments) {
        return Parts.worst(moments.during(line.when()), scene -> partsIn(scene, moments.recall()));
    }

    private double[] partsIn(Scene scene, Recall recall) {
        double[] parts = new double[things.size() * 4];
        List<Body> hiders = new ArrayList<>(behind.size());
        double hidersInFront = Double.POSITIVE_INFINITY;
        for (int index : behind) {
            hiders.add(scene.things().get(index));
            hidersInFront = Math.min(hidersInFront, Parts.inFrontMetres(scene, hiders.getLast()));
        }
        for (int i = 0; i < things.size(); i++) {
            Body body = scene.things().get(things.get(i));
            double inFront = Math.min(hidersInFront, Parts.inFrontMetres(scene, body));
            if (inFront <= 0) {
                java.util.Arrays.fill(parts, 4 * i, 4 * i + 4, Parts.behind(inFront));
                continue;
            }
            Projection view = view(scene, body, hiders);
            Sides sides = recall.hidden(view, body, hiders);
            double scale = Parts.MILLIMETRES * view.depth(body.middle());
            parts[4 * i] = scale * sides.left();
            parts[4 * i + 1] = scale * sides.right();
            parts[4 * i + 2] = scale * sides.below();
            parts[4 * i + 3] = scale * sides.above();
        }
        return parts;
    }

    @Override
    public OptionalDouble findOverPupil(Moments moments) {
        double least = Double.POSITIVE_INFINITY;
        for (Scene scene : moments.during(line.when())) {
            List<Body> hiders = behind.stream().map(scene.things()::get).toList();
            double pupilMetres =
                    scene.picture().lens().focalLengthMetres() / scene.picture().fNumber();
            for (int index : things) {
                Body body = scene.things().get(index);
                if (Parts.inFrontMetres(scene, body) <= 0) {
                    return OptionalDouble.empty();
                }
                Projection view = view(scene, body, hiders);
                Sides sides = Sight.hiddenOverPupil(scene.aim(), elsewhere(view), body, hiders, pupilMetres);
                least = Math.min(least, Parts.MILLIMETRES * view.depth(body.middle()) * sides.least());
            }
        }
        return OptionalDouble.of(least);
    }

    /// One view of them all.
    private static Projection view(Scene scene, Body body, List<Body> hiders) {
        return scene.lines()
                .at(Stream.concat(Stream.of(body), hiders.stream()).toList())
                .projection();
    }

    /// How another point of the pupil sees: through the same wall, where there is one.
    private static Function<Aim, Projection> elsewhere(Projection view) {
        return view instanceof TankView tank
                ? aim -> new TankView(aim, tank.wall(), tank.water(), tank.waterLineMetres())
                : Pinhole::new;
    }
}
