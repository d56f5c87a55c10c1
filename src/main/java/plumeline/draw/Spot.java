package plumeline.draw;

/// A place on the page, pixels.
///
/// @param x to the right
/// @param y down
record Spot(double x, double y) {
    Spot plus(double dx, double dy) {
        return new Spot(x + dx, y + dy);
    }

    Spot toward(Spot other, double share) {
        return new Spot(x + (other.x - x) * share, y + (other.y - y) * share);
    }

    double distance(Spot other) {
        return Math.hypot(x - other.x, y - other.y);
    }
}
