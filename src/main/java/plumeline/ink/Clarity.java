package plumeline.ink;

import plumeline.ranges.Ranges;

/// How clear a tank stays with ink in it, by Beer and Lambert: what is left of the light is ten to minus strength times
/// path times share of ink. One colour channel at a time; the worst decides.
///
/// Well mixed, no settling, no reaction. A straight line in the ink up to about absorbance 2, where a picture is black
/// anyway.
///
/// **Source:** Beer–Lambert law, decadic, as in IUPAC's Gold Book, from memory.
///
/// @param strengthPerMetre decadic absorbance of neat ink over a metre, 1/m, > 0
/// @param pathMetres the sight path through the water, m, > 0
/// @param tankMetres3 the water, m³, > 0
public record Clarity(double strengthPerMetre, double pathMetres, double tankMetres3) {
    /// Checks the ranges.
    ///
    /// @throws IllegalArgumentException outside them
    public Clarity {
        Ranges.checkPositive(strengthPerMetre, "strength");
        Ranges.checkPositive(pathMetres, "path");
        Ranges.checkPositive(tankMetres3, "volume of water");
    }

    /// Gives the absorbance over the path.
    ///
    /// @param inkMetres3 ink in the water, m³, ≥ 0
    /// @return decadic, dimensionless
    public double absorbance(double inkMetres3) {
        return strengthPerMetre * pathMetres * inkMetres3 / tankMetres3;
    }

    /// Gives what is left of the light.
    ///
    /// @param inkMetres3 ink in the water, m³, ≥ 0
    /// @return fraction of one
    public double clearShare(double inkMetres3) {
        return Math.pow(10, -absorbance(inkMetres3));
    }

    /// Gives how much ink may be in the water.
    ///
    /// @param clearShare what must be left of the light, fraction of one, > 0, < 1
    /// @return m³
    public double mostInkMetres3(double clearShare) {
        return -Math.log10(clearShare) * tankMetres3 / (strengthPerMetre * pathMetres);
    }

    /// Gives the takes that begin clear enough, the first in clean water.
    ///
    /// @param inkMetres3 ink a take, m³, > 0
    /// @param clearShare what must be left of the light, fraction of one, > 0, < 1
    /// @return how many, ≥ 1
    public double takes(double inkMetres3, double clearShare) {
        return Math.floor(mostInkMetres3(clearShare) / inkMetres3 * (1 + 1e-9)) + 1;
    }

    /// Gives the share of the water to change after every take so that each begins just clear enough, however many
    /// follow.
    ///
    /// @param inkMetres3 ink a take, m³, > 0
    /// @param clearShare what must be left of the light, fraction of one, > 0, < 1
    /// @return fraction of one
    public double changeShare(double inkMetres3, double clearShare) {
        return inkMetres3 / (inkMetres3 + mostInkMetres3(clearShare));
    }

    /// Gives the strength of an ink from a jar seen through: `−lg(inked/clean)/(share · path)`.
    ///
    /// @param lightShare light through the inked jar over light through the clean one, fraction of one, > 0, < 1
    /// @param pathMetres the way through the jar, m, > 0
    /// @param inkShare ink over all in the jar, fraction of one, > 0
    /// @return decadic absorbance of neat ink over a metre, 1/m
    public static double strengthPerMetre(double lightShare, double pathMetres, double inkShare) {
        return -Math.log10(lightShare) / (pathMetres * inkShare);
    }

    /// Gives the light of a picture's value by the transfer curve of sRGB.
    ///
    /// **Source:** IEC 61966-2-1, from memory.
    ///
    /// @param value the picture's value over the largest, 0 to 1
    /// @return linear light, 0 to 1
    public static double linear(double value) {
        return value <= 0.04045 ? value / 12.92 : Math.pow((value + 0.055) / 1.055, 2.4);
    }
}
