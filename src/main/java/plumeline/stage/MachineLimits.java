package plumeline.stage;

import java.util.Optional;
import plumeline.motion.Limits;
import plumeline.plan.Kit;
import plumeline.quantity.Quantity;

/// What a machine of the kit does at most, as numbers.
public final class MachineLimits {
    private MachineLimits() {}

    /// Reads a machine.
    ///
    /// @param machine the machine
    /// @return its limits in metres or radians; infinite what isn't written, as where there is no machine
    public static Limits of(Optional<Kit.Machine> machine) {
        return new Limits(
                si(machine, "speed"),
                si(machine, "acceleration"),
                si(machine, "jerk"),
                si(machine, "travel"),
                si(machine, "resolution"),
                si(machine, "repeats"));
    }

    private static double si(Optional<Kit.Machine> machine, String key) {
        return machine.flatMap(one -> one.written().findQuantity(key))
                .map(Quantity::si)
                .orElse(Double.POSITIVE_INFINITY);
    }
}
