package plumeline.geom;

import java.util.ArrayList;
import java.util.List;

/// A convex part of a body in space: the hull of two discs on one axis, or the eight corners of a box.
///
/// Reach in a direction d is max over the part of `d·p`: for a disc `d·c + r |d − (d·a) a|`, a being its axis.
sealed interface Lump {
    /// A share of a direction's length below which its part across an axis is nothing but rounding.
    double ROUNDING = 1e-9;

    /// A frustum.
    record Frustum(Vec low, double lowRadius, Vec high, double highRadius, Vec axis) implements Lump {
        @Override
        public Vec farthest(Vec way) {
            double along = way.dot(axis);
            double fx = way.x() - along * axis.x();
            double fy = way.y() - along * axis.y();
            double fz = way.z() - along * axis.z();
            double across = Math.sqrt(fx * fx + fy * fy + fz * fz);
            // Along the axis what is left across is rounding, which points anywhere, off the disc too.
            double flat = across > ROUNDING * Math.abs(along) ? across : 0;
            double lowReach = way.dot(low) + flat * lowRadius;
            double highReach = way.dot(high) + flat * highRadius;
            Vec centre = lowReach >= highReach ? low : high;
            double radius = lowReach >= highReach ? lowRadius : highRadius;
            return flat > 0
                    ? new Vec(
                            centre.x() + radius * fx / flat,
                            centre.y() + radius * fy / flat,
                            centre.z() + radius * fz / flat)
                    : centre;
        }

        @Override
        public Vec middle() {
            return low.plus(high).times(0.5);
        }

        @Override
        public double radius() {
            return Math.hypot(low.distanceMetres(high) / 2, Math.max(lowRadius, highRadius));
        }
    }

    /// A box's corners, or any few points.
    record Corners(List<Vec> points) implements Lump {
        @Override
        public Vec farthest(Vec way) {
            Vec best = points.getFirst();
            double reach = way.dot(best);
            for (int i = 1; i < points.size(); i++) {
                double there = way.dot(points.get(i));
                if (there > reach) {
                    reach = there;
                    best = points.get(i);
                }
            }
            return best;
        }

        @Override
        public Vec middle() {
            Vec sum = Vec.ZERO;
            for (Vec point : points) {
                sum = sum.plus(point);
            }
            return sum.times(1.0 / points.size());
        }

        @Override
        public double radius() {
            Vec middle = middle();
            double most = 0;
            for (Vec point : points) {
                most = Math.max(most, point.distanceMetres(middle));
            }
            return most;
        }
    }

    /// The point of the part that lies farthest in a direction.
    Vec farthest(Vec way);

    /// The middle of a sphere that holds the part.
    Vec middle();

    /// The radius of that sphere, metres.
    double radius();

    static List<Lump> of(Body body) {
        List<Lump> lumps = new ArrayList<>();
        switch (body.solid()) {
            case Solid.Revolved revolved -> {
                Vec axis = body.axis();
                Vec middle = body.middle();
                double half = revolved.heightMetres() / 2;
                List<Station> stations = revolved.stations();
                for (int i = 1; i < stations.size(); i++) {
                    Station low = stations.get(i - 1);
                    Station high = stations.get(i);
                    if (high.heightMetres() > low.heightMetres()) {
                        lumps.add(new Frustum(
                                middle.plus(axis.times(low.heightMetres() - half)),
                                low.radiusMetres(),
                                middle.plus(axis.times(high.heightMetres() - half)),
                                high.radiusMetres(),
                                axis));
                    }
                }
            }
            case Solid.Box box ->
                lumps.add(new Corners(box.corners().stream().map(body::place).toList()));
        }
        return lumps;
    }

    static Lump of(Barrel barrel) {
        Vec axis = barrel.to().minus(barrel.from()).unit();
        return new Frustum(barrel.from(), barrel.fromRadiusMetres(), barrel.to(), barrel.toRadiusMetres(), axis);
    }

    static Lump of(Vec place) {
        return new Corners(List.of(place));
    }
}
