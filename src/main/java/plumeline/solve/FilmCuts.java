package plumeline.solve;

import java.util.Comparator;
import java.util.List;
import plumeline.look.CutLooks;
import plumeline.look.FlashCount;
import plumeline.pace.PaceMeasures;
import plumeline.plan.Plan;
import plumeline.plan.WantLine;
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
        List<Timeline> all = Timeline.listAll(plan);
        if (all.stream().allMatch(timeline -> CutLooks.of(timeline).size() == 1) && !all.isEmpty()) {
            return new WantAnswer(
                    line.id(),
                    text(),
                    Verdict.NO_OBJECTION_FOUND,
                    new WantAnswer.Margin.None(),
                    List.of("One look throughout: no cut changes it.", FlashCount.CAUTION),
                    List.of(),
                    "");
        }
        return all.stream()
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
        return PaceMeasures.listOnBeat(line, plan).stream()
                .map(beat -> {
                    boolean fails = beat.margin() < 0;
                    return found(
                            fails ? Verdict.FAILS : Verdict.HOLDS,
                            beat.margin(),
                            List.of(beat.standing()),
                            beat.listAttempts());
                })
                .min(Comparator.comparing(WantAnswer::verdict).thenComparingDouble(FilmCuts::marginOf))
                .orElseGet(() -> unknown(PaceMeasures.NO_BEAT));
    }
}
