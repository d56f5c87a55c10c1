package plumeline.geom;

/// A disc in the camera's frame: its middle and two radii at right angles, x right, y up, z along the axis, metres.
record Disc(double cx, double cy, double cz, double px, double py, double pz, double qx, double qy, double qz) {
    static Disc of(Aim aim, Vec middle, double radius, Vec axis) {
        Vec right = aim.right();
        Vec up = aim.up();
        Vec forward = aim.forward();
        Vec way = middle.minus(aim.eye());
        Vec start = Math.abs(axis.x()) < 0.7 ? new Vec(1, 0, 0) : new Vec(0, 1, 0);
        Vec p = start.minus(axis.times(start.dot(axis))).unit().times(radius);
        Vec q = axis.cross(p);
        return new Disc(
                right.dot(way),
                up.dot(way),
                forward.dot(way),
                right.dot(p),
                up.dot(p),
                forward.dot(p),
                right.dot(q),
                up.dot(q),
                forward.dot(q));
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
        double c = ux * cx + uy * cy;
        double p = ux * px + uy * py;
        double q = ux * qx + uy * qy;
        double a = cz * cz - pz * pz - qz * qz;
        double b = c * cz - p * pz - q * qz;
        double rest = c * c - p * p - q * q;
        return (b + Math.sqrt(Math.max(0, b * b - a * rest))) / a;
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
