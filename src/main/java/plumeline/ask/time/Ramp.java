package plumeline.ask.time;

import java.util.Comparator;
import java.util.List;
import java.util.OptionalDouble;
import plumeline.time.CaptureMode;
import plumeline.time.Retime;
import plumeline.time.SourceFrames;

/// What `ramp` finds.
final class Ramp {
    /// A part of a frame that is forgiven before a shot gets one frame more.
    private static final double NEAR = 1e-9;

    private Ramp() {}

    /// A rate of the camera's, with its pixels across where they are told.
    record Mode(double framesPerSecond, OptionalDouble acrossPixels) {}

    /// What is asked.
    ///
    /// @param retime speed over screen frames
    /// @param frames the ramp's length, screen frames, > 0
    /// @param capturePerSecond the camera's rate as it was given, 1/s
    /// @param modes the camera's rates, as they were given
    record Inputs(Retime retime, double frames, OptionalDouble capturePerSecond, List<Mode> modes) {
        Inputs {
            modes = List.copyOf(modes);
        }

        double timelinePerSecond() {
            return retime.framesPerSecond();
        }

        double screenSeconds() {
            return frames / timelinePerSecond();
        }

        /// Real time from the earliest instant that is shown to the latest.
        double realSeconds() {
            return retime.spanSeconds(frames);
        }

        /// The slowest speed that isn't a hold; real time where all is held.
        double slowestSpeed() {
            double slowest = retime.slowestSpeed(0, frames);
            return slowest == 0 ? 1 : slowest;
        }

        double leastPerSecond() {
            return CaptureMode.leastRate(timelinePerSecond(), slowestSpeed());
        }

        int wholeFrames() {
            return (int) Math.ceil(frames - NEAR);
        }

        SourceFrames framesAt(double capturePerSecond) {
            return SourceFrames.of(retime, capturePerSecond, wholeFrames());
        }

        /// Counts screen frames that repeat the one before though no hold was asked for.
        int stuck(SourceFrames seen) {
            int stuck = 0;
            for (int n = 1; n < seen.count(); n++) {
                boolean isHeld = retime.speedAt(n - 1) == 0 && retime.speedAt(n - 0.5) == 0;
                stuck += seen.shown(n) == seen.shown(n - 1) && !isHeld ? 1 : 0;
            }
            return stuck;
        }

        /// The camera's rates with their size as a share of the widest. A mode whose size isn't told is as wide.
        List<CaptureMode> captureModes() {
            double widest = widestPixels();
            return modes.stream()
                    .map(mode -> new CaptureMode(
                            mode.framesPerSecond(), mode.acrossPixels().orElse(widest) / widest))
                    .toList();
        }

        /// The most pixels across of any mode; 1 where no size is told.
        double widestPixels() {
            return modes.stream()
                    .map(Mode::acrossPixels)
                    .filter(OptionalDouble::isPresent)
                    .mapToDouble(OptionalDouble::getAsDouble)
                    .max()
                    .orElse(1);
        }

        boolean hasMode(double framesPerSecond) {
            return modes.isEmpty()
                    || modes.stream().anyMatch(mode -> Math.abs(mode.framesPerSecond() / framesPerSecond - 1) < NEAR);
        }
    }

    /// The rate as given; else the camera's least that is enough, or its fastest; else the least there is.
    static double choose(Inputs inputs) {
        if (inputs.capturePerSecond().isPresent()) {
            return inputs.capturePerSecond().getAsDouble();
        }
        if (inputs.modes().isEmpty()) {
            return inputs.leastPerSecond();
        }
        return CaptureMode.findLeast(inputs.captureModes(), inputs.leastPerSecond())
                .map(CaptureMode::framesPerSecond)
                .orElseGet(() -> fastest(inputs));
    }

    static double fastest(Inputs inputs) {
        return inputs.modes().stream()
                .max(Comparator.comparingDouble(Mode::framesPerSecond))
                .orElseThrow()
                .framesPerSecond();
    }
}
