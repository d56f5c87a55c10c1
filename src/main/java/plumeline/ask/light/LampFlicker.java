package plumeline.ask.light;

import java.util.List;
import java.util.OptionalDouble;
import plumeline.flicker.CleanSettings;
import plumeline.flicker.PulsedFrames;
import plumeline.flicker.ShutterSetting;

/// What `lamp-flicker` finds.
final class LampFlicker {
    /// What is left of a pulse to this doesn't show.
    static final double HOLDS = 0.01;
    /// What is left of a pulse to this may pass.
    static final double PASSES = 0.03;

    /// How many shutters are given at most.
    private static final int MOST_SHUTTERS = 100;

    private LampFlicker() {}

    /// What is asked.
    ///
    /// @param frames the lamp as the camera takes it
    /// @param shutter as it is set
    /// @param modes rates that the camera has, 1/s
    /// @param readoutSeconds a rolling shutter's, from the first row's start to the last one's, s
    record Inputs(PulsedFrames frames, ShutterSetting shutter, List<Double> modes, OptionalDouble readoutSeconds) {
        Inputs {
            modes = List.copyOf(modes);
        }

        /// The same at another rate.
        Inputs at(double rate) {
            PulsedFrames there = new PulsedFrames(frames.lamp(), rate, shutter.exposureSeconds(rate));
            return new Inputs(there, shutter, modes, readoutSeconds);
        }

        /// What the rows of one frame differ by where the readout is known, else 0.
        double bars() {
            return readoutSeconds.isPresent() ? frames.barsDepth(readoutSeconds.getAsDouble()) : 0;
        }

        /// The worse of what shows from frame to frame and within one.
        double worst() {
            return Math.max(frames.ripple(), bars());
        }
    }

    static List<Double> cleanRates(Inputs inputs) {
        return CleanSettings.rates(inputs.frames.lamp(), inputs.modes, inputs.shutter);
    }

    /// Exposures of whole pulses, deg.
    static List<Double> cleanDegrees(Inputs inputs) {
        double rate = inputs.frames.framesPerSecond();
        return CleanSettings.exposures(inputs.frames.lamp().hertz(), rate, MOST_SHUTTERS).stream()
                .map(seconds -> seconds * rate * 360)
                .toList();
    }
}
