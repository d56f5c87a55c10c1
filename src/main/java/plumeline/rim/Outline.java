package plumeline.rim;

import plumeline.geom.Vec;

/// A circle about the z axis as it is seen: where sight meets it, by share of its width in the picture.
///
/// Shares are of the picture as a camera has it that looks square to the axis with the same heading, as for mirror
/// images; the circle's edges count as the outline's.
///
/// @param eye the lens point, m, outside the cylinder over the circle
/// @param forward where the camera looks
/// @param heightMetres the circle's height, m
/// @param radiusMetres its radius, m
record Outline(Vec eye, Vec forward, double heightMetres, double radiusMetres) {
    private static final double LEVEL = 1e-9;

    boolean isOutside() {
        return awayMetres() > radiusMetres;
    }

    private double awayMetres() {
        return Math.hypot(eye.x(), eye.y());
    }

    /// Where sight meets the circle first, m.
    Vec place(double share) {
        double away = awayMetres();
        double toAxis = Math.atan2(-eye.y(), -eye.x());
        double heading = Math.hypot(forward.x(), forward.y()) > LEVEL ? Math.atan2(forward.y(), forward.x()) : toAxis;
        double middle = Math.IEEEremainder(heading - toAxis, 2 * Math.PI);
        double half = Math.asin(Math.min(1, radiusMetres / away));
        double left = Math.tan(middle - half);
        double right = Math.tan(middle + half);
        double aside = Math.atan(left + share * (right - left)) - middle;
        double metres =
                away * Math.cos(aside) - Math.sqrt(Math.max(0, square(radiusMetres) - square(away * Math.sin(aside))));
        double bearing = toAxis - aside;
        return new Vec(eye.x() + metres * Math.cos(bearing), eye.y() + metres * Math.sin(bearing), heightMetres);
    }

    private static double square(double length) {
        return length * length;
    }
}
