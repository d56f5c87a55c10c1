package plumeline.cli;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import plumeline.flow.Grid;
import plumeline.plan.Plan;
import plumeline.plan.PlanReading;
import plumeline.plan.Shot;
import plumeline.plume.InkCourse;
import plumeline.plume.InkKey;
import plumeline.plume.InkReading;
import plumeline.plume.InkRecord;
import plumeline.plume.InkShot;
import plumeline.plume.InkShots;
import plumeline.plume.Viewing;
import plumeline.solve.MarkAnswer;
import plumeline.solve.ShotAnswer;
import plumeline.solve.Solve;
import plumeline.stage.Stage;

/// `ink PLAN SHOT`: follows a shot's ink through its tank several times and says when it is where.
final class InkCommand implements Command {
    /// A tenth of a gigabyte a run.
    private static final long MOST_CELLS = 8_000_000;

    @Override
    public Usage usage() {
        return new Usage(
                "ink",
                "Follows a shot's ink through its tank several times: when it is where, and what it veils.",
                "PLAN SHOT",
                2,
                2,
                List.of(
                        Usage.valued("--runs", "N", "Computes so many tries; else 5."),
                        Usage.valued(
                                "--until",
                                "TIME",
                                "Follows the ink so long from its release; else to the shot's last frame, and"
                                        + " for as long again at most where it isn't on the floor by then."),
                        Usage.valued("--cells", "LENGTH", "Cuts the water this finely; else 5 mm."),
                        Usage.valued("--seed", "N", "Takes other chance; else 1."),
                        Usage.valued("--threads", "N", "Works with so many threads; else with all. Changes no result."),
                        Usage.flag("--fresh", "Computes anew what was computed before."),
                        Usage.valued("--to", "DIR", "Keeps it in this folder; else in PLAN.ink, beside the plan."),
                        Usage.flag("--json", "Prints the answer as JSON.")));
    }

    /// A shot with its marks set.
    ///
    /// @param stage the shot
    /// @param valuesSi its marks' values
    /// @param open what is said of marks that nothing sets
    private record Marked(Stage stage, List<Double> valuesSi, List<String> open) {
        double[] values() {
            return valuesSi.stream().mapToDouble(Double::doubleValue).toArray();
        }
    }

    @Override
    public Outcome run(Arguments given, Console console) throws Refusal, IOException {
        String name = given.plain().getFirst();
        InkOptions options = InkOptions.read(given);
        PlanReading reading = PlanFile.read(PlainFile.read(name, console));
        if (reading.plan().isEmpty()) {
            return PlanFile.tellProblems(reading, console);
        }
        Plan plan = reading.plan().get();
        Shot shot = PlanFile.shot(plan, given.plain().get(1));
        Marked set = set(plan, shot);
        InkShot ink = read(set);
        Grid grid = grid(ink, options.course());
        Path ofPlan = given.findValue("--to").isPresent()
                ? PlainFile.toPath(given.findValue("--to").get())
                : InkFolder.ofPlan(name);
        InkKey runs = InkKey.ofRuns(ink, options.course());
        Viewing viewing = Viewing.of(set.stage(), set.values(), ink);
        try (InkFolder folder = InkFolder.open(ofPlan, shot.name(), runs);
                Interruption interruption = new Interruption()) {
            if (given.has("--fresh")) {
                folder.clear();
            }
            Optional<InkRecord> record =
                    new InkWork(ink, options, viewing, folder, console, interruption.stop()).record();
            if (record.isEmpty()) {
                console.say("plumeline: stopped; the same command" + (given.has("--fresh") ? " without --fresh" : "")
                        + " goes on from here");
                return Outcome.STOPPED;
            }
            List<String> assumed = new ArrayList<>(set.open());
            assumed.addAll(ink.assumed());
            List<Integer> cells = List.of(grid.nx(), grid.ny(), grid.nz());
            var answer = new InkAnswer(plan, shot, record.get(), assumed, folder.path(), cells);
            console.answer(given.has("--json") ? InkJson.of(answer) : InkText.of(answer));
            return Outcome.ANSWERED;
        }
    }

    /// Free marks are solved as `solve` does it; those on which nothing bears stand in the middle of where they may.
    private static Marked set(Plan plan, Shot shot) {
        Stage stage = Stage.of(plan, shot);
        if (shot.marks().stream().noneMatch(mark -> mark.isFree())) {
            return new Marked(stage, Arrays.stream(stage.startValues()).boxed().toList(), List.of());
        }
        ShotAnswer answer =
                Solve.film(plan, List.of(shot.name()), List.of()).shots().getFirst();
        double[] values = answer.posed().values();
        List<String> open = new ArrayList<>();
        for (int i = 0; i < values.length; i++) {
            MarkAnswer mark = answer.marks().get(i);
            String path = mark.mark().path();
            if (mark.setting() instanceof MarkAnswer.Setting.Open && path.matches(".*[.][xyz]")) {
                open.add(path + " " + InkText.length(plan, values[i]) + ", the middle of where it may be");
            }
        }
        return new Marked(stage, answer.posed().valuesSi(), open);
    }

    private static InkShot read(Marked set) throws Refusal {
        return switch (InkShots.read(set.stage(), set.values())) {
            case InkReading.Ready(InkShot ink) -> ink;
            case InkReading.Lacking(String field, String lack, String attempt) ->
                throw new Refusal(field + " " + lack, attempt);
        };
    }

    private static Grid grid(InkShot ink, InkCourse course) throws Refusal {
        Grid grid = ink.grid(course.cellMetres());
        long cells = (long) grid.nx() * grid.ny() * grid.nz();
        if (cells > MOST_CELLS) {
            throw new Refusal(
                    "the water would be cut into " + cells / 1_000_000 + " million cells; at most "
                            + MOST_CELLS / 1_000_000 + " million are computed",
                    "Give larger ones with --cells.");
        }
        if (!ink.isOpenAtMouth(grid)) {
            throw new Refusal(
                    "shots." + ink.shot() + ".release.at is so near a placed thing that the flow there isn't computed",
                    "Move the nozzle clear of it, or cut the water more finely with --cells.");
        }
        return grid;
    }

    @Override
    public List<Rehearsal> rehearsals() {
        List<String> small = List.of(
                Rehearsal.FILE,
                "plume",
                "--runs",
                "1",
                "--cells",
                "20 mm",
                "--until",
                "0.1 s",
                "--to",
                Rehearsal.FOLDER);
        List<String> again = new ArrayList<>(small);
        again.add("--json");
        return List.of(new Rehearsal(small, PlanFile.example()), new Rehearsal(again, PlanFile.example()));
    }
}
