package plumeline.colour;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import plumeline.tidy.Outside;

/// Dominant and complementary wavelengths and other complements against other programs.
@Outside(
        source = "colour-science 0.4.6; colorjs.io 0.7.1; closed forms",
        place = "chords through white on its CIE 1931 spectrum of 1 nm",
        kind = "other program, closed form",
        printedDigits = 4)
final class SpectralLocusOutsideTest {
    private static Chromaticity white(String name) {
        return switch (name) {
            case "D65" -> Chromaticity.D65;
            case "C" -> Chromaticity.ofXy(0.31006, 0.31616);
            case "A" -> Chromaticity.ofXy(0.44758, 0.40745);
            default -> Chromaticity.ofXy(1.0 / 3, 1.0 / 3);
        };
    }

    private static double nanometres(SpectralLocus.Edge edge) {
        return switch (edge) {
            case SpectralLocus.Edge.Wavelength(var _, double metres) -> metres * 1e9;
            case SpectralLocus.Edge.Purple _ -> 0;
        };
    }

    private static Chromaticity spectral(double nanometres) {
        return Observer.at((int) nanometres - 380).findChromaticity().orElseThrow();
    }

    @ParameterizedTest
    @CsvSource({
        "450, 568.3, D65", "465, 570.6, D65", "470, 572.2, D65", "480, 578.4, D65", "490, 600.7, D65",
        "580, 481.4, D65", "590, 487.1, D65", "600, 489.9, D65", "625, 492.4, D65", "480, 580.1, C",
        "580, 479.9, C", "465, 580.2, A", "600, 498.2, A", "480, 580.4, E", "580, 479.5, E"
    })
    void complementaryWavelength(double nanometres, double complement, String white) {
        SpectralLocus.Edge edge =
                SpectralLocus.findOpposite(spectral(nanometres), white(white)).orElseThrow();
        assertThat(nanometres(edge)).isCloseTo(complement, within(0.3));
        assertThat(nanometres(
                        SpectralLocus.find(spectral(nanometres), white(white)).orElseThrow()))
                .isCloseTo(nanometres, within(0.01));
        assertThat(SpectralLocus.purity(spectral(nanometres), white(white))).isCloseTo(1, within(1e-6));
    }

    /// Greens have none: the chord meets the line of purples, from 380 nm (0.1741, 0.0050) to 700 nm (0.7347, 0.2653;
    /// CIE 15:2004, table T.4, from memory).
    @Test
    void green_hasNoComplementaryWavelength() {
        assertThat(SpectralLocus.findOpposite(spectral(520), Chromaticity.D65))
                .get()
                .isInstanceOf(SpectralLocus.Edge.Purple.class);
        SpectralLocus.Place place = SpectralLocus.findOpposite(spectral(520), Chromaticity.D65)
                .orElseThrow()
                .place();
        double along = (place.x() - 0.1741) / (0.7347 - 0.1741);
        assertThat(along).isBetween(0.1, 0.9);
        assertThat(place.y()).isCloseTo(0.0050 + along * (0.2653 - 0.0050), within(2e-4));
        assertThat(SpectralLocus.find(white("D65"), Chromaticity.D65)).isEmpty();
    }

    /// The point of colour-science's own documents: 616 and 492 nm.
    @Test
    void dominantWavelength_asInTheDocuments() {
        Chromaticity colour = Chromaticity.ofXy(0.54369557, 0.32107944);
        assertThat(nanometres(SpectralLocus.find(colour, Chromaticity.D65).orElseThrow()))
                .isCloseTo(616, within(0.6));
        assertThat(nanometres(
                        SpectralLocus.findOpposite(colour, Chromaticity.D65).orElseThrow()))
                .isCloseTo(492, within(0.6));
    }

    /// By its definition a complement mixes with its colour to the white; of a purer colour than light can have it is
    /// the outline's.
    @Test
    void complement_liesAcross_asPure() {
        Chromaticity colour = Chromaticity.ofXy(0.42, 0.33);
        Chromaticity other = SpectralLocus.complement(colour, Chromaticity.D65);
        double across = (colour.x() - 0.3127) * (other.y() - 0.3290) - (colour.y() - 0.3290) * (other.x() - 0.3127);
        assertThat(across).isCloseTo(0, within(1e-9));
        assertThat((colour.x() - 0.3127) * (other.x() - 0.3127)).isNegative();
        assertThat(SpectralLocus.purity(other, Chromaticity.D65))
                .isCloseTo(SpectralLocus.purity(colour, Chromaticity.D65), within(1e-9));
        Chromaticity beyond = Chromaticity.ofXy(0.02, 0.15);
        assertThat(SpectralLocus.purity(beyond, Chromaticity.D65)).isGreaterThan(1);
        assertThat(SpectralLocus.purity(SpectralLocus.complement(beyond, Chromaticity.D65), Chromaticity.D65))
                .isCloseTo(1, within(1e-6));
    }

    /// CIELUV by its definition in x and y: `u* = 13 L* (4x/(3 − 2x + 12y) − u'n)` and v* alike turn to −u* and −v*.
    @Test
    void luv_opposite() {
        Chromaticity colour = Chromaticity.ofXy(0.24, 0.30);
        Chromaticity other = colour.opposite(Chromaticity.D65);
        double[] here = luv(colour.x(), colour.y());
        double[] there = luv(other.x(), other.y());
        assertThat(Math.hypot(here[0], here[1])).isGreaterThan(30);
        assertThat(there[0]).isCloseTo(-here[0], within(1e-9));
        assertThat(there[1]).isCloseTo(-here[1], within(1e-9));
    }

    private static double[] luv(double x, double y) {
        double all = 3 - 2 * x + 12 * y;
        double white = 3 - 2 * 0.3127 + 12 * 0.3290;
        return new double[] {13 * 50 * (4 * x / all - 4 * 0.3127 / white), 13 * 50 * (9 * y / all - 9 * 0.3290 / white)
        };
    }

    /// Hue turned by 180 deg in HSL at the same saturation and lightness: hsl(210, 50 %, 40 %) is #336699, and hsl(30,
    /// 50 %, 40 %) is #996633 (closed form).
    @Test
    void rgb_opposite() {
        assertThat(Srgb.find("#336699").orElseThrow().opposite().toHex()).isEqualTo("#996633");
        assertThat(Srgb.find("#ff8000").orElseThrow().opposite().toHex()).isEqualTo("#007fff");
        assertThat(Srgb.findBrightest(Chromaticity.ofXy(0.64, 0.33))
                        .orElseThrow()
                        .toHex())
                .isEqualTo("#ff0000");
        assertThat(Srgb.findBrightest(Chromaticity.D65).orElseThrow().toHex()).isEqualTo("#ffffff");
        assertThat(Srgb.findBrightest(Chromaticity.ofXy(0.17, 0.75))).isEmpty();
    }
}
