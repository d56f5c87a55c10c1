package plumeline.time;

/// A camera's shutter once frames are left out or repeated: the smear that a viewer sees is that of another angle.
///
/// Where one captured frame in k is shown, the next one shown is k frames' time later: the angle that is seen is that
/// of the camera over k. Averaging m captured frames for one shown makes it m times as much.
///
/// **Source:** own: an angle is exposure over the time to the next frame shown, times a whole turn.
///
/// @param openRadians the camera's angle, > 0, at most 2π
/// @param step captured frames from one shown to the next, > 0: speed · capture rate / timeline rate
public record PlayedShutter(double openRadians, double step) {
    private static final double WHOLE_RADIANS = 2 * Math.PI;

    /// Checks the ranges; a whole turn may be past by a billionth.
    public PlayedShutter {
        if (!(openRadians > 0) || openRadians > WHOLE_RADIANS * (1 + 1e-9) || !(step > 0)) {
            throw new IllegalArgumentException("a shutter of " + openRadians + " rad, every " + step + " frames");
        }
    }

    /// Gives how long a frame is exposed.
    ///
    /// @param radians the shutter's angle, > 0
    /// @param framesPerSecond the camera's rate, 1/s, > 0
    /// @return s
    public static double exposureSeconds(double radians, double framesPerSecond) {
        return radians / WHOLE_RADIANS / framesPerSecond;
    }

    /// Gives the angle that a viewer sees.
    ///
    /// @return radians; more than 2π where frames are repeated
    public double seenRadians() {
        return openRadians / step;
    }

    /// Gives the angle the camera can be opened to so that a wanted one is seen, or as much of it as there is.
    ///
    /// @param wantedRadians the angle that is to be seen, > 0
    /// @return radians, at most 2π
    public double openedRadians(double wantedRadians) {
        return Math.min(WHOLE_RADIANS, wantedRadians * step);
    }

    /// Gives how many captured frames to average for each shown one so that a wanted angle is seen.
    ///
    /// @param wantedRadians the angle that is to be seen, > 0
    /// @return frames; 1 or less where the shutter alone is enough
    public double framesToAverage(double wantedRadians) {
        return step * wantedRadians / openRadians;
    }
}
