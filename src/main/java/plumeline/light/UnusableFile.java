package plumeline.light;

import java.io.Serial;

/// A photometric file can't be used. It never leaves this room: [LampFile] answers with its refusal.
final class UnusableFile extends Exception {
    @Serial
    private static final long serialVersionUID = 1;

    private final int line;
    private final String found;
    private final String accepted;

    /// A line counted from 1, what stands there, and what may.
    UnusableFile(int line, String found, String accepted) {
        super(found, null, false, false);
        this.line = line;
        this.found = found;
        this.accepted = accepted;
    }

    LampFile.Refused refused() {
        return new LampFile.Refused(line, found, accepted);
    }
}
