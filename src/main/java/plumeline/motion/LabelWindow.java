package plumeline.motion;

import java.util.ArrayList;
import java.util.List;
import plumeline.ranges.Ranges;

/// A time during which a label on a turning thing reads: its middle is near enough to facing the lens. A label reads
/// again at every whole turn.
///
/// @param fromSeconds real seconds
/// @param toSeconds real seconds, no less
public record LabelWindow(double fromSeconds, double toSeconds) {
    private static final double TURN = 2 * Math.PI;

    /// Lists the windows of a run, in order.
    ///
    /// @param run the turntable's, radians, + clockwise seen from above
    /// @param startRadians turn of the label's middle from the lens where the run's place is 0, + clockwise
    /// @param within how far from the lens the middle may be to read, radians, in [0, π]
    /// @return the windows; none overlap
    public static List<LabelWindow> list(Run run, double startRadians, double within) {
        Ranges.checkFinite(startRadians, "start");
        Ranges.check(within >= 0 && within <= Math.PI, "within", within, "from 0 to pi");
        List<LabelWindow> windows = new ArrayList<>();
        for (Stretch stretch : Stretch.listAll(run)) {
            addTo(windows, stretch, startRadians, within);
        }
        return windows;
    }

    private static void addTo(List<LabelWindow> windows, Stretch stretch, double startRadians, double within) {
        double first = startRadians + stretch.first();
        double last = startRadians + stretch.last();
        double low = Math.min(first, last);
        double high = Math.max(first, last);
        int way = stretch.isRising() ? 1 : -1;
        double from = Math.ceil((low - within) / TURN);
        double to = Math.floor((high + within) / TURN);
        for (double k = way > 0 ? from : to; k >= from && k <= to; k += way) {
            double enter = TURN * k - way * within;
            double leave = TURN * k + way * within;
            double begins = way * enter <= way * first
                    ? stretch.from()
                    : stretch.secondsAt(enter - startRadians, stretch.from());
            double ends =
                    way * leave >= way * last ? stretch.to() : stretch.secondsAt(leave - startRadians, stretch.from());
            add(windows, new LabelWindow(begins, ends));
        }
    }

    /// Windows that meet are one: where a run turns back in one, or everything reads.
    private static void add(List<LabelWindow> windows, LabelWindow next) {
        boolean meets =
                !windows.isEmpty() && next.fromSeconds() <= windows.getLast().toSeconds() + 1e-9;
        if (meets) {
            next = new LabelWindow(windows.removeLast().fromSeconds(), next.toSeconds());
        }
        windows.add(next);
    }

    /// Gives how long it is.
    ///
    /// @return real seconds
    public double seconds() {
        return toSeconds - fromSeconds;
    }
}
