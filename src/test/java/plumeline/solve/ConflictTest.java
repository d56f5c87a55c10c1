package plumeline.solve;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

/// Where wants can't all hold: where the free marks stand, and what would help.
final class ConflictTest {
    private static final String FREE =
            "camera: {body: main, lens: fifty, at: [0 mm, free, 59 mm], aim: hero, f_number: 8}";
    private static final String FILE =
            "place: {hero: {thing: tall, at: [0 mm, 0 mm]}, back: {thing: tall, at: [9 mm, 100 mm]}}";

    @Test
    void wantLeftOut_isBroughtAsNearAsTheKeptOneAllows() {
        ShotAnswer answer = Solved.shot(Solved.resource("solve-b5.yaml"));
        assertThat(Solved.failingIds(answer)).containsExactly("abreast.2");
        double edge = threeTinsInsideMillimetres();
        // The kept want bears each mark's placing error, 2 mm of tape, and little more.
        assertThat(-Solved.millimetres(answer, "camera.y")).isBetween(edge + 2, edge * 1.06);
        assertThat(Solved.want(answer, 1).verdict()).isEqualTo(Verdict.HOLDS);
    }

    /// The distance at which the outer outlines of three tins of 76 mm, 88 mm apart, touch the sides of an upright
    /// frame 20.25 mm wide behind 50 mm focused on the middle one; own sum from the tangents of a circle.
    private static double threeTinsInsideMillimetres() {
        double near = 200;
        double far = 4000;
        while (far - near > 1e-6) {
            double distance = (near + far) / 2;
            double outline = Math.atan2(88, distance) + Math.asin(38 / Math.hypot(88, distance));
            double image = 50 * distance / (distance - 50);
            if (Math.tan(outline) * image > 20.25 / 2) {
                near = distance;
            } else {
                far = distance;
            }
        }
        return far;
    }

    @Test
    void whatIsWrittenFirst_isKept() {
        ShotAnswer fills = Solved.shot(
                Solved.text(FREE, FILE, "wants: [{fills: hero, height: 50 %}, {hidden: back, behind: hero}]"));
        ShotAnswer hides = Solved.shot(
                Solved.text(FREE, FILE, "wants: [{hidden: back, behind: hero}, {fills: hero, height: 50 %}]"));
        assertThat(Solved.failingIds(fills)).containsExactly("one.2");
        assertThat(Solved.failingIds(hides)).containsExactly("one.2");
    }

    @Test
    void markOfTheWantThatStandsAgainst_isTried() {
        ShotAnswer hides = Solved.shot(
                Solved.text(FREE, FILE, "wants: [{hidden: back, behind: hero}, {fills: hero, height: 50 %}]"));
        assertThat(Solved.want(hides, 2).attempts()).anyMatch(attempt -> attempt.startsWith("Set back.x "));
        ShotAnswer sharp = Solved.shot(Solved.text(
                FREE,
                "place: {hero: {thing: tall, at: [0 mm, 0 mm]}}",
                "wants: [{sharp: hero}, {fills: hero, height: 70 %}]"));
        assertThat(Solved.want(sharp, 2).attempts())
                .anyMatch(attempt -> attempt.startsWith("Set camera.f_number f/") && attempt.contains("stops down"));
    }

    @Test
    void freeSlide_isStartedFromItsEnds() {
        ShotAnswer answer = Solved.shot(Solved.text(
                "frames: 100",
                "camera: {body: main, lens: fifty, at: [0 mm, -600 mm, 59 mm], aim: hero, f_number: 11}",
                "place: {hero: {thing: can, at: [0 mm, 0 mm]}, back: {thing: can, at: [free, free]}}",
                "moves:",
                "  slide: {machine: slider, by: [free, 0 mm], in: 8 s}",
                "  pan: {machine: head, keeps: [hero, back]}",
                "wants: [{hidden: back, behind: hero, when: start}, {shown: [hero, back], gap: 2 %, when: end}]"));
        assertThat(Solved.failingIds(answer)).isEmpty();
        // Both peek once the camera has moved aside by a radius, 33 mm: common practice.
        assertThat(Math.abs(Solved.millimetres(answer, "slide.by"))).isGreaterThan(33);
    }

    @Test
    void stopBeyondTheFirstStep_isFound() {
        ShotAnswer answer = Solved.shot(Solved.text(
                "camera: {body: main, lens: macro, held: upright, at: [0 mm, free, 61 mm], aim: hero, f_number: 8}",
                "place: {hero: {thing: can, at: [0 mm, 0 mm]}}",
                "wants: [{fills: hero, height: 38 %}, {sharp: hero}, {reaches: camera}]"));
        assertThat(Solved.want(answer, 2).attempts()).anyMatch(attempt -> attempt.startsWith("Set camera.f_number f/"));
    }

    @Test
    void relaxation_isTheSmallest() {
        String text = Solved.text(
                FREE.replace("f_number: 8", "f_number: 11"),
                "place: {hero: {thing: tall, at: [0 mm, 0 mm]}}",
                "wants: [{inside: phone}, {fills: hero, height: 70 %}]");
        String said = Solved.want(Solved.shot(text), 2).attempts().stream()
                .filter(attempt -> attempt.startsWith("within"))
                .findFirst()
                .orElseThrow();
        Matcher matcher = Pattern.compile("within (\\S+) % of the 70 %.*").matcher(said);
        assertThat(matcher.matches()).as(said).isTrue();
        double within = Double.parseDouble(matcher.group(1));
        String relaxed = "height: 70 %, within: ";
        assertThat(Solved.failingIds(Solved.shot(text.replace("height: 70 %", relaxed + within + " %"))))
                .isEmpty();
        assertThat(Solved.failingIds(Solved.shot(text.replace("height: 70 %", relaxed + (within - 0.4) + " %"))))
                .isNotEmpty();
    }

    @Test
    void sharpness_relaxed_isInPixels_andHoldsWhereWritten() {
        String text = Solved.text(
                "camera: {body: main, lens: fifty, at: [0 mm, -600 mm, 59 mm], aim: hero, f_number: 8}",
                "place: {hero: {thing: tall, at: [0 mm, 0 mm]}}",
                "wants: [{sharp: hero, sharp_to: 1 px}]");
        String said = Solved.want(Solved.shot(text), 1).attempts().getLast();
        // The near side of a tin of 42 mm at 600 mm: 50/8 mm of pupil, 21 mm before the focus; 20.3 um or 2.16 px.
        assertThat(said).isEqualTo("sharp_to 2.2 px instead of 1 px.");
        assertThat(Solved.failingIds(Solved.shot(text.replace("1 px", "2.2 px"))))
                .isEmpty();
        assertThat(Solved.failingIds(Solved.shot(text.replace("1 px", "2.1 px"))))
                .isNotEmpty();
    }

    @Test
    void size_relaxed_isTheNearestThatHolds() {
        String text = Solved.resource("solve-b5.yaml");
        String said = Solved.want(Solved.shot(text), 2).attempts().stream()
                .filter(attempt -> attempt.startsWith("height "))
                .findFirst()
                .orElseThrow();
        Matcher matcher = Pattern.compile("height (\\S+) % instead of 30 %\\.").matcher(said);
        assertThat(matcher.matches()).as(said).isTrue();
        double height = Double.parseDouble(matcher.group(1));
        assertThat(Solved.failingIds(Solved.shot(text.replace("height: 30 %", "height: " + height + " %"))))
                .isEmpty();
        assertThat(Solved.failingIds(Solved.shot(text.replace("height: 30 %", "height: " + (height + 0.3) + " %"))))
                .isNotEmpty();
    }

    @Test
    void edgeThatNoWholeMillimetreMeets_isAConflictLikeAnyOther() {
        // 118 mm at half of 20.25 mm behind 50 mm: 632.7 mm, give or take 0.1; from 0.5 mm no whole millimetre lies
        // there.
        String narrow = Solved.text(
                FREE,
                "place: {hero: {thing: tall, at: [0 mm, 0.5 mm]}}",
                "wants: [{fills: hero, height: 50 %, within: 0.02 %}]");
        ShotAnswer answer = Solved.shot(narrow);
        assertThat(Solved.margin(Solved.want(answer, 1))).isBetween(-0.1, 0.0);
        assertThat(Solved.millimetres(answer, "camera.y")).isEqualTo(-632, within(1.0));
    }

    @Test
    void freeRow_standsInWrittenOrderAboutTheZeroMark() {
        ShotAnswer answer = Solved.shot(Solved.text(
                "camera: {body: main, lens: fifty, at: [free, free, 59 mm], aim: ahead, f_number: 11, focus: free}",
                "place:",
                "  p1: {thing: tall, at: [free, 0 mm]}",
                "  p2: {thing: tall, at: [free, 0 mm]}",
                "  p3: {thing: tall, at: [free, 0 mm]}",
                "wants: [{shown: [p1, p2, p3], gap: 3 %}, {fills: p1, height: 40 %, or: more}, {inside: wide}]"));
        assertThat(Solved.failingIds(answer)).isEmpty();
        List<Double> row = List.of("p1.x", "p2.x", "p3.x").stream()
                .map(path -> Solved.millimetres(answer, path))
                .toList();
        assertThat(row).isSorted();
        assertThat(Solved.millimetres(answer, "camera.x")).isEqualTo(0, within(20.0));
        assertThat(row.get(1)).isEqualTo(0, within(20.0));
    }

    @Test
    void placesAlikeToFirstOrder_areToldApartByWhatTheyBear() {
        ShotAnswer answer = Solved.shot(Solved.text(
                "camera: {body: main, lens: fifty, at: [0 mm, -700 mm, 59 mm], aim: first, f_number: 11}",
                "place:",
                "  first: {thing: flacon, at: [0 mm, 0 mm]}",
                "  left: {thing: flacon, at: [free, 0 mm]}",
                "  right: {thing: flacon, at: [free, 0 mm]}",
                "  back: {thing: flacon, at: [free, free]}",
                "wants:",
                "  - {shown: [left, first, right], gap: 3 %}",
                "  - {hidden: back, behind: first}",
                "  - {inside: wide}",
                "  - {clear: all, by: 15 mm}"));
        // 126 mm to each side bears 3.54 placing errors; places that look better to first order bear 3.3.
        assertThat(answer.together()).isGreaterThan(3.5);
        assertThat(Solved.millimetres(answer, "left.x")).isNegative();
        assertThat(Solved.millimetres(answer, "right.x")).isPositive();
    }
}
