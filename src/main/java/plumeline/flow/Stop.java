package plumeline.flow;

import plumeline.ranges.Ranges;

/// What ends a run before its time; asked after each step.
@FunctionalInterface
public interface Stop {
    /// Whether it is there.
    ///
    /// @param flow the flow as it stands
    /// @return whether to stop
    boolean isMet(Flow flow);

    /// Nothing but the time.
    ///
    /// @return a stop that never comes
    static Stop never() {
        return _ -> false;
    }

    /// The dye's front has come down to a height.
    ///
    /// @param zMetres the height over the floor, metres
    /// @param share where dye begins, as a share, > 0
    /// @return the stop
    static Stop downTo(double zMetres, double share) {
        Ranges.checkFinite(zMetres, "zMetres");
        Ranges.checkPositive(share, "share");
        return flow -> Front.ofShare(flow.dye(), share) instanceof Front.Seen seen && seen.lowMetres() <= zMetres;
    }

    /// Either of two.
    ///
    /// @param other the other one
    /// @return the stop
    default Stop or(Stop other) {
        return flow -> isMet(flow) || other.isMet(flow);
    }
}
