package plumeline.ask.picture;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import plumeline.search.Margins;
import plumeline.sight.Sides;

/// The margins of a reveal as a function of where everything stands: millimetres, and per cent of the picture.
///
/// Values, all in mm: camera x, distance, height; then x and y of each thing. Upright cylinders seen by a level camera:
/// what stands beside what follows from tangent bearings, what sticks out above or below from rims; closed forms all.
final class RevealSet implements Margins {
    static final int CAMERA_X = 0;
    static final int DISTANCE = 1;
    static final int HEIGHT = 2;
    static final int FIRST_X = 3;

    /// Millimetres in a metre.
    static final double MILLIMETRES = 1e3;

    private static final double METRE = 1e-3;
    private static final double PERCENT = 100;
    private static final double LEAST_DEPTH = 1;

    /// What is level with the edge that hides it, such as feet seen by a lens on the table, is hidden: a nanometre, in
    /// mm, which is more than margins are computed to.
    private static final double HAIR = 1e-6;

    private final Reveal.Inputs inputs;
    private final List<Reveal.Thing> things;
    private final double halfWidth;
    private final double halfHeight;
    private final List<Remembered> remembered;

    /// Which things are neighbours in the picture at the end, from left to right; empty where any may be.
    private final int[] neighbours;

    RevealSet(Reveal.Inputs inputs) {
        this(inputs, new int[0]);
    }

    private RevealSet(Reveal.Inputs inputs, int[] neighbours) {
        this.inputs = inputs;
        this.neighbours = neighbours;
        things = inputs.things();
        remembered = new ArrayList<>();
        things.forEach(_ -> remembered.add(new Remembered()));
        double f = inputs.focalLengthMetres();
        double focus = inputs.camera().distanceMetres();
        double imageMetres = f * focus / (focus - f);
        halfWidth = inputs.sensor().widthMetres() / 2 / imageMetres;
        halfHeight = inputs.sensor().heightMetres() / 2 / imageMetres;
    }

    /// The same margins, gaps counted between those who are neighbours now. To change places in the picture two things
    /// must pass each other, so that the connected interval in which all holds is the same; but no search that
    /// steps along it can step over the passing.
    RevealSet keepingOrder(double[] values) {
        return new RevealSet(inputs, end(values).leftToRight());
    }

    /// Values with the camera as given and the first thing at zero.
    static double[] values(Reveal.Inputs inputs, double[] others) {
        double[] values = new double[FIRST_X + 2 + others.length];
        values[DISTANCE] = inputs.camera().distanceMetres() / METRE;
        values[HEIGHT] = inputs.camera().heightMetres() / METRE;
        System.arraycopy(others, 0, values, FIRST_X + 2, others.length);
        return values;
    }

    static double[] others(double[] values) {
        return Arrays.copyOfRange(values, FIRST_X + 2, values.length);
    }

    double halfWidth() {
        return halfWidth;
    }

    int count() {
        return things.size();
    }

    /// How many parts are of what is hidden: per later thing four sides and standing clear behind the first.
    int hiddenParts() {
        return 5 * (count() - 1);
    }

    int gapParts() {
        return count() - 1;
    }

    String name(int i) {
        return things.get(i).name();
    }

    /// Hidden parts, then gaps, then the first thing inside the frame at the start and all at the end, four sides each.
    @Override
    public double[] at(double[] values) {
        double[] parts = new double[hiddenParts() + gapParts() + 8];
        hidden(values, parts);
        shown(values, parts);
        return parts;
    }

    /// Whether all is shown at the end and the frame holds what it should, whatever is hidden.
    boolean isShown(double[] values) {
        double[] parts = new double[hiddenParts() + gapParts() + 8];
        shown(values, parts);
        return Margins.least(parts) >= 0;
    }

    /// What is left of the frame above, below and aside at the start and at the end, per cent.
    double room(double[] values) {
        double[] parts = new double[8];
        inside(start(values), 1, parts, 0);
        inside(end(values), count(), parts, 4);
        return Margins.least(parts);
    }

    private void shown(double[] values, double[] parts) {
        RevealView end = end(values);
        double[] gaps = gaps(end);
        for (int i = 0; i < gaps.length; i++) {
            parts[hiddenParts() + i] = gaps[i] - PERCENT * inputs.wanted().gapShare();
        }
        inside(start(values), 1, parts, hiddenParts() + gapParts());
        inside(end, count(), parts, hiddenParts() + gapParts() + 4);
    }

    private void hidden(double[] values, double[] parts) {
        RevealHiding.Upright first = upright(values, 0);
        for (int i = 1; i < count(); i++) {
            RevealHiding.Upright upright = upright(values, i);
            int at = 5 * (i - 1);
            double inFront = Math.min(first.depth() - first.radius(), upright.depth() - upright.radius()) - LEAST_DEPTH;
            if (inFront <= 0) {
                Arrays.fill(parts, at, at + 5, inFront - 1);
                continue;
            }
            Sides sides = remembered.get(i).sides(first, upright);
            double spare = inputs.wanted().hideByMetres() * MILLIMETRES - HAIR;
            parts[at] = sides.left() * upright.depth() - spare;
            parts[at + 1] = sides.right() * upright.depth() - spare;
            parts[at + 2] = sides.below() * upright.depth() - spare;
            parts[at + 3] = sides.above() * upright.depth() - spare;
            double dx = x(values, i) - x(values, 0);
            double dy = y(values, i) - y(values, 0);
            double touch = first.radius() + upright.radius();
            parts[at + 4] = dy > 0 ? Math.hypot(dx, dy) - touch : dy - touch;
        }
    }

    private RevealHiding.Upright upright(double[] values, int i) {
        Reveal.Thing thing = things.get(i);
        return new RevealHiding.Upright(
                x(values, i) - values[CAMERA_X],
                y(values, i) + values[DISTANCE],
                thing.diameterMetres() / 2 * MILLIMETRES,
                thing.heightMetres() * MILLIMETRES - values[HEIGHT],
                -values[HEIGHT]);
    }

    /// The same questions come again while other marks are moved, so the last answers for each thing are kept: mostly
    /// one where it stands and one where it is tried.
    private static final class Remembered {
        private static final RevealHiding.Upright NOBODY = new RevealHiding.Upright(0, 0, 0, 0, 0);
        private static final Sides NOTHING = new Sides(0, 0, 0, 0);

        private final RevealHiding.Upright[] hiders = {NOBODY, NOBODY};
        private final RevealHiding.Upright[] hidden = {NOBODY, NOBODY};
        private final Sides[] found = {NOTHING, NOTHING};
        private int last;

        Sides sides(RevealHiding.Upright hider, RevealHiding.Upright behind) {
            for (int k = 0; k < found.length; k++) {
                if (hidden[k].equals(behind) && hiders[k].equals(hider)) {
                    last = k;
                    return found[k];
                }
            }
            last = 1 - last;
            hiders[last] = hider;
            hidden[last] = behind;
            found[last] = RevealHiding.sides(hider, behind);
            return found[last];
        }
    }

    static double x(double[] values, int thing) {
        return values[FIRST_X + 2 * thing];
    }

    static double y(double[] values, int thing) {
        return values[FIRST_X + 2 * thing + 1];
    }

    /// The picture at the start.
    RevealView start(double[] values) {
        return new RevealView(things, values, values[CAMERA_X], Reveal.Keeps.HEADING);
    }

    /// The picture at the end of the slide, panned.
    RevealView end(double[] values) {
        double cameraX = values[CAMERA_X] + inputs.slide().travelMetres() * MILLIMETRES;
        return new RevealView(things, values, cameraX, inputs.slide().keeps());
    }

    /// Gaps between neighbours from left to right, per cent of the picture's width.
    double[] gaps(RevealView view) {
        int n = count();
        double[] gaps = new double[n - 1];
        if (!view.isSeen()) {
            Arrays.fill(gaps, -PERCENT);
            return gaps;
        }
        int[] order = neighbours.length == 0 ? view.leftToRight() : neighbours;
        for (int i = 1; i < n; i++) {
            gaps[i - 1] = PERCENT * (view.left(order[i]) - view.right(order[i - 1])) / (2 * halfWidth);
        }
        return gaps;
    }

    private void inside(RevealView view, int shown, double[] parts, int at) {
        Arrays.fill(parts, at, at + 4, Double.POSITIVE_INFINITY);
        if (!view.isSeen()) {
            Arrays.fill(parts, at, at + 4, -PERCENT);
            return;
        }
        for (int i = 0; i < shown; i++) {
            parts[at] = Math.min(parts[at], PERCENT * (view.left(i) + halfWidth) / (2 * halfWidth));
            parts[at + 1] = Math.min(parts[at + 1], PERCENT * (halfWidth - view.right(i)) / (2 * halfWidth));
            parts[at + 2] = Math.min(parts[at + 2], PERCENT * (view.bottom(i) + halfHeight) / (2 * halfHeight));
            parts[at + 3] = Math.min(parts[at + 3], PERCENT * (halfHeight - view.top(i)) / (2 * halfHeight));
        }
    }

    /// The share of the frame's height that a thing fills.
    double heightShare(RevealView view, int thing) {
        return view.isSeen() ? (view.top(thing) - view.bottom(thing)) / (2 * halfHeight) : 0;
    }
}
