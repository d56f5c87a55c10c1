package plumeline.ask.time;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static plumeline.ask.Asking.answer;
import static plumeline.ask.Asking.number;
import static plumeline.ask.Asking.problems;
import static plumeline.ask.Asking.spread;

import java.nio.charset.StandardCharsets;
import java.util.List;
import org.junit.jupiter.api.Test;
import plumeline.answer.Answer;
import plumeline.answer.Beside;
import plumeline.answer.Outcome;
import plumeline.answer.Verdict;
import plumeline.ask.Questions;

/// The question `ramp`.
final class RampTest {
    private static final String DIP =
            "timeline_rate: 24 fps\nspeeds: [{at: 0 s, speed: 100 %}, {at: 24 frames, speed: 20 %},"
                    + " {at: 3 s, speed: 20 %}, {at: 96 frames, speed: 100 %}]\n";

    private static List<String> rows(String text) {
        Outcome outcome = Questions.find("ramp")
                .orElseThrow()
                .list(text.getBytes(StandardCharsets.UTF_8), "ask.yaml", Beside.NOTHING);
        return ((Outcome.Listed) outcome).text().lines().toList();
    }

    @Test
    void timesAndFramesMix_andTheLeastRateIsTaken() {
        Answer dip = answer("ramp", DIP);
        assertThat(number(dip, "chosen_rate")).isCloseTo(120, within(1e-9));
        assertThat(number(dip, "source_frames")).isCloseTo(192, within(1e-9));
        assertThat(dip.verdict()).isEqualTo(Verdict.HOLDS);
        assertThat(dip.assumed())
                .anyMatch(
                        each -> each.name().equals("capture_rate") && each.why().contains("shows no frame twice"));
        assertThat(dip.notes().because())
                .contains("20 % needs 120 fps: 2.3 stops more light than at 24 fps with the same shutter angle.");
        assertThat(dip.notes().attempts())
                .containsExactly("For natural smear at 100 % open to 360 deg, which looks like 72 deg, and average 2.5"
                        + " captured frames for each shown.");
    }

    @Test
    void aListedRate_isTheLeastThatIsEnough_widestFirst() {
        Answer dip = answer(
                "ramp",
                DIP
                        + "modes: [{rate: 240 fps, across: 1920 px, readout: 6 ms}, {rate: 150 fps, across: 3840 px},"
                        + " 24 fps]\n");
        assertThat(number(dip, "chosen_rate")).isEqualTo(150);
        assertThat(dip.notes().because())
                .anyMatch(text -> text.contains("; it is shot at 150 fps: 2.6 stops more light"))
                .anyMatch(text -> text.contains("240 fps 3.3 stops and 1920 px across, 50 % of the widest;"
                        + " 150 fps 2.6 stops and 3840 px across. Fewer pixels"));
    }

    @Test
    void tooSlowACamera_fails_andSaysHowSlowItMayGo() {
        Answer dip = answer("ramp", DIP + "modes: [24 fps, 60 fps]\n");
        assertThat(dip.verdict()).isEqualTo(Verdict.FAILS);
        assertThat(number(dip, "chosen_rate")).isEqualTo(60);
        assertThat(number(dip, "least_capture_rate")).isCloseTo(120, within(1e-9));
        assertThat(number(dip, "repeated_frames")).isPositive();
        assertThat(dip.notes().attempts().getFirst())
                .isEqualTo("The camera has no rate that is enough: go no slower than 40 % at 60 fps, or blend frames in"
                        + " the edit where the picture bears it.");
        Answer given = answer("ramp", DIP + "capture_rate: 100 fps\nmodes: [24 fps, 120 fps]\n");
        assertThat(given.verdict()).isEqualTo(Verdict.FAILS);
        assertThat(given.notes().because()).contains("The camera has no mode of 100 fps.");
        assertThat(given.notes().attempts().getFirst()).startsWith("Shoot at 120 fps: 2.3 stops more light");
        assertThat(answer("ramp", DIP + "capture_rate: 100 fps\n")
                        .notes()
                        .attempts()
                        .getFirst())
                .isEqualTo("Shoot at 120 fps or faster, or go no slower than 24 % at 100 fps.");
        assertThat(answer("ramp", DIP + "capture_rate: 240 fps\n")
                        .notes()
                        .attempts()
                        .getFirst())
                .isEqualTo("120 fps is enough and needs 1 stop less light.");
    }

    @Test
    void aHold_repeatsAsAsked_aTurnDoesNot() {
        Answer held = answer("ramp", """
            timeline_rate: 24 fps
            speeds: [{at: 1 s, speed: 100 %}, {at: 1 s, speed: 0 %}, {at: 2 s, speed: 0 %}, {at: 2 s, speed: 100 %},
                     {at: 3 s, speed: 100 %}]
            """);
        assertThat(held.verdict()).isEqualTo(Verdict.HOLDS);
        assertThat(number(held, "repeated_frames")).isEqualTo(24);
        assertThat(number(held, "real_time")).isEqualTo(2);
        Answer turned =
                answer("ramp", "timeline_rate: 24 fps\nspeeds: [{at: 0 s, speed: 100 %}, {at: 2 s, speed: -100 %}]\n");
        assertThat(turned.verdict()).isEqualTo(Verdict.TIGHT);
        assertThat(number(turned, "real_time")).isCloseTo(0.5, within(1e-12));
        assertThat(turned.notes().because()).anyMatch(text -> text.contains("where the speed runs to or through 0 %"));
        Answer still = answer("ramp", "timeline_rate: 24 fps\nspeeds: [{at: 1 s, speed: 0 %}]\n");
        assertThat(number(still, "source_frames")).isZero();
        assertThat(still.notes().because()).contains("The table stands all the time: one frame is held.");
    }

    @Test
    void backward_isCountedFromItsEarliestInstant() {
        String text = "timeline_rate: 24 fps\nspeeds: [{at: 0 s, speed: -50 %}, {at: 1 s, speed: -50 %}]\n";
        Answer back = answer("ramp", text);
        assertThat(number(back, "real_time")).isCloseTo(0.5, within(1e-12));
        assertThat(back.notes().because()).anyMatch(said -> said.contains("the shot begins 0.5 s after it"));
        List<String> rows = rows(text);
        assertThat(rows.get(1).strip().split(" +")).containsExactly("0", "24", "-50.000", "24.000", "0.000");
        assertThat(rows.getLast().strip().split(" +")).containsExactly("23", "1", "-50.000", "1.000", "0.000");
    }

    @Test
    void table_hasALineAFrame() {
        List<String> rows = rows(DIP);
        assertThat(rows).hasSize(97);
        assertThat(rows.getFirst().strip().split(" +"))
                .containsExactly("screen", "source", "speed[%]", "position", "phase");
        assertThat(rows.get(2).strip().split(" +")).containsExactly("1", "5", "96.667", "4.917", "-0.083");
        assertThat(rows.get(25).strip().split(" +")).containsExactly("24", "72", "20.000", "72.000", "0.000");
        assertThat(rows(DIP.replace("96 frames", "96.5 frames"))).hasSize(98);
    }

    @Test
    void whatIsntKnownForSure_movesTheAnswer() {
        Answer answer = answer(
                "ramp", "timeline_rate: 24 fps\nspeeds: [{at: 0 s, speed: 100 %}, {at: 2 s, speed: 40 % ± 4 %}]\n");
        // ∂/∂v of (1 + v)/2 · 2 s is 1 s; ± is 95 %, low and high 80 %: 0.04 · 1.2816 / 1.9600.
        assertThat(spread(answer, "real_time").high() - number(answer, "real_time"))
                .isCloseTo(0.026154, within(1e-5));
        assertThat(answer.verdict()).isEqualTo(Verdict.TIGHT);
    }

    @Test
    void multiples_wrongOrder_andNoLength_areRefused() {
        String head = "timeline_rate: 24 fps\nspeeds: ";
        assertThat(problems("ramp", head + "[{at: 1 s, speed: 0.2}]"))
                .anyMatch(text -> text.contains("speeds[1].speed is a bare number (0.2); must be a share in %"));
        assertThat(problems("ramp", head + "[{at: 2 s, speed: 20 %}, {at: 24 frames, speed: 20 %}]"))
                .containsExactly(
                        "ask.yaml:2:39 speeds[2].at is 24 frames behind a later one; must be no earlier than the"
                                + " one before it, 48 frames\n  Put the speeds in the order in which they come."
                                + "   (P-ASK-45,"
                                + " docs/problems.md)");
        assertThat(problems("ramp", head + "[{at: 0 s, speed: 20 %}]"))
                .anyMatch(text -> text.contains("a ramp that ends when it begins") && text.contains("P-ASK-46"));
    }
}
