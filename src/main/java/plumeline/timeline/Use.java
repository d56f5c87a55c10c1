package plumeline.timeline;

import java.util.List;
import plumeline.plan.Cut;
import plumeline.plan.Delivery;
import plumeline.plan.Named;
import plumeline.plan.Plan;

/// Where a delivery shows a shot's pass, and how its picture lies there.
///
/// @param first the shot's own screen frame that it begins with
/// @param past the one after the last
/// @param keys how the picture lies in the finished one, frames counted from `first`
public record Use(long first, long past, List<Cut.Reframe> keys) {
    /// Copies the list.
    public Use {
        keys = List.copyOf(keys);
    }

    /// Lists where a delivery shows a shot's pass. An entry that names no pass stands for each of them.
    ///
    /// @param plan the plan
    /// @param delivery the delivery; its own cut counts, else the film's
    /// @param shot the shot's name
    /// @param pass the pass's name; empty for the shot itself
    /// @param frames how many screen frames the shot has
    /// @return the uses in the cut's order; none where it shows other shots only; of a shot that no cut has, the
    /// whole
    ///     shot as its crop has it
    public static List<Use> list(Plan plan, Delivery delivery, String shot, String pass, long frames) {
        List<Cut> cuts = delivery.listCuts().isEmpty() ? plan.cuts() : delivery.listCuts();
        List<Use> uses = cuts.stream()
                .filter(cut -> cut.shot().name().equals(shot) && shows(cut, pass))
                .map(cut -> new Use(cut.fromOrDefault(), cut.pastFrame(), cut.listReframes(delivery.name())))
                .toList();
        return Played.usedFrames(plan, shot) == 0 ? List.of(new Use(0, frames, List.of())) : uses;
    }

    private static boolean shows(Cut cut, String pass) {
        return cut.pass().isEmpty() && cut.alternate().isEmpty()
                || cut.pass().filter(one -> one.name().equals(pass)).isPresent()
                || cut.alternate().stream().map(Named::name).anyMatch(pass::equals);
    }

    /// Tells whether it shows an instant of the shot.
    ///
    /// @param frame screen frames from the shot's first, whole or between
    /// @return true where it does
    public boolean has(double frame) {
        return frame >= first && frame < past;
    }

    /// Gives how the picture lies at an instant of the shot.
    ///
    /// @param frame screen frames from the shot's first, whole or between
    /// @return the framing
    public Framing framingAt(double frame) {
        return Framing.at(keys, frame - first);
    }
}
