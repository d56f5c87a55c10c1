package plumeline.mirror;

import plumeline.geom.Solid;
import plumeline.geom.Station;
import plumeline.geom.Vec;

/// Whether a straight way goes through a solid, in the solid's own frame.
final class Crossings {
    /// What a way may go into a solid and still only touch it, share of its size.
    private static final double TOUCH = 1e-9;

    private Crossings() {}

    static boolean passesBox(Solid.Box box, Vec start, Vec way) {
        double slack = 1 - TOUCH;
        double[] free = {0, 1};
        boolean inside = narrow(free, start.x(), way.x(), slack * box.widthMetres() / 2)
                && narrow(free, start.y(), way.y(), slack * box.depthMetres() / 2)
                && narrow(free, start.z() - box.heightMetres() / 2, way.z(), slack * box.heightMetres() / 2);
        return !inside;
    }

    /// Narrows a part of the way to what lies between −half and half on one axis; false where nothing does.
    private static boolean narrow(double[] part, double start, double way, double half) {
        if (way == 0) {
            return Math.abs(start) < half;
        }
        double one = (-half - start) / way;
        double other = (half - start) / way;
        part[0] = Math.max(part[0], Math.min(one, other));
        part[1] = Math.min(part[1], Math.max(one, other));
        return part[0] < part[1];
    }

    /// On the way `x² + y² − r(z)²` is a square form of how far it has gone; inside the frustum it is below 0.
    static boolean passesFrustum(Station low, Station high, Vec start, Vec way) {
        double half = (high.heightMetres() - low.heightMetres()) / 2;
        double middle = (high.heightMetres() + low.heightMetres()) / 2;
        double[] part = {0, 1};
        if (!(half > 0) || !narrow(part, start.z() - middle, way.z(), half * (1 - TOUCH))) {
            return true;
        }
        double slope = (high.radiusMetres() - low.radiusMetres()) / (2 * half);
        double radius = low.radiusMetres() + slope * (start.z() - low.heightMetres());
        double grows = slope * way.z();
        double square = way.x() * way.x() + way.y() * way.y() - grows * grows;
        double linear = start.x() * way.x() + start.y() * way.y() - radius * grows;
        double constant = start.x() * start.x() + start.y() * start.y() - radius * radius;
        double deepest = Math.min(at(square, linear, constant, part[0]), at(square, linear, constant, part[1]));
        double turn = -linear / square;
        if (square > 0 && turn > part[0] && turn < part[1]) {
            deepest = at(square, linear, constant, turn);
        }
        double widest = Math.max(low.radiusMetres(), high.radiusMetres());
        return deepest >= -TOUCH * widest * widest;
    }

    private static double at(double square, double linear, double constant, double on) {
        return (square * on + 2 * linear) * on + constant;
    }
}
