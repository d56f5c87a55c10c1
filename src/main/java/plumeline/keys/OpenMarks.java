package plumeline.keys;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import plumeline.plan.Mark;
import plumeline.plan.Move;
import plumeline.plan.Named;
import plumeline.plan.Shot;
import plumeline.solve.MarkAnswer;
import plumeline.solve.ShotAnswer;

/// The marks of a shot that are still to be found, and which moves wait for them.
///
/// @param paths their names
record OpenMarks(Set<String> paths) {
    OpenMarks {
        paths = Set.copyOf(paths);
    }

    static OpenMarks of(ShotAnswer answer) {
        return new OpenMarks(answer.marks().stream()
                .filter(mark -> mark.setting() instanceof MarkAnswer.Setting.Open)
                .map(mark -> mark.mark().path())
                .collect(Collectors.toSet()));
    }

    /// What a move has to wait for: its own marks; those of the camera, of what it keeps and of all moves for one that
    /// follows.
    Optional<String> findLack(Shot shot, Move move) {
        Stream<Mark> marks = move.kept().isEmpty() ? move.marks().stream() : followed(shot, move);
        List<String> open = marks.filter(mark -> mark.isFree() && paths.contains(mark.path()))
                .map(Mark::path)
                .toList();
        return open.isEmpty() ? Optional.empty() : Optional.of("where " + String.join(", ", open) + " is set");
    }

    private static Stream<Mark> followed(Shot shot, Move move) {
        Set<String> kept = move.kept().stream().map(Named::name).collect(Collectors.toSet());
        return Stream.of(
                        shot.marks().stream().filter(mark -> mark.path().matches("camera\\.(x|y|z|turn|tilt)")),
                        shot.placed().stream()
                                .filter(placed -> kept.contains(placed.name()))
                                .flatMap(placed -> placed.marks().stream()),
                        shot.moves().stream().flatMap(one -> one.marks().stream()))
                .flatMap(marks -> marks);
    }
}
