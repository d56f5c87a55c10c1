package plumeline.geom;

final class Convex {
    private Convex() {}

    static double reach(Body body, double x, double y, double z) {
        throw new UnsupportedOperationException("being written");
    }

    static Vec nearest(Body body, Vec place) {
        throw new UnsupportedOperationException("being written");
    }
}
