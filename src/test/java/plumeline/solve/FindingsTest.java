package plumeline.solve;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Map;
import org.junit.jupiter.api.Test;
import plumeline.search.Leeway;

/// What a want's finding says: its verdict, its margin, its sentences.
final class FindingsTest {
    private static final String FILE =
            "place: {hero: {thing: tall, at: [0 mm, 0 mm]}, back: {thing: tall, at: [0 mm, 100 mm]}}";
    private static final String CAMERA = "camera: {body: main, lens: fifty, at: [0 mm, -600 mm, 59 mm], aim: ahead}";

    /// The right edge at 700 mm of a cylinder of radius 21 mm, some way aside, less the hider's at 600 mm.
    private static double sticksOut(double aside) {
        double edge = Math.tan(Math.atan2(aside, 700) + Math.asin(21 / Math.hypot(aside, 700)));
        return 700 * (Math.tan(Math.asin(21.0 / 600)) - edge);
    }

    @Test
    void whole_findsAWorstFrameBetweenAnyRegularSamples() {
        // Out and back within five frames of 336: 49 instants spread over them all miss it.
        WantAnswer want = Solved.want(
                Solved.shot(Solved.text(
                        CAMERA,
                        FILE,
                        "moves:",
                        "  out: {carries: back, by: [30 mm, 0 mm], in: 0.04 s, start: 99 frames}",
                        "  home: {carries: back, by: [-30 mm, 0 mm], in: 0.04 s, start: 102 frames}",
                        "frames: 336",
                        "wants: [{hidden: back, behind: hero}]")),
                1);
        assertThat(want.verdict()).isEqualTo(Verdict.FAILS);
        assertThat(Solved.margin(want)).isEqualTo(sticksOut(30), within(1e-6));
    }

    @Test
    void whole_countsFrames_notInstantsBetweenThem() {
        // Out and home again between the second frame and the third: no frame shows it.
        WantAnswer want = Solved.want(
                Solved.shot(Solved.text(
                        CAMERA,
                        FILE,
                        "moves:",
                        "  out: {carries: back, by: [3 mm, 0 mm], in: 0.02 s, start: 0.042 s}",
                        "  home: {carries: back, by: [-3 mm, 0 mm], in: 0.02 s, start: 0.063 s}",
                        "frames: 4",
                        "wants: [{hidden: back, behind: hero, when: whole}]")),
                1);
        assertThat(Solved.margin(want)).isEqualTo(sticksOut(0), within(1e-6));
    }

    @Test
    void throughTheWatersSurface_isUnknown_andLeewayEndsThere() {
        String text = Solved.text(
                "camera: {body: main, lens: macro, at: [0 mm, -800 mm, 139 mm], aim: ahead, focus: hero, f_number: 8}",
                "tank: {tank: glass, at: [0 mm, 30 mm], water: 260 mm}",
                "place: {hero: {thing: tall, at: [0 mm, 0 mm, 80 mm], lines: 2}}",
                "wants: [{fills: hero, height: 60 %, within: 90 %}]");
        ShotAnswer answer = Solved.shot(text);
        assertThat(Solved.want(answer, 1).verdict()).isEqualTo(Verdict.HOLDS);
        MarkAnswer height = Solved.mark(answer, "camera.z");
        double up = ((Leeway.Side.Ends) height.leeway().plus()).distance();
        WantAnswer inside = Solved.want(Solved.shot(Solved.with(text, Map.of("camera.z", 0.139 + 0.99 * up))), 1);
        WantAnswer outside = Solved.want(Solved.shot(Solved.with(text, Map.of("camera.z", 0.139 + 1.01 * up))), 1);
        assertThat(Solved.isTrue(inside)).isTrue();
        assertThat(outside.verdict()).isEqualTo(Verdict.UNKNOWN);
        assertThat(outside.margin()).isEqualTo(new WantAnswer.Margin.None());
        assertThat(outside.because().getFirst())
                .startsWith("Not computed: the camera looks through the water's surface");
    }

    @Test
    void reasons_areInThePapersUnit() {
        String text = Solved.replaced(
                Solved.text(
                        CAMERA,
                        "place: {hero: {thing: tall, at: [0 mm, 0 mm]}, back: {thing: tall, at: [3 mm, 50 mm]}}",
                        "wants: [{clear: hero, by: 10 mm}, {hidden: back, behind: hero}, {sharp: back},"
                                + " {reaches: camera}]"),
                "papers: mm",
                "papers: in");
        for (WantAnswer want : Solved.shot(text).wants()) {
            assertThat(want.because()).isNotEmpty().noneMatch(said -> said.contains(" mm"));
            assertThat(want.attempts()).noneMatch(said -> said.contains(" mm"));
        }
    }

    @Test
    void fills_saysWhatFillsHowMuchAndWhatWasWanted() {
        String text = Solved.text(CAMERA, FILE, "wants: [{fills: [hero, back], height: 54 %}]");
        assertThat(Solved.want(Solved.shot(text), 1).because().getFirst())
                .isEqualTo("back fills 45.4 % of the picture's height; wanted 54 % ± 1.1 %: 7.5 % too small.");
    }
}
