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
import plumeline.plan.Thing;
import plumeline.sight.Uncovered;
import plumeline.sketch.Box;
import plumeline.sketch.Spot;
import plumeline.stage.Scene;
import plumeline.stage.Stage;

/// What covers what in a picture, and the room that a body takes of it.
final class Covering {
    private static final int CORNERS = 24;

    /// Corners of a circle that hides.
    private static final int FINE = 64;

    private Covering() {}

    /// Tells whether another opaque thing stands between the lens and a place, straight, as past any glass and water.
    ///
    /// @param thing index of the thing that the place is of
    static boolean isHidden(Stage stage, Scene scene, int thing, Vec place) {
        Vec eye = scene.aim().eye();
        for (int i = 0; i < scene.things().size(); i++) {
            Thing.Body kind = stage.shot().placed().get(i).thing().body().orElse(Thing.Body.OPAQUE);
            List<Hull> hulls = i == thing || kind != Thing.Body.OPAQUE
                    ? List.of()
                    : Hull.of(scene.things().get(i), FINE);
            if (hulls.stream()
                    .map(List::of)
                    .anyMatch(hull ->
                            Uncovered.isCovered(eye, place, hull) && Uncovered.isCovered(place, eye, hull))) {
                return true;
            }
        }
        return false;
    }

    /// Tells whether all of a thing's corners are hidden so.
    static boolean isHidden(Stage stage, Scene scene, int thing) {
        return corners(scene.things().get(thing)).stream().allMatch(corner -> isHidden(stage, scene, thing, corner));
    }

    private static List<Vec> corners(Body body) {
        return Hull.of(body, CORNERS).stream()
                .flatMap(hull -> Stream.concat(hull.one().stream(), hull.other().stream()))
                .toList();
    }

    /// Finds it.
    ///
    /// @param onSheet where a place of the picture's plane lies
    /// @return the room; nothing where some of the body isn't before the lens
    static Optional<Box> findRoom(Scene scene, Body body, Function<Point, Spot> onSheet) {
        Projection view = scene.view(body);
        List<Vec> corners = corners(body);
        return corners.isEmpty() || corners.stream().anyMatch(corner -> view.depth(corner) <= 0)
                ? Optional.empty()
                : Optional.of(Box.about(corners.stream()
                        .map(corner -> onSheet.apply(view.project(corner)))
                        .toList()));
    }
}
