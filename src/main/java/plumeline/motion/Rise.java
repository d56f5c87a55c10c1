package plumeline.motion;

/// A ramp from rest to a speed of one in a time of one, whose acceleration grows through a share g of it, stays, and
/// shrinks through as much: point-symmetric about its middle.
final class Rise {
    private Rise() {}

    /// The acceleration at a time u in [0, 1].
    static double acceleration(double g, double u) {
        double peak = 1 / (1 - g);
        double edge = Math.min(u, 1 - u);
        return edge < g ? peak * edge / g : peak;
    }

    static double speed(double g, double u) {
        if (u > 1 - g) {
            return 1 - speed(g, 1 - u);
        }
        double peak = 1 / (1 - g);
        return u < g ? peak * u * u / (2 * g) : peak * (u - g / 2);
    }

    /// The way covered till then.
    static double way(double g, double u) {
        if (u > 1 - g) {
            return u - 0.5 + way(g, 1 - u);
        }
        double peak = 1 / (1 - g);
        double steady = u - g;
        return steady < 0 ? peak * u * u * u / (6 * g) : peak * (g * g / 6 + g / 2 * steady + steady * steady / 2);
    }
}
