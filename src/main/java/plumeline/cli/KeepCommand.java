package plumeline.cli;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import plumeline.desk.Arguments;
import plumeline.desk.Command;
import plumeline.desk.Console;
import plumeline.desk.Outcome;
import plumeline.desk.PlainFile;
import plumeline.desk.PlanFile;
import plumeline.desk.Refusal;
import plumeline.desk.Usage;
import plumeline.plan.Mark;
import plumeline.plan.Plans;
import plumeline.solve.FilmAnswer;
import plumeline.solve.MarkAnswer;
import plumeline.solve.ShotAnswer;
import plumeline.solve.Verdict;
import plumeline.solve.WantAnswer;

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
        Said.of(answer, solved).forEach(console::say);
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

    /// What to know once solved marks are in the plan: how many there are, which stay free, which wants fail with them
    /// and which nobody has looked at.
    private static final class Said {
        private Said() {}

        /// Gives the lines.
        ///
        /// @param solved what was kept, by shot and mark
        static List<String> of(FilmAnswer answer, Map<String, Map<String, Double>> solved) {
            List<ShotAnswer> kept = answer.shots().stream()
                    .filter(shot -> solved.containsKey(shot.shot()))
                    .toList();
            List<String> lines = new ArrayList<>();
            lines.add(count(solved.values().stream().mapToInt(Map::size).sum()));
            answer.shots().forEach(shot -> lines.addAll(open(shot)));
            kept.stream().flatMap(Said::failing).distinct().forEach(lines::add);
            List<String> unknown =
                    kept.stream().flatMap(Said::unknown).distinct().toList();
            if (!unknown.isEmpty()) {
                lines.add("kept without knowing " + String.join(", ", unknown) + ": solve says what is missing");
            }
            return lines;
        }

        private static String count(int marks) {
            return switch (marks) {
                case 0 -> "no mark kept: there is none that is free and was found";
                case 1 -> "1 mark kept";
                default -> marks + " marks kept";
            };
        }

        private static List<String> open(ShotAnswer shot) {
            List<String> open = shot.marks().stream()
                    .filter(mark -> mark.setting() instanceof MarkAnswer.Setting.Open)
                    .map(mark -> mark.mark().path())
                    .toList();
            String names = shot.shot() + ": " + String.join(", ", open);
            return switch (open.size()) {
                case 0 -> List.of();
                case 1 -> List.of(names + " stays free: nothing that is computed bears on it");
                default -> List.of(names + " stay free: nothing that is computed bears on them");
            };
        }

        private static Stream<String> failing(ShotAnswer shot) {
            return wants(shot, Verdict.FAILS)
                    .map(want -> "kept though " + want.id() + " fails in " + shot.shot() + ": " + want.want() + ". "
                            + String.join(" ", want.because()));
        }

        private static Stream<String> unknown(ShotAnswer shot) {
            return wants(shot, Verdict.UNKNOWN).map(WantAnswer::id);
        }

        private static Stream<WantAnswer> wants(ShotAnswer shot, Verdict verdict) {
            return Stream.concat(shot.wants().stream(), shot.filmWants().stream())
                    .filter(want -> want.verdict() == verdict);
        }
    }
}
