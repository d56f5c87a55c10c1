package plumeline.optics;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import plumeline.geom.Vec;

/// The way of light from a place in air across parallel faces.
///
/// It stays in one plane, and `n sin θ` is the same in all media. How far it goes aside grows with the slope in the
/// medium of least index and is concave in it: Newton's steps from a start that is never past the answer climb to it.
///
/// **Source:** Snell's law (any optics text).
///
/// @param faces in the order they are crossed, parallel, one at least
record Slabs(List<FlatPath.Face> faces) {
    private static final double PARALLEL = 1 - 1e-14;
    private static final int MOST_STEPS = 60;

    static boolean is(List<FlatPath.Face> faces) {
        Vec normal = faces.getFirst().plane().normal();
        return faces.stream().allMatch(face -> Math.abs(face.plane().normal().dot(normal)) > PARALLEL);
    }

    /// Finds where it crosses the faces; empty where they don't come in this order.
    Optional<List<Vec>> find(Vec from, Vec to) {
        Vec normal = faces.getFirst().plane().normal();
        Vec across = to.minus(from).dot(normal) < 0 ? normal.times(-1) : normal;
        double[] depths = new double[faces.size() + 2];
        for (int i = 0; i < faces.size(); i++) {
            depths[i + 1] = faces.get(i).plane().through().minus(from).dot(across);
        }
        depths[faces.size() + 1] = to.minus(from).dot(across);
        for (int leg = 0; leg <= faces.size(); leg++) {
            if (depths[leg + 1] < depths[leg]) {
                return Optional.empty();
            }
        }
        if (!(depths[faces.size() + 1] > 0)) {
            return Optional.empty();
        }
        Vec aside = to.minus(from).minus(across.times(depths[faces.size() + 1]));
        double far = aside.lengthMetres();
        double[] asides = asides(depths, far);
        List<Vec> places = new ArrayList<>();
        for (int i = 1; i <= faces.size(); i++) {
            places.add(from.plus(across.times(depths[i])).plus(aside.times(far > 0 ? asides[i] / far : 0)));
        }
        return Optional.of(places);
    }

    private double index(int leg) {
        return leg == 0 ? 1 : faces.get(leg - 1).behindIndex();
    }

    /// How far aside it has gone at each face, m.
    private double[] asides(double[] depths, double far) {
        double least = Double.POSITIVE_INFINITY;
        for (int leg = 0; leg <= faces.size(); leg++) {
            least = depths[leg + 1] > depths[leg] ? Math.min(least, index(leg)) : least;
        }
        double[] asides = new double[depths.length];
        double slope = 0;
        for (int step = 0; step < MOST_STEPS; step++) {
            double growth = 0;
            for (int leg = 0; leg <= faces.size(); leg++) {
                double index = index(leg);
                double square = index * index + (index * index - least * least) * slope * slope;
                double share = least * (depths[leg + 1] - depths[leg]) / Math.sqrt(square);
                asides[leg + 1] = asides[leg] + share * slope;
                growth += share * index * index / square;
            }
            double next = slope + (far - asides[faces.size() + 1]) / growth;
            // The steps climb: one that does not, or that is lost in the last digits, is rounding.
            if (!(next - slope > slope * 1e-15)) {
                break;
            }
            slope = next;
        }
        return asides;
    }
}
