package plumeline.mirror;

import plumeline.geom.Vec;

/// A place on a surface that mirrors something to the camera.
///
/// @param place where it is, m
/// @param facing straight out of the surface there, of length 1
/// @param incidenceRadians between the way to the camera and straight out, 0 to π/2
/// @param piece which piece of the body: of one of revolution 0 for its base, then the piece that ends at each station
/// of the profile, last its top; of a box left, right, front, behind, base, top, from 0
public record Spot(Vec place, Vec facing, double incidenceRadians, int piece) {
    /// Makes a spot on a surface that the camera looks at.
    static Spot of(Vec place, Vec facing, Vec camera, int piece) {
        return toward(place, facing, camera.minus(place), piece);
    }

    /// Makes a spot by the way of sight to it.
    static Spot toward(Vec place, Vec facing, Vec toCamera, int piece) {
        double cosine = toCamera.unit().dot(facing);
        return new Spot(place, facing, Math.acos(Math.clamp(cosine, -1, 1)), piece);
    }

    /// Gives where sight goes on from here.
    ///
    /// @param camera who looks, m
    /// @return direction, of length 1
    public Vec onward(Vec camera) {
        return mirrored(camera.minus(place), facing);
    }

    /// What goes to a surface that faces so, as it leaves: of length 1.
    static Vec mirrored(Vec toCamera, Vec facing) {
        Vec way = toCamera.unit();
        return facing.times(2 * way.dot(facing)).minus(way);
    }
}
