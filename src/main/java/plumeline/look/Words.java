package plumeline.look;

import plumeline.colour.Chromaticity;
import plumeline.colour.Hue;
import plumeline.colour.Lab;
import plumeline.colour.Seen;
import plumeline.colour.Srgb;
import plumeline.colour.White;

/// Colours in words and as chips.
public final class Words {
    /// How far from Planck's locus a light is still called white, and between which temperatures, plainly so: common
    /// practice.
    private static final double WHITE_DUV = 0.01;

    private static final double LEAST_KELVIN = 2000;
    private static final double WARM_KELVIN = 4000;
    private static final double COOL_KELVIN = 7500;

    /// A colour that has a hue and is neither black nor white.
    private static final double SAMPLE = 60;

    private Words() {}

    /// Names a colour by its hue.
    ///
    /// @param colour as a screen has it
    /// @return such as `blue-green`
    public static String hue(Srgb colour) {
        return Hue.name(Lab.of(colour.toXyz(), Chromaticity.D65));
    }

    /// Names a light by its hue; what is near Planck's locus is a white.
    ///
    /// @param light its colour
    /// @return such as `blue-green`, `warm white`
    public static String hue(Chromaticity light) {
        return White.find(light)
                .filter(white -> Math.abs(white.duv()) <= WHITE_DUV && white.kelvin() >= LEAST_KELVIN)
                .map(white -> white.kelvin() < WARM_KELVIN
                        ? "warm white"
                        : white.kelvin() > COOL_KELVIN ? "cool white" : "white")
                .orElseGet(() -> Hue.name(Lab.of(light.at(1), Chromaticity.D65)));
    }

    /// Names a hue.
    ///
    /// @param radians its angle hab, radians
    /// @return such as `blue-green`
    public static String hue(double radians) {
        return Hue.name(new Lab(SAMPLE, SAMPLE * Math.cos(radians), SAMPLE * Math.sin(radians)));
    }

    /// Gives a light as a screen comes nearest to it, as bright as a screen has it.
    ///
    /// @param light its colour
    /// @return the colour; paler than the light where no screen has it
    public static Srgb chip(Chromaticity light) {
        return Seen.brightest(light.at(1));
    }
}
