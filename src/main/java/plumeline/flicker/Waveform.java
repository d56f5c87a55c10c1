package plumeline.flicker;

import plumeline.ranges.Ranges;

/// How a lamp's light runs through one pulse, between 0 and 1, pulse after pulse.
public sealed interface Waveform {
    /// What the mean light of an exposure can come to, by when in a pulse it begins.
    ///
    /// @param least the least mean, 0 to 1
    /// @param most the most mean, 0 to 1
    record Swing(double least, double most) {}

    /// Gives the least and the most mean light over so many pulses in a row.
    ///
    /// @param pulses how many pulses the exposure takes in, any part of one too, > 0
    /// @return the means
    Swing swing(double pulses);

    /// A sine: `(1 + sin 2πx)/2`. Over n pulses its mean swings by `|sin πn/πn|` of itself.
    ///
    /// **Source:** Fourier's integral of a sine over a box.
    record Sine() implements Waveform {
        @Override
        public Swing swing(double pulses) {
            double left = left(Ranges.checkPositive(pulses, "pulses"));
            return new Swing((1 - left) / 2, (1 + left) / 2);
        }

        private static double left(double n) {
            return Math.abs(Math.sin(Math.PI * n) / (Math.PI * n));
        }
    }

    /// A sine turned up where it is down, as a lamp straight on rectified mains: `|sin πx|`.
    ///
    /// **Source:** own integral; the most stands round a peak, the least round a zero.
    record RectifiedSine() implements Waveform {
        @Override
        public Swing swing(double pulses) {
            double whole = Math.floor(Ranges.checkPositive(pulses, "pulses"));
            double half = Math.PI * (pulses - whole) / 2;
            double scale = 2 / (Math.PI * pulses);
            return new Swing(scale * (whole + 1 - Math.cos(half)), scale * (whole + Math.sin(half)));
        }
    }

    /// Full for a part of each pulse, else off, as a dimmer that switches.
    ///
    /// **Source:** own count of the time it is on.
    ///
    /// @param duty the part of a pulse in which it is on, > 0, at most 1
    record Square(double duty) implements Waveform {
        /// Checks the range.
        public Square {
            Ranges.checkAtMost(Ranges.checkPositive(duty, "duty"), 1, "duty");
        }

        @Override
        public Swing swing(double pulses) {
            double whole = Math.floor(Ranges.checkPositive(pulses, "pulses"));
            double rest = pulses - whole;
            return new Swing(
                    (whole * duty + Math.max(0, rest + duty - 1)) / pulses,
                    (whole * duty + Math.min(rest, duty)) / pulses);
        }
    }
}
