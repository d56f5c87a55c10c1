package plumeline.ink;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import plumeline.tidy.Outside;

/// The laws against check values and published coefficients. Unless said: 10 ml, g′ 0.5 m/s², α 0.25, k 0.
final class InkOutsideTest {
    private static final double VOLUME = 1e-5;
    private static final double REDUCED = 0.5;
    private static final double NU = 1e-6;

    private static Puff puff(double speed, double addedMass) {
        Release release = new Release(VOLUME, REDUCED, 0.004, speed, NU);
        return Puff.of(release, speed, Coefficients.USUAL.withAddedMass(addedMass));
    }

    @Test
    @Outside(
            source = "Scorer, J. Fluid Mech. 2 (1957) 583: z = C (g' r)^½ t^½ form, C 1.2, n 4, from memory",
            place = "2.3543 in the far field; ours with α 1/n is 2.3512",
            kind = "measurement",
            printedDigits = 2)
    void puff_farAway_goesAsThermalsDo() {
        double seconds = 1e10;
        double k = puff(0, 0).frontMetres(seconds) / Math.pow(REDUCED * VOLUME, 0.25) / Math.sqrt(seconds);
        assertThat(k).isCloseTo(2.3543, within(0.005));
        double dragged = puff(0, 0.5).frontMetres(seconds) / Math.pow(REDUCED * VOLUME, 0.25) / Math.sqrt(seconds);
        assertThat(dragged).isCloseTo(2.1245, within(0.0005));
    }

    @Test
    @Outside(
            source = "the project's check values on ink, derived there from Morton, Taylor and Turner 1956",
            place = "rows U 0 and U 2 m/s",
            kind = "worked example",
            printedDigits = 4)
    void puff_hasTheCheckValues() {
        Puff still = puff(0, 0);
        assertThat(still.radiusMetres()).isCloseTo(0.01337, within(5e-6));
        assertThat(still.frontMetres(1)).isCloseTo(0.05918, within(5e-6));
        assertThat(still.findSeconds(0.1).orElseThrow()).isCloseTo(1.8911, within(5e-5));
        assertThat(still.radiusMetres(0.1)).isCloseTo(0.03837, within(5e-6));
        assertThat(still.dilution(0.1)).isCloseTo(23.65, within(5e-3));
        Puff pushed = puff(2, 0);
        assertThat(pushed.findSeconds(0.1).orElseThrow()).isCloseTo(0.4245, within(5e-5));
        assertThat(pushed.frontMetres(1)).isCloseTo(0.1394, within(5e-5));
    }

    /// The same puff by its differential equation in small steps, which doesn't know the closed form.
    @Test
    @Outside(source = "momentum balance of a ball that grows", kind = "conserved quantity")
    void puff_keepsItsMomentum() {
        double b = REDUCED * VOLUME;
        double i = VOLUME * 0.3;
        double z = 0.013365 / 0.25;
        double steps = 200_000;
        for (int n = 0; n < steps; n++) {
            double t = (n + 0.5) / steps;
            z += (i + b * t) / (4 * Math.PI / 3 * 0.25 * 0.25 * 0.25 * z * z * z) / steps;
        }
        assertThat(puff(0.3, 0).frontMetres(1)).isCloseTo(z - 0.013365 / 0.25, within(2e-6));
    }

    @Test
    @Outside(
            source = "the project's check values on ink: plume by Morton, Taylor and Turner 1956 with the front's"
                    + " share 0.6 of Bhamidipati and Woods 2017",
            place = "rows plume F 2.5e-6 and l_M",
            kind = "worked example",
            printedDigits = 4)
    void stream_hasTheCheckValues() {
        Stream plume = new Stream(2.5e-6, 0, 5e-6, 0.004, 0.13, 0.6);
        assertThat(plume.plumeMetresPerSecond(0.1)).isCloseTo(0.06259, within(5e-6));
        assertThat(plume.plumeMetresPerSecond(1) / Math.cbrt(2.5e-6)).isCloseTo(2.1407, within(5e-5));
        assertThat(plume.findSeconds(0.1).orElseThrow()).isCloseTo(1.997, within(5e-4));
        assertThat(Release.ofSqueeze(VOLUME, REDUCED, 0.002, 2, NU).jetMetres()).isCloseTo(0.0948, within(5e-5));
        assertThat(Release.ofSqueeze(VOLUME, REDUCED, 0.004, 2, NU).jetMetres()).isCloseTo(0.0335, within(5e-5));
        assertThat(Release.ofSqueeze(VOLUME, REDUCED, 0.002, 2, NU).reynolds()).isCloseTo(3183, within(1.0));
    }

    /// The jet's spread and speed against measured jets: 6.2 times bore and speed over way on the axis, where a bell
    /// shape's axis has twice the mean of its even equal.
    @Test
    @Outside(
            source = "steady round jets, axis 5.8 to 6.5 times bore × speed / way: Pope, Turbulent Flows"
                    + " (2000), from memory",
            kind = "measurement",
            printedDigits = 2)
    void jet_goesAsJetsDo() {
        double bore = 0.002;
        double speed = 1.5;
        double flux = Math.PI / 4 * bore * bore * speed;
        Stream jet = new Stream(0, flux * speed, flux, bore, 0.13, 1);
        double way = 0.1;
        double step = 1e-6;
        double mean = 2
                * step
                / (jet.findSeconds(way + step).orElseThrow()
                        - jet.findSeconds(way - step).orElseThrow());
        assertThat(2 * mean * way / (bore * speed)).isBetween(5.8, 6.5);
    }

    @Test
    @Outside(
            source = "the crew's readings of the project's brief on flacons",
            place = "A2: n 0.63, k 125 (mm, s); 120 mm after 0.94 s",
            kind = "worked example",
            printedDigits = 2)
    void fit_goesThroughTheReadings() {
        FrontFit fit =
                FrontFit.of(java.util.List.of(new FrontFit.Reading(0.40, 0.070), new FrontFit.Reading(1.90, 0.188)));
        assertThat(fit.exponent()).isCloseTo(0.63, within(0.005));
        assertThat(fit.factor()).isCloseTo(0.125, within(5e-4));
        assertThat(fit.seconds(0.120).value()).isCloseTo(0.94, within(0.005));
        assertThat(fit.seconds(0.070).value()).isCloseTo(0.40, within(1e-12));
        assertThat(fit.frontMetres(1.90).value()).isCloseTo(0.188, within(1e-12));
    }

    @Test
    @Outside(
            source = "the project's check values on ink and on dyes (E133: 1630 a per cent and cm)",
            place = "10 ml in 60 l over 0.15 m; V_max; Y09, Y11",
            kind = "worked example",
            printedDigits = 2)
    void clarity_hasTheCheckValues() {
        assertThat(new Clarity(1e4, 0.15, 0.060).absorbance(1e-5)).isCloseTo(0.25, within(1e-12));
        assertThat(new Clarity(1e4, 0.15, 0.065).mostInkMetres3(Math.pow(10, -0.15)) * 1e6)
                .isCloseTo(6.5, within(1e-9));
        // 1 ml of 2 % blue in 96 l over 300 mm: neat absorbance 3260 a cm.
        Clarity blue = new Clarity(326_000, 0.3, 0.096);
        assertThat(blue.clearShare(1e-6)).isCloseTo(0.096, within(0.001));
        // 0.0616 mg/l halve it: of a 2 % dye that is 3.08 µl a litre.
        assertThat(blue.mostInkMetres3(0.5) / 0.096).isCloseTo(3.08e-6, within(0.03e-6));
    }

    @Test
    @Outside(
            source = "IEC 61966-2-1 (sRGB): value 0.5 is 21.4 % of the light, value 188 of 255 is half",
            kind = "standard",
            printedDigits = 3)
    void jarsPicture_isReadAsLight() {
        assertThat(Clarity.linear(0.5)).isCloseTo(0.214, within(5e-4));
        assertThat(Clarity.linear(188 / 255.0)).isCloseTo(0.503, within(5e-3));
        assertThat(Clarity.linear(0.04)).isCloseTo(0.04 / 12.92, within(1e-12));
    }

    @Test
    @Outside(
            source = "published thermals: α 0.13 to 0.34; a trial solver's four: k 2.38 to 2.80,"
                    + " arrival's scatter 12 to 18 %",
            kind = "measurement",
            printedDigits = 2)
    void prediction_coversPublishedThermals() {
        var descent = new Descent(new Release(VOLUME, REDUCED, 0.1, 0, NU), 0);
        assertThat(Ink.predict(descent, 0.1)).isInstanceOfSatisfying(Prediction.Reached.class, reached -> {
            assertThat(reached.regime()).isEqualTo(Regime.PUFF);
            assertThat(reached.seconds().value()).isCloseTo(1.8911, within(5e-5));
            assertThat(reached.seconds().low()).isBetween(0.9, 1.25);
            assertThat(reached.seconds().high()).isBetween(2.4, 3.2);
            assertThat(reached.radiusMetres().value()).isCloseTo(0.03837, within(5e-6));
            assertThat(reached.dilution().value()).isCloseTo(23.65, within(5e-3));
        });
    }
}
