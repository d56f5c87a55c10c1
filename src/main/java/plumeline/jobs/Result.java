package plumeline.jobs;

import java.util.List;

/// How a list of tasks ended.
///
/// @param <T> what a task gives
public sealed interface Result<T> {
    /// All are done.
    ///
    /// @param values what they gave, in the order of the tasks
    /// @param <T> what a task gives
    record Whole<T>(List<T> values) implements Result<T> {
        /// Copies the list.
        public Whole {
            values = List.copyOf(values);
        }
    }

    /// They were stopped before.
    ///
    /// @param <T> what a task gives
    record Stopped<T>() implements Result<T> {}
}
