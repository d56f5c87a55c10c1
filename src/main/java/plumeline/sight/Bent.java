package plumeline.sight;

import java.util.ArrayList;
import java.util.List;
import plumeline.geom.Body;
import plumeline.geom.Point;
import plumeline.geom.Projection;
import plumeline.geom.Station;
import plumeline.geom.Vec;

/// A convex part seen through something that bends rays: rings of its surface, projected point by point.
final class Bent implements Seen {
    private static final int ROUND = 48;
    private static final int RINGS = 5;
    private static final int FINER = 4;
    /// An ellipse fits if no point is farther off, picture length.
    private static final double FITS = 5e-7;

    private final double[][] x;
    private final double[][] y;
    private final double[][] depth;
    private final double least;

    private Bent(Projection projection, List<List<Vec>> rings) {
        x = new double[rings.size()][];
        y = new double[rings.size()][];
        depth = new double[rings.size()][];
        double nearest = Double.POSITIVE_INFINITY;
        for (List<Vec> ring : rings) {
            for (Vec place : ring) {
                nearest = Math.min(nearest, projection.depth(place));
            }
        }
        least = nearest;
        for (int r = 0; r < x.length; r++) {
            int count = rings.get(r).size();
            x[r] = new double[count];
            y[r] = new double[count];
            depth[r] = new double[count];
            for (int i = 0; i < count && least > 0; i++) {
                Vec place = rings.get(r).get(i);
                Point point = projection.project(place);
                x[r][i] = point.x();
                y[r][i] = point.y();
                depth[r][i] = projection.depth(place);
            }
        }
    }

    /// A box by its corners.
    static Bent box(Projection projection, List<Vec> corners) {
        return new Bent(projection, List.of(edges(corners)));
    }

    /// What of a body of revolution lies between two stations.
    static Bent frustum(Projection projection, Body body, Station low, Station high) {
        Vec axis = body.axis();
        double half = body.solid().heightMetres() / 2;
        Vec foot = body.middle().plus(axis.times(low.heightMetres() - half));
        Vec head = body.middle().plus(axis.times(high.heightMetres() - half));
        List<List<Vec>> rings = new ArrayList<>();
        for (int r = 0; r < RINGS; r++) {
            double share = r / (RINGS - 1.0);
            rings.add(ring(
                    foot.times(1 - share).plus(head.times(share)),
                    low.radiusMetres() * (1 - share) + high.radiusMetres() * share,
                    axis));
        }
        return new Bent(projection, rings);
    }

    private static List<Vec> ring(Vec middle, double radius, Vec axis) {
        Vec start = Math.abs(axis.x()) < 0.7 ? new Vec(1, 0, 0) : new Vec(0, 1, 0);
        Vec p = start.minus(axis.times(start.dot(axis))).unit();
        Vec q = axis.cross(p);
        List<Vec> ring = new ArrayList<>(ROUND);
        for (int i = 0; i < ROUND; i++) {
            double angle = 2 * Math.PI * i / ROUND;
            ring.add(middle.plus(p.times(radius * Math.cos(angle))).plus(q.times(radius * Math.sin(angle))));
        }
        return ring;
    }

    /// Straight edges bend in the picture: their thirds count too.
    private static List<Vec> edges(List<Vec> corners) {
        List<Vec> places = new ArrayList<>();
        for (int i = 0; i < corners.size(); i++) {
            for (int j = i; j < corners.size(); j++) {
                for (double share : new double[] {0, 1.0 / 3, 2.0 / 3}) {
                    places.add(
                            corners.get(i).times(1 - share).plus(corners.get(j).times(share)));
                }
            }
        }
        return places;
    }

    @Override
    public double reach(double ux, double uy, double[] touch) {
        double best = Double.NEGATIVE_INFINITY;
        for (int r = 0; r < x.length; r++) {
            int at = 0;
            double reach = Double.NEGATIVE_INFINITY;
            for (int i = 0; i < x[r].length; i++) {
                double there = ux * x[r][i] + uy * y[r][i];
                if (there > reach) {
                    reach = there;
                    at = i;
                }
            }
            double shift = x[r].length == ROUND ? shift(r, at, ux, uy) : 0;
            double refined = value(x[r], at, shift) * ux + value(y[r], at, shift) * uy;
            if (refined > best) {
                best = refined;
                if (touch.length > 0) {
                    touch[0] = value(x[r], at, shift);
                    touch[1] = value(y[r], at, shift);
                    touch[2] = value(depth[r], at, shift);
                }
            }
        }
        return best;
    }

    /// Where between its neighbours the farthest point of a ring lies, by a parabola through three.
    private double shift(int r, int at, double ux, double uy) {
        int n = x[r].length;
        int before = (at + n - 1) % n;
        int after = (at + 1) % n;
        double a = ux * x[r][before] + uy * y[r][before];
        double b = ux * x[r][at] + uy * y[r][at];
        double c = ux * x[r][after] + uy * y[r][after];
        double bend = a - 2 * b + c;
        return bend < 0 ? Math.clamp((a - c) / (2 * bend), -0.5, 0.5) : 0;
    }

    private static double value(double[] ring, int at, double shift) {
        if (shift == 0) {
            return ring[at];
        }
        int n = ring.length;
        double a = ring[(at + n - 1) % n];
        double b = ring[at];
        double c = ring[(at + 1) % n];
        return b + shift * (c - a) / 2 + shift * shift * (a - 2 * b + c) / 2;
    }

    /// The part as the hull of its end rings' ellipses where these and the straight sides between them fit, else as a
    /// polygon.
    @Override
    public Shade shade() {
        int lastRing = x.length - 1;
        if (lastRing == 0) {
            return Shade.polygon(x[0], y[0]);
        }
        Fit low = Fit.of(x[0], y[0]);
        Fit high = Fit.of(x[lastRing], y[lastRing]);
        if (low.off < FITS && high.off < FITS) {
            Shade shade = Shade.hull(low.ellipse, high.ellipse);
            if (fits(shade)) {
                return shade;
            }
        }
        return Shade.polygon(finer(x), finer(y));
    }

    /// Whether nothing of any ring sticks out.
    private boolean fits(Shade shade) {
        double[] way = new double[2];
        for (int r = 0; r < x.length; r++) {
            for (int i = 0; i < x[r].length; i++) {
                if (Contacts.distance(shade, x[r][i], y[r][i], way) > FITS) {
                    return false;
                }
            }
        }
        return true;
    }

    /// All rings in one row, with more points between, by the cubic through four neighbours.
    private static double[] finer(double[][] rings) {
        double[] row = new double[rings.length * ROUND * FINER];
        for (int r = 0; r < rings.length; r++) {
            for (int i = 0; i < ROUND; i++) {
                double a = rings[r][(i + ROUND - 1) % ROUND];
                double b = rings[r][i];
                double c = rings[r][(i + 1) % ROUND];
                double d = rings[r][(i + 2) % ROUND];
                for (int k = 0; k < FINER; k++) {
                    double t = (double) k / FINER;
                    row[(r * ROUND + i) * FINER + k] = -a * t * (t - 1) * (t - 2) / 6
                            + b * (t + 1) * (t - 1) * (t - 2) / 2
                            - c * (t + 1) * t * (t - 2) / 2
                            + d * (t + 1) * t * (t - 1) / 6;
                }
            }
        }
        return row;
    }

    @Override
    public double leastDepth() {
        return least;
    }
}
