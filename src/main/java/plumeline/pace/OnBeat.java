package plumeline.pace;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import plumeline.stage.Gauge;
import plumeline.time.Beats;
import plumeline.timeline.Timeline;

/// The cuts of a timeline fall on the frames of the music's beats.
///
/// A cut is an entry's first frame, but for the film's own first; a beat's frame is the one nearest to it, halves up.
/// Margin in frames: how far a cut may be off, less how far the worst is off its nearest beat.
///
/// @param timeline the film's, or a cut-down's
/// @param beats the beats, 0 for beat 1
/// @param within how far a cut may be off, frames, ≥ 0
public record OnBeat(Timeline timeline, Beats beats, long within) implements Gauge<Paced> {
    private static final int TOLD = 3;

    /// A cut and the beat nearest to it.
    private record Missed(Timeline.Entry entry, long beat, long frame) {
        long off() {
            return entry.first() - frame;
        }
    }

    @Override
    public String unit() {
        return "frames";
    }

    @Override
    public double[] parts(Paced at) {
        return new double[] {(double) margin()};
    }

    @Override
    public String standing(Paced at) {
        return standing();
    }

    @Override
    public List<String> listAttempts(Paced at) {
        return listAttempts();
    }

    private List<Missed> cuts() {
        return timeline.entries().stream().skip(1).map(this::missed).toList();
    }

    /// The worst first.
    private List<Missed> off() {
        return cuts().stream()
                .filter(missed -> Math.abs(missed.off()) > within)
                .sorted(Comparator.comparingLong((Missed missed) -> -Math.abs(missed.off())))
                .toList();
    }

    private long most() {
        return cuts().stream().mapToLong(missed -> Math.abs(missed.off())).max().orElse(0);
    }

    /// Gives the margin.
    ///
    /// @return frames
    public long margin() {
        return within - most();
    }

    /// Says how the cuts stand.
    ///
    /// @return sentences
    public String standing() {
        String where = timeline.delivery().isEmpty() ? "" : "In " + timeline.delivery() + "'s own cut: ";
        int count = cuts().size();
        List<Missed> off = off();
        if (!off.isEmpty()) {
            return where + off.size() + " of " + count + (count == 1 ? " cut" : " cuts")
                    + (off.size() == 1 ? " is" : " are") + " off the beat; worst is that to " + sentence(off.getFirst())
                    + ".";
        }
        if (count == 0) {
            return where + "There is no cut.";
        }
        return where
                + (count == 1 ? "The one cut is " : "All " + count + " cuts are ")
                + (most() == 0 ? "on a beat." : "at most " + counted(most()) + " off a beat.");
    }

    /// Lists what would bring all cuts onto their beats: other lengths of the entries before them, the film as long as
    /// it is; of a last entry that would lose all its frames nothing is said.
    ///
    /// @return a sentence; empty where none is off
    public List<String> listAttempts() {
        if (off().isEmpty()) {
            return List.of();
        }
        List<Timeline.Entry> entries = timeline.entries();
        List<String> changes = new ArrayList<>();
        long first = 0;
        for (int i = 0; i < entries.size(); i++) {
            boolean isLast = i == entries.size() - 1;
            long past = isLast ? timeline.frames() : beatAfter(first, entries.get(i + 1));
            long frames = past - first;
            if (frames < 1) {
                return List.of();
            }
            Timeline.Entry entry = entries.get(i);
            if (frames != entry.cut().frames()) {
                changes.add((i + 1) + ", " + entry.cut().shot().name() + ", " + counted(frames) + " (now "
                        + entry.cut().frames() + ")");
            }
            first = past;
        }
        String rest = changes.size() > TOLD ? ", and " + (changes.size() - TOLD) + " more likewise" : "";
        return List.of("Make entry "
                + String.join("; ", changes.subList(0, Math.min(TOLD, changes.size()))) + rest
                + ": then every cut is on a beat.");
    }

    /// The frame of the beat nearest to a cut that leaves the entry before it a frame at least.
    private long beatAfter(long first, Timeline.Entry entry) {
        long beat = missed(entry).beat();
        while (beats.frame(beat) <= first) {
            beat++;
        }
        return beats.frame(beat);
    }

    /// The nearest beat from beat 1 on, the earlier one of two as near.
    private Missed missed(Timeline.Entry entry) {
        long near = Math.max(0, (long) Math.floor((entry.first() - beats.position(0)) / beats.intervalFrames()));
        long beat = near;
        for (long each = Math.max(0, near - 1); each <= near + 1; each++) {
            if (Math.abs(beats.frame(each) - entry.first()) < Math.abs(beats.frame(beat) - entry.first())) {
                beat = each;
            }
        }
        return new Missed(entry, beat, beats.frame(beat));
    }

    private static String sentence(Missed missed) {
        return missed.entry().cut().shot().name() + " at frame "
                + missed.entry().first() + ", "
                + counted(Math.abs(missed.off())) + (missed.off() > 0 ? " after" : " before") + " beat "
                + (missed.beat() + 1) + " at frame " + missed.frame();
    }

    private static String counted(long frames) {
        return frames + (frames == 1 ? " frame" : " frames");
    }
}
