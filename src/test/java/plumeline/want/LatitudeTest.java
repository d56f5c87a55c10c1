package plumeline.want;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import plumeline.plan.Plan;
import plumeline.tidy.Outside;

/// Where a label lands in what a camera holds, by a plan whose light is summed by hand: 500 lx, of which f/2 at 1/64 s
/// needs 640 at ISO 100.
final class LatitudeTest {
    private static final String PLAN = """
        plumeline: 1
        film: {rate: 24 fps}
        things:
          tin:
            diameter: 60 mm
            height: 120 mm
            body: opaque
            label: {width: 40 mm, height: 40 mm, bottom: 40 mm%s}
        kit:
          cameras:
            main:
              sensor: {width: 36 mm, height: 20.25 mm, across: 3840 px}
              iso: {base: 100, highest: 1600}
              %s
          lenses: {fifty: {focal_length: 50 mm}}
          lights: {spot: {point: yes, gives: 2000 cd measured}}
        shots:
          one:
            camera:
              {body: main, lens: fifty, at: [0 mm, -50 m, 60 mm], aim: ahead, f_number: 2, iso: %s, rate: 64 fps,
              shutter: 360 deg%s}
            place: {tin: {thing: tin, at: [0 mm, 0 mm]}}
            lights: {key: {light: spot, at: [0 mm, -2030 mm, 60 mm]}}
            wants: [{%s}]
        """;

    private record Shown(Plan plan) implements FirstWant {}

    private static Shown want(String label, String body, String iso, String filter, String want) {
        return new Shown(Wanted.read(PLAN.formatted(label, body, iso, filter, want)));
    }

    private static final double OVER = Math.log(500.0 / 640) / Math.log(2);

    private static double lands(double reflectance) {
        // A reflected meter of K 12.5 sees luminance rho E / pi, an incident one of C 250 the light itself.
        return Math.log(reflectance * 250 / (Math.PI * 12.5)) / Math.log(2) + OVER;
    }

    /// The room to clipping and to noise are parts of the margin, in stops; two ISO stops over base move both.
    @Outside(
            source = "ISO 2720 from memory: B = K N²/(t S), E = C N²/(t S)",
            kind = "own computation",
            printedDigits = 4)
    @ParameterizedTest
    @CsvSource({
        "80, 1.5, 7, 100, 0",
        "80, 2.1, 7, 100, 0",
        "80, 9, 7, 100, 0",
        "3, 4, 2, 100, 0",
        "3, 4, 2.8, 100, 0",
        "3, 4, 4.5, 400, 2",
        "80, 1.5, 7, 400, 2"
    })
    void margin_mindsClippingAndNoise(double percent, double over, double under, String iso, int stops) {
        String filter = ", loss: " + stops + " stops";
        Shown lit = want(
                ", reflects: " + percent + " %",
                "latitude: {over: " + over + " stops, under: " + under + " stops}",
                iso,
                filter,
                "lit: tin, within: 0.5 stops");
        double lands = lands(percent / 100);
        double expected = Math.min(0.5 - Math.abs(OVER), Math.min(over + stops - lands, under - stops + lands));
        assertThat(lit.margin()).isCloseTo(expected, within(0.005));
    }

    private static final String HELD = "latitude: {over: 1.5 stops, under: 7 stops}";

    @Test
    void finding_saysWhereItLands() {
        Shown lit = want(", reflects: 80 %", HELD, "100", "", "lit: tin");
        assertThat(lit.want().findCaution(lit.moments()))
                .contains("tin's label reflects 80 % and lands 2 stops over mid grey (15.7 %); at this ISO the camera"
                        + " holds 1.5 stops over it and 7 stops under. It clips: white without print.");
        Shown untold = want("", HELD, "100", "", "lit: tin");
        assertThat(untold.margin()).isCloseTo(0.5 + OVER, within(0.005));
        assertThat(untold.want().findCaution(untold.moments()).orElseThrow())
                .startsWith(
                        "On tin's label black print (4 %) would land 2.3 stops under and white paper (90 %) 2.2 stops"
                                + " over mid grey")
                .endsWith("7 stops under. White would clip.");
    }

    /// Nothing is claimed without the body's latitude, nor of what is dark on purpose.
    @Test
    void withoutLatitude_nothingIsSaid() {
        Shown lit = want(", reflects: 80 %", "", "100", "", "lit: tin");
        assertThat(lit.margin()).isCloseTo(0.5 + OVER, within(0.005));
        assertThat(lit.want().findCaution(lit.moments())).isEmpty();
        Shown dark = want(", reflects: 3 %", "latitude: {over: 4 stops, under: 1 stops}", "100", "", "dark: tin");
        assertThat(dark.margin()).isCloseTo(-OVER - 3, within(0.005));
    }

    /// A white that nobody measured within a tenth of clipping is tight.
    @Test
    void reflectance_isOnlyKnownSoClosely() {
        String body = "latitude: {over: 2.05 stops, under: 7 stops}";
        Shown typical = want(", reflects: 80 %", body, "100", "", "lit: tin");
        assertThat(typical.want().findTight(typical.moments()))
                .contains("How it reflects isn't known so closely: try it before the camera.");
        Shown measured = want(", reflects: 80 % ± 1 %", body, "100", "", "lit: tin");
        assertThat(measured.want().findTight(measured.moments())).isEmpty();
    }
}
