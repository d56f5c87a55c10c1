package plumeline.time;

/// A stretch of a retime map with no key inside. Speeds are shares of real time; "real frames" are the integral of
/// speed over screen frames.
///
/// @param from first screen frame
/// @param to last screen frame, ≥ from; may be infinite where both speeds are one
/// @param speedFrom speed at the first
/// @param speedTo speed at the last
/// @param ease how the speed runs between them
record Piece(double from, double to, double speedFrom, double speedTo, Retime.Ease ease) {
    /// Newton's steps end when they are less than this, screen frames.
    private static final double NEAR = 1e-13;

    private static final int MOST_STEPS = 200;

    boolean isEven() {
        return speedFrom == speedTo;
    }

    double speed(double frame) {
        double risen = isEven() ? 0 : ease.risen(share(frame));
        return speedFrom * (1 - risen) + speedTo * risen;
    }

    private double share(double frame) {
        return (frame - from) / (to - from);
    }

    /// Real frames from the first screen frame to this one.
    double sum(double frame) {
        if (isEven()) {
            return speedFrom == 0 ? 0 : speedFrom * (frame - from);
        }
        double u = share(frame);
        return (to - from) * (speedFrom * u + (speedTo - speedFrom) * ease.sum(u));
    }

    /// Whether the speed changes its sign inside.
    boolean turns() {
        return Math.signum(speedFrom) * Math.signum(speedTo) < 0;
    }

    /// Where the speed changes its sign; the end where it doesn't.
    double turn() {
        if (!turns()) {
            return to;
        }
        double risen = speedFrom / (speedFrom - speedTo);
        double low = 0;
        double high = 1;
        while ((low + high) / 2 > low && (low + high) / 2 < high) {
            double middle = (low + high) / 2;
            if (ease.risen(middle) < risen) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return from + (to - from) * high;
    }

    /// The screen frame at which the sum comes to a value, between two frames within which the speed keeps its sign.
    double solve(double wanted, double first, double last) {
        if (isEven()) {
            return Math.clamp(from + wanted / speedFrom, first, last);
        }
        double low = first;
        double high = last;
        boolean rises = sum(last) > sum(first);
        double frame = (low + high) / 2;
        for (int i = 0; i < MOST_STEPS; i++) {
            double miss = sum(frame) - wanted;
            if (miss > 0 == rises) {
                high = frame;
            } else {
                low = frame;
            }
            double newton = frame - miss / speed(frame);
            double next = newton >= low && newton <= high ? newton : (low + high) / 2;
            if (Math.abs(next - frame) < NEAR) {
                return next;
            }
            frame = next;
        }
        return frame;
    }
}
