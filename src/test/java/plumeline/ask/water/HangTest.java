package plumeline.ask.water;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import plumeline.answer.Answer;
import plumeline.answer.Value;
import plumeline.answer.Verdict;
import plumeline.ask.Asking;

/// The question `hang`: intervals of what tips.
final class HangTest {
    private static final String BODY = """
        whole_mass: 410 g ± 6 g
        outside: 393 ml ± 8 ml
        centre_of_mass: %s ± %s
        centre_of_volume: 57.5 mm
        points: [20 mm, 90 mm]
        attitude: level
        """;

    /// By the lever rule the balance point is near the base, beyond the lines: it hangs upright on the lower one, or
    /// level should the balance point be between them.
    @Test
    void tilt_mayTipWithinTheSpread_soItsEndsAreBothRests() {
        Answer answer = Asking.answer("hang", BODY.formatted("55 mm", "2 mm"));
        assertThat(answer.verdict()).isEqualTo(Verdict.FAILS);
        Value.Spread tilt = Asking.spread(answer, "tilt");
        assertThat(tilt.value()).isCloseTo(0, within(0.1));
        assertThat(tilt.low()).isCloseTo(0, within(0.1));
        assertThat(tilt.high()).isCloseTo(90, within(1e-9));
        assertThat(answer.notes().because()).anyMatch(line -> line.startsWith("tilt's low and high are"));
    }

    @Test
    void tilt_thatCannotTipWithinTheSpread_hasNoInterval() {
        Answer answer = Asking.answer("hang", BODY.formatted("57.5 mm", "0.5 mm"));
        assertThat(answer.getValue("tilt")).isEqualTo(new Value.Number(90, "deg"));
        assertThat(Asking.spread(answer, "load_1").low()).isPositive();
    }

    /// Neither input tips it by itself: only both at once, as far as they are together likely to be off.
    @Test
    void tilt_tipsByAllInputsTogether() {
        String text = "whole_mass: 500 g\noutside: 420 ml\ncentre_of_mass: %s\ncentre_of_volume: %s\n"
                + "points: [25 mm, 95 mm]\nattitude: level\n";
        // Balance point (500·60 − 419.2·66.4)/80.8 = 26.8 mm, 1.8 mm above the lower line. It goes 1.6 mm down by the
        // one input, 1.7 mm by the other, √(1.6² + 1.7²) = 2.3 mm by both.
        Value level = new Value.Number(90, "deg");
        Answer one = Asking.answer("hang", text.formatted("60 mm ± 0.4 mm", "66.4 mm"));
        assertThat(one.getValue("tilt")).isEqualTo(level);
        Answer other = Asking.answer("hang", text.formatted("60 mm", "66.4 mm ± 0.5 mm"));
        assertThat(other.getValue("tilt")).isEqualTo(level);
        Answer both = Asking.answer("hang", text.formatted("60 mm ± 0.4 mm", "66.4 mm ± 0.5 mm"));
        assertThat(Asking.spread(both, "tilt").low()).isCloseTo(0, within(1e-6));
        assertThat(both.verdict()).isEqualTo(Verdict.TIGHT);
    }
}
