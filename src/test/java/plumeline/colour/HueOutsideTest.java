package plumeline.colour;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import plumeline.tidy.Outside;

/// The most saturated colour of a hue, and colours adapted and seen in other light.
@Outside(
        source = "published CIE LCh of the primaries of sRGB and Bradford's matrix from D50 to D65, from memory",
        kind = "other program, closed form")
final class HueOutsideTest {
    private static final List<Primary> SCREEN = List.of(
            new Primary(Chromaticity.ofXy(0.64, 0.33), 212.6),
            new Primary(Chromaticity.ofXy(0.30, 0.60), 715.2),
            new Primary(Chromaticity.ofXy(0.15, 0.06), 72.2));

    /// A hue angle doesn't change with lightness: at the primaries' own angles nothing is left but the primary.
    @ParameterizedTest
    @CsvSource({"39.999, 0.64, 0.33", "136.016, 0.30, 0.60", "306.285, 0.15, 0.06"})
    void saturated_atAPrimarysHue_isThePrimary(double degrees, double x, double y) {
        Chromaticity found = Hue.findSaturated(SCREEN, Math.toRadians(degrees)).orElseThrow();
        assertThat(found.x()).isCloseTo(x, within(5e-4));
        assertThat(found.y()).isCloseTo(y, within(5e-4));
    }

    /// All round: the colour has that hue, lies on the outline, and a tenth more of chroma isn't reached.
    @Test
    void saturated_hasTheHue_andNoMoreIsReached() {
        int tried = 0;
        for (int degrees = 0; degrees < 360; degrees += 5) {
            for (List<Primary> lamp : List.of(SCREEN, TypicalLamp.PRIMARIES)) {
                double hue = Math.toRadians(degrees);
                Chromaticity found = Hue.findSaturated(lamp, hue).orElseThrow();
                Lab lab = Lab.of(found.at(1), Chromaticity.D65);
                assertThat(Math.IEEEremainder(Math.toDegrees(lab.hueRadians()) - degrees, 360))
                        .isCloseTo(0, within(1e-6));
                assertThat(Mixture.brightest(lamp, found).distance()).isLessThan(1e-6);
                Lab more = new Lab(100, lab.a() * 1.1, lab.b() * 1.1);
                assertThat(more.toXyz(Chromaticity.D65)
                                .findChromaticity()
                                .filter(there -> more.toXyz(Chromaticity.D65).z() >= 0)
                                .filter(there -> Mixture.brightest(lamp, there).distance() == 0))
                        .isEmpty();
                tried++;
            }
        }
        assertThat(tried).isEqualTo(144);
    }

    @Test
    void saturated_ofALampWithoutWhite_isNone() {
        assertThat(Hue.findSaturated(SCREEN.subList(0, 2), 1)).isEmpty();
    }

    @ParameterizedTest
    @CsvSource({"40, red", "95, yellow", "136, green", "196, cyan", "306, blue", "328, magenta", "359, rose"})
    void names_areThoseOfScreensPrimariesAndTheirMixtures(double degrees, String name) {
        double hue = Math.toRadians(degrees);
        assertThat(Hue.name(new Lab(50, 60 * Math.cos(hue), 60 * Math.sin(hue))))
                .isEqualTo(name);
    }

    @Test
    void names_ofGreys() {
        assertThat(Hue.name(new Lab(98, 1, 1))).isEqualTo("white");
        assertThat(Hue.name(new Lab(50, 1, -1))).isEqualTo("grey");
        assertThat(Hue.name(new Lab(3, 0, 0))).isEqualTo("black");
    }

    /// Bradford's matrix from D50 (0.3457, 0.3585) to D65, by column.
    @ParameterizedTest
    @CsvSource({
        "1, 0, 0, 0.9555766, -0.0282895, 0.0122982",
        "0, 1, 0, -0.0230393, 1.0099416, -0.0204830",
        "0, 0, 1, 0.0631636, 0.0210077, 1.3299098"
    })
    void adapted_isBradfords(double x, double y, double z, double toX, double toY, double toZ) {
        Chromaticity d50 = Chromaticity.ofXy(0.34567, 0.35850);
        Xyz found = Seen.adapted(new Xyz(x, y, z), d50, Chromaticity.ofXy(0.31271, 0.32902));
        assertThat(found.x()).isCloseTo(toX, within(5e-4));
        assertThat(found.y()).isCloseTo(toY, within(5e-4));
        assertThat(found.z()).isCloseTo(toZ, within(5e-4));
    }

    /// In the light that the camera is balanced to a surface is itself; in a primary's only its part of that is left.
    @Test
    void seen_inWhiteIsItself_inAPrimaryItsPart() {
        Srgb surface = Srgb.find("#9d94c8").orElseThrow();
        Chromaticity daylight = Planck.chromaticity(5600);
        assertThat(Seen.under(surface, daylight, daylight).toHex()).isEqualTo("#9d94c8");
        Chromaticity green = Chromaticity.ofXy(0.30, 0.60);
        assertThat(Seen.under(surface, green, Chromaticity.D65).toHex()).isEqualTo("#009400");
        assertThat(Seen.brightest(green.at(0.2)).toHex()).isEqualTo("#00ff00");
    }
}
