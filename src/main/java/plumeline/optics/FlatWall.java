package plumeline.optics;

import plumeline.ranges.Ranges;

/// A flat pane with air in front of it and one medium behind it, faces parallel: a tank's wall.
///
/// The lens point looks through it at a point behind. Exact by Snell's law for every ray; what is left out is the
/// pane's own bow, dirt, and light reflected at its faces. Derived in `docs/derivations/flat-wall.md`.
///
/// @param glassMetres the pane's thickness, metres, ≥ 0
/// @param glassIndex the pane's index relative to air, dimensionless, ≥ 1
/// @param behindIndex index of what lies behind relative to air, dimensionless, ≥ 1
public record FlatWall(double glassMetres, double glassIndex, double behindIndex) {
    private static final int MOST_STEPS = 60;

    /// Checks the ranges.
    ///
    /// @throws IllegalArgumentException where the thickness is negative or an index is below 1
    public FlatWall {
        Layer glass = new Layer(glassMetres, glassIndex);
        new Layer(glass.thicknessMetres(), behindIndex);
    }

    /// A glass pane (1.52) with water (1.333) behind it.
    ///
    /// @param glassMetres thickness, metres, ≥ 0
    /// @return the wall
    public static FlatWall ofWater(double glassMetres) {
        return new FlatWall(glassMetres, Layer.GLASS_INDEX, Layer.WATER_INDEX);
    }

    /// A glass pane (1.52) with air behind it.
    ///
    /// @param glassMetres thickness, metres, ≥ 0
    /// @return the wall
    public static FlatWall ofAir(double glassMetres) {
        return new FlatWall(glassMetres, Layer.GLASS_INDEX, 1);
    }

    /// Gives by how much a point looks nearer along the wall's normal, for rays near the normal:
    /// `t(1 − 1/n)` summed over glass and the way behind it. Low for slanting rays by the sum of their
    /// [Layer#shiftErrorMetres].
    ///
    /// @param behindMetres the point's way behind the inner face, metres, ≥ 0
    /// @return shift, metres, ≥ 0
    public double paraxialShiftMetres(double behindMetres) {
        return glass().paraxialShiftMetres() + behind(behindMetres).paraxialShiftMetres();
    }

    /// Gives the error of [#paraxialShiftMetres] for a ray: exact − paraxial.
    ///
    /// @param behindMetres the point's way behind the inner face, metres, ≥ 0
    /// @param airRadians the ray's angle to the normal in air, radians, −π/2 to π/2
    /// @return error, metres, ≥ 0
    public double shiftErrorMetres(double behindMetres, double airRadians) {
        return glass().shiftErrorMetres(airRadians) + behind(behindMetres).shiftErrorMetres(airRadians);
    }

    /// Traces a ray from the lens point: where it is, aside from the wall's normal through the lens point, when it
    /// comes to a depth.
    ///
    /// @param depths how far the wall is from the lens point, and the depth behind it
    /// @param airSlope the ray's slope to the normal in air, dimensionless, ≥ 0
    /// @return way aside, metres, ≥ 0
    public double asideMetres(WallDepths depths, double airSlope) {
        Ranges.checkNotNegative(airSlope, "slope");
        return depths.airMetres() * airSlope
                + glass().asideMetres(airSlope)
                + behind(depths.behindMetres()).asideMetres(airSlope);
    }

    /// Gives the slope in air of the one ray from the lens point that reaches a point behind the wall: the apparent
    /// direction of the point. There is always one, and only one, as the way aside grows with the slope without
    /// end.
    ///
    /// Newton's steps from a start that is never past the answer; as the way aside is concave in the slope they
    /// climb to it without overshooting. True to 1e-14 of itself, from normal to grazing incidence.
    ///
    /// **Source:** Snell's law; own derivation, `docs/derivations/flat-wall.md`.
    ///
    /// @param depths how far the wall is from the lens point, and the point's depth behind it
    /// @param asideMetres the point's way aside from the wall's normal through the lens point, metres, ≥ 0
    /// @return slope to the normal in air (tangent of the angle), dimensionless, ≥ 0
    public double airSlope(WallDepths depths, double asideMetres) {
        Ranges.checkNotNegative(asideMetres, "way aside");
        double air = depths.airMetres();
        double behindMetres = depths.behindMetres();
        double glassSquare = glassIndex * glassIndex;
        double behindSquare = behindIndex * behindIndex;
        double slope = asideMetres / (air + glassMetres / glassIndex + behindMetres / behindIndex);
        for (int step = 0; step < MOST_STEPS; step++) {
            double glassInverse = 1 / (glassSquare + (glassSquare - 1) * slope * slope);
            double behindInverse = 1 / (behindSquare + (behindSquare - 1) * slope * slope);
            double glassSeen = glassMetres * Math.sqrt(glassInverse);
            double behindSeen = behindMetres * Math.sqrt(behindInverse);
            double missing = asideMetres - slope * (air + glassSeen + behindSeen);
            double growth = air + glassSeen * glassSquare * glassInverse + behindSeen * behindSquare * behindInverse;
            double next = slope + missing / growth;
            // The steps climb: one that does not, or that is lost in the last digits, is rounding.
            if (!(next - slope > slope * 1e-15)) {
                return slope;
            }
            slope = next;
        }
        return slope;
    }

    /// Gives how far in front of the lens point, along the wall's normal, a point behind the wall seems to be:
    /// `a + t·tan θ₁/tan θ + d·tan θ₂/tan θ`. There the ray's line in air, drawn on, meets the normal through the
    /// point; and there a fan of rays of the same slant meets, so it is where the point's (sagittal) image stands.
    /// At normal incidence it is the paraxial `a + t/n₁ + d/n₂`.
    ///
    /// @param depths how far the wall is from the lens point, and the point's depth behind it
    /// @param asideMetres the point's way aside from the wall's normal through the lens point, metres, ≥ 0
    /// @return apparent distance along the normal, metres, > 0
    public double apparentMetres(WallDepths depths, double asideMetres) {
        double slope = airSlope(depths, asideMetres);
        return depths.airMetres()
                + glassMetres * glass().shareSeen(slope)
                + depths.behindMetres() * behind(depths.behindMetres()).shareSeen(slope);
    }

    private Layer glass() {
        return new Layer(glassMetres, glassIndex);
    }

    private Layer behind(double behindMetres) {
        return new Layer(behindMetres, behindIndex);
    }
}
