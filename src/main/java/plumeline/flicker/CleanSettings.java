package plumeline.flicker;

import java.util.ArrayList;
import java.util.List;

/// Rates and exposures that show nothing of a lamp's pulses from frame to frame.
///
/// **Source:** an exposure of whole pulses takes in the same light whenever it begins; frames at whole pulses begin at
/// the same place of a pulse: common practice of cinematography.
public final class CleanSettings {
    /// A frame's time as a share of it counts as met within this.
    private static final double NEAR = 1e-9;

    private CleanSettings() {}

    /// Finds the rates at which nothing is seen with a shutter.
    ///
    /// @param lamp the lamp
    /// @param modes the camera's rates, 1/s, each > 0
    /// @param shutter how long frames are exposed; rates whose frames are shorter can't have it
    /// @return those of the modes, in their order
    public static List<Double> rates(LampPulse lamp, List<Double> modes, ShutterSetting shutter) {
        List<Double> clean = new ArrayList<>();
        for (double rate : modes) {
            double exposure = shutter.exposureSeconds(rate);
            if (exposure * rate <= 1 + NEAR && new PulsedFrames(lamp, rate, exposure).isClean()) {
                clean.add(rate);
            }
        }
        return clean;
    }

    /// Gives the exposures that take in whole pulses and fit into a frame, shortest first.
    ///
    /// @param hertz pulses a second, > 0
    /// @param framesPerSecond the rate, 1/s, > 0
    /// @param most how many to give at most, the shortest
    /// @return s; none where a pulse is longer than a frame
    public static List<Double> exposures(double hertz, double framesPerSecond, int most) {
        double fit = Math.floor(hertz / framesPerSecond * (1 + NEAR));
        List<Double> clean = new ArrayList<>();
        for (int pulses = 1; pulses <= Math.min(fit, most); pulses++) {
            clean.add(pulses / hertz);
        }
        return clean;
    }

    /// Gives how many pulses the nearest exposure of whole pulses takes in that fits into a frame.
    ///
    /// @param frames the lamp at a rate and an exposure
    /// @return pulses; 0 where a pulse is longer than a frame
    public static long nearestPulses(PulsedFrames frames) {
        double fit = Math.floor(frames.pulsesPerFrame() * (1 + NEAR));
        return (long) Math.min(fit, Math.max(1, Math.rint(frames.pulsesPerExposure())));
    }
}
