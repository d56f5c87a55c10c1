package plumeline.want;

/// Sight through a round glass traced a second time, level and flat, in millimetres, for the tests to compare with.
/// Nothing of the project is used: places on circles, Snell's law by angles, Fresnel's formulas as sines and tangents.
final class RimTrace {
    private final double radius;
    private final double wall;
    private final double glass;
    private final double inside;
    private double s = 1;
    private double p = 1;
    private double x;
    private double y;
    private double bearing;

    RimTrace(double radius, double wall, double glass, double inside) {
        this.radius = radius;
        this.wall = wall;
        this.glass = glass;
        this.inside = inside;
    }

    private void face(double n1, double one, double n2, double other) {
        if (one < 1e-9) {
            double r = Math.pow((n1 - n2) / (n1 + n2), 2);
            s *= 1 - r;
            p *= 1 - r;
        } else {
            s *= 1 - Math.pow(Math.sin(one - other) / Math.sin(one + other), 2);
            p *= 1 - Math.pow(Math.tan(one - other) / Math.tan(one + other), 2);
        }
    }

    /// Follows sight from (0, −distance) at a share of the tangent width of the outline; y is ahead, x right. The
    /// angles at the faces follow from h alone: n r sin is the same all along.
    void follow(double distance, double share) {
        double half = Math.tan(Math.asin(radius / distance));
        double angle = Math.atan((2 * share - 1) * half);
        double h = distance * Math.sin(Math.abs(angle));
        double bore = radius - wall;
        double in = Math.asin(Math.min(1, h / radius));
        double bent = Math.asin(h / (glass * radius));
        s = 1;
        p = 1;
        face(1, in, glass, bent);
        double turned = 2 * (in - bent);
        double round = Math.PI - 2 * bent;
        if (h / glass < bore) {
            double atBore = Math.asin(h / (glass * bore));
            double sine = h / (inside * bore);
            round = 2 * (atBore - bent);
            if (sine < 1) {
                double inBore = Math.asin(sine);
                face(glass, atBore, inside, inBore);
                face(inside, inBore, glass, atBore);
                turned += 2 * (atBore - inBore);
                round += Math.PI - 2 * inBore;
            } else {
                turned -= Math.PI - 2 * atBore;
            }
        }
        face(glass, bent, 1, in);
        // Round the axis it goes on by `round`, on the side on which it came; then it is turned toward the axis.
        double side = Math.signum(angle);
        double entry = -Math.PI / 2 + side * (in - Math.abs(angle));
        double exit = entry + side * round;
        x = radius * Math.cos(exit);
        y = radius * Math.sin(exit);
        bearing = angle - side * turned;
    }

    double passes() {
        return (s + p) / 2;
    }

    /// Whether it then meets a level panel from left to right ahead of it.
    boolean meets(double ahead, double left, double right) {
        if (!(Math.cos(bearing) > 0) || y > ahead) {
            return false;
        }
        double at = x + (ahead - y) * Math.tan(bearing);
        return at > left && at < right;
    }
}
