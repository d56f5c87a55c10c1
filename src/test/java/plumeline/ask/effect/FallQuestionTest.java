package plumeline.ask.effect;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static plumeline.ask.Asking.answer;
import static plumeline.ask.Asking.number;
import static plumeline.ask.Asking.problems;
import static plumeline.ask.Asking.spread;

import java.util.List;
import org.junit.jupiter.api.Test;
import plumeline.answer.Answer;
import plumeline.answer.Item;
import plumeline.answer.Value;
import plumeline.answer.Verdict;
import plumeline.tidy.Outside;

/// The question `fall` in text.
final class FallQuestionTest {
    /// A small steel ball, which drag in air hardly touches.
    private static final String STEEL = "piece: {size: 10 mm, mass: 4.1 g}\n";

    private static String ask(String height, String field, String rate, String more) {
        return STEEL + "height: " + height + "\nfield: {height: " + field + "}\nrate: " + rate + "\n" + more;
    }

    @Test
    @Outside(
            source = "the project's check values on falls",
            place = "F29 to F33 (no drag: within 0.5 %)",
            kind = "worked example",
            printedDigits = 3)
    void checkRows_areAnswered() {
        Answer rest = answer("fall", ask("0 mm", "200 mm", "100 fps", "wanted_frames: 24\n"));
        assertThat(number(rest, "seconds_in_frame")).isCloseTo(0.2020, within(0.001));
        Answer dropped = answer("fall", ask("300 mm", "200 mm", "100 fps", "wanted_frames: 24\n"));
        assertThat(number(dropped, "seconds_in_frame")).isCloseTo(0.0720, within(0.0003));
        assertThat(number(dropped, "frames_in_frame")).isCloseTo(7.2, within(0.1));
        assertThat(number(dropped, "least_rate")).isCloseTo(333, within(2.0));
        Answer higher = answer("fall", ask("500 mm", "200 mm", "100 fps", "wanted_frames: 24\n"));
        assertThat(number(higher, "least_rate")).isCloseTo(410, within(3.0));
        assertThat(number(higher, "speed")).isCloseTo(3.132, within(0.01));
    }

    @Test
    @Outside(
            source = "the project's page on the job: a piece from 100 mm above a frame 174.6 mm high",
            place = "94 ms, 22 frames at 240; 1/480 smears 60 px, 1/2000 14",
            kind = "worked example",
            printedDigits = 2)
    void blur_isAtTheFastest() {
        Answer slow = answer("fall", ask("100 mm", "174.6 mm, pixels: 2160 px", "240 fps", "shutter: 1/480 s\n"));
        assertThat(number(slow, "seconds_in_frame")).isCloseTo(0.094, within(0.0005));
        assertThat(number(slow, "frames_in_frame")).isCloseTo(22.5, within(0.2));
        assertThat(number(slow, "blur")).isCloseTo(60, within(0.5));
        Answer fast = answer("fall", ask("100 mm", "174.6 mm, pixels: 2160 px", "240 fps", "shutter: 1/2000 s\n"));
        assertThat(number(fast, "blur")).isCloseTo(14, within(0.5));
        // 2 px of 14.3: 1/14300 s, told as a shutter is, no longer.
        assertThat(fast.notes().attempts())
                .contains("For 2 px of blur expose 1/15000 s, which costs 3 stops of light.");
        // 180 deg at 240 fps is 1/480 s.
        Answer half = answer("fall", ask("100 mm", "174.6 mm", "240 fps", ""));
        assertThat(number(half, "blur")).isCloseTo(number(slow, "blur"), within(1e-9));
    }

    @Test
    @Outside(
            source = "the project's check values P08, P09: 1222 and 1070 balls of 10 mm in a litre",
            kind = "worked example",
            printedDigits = 3)
    void vessel_isFilled_withPackingStated() {
        Answer answer = answer("fall", ask("100 mm", "200 mm", "100 fps", "vessel: 1 l\ncount: 1300\n"));
        Value.Spread pieces = spread(answer, "pieces_to_fill");
        assertThat(pieces.low()).isCloseTo(1070, within(2.0));
        assertThat(pieces.high()).isCloseTo(1222, within(2.0));
        assertThat(pieces.value()).isCloseTo(0.60 * 1e-3 / (Math.PI / 6 * 1e-6), within(0.1));
        assertThat(answer.notes().because()).anyMatch(line -> line.contains("balls fill 60 %"));
        assertThat(answer.verdict()).isEqualTo(Verdict.HOLDS);
        assertThat(answer("fall", ask("100 mm", "200 mm", "100 fps", "vessel: 1 l\ncount: 1180\n"))
                        .verdict())
                .isEqualTo(Verdict.TIGHT);
        assertThat(answer("fall", ask("100 mm", "200 mm", "100 fps", "vessel: 1 l\ncount: 900\n"))
                        .verdict())
                .isEqualTo(Verdict.FAILS);
    }

    @Test
    void everyFieldOfTheRow_isAnswered_withItsUnit() {
        Answer answer = answer("fall", ask("100 mm", "200 mm", "100 fps", "wanted_frames: 5\nvessel: 1 l\n"));
        assertThat(answer.answers().stream().map(Item::name))
                .containsExactly(
                        "speed", "seconds_in_frame", "frames_in_frame", "blur", "least_rate", "pieces_to_fill");
        assertThat(answer.toJson())
                .contains("\"unit\": \"m/s\"")
                .contains("\"unit\": \"s\"")
                .contains("\"unit\": \"px\"")
                .contains("\"unit\": \"fps\"");
        Answer bare = answer("fall", ask("100 mm", "200 mm", "100 fps", ""));
        assertThat(bare.getValue("least_rate")).isEqualTo(new Value.Word("unknown"));
        assertThat(bare.getValue("pieces_to_fill")).isEqualTo(new Value.Word("unknown"));
        assertThat(bare.notes().because()).anyMatch(line -> line.contains("without wanted_frames"));
    }

    @Test
    void water_isSlower_andDoubtCountsOnDrag() {
        String cube = "piece: {size: 12 mm, mass: 2.5 g, shape: cube}\nheight: 100 mm\n"
                + "field: {height: 300 mm}\nrate: 50 fps\n";
        Answer air = answer("fall", cube);
        Answer water = answer("fall", cube + "through: water\n");
        assertThat(number(water, "speed")).isLessThan(0.3 * number(air, "speed"));
        // √(2(m − ρV)g/(ρ C A)) with C 1.05: 0.322 m/s, nearly reached after 100 mm.
        double steady = Math.sqrt(2 * (0.0025 - 998.2 * 1.728e-6) * 9.80665 / (998.2 * 1.05 * 1.44e-4));
        assertThat(number(water, "speed")).isBetween(0.9 * steady, steady);
        Value.Spread speed = spread(water, "speed");
        assertThat(speed.low()).isCloseTo(speed.value() / Math.sqrt(1.6), within(0.03));
    }

    @Test
    void whatFloats_neverFalls() {
        Answer answer = answer(
                "fall",
                "piece: {size: 25 mm, mass: 7.5 g}\nheight: 100 mm\n"
                        + "field: {height: 300 mm}\nrate: 50 fps\nthrough: water\n");
        assertThat(answer.verdict()).isEqualTo(Verdict.FAILS);
        assertThat(answer.getValue("speed")).isEqualTo(new Value.Word("never"));
        assertThat(answer.notes().because())
                .anyMatch(line ->
                        line.contains("the water it takes the room of; let go under water it rises, at 0.26 m/s"))
                .contains("The water is taken as fresh, at 20 degC.");
    }

    /// A ball of 100 mm displaces 0.5236 l of air, 0.63 g; one of 10 mm 0.63 mg. Ten per cent more sinks.
    @Test
    void whatIsLighterThanAir_floatsInAir() {
        String light = "piece: {size: 100 mm, mass: 0.5 g}\nheight: 100 mm\nfield: {height: 300 mm}\nrate: 50 fps\n";
        Answer answer = answer("fall", light);
        assertThat(answer.verdict()).isEqualTo(Verdict.FAILS);
        assertThat(answer.notes().because())
                .anyMatch(
                        line -> line.startsWith("It floats: the piece is no heavier than the air it takes the room of;"
                                + " let go it rises, at "))
                .noneMatch(line -> line.contains("water"));
        assertThat(answer.notes().attempts())
                .contains("To make it fall put in weight, to 0.69 g in all, or let it rise.");
        assertThat(answer("fall", light.replace("0.5 g", "0.69 g")).verdict()).isEqualTo(Verdict.HOLDS);
        assertThat(answer("fall", light.replace("100 mm, mass: 0.5 g", "10 mm, mass: 0.0005 g"))
                        .notes()
                        .attempts())
                .contains("To make it fall put in weight, to 0.69 mg in all, or let it rise.");
    }

    @Test
    void tooFewFrames_fail_andWhatItSaysToTryIsEnough() {
        Answer answer = answer("fall", ask("300 mm", "200 mm", "240 fps", "wanted_frames: 24\n"));
        assertThat(answer.verdict()).isEqualTo(Verdict.FAILS);
        String rate = answer.notes().attempts().getFirst().replaceAll("Shoot at (\\d+ fps) or more.", "$1");
        assertThat(answer("fall", ask("300 mm", "200 mm", rate, "wanted_frames: 24\n"))
                        .verdict())
                .isNotEqualTo(Verdict.FAILS);
        String height = answer.notes().attempts().stream()
                .filter(line -> line.startsWith("Let it go"))
                .findFirst()
                .orElseThrow()
                .replaceAll("Let it go (\\d+ mm) above.*", "$1");
        assertThat(answer("fall", ask(height, "200 mm", "240 fps", "wanted_frames: 24\n"))
                        .verdict())
                .isNotEqualTo(Verdict.FAILS);
    }

    @Test
    void pastTheDragsRange_isUnknown() {
        Answer answer = answer(
                "fall",
                "piece: {size: 300 mm, mass: 80 kg}\nheight: 3 m\n"
                        + "field: {height: 1 m}\nrate: 50 fps\nthrough: water\n");
        assertThat(answer.verdict()).isEqualTo(Verdict.UNKNOWN);
        assertThat(answer.getValue("speed")).isEqualTo(new Value.Word("unknown"));
        assertThat(answer.notes().because()).anyMatch(line -> line.contains("film a trial fall"));
    }

    @Test
    void wrongInputs_areRefused() {
        assertThat(problems("fall", ask("100 mm", "200 mm", "240 fps", "shutter: 1/100 s\n")))
                .containsExactly("ask.yaml:5:10 shutter is 10 ms; must be at most a frame's time, 4.167 ms\n"
                        + "  Give the exposure of one frame, such as 1/2000 s, or an angle."
                        + "   (P-ASK-76, docs/problems.md)");
        assertThat(problems(
                        "fall",
                        "piece: {size: 10 mm, mass: 41 g}\nheight: 1 mm\nfield: {height: 200 mm}\nrate: 24 fps\n"))
                .singleElement()
                .asString()
                .contains("P-ASK-77")
                .contains("78.3 g/ml");
        for (String wrong : List.of(
                ask("-1 mm", "200 mm", "24 fps", ""),
                ask("1 mm", "200", "24 fps", ""),
                ask("1 mm", "200 mm", "24 fps", "through: oil\n"),
                ask("1 mm", "200 mm", "24 fps", "wanted_frames: 5 s\n"),
                "height: 1 mm\nfield: {height: 1 mm}\nrate: 24 fps\n")) {
            assertThat(problems("fall", wrong)).as(wrong).isNotEmpty();
        }
    }
}
