package plumeline.motion;

import java.util.ArrayList;
import java.util.List;

/// Keys that a run passes, a monotone cubic between each two (Hermite's): it never goes past its keys, and keys at
/// which it turns back are flat.
///
/// @param keys at least two, in the order of their times
/// @param rule how the speed at a key follows from its neighbours
/// @param ends how the run begins and ends
public record FreeKeys(List<Key> keys, SlopeRule rule, Ends ends) {
    /// One key.
    ///
    /// @param seconds real seconds
    /// @param place metres or radians
    public record Key(double seconds, double place) {}

    /// How a run begins and ends.
    public enum Ends {
        /// From rest to rest.
        AT_REST,
        /// Running, by a parabola through the three keys nearest to the end, kept within what goes past no key: as
        /// PCHIM does.
        RUNNING
    }

    /// Copies the list and checks it.
    ///
    /// @throws IllegalArgumentException with less than two keys, or two at one time
    public FreeKeys {
        keys = List.copyOf(keys);
        if (keys.size() < 2) {
            throw new IllegalArgumentException("a run needs two keys, has " + keys.size());
        }
        for (int i = 1; i < keys.size(); i++) {
            if (!(keys.get(i).seconds() > keys.get(i - 1).seconds())) {
                throw new IllegalArgumentException("a key at " + keys.get(i).seconds() + " s after one at "
                        + keys.get(i - 1).seconds() + " s");
            }
        }
    }

    /// Gives the speeds at the keys.
    ///
    /// @return metres or radians per second, one a key
    public List<Double> listSpeeds() {
        List<Double> speeds = new ArrayList<>();
        for (double speed : speeds()) {
            speeds.add(speed);
        }
        return speeds;
    }

    /// Gives the run.
    ///
    /// @return from the first key to the last
    public CubicRun toRun() {
        double[] speeds = speeds();
        List<CubicRun.Piece> pieces = new ArrayList<>();
        for (int i = 0; i + 1 < keys.size(); i++) {
            double time = time(i);
            double mean = slope(i);
            double acceleration = 2 * (3 * mean - 2 * speeds[i] - speeds[i + 1]) / time;
            double jerk = 6 * (speeds[i] + speeds[i + 1] - 2 * mean) / (time * time);
            pieces.add(new CubicRun.Piece(time, keys.get(i).place(), speeds[i], acceleration, jerk));
        }
        return new CubicRun(keys.getFirst().seconds(), pieces);
    }

    private double[] speeds() {
        int last = keys.size() - 1;
        double[] slopes = new double[last];
        for (int i = 0; i < last; i++) {
            slopes[i] = slope(i);
        }
        double[] speeds = new double[last + 1];
        for (int i = 1; i < last; i++) {
            speeds[i] = rule.inner(time(i - 1), time(i), slopes[i - 1], slopes[i]);
        }
        if (ends == Ends.RUNNING) {
            speeds[0] = last == 1 ? slopes[0] : end(time(0), time(1), slopes[0], slopes[1]);
            speeds[last] =
                    last == 1 ? slopes[0] : end(time(last - 1), time(last - 2), slopes[last - 1], slopes[last - 2]);
        }
        rule.limit(speeds, slopes);
        return speeds;
    }

    /// The speed at an end by the three keys nearest to it.
    private static double end(double near, double far, double slopeNear, double slopeFar) {
        double speed = ((2 * near + far) * slopeNear - near * slopeFar) / (near + far);
        if (speed * slopeNear <= 0) {
            return 0;
        }
        boolean isPast = slopeNear * slopeFar <= 0 && Math.abs(speed) > 3 * Math.abs(slopeNear);
        return isPast ? 3 * slopeNear : speed;
    }

    private double time(int index) {
        return keys.get(index + 1).seconds() - keys.get(index).seconds();
    }

    private double slope(int index) {
        return (keys.get(index + 1).place() - keys.get(index).place()) / time(index);
    }
}
