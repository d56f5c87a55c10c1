package plumeline.pace;

import plumeline.geom.Body;
import plumeline.geom.Point;
import plumeline.geom.Projection;
import plumeline.geom.Vec;
import plumeline.stage.Scene;

/// How far a thing goes in the picture from one instant to another, in captured pixels at its middle plane: its
/// middle's way and, where it turns, that of its surface before the axis. What stands nearer to the lens goes farther
/// by its share of the distance.
public final class Shift {
    /// What is seen at a flatter angle to the lens's front than this share of its distance isn't before it.
    private static final double GRAZING = 0.02;

    private Shift() {}

    /// How many pixels a tangent of 1 has.
    static double scale(Scene scene) {
        return scene.picture().imageMetres() / scene.picture().pixelMetres();
    }

    /// Pixels that a metre across has at a body's middle.
    static double pixelsPerMetre(Scene scene, Body body) {
        return scale(scene) / scene.view(body).depth(body.middle());
    }

    /// Tells whether a thing's middle is before the lens: farther than what would be seen along the lens's own front.
    ///
    /// @param scene the instant
    /// @param thing its index
    /// @return true where it has a picture
    public static boolean isBefore(Scene scene, int thing) {
        Body body = scene.things().get(thing);
        double least = GRAZING * scene.aim().eye().distanceMetres(body.middle());
        return scene.aim().depthMetres(body.middle()) > least
                && scene.view(body).depth(body.middle()) > least;
    }

    /// The way of a thing's middle in the picture, px; far where it has none, as it comes to be behind the lens.
    static double ofMiddle(Scene from, Scene to, int thing) {
        if (!isBefore(from, thing) || !isBefore(to, thing)) {
            return -Subject.BEHIND;
        }
        Point one = at(from, from.things().get(thing));
        Point other = at(to, to.things().get(thing));
        return Math.hypot(scale(to) * other.x() - scale(from) * one.x(), scale(to) * other.y() - scale(from) * one.y());
    }

    private static Point at(Scene scene, Body body) {
        return scene.view(body).project(body.middle());
    }

    /// Gives how far a thing goes in the picture: its middle, or its surface before the axis where that goes farther.
    ///
    /// @param from the first instant
    /// @param to the other
    /// @param thing its index
    /// @return captured px, ≥ 0
    public static double ofThing(Scene from, Scene to, int thing) {
        return Math.max(ofMiddle(from, to, thing), ofSurface(from, to, thing));
    }

    /// The way of its surface before the axis, px: with its middle, and about its own axis.
    static double ofSurface(Scene from, Scene to, int thing) {
        if (!isBefore(from, thing) || !isBefore(to, thing)) {
            return -Subject.BEHIND;
        }
        Body body = from.things().get(thing);
        Body then = to.things().get(thing);
        Vec toLens = from.aim().eye().minus(body.middle());
        double flat = Math.hypot(toLens.x(), toLens.y());
        double turned = then.pose().turnRadians() - body.pose().turnRadians();
        if (turned == 0 || !(flat > 0)) {
            return ofMiddle(from, to, thing);
        }
        Vec front = new Vec(toLens.x(), toLens.y(), 0).times(body.solid().reachMetres() / flat);
        Vec arc = front.turned(Math.copySign(Math.PI / 2, turned)).times(Math.abs(turned));
        double scale = pixelsPerMetre(from, body);
        Point one = at(from, body);
        Point other = at(to, then);
        double x = scale(to) * other.x()
                - scale(from) * one.x()
                + scale * from.aim().right().dot(arc);
        double y = scale(to) * other.y()
                - scale(from) * one.y()
                + scale * from.aim().up().dot(arc);
        return Math.hypot(x, y);
    }

    /// How far a place goes in the picture where it is moved, px.
    static double ofPlace(Scene scene, Body seen, Vec place, Vec by) {
        Projection view = scene.view(seen);
        if (!(scene.aim().depthMetres(place) > 0) || !(scene.aim().depthMetres(place.plus(by)) > 0)) {
            return -Subject.BEHIND;
        }
        Point one = view.project(place);
        Point other = view.project(place.plus(by));
        return scale(scene) * Math.hypot(other.x() - one.x(), other.y() - one.y());
    }
}
