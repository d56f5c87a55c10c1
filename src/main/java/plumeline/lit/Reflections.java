package plumeline.lit;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import plumeline.geom.Vec;
import plumeline.light.Emitter;
import plumeline.stage.Scene;
import plumeline.stage.Stage;

/// What is seen of a shot's lamps on a thing that isn't matte.
public sealed interface Reflections {
    /// It is matte: nothing is mirrored in it.
    record Matte() implements Reflections {}

    /// It isn't computed.
    ///
    /// @param reason why, a sentence
    record Unknown(String reason) implements Reflections {}

    /// Lamps may be seen in it.
    ///
    /// @param lamps by lamp, in the shot's order, what is seen of it: rows, the lowest first
    /// @param assumed what is said of a finish that isn't written; empty where it is
    record Seen(List<List<Row>> lamps, String assumed) implements Reflections {
        /// Copies the lists.
        public Seen {
            lamps = lamps.stream().map(List::copyOf).toList();
        }
    }

    /// What is seen of a lamp at a height.
    ///
    /// @param heightMetres along the thing's axis from its base, m
    /// @param stretches from left to right as the camera sees them; none where nothing is seen of it
    record Row(double heightMetres, List<Stretch> stretches) {
        /// Copies the list.
        public Row {
            stretches = List.copyOf(stretches);
        }
    }

    /// A stretch round a thing.
    ///
    /// @param from where it begins at the camera's left, a place in the thing's own frame, m
    /// @param to where it ends
    record Stretch(Vec from, Vec to) {}

    /// Mirrors a shot's lamps in a thing: what each shows as to the camera where it is on, past all opaque things. On
    /// satin a stretch is where it is at least half as bright as at its brightest in that row.
    ///
    /// @param stage the shot
    /// @param scene the instant
    /// @param thing index of the thing
    /// @param lowMetres the lowest height that counts, from its base, m
    /// @param highMetres the highest
    /// @return what is seen of them
    static Reflections of(Stage stage, Scene scene, int thing, double lowMetres, double highMetres) {
        Mirrors mirrors = new Mirrors(stage.shot(), thing);
        if (mirrors.isMatte()) {
            return new Matte();
        }
        List<List<Row>> lamps = new ArrayList<>();
        for (int i = 0; i < stage.shot().lights().size(); i++) {
            Emitter emitter = new Reflected.OfLamp(stage.shot(), i).find(scene).orElseThrow();
            Optional<String> unknown = mirrors.findUnknown(scene, stage.findTank(), emitter.middle());
            if (unknown.isPresent()) {
                return new Unknown(unknown.get());
            }
            lamps.add(
                    scene.beams().get(i).level() > 0 ? mirrors.rows(scene, emitter, lowMetres, highMetres) : List.of());
        }
        return new Seen(lamps, mirrors.assumed().strip());
    }
}
