package plumeline.optics;

import java.util.OptionalDouble;
import plumeline.ranges.Ranges;

/// The depths that are sharp, from the front principal plane along the optical axis.
///
/// @param nearMetres near limit, metres, > 0
/// @param far far limit, beyond the near one
public record SharpZone(double nearMetres, FarLimit far) {
    /// Checks the ranges.
    ///
    /// @throws IllegalArgumentException where the near limit is not > 0 or the far limit isn't beyond it
    public SharpZone {
        Ranges.checkPositive(nearMetres, "near limit");
        if (far instanceof FarLimit.At(double farMetres)) {
            Ranges.checkAbove(farMetres, nearMetres, "far limit");
        }
    }

    /// A zone that ends at a distance.
    ///
    /// @param nearMetres near limit, metres, > 0
    /// @param farMetres far limit, metres, > near limit
    /// @return the zone
    public static SharpZone of(double nearMetres, double farMetres) {
        return new SharpZone(nearMetres, new FarLimit.At(farMetres));
    }

    /// Length of the zone.
    ///
    /// @return far limit − near limit, metres; empty where the zone is endless
    public OptionalDouble findDepthMetres() {
        return switch (far) {
            case FarLimit.At(double farMetres) -> OptionalDouble.of(farMetres - nearMetres);
            case FarLimit.Endless() -> OptionalDouble.empty();
        };
    }
}
