package plumeline.sound;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;

/// What has a loudness and what hasn't.
final class LoudnessTest {
    private static final Level TOO_SHORT = new Level.None(Level.Missing.LENGTH);
    private static final Level SILENT = new Level.None(Level.Missing.SOUND);

    @Test
    void silence_hasNone() {
        assertThat(Loudness.of(Tones.stereo().silence(5).sound()))
                .isEqualTo(new Loudness(SILENT, SILENT, SILENT, SILENT, SILENT, SILENT));
    }

    @Test
    void shortSounds_haveWhatFitsIntoThem() {
        Loudness tooShort = Loudness.of(Tones.stereo().then(0.399, -20).sound());
        assertThat(tooShort.integrated()).isEqualTo(TOO_SHORT);
        assertThat(tooShort.momentary()).isEqualTo(TOO_SHORT);
        assertThat(Tones.value(tooShort.samplePeak())).isEqualTo(-20, within(0.1));
        Loudness oneBlock = Loudness.of(Tones.stereo().then(0.4, -20).sound());
        assertThat(Tones.value(oneBlock.integrated())).isEqualTo(-20, within(0.1));
        assertThat(oneBlock.shortTerm()).isEqualTo(TOO_SHORT);
        assertThat(oneBlock.range()).isEqualTo(TOO_SHORT);
        assertThat(Loudness.of(new HeldSound(48_000, List.of(Speaker.CENTRE), new float[0]))
                        .truePeak())
                .isEqualTo(SILENT);
    }

    @Test
    void belowTheGate_isMomentarilySomething_butHasNoLoudness() {
        Loudness found = Loudness.of(Tones.stereo().then(5, -75).sound());
        assertThat(found.integrated()).isEqualTo(SILENT);
        assertThat(found.range()).isEqualTo(SILENT);
        assertThat(Tones.value(found.momentary())).isEqualTo(-75, within(0.1));
    }

    @Test
    void loudnessFollowsGain_andOneChannelCountsOnce() {
        double stereo =
                Tones.value(Loudness.of(Tones.stereo().then(3, -20).sound()).integrated());
        double quieter =
                Tones.value(Loudness.of(Tones.stereo().then(3, -26).sound()).integrated());
        double mono = Tones.value(
                Loudness.of(Tones.of(48_000, 1000, Speaker.CENTRE).then(3, -20).sound())
                        .integrated());
        assertThat(stereo - quieter).isEqualTo(6, within(1e-5));
        assertThat(stereo - mono).isEqualTo(10 * Math.log10(2), within(1e-5));
    }

    @Test
    void weights_followThePlace() {
        List<Speaker> seven = Speaker.ofCount(8);
        assertThat(seven.stream().map(each -> each.weight(seven)))
                .containsExactly(1.0, 1.0, 1.0, 0.0, 1.0, 1.0, 1.41, 1.41);
        List<Speaker> five = Speaker.ofCount(5);
        assertThat(five.stream().map(each -> each.weight(five))).containsExactly(1.0, 1.0, 1.0, 1.41, 1.41);
    }

    @Test
    void tooSlowASound_isOurMistake() {
        assertThatThrownBy(() -> Loudness.of(
                        Tones.of(7999, 100, Speaker.CENTRE).then(1, -3).sound()))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage("a sound of 7999 samples a second");
    }
}
