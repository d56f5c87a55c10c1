package plumeline.colour;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import plumeline.tidy.Outside;

/// Colour temperature, distance from the locus and mireds against another library and reference works.
@Outside(
        source = "colour-science 0.4.6, Ohno's method; mireds of reference works; each test names its own",
        kind = "other program, worked example")
final class WhiteOutsideTest {
    /// Ohno 2014 by colour-science 0.4.6, observer in steps of 1 nm (grade D: computed by another program): D65, D50,
    /// D55, E, C.
    @ParameterizedTest
    @CsvSource({
        "0.31270, 0.32900, 6504.3, 0.00321",
        "0.34570, 0.35850, 5000.7, 0.00319",
        "0.33243, 0.34744, 5502.4, 0.00325",
        "0.33333, 0.33333, 5455.5, -0.00442",
        "0.31006, 0.31616, 6774.1, -0.00215",
        "0.44758, 0.40745, 2855.5, 0.00000"
    })
    void whites_againstOhno(double x, double y, double kelvin, double duv) {
        White found = White.find(Chromaticity.ofXy(x, y)).orElseThrow();
        assertThat(found.kelvin()).isCloseTo(kelvin, within(2.0));
        assertThat(found.duv()).isCloseTo(duv, within(5e-5));
    }

    /// The example in colour-science's documentation (grade P: printed).
    @Test
    void white_ofTheDocumentedExample() {
        White found = White.find(new Chromaticity(0.1978, 0.3122 * 1.5)).orElseThrow();
        assertThat(found.kelvin()).isCloseTo(6507.47, within(2.0));
        assertThat(found.duv()).isCloseTo(0.00322, within(2e-5));
    }

    /// By definition a glowing body's colour temperature is its own, from end to end.
    @ParameterizedTest
    @CsvSource({"1000", "1001", "1800", "3200", "5600", "12345", "60000", "99000", "100000"})
    void whites_onTheLocus(double kelvin) {
        White found = White.find(Planck.chromaticity(kelvin)).orElseThrow();
        assertThat(found.kelvin() / kelvin).isCloseTo(1, within(1e-8));
        assertThat(found.duv()).isZero();
    }

    /// Against the definition: no place of the locus, tried one by one, is nearer than what was found (seed 7).
    @Test
    void nothingOnTheLocus_isNearer() {
        Random random = new Random(7);
        int found = 0;
        for (int i = 0; i < 60; i++) {
            Chromaticity body = Planck.chromaticity(1e6 / (20 + 900 * random.nextDouble()));
            Chromaticity colour = new Chromaticity(
                    body.u() + 0.06 * (random.nextDouble() - 0.5), body.v() + 0.3 * (random.nextDouble() - 0.5));
            double least = Double.POSITIVE_INFINITY;
            double at = 0;
            for (double mireds = 10; mireds <= 1000; mireds += 0.5) {
                Chromaticity there = Planck.ofMireds(mireds);
                double off = Math.hypot(colour.u() - there.u(), colour.v1960() - there.v1960());
                at = off < least ? mireds : at;
                least = Math.min(least, off);
            }
            if (White.find(colour).isPresent()) {
                White white = White.find(colour).orElseThrow();
                assertThat(1e6 / white.kelvin()).isCloseTo(at, within(0.5));
                assertThat(Math.abs(white.duv()))
                        .isLessThanOrEqualTo(least + 1e-12)
                        .isCloseTo(least, within(1e-5));
                found++;
            } else {
                assertThat(least > White.MOST_DUV || at <= 10 || at >= 1000).isTrue();
            }
        }
        assertThat(found).isBetween(30, 59);
    }

    @Test
    void farFromTheLocus_orPastItsEnds_isNoWhite() {
        assertThat(White.find(Chromaticity.ofXy(0.17, 0.70))).isEmpty();
        assertThat(White.find(Chromaticity.ofXy(0.68, 0.31))).isEmpty();
        assertThat(White.find(Chromaticity.ofXy(0.2399, 0.2340))).isEmpty();
        Chromaticity body = Planck.chromaticity(5000);
        assertThat(White.find(new Chromaticity(body.u(), body.v() + 0.06))).isPresent();
        assertThat(White.find(new Chromaticity(body.u(), body.v() + 0.12))).isEmpty();
    }

    /// An encyclopaedia's and a photography glossary's figures, rounded to whole mireds, and a worked example (grade
    /// P).
    @ParameterizedTest
    @CsvSource({
        "4000, 3000, 83, 0.6",
        "7000, 6000, 24, 0.6",
        "6500, 3200, 159, 0.6",
        "3400, 5500, -112, 0.6",
        "3092, 5600, -144.8, 0.06"
    })
    void mireds_againstReferenceWorks(double from, double to, double shift, double tolerance) {
        assertThat(White.miredShift(from, to)).isCloseTo(shift, within(tolerance));
        assertThatThrownBy(() -> White.miredShift(0, to)).hasMessageContaining("greater than 0");
    }
}
