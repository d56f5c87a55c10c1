package plumeline.colour;

import java.util.List;

/// What a light makes of a surface whose own colour is known on screens only: a rough stand-in for spectra.
///
/// Surface and light are split into the red, green and blue of sRGB, and each part of the surface takes its part of the
/// light: exact for even spectra, and for lights that are daylight; narrow emitters make it wrong by tens of a
/// difference, whites of phosphor by a few. A light purer than sRGB has is held to it.
///
/// **Source:** von Kries' scaling, in Bradford's sharpened cones (CIE 160:2004; matrix from memory), then products by
/// channel: common practice where no spectra are known.
public final class Seen {
    private static final int HALVINGS = 50;

    private static final double[][] CONES = {
        {0.8951, 0.2664, -0.1614}, {-0.7502, 1.7135, 0.0367}, {0.0389, -0.0685, 1.0296}
    };
    private static final double[][] BACK = {
        {0.9869929, -0.1470543, 0.1599627}, {0.4323053, 0.5183603, 0.0492912}, {-0.0085287, 0.0400428, 0.9684867}
    };

    private Seen() {}

    /// Gives the tristimulus values that look the same once eye, or camera, has come from one white to another.
    ///
    /// @param colour X, Y and Z under the first
    /// @param from the first white
    /// @param to the other
    /// @return X, Y and Z under the other
    public static Xyz adapted(Xyz colour, Chromaticity from, Chromaticity to) {
        double[] cones = times(CONES, colour);
        double[] one = times(CONES, from.at(1));
        double[] other = times(CONES, to.at(1));
        Xyz scaled = new Xyz(cones[0] * other[0] / one[0], cones[1] * other[1] / one[1], cones[2] * other[2] / one[2]);
        double[] back = times(BACK, scaled);
        return new Xyz(back[0], back[1], back[2]);
    }

    private static double[] times(double[][] matrix, Xyz v) {
        double[] product = new double[matrix.length];
        for (int i = 0; i < matrix.length; i++) {
            product[i] = matrix[i][0] * v.x() + matrix[i][1] * v.y() + matrix[i][2] * v.z();
        }
        return product;
    }

    /// Gives how a surface looks on a screen, exposed so that white under that light just fills its fullest channel.
    ///
    /// @param surface its own colour under daylight, as a screen shows it
    /// @param light the light on it
    /// @param white the white to which the camera is balanced
    /// @return the colour
    public static Srgb under(Srgb surface, Chromaticity light, Chromaticity white) {
        Srgb on = brightest(adapted(light.at(1), white, Chromaticity.D65));
        return Srgb.clipped(Xyz.DARK
                .plus(new Srgb(1, 0, 0).toXyz(), Srgb.linear(surface.red()) * Srgb.linear(on.red()))
                .plus(new Srgb(0, 1, 0).toXyz(), Srgb.linear(surface.green()) * Srgb.linear(on.green()))
                .plus(new Srgb(0, 0, 1).toXyz(), Srgb.linear(surface.blue()) * Srgb.linear(on.blue())));
    }

    /// Gives a colour as bright as a screen has it, held to what it has.
    ///
    /// @param colour X, Y and Z under D65, Y > 0
    /// @return the colour, its fullest part full
    public static Srgb brightest(Xyz colour) {
        double low = 0;
        double high = 1 / colour.y();
        for (int i = 0; i < HALVINGS; i++) {
            double middle = (low + high) / 2;
            Srgb there = Srgb.clipped(Xyz.DARK.plus(colour, middle));
            boolean isFull = Math.max(there.red(), Math.max(there.green(), there.blue())) >= 1;
            low = isFull ? low : middle;
            high = isFull ? middle : high;
        }
        return Srgb.clipped(Xyz.DARK.plus(colour, high));
    }

    /// Gives a screen's colour in linear light.
    ///
    /// @param colour the colour
    /// @return red, green and blue, 0 to 1
    public static List<Double> linear(Srgb colour) {
        return List.of(Srgb.linear(colour.red()), Srgb.linear(colour.green()), Srgb.linear(colour.blue()));
    }
}
