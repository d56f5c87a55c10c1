package plumeline.card;

import plumeline.geom.Aim;
import plumeline.geom.Vec;

/// Where something is round a thing, as on a clock's face seen from above: 6 o'clock toward the camera, 12 away from
/// it, 3 to camera right.
final class ClockFace {
    /// Nearer to the plumb line through the thing it has no hour.
    private static final double LEAST_METRES = 0.02;

    private ClockFace() {}

    /// Gives the hour to the next half.
    ///
    /// @param thing the thing's middle, m
    /// @param place what is round it, m
    /// @param camera whence it is seen; straight over the thing the picture's upper edge is away
    static String hour(Vec thing, Vec place, Aim camera) {
        if (levelMetres(thing, place) < LEAST_METRES) {
            return place.z() < thing.z() ? "straight under" : "straight over";
        }
        double away = levelMetres(thing, camera.eye()) < LEAST_METRES
                ? camera.turnRadians()
                : bearingRadians(camera.eye(), thing);
        long halves = Math.floorMod(Math.round((bearingRadians(thing, place) - away) / Math.PI * 12), 24);
        long hour = halves / 2 == 0 ? 12 : halves / 2;
        return halves % 2 == 0 ? "at " + hour + " o'clock of" : "at half past " + hour + " of";
    }

    private static double levelMetres(Vec one, Vec other) {
        return Math.hypot(other.x() - one.x(), other.y() - one.y());
    }

    /// Clockwise from +y, seen from above.
    private static double bearingRadians(Vec from, Vec to) {
        return Math.atan2(to.x() - from.x(), to.y() - from.y());
    }
}
