package plumeline.search;

/// Finds where a leeway ends on one side.
final class Edge {
    /// Each step out is this much longer than the last, so that a gap narrower than a third of the way out may be missed.
    private static final double GROWTH = 1.3;

    private static final double RELATIVE = 1e-4;

    private Edge() {}

    static Leeway.Side find(Axis axis, Margins margins, double[] values, int index, int way) {
        double[] moved = values.clone();
        if (fails(margins, moved)) {
            return new Leeway.Side.Ends(0);
        }
        double size = axis.placingError() > 0 ? axis.placingError() : axis.step();
        double inside = 0;
        double step = size / 8;
        while (true) {
            double next = Math.min(inside + step, axis.reach());
            moved[index] = values[index] + way * next;
            if (fails(margins, moved)) {
                return new Leeway.Side.Ends(bisect(margins, moved, values[index], index, way, inside, next, size));
            }
            if (next >= axis.reach()) {
                return new Leeway.Side.Endless();
            }
            inside = next;
            step = Math.max(step, inside * (GROWTH - 1));
        }
    }

    private static double bisect(
            Margins margins, double[] moved, double from, int index, int way, double inside, double outside, double size) {
        double low = inside;
        double high = outside;
        while (high - low > Math.max(RELATIVE * high, size * 1e-4)) {
            double middle = (low + high) / 2;
            moved[index] = from + way * middle;
            if (fails(margins, moved)) {
                high = middle;
            } else {
                low = middle;
            }
        }
        return low;
    }

    private static boolean fails(Margins margins, double[] values) {
        return Margins.least(margins.at(values)) < 0;
    }
}
