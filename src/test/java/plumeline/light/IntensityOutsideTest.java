package plumeline.light;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.function.DoubleUnaryOperator;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import plumeline.tidy.Outside;

/// Intensities and their flux against closed forms and printed values of photometry.
final class IntensityOutsideTest {
    @Test
    @Outside(
            source = "study notes on photometry, 1000 lm evenly all round, at 2 m",
            kind = "worked example",
            printedDigits = 4)
    void allRound_ofThousandLumens_givesItsLux() {
        Intensity lamp = Intensity.AllRound.ofLumens(1000);
        assertThat(lamp.candelas(1, 2) / 4).isCloseTo(19.89, within(0.01));
    }

    @Test
    @Outside(
            source = "common practice: 400 cd in an even cone of 60 degrees",
            kind = "worked example",
            printedDigits = 4)
    void cone_of400Candelas_givesItsLumens() {
        Intensity lamp = new Intensity.Cone(400, Math.toRadians(60));
        assertThat(lamp.fluxLumens()).isCloseTo(336.7, within(0.05));
    }

    @ParameterizedTest
    @CsvSource({"10, 0.0239094", "30, 0.214094", "60, 0.841787", "90, 1.8403", "120, 3.14159", "180, 6.28319"})
    @Outside(
            source = "solid angle of a cone, 2 pi (1 - cos(a/2)), any text on photometry",
            kind = "closed form",
            printedDigits = 6)
    void cone_ofOneCandela_givesItsSolidAngle(double degrees, double steradians) {
        Intensity lamp = new Intensity.Cone(1, Math.toRadians(degrees));
        assertThat(lamp.fluxLumens()).isCloseTo(steradians, within(1e-5));
    }

    @Test
    @Outside(source = "lumens over solid angle over distance squared", kind = "closed form", printedDigits = 6)
    void cone_ofThousandLumensIn60Degrees_givesItsLux() {
        Intensity lamp = Intensity.Cone.ofLumens(1000, Math.toRadians(60));
        assertThat(lamp.candelas(0, 0) / 4).isCloseTo(296.987, within(0.01));
    }

    @Test
    @Outside(source = "an even flat surface sends pi I0 lumens (Lambert), any text on photometry", kind = "closed form")
    void cosineBeam_of120Degrees_isLambert() {
        Intensity lamp = new Intensity.CosineBeam(100, Math.toRadians(120));
        assertThat(lamp.fluxLumens()).isCloseTo(Math.PI * 100, within(1e-9));
        assertThat(lamp.candelas(0, 1)).isCloseTo(100 * Math.cos(1), within(1e-9));
    }

    @Test
    @Outside(source = "an even flat surface sends pi I0 lumens (Lambert), any text on photometry", kind = "closed form")
    void table_ofCosines_sendsPiTimesItsAxis() {
        assertThat(table(Math::cos, 90, 1).fluxLumens()).isCloseTo(Math.PI, within(1e-4));
        assertThat(table(Math::cos, 900, 1).fluxLumens()).isCloseTo(Math.PI, within(1e-6));
        assertThat(table(Math::cos, 900, 7).fluxLumens()).isCloseTo(Math.PI, within(1e-6));
    }

    @Test
    @Outside(source = "solid angle of a sphere", kind = "closed form")
    void table_thatIsEven_sendsFourPi() {
        double[] gammas = {0, 0.1, 2.5, Math.PI};
        double[][] rows = {{3, 3, 3, 3}, {3, 3, 3, 3}};
        Intensity lamp = IntensityTable.of(new double[] {0.2, 1}, gammas, rows);
        assertThat(lamp.fluxLumens()).isCloseTo(12 * Math.PI, within(1e-12));
    }

    @Test
    @Outside(source = "integral of gamma sin gamma, any table of integrals", kind = "closed form")
    void table_thatFallsLinearly_isIntegratedExactly() {
        Intensity coarse = table(gamma -> 1 - 2 * gamma / Math.PI, 1, 1);
        Intensity fine = table(gamma -> 1 - 2 * gamma / Math.PI, 5000, 3);
        assertThat(coarse.fluxLumens()).isCloseTo(2 * Math.PI - 4, within(1e-14));
        assertThat(fine.fluxLumens()).isCloseTo(2 * Math.PI - 4, within(1e-11));
    }

    @Test
    @Outside(source = "solid angle of a cone, any text on photometry", kind = "closed form")
    void table_thatEndsInItsEvenCone_sendsTheConesFlux() {
        Intensity lamp = IntensityTable.of(new double[] {0}, new double[] {0, 0.3}, new double[][] {{5, 5}});
        assertThat(lamp.fluxLumens()).isCloseTo(5 * 2 * Math.PI * (1 - Math.cos(0.3)), within(1e-14));
        assertThat(lamp.findBeamRadians(0)).hasValue(0.6);
    }

    @ParameterizedTest
    @CsvSource({"4", "25", "60", "150"})
    @Outside(source = "Simpson's rule on the definition of flux", kind = "closed form")
    void cosineBeam_flux_isTheIntegralOfItsIntensity(double degrees) {
        Intensity lamp = Intensity.CosineBeam.ofLumens(750, Math.toRadians(degrees));
        assertThat(quadrature(lamp)).isCloseTo(750, within(0.01));
    }

    private static double quadrature(Intensity lamp) {
        int steps = 20_000;
        double width = Math.PI / 2 / steps;
        double sum = IntStream.rangeClosed(0, steps)
                .mapToDouble(i -> (i == 0 || i == steps ? 1 : i % 2 == 0 ? 2 : 4)
                        * lamp.candelas(0.7, i * width)
                        * Math.sin(i * width))
                .sum();
        return 2 * Math.PI * sum * width / 3;
    }

    /// A table over the front half, the same all round.
    private static Intensity table(DoubleUnaryOperator candelas, int steps, int planes) {
        double[] gammas = IntStream.rangeClosed(0, steps)
                .mapToDouble(i -> i * Math.PI / 2 / steps)
                .toArray();
        double[] row = IntStream.rangeClosed(0, steps)
                .mapToDouble(i -> Math.max(0, candelas.applyAsDouble(gammas[i])))
                .toArray();
        double[][] rows = new double[planes][];
        java.util.Arrays.fill(rows, row);
        return IntensityTable.of(IntStream.range(0, planes).asDoubleStream().toArray(), gammas, rows);
    }
}
