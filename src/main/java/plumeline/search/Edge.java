package plumeline.search;

/// Finds where a leeway ends on one side.
final class Edge {
    /// Each step out is this much longer than the last; a gap narrower than a third of the way out may be missed.
    private static final double GROWTH = 1.4;

    private static final double RELATIVE = 1e-4;

    private Edge() {}

    static Leeway.Side find(Axis axis, Margins margins, double[] values, int index, int way) {
        double[] moved = values.clone();
        double size = axis.placingError() > 0 ? axis.placingError() : axis.step();
        double inside = 0;
        double atInside = Margins.least(margins.at(moved));
        if (atInside < 0) {
            return new Leeway.Side.Ends(0);
        }
        double next = size / 4;
        while (true) {
            next = Math.min(next, axis.reach());
            moved[index] = values[index] + way * next;
            double there = Margins.least(margins.at(moved));
            if (there < 0) {
                return new Leeway.Side.Ends(
                        crossing(margins, moved, values[index], index, way, inside, atInside, next, there, size));
            }
            if (next >= axis.reach()) {
                return new Leeway.Side.Endless();
            }
            inside = next;
            atInside = there;
            next = inside * GROWTH;
        }
    }

    /// The last place inside, by false position with halved weights (Illinois) and bisection where that is slow.
    private static double crossing(
            Margins margins,
            double[] moved,
            double from,
            int index,
            int way,
            double inside,
            double atInside,
            double outside,
            double atOutside,
            double size) {
        double low = inside;
        double high = outside;
        double atLow = atInside;
        double atHigh = atOutside;
        for (int i = 0; high - low > Math.max(RELATIVE * high, size * 1e-4); i++) {
            double share = i % 3 == 2 ? 0.5 : atLow / (atLow - atHigh);
            double middle = low + Math.clamp(share, 0.02, 0.98) * (high - low);
            moved[index] = from + way * middle;
            double there = Margins.least(margins.at(moved));
            if (there < 0) {
                high = middle;
                atHigh = there;
                atLow /= i % 3 == 2 ? 1 : 2;
            } else {
                low = middle;
                atLow = there;
                atHigh /= i % 3 == 2 ? 1 : 2;
            }
        }
        return low;
    }
}
