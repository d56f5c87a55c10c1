package plumeline.cli;

import java.io.IOException;
import java.util.List;
import plumeline.desk.Arguments;
import plumeline.desk.Command;
import plumeline.desk.Console;
import plumeline.desk.Outcome;
import plumeline.desk.PlainFile;
import plumeline.desk.PlanFile;
import plumeline.desk.Refusal;
import plumeline.desk.Usage;
import plumeline.plan.Plans;
import plumeline.solve.FilmAnswer;
import plumeline.solve.FilmJson;
import plumeline.solve.Verdict;

/// `solve PLAN`: sets the free marks of every shot and says how each want stands.
final class SolveCommand implements Command {
    @Override
    public Usage usage() {
        return new Usage(
                "solve",
                "Sets the free marks and says how each want stands.",
                "PLAN",
                1,
                1,
                List.of(
                        Usage.flag("--json", "Prints the findings as JSON."),
                        Usage.flag("--strict", "Ends with status 3 if a want fails or is unknown."),
                        Usage.valued("--shot", "NAME", "Answers this shot only.")));
    }

    @Override
    public Outcome run(Arguments given, Console console) throws Refusal, IOException {
        Plans.Reading reading =
                PlanFile.readMeasured(PlainFile.read(given.plain().getFirst(), console), console);
        if (reading.plan().isEmpty()) {
            if (given.has("--json")) {
                console.answer(FilmJson.ofProblems(reading.problems()) + "\n");
            }
            return PlanFile.tellProblems(reading, console);
        }
        var plan = reading.plan().get();
        FilmAnswer answer =
                PlanFile.solve(plan, PlanFile.shots(plan, given), given.plain().getFirst(), console);
        console.answer(given.has("--json") ? FilmJson.of(answer) + "\n" : FilmText.of(answer));
        boolean stands = answer.verdict().compareTo(Verdict.TIGHT) >= 0;
        return given.has("--strict") && !stands ? Outcome.NOT_HELD : Outcome.ANSWERED;
    }

    @Override
    public List<Rehearsal> rehearsals() {
        return List.of(
                new Rehearsal(List.of(Rehearsal.FILE, "--shot", "plume"), PlanFile.example()),
                new Rehearsal(List.of("-", "--json", "--shot", "plume"), PlanFile.example()));
    }
}
