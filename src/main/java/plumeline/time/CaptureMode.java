package plumeline.time;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/// A rate that a camera can capture at, and what it costs.
///
/// @param framesPerSecond its rate, 1/s, > 0
/// @param acrossShare its pixels across as a share of the widest mode's, > 0, at most 1: what is lost of size, or of
/// the field where the camera crops
public record CaptureMode(double framesPerSecond, double acrossShare) {
    /// Rates within this share of each other count as one, so that what was computed meets what was written.
    private static final double NEAR = 1e-9;

    /// Checks the ranges.
    public CaptureMode {
        if (!(framesPerSecond > 0) || !(acrossShare > 0) || acrossShare > 1) {
            throw new IllegalArgumentException("a mode of " + framesPerSecond + " fps, " + acrossShare + " across");
        }
    }

    /// Gives the least rate at which no frame is shown twice: the timeline's over the slowest speed.
    ///
    /// @param timelinePerSecond the timeline's rate, 1/s, > 0
    /// @param slowestSpeed the slowest playback speed that isn't a hold, a share of real time, > 0
    /// @return captured frames a second, 1/s
    public static double leastRate(double timelinePerSecond, double slowestSpeed) {
        return timelinePerSecond / slowestSpeed;
    }

    /// Tells whether a rate is enough.
    ///
    /// @param framesPerSecond the rate, 1/s
    /// @param leastPerSecond the least that is enough, 1/s
    /// @return true where it is, or misses it by no more than rounding
    public static boolean isEnough(double framesPerSecond, double leastPerSecond) {
        return framesPerSecond >= leastPerSecond * (1 - NEAR);
    }

    /// Finds the slowest mode that is enough, of these the widest.
    ///
    /// @param modes what the camera has
    /// @param leastPerSecond the least rate that is enough, 1/s
    /// @return the mode; nothing where the camera has none so fast
    public static Optional<CaptureMode> findLeast(List<CaptureMode> modes, double leastPerSecond) {
        return modes.stream()
                .filter(mode -> isEnough(mode.framesPerSecond, leastPerSecond))
                .min(Comparator.comparingDouble(CaptureMode::framesPerSecond)
                        .thenComparing(Comparator.comparingDouble(CaptureMode::acrossShare)
                                .reversed()));
    }

    /// Gives by how much less light reaches the sensor at one rate than at another with the same shutter angle.
    ///
    /// @param framesPerSecond the rate, 1/s, > 0
    /// @param otherPerSecond the other, 1/s, > 0
    /// @return stops, negative where it is less light: 120 against 24 is -2.32
    public static double lightStops(double framesPerSecond, double otherPerSecond) {
        return Math.log(otherPerSecond / framesPerSecond) / Math.log(2);
    }
}
