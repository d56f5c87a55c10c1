package plumeline.search;

/// How far one mark may be off to each side, the others as set, before something fails.
///
/// @param minus towards smaller values
/// @param plus towards larger values
public record Leeway(Side minus, Side plus) {
    /// One side of a leeway.
    public sealed interface Side {
        /// It ends after a distance.
        ///
        /// @param distance in the axis's unit, ≥ 0
        record Ends(double distance) implements Side {}

        /// Nothing ends it within the axis's reach.
        record Endless() implements Side {}

        /// Gives the distance, with positive infinity for an endless side.
        ///
        /// @return the distance in the axis's unit
        default double distance() {
            return switch (this) {
                case Ends(double distance) -> distance;
                case Endless() -> Double.POSITIVE_INFINITY;
            };
        }
    }

    /// Gives the smaller of both sides.
    ///
    /// @return the axis's unit; positive infinity where both sides are endless
    public double least() {
        return Math.min(minus.distance(), plus.distance());
    }
}
