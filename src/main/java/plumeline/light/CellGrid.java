package plumeline.light;

import plumeline.geom.Vec;
import plumeline.ranges.Ranges;

/// A grid of cells before a lamp (a honeycomb, a fabric grid): light along the cells passes, light aslant meets their
/// walls. Cells are taken as round tubes with black walls: what passes is the share by which a tube's far end, moved
/// aside by the slant, still covers its near end. Nothing passes over the cut-off, `tan = diameter/depth`.
///
/// **Source:** area common to two equal circles (any book of geometry); own use of it.
///
/// @param facing along the cells, of length 1
/// @param cutTangent tangent of the angle from there on which nothing passes, > 0
public record CellGrid(Vec facing, double cutTangent) implements Glow {
    /// Of the cut-off's tangent, that at which half passes: where `acos x − x √(1 − x²) = π/4`.
    private static final double HALF = 0.403972753299517;

    private static final int STEPS = 4096;

    /// What passes, by the share of the cut-off's tangent: straight between these it is off by 1e-6 at most.
    private static final double[] PASSING = passing();

    /// Checks the ranges.
    ///
    /// @throws IllegalArgumentException outside them
    public CellGrid {
        Directions.check(facing);
        Ranges.checkPositive(cutTangent, "tangent of the cut-off");
    }

    /// Gives the grid that leaves a beam: half passes at its edges, as a beam's edges are told of lamps.
    ///
    /// @param facing along the cells, of length 1
    /// @param beamRadians full angle of the beam, radians, over 0, under π
    /// @return the grid
    public static CellGrid ofBeam(Vec facing, double beamRadians) {
        Ranges.check(beamRadians > 0 && beamRadians < Math.PI, "beam angle", beamRadians, "over 0, under pi");
        return new CellGrid(facing, Math.tan(beamRadians / 2) / HALF);
    }

    @Override
    public double share(Vec place, Vec toward) {
        double along = toward.dot(facing);
        if (!(along > 0)) {
            return 0;
        }
        return passing(toward.minus(facing.times(along)).lengthMetres() / along);
    }

    /// Gives the share that passes aslant.
    ///
    /// @param tangent tangent of the angle from along the cells, ≥ 0
    /// @return 0 to 1
    public double passing(double tangent) {
        double at = tangent / cutTangent * STEPS;
        int step = (int) at;
        return at >= STEPS ? 0 : PASSING[step] + (at - step) * (PASSING[step + 1] - PASSING[step]);
    }

    private static double[] passing() {
        double[] passing = new double[STEPS + 1];
        for (int i = 0; i < STEPS; i++) {
            double moved = (double) i / STEPS;
            passing[i] = 2 / Math.PI * (Math.acos(moved) - moved * Math.sqrt(1 - moved * moved));
        }
        return passing;
    }
}
