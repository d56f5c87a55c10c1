package plumeline.search;

/// How far each part of each want is from failing, as a function of the marks.
///
/// A want that can fail in several ways (too far left, too low) gives one part for each, so that every part is close to
/// smooth and changes steadily with each mark; the want's margin is the least of its parts.
public interface Margins {
    /// Gives every part's margin, in each part's own unit, negative where it fails. Never NaN.
    ///
    /// @param values one value an axis, in the axes' order and units
    /// @return one margin a part, always as many and in the same order
    double[] at(double[] values);

    /// Gives these margins without some parts; what is left out need not be found.
    ///
    /// @param parts the parts to keep, by index
    /// @return margins of those parts only, in that order
    default Margins only(int[] parts) {
        int[] kept = parts.clone();
        return values -> {
            double[] all = at(values);
            double[] some = new double[kept.length];
            for (int i = 0; i < kept.length; i++) {
                some[i] = all[kept[i]];
            }
            return some;
        };
    }

    /// Gives the least of some margins.
    ///
    /// @param margins margins as [#at] gives them
    /// @return the least; positive infinity where there are none
    static double least(double[] margins) {
        double least = Double.POSITIVE_INFINITY;
        for (double margin : margins) {
            least = Math.min(least, margin);
        }
        return least;
    }
}
