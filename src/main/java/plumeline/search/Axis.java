package plumeline.search;

/// One mark as the search sees it: a number that a hand sets.
///
/// @param name the mark's name
/// @param value where it stands, or where a free one starts; in the axis's own unit
/// @param placingError how far off a hand may leave it, same unit, ≥ 0 (0: set exactly)
/// @param freedom whether the search may move it
/// @param step what a hand can set, same unit, > 0; free axes end on a whole number of steps
/// @param reach how far from its value leeway is looked for, same unit, > 0; beyond it leeway is endless
public record Axis(String name, double value, double placingError, Freedom freedom, double step, double reach) {
    /// Checks the ranges.
    public Axis {
        if (!(placingError >= 0) || !(step > 0) || !(reach > 0) || !Double.isFinite(value)) {
            throw new IllegalArgumentException("axis " + name + " out of range");
        }
    }

    /// Whether the search may move an axis, and where to.
    public sealed interface Freedom {
        /// It stays where it is.
        record Locked() implements Freedom {}

        /// It may be moved between two values.
        ///
        /// @param low least value, the axis's unit
        /// @param high largest value, the axis's unit, ≥ low
        record Free(double low, double high) implements Freedom {
            /// Checks the order.
            public Free {
                if (!(low <= high)) {
                    throw new IllegalArgumentException("free between " + low + " and " + high);
                }
            }
        }
    }

    /// Gives this axis standing elsewhere.
    ///
    /// @param elsewhere the new value, the axis's unit
    /// @return the same axis at that value
    public Axis at(double elsewhere) {
        return new Axis(name, elsewhere, placingError, freedom, step, reach);
    }

    boolean isFree() {
        return freedom instanceof Freedom.Free;
    }

    double low() {
        return freedom instanceof Freedom.Free(double low, double high) ? low : value;
    }

    double high() {
        return freedom instanceof Freedom.Free(double low, double high) ? high : value;
    }

    /// The small change by which slopes are taken: a part of the placing error, or of the step where there is none.
    double probe() {
        return placingError > 0 ? Math.max(placingError * 0.02, step * 0.02) : step * 0.1;
    }
}
