package plumeline.cli.lesson;

import java.io.IOException;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import plumeline.desk.Arguments;
import plumeline.desk.Command;
import plumeline.desk.Console;
import plumeline.desk.LessonFile;
import plumeline.desk.Outcome;
import plumeline.desk.PlainFile;
import plumeline.desk.PlanFile;
import plumeline.desk.Refusal;
import plumeline.desk.Usage;
import plumeline.lesson.FarOff;
import plumeline.lesson.Lesson;
import plumeline.lesson.Lessons;
import plumeline.lesson.LessonsReading;
import plumeline.plan.Plan;
import plumeline.plan.Plans;
import plumeline.text.Problem;

/// `lesson add|list|forget PLAN`: what was measured on the set, in a file beside the plan, and what it teaches.
public final class LessonCommand implements Command {
    private static final List<String> VERBS = List.of("add", "list", "forget");

    /// A new one, which has done nothing yet.
    public LessonCommand() {}

    @Override
    public Usage usage() {
        List<Usage.Option> options = new ArrayList<>(LessonOptions.OF_A_TAKE);
        options.addAll(LessonOptions.OF_THE_KIT);
        return new Usage(
                "lesson",
                "Notes what was measured (add), tells what it teaches (list), takes one out (forget PLAN N).",
                "add|list|forget PLAN [N]",
                2,
                3,
                options,
                List.of(
                        "lesson add film.yaml --shot plume --front 0.40 s at 70 mm --front 1.90 s at 188 mm"
                                + " --width 38 mm at 120 mm",
                        "lesson add film.yaml --shot plume --take 2 --volume 4 ml"
                                + " --front \"0.40 s ± 0.02 s at 70 mm ± 3 mm\"",
                        "lesson add film.yaml --lux key 1450 lx at 1 m --focal fifty 48.6 mm --speed slider 74 mm/s"
                                + " --reset plume 32 min",
                        "lesson add film.yaml --lux-at reveal first label key 2300 lx",
                        "lesson list film.yaml",
                        "lesson forget film.yaml 2"));
    }

    @Override
    public Outcome run(Arguments given, Console console) throws Refusal, IOException {
        String verb = given.plain().getFirst();
        String name = given.plain().get(1);
        if (!VERBS.contains(verb)) {
            throw new Refusal(
                    "lesson can't " + verb + "; it can " + String.join(", ", VERBS),
                    Refusal.attempt("lesson ", verb, VERBS, "Type: plumeline help lesson"));
        }
        if (name.equals("-")) {
            throw new Refusal("lessons lie beside the plan's file; standard input has none", "Name the plan's file.");
        }
        checkSuits(verb, given);
        Plans.Reading reading = PlanFile.read(PlainFile.read(name, console));
        if (reading.plan().isEmpty()) {
            return tell(reading.problems(), console);
        }
        Plan plan = reading.plan().get();
        return verb.equals("list")
                ? list(name, plan, console)
                : LessonFile.alone(
                        name,
                        () -> verb.equals("add") ? add(name, plan, given, console) : forget(name, given, console));
    }

    private static void checkSuits(String verb, Arguments given) throws Refusal {
        boolean isForget = verb.equals("forget");
        if (isForget != (given.plain().size() == 3)) {
            throw new Refusal(
                    isForget
                            ? "lesson forget needs PLAN N"
                            : "lesson " + verb + " was given too much: "
                                    + given.plain().get(2),
                    isForget
                            ? "See the numbers: plumeline lesson list "
                                    + given.plain().get(1)
                            : "Type: plumeline lesson " + verb + " "
                                    + given.plain().get(1));
        }
        if (!verb.equals("add") && !given.options().isEmpty()) {
            throw new Refusal(
                    "lesson " + verb + " has no option "
                            + given.options().keySet().iterator().next(),
                    "Leave it out.");
        }
    }

    private static Outcome tell(List<Problem> problems, Console console) {
        problems.forEach(problem -> console.say(problem.toText()));
        console.say((problems.size() == 1 ? "1 problem" : problems.size() + " problems") + "; nothing was changed");
        return Outcome.REFUSED;
    }

    private static Outcome add(String name, Plan plan, Arguments given, Console console) throws Refusal, IOException {
        LessonsReading reading = LessonFile.read(name, console);
        if (reading.lessons().isEmpty()) {
            return tell(reading.problems(), console);
        }
        Lessons before = reading.lessons().get();
        Plans.Reading planned = before.applyTo(plan);
        if (planned.plan().isEmpty()) {
            return tell(planned.problems(), console);
        }
        String today = LocalDate.now(ZoneId.systemDefault()).toString();
        List<Lesson> added = new LessonOptions(plan, planned.plan().get(), before, given, today).list();
        Lessons after = before;
        for (Lesson lesson : added) {
            refuseProblems(Lessons.listProblems(lesson), given);
            after = after.with(lesson, LessonFile.fileName(name));
        }
        Plans.Reading measured = after.applyTo(plan);
        if (measured.plan().isEmpty()) {
            refuseProblems(measured.problems(), given);
        }
        LessonFile.write(name, before, after);
        LessonText text = new LessonText(measured.plan().orElseThrow(), after);
        StringBuilder looks = new StringBuilder();
        for (int i = 0; i < added.size(); i++) {
            int number = before.list().size() + i + 1;
            FarOff.find(added.get(i).measured(), plan)
                    .ifPresent(look -> looks.append(look)
                            .append(" Take it out: plumeline lesson forget ")
                            .append(name)
                            .append(' ')
                            .append(number)
                            .append('\n'));
        }
        after.listLooks(plan).stream()
                .filter(look -> !before.listLooks(plan).contains(look))
                .forEach(look -> looks.append(look).append('\n'));
        console.answer(text.added(before.list().size()) + looks);
        return Outcome.ANSWERED;
    }

    /// What was typed has no place in a file yet: only what is wrong is said.
    private static void refuseProblems(List<Problem> problems, Arguments given) throws Refusal {
        if (!problems.isEmpty()) {
            Problem first = problems.getFirst();
            String field =
                    first.field().replaceFirst("^measured\\[[0-9]+]\\.", "").replaceAll("\\[[0-9]+]", "");
            throw new Refusal(
                    (given.has("--" + field) ? "--" + field : field) + " is " + first.given() + "; must be "
                            + first.allowed() + "; nothing was noted",
                    first.attempt());
        }
    }

    private static Outcome list(String name, Plan plan, Console console) throws Refusal, IOException {
        LessonsReading reading = LessonFile.read(name, console);
        if (reading.lessons().isEmpty()) {
            return tell(reading.problems(), console);
        }
        Lessons lessons = reading.lessons().get();
        Plans.Reading measured = lessons.applyTo(plan);
        if (measured.plan().isEmpty()) {
            console.answer(LessonText.numbered(lessons));
            return tell(measured.problems(), console);
        }
        StringBuilder looks = new StringBuilder();
        lessons.listLooks(plan).forEach(look -> looks.append(look).append('\n'));
        console.answer(new LessonText(measured.plan().get(), lessons).listed() + looks);
        return Outcome.ANSWERED;
    }

    private static Outcome forget(String name, Arguments given, Console console) throws Refusal, IOException {
        LessonsReading reading = LessonFile.read(name, console);
        if (reading.lessons().isEmpty()) {
            return tell(reading.problems(), console);
        }
        Lessons before = reading.lessons().get();
        int count = before.list().size();
        String number = given.plain().get(2);
        int n = number.matches("[0-9]{1,6}") ? Integer.parseInt(number) : 0;
        if (n < 1 || n > count) {
            throw new Refusal(
                    "there is no lesson " + number + "; "
                            + (count == 0 ? "none is noted" : "they are numbered 1 to " + count),
                    "See them: plumeline lesson list " + name);
        }
        Lessons after = before.without(n, LessonFile.fileName(name));
        LessonFile.write(name, before, after);
        String moved = n < count ? "; those behind it move up by one" : "";
        console.answer("Forgot " + n + ": " + LessonText.line(before.list().get(n - 1)) + moved + "\n");
        return Outcome.ANSWERED;
    }

    @Override
    public List<Rehearsal> rehearsals() {
        return Stream.of("list", "add")
                .map(verb -> new Rehearsal(
                        verb.equals("list")
                                ? List.of(verb, Rehearsal.FILE)
                                : List.of(verb, Rehearsal.FILE, "--shot", "plume", "--front", "0.40 s at 70 mm"),
                        PlanFile.example()))
                .toList();
    }
}
