package plumeline.colour;

import java.util.Optional;

/// A camera's fixed white balance, as a gain for each channel of given primaries. A model: a sensor has primaries of
/// its own, wider and overlapping, which only its maker knows.
///
/// @param primaries the primaries of its picture
/// @param gains what each channel is multiplied by, so that the white that is balanced for comes to 1 in each
public record CameraWhite(Primaries primaries, Rgb gains) {
    /// Finds the balance for a white: gains of `1/R`, `1/G` and `1/B` of that white at Y 1.
    ///
    /// **Source:** von Kries's rule, in the channels of the primaries: common practice.
    ///
    /// @param primaries the primaries of its picture
    /// @param white the white that it is balanced for
    /// @return the balance; empty where the primaries don't reach that white
    public static Optional<CameraWhite> find(Primaries primaries, Chromaticity white) {
        Rgb there = primaries.toRgb(white.at(1));
        return there.least() > 0
                ? Optional.of(new CameraWhite(primaries, new Rgb(1 / there.red(), 1 / there.green(), 1 / there.blue())))
                : Optional.empty();
    }

    /// Gives the channels of a light. As a light of the balanced white and the same luminance comes to 1 in each, a
    /// channel's binary logarithm is by how many stops it stands above what a luminance reading says.
    ///
    /// @param light X, Y and Z; Y of a light that reads right is 1
    /// @return the channels; below 0 where the primaries don't reach the light's colour
    public Rgb channels(Xyz light) {
        Rgb there = primaries.toRgb(light);
        return new Rgb(there.red() * gains.red(), there.green() * gains.green(), there.blue() * gains.blue());
    }

    /// Gives what a screen shows of a light.
    ///
    /// @param light X, Y and Z; Y of a light that reads right is 1
    /// @return X, Y and Z by the screen's white, D65; channels below 0 kept, which no screen has
    public Xyz shown(Xyz light) {
        return primaries.toXyz(channels(light));
    }
}
