package plumeline.motion;

import plumeline.ranges.Ranges;

/// What goes on swinging when a move ends, as one mass on one spring that is damped a little: a camera on its arm, a
/// thing on its plate. True as long as swings are small and one of them outlasts the others.
///
/// **Source:** the damped harmonic oscillator, any textbook of mechanics; the decay of its envelope.
///
/// @param hertz its own frequency without damping, 1/s, > 0
/// @param damping share of critical damping, in [0, 1)
public record Swing(double hertz, double damping) {
    /// Checks the ranges.
    public Swing {
        Ranges.checkPositive(hertz, "frequency");
        Ranges.check(damping >= 0 && damping < 1, "damping", damping, "from 0 to under 1");
    }

    private double omega() {
        return 2 * Math.PI * hertz;
    }

    /// Gives how long a swing takes to come down from one size to another: `ln(A/a)/(ζω)`.
    ///
    /// @param from its size, in any unit, > 0
    /// @param to its size then, in the same unit, > 0
    /// @return real seconds, ≥ 0; infinite without damping, 0 where it is as small already
    public double seconds(double from, double to) {
        Ranges.checkPositive(from, "from");
        Ranges.checkPositive(to, "to");
        return from <= to ? 0 : Math.log(from / to) / (damping * omega());
    }

    /// Gives how long after a sudden step the envelope stays within a share of it: `−ln(s√(1 − ζ²))/(ζω)`.
    ///
    /// @param share of the step, in (0, 1)
    /// @return real seconds, ≥ 0; infinite without damping
    public double stepSeconds(double share) {
        Ranges.check(share > 0 && share < 1, "share", share, "between 0 and 1");
        return -Math.log(share * Math.sqrt(1 - damping * damping)) / (damping * omega());
    }

    /// Gives how large the swing is as a ramp ends, from rest before: undamped and with a steady acceleration
    /// `2a/ω²·|sin(ωr/2)|`, nothing where the ramp lasts whole periods.
    ///
    /// @param acceleration highest acceleration, m/s² or rad/s², ≥ 0
    /// @param rampSeconds how long it acts in all, real seconds, > 0
    /// @param jerkSeconds how long in that it grows, and shrinks, real seconds, in [0, rampSeconds/2]
    /// @return size of the swing, metres or radians, from the middle to one side
    public double residue(double acceleration, double rampSeconds, double jerkSeconds) {
        Ranges.checkNotNegative(acceleration, "acceleration");
        Ranges.checkPositive(rampSeconds, "ramp");
        Ranges.check(jerkSeconds >= 0 && jerkSeconds <= rampSeconds / 2, "jerk time", jerkSeconds, "up to half a ramp");
        double grown = jerkSeconds > 0 ? push(jerkSeconds) / jerkSeconds : 1;
        double decay = Math.exp(-damping * omega() * rampSeconds);
        double damped = omega() * Math.sqrt(1 - damping * damping);
        return acceleration / damped * decay * grown * push(rampSeconds - jerkSeconds);
    }

    /// The size of `∫ e^(pt) dt` from 0 to T with p = ζω + iω√(1 − ζ²), whose size is ω.
    private double push(double seconds) {
        double grown = Math.exp(damping * omega() * seconds);
        double angle = omega() * Math.sqrt(1 - damping * damping) * seconds;
        double size = (grown - 1) * (grown - 1) + 4 * grown * Math.pow(Math.sin(angle / 2), 2);
        return Math.sqrt(size) / omega();
    }
}
