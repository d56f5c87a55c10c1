package plumeline.time;

import java.util.List;

/// A shot's playback speed over its screen frames, and the real time that has passed at each.
///
/// Real seconds at frame n are the integral of speed over screen time: `∫₀ⁿ speed(x) dx / rate`. Between two keys the
/// speed runs straight, or as `10u³ − 15u⁴ + 6u⁵` where smooth; before the first and after the last key it stays. Both
/// integrals are exact.
///
/// **Source:** integral of a rate, own; the smooth step is the minimum-jerk polynomial of T. Flash and N. Hogan, "The
/// coordination of arm movements", Journal of Neuroscience 5 (1985), 1688–1703, from memory.
public final class Retime {
    private final List<Key> keys;
    private final Ease ease;
    private final double framesPerSecond;

    /// How the speed runs between two keys.
    public enum Ease {
        /// In a straight line.
        STRAIGHT,
        /// As a minimum-jerk step.
        SMOOTH
    }

    /// The speed at one screen frame.
    ///
    /// @param frame screen frames from the shot's first, ≥ 0
    /// @param speed playback speed as a share of real time (1 is real time, 0.2 five times slower), ≥ 0
    public record Key(double frame, double speed) {}

    /// Makes a retime map.
    ///
    /// @param keys at least one, frames rising
    /// @param ease how the speed runs between keys
    /// @param framesPerSecond the timeline's rate, 1/s, > 0
    public Retime(List<Key> keys, Ease ease, double framesPerSecond) {
        if (keys.isEmpty() || !(framesPerSecond > 0)) {
            throw new IllegalArgumentException("a retime map needs a key and a rate");
        }
        this.keys = List.copyOf(keys);
        this.ease = ease;
        this.framesPerSecond = framesPerSecond;
    }

    /// Gives the same speed throughout.
    ///
    /// @param speed playback speed as a share of real time, ≥ 0
    /// @param framesPerSecond the timeline's rate, 1/s, > 0
    /// @return the map
    public static Retime constant(double speed, double framesPerSecond) {
        return new Retime(List.of(new Key(0, speed)), Ease.STRAIGHT, framesPerSecond);
    }

    /// Gives the timeline's rate.
    ///
    /// @return screen frames a second, 1/s
    public double framesPerSecond() {
        return framesPerSecond;
    }

    /// Gives the real time that has passed when a frame begins.
    ///
    /// @param frame screen frames from the shot's first, ≥ 0
    /// @return real seconds from the shot's first frame
    public double realSeconds(double frame) {
        double sum = 0;
        double from = 0;
        for (int k = 0; k < keys.size() && from < frame; k++) {
            Key key = keys.get(k);
            if (key.frame() > from) {
                double to = Math.min(frame, key.frame());
                sum += k == 0 ? key.speed() * (to - from) : partial(keys.get(k - 1), key, to);
                from = to;
            }
        }
        if (from < frame) {
            sum += keys.getLast().speed() * (frame - from);
        }
        return sum / framesPerSecond;
    }

    /// Gives the screen frame at which some real time has passed: the inverse of [#realSeconds], the earliest where the
    /// table stands still.
    ///
    /// @param seconds real seconds from the shot's first frame, ≥ 0
    /// @param mostFrames where to stop looking, screen frames
    /// @return screen frames, at most `mostFrames`
    public double frameAt(double seconds, double mostFrames) {
        double low = 0;
        double high = mostFrames;
        for (int i = 0; i < 80; i++) {
            double middle = (low + high) / 2;
            if (realSeconds(middle) < seconds) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return high;
    }

    /// Integral of speed from a key to a frame before the next, in frames.
    private double partial(Key a, Key b, double to) {
        double length = b.frame() - a.frame();
        double u = (to - a.frame()) / length;
        double risen = switch (ease) {
            case STRAIGHT -> u * u / 2;
            case SMOOTH -> u * u * u * u * (2.5 - 3 * u + u * u);
        };
        return length * (a.speed() * u + (b.speed() - a.speed()) * risen);
    }
}
