package plumeline.lit;

import plumeline.geom.Vec;
import plumeline.light.Panel;

/// Sight followed through a tank ray by ray, for tests: 600 by 400 by 400 mm inside round the table's middle, glass
/// 8 mm. Two swings of light are followed along each ray, each weakened along and across every face's plane of
/// incidence. Lamps are met on their front; a can of 80 by 100 mm and a post of 30 by 600 mm hide.
record TankRays(double waterLine, double canX, double canY, double canBase, double postX, double postY) {
    private static final double PANE = 0.008;
    private static final double GLASS = 1.52;
    private static final double WATER = 1.333;
    private static final Vec LOW = new Vec(-0.308, -0.208, 0);
    private static final Vec HIGH = new Vec(0.308, 0.208, 0.408);
    private static final Vec IN_LOW = new Vec(-0.3, -0.2, 0.008);
    private static final Vec IN_HIGH = new Vec(0.3, 0.2, 0.408);

    private static final class Ray {
        Vec at;
        Vec way;
        Vec one;
        Vec other;
        boolean isDead;

        Ray(Vec at, Vec way) {
            this.at = at;
            this.way = way;
            one = way.cross(Math.abs(way.z()) < 0.9 ? Vec.UP : new Vec(1, 0, 0)).unit();
            other = way.cross(one);
        }

        double share() {
            return (one.dot(one) + other.dot(other)) / 2;
        }

        /// Over a flat face, perhaps of a pane of some thickness.
        void cross(Vec normal, double from, double pane, double thick, double to) {
            double cosine = way.dot(normal);
            Vec aside = way.minus(normal.times(cosine)).times(from);
            double square = aside.dot(aside);
            if (square >= to * to) {
                isDead = true;
                return;
            }
            double sign = Math.signum(cosine);
            double inPane = Math.sqrt(pane * pane - square) / pane;
            double behind = Math.sqrt(to * to - square) / to;
            double s = both(
                    square((from * Math.abs(cosine) - pane * inPane) / (from * Math.abs(cosine) + pane * inPane)),
                    square((pane * inPane - to * behind) / (pane * inPane + to * behind)));
            double p = both(
                    square((pane * Math.abs(cosine) - from * inPane) / (pane * Math.abs(cosine) + from * inPane)),
                    square((to * inPane - pane * behind) / (to * inPane + pane * behind)));
            at = at.plus(aside.times(thick / (pane * inPane))).plus(normal.times(sign * thick));
            Vec on = aside.times(1 / to).plus(normal.times(sign * behind)).unit();
            Vec across = square > 1e-20 ? normal.cross(way).unit() : one.unit();
            one = weaker(one, across, on, s, p);
            other = weaker(other, across, on, s, p);
            way = on;
        }

        private Vec weaker(Vec swing, Vec across, Vec on, double s, double p) {
            return across.times(swing.dot(across) * Math.sqrt(s))
                    .plus(across.cross(on).times(swing.dot(across.cross(way)) * Math.sqrt(p)));
        }
    }

    private static double square(double value) {
        return value * value;
    }

    private static double both(double one, double other) {
        return (1 - one) * (1 - other) / (1 - one * other);
    }

    private static double part(Vec at, int axis) {
        return axis == 0 ? at.x() : axis == 1 ? at.y() : at.z();
    }

    private static Vec axis(int axis) {
        return new Vec(axis == 0 ? 1 : 0, axis == 1 ? 1 : 0, axis == 2 ? 1 : 0);
    }

    /// Of an even panel on a place, lx, by as many ways each way as there are steps.
    double lux(Panel panel, Vec place, Vec facing, int steps) {
        return lux(panel, Uneven.of(""), place, facing, steps);
    }

    /// Of one that isn't even.
    double lux(Panel panel, Uneven uneven, Vec place, Vec facing, int steps) {
        Vec axis = panel.middle().minus(place).unit();
        // Askew, so that no row of ways runs along an edge.
        Vec right = axis.cross(new Vec(0.3, 0.2, 1)).unit();
        Vec up = right.cross(axis);
        // Where in these directions the panel is seen at all, coarsely, then finely there.
        double[] box = {9, -9, 9, -9};
        int coarse = 1500;
        for (int i = 0; i < coarse; i++) {
            for (int j = 0; j < coarse; j++) {
                double u = 2.4 * ((i + 0.5) / coarse - 0.5) * 2;
                double v = 2.4 * ((j + 0.5) / coarse - 0.5) * 2;
                if (seen(
                                panel,
                                uneven,
                                place,
                                axis.plus(right.times(u)).plus(up.times(v)).unit())
                        > 0) {
                    double step = 4.8 / coarse;
                    box[0] = Math.min(box[0], u - step);
                    box[1] = Math.max(box[1], u + step);
                    box[2] = Math.min(box[2], v - step);
                    box[3] = Math.max(box[3], v + step);
                }
            }
        }
        double sum = 0;
        for (int i = 0; i < steps && box[0] < box[1]; i++) {
            for (int j = 0; j < steps; j++) {
                double u = box[0] + (box[1] - box[0]) * (i + 0.5) / steps;
                double v = box[2] + (box[3] - box[2]) * (j + 0.5) / steps;
                Vec way = axis.plus(right.times(u)).plus(up.times(v));
                double length = way.lengthMetres();
                Vec unit = way.times(1 / length);
                double cosine = unit.dot(facing);
                sum += cosine > 0 ? seen(panel, uneven, place, unit) * cosine / (length * length * length) : 0;
            }
        }
        return panel.luminance() * sum * (box[1] - box[0]) * (box[3] - box[2]) / steps / steps;
    }

    private double seen(Panel panel, Uneven uneven, Vec place, Vec unit) {
        Ray ray = new Ray(place, unit);
        if (!through(ray, panel)) {
            return 0;
        }
        double on = until(ray, panel);
        Vec hit = hit(ray, panel, on);
        boolean isMet = on > 0 && ray.way.dot(panel.facing()) < 0 && isOn(panel, hit) && !meets(ray, on);
        return isMet
                ? ray.share()
                        * uneven.share(
                                2 * hit.dot(panel.right()) / panel.widthMetres(),
                                2 * hit.dot(panel.up()) / panel.heightMetres(),
                                ray.way.cross(panel.facing()).lengthMetres() / Math.abs(ray.way.dot(panel.facing())))
                : 0;
    }

    /// From the panel's middle.
    private static Vec hit(Ray ray, Panel panel, double on) {
        return ray.at.plus(ray.way.times(on)).minus(panel.middle());
    }

    private static boolean isOn(Panel panel, Vec hit) {
        return Math.abs(hit.dot(panel.right())) < panel.widthMetres() / 2
                && Math.abs(hit.dot(panel.up())) < panel.heightMetres() / 2;
    }

    private static double until(Ray ray, Panel panel) {
        return panel.middle().minus(ray.at).dot(panel.facing()) / ray.way.dot(panel.facing());
    }

    private boolean meets(Ray ray, double on) {
        return meets(ray, canX, canY, 0.04, canBase, canBase + 0.1, on) || meets(ray, postX, postY, 0.015, 0, 0.6, on);
    }

    /// Leaves the ray where it comes out of the tank, or as it was where it misses it or comes to the lamp before.
    private boolean through(Ray ray, Panel panel) {
        double enter = 0;
        double leave = Double.POSITIVE_INFINITY;
        int face = -1;
        for (int a = 0; a < 3; a++) {
            double one = (part(LOW, a) - part(ray.at, a)) / part(ray.way, a);
            double other = (part(HIGH, a) - part(ray.at, a)) / part(ray.way, a);
            if (Math.min(one, other) > enter) {
                enter = Math.min(one, other);
                face = a;
            }
            leave = Math.min(leave, Math.max(one, other));
        }
        double lamp = until(ray, panel);
        if (face < 0 || enter >= leave || lamp > 0 && lamp < enter && isOn(panel, hit(ray, panel, lamp))) {
            return true;
        }
        if (meets(ray, enter)) {
            return false;
        }
        ray.at = ray.at.plus(ray.way.times(enter));
        double index = 1;
        if (face < 2) {
            Ray ahead = new Ray(ray.at, ray.way);
            ahead.cross(axis(face), 1, GLASS, PANE, 1);
            index = ahead.at.z() < waterLine ? WATER : 1;
            ray.cross(axis(face), 1, GLASS, PANE, index);
        } else if (ray.way.z() > 0) {
            return false;
        }
        for (int a = 0; a < 3; a++) {
            if (a != face && (part(ray.at, a) < part(IN_LOW, a) || part(ray.at, a) > part(IN_HIGH, a))) {
                return false;
            }
        }
        return out(ray, index);
    }

    /// From within the walls out, perhaps over the surface.
    private boolean out(Ray ray, double before) {
        double index = before;
        for (int legs = 0; legs < 3; legs++) {
            double low = index > 1 ? IN_LOW.z() : Math.max(IN_LOW.z(), waterLine);
            double high = index > 1 ? waterLine : IN_HIGH.z();
            double[] ends = new double[3];
            for (int a = 0; a < 3; a++) {
                double way = part(ray.way, a);
                double end = a == 2 ? (way > 0 ? high : low) : part(way > 0 ? IN_HIGH : IN_LOW, a);
                ends[a] = way == 0 ? Double.POSITIVE_INFINITY : (end - part(ray.at, a)) / way;
            }
            int a = ends[0] < ends[1] ? ends[0] < ends[2] ? 0 : 2 : ends[1] < ends[2] ? 1 : 2;
            if (meets(ray, ends[a])) {
                return false;
            }
            ray.at = ray.at.plus(ray.way.times(ends[a]));
            if (a < 2) {
                ray.cross(axis(a), index, GLASS, PANE, 1);
                return !ray.isDead && ray.at.z() > 0 && ray.at.z() < HIGH.z();
            }
            boolean isUp = ray.way.z() > 0;
            if (isUp && index == 1) {
                return true;
            }
            if (!isUp && (index > 1 || waterLine <= IN_LOW.z())) {
                return false;
            }
            double next = isUp ? 1 : WATER;
            ray.cross(Vec.UP, index, next, 0, next);
            if (ray.isDead) {
                return false;
            }
            index = next;
        }
        return false;
    }

    private static boolean meets(Ray ray, double x, double y, double radius, double low, double high, double length) {
        double a = square(ray.way.x()) + square(ray.way.y());
        double b = ray.way.x() * (ray.at.x() - x) + ray.way.y() * (ray.at.y() - y);
        double c = square(ray.at.x() - x) + square(ray.at.y() - y) - radius * radius;
        double root = b * b - a * c;
        if (root <= 0) {
            return false;
        }
        double enter = Math.max(0, (-b - Math.sqrt(root)) / a);
        double leave = Math.min(length, (-b + Math.sqrt(root)) / a);
        double one = ray.at.z() + enter * ray.way.z();
        double other = ray.at.z() + leave * ray.way.z();
        return enter < leave && Math.min(one, other) < high && Math.max(one, other) > low;
    }
}
