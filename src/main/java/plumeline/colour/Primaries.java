package plumeline.colour;

/// The three primaries of pictures. Their white is D65 of four digits.
///
/// @param red red's chromaticity
/// @param green green's
/// @param blue blue's
public record Primaries(Chromaticity red, Chromaticity green, Chromaticity blue) {
    /// ITU-R BT.709, of sRGB too.
    public static final Primaries REC_709 = of(0.640, 0.330, 0.300, 0.600, 0.150, 0.060);

    /// SMPTE RP 431-2, with the white of screens.
    public static final Primaries P3 = of(0.680, 0.320, 0.265, 0.690, 0.150, 0.060);

    /// ITU-R BT.2020.
    public static final Primaries REC_2020 = of(0.708, 0.292, 0.170, 0.797, 0.131, 0.046);

    private static Primaries of(double rx, double ry, double gx, double gy, double bx, double by) {
        return new Primaries(Chromaticity.ofXy(rx, ry), Chromaticity.ofXy(gx, gy), Chromaticity.ofXy(bx, by));
    }

    /// Gives twice the triangle's area in u'v'.
    ///
    /// @return the area; below 0 where red, green and blue follow each other the wrong way round
    public double area() {
        return (green.u() - red.u()) * (blue.v() - red.v()) - (green.v() - red.v()) * (blue.u() - red.u());
    }

    /// Gives the channels of a light: `XYZ = M·RGB`, where M's columns are the primaries, scaled so that white is 1 in
    /// each.
    ///
    /// **Source:** SMPTE RP 177, 3.3, from memory.
    ///
    /// @param light X, Y and Z; Y of white is 1
    /// @return the channels
    public Rgb toRgb(Xyz light) {
        double[] rgb = matrix().solve(list(light));
        return new Rgb(rgb[0], rgb[1], rgb[2]);
    }

    /// Gives the light of channels.
    ///
    /// @param rgb the channels
    /// @return X, Y and Z; Y of white is 1
    public Xyz toXyz(Rgb rgb) {
        double[] xyz = matrix().times(new double[] {rgb.red(), rgb.green(), rgb.blue()});
        return new Xyz(xyz[0], xyz[1], xyz[2]);
    }

    private Matrix matrix() {
        double[] r = list(red.at(1));
        double[] g = list(green.at(1));
        double[] b = list(blue.at(1));
        double[][] rows = {{r[0], g[0], b[0]}, {r[1], g[1], b[1]}, {r[2], g[2], b[2]}};
        double[] scales = Matrix.of(rows).solve(list(Chromaticity.D65.at(1)));
        for (double[] row : rows) {
            for (int k = 0; k < 3; k++) {
                row[k] *= scales[k];
            }
        }
        return Matrix.of(rows);
    }

    private static double[] list(Xyz light) {
        return new double[] {light.x(), light.y(), light.z()};
    }
}
