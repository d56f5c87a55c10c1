package plumeline.fall;

import plumeline.ranges.Ranges;
import plumeline.water.Water;

/// A thing lighter than the water that is let go under it and rises end on, from rest, until it breaks the surface.
///
/// With an even drag coefficient the way is `s = (v²/a) ln cosh(a t/v)`, v being its steady speed and a its first
/// acceleration, the water that it drags along counted; so `t = (v/a) arcosh(exp(a s/v²))`.
///
/// **Source:** Newton; own derivation (docs/derivations/fall.md); coefficient 0.85 of a blunt cylinder end on, two to
/// four times as long as wide (Hoerner, Fluid-Dynamic Drag, 1965, from memory), from a Reynolds number of 1000 on;
/// added mass 8/3 of the face's radius cubed as a disc's, an upper bound for rounded ends. What turns over on its way
/// has several times the drag.
///
/// @param massKilograms mass, kg, > 0
/// @param displacedMetres3 volume that displaces water, m³, > 0
/// @param faceMetres2 the largest level section, m², > 0
/// @param water what it rises through
/// @param dragShare drag over the usual, dimensionless, > 0; 1 for the usual
public record Rise(double massKilograms, double displacedMetres3, double faceMetres2, Medium water, double dragShare) {
    /// The drag is this share of the usual at least, four times in five (rounded shoulders).
    public static final double LEAST_DRAG = 0.7;

    /// The drag is this share of the usual at most, four times in five (a box; a leaning thing).
    public static final double MOST_DRAG = 1.5;

    private static final double COEFFICIENT = 0.85;
    private static final double LEAST_REYNOLDS = 1000;
    private static final double GRAVITY = Water.GRAVITY_METRES_PER_SECOND2;

    /// Checks the ranges.
    ///
    /// @throws IllegalArgumentException outside them
    public Rise {
        Ranges.checkPositive(massKilograms, "mass");
        Ranges.checkPositive(displacedMetres3, "volume");
        Ranges.checkPositive(faceMetres2, "face");
        Ranges.checkPositive(dragShare, "share of the drag");
    }

    /// Gives its lift less its weight.
    ///
    /// @return N, + up
    public double liftNewtons() {
        return GRAVITY * (water.densityKilogramsPerMetre3() * displacedMetres3 - massKilograms);
    }

    private double movedKilograms() {
        double radius = Math.sqrt(faceMetres2 / Math.PI);
        return massKilograms + water.densityKilogramsPerMetre3() * 8.0 / 3 * radius * radius * radius;
    }

    /// Gives its first acceleration.
    ///
    /// @return m/s², + up
    public double firstMetresPerSecond2() {
        return liftNewtons() / movedKilograms();
    }

    /// Gives its steady speed; 0 for what doesn't rise.
    ///
    /// @return m/s
    public double steadyMetresPerSecond() {
        double drag = COEFFICIENT * dragShare * water.densityKilogramsPerMetre3() * faceMetres2 / 2;
        return Math.sqrt(Math.max(0, liftNewtons()) / drag);
    }

    /// Gives when it has risen so far.
    ///
    /// @param metres the way, m, ≥ 0
    /// @return s; endless (infinite) for what doesn't rise
    public double seconds(double metres) {
        double a = firstMetresPerSecond2();
        if (a <= 0) {
            return metres == 0 ? 0 : Double.POSITIVE_INFINITY;
        }
        double v = steadyMetresPerSecond();
        double x = a * metres / (v * v);
        // arcosh(eˣ) = x + ln(1 + √(1 − e⁻²ˣ)), which no large x spoils.
        return v / a * (x + Math.log1p(Math.sqrt(-Math.expm1(-2 * x))));
    }

    /// Gives how far it has risen: `s = (v²/a) ln cosh(a t/v)`.
    ///
    /// @param seconds the time from its release, s, ≥ 0
    /// @return m; 0 for what doesn't rise
    public double metres(double seconds) {
        Ranges.checkNotNegative(seconds, "time");
        double a = firstMetresPerSecond2();
        if (a <= 0) {
            return 0;
        }
        double v = steadyMetresPerSecond();
        double x = a * seconds / v;
        // ln cosh x = x + ln((1 + e⁻²ˣ)/2), which no large x spoils.
        return v * v / a * (x + Math.log1p(Math.expm1(-2 * x) / 2));
    }

    /// Tells whether its Reynolds number comes into the coefficient's range.
    ///
    /// @return true where it does
    public boolean isKnown() {
        double width = Math.sqrt(4 * faceMetres2 / Math.PI);
        double reynolds =
                water.densityKilogramsPerMetre3() * steadyMetresPerSecond() * width / water.viscosityPascalSeconds();
        return reynolds >= LEAST_REYNOLDS;
    }
}
