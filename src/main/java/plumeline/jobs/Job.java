package plumeline.jobs;

import java.io.IOException;

/// One of many independent tasks.
///
/// @param <T> what it gives
@FunctionalInterface
public interface Job<T> {
    /// Does it. A task that takes long asks [Work#goesOn] now and then and returns soon after that says no; what it
    /// gives then is not looked at.
    ///
    /// @param work what it tells and asks while it works
    /// @return what it gives
    /// @throws IOException where the world fails; the others are then stopped
    T run(Work work) throws IOException;
}
