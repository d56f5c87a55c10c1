package plumeline.render;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Stream;
import plumeline.geom.Body;
import plumeline.geom.Hull;
import plumeline.geom.Point;
import plumeline.geom.Projection;
import plumeline.geom.Vec;
import plumeline.sketch.Box;
import plumeline.sketch.Spot;
import plumeline.stage.Scene;

/// The room that a body takes of a picture.
final class Covering {
    private static final int CORNERS = 24;

    private Covering() {}

    /// Finds it.
    ///
    /// @param onSheet where a place of the picture's plane lies
    /// @return the room; nothing where some of the body isn't before the lens
    static Optional<Box> findRoom(Scene scene, Body body, Function<Point, Spot> onSheet) {
        Projection view = scene.view(body);
        List<Vec> corners = Hull.of(body, CORNERS).stream()
                .flatMap(hull -> Stream.concat(hull.one().stream(), hull.other().stream()))
                .toList();
        return corners.isEmpty() || corners.stream().anyMatch(corner -> view.depth(corner) <= 0)
                ? Optional.empty()
                : Optional.of(Box.about(corners.stream()
                        .map(corner -> onSheet.apply(view.project(corner)))
                        .toList()));
    }
}
