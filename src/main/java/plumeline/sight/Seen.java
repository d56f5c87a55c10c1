package plumeline.sight;

import java.util.ArrayList;
import java.util.List;
import plumeline.geom.Aim;
import plumeline.geom.Body;
import plumeline.geom.Pinhole;
import plumeline.geom.Projection;
import plumeline.geom.Solid;
import plumeline.geom.Station;
import plumeline.geom.Vec;

/// A convex part of a body as it shows in the picture: how far it reaches in each picture direction, and where it
/// touches there.
///
/// In a pinhole picture a disc's reach in direction u is the larger root t of
/// `(u·c − t c₃)² = (u·p − t p₃)² + (u·q − t q₃)²`, c being its middle and p, q two radii at right angles in the
/// camera's frame: the line `u·X = t` touches its ellipse. Through a tank's wall rings of points are seen one by one
/// and the farthest is refined between its neighbours.
///
/// **Source:** own derivation; the tangent of a conic as a double root.
sealed interface Seen permits Seen.Plain, Seen.Points, Bent {
    /// Room for the answer of [#touch]: picture x, y, and depth in metres.
    int TOUCH_SIZE = 3;

    /// How far the part reaches in a picture direction; writes the touching point where `touch` has room.
    double reach(double ux, double uy, double[] touch);

    /// Least depth of the part, metres.
    double leastDepth();

    /// The part made ready for hidden margins.
    Shade shade();

    static Shade[] shades(List<Seen> parts) {
        Shade[] shades = new Shade[parts.size()];
        for (int i = 0; i < shades.length; i++) {
            shades[i] = parts.get(i).shade();
        }
        return shades;
    }

    /// The four edges.
    default Extent extent() {
        double[] noTouch = {};
        return new Extent(-reach(-1, 0, noTouch), reach(1, 0, noTouch), -reach(0, -1, noTouch), reach(0, 1, noTouch));
    }

    static List<Seen> of(Projection projection, Body body) {
        return switch (body.solid()) {
            case Solid.Revolved(List<Station> stations) -> frusta(projection, body, stations);
            case Solid.Box box -> {
                List<Vec> corners = box.corners().stream().map(body::place).toList();
                yield List.of(
                        projection instanceof Pinhole(Aim aim)
                                ? new Points(aim, corners)
                                : Bent.box(projection, corners));
            }
        };
    }

    private static List<Seen> frusta(Projection projection, Body body, List<Station> stations) {
        List<Seen> parts = new ArrayList<>();
        if (projection instanceof Pinhole(Aim aim)) {
            plain(parts, Disc.Axle.of(aim, body), stations);
        } else {
            for (int i = 1; i < stations.size(); i++) {
                if (stations.get(i).heightMetres() > stations.get(i - 1).heightMetres()) {
                    parts.add(Bent.frustum(projection, body, stations.get(i - 1), stations.get(i)));
                }
            }
        }
        return parts;
    }

    private static void plain(List<Seen> parts, Disc.Axle axle, List<Station> stations) {
        for (int i = 1; i < stations.size(); i++) {
            if (stations.get(i).heightMetres() > stations.get(i - 1).heightMetres()) {
                parts.add(new Plain(axle.disc(stations.get(i - 1)), axle.disc(stations.get(i))));
            }
        }
    }

    /// A frustum in a pinhole picture.
    record Plain(Disc low, Disc high) implements Seen {
        @Override
        public double reach(double ux, double uy, double[] touch) {
            double lowReach = low.reach(ux, uy);
            double highReach = high.reach(ux, uy);
            if (touch.length > 0) {
                (lowReach >= highReach ? low : high).touch(ux, uy, Math.max(lowReach, highReach), touch);
            }
            return Math.max(lowReach, highReach);
        }

        @Override
        public Extent extent() {
            return low.extent().with(high.extent());
        }

        @Override
        public Shade shade() {
            double a = low.radius();
            double b = high.radius();
            return Shade.hull(
                    low.ellipse(),
                    high.ellipse(),
                    b * low.cx() - a * high.cx(),
                    b * low.cy() - a * high.cy(),
                    b * low.cz() - a * high.cz());
        }

        @Override
        public double leastDepth() {
            return Math.min(low.leastDepth(), high.leastDepth());
        }
    }

    /// A few points in a pinhole picture.
    final class Points implements Seen {
        private final double[] x;
        private final double[] y;
        private final double[] depth;

        Points(Aim aim, List<Vec> places) {
            x = new double[places.size()];
            y = new double[x.length];
            depth = new double[x.length];
            for (int i = 0; i < x.length; i++) {
                Vec way = places.get(i).minus(aim.eye());
                depth[i] = aim.forward().dot(way);
                x[i] = aim.right().dot(way) / depth[i];
                y[i] = aim.up().dot(way) / depth[i];
            }
        }

        @Override
        public double reach(double ux, double uy, double[] touch) {
            int best = 0;
            double reach = Double.NEGATIVE_INFINITY;
            for (int i = 0; i < x.length; i++) {
                double there = ux * x[i] + uy * y[i];
                if (there > reach) {
                    reach = there;
                    best = i;
                }
            }
            if (touch.length > 0) {
                touch[0] = x[best];
                touch[1] = y[best];
                touch[2] = depth[best];
            }
            return reach;
        }

        int count() {
            return x.length;
        }

        void corner(int i, double[] touch) {
            touch[0] = x[i];
            touch[1] = y[i];
            touch[2] = depth[i];
        }

        @Override
        public Shade shade() {
            return Shade.polygon(x, y);
        }

        @Override
        public double leastDepth() {
            double least = Double.POSITIVE_INFINITY;
            for (double metres : depth) {
                least = Math.min(least, metres);
            }
            return least;
        }
    }
}
