package plumeline.lit;

import java.util.Optional;
import java.util.OptionalDouble;
import plumeline.light.Exposure;
import plumeline.plan.Camera;
import plumeline.plan.Written;
import plumeline.quantity.Kind;
import plumeline.quantity.Quantity;
import plumeline.stage.Picture;

/// What a shot's camera is set to, as an exposure.
public final class Setting {
    /// The shutter where nobody says.
    private static final double HALF_TURN = Math.PI;

    private Setting() {}

    /// Reads the setting at an instant; a flat receptor's constant, as a lux meter has.
    ///
    /// @param camera the camera
    /// @param picture its picture then
    /// @param film the film's rate, where the camera has none of its own
    /// @return the exposure; empty where no sensitivity is written
    public static Optional<Exposure> find(Camera camera, Picture picture, Quantity film) {
        OptionalDouble iso = camera.findIso();
        if (iso.isEmpty()) {
            return Optional.empty();
        }
        return Optional.of(new Exposure(
                Exposure.FLAT,
                Math.max(picture.fNumber(), 0.1),
                seconds(camera, film),
                iso.getAsDouble(),
                Math.max(0, picture.magnification()),
                camera.pupilRatioOrDefault(),
                loss(camera.lens().written()) + loss(camera.written())));
    }

    private static double loss(Written written) {
        return written.findQuantity("loss").map(Quantity::si).orElse(0.0);
    }

    /// How long a frame is exposed: half its time where nobody says.
    private static double seconds(Camera camera, Quantity film) {
        Optional<Quantity> shutter = camera.findShutter();
        if (shutter.isPresent() && shutter.get().kind() == Kind.TIME) {
            return shutter.get().si();
        }
        double rate = camera.findRate().orElse(film).si();
        return shutter.map(Quantity::si).orElse(HALF_TURN) / (2 * Math.PI * rate);
    }
}
