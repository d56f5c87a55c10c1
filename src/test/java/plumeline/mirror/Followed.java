package plumeline.mirror;

import java.util.List;
import plumeline.geom.Body;
import plumeline.geom.Solid;
import plumeline.geom.Vec;
import plumeline.light.Disc;
import plumeline.light.Emitter;
import plumeline.light.Panel;
import plumeline.light.Tube;

/// A way of sight followed by other means than the room's: straight out of the surface from neighbouring places, what
/// it meets by small steps of reckoning that share nothing with it. For convex bodies and FLACON-like ones whose pieces
/// don't stand before each other.
final class Followed {
    private static final double NEAR = 1e-6;

    private Followed() {}

    static boolean meets(Body body, double height, double azimuth, Vec camera, Emitter emitter) {
        Vec place = surface(body, height, azimuth);
        Vec round = surface(body, height, azimuth + NEAR).minus(surface(body, height, azimuth - NEAR));
        Vec up = surface(body, height + NEAR, azimuth).minus(surface(body, height - NEAR, azimuth));
        Vec out = round.cross(up).unit();
        Vec toCamera = camera.minus(place).unit();
        if (toCamera.dot(out) <= 0) {
            return false;
        }
        Vec onward = out.times(2 * toCamera.dot(out)).minus(toCamera);
        return switch (emitter) {
            case Panel panel -> inside(panel.outline(place), place, onward);
            case Disc disc -> inside(disc.outline(place), place, onward);
            case Tube tube -> meetsTube(tube, place, onward);
        };
    }

    /// Within all planes through the place and an edge.
    private static boolean inside(List<Vec> corners, Vec place, Vec onward) {
        int sides = 0;
        for (int i = 0; i < corners.size(); i++) {
            Vec one = corners.get(i).minus(place);
            Vec other = corners.get((i + 1) % corners.size()).minus(place);
            sides += onward.dot(one.cross(other)) > 0 ? 1 : -1;
        }
        boolean isToward = !corners.isEmpty() && onward.dot(middle(corners).minus(place)) > 0;
        return isToward && Math.abs(sides) == corners.size();
    }

    private static Vec middle(List<Vec> corners) {
        return corners.stream().reduce(Vec.ZERO, Vec::plus).times(1.0 / corners.size());
    }

    /// The nearer root of the square form.
    private static boolean meetsTube(Tube tube, Vec place, Vec onward) {
        Vec start = place.minus(tube.middle()).cross(tube.axis());
        Vec way = onward.cross(tube.axis());
        double a = way.dot(way);
        double b = start.dot(way);
        double c = start.dot(start) - tube.radiusMetres() * tube.radiusMetres();
        double root = b * b - a * c;
        double on = root > 0 ? (-b - Math.sqrt(root)) / a : -1;
        Vec met = place.plus(onward.times(on)).minus(tube.middle());
        return on > 0 && Math.abs(met.dot(tube.axis())) <= tube.lengthMetres() / 2;
    }

    private static Vec surface(Body body, double height, double azimuth) {
        double c = Math.cos(azimuth);
        double s = Math.sin(azimuth);
        double radius = switch (body.solid()) {
            case Solid.Revolved revolved -> revolved.radiusAtMetres(height);
            case Solid.Box box -> Math.min(box.widthMetres() / 2 / Math.abs(c), box.depthMetres() / 2 / Math.abs(s));
        };
        return body.place(new Vec(radius * c, radius * s, height));
    }
}
