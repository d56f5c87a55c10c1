package plumeline.optics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import plumeline.tidy.Outside;

/// How much a clear face and a clear pane mirror.
@Outside(
        source = "Fresnel's formulas, Brewster's and the critical angle (Smith, Modern Optical Engineering, eq. 11.1)",
        kind = "closed form")
final class FresnelOutsideTest {
    @ParameterizedTest
    @CsvSource({
        "45, 1, 1.333, 0.05299, 0.00281, 0.02790",
        "60, 1, 1.333, 0.11507, 0.00431, 0.05969",
        "75, 1, 1.333, 0.31402, 0.11074, 0.21238",
        "30, 1, 1.5, 0.05780, 0.02525, 0.04152",
        "45, 1, 1.5, 0.09201, 0.00847, 0.05024",
        "60, 1, 1.5, 0.17657, 0.00180, 0.08919",
        "75, 1, 1.5, 0.39936, 0.10677, 0.25306",
        "85, 1, 1.5, 0.73235, 0.49325, 0.61280",
        "45, 1, 1.52, 0.09673, 0.00936, 0.05305",
        "60, 1, 1.52, 0.18344, 0.00153, 0.09248",
        "75, 1, 1.52, 0.40785, 0.10558, 0.25672",
        "0, 1, 1.333, 0.020373, 0.020373, 0.020373",
        "0, 1, 1.5, 0.04, 0.04, 0.04",
        "0, 1.52, 1.333, 0.0042962, 0.0042962, 0.0042962"
    })
    @Outside(
            source = "Smith, Modern Optical Engineering, 4th ed., eqs 11.1 and 11.2, by a table reckoned apart",
            kind = "closed form",
            printedDigits = 5)
    void face(double degrees, double from, double to, double s, double p, double mean) {
        Polarised found = new Boundary(from, to).reflectance(Math.toRadians(degrees));
        assertThat(found.s()).isCloseTo(s, within(6e-6));
        assertThat(found.p()).isCloseTo(p, within(6e-6));
        assertThat(found.mean()).isCloseTo(mean, within(6e-6));
    }

    @Test
    @Outside(
            source = "Giancoli, Physics, 7th ed., ch. 24 problem 69; OpenStax, College Physics, ch. 27",
            kind = "worked example",
            printedDigits = 3)
    void brewster() {
        assertBrewster(1, 1.33, 53.1, 0.06);
        assertBrewster(1.33, 1, 36.9, 0.06);
        assertBrewster(1.52, 1.33, 41.2, 0.05);
        assertBrewster(1, 1.52, 56.6593, 1e-4);
    }

    private static void assertBrewster(double from, double to, double degrees, double near) {
        Boundary face = new Boundary(from, to);
        assertThat(Math.toDegrees(face.brewsterRadians())).isCloseTo(degrees, within(near));
        assertThat(face.reflectance(face.brewsterRadians()).p()).isLessThan(1e-25);
    }

    /// From glass into air nothing passes from 41.1395 deg on (Snell's law); just before, nearly nothing.
    @Test
    void pastTheCriticalAngle_allIsMirrored() {
        Boundary out = new Boundary(1.52, 1);
        assertThat(out.reflectance(Math.toRadians(41.1396)).mean()).isEqualTo(1);
        assertThat(out.reflectance(Math.toRadians(41.1394)).mean()).isBetween(0.98, 0.9999);
        assertThat(new Boundary(1, 1.5).reflectance(Math.PI / 2).mean()).isCloseTo(1, within(1e-12));
    }

    /// Straight through a tank's wall 0.95331 passes by the product of both faces; what goes to and fro adds R₁R₂ of
    /// it.
    @Test
    @Outside(source = "product of two surfaces, Smith eq. 11.2", kind = "closed form", printedDigits = 5)
    void wallOfATank() {
        double passing = new ClearPane(1, 1.52, 1.333).transmittance(0).mean();
        assertThat(passing * (1 - 0.04258 * 0.0042962)).isCloseTo(0.95331, within(5e-6));
    }

    @ParameterizedTest
    @CsvSource({"1, 1.52, 1, 0", "1, 1.52, 1, 50", "1, 1.52, 1, 85", "1, 1.52, 1.333, 60", "1.333, 1.52, 1, 40"})
    @Outside(
            source = "the ways to and fro added one by one, 2R/(1 + R) of a pane in air; any optics text",
            kind = "closed form")
    void pane_isTheSumOfWaysToAndFro(double before, double glass, double behind, double degrees) {
        double radians = Math.toRadians(degrees);
        double inside = new Boundary(before, glass).findBentRadians(radians).orElseThrow();
        double first = new Boundary(before, glass).reflectance(radians).s();
        double second = new Boundary(glass, behind).reflectance(inside).s();
        double mirrored = first;
        double within = 1 - first;
        double passed = 0;
        for (int i = 0; i < 200; i++) {
            passed += within * (1 - second);
            within *= second;
            mirrored += within * (1 - first);
            within *= first;
        }
        ClearPane pane = new ClearPane(before, glass, behind);
        assertThat(pane.transmittance(radians).s()).isCloseTo(passed, within(1e-12));
        assertThat(pane.reflectance(radians).s()).isCloseTo(mirrored, within(1e-12));
        if (before == behind) {
            assertThat(pane.reflectance(radians).s()).isCloseTo(2 * first / (1 + first), within(1e-12));
        }
    }

    /// Past the angle at which water and air mirror all, the glass between changes nothing.
    @Test
    void paneUnderWater_mirrorsAllPastWatersAngle() {
        ClearPane pane = new ClearPane(1.333, 1.52, 1);
        assertThat(pane.transmittance(Math.toRadians(48.61)).mean()).isZero();
        assertThat(pane.transmittance(Math.toRadians(48.60)).mean()).isPositive();
        assertThat(pane.transmittance(Math.PI / 2).mean()).isZero();
    }
}
