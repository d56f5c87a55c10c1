package plumeline.ask;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import plumeline.geom.Aim;
import plumeline.geom.Body;
import plumeline.geom.Pinhole;
import plumeline.geom.Pose;
import plumeline.geom.Solid;
import plumeline.geom.Vec;
import plumeline.search.Margins;
import plumeline.sight.Sides;
import plumeline.sight.Sight;

/// The margins of a reveal as a function of where everything stands: millimetres, and per cent of the picture.
///
/// Values, all in mm: camera x, distance, height; then x and y of each thing. Upright cylinders seen by a level camera:
/// what stands beside what follows from tangent bearings, what sticks out above or below from rims; closed forms all.
final class RevealSet implements Margins {
    static final int CAMERA_X = 0;
    static final int DISTANCE = 1;
    static final int HEIGHT = 2;
    static final int FIRST_X = 3;

    private static final double METRE = 1e-3;
    private static final double PERCENT = 100;
    private static final double LEAST_DEPTH = 1e-3;

    /// What is level with the edge that hides it, such as feet seen by a lens on the table, is hidden: a nanometre, in
    /// mm, which is more than margins are computed to.
    private static final double HAIR = 1e-6;

    private final Reveal.Inputs inputs;
    private final List<Reveal.Thing> things;
    private final double halfWidth;
    private final double halfHeight;
    private final List<double[]> lastAsked;
    private final List<Sides> lastSides;

    RevealSet(Reveal.Inputs inputs) {
        this.inputs = inputs;
        things = inputs.things();
        lastAsked = new ArrayList<>(Collections.nCopies(things.size(), new double[0]));
        lastSides = new ArrayList<>(Collections.nCopies(things.size(), new Sides(0, 0, 0, 0)));
        double f = inputs.focalLengthMetres();
        double focus = inputs.camera().distanceMetres();
        double imageMetres = f * focus / (focus - f);
        halfWidth = inputs.sensor().widthMetres() / 2 / imageMetres;
        halfHeight = inputs.sensor().heightMetres() / 2 / imageMetres;
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

    private void shown(double[] values, double[] parts) {
        View end = end(values);
        double[] gaps = gaps(end);
        for (int i = 0; i < gaps.length; i++) {
            parts[hiddenParts() + i] = gaps[i] - PERCENT * inputs.wanted().gapShare();
        }
        View start = new View(values, values[CAMERA_X], 0);
        inside(start, 1, parts, hiddenParts() + gapParts());
        inside(end, count(), parts, hiddenParts() + gapParts() + 4);
    }

    private void hidden(double[] values, double[] parts) {
        Vec eye = new Vec(values[CAMERA_X], -values[DISTANCE], values[HEIGHT]).times(METRE);
        Pinhole view = new Pinhole(new Aim(eye, 0, 0));
        Body first = body(values, 0);
        double firstInFront = inFrontMetres(view, first, 0);
        for (int i = 1; i < count(); i++) {
            Body body = body(values, i);
            int at = 5 * (i - 1);
            double inFront = Math.min(firstInFront, inFrontMetres(view, body, i));
            if (inFront <= 0) {
                Arrays.fill(parts, at, at + 5, inFront / METRE - 1);
                continue;
            }
            Sides sides = sides(values, view, i);
            double scale = view.depth(body.middle()) / METRE;
            double spare = inputs.wanted().hideByMetres() / METRE - HAIR;
            parts[at] = sides.left() * scale - spare;
            parts[at + 1] = sides.right() * scale - spare;
            parts[at + 2] = sides.below() * scale - spare;
            parts[at + 3] = sides.above() * scale - spare;
            double dx = x(values, i) - x(values, 0);
            double dy = y(values, i) - y(values, 0);
            double touch = (things.get(0).diameterMetres() + things.get(i).diameterMetres()) / 2 / METRE;
            parts[at + 4] = dy > 0 ? Math.hypot(dx, dy) - touch : dy - touch;
        }
    }

    /// The same question comes again while other marks are moved, so the last answer for each thing is kept.
    private Sides sides(double[] values, Pinhole view, int i) {
        double[] asked = {
            values[CAMERA_X], values[DISTANCE], values[HEIGHT], x(values, 0), y(values, 0), x(values, i), y(values, i)
        };
        if (!Arrays.equals(asked, lastAsked.get(i))) {
            lastSides.set(i, Sight.hidden(view, body(values, i), List.of(body(values, 0))));
            lastAsked.set(i, asked);
        }
        return lastSides.get(i);
    }

    private double inFrontMetres(Pinhole view, Body body, int thing) {
        return view.depth(body.middle()) - things.get(thing).diameterMetres() / 2 - LEAST_DEPTH;
    }

    private Body body(double[] values, int i) {
        Reveal.Thing thing = things.get(i);
        Solid solid = Solid.cylinder(thing.diameterMetres(), thing.heightMetres());
        return new Body(solid, Pose.at(x(values, i) * METRE, y(values, i) * METRE));
    }

    static double x(double[] values, int thing) {
        return values[FIRST_X + 2 * thing];
    }

    static double y(double[] values, int thing) {
        return values[FIRST_X + 2 * thing + 1];
    }

    /// The picture at the end of the slide, panned.
    View end(double[] values) {
        double cameraX = values[CAMERA_X] + inputs.slide().travelMetres() / METRE;
        View ahead = new View(values, cameraX, 0);
        return new View(
                values,
                cameraX,
                switch (inputs.slide().keeps()) {
                    case HEADING -> 0;
                    case FRONT -> ahead.bearings[0];
                    case ALL -> (ahead.leastBearing() + ahead.mostBearing()) / 2;
                });
    }

    /// Gaps between neighbours from left to right, per cent of the picture's width.
    double[] gaps(View view) {
        int n = count();
        double[] gaps = new double[n - 1];
        int[] order = view.leftToRight();
        for (int i = 1; i < n; i++) {
            gaps[i - 1] =
                    view.seen ? PERCENT * (view.left(order[i]) - view.right(order[i - 1])) / (2 * halfWidth) : -PERCENT;
        }
        return gaps;
    }

    private void inside(View view, int shown, double[] parts, int at) {
        Arrays.fill(parts, at, at + 4, Double.POSITIVE_INFINITY);
        if (!view.seen) {
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
    double heightShare(View view, int thing) {
        return view.seen ? (view.top(thing) - view.bottom(thing)) / (2 * halfHeight) : 0;
    }

    /// What a level camera sees of the things, by tangent bearings and rims.
    final class View {
        private final double turn;
        private final double lensHeight;
        private final double[] bearings;
        private final double[] halves;
        private final double[] depths;
        /// Whether all is wholly in front of the lens point.
        private final boolean seen;

        View(double[] values, double cameraX, double turn) {
            this.turn = turn;
            lensHeight = values[HEIGHT];
            bearings = new double[count()];
            halves = new double[count()];
            depths = new double[count()];
            boolean all = true;
            for (int i = 0; i < count(); i++) {
                double dx = x(values, i) - cameraX;
                double dy = y(values, i) + values[DISTANCE];
                double way = Math.hypot(dx, dy);
                bearings[i] = Math.atan2(dx, dy);
                halves[i] = Math.asin(Math.min(1, radius(i) / way));
                depths[i] = way * Math.cos(bearings[i] - turn);
                all &= depths[i] - radius(i) > LEAST_DEPTH / METRE
                        && Math.abs(bearings[i] - turn) + halves[i] < Math.PI / 2 - 1e-3;
            }
            seen = all;
        }

        double turnRadians() {
            return turn;
        }

        private double radius(int i) {
            return things.get(i).diameterMetres() / 2 / METRE;
        }

        private double leastBearing() {
            double least = Double.POSITIVE_INFINITY;
            for (int i = 0; i < bearings.length; i++) {
                least = Math.min(least, bearings[i] - halves[i]);
            }
            return least;
        }

        private double mostBearing() {
            double most = Double.NEGATIVE_INFINITY;
            for (int i = 0; i < bearings.length; i++) {
                most = Math.max(most, bearings[i] + halves[i]);
            }
            return most;
        }

        private double left(int i) {
            return Math.tan(bearings[i] - halves[i] - turn);
        }

        private double right(int i) {
            return Math.tan(bearings[i] + halves[i] - turn);
        }

        private double top(int i) {
            double above = things.get(i).heightMetres() / METRE - lensHeight;
            return above / (depths[i] + (above > 0 ? -radius(i) : radius(i)));
        }

        private double bottom(int i) {
            return -lensHeight / (depths[i] + (lensHeight > 0 ? -radius(i) : radius(i)));
        }

        private int[] leftToRight() {
            int[] order = new int[bearings.length];
            for (int i = 0; i < order.length; i++) {
                int at = i;
                while (at > 0 && bearings[order[at - 1]] > bearings[i]) {
                    order[at] = order[at - 1];
                    at--;
                }
                order[at] = i;
            }
            return order;
        }
    }
}
