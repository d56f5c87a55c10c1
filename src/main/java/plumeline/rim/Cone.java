package plumeline.rim;

import plumeline.geom.Vec;

/// A round face about the z axis: a cone or a cylinder, `r(z) = r₀ + k z`.
///
/// @param zeroMetres r₀, its radius at height 0, m; may be below 0
/// @param slope k, how fast the radius grows with height, dimensionless
record Cone(double zeroMetres, double slope) {
    double radiusMetres(double heightMetres) {
        return zeroMetres + slope * heightMetres;
    }

    /// The face a wall's thickness further in.
    Cone inward(double wallMetres) {
        return new Cone(zeroMetres - wallMetres * Math.hypot(1, slope), slope);
    }

    Vec facing(Vec place) {
        return new Vec(place.x(), place.y(), -slope * radiusMetres(place.z())).unit();
    }

    /// How far on a ray that starts on this face meets it again; not above 0 where it doesn't.
    double againMetres(Vec start, Vec way) {
        double square = square(way);
        return square > 0 ? -2 * linear(start, way) / square : 0;
    }

    /// How far on a ray that starts inside this face meets it; not above 0 where it doesn't.
    double outMetres(Vec start, Vec way) {
        double square = square(way);
        double linear = linear(start, way);
        double root = linear * linear - square * constant(start);
        return square > 0 && root >= 0 ? (Math.sqrt(root) - linear) / square : 0;
    }

    /// How far on a ray that starts outside this face meets it; not above 0 where it doesn't.
    double inMetres(Vec start, Vec way) {
        double square = square(way);
        double linear = linear(start, way);
        double root = linear * linear - square * constant(start);
        return square > 0 && root > 0 ? (-Math.sqrt(root) - linear) / square : 0;
    }

    private double square(Vec way) {
        double grows = slope * way.z();
        return way.x() * way.x() + way.y() * way.y() - grows * grows;
    }

    private double linear(Vec start, Vec way) {
        return start.x() * way.x() + start.y() * way.y() - radiusMetres(start.z()) * slope * way.z();
    }

    private double constant(Vec start) {
        double radius = radiusMetres(start.z());
        return start.x() * start.x() + start.y() * start.y() - radius * radius;
    }
}
