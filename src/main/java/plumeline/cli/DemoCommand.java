package plumeline.cli;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import plumeline.cli.picture.PaperPictures;
import plumeline.desk.Arguments;
import plumeline.desk.Command;
import plumeline.desk.Console;
import plumeline.desk.Outcome;
import plumeline.desk.PlainFile;
import plumeline.desk.PlanFile;
import plumeline.desk.Refusal;
import plumeline.desk.Usage;
import plumeline.plan.Plan;
import plumeline.plan.Plans;
import plumeline.sheet.Changes;
import plumeline.sheet.Pictures;
import plumeline.solve.FilmAnswer;
import plumeline.solve.ShotAnswer;
import plumeline.solve.Solve;
import plumeline.solve.Verdict;
import plumeline.solve.WantAnswer;

/// `demo`: the main job once, on the example that comes with the program: plan, marks, papers, in the folder `demo`.
final class DemoCommand implements Command {
    private static final String PLAN = "fernhollow.yaml";

    @Override
    public Usage usage() {
        return new Usage(
                "demo",
                "Copies the example into ./demo, solves it and writes its papers.",
                "",
                0,
                0,
                List.of(Usage.valued("--to", "DIR", "Uses this folder instead of demo.")));
    }

    @Override
    public Outcome run(Arguments given, Console console) throws Refusal, IOException {
        Path folder = PlainFile.toPath(given.findValue("--to").orElse("demo"));
        Path file = folder.resolve(PLAN);
        if (Files.exists(file)) {
            console.say("plumeline: " + file + " is there already: used as it is");
        } else {
            PlainFile.write(file, PlanFile.example().getBytes(UTF_8));
            console.say("plumeline: example copied to " + file);
        }
        Plans.Reading reading = PlanFile.readMeasured(PlainFile.read(file.toString(), console), console);
        if (reading.plan().isEmpty()) {
            return PlanFile.tellProblems(reading, console);
        }
        Plan plan = reading.plan().get();
        console.say("plumeline: solving " + plan.shots().size() + " shots");
        FilmAnswer answer = Solve.film(plan);
        Pictures pictures = PaperPictures.of(answer, file.toString(), console);
        PapersCommand.write(answer, Changes.none(), pictures, folder, console);
        console.answer(summary(answer, file));
        return Outcome.ANSWERED;
    }

    /// Ten lines for the example: the film, a line a shot, a line a want of the film, where to look and what next.
    static String summary(FilmAnswer answer, Path file) {
        List<String> lines = new ArrayList<>();
        lines.add(answer.plan().film().title().orElse("The film") + ": "
                + answer.verdict().word());
        for (ShotAnswer shot : answer.shots()) {
            lines.add("  " + Usage.column(shot.shot(), 9)
                    + Usage.column(shot.verdict().word(), 9) + told(shot));
        }
        for (WantAnswer want : answer.wants()) {
            lines.add("  " + Usage.column(want.id(), 9)
                    + Usage.column(want.verdict().word(), 9) + want.want() + ": "
                    + String.join(" ", want.because()));
        }
        lines.add("Papers: " + file.resolveSibling(PapersCommand.PAGE) + " to look at, "
                + file.resolveSibling(PapersCommand.PRINT) + " to print, " + file.resolveSibling(PapersCommand.MARKS));
        lines.add("All findings: ./plumeline solve " + file);
        lines.add("Next: change " + file + ", then ./plumeline papers " + file);
        return String.join("\n", lines) + "\n";
    }

    /// How many wants stand, and how far everything may be off at once.
    private static String told(ShotAnswer shot) {
        long stand = shot.wants().stream()
                .filter(want -> want.verdict().compareTo(Verdict.TIGHT) >= 0)
                .count();
        return stand + " of " + shot.wants().size() + " wants hold; "
                + shot.marks().size() + " marks" + solved(shot);
    }

    private static String solved(ShotAnswer shot) {
        List<String> found = shot.marks().stream()
                .filter(mark -> mark.mark().isFree())
                .filter(mark -> mark.setting() instanceof plumeline.solve.MarkAnswer.Setting.At)
                .map(mark -> mark.mark().path())
                .toList();
        return found.isEmpty() ? "" : ", " + found.size() + " found: " + String.join(", ", found);
    }

    /// As for `papers`.
    @Override
    public boolean needsShutdown() {
        return true;
    }

    @Override
    public List<Rehearsal> rehearsals() {
        return List.of(new Rehearsal(List.of("--to", Rehearsal.FOLDER), ""));
    }
}
