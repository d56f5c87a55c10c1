package plumeline.ask.picture;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
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
    private static final int ROUNDS = 3;
    private static final double ENOUGH = 0.01;
    private static final double PROBE = 0.04;

    /// Where what lacks more, in its own unit, won't hold on whole steps either.
    private static final double LACKING = 0.1;

    private final Margins wants;
    private final List<Axis> axes;
    private final double[] start;

    /// Starts from places where everything holds, or where a search for them ended.
    private RevealSolver(Reveal.Inputs inputs, double room, PaperUnit unit) {
        wants = new InOrder(new RevealSet(inputs));
        double[] chain =
                RevealSet.values(inputs, new RevealChain(inputs, room).best().others());
        axes = axes(inputs, chain, room, stepMillimetres(unit));
        start = Margins.least(wants.at(chain)) < 0 ? Search.hold(axes, wants, List.of(chain)) : chain;
    }

    /// Gives x and y of the later things in millimetres, on whole steps of a tape in that unit.
    ///
    /// Looks on a usual table first, and farther, no farther than needed, only where that isn't enough.
    static double[] solve(Reveal.Inputs inputs, PaperUnit unit) {
        double[] near = new RevealSolver(inputs, ROOM_MILLIMETRES, unit).solve();
        if (holds(inputs, near)) {
            return near;
        }
        return findFarther(inputs, unit)
                .or(() -> Optional.of(new RevealSolver(inputs, farthest(inputs), unit).solve())
                        .filter(far -> holds(inputs, far)))
                .orElse(near);
    }

    /// Gives what [#solve] gives where that holds; nothing where it doesn't, or where closed forms find nothing and
    /// the search on a usual table neither.
    static Optional<double[]> findQuickly(Reveal.Inputs inputs, PaperUnit unit) {
        return find(inputs, ROOM_MILLIMETRES, unit).or(() -> findFarther(inputs, unit));
    }

    /// Looks where closed forms say that there is room enough for placing errors; else where all just holds.
    private static Optional<double[]> findFarther(Reveal.Inputs inputs, PaperUnit unit) {
        double farthest = farthest(inputs);
        for (double errors : new double[] {1, 0}) {
            for (double room = ROOM_MILLIMETRES; room < farthest; ) {
                room = Math.min(room * FARTHER, farthest);
                Optional<double[]> found = canBear(inputs, errors, room) ? find(inputs, room, unit) : Optional.empty();
                if (found.isPresent()) {
                    return found;
                }
            }
        }
        return Optional.empty();
    }

    private static Optional<double[]> find(Reveal.Inputs inputs, double room, PaperUnit unit) {
        RevealSolver solver = new RevealSolver(inputs, room, unit);
        return solver.isHopeless()
                ? Optional.empty()
                : Optional.of(solver.solve()).filter(all -> holds(inputs, all));
    }

    private static double stepMillimetres(PaperUnit unit) {
        return new Print(unit).stepMetres(Print.Hand.TAPE) / METRE;
    }

    /// How much room behind the first thing places take: a usual table's, or the next tenth of a metre that is enough.
    static double roomMillimetres(double[] others) {
        double farthest = 0;
        for (int i = 1; i < others.length; i += 2) {
            farthest = Math.max(farthest, others[i]);
        }
        return farthest <= ROOM_MILLIMETRES ? ROOM_MILLIMETRES : Math.ceil(farthest / 100) * 100;
    }

    private static double farthest(Reveal.Inputs inputs) {
        double travelMetres = Math.abs(inputs.slide().travelMetres());
        return Math.max(ROOM_MILLIMETRES, 4 * Math.max(inputs.camera().distanceMetres(), travelMetres) / METRE);
    }

    private boolean isHopeless() {
        return Margins.least(wants.at(start)) < -LACKING;
    }

    private double[] solve() {
        double[] best = Search.onSteps(axes, start);
        for (int round = 0; round < ROUNDS; round++) {
            double[] raised = raised(axes, wants, round == 0 ? start : best);
            if (Search.height(axes, wants, raised) <= Search.height(axes, wants, best) + ENOUGH) {
                break;
            }
            best = raised;
        }
        return RevealSet.others(best);
    }

    /// The margins counted in what everything off by its placing error costs, the least made as large as it can be.
    private static double[] raised(List<Axis> axes, Margins wants, double[] from) {
        double[] feel = feel(axes, wants, from);
        Margins shares = values -> {
            double[] parts = wants.at(values);
            for (int p = 0; p < parts.length; p++) {
                parts[p] = (feel[p] > 1e-9 ? Math.min(Search.LOOSE, parts[p] / feel[p]) : Math.min(0, parts[p]))
                        - Search.LOOSE;
            }
            return parts;
        };
        return Search.raise(axes, shares, new int[0], from);
    }

    /// What each part loses, to first order, with everything off by its placing error.
    private static double[] feel(List<Axis> axes, Margins wants, double[] values) {
        double[] feel = new double[wants.at(values).length];
        for (int a = 0; a < values.length; a++) {
            double[] moved = values.clone();
            moved[a] = values[a] + PROBE;
            double[] up = wants.at(moved);
            moved[a] = values[a] - PROBE;
            double[] down = wants.at(moved);
            for (int p = 0; p < feel.length; p++) {
                feel[p] += Math.abs(up[p] - down[p]) / 2 / PROBE * axes.get(a).placingError();
            }
        }
        return feel;
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
            axes.add(free(
                    "y" + i, RevealSet.y(values, i), Math.ceil(touch), Math.max(room, Math.ceil(touch)), step, reach));
        }
        return axes;
    }

    private static Axis locked(String name, double value, double reach) {
        return new Axis(name, value, PLACING_MILLIMETRES, new Axis.Freedom.Locked(), 1, reach);
    }

    private static Axis free(String name, double value, double low, double high, double step, double reach) {
        return new Axis(name, value, PLACING_MILLIMETRES, new Axis.Freedom.Free(low, high), step, reach);
    }

    /// Whether everything wanted holds and the things stand in the order in which they were named.
    static boolean holds(Reveal.Inputs inputs, double[] others) {
        return least(inputs, others) >= 0;
    }

    private static double least(Reveal.Inputs inputs, double[] others) {
        return Margins.least(new InOrder(new RevealSet(inputs)).at(RevealSet.values(inputs, others)));
    }

    /// Whether closed forms find places where everything may be off by so many placing errors at once; quick, and near
    /// the truth.
    static boolean canBear(Reveal.Inputs inputs, double errors) {
        return canBear(inputs, errors, farthest(inputs));
    }

    private static boolean canBear(Reveal.Inputs inputs, double errors, double room) {
        RevealChain.Chain chain = new RevealChain(inputs, room).bearing(errors);
        return chain.fits() && new RevealSet(inputs).room(RevealSet.values(inputs, chain.others())) >= 0;
    }

    /// How far the nearest two neighbours from front to back are apart in depth, less a millimetre.
    static double order(double[] values) {
        double least = Double.POSITIVE_INFINITY;
        for (int i = 1; i < (values.length - RevealSet.FIRST_X) / 2; i++) {
            least = Math.min(least, inOrder(values, i));
        }
        return least;
    }

    private static double inOrder(double[] values, int i) {
        return RevealSet.y(values, i) - RevealSet.y(values, i - 1) - 1;
    }

    /// The wants, and that the things stand from front to back in the order in which they were named.
    private record InOrder(RevealSet set) implements Margins {
        @Override
        public double[] at(double[] values) {
            double[] wants = set.at(values);
            double[] parts = Arrays.copyOf(wants, wants.length + set.count() - 1);
            for (int i = 1; i < set.count(); i++) {
                parts[wants.length + i - 1] = inOrder(values, i);
            }
            return parts;
        }
    }
}
