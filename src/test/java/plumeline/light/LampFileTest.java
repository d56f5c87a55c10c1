package plumeline.light;

import static org.assertj.core.api.Assertions.assertThat;
import static plumeline.light.WrittenLamp.at;
import static plumeline.light.WrittenLamp.checkAgree;
import static plumeline.light.WrittenLamp.near;
import static plumeline.light.WrittenLamp.read;
import static plumeline.light.WrittenLamp.steps;

import java.util.List;
import org.junit.jupiter.api.Test;

/// What both forms of photometric files say of one lamp.
final class LampFileTest {
    private static final List<Double> WHOLE = steps(0, 337.5, 22.5);
    private static final List<Double> FROM_C270 = List.of(270.0, 292.5, 315.0, 337.5, 0.0, 22.5, 45.0, 67.5, 90.0);

    @Test
    void lm63_ofAQuarter_agreesWithItsWhole() {
        WrittenLamp lamp = WrittenLamp.twiceMirrored();
        Intensity whole = read(lamp.lm63(steps(0, 360, 22.5))).intensity();
        checkAgree(whole, read(lamp.lm63(steps(0, 90, 22.5))).intensity());
        checkAgree(whole, read(lamp.lm63(steps(0, 180, 22.5))).intensity());
        checkAgree(whole, read(lamp.lm63(steps(90, 270, 22.5))).intensity());
        checkAgree(whole, read(lamp.lm63(WHOLE)).intensity());
        assertThat(at(whole, 0, 0)).isNotCloseTo(at(whole, 90, 0), near(100));
    }

    @Test
    void lm63_ofAHalf_agreesWithItsWhole() {
        WrittenLamp about0 = WrittenLamp.mirroredAboutC0();
        checkAgree(
                read(about0.lm63(WHOLE)).intensity(),
                read(about0.lm63(steps(0, 180, 22.5))).intensity());
        WrittenLamp about90 = WrittenLamp.mirroredAboutC90();
        checkAgree(
                read(about90.lm63(WHOLE)).intensity(),
                read(about90.lm63(steps(90, 270, 22.5))).intensity());
    }

    @Test
    void lm63_ofOnePlane_agreesWithItsWhole() {
        WrittenLamp lamp = WrittenLamp.round();
        checkAgree(
                read(lamp.lm63(WHOLE)).intensity(),
                read(lamp.lm63(List.of(0.0))).intensity());
    }

    @Test
    void eulumdat_ofEachSymmetry_agreesWithItsWhole() {
        WrittenLamp both = WrittenLamp.twiceMirrored();
        Intensity whole = read(both.eulumdat(0, WHOLE, WHOLE)).intensity();
        checkAgree(whole, read(both.eulumdat(4, WHOLE, steps(0, 90, 22.5))).intensity());
        checkAgree(whole, read(both.eulumdat(2, WHOLE, steps(0, 180, 22.5))).intensity());
        checkAgree(whole, read(both.eulumdat(3, WHOLE, FROM_C270)).intensity());
        WrittenLamp about0 = WrittenLamp.mirroredAboutC0();
        checkAgree(
                read(about0.eulumdat(0, WHOLE, WHOLE)).intensity(),
                read(about0.eulumdat(2, WHOLE, steps(0, 180, 22.5))).intensity());
        WrittenLamp about90 = WrittenLamp.mirroredAboutC90();
        checkAgree(
                read(about90.eulumdat(0, WHOLE, WHOLE)).intensity(),
                read(about90.eulumdat(3, WHOLE, FROM_C270)).intensity());
        WrittenLamp round = WrittenLamp.round();
        checkAgree(
                read(round.eulumdat(0, WHOLE, WHOLE)).intensity(),
                read(round.eulumdat(1, WHOLE, List.of(0.0))).intensity());
    }

    @Test
    void bothForms_ofOneLamp_agree() {
        for (WrittenLamp lamp : List.of(WrittenLamp.uneven(), WrittenLamp.mirroredAboutC90(), WrittenLamp.round())) {
            Photometry american = read(lamp.lm63(WHOLE));
            Photometry european = read(lamp.eulumdat(0, WHOLE, WHOLE));
            checkAgree(american.intensity(), european.intensity());
            assertThat(european.opening()).isEqualTo(american.opening());
            assertThat(european.watts()).isEqualTo(american.watts()).isEqualTo(40);
        }
    }

    @Test
    void whatIsRead_isWhatWasWritten() {
        Intensity read = read(WrittenLamp.uneven().eulumdat(0, WHOLE, WHOLE)).intensity();
        assertThat(at(read, 45, 20)).isCloseTo(445 * 0.8, near(1e-9));
        assertThat(at(read, 337.5, 90)).isCloseTo(737.5 * 0.1, near(1e-9));
        assertThat(at(read, 348.75, 0)).isCloseTo((737.5 + 400) / 2, near(1e-9));
        assertThat(at(read, 11.25, 0)).isCloseTo((400 + 422.5) / 2, near(1e-9));
        assertThat(at(read, 0, 15)).isCloseTo(400 * 0.85, near(1e-9));
        assertThat(at(read, 0, 90.01)).isZero();
    }

    @Test
    void theForm_isSeenFromTheText() {
        assertThat(read("\n"
                                + WrittenLamp.round()
                                        .eulumdat(1, List.of(0.0), List.of(0.0))
                                        .substring(5))
                        .lamp())
                .isEqualTo("40 W filament");
        assertThat(read("\u00EF\u00BB\u00BF" + WrittenLamp.round().lm63(List.of(0.0)) + "\r\n\u001A")
                        .lamp())
                .isEqualTo("40 W filament clear");
    }
}
