package plumeline.sheet;

import java.util.Comparator;
import java.util.List;
import plumeline.plan.Mark;
import plumeline.plan.Shot;
import plumeline.solve.MarkAnswer;

/// In which order a crew sets marks: things on the table from the zero mark out, then the camera, then machines, lamps,
/// last what is let go. Within each the plan's order stands.
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
                .sorted(Comparator.comparingInt(answer -> rank(answer.mark())))
                .toList();
    }

    private int rank(Mark mark) {
        String path = mark.path();
        String owner = path.substring(0, Math.max(0, path.indexOf('.')));
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
