package plumeline.sheet;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import plumeline.draw.LeewayText;
import plumeline.plan.Plan;
import plumeline.plan.Shot;
import plumeline.plan.WantLine;
import plumeline.search.Leeway;
import plumeline.solve.MarkAnswer;
import plumeline.solve.ShotAnswer;
import plumeline.solve.Verdict;
import plumeline.solve.WantAnswer;

/// Which wants of a shot stand nearest to failing: those that fail, then by how many placing errors the mark that ends
/// them may be off, then those of which nothing is known.
final class Standing {
    /// A want and the mark that ends it first.
    ///
    /// @param answer the finding
    /// @param line the want as written
    /// @param errors least leeway over placing error; 0 where it fails, infinite where no mark ends it
    /// @param words which mark ends it and when, or why it is where it is
    record Ranked(WantAnswer answer, WantLine line, double errors, String words) {}

    private final List<Ranked> ranked = new ArrayList<>();

    private Standing(Plan plan, ShotAnswer shot) {
        LeewayText text = new LeewayText(plan.film().papersOrDefault());
        Map<String, WantLine> lines = lines(plan, shot);
        List<WantAnswer> all = new ArrayList<>(shot.wants());
        all.addAll(shot.filmWants());
        for (WantAnswer answer : all) {
            WantLine line = lines.get(answer.id());
            if (line != null) {
                ranked.add(rank(answer, line, shot, text));
            }
        }
        ranked.sort(Comparator.comparingInt((Ranked one) -> order(one.answer().verdict()))
                .thenComparing(one -> !one.line().word().equals("tank_carries")
                        || one.answer().verdict() != Verdict.FAILS)
                .thenComparingDouble(Ranked::errors));
    }

    static Standing of(Plan plan, ShotAnswer shot) {
        return new Standing(plan, shot);
    }

    static Map<String, WantLine> lines(Plan plan, ShotAnswer shot) {
        Map<String, WantLine> lines = new LinkedHashMap<>();
        shot.posed().stages().getFirst().stage().shot().wants().forEach(line -> lines.put(line.id(), line));
        plan.findShot(shot.shot()).ifPresent(found -> found.wants().forEach(line -> lines.put(line.id(), line)));
        plan.wants().forEach(line -> lines.put(line.id(), line));
        return lines;
    }

    private static int order(Verdict verdict) {
        return switch (verdict) {
            case FAILS -> 0;
            case TIGHT, NO_OBJECTION_FOUND, HOLDS -> 1;
            case UNKNOWN -> 2;
        };
    }

    /// What a crew checks first: what fails, what a few placing errors end, what isn't known; then the rest.
    private static int danger(Ranked one) {
        return switch (one.answer().verdict()) {
            case FAILS -> 0;
            case TIGHT -> 1;
            case NO_OBJECTION_FOUND, HOLDS -> one.errors() < LeewaySentence.LOOSE ? 1 : 3;
            case UNKNOWN -> 2;
        };
    }

    private static Ranked rank(WantAnswer answer, WantLine line, ShotAnswer shot, LeewayText text) {
        if (answer.verdict() == Verdict.FAILS) {
            return new Ranked(answer, line, 0, "It fails as the marks stand.");
        }
        double least = Double.POSITIVE_INFINITY;
        String words = answer.verdict() == Verdict.UNKNOWN
                ? "Unknown: " + String.join(" ", answer.because())
                : "No single mark ends it within reach.";
        Shot stage = shot.posed().stages().getFirst().stage().shot();
        for (MarkAnswer mark : shot.marks()) {
            for (LeewayText.Way way : LeewayText.Way.values()) {
                boolean isPlus = way == LeewayText.Way.PLUS;
                Leeway.Side side = way.of(mark.leeway());
                double errors = side.distance() / mark.placingErrorSi();
                if ((isPlus ? mark.ends().plus() : mark.ends().minus()).equals(answer.id())
                        && mark.placingErrorSi() > 0
                        && errors < least
                        && mark.setting() instanceof MarkAnswer.Setting.At at
                        && text.findStop(mark, way, shot).isEmpty()) {
                    least = errors;
                    words = "Least leeway: " + mark.mark().path() + " "
                            + LeewaySentence.phrase(text, stage, mark, at.si(), way) + handPlaces(mark, text)
                            + ".";
                }
            }
        }
        return new Ranked(answer, line, least, words);
    }

    /// How near a hand comes; a stop is set by its own figure.
    private static String handPlaces(MarkAnswer mark, LeewayText text) {
        return isFNumber(mark) ? "" : "; a hand places it to " + text.placingError(mark);
    }

    private static boolean isFNumber(MarkAnswer mark) {
        return mark.mark().path().equals("camera.f_number");
    }

    /// The three to check first.
    List<Ranked> firstThree() {
        return ranked.stream()
                .sorted(Comparator.comparingInt(Standing::danger))
                .limit(3)
                .toList();
    }

    /// A want by its id and its word: `reveal.2 (shown)`. None is called safe.
    private static String named(Ranked one) {
        String word = one.line().word();
        return one.answer().id() + " (" + (word.equals("flash_safe") ? "flashes" : word.replace('_', ' ')) + ")";
    }

    private static String inPass(Ranked one) {
        return one.answer().pass().isEmpty() ? "" : " in pass " + one.answer().pass();
    }

    /// What limits the shot, the film's own wants counted too: how the worst of its wants stands, by which finding, and
    /// what isn't known.
    ///
    /// @param verdict the worst verdict
    /// @param sentence why, and by which mark
    record Limiting(Verdict verdict, String sentence) {}

    /// The pass in which the want that stands nearest to failing does so; empty where it is none's.
    String limitingPass() {
        return ranked.isEmpty() ? "" : ranked.getFirst().answer().pass();
    }

    Limiting limiting() {
        String names = ranked.stream()
                .filter(one -> one.answer().verdict() == Verdict.UNKNOWN)
                .map(Standing::named)
                .collect(Collectors.joining(", "));
        String unknown = names.isEmpty() ? "" : " Not known: " + names + ".";
        if (ranked.isEmpty()) {
            return new Limiting(Verdict.UNKNOWN, "No want is written for this shot.");
        }
        Ranked first = ranked.getFirst();
        String id = named(first) + inPass(first) + ": ";
        return switch (first.answer().verdict()) {
            case FAILS -> {
                String because = String.join(" ", WantsPart.because(first.answer()));
                yield new Limiting(Verdict.FAILS, id + LeewaySentence.sentence(because) + unknown);
            }
            case TIGHT, NO_OBJECTION_FOUND, HOLDS ->
                names.isEmpty()
                        ? new Limiting(first.answer().verdict(), id + first.words())
                        : new Limiting(Verdict.UNKNOWN, unknown.strip() + " Of the rest, " + id + first.words());
            case UNKNOWN -> new Limiting(Verdict.UNKNOWN, "None of its wants is computed." + unknown);
        };
    }
}
