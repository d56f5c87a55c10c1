package plumeline.colour;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import plumeline.tidy.Outside;

/// sRGB and CIELAB against the standard's figures and two other libraries.
@Outside(
        source = "IEC 61966-2-1; W3C CSS Color 4; colorjs.io 0.7.1 and culori 4.0.2, which agree",
        kind = "standard, other program")
final class LabOutsideTest {
    private static Xyz xyz(String hex) {
        return Srgb.find(hex).orElseThrow().toXyz();
    }

    /// CIELAB under D65 by both libraries (grade D: computed by other programs).
    @ParameterizedTest
    @CsvSource({
        "#ff0000, 53.2371, 80.0901, 67.2033",
        "#00FF00, 87.7355, -86.1816, 83.1866",
        "#0000ff, 32.3009, 79.1953, -107.8555",
        "#336699, 42.0092, -0.1459, -32.8451",
        "#ffffff, 100, 0, 0"
    })
    void lab_ofSrgb(String hex, double l, double a, double b) {
        Lab found = Lab.of(xyz(hex), Chromaticity.D65);
        assertThat(found.l()).isCloseTo(l, within(1e-3));
        assertThat(found.a()).isCloseTo(a, within(1e-3));
        assertThat(found.b()).isCloseTo(b, within(1e-3));
    }

    /// IEC 61966-2-1 worked out at three places (grade F: formula); the first one is on the curve, the last on the
    /// line.
    @ParameterizedTest
    @CsvSource({"0.5, 0.2140411", "0.04045, 0.00313080", "0.02, 0.00154799"})
    void curve_ofTheStandard(double coded, double light) {
        assertThat(Srgb.linear(coded)).isCloseTo(light, within(5e-8));
    }

    /// ITU-R BT.709's primaries and D65, by which the standard defines sRGB: x, y of each.
    @ParameterizedTest
    @CsvSource({"#ff0000, 0.64, 0.33", "#00ff00, 0.30, 0.60", "#0000ff, 0.15, 0.06", "#808080, 0.3127, 0.3290"})
    void primaries_ofTheStandard(String hex, double x, double y) {
        Chromaticity found = xyz(hex).findChromaticity().orElseThrow();
        assertThat(found.x()).isCloseTo(x, within(1e-9));
        assertThat(found.y()).isCloseTo(y, within(1e-9));
    }

    /// Its own inverses: every code comes back, in colour and as CIELAB.
    @Test
    void everyWay_comesBack() {
        int tried = 0;
        for (int code = 0; code <= 0xffffff; code += 0x010f2b) {
            String hex = String.format("#%06x", code);
            Xyz there = xyz(hex);
            assertThat(Srgb.find(there).orElseThrow().toHex()).isEqualTo(hex);
            Xyz back = Lab.of(there, Chromaticity.D65).toXyz(Chromaticity.D65);
            assertThat(Srgb.clipped(back).toHex()).isEqualTo(hex);
            tried++;
        }
        assertThat(tried).isGreaterThan(200);
        assertThat(Srgb.find("#12345")).isEmpty();
        assertThat(Srgb.find("red")).isEmpty();
    }

    /// What sRGB doesn't hold is held to its edge; a hue of 180 degrees on has a and b with other signs (CIE 15:2004,
    /// 8.2.3).
    @Test
    void complement_turnsTheHueAndMayLeaveSrgb() {
        Lab red = Lab.of(xyz("#ff0000"), Chromaticity.D65);
        Lab turned = red.complement();
        assertThat(turned.chroma()).isCloseTo(red.chroma(), within(1e-12));
        double turn = Math.toDegrees(turned.hueRadians() - red.hueRadians());
        assertThat(Math.abs(turn)).isCloseTo(180, within(1e-9));
        assertThat(Srgb.find(turned.toXyz(Chromaticity.D65))).isEmpty();
        assertThat(Srgb.clipped(turned.toXyz(Chromaticity.D65)).red()).isZero();
    }
}
