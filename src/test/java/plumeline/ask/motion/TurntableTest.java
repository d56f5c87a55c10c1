package plumeline.ask.motion;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static plumeline.ask.Asking.answer;
import static plumeline.ask.Asking.number;
import static plumeline.ask.Asking.problems;
import static plumeline.ask.Asking.spread;

import org.junit.jupiter.api.Test;
import plumeline.answer.Answer;
import plumeline.answer.Value;

/// The question `turntable`.
final class TurntableTest {
    private static final String PASS = "label: {arc: 82 deg, facing_at_start: 20 deg}\nrate: 24 fps\n";

    @Test
    void counterClockwise_facingFalls_andTheSweepIsHowFar() {
        Answer answer = answer("turntable", "speed: 60 deg/s\nseen_from_above: counter-clockwise\nframes: 24\n" + PASS);
        assertThat(number(answer, "sweep")).isEqualTo(60, within(1e-9));
        assertThat(number(answer, "facing_end")).isEqualTo(-40, within(1e-9));
        // From +20 to -30 at 60 deg/s.
        assertThat(number(answer, "readable")).isEqualTo(50 / 60.0, within(1e-9));
        assertThat(answer.notes().attempts())
                .anyMatch(text -> text.contains("Start with the label at +30 deg: it reads for 1 s"));
        assertThat(answer.getValue("blur")).isEqualTo(new Value.Word("unknown"));
    }

    @Test
    void manyTurns_areNotWrapped_andReadAgain() {
        Answer answer = answer("turntable", "time: 1 s\nframes: 60\n" + PASS);
        assertThat(number(answer, "facing_end")).isEqualTo(920, within(1e-9));
        // From 20 to 920: up to 30, 330 to 390, 690 to 750: 130 deg of 360 a second.
        assertThat(number(answer, "readable")).isEqualTo(130 / 360.0, within(1e-9));
    }

    @Test
    void aLabelThatIsNeverNear_readsForNothing() {
        Answer answer =
                answer("turntable", "speed: 1 deg/s\nframes: 24\nwithin: 10 deg\n" + PASS.replace("20 deg", "90 deg"));
        assertThat(number(answer, "readable")).isZero();
        assertThat(answer.notes().because()).anyMatch(text -> text.contains("never within 10 deg"));
    }

    @Test
    void withoutFacing_itIsCentred_andThatIsSaid() {
        Answer answer = answer("turntable", "speed: 60 deg/s\nframes: 24\nrate: 24 fps\nlabel: {arc: 82 deg}\n");
        assertThat(number(answer, "facing_end")).isEqualTo(30, within(1e-9));
        assertThat(answer.assumed().stream().map(Answer.Assumed::name))
                .containsExactly("seen_from_above", "within", "label.facing_at_start");
    }

    @Test
    void facing_isTheSameInShort() {
        Answer answer = answer("turntable", "speed: 60 deg/s\nframes: 24\n" + PASS.replace("_at_start", ""));
        assertThat(number(answer, "facing_end")).isEqualTo(80, within(1e-9));
    }

    @Test
    void spreads_carryThrough() {
        Answer answer = answer("turntable", "speed: 60 deg/s ± 6 deg/s\nframes: 24\n" + PASS);
        assertThat(spread(answer, "sweep").high()).isGreaterThan(60);
        // From +20 on it leaves +30 the later, the slower it turns.
        assertThat(spread(answer, "readable").low()).isLessThan(10 / 60.0);
        assertThat(spread(answer, "readable").high()).isGreaterThan(10 / 60.0);
    }

    @Test
    void wrongInputs_areRefused() {
        assertThat(problems("turntable", "speed: 10 rpm\ntime: 6 s\nframes: 24\n" + PASS))
                .hasSize(1);
        assertThat(problems("turntable", "speed: 10 rpm\nframes: 24.5\n" + PASS))
                .hasSize(1)
                .first()
                .asString()
                .contains("P-ASK-42");
        String view = "diameter: 42 mm\nview: {distance: 900 mm, focal_length: 100 mm, rate: 25 fps,"
                + " sensor: {width: 36 mm, height: 20.25 mm, across: 3840 px}}\n";
        assertThat(problems("turntable", "speed: 10 rpm\nframes: 24\n" + PASS + view))
                .hasSize(1)
                .first()
                .asString()
                .contains("view.rate is 25 fps; must be the capture rate, 24 fps")
                .contains("P-ASK-43");
    }
}
