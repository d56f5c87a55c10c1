package plumeline.draw;

import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import plumeline.plan.Shot;
import plumeline.quantity.Origin;
import plumeline.solve.MarkAnswer;
import plumeline.solve.ShotAnswer;

/// The answers on a shot's marks by their paths.
final class MarkBook {
    private final Map<String, MarkAnswer> byPath = new HashMap<>();

    MarkBook(ShotAnswer shot) {
        shot.marks().forEach(answer -> byPath.put(answer.mark().path(), answer));
    }

    Optional<MarkAnswer> find(String path) {
        return Optional.ofNullable(byPath.get(path));
    }

    /// Says after a mark's figure that somebody measured it; empty where its value comes from elsewhere.
    String measuredWord(String path) {
        return find(path)
                        .filter(answer -> answer.setting() instanceof MarkAnswer.Setting.At(double _, var origin)
                                && origin == Origin.MEASURED)
                        .isPresent()
                ? " measured"
                : "";
    }

    /// Whether something has its place: no coordinate is still to be found.
    boolean isPlaced(String name) {
        return !isOpen(name + ".x") && !isOpen(name + ".y") && !isOpen(name + ".z");
    }

    /// Whether it is known how something is turned.
    boolean isTurned(String name) {
        return !isOpen(name + ".turn") && !isOpen(name + ".tilt");
    }

    /// Whether it is known from where and where to the camera looks.
    boolean isCameraSet() {
        return isPlaced("camera") && isTurned("camera");
    }

    /// Whether it is known how far each of a shot's moves goes; else nothing is where the moves end.
    boolean areMovesSet(Shot shot) {
        return shot.moves().stream().flatMap(move -> move.marks().stream()).noneMatch(mark -> isOpen(mark.path()));
    }

    private boolean isOpen(String path) {
        return find(path)
                .filter(answer -> answer.setting() instanceof MarkAnswer.Setting.Open)
                .isPresent();
    }
}
