package plumeline.sound;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import plumeline.tidy.Outside;

/// Loudness of the signals that the standard's own tests are made of, within its tolerances; the closer figures are
/// those of another meter.
@Outside(
        source = "EBU Tech 3341 v4 (2023), Table 1, and Tech 3342 (2023), Table 1; ITU-R BS.1770-5",
        place = "signals 1 to 6 and 9 to 14; range signals 1 to 4; Annex 1",
        kind = "standard")
final class LoudnessOutsideTest {
    private static final double EBU_LU = 0.1;

    /// Of figures that numpy and libebur128 1.2.6 gave alike.
    private static final double CLOSE_LU = 5e-4;

    private static Loudness meter(Tones tones) {
        return Loudness.of(tones.sound());
    }

    private static void check(Level level, double standardLufs, double computedLufs) {
        assertThat(Tones.value(level)).isEqualTo(standardLufs, within(EBU_LU));
        assertThat(Tones.value(level)).isEqualTo(computedLufs, within(CLOSE_LU));
    }

    @Test
    void fullScaleAt997Hz_inOneChannel() {
        Loudness found = meter(Tones.of(48_000, 997, Speaker.LEFT).then(20, 0));
        assertThat(Tones.value(found.integrated())).isEqualTo(-3.01, within(0.01));
        assertThat(Tones.value(found.integrated())).isEqualTo(-3.01028, within(CLOSE_LU));
    }

    @Test
    void alignmentTone() {
        assertThat(Tones.value(meter(Tones.stereo().then(20, -18)).integrated()))
                .isEqualTo(-17.9933, within(CLOSE_LU));
    }

    @ParameterizedTest
    @CsvSource({"-23, -22.9933", "-33, -32.9933"})
    void signals1And2_steady(double dbfs, double computed) {
        Loudness found = meter(Tones.stereo().then(20, dbfs));
        check(found.integrated(), dbfs, computed);
        check(found.momentary(), dbfs, computed);
        check(found.shortTerm(), dbfs, computed);
        assertThat(Tones.value(found.range())).isEqualTo(0, within(0.01));
    }

    @Test
    void signals3To5_gates() {
        check(meter(Tones.stereo().then(10, -36).then(60, -23).then(10, -36)).integrated(), -23, -23.0139);
        check(
                meter(Tones.stereo()
                                .then(10, -72)
                                .then(10, -36)
                                .then(60, -23)
                                .then(10, -36)
                                .then(10, -72))
                        .integrated(),
                -23,
                -23.0139);
        check(meter(Tones.stereo().then(20, -26).then(20.1, -20).then(20, -26)).integrated(), -23, -22.9787);
    }

    @Test
    void signal6_surround() {
        Tones tones = Tones.of(
                48_000,
                1000,
                Speaker.LEFT,
                Speaker.RIGHT,
                Speaker.CENTRE,
                Speaker.LOW,
                Speaker.BACK_LEFT,
                Speaker.BACK_RIGHT);
        check(meter(tones.each(20, -28, -28, -24, -5, -30, -30)).integrated(), -23, -23.0163);
    }

    @Test
    void signal9_shortTermIsSteady() {
        Tones tones = Tones.stereo();
        for (int i = 0; i < 5; i++) {
            tones.then(1.34, -20).then(1.66, -30);
        }
        check(meter(tones).shortTerm(), -23, -22.9863);
    }

    @Test
    void signal12_momentaryIsSteady() {
        Tones tones = Tones.stereo();
        for (int i = 0; i < 25; i++) {
            tones.then(0.18, -20).then(0.22, -30);
        }
        check(meter(tones).momentary(), -23, -22.9604);
    }

    @Test
    void signal10_mostShortTerm_whereverItBegins() {
        for (int i = 0; i < 20; i++) {
            Loudness found = meter(Tones.stereo().silence(i * 0.15).then(3, -23).silence(1));
            check(found.shortTerm(), -23, -22.9933);
        }
    }

    @Test
    void signal13_mostMomentary_whereverItBegins() {
        for (int i = 0; i < 20; i++) {
            Loudness found =
                    meter(Tones.stereo().silence(i * 0.02).then(0.4, -23).silence(1));
            check(found.momentary(), -23, -22.9936);
        }
    }

    @Test
    void signals11And14_risingTones() {
        for (int i = 0; i < 20; i++) {
            Loudness three =
                    meter(Tones.stereo().silence(i * 0.15).then(3, -38 + i).silence(3 - i * 0.15));
            assertThat(Tones.value(three.shortTerm())).isEqualTo(-38 + i, within(EBU_LU));
            Loudness short4 =
                    meter(Tones.stereo().silence(i * 0.02).then(0.4, -38 + i).silence(0.4 - i * 0.02));
            assertThat(Tones.value(short4.momentary())).isEqualTo(-38 + i, within(EBU_LU));
        }
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            10 | -20 -30
            5  | -20 -15
            20 | -40 -20
            15 | -50 -35 -20 -35 -50
            """)
    void range(double expectedLu, String levels) {
        Tones tones = Tones.stereo();
        int count = 0;
        for (String each : levels.split(" ")) {
            tones.then(20, Double.parseDouble(each));
            count++;
        }
        assertThat(count).isGreaterThan(1);
        assertThat(Tones.value(meter(tones).range())).isEqualTo(expectedLu, within(0.05));
    }
}
