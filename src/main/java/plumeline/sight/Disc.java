package plumeline.sight;

import plumeline.geom.Aim;
import plumeline.geom.Body;
import plumeline.geom.Station;
import plumeline.geom.Vec;

/// A disc in the camera's frame: its middle and two radii at right angles, x right, y up, z along the axis, metres.
record Disc(double cx, double cy, double cz, double px, double py, double pz, double qx, double qy, double qz) {
    /// Half-axis that every disc has at least, so that one seen edge-on still encloses something; picture length.
    private static final double LEAST = 1e-9;

    /// What all discs of a body of revolution share: the body's middle, its axis, and two unit vectors across it, in
    /// the camera's frame.
    record Axle(Vec middle, double halfMetres, Vec along, Vec p, Vec q) {
        static Axle of(Aim aim, Body body) {
            Aim.Frame frame = aim.frame();
            Vec axis = body.axis();
            Vec start = Math.abs(axis.x()) < 0.7 ? new Vec(1, 0, 0) : new Vec(0, 1, 0);
            Vec p = start.minus(axis.times(start.dot(axis))).unit();
            return new Axle(
                    in(frame, body.middle().minus(aim.eye())),
                    body.solid().heightMetres() / 2,
                    in(frame, axis),
                    in(frame, p),
                    in(frame, axis.cross(p)));
        }

        private static Vec in(Aim.Frame frame, Vec way) {
            return new Vec(
                    frame.right().dot(way), frame.up().dot(way), frame.forward().dot(way));
        }

        Disc disc(Station station) {
            double h = station.heightMetres() - halfMetres;
            double r = station.radiusMetres();
            return new Disc(
                    middle.x() + h * along.x(),
                    middle.y() + h * along.y(),
                    middle.z() + h * along.z(),
                    r * p.x(),
                    r * p.y(),
                    r * p.z(),
                    r * q.x(),
                    r * q.y(),
                    r * q.z());
        }
    }

    /// The ellipse it shows as: middle x, y, and matrix xx, xy, yy; see [Shade].
    double[] ellipse() {
        double a = cz * cz - pz * pz - qz * qz;
        double vx = cz * px - pz * cx;
        double vy = cz * py - pz * cy;
        double wx = cz * qx - qz * cx;
        double wy = cz * qy - qz * cy;
        double zx = qz * px - pz * qx;
        double zy = qz * py - pz * qy;
        double aa = a * a;
        return new double[] {
            (cz * cx - pz * px - qz * qx) / a,
            (cz * cy - pz * py - qz * qy) / a,
            (vx * vx + wx * wx - zx * zx) / aa + LEAST * LEAST,
            (vx * vy + wx * wy - zx * zy) / aa,
            (vy * vy + wy * wy - zy * zy) / aa + LEAST * LEAST
        };
    }

    double radius() {
        return Math.sqrt(px * px + py * py + pz * pz);
    }

    double leastDepth() {
        return cz - Math.sqrt(pz * pz + qz * qz);
    }

    /// Goes to the deepest point of the rim.
    void deepest(double[] touch) {
        double length = Math.sqrt(pz * pz + qz * qz);
        double cos = length > 0 ? pz / length : 1;
        double sin = length > 0 ? qz / length : 0;
        touch[2] = cz + length;
        touch[0] = (cx + px * cos + qx * sin) / touch[2];
        touch[1] = (cy + py * cos + qy * sin) / touch[2];
    }

    double reach(double ux, double uy) {
        return reach(ux * cx + uy * cy, ux * px + uy * py, ux * qx + uy * qy, 1);
    }

    /// The reach by what middle and radii measure along a direction; with sign −1, minus the reach in the opposite one.
    private double reach(double c, double p, double q, double sign) {
        double a = cz * cz - pz * pz - qz * qz;
        // The root of b² − a (c² − p² − q²), written so that nothing cancels.
        double v = cz * p - pz * c;
        double w = cz * q - qz * c;
        double z = qz * p - pz * q;
        return (c * cz - p * pz - q * qz + sign * Math.sqrt(Math.max(0, v * v + w * w - z * z))) / a;
    }

    /// The four edges.
    Extent extent() {
        return new Extent(reach(cx, px, qx, -1), reach(cx, px, qx, 1), reach(cy, py, qy, -1), reach(cy, py, qy, 1));
    }

    void touch(double ux, double uy, double reach, double[] touch) {
        double p = ux * px + uy * py - reach * pz;
        double q = ux * qx + uy * qy - reach * qz;
        double length = Math.sqrt(p * p + q * q);
        double cos = length > 0 ? p / length : 1;
        double sin = length > 0 ? q / length : 0;
        double depth = cz + pz * cos + qz * sin;
        touch[0] = (cx + px * cos + qx * sin) / depth;
        touch[1] = (cy + py * cos + qy * sin) / depth;
        touch[2] = depth;
    }
}
