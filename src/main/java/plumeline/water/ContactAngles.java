package plumeline.water;

/// The two angles between which a drop's edge stays where it is, measured inside the drop.
///
/// @param advancingRadians at which the edge creeps out, radians, 0 to π
/// @param recedingRadians at which it draws back, radians, 0 to the advancing angle
public record ContactAngles(double advancingRadians, double recedingRadians) {
    /// Checks the ranges.
    ///
    /// @throws IllegalArgumentException outside them
    public ContactAngles {
        if (!(recedingRadians >= 0 && recedingRadians <= advancingRadians && advancingRadians <= Math.PI)) {
            throw new IllegalArgumentException(
                    "advancing " + advancingRadians + ", receding " + recedingRadians + " radians");
        }
    }

    /// Makes them from degrees.
    ///
    /// @param advancing degrees, 0 to 180
    /// @param receding degrees, 0 to the advancing angle
    /// @return the angles
    public static ContactAngles ofDegrees(double advancing, double receding) {
        return new ContactAngles(Math.toRadians(advancing), Math.toRadians(receding));
    }

    /// Gives the angle that a drop's cap is taken to have.
    ///
    /// @return the mean of both, radians
    public double meanRadians() {
        return (advancingRadians + recedingRadians) / 2;
    }

    /// Gives what holds a drop: `cos θ_R − cos θ_A`.
    ///
    /// @return hysteresis, dimensionless, 0 to 2
    public double hysteresis() {
        return Math.cos(recedingRadians) - Math.cos(advancingRadians);
    }
}
