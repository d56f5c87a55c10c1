package plumeline.solve;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import plumeline.plan.Mark;
import plumeline.quantity.PaperUnit;

final class WordsTest {
    private static final Words MM = new Words(PaperUnit.MILLIMETRES);
    private static final Words IN = new Words(PaperUnit.INCHES);

    @Test
    void margin_isNeverNothing() {
        for (double size : new double[] {0, 1e-12, -0.0004, 0.049, -0.049}) {
            assertThat(MM.margin(size, "%")).isEqualTo("under 0.1 %");
            assertThat(MM.margin(size, "mm")).isEqualTo("under 0.1 mm");
            assertThat(IN.margin(size, "mm")).isEqualTo("under 1/16 in");
            assertThat(MM.margin(size, "px")).isEqualTo("under 0.1 px");
        }
        assertThat(MM.margin(-0.06, "%")).isEqualTo("0.1 %");
        assertThat(MM.margin(9.94, "%")).isEqualTo("9.9 %");
        assertThat(MM.margin(30.4, "%")).isEqualTo("30 %");
        assertThat(MM.margin(0.06, "mm")).isEqualTo("0.1 mm");
    }

    @Test
    void lack_isNeverNothing() {
        assertThat(MM.standing("shown", -0.02, "%")).isEqualTo("A gap lacks under 0.1 % of the width.");
        assertThat(MM.standing("hidden", -0.02, "mm")).isEqualTo("Sticks out by under 0.1 mm.");
    }

    @Test
    void smallInches_areWhatATapeShows() {
        assertThat(IN.margin(1.78, "mm")).isEqualTo("1/16 in");
        assertThat(IN.margin(-2.4, "mm")).isEqualTo("1/8 in");
        assertThat(IN.margin(34, "mm")).isEqualTo("1 5/16 in");
        var answer = Solved.shot(Solved.text(
                "camera: {body: main, lens: fifty, at: [0 mm, -600 mm, 59 mm], aim: hero}",
                "place: {hero: {thing: can, at: [0 mm, 0 mm]}}",
                "moves: {slide: {machine: slider, by: [100 mm, 0 mm], in: 5 s}}"));
        Mark tape = Solved.mark(answer, "hero.x").mark();
        assertThat(IN.difference(tape, 0.002)).isEqualTo("1/16 in");
        assertThat(IN.difference(tape, 0.0018)).isEqualTo("1/16 in");
        assertThat(IN.difference(tape, -0.005)).isEqualTo("3/16 in");
        assertThat(MM.difference(tape, 0.0018)).isEqualTo("1.8 mm");
        assertThat(IN.leeway(tape, 0.0015)).isEqualTo("under 1/16 in");
        assertThat(IN.tooCoarse(tape, 0.002)).isEqualTo("you place to a little over 1/16 in. Use a jig.");
        assertThat(IN.tooCoarse(tape, 0.0254 / 8)).isEqualTo("you place to 1/8 in. Use a jig.");
        Mark motor = Solved.mark(answer, "slide.by").mark();
        assertThat(IN.difference(motor, 0.0018)).isEqualTo("0.07 in");
    }
}
