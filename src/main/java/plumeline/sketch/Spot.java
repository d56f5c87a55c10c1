package plumeline.sketch;

/// A place on the page, pixels.
///
/// @param x to the right
/// @param y down
public record Spot(double x, double y) {
    /// Moves it.
    ///
    /// @param dx to the right, pixels
    /// @param dy down the page, pixels
    /// @return the spot there
    public Spot plus(double dx, double dy) {
        return new Spot(x + dx, y + dy);
    }

    /// Goes part of the way to another.
    ///
    /// @param other the other
    /// @param share of the way, 0 to 1
    /// @return the spot there
    public Spot toward(Spot other, double share) {
        return new Spot(x + (other.x - x) * share, y + (other.y - y) * share);
    }

    /// Measures to another.
    ///
    /// @param other the other
    /// @return pixels
    public double distance(Spot other) {
        double dx = x - other.x;
        double dy = y - other.y;
        return Math.sqrt(dx * dx + dy * dy);
    }
}
