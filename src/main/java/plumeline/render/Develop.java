package plumeline.render;

import plumeline.plan.Shot;
import plumeline.stage.Scene;
import plumeline.trace.Plate;

/// Makes a picture of what was exposed: sensitivity, shutter, f-number, losses, white balance, then the screen's scale.
public final class Develop {
    private Develop() {}

    /// Develops a plate as the shot's camera exposes it.
    ///
    /// A surface that reflects as mid grey does, lit as the setting needs it, comes to mid grey's share of white.
    ///
    /// @param plate the exposed plate, cd/m² a channel
    /// @param shot the shot, or a pass's effective one
    /// @param scene the instant, for the lens's loss when focused close
    /// @return the picture
    public static Pixels of(Plate plate, Shot shot, Scene scene) {
        throw new UnsupportedOperationException("to come");
    }
}
