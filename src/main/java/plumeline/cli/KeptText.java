package plumeline.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import plumeline.solve.FilmAnswer;
import plumeline.solve.MarkAnswer;
import plumeline.solve.ShotAnswer;
import plumeline.solve.Verdict;
import plumeline.solve.WantAnswer;

/// What to know once solved marks are in the plan: how many there are, which stay free, which wants fail with them and
/// which nobody has looked at.
final class KeptText {
    private KeptText() {}

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
        kept.stream().flatMap(KeptText::failing).distinct().forEach(lines::add);
        List<String> unknown =
                kept.stream().flatMap(KeptText::unknown).distinct().toList();
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
