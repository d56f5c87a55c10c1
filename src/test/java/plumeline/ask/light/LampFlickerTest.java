package plumeline.ask.light;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static plumeline.ask.Asking.answer;
import static plumeline.ask.Asking.number;
import static plumeline.ask.Asking.problems;
import static plumeline.ask.Asking.spread;

import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import plumeline.answer.Answer;
import plumeline.answer.Value;
import plumeline.answer.Verdict;
import plumeline.quantity.PaperUnit;

/// The question `lamp-flicker`.
final class LampFlickerTest {
    private static Answer ask(String pulse, String rate, String shutter, String more) {
        return answer(
                "lamp-flicker", "pulse_rate: " + pulse + "\nrate: " + rate + "\nshutter: " + shutter + "\n" + more);
    }

    private static List<Double> list(Answer answer, String name) {
        return ((Value.Numbers) answer.getValue(name)).values();
    }

    private static String word(Answer answer, String name) {
        return ((Value.Word) answer.getValue(name)).text();
    }

    /// 100 pulses a second at 24 fps and 180 deg: 25/12 pulses an exposure, 3.95 % by Fourier's box, four times a
    /// second;
    /// 172.8 deg are clean (handbooks: 172.8 deg under 50 Hz).
    @Test
    void mainsOfFiftyHertz_atTwentyFour() {
        Answer bad = ask("100 Hz", "24 fps", "180 deg", "");
        assertThat(number(bad, "pulses_per_frame")).isCloseTo(100 / 24.0, within(1e-9));
        assertThat(number(bad, "pulses_per_exposure")).isCloseTo(100 / 48.0, within(1e-9));
        assertThat(number(bad, "ripple")).isCloseTo(3.9545, within(1e-3));
        assertThat(number(bad, "beat")).isCloseTo(4, within(1e-9));
        assertThat(word(bad, "standing_bars")).isEqualTo("no");
        assertThat(bad.verdict()).isEqualTo(Verdict.FAILS);
        assertThat(bad.notes().attempts())
                .anyMatch(text -> text.contains("172.8 deg, 1/50 s: 2 whole pulses"))
                .anyMatch(text -> text.contains("25 fps"))
                .anyMatch(text -> text.contains("five seconds"));
        List<Double> clean = list(bad, "clean_shutters");
        assertThat(clean).hasSize(4);
        assertThat(clean.get(1)).isCloseTo(172.8, within(1e-9));
        assertThat(list(bad, "clean_rates")).containsExactly(25.0, 50.0, 100.0);
        Answer good = ask("100 Hz", "24 fps", "172.8 deg", "");
        assertThat(number(good, "ripple")).isCloseTo(0, within(1e-9));
        assertThat(good.verdict()).isEqualTo(Verdict.HOLDS);
        assertThat(list(good, "clean_rates")).containsExactly(24.0, 25.0, 48.0, 50.0, 100.0);
    }

    /// Ripple to 1 % holds, to 3 % is tight: the same ripple of 3.9545 % scaled by the depth.
    @Test
    void depth_scalesRippleOverTheVerdicts() {
        assertThat(ask("100 Hz", "24 fps", "180 deg", "depth: 25 %\n").verdict())
                .isEqualTo(Verdict.HOLDS);
        assertThat(ask("100 Hz", "24 fps", "180 deg", "depth: 26 %\n").verdict())
                .isEqualTo(Verdict.TIGHT);
        assertThat(ask("100 Hz", "24 fps", "180 deg", "depth: 75 %\n").verdict())
                .isEqualTo(Verdict.TIGHT);
        assertThat(ask("100 Hz", "24 fps", "180 deg", "depth: 77 %\n").verdict())
                .isEqualTo(Verdict.FAILS);
    }

    /// In step nothing ripples, but bars stand in a rolling shutter; with its readout known they count.
    @Test
    void inStep_barsStand() {
        Answer step = ask("120 Hz", "24 fps", "180 deg", "");
        assertThat(number(step, "ripple")).isZero();
        assertThat(word(step, "standing_bars")).isEqualTo("yes");
        assertThat(step.verdict()).isEqualTo(Verdict.HOLDS);
        assertThat(step.notes().attempts()).anyMatch(text -> text.contains("144 deg, 1/60 s: 2 whole pulses"));
        assertThat(ask("120 Hz", "24 fps", "180 deg", "readout: 16 ms\n").verdict())
                .isEqualTo(Verdict.FAILS);
        assertThat(ask("120 Hz", "24 fps", "144 deg", "readout: 16 ms\n").verdict())
                .isEqualTo(Verdict.HOLDS);
        assertThat(word(ask("120 Hz", "24 fps", "144 deg", ""), "standing_bars"))
                .isEqualTo("no");
    }

    /// What is offered leaves nothing, bars in a known readout counted: 25 fps would let them stand.
    @Test
    void whatIsOffered_wasTried() {
        String text = "readout: 16 ms\nmodes: [24 fps, 25 fps]\n";
        Answer bad = ask("100 Hz", "24 fps", "180 deg", text);
        assertThat(bad.notes().attempts()).anyMatch(each -> each.contains("A rate of 25 fps"));
        Answer odd = ask("100 Hz", "24 fps", "170 deg", text);
        assertThat(odd.notes().attempts())
                .noneMatch(each -> each.contains("A rate of"))
                .anyMatch(each -> each.contains("A shutter of 172.8 deg"));
        assertThat(ask("100 Hz", "24 fps", "172.8 deg", text).verdict()).isEqualTo(Verdict.HOLDS);
    }

    /// 23.976 fps under 120 pulses a second is not in step: five pulses and a two-hundredth.
    @Test
    void broadcastRate_isExact() {
        Answer answer = ask("120 Hz", "23.976 fps", "180 deg", "");
        assertThat(number(answer, "pulses_per_frame")).isCloseTo(5.005, within(1e-9));
        assertThat(number(answer, "ripple")).isGreaterThan(12);
        assertThat(list(answer, "clean_shutters").get(1)).isCloseTo(143.856, within(1e-3));
        assertThat(answer.toText(PaperUnit.MILLIMETRES)).contains("143.9 deg").contains("once in 8.3 s");
    }

    /// A ± on the mains makes frames in step an uncertain thing, and whole pulses hardly.
    @Test
    void plusMinus_isCounted() {
        assertThat(ask("100 Hz ± 0.4 Hz", "25 fps", "180 deg", "").verdict()).isEqualTo(Verdict.HOLDS);
        assertThat(ask("120 Hz ± 0.4 Hz", "24 fps", "180 deg", "").verdict()).isEqualTo(Verdict.TIGHT);
        Answer wide = ask("100 Hz ± 8 Hz", "24 fps", "1/50 s", "");
        assertThat(wide.verdict()).isEqualTo(Verdict.TIGHT);
        assertThat(spread(wide, "ripple").high()).isGreaterThan(3);
    }

    @Test
    void randomSettings_followTheLaw() {
        Random random = new Random(74);
        for (int i = 0; i < 200; i++) {
            double pulse = 50 + random.nextInt(3000);
            double rate = 20 + random.nextInt(100);
            double degrees = 10 + random.nextInt(350);
            Answer answer = ask(pulse + " Hz", rate + " fps", degrees + " deg", "");
            double n = Math.PI * pulse * degrees / 360 / rate;
            double law = pulse % rate == 0 ? 0 : 100 * Math.abs(Math.sin(n) / n);
            assertThat(number(answer, "ripple")).isCloseTo(law, within(1e-6));
            double each = 360 * rate / pulse;
            assertThat(list(answer, "clean_shutters")).hasSize((int) Math.min(100, Math.floor(360 / each + 1e-9)));
        }
    }

    /// A duty says that the pulse is square: on for 20 % of 1/400 s, exposures of 1/240 s take in a third more or less
    /// (on-time extremes).
    @Test
    void duty_meansSquare() {
        Answer square = ask("400 Hz", "48 fps", "1/240 s", "duty: 20 %\n");
        assertThat(number(square, "ripple")).isCloseTo(100 / 3.0, within(1e-9));
        assertThat(square.assumed()).noneMatch(each -> each.name().equals("waveform"));
    }

    @Test
    void emptyLists_areSaid() {
        Answer slow = ask("10 Hz", "24 fps", "180 deg", "modes: [24 fps]\n");
        assertThat(list(slow, "clean_shutters")).isEmpty();
        assertThat(slow.toText(PaperUnit.MILLIMETRES)).containsPattern("clean_rates +none");
        assertThat(slow.toJson()).contains("\"clean_rates\": {\"value\": [], \"unit\": \"fps\"}");
        assertThat(slow.notes().attempts()).anyMatch(text -> text.contains("pulses faster"));
    }

    @Test
    void whatDoesntGoTogether_isRefused() {
        String text = "pulse_rate: 100 Hz\nrate: 24 fps\nshutter: 1/48 s\n";
        assertThat(problems("lamp-flicker", text + "waveform: sine\nduty: 30 %\n"))
                .singleElement()
                .satisfies(said -> assertThat(said).contains("duty is given beside waveform sine"));
        assertThat(problems("lamp-flicker", text.replace("1/48", "1/20")))
                .singleElement()
                .satisfies(said -> assertThat(said).contains("shutter is 50 ms; must be at most a frame's time"));
        assertThat(problems("lamp-flicker", text.replace("100 Hz", "100")))
                .singleElement()
                .satisfies(said -> assertThat(said).contains("pulse_rate").contains("Hz"));
    }
}
