package plumeline.jobs;

import java.util.concurrent.atomic.AtomicBoolean;

/// A request to stop, made from any thread; it can't be taken back.
public final class Stop {
    private final AtomicBoolean asked = new AtomicBoolean();

    /// Makes a request that isn't asked yet.
    public Stop() {}

    /// Asks to stop.
    public void ask() {
        asked.set(true);
    }

    /// Whether it was asked for.
    ///
    /// @return true from then on
    public boolean isAsked() {
        return asked.get();
    }
}
