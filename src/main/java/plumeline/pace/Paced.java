package plumeline.pace;

import java.util.List;
import plumeline.stage.Scene;
import plumeline.stage.Stage;

/// A shot at an instant, with the same shot at other instants where they are asked for.
///
/// @param stage the shot, or one of its passes
/// @param values its marks' values, SI
/// @param now the instant
/// @param laid the shot laid out for these values
public record Paced(Stage stage, List<Double> values, Scene now, Stage.Laid laid) {
    /// Copies the list.
    public Paced {
        values = List.copyOf(values);
    }

    double[] si() {
        return values.stream().mapToDouble(Double::doubleValue).toArray();
    }

    /// The same shot so many real seconds later, whatever the playback.
    Scene later(double seconds) {
        return laid.sceneAt(now.realSeconds() + seconds);
    }
}
