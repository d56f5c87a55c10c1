package plumeline.desk;

import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import plumeline.jobs.Stop;

/// While it is open, Ctrl-C asks work to stop and waits until it has put things down, instead of ending the process.
public final class Interruption implements AutoCloseable {
    private static final long PATIENCE_SECONDS = 60;

    private final Stop stop = new Stop();
    private final CountDownLatch putDown = new CountDownLatch(1);
    private final Thread hook = new Thread(this::askAndWait, "plumeline-stop");

    /// Listens for Ctrl-C from now on.
    public Interruption() {
        Runtime.getRuntime().addShutdownHook(hook);
    }

    /// Gives what tells work that it is to stop.
    ///
    /// @return it
    public Stop stop() {
        return stop;
    }

    /// What Ctrl-C sets off.
    void askAndWait() {
        stop.ask();
        try {
            // The process ends when this returns: whoever works says so by closing, or takes too long.
            if (!putDown.await(PATIENCE_SECONDS, TimeUnit.SECONDS)) {
                Runtime.getRuntime().halt(Outcome.STOPPED.status());
            }
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
    }

    @Override
    public void close() {
        putDown.countDown();
        try {
            Runtime.getRuntime().removeShutdownHook(hook);
        } catch (IllegalStateException e) {
            // The process is ending: the hook has run.
        }
    }
}
