package plumeline.motion;

import java.util.ArrayList;
import java.util.List;
import plumeline.ranges.Ranges;

/// A run passes one of its device's whole steps.
///
/// @param seconds when, real seconds
/// @param step which, counted from the run's place 0
/// @param way 1 where the place grows, -1 where it shrinks
public record DeviceStep(double seconds, long step, int way) {
    private static final double MOST_STEPS = 5e6;

    /// What is as near to a step as this share of it is on it.
    private static final double NEAR = 1e-6;

    /// Lists the steps that a run passes, in order; the one that it begins on is not among them. Where it turns back on
    /// a step it passes that once.
    ///
    /// @param run the run
    /// @param resolution the device's step, metres or radians, > 0
    /// @return the steps
    /// @throws IllegalArgumentException where they are more than five million
    public static List<DeviceStep> list(Run run, double resolution) {
        Ranges.checkPositive(resolution, "resolution");
        List<DeviceStep> steps = new ArrayList<>();
        for (Stretch stretch : Stretch.listAll(run)) {
            double first = stretch.first() / resolution;
            double last = stretch.last() / resolution;
            Ranges.check(Math.abs(last - first) <= MOST_STEPS, "steps", Math.abs(last - first), "at most 5000000");
            int way = stretch.isRising() ? 1 : -1;
            long next = way * (long) (Math.floor(way * first + NEAR) + 1);
            double after = stretch.from();
            while (way * next <= way * last + NEAR) {
                after = stretch.secondsAt(next * resolution, after);
                steps.add(new DeviceStep(after, next, way));
                next += way;
            }
        }
        return steps;
    }
}
