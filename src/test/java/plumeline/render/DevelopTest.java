package plumeline.render;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import plumeline.colour.Planck;
import plumeline.colour.Primaries;
import plumeline.colour.Rgb;
import plumeline.light.Exposure;
import plumeline.light.Latitude;
import plumeline.lit.Setting;
import plumeline.trace.MadePlate;
import plumeline.trace.Plate;

final class DevelopTest {
    private static final double GREY = Latitude.midGrey(Exposure.FLAT);

    /// An evenly scattering surface in so many lux, cd/m².
    private static double luminance(double reflectance, double lux) {
        return reflectance * lux / Math.PI;
    }

    /// The white to which a camera is balanced where nobody says.
    private static Rgb daylight(double luminance) {
        return Primaries.REC_709.toRgb(Planck.chromaticity(5600).at(luminance));
    }

    private static int developed(Shown shown, Rgb light) {
        Plate plate = MadePlate.of(3, 2, (x, y) -> new double[] {light.red(), light.green(), light.blue()});
        return Develop.of(plate, shown.stage().shot(), shown.scene(), shown.film())
                .at(1, 1);
    }

    /// 0.15708 · 1 is shown by 1.055 · 0.15708^(1/2.4) − 0.055 = 0.4327, 110 of 255.
    @Test
    void midGrey_inTheLightThatIsNeeded_landsAtItsShare() {
        Shown shown = Shown.plain();
        double needed = Setting.find(
                        shown.stage().shot().camera(), shown.scene().picture(), shown.film())
                .orElseThrow()
                .neededLux();
        double grey = luminance(GREY, needed);
        assertThat(grey * shown.developing().sharePerLuminance()).isCloseTo(GREY, within(1e-12));
        assertThat(developed(shown, daylight(grey))).isEqualTo(110 << 16 | 110 << 8 | 110);
        assertThat(developed(shown, daylight(luminance(1, needed)))).isEqualTo(0xffffff);
        assertThat(Developing.stops(GREY)).isCloseTo(0, within(1e-12));
        assertThat(Developing.share(1)).isCloseTo(2 * GREY, within(1e-12));
    }

    /// A stop of each doubles what arrives, or halves it. A magnification m loses (1 + m)² with a pupil ratio of 1.
    @ParameterizedTest
    @CsvSource({
        "'', ', iso: 1600', 2",
        "'', ', shutter: 360 deg', 2",
        "'', ', rate: 48 fps', 0.5",
        "'', ', loss: 1 stops', 0.5",
        "', loss: 2 stops', '', 0.25",
        "', loss: 1 stops', ', loss: 1 stops', 0.25"
    })
    void eachSetting_countsOnce(String lens, String camera, double times) {
        double plain = Shown.plain().developing().sharePerLuminance();
        double other = Shown.of("", lens, camera, "").developing().sharePerLuminance();
        assertThat(other / plain).isCloseTo(times, within(1e-9));
    }

    /// E = 250 · N²/(t · S) · (1 + m)², m = f/(s − f) of a thin lens.
    @Test
    void closeFocus_loses() {
        double magnification = 50.0 / (767 - 50);
        double needed = 250 * 16 * 48 / 800.0 * Math.pow(1 + magnification, 2);
        assertThat(Shown.plain().developing().sharePerLuminance()).isCloseTo(Math.PI / needed, within(2e-3 / needed));
    }

    @ParameterizedTest
    @ValueSource(ints = {2000, 3200, 4300, 5600, 7500, 10000})
    void greyUnderTheBalancedWhite_isNeutral(int kelvin) {
        Shown shown = Shown.of("", "", ", white: " + kelvin + " K", "");
        double lux = shown.developing().setting().neededLux();
        Rgb grey = Primaries.REC_709.toRgb(Planck.chromaticity(kelvin).at(luminance(0.3, lux)));
        int pixel = developed(shown, grey);
        int step = ScreenScale.step(0.3);
        assertThat(pixel >> 16).isCloseTo(step, within(1));
        assertThat(pixel >> 8 & 255).isCloseTo(step, within(1));
        assertThat(pixel & 255).isCloseTo(step, within(1));
    }

    /// A warm lamp before a camera for daylight shows warm.
    @Test
    void whiteThatIsNotBalanced_keepsItsColour() {
        Shown shown = Shown.plain();
        double lux = shown.developing().setting().neededLux();
        int pixel = developed(
                shown, Primaries.REC_709.toRgb(Planck.chromaticity(3200).at(luminance(0.3, lux))));
        assertThat(pixel >> 16).isGreaterThan((pixel >> 8 & 255) + 10);
        assertThat(pixel >> 8 & 255).isGreaterThan((pixel & 255) + 10);
    }

    @Test
    void whatIsTakenForGranted_isTold() {
        assertThat(Shown.plain().developing().assumed())
                .containsExactly("No white balance is written: taken as 5600 K.");
        assertThat(Shown.of("", "", ", white: 1500 K", "").developing().assumed())
                .singleElement()
                .asString()
                .contains("don't reach the white of 1500 K");
    }
}
