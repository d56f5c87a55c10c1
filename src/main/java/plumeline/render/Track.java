package plumeline.render;

import java.util.List;
import plumeline.fall.Fall;

/// How far a piece has come by when: its way step by step, in few numbers, as there may be thousands of pieces.
final class Track {
    /// Of a course's steps every so many are kept; between them the way is a cubic, with the right speeds at both ends.
    private static final int EACH = 8;

    private final double[] metres;
    private final double[] seconds;
    private final double[] speeds;

    private Track(int count) {
        metres = new double[count];
        seconds = new double[count];
        speeds = new double[count];
    }

    /// Keeps the way of what falls or rises; of what does neither it is none.
    static Track of(Fall fall, double wayMetres) {
        if (!fall.moves()) {
            return new Track(0);
        }
        List<Fall.At> course = fall.course(wayMetres);
        int last = course.size() - 1;
        Track track = new Track((last + EACH - 1) / EACH + 1);
        for (int i = 0; i < track.metres.length; i++) {
            Fall.At at = course.get(Math.min(EACH * i, last));
            track.metres[i] = at.metres();
            track.seconds[i] = at.seconds();
            track.speeds[i] = at.metresPerSecond();
        }
        return track;
    }

    /// Gives how far it has come since it was let go, m.
    double metresAt(double since) {
        int last = metres.length - 1;
        if (last < 1 || since <= 0) {
            return 0;
        }
        if (since >= seconds[last]) {
            return metres[last];
        }
        int low = 0;
        int high = last;
        while (high - low > 1) {
            int middle = (low + high) / 2;
            if (seconds[middle] <= since) {
                low = middle;
            } else {
                high = middle;
            }
        }
        double step = seconds[high] - seconds[low];
        double share = (since - seconds[low]) / step;
        double way = metres[high] - metres[low];
        double from = speeds[low] * step;
        double to = speeds[high] * step;
        return metres[low] + share * (from + share * (3 * way - 2 * from - to + share * (from + to - 2 * way)));
    }
}
