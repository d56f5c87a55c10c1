package plumeline.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import plumeline.draw.LeewayText;
import plumeline.draw.Made;
import plumeline.plan.Mark;
import plumeline.plan.Shot;
import plumeline.quantity.Origin;
import plumeline.quantity.PaperUnit;
import plumeline.search.Leeway;
import plumeline.solve.MarkAnswer;

/// From where and which way marks are measured; a wrong word here sets the table wrongly.
final class MarkWordsTest {
    private static final String TEXT = Made.text()
            .replace(
                    "back: {light: strip, at: [-400 mm, 200 mm, 300 mm]}",
                    "back: {light: strip, at: [-400 mm, 200 mm, 300 mm], turn: 10 deg, tilt: -20 deg}")
            .replace("turn: -30 deg}", "turn: -30 deg, tilt: 12 deg}");

    private static Shot shot() {
        return Made.film(TEXT).plan().findShot("looks").orElseThrow();
    }

    private static Mark mark(String path) {
        return shot().marks().stream()
                .filter(one -> one.path().equals(path))
                .findFirst()
                .orElseThrow();
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "back.tilt | -0.35 | down from level",
                "back.tilt | 0.35 | up from level",
                "back.z | 0.3 | up from the table top to the lamp's middle",
                "hero.tilt | 0.2 | its top leaning to camera right while unturned; turn it after that",
                "hero.tilt | -0.2 | its top leaning to camera left while unturned; turn it after that",
                "hero.x | -0.02 | to camera left of the zero mark",
                "camera.y | -0.877 | toward the camera from the zero mark",
                "camera.z | 0.059 | up from the table top to the lens point",
                "slide.by | 0.12 | end to end, to camera right",
                "slide.by | -0.12 | end to end, to camera left",
                "turn.by | -1 | end to end, anticlockwise",
                "hero.turn | 0.2 | clockwise, seen from above",
                "hero.turn | 0 | seen from above",
                "hero.turn | -0.004 | seen from above",
                "hero.tilt | 0 | upright",
                "back.tilt | 0 | from level",
                "turn.by | 0 | end to end"
            })
    void from_saysWhereTheTapeIsHeld(String path, double si, String from) {
        assertThat(MarkWords.of(shot(), mark(path), si).from()).isEqualTo(from);
    }

    /// A thing is leaned while its label faces the crew, and turned after: so says the plan's contract.
    @Test
    void order_leansBeforeItTurns() {
        var answer = Made.shot(Made.film(TEXT), "looks");
        var order = new SettingOrder(shot())
                .of(answer.marks()).stream().map(one -> one.mark().path()).toList();
        assertThat(order.indexOf("hero.tilt")).isLessThan(order.indexOf("hero.turn"));
        assertThat(order.indexOf("hero.y")).isLessThan(order.indexOf("hero.tilt"));
        assertThat(order.indexOf("hero.turn")).isLessThan(order.indexOf("camera.x"));
    }

    /// f/11 with 1.64 open and 4.99 closed: stops that still do, to a tenth on the near side.
    @Test
    void stopsLeeway_isTheStopThatStillDoes() {
        Mark stop = mark("camera.f_number");
        MarkAnswer answer = new MarkAnswer(
                stop,
                new MarkAnswer.Setting.At(11, Origin.GIVEN),
                new Leeway(new Leeway.Side.Ends(1.64), new Leeway.Side.Ends(4.99)),
                new MarkAnswer.Ends("looks.1", "looks.1"),
                0.3);
        LeewayText text = new LeewayText(PaperUnit.MILLIMETRES);
        assertThat(LeewaySentence.phrase(text, shot(), answer, 11, LeewayText.Way.MINUS))
                .isEqualTo("open to f/9.4");
        assertThat(LeewaySentence.phrase(text, shot(), answer, 11, LeewayText.Way.PLUS))
                .isEqualTo("stopped down to f/15.9");
        var shots = Made.shot(Made.film(TEXT), "looks");
        MarkAnswer oneSide = new MarkAnswer(
                stop,
                new MarkAnswer.Setting.At(11, Origin.GIVEN),
                new Leeway(new Leeway.Side.Ends(1.64), new Leeway.Side.Endless()),
                new MarkAnswer.Ends("looks.1", ""),
                0.3);
        assertThat(new LeewaySentence(text, shots, java.util.Map.of()).of(oneSide))
                .isEqualTo("open to f/9.4, else a want fails. Stopping down is loose.");
    }
}
