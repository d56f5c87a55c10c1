package plumeline.geom;

/// A place or a direction in the table frame.
///
/// @param x to camera right, metres (no unit for a direction)
/// @param y away from the camera, metres (no unit for a direction)
/// @param z up, metres (no unit for a direction)
public record Vec(double x, double y, double z) {
    /// The zero mark.
    public static final Vec ZERO = new Vec(0, 0, 0);

    /// Straight up.
    public static final Vec UP = new Vec(0, 0, 1);

    /// Gives the sum of both.
    ///
    /// @param other what to add
    /// @return this plus other
    public Vec plus(Vec other) {
        return new Vec(x + other.x, y + other.y, z + other.z);
    }

    /// Gives the way from the other to this one.
    ///
    /// @param other what to take away
    /// @return this minus other
    public Vec minus(Vec other) {
        return new Vec(x - other.x, y - other.y, z - other.z);
    }

    /// Gives this one scaled.
    ///
    /// @param factor scale, no unit
    /// @return factor times this
    public Vec times(double factor) {
        return new Vec(x * factor, y * factor, z * factor);
    }

    /// Gives the scalar product.
    ///
    /// @param other the other factor
    /// @return the scalar product
    public double dot(Vec other) {
        return x * other.x + y * other.y + z * other.z;
    }

    /// Gives the right-handed vector product.
    ///
    /// @param other the right factor
    /// @return this cross other
    public Vec cross(Vec other) {
        return new Vec(y * other.z - z * other.y, z * other.x - x * other.z, x * other.y - y * other.x);
    }

    /// Gives the length.
    ///
    /// @return length, metres
    public double lengthMetres() {
        return Math.sqrt(dot(this));
    }

    /// Gives the straight distance to another place.
    ///
    /// @param other the other place
    /// @return distance, metres
    public double distanceMetres(Vec other) {
        return minus(other).lengthMetres();
    }

    /// Gives the direction of this vector.
    ///
    /// @return this over its length
    /// @throws IllegalArgumentException if it has no direction
    public Vec unit() {
        double length = lengthMetres();
        if (!(length > 0)) throw new IllegalArgumentException("a zero vector has no direction");
        return times(1 / length);
    }

    /// Gives this place after a turn about the vertical through the zero mark.
    ///
    /// @param turnRadians turn, radians, positive clockwise seen from above
    /// @return the turned place
    public Vec turned(double turnRadians) {
        double c = Math.cos(turnRadians);
        double s = Math.sin(turnRadians);
        return new Vec(c * x + s * y, c * y - s * x, z);
    }
}
