package plumeline.cli;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import plumeline.plan.Mark;
import plumeline.plan.Plans;
import plumeline.solve.FilmAnswer;
import plumeline.solve.MarkAnswer;
import plumeline.solve.ShotAnswer;

/// `keep PLAN`: writes the solved marks into the plan's file, touching only their characters; for `-`, prints the plan.
final class KeepCommand implements Command {
    @Override
    public Usage usage() {
        return new Usage(
                "keep",
                "Writes the solved marks into the plan, as `12 mm solved`.",
                "PLAN",
                1,
                1,
                List.of(Usage.valued("--shot", "NAME", "Keeps the marks of this shot only.")));
    }

    @Override
    public Outcome run(Arguments given, Console console) throws Refusal, IOException {
        String name = given.plain().getFirst();
        PlainFile.refuseUnlessRewritable(name);
        PlainFile.Content content = PlainFile.read(name, console);
        Plans.Reading reading = PlanFile.readMeasured(content, console);
        if (reading.plan().isEmpty()) {
            return PlanFile.tellProblems(reading, console);
        }
        var plan = reading.plan().get();
        FilmAnswer answer = PlanFile.solve(plan, PlanFile.shots(plan, given), name, console);
        Map<String, Map<String, Double>> solved = listSolved(answer);
        byte[] kept = Plans.keep(plan, solved).getBytes(StandardCharsets.UTF_8);
        if (name.equals("-")) {
            console.answer(new String(kept, StandardCharsets.UTF_8));
        } else {
            PlainFile.rewrite(PlainFile.toPath(name), content.bytes().toArray(), kept);
        }
        KeptText.of(answer, solved).forEach(console::say);
        return Outcome.ANSWERED;
    }

    /// The marks that were free and have a value now, by shot.
    private static Map<String, Map<String, Double>> listSolved(FilmAnswer answer) {
        var solved = new LinkedHashMap<String, Map<String, Double>>();
        for (ShotAnswer shot : answer.shots()) {
            var marks = new LinkedHashMap<String, Double>();
            for (MarkAnswer mark : shot.marks()) {
                if (mark.setting() instanceof MarkAnswer.Setting.At at && !(mark.mark() instanceof Mark.Fixed)) {
                    marks.put(mark.mark().path(), at.si());
                }
            }
            if (!marks.isEmpty()) {
                solved.put(shot.shot(), marks);
            }
        }
        return solved;
    }

    @Override
    public List<Rehearsal> rehearsals() {
        return List.of(
                new Rehearsal(List.of("-", "--shot", "plume"), PlanFile.example()),
                new Rehearsal(List.of(Rehearsal.FILE, "--shot", "plume"), PlanFile.example()));
    }
}
