package plumeline.motion;

import java.util.List;

/// Where an axis is at every time of its move: its place in metres or radians, counted from where it stands before.
public sealed interface Run permits Travel, CubicRun {
    /// Gives when it begins.
    ///
    /// @return real seconds
    double firstSeconds();

    /// Gives when it is over.
    ///
    /// @return real seconds
    double lastSeconds();

    /// Gives where the axis is; before the run its first place, after it its last.
    ///
    /// @param seconds real seconds
    /// @return metres or radians, signed
    double at(double seconds);

    /// Gives how fast the axis goes; nothing before and after the run.
    ///
    /// @param seconds real seconds
    /// @return metres or radians per second, signed
    double speedAt(double seconds);

    /// Gives how the speed changes; nothing before and after the run. Where it jumps, either of the two values.
    ///
    /// @param seconds real seconds
    /// @return metres or radians per second squared, signed
    double accelerationAt(double seconds);

    /// Gives the highest speed.
    ///
    /// @return metres or radians per second, ≥ 0
    double peakSpeed();

    /// Gives the highest acceleration while it runs: what it takes to set an even move going is in [RunUp].
    ///
    /// @return metres or radians per second squared, ≥ 0
    double peakAcceleration();

    /// Gives the highest jerk while it runs; infinite where the acceleration jumps on the way.
    ///
    /// @return metres or radians per second cubed, ≥ 0
    double peakJerk();

    /// Lists when it turns back, in order.
    ///
    /// @return real seconds, within the run
    List<Double> listTurns();
}
