package plumeline.cut.list;

import java.util.ArrayList;
import java.util.List;
import plumeline.quantity.FrameRate;
import plumeline.timeline.Played;
import plumeline.timeline.Span;
import plumeline.timeline.Timeline;

/// A span as steps of one speed each.
///
/// Where the speed is steady there is one step, at that speed. A ramp is followed as far as one speed, in tenths of a
/// recorded frame a second as the edit decision list writes it, keeps every frame within the loss allowed; then the
/// next step begins with the frame shown there. The loss allowed is one recorded frame, and more as long as a span
/// would have more than [#MOST] steps.
///
/// **Source:** own; the longest piece first gives the fewest pieces of those that begin with the frame shown.
final class Steps {
    static final int MOST = 24;

    /// A stretch that is steady for a frame only isn't worth a step of its own.
    private static final int LEAST_STEADY = 2;

    /// A span of so many steady stretches that no loss makes it fewer steps has them all.
    private static final long MOST_LOST = 10_000;

    /// What doubles leave of a half, tenths of a recorded frame a second.
    private static final double LITTLE = 1e-6;

    private final Span span;
    private final FrameRate rate;
    private final long[] shown;
    private final List<Piece> pieces = new ArrayList<>();

    /// A piece of a span by frames from its first.
    private record Piece(int from, int past, double speedPerSecond) {}

    private Steps(Span span, FrameRate rate) {
        this.span = span;
        this.rate = rate;
        shown = new long[(int) span.frames()];
        for (int n = 0; n < shown.length; n++) {
            shown[n] = span.sourceFrame(span.first() + n);
        }
    }

    static List<Step> of(Timeline timeline) {
        return timeline.spans().stream()
                .flatMap(span -> of(span, timeline.rate()).stream())
                .toList();
    }

    static List<Step> of(Span span, FrameRate rate) {
        return new Steps(span, rate).list();
    }

    private List<Step> list() {
        long allowed = 1;
        follow(allowed);
        while (pieces.size() > MOST && allowed < MOST_LOST) {
            allowed += Math.max(1, allowed / 4);
            pieces.clear();
            follow(allowed);
        }
        List<Step> steps = new ArrayList<>();
        for (Piece piece : pieces) {
            steps.add(new Step(
                    span,
                    rate,
                    span.first() + piece.from(),
                    piece.past() - piece.from(),
                    shown[piece.from()],
                    piece.speedPerSecond(),
                    steps.size() + 1,
                    pieces.size()));
        }
        return steps;
    }

    private void follow(long allowed) {
        int from = 0;
        while (from < shown.length) {
            int steady = steadyFrom(from);
            if (steady - from >= LEAST_STEADY || steady == shown.length) {
                pieces.add(new Piece(from, steady, speedAt(from)));
                from = steady;
            } else {
                int past = rampFrom(from);
                while (from < past) {
                    Piece piece = farthest(from, past, allowed);
                    pieces.add(piece);
                    from = piece.past();
                }
            }
        }
    }

    /// The frame after the last of a steady stretch. What becomes of the speed after the span's last frame isn't seen.
    private int steadyFrom(int from) {
        int past = from;
        while (past < shown.length - 1 && isSteady(past) && speedAt(past) == speedAt(from)) {
            past++;
        }
        return past == shown.length - 1 ? shown.length : past;
    }

    /// The frame after the last of a stretch that isn't steady.
    private int rampFrom(int from) {
        int past = from;
        while (past < shown.length) {
            int steady = steadyFrom(past);
            if (steady - past >= LEAST_STEADY) {
                return past;
            }
            past = Math.max(steady, past + 1);
        }
        return past;
    }

    private boolean isSteady(int n) {
        long frame = span.shotFrame() + n;
        return !span.played().isRamped(frame, frame + 2);
    }

    private double speedAt(int n) {
        Played played = span.played();
        return played.retime().speedAt((double) (span.shotFrame() + n))
                * played.captured().framesPerSecond();
    }

    /// The longest piece from a frame on.
    private Piece farthest(int from, int past, long allowed) {
        double bound = allowed + 0.5;
        double tenthsAFrame = 10 * rate.framesPerSecond();
        long low = Math.round(10 * speedAt(from));
        long high = low;
        int end = from + 1;
        double least = Double.NEGATIVE_INFINITY;
        double most = Double.POSITIVE_INFINITY;
        while (end < past) {
            int k = end - from;
            double way = shown[end] - shown[from];
            least = Math.max(least, (way - bound) / k * tenthsAFrame);
            most = Math.min(most, (way + bound) / k * tenthsAFrame);
            long nextLow = (long) Math.ceil(least);
            // Halves go up, so that the upper bound itself is a frame too far.
            long nextHigh = (long) Math.ceil(most - LITTLE) - 1;
            if (nextLow > nextHigh) {
                break;
            }
            low = nextLow;
            high = nextHigh;
            end++;
        }
        return new Piece(from, end, best(from, end, low, high) / 10.0);
    }

    /// The speed, tenths a second, that is off least over a piece; of several the one nearest to how it really runs on.
    private long best(int from, int past, long low, long high) {
        int to = Math.min(past, shown.length - 1);
        double real =
                to == from ? 10 * speedAt(from) : 10 * rate.framesPerSecond() * (shown[to] - shown[from]) / (to - from);
        long best = low;
        double leastOff = Double.POSITIVE_INFINITY;
        for (long tenths = low; tenths <= high; tenths++) {
            double off = off(from, past, tenths / 10.0);
            boolean isNearer = Math.abs(tenths - real) < Math.abs(best - real);
            if (off < leastOff || off == leastOff && isNearer) {
                best = tenths;
                leastOff = off;
            }
        }
        return best;
    }

    private long off(int from, int past, double speedPerSecond) {
        long sum = 0;
        for (int n = from; n < past; n++) {
            long off = shown[from] + Step.moved(n - from, speedPerSecond, rate) - shown[n];
            sum += off * off;
        }
        return sum;
    }
}
