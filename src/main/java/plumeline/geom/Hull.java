package plumeline.geom;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/// A convex part of a body as the hull of two rings of as many corners: the two ends of a frustum, floor and lid of a
/// box. Its edges run along each ring and from each corner to its like in the other.
///
/// @param one corners in order, m
/// @param other corners in order, m, as many
public record Hull(List<Vec> one, List<Vec> other) {
    /// Checks that there are as many, and copies the lists.
    public Hull {
        if (one.size() != other.size() || one.isEmpty()) {
            throw new IllegalArgumentException(
                    "two rings need as many corners, given " + one.size() + " and " + other.size());
        }
        one = List.copyOf(one);
        other = List.copyOf(other);
    }

    /// Gives a body's convex parts.
    ///
    /// @param body the body
    /// @param steps corners round a circle, 3 or more, on the circle
    /// @return a hull a frustum, or one for a box; together no larger than the body
    public static List<Hull> of(Body body, int steps) {
        List<Hull> hulls = new ArrayList<>();
        switch (body.solid()) {
            case Solid.Revolved revolved -> {
                List<Station> stations = revolved.stations();
                for (int i = 1; i < stations.size(); i++) {
                    Station low = stations.get(i - 1);
                    Station high = stations.get(i);
                    if (high.heightMetres() > low.heightMetres()) {
                        hulls.add(new Hull(ring(body, low, steps), ring(body, high, steps)));
                    }
                }
            }
            case Solid.Box box -> {
                Vec up = new Vec(0, 0, box.heightMetres());
                List<Vec> floor =
                        List.of(corner(box, -1, -1), corner(box, 1, -1), corner(box, 1, 1), corner(box, -1, 1));
                hulls.add(new Hull(
                        floor.stream().map(body::place).toList(),
                        floor.stream().map(own -> body.place(own.plus(up))).toList()));
            }
        }
        return hulls;
    }

    private static Vec corner(Solid.Box box, int right, int back) {
        return new Vec(right * box.widthMetres() / 2, back * box.depthMetres() / 2, 0);
    }

    private static List<Vec> ring(Body body, Station station, int steps) {
        List<Vec> ring = new ArrayList<>(steps);
        for (int i = 0; i < steps; i++) {
            double angle = 2 * Math.PI * i / steps;
            ring.add(body.place(new Vec(
                    station.radiusMetres() * Math.cos(angle),
                    station.radiusMetres() * Math.sin(angle),
                    station.heightMetres())));
        }
        return ring;
    }

    /// Gives a barrel.
    ///
    /// @param barrel the barrel
    /// @param steps corners round a circle, 3 or more
    /// @return its hull
    public static Hull of(Barrel barrel, int steps) {
        Vec axis = barrel.to().minus(barrel.from()).unit();
        Vec aside =
                axis.cross(Math.abs(axis.z()) < 0.5 ? Vec.UP : new Vec(1, 0, 0)).unit();
        Vec other = axis.cross(aside);
        List<Vec> from = new ArrayList<>(steps);
        List<Vec> to = new ArrayList<>(steps);
        for (int i = 0; i < steps; i++) {
            double angle = 2 * Math.PI * i / steps;
            Vec out = aside.times(Math.cos(angle)).plus(other.times(Math.sin(angle)));
            from.add(barrel.from().plus(out.times(barrel.fromRadiusMetres())));
            to.add(barrel.to().plus(out.times(barrel.toRadiusMetres())));
        }
        return new Hull(from, to);
    }

    /// Gives a middle.
    ///
    /// @return the middle of all corners, m
    public Vec middle() {
        Vec sum = Vec.ZERO;
        for (int i = 0; i < one.size(); i++) {
            sum = sum.plus(one.get(i)).plus(other.get(i));
        }
        return sum.times(0.5 / one.size());
    }

    /// Gives how far its farthest corner is from its middle.
    ///
    /// @return m
    public double reachMetres() {
        Vec middle = middle();
        double reach = 0;
        for (int i = 0; i < one.size(); i++) {
            reach = Math.max(
                    reach,
                    Math.max(one.get(i).distanceMetres(middle), other.get(i).distanceMetres(middle)));
        }
        return reach;
    }

    /// Gives its faces: the two rings, and what is between two corners of one and their like in the other.
    ///
    /// @return each face's corners in order, m
    public List<List<Vec>> faces() {
        List<List<Vec>> faces = new ArrayList<>(List.of(one, other));
        for (int i = 0; i < one.size(); i++) {
            int next = (i + 1) % one.size();
            faces.add(List.of(one.get(i), one.get(next), other.get(next), other.get(i)));
        }
        return faces;
    }

    /// Gives points whose hull is what of this part is ahead of a plane.
    ///
    /// @param plane the plane; ahead is along its normal
    /// @return points, m; none where nothing is
    public List<Vec> ahead(Plane plane) {
        double[] ones = depths(one, plane);
        double[] others = depths(other, plane);
        List<Vec> points = new ArrayList<>(2 * one.size());
        for (int i = 0; i < one.size(); i++) {
            int next = (i + 1) % one.size();
            if (ones[i] >= 0) {
                points.add(one.get(i));
            }
            if (others[i] >= 0) {
                points.add(other.get(i));
            }
            cross(points, one.get(i), ones[i], one.get(next), ones[next]);
            cross(points, other.get(i), others[i], other.get(next), others[next]);
            cross(points, one.get(i), ones[i], other.get(i), others[i]);
        }
        return points;
    }

    /// Tells whether all of it is ahead of a plane.
    ///
    /// @param plane the plane; ahead is along its normal
    /// @return whether it is
    public boolean isAhead(Plane plane) {
        return Arrays.stream(depths(one, plane)).allMatch(depth -> depth >= 0)
                && Arrays.stream(depths(other, plane)).allMatch(depth -> depth >= 0);
    }

    private static double[] depths(List<Vec> corners, Plane plane) {
        double level = plane.normal().dot(plane.through());
        double[] depths = new double[corners.size()];
        for (int i = 0; i < depths.length; i++) {
            depths[i] = plane.normal().dot(corners.get(i)) - level;
        }
        return depths;
    }

    /// Adds where an edge passes the plane.
    private static void cross(List<Vec> points, Vec from, double here, Vec to, double there) {
        if (here >= 0 != there >= 0) {
            points.add(from.plus(to.minus(from).times(here / (here - there))));
        }
    }
}
