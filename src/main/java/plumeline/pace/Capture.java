package plumeline.pace;

import java.util.Optional;
import plumeline.plan.Camera;
import plumeline.plan.Kit;
import plumeline.plan.Shot;
import plumeline.quantity.Kind;
import plumeline.quantity.Quantity;

/// How a shot is captured: its rate, the film's where nothing is written, and how long a frame is exposed.
///
/// @param framesPerSecond captured frames a second, 1/s
/// @param exposureSeconds how long each is exposed, s
public record Capture(double framesPerSecond, double exposureSeconds) {
    private static final double HALF_TURN = Math.PI;
    private static final double SAME_RATE = 1e-6;

    /// Reads a shot's capture.
    ///
    /// @param shot the shot
    /// @param film the rate at which the film is shown
    /// @return its capture, by a shutter of 180 deg where none is written
    public static Capture of(Shot shot, Quantity film) {
        Camera camera = shot.camera();
        double rate = camera.findRate().orElse(film).si();
        Optional<Quantity> shutter = camera.findShutter();
        double seconds = shutter.isPresent() && shutter.get().kind() == Kind.TIME
                ? shutter.get().si()
                : shutter.map(Quantity::si).orElse(HALF_TURN) / (2 * Math.PI) / rate;
        return new Capture(rate, Math.min(seconds, 1 / rate));
    }

    /// Finds the body's mode at the shot's rate.
    ///
    /// @param shot the shot
    /// @param film the rate at which the film is shown
    /// @return the mode; empty where the body has none of that rate, or no list of modes
    public static Optional<Kit.Mode> findMode(Shot shot, Quantity film) {
        double rate = shot.camera().findRate().orElse(film).si();
        return shot.camera().body().modes().stream()
                .filter(mode -> Math.abs(mode.rate().si() - rate) <= SAME_RATE * rate)
                .findFirst();
    }
}
