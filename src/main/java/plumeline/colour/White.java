package plumeline.colour;

import java.util.Optional;
import plumeline.ranges.Ranges;

/// Where a white is by the nearest glowing body.
///
/// @param kelvin correlated colour temperature, K, 1000 to 100 000
/// @param duv how far from Planck's locus in the CIE 1960 diagram, + greenish, − pinkish, −0.05 to 0.05
public record White(double kelvin, double duv) {
    /// How far from the locus a colour temperature still means something, in CIE 1960 uv.
    public static final double MOST_DUV = 0.05;

    /// A million, for reciprocal megakelvins.
    static final double MEGA = 1e6;

    private static final double LEAST_MIREDS = MEGA / Planck.MOST_KELVIN;
    private static final double MOST_MIREDS = MEGA / Planck.LEAST_KELVIN;
    private static final double STEP_MIREDS = 10;
    private static final double DIRECTION_MIREDS = 0.01;
    private static final int HALVINGS = 45;

    /// So near to the locus a colour is on it, CIE 1960 uv: rounding, no more.
    private static final double ON_LOCUS = 1e-12;

    /// Finds the white that a colour is, by search along the locus for the place where what is left to the colour
    /// stands square to it in CIE 1960 uv.
    ///
    /// **Source:** CIE 15:2004, 9.5, for both definitions and for where they end.
    ///
    /// @param colour the colour
    /// @return the white; empty farther than 0.05 from the locus, and past its ends at 1000 K and 100 000 K
    public static Optional<White> find(Chromaticity colour) {
        double near = LEAST_MIREDS;
        double least = Double.POSITIVE_INFINITY;
        for (double m = LEAST_MIREDS; m <= MOST_MIREDS; m += STEP_MIREDS) {
            double off = off(colour, Planck.ofMireds(m));
            if (off < least) {
                near = m;
                least = off;
            }
        }
        double low = Math.max(LEAST_MIREDS, near - STEP_MIREDS);
        double high = Math.min(MOST_MIREDS, near + STEP_MIREDS);
        if (ahead(colour, low) < -ON_LOCUS || ahead(colour, high) > ON_LOCUS) {
            return Optional.empty();
        }
        for (int i = 0; i < HALVINGS; i++) {
            double middle = (low + high) / 2;
            if (ahead(colour, middle) > 0) {
                low = middle;
            } else {
                high = middle;
            }
        }
        double mireds = Math.clamp((low + high) / 2, LEAST_MIREDS, MOST_MIREDS);
        Chromaticity there = Planck.ofMireds(mireds);
        double off = off(colour, there);
        double duv = off < ON_LOCUS ? 0 : Math.copySign(off, colour.v() - there.v());
        return Math.abs(duv) <= MOST_DUV ? Optional.of(new White(MEGA / mireds, duv)) : Optional.empty();
    }

    /// Gives the colour: from the body's place on the locus square to it in CIE 1960 uv, by Duv.
    ///
    /// @return the chromaticity
    public Chromaticity chromaticity() {
        Chromaticity there = Planck.ofMireds(MEGA / kelvin);
        Chromaticity before = Planck.ofMireds(MEGA / kelvin - DIRECTION_MIREDS);
        Chromaticity behind = Planck.ofMireds(MEGA / kelvin + DIRECTION_MIREDS);
        double u = behind.u() - before.u();
        double v = behind.v1960() - before.v1960();
        double length = Math.copySign(Math.hypot(u, v), u);
        return new Chromaticity(there.u() - duv * v / length, (there.v1960() + duv * u / length) * 3 / 2);
    }

    /// How far the colour lies ahead of a place of the locus, toward more mireds: cosine-like, > 0 ahead.
    private static double ahead(Chromaticity colour, double mireds) {
        Chromaticity there = Planck.ofMireds(mireds);
        Chromaticity before = Planck.ofMireds(mireds - DIRECTION_MIREDS);
        Chromaticity behind = Planck.ofMireds(mireds + DIRECTION_MIREDS);
        double u = behind.u() - before.u();
        double v = behind.v1960() - before.v1960();
        return ((colour.u() - there.u()) * u + (colour.v1960() - there.v1960()) * v) / Math.hypot(u, v);
    }

    private static double off(Chromaticity one, Chromaticity other) {
        return Math.hypot(one.u() - other.u(), one.v1960() - other.v1960());
    }

    /// Gives the shift from one colour temperature to another in reciprocal megakelvins, which a gel's name tells:
    /// `10⁶/to − 10⁶/from`; + warms.
    ///
    /// @param fromKelvin K, > 0
    /// @param toKelvin K, > 0
    /// @return the shift, 1/MK
    /// @throws IllegalArgumentException outside these ranges
    public static double miredShift(double fromKelvin, double toKelvin) {
        return MEGA / Ranges.checkPositive(toKelvin, "to") - MEGA / Ranges.checkPositive(fromKelvin, "from");
    }
}
