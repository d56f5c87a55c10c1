package plumeline.want;

import java.util.List;
import java.util.Optional;
import plumeline.plan.When;
import plumeline.stage.Scene;
import plumeline.stage.Stage;

/// How large things are in the picture, to compare shots by.
public final class Sizes {
    private Sizes() {}

    /// Finds the share of the picture's height that a thing fills at its middle plane, as `fills` counts it.
    ///
    /// @param stage the shot
    /// @param valuesSi its marks' values, SI
    /// @param thing the thing's name there
    /// @param when the instant; the start for a whole shot
    /// @return the share, dimensionless; empty where the shot has no such thing, or sees it in a
    ///     way that isn't computed
    public static Optional<Double> findShare(Stage stage, double[] valuesSi, String thing, When when) {
        int index = stage.thingIndex(thing);
        if (index < 0) {
            return Optional.empty();
        }
        Scene scene = stage.scene(valuesSi, stage.frameOf(when));
        if (!scene.lines().at(List.of(scene.things().get(index))).isCovered()) {
            return Optional.empty();
        }
        return Optional.of(Fills.middlePlaneShare(scene, scene.things().get(index)));
    }
}
