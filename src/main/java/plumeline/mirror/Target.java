package plumeline.mirror;

import plumeline.geom.Vec;
import plumeline.light.Disc;
import plumeline.light.Emitter;
import plumeline.light.Panel;
import plumeline.light.Tube;

/// How a way of sight goes with something that shines.
///
/// @param margin > 0 where it meets what shines, falling off beside it: about the angle between the way and the nearest
/// edge, rad; minus endless where it never comes there
/// @param onMetres how far it goes until then, m
public record Target(double margin, double onMetres) {
    static final Target MISSED = new Target(Double.NEGATIVE_INFINITY, 0);

    /// Follows a way of sight to something that shines.
    ///
    /// @param emitter what shines
    /// @param from where the way begins, m
    /// @param toward where it goes, of length 1
    /// @return how it goes with it
    public static Target of(Emitter emitter, Vec from, Vec toward) {
        return switch (emitter) {
            case Panel panel -> of(panel, from, toward);
            case Disc disc -> of(disc, from, toward);
            case Tube tube -> of(tube, from, toward);
        };
    }

    private static Target of(Panel panel, Vec from, Vec toward) {
        Vec start = from.minus(panel.middle());
        double on = untilPlane(start, toward, panel.facing());
        if (!(on > 0)) {
            return MISSED;
        }
        Vec at = start.plus(toward.times(on));
        double across = panel.widthMetres() / 2 - Math.abs(at.dot(panel.right()));
        double along = panel.heightMetres() / 2 - Math.abs(at.dot(panel.up()));
        return new Target(Math.min(across, along) / start.lengthMetres(), on);
    }

    private static Target of(Disc disc, Vec from, Vec toward) {
        Vec start = from.minus(disc.middle());
        double on = untilPlane(start, toward, disc.facing());
        if (!(on > 0)) {
            return MISSED;
        }
        Vec at = start.plus(toward.times(on));
        return new Target((disc.radiusMetres() - at.lengthMetres()) / start.lengthMetres(), on);
    }

    /// How far a way goes until it meets a flat thing's front; not above 0 where it doesn't.
    private static double untilPlane(Vec start, Vec toward, Vec facing) {
        double before = start.dot(facing);
        double nears = -toward.dot(facing);
        return before > 0 && nears > 0 ? before / nears : 0;
    }

    /// The way passes a tube's axis nearer than its radius, and where it first meets the side is between the ends.
    private static Target of(Tube tube, Vec from, Vec toward) {
        Vec start = from.minus(tube.middle());
        Vec axis = tube.axis();
        Vec flatStart = start.minus(axis.times(start.dot(axis)));
        Vec flatWay = toward.minus(axis.times(toward.dot(axis)));
        double nears = -flatStart.dot(flatWay);
        double square = flatWay.dot(flatWay);
        double radius = tube.radiusMetres();
        if (!(nears > 0) || flatStart.lengthMetres() <= radius) {
            return MISSED;
        }
        double beside = flatStart.plus(flatWay.times(nears / square)).lengthMetres();
        double chord = Math.sqrt(Math.max(0, radius * radius - beside * beside) / square);
        double on = nears / square - chord;
        double along =
                tube.lengthMetres() / 2 - Math.abs(start.plus(toward.times(on)).dot(axis));
        return new Target(Math.min(radius - beside, along) / start.lengthMetres(), on);
    }
}
