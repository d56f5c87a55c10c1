package plumeline.flow;

/// Why a run ended.
public enum Ended {
    /// It came to its time.
    TIME,
    /// What it was to stop at is there.
    STOPPED,
    /// Whoever watched it ended it.
    BROKEN_OFF
}
