package plumeline.draw;

import java.util.ArrayList;
import java.util.List;
import plumeline.geom.Vec;
import plumeline.plan.Mark;
import plumeline.plan.Move;
import plumeline.quantity.Kind;
import plumeline.quantity.Quantity;
import plumeline.sketch.Spot;
import plumeline.sketch.Stretch;
import plumeline.stage.Scene;
import plumeline.stage.Stage;
import plumeline.stage.StagedMark;

/// The way of something that a machine moves along a line, and its rail.
///
/// @param move the move's name
/// @param from where it starts: the lens point, or what it carries
/// @param to where it ends
/// @param travelMetres how far the machine can go; infinite where the plan doesn't say
/// @param backMetres how far the rail is laid back behind the start, so that it ends before a thing
/// @param meets things that the rail meets all the same
record PlanWay(String move, Vec from, Vec to, double travelMetres, double backMetres, List<String> meets) {
    /// Between a rail's end and the thing before which it ends, metres.
    private static final double AIR_METRES = 0.01;

    PlanWay {
        meets = List.copyOf(meets);
    }

    /// A thing's outline from above, x and y in metres.
    private record Standing(String name, List<Spot> ring) {
        /// How far along a line it is met first; infinite where it isn't.
        double metMetres(Spot from, Spot to) {
            double first = Double.POSITIVE_INFINITY;
            Stretch line = new Stretch(from, to);
            for (int i = 0; i < ring.size(); i++) {
                Stretch side = new Stretch(ring.get(i), ring.get((i + 1) % ring.size()));
                if (line.crosses(side)) {
                    double a = side.side(from);
                    double b = side.side(to);
                    first = Math.min(first, from.distance(to) * a / (a - b));
                }
            }
            return first;
        }
    }

    /// Lists a shot's ways, the camera's one after the other.
    static List<PlanWay> of(Stage stage, double[] values, MarkBook marks) {
        List<PlanWay> ways = new ArrayList<>();
        Scene first = stage.scene(values, 0);
        Vec camera = first.aim().eye();
        for (Move move : stage.shot().moves()) {
            List<String> carried =
                    move.listCarried().stream().map(named -> named.name()).toList();
            boolean isCamera = carried.isEmpty() || carried.contains("camera");
            if (!marks.areMovesSet(stage.shot()) || !marks.isPlaced(isCamera ? "camera" : carried.getFirst())) {
                continue;
            }
            Vec from = isCamera ? camera : start(stage, first, carried.getFirst());
            double[] by = move.travel()
                    .map(travel -> travel.vectorMetres(mark -> value(stage, values, mark)))
                    .orElse(new double[3]);
            Vec to = from.plus(new Vec(by[0], by[1], by[2]));
            if (to.distanceMetres(from) > 0) {
                PlanWay way = new PlanWay(move.name(), from, to, travelMetres(move), 0, List.of());
                ways.add(way.laid(standing(stage, first, marks, carried)));
            }
            camera = isCamera ? to : camera;
        }
        return ways;
    }

    private static List<Standing> standing(Stage stage, Scene first, MarkBook marks, List<String> carried) {
        List<Standing> all = new ArrayList<>();
        for (int i = 0; i < first.things().size(); i++) {
            String name = stage.shot().placed().get(i).name();
            if (marks.isPlaced(name) && !carried.contains(name)) {
                List<Spot> ring = Footprint.of(first.things().get(i)).stream()
                        .map(place -> new Spot(place.x(), place.y()))
                        .toList();
                all.add(new Standing(name, ring));
            }
        }
        return all;
    }

    private static Spot flat(Vec place) {
        return new Spot(place.x(), place.y());
    }

    /// The same way on a rail that is laid back where it would meet a thing past the way's end.
    private PlanWay laid(List<Standing> standing) {
        List<Vec> rail = rail();
        double level = flat(from).distance(flat(to));
        if (rail.isEmpty() || level < AIR_METRES / 10) {
            return this;
        }
        double met = standing.stream()
                .mapToDouble(thing -> thing.metMetres(flat(rail.getFirst()), flat(rail.getLast())))
                .min()
                .orElse(Double.POSITIVE_INFINITY);
        double share = Math.max(met - AIR_METRES, level) / level;
        double end = Math.min(travelMetres, share * metres());
        PlanWay back = new PlanWay(move, from, to, travelMetres, travelMetres - end, List.of());
        List<Vec> laid = back.rail();
        List<String> still = standing.stream()
                .filter(thing -> Double.isFinite(thing.metMetres(flat(laid.getFirst()), flat(laid.getLast()))))
                .map(Standing::name)
                .toList();
        return new PlanWay(move, from, to, travelMetres, back.backMetres(), still);
    }

    private static Vec start(Stage stage, Scene first, String name) {
        int thing = stage.thingIndex(name);
        int lamp = stage.lampIndex(name);
        if (thing >= 0) {
            return first.things().get(thing).pose().base();
        }
        return lamp >= 0 ? first.beams().get(lamp).aim().eye() : Vec.ZERO;
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

    /// Both ends of the rail, the way starting at its other stop unless it is laid back; none where the machine's
    /// travel isn't known.
    List<Vec> rail() {
        if (!Double.isFinite(travelMetres)) {
            return List.of();
        }
        Vec ahead = to.minus(from).times(1 / metres());
        Vec start = from.plus(ahead.times(-backMetres));
        return List.of(start, start.plus(ahead.times(travelMetres)));
    }

    /// What is said of the rail after its length.
    String railWords() {
        String laid = backMetres > 0 ? ", laid back" : "";
        return meets.isEmpty() ? laid : laid + ", meets " + String.join(", ", meets);
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
