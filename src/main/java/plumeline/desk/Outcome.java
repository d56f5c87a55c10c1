package plumeline.desk;

/// How a command ended, and the exit status that says so.
public enum Outcome {
    ANSWERED(0),
    FAILED(1),
    REFUSED(2),
    NOT_HELD(3),
    /// Ctrl-C, as shells have it.
    STOPPED(130);

    private final int status;

    Outcome(int status) {
        this.status = status;
    }

    public int status() {
        return status;
    }
}
