package plumeline.cli.lesson;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.stream.Collectors;
import plumeline.desk.Usage;
import plumeline.ink.Descent;
import plumeline.ink.Estimate;
import plumeline.lesson.Change;
import plumeline.lesson.InkLesson;
import plumeline.lesson.Lesson;
import plumeline.lesson.Lessons;
import plumeline.lesson.NextTry;
import plumeline.lesson.Target;
import plumeline.plan.Plan;
import plumeline.plan.Release;
import plumeline.plan.Shot;
import plumeline.quantity.Print;
import plumeline.stage.Stage;
import plumeline.take.Conditions;
import plumeline.take.Measured;
import plumeline.take.Take;

/// What was noted and what it teaches, as plain text.
final class LessonText {
    /// Past this factor to either side, as a logarithm, the published ranges end.
    private static final double FAR_FROM_LAWS = 0.7;

    private final Plan plan;
    private final Lessons lessons;
    private final Print print;
    private final StringBuilder text = new StringBuilder();

    /// @param plan the plan with its lessons in it
    LessonText(Plan plan, Lessons lessons) {
        this.plan = plan;
        this.lessons = lessons;
        print = new Print(plan.film().papersOrDefault());
    }

    private static String takes(int count) {
        return count == 1 ? "1 take" : count + " takes";
    }

    /// A lesson in a line.
    static String line(Lesson lesson) {
        String said = switch (lesson.measured()) {
            case Measured.OfTake(String shot, int number, String ink, Take take) ->
                "take " + number + " of " + shot + ", " + ink + conditions(take.conditions()) + readings(take);
            case Measured.Lux lux -> lux.light() + " gives " + lux.gives().toText();
            case Measured.LuxAt at ->
                at.reads().toText() + " on " + at.at().thing() + "'s " + at.at().part() + " in "
                        + at.at().shot()
                        + " with "
                        + at.lamps().stream().map(Measured.LuxAt.Gave::light).collect(Collectors.joining(", "))
                        + at.others()
                                .map(lux -> " on beside others that gave " + lux.toText())
                                .orElse(" on")
                        + ", where " + at.computed().toText() + " were computed";
            case Measured.FocalLength lens ->
                lens.lens() + " has a focal length of " + lens.length().toText();
            case Measured.Speed speed ->
                speed.machine() + " goes " + speed.speed().toText();
            case Measured.Reset reset ->
                reset.shot() + " is reset in " + reset.time().toText();
            case Measured.Strength strength ->
                strength.ink() + " has a strength of " + strength.absorbance().toText();
        };
        String from = String.join(
                "; ",
                List.of(lesson.noted(), lesson.how()).stream()
                        .filter(each -> !each.isEmpty())
                        .toList());
        return from.isEmpty() ? said : said + " (" + from + ")";
    }

    private static String conditions(Conditions conditions) {
        return conditions instanceof Conditions.Told told ? " " + told.volume().valueText() : "";
    }

    private static String readings(Take take) {
        List<String> readings = new ArrayList<>();
        take.fronts()
                .forEach(front -> readings.add(
                        front.time().toText() + " at " + front.depth().toText()));
        take.widths()
                .forEach(width -> readings.add(
                        width.width().toText() + " wide at " + width.depth().toText()));
        return ": " + String.join(", ", readings);
    }

    /// Every lesson with its number.
    static String numbered(Lessons lessons) {
        if (lessons.list().isEmpty()) {
            return "No lesson is noted in " + lessons.file() + ".\n";
        }
        StringBuilder numbered = new StringBuilder();
        for (int i = 0; i < lessons.list().size(); i++) {
            numbered.append(Usage.column(String.valueOf(i + 1), 4))
                    .append(line(lessons.list().get(i)));
            numbered.append('\n');
        }
        return numbered.toString();
    }

    /// All lessons, and what they teach of every shot with ink.
    String listed() {
        text.append(numbered(lessons));
        plan.shots().forEach(this::shot);
        return text.toString();
    }

    /// The lessons from an index on, and what they teach.
    String added(int from) {
        var shots = new LinkedHashSet<String>();
        for (int i = from; i < lessons.list().size(); i++) {
            Lesson lesson = lessons.list().get(i);
            text.append("Noted as ")
                    .append(i + 1)
                    .append(" in ")
                    .append(lessons.file())
                    .append(": ");
            text.append(line(lesson)).append('\n');
            if (lesson.measured() instanceof Measured.OfTake take) {
                shots.add(take.shot());
            }
        }
        plan.shots().stream().filter(shot -> shots.contains(shot.name())).forEach(this::shot);
        return text.toString();
    }

    private void shot(Shot shot) {
        if (!(shot.findRelease().orElse(null) instanceof Release.OfInk)) {
            return;
        }
        switch (NextTry.of(shot)) {
            case NextTry.Outcome.Missing(List<String> what) ->
                text.append(shot.name())
                        .append("'s next take isn't known; missing: ")
                        .append(String.join("; ", what))
                        .append('\n');
            case NextTry.Outcome.Known(NextTry next) -> {
                switch (next.basis()) {
                    case NextTry.Basis.Laws laws -> learnt(next, laws);
                    case NextTry.Basis.Readings readings -> readings(next, readings.lesson());
                }
                next(shot, next);
            }
        }
    }

    private void row(String name, String value) {
        text.append("  ").append(Usage.column(name, 14)).append(value).append('\n');
    }

    private void learnt(NextTry next, NextTry.Basis.Laws laws) {
        InkLesson.ByLaws lesson = laws.lesson();
        Descent descent = laws.descent();
        double depth = next.target().depthMetres();
        int takes = lesson.takes().size();
        text.append(next.ink())
                .append(takes == 0 ? ", from the laws alone" : ", from " + takes(takes))
                .append(" (ranges hold four times in five)\n");
        Estimate pace = lesson.learnt().pace(descent, depth);
        row("pace", number(pace, 2, "") + " times the laws'");
        if (takes > 0 && Math.abs(Math.log(pace.value())) > FAR_FROM_LAWS) {
            row("look", "far from the laws: see that volume and density are right and depths count from the surface");
        }
        switch (descent.regime(depth)) {
            case PUFF ->
                row(
                        "strength",
                        number(
                                lesson.learnt()
                                        .strengthMetres2PerSecond(descent.release())
                                        .times(1e4),
                                0,
                                " cm²/s"));
            case STREAM, LAMINAR -> row("comes as a", descent.regime(depth).word());
        }
        boolean isWidthRead =
                lesson.takes().stream().anyMatch(take -> !take.widths().isEmpty());
        Estimate growth = lesson.learnt().growth(descent.regime(depth));
        row(
                "growth",
                isWidthRead
                        ? number(growth.times(100), 0, " mm") + " of half-width in 100 mm of way"
                        : "not known: read a width in the next take");
        row("take to take", "up to " + Print.number(lesson.learnt().takeRatio(), 1) + " times as long or as short");
        laws.assumed().forEach(assumed -> row("assumed", assumed));
    }

    private void readings(NextTry next, InkLesson.ByReadings lesson) {
        text.append(next.ink()).append(", from ").append(lesson.readings()).append(" readings of its front alone\n");
        row(
                "front",
                "z = " + print.length(lesson.fit().factor()) + " · (t/s)^"
                        + Print.number(lesson.fit().exponent(), 2));
    }

    private static String number(Estimate estimate, int places, String unit) {
        return Print.number(estimate.value(), places) + unit + " (" + Print.number(estimate.low(), places) + " to "
                + Print.number(estimate.high(), places) + ")";
    }

    private void next(Shot shot, NextTry next) {
        Target target = next.target();
        Estimate seconds = next.seconds();
        text.append("Next take of ")
                .append(shot.name())
                .append(", as planned: at ")
                .append(target.place())
                .append(" (");
        text.append(print.length(target.depthMetres())).append(" deep) after ").append(seconds(seconds.value()));
        text.append(", four times in five between ").append(seconds(seconds.low()));
        text.append(" and ").append(seconds(seconds.high())).append('\n');
        if (target.time() instanceof Target.Time.At at) {
            advice(next, at, Stage.of(plan, shot).releaseSeconds());
        }
    }

    /// A plan's release has no start before its shot.
    private static String beforeShot(double startSeconds) {
        return startSeconds < -0.005
                ? "; that is " + seconds(-startSeconds) + " before the shot begins: let it begin so much later"
                : "";
    }

    private void advice(NextTry next, Target.Time.At at, double startSeconds) {
        String wanted = seconds(at.seconds()) + " ± " + seconds(at.withinSeconds());
        switch (next.advice()) {
            case NextTry.Advice.NoWish() -> {}
            case NextTry.Advice.Keep(double odds) -> {
                row("wanted", wanted + ": " + Print.takesInTen(odds));
                row("change", "nothing: no single change helps enough to spend a take on it");
            }
            case NextTry.Advice.Untold(double odds, List<String> missing) -> {
                row("wanted", wanted + ": " + Print.takesInTen(odds));
                row(
                        "change",
                        missing.isEmpty()
                                ? "not known: what was let go when the front was read isn't told; note a take"
                                : "not known; missing: " + String.join("; ", missing));
            }
            case NextTry.Advice.Do(double odds, Change change) -> {
                row("wanted", wanted + ": " + Print.takesInTen(odds));
                row("change", words(change) + ", nothing else: " + more(odds, change.odds()));
            }
        }
        double later = Math.rint((at.seconds() - next.seconds().value()) * 100) / 100;
        if (Math.abs(later) > at.withinSeconds() / 4) {
            row(
                    "or",
                    "let go " + seconds(Math.abs(later)) + (later > 0 ? " later" : " earlier")
                            + ", all else the same, for the same instant of the shot: "
                            + Print.takesInTen(next.oddsLater(later, at)) + beforeShot(startSeconds + later));
        }
    }

    /// How many takes a change brings, which by tenths may be as many as before.
    private static String more(double before, double after) {
        String takes = Print.takesInTen(after);
        return takes.equals(Print.takesInTen(before)) ? takes + " still, but some more" : takes;
    }

    /// What is changed, by its word in the lessons' text; what it is then, and now.
    private String words(Change change) {
        return switch (change.what()) {
            case HEIGHT ->
                "nozzle's mouth " + print.length(Math.abs(change.to())) + side(change.to()) + " the surface instead of "
                        + print.length(Math.abs(change.from()))
                        + (change.from() * change.to() > 0 ? "" : side(change.from()) + " it");
            case VOLUME -> "volume " + millilitres(change.to()) + " instead of " + millilitres(change.from());
            case SQUEEZE -> "squeeze " + seconds(change.to()) + " instead of " + seconds(change.from());
            case SPEED -> "push " + speed(change.to()) + " instead of " + speed(change.from());
            case BORE -> "bore " + millimetres(change.to()) + " instead of " + millimetres(change.from());
        };
    }

    private static String side(double heightMetres) {
        return heightMetres >= 0 ? " over" : " under";
    }

    private static String millilitres(double metres3) {
        return Print.number(metres3 * 1e6, 1) + " ml";
    }

    private static String millimetres(double metres) {
        return Print.number(metres * 1e3, 1) + " mm";
    }

    private static String speed(double metresPerSecond) {
        return Print.number(metresPerSecond * 1e3, 0) + " mm/s";
    }

    private static String seconds(double seconds) {
        return Print.seconds(seconds, seconds < 1 ? 2 : 1);
    }
}
