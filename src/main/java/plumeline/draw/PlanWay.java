package plumeline.draw;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import plumeline.geom.Vec;
import plumeline.plan.Mark;
import plumeline.plan.Move;
import plumeline.quantity.Kind;
import plumeline.quantity.Quantity;
import plumeline.stage.Scene;
import plumeline.stage.Stage;
import plumeline.stage.StagedMark;

/// The way of something that a machine moves along a line, and its rail.
///
/// @param move the move's name
/// @param from where it starts: the lens point, or what it carries
/// @param to where it ends
/// @param travelMetres how far the machine can go; infinite where the plan doesn't say
record PlanWay(String move, Vec from, Vec to, double travelMetres) {
    /// Lists a shot's ways, the camera's one after the other.
    static List<PlanWay> of(Stage stage, double[] values) {
        List<PlanWay> ways = new ArrayList<>();
        Scene first = stage.scene(values, 0);
        Vec camera = first.aim().eye();
        for (Move move : stage.shot().moves()) {
            List<String> carried =
                    move.listCarried().stream().map(named -> named.name()).toList();
            boolean isCamera = carried.isEmpty() || carried.contains("camera");
            Vec from = isCamera ? camera : start(stage, first, carried.getFirst());
            double[] by = move.travel()
                    .map(travel -> travel.vectorMetres(mark -> value(stage, values, mark)))
                    .orElse(new double[3]);
            Vec to = from.plus(new Vec(by[0], by[1], by[2]));
            if (to.distanceMetres(from) > 0) {
                ways.add(new PlanWay(move.name(), from, to, travelMetres(move)));
            }
            camera = isCamera ? to : camera;
        }
        return ways;
    }

    private static Vec start(Stage stage, Scene first, String name) {
        int thing = stage.thingIndex(name);
        int lamp = stage.lampIndex(name);
        if (thing >= 0) {
            return first.things().get(thing).pose().base();
        }
        return lamp >= 0 ? first.lamps().get(lamp).middle() : Vec.ZERO;
    }

    private static double value(Stage stage, double[] values, Mark mark) {
        if (mark instanceof Mark.Fixed fixed) {
            return fixed.quantity().si();
        }
        for (int i = 0; i < values.length; i++) {
            StagedMark staged = stage.marks().get(i);
            if (staged.mark().path().equals(mark.path())) {
                return values[i];
            }
        }
        return 0;
    }

    private static double travelMetres(Move move) {
        return move.machine()
                .flatMap(machine -> machine.written().findQuantity("travel"))
                .filter(travel -> travel.kind() == Kind.LENGTH)
                .map(Quantity::si)
                .orElse(Double.POSITIVE_INFINITY);
    }

    double metres() {
        return to.distanceMetres(from);
    }

    /// Where the rail ends if the way starts at its other stop; none where the machine's travel isn't known.
    Optional<Vec> stop() {
        return Double.isFinite(travelMetres)
                ? Optional.of(from.plus(to.minus(from).times(travelMetres / metres())))
                : Optional.empty();
    }

    /// Into which direction it goes, after its length.
    String toward() {
        Vec by = to.minus(from);
        if (Math.abs(by.x()) >= Math.abs(by.y())) {
            return by.x() < 0 ? " to camera left" : " to camera right";
        }
        return by.y() < 0 ? " toward the crew" : " away";
    }
}
