package plumeline.flow;

/// Hears of a run's progress after each step, and may end it.
@FunctionalInterface
public interface Watch {
    /// Hears how far it is.
    ///
    /// @param seconds the flow's own time, seconds
    /// @param steps steps since time began
    /// @return whether to go on; a run that is ended can be taken up again
    boolean goesOn(double seconds, long steps);

    /// Lets it run.
    ///
    /// @return a watch that never ends a run
    static Watch none() {
        return (_, _) -> true;
    }
}
