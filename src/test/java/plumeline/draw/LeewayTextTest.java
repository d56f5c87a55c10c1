package plumeline.draw;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import plumeline.plan.Mark;
import plumeline.quantity.PaperUnit;
import plumeline.solve.MarkAnswer;

final class LeewayTextTest {
    private static final LeewayText MM = new LeewayText(PaperUnit.MILLIMETRES);
    private static final LeewayText IN = new LeewayText(PaperUnit.INCHES);

    private static MarkAnswer mark(String path) {
        return Made.shot(Made.film(Made.text()), "reveal").marks().stream()
                .filter(answer -> answer.mark().path().equals(path))
                .findFirst()
                .orElseThrow();
    }

    @Test
    void leeway_isRoundedDown() {
        Mark tape = mark("second.x").mark();
        assertThat(MM.withUnit(tape, 0.0039)).isEqualTo("3 mm");
        assertThat(MM.withUnit(tape, 0.001999)).isEqualTo("1.9 mm");
        assertThat(MM.withUnit(tape, 0.00188)).isEqualTo("1.8 mm");
        assertThat(MM.withUnit(tape, 0)).isEqualTo("0.0 mm");
        assertThat(IN.withUnit(tape, 0.0254 * 0.99 / 8)).isEqualTo("1/16 in");
    }

    @Test
    void leeway_forgivesATrifleOfAStepAndNeverMore() {
        assertThat(MM.withUnit(mark("second.x").mark(), 0.0069999)).isEqualTo("7 mm");
        assertThat(MM.withUnit(mark("second.x").mark(), 3.2298)).isEqualTo("3229 mm");
    }

    @Test
    void bothSides_areSaidShortly() {
        assertThat(MM.both(mark("second.x"))).isEqualTo("±3");
        assertThat(MM.both(mark("third.x"))).isEqualTo("−7 +1.2");
        assertThat(MM.both(mark("second.y"))).isEqualTo("−9 + loose");
        assertThat(MM.both(mark("first.x"))).isEqualTo("loose");
    }
}
