package plumeline.ink;

import java.util.OptionalDouble;
import plumeline.ranges.Ranges;

/// Ink that trickles: a thread that hardly mixes behind a small head. The head falls as if released at first and then
/// steadily at 0.57 of the thread's speed, `w = √(F ln(ε⁻²)/(2πν))` with `ε⁴ ln(ε⁻²) = 1/σ`; the two times are added as
/// a root sum of squares. Good to a factor of two: such threads coil and break up at a touch.
///
/// **Source:** Worster, Q. J. Mech. Appl. Math. 39 (1986) 93 (speed); Kaminski and Jaupart, J. Fluid Mech. 478 (2003)
/// 287 (0.57); both from memory. Joining the two times, and the head's size, are our own.
///
/// @param buoyancyFluxMetres4PerSecond3 F, m⁴/s³, > 0
/// @param reducedGravityMetresPerSecond2 g′, m/s², > 0
/// @param viscosityMetres2PerSecond ν, m²/s, > 0
public record LaminarThread(
        double buoyancyFluxMetres4PerSecond3, double reducedGravityMetresPerSecond2, double viscosityMetres2PerSecond)
        implements Course {
    /// ln(ε⁻²) at σ = 1000, salt or sugar in water.
    private static final double LOGARITHM = 4.16;

    private static final double HEAD_SHARE = 0.57;

    /// Checks the ranges.
    ///
    /// @throws IllegalArgumentException outside them
    public LaminarThread {
        Ranges.checkPositive(buoyancyFluxMetres4PerSecond3, "buoyancy flux");
        Ranges.checkPositive(reducedGravityMetresPerSecond2, "reduced gravity");
        Ranges.checkPositive(viscosityMetres2PerSecond, "viscosity");
    }

    /// Makes a thread of a release.
    ///
    /// @param release what is let go, denser than the water and with a speed > 0
    /// @return the thread
    public static LaminarThread of(Release release) {
        return new LaminarThread(
                release.buoyancyFluxMetres4PerSecond3(),
                release.reducedGravityMetresPerSecond2(),
                release.viscosityMetres2PerSecond());
    }

    /// Gives the steady speed of the head.
    ///
    /// @return m/s
    public double headMetresPerSecond() {
        return HEAD_SHARE
                * Math.sqrt(buoyancyFluxMetres4PerSecond3 * LOGARITHM / (2 * Math.PI * viscosityMetres2PerSecond));
    }

    @Override
    public OptionalDouble findSeconds(double metres) {
        return OptionalDouble.of(seconds(metres));
    }

    private double seconds(double metres) {
        double steady = metres / headMetresPerSecond();
        return Math.sqrt(steady * steady + 2 * metres / reducedGravityMetresPerSecond2);
    }

    @Override
    public double frontMetres(double seconds) {
        double speed = headMetresPerSecond();
        double half = speed * speed / reducedGravityMetresPerSecond2;
        return Math.sqrt(half * half + speed * speed * seconds * seconds) - half;
    }

    /// Gives the radius of the head: a ball of the ink that has caught up with it, hardly mixed.
    ///
    /// @param metres way from the nozzle, m, ≥ 0
    /// @return m
    @Override
    public double radiusMetres(double metres) {
        double flux = buoyancyFluxMetres4PerSecond3 / reducedGravityMetresPerSecond2;
        return Math.cbrt(0.75 / Math.PI * (1 - HEAD_SHARE) * flux * seconds(metres));
    }

    @Override
    public double dilution(double metres) {
        return 1;
    }

    @Override
    public double deepestMetres() {
        return Double.POSITIVE_INFINITY;
    }
}
