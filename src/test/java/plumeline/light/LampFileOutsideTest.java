package plumeline.light;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import plumeline.tidy.Outside;

/// Files of lamps whose light is known in closed form, laid out by the standards' tables of fields.
final class LampFileOutsideTest {
    /// An even flat surface, fed with [WrittenLamp#LUMENS] of which all leave: `Φ = π I₀`.
    private static final WrittenLamp LAMBERT = new WrittenLamp(
            (c, g) -> WrittenLamp.LUMENS / Math.PI * Math.cos(Math.toRadians(g)), WrittenLamp.steps(0, 90, 1));

    /// The same, leaning to C = 0: what one side has more the other has less, so that its flux is the same.
    private static final WrittenLamp LEANING = new WrittenLamp(
            (c, g) -> LAMBERT.candelas().applyAsDouble(c, g) * (1 + Math.cos(Math.toRadians(c)) / 2), LAMBERT.gammas());

    private static final double SHARE = 1e-4;

    @Test
    @Outside(source = "Lambert's law (any text on photometry); fields by ANSI/IESNA LM-63-02", kind = "closed form")
    void lm63_ofALambertLamp_addsUpToItsLumens() {
        checkFlux(LAMBERT.lm63(List.of(0.0)));
        checkFlux(LEANING.lm63(WrittenLamp.steps(0, 180, 10)));
        checkFlux(LEANING.lm63(WrittenLamp.steps(0, 360, 10)));
    }

    @Test
    @Outside(
            source =
                    "Lambert's law (any text on photometry); lines by the EULUMDAT table after Stockmar, 1990 and 1998",
            kind = "closed form")
    void eulumdat_ofALambertLamp_addsUpToItsLumens() {
        List<Double> planes = WrittenLamp.steps(0, 350, 10);
        checkFlux(LAMBERT.eulumdat(1, planes, List.of(0.0)));
        checkFlux(LEANING.eulumdat(2, planes, WrittenLamp.steps(0, 180, 10)));
        checkFlux(LEANING.eulumdat(0, planes, planes));
    }

    @Test
    @Outside(
            source = "cos 60 degrees is one half, cos 84.26 degrees one tenth",
            kind = "closed form",
            printedDigits = 4)
    void widths_ofALambertLamp_areThoseOfTheCosine() {
        Intensity lamp = WrittenLamp.read(LAMBERT.lm63(List.of(0.0))).intensity();
        assertThat(Math.toDegrees(lamp.findBeamRadians(0).orElseThrow())).isCloseTo(120, within(1e-6));
        assertThat(Math.toDegrees(lamp.findFieldRadians(0).orElseThrow())).isCloseTo(168.52, within(0.005));
    }

    private static void checkFlux(String file) {
        LampFile read = LampFile.read(WrittenLamp.bytes(file));
        assertThat(read).isInstanceOf(LampFile.Read.class);
        Intensity lamp = ((LampFile.Read) read).photometry().intensity();
        assertThat(lamp.fluxLumens() / WrittenLamp.LUMENS).isCloseTo(1, within(SHARE));
    }
}
