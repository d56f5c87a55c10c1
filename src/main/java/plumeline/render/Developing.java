package plumeline.render;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import plumeline.colour.CameraWhite;
import plumeline.colour.Chromaticity;
import plumeline.colour.Planck;
import plumeline.colour.Primaries;
import plumeline.colour.Rgb;
import plumeline.light.Exposure;
import plumeline.light.Latitude;
import plumeline.lit.Setting;
import plumeline.plan.Camera;
import plumeline.quantity.Print;
import plumeline.quantity.Quantity;
import plumeline.stage.Picture;

/// How a camera as set turns light into shares of a screen's white.
///
/// An evenly scattering surface of reflectance ρ in the light that the setting needs lands at the share ρ of white: mid
/// grey, `π K / C`, at 0.157. So a luminance L lands at `π L / E`, E being what the setting needs.
///
/// @param setting the camera's setting, as wants on light have it
/// @param gains what each channel is multiplied by for the white that the camera is balanced to
/// @param assumed what was taken for what the plan doesn't say, sentences
public record Developing(Exposure setting, Rgb gains, List<String> assumed) {
    /// The sensitivity where nobody says.
    private static final double ISO = 800;

    /// The white to which a camera is balanced where nobody says, K: daylight, as wants on looks have it.
    private static final double BALANCE_KELVIN = 5600;

    private static final double STEP_KELVIN = 10;

    /// Copies the list.
    public Developing {
        assumed = List.copyOf(assumed);
    }

    /// Reads it off a camera.
    ///
    /// @param camera the camera of a shot, or of a pass's effective one
    /// @param picture its picture then
    /// @param film the film's rate
    /// @return how it develops
    public static Developing of(Camera camera, Picture picture, Quantity film) {
        List<String> assumed = new ArrayList<>();
        OptionalDouble iso = camera.findIso();
        if (iso.isEmpty()) {
            assumed.add("No sensitivity is written: taken as ISO " + Print.number(ISO, 0) + ".");
        }
        Optional<Double> written = camera.written().findQuantity("white").map(Quantity::si);
        double kelvin = written.orElse(BALANCE_KELVIN);
        if (written.isEmpty()) {
            assumed.add("No white balance is written: taken as " + Print.number(kelvin, 0) + " K.");
        }
        double reached = kelvin;
        Optional<CameraWhite> balance = balance(reached);
        while (balance.isEmpty()) {
            reached += STEP_KELVIN;
            balance = balance(reached);
        }
        if (reached > kelvin) {
            assumed.add("A screen's primaries don't reach the white of " + Print.number(kelvin, 0)
                    + " K: balanced to " + Print.number(reached, 0) + " K, the nearest that they do.");
        }
        return new Developing(
                Setting.at(camera, picture, film, iso.orElse(ISO)), balance.orElseThrow().gains(), assumed);
    }

    /// Gives the white to which a camera is balanced: as written, else daylight's.
    ///
    /// @param camera the camera
    /// @return its chromaticity
    public static Chromaticity white(Camera camera) {
        return Planck.chromaticity(
                camera.written().findQuantity("white").map(Quantity::si).orElse(BALANCE_KELVIN));
    }

    private static Optional<CameraWhite> balance(double kelvin) {
        return CameraWhite.find(Primaries.REC_709, Planck.chromaticity(kelvin));
    }

    /// Gives what a luminance is multiplied by for its share of a screen's white, before white is balanced.
    ///
    /// @return m²/cd
    public double sharePerLuminance() {
        return Math.PI / setting.neededLux();
    }

    /// Gives where a share of white lies against mid grey.
    ///
    /// @param share of a screen's white, linear, ≥ 0
    /// @return stops, − under it; endless for none
    public static double stops(double share) {
        return Math.log(share / Latitude.midGrey(Exposure.FLAT)) / Math.log(2);
    }

    /// Gives the share of white of what lies so many stops over mid grey.
    ///
    /// @param stops stops, − under it
    /// @return share of a screen's white, linear
    public static double share(double stops) {
        return Latitude.midGrey(Exposure.FLAT) * Math.pow(2, stops);
    }
}
