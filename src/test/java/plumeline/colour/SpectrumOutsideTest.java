package plumeline.colour;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import plumeline.tidy.Outside;

/// Spectra against the chromaticities that standards print of them and another library's sums.
@Outside(
        source = "CIE 15:2004; colour-science 0.4.6; closed forms",
        place = "table T.3; each test names its own",
        kind = "standard, other program, closed form",
        printedDigits = 5)
final class SpectrumOutsideTest {
    private static void check(Spectrum light, double x, double y, double tolerance) {
        Chromaticity found = light.xyz().findChromaticity().orElseThrow();
        assertThat(found.x()).isCloseTo(x, within(tolerance));
        assertThat(found.y()).isCloseTo(y, within(tolerance));
    }

    /// Chromaticities of CIE 15:2004, table T.3, of the standard illuminants (grade P: printed); their names' kelvins
    /// are by an older constant, times 1.4388/1.4380, and A's by 1.4388/1.435.
    @Test
    void standardIlluminants_asPrinted() {
        check(Daylight.spectrum(5000 * 1.4388 / 1.4380), 0.34567, 0.35851, 2e-5);
        check(Daylight.spectrum(5500 * 1.4388 / 1.4380), 0.33243, 0.34744, 2e-5);
        check(Daylight.spectrum(6500 * 1.4388 / 1.4380), 0.31272, 0.32903, 2e-5);
        check(Daylight.spectrum(7500 * 1.4388 / 1.4380), 0.29903, 0.31488, 2e-5);
        check(Planck.spectrum(2848 * 1.4388 / 1.4350), 0.44758, 0.40745, 2e-5);
        check(Spectrum.of(_ -> 1), 1.0 / 3, 1.0 / 3, 2e-5);
    }

    /// The observer's sum of y over whole nanometres: 106.8569 (from memory of the standard's table in such steps);
    /// what lies before 380 nm is left out here, a hundredth of x and z.
    @Test
    void observer_inNanometres_sumsUpAsKnown() {
        Xyz all = Spectrum.of(_ -> 1).xyz();
        assertThat(all.y()).isCloseTo(106.8569, within(0.002));
        assertThat(all.x()).isCloseTo(106.8569, within(0.02));
        assertThat(all.z()).isCloseTo(106.8569, within(0.02));
    }

    /// Planck's law summed in steps of 1 nm by colour-science 0.4.6, over a longer table (grade D); the ultraviolet
    /// that is left out here makes the difference.
    @ParameterizedTest
    @CsvSource({"2000, 0.52668, 0.41330", "3200, 0.42336, 0.39895", "5600, 0.33020, 0.33908", "10000, 0.28063, 0.28829"
    })
    void planck_againstFineSums(double kelvin, double x, double y) {
        check(Planck.spectrum(kelvin), x, y, 1e-4);
    }

    /// D65's relative powers as CIE 15:2004 prints them (table T.1, from memory): 82.7549 at 400 nm, 117.812 at 460 nm,
    /// 100 at 560 nm, 87.6987 at 620 nm, 71.6091 at 700 nm.
    @Test
    void d65_powersAsPrinted() {
        Spectrum d65 = Daylight.spectrum(6500 * 1.4388 / 1.4380);
        double scale = 100 / d65.values().get(180);
        double[][] printed = {{400, 82.7549}, {460, 117.812}, {620, 87.6987}, {700, 71.6091}};
        for (double[] row : printed) {
            assertThat(scale * d65.values().get((int) row[0] - 380)).isCloseTo(row[1], within(0.05));
        }
    }

    /// A narrow peak has the colour of its wavelength: 625, 525 and 465 nm by colour-science 0.4.6.
    @ParameterizedTest
    @CsvSource({"625, 0.70061, 0.29930", "525, 0.11416, 0.82621", "465, 0.13550, 0.03988"})
    void peak_ofThreeNanometres_isNearlyOneWavelength(double nanometres, double x, double y) {
        check(Spectrum.peak(nanometres * 1e-9, 3e-9), x, y, 1e-3);
    }

    /// The width is where half is left, by its definition.
    @Test
    void peak_halfIsLeftAtHalfTheWidth() {
        Spectrum peak = Spectrum.peak(530e-9, 30e-9);
        assertThat(peak.values().get(150)).isEqualTo(1);
        assertThat(peak.values().get(135)).isCloseTo(0.5, within(1e-9));
        assertThat(peak.values().get(165)).isCloseTo(0.5, within(1e-9));
        assertThatThrownBy(() -> Spectrum.peak(530e-9, 2e-9)).isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void table_goesStraight_andEndsAsToldTo() {
        List<Spectrum.Row> rows =
                List.of(new Spectrum.Row(400e-9, 0.2), new Spectrum.Row(420e-9, 0.6), new Spectrum.Row(700e-9, 0.4));
        Spectrum surface = Spectrum.of(rows, Spectrum.Beyond.THE_SAME);
        assertThat(surface.values().get(0)).isEqualTo(0.2);
        assertThat(surface.values().get(25)).isCloseTo(0.3, within(1e-9));
        assertThat(surface.values().get(180)).isCloseTo(0.5, within(1e-9));
        assertThat(surface.values().get(400)).isEqualTo(0.4);
        Spectrum light = Spectrum.of(rows, Spectrum.Beyond.NOTHING);
        assertThat(light.values().get(19)).isZero();
        assertThat(light.values().get(20)).isCloseTo(0.2, within(1e-9));
        assertThat(light.values().get(320)).isEqualTo(0.4);
        assertThat(light.values().get(321)).isZero();
    }

    /// A grey of 18 % has the light's colour and Y 0.18 under any light; lights add.
    @Test
    void grey_keepsTheLightsColour() {
        Spectrum light = Spectrum.peak(625e-9, 20e-9).plus(Spectrum.peak(465e-9, 20e-9), 0.4);
        Xyz grey = light.xyz(Spectrum.of(_ -> 0.18));
        assertThat(grey.y()).isCloseTo(0.18, within(1e-12));
        assertThat(grey.findChromaticity()
                        .orElseThrow()
                        .distance(light.xyz().findChromaticity().orElseThrow()))
                .isLessThan(1e-12);
        Xyz sum = Spectrum.peak(625e-9, 20e-9)
                .xyz()
                .plus(Spectrum.peak(465e-9, 20e-9).xyz(), 0.4);
        assertThat(light.xyz().x()).isCloseTo(sum.x(), within(1e-9));
    }
}
