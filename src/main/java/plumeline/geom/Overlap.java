package plumeline.geom;

/// How deep two convex parts are in each other: minus the least shift that parts them.
///
/// The separation along a direction is maximised over the sphere, from a fixed set of directions and then by ever
/// smaller steps; within a micrometre for parts as large as a hand.
final class Overlap {
    private static final int RINGS = 7;
    private static final int ROUND = 16;
    private static final double FINEST_RADIANS = 1e-7;

    private Overlap() {}

    static double metres(Lump one, Lump other) {
        double best = Double.NEGATIVE_INFINITY;
        double azimuth = 0;
        double elevation = 0;
        for (int ring = 0; ring < RINGS; ring++) {
            double e = Math.PI * (ring - RINGS / 2) / (RINGS - 1);
            for (int i = 0; i < ROUND; i++) {
                double a = 2 * Math.PI * i / ROUND;
                double there = separation(one, other, a, e);
                if (there > best) {
                    best = there;
                    azimuth = a;
                    elevation = e;
                }
            }
        }
        double step = Math.PI / ROUND;
        while (step > FINEST_RADIANS) {
            boolean moved = false;
            for (int i = 0; i < 8; i++) {
                double a = azimuth + step * Math.cos(i * Math.PI / 4);
                double e = elevation + step * Math.sin(i * Math.PI / 4);
                double there = separation(one, other, a, e);
                if (there > best) {
                    best = there;
                    azimuth = a;
                    elevation = e;
                    moved = true;
                    break;
                }
            }
            if (!moved) {
                step /= 2;
            }
        }
        return Math.min(best, 0);
    }

    private static double separation(Lump one, Lump other, double azimuth, double elevation) {
        double flat = Math.cos(elevation);
        Vec way = new Vec(flat * Math.cos(azimuth), flat * Math.sin(azimuth), Math.sin(elevation));
        return way.dot(one.farthest(way.times(-1))) - way.dot(other.farthest(way));
    }
}
