package plumeline.solve;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import plumeline.plan.Plan;
import plumeline.quantity.Quantities;
import plumeline.quantity.Reading;

/// What is said to help is written into the plan and must help, and break nothing.
final class RemediesTest {
    private static final Pattern MARK =
            Pattern.compile("(?:Set |: )([a-z0-9_]+\\.[a-z_0-9]+) (\\S+(?: (?:mm|deg|%))?) instead of");

    private static final String CAMERA =
            "camera: {body: main, lens: fifty, at: [0 mm, -600 mm, 59 mm], aim: hero, f_number: 11}";
    private static final String ALONE = "place: {hero: {thing: tall, at: [0 mm, 0 mm]}}";
    private static final String FILE =
            "place: {hero: {thing: tall, at: [0 mm, 0 mm]}, back: {thing: tall, at: [9 mm, 100 mm]}}";

    @Test
    void markNamed_writtenIntoThePlan_makesTheWantHoldAndBreaksNone() {
        int tried = 0;
        for (String text : failing()) {
            tried += checkMarks(text);
        }
        assertThat(tried).isGreaterThan(8);
    }

    private static List<String> failing() {
        List<String> texts = new ArrayList<>();
        texts.add(Solved.text(CAMERA, ALONE, "wants: [{fills: hero, height: 45 %}, {inside: wide}]"));
        texts.add(Solved.text(CAMERA, FILE, "wants: [{hidden: back, behind: hero}, {clear: all, by: 20 mm}]"));
        texts.add(Solved.text(CAMERA, FILE, "wants: [{shown: [hero, back], gap: 1 %}]"));
        texts.add(Solved.text(
                CAMERA,
                ALONE,
                "wants: [{reaches: camera}, {fills: hero, height: 53 %}, {sharp: hero, sharp_to: 1 px}]"));
        texts.add(Solved.text(CAMERA.replace("-600", "-270"), ALONE, "wants: [{reaches: camera}]"));
        texts.add(Solved.text(
                CAMERA,
                FILE.replace("9 mm", "0 mm"),
                "moves: {slide: {machine: slider, by: [-250 mm, 0 mm], in: 8 s, profile: trapezoid},"
                        + " pan: {machine: head, keeps: [hero, back]}}",
                "frames: 193",
                "wants: [{hidden: back, behind: hero, when: start}, {shown: [hero, back], gap: 2 %, when: end}]"));
        texts.add(Solved.text(
                CAMERA.replace("-600 mm", "free"),
                FILE,
                "wants: [{fills: hero, height: 50 %}, {hidden: back, behind: hero}]"));
        texts.add(Solved.resource("solve-b5.yaml"));
        return texts;
    }

    private static int checkMarks(String text) {
        Plan plan = Solved.plan(text);
        ShotAnswer before = Solve.film(plan).shots().getFirst();
        int tried = 0;
        for (WantAnswer want : before.wants()) {
            for (String attempt : want.attempts()) {
                Matcher matcher = MARK.matcher(attempt);
                if (!matcher.find()) {
                    continue;
                }
                tried++;
                // Free marks stay free: they are said to move with it.
                String written = Solved.with(text, Map.of(matcher.group(1), si(matcher.group(2))));
                ShotAnswer after = Solved.shot(written);
                assertThat(Solved.trueIds(after))
                        .as(attempt + "\n" + text.substring(text.indexOf("shots:")))
                        .contains(want.id())
                        .containsAll(Solved.trueIds(before));
            }
        }
        return tried;
    }

    private static double si(String written) {
        String plain = written.startsWith("f/") ? written.substring(2) : written;
        return switch (Quantities.read(plain)) {
            case Reading.Read read -> read.quantity().si();
            case Reading.Refused refused -> throw new AssertionError(refused.toString());
        };
    }

    @Test
    void gap_relaxed_holdsAsSaid() {
        String text = Solved.text(
                CAMERA,
                "place: {hero: {thing: tall, at: [-40 mm, 0 mm]}, back: {thing: tall, at: [40 mm, 0 mm]}}",
                "wants: [{shown: [hero, back], gap: 25 %}]");
        String said = only(text, "gap ");
        Matcher matcher = Pattern.compile("gap (\\S+) % instead of 25 %\\.").matcher(said);
        assertThat(matcher.matches()).as(said).isTrue();
        double gap = Double.parseDouble(matcher.group(1));
        assertThat(Solved.isTrue(Solved.want(Solved.shot(text.replace("gap: 25 %", "gap: " + gap + " %")), 1)))
                .isTrue();
        assertThat(Solved.isTrue(Solved.want(Solved.shot(text.replace("gap: 25 %", "gap: " + (gap + 0.2) + " %")), 1)))
                .isFalse();
    }

    @Test
    void clear_relaxed_holdsAsSaid() {
        String text = Solved.text(
                CAMERA, FILE.replace("9 mm, 100 mm", "0 mm, 100.5 mm"), "wants: [{clear: [hero, back], by: 70 mm}]");
        String said = only(text, "by ");
        // 100.5 mm apart, 42 mm of radii: 58.5 mm of air.
        assertThat(said).isEqualTo("by 58 mm instead of 70 mm.");
        assertThat(Solved.isTrue(Solved.want(Solved.shot(text.replace("by: 70 mm", "by: 58 mm")), 1)))
                .isTrue();
        assertThat(Solved.isTrue(Solved.want(Solved.shot(text.replace("by: 70 mm", "by: 59 mm")), 1)))
                .isFalse();
    }

    @Test
    void fills_relaxed_holdsAsSaid() {
        String text = Solved.text(CAMERA, ALONE, "wants: [{fills: hero, height: 50 %}]");
        String said = only(text, "within ");
        Matcher matcher = Pattern.compile("within (\\S+) % of the 50 % instead of within 2 %\\.")
                .matcher(said);
        assertThat(matcher.matches()).as(said).isTrue();
        double within = Double.parseDouble(matcher.group(1));
        String relaxed = text.replace("height: 50 %", "height: 50 %, within: " + within + " %");
        assertThat(Solved.isTrue(Solved.want(Solved.shot(relaxed), 1))).isTrue();
        String less = text.replace("height: 50 %", "height: 50 %, within: " + (within - 0.4) + " %");
        assertThat(Solved.isTrue(Solved.want(Solved.shot(less), 1))).isFalse();
    }

    private static String only(String text, String start) {
        List<String> said = Solved.attempts(Solved.shot(text)).stream()
                .filter(attempt -> attempt.startsWith(start))
                .toList();
        assertThat(said).hasSize(1);
        return said.getFirst();
    }

    @Test
    void wantsThatCantHoldTogether_areNamed() {
        ShotAnswer answer = Solved.shot(Solved.text(
                CAMERA.replace("-600 mm", "free"),
                ALONE,
                "wants: [{fills: hero, height: 50 %}, {fills: hero, height: 30 %}]"));
        assertThat(Solved.failingIds(answer)).hasSize(1);
        String other = Solved.trueIds(answer).getFirst();
        assertThat(Solved.sentences(answer)).contains("It can't hold together with " + other + " (fills).");
    }

    @Test
    void wantThatNoFreeMarkHelps_isNamedAsSuch() {
        ShotAnswer answer = Solved.shot(Solved.text(
                CAMERA.replace("59 mm", "free between 50 mm and 60 mm"),
                ALONE,
                "wants: [{fills: hero, height: 30 %}, {inside: wide}]"));
        assertThat(Solved.failingIds(answer)).containsExactly("one.1");
        assertThat(Solved.want(answer, 1).because())
                .contains("No place of the free marks was found where it holds, the locked ones as they are.");
    }

    /// Seen from 600 mm, a can 66 mm across leaves the middle of the picture to the right only if the camera goes left.
    @Test
    void wayThatTurnsAbout_saysWhichWay() {
        String text = Solved.text(
                "camera: {body: main, lens: fifty, at: [-80 mm, -600 mm, 59 mm], aim: ahead, f_number: 8}",
                ALONE,
                "moves: {slide: {machine: slider, by: [20 mm, 0 mm], in: 5 s, profile: even}}",
                "wants: [{off_picture: hero, when: end}, {inside: wide, when: start}]");
        assertThat(only(text, "slide "))
                .matches("slide to camera left [0-9.]+ mm: slide\\.by -[0-9.]+ mm instead of 20\\.0 mm\\.");
    }
}
