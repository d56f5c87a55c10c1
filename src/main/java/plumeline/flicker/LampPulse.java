package plumeline.flicker;

import plumeline.ranges.Ranges;

/// A lamp that pulses: a steady part and a waveform over it.
///
/// @param hertz pulses a second, > 0; twice the mains for lamps straight on it
/// @param depth `(max − min)/(max + min)` of its light, 0 to 1
/// @param form how the light runs through a pulse
public record LampPulse(double hertz, double depth, Waveform form) {
    /// Checks the ranges.
    public LampPulse {
        Ranges.checkPositive(hertz, "hertz");
        Ranges.checkAtMost(Ranges.checkNotNegative(depth, "depth"), 1, "depth");
    }

    /// Gives how far exposures of this lamp differ at most, by when they begin: `(max − min)/(max + min)` of the light
    /// they take in. For a sine `depth · |sin πn/πn|` with n pulses an exposure; whole pulses leave nothing of any
    /// form.
    ///
    /// Each place of the sensor is taken to be open at once and shut at once, and pulses to be alike.
    ///
    /// **Source:** the waveform's means, see [Waveform], with the steady part that the depth leaves.
    ///
    /// @param pulses pulses that an exposure takes in, > 0
    /// @return the ripple, 0 to 1
    public double ripple(double pulses) {
        Waveform.Swing swing = form.swing(pulses);
        double steady = (1 - depth) / (1 + depth);
        double apart = (1 - steady) * (swing.most() - swing.least());
        return apart <= 0 ? 0 : apart / (2 * steady + (1 - steady) * (swing.most() + swing.least()));
    }
}
