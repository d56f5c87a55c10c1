package plumeline.card;

import java.util.List;
import java.util.Optional;
import plumeline.plan.PlacedLight;
import plumeline.quantity.Quantity;

/// How a lamp's dimmer is set for a level, where the kit says what it gives by its setting (`dims`).
public final class Dimmer {
    private Dimmer() {}

    /// Finds the setting, straight between what is written.
    ///
    /// @param light the lamp
    /// @param level the share of what it gives that is wanted, 0 to 1
    /// @return the least setting that gives it, share of one; empty where nothing is written or it gives that
    /// nowhere
    public static Optional<Double> findSetting(PlacedLight light, double level) {
        List<List<Quantity>> dims = light.light().written().listPairs("dims");
        for (int i = 0; i < dims.size(); i++) {
            double gives = dims.get(i).getLast().si();
            double set = dims.get(i).getFirst().si();
            if (i == 0
                    ? gives == level
                    : gives >= level && dims.get(i - 1).getLast().si() < level) {
                if (i == 0) {
                    return Optional.of(set);
                }
                double below = dims.get(i - 1).getLast().si();
                double from = dims.get(i - 1).getFirst().si();
                return Optional.of(from + (set - from) * (level - below) / (gives - below));
            }
        }
        return Optional.empty();
    }
}
