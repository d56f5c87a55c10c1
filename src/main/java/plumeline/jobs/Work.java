package plumeline.jobs;

import java.util.concurrent.Executor;

/// What a task tells and asks while it works.
public interface Work {
    /// Whether to go on.
    ///
    /// @return false once stopping was asked for
    boolean goesOn();

    /// Tells how far the task is.
    ///
    /// @param share share of its own work that is done, 0 to 1
    void report(double share);

    /// Threads that no task needs just now: they do what they are given at once, or never where all are busy. For
    /// pieces of work that the task does itself where nobody else begins them.
    ///
    /// @return where to hand such pieces
    Executor spare();
}
