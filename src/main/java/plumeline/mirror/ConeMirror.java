package plumeline.mirror;

import java.util.Optional;
import plumeline.geom.Station;
import plumeline.geom.Vec;
import plumeline.roots.Roots;

/// A piece of a profile turned round the axis: a cylinder or a cone, as a mirror, in the body's own frame.
///
/// Of all ways from the camera over the surface to a place, the mirrored one is the shortest (Fermat). Over one
/// straight line up the surface the shortest has a closed form: both ends turned about the line into one plane, on two
/// sides of it, it runs straight. So what is left is one number, the line's azimuth. Between the camera's and the
/// place's it runs over what faces both. Where that begins the pull toward the place is the stronger, where it ends the
/// one toward the camera; a spot that is pulled neither way has the shortest way of all the solid cone, which is
/// convex, so there is no second one. Other turns of sign lie on the surface's continuation past the cone's tip and are
/// left out.
///
/// **Source:** Fermat's principle; own derivation, checked by the law of reflection and by least ways.
///
/// @param low the piece's lower end
/// @param high its upper end, higher
/// @param index which piece of the body it is
record ConeMirror(Station low, Station high, int index) {
    private static final int STEPS = 64;

    /// How fast the radius grows with height.
    double slope() {
        return (high.radiusMetres() - low.radiusMetres()) / (high.heightMetres() - low.heightMetres());
    }

    /// Its radius at a height, also past its ends: below 0 past the tip.
    double radiusMetres(double height) {
        return low.radiusMetres() + slope() * (height - low.heightMetres());
    }

    /// Straight out of the surface at an azimuth.
    Vec facing(double azimuth) {
        double slope = slope();
        return new Vec(Math.cos(azimuth), Math.sin(azimuth), -slope).times(1 / Math.sqrt(1 + slope * slope));
    }

    /// How far round to both sides the surface faces a place: 0 where it faces it nowhere, π where all round.
    double facesRadians(Vec place) {
        double away = Math.hypot(place.x(), place.y());
        double radius = radiusMetres(place.z());
        if (away == 0) {
            return radius < 0 ? Math.PI : 0;
        }
        return Math.acos(Math.clamp(radius / away, -1, 1));
    }

    /// Where a place is seen in it.
    Optional<Spot> findSpot(Vec camera, Vec place) {
        double from = Math.atan2(camera.y(), camera.x());
        double round = Math.IEEEremainder(Math.atan2(place.y(), place.x()) - from, 2 * Math.PI);
        double side = round < 0 ? -1 : 1;
        double all = Math.abs(round);
        double start = Math.max(0, all - facesRadians(place));
        double end = Math.min(all, facesRadians(camera));
        if (!(start <= end)) {
            return Optional.empty();
        }
        double before = start;
        boolean pulledOn = true;
        for (int i = 1; i <= STEPS; i++) {
            double next = start + (end - start) * i / STEPS;
            boolean nextPulledOn = i < STEPS && isPulledOn(camera, place, from + side * next, side);
            if (pulledOn && !nextPulledOn) {
                double at = Roots.end(on -> isPulledOn(camera, place, from + side * on, side), before, next);
                Optional<Spot> spot = spot(camera, place, from + side * at);
                if (spot.isPresent()) {
                    return spot;
                }
            }
            before = next;
            pulledOn = nextPulledOn;
        }
        return Optional.empty();
    }

    /// Whether the shortest way over the line at an azimuth is shorter a little farther from the camera's.
    private boolean isPulledOn(Vec camera, Vec place, double azimuth, double side) {
        Vec at = shortest(camera, place, azimuth);
        Vec aside = new Vec(-Math.sin(azimuth), Math.cos(azimuth), 0);
        return side * pull(at, camera).plus(pull(at, place)).dot(aside) > 0;
    }

    private static Vec pull(Vec at, Vec to) {
        return to.minus(at).unit();
    }

    /// Where the shortest way crosses the line up the surface at an azimuth.
    private Vec shortest(Vec camera, Vec place, double azimuth) {
        double slope = slope();
        Vec along = new Vec(slope * Math.cos(azimuth), slope * Math.sin(azimuth), 1)
                .times(1 / Math.sqrt(1 + slope * slope));
        Vec foot = new Vec(
                low.radiusMetres() * Math.cos(azimuth), low.radiusMetres() * Math.sin(azimuth), low.heightMetres());
        Vec one = camera.minus(foot);
        Vec other = place.minus(foot);
        double up = one.dot(along);
        double otherUp = other.dot(along);
        double away = one.minus(along.times(up)).lengthMetres();
        double otherAway = other.minus(along.times(otherUp)).lengthMetres();
        return foot.plus(along.times((up * otherAway + otherUp * away) / (away + otherAway)));
    }

    private Optional<Spot> spot(Vec camera, Vec place, double azimuth) {
        Vec at = shortest(camera, place, azimuth);
        Vec facing = facing(azimuth);
        boolean isOnIt = at.z() >= low.heightMetres() && at.z() < high.heightMetres();
        boolean facesBoth = camera.minus(at).dot(facing) > 0 && place.minus(at).dot(facing) > 0;
        return isOnIt && facesBoth ? Optional.of(Spot.of(at, facing, camera, index)) : Optional.empty();
    }
}
