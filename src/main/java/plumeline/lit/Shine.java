package plumeline.lit;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import plumeline.geom.Aim;
import plumeline.geom.Bounds;
import plumeline.geom.Hull;
import plumeline.geom.Plane;
import plumeline.geom.Vec;
import plumeline.light.Emitter;
import plumeline.light.Glow;
import plumeline.light.Intensity;
import plumeline.light.Panel;
import plumeline.light.Patch;
import plumeline.light.Seen;
import plumeline.light.SkyMean;
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

    /// A piece that is a smaller share of a face than this is asked in its middle alone.
    double SMALL_SHARE = 0.001;

    /// What keeps a dark window dark is so near before its face, m.
    double AHEAD_METRES = 1e-6;

    /// Finds the face that shines into a tank or through it.
    ///
    /// @param place where its light comes to, m
    /// @param findWay gives the way of a point's light to the tank, from where the point is; empty where there is
    /// none
    /// @return its face, or a small one in a point's stead; empty where there is no way
    Optional<Face> findFace(Vec place, Function<Vec, Optional<Vec>> findWay);

    /// Gives by how much the light on a place may be off because it is too near to the lamp for a point.
    ///
    /// @param place the place, m
    /// @return share of one
    default double nearShare(Vec place) {
        return 0;
    }

    /// Gives where it is.
    ///
    /// @return its middle, m
    Vec middle();

    /// Gives its farthest corner from its middle.
    ///
    /// @return m
    double reachMetres();

    /// Gives what lies round it.
    ///
    /// @return a box with all of what shines
    default Bounds bounds() {
        return new Bounds(middle(), middle());
    }

    /// Tells whether a place is before it.
    ///
    /// @param place the place, m
    /// @return false where it is wholly behind what shines
    boolean isBefore(Vec place);

    /// Tells whether any of it is over a surface.
    ///
    /// @param patch where on the surface
    /// @return false where all is behind it
    default boolean isOver(Patch patch) {
        return middle().minus(patch.place()).dot(patch.facing()) > 0;
    }

    /// A face.
    ///
    /// @param emitter what shines
    /// @param glow how its brightness differs from place to place and direction to direction
    /// @param hole what of it doesn't shine
    /// @param reachMetres its farthest corner from its middle, m
    record Face(Emitter emitter, Glow glow, Optional<Emitter> hole, double reachMetres) implements Shine {
        @Override
        public double lux(Patch patch, List<Hull> hiders) {
            if (emitter.luminance() == 0) {
                return 0;
            }
            List<Hull> before = with(hiders);
            if (before.isEmpty() && glow.isEven()) {
                return emitter.lux(patch);
            }
            List<Vec> outline = emitter.outline(patch.place());
            if (outline.isEmpty()) {
                return 0;
            }
            double small = before.isEmpty() || glow.isEven() ? 0 : Seen.factor(outline, patch) * SMALL_SHARE;
            double factor = 0;
            for (List<Vec> piece : before.isEmpty() ? List.of(outline) : pieces(patch.place(), outline, before)) {
                double own = Seen.factor(piece, patch);
                if (own > 0) {
                    factor += own * (own < small ? share(patch.place(), middle(piece, patch)) : mean(piece, patch));
                }
            }
            return Math.PI * emitter.luminance() * factor;
        }

        private List<List<Vec>> pieces(Vec place, List<Vec> outline, List<Hull> before) {
            return emitter instanceof Tube
                    ? Uncovered.pieces(place, outline, before)
                    : Uncovered.pieces(place, outline, new Plane(emitter.middle(), emitter.facing()), before);
        }

        private static Vec middle(List<Vec> piece, Patch patch) {
            Vec sum = Vec.ZERO;
            for (Vec corner : piece) {
                sum = sum.plus(corner.minus(patch.place()));
            }
            return sum;
        }

        /// What hides of it, its own dark window too.
        List<Hull> with(List<Hull> hiders) {
            if (hole.isEmpty()) {
                return hiders;
            }
            List<Hull> all = new ArrayList<>(hiders);
            all.add(cover(hole.get()));
            return all;
        }

        /// A dark window as what hides it: so near before the face that nothing goes between.
        private static Hull cover(Emitter window) {
            Vec ahead = window.facing().times(AHEAD_METRES);
            List<Vec> outline = window.outline(window.middle().plus(window.facing())).stream()
                    .map(corner -> corner.plus(ahead))
                    .toList();
            return new Hull(outline, outline);
        }

        /// Gives it without its hole.
        ///
        /// @return all of it shining
        Face whole() {
            return new Face(emitter, glow, Optional.empty(), reachMetres);
        }

        /// Gives what would shine in its hole.
        ///
        /// @return that alone; empty where there is none
        Optional<Face> findMissing() {
            return hole.map(
                    window -> new Face(window.withLuminance(emitter.luminance()), glow, Optional.empty(), reachMetres));
        }

        /// Tells whether it is looked at in its dark window.
        ///
        /// @param from from where, m
        /// @param to a place of it, m
        /// @return true there
        boolean isHole(Vec from, Vec to) {
            return hole.isPresent()
                    && from.distanceMetres(to) > AHEAD_METRES
                    && Uncovered.isCovered(from, to, List.of(cover(hole.get())));
        }

        /// Gives it evenly as bright as its mean is as seen from a place.
        ///
        /// @param from the place, m
        /// @return the face
        Emitter asSeen(Vec from) {
            List<Vec> outline = emitter.outline(from);
            return glow.isEven() || outline.isEmpty()
                    ? emitter
                    : emitter.withLuminance(emitter.luminance()
                            * mean(
                                    outline,
                                    new Patch(from, emitter.middle().minus(from).unit())));
        }

        private double mean(List<Vec> piece, Patch patch) {
            return glow.isEven() ? 1 : SkyMean.of(piece, patch, way -> share(patch.place(), way));
        }

        /// How bright it is along a way that comes to a place.
        ///
        /// @param place where to, m
        /// @param way from there toward the face, of any length
        /// @return share of its luminance
        double share(Vec place, Vec way) {
            double ahead = way.dot(emitter.facing());
            if (!(ahead < 0)) {
                return 0;
            }
            double far = emitter.middle().minus(place).dot(emitter.facing()) / ahead;
            return glow.share(place.plus(way.times(far)), way.times(-1));
        }

        @Override
        public Optional<Face> findFace(Vec place, Function<Vec, Optional<Vec>> findWay) {
            return emitter.luminance() == 0 ? Optional.empty() : Optional.of(this);
        }

        @Override
        public Vec middle() {
            return emitter.middle();
        }

        @Override
        public boolean isOver(Patch patch) {
            return emitter.outline(patch.place()).stream()
                    .anyMatch(corner -> corner.minus(patch.place()).dot(patch.facing()) > 0);
        }

        @Override
        public Bounds bounds() {
            Vec round = new Vec(reachMetres, reachMetres, reachMetres);
            return emitter instanceof Tube
                    ? new Bounds(middle().minus(round), middle().plus(round))
                    : Bounds.of(emitter.outline(middle().plus(emitter.facing())));
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
    /// @param halfMetres how far what glows of it reaches from its middle, m; 0 where that isn't known
    /// @param grid what a grid before it lets through
    record Ray(Aim aim, Intensity intensity, double halfMetres, Glow grid) implements Shine {
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
            return intensity.candelas(Math.atan2(up, right), gamma) * grid.share(aim.eye(), way);
        }

        /// A square a 500th as wide as its light's way, turned to where that goes to the tank.
        @Override
        public Optional<Face> findFace(Vec place, Function<Vec, Optional<Vec>> findWay) {
            return findWay.apply(aim.eye()).map(way -> {
                double side = aim.eye().distanceMetres(place) / 500;
                Aim toward = Aim.toward(aim.eye(), aim.eye().plus(way));
                Aim.Frame frame = toward.frame();
                Panel face =
                        new Panel(aim.eye(), frame.forward(), frame.right(), side, side, candelas(way) / (side * side));
                return new Face(face, Glow.even(), Optional.empty(), side);
            });
        }

        @Override
        public Vec middle() {
            return aim.eye();
        }

        /// An even disc seen from before its middle gives `1/(1 + (r/d)²)` of what a point of its candelas does.
        @Override
        public double nearShare(Vec place) {
            double near = halfMetres / aim.eye().distanceMetres(place);
            return near * near / (1 + near * near);
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
