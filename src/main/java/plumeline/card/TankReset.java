package plumeline.card;

import plumeline.plan.Release;
import plumeline.plan.Shot;

/// What is done to a tank between two takes, with minutes.
///
/// **Source:** common practice; measure your own.
///
/// @param text what is done
/// @param least minutes when all goes well
/// @param most minutes when it doesn't
public record TankReset(String text, int least, int most) {
    /// Gives what a shot's water asks for.
    ///
    /// @param shot a shot with a tank, or into whose water ink is let
    /// @return the step
    public static TankReset of(Shot shot) {
        return shot.findRelease().filter(Release.OfInk.class::isInstance).isPresent()
                ? new TankReset(
                        "Look along the water: clear enough for one more? Else drain, rinse, refill, wipe.", 25, 40)
                : new TankReset("Wipe bubbles off glass and product, let the water come to rest.", 3, 5);
    }
}
