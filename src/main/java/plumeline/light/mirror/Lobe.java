package plumeline.light.mirror;

/// A round bell `exp(−x² − y²)/π` over what corners enclose.
final class Lobe {
    /// Farther along an edge than this the bell has ended: to 1e-7.
    private static final double ENDS = 4;

    /// What is added up in one go along an edge.
    private static final double STEP = 1;

    private static final double GAUSS = Math.sqrt(0.6);

    private Lobe() {}

    /// What share of the bell lies within corners: round its middle, `(1 − exp(−ρ²))/2π` for each angle, ρ where the edge
    /// is.
    ///
    /// **Source:** own derivation: the bell in polar coordinates.
    ///
    /// @param corners x and y of one after the other, in order either way round
    /// @return 0 to 1
    static double share(double[] corners) {
        double sum = 0;
        for (int i = 0; i < corners.length; i += 2) {
            int next = (i + 2) % corners.length;
            sum += edge(corners[i], corners[i + 1], corners[next], corners[next + 1]);
        }
        return Math.abs(sum) / (2 * Math.PI);
    }

    private static double edge(double x1, double y1, double x2, double y2) {
        double length = Math.hypot(x2 - x1, y2 - y1);
        if (!(length > 0)) {
            return 0;
        }
        double off = (x1 * y2 - x2 * y1) / length;
        double from = ((x2 - x1) * x1 + (y2 - y1) * y1) / length;
        double to = from + length;
        double low = Math.clamp(from, -ENDS, ENDS);
        double high = Math.clamp(to, -ENDS, ENDS);
        return off * within(off * off, low, high) + angle(off, from, low) + angle(off, high, to);
    }

    private static double angle(double off, double from, double to) {
        return off == 0 ? 0 : Math.atan(to / off) - Math.atan(from / off);
    }

    /// Sum of `(1 − exp(−ρ²))/ρ²` along an edge, by Gauss's rule.
    private static double within(double square, double from, double to) {
        int steps = Math.max(1, (int) Math.ceil((to - from) / STEP));
        double half = (to - from) / (2 * steps);
        double sum = 0;
        for (int i = 0; i < steps; i++) {
            double middle = from + (2 * i + 1) * half;
            double beside = GAUSS * half;
            sum += 5 * rim(square, middle - beside) + 8 * rim(square, middle) + 5 * rim(square, middle + beside);
        }
        return sum * half / 9;
    }

    private static double rim(double square, double along) {
        double all = square + along * along;
        return all > 0 ? -Math.expm1(-all) / all : 1;
    }
}
