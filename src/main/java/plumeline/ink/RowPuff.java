package plumeline.ink;

import java.util.OptionalDouble;
import plumeline.ranges.Ranges;

/// Ink let go at once along a row of holes or a slot: a turbulent roll that grows in proportion to its way, and goes on
/// as a ball once it is as thick as three quarters of the row, where both have the same volume.
///
/// With Z = z + z0, z0 = r0/α, per length of the row: `Z³ = z0³ + 3/(π (1 + k) α²) (I t + B t²/2)`, radius `α Z`,
/// dilution `(Z/z0)²`. Holds as a puff does; the row's ends, which round off first, are left out.
///
/// **Source:** conservation of volume, momentum and buoyancy as in Morton, Taylor and Turner, Proc. R. Soc. A 234
/// (1956) 1, per length; docs/derivations/ink.md.
///
/// @param buoyancyMetres4PerSecond2 B of all the ink: reduced gravity times volume, m⁴/s²; − for ink that is lighter
/// @param impulseMetres4PerSecond I of all the ink: volume times speed, downward, m⁴/s, ≥ 0
/// @param rowMetres the row's length, m, > 4/3 of the radius
/// @param radiusMetres r0: of a roll of its volume and the row's length, m, > 0
/// @param entrainment α: radius over way, dimensionless, > 0
/// @param addedMass k: share of its own mass in water that it drags along, dimensionless, ≥ 0
public record RowPuff(
        double buoyancyMetres4PerSecond2,
        double impulseMetres4PerSecond,
        double rowMetres,
        double radiusMetres,
        double entrainment,
        double addedMass)
        implements Course {
    /// A ball has a roll's volume where its radius is this share of the roll's length.
    private static final double BALL_SHARE = 0.75;

    /// Checks the ranges.
    ///
    /// @throws IllegalArgumentException outside them
    public RowPuff {
        Ranges.checkNotNegative(impulseMetres4PerSecond, "impulse");
        Ranges.checkPositive(radiusMetres, "radius");
        Ranges.checkAbove(rowMetres, radiusMetres / BALL_SHARE, "row");
        Ranges.checkPositive(entrainment, "entrainment");
        Ranges.checkNotNegative(addedMass, "added mass");
    }

    /// Makes the puff of a release: a roll from a row, a ball from a round mouth or a row too short to tell.
    ///
    /// @param release what is let go
    /// @param speedMetresPerSecond its speed where it enters the water, m/s, ≥ 0
    /// @param coefficients the coefficients
    /// @return the roll or ball
    static Course of(Release release, double speedMetresPerSecond, Coefficients coefficients) {
        double volume = release.volumeMetres3();
        double row = release.rowMetres();
        double radius = row > 0 ? Math.sqrt(volume / (Math.PI * row)) : Double.POSITIVE_INFINITY;
        if (radius >= BALL_SHARE * row) {
            return Puff.of(release, speedMetresPerSecond, coefficients);
        }
        return new RowPuff(
                release.buoyancyMetres4PerSecond2(),
                volume * speedMetresPerSecond,
                row,
                radius,
                coefficients.puffEntrainment(),
                coefficients.addedMass());
    }

    private double originMetres() {
        return radiusMetres / entrainment;
    }

    private double factor() {
        return 3 / (Math.PI * (1 + addedMass) * entrainment * entrainment * rowMetres);
    }

    private static double cube(double value) {
        return value * value * value;
    }

    /// The way as a roll.
    private double rollMetres() {
        return (BALL_SHARE * rowMetres - radiusMetres) / entrainment;
    }

    private OptionalDouble findRollSeconds(double metres) {
        double x = (cube(metres + originMetres()) - cube(originMetres())) / factor();
        return Puff.findSeconds(x, impulseMetres4PerSecond, buoyancyMetres4PerSecond2);
    }

    /// What it is from there on.
    private Puff ball(double rollSeconds) {
        double impulse = impulseMetres4PerSecond + buoyancyMetres4PerSecond2 * rollSeconds;
        return new Puff(
                buoyancyMetres4PerSecond2, Math.max(0, impulse), BALL_SHARE * rowMetres, entrainment, addedMass);
    }

    @Override
    public OptionalDouble findSeconds(double metres) {
        OptionalDouble rolls = findRollSeconds(Math.min(metres, rollMetres()));
        if (metres <= rollMetres() || rolls.isEmpty()) {
            return rolls;
        }
        OptionalDouble rest = ball(rolls.getAsDouble()).findSeconds(metres - rollMetres());
        return rest.isPresent() ? OptionalDouble.of(rolls.getAsDouble() + rest.getAsDouble()) : rest;
    }

    @Override
    public double frontMetres(double seconds) {
        OptionalDouble rolls = findRollSeconds(rollMetres());
        if (rolls.isPresent() && seconds > rolls.getAsDouble()) {
            return rollMetres() + ball(rolls.getAsDouble()).frontMetres(seconds - rolls.getAsDouble());
        }
        double pushed = Puff.pushed(seconds, impulseMetres4PerSecond, buoyancyMetres4PerSecond2);
        return Math.cbrt(cube(originMetres()) + factor() * pushed) - originMetres();
    }

    @Override
    public double radiusMetres(double metres) {
        return radiusMetres + entrainment * metres;
    }

    @Override
    public double dilution(double metres) {
        double roll = 1 + entrainment * Math.min(metres, rollMetres()) / radiusMetres;
        double ball = Math.max(1, radiusMetres(metres) / (BALL_SHARE * rowMetres));
        return roll * roll * cube(ball);
    }

    @Override
    public double deepestMetres() {
        return impulseMetres4PerSecond == 0 && buoyancyMetres4PerSecond2 == 0
                ? 0
                : buoyancyMetres4PerSecond2 < 0 ? frontMetres(Double.POSITIVE_INFINITY) : Double.POSITIVE_INFINITY;
    }
}
