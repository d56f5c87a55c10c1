package plumeline.timeline;

import java.util.List;
import plumeline.motion.Profile;
import plumeline.motion.Travel;
import plumeline.plan.Cut;
import plumeline.plan.Move;

/// How the picture lies in the finished one at a frame: scaled and turned about its crop's middle, then moved.
///
/// Between two keys scale, place and turn run by the later key's profile from rest to rest, ramps a third of the time
/// each, as a move without limits does; before the first key and after the last they stay. An even way is straight.
///
/// @param scale how large it is; 1 fills the delivery as its crop does, dimensionless, > 0
/// @param x where its middle goes, to the right, a share of the finished picture's width
/// @param y where its middle goes, upwards, a share of the finished picture's height
/// @param turnRadians its turn, clockwise as seen
public record Framing(double scale, double x, double y, double turnRadians) {
    /// As the crop has it.
    public static final Framing PLAIN = new Framing(1, 0, 0, 0);

    /// Gives the framing at a frame.
    ///
    /// @param keys the keys, frames rising; none leave the picture as its crop has it
    /// @param frame frames from the entry's first, whole or between
    /// @return the framing
    public static Framing at(List<Cut.Reframe> keys, double frame) {
        int next = 0;
        while (next < keys.size() && frame >= keys.get(next).frame()) {
            next++;
        }
        if (keys.isEmpty()) {
            return PLAIN;
        }
        return next == 0 || next == keys.size()
                ? of(keys.get(Math.max(0, next - 1)))
                : between(keys.get(next - 1), keys.get(next), frame);
    }

    private static Framing of(Cut.Reframe key) {
        return new Framing(key.scale(), key.x(), key.y(), key.turnRadians());
    }

    private static Framing between(Cut.Reframe from, Cut.Reframe to, double frame) {
        double share = Travel.inThirds(1, (double) (to.frame() - from.frame()), profile(to.profile()))
                .at(frame - (double) from.frame());
        return new Framing(
                mixed(from.scale(), to.scale(), share),
                mixed(from.x(), to.x(), share),
                mixed(from.y(), to.y(), share),
                mixed(from.turnRadians(), to.turnRadians(), share));
    }

    private static double mixed(double from, double to, double share) {
        return from + (to - from) * share;
    }

    /// Gives a profile of the plan as one of motion.
    ///
    /// @param profile as written
    /// @return the same
    public static Profile profile(Move.Profile profile) {
        return switch (profile) {
            case EVEN -> Profile.EVEN;
            case TRAPEZOID -> Profile.TRAPEZOID;
            case S_CURVE -> Profile.S_CURVE;
            case SMOOTH -> Profile.SMOOTH;
        };
    }
}
