package plumeline.sheet;

import java.util.Comparator;
import java.util.List;
import plumeline.plan.Mark;
import plumeline.plan.Shot;
import plumeline.solve.MarkAnswer;

/// In which order a crew sets marks: things on the table from the zero mark out, then the camera, then machines, lamps,
/// last what is let go. Within each the plan's order stands, but a thing is leaned before it is turned.
///
/// **Source:** common practice.
final class SettingOrder {
    private final List<String> placed;
    private final List<String> lights;
    private final List<String> moves;

    SettingOrder(Shot shot) {
        placed = shot.placed().stream().map(one -> one.name()).toList();
        lights = shot.lights().stream().map(one -> one.name()).toList();
        moves = shot.moves().stream().map(one -> one.name()).toList();
    }

    List<MarkAnswer> of(List<MarkAnswer> marks) {
        return marks.stream()
                .sorted(Comparator.comparingInt((MarkAnswer answer) -> rank(answer.mark()))
                        .thenComparingInt(answer -> first(marks, answer.mark()))
                        .thenComparingInt(answer -> turn(answer.mark())))
                .toList();
    }

    /// Where the first mark of the same owner stands in the plan.
    private static int first(List<MarkAnswer> marks, Mark mark) {
        for (int i = 0; i < marks.size(); i++) {
            if (owner(marks.get(i).mark()).equals(owner(mark))) {
                return i;
            }
        }
        return marks.size();
    }

    private static int turn(Mark mark) {
        return mark.path().endsWith(".turn") ? 1 : 0;
    }

    private static String owner(Mark mark) {
        return mark.path().substring(0, Math.max(0, mark.path().indexOf('.')));
    }

    private int rank(Mark mark) {
        String owner = owner(mark);
        if (placed.contains(owner)) {
            return 0;
        }
        if (owner.equals("camera")) {
            return 1;
        }
        if (moves.contains(owner)) {
            return 2;
        }
        return lights.contains(owner) ? 3 : 4;
    }
}
