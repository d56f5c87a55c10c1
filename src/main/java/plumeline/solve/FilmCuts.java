package plumeline.solve;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import plumeline.look.CutLooks;
import plumeline.look.FlashCount;
import plumeline.plan.Plan;
import plumeline.plan.WantLine;
import plumeline.quantity.Quantity;
import plumeline.time.Beats;
import plumeline.timeline.Timeline;

/// What is wanted of all of a film's cuts together, the film's own and those of its cut-downs.
final class FilmCuts {
    private final WantLine line;
    private final Plan plan;

    private FilmCuts(WantLine line, Plan plan) {
        this.line = line;
        this.plan = plan;
    }

    static boolean answers(WantLine line) {
        return line.word().equals("flash_safe") || line.word().equals("on_beat");
    }

    /// Answers `flash_safe: cuts` and `on_beat: cuts`: the worst of all timelines.
    static WantAnswer answer(WantLine line, Plan plan) {
        FilmCuts cuts = new FilmCuts(line, plan);
        return line.word().equals("on_beat") ? cuts.onBeat() : cuts.flashSafe();
    }

    private WantAnswer unknown(String reason) {
        return new WantAnswer(
                line.id(), text(), Verdict.UNKNOWN, new WantAnswer.Margin.None(), List.of(reason), List.of(), "");
    }

    private WantAnswer found(Verdict verdict, long margin, List<String> because, List<String> attempts) {
        return new WantAnswer(
                line.id(), text(), verdict, new WantAnswer.Margin.Of((double) margin, "frames"), because, attempts, "");
    }

    private String text() {
        return line.toText(plan.film().papersOrDefault());
    }

    private static String where(Timeline timeline) {
        return timeline.delivery().isEmpty() ? "" : "In " + timeline.delivery() + "'s own cut: ";
    }

    private WantAnswer flashSafe() {
        return Timeline.listAll(plan).stream()
                .filter(timeline -> CutLooks.of(timeline).size() > 1)
                .map(this::flashSafe)
                .min(Comparator.comparing(WantAnswer::verdict).thenComparingDouble(FilmCuts::marginOf))
                .orElseGet(() -> unknown("Not known: what is cut. Write the film's cut, of two looks or more."));
    }

    private WantAnswer flashSafe(Timeline timeline) {
        FlashCount count = new FlashCount(timeline.rate(), CutLooks.of(timeline));
        boolean fails = count.margin() < 0;
        Verdict verdict =
                fails ? Verdict.FAILS : count.findTight().isPresent() ? Verdict.TIGHT : Verdict.NO_OBJECTION_FOUND;
        return found(
                verdict,
                count.margin(),
                List.of(where(timeline) + count.standing(), FlashCount.CAUTION),
                verdict == Verdict.NO_OBJECTION_FOUND ? List.of() : count.listAttempts());
    }

    private static double marginOf(WantAnswer answer) {
        return answer.margin() instanceof WantAnswer.Margin.Of(double value, String _) ? value : 0;
    }

    private WantAnswer onBeat() {
        Optional<Beats> beats = plan.film().findBeats();
        List<Timeline> all = Timeline.listAll(plan);
        if (beats.isEmpty() || all.isEmpty()) {
            return unknown(
                    beats.isEmpty()
                            ? "Not known: the beats. Write the music's tempo: film: {tempo: 120 bpm}."
                            : "Not known: what is cut. Write the film's cut.");
        }
        return all.stream()
                .map(timeline -> onBeat(timeline, beats.get()))
                .min(Comparator.comparing(WantAnswer::verdict).thenComparingDouble(FilmCuts::marginOf))
                .orElseThrow();
    }

    /// One cut and the beat nearest to it.
    private record Missed(Timeline.Entry entry, long beat, long frame) {
        long off() {
            return entry.first() - frame;
        }
    }

    private WantAnswer onBeat(Timeline timeline, Beats beats) {
        long within = line.written()
                .findQuantity("within")
                .map(Quantity::si)
                .map(frames -> (long) Math.floor(frames))
                .orElse(0L);
        List<Missed> all = timeline.entries().stream()
                .skip(1)
                .map(entry -> missed(entry, beats))
                .toList();
        List<Missed> off = all.stream()
                .filter(missed -> Math.abs(missed.off()) > within)
                .sorted(Comparator.comparingLong((Missed missed) -> -Math.abs(missed.off())))
                .toList();
        long most =
                all.stream().mapToLong(missed -> Math.abs(missed.off())).max().orElse(0);
        List<String> because = new ArrayList<>();
        List<String> attempts = new ArrayList<>();
        if (off.isEmpty()) {
            because.add(where(timeline)
                    + (all.isEmpty()
                            ? "There is no cut."
                            : "All cuts, " + all.size() + ", are "
                                    + (most == 0 ? "on a beat." : "at most " + counted(most) + " off a beat.")));
        } else {
            because.add(where(timeline) + off.size() + " of " + all.size() + " cuts are off the beat; worst is that to "
                    + sentence(off.getFirst()) + ".");
            off.stream().limit(3).map(FilmCuts::attempt).forEach(attempts::add);
        }
        return found(off.isEmpty() ? Verdict.HOLDS : Verdict.FAILS, within - most, because, attempts);
    }

    /// The nearest beat from beat 1 on, the earlier one of two as near.
    private static Missed missed(Timeline.Entry entry, Beats beats) {
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

    private static String attempt(Missed missed) {
        return "Begin " + missed.entry().cut().shot().name() + " at frame " + missed.frame() + ", beat "
                + (missed.beat() + 1) + ": the entries before it have to be " + counted(Math.abs(missed.off()))
                + (missed.off() > 0 ? " shorter." : " longer.");
    }

    private static String counted(long frames) {
        return frames + (frames == 1 ? " frame" : " frames");
    }
}
