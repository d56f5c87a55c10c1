package plumeline.cut.mask;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import plumeline.pace.Capture;
import plumeline.plan.Kit;
import plumeline.plan.Move;
import plumeline.plan.Shot;
import plumeline.quantity.Quantity;

/// When a captured frame is exposed: frame k from GO + k / rate on, as a frame is posed at its start.
///
/// @param framesPerSecond captured frames a second, 1/s, > 0
/// @param exposureSeconds how long a row of a frame is exposed, s
/// @param readoutSeconds how much later the last row is exposed than the first, s; 0 where it isn't known
/// @param slipSeconds how far off the frames may be from the moves: half a frame's time where a move doesn't start with
///     the camera, else 0, s
public record Shutter(double framesPerSecond, double exposureSeconds, double readoutSeconds, double slipSeconds) {
    /// Reads a shot's shutter.
    ///
    /// @param shot the shot or pass
    /// @param film the rate at which the film is shown
    /// @return its shutter, of 180 deg where none is written
    public static Shutter of(Shot shot, Quantity film) {
        Capture capture = Capture.of(shot, film);
        OptionalDouble readout = Capture.findMode(shot, film).flatMap(Kit.Mode::readout).stream()
                .mapToDouble(Quantity::si)
                .findFirst();
        boolean isTriggered = shot.moves().stream().allMatch(Move::isTriggered);
        return new Shutter(
                capture.framesPerSecond(),
                capture.exposureSeconds(),
                readout.orElse(0),
                isTriggered ? 0 : 0.5 / capture.framesPerSecond());
    }

    /// Gives when a frame's exposure begins.
    ///
    /// @param captured the captured frame, 0 at GO
    /// @return real seconds after GO
    public double opensSeconds(long captured) {
        return captured / framesPerSecond;
    }

    /// Gives when a frame's exposure is over: its last row's.
    ///
    /// @param captured the captured frame, 0 at GO
    /// @return real seconds after GO
    public double closesSeconds(long captured) {
        return opensSeconds(captured) + exposureSeconds + readoutSeconds;
    }

    /// The instants that a mask covers, those of the exposure in its order: it opens, half of it, it closes; then the
    /// earliest and the latest that a slip leaves.
    List<Double> instants(long captured) {
        double opens = opensSeconds(captured);
        double closes = closesSeconds(captured);
        List<Double> all = new ArrayList<>(List.of(opens, (opens + closes) / 2, closes));
        if (slipSeconds > 0) {
            all.add(opens - slipSeconds);
            all.add(closes + slipSeconds);
        }
        return all;
    }
}
