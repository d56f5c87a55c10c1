package plumeline.colour;

import java.util.Locale;
import java.util.Optional;
import plumeline.ranges.Ranges;

/// A colour in sRGB, as screens and label files have it. Its white is D65.
///
/// **Source:** IEC 61966-2-1 for the curve; the matrix follows from the primaries of ITU-R BT.709 and D65 of four
/// digits, so that white is exact.
///
/// @param red red as it is coded, 0 to 1
/// @param green green as it is coded, 0 to 1
/// @param blue blue as it is coded, 0 to 1
public record Srgb(double red, double green, double blue) {
    private static final int MOST_CODE = 255;

    /// Checks the ranges.
    ///
    /// @throws IllegalArgumentException outside them
    public Srgb {
        Ranges.check(red >= 0 && red <= 1, "red", red, "0 to 1");
        Ranges.check(green >= 0 && green <= 1, "green", green, "0 to 1");
        Ranges.check(blue >= 0 && blue <= 1, "blue", blue, "0 to 1");
    }

    /// Reads `#rrggbb`.
    ///
    /// @param text a `#` and six digits of base sixteen
    /// @return the colour; empty where the text is anything else
    public static Optional<Srgb> find(String text) {
        if (!text.matches("#[0-9a-fA-F]{6}")) {
            return Optional.empty();
        }
        int code = Integer.parseInt(text.substring(1), 16);
        return Optional.of(new Srgb(
                (code >> 16 & MOST_CODE) / (double) MOST_CODE,
                (code >> 8 & MOST_CODE) / (double) MOST_CODE,
                (code & MOST_CODE) / (double) MOST_CODE));
    }

    /// Writes `#rrggbb`, each part to the nearest of 256 steps.
    ///
    /// @return the text, in small letters
    public String toHex() {
        return String.format(
                Locale.ROOT,
                "#%02x%02x%02x",
                Math.round(red * MOST_CODE),
                Math.round(green * MOST_CODE),
                Math.round(blue * MOST_CODE));
    }

    /// Gives the tristimulus values.
    ///
    /// @return X, Y and Z; Y of white is 1
    public Xyz toXyz() {
        double r = linear(red);
        double g = linear(green);
        double b = linear(blue);
        return new Xyz(
                0.4123907992659595 * r + 0.3575843393838780 * g + 0.1804807884018343 * b,
                0.2126390058715104 * r + 0.7151686787677559 * g + 0.0721923153607337 * b,
                0.0193308187155918 * r + 0.1191947797946259 * g + 0.9505321522496606 * b);
    }

    /// Finds the colour of tristimulus values.
    ///
    /// @param colour X, Y and Z; Y of white is 1
    /// @return the colour; empty where sRGB doesn't hold it, to half a step of 256
    public static Optional<Srgb> find(Xyz colour) {
        double[] coded = coded(colour);
        double slack = 0.5 / MOST_CODE;
        for (double each : coded) {
            if (each < -slack || each > 1 + slack) {
                return Optional.empty();
            }
        }
        return Optional.of(clipped(coded));
    }

    /// Gives the colour of tristimulus values with each part held to what sRGB has: what a screen shows of it.
    ///
    /// @param colour X, Y and Z; Y of white is 1
    /// @return the colour; of another hue where a part was held
    public static Srgb clipped(Xyz colour) {
        return clipped(coded(colour));
    }

    /// Finds the brightest colour of a chromaticity: its largest part is full.
    ///
    /// @param colour the chromaticity
    /// @return the colour; empty where sRGB doesn't hold it
    public static Optional<Srgb> findBrightest(Chromaticity colour) {
        Xyz light = colour.at(1);
        double[] linear = linear(light);
        double most = Math.max(linear[0], Math.max(linear[1], linear[2]));
        return most > 0 ? find(Xyz.DARK.plus(light, 1 / most)) : Optional.empty();
    }

    /// Gives the colour of the opposite hue in HSL, at the same saturation and lightness: each part `max + min − part`.
    /// In HSV it is the same.
    ///
    /// @return the complement
    public Srgb opposite() {
        double ends = Math.max(red, Math.max(green, blue)) + Math.min(red, Math.min(green, blue));
        return new Srgb(ends - red, ends - green, ends - blue);
    }

    private static Srgb clipped(double[] coded) {
        return new Srgb(Math.clamp(coded[0], 0, 1), Math.clamp(coded[1], 0, 1), Math.clamp(coded[2], 0, 1));
    }

    private static double[] coded(Xyz colour) {
        double[] parts = linear(colour);
        for (int i = 0; i < parts.length; i++) {
            parts[i] = coded(parts[i]);
        }
        return parts;
    }

    private static double[] linear(Xyz c) {
        return new double[] {
            3.2409699419045226 * c.x() - 1.5373831775700940 * c.y() - 0.4986107602930034 * c.z(),
            -0.9692436362808796 * c.x() + 1.8759675015077202 * c.y() + 0.0415550574071756 * c.z(),
            0.0556300796969936 * c.x() - 0.2039769588889766 * c.y() + 1.0569715142428786 * c.z()
        };
    }

    /// Gives the light of a coded part.
    ///
    /// @param coded 0 to 1
    /// @return its light, 0 to 1
    public static double linear(double coded) {
        return coded <= 0.04045 ? coded / 12.92 : Math.pow((coded + 0.055) / 1.055, 2.4);
    }

    /// Gives how a part of light is coded.
    ///
    /// @param linear its light, 0 to 1
    /// @return 0 to 1
    public static double coded(double linear) {
        return linear <= 0.0031308 ? 12.92 * linear : 1.055 * Math.pow(linear, 1 / 2.4) - 0.055;
    }
}
