package plumeline.ink;

import java.util.OptionalDouble;
import plumeline.ranges.Ranges;

/// Ink let go at once, with or without push, as a turbulent ball that grows in proportion to its way.
///
/// With Z = z + z0, z0 = r0/α: `Z⁴ = z0⁴ + A (I t + B t²/2)`, `A = 3/(π (1 + k) α³)`, radius `α Z`, dilution
/// `(Z/z0)³`. Holds where `√B/ν` is above about 600, within a fifth; in water at rest, away from walls.
///
/// **Source:** conservation of volume, momentum and buoyancy as in Morton, Taylor and Turner, Proc. R. Soc. A 234
/// (1956) 1; the closed form is our own derivation, docs/derivations/ink.md.
///
/// @param buoyancyMetres4PerSecond2 B: reduced gravity times volume, m⁴/s²; − for ink that is lighter
/// @param impulseMetres4PerSecond I: volume times speed, downward, m⁴/s, ≥ 0
/// @param radiusMetres r0: of a ball of its volume, m, > 0
/// @param entrainment α: radius over way, dimensionless, > 0
/// @param addedMass k: share of its own mass in water that it drags along, dimensionless, 0 or 0.5
public record Puff(
        double buoyancyMetres4PerSecond2,
        double impulseMetres4PerSecond,
        double radiusMetres,
        double entrainment,
        double addedMass)
        implements Course {
    /// Checks the ranges.
    ///
    /// @throws IllegalArgumentException outside them
    public Puff {
        Ranges.checkNotNegative(impulseMetres4PerSecond, "impulse");
        Ranges.checkPositive(radiusMetres, "radius");
        Ranges.checkPositive(entrainment, "entrainment");
        Ranges.checkNotNegative(addedMass, "added mass");
    }

    /// Makes a puff of a release.
    ///
    /// @param release what is let go
    /// @param speedMetresPerSecond its speed where it enters the water, m/s, ≥ 0
    /// @param coefficients the coefficients
    /// @return the puff
    public static Puff of(Release release, double speedMetresPerSecond, Coefficients coefficients) {
        double volume = release.volumeMetres3();
        return new Puff(
                release.buoyancyMetres4PerSecond2(),
                volume * speedMetresPerSecond,
                Math.cbrt(0.75 * volume / Math.PI),
                coefficients.puffEntrainment(),
                coefficients.addedMass());
    }

    private double originMetres() {
        return radiusMetres / entrainment;
    }

    double factor() {
        return 3 / (Math.PI * (1 + addedMass) * entrainment * entrainment * entrainment);
    }

    private static double fourth(double value) {
        return value * value * value * value;
    }

    /// Finds when push and weight have done so much: the root of `I t + B t²/2 = x`.
    static OptionalDouble findSeconds(double x, double impulse, double buoyancy) {
        double square = impulse * impulse + 2 * buoyancy * x;
        double below = impulse + Math.sqrt(Math.max(0, square));
        if (square < 0 || below == 0) {
            return x == 0 ? OptionalDouble.of(0) : OptionalDouble.empty();
        }
        return OptionalDouble.of(2 * x / below);
    }

    /// Gives what push and weight have done by a time, until light ink turns: `I t + B t²/2`.
    static double pushed(double seconds, double impulse, double buoyancy) {
        double turns = buoyancy < 0 ? -impulse / buoyancy : Double.POSITIVE_INFINITY;
        double t = Math.min(seconds, turns);
        return t * (impulse + buoyancy * t / 2);
    }

    @Override
    public OptionalDouble findSeconds(double metres) {
        double x = (fourth(metres + originMetres()) - fourth(originMetres())) / factor();
        return findSeconds(x, impulseMetres4PerSecond, buoyancyMetres4PerSecond2);
    }

    @Override
    public double frontMetres(double seconds) {
        double x = pushed(seconds, impulseMetres4PerSecond, buoyancyMetres4PerSecond2);
        return Math.sqrt(Math.sqrt(fourth(originMetres()) + factor() * x)) - originMetres();
    }

    @Override
    public double radiusMetres(double metres) {
        return radiusMetres + entrainment * metres;
    }

    @Override
    public double dilution(double metres) {
        double ratio = 1 + entrainment * metres / radiusMetres;
        return ratio * ratio * ratio;
    }

    @Override
    public double deepestMetres() {
        return impulseMetres4PerSecond == 0 && buoyancyMetres4PerSecond2 == 0
                ? 0
                : buoyancyMetres4PerSecond2 < 0 ? frontMetres(Double.POSITIVE_INFINITY) : Double.POSITIVE_INFINITY;
    }
}
