package plumeline.time;

import java.util.ArrayList;
import java.util.List;

/// A shot's playback speed over its screen frames, and the real time that has passed at each.
///
/// Real seconds at frame n are the integral of speed over screen time: `∫₀ⁿ speed(x) dx / rate`. Between two keys the
/// speed runs straight, or as `10u³ − 15u⁴ + 6u⁵` where smooth; before the first and after the last key it stays; where
/// two keys stand on one frame it jumps, and the later one counts from there. Both integrals are exact. A speed of 0
/// holds a frame, a speed below 0 shows the action backward: real time then goes down, and begins at 0 on the shot's
/// first frame unless [#fromEarliest] shifts it. True to 1e-9 s for shots of an hour. A frame's real time costs
/// a search among the keys, so that a table of all frames grows as their number.
///
/// **Source:** integral of a rate, own; the smooth step is the minimum-jerk polynomial of T. Flash and N. Hogan, "The
/// coordination of arm movements", Journal of Neuroscience 5 (1985), 1688–1703, from memory.
public final class Retime {
    private final double framesPerSecond;
    private final double startSeconds;
    private final List<Piece> pieces;

    /// Real frames at each piece's first frame; the most and the least of them up to its end, in seconds.
    private final double[] sums;

    private final double[] crestSeconds;
    private final double[] troughSeconds;

    /// How the speed runs between two keys.
    public enum Ease {
        /// In a straight line.
        STRAIGHT,
        /// As a minimum-jerk step.
        SMOOTH;

        /// Gives how much of a step from one key's speed to the next is done.
        ///
        /// @param u share of the frames between them, 0 to 1
        /// @return the share, 0 to 1
        public double risen(double u) {
            return switch (this) {
                case STRAIGHT -> u;
                case SMOOTH -> u * u * u * (10 - 15 * u + 6 * u * u);
            };
        }

        /// Integral of [#risen] from 0.
        double sum(double u) {
            return switch (this) {
                case STRAIGHT -> u * u / 2;
                case SMOOTH -> u * u * u * u * (2.5 - 3 * u + u * u);
            };
        }
    }

    /// The speed at one screen frame.
    ///
    /// @param frame screen frames from the shot's first, ≥ 0
    /// @param speed playback speed as a share of real time: 1 is real time, 0.2 five times slower, 0 a hold, -1
    /// backward
    public record Key(double frame, double speed) {}

    /// Makes a retime map.
    ///
    /// @param keys at least one, frames never falling
    /// @param ease how the speed runs between keys
    /// @param framesPerSecond the timeline's rate, 1/s, > 0
    public Retime(List<Key> keys, Ease ease, double framesPerSecond) {
        this(cut(keys, ease), framesPerSecond, 0);
    }

    private Retime(List<Piece> pieces, double framesPerSecond, double startSeconds) {
        if (!(framesPerSecond > 0)) {
            throw new IllegalArgumentException("a retime map needs a rate");
        }
        this.framesPerSecond = framesPerSecond;
        this.startSeconds = startSeconds;
        this.pieces = List.copyOf(pieces);
        int count = pieces.size();
        sums = new double[count];
        crestSeconds = new double[count];
        troughSeconds = new double[count];
        double sum = 0;
        double crest = 0;
        double trough = 0;
        for (int i = 0; i < count; i++) {
            Piece piece = pieces.get(i);
            sums[i] = sum;
            double turned = (sum + piece.sum(piece.turn())) / framesPerSecond;
            sum += piece.sum(piece.to());
            double ended = sum / framesPerSecond;
            crest = Math.max(crest, Math.max(turned, ended));
            trough = Math.min(trough, Math.min(turned, ended));
            crestSeconds[i] = crest;
            troughSeconds[i] = trough;
        }
    }

    /// The stretches between keys, and those before the first and after the last.
    private static List<Piece> cut(List<Key> keys, Ease ease) {
        if (keys.isEmpty()) {
            throw new IllegalArgumentException("a retime map needs a key");
        }
        List<Piece> pieces = new ArrayList<>();
        Key before = new Key(0, keys.getFirst().speed());
        for (Key key : keys) {
            if (!(key.frame() >= before.frame()) || !Double.isFinite(key.speed())) {
                throw new IllegalArgumentException("a key of " + key + " after " + before);
            }
            if (key.frame() > before.frame() || pieces.isEmpty()) {
                pieces.add(new Piece(before.frame(), key.frame(), before.speed(), key.speed(), ease));
            }
            before = key;
        }
        pieces.add(new Piece(before.frame(), Double.POSITIVE_INFINITY, before.speed(), before.speed(), ease));
        return pieces;
    }

    /// Gives the same speed throughout.
    ///
    /// @param speed playback speed as a share of real time
    /// @param framesPerSecond the timeline's rate, 1/s, > 0
    /// @return the map
    public static Retime constant(double speed, double framesPerSecond) {
        return new Retime(List.of(new Key(0, speed)), Ease.STRAIGHT, framesPerSecond);
    }

    /// Gives the same map with its real time counted from the earliest instant that a shot shows: so begins the action
    /// of a shot that runs backward when it is filmed.
    ///
    /// @param frames the shot's screen frames, ≥ 0
    /// @return the map whose real seconds over 0 to `frames` are 0 at least
    public Retime fromEarliest(double frames) {
        return new Retime(pieces, framesPerSecond, startSeconds - earliestSeconds(frames));
    }

    /// Gives the timeline's rate.
    ///
    /// @return screen frames a second, 1/s
    public double framesPerSecond() {
        return framesPerSecond;
    }

    /// Gives the real time when a frame begins.
    ///
    /// @param frame screen frames from the shot's first, ≥ 0
    /// @return real seconds from the shot's first frame, or as [#fromEarliest] counts them
    public double realSeconds(double frame) {
        int i = pieceAt(frame);
        return startSeconds + (sums[i] + pieces.get(i).sum(frame)) / framesPerSecond;
    }

    /// Gives the playback speed at a frame; where it jumps, that behind the jump.
    ///
    /// @param frame screen frames from the shot's first, ≥ 0
    /// @return a share of real time
    public double speedAt(double frame) {
        return pieces.get(pieceAt(frame)).speed(frame);
    }

    /// The last piece that begins no later.
    private int pieceAt(double frame) {
        int low = 0;
        int high = pieces.size() - 1;
        while (low < high) {
            int middle = (low + high + 1) / 2;
            if (pieces.get(middle).from() <= frame) {
                low = middle;
            } else {
                high = middle - 1;
            }
        }
        return low;
    }

    /// Gives the first screen frame at which the table is at some instant: the inverse of [#realSeconds], the earliest
    /// where the table stands still or comes by more than once.
    ///
    /// @param seconds real seconds, as [#realSeconds] counts them
    /// @param mostFrames where to stop looking, screen frames, ≥ 0
    /// @return screen frames, at most `mostFrames`, which is also given where the shot never comes there
    public double frameAt(double seconds, double mostFrames) {
        double wanted = seconds - startSeconds;
        if (wanted == 0) {
            return 0;
        }
        int i = 0;
        int past = pieces.size();
        while (i < past) {
            int middle = (i + past) / 2;
            if (wanted > 0 ? crestSeconds[middle] >= wanted : troughSeconds[middle] <= wanted) {
                past = middle;
            } else {
                i = middle + 1;
            }
        }
        return i < pieces.size() ? Math.min(mostFrames, frameIn(i, wanted)) : mostFrames;
    }

    /// The first frame of a piece at which the sum comes to so many seconds.
    private double frameIn(int i, double wantedSeconds) {
        Piece piece = pieces.get(i);
        double turn = piece.turn();
        double turned = (sums[i] + piece.sum(turn)) / framesPerSecond;
        double wanted = wantedSeconds * framesPerSecond - sums[i];
        boolean isBefore = wantedSeconds > 0 ? turned >= wantedSeconds : turned <= wantedSeconds;
        return isBefore ? piece.solve(wanted, piece.from(), turn) : piece.solve(wanted, turn, piece.to());
    }

    /// Gives the earliest real instant that a shot shows.
    ///
    /// @param frames the shot's screen frames, ≥ 0
    /// @return real seconds, as [#realSeconds] counts them
    public double earliestSeconds(double frames) {
        return extremeSeconds(frames, -1);
    }

    /// Gives the latest real instant that a shot shows.
    ///
    /// @param frames the shot's screen frames, ≥ 0
    /// @return real seconds, as [#realSeconds] counts them
    public double latestSeconds(double frames) {
        return extremeSeconds(frames, 1);
    }

    private double extremeSeconds(double frames, int sign) {
        double most = sign * startSeconds;
        for (int i = 0; i < pieces.size() && pieces.get(i).from() <= frames; i++) {
            Piece piece = pieces.get(i);
            most = Math.max(most, sign * realSeconds(Math.min(frames, piece.turn())));
            most = Math.max(most, sign * realSeconds(Math.min(frames, piece.to())));
        }
        return sign * most;
    }

    /// Gives how much real time a shot shows, from the earliest instant to the latest.
    ///
    /// @param frames the shot's screen frames, ≥ 0
    /// @return real seconds, ≥ 0
    public double spanSeconds(double frames) {
        return latestSeconds(frames) - earliestSeconds(frames);
    }

    /// Gives the slowest speed that isn't a hold: the least at a key or an end of the interval that isn't 0. Where the
    /// speed runs to or through 0 it is less still for an instant, for which no capture rate is enough: see
    /// [#rests].
    ///
    /// @param fromFrame screen frames, ≥ 0
    /// @param toFrame screen frames, ≥ `fromFrame`
    /// @return a share of real time, whichever way it runs; 0 where it is held all the time
    public double slowestSpeed(double fromFrame, double toFrame) {
        double slowest = Double.POSITIVE_INFINITY;
        for (double speed : speeds(fromFrame, toFrame)) {
            slowest = speed == 0 ? slowest : Math.min(slowest, Math.abs(speed));
        }
        return Double.isInfinite(slowest) ? 0 : slowest;
    }

    /// Gives the fastest speed.
    ///
    /// @param fromFrame screen frames, ≥ 0
    /// @param toFrame screen frames, ≥ `fromFrame`
    /// @return a share of real time, whichever way it runs, ≥ 0
    public double fastestSpeed(double fromFrame, double toFrame) {
        double fastest = 0;
        for (double speed : speeds(fromFrame, toFrame)) {
            fastest = Math.max(fastest, Math.abs(speed));
        }
        return fastest;
    }

    /// Tells whether the speed is 0 somewhere, be it for an instant.
    ///
    /// @param fromFrame screen frames, ≥ 0
    /// @param toFrame screen frames, ≥ `fromFrame`
    /// @return true where it is
    public boolean rests(double fromFrame, double toFrame) {
        List<Double> speeds = speeds(fromFrame, toFrame);
        for (int i = 0; i < speeds.size(); i += 2) {
            if (speeds.get(i) * speeds.get(i + 1) <= 0) {
                return true;
            }
        }
        return false;
    }

    /// The speeds at both ends of every piece's part in an interval. What only touches the interval doesn't count.
    private List<Double> speeds(double fromFrame, double toFrame) {
        List<Double> speeds = new ArrayList<>();
        for (Piece piece : pieces) {
            double first = Math.max(piece.from(), fromFrame);
            double last = Math.min(piece.to(), toFrame);
            if (first < last) {
                speeds.add(piece.speed(first));
                speeds.add(piece.speed(last));
            }
        }
        if (speeds.isEmpty()) {
            speeds.addAll(List.of(speedAt(fromFrame), speedAt(fromFrame)));
        }
        return speeds;
    }
}
