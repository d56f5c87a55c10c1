package plumeline.flow;

import plumeline.ranges.Ranges;

/// The water and what dye does to it.
///
/// @param viscosityMetres2PerSecond kinematic viscosity, square metres a second, ≥ 0; water at 20 °C has 1.0e-6
/// @param diffusivityMetres2PerSecond diffusivity of the dye, square metres a second, ≥ 0; 0 for ink, whose own (about
/// 1e-9) is far below what a cell can show
/// @param sinkingMetresPerSecond2 the reduced gravity of dye of share 1, metres per second squared: gravity times its
/// excess of density over the water's; positive sinks, negative rises. Densities may differ by a few hundredths
/// (Boussinesq): the excess counts for weight and not for inertia.
public record Liquid(
        double viscosityMetres2PerSecond, double diffusivityMetres2PerSecond, double sinkingMetresPerSecond2) {
    /// Checks the ranges.
    public Liquid {
        Ranges.checkNotNegative(viscosityMetres2PerSecond, "viscosityMetres2PerSecond");
        Ranges.checkNotNegative(diffusivityMetres2PerSecond, "diffusivityMetres2PerSecond");
        Ranges.checkFinite(sinkingMetresPerSecond2, "sinkingMetresPerSecond2");
    }
}
