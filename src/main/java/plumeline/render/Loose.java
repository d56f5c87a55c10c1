package plumeline.render;

import java.util.ArrayList;
import java.util.List;
import plumeline.scenery.Cloud;
import plumeline.scenery.Part;
import plumeline.stage.Scene;
import plumeline.stage.Stage;

/// What a shot has beside its placed things, and what it lets go: lines, rods and nozzle, falling pieces, ink, a thing
/// that rises. Made ready once for a shot and its marks, then asked at any instant, by any thread.
final class Loose {
    private final Stage stage;
    private final double[] values;
    private final Pieces pieces;
    private final InkClouds ink;
    private final Rising rising;

    private Loose(Stage stage, double[] values, Props props) {
        this.stage = stage;
        this.values = values.clone();
        pieces = Pieces.of(stage, values);
        ink = InkClouds.of(stage, values, props);
        rising = Rising.of(stage, values);
    }

    /// Makes it ready.
    ///
    /// @param stage the shot
    /// @param values its marks' values, SI
    /// @param props the simulation's film, if any
    static Loose of(Stage stage, double[] values, Props props) {
        return new Loose(stage, values, props);
    }

    /// Gives an instant with a placed thing that is let go where it is by then.
    Scene at(Scene scene) {
        return rising.at(scene);
    }

    /// Lists what is solid at an instant.
    List<Part> parts(Scene scene) {
        List<Part> parts = new ArrayList<>(Strands.parts(stage, values, scene));
        parts.addAll(pieces.parts(scene.realSeconds()));
        return parts;
    }

    /// Gives the ink at an instant; the same field as before where it is the same.
    List<Cloud> clouds(double realSeconds) {
        return ink.clouds(realSeconds);
    }

    /// Gives into how many instants an exposure may be cut for their memory.
    int mostInstants() {
        return pieces.mostInstants();
    }

    /// Tells what was taken for what isn't written.
    List<String> assumed() {
        List<String> assumed = new ArrayList<>(Strands.assumed(stage));
        assumed.addAll(rising.assumed());
        assumed.addAll(pieces.assumed());
        assumed.addAll(ink.assumed());
        return assumed;
    }
}
