package plumeline.flicker;

import plumeline.ranges.Ranges;

/// How long frames are exposed, as a camera is set.
public sealed interface ShutterSetting {
    /// Gives how long a frame is exposed at a rate.
    ///
    /// @param framesPerSecond the rate, 1/s, > 0
    /// @return s
    double exposureSeconds(double framesPerSecond);

    /// A part of the frame's time, whatever the rate.
    ///
    /// @param turns the shutter's angle in whole turns, > 0, at most 1
    record Angle(double turns) implements ShutterSetting {
        /// Checks the range.
        public Angle {
            Ranges.checkPositive(turns, "shutter");
        }

        @Override
        public double exposureSeconds(double framesPerSecond) {
            return turns / framesPerSecond;
        }
    }

    /// A time.
    ///
    /// @param seconds the exposure, s, > 0
    record Time(double seconds) implements ShutterSetting {
        /// Checks the range.
        public Time {
            Ranges.checkPositive(seconds, "shutter");
        }

        @Override
        public double exposureSeconds(double framesPerSecond) {
            return seconds;
        }
    }
}
