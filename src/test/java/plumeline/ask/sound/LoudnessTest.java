package plumeline.ask.sound;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static plumeline.ask.Asking.number;

import java.util.List;
import org.junit.jupiter.api.Test;
import plumeline.answer.Answer;
import plumeline.answer.Beside;
import plumeline.answer.Value;
import plumeline.answer.Verdict;
import plumeline.ask.Asking;
import plumeline.sound.HeldSound;
import plumeline.sound.Speaker;
import plumeline.sound.Wav;

/// The question `loudness` of tones whose loudness is known: a stereo sine of 1 kHz reads 0.007 LU over its peak.
final class LoudnessTest {
    private static final String AT = "file: mix.wav\n";

    private static Beside holding(byte[] bytes) {
        return (_, most) -> new Beside.File.There(java.util.Arrays.copyOf(bytes, Math.min(most, bytes.length)));
    }

    private static byte[] tone(int rate, double seconds, double dbfs, Speaker... speakers) {
        float[][] rows = new float[speakers.length][(int) (rate * seconds)];
        for (float[] row : rows) {
            for (int i = 0; i < row.length; i++) {
                row[i] = (float) (Math.pow(10, dbfs / 20) * Math.sin(2 * Math.PI * 1000 * i / rate));
            }
        }
        return Wav.writeFloat(new HeldSound(rate, List.of(speakers), rows));
    }

    private static byte[] stereo(double dbfs) {
        return tone(48_000, 5, dbfs, Speaker.LEFT, Speaker.RIGHT);
    }

    private static Answer answer(String text, byte[] file) {
        return Asking.answer(Asking.ask("loudness", text, holding(file)));
    }

    private static List<String> problems(String text, byte[] file) {
        return Asking.problems(Asking.ask("loudness", text, holding(file)));
    }

    /// A tone's peak lies half a place off at worst, an eighth of a sample being a place.
    @Test
    void howFarATruePeakMayBeUnder_isTold_withItsBound() {
        double under = -20 * Math.log10(Math.cos(Math.PI * 0.45 / 8));
        assertThat(answer(AT + "target: -23 LUFS\n", stereo(-23)).notes().sources())
                .anyMatch(source -> source.contains(
                        String.format(java.util.Locale.ROOT, "up to %.2f dB under what is there, to 0.45 of", under)));
    }

    @Test
    void tooLoud_fails_andTheGainIsTold() {
        Answer answer = answer(AT + "target: -23 LUFS\n", stereo(-18.4));
        assertThat(answer.verdict()).isEqualTo(Verdict.FAILS);
        assertThat(number(answer, "integrated")).isEqualTo(-18.393, within(1e-3));
        assertThat(number(answer, "gain_to_target")).isEqualTo(-4.607, within(1e-3));
        assertThat(number(answer, "true_peak")).isEqualTo(-18.4, within(0.01));
        assertThat(number(answer, "true_peak_after")).isEqualTo(-23.007, within(0.01));
        assertThat(number(answer, "range")).isZero();
        assertThat(number(answer, "momentary")).isEqualTo(-18.393, within(1e-2));
        assertThat(number(answer, "short_term")).isEqualTo(-18.393, within(1e-2));
        assertThat(answer.notes().because().getFirst())
                .isEqualTo("mix.wav reads -18.4 LUFS over 5 s, 4.6 LU over its target of -23 LUFS; only 0.2 LU are"
                        + " allowed.");
        assertThat(answer.notes().attempts())
                .containsExactly(
                        "Set the gain of all of it to -4.6 dB: it then reads -23 LUFS, its highest peak -23 dBTP.");
        // The gain that is told, set: it holds.
        assertThat(answer(AT + "target: -23 LUFS\n", stereo(-18.4 - 4.607)).verdict())
                .isEqualTo(Verdict.HOLDS);
    }

    @Test
    void tooSoft_whosePeaksDontPassAfterwards_namesTheLimiterAndTheLoudestWithout() {
        byte[] file = stereo(-26);
        // One peak of 4 dB under full scale amid it.
        java.nio.ByteBuffer.wrap(file).order(java.nio.ByteOrder.LITTLE_ENDIAN).putFloat(44 + 8 * 96_000, 0.6310F);
        Answer answer = answer(AT + "target: -16 LUFS\n", file);
        assertThat(answer.verdict()).isEqualTo(Verdict.FAILS);
        double gain = number(answer, "gain_to_target");
        assertThat(gain).isEqualTo(10, within(0.1));
        double over = number(answer, "true_peak") + gain + 1;
        assertThat(over).isBetween(6.0, 8.5);
        String told = plumeline.quantity.Print.number(Math.ceil(over * 10) / 10, 1);
        assertThat(answer.notes().attempts()).hasSize(3);
        assertThat(answer.notes().attempts().get(0)).contains("+10 dB").endsWith("too high by " + told + " dB.");
        assertThat(answer.notes().attempts().get(1))
                .startsWith("Have a true-peak limiter at -1 dBTP take the peaks down by " + told + " dB");
        assertThat(answer.notes().attempts().get(2)).startsWith("Without a limiter the loudest");
    }

    @Test
    void onTargetButOverTheLimit_fails_nearALimit_isTight() {
        Answer hot = answer(AT + "target: -0.5 LUFS\nwithin: 1 LU\n", stereo(-0.5));
        assertThat(hot.verdict()).isEqualTo(Verdict.FAILS);
        assertThat(hot.notes().attempts()).hasSize(2);
        assertThat(answer(AT + "target: -20 LUFS\n", stereo(-20.16)).verdict()).isEqualTo(Verdict.TIGHT);
        assertThat(answer(AT + "target: -1.1 LUFS\n", stereo(-1.1)).verdict()).isEqualTo(Verdict.TIGHT);
        assertThat(answer(AT + "target: -20 LUFS\n", stereo(-20.05)).verdict()).isEqualTo(Verdict.HOLDS);
        assertThat(answer(AT + "target: -20 LUFS\nwithin: 1 LU\n", stereo(-20.5))
                        .verdict())
                .isEqualTo(Verdict.HOLDS);
        assertThat(answer(AT + "target: -20 LUFS ± 0.5 LU\nwithin: 0.5 LU\n", stereo(-20.3))
                        .verdict())
                .isEqualTo(Verdict.TIGHT);
    }

    @Test
    void silenceAndShortSounds_areUnknown_andWhatIsMissingIsTold() {
        Answer silent = answer(AT, stereo(-200));
        assertThat(silent.verdict()).isEqualTo(Verdict.UNKNOWN);
        assertThat(silent.getValue("integrated")).isEqualTo(new Value.Word("none"));
        assertThat(silent.getValue("gain_to_target")).isEqualTo(new Value.Word("none"));
        assertThat(silent.notes().because().getFirst())
                .isEqualTo("There is nothing to measure in mix.wav: all of it is silent, or under -70 LUFS.");
        Answer brief = answer(AT, tone(48_000, 0.3, -20, Speaker.CENTRE));
        assertThat(brief.verdict()).isEqualTo(Verdict.UNKNOWN);
        assertThat(brief.notes().because().getFirst())
                .isEqualTo("mix.wav lasts 0.3 s. Loudness is measured over 0.4 s at least.");
        assertThat(number(brief, "true_peak")).isEqualTo(-20, within(0.05));
    }

    @Test
    void channels_areTold() {
        Answer mono = answer(AT, tone(44_100, 2, -14, Speaker.CENTRE));
        assertThat(number(mono, "integrated")).isEqualTo(-17.0, within(0.02));
        assertThat(mono.notes().because())
                .contains("One channel, 44.1 kHz, counted once: the same in two channels reads 3 LU more.");
        Speaker[] six = Speaker.ofCount(6).toArray(Speaker[]::new);
        byte[] told = tone(48_000, 2, -30, six);
        assertThat(answer(AT, told).assumed()).noneMatch(each -> each.name().equals("channels"));
        assertThat(answer(AT, told).notes().because())
                .contains("6 channels, 48 kHz: L R C LFE Lb Rb. LFE isn't counted.");
        byte[] untold = told.clone();
        java.util.Arrays.fill(untold, 40, 44, (byte) 0);
        assertThat(answer(AT, untold).assumed())
                .anyMatch(each ->
                        each.name().equals("channels") && each.value().equals(new Value.Word("L R C LFE Lb Rb")));
    }

    @Test
    void refusals_nameFileLineAndWhatIsThere() {
        byte[] good = stereo(-20);
        assertThat(problems(AT, "%PDF-1.7 and so on".getBytes(java.nio.charset.StandardCharsets.US_ASCII)))
                .singleElement()
                .asString()
                .startsWith(
                        "ask.yaml:1:7 file is mix.wav, in which is no WAV file's head; must be a WAV file, or a clip"
                                + " with one track of sound");
        assertThat(problems(AT, java.util.Arrays.copyOf(good, 1000)).getFirst())
                .contains("sound of 1920000 bytes by its head, of which 956 are there");
        assertThat(problems(AT, tone(4000, 1, -20, Speaker.CENTRE)).getFirst())
                .contains("mix.wav, with 4000 samples a second");
        assertThat(Asking.problems("loudness", AT).getFirst()).contains("P-ASK-48");
        assertThat(problems("file: mix.wav\ntarget: -14 dB\n", good).getFirst()).contains("a loudness in LUFS");
        assertThat(problems("target: -14 LUFS\n", good).getFirst()).contains("file");
    }
}
