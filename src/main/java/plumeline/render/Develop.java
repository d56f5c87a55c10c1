package plumeline.render;

import plumeline.plan.Shot;
import plumeline.quantity.Quantity;
import plumeline.stage.Scene;
import plumeline.trace.Plate;

/// Makes a picture of what was exposed: sensitivity, shutter, f-number, losses, white balance, then the screen's scale.
public final class Develop {
    private Develop() {}

    /// Develops a plate as the shot's camera exposes it.
    ///
    /// A surface that reflects as mid grey does, lit as the setting needs it, comes to mid grey's share of white. A
    /// channel below 0 is shown as 0, one over white as white.
    ///
    /// @param plate the exposed plate, cd/m² a channel
    /// @param shot the shot, or a pass's effective one
    /// @param scene the instant, for the lens's loss when focused close
    /// @param film the film's rate, where the camera has none of its own
    /// @return the picture
    public static Pixels of(Plate plate, Shot shot, Scene scene, Quantity film) {
        return of(plate, Developing.of(shot.camera(), scene.picture(), film));
    }

    /// Develops a plate.
    ///
    /// @param plate the exposed plate, cd/m² a channel
    /// @param developing how the camera does it
    /// @return the picture
    public static Pixels of(Plate plate, Developing developing) {
        double scale = developing.sharePerLuminance();
        double red = scale * developing.gains().red();
        double green = scale * developing.gains().green();
        double blue = scale * developing.gains().blue();
        int[] packed = new int[plate.width() * plate.height()];
        for (int y = 0; y < plate.height(); y++) {
            for (int x = 0; x < plate.width(); x++) {
                packed[y * plate.width() + x] = ScreenScale.step(red * plate.light(x, y, 0)) << 16
                        | ScreenScale.step(green * plate.light(x, y, 1)) << 8
                        | ScreenScale.step(blue * plate.light(x, y, 2));
            }
        }
        return new Pixels(plate.width(), plate.height(), packed);
    }
}
