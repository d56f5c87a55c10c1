package plumeline.mirror;

import java.util.ArrayList;
import java.util.List;
import plumeline.geom.Vec;

/// A round bell `exp(−x² − y²)/π` over what corners enclose.
final class Lobe {
    /// Farther along an edge than this the bell has ended: to 1e-7.
    private static final double ENDS = 4;

    /// What is added up in one go along an edge.
    private static final double STEP = 0.5;

    /// Directions of an edge are no farther apart, rad.
    private static final double APART = 0.1;

    private static final double GAUSS = Math.sqrt(0.6);

    private Lobe() {}

    /// The directions of corners, and of places between them so that no two are far apart: what is straight in space is
    /// bent among slopes.
    static List<Vec> directions(List<Vec> corners, Vec from) {
        List<Vec> directions = new ArrayList<>();
        for (int i = 0; i < corners.size(); i++) {
            Vec one = corners.get(i).minus(from).unit();
            Vec other = corners.get((i + 1) % corners.size()).minus(from).unit();
            double apart = Math.acos(Math.clamp(one.dot(other), -1, 1));
            int pieces = Math.max(1, (int) Math.ceil(apart / APART));
            for (int j = 0; j < pieces; j++) {
                double second = j == 0 ? 0 : Math.sin(apart * j / pieces);
                double first = j == 0 ? 1 : Math.sin(apart * (pieces - j) / pieces);
                directions.add(one.times(first).plus(other.times(second)).unit());
            }
        }
        return directions;
    }

    /// What share of the bell lies within corners: round its middle, `(1 − exp(−ρ²))/2π` for each angle, ρ where the
    /// edge is.
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
