package plumeline.geom;

/// The plain picture through air: straight lines through the lens point.
///
/// @param aim lens point and direction
public record Pinhole(Aim aim) implements Projection {
    @Override
    public Point project(Vec place) {
        Vec way = place.minus(aim.eye());
        double depth = aim.forward().dot(way);
        if (!(depth > 0)) throw new IllegalArgumentException("a place " + depth + " m deep isn't in front of the lens");
        return new Point(aim.right().dot(way) / depth, aim.up().dot(way) / depth);
    }

    @Override
    public double depth(Vec place) {
        return aim.depthMetres(place);
    }
}
