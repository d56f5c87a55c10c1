package plumeline.sight;

import java.util.List;

/// The deepest point of the outline of a union of parts in a pinhole picture.
///
/// Depth along an arc has one top and along a straight side rises one way, so the deepest point of the outline is one
/// of: a disc's own deepest point, the end of a straight side, an inward corner of the union, a corner of a box; as far
/// as it is on the outline.
final class Deepest {
    private static final double ON = 1e-8;

    private final List<Seen> parts;
    private final Shade[] shades;
    private final double[] touch = new double[Seen.TOUCH_SIZE];
    private double deepest = Double.NEGATIVE_INFINITY;

    private Deepest(List<Seen> parts) {
        this.parts = parts;
        shades = Seen.shades(parts);
    }

    static double metres(List<Seen> parts) {
        Deepest search = new Deepest(parts);
        for (int i = 0; i < search.shades.length; i++) {
            search.part(i);
        }
        search.corners(new Corners(search.shades));
        return search.deepest;
    }

    private void part(int i) {
        switch (parts.get(i)) {
            case Seen.Plain(Disc low, Disc high) -> {
                for (Disc disc : List.of(low, high)) {
                    disc.deepest(touch);
                    take(i);
                    for (Shade.Run side : shades[i].sides) {
                        double ux = side.by() - side.ay();
                        double uy = side.ax() - side.bx();
                        disc.touch(ux, uy, disc.reach(ux, uy), touch);
                        take(i);
                    }
                }
            }
            case Seen.Points points -> {
                for (int k = 0; k < points.count(); k++) {
                    points.corner(k, touch);
                    take(i);
                }
            }
            case Bent _ -> throw new IllegalArgumentException("depths are asked of a pinhole picture");
        }
    }

    /// Takes the touched point if it is on the union's outline.
    private void take(int own) {
        if (touch[2] <= deepest || shades[own].holds(touch[0], touch[1], ON)) {
            return;
        }
        for (int i = 0; i < shades.length; i++) {
            if (i != own && shades[i].holds(touch[0], touch[1], ON)) {
                return;
            }
        }
        deepest = touch[2];
    }

    private void corners(Corners corners) {
        for (int c = 0; c < corners.count; c++) {
            int first = Long.numberOfTrailingZeros(corners.crossing[c]);
            int second = 63 - Long.numberOfLeadingZeros(corners.crossing[c]);
            double one = depthAt(first, corners.ux[c], corners.uy[c], corners.x[c], corners.y[c]);
            double other = depthAt(second, corners.vx[c], corners.vy[c], corners.x[c], corners.y[c]);
            deepest = Math.max(deepest, Math.max(one, other));
        }
    }

    /// Depth of a part's surface at a point of its outline; along a straight side one over the depth runs evenly.
    private double depthAt(int i, double ux, double uy, double x, double y) {
        if (!(parts.get(i) instanceof Seen.Plain(Disc low, Disc high))) {
            return Double.NEGATIVE_INFINITY;
        }
        double lowReach = low.reach(ux, uy);
        double highReach = high.reach(ux, uy);
        if (Math.abs(lowReach - highReach) > ON) {
            (lowReach > highReach ? low : high).touch(ux, uy, Math.max(lowReach, highReach), touch);
            return touch[2];
        }
        low.touch(ux, uy, lowReach, touch);
        double ax = touch[0];
        double ay = touch[1];
        double nearer = 1 / touch[2];
        high.touch(ux, uy, highReach, touch);
        double ex = touch[0] - ax;
        double ey = touch[1] - ay;
        double share = Math.clamp(((x - ax) * ex + (y - ay) * ey) / (ex * ex + ey * ey), 0, 1);
        return 1 / (nearer + share * (1 / touch[2] - nearer));
    }
}
