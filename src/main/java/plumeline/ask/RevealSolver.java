package plumeline.ask;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import plumeline.quantity.PaperUnit;
import plumeline.quantity.Print;
import plumeline.search.Axis;
import plumeline.search.Margins;
import plumeline.search.Search;

/// Finds places for the later things. Placing errors are 2 mm for all that is set by tape, the camera's height too.
final class RevealSolver {
    static final double PLACING_MILLIMETRES = 2;

    private static final double METRE = 1e-3;

    /// How far behind the first thing places are looked for: a usual table's length.
    static final double ROOM_MILLIMETRES = 1500;

    private static final double FARTHER = 1.4;

    private RevealSolver() {}

    /// Gives x and y of the later things in millimetres, on whole steps of a tape in that unit.
    ///
    /// Looks on a usual table first, and farther, no farther than needed, only where that isn't enough.
    static double[] solve(Reveal.Inputs inputs, PaperUnit unit) {
        double step = new Print(unit).stepMetres(Print.Hand.TAPE) / METRE;
        double[] best = solve(inputs, List.of(), ROOM_MILLIMETRES, step);
        double farthest = farthest(inputs);
        for (double room = ROOM_MILLIMETRES; room < farthest && !holds(inputs, best); ) {
            room = Math.min(room * FARTHER, farthest);
            if (room == farthest || canHold(inputs, room)) {
                double[] far = solve(inputs, List.of(best), room, step);
                best = least(inputs, far) > least(inputs, best) ? far : best;
            }
        }
        return best;
    }

    private static double farthest(Reveal.Inputs inputs) {
        double travelMetres = Math.abs(inputs.slide().travelMetres());
        return Math.max(ROOM_MILLIMETRES, 4 * Math.max(inputs.camera().distanceMetres(), travelMetres) / METRE);
    }

    private static double[] solve(Reveal.Inputs inputs, List<double[]> seeds, double room, double step) {
        RevealSet set = new RevealSet(inputs);
        List<double[]> starts = new ArrayList<>();
        for (double[] seed : seeds) {
            starts.add(RevealSet.values(inputs, seed));
        }
        starts.addAll(files(inputs, set));
        return RevealSet.others(Search.solve(axes(inputs, starts.getFirst(), room, step), new InOrder(set), starts));
    }

    /// Things in file behind the first, evenly apart, by several spacings: hidden whatever the spacing, where they are
    /// no larger and the lens no higher than the first.
    private static List<double[]> files(Reveal.Inputs inputs, RevealSet set) {
        List<double[]> files = new ArrayList<>();
        double distance = inputs.camera().distanceMetres() / METRE;
        for (double spacing = distance / 12; spacing < 2 * distance; spacing *= 1.3) {
            double[] others = new double[2 * (set.count() - 1)];
            for (int i = 1; i < set.count(); i++) {
                others[2 * i - 1] = spacing * i;
            }
            files.add(RevealSet.values(inputs, others));
        }
        files.sort((a, b) -> Double.compare(Margins.least(set.at(b)), Margins.least(set.at(a))));
        return files;
    }

    static List<Axis> axes(Reveal.Inputs inputs, double[] values) {
        return axes(inputs, values, farthest(inputs), 1);
    }

    private static List<Axis> axes(Reveal.Inputs inputs, double[] values, double room, double step) {
        List<Axis> axes = new ArrayList<>();
        double distance = inputs.camera().distanceMetres() / METRE;
        double reach = 10 * (distance + Math.abs(inputs.slide().travelMetres()) / METRE);
        axes.add(locked("camera.x", values[RevealSet.CAMERA_X], reach));
        axes.add(locked("camera.distance", values[RevealSet.DISTANCE], reach));
        axes.add(locked("camera.height", values[RevealSet.HEIGHT], reach));
        axes.add(locked("first.x", 0, reach));
        axes.add(locked("first.y", 0, reach));
        double firstRadius = inputs.things().getFirst().diameterMetres() / 2 / METRE;
        double aside = firstRadius * (1 + room / distance);
        for (int i = 1; i < inputs.things().size(); i++) {
            double touch = firstRadius + inputs.things().get(i).diameterMetres() / 2 / METRE;
            axes.add(free("x" + i, RevealSet.x(values, i), -aside, aside, step, reach));
            axes.add(free("y" + i, RevealSet.y(values, i), Math.ceil(touch), Math.max(room, 2 * touch), step, reach));
        }
        return axes;
    }

    private static Axis locked(String name, double value, double reach) {
        return new Axis(name, value, PLACING_MILLIMETRES, new Axis.Freedom.Locked(), 1, reach);
    }

    private static Axis free(String name, double value, double low, double high, double step, double reach) {
        return new Axis(name, value, PLACING_MILLIMETRES, new Axis.Freedom.Free(low, high), step, reach);
    }

    /// Whether there are places at all where everything holds, near or far, between the steps of a tape too.
    static boolean canHold(Reveal.Inputs inputs) {
        return canHold(inputs, farthest(inputs));
    }

    private static boolean canHold(Reveal.Inputs inputs, double room) {
        RevealSet set = new RevealSet(inputs);
        List<double[]> starts = files(inputs, set);
        Margins margins = new InOrder(set);
        List<Axis> axes = axes(inputs, starts.getFirst(), room, 1);
        return Margins.least(margins.at(Search.hold(axes, margins, starts))) >= 0;
    }

    static boolean holds(Reveal.Inputs inputs, double[] others) {
        return least(inputs, others) >= 0;
    }

    private static double least(Reveal.Inputs inputs, double[] others) {
        return Margins.least(new RevealSet(inputs).at(RevealSet.values(inputs, others)));
    }

    /// The wants, and that the things stand from front to back in the order in which they were named.
    private record InOrder(RevealSet set) implements Margins {
        @Override
        public double[] at(double[] values) {
            double[] wants = set.at(values);
            double[] parts = Arrays.copyOf(wants, wants.length + set.count() - 1);
            for (int i = 1; i < set.count(); i++) {
                parts[wants.length + i - 1] = RevealSet.y(values, i) - RevealSet.y(values, i - 1);
            }
            return parts;
        }
    }
}
