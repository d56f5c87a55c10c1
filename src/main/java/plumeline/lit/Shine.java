package plumeline.lit;

import java.util.List;
import java.util.Optional;
import plumeline.geom.Aim;
import plumeline.geom.Hull;
import plumeline.geom.Vec;
import plumeline.light.Emitter;
import plumeline.light.Intensity;
import plumeline.light.Panel;
import plumeline.light.Patch;
import plumeline.light.Seen;
import plumeline.light.Tube;
import plumeline.sight.Uncovered;

/// How a lamp shines: from a face, or from a point.
public sealed interface Shine {
    /// Gives the light on a surface with things before it.
    ///
    /// @param patch where on the surface
    /// @param hiders what stands between, none of it behind the lamp
    /// @return lx
    double lux(Patch patch, List<Hull> hiders);

    /// Finds the face that shines through a window to a place in a tank.
    ///
    /// @param window the way into the tank
    /// @param patch the place
    /// @return its face, or a small one in a point's stead; empty where it isn't before the window
    Optional<Emitter> findFace(TankWindow window, Patch patch);

    /// Gives where it is.
    ///
    /// @return its middle, m
    Vec middle();

    /// Gives its farthest corner from its middle.
    ///
    /// @return m
    double reachMetres();

    /// Tells whether a place is before it.
    ///
    /// @param place the place, m
    /// @return false where it is wholly behind what shines
    boolean isBefore(Vec place);

    /// A face.
    ///
    /// @param emitter what shines
    /// @param reachMetres its farthest corner from its middle, m
    record Face(Emitter emitter, double reachMetres) implements Shine {
        @Override
        public double lux(Patch patch, List<Hull> hiders) {
            if (hiders.isEmpty() || emitter.luminance() == 0) {
                return emitter.lux(patch);
            }
            List<Vec> outline = emitter.outline(patch.place());
            if (outline.isEmpty()) {
                return 0;
            }
            double factor = 0;
            for (List<Vec> piece : Uncovered.pieces(patch.place(), outline, hiders)) {
                factor += Seen.factor(piece, patch);
            }
            return Math.PI * emitter.luminance() * factor;
        }

        @Override
        public Optional<Emitter> findFace(TankWindow window, Patch patch) {
            return emitter.luminance() == 0 ? Optional.empty() : Optional.of(emitter);
        }

        @Override
        public Vec middle() {
            return emitter.middle();
        }

        @Override
        public boolean isBefore(Vec place) {
            return emitter instanceof Tube || place.minus(emitter.middle()).dot(emitter.facing()) > 0;
        }
    }

    /// A point.
    ///
    /// @param aim where it is and faces
    /// @param intensity what it gives into each direction
    record Ray(Aim aim, Intensity intensity) implements Shine {
        @Override
        public double lux(Patch patch, List<Hull> hiders) {
            Vec way = patch.place().minus(aim.eye());
            double square = way.dot(way);
            double cosine = -way.dot(patch.facing()) / Math.sqrt(square);
            if (!(cosine > 0)) {
                return 0;
            }
            if (Uncovered.isCovered(patch.place(), aim.eye(), hiders)) {
                return 0;
            }
            return candelas(way) * cosine / square;
        }

        private double candelas(Vec way) {
            Aim.Frame frame = aim.frame();
            double along = way.dot(frame.forward());
            double right = way.dot(frame.right());
            double up = way.dot(frame.up());
            double gamma = Math.atan2(Math.hypot(right, up), along);
            return intensity.candelas(Math.atan2(up, right), gamma);
        }

        /// A square a 500th as wide as its light's way, turned to where that goes into the tank.
        @Override
        public Optional<Emitter> findFace(TankWindow window, Patch patch) {
            return window.findWay(aim.eye(), patch).map(way -> {
                double side = aim.eye().distanceMetres(patch.place()) / 500;
                Aim toward = Aim.toward(aim.eye(), aim.eye().plus(way));
                Aim.Frame frame = toward.frame();
                return new Panel(aim.eye(), frame.forward(), frame.right(), side, side, candelas(way) / (side * side));
            });
        }

        @Override
        public Vec middle() {
            return aim.eye();
        }

        @Override
        public double reachMetres() {
            return 0;
        }

        @Override
        public boolean isBefore(Vec place) {
            return true;
        }
    }
}
