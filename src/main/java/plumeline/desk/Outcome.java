package plumeline.desk;

/// How a command ended, and the exit status that says so.
public enum Outcome {
    /// Answered, whatever the verdict.
    ANSWERED(0),
    /// The program or the world failed.
    FAILED(1),
    /// The input was refused.
    REFUSED(2),
    /// It was asked for strictly, and a want fails or is unknown.
    NOT_HELD(3),
    /// Ctrl-C, as shells have it.
    STOPPED(130);

    private final int status;

    Outcome(int status) {
        this.status = status;
    }

    /// Gives what the process ends with.
    ///
    /// @return the exit status
    public int status() {
        return status;
    }
}
