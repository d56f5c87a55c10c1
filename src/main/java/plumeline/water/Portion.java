package plumeline.water;

import plumeline.geom.Vec;

/// The part of a form under a plane.
///
/// @param volumeMetres3 its volume, cubic metres, ≥ 0
/// @param centroid its centroid in the body's frame, metres; zero where there is no volume
/// @param sectionMetres2 the area of the cut, square metres, ≥ 0
public record Portion(double volumeMetres3, Vec centroid, double sectionMetres2) {
    static final Portion NOTHING = new Portion(0, Vec.ZERO, 0);

    static Portion of(double volumeMetres3, double mx, double my, double mz, double sectionMetres2) {
        if (!(volumeMetres3 > 0)) {
            return new Portion(0, Vec.ZERO, sectionMetres2);
        }
        Vec centroid = new Vec(mx / volumeMetres3, my / volumeMetres3, mz / volumeMetres3);
        return new Portion(volumeMetres3, centroid, sectionMetres2);
    }
}
