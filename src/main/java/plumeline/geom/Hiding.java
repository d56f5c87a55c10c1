package plumeline.geom;

import java.util.ArrayList;
import java.util.List;
import java.util.function.DoubleUnaryOperator;

/// By how much one outline lies inside the union of others.
///
/// Inside, the nearest edge of the union is found on the exposed edges of its convex parts (an edge's line is as far as the
/// hidden part's reach along the edge's normal) and at its inward corners; outside, the largest protrusion is the farthest
/// point from the union. Polygons find the contact; where it lies on smooth outlines the figure is then the exact
/// `h_H(u) − h_K(u)`, smallest near that direction.
final class Hiding {
    private static final int STEPS = 32;
    private static final int SUBDIVIDED = 8;
    /// A side longer than this in the picture is looked at in pieces.
    private static final double LONG = 1e-3;

    private static final double EPS = 1e-10;

    /// By how much a distance to a polygon may be more than that to its outline.
    private static final double ROUGH = 1e-3;
    /// How far beyond an exposed run's end a contact still counts, as a share of the edge.
    private static final double FOOT = 1e-6;

    /// How far outside of an inward corner's cone of directions still counts, sine of the angle.
    private static final double CONE = 0.05;

    private static final double[] NO_TOUCH = {};

    private final List<Hull> hiders;
    private final List<Hull> hidden;
    private final double[] inside = {Sides.NO_LIMIT, Sides.NO_LIMIT, Sides.NO_LIMIT, Sides.NO_LIMIT};
    private final double[] outside = {0, 0, 0, 0};

    private Hiding(List<Hull> hidden, List<Hull> hiders) {
        this.hidden = hidden;
        this.hiders = hiders;
    }

    static Sides of(List<Seen> hidden, List<Seen> hiders) {
        if (hiders.isEmpty()) {
            return new Sides(-Sides.NO_LIMIT, -Sides.NO_LIMIT, -Sides.NO_LIMIT, -Sides.NO_LIMIT);
        }
        if (hiders.size() == 1) {
            return convex(hidden, hiders.getFirst());
        }
        Hiding hiding = new Hiding(hulls(hidden), hulls(hiders));
        hiding.protrude();
        hiding.touchEdges();
        double[] sides = new double[4];
        for (int s = 0; s < 4; s++) {
            sides[s] = hiding.outside[s] > 0 ? -hiding.outside[s] : hiding.inside[s];
        }
        return new Sides(sides[0], sides[1], sides[2], sides[3]);
    }

    private static List<Hull> hulls(List<Seen> parts) {
        List<Hull> hulls = new ArrayList<>(parts.size());
        for (Seen part : parts) {
            hulls.add(Hull.of(part, STEPS));
        }
        return hulls;
    }

    /// Behind one convex part: the least of h_H − h_K in each quarter of directions.
    private static Sides convex(List<Seen> hidden, Seen hider) {
        double[] sides = new double[4];
        double[] middles = {Math.PI, 0, -Math.PI / 2, Math.PI / 2};
        for (int s = 0; s < 4; s++) {
            double low = middles[s] - Math.PI / 4;
            int steps = 12;
            double best = Double.POSITIVE_INFINITY;
            double at = low;
            for (int i = 0; i <= steps; i++) {
                double angle = low + Math.PI / 2 * i / steps;
                double there = spare(hidden, hider, angle);
                if (there < best) {
                    best = there;
                    at = angle;
                }
            }
            double step = Math.PI / 2 / steps;
            double from = Math.max(low, at - step);
            double to = Math.min(low + Math.PI / 2, at + step);
            sides[s] = Math.min(best, Golden.least(angle -> spare(hidden, hider, angle), from, to));
        }
        return new Sides(sides[0], sides[1], sides[2], sides[3]);
    }

    private static double spare(List<Seen> hidden, Seen hider, double angle) {
        double ux = Math.cos(angle);
        double uy = Math.sin(angle);
        double most = Double.NEGATIVE_INFINITY;
        for (Seen part : hidden) {
            most = Math.max(most, part.reach(ux, uy, NO_TOUCH));
        }
        return hider.reach(ux, uy, NO_TOUCH) - most;
    }

    /// A point that sticks out: the part and the edge it is on, how far along the edge, and the direction away from the union
    /// with the distance.
    private record Protruding(Hull part, int edge, double share, double ux, double uy, double distance) {
        double x() {
            return part.xAlong(edge, share);
        }

        double y() {
            return part.yAlong(edge, share);
        }
    }

    private void protrude() {
        List<Protruding> all = new ArrayList<>();
        double[] rough = new double[4];
        for (Hull part : hidden) {
            for (int i = 0; i < part.count; i++) {
                double length = Math.hypot(part.xAlong(i, 1) - part.x[i], part.yAlong(i, 1) - part.y[i]);
                int pieces = length > LONG ? SUBDIVIDED : 1;
                for (int k = 0; k < pieces; k++) {
                    Protruding there = protruding(part, i, (double) k / pieces);
                    if (there.distance() > 0) {
                        all.add(there);
                        int side = side(there.ux(), there.uy());
                        rough[side] = Math.max(rough[side], there.distance());
                    }
                }
            }
        }
        // Polygons lie inside their outlines, so the farthest point of theirs may not be the farthest of all: look at the
        // near best ones exactly.
        Protruding[] farthest = new Protruding[4];
        for (Protruding there : all) {
            int side = side(there.ux(), there.uy());
            if (there.distance() > rough[side] - Math.min(ROUGH / 4, rough[side] / 50)) {
                double distance = exactDistance(there.x(), there.y());
                if (distance > outside[side]) {
                    outside[side] = distance;
                    farthest[side] = there;
                }
            }
        }
        int worst = 0;
        for (int s = 1; s < 4; s++) {
            worst = outside[s] > outside[worst] ? s : worst;
        }
        if (farthest[worst] != null) {
            outside[worst] = exact(farthest[worst]);
        }
    }

    private Protruding protruding(Hull part, int edge, double share) {
        double px = part.xAlong(edge, share);
        double py = part.yAlong(edge, share);
        double[] way = new double[2];
        Protruding nearest = new Protruding(part, edge, share, 0, 0, 0);
        for (Hull hider : hiders) {
            if (hider.outside(px, py) <= EPS) {
                return new Protruding(part, edge, share, 0, 0, 0);
            }
            double distance = hider.distance(px, py, way);
            if (nearest.distance() == 0 || distance < nearest.distance()) {
                nearest = new Protruding(part, edge, share, way[0], way[1], distance);
            }
        }
        return nearest;
    }

    /// The protrusion with both outlines exact: the point is moved along its arc or side to where it is farthest from the
    /// union.
    private double exact(Protruding at) {
        Hull part = at.part();
        double before = exactDistance(at.x(), at.y());
        double piece = 1.0 / SUBDIVIDED;
        double along = farthestAlong(part, at.edge(), at.share() - piece, at.share() + piece);
        if (at.share() > 0) {
            return Math.max(before, along);
        }
        int last = at.edge() == 0 ? part.count - 1 : at.edge() - 1;
        along = Math.max(along, farthestAlong(part, last, 1 - piece, 1));
        double step = 2 * Math.PI / STEPS;
        double[] touch = new double[Seen.TOUCH_SIZE];
        double moved = -Golden.least(
                angle -> {
                    part.part.reach(Math.cos(angle), Math.sin(angle), touch);
                    return -exactDistance(touch[0], touch[1]);
                },
                part.angle[at.edge()] - step,
                part.angle[at.edge()] + step);
        return Math.max(Math.max(before, along), moved);
    }

    private double farthestAlong(Hull part, int edge, double from, double to) {
        return -Golden.least(
                share -> -exactDistance(part.xAlong(edge, share), part.yAlong(edge, share)),
                Math.max(0, from),
                Math.min(1, to));
    }

    /// Distance of a point to the union, 0 inside: for each part that it is outside of the largest `u·p − h(u)`.
    private double exactDistance(double px, double py) {
        double least = Double.POSITIVE_INFINITY;
        double[] way = new double[2];
        for (Hull hider : hiders) {
            if (hider.outside(px, py) <= EPS) {
                return 0;
            }
            double rough = hider.distance(px, py, way);
            if (rough > least + ROUGH) {
                continue;
            }
            least = Math.min(least, exactDistance(hider.part, px, py, way));
        }
        return least;
    }

    private void touchEdges() {
        for (int h = 0; h < hiders.size(); h++) {
            Hull hider = hiders.get(h);
            List<List<double[]>> exposed = new ArrayList<>(hider.count);
            for (int i = 0; i < hider.count; i++) {
                exposed.add(exposed(h, i));
            }
            for (Hull part : hidden) {
                touchEdges(part, hider, exposed);
            }
        }
    }

    /// The runs of an edge, as shares of it, that no other hider covers.
    private List<double[]> exposed(int h, int i) {
        Hull hider = hiders.get(h);
        double ex = hider.xAlong(i, 1) - hider.x[i];
        double ey = hider.yAlong(i, 1) - hider.y[i];
        List<double[]> open = List.of(new double[] {0, 1});
        for (int k = 0; k < hiders.size() && !open.isEmpty(); k++) {
            if (k != h) {
                open = cut(open, hider.x[i], hider.y[i], ex, ey, hiders.get(k), k < h ? EPS : -EPS, h);
            }
        }
        return open;
    }

    /// Spare room has its least between two corners where the hidden part's touching point passes from after the one to before
    /// the other.
    private void touchEdges(Hull part, Hull hider, List<List<double[]>> exposed) {
        double[] touch = new double[Seen.TOUCH_SIZE];
        double[] ahead = new double[hider.count];
        for (int i = 0; i < hider.count; i++) {
            double ux = Math.cos(hider.angle[i]);
            double uy = Math.sin(hider.angle[i]);
            part.part.reach(ux, uy, touch);
            ahead[i] = ux * (hider.y[i] - touch[1]) - uy * (hider.x[i] - touch[0]);
        }
        for (int i = 0; i < hider.count; i++) {
            if (!exposed.get(i).isEmpty() && ahead[i] <= EPS && ahead[hider.next(i)] >= -EPS) {
                edgeContact(part, hider, i, exposed.get(i));
            }
        }
    }

    private void edgeContact(Hull part, Hull hider, int i, List<double[]> exposed) {
        double from = hider.angle[i];
        double to = hider.angle[hider.next(i)];
        to = to < from ? to + 2 * Math.PI : to;
        List<Seen> own = List.of(part.part);
        double at = to - from > EPS ? Golden.place(u -> spare(own, hider.part, u), from, to) : from;
        double spare = spare(own, hider.part, at);
        int side = side(Math.cos(at), Math.sin(at));
        if (spare < -EPS || spare >= inside[side]) {
            return;
        }
        double[] touch = new double[Seen.TOUCH_SIZE];
        part.part.reach(Math.cos(at), Math.sin(at), touch);
        double ex = hider.xAlong(i, 1) - hider.x[i];
        double ey = hider.yAlong(i, 1) - hider.y[i];
        double foot = ((touch[0] - hider.x[i]) * ex + (touch[1] - hider.y[i]) * ey) / (ex * ex + ey * ey);
        foot = Math.clamp(foot, 0, 1);
        for (double[] run : exposed) {
            if (foot >= run[0] - FOOT && foot <= run[1] + FOOT) {
                inside[side] = spare;
            }
        }
    }

    /// Cuts from runs of an edge what lies inside another part; each end that is made is an inward corner of the union.
    private List<double[]> cut(
            List<double[]> open, double x, double y, double ex, double ey, Hull by, double slack, int own) {
        double enter = Double.NEGATIVE_INFINITY;
        double leave = Double.POSITIVE_INFINITY;
        int enterEdge = 0;
        int leaveEdge = 0;
        for (int i = 0; i < by.count; i++) {
            int j = by.next(i);
            double fx = by.x[j] - by.x[i];
            double fy = by.y[j] - by.y[i];
            double length = Math.sqrt(fx * fx + fy * fy);
            double beyond = ((x - by.x[i]) * fy - (y - by.y[i]) * fx) / length - slack;
            double rate = (ex * fy - ey * fx) / length;
            if (Math.abs(rate) < 1e-18) {
                if (beyond > 0) {
                    return open;
                }
            } else if (rate < 0) {
                if (-beyond / rate > enter) {
                    enter = -beyond / rate;
                    enterEdge = i;
                }
            } else if (-beyond / rate < leave) {
                leave = -beyond / rate;
                leaveEdge = i;
            }
        }
        if (enter >= leave) {
            return open;
        }
        List<double[]> left = new ArrayList<>(open.size() + 1);
        for (double[] run : open) {
            if (leave <= run[0] || enter >= run[1]) {
                left.add(run);
                continue;
            }
            if (enter > run[0]) {
                left.add(new double[] {run[0], enter});
                corner(x + enter * ex, y + enter * ey, ex, ey, by, enterEdge, own);
            }
            if (leave < run[1]) {
                left.add(new double[] {leave, run[1]});
                corner(x + leave * ex, y + leave * ey, ex, ey, by, leaveEdge, own);
            }
        }
        return left;
    }

    /// An inward corner of the union: each hidden part's distance to it counts where it lies between both edges' normals.
    private void corner(double vx, double vy, double ex, double ey, Hull by, int edge, int own) {
        Hull mine = hiders.get(own);
        for (Hull other : hiders) {
            if (other != mine && other != by && other.outside(vx, vy) < -EPS) {
                return;
            }
        }
        double length = Math.sqrt(ex * ex + ey * ey);
        double nx = ey / length;
        double ny = -ex / length;
        int j = by.next(edge);
        double fx = by.x[j] - by.x[edge];
        double fy = by.y[j] - by.y[edge];
        double size = Math.sqrt(fx * fx + fy * fy);
        double mx = fy / size;
        double my = -fx / size;
        double turn = Math.signum(nx * my - ny * mx);
        double[] way = new double[2];
        for (Hull part : hidden) {
            if (part.outside(vx, vy) <= 0) {
                continue;
            }
            double distance = part.distance(vx, vy, way);
            double first = (nx * way[1] - ny * way[0]) * turn;
            double second = (way[0] * my - way[1] * mx) * turn;
            int side = side(way[0], way[1]);
            if (first >= -CONE && second >= -CONE && distance < inside[side] + ROUGH) {
                double[] corner = {vx, vy};
                crossing(corner, mine.part, Math.atan2(ny, nx), by.part, Math.atan2(my, mx));
                inside[side] = Math.min(inside[side], exactDistance(part.part, corner[0], corner[1], way));
            }
        }
    }

    /// Moves a crossing of two polygons to that of their outlines, by Newton's steps on both distances.
    private static void crossing(double[] corner, Seen one, double oneAngle, Seen other, double otherAngle) {
        for (int i = 0; i < 3; i++) {
            double u = normal(one, corner, oneAngle);
            double v = normal(other, corner, otherAngle);
            double f = Math.cos(u) * corner[0] + Math.sin(u) * corner[1] - one.reach(Math.cos(u), Math.sin(u), NO_TOUCH);
            double g =
                    Math.cos(v) * corner[0] + Math.sin(v) * corner[1] - other.reach(Math.cos(v), Math.sin(v), NO_TOUCH);
            double sine = Math.sin(v - u);
            if (Math.abs(sine) < 1e-3) {
                return;
            }
            corner[0] -= (f * Math.sin(v) - g * Math.sin(u)) / sine;
            corner[1] -= (g * Math.cos(u) - f * Math.cos(v)) / sine;
        }
    }

    private static double normal(Seen part, double[] at, double near) {
        double step = 2 * Math.PI / STEPS;
        return Golden.place(
                u -> part.reach(Math.cos(u), Math.sin(u), NO_TOUCH) - at[0] * Math.cos(u) - at[1] * Math.sin(u),
                near - step,
                near + step);
    }

    /// Distance of a point to a part's outline from outside: the largest `u·p − h(u)` near a direction.
    private static double exactDistance(Seen part, double px, double py, double[] way) {
        double towards = Math.atan2(way[1], way[0]);
        double step = 4 * Math.PI / STEPS;
        return Math.max(
                0,
                -Golden.least(
                        u -> part.reach(Math.cos(u), Math.sin(u), NO_TOUCH) - px * Math.cos(u) - py * Math.sin(u),
                        towards - step,
                        towards + step));
    }

    private static int side(double ux, double uy) {
        if (Math.abs(ux) >= Math.abs(uy)) {
            return ux < 0 ? 0 : 1;
        }
        return uy < 0 ? 2 : 3;
    }
}
