package plumeline.render;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;

/// What was made last, so that it isn't made again; for many threads.
///
/// @param <T> what is made
final class Recent<T> {
    private final int most;
    private final Map<Long, T> kept = new LinkedHashMap<>();

    /// How one is made.
    interface Making<T> {
        T of(long number);
    }

    Recent(int most) {
        this.most = most;
    }

    /// Gives what belongs to a number: what was made for it, else made now. Two threads at once make it once.
    synchronized T get(long number, Making<T> making) {
        Optional<T> found = Optional.ofNullable(kept.remove(number));
        T made = found.orElseGet(() -> making.of(number));
        kept.put(number, made);
        if (kept.size() > most) {
            kept.remove(kept.keySet().iterator().next());
        }
        return made;
    }
}
