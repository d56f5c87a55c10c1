package plumeline.sight;

/// Four signed margins in the picture, one to each side; no unit. Positive is covered, negative sticks out.
///
/// @param left margin towards the left
/// @param right margin towards the right
/// @param below margin downwards
/// @param above margin upwards
public record Sides(double left, double right, double below, double above) {
    /// What a side reads where nothing limits it, and every side where nothing hides at all (then negative).
    public static final double NO_LIMIT = 10;

    /// Gives the margin: the least of the four.
    ///
    /// @return the least side
    public double least() {
        return Math.min(Math.min(left, right), Math.min(below, above));
    }

    /// Gives side by side the worse of both.
    ///
    /// @param other the other margins
    /// @return the lesser of each pair
    public Sides worst(Sides other) {
        return new Sides(
                Math.min(left, other.left),
                Math.min(right, other.right),
                Math.min(below, other.below),
                Math.min(above, other.above));
    }
}
