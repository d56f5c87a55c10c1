package plumeline.stage;

import java.util.List;
import java.util.stream.Stream;
import plumeline.plan.Plan;
import plumeline.plan.Shot;
import plumeline.time.Retime;
import plumeline.timeline.Played;

/// How long a shot is on the screen, and whether the cut lays it anew.
final class Lengths {
    /// No shot is taken to be longer than this, screen frames: an hour at 120 a second.
    private static final long MOST_FRAMES = 432_000;

    private Lengths() {}

    static boolean isReframed(Plan plan, Shot shot) {
        return Stream.concat(plan.cuts().stream(), plan.deliveries().stream().flatMap(one -> one.listCuts().stream()))
                .anyMatch(cut ->
                        cut.shot().name().equals(shot.name()) && cut.written().has("reframe"));
    }

    /// The longest use in the cut, else the shot's own frames, else as long as its moves; one frame at least.
    static long frames(Plan plan, Shot shot, List<Motions.Motion> motions, Retime retime) {
        long used = Played.usedFrames(plan, shot.name());
        if (used > 0) {
            return used;
        }
        if (shot.frames().isPresent()) {
            return Math.max(1, shot.frames().getAsLong());
        }
        double end = motions.stream()
                .filter(motion -> motion.kept().isEmpty())
                .mapToDouble(Motions.Motion::endSeconds)
                .max()
                .orElse(0);
        // Played backward it takes as long as forward.
        double frames = retime.frameAt(retime.speedAt(0) < 0 ? -end : end, MOST_FRAMES);
        return Math.max(1, (long) Math.ceil(frames - 1e-6));
    }
}
