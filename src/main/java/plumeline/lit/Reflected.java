package plumeline.lit;

import java.util.Optional;
import plumeline.geom.Vec;
import plumeline.light.Disc;
import plumeline.light.Emitter;
import plumeline.light.Panel;
import plumeline.plan.Shot;
import plumeline.stage.Scene;

/// What may be seen mirrored: a lamp, the camera, the crew behind it.
sealed interface Reflected {
    /// A point lamp glows as large, m.
    double POINT_METRES = 0.01;

    /// The front of a lens whose barrel isn't written, m across: common practice.
    double LENS_METRES = 0.08;

    /// How wide and high whoever stands behind the camera is, from the floor 0.9 m under the table's top: common
    /// practice.
    double CREW_WIDE_METRES = 0.6;

    /// See [#CREW_WIDE_METRES].
    double CREW_HIGH_METRES = 1.8;

    /// How far behind the lens point, m: common practice.
    double CREW_BEHIND_METRES = 0.4;

    /// Gives its name.
    String name();

    /// Finds what shines, as if it did.
    ///
    /// @return its face; empty for a lamp of which it isn't known how it shines
    Optional<Emitter> find(Scene scene);

    /// @param shot the shot
    /// @param index of the lamp
    record OfLamp(Shot shot, int index) implements Reflected {
        @Override
        public String name() {
            return shot.lights().get(index).name();
        }

        /// Its form alone counts, so what it gives needn't be known.
        @Override
        public Optional<Emitter> find(Scene scene) {
            var placed = shot.lights().get(index);
            var beam = scene.beams().get(index);
            return Optional.of(Lamp.findFace(placed, beam)
                    .orElseGet(() -> new Disc(beam.aim().eye(), beam.aim().forward(), POINT_METRES / 2, 1)));
        }
    }

    /// @param shot the shot
    record OfCamera(Shot shot) implements Reflected {
        @Override
        public String name() {
            return "the camera";
        }

        @Override
        public Optional<Emitter> find(Scene scene) {
            double across = shot.camera()
                    .lens()
                    .barrel()
                    .map(barrel -> barrel.diameter().si())
                    .orElse(LENS_METRES);
            return Optional.of(new Disc(scene.aim().eye(), scene.aim().forward(), across / 2, 1));
        }
    }

    /// Whoever stands behind the camera.
    record OfCrew() implements Reflected {
        @Override
        public String name() {
            return "the crew";
        }

        @Override
        public Optional<Emitter> find(Scene scene) {
            double turn = scene.aim().turnRadians();
            Vec ahead = new Vec(Math.sin(turn), Math.cos(turn), 0);
            Vec eye = scene.aim().eye();
            Vec middle = new Vec(eye.x(), eye.y(), 0).minus(ahead.times(CREW_BEHIND_METRES));
            return Optional.of(new Panel(middle, ahead, scene.aim().right(), CREW_WIDE_METRES, CREW_HIGH_METRES, 1));
        }
    }
}
