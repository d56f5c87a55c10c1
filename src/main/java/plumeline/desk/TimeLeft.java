package plumeline.desk;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.Locale;
import java.util.function.LongSupplier;
import java.util.function.Supplier;
import plumeline.jobs.Progress;

/// Says how far long work is and how long is left: after a second, then every five and more seldom as it
/// goes on.
public final class TimeLeft implements Progress {
    private static final double FIRST_SECONDS = 1;
    private static final double NEXT_SECONDS = 5;
    private static final double NEXT_SHARE = 0.2;

    /// The pace isn't told by less time: the first pieces are the odd ones, and the program itself is still warming up.
    private static final double LEAST_SECONDS = 2;

    /// Nor by less of the work.
    private static final double LEAST_SHARE = 0.01;

    /// The pace is that since so many lines ago: work that was begun earlier comes in leaps.
    private static final int LINES = 6;

    private final String what;
    private final Console console;
    private final LongSupplier nanos;
    private final Supplier<String> more;
    private final long began;
    private final Deque<Heard> heard = new ArrayDeque<>();
    private double nextSeconds = FIRST_SECONDS;

    private record Heard(double seconds, double share) {}

    /// Tells it by the machine's clock.
    ///
    /// @param what what is done, as in `drawing pictures`
    /// @param console who hears of it
    public TimeLeft(String what, Console console) {
        this(what, console, System::nanoTime, () -> "");
    }

    /// Tells it by any clock.
    ///
    /// @param what what is done
    /// @param console who hears of it
    /// @param nanos a clock
    /// @param more what else is said each time
    public TimeLeft(String what, Console console, LongSupplier nanos, Supplier<String> more) {
        this.what = what;
        this.console = console;
        this.nanos = nanos;
        this.more = more;
        this.began = nanos.getAsLong();
    }

    @Override
    public void hear(double share) {
        double seconds = (nanos.getAsLong() - began) / 1e9;
        if (heard.isEmpty()) {
            heard.add(new Heard(seconds, share));
        }
        if (seconds < nextSeconds || share >= 1) {
            return;
        }
        nextSeconds = seconds + Math.max(NEXT_SECONDS, seconds * NEXT_SHARE);
        Heard first = heard.getFirst();
        double gained = share - first.share();
        double took = seconds - first.seconds();
        boolean isPace = gained >= LEAST_SHARE && took >= LEAST_SECONDS;
        console.say(line(share, isPace ? (1 - share) / gained * took : Double.POSITIVE_INFINITY) + more.get());
        heard.addLast(new Heard(seconds, share));
        if (heard.size() > LINES) {
            heard.removeFirst();
        }
    }

    private String line(double share, double left) {
        String done = String.format(Locale.ROOT, "plumeline: %s %.0f %%", what, Math.floor(100 * share));
        if (!(left < 86_400)) {
            return done;
        }
        return left < 90
                ? String.format(Locale.ROOT, "%s, about %.0f s left", done, Math.max(1, left))
                : String.format(Locale.ROOT, "%s, about %.0f min left", done, left / 60);
    }
}
