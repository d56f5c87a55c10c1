package plumeline.ask.light;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import plumeline.geom.Vec;
import plumeline.light.RoundMirror;
import plumeline.light.RoundMirror.Stripe;
import plumeline.light.RoundMirror.Way;
import plumeline.roots.Roots;

/// What `highlight` finds, in plain SI numbers on the plan: x to the right, y away from where a camera at −y stands.
final class Highlight {
    /// Lights farther off than this aren't looked for, m.
    private static final double FARTHEST_METRES = 100;

    /// A light counts as free of the thing from here on, share of its radius.
    private static final double CLEAR = 1.02;

    private Highlight() {}

    /// A flat light on the plan.
    ///
    /// @param middle its middle, m
    /// @param facing where its front faces, of length 1
    /// @param widthMetres its width, m
    record Light(Vec middle, Vec facing, double widthMetres) {
        Vec edge(double side) {
            return middle.plus(new Vec(-facing.y(), facing.x(), 0).times(side * widthMetres / 2));
        }

        boolean shinesTo(Vec place) {
            return place.minus(middle).dot(facing) > 0;
        }

        /// How far its nearest point is from the axis.
        double nearestMetres() {
            Vec along = new Vec(-facing.y(), facing.x(), 0);
            double foot = Math.clamp(-middle.dot(along), -widthMetres / 2, widthMetres / 2);
            Vec nearest = middle.plus(along.times(foot));
            return Math.hypot(nearest.x(), nearest.y());
        }
    }

    /// What is asked of the light.
    sealed interface Task {
        /// Where it stands: what it shows as.
        record Standing(Light light) implements Task {}

        /// What it is to show as: where it stands, facing the thing.
        ///
        /// @param stripe the stripe wanted
        /// @param distanceMetres from the thing's axis to its middle, where that is given
        /// @param widthMetres its width, where that is given
        record Wanted(Stripe stripe, OptionalDouble distanceMetres, OptionalDouble widthMetres) implements Task {}
    }

    /// What is asked.
    ///
    /// @param mirror the thing
    /// @param camera who looks, m
    /// @param task what of the light
    record Inputs(RoundMirror mirror, Vec camera, Task task) {}

    /// What was found.
    ///
    /// @param inputs what was asked
    /// @param light the light, as it stands or as it is to stand; empty where no place gives the stripe
    /// @param stripes what it shows as, from left to right; two for a light from behind that reaches past both
    /// sides of the thing, none where it is mirrored nowhere
    /// @param side which of them is told: the rightmost, or the leftmost
    record Found(Inputs inputs, Optional<Light> light, List<Stripe> stripes, Side side) {
        Found {
            stripes = List.copyOf(stripes);
        }

        Optional<Stripe> stripe() {
            return told(stripes, side);
        }

        /// The stripe at the outline's other edge, where there are two.
        Optional<Stripe> other() {
            return stripes.size() < 2 ? Optional.empty() : told(stripes, side.other());
        }

        /// The bearing of a light at the thing's axis, from the direction to the camera, + to the camera's right.
        double bearingRadians(Light of) {
            return bearing(of.middle(), inputs.camera);
        }
    }

    static double bearing(Vec place, Vec camera) {
        return Math.IEEEremainder(Math.atan2(place.y(), place.x()) - Math.atan2(camera.y(), camera.x()), 2 * Math.PI);
    }

    /// A side of the picture.
    enum Side {
        LEFT,
        RIGHT;

        Side other() {
            return this == LEFT ? RIGHT : LEFT;
        }
    }

    private static Optional<Stripe> told(List<Stripe> stripes, Side side) {
        if (stripes.isEmpty()) {
            return Optional.empty();
        }
        return Optional.of(side == Side.LEFT ? stripes.getFirst() : stripes.getLast());
    }

    /// On which side the wider stripe is.
    static Side widerSide(Inputs inputs) {
        List<Stripe> stripes = answer(inputs, Side.RIGHT).stripes;
        return stripes.size() == 2 && width(stripes.getFirst()) > width(stripes.getLast()) ? Side.LEFT : Side.RIGHT;
    }

    private static double width(Stripe stripe) {
        return stripe.right() - stripe.left();
    }

    static Found answer(Inputs inputs, Side side) {
        Optional<Light> light = switch (inputs.task) {
            case Task.Standing(Light standing) -> Optional.of(standing);
            case Task.Wanted wanted -> findLight(inputs, wanted);
        };
        return new Found(inputs, light, light.map(one -> stripes(inputs, one)).orElse(List.of()), side);
    }

    /// What a light shows as, where its front shines to the thing.
    static List<Stripe> stripes(Inputs inputs, Light light) {
        return inputs.mirror.stripes(inputs.camera, light.edge(-1), light.edge(1)).stream()
                .filter(stripe -> light.shinesTo(
                        inputs.mirror.way(inputs.camera, clamp(stripe.middle())).spot()))
                .toList();
    }

    private static double clamp(double across) {
        return Math.clamp(across, -1, 1);
    }

    private static Optional<Light> findLight(Inputs inputs, Task.Wanted wanted) {
        if (wanted.distanceMetres.isPresent()) {
            return findLight(inputs, wanted.stripe, wanted.distanceMetres.getAsDouble());
        }
        double width = wanted.widthMetres.orElseThrow();
        double radius = inputs.mirror.radiusMetres();
        double near = CLEAR * radius;
        if (width(inputs, wanted.stripe, near) > width || width(inputs, wanted.stripe, FARTHEST_METRES) < width) {
            return Optional.empty();
        }
        double distance = Roots.end(at -> width(inputs, wanted.stripe, at) < width, near, FARTHEST_METRES);
        return findLight(inputs, wanted.stripe, distance).map(found -> new Light(found.middle, found.facing, width));
    }

    private static double width(Inputs inputs, Stripe stripe, double distance) {
        return findLight(inputs, stripe, distance).map(Light::widthMetres).orElse(0.0);
    }

    /// The light at a distance from the axis, facing it, whose edges are where sight goes on from the stripe's edges.
    private static Optional<Light> findLight(Inputs inputs, Stripe stripe, double distance) {
        RoundMirror mirror = inputs.mirror;
        Way left = mirror.way(inputs.camera, clamp(stripe.left()));
        Way right = mirror.way(inputs.camera, clamp(stripe.right()));
        double low = mirror.bearing(inputs.camera, clamp(stripe.left()), distance);
        double high = mirror.bearing(inputs.camera, clamp(stripe.right()), distance);
        double from = Math.atan2(inputs.camera.y(), inputs.camera.x());
        double at = from
                + Roots.end(
                        bearing -> isShortOfThem(left, right, from + bearing, distance),
                        low,
                        high < low ? high + 2 * Math.PI : high);
        Vec toward = toward(at);
        double width = along(right, at, distance) - along(left, at, distance);
        boolean comesTo = left.toward().dot(toward) > 0 && right.toward().dot(toward) > 0;
        return comesTo && width > 0
                ? Optional.of(new Light(toward.times(distance), toward.times(-1), width))
                : Optional.empty();
    }

    /// Whether a light at an azimuth is not yet round to the middle between the ways; a way that never comes to its
    /// plane meets it endlessly far on its own side.
    private static boolean isShortOfThem(Way left, Way right, double azimuth, double distance) {
        Vec toward = toward(azimuth);
        return right.toward().dot(toward) <= 0
                || (left.toward().dot(toward) > 0
                        && along(left, azimuth, distance) + along(right, azimuth, distance) > 0);
    }

    private static Vec toward(double azimuth) {
        return new Vec(Math.cos(azimuth), Math.sin(azimuth), 0);
    }

    /// Where a way meets the plane of a light at a distance, facing the axis: along it, counter-clockwise.
    private static double along(Way way, double azimuth, double distance) {
        Vec toward = toward(azimuth);
        Vec aside = new Vec(-toward.y(), toward.x(), 0);
        double nears = way.toward().dot(toward);
        double on = (distance - way.spot().dot(toward)) / nears;
        return way.spot().plus(way.toward().times(on)).dot(aside);
    }
}
