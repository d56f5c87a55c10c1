package plumeline.solve;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.ObjectMapper;

/// Nozzles that solving finds, their leeway, what is tried for ink that comes too soon, and the answer's JSON.
final class InkFindingsTest {
    private static final double N = Math.log(188.0 / 70) / Math.log(1.9 / 0.4);

    private static final String INKS =
            "kit:\n  inks: {read: {front: [[0.40 s, 70 mm], [1.90 s, 188 mm]], spread: 0.20}, mixed: {density: 1.05"
                    + " g/ml, strength: 100 /cm}}\n  pieces: {berry: {size: 16 mm, mass: 2.6 g}}\n";

    /// The bottle's top is 70 mm under the surface, which is 268 mm over the table; its front face at y −21 mm.
    private static String text(String release, String... wants) {
        return Solved.text(
                        "camera: {body: main, lens: macro, at: [0 mm, -1100 mm, 139 mm], aim: hero, f_number: 8}",
                        "tank: {tank: glass, at: [0 mm, 30 mm], water: 260 mm}",
                        "place: {hero: {thing: tall, at: [0 mm, 0 mm, 80 mm], lines: 2}}",
                        "release: {" + release + "}",
                        "frames: 96",
                        "wants: [" + String.join(", ", wants) + "]")
                .replace("kit:\n", INKS);
    }

    private static double seconds(double millimetres) {
        return 0.4 * Math.pow(millimetres / 70, 1 / N);
    }

    private static double wayMillimetres(double seconds) {
        return 70 * Math.pow(seconds / 0.4, N);
    }

    /// In 0.7 s the front comes 99 mm down; the middle is 129 mm under the surface: the mouth goes 30 mm under it.
    @Test
    void aFreeNozzle_standsWhereTheFrontIsInTime() {
        ShotAnswer answer = Solved.shot(text(
                "ink: read, at: [0 mm, free between -110 mm and -30 mm, free]",
                "{ink_reaches: hero, part: middle, after: 0.7 s, within: 0.2 s}"));
        double under = 129 - wayMillimetres(0.7);
        assertThat(under).isBetween(25.0, 35.0);
        assertThat(Solved.millimetres(answer, "release.z")).isCloseTo(268 - under, within(1.5));
        assertThat(Solved.millimetres(answer, "release.y")).isBetween(-95.0, -47.0);
        assertThat(Solved.margin(Solved.want(answer, 1))).isBetween(0.19, 0.2);
        MarkAnswer mark = Solved.mark(answer, "release.z");
        double z = Solved.millimetres(answer, "release.z");
        double early = 268 - 129 + wayMillimetres(0.5);
        double late = 268 - 129 + wayMillimetres(0.9);
        assertThat(1000 * mark.leeway().minus().distance()).isCloseTo(z - early, within(0.5));
        assertThat(1000 * mark.leeway().plus().distance()).isCloseTo(late - z, within(0.5));
        assertThat(mark.placingErrorSi()).isEqualTo(0.002);
    }

    /// It stays clear longest where the front has farthest to come before it touches or is before it.
    @Test
    void aFreeNozzle_keepsItClear() {
        ShotAnswer answer = Solved.shot(text(
                "ink: read, at: [0 mm, free between -110 mm and -30 mm, 298 mm]",
                "{ink_reaches: hero, after: 0.4 s, within: 0.15 s}",
                "{clear_until: hero, time: 0.4 s}"));
        assertThat(Solved.millimetres(answer, "release.y")).isLessThan(-60);
        assertThat(Solved.want(answer, 1).verdict()).isEqualTo(Verdict.HOLDS);
        assertThat(Solved.margin(Solved.want(answer, 2))).isPositive();
        assertThat(Solved.want(answer, 2).verdict()).isEqualTo(Verdict.TIGHT);
        assertThat(Solved.want(answer, 2).because()).anyMatch(why -> why.contains("takes in 10 are clear until then"));
    }

    @Test
    void whatTakesDifferBy_isNoPlacingError() {
        ShotAnswer answer = Solved.shot(
                text("ink: read, at: [0 mm, -70 mm, 298 mm]", "{ink_reaches: hero, after: 0.4 s, within: 0.1 s}"));
        assertThat(Solved.want(answer, 1).verdict()).isEqualTo(Verdict.TIGHT);
        assertThat(Solved.want(answer, 1).because())
                .contains("Takes differ by more than there is to spare: allow more time, or plan takes for it.");
        assertThat(answer.together()).isGreaterThan(1);
    }

    private static final String SOON =
            "ink: mixed, volume: 10 ml, bore: 4 mm, squeeze_time: 1 s, at: [0 mm, -70 mm, 258 mm]";
    private static final String LATER = "{ink_reaches: hero, after: 0.9 s, within: 0.25 s}";

    @Test
    void lessInk_andASofterSqueeze_areTried_andEachHoldsWhereItIsTaken() {
        String text = text(SOON, LATER);
        WantAnswer want = Solved.want(Solved.shot(text), 1);
        assertThat(want.verdict()).isEqualTo(Verdict.FAILS);
        assertThat(want.because()).anyMatch(why -> why.endsWith("early."));
        int taken = 0;
        for (String attempt : want.attempts()) {
            for (var tried : List.of(
                    List.of("Let go ([0-9.]+) ml instead of 10 ml\\.", "volume: 10 ml", "volume: %s ml"),
                    List.of(
                            "Squeeze over ([0-9.]+) s instead of 1 s \\(softer\\)\\.",
                            "squeeze_time: 1 s",
                            "squeeze_time: %s s"))) {
                Matcher found = Pattern.compile(tried.get(0)).matcher(attempt);
                if (found.matches()) {
                    String other =
                            Solved.replaced(text, tried.get(1), tried.get(2).replace("%s", found.group(1)));
                    assertThat(Solved.isTrue(Solved.want(Solved.shot(other), 1)))
                            .as(attempt)
                            .isTrue();
                    taken++;
                }
            }
        }
        assertThat(taken).as(want.attempts().toString()).isEqualTo(2);
    }

    @Test
    void aHigherNozzle_isTried_andHolds() {
        String text = text(
                "ink: read, at: [0 mm, -70 mm, 228 mm]",
                "{ink_reaches: hero, part: middle, after: 0.7 s, within: 0.1 s}");
        WantAnswer want = Solved.want(Solved.shot(text), 1);
        assertThat(want.verdict()).isEqualTo(Verdict.FAILS);
        assertThat(want.attempts())
                .anyMatch(attempt -> attempt.startsWith("Set release.z ") && attempt.contains("higher"));
        assertThat(want.attempts()).noneMatch(attempt -> attempt.contains("Squeeze") || attempt.contains("Let go"));
    }

    @Test
    void json_hasTheContractsUnits() {
        String[] wants = {
            "{ink_reaches: hero, after: 0.4 s, within: 0.15 s}",
            "{clear_until: hero, time: 0.3 s}",
            "{veiled_by: hero, time: 1.5 s}",
            "{see_through: hero, least: 10 %}"
        };
        String release = "ink: mixed, volume: 3 ml, bore: 4 mm, squeeze_time: 2 s, at: [0 mm, -60 mm, 258 mm]";
        JsonNode all = new ObjectMapper()
                .readTree(FilmJson.of(Solved.film(text(release, wants))))
                .get("shots")
                .get(0)
                .get("wants");
        String[] units = {"s", "s", "s", "%"};
        assertThat(all.size()).isEqualTo(units.length);
        for (int i = 0; i < units.length; i++) {
            assertThat(all.get(i).get("margin").get("unit").asString())
                    .as(wants[i])
                    .isEqualTo(units[i]);
        }
    }

    @Test
    void fallingPieces_andWhatRises_haveTheirUnits() {
        ShotAnswer falls = Solved.shot(text(
                "piece: berry, at: [0 mm, -300 mm, free between 300 mm and 500 mm]",
                "{falls_through: berry, frames: 1 frames}"));
        assertThat(Solved.want(falls, 1).margin()).isInstanceOf(WantAnswer.Margin.Of.class);
        assertThat(((WantAnswer.Margin.Of) Solved.want(falls, 1).margin()).unit())
                .isEqualTo("frames");
        ShotAnswer rises = Solved.shot(text("thing: hero", "{rises: hero, by: 60 mm, within: 1 s}"));
        assertThat(Solved.want(rises, 1).because()).containsExactly("Weigh hero, whole and filled: write its mass.");
        assertThat(seconds(70)).isEqualTo(0.4);
    }
}
