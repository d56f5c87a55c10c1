package plumeline.light;

import plumeline.ranges.Ranges;

/// How far from mid grey a camera still holds a surface: above it what is brighter clips, below it what is darker
/// drowns in noise.
///
/// Mid grey is the surface that a reflected-light meter of constant K and an incident-light meter of constant C expose
/// alike: of reflectance `π K / C`, evenly scattering. A surface of reflectance ρ, lit by so many stops more than the
/// setting needs, lands `log₂(ρ C / (π K))` stops and those above it.
///
/// **Source:** ISO 2720, from memory (K 10.6 to 13.4, C 240 to 400 flat, 320 to 540 for a dome); `π K / C` as a general
/// encyclopedia's page on light meters has it.
///
/// @param overStops from mid grey to where it clips, stops, ≥ 0 as a body is given; less once it is rated otherwise
/// @param underStops from mid grey down to where noise hides it, stops, likewise
public record Latitude(double overStops, double underStops) {
    /// The reflected-light constant that is used, cd·s/m² by sensitivity.
    public static final double K = 12.5;

    /// Checks the ranges.
    ///
    /// @throws IllegalArgumentException for what is no number
    public Latitude {
        Ranges.checkFinite(overStops, "stops over mid grey");
        Ranges.checkFinite(underStops, "stops under mid grey");
    }

    /// Gives mid grey's reflectance: `π K / C`.
    ///
    /// @param constant C, lx·s by sensitivity, > 0
    /// @return share of one: 0.157 for C 250
    public static double midGrey(double constant) {
        Ranges.checkPositive(constant, "constant");
        return Math.PI * K / constant;
    }

    /// Gives where a surface lands.
    ///
    /// @param reflectance its reflectance, evenly scattering, share of one, > 0
    /// @param constant C, lx·s by sensitivity, > 0
    /// @param overStops how much more light falls on it than the setting needs, stops
    /// @return stops over mid grey, − under it
    public static double landsStops(double reflectance, double constant, double overStops) {
        Ranges.checkPositive(reflectance, "reflectance");
        return Math.log(reflectance / midGrey(constant)) / Math.log(2) + overStops;
    }

    /// Gives the same body rated at another sensitivity than its base: every stop above it leaves the sensor a stop
    /// less light, so that as much more fits in above mid grey and as much less below it.
    ///
    /// True of a body whose raw or log picture keeps all that the sensor saw; one that amplifies first loses below
    /// likewise but gains nothing above. Below base the other way round.
    ///
    /// @param sensitivity ISO as set, > 0
    /// @param base the body's base ISO, for which this is given, > 0
    /// @return its latitude then
    public Latitude rated(double sensitivity, double base) {
        Ranges.checkPositive(sensitivity, "sensitivity");
        Ranges.checkPositive(base, "base sensitivity");
        double stops = Math.log(sensitivity / base) / Math.log(2);
        return new Latitude(overStops + stops, underStops - stops);
    }

    /// Gives what is left to where a surface clips.
    ///
    /// @param landsStops where it lands, stops over mid grey
    /// @return stops, negative where it clips
    public double toClippingStops(double landsStops) {
        return overStops - landsStops;
    }

    /// Gives what is left to where a surface drowns in noise.
    ///
    /// @param landsStops where it lands, stops over mid grey
    /// @return stops, negative where it drowns
    public double toNoiseStops(double landsStops) {
        return underStops + landsStops;
    }
}
