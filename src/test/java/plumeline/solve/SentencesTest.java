package plumeline.solve;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/// What findings say, word for word, by want and verdict.
final class SentencesTest {
    private static final String CAMERA =
            "camera: {body: main, lens: macro, at: [0 mm, -962 mm, 61 mm], aim: hero, f_number: 8, rate: 24 fps}";
    private static final String ALONE = "place: {hero: {thing: can, at: [0 mm, 0 mm]}}";
    private static final String ROW =
            "place: {hero: {thing: can, at: [0 mm, 0 mm]}, back: {thing: tall, at: [20 mm, 200 mm]}, side: {thing: box,"
                    + " at: [70 mm, 0 mm]}, behind: {thing: tall, at: [0 mm, 300 mm]}}";
    private static final String LAMP = "lights: {key: {light: strip, at: [279 mm, 186 mm, 194 mm]}}";

    private static WantAnswer answer(String place, String want) {
        return Solved.want(Solved.shot(Solved.text(CAMERA, place, LAMP, "frames: 24", "wants: [" + want + "]")), 1);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "{hidden: behind, behind: hero} | HOLDS | Hidden; 21 mm to spare.",
                "{hidden: back, behind: hero} | FAILS | back sticks out by 1.1 mm to camera right.",
                "{shown: [hero, side]} | HOLDS"
                        + " | The gap between hero and side has 2.1 % of the picture's width to spare.",
                "{shown: [hero, side], gap: 3 %} | FAILS"
                        + " | The gap between hero and side lacks 0.9 % of the picture's width.",
                "{clear: all} | HOLDS | Clear; 7 mm of air between hero and side.",
                "{clear: all, by: 3 mm} | HOLDS"
                        + " | Clear; between hero and side 4 mm more than the 3 mm of air asked for.",
                "{clear: all, by: 20 mm} | FAILS"
                        + " | Too close: between hero and side 13 mm less than the 20 mm of air asked for.",
                "{off_picture: key} | FAILS | key reaches into the picture by 1.1 %.",
                "{inside: wide, of: side} | HOLDS"
                        + " | Inside; side is 14.5 % of the camera picture's height from wide's lower side.",
                "{stays_under: hero} | UNKNOWN | The shot has no tank.",
                "{sharp_enough: wide} | UNKNOWN"
                        + " | Not known: how many pixels wide has. Write its size: [1080 px, 1920 px]."
            })
    void row_saysWhichThingAndWhichSide(String want, Verdict verdict, String sentence) {
        check(answer(ROW, want), verdict, sentence);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "{fills: hero, height: 70 %} | HOLDS"
                        + " | hero fills 69.9 % of the picture's height; wanted 70 % ± 1.4 %: 1.3 % to spare.",
                "{fills: hero, height: 80 %} | FAILS"
                        + " | hero fills 69.9 % of the picture's height; wanted 80 % ± 1.6 %: 8.5 % too small.",
                "{fills: hero, height: 60 %} | FAILS"
                        + " | hero fills 69.9 % of the picture's height; wanted 60 % ± 1.2 %: 8.7 % too big.",
                "{sharp: hero, sharp_to: 2 px, at: axis} | HOLDS | Sharp; 12 mm to spare at hero's axis.",
                "{sharp: hero, sharp_to: 4 px} | FAILS"
                        + " | Soft: hero's nearest point is 9 mm nearer than the sharp depth begins.",
                "{inside: phone} | FAILS | hero goes 6.2 % of the camera picture's height over phone's lower side.",
                "{off_picture: hero} | FAILS | hero reaches into the picture by 60.6 %.",
                "{reaches: camera} | HOLDS | The lens focuses 774 mm nearer still."
            })
    void alone_saysTooBigOrTooSmallNearOrFar(String want, Verdict verdict, String sentence) {
        check(answer(ALONE, want), verdict, sentence);
    }

    private static void check(WantAnswer answer, Verdict verdict, String sentence) {
        assertThat(answer.verdict()).isEqualTo(verdict);
        assertThat(answer.because().getFirst()).isEqualTo(sentence);
    }

    @Test
    void tight_saysRoomAndHandAndWhatToUse() {
        WantAnswer tight = answer(ROW, "{shown: [hero, side], gap: 2 %}");
        assertThat(tight.verdict()).isEqualTo(Verdict.TIGHT);
        assertThat(tight.because())
                .containsExactly(
                        "The gap between hero and side has 0.1 % of the picture's width to spare.",
                        "hero.x: 0.1 mm to camera right; you place to 2 mm. Use a jig.");
    }

    @Test
    void whatRestsOnAFloor_needsNoJigToKeepItFromGoingLower() {
        String[] lines = {
            CAMERA,
            "tank: {tank: glass, at: [0 mm, 30 mm]}",
            "place: {hero: {thing: can, at: [0 mm, 0 mm, 8 mm]}}",
            "wants: [{clear: [hero, tank]}]"
        };
        WantAnswer tight = Solved.want(Solved.shot(Solved.text(lines)), 1);
        assertThat(tight.verdict()).isEqualTo(Verdict.TIGHT);
        assertThat(tight.because().getLast()).isEqualTo("hero.z: it rests on the tank's floor, so it can't go lower.");
        // Near a wall too, only the wall can be met.
        lines[2] = "place: {hero: {thing: can, at: [191.5 mm, 0 mm, 8 mm]}}";
        assertThat(Solved.want(Solved.shot(Solved.text(lines)), 1).because().getLast())
                .isEqualTo("hero.x: 0.5 mm to camera right; you place to 2 mm. Use a jig.");
    }

    private static List<String> movingNotes(String move, String... more) {
        List<String> lines = new ArrayList<>(List.of(
                "camera: {body: main, lens: fifty, at: [0 mm, -600 mm, 59 mm], aim: ahead, f_number: 8}",
                ALONE,
                "moves: {slide: {machine: slider, " + (move.contains("profile") ? "" : "profile: even, ") + move
                        + "}}"));
        lines.addAll(List.of(more));
        return Solved.shot(Solved.text(lines.toArray(String[]::new))).notes();
    }

    /// 299 g in 400 ml of water: no mark can mend that, and nothing is said of marks.
    @Test
    void floatingThing_isNotBlamedOnMarks() {
        WantAnswer answer = Solved.want(
                Solved.shot(Solved.text(
                                "camera: {body: main, lens: fifty, at: [0 mm, free, 59 mm], aim: hero, f_number: 8}",
                                "tank: {tank: glass, at: [0 mm, 0 mm], water: 260 mm}",
                                "place: {hero: {thing: can, at: [0 mm, 0 mm, 80 mm], lines: 1}}",
                                "wants: [{stays_under: hero}, {fills: hero, height: 30 %}]")
                        .replace("height: 122 mm}", "height: 122 mm, mass: 299 g, displaces: 400 ml}")),
                1);
        check(answer, Verdict.FAILS, "hero floats: it lacks 100 g of weight.");
        assertThat(answer.because()).hasSize(1);
        assertThat(answer.attempts()).noneMatch(tried -> tried.startsWith("Set "));
    }

    @Test
    void moveLongerThanItsRail_saysBoth() {
        assertThat(movingNotes("by: [-900 mm, 0 mm], in: 25 s, profile: smooth", "frames: 600"))
                .containsExactly("slide goes 900 mm, slider has 600 mm. Shorten the move, or take a longer machine.");
    }

    /// An even 45 mm/s takes 45²/(2 · 200) = 5.1 mm before and after.
    @Test
    void evenMoveLongerThanItsRail_countsItsRunUp() {
        assertThat(movingNotes("by: [-900 mm, 0 mm], in: 20 s", "frames: 480"))
                .containsExactly(
                        "slide goes 910.1 mm with run-up and run-out, slider has 600 mm. Shorten the move, or take"
                                + " a longer machine.");
    }

    /// 2 s are 48 frames of 24 a second.
    @Test
    void moveThatEndsEarly_saysHowManyFramesStandStill() {
        assertThat(movingNotes("by: [100 mm, 0 mm], in: 2 s", "frames: 48")).isEmpty();
        assertThat(movingNotes("by: [100 mm, 0 mm], in: 2 s", "frames: 49"))
                .containsExactly("slide is over after 2 s; the last frame stands still.");
        assertThat(movingNotes("by: [100 mm, 0 mm], in: 2 s", "frames: 63"))
                .containsExactly("slide is over after 2 s; the last 15 frames stand still.");
    }

    @Test
    void moveThatEndsLate_isMadeToEnd() {
        assertThat(movingNotes("by: [100 mm, 0 mm], in: 2 s", "frames: 24"))
                .containsExactly("slide is not over when the last frame ends: it takes 2 s, the shot 1 s of real time."
                        + " Play at 200 %, or give the shot 48 frames.");
        // 400 mm at 80 mm/s take 5 s: 2.5 times the shot's 2 s at 50 % of 96 frames; at 50 % 5 s are 240 frames.
        assertThat(movingNotes("by: [400 mm, 0 mm], in: 2.5 s", "frames: 96", "speed: 50 %"))
                .containsExactly(
                        "slide is not over when the last frame ends: it takes 2.5 s, the shot 2 s of real time.",
                        "slide needs 160 mm/s, slider does 80 mm/s. Run it in 5 s and play at 130 %, or give the shot"
                                + " 240 frames.",
                        "50 % needs 48 fps at least, 120 fps of what the body has: 2.3 stops more light and slide in 2"
                                + " s. 96 frames of the film are 2 s on the table, 49 captured frames.");
    }

    @Test
    void shotThatHoldsOneFrame_saysThatItsMoveIsNeverSeen() {
        assertThat(movingNotes("by: [100 mm, 0 mm], in: 2 s", "frames: 24", "speed: 0 %")
                        .getFirst())
                .isEqualTo("slide is never seen: the shot holds one frame.");
    }

    @Test
    void wantOverAMove_saysWhereItIsWorst() {
        String text = Solved.text(
                "camera: {body: main, lens: fifty, at: [0 mm, -600 mm, 59 mm], aim: ahead, f_number: 8}",
                ALONE,
                "moves: {slide: {machine: slider, by: [100 mm, 0 mm], in: 2 s}}",
                "frames: 48",
                "wants: [{inside: wide}, {inside: wide, when: end}]");
        ShotAnswer shot = Solved.shot(text);
        assertThat(Solved.want(shot, 1).because().getFirst()).endsWith(" left side at the end.");
        assertThat(Solved.want(shot, 2).because().getFirst()).endsWith(" left side.");
    }

    @Test
    void heading_isTheLongestPart() {
        assertThat(Words.heading(-0.2, 0.1, 0)).isEqualTo("to camera left");
        assertThat(Words.heading(0.1, 0.2, 0)).isEqualTo("away from the camera");
        assertThat(Words.heading(0, 0.1, -0.2)).isEqualTo("down");
    }

    @Test
    void clearGlass_sendsToTheLens() {
        String glass = "place: {hero: {thing: glass, at: [0 mm, 0 mm]}, back: {thing: tall, at: [0 mm, 100 mm]}}";
        check(
                answer(glass, "{hidden: back, behind: hero}"),
                Verdict.UNKNOWN,
                "Clear glass: what stands behind hero shows through, bent. Look through the lens.");
    }

    /// 600 mm in 4 s are 150 mm/s; 80 mm/s take 7.5 s, which is 187.5 % and typed in as 190 %: 7.6 s.
    @Test
    void fastSlide_saysTimeAndPlayback() {
        assertThat(notes("profile: even"))
                .containsExactly(
                        "slide goes 712.5 mm with run-up and run-out, slider has 600 mm. Run it with profile:"
                                + " trapezoid, which speeds up on its way, shorten it, or take a longer machine.",
                        "slide needs 150 mm/s, slider does 80 mm/s. Run it in 7.6 s, play at 190 %.");
        // With ramps of 80/200 = 0.4 s it takes 7.5 + 0.4 s.
        assertThat(notes("profile: trapezoid"))
                .containsExactly("slide needs 200 mm/s, slider does 80 mm/s. Run it in 8 s, play at 200 %.");
        assertThat(notes("profile: even", "papers: in").getLast())
                .isEqualTo("slide needs 5.91 in/s, slider does 3.15 in/s. Run it in 7.6 s, play at 190 %.");
    }

    private static List<String> notes(String profile, String... papers) {
        String text = Solved.text(
                "camera: {body: main, lens: fifty, at: [0 mm, -600 mm, 59 mm], aim: ahead, f_number: 8}",
                ALONE,
                "moves: {slide: {machine: slider, by: [-600 mm, 0 mm], in: 4 s, " + profile + "}}");
        return Solved.shot(papers.length == 0 ? text : text.replace("papers: mm", papers[0]))
                .notes();
    }

    @Test
    void inchPapers_sayInchesWhateverThePlanWrote() {
        String text = Solved.text(CAMERA, ROW, LAMP, "frames: 24", "wants: [{clear: all, by: 20 mm}]")
                .replace("papers: mm", "papers: in");
        WantAnswer answer = Solved.want(Solved.shot(text), 1);
        assertThat(answer.want()).isEqualTo("clear all by 13/16 in");
        assertThat(answer.because().getFirst())
                .isEqualTo("Too close: between hero and side 1/2 in less than the 13/16 in of air asked for.");
        assertThat(String.join(" ", answer.attempts())).contains(" in ").doesNotContain("mm");
    }

    private static final Pattern TALK = Pattern.compile(
            "\\b(safe|margin|constraint|optimum|optimi[sz]\\w*|infeasible|solver|nan|null|invalid|illegal|error"
                    + "|exception|epsilon|infinity)\\b");

    private static final Pattern TOO_FINE = Pattern.compile("\\d\\.\\d\\d+ (mm|%|deg)");

    @Test
    void noFinding_talksLikeAProgram() {
        int checked = 0;
        for (int seed = 1; seed <= 40; seed++) {
            for (String text : List.of(
                    RandomSet.of(seed).freed(), RandomSet.of(seed).freed().replace("papers: mm", "papers: in"))) {
                ShotAnswer shot = Solved.shot(text);
                boolean inches = text.contains("papers: in");
                for (String sentence : sentences(shot)) {
                    String said = sentence.toLowerCase(Locale.ROOT);
                    assertThat(TALK.matcher(said).find()).as(sentence).isFalse();
                    assertThat(said).as("seed %s", seed).doesNotContain("..", "  ", inches ? " mm" : " in,");
                    assertThat(TOO_FINE.matcher(said).find()).as(sentence).isFalse();
                    checked++;
                }
            }
        }
        assertThat(checked).isGreaterThan(200);
    }

    private static List<String> sentences(ShotAnswer shot) {
        List<String> all = new ArrayList<>(shot.notes());
        shot.wants().forEach(want -> {
            all.addAll(want.because());
            all.addAll(want.attempts());
        });
        return all;
    }

    /// A panel 300 mm wide half way to the can hides it; 200 mm aside it is 50 mm clear of the axis, and of a can 33 mm
    /// to a side, which half way is half as wide.
    @Test
    void aLampBetweenTheLensAndAThing_isNoted() {
        String between = "lights: {key: {light: strip, at: [0 mm, -480 mm, 61 mm]}}";
        String aside = "lights: {key: {light: strip, at: [200 mm, -480 mm, 61 mm], turn: 0 deg}}";
        String want = "wants: [{fills: hero, height: 70 %}]";
        assertThat(Solved.shot(Solved.text(CAMERA, ALONE, between, want)).notes())
                .contains("key stands between the lens and hero: want off_picture: key.");
        assertThat(Solved.shot(Solved.text(CAMERA, ALONE, aside, want)).notes())
                .noneMatch(note -> note.contains("stands between"));
    }
}
