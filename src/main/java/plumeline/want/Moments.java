package plumeline.want;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import plumeline.lit.Instant;
import plumeline.plan.When;
import plumeline.stage.Scene;
import plumeline.stage.Stage;

/// A shot for some values of its marks, posed at the instants that wants ask for; each instant is posed once.
public final class Moments {
    private final Stage stage;
    private final double[] values;
    private final Stage.Laid laid;
    private final List<Double> frames;
    private final Recall recall;
    private final Map<Double, Scene> posed = new HashMap<>();

    /// Makes the moments of a shot.
    ///
    /// @param stage the shot
    /// @param values its marks' values, SI
    /// @param frames the screen frames that stand for the whole of the shot where it changes, at least one
    /// @param recall what was asked before
    public Moments(Stage stage, double[] values, List<Double> frames, Recall recall) {
        this.stage = stage;
        this.values = values.clone();
        laid = stage.laid(values);
        this.frames = List.copyOf(frames);
        this.recall = recall;
    }

    /// Gives the shot.
    ///
    /// @return the stage
    public Stage stage() {
        return stage;
    }

    Recall recall() {
        return recall;
    }

    /// Gives the marks' values.
    ///
    /// @return SI values in the order of the stage's marks
    public double[] values() {
        return values.clone();
    }

    Stage.Laid laid() {
        return laid;
    }

    List<Double> listValues() {
        return Arrays.stream(values).boxed().toList();
    }

    /// Gives the shot at one instant.
    ///
    /// @param frame the screen frame
    /// @return the scene
    public Scene at(double frame) {
        return posed.computeIfAbsent(frame, laid::scene);
    }

    /// Gives an instant with its light.
    Instant lit(Scene scene) {
        return new Instant(scene, () -> recall.lighting(stage, scene), recall.light());
    }

    /// Gives the same instant in another of the shot's looks, with its light.
    Instant lit(Stage look, double frame) {
        Scene scene = look.scene(values, frame);
        return new Instant(scene, () -> recall.lighting(look, scene), recall.light());
    }

    /// Gives the shot at the instants that count for a want.
    ///
    /// @param when the want's instants
    /// @return one scene, or several in order for the whole of a shot that changes
    public List<Scene> during(When when) {
        if (!(when instanceof When.Whole) || stage.isSteady()) {
            return List.of(at(stage.frameOf(when)));
        }
        List<Scene> scenes = new ArrayList<>(frames.size());
        for (double frame : frames) {
            scenes.add(at(frame));
        }
        return scenes;
    }
}
