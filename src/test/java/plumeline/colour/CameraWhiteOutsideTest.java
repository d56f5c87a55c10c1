package plumeline.colour;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import plumeline.tidy.Outside;

/// Channels, balances and whites against standards' matrices and closed forms.
@Outside(
        source = "W3C CSS Color 4, sample code for ITU-R BT.709, BT.2020 and P3; closed forms",
        place = "section 17",
        kind = "standard, closed form",
        printedDigits = 7)
final class CameraWhiteOutsideTest {
    /// RGB to XYZ, column by column: what a channel of 1 gives.
    @ParameterizedTest
    @CsvSource({
        "709, 0.4123908, 0.2126390, 0.0193308, 0.3575843, 0.7151687, 0.1191948, 0.1804808, 0.0721923, 0.9505322",
        "2020, 0.6369580, 0.2627002, 0.0000000, 0.1446169, 0.6779981, 0.0280727, 0.1688810, 0.0593017, 1.0609851",
        "P3, 0.4865709, 0.2289746, 0.0000000, 0.2656677, 0.6917385, 0.0451134, 0.1982173, 0.0792869, 1.0439444"
    })
    void matrices(
            String name,
            double rx,
            double ry,
            double rz,
            double gx,
            double gy,
            double gz,
            double bx,
            double by,
            double bz) {
        Primaries primaries = switch (name) {
            case "709" -> Primaries.REC_709;
            case "2020" -> Primaries.REC_2020;
            default -> Primaries.P3;
        };
        check(primaries.toXyz(new Rgb(1, 0, 0)), rx, ry, rz);
        check(primaries.toXyz(new Rgb(0, 1, 0)), gx, gy, gz);
        check(primaries.toXyz(new Rgb(0, 0, 1)), bx, by, bz);
        Rgb back = primaries.toRgb(primaries.toXyz(new Rgb(0.3, 0.5, 0.7)));
        assertThat(back.red()).isCloseTo(0.3, within(1e-12));
        assertThat(back.green()).isCloseTo(0.5, within(1e-12));
        assertThat(back.blue()).isCloseTo(0.7, within(1e-12));
    }

    private static void check(Xyz found, double x, double y, double z) {
        assertThat(found.x()).isCloseTo(x, within(1e-6));
        assertThat(found.y()).isCloseTo(y, within(1e-6));
        assertThat(found.z()).isCloseTo(z, within(1e-6));
    }

    /// A light of the red primary alone, balanced for the screen's white: all of its luminance comes of one channel
    /// that gives 0.2126 of white's (BT.709), so that it stands at 1/0.2126: log2 is 2.23 stops. The others are
    /// empty.
    @Test
    void red_standsAboveTheReading() {
        CameraWhite camera =
                CameraWhite.find(Primaries.REC_709, Chromaticity.D65).orElseThrow();
        Rgb channels = camera.channels(Chromaticity.ofXy(0.64, 0.33).at(1));
        assertThat(channels.red()).isCloseTo(1 / 0.212639, within(1e-4));
        assertThat(channels.green()).isCloseTo(0, within(1e-9));
        assertThat(channels.blue()).isCloseTo(0, within(1e-9));
        assertThat(channels.most()).isEqualTo(channels.red());
    }

    /// The balance's own white comes out as the screen's, and a purer red than the primaries' leaves green below 0.
    @Test
    void balancedWhite_isNeutral() {
        Chromaticity tungsten = Planck.chromaticity(3200);
        CameraWhite camera = CameraWhite.find(Primaries.REC_709, tungsten).orElseThrow();
        Rgb even = camera.channels(tungsten.at(0.5));
        assertThat(even.red()).isCloseTo(0.5, within(1e-12));
        assertThat(even.green()).isCloseTo(0.5, within(1e-12));
        assertThat(even.blue()).isCloseTo(0.5, within(1e-12));
        assertThat(camera.shown(tungsten.at(1)).findChromaticity().orElseThrow().distance(Chromaticity.D65))
                .isLessThan(1e-9);
        assertThat(camera.channels(Chromaticity.ofXy(0.70, 0.299).at(1)).least())
                .isNegative();
        assertThat(CameraWhite.find(Primaries.REC_709, Chromaticity.ofXy(0.70, 0.299)))
                .isEmpty();
    }

    /// Luminance shares of the primaries of BT.709 for 3200 K (closed form, a three by three sum): 0.35719, 0.61929 and
    /// 0.02352. Balanced for D65, a channel is its share over its luminance of white.
    @Test
    void tungsten_underDaylightBalance() {
        CameraWhite camera =
                CameraWhite.find(Primaries.REC_709, Chromaticity.D65).orElseThrow();
        Rgb channels = camera.channels(Planck.chromaticity(3200).at(1));
        assertThat(channels.red()).isCloseTo(0.35719 / 0.2126390, within(1e-3));
        assertThat(channels.green()).isCloseTo(0.61929 / 0.7151687, within(1e-3));
        assertThat(channels.blue()).isCloseTo(0.02352 / 0.0721923, within(2e-3));
    }

    /// A white's colour is where it is found again; + is toward green, that is y up (CIE 15:2004, 9.5).
    @ParameterizedTest
    @CsvSource({"3200, 0.01", "5600, -0.02", "5600, 0", "1200, 0.003", "20000, 0.01"})
    void white_thereAndBack(double kelvin, double duv) {
        Chromaticity there = new White(kelvin, duv).chromaticity();
        White back = White.find(there).orElseThrow();
        assertThat(back.kelvin()).isCloseTo(kelvin, within(kelvin * 1e-5));
        assertThat(back.duv()).isCloseTo(duv, within(1e-8));
    }
}
