package plumeline.jobs;

/// Hears how far all tasks are together, from one thread at a time.
@FunctionalInterface
public interface Progress {
    /// Hears it.
    ///
    /// @param share share of all work that is done, 0 to 1
    void hear(double share);
}
