package plumeline.sound;

/// Where a sound is heard from between the front channels, as it goes on: −1 left, 0 the middle, 1 right; in straight
/// lines from its start over one place on its way to its end.
///
/// @param start at its start, −1 to 1
/// @param onWay at the place on its way, −1 to 1
/// @param end at its end, −1 to 1
/// @param wayShare which share of its length that place is at, 0 to 1
public record Pan(double start, double onWay, double end, double wayShare) {
    /// The middle, all the time.
    public static final Pan MIDDLE = new Pan(0, 0, 0, 0.5);

    /// Checks the ranges.
    public Pan {
        boolean isInside = Math.abs(start) <= 1 && Math.abs(onWay) <= 1 && Math.abs(end) <= 1;
        if (!isInside || !(wayShare >= 0 && wayShare <= 1)) {
            throw new IllegalArgumentException("no pan: " + start + ", " + onWay + " at " + wayShare + ", " + end);
        }
    }

    /// Gives where it is heard from.
    ///
    /// @param share of its length that is over, 0 to 1
    /// @return −1 to 1
    public double at(double share) {
        if (share < wayShare) {
            return start + (onWay - start) * share / wayShare;
        }
        return wayShare >= 1 ? onWay : onWay + (end - onWay) * (share - wayShare) / (1 - wayShare);
    }

    /// What of it goes to a channel, so that both together are always as loud: cosine and sine of a quarter turn's
    /// share.
    static double left(double pan) {
        return StrictMath.cos((pan + 1) * Math.PI / 4);
    }

    static double right(double pan) {
        return StrictMath.sin((pan + 1) * Math.PI / 4);
    }
}
