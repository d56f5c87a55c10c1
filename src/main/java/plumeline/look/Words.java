package plumeline.look;

import plumeline.colour.Chromaticity;
import plumeline.colour.Hue;
import plumeline.colour.Lab;
import plumeline.colour.Seen;
import plumeline.colour.Srgb;

/// Colours in words and as chips.
public final class Words {
    private Words() {}

    /// Names a colour by its hue.
    ///
    /// @param colour as a screen has it
    /// @return such as `blue-green`
    public static String hue(Srgb colour) {
        return Hue.name(Lab.of(colour.toXyz(), Chromaticity.D65));
    }

    /// Names a light by its hue, white where it is next to daylight.
    ///
    /// @param light its colour
    /// @return such as `blue-green`
    public static String hue(Chromaticity light) {
        return Hue.name(Lab.of(light.at(1), Chromaticity.D65));
    }

    /// Gives a light as a screen comes nearest to it, as bright as a screen has it.
    ///
    /// @param light its colour
    /// @return the colour; paler than the light where no screen has it
    public static Srgb chip(Chromaticity light) {
        return Seen.brightest(light.at(1));
    }
}
