package plumeline.colour;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import plumeline.tidy.Outside;

/// Spectra that are made up for a colour against measured surfaces: how often what they come to is within what
/// [Metamers] says.
@Outside(
        source = "CIE 13.3-1995, the fourteen test colour samples, as colour-science has them",
        place = "test-samples.txt says how they were taken",
        kind = "measurement",
        printedDigits = 3)
final class SmoothSpectrumOutsideTest {
    private static final Spectrum D65 = Daylight.spectrum(6504);

    private static final List<Spectrum> BROAD = List.of(
            Planck.spectrum(2000),
            Planck.spectrum(2700),
            Planck.spectrum(3200),
            Planck.spectrum(4300),
            Planck.spectrum(5600),
            Planck.spectrum(10_000),
            Daylight.spectrum(4500),
            Daylight.spectrum(5600),
            Daylight.spectrum(7500));

    /// Shares of the lumens of red, green and blue.
    private static final double[][] SHARES = {
        {1, 0, 0},
        {0, 1, 0},
        {0, 0, 1},
        {0.3, 0.65, 0.05},
        {0.4, 0.58, 0.02},
        {0.7, 0.3, 0},
        {0.85, 0, 0.15},
        {0, 0.93, 0.07},
        {0.55, 0.4, 0.05},
        {0.15, 0.8, 0.05},
        {0.2, 0.6, 0.2},
        {0.9, 0.08, 0.02}
    };

    private static List<Spectrum> samples() throws IOException {
        List<Spectrum> samples = new ArrayList<>();
        try (InputStream in = SmoothSpectrumOutsideTest.class.getResourceAsStream("/outside/colour/test-samples.txt")) {
            String text = new String(in.readAllBytes(), StandardCharsets.UTF_8);
            for (String line :
                    text.lines().filter(each -> !each.startsWith("#")).toList()) {
                String[] words = line.strip().split("\\s+");
                List<Spectrum.Row> rows = new ArrayList<>();
                for (int i = 2; i < words.length; i++) {
                    rows.add(new Spectrum.Row((360 + 10 * i) * 1e-9, Double.parseDouble(words[i]) / 1000));
                }
                assertThat(rows).as(words[0]).hasSize(41);
                samples.add(Spectrum.of(rows, Spectrum.Beyond.THE_SAME));
            }
        }
        assertThat(samples).hasSize(14);
        return samples;
    }

    private static List<Spectrum> narrow() {
        List<Spectrum> lights = new ArrayList<>();
        double[][] lamps = {{625, 20, 525, 32, 460, 22}, {618, 17, 532, 36, 452, 20}, {634, 22, 517, 28, 470, 25}};
        for (double[] lamp : lamps) {
            for (double[] shares : SHARES) {
                Spectrum light = Spectrum.of(_ -> 0);
                for (int k = 0; k < 3; k++) {
                    Spectrum peak = Spectrum.peak(lamp[2 * k] * 1e-9, lamp[2 * k + 1] * 1e-9);
                    light = light.plus(peak, shares[k] / peak.xyz().y());
                }
                lights.add(light);
            }
        }
        return lights;
    }

    private static Spectrum madeUp(Spectrum sample) {
        return SmoothSpectrum.findSurface(
                        D65.xyz(sample), D65.xyz().findChromaticity().orElseThrow(), D65)
                .orElseThrow();
    }

    private static double[] off(Xyz found, Xyz real) {
        Lab there = Lab.of(found, Chromaticity.D65);
        Lab here = Lab.of(real, Chromaticity.D65);
        return new double[] {there.l() - here.l(), there.a() - here.a(), there.b() - here.b()};
    }

    /// How often the real colour lies within the doubt, in each of L*, a* and b*.
    private static final class Tally {
        private final int[] within = new int[3];
        private int all;

        void add(Xyz found, Xyz real, List<double[]> moves) {
            double[] off = off(found, real);
            all++;
            for (int k = 0; k < 3; k++) {
                double square = 0;
                for (double[] move : moves) {
                    square += move[k] * move[k];
                }
                within[k] += Math.abs(off[k]) <= Math.sqrt(square) ? 1 : 0;
            }
        }

        /// About four in five, of all three parts together nearer than of each: fewer would be false precision, more
        /// would tell a crew less than is known.
        void check(int count) {
            assertThat(all).isEqualTo(count);
            for (int each : within) {
                assertThat(each / (double) all).isBetween(0.70, 0.91);
            }
            assertThat((within[0] + within[1] + within[2]) / (3.0 * all)).isBetween(0.76, 0.86);
        }
    }

    private static List<double[]> surfaceMoves(Spectrum light, Spectrum share) {
        List<double[]> moves = new ArrayList<>();
        for (Spectrum wave : Metamers.ofSurface(share, D65)) {
            moves.add(off(light.xyz(share.plus(wave, 1)), light.xyz(share)));
        }
        return moves;
    }

    private static List<double[]> lightMoves(Spectrum light, Spectrum share) {
        List<double[]> moves = new ArrayList<>();
        for (Spectrum wave : Metamers.ofLight(light)) {
            double[] move = off(light.plus(wave, 0.1).xyz(share), light.xyz(share));
            double times = Metamers.LIGHT_DEPTH / 0.1;
            moves.add(new double[] {times * move[0], times * move[1], times * move[2]});
        }
        return moves;
    }

    /// A wave leaves the colour under its light as it is; what throws back all, or nothing, has none.
    @Test
    void waves_areNotSeen() throws IOException {
        Spectrum share = madeUp(samples().get(8));
        assertThat(Metamers.ofSurface(share, D65)).hasSize(2).allSatisfy(wave -> {
            for (double each : off(D65.xyz(share.plus(wave, 1)), D65.xyz(share))) {
                assertThat(each).isCloseTo(0, within(1e-9));
            }
        });
        Spectrum light = SmoothSpectrum.findLight(Chromaticity.ofXy(0.45, 0.5)).orElseThrow();
        assertThat(Metamers.ofLight(light))
                .hasSize(2)
                .allSatisfy(wave -> assertThat(light.plus(wave, 0.5)
                                .xyz()
                                .findChromaticity()
                                .orElseThrow()
                                .distance(light.xyz().findChromaticity().orElseThrow()))
                        .isLessThan(1e-9));
        assertThat(Metamers.ofSurface(Spectrum.of(_ -> 1), D65)).isEmpty();
        assertThat(Metamers.ofSurface(Spectrum.of(_ -> 0), D65)).isEmpty();
    }

    /// What is made up has the sample's colour under D65, and lies between black and white.
    @Test
    void surface_hasTheColour() throws IOException {
        for (Spectrum sample : samples()) {
            Spectrum found = madeUp(sample);
            for (double each : off(D65.xyz(found), D65.xyz(sample))) {
                assertThat(each).isCloseTo(0, within(1e-4));
            }
            assertThat(found.values()).allMatch(each -> each > 0 && each < 1);
        }
    }

    @Test
    void surface_underBroadLight() throws IOException {
        Tally tally = new Tally();
        for (Spectrum sample : samples()) {
            Spectrum found = madeUp(sample);
            BROAD.forEach(light -> tally.add(light.xyz(found), light.xyz(sample), surfaceMoves(light, found)));
        }
        tally.check(14 * 9);
    }

    @Test
    void surface_underPeaks() throws IOException {
        Tally tally = new Tally();
        for (Spectrum sample : samples()) {
            Spectrum found = madeUp(sample);
            narrow().forEach(light -> tally.add(light.xyz(found), light.xyz(sample), surfaceMoves(light, found)));
        }
        tally.check(14 * 36);
    }

    @Test
    void light_ofWhichOnlyTheColourIsKnown() throws IOException {
        Tally tally = new Tally();
        List<Spectrum> surfaces = samples();
        for (Spectrum light : narrow()) {
            Spectrum made = SmoothSpectrum.findLight(
                            light.xyz().findChromaticity().orElseThrow())
                    .orElseThrow();
            for (Spectrum sample : surfaces) {
                Spectrum found = madeUp(sample);
                List<double[]> moves = surfaceMoves(made, found);
                moves.addAll(lightMoves(made, found));
                tally.add(made.xyz(found), light.xyz(sample), moves);
            }
        }
        tally.check(14 * 36);
    }

    /// All corners of sRGB and what lies between have a surface but for the very ends; what is beyond light has none.
    @Test
    void ends() {
        for (String code :
                List.of("#ff0000", "#00ff00", "#0000ff", "#ffff00", "#00ffff", "#ff00ff", "#fefefe", "#010101")) {
            Xyz colour = Srgb.find(code).orElseThrow().toXyz();
            Optional<Spectrum> found = SmoothSpectrum.findSurface(colour, Chromaticity.D65, D65);
            assertThat(found).as(code).isPresent();
        }
        Optional<Spectrum> green =
                SmoothSpectrum.findSurface(Chromaticity.ofXy(0.1, 0.8).at(0.9), Chromaticity.D65, D65);
        assertThat(green).isEmpty();
        assertThat(SmoothSpectrum.findLight(Chromaticity.ofXy(0.05, 0.2))).isEmpty();
        assertThat(SmoothSpectrum.findLight(Chromaticity.ofXy(0.70, 0.299))).isPresent();
        assertThat(SmoothSpectrum.findLight(Chromaticity.ofXy(0.14, 0.05))).isPresent();
    }
}
