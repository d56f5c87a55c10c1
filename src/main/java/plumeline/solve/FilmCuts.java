package plumeline.solve;

import java.util.List;
import java.util.Optional;
import plumeline.look.FlashCount;
import plumeline.look.LookMeasures;
import plumeline.plan.Plan;
import plumeline.plan.WantLine;

/// What is wanted of all of a film's cuts together.
final class FilmCuts {
    private FilmCuts() {}

    /// Answers `flash_safe: cuts`.
    static WantAnswer answer(WantLine line, Plan plan) {
        String text = line.toText(plan.film().papersOrDefault());
        Optional<FlashCount> found = LookMeasures.findCuts(plan);
        if (found.isEmpty()) {
            return new WantAnswer(
                    line.id(),
                    text,
                    Verdict.UNKNOWN,
                    new WantAnswer.Margin.None(),
                    List.of("Not known: what is cut. Write the film's cut, of two looks or more."),
                    List.of(),
                    "");
        }
        FlashCount count = found.get();
        Optional<String> tight = count.findTight();
        boolean fails = count.margin() < 0;
        Verdict verdict = fails ? Verdict.FAILS : tight.isPresent() ? Verdict.TIGHT : Verdict.NO_OBJECTION_FOUND;
        return new WantAnswer(
                line.id(),
                text,
                verdict,
                new WantAnswer.Margin.Of((double) count.margin(), "frames"),
                List.of(count.standing(), FlashCount.CAUTION),
                verdict == Verdict.NO_OBJECTION_FOUND ? List.of() : count.listAttempts(),
                "");
    }
}
