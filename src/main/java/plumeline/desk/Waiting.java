package plumeline.desk;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.concurrent.Executors;
import java.util.concurrent.ScheduledExecutorService;
import java.util.concurrent.TimeUnit;

/// Says which shots are still worked on, while someone watches: after a second, then every five.
final class Waiting implements AutoCloseable {
    private static final long FIRST_SECONDS = 1;
    private static final long NEXT_SECONDS = 5;

    private final Console console;
    private final Set<String> left;
    private final int all;
    private final ScheduledExecutorService clock;

    private Waiting(Console console, List<String> shots) {
        this.console = console;
        left = new LinkedHashSet<>(shots);
        all = left.size();
        clock = Executors.newSingleThreadScheduledExecutor(
                Thread.ofPlatform().name("plumeline-waiting").daemon().factory());
    }

    /// Begins to wait for shots.
    static Waiting of(Console console, List<String> shots) {
        Waiting waiting = new Waiting(console, shots);
        if (console.isWatched()) {
            var _ = waiting.clock.scheduleAtFixedRate(waiting::tell, FIRST_SECONDS, NEXT_SECONDS, TimeUnit.SECONDS);
        }
        return waiting;
    }

    /// Hears that a shot is done, from any thread.
    synchronized void done(String shot) {
        left.remove(shot);
    }

    synchronized void tell() {
        if (!left.isEmpty()) {
            console.say("plumeline: solving " + String.join(", ", left)
                    + (all > 1 ? "; " + (all - left.size()) + " of " + all + " shots done" : ""));
        }
    }

    @Override
    public void close() {
        clock.shutdownNow();
    }
}
