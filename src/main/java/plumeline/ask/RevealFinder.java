package plumeline.ask;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;
import plumeline.search.Axis;
import plumeline.search.Leeway;
import plumeline.search.Margins;
import plumeline.search.Search;

/// Finds leeways and the least travel once the places are chosen.
final class RevealFinder {
    private static final double METRE = 1e-3;
    private static final Leeway NO_LEEWAY = new Leeway(new Leeway.Side.Ends(0), new Leeway.Side.Ends(0));

    private final Reveal.Inputs inputs;
    private final RevealSet set;
    private final RevealSet ordered;
    private final double[] others;
    private final double[] values;
    private final List<Axis> axes;
    private final boolean holds;

    RevealFinder(Reveal.Inputs inputs, double[] others) {
        this.inputs = inputs;
        this.others = others.clone();
        set = new RevealSet(inputs);
        values = RevealSet.values(inputs, others);
        ordered = set.keepingOrder(values);
        axes = RevealSolver.axes(inputs, values);
        holds = RevealSolver.holds(inputs, others);
    }

    Reveal.Found find() {
        List<Leeway> leeways = new ArrayList<>();
        for (int axis = 0; axis < values.length; axis++) {
            leeways.add(leeway(axis));
        }
        List<Reveal.Place> places = new ArrayList<>();
        for (int i = 0; i < set.count(); i++) {
            int axis = RevealSet.FIRST_X + 2 * i;
            places.add(new Reveal.Place(
                    values[axis] * METRE, values[axis + 1] * METRE, leeways.get(axis), leeways.get(axis + 1)));
        }
        return new Reveal.Found(
                inputs,
                places,
                holds ? Reveal.Holds.ALL : Reveal.Holds.NOT_ALL,
                holds ? RevealTogether.of(axes, set, values) : 0,
                travelNeeded(),
                new Reveal.CameraLeeway(leeways.get(RevealSet.CAMERA_X), leeways.get(RevealSet.HEIGHT)),
                holds ? tight(leeways) : List.of());
    }

    private List<Reveal.Mark> tight(List<Leeway> leeways) {
        List<Reveal.Mark> tight = new ArrayList<>();
        for (int axis = 0; axis < values.length; axis++) {
            double least = leeways.get(axis).least();
            double down = leeways.get(axis).minus().distance();
            // A lens that holds down to the table can't be lower.
            if (axis == RevealSet.HEIGHT && down * 1e3 >= values[axis] - 1e-3) {
                least = leeways.get(axis).plus().distance();
            }
            if (least < RevealSolver.PLACING_MILLIMETRES * METRE) {
                tight.add(new Reveal.Mark(name(axis), least));
            }
        }
        tight.sort(Comparator.comparingDouble(Reveal.Mark::leewayMetres));
        return tight;
    }

    private String name(int axis) {
        return switch (axis) {
            case RevealSet.CAMERA_X -> "camera.x";
            case RevealSet.DISTANCE -> "camera.distance";
            case RevealSet.HEIGHT -> "camera.height";
            default -> set.name((axis - RevealSet.FIRST_X) / 2) + ((axis - RevealSet.FIRST_X) % 2 == 0 ? ".x" : ".y");
        };
    }

    private Leeway leeway(int axis) {
        if (!holds) {
            return NO_LEEWAY;
        }
        Leeway leeway = Search.leeway(axes, ordered, values, axis);
        return new Leeway(metres(leeway.minus()), metres(leeway.plus()));
    }

    private static Leeway.Side metres(Leeway.Side side) {
        return switch (side) {
            case Leeway.Side.Ends(double distance) -> new Leeway.Side.Ends(distance * METRE);
            case Leeway.Side.Endless endless -> endless;
        };
    }

    /// The least travel from which on the end holds up to the travel given; where that fails, the least one beyond it.
    private Reveal.Travel travelNeeded() {
        double given = Math.abs(inputs.slide().travelMetres());
        double step = Math.max(given, inputs.camera().distanceMetres()) / 400;
        double good = given;
        if (!endHolds(given)) {
            while (!endHolds(good)) {
                good += step;
                if (good > 5 * (given + inputs.camera().distanceMetres())) {
                    return new Reveal.Travel.None();
                }
            }
            return new Reveal.Travel.Least(bisect(good - step, good));
        }
        while (good > 0 && endHolds(Math.max(0, good - step))) {
            good = Math.max(0, good - step);
        }
        return new Reveal.Travel.Least(good == 0 ? 0 : bisect(Math.max(0, good - step), good));
    }

    private double bisect(double failing, double holding) {
        double bad = failing;
        double good = holding;
        while (good - bad > 1e-7) {
            double middle = (bad + good) / 2;
            if (endHolds(middle)) {
                good = middle;
            } else {
                bad = middle;
            }
        }
        return good;
    }

    private boolean endHolds(double travelMetres) {
        double signed = Math.copySign(travelMetres, inputs.slide().travelMetres());
        Reveal.Inputs moved =
                inputs.with(new Reveal.Slide(signed, inputs.slide().keeps()));
        return new RevealSet(moved).isShown(RevealSet.values(moved, others));
    }

    /// How far everything may be off at once, in placing errors, asked of those parts only that can be the first to
    /// fail.
    ///
    /// By first differences most parts are many times looser than the tightest: these are only proven to hold where
    /// they are hurt most, and all are asked in full where that doesn't show it.
    private static final class RevealTogether {
        private static final double LOOSER = 3;

        private final List<Axis> axes;
        private final Margins margins;
        private final double[] values;
        private final double[] here;
        private final double[][] slopes;

        private RevealTogether(List<Axis> axes, Margins margins, double[] values) {
            this.axes = axes;
            this.margins = margins;
            this.values = values.clone();
            here = margins.at(values);
            slopes = new double[here.length][axes.size()];
            for (int a = 0; a < axes.size(); a++) {
                double error = axes.get(a).placingError();
                double[] up = margins.at(moved(a, error));
                double[] down = margins.at(moved(a, -error));
                for (int p = 0; p < here.length; p++) {
                    slopes[p][a] = (up[p] - down[p]) / 2;
                }
            }
        }

        static double of(List<Axis> axes, Margins margins, double[] values) {
            return new RevealTogether(axes, margins, values).find();
        }

        private double[] moved(int axis, double by) {
            double[] moved = values.clone();
            moved[axis] += by;
            return moved;
        }

        private double find() {
            double[] shares = new double[here.length];
            for (int p = 0; p < here.length; p++) {
                double most = 0;
                for (double slope : slopes[p]) {
                    most += Math.abs(slope);
                }
                shares[p] = most > 0 ? here[p] / most : Double.POSITIVE_INFINITY;
            }
            double tightest = Margins.least(shares);
            int[] kept = IntStream.range(0, shares.length)
                    .filter(p -> shares[p] <= LOOSER * tightest)
                    .toArray();
            double together = Search.together(axes, margins.only(kept), values);
            for (int p = 0; p < shares.length; p++) {
                if (shares[p] > LOOSER * tightest && margins.at(corner(p, together))[p] < 0) {
                    return Search.together(axes, margins, values);
                }
            }
            return together;
        }

        /// Everything off by so many placing errors, each way that hurts a part most.
        private double[] corner(int part, double size) {
            double[] corner = values.clone();
            for (int a = 0; a < corner.length; a++) {
                corner[a] -= size * Math.signum(slopes[part][a]) * axes.get(a).placingError();
            }
            return corner;
        }
    }
}
