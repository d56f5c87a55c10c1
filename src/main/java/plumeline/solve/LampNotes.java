package plumeline.solve;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import plumeline.geom.Body;
import plumeline.geom.Vec;
import plumeline.lit.Spots;
import plumeline.mirror.Ways;
import plumeline.plan.Shot;
import plumeline.stage.Scene;
import plumeline.stage.Stage;

/// Lamps, cards and flags that stand between the lens and a thing, whatever is wanted of the shot.
final class LampNotes {
    private LampNotes() {}

    static List<String> of(Stage stage, double[] si) {
        Shot shot = stage.shot();
        List<Scene> ends = List.of(stage.scene(si, 0), stage.scene(si, stage.frames() - 1.0));
        List<String> notes = new ArrayList<>();
        for (int i = 0; i < shot.lights().size(); i++) {
            Set<String> hidden = new LinkedHashSet<>();
            for (Scene scene : ends) {
                hidden.addAll(hidden(shot, scene, scene.lamps().get(i)));
            }
            if (!hidden.isEmpty()) {
                String name = shot.lights().get(i).name();
                notes.add(name + " stands between the lens and "
                        + hidden.stream().collect(Collectors.joining(", ")) + ": want off_picture: " + name + ".");
            }
        }
        return notes;
    }

    /// Things of which the lens doesn't see one of 5 by 5 places for a lamp's body, straight on.
    private static List<String> hidden(Shot shot, Scene scene, Body lamp) {
        Ways ways = Ways.past(List.of(lamp));
        Vec eye = scene.aim().eye();
        List<String> hidden = new ArrayList<>();
        for (int i = 0; i < shot.placed().size(); i++) {
            if (Spots.over(shot.placed().get(i), scene.things().get(i), eye).stream()
                    .filter(spot -> eye.minus(spot.place()).dot(spot.facing()) > 0)
                    .anyMatch(spot -> !ways.isFree(spot.place(), eye))) {
                hidden.add(shot.placed().get(i).name());
            }
        }
        return hidden;
    }
}
