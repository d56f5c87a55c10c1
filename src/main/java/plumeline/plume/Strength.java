package plumeline.plume;

/// How dark neat ink is.
///
/// @param perMetre decadic absorbance of neat ink over a metre, 1/m, in its worst colour channel
/// @param measured whether the plan says so; else it is a guess, and what veils is unknown
public record Strength(double perMetre, boolean measured) {
    /// Coloured ink; a guess from memory, and only for where dye is taken to begin.
    static final Strength GUESS = new Strength(1e4, false);

    /// Checks the range.
    public Strength {
        if (!(perMetre > 0)) {
            throw new IllegalArgumentException("strength must be over 0, given " + perMetre);
        }
    }

    /// How much of the light a look keeps, by Beer and Lambert.
    ///
    /// @param shareMetres the dye it crosses, share times metres
    /// @return share of the light, 0 to 1
    public double clearShare(double shareMetres) {
        return Math.pow(10, -perMetre * shareMetres);
    }

    /// How much dye leaves half of the light.
    ///
    /// @return share times metres
    public double halvingShareMetres() {
        return Math.log10(2) / perMetre;
    }
}
