package plumeline.solve;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Predicate;
import plumeline.look.LookMeasures;
import plumeline.pace.PaceMeasures;
import plumeline.plan.Mark;
import plumeline.plan.Plan;
import plumeline.plan.Shot;
import plumeline.plan.WantLine;
import plumeline.quantity.Origin;
import plumeline.quantity.PaperUnit;
import plumeline.search.Axis;
import plumeline.search.Leeway;
import plumeline.search.Margins;
import plumeline.search.Search;
import plumeline.stage.StagedMark;
import plumeline.want.Moments;
import plumeline.want.Want;
import plumeline.want.Wants;

/// Solves one shot and answers its wants.
final class ShotSolver {
    private final Plan plan;
    private final Shot shot;
    private final List<WantLine> filmWants;
    private final Wants.Elsewhere elsewhere;
    private final PaperUnit papers;
    private final Words words;
    private final Recipes recipes;
    private final Axes axes;
    private Judged judged;
    private double[] si;
    private double[] parts;

    private ShotSolver(Plan plan, Shot shot, List<WantLine> filmWants, Wants.Elsewhere elsewhere) {
        this.plan = plan;
        this.shot = shot;
        this.filmWants = filmWants;
        this.elsewhere = elsewhere;
        this.papers = plan.film().papersOrDefault();
        this.words = new Words(papers);
        this.recipes = new Recipes(plan, shot, filmWants, elsewhere);
        this.judged = Judged.of(plan, shot, filmWants, elsewhere);
        this.axes = new Axes(judged.stage().marks());
        this.si = judged.stage().startValues();
        this.parts = new double[0];
    }

    static ShotAnswer solve(Plan plan, Shot shot, List<WantLine> filmWants, Wants.Elsewhere elsewhere) {
        return new ShotSolver(plan, shot, filmWants, elsewhere).answer();
    }

    private ShotAnswer answer() {
        settle();
        parts = judged.parts(si);
        Predicate<Judged.Line> holding = line -> line.isComputed() && isKnown(line) && least(line) >= 0;
        Tightness tightness = Tightness.of(judged, axes, si, parts);
        Margins margins = judged.margins(axes, judged.partsOf(holding));
        List<MarkAnswer> marks = markAnswers(margins, holding);
        List<WantAnswer> own = new ArrayList<>();
        List<WantAnswer> film = new ArrayList<>();
        Verdict verdict = Verdict.HOLDS;
        List<String> without = new ArrayList<>();
        for (Judged.Line line : judged.lines()) {
            WantAnswer answer = answer(line, tightness, marks);
            (line.ofFilm() ? film : own).add(answer);
            if (answer.verdict() == Verdict.FAILS) {
                without.add(line.id());
            }
            if (!line.ofFilm()) {
                verdict = verdict.worse(answer.verdict());
            }
        }
        double together = Search.together(axes.at(si), margins, axes.fromSi(si));
        return new ShotAnswer(
                shot.name(),
                verdict,
                own,
                film,
                marks,
                together,
                without,
                Notes.of(judged, si, papers, plan.film().rate()),
                new ShotAnswer.Posed(judged.runs(), Arrays.stream(si).boxed().toList()));
    }

    /// Finds the marks; where an instant between those looked at turns out worse, looks at it too and finds them again.
    private void settle() {
        Settling.Settled settled = Settling.of(judged, axes, si);
        Judged finer = judged.withWorstFrames(settled.si());
        if (finer != judged && axes.anyFree()) {
            double[] there = finer.parts(settled.si());
            boolean broken = finer.lines().stream()
                    .filter(line -> line.isComputed() && !settled.dropped().contains(line.id()))
                    .anyMatch(line -> line.parts().anyMatch(part -> there[part] < 0));
            if (broken) {
                si = Settling.of(finer, axes, settled.si()).si();
                judged = finer.withWorstFrames(si);
                return;
            }
        }
        si = settled.si();
        judged = finer;
    }

    /// Whether nothing is missing with the marks as they are.
    private boolean isKnown(Judged.Line line) {
        return line.instances().stream()
                .noneMatch(instance -> instance.want()
                        .findUnknown(judged.moments(instance.run().stage(), si))
                        .isPresent());
    }

    /// Those that measure something; all where none does.
    private List<Judged.Instance> telling(List<Judged.Instance> instances) {
        List<Judged.Instance> telling = instances.stream()
                .filter(instance ->
                        !instance.want().isIdle(judged.moments(instance.run().stage(), si)))
                .toList();
        return telling.isEmpty() ? instances : telling;
    }

    private double least(Judged.Line line) {
        return line.parts().mapToDouble(part -> parts[part]).min().orElse(Double.POSITIVE_INFINITY);
    }

    private WantAnswer answer(Judged.Line line, Tightness tightness, List<MarkAnswer> marks) {
        WantAnswer worst = null;
        for (Judged.Instance instance : telling(line.instances())) {
            WantAnswer answer = answer(line, instance, tightness, marks);
            if (worst == null || isWorse(answer, worst)) {
                worst = answer;
            }
        }
        return worst == null ? unknown(line, "", "No pass of that name.") : worst;
    }

    static boolean isWorse(WantAnswer one, WantAnswer other) {
        int verdicts = one.verdict().compareTo(other.verdict());
        return verdicts < 0
                || (verdicts == 0
                        && one.margin() instanceof WantAnswer.Margin.Of a
                        && other.margin() instanceof WantAnswer.Margin.Of b
                        && a.value() < b.value());
    }

    private WantAnswer answer(Judged.Line line, Judged.Instance instance, Tightness tightness, List<MarkAnswer> marks) {
        Want want = instance.want();
        String text = line.line().toText(papers);
        String pass = instance.run().pass();
        if (want.findUnknown().isPresent()) {
            return unknown(line, pass, want.findUnknown().get());
        }
        Moments moments = judged.moments(instance.run().stage(), si);
        double margin = want.margin(Arrays.copyOfRange(parts, instance.from(), instance.from() + instance.count()));
        WantAnswer.Margin figure =
                want.isMeasured(moments) ? new WantAnswer.Margin.Of(margin, want.unit()) : new WantAnswer.Margin.None();
        Optional<String> lack = want.findLack(moments);
        if (lack.isPresent()) {
            WantAnswer.Margin lacking = margin > 0 ? new WantAnswer.Margin.None() : figure;
            List<String> lacks = new ArrayList<>(List.of(lack.get()));
            want.findCaution(moments).ifPresent(lacks::add);
            return new WantAnswer(line.id(), text, Verdict.FAILS, lacking, lacks, List.of(), pass);
        }
        Optional<String> unknown = want.findUnknown(moments);
        if (unknown.isPresent()) {
            return unknown(line, pass, unknown.get());
        }
        List<String> because = new ArrayList<>();
        String standing = want.findStanding(moments, papers)
                .orElseGet(() -> words.standing(line.line().word(), margin, want.unit()));
        because.add(judged.withMoment(standing, instance, si));
        want.findCaution(moments).ifPresent(because::add);
        OptionalDouble over = want.findOverPupil(moments);
        over.ifPresent(rim -> because.add(words.overPupil(rim, want.unit())));
        List<String> attempts = List.of();
        Verdict verdict = want.isSafety() ? Verdict.NO_OBJECTION_FOUND : Verdict.HOLDS;
        Optional<String> tight = want.findTight(moments);
        if (margin < 0) {
            verdict = Verdict.FAILS;
            Remedies remedies = new Remedies(judged, axes, si, words);
            Optional<Remedies.Conflict> conflict = remedies.findConflict(line);
            conflict.ifPresent(found -> because.addAll(found.sentences()));
            attempts = new ArrayList<>(settings(line));
            if (attempts.isEmpty()) {
                attempts.addAll(want.listAttempts(moments));
            }
            attempts.addAll(remedies.attempts(line, conflict));
            attempts.addAll(recipes.attempts(line, judged, si));
        } else if (tightness.isTight(instance)) {
            verdict = Verdict.TIGHT;
            because.add(tightness.sentence(instance, marks, words));
            attempts = settings(line);
        } else if (tight.isPresent()) {
            verdict = Verdict.TIGHT;
            because.add(tight.get());
            attempts = new ArrayList<>(settings(line));
            if (want.isSafety()) {
                attempts.addAll(want.listAttempts(moments));
            }
        }
        return new WantAnswer(
                line.id(),
                text,
                verdict,
                figure,
                over.isPresent()
                        ? new WantAnswer.Margin.Of(over.getAsDouble(), want.unit())
                        : new WantAnswer.Margin.None(),
                because,
                attempts,
                pass);
    }

    /// What helps that is set on a device, each tried.
    private List<String> settings(Judged.Line line) {
        Otherwise otherwise = new Otherwise(plan, shot, filmWants, elsewhere, judged, si);
        if (PaceMeasures.isOne(line.line().word())) {
            return new PaceRemedies(otherwise, plan.film().rate()).attempts(line.line());
        }
        return LookMeasures.isOne(line.line().word())
                ? new LookRemedies(otherwise, plan.film().rate()).attempts(line.line())
                : new LightRemedies(otherwise, words).attempts(line.id());
    }

    private WantAnswer unknown(Judged.Line line, String pass, String why) {
        return new WantAnswer(
                line.id(),
                line.line().toText(papers),
                Verdict.UNKNOWN,
                new WantAnswer.Margin.None(),
                List.of(why),
                List.of(),
                pass);
    }

    private List<MarkAnswer> markAnswers(Margins margins, Predicate<Judged.Line> holding) {
        List<MarkAnswer> answers = new ArrayList<>();
        List<Axis> at = axes.at(si);
        double[] values = axes.fromSi(si);
        for (int i = 0; i < si.length; i++) {
            StagedMark mark = axes.marks().get(i);
            boolean open = mark.mark().isFree() && !bears(i);
            Leeway leeway = axes.toSi(i, si[i], Search.leeway(at, margins, values, i));
            MarkAnswer.Setting setting =
                    open ? new MarkAnswer.Setting.Open() : new MarkAnswer.Setting.At(si[i], origin(mark.mark()));
            answers.add(
                    new MarkAnswer(mark.mark(), setting, leeway, ends(i, leeway, holding), mark.placingErrorSi(si[i])));
        }
        return answers;
    }

    private static Origin origin(Mark mark) {
        return mark instanceof Mark.Fixed fixed ? fixed.quantity().origin() : Origin.SOLVED;
    }

    /// Whether any part that is computed changes with a mark.
    private boolean bears(int index) {
        StagedMark mark = axes.marks().get(index);
        double[] moved = si.clone();
        for (double share : new double[] {0.1, 0.4, 0.6, 0.9}) {
            moved[index] = mark.lowSi() + share * (mark.highSi() - mark.lowSi());
            double[] there = judged.parts(moved);
            for (int p = 0; p < parts.length; p++) {
                if (Math.abs(there[p] - parts[p]) > 1e-9) {
                    return true;
                }
            }
        }
        return false;
    }

    private MarkAnswer.Ends ends(int index, Leeway leeway, Predicate<Judged.Line> holding) {
        return new MarkAnswer.Ends(ender(index, leeway.minus(), -1, holding), ender(index, leeway.plus(), 1, holding));
    }

    private String ender(int index, Leeway.Side side, int way, Predicate<Judged.Line> holding) {
        if (side instanceof Leeway.Side.Ends(double distance)) {
            double[] moved = si.clone();
            double beyond = Math.max(distance * 2e-3, axes.marks().get(index).stepSi() * 0.02);
            moved[index] += way * (distance + beyond);
            double[] there = judged.parts(moved);
            double lowest = Double.POSITIVE_INFINITY;
            String ender = "";
            for (Judged.Line line : judged.lines()) {
                if (holding.test(line)) {
                    double least =
                            line.parts().mapToDouble(part -> there[part]).min().orElse(Double.POSITIVE_INFINITY);
                    if (least < lowest) {
                        lowest = least;
                        ender = line.id();
                    }
                }
            }
            return ender;
        }
        return "";
    }
}
