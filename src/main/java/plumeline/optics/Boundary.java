package plumeline.optics;

import java.util.OptionalDouble;
import plumeline.geom.Vec;
import plumeline.ranges.Ranges;

/// A flat boundary between two clear media, crossed from one to the other: Snell's law, total reflection, and how much
/// is mirrored.
///
/// @param fromIndex index of the medium the ray comes from, dimensionless, ≥ 1
/// @param toIndex index of the medium behind, dimensionless, ≥ 1
public record Boundary(double fromIndex, double toIndex) {
    /// Checks the ranges.
    ///
    /// @throws IllegalArgumentException where an index is below 1
    public Boundary {
        new Layer(0, fromIndex);
        new Layer(0, toIndex);
    }

    /// Gives the angle past which nothing passes: `asin(n₂/n₁)`.
    ///
    /// **Source:** Snell's law (any optics text).
    ///
    /// @return critical angle to the normal, radians; empty where the medium behind is as dense or denser
    public OptionalDouble findCriticalRadians() {
        return toIndex < fromIndex ? OptionalDouble.of(Math.asin(toIndex / fromIndex)) : OptionalDouble.empty();
    }

    /// Gives the ray's angle behind the boundary: `n₁ sin θ₁ = n₂ sin θ₂`.
    ///
    /// **Source:** Snell's law (any optics text).
    ///
    /// @param radians θ₁, angle to the normal, radians, −π/2 to π/2
    /// @return θ₂, radians, of the same sign; empty where the ray is totally reflected
    public OptionalDouble findBentRadians(double radians) {
        Ranges.check(Math.abs(radians) <= Math.PI / 2, "angle", radians, "-pi/2 to pi/2");
        double sine = fromIndex * Math.sin(radians) / toIndex;
        return Math.abs(sine) <= 1 ? OptionalDouble.of(Math.asin(sine)) : OptionalDouble.empty();
    }

    /// Gives the share of the light that the boundary mirrors: `((n₁ cos θ₁ − n₂ cos θ₂)/(n₁ cos θ₁ + n₂ cos θ₂))²` for
    /// s, `((n₂ cos θ₁ − n₁ cos θ₂)/(n₂ cos θ₁ + n₁ cos θ₂))²` for p. Clean and clear media; dirt, films and metals
    /// aren't.
    ///
    /// **Source:** Fresnel's formulas; Smith, Modern Optical Engineering, 4th ed., eq. 11.1.
    ///
    /// @param radians θ₁, angle to the normal, radians, −π/2 to π/2
    /// @return share by polarisation; all past the critical angle
    public Polarised reflectance(double radians) {
        Ranges.check(Math.abs(radians) <= Math.PI / 2, "angle", radians, "-pi/2 to pi/2");
        return reflectance(Math.sin(radians), Math.cos(radians));
    }

    /// Gives [#reflectance] by the angle's sine and cosine.
    ///
    /// **Source:** as there.
    ///
    /// @param sine of the angle to the normal, −1 to 1
    /// @param cosine of the same angle, 0 to 1
    /// @return share by polarisation; all past the critical angle
    Polarised reflectance(double sine, double cosine) {
        double bent = fromIndex * sine / toIndex;
        if (Math.abs(bent) > 1) {
            return new Polarised(1, 1);
        }
        double behind = Math.sqrt(1 - bent * bent);
        return new Polarised(
                mirrored(fromIndex * cosine, toIndex * behind), mirrored(toIndex * cosine, fromIndex * behind));
    }

    private static double mirrored(double one, double other) {
        double amplitude = (one - other) / (one + other);
        return amplitude * amplitude;
    }

    /// Gives the angle at which no light that swings in the plane of incidence is mirrored: `atan(n₂/n₁)`.
    ///
    /// **Source:** Brewster's law (any optics text).
    ///
    /// @return Brewster's angle to the normal, radians
    public double brewsterRadians() {
        return Math.atan2(toIndex, fromIndex);
    }

    /// Gives the ray's direction behind the boundary, or its reflection where nothing passes.
    ///
    /// **Source:** Snell's law in vectors (any text on ray tracing).
    ///
    /// @param direction the ray's direction, any length over 0
    /// @param normal the boundary's normal, either way, any length over 0
    /// @return the bent or reflected direction
    public Bent bend(Vec direction, Vec normal) {
        Vec ray = direction.unit();
        Vec flat = normal.unit();
        Vec against = ray.dot(flat) > 0 ? flat.times(-1) : flat;
        double cosine = -ray.dot(against);
        double ratio = fromIndex / toIndex;
        double square = 1 - ratio * ratio * (1 - cosine * cosine);
        if (square < 0) {
            return new Bent.Reflected(ray.plus(against.times(2 * cosine)).unit());
        }
        Vec bent = ray.times(ratio).plus(against.times(ratio * cosine - Math.sqrt(square)));
        return new Bent.Passed(bent.unit());
    }
}
