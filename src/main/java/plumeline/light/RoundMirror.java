package plumeline.light;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import plumeline.geom.Vec;
import plumeline.ranges.Ranges;
import plumeline.roots.Roots;

/// An upright glossy cylinder about the origin, as a mirror: where a place is seen in it from another. Azimuths count
/// round the axis, counter-clockwise seen from above, from the camera's azimuth.
///
/// On the plan it is the problem of Alhazen; heights go evenly along the way, which the cylinder doesn't bend.
///
/// **Source:** the law of reflection; the problem's one root on a convex mirror lies between the two azimuths.
///
/// @param radiusMetres m, > 0
public record RoundMirror(double radiusMetres) {
    /// Checks the range.
    ///
    /// @throws IllegalArgumentException outside it
    public RoundMirror {
        Ranges.checkPositive(radiusMetres, "radius");
    }

    /// Where light of a place is mirrored to the camera.
    ///
    /// @param azimuthRadians of the spot, from the camera's azimuth, rad
    /// @param incidenceRadians between the light's way and straight out of the mirror there, rad, 0 to π/2
    /// @param place the spot, m
    /// @param toCameraMetres from the spot to the camera, on the plan, m
    /// @param toLightMetres from the spot to the light, on the plan, m
    public record Spot(
            double azimuthRadians, double incidenceRadians, Vec place, double toCameraMetres, double toLightMetres) {}

    /// Finds where a place is seen in the mirror.
    ///
    /// @param camera who looks, outside the cylinder, m
    /// @param light what is seen, outside the cylinder, m
    /// @return the spot; empty where the cylinder hides the place, so that it is mirrored nowhere
    /// @throws IllegalArgumentException for places inside the cylinder
    public Optional<Spot> find(Vec camera, Vec light) {
        double away = distance(camera);
        double far = distance(light);
        double round = turn(azimuth(light) - azimuth(camera));
        if (Math.abs(round) > limb(away) + limb(far)) {
            return Optional.empty();
        }
        double all = Math.abs(round);
        double azimuth = Roots.end(at -> fromNormal(all - at, far) > fromNormal(at, away), 0, all);
        return Optional.of(spot(camera, light, Math.signum(round) * azimuth));
    }

    private Spot spot(Vec camera, Vec light, double azimuth) {
        double absolute = azimuth(camera) + azimuth;
        double x = radiusMetres * Math.cos(absolute);
        double y = radiusMetres * Math.sin(absolute);
        double toCamera = Math.hypot(camera.x() - x, camera.y() - y);
        double toLight = Math.hypot(light.x() - x, light.y() - y);
        double z = camera.z() + (light.z() - camera.z()) * toCamera / (toCamera + toLight);
        return new Spot(azimuth, fromNormal(Math.abs(azimuth), distance(camera)), new Vec(x, y, z), toCamera, toLight);
    }

    /// How far from straight out of the mirror a place is seen, at a spot so far round from it.
    private double fromNormal(double round, double away) {
        return Math.atan2(away * Math.sin(round), away * Math.cos(round) - radiusMetres);
    }

    /// How far round from a place the cylinder's outline is.
    private double limb(double away) {
        return Math.acos(radiusMetres / away);
    }

    private double distance(Vec place) {
        double away = Math.hypot(place.x(), place.y());
        if (!(away > radiusMetres)) {
            throw new IllegalArgumentException("a place lies outside the mirror of radius " + radiusMetres
                    + " m, given " + away + " m from its axis");
        }
        return away;
    }

    private static double azimuth(Vec place) {
        return Math.atan2(place.y(), place.x());
    }

    private static double turn(double radians) {
        return Math.IEEEremainder(radians, 2 * Math.PI);
    }

    /// Gives where across the outline a spot is seen.
    ///
    /// @param camera who looks, m
    /// @param azimuthRadians of the spot, from the camera's azimuth, rad
    /// @return share of the outline's half-width, −1 to 1; + to the camera's right, which is counter-clockwise; as
    /// in a picture whose middle is the axis
    public double across(Vec camera, double azimuthRadians) {
        double away = distance(camera);
        double tangent = radiusMetres * Math.sin(azimuthRadians) / (away - radiusMetres * Math.cos(azimuthRadians));
        return tangent * Math.sqrt(away * away - radiusMetres * radiusMetres) / radiusMetres;
    }

    /// Gives what the outline shows at a place across it: where sight goes from there.
    ///
    /// @param camera who looks, m
    /// @param across share of the outline's half-width, −1 to 1
    /// @return the spot seen there and the way on, on the plan
    public Way way(Vec camera, double across) {
        Ranges.checkAtMost(Math.abs(across), 1, "place across");
        double away = distance(camera);
        double aside = Math.atan(across * radiusMetres / Math.sqrt(away * away - radiusMetres * radiusMetres));
        double incidence = Math.asin(Math.clamp(away * Math.sin(aside) / radiusMetres, -1, 1));
        double from = azimuth(camera);
        double spot = from + incidence - aside;
        double on = from + 2 * incidence - aside;
        return new Way(
                new Vec(radiusMetres * Math.cos(spot), radiusMetres * Math.sin(spot), 0),
                new Vec(Math.cos(on), Math.sin(on), 0));
    }

    /// A way of sight after the mirror, on the plan.
    ///
    /// @param spot where it leaves the mirror, m
    /// @param toward its direction, of length 1
    public record Way(Vec spot, Vec toward) {}

    /// Gives the bearing of what is seen at a place across the outline, at a distance from the axis:
    /// `2i − θ − asin((r/L) sin i)`, θ the angle at the camera, i the incidence.
    ///
    /// @param camera who looks, m
    /// @param across share of the outline's half-width, −1 to 1
    /// @param distanceMetres L, from the axis, m, > the radius
    /// @return rad, from the camera's azimuth, + counter-clockwise
    public double bearing(Vec camera, double across, double distanceMetres) {
        Way way = way(camera, across);
        double behind = way.spot.dot(way.toward);
        double on =
                -behind + Math.sqrt(behind * behind + distanceMetres * distanceMetres - radiusMetres * radiusMetres);
        return turn(azimuth(way.spot.plus(way.toward.times(on))) - azimuth(camera));
    }

    /// What a flat light shows as: a stripe across the outline.
    ///
    /// @param left its left edge, share of the outline's half-width, −1 to 1
    /// @param right its right edge, likewise, > the left
    public record Stripe(double left, double right) {
        /// Gives its middle.
        ///
        /// @return share of the half-width, −1 to 1
        public double middle() {
            return (left + right) / 2;
        }
    }

    /// Finds the stripes of a light between two edges, on the plan, from left to right. Where the cylinder hides an
    /// edge a stripe runs to the outline's edge there; of a light that reaches past both sides of it from behind
    /// the outline's two edges show a stripe each.
    ///
    /// @param camera who looks, m
    /// @param one one edge of the light, m
    /// @param other the other edge, m; the cylinder isn't between them
    /// @return none where neither edge is mirrored, else one or two
    public List<Stripe> stripes(Vec camera, Vec one, Vec other) {
        OptionalDouble first = seenAcross(camera, one);
        OptionalDouble second = seenAcross(camera, other);
        if (first.isPresent() && second.isPresent()) {
            double left = Math.min(first.getAsDouble(), second.getAsDouble());
            double right = Math.max(first.getAsDouble(), second.getAsDouble());
            return Math.abs(onTo(camera, one, other)) > Math.PI
                    ? List.of(new Stripe(-1, left), new Stripe(right, 1))
                    : List.of(new Stripe(left, right));
        }
        if (first.isPresent()) {
            return List.of(toRim(first.getAsDouble(), onTo(camera, one, other)));
        }
        return second.isPresent() ? List.of(toRim(second.getAsDouble(), onTo(camera, other, one))) : List.of();
    }

    /// How far round a place is that is reached straight from another, counted on past half a turn.
    private static double onTo(Vec camera, Vec from, Vec to) {
        return turn(azimuth(from) - azimuth(camera)) + turn(azimuth(to) - azimuth(from));
    }

    private static Stripe toRim(double seen, double hiddenRound) {
        return hiddenRound > 0 ? new Stripe(seen, 1) : new Stripe(-1, seen);
    }

    private OptionalDouble seenAcross(Vec camera, Vec light) {
        return find(camera, light).stream()
                .mapToDouble(spot -> across(camera, spot.azimuthRadians()))
                .findFirst();
    }
}
