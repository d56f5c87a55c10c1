package plumeline.solve;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import plumeline.plan.Mark;
import plumeline.plan.Plan;
import plumeline.quantity.Origin;

/// What solving does with marks and how it finds verdicts.
final class SolveTest {
    private static final long SEED = 4_2026;
    private static final String CAMERA = "camera: {body: main, lens: fifty, at: [0 mm, -600 mm, 59 mm], aim: hero}";
    private static final String FILE =
            "place: {hero: {thing: tall, at: [0 mm, 0 mm]}, back: {thing: tall, at: [0 mm, 100 mm]}}";

    @Test
    void lockedMarks_neverMove_freeOnesEndOnWholeMillimetresInsideTheirBounds() {
        int free = 0;
        for (int i = 0; i < 4; i++) {
            Plan plan = Solved.plan(RandomSet.of(SEED + i).freed());
            ShotAnswer answer = Solve.film(plan).shots().getFirst();
            for (MarkAnswer mark : answer.marks()) {
                String which = "seed " + (SEED + i) + " " + mark.mark().path();
                double si = Solved.si(mark);
                if (mark.mark() instanceof Mark.Fixed fixed) {
                    assertThat(si).as(which).isEqualTo(fixed.quantity().si());
                    assertThat(switched(mark)).as(which).isEqualTo(Origin.GIVEN);
                    continue;
                }
                free++;
                assertThat(si * 1e3).as(which).isEqualTo(Math.rint(si * 1e3), within(1e-9));
                assertThat(switched(mark)).as(which).isEqualTo(Origin.SOLVED);
                if (mark.mark() instanceof Mark.Between between) {
                    assertThat(si)
                            .as(which)
                            .isBetween(
                                    between.low().si() - 1e-12, between.high().si() + 1e-12);
                }
            }
        }
        assertThat(free).isGreaterThan(10);
    }

    private static Origin switched(MarkAnswer mark) {
        return switch (mark.setting()) {
            case MarkAnswer.Setting.At at -> at.origin();
            case MarkAnswer.Setting.Open() ->
                throw new AssertionError(mark.mark().path());
        };
    }

    @Test
    void freeMarks_inInches_endOnSixteenths() {
        String text = Solved.replaced(RandomSet.of(SEED).freed(), "papers: mm", "papers: in");
        ShotAnswer answer = Solved.shot(text);
        for (MarkAnswer mark : answer.marks()) {
            if (mark.mark() instanceof Mark.Free) {
                double sixteenths = Solved.si(mark) / 0.0254 * 16;
                assertThat(sixteenths).isEqualTo(Math.rint(sixteenths), within(1e-9));
            }
        }
    }

    @Test
    void samePlanTwice_andOnSeveralThreads_givesTheSameText() {
        String text = RandomSet.of(SEED + 7).freed();
        String once = FilmJson.of(Solved.film(text));
        assertThat(FilmJson.of(Solved.film(text))).isEqualTo(once);
        List<String> together = IntStream.range(0, 4)
                .parallel()
                .mapToObj(_ -> FilmJson.of(Solved.film(text)))
                .toList();
        assertThat(together).hasSize(4).allMatch(once::equals);
    }

    @Test
    void verdict_isTightWhereAPlacingErrorBreaksIt_andSaysWhich() {
        assertThat(hidden("0.5 mm")).isEqualTo(Verdict.HOLDS);
        // 100 mm behind, 3.5 mm to spare: 3.4 mm aside leaves 0.1.
        assertThat(hidden("3.4 mm")).isEqualTo(Verdict.TIGHT);
        assertThat(hidden("3.6 mm")).isEqualTo(Verdict.FAILS);
        // A stated placing error takes the usual 2 mm's place: 2.6 mm are left of 3.5.
        assertThat(hidden("0.9 mm")).isEqualTo(Verdict.HOLDS);
        assertThat(hidden("0.9 mm ± 3 mm")).isEqualTo(Verdict.TIGHT);
        WantAnswer tight = Solved.want(placed("3.4 mm"), 1);
        assertThat(tight.because())
                .anyMatch(text -> text.equals("hero.x: no room to camera left; you place to 2 mm. Use a jig."));
    }

    private static Verdict hidden(String aside) {
        return Solved.want(placed(aside), 1).verdict();
    }

    private static ShotAnswer placed(String aside) {
        return Solved.shot(Solved.text(
                CAMERA,
                FILE.replace("at: [0 mm, 100 mm]", "at: [" + aside + ", 100 mm]"),
                "wants: [{hidden: back, behind: hero}]"));
    }

    @Test
    void verdict_takesTheWorst_failsBeforeUnknownBeforeTightBeforeHolds() {
        String unknown = "{stays_under: hero}";
        String holds = "{clear: all}";
        String fails = "{fills: hero, height: 10 %}";
        String tight = "{hidden: [back], behind: hero}";
        String place = FILE.replace("at: [0 mm, 100 mm]", "at: [3.4 mm, 100 mm]");
        assertThat(worst(place, holds)).isEqualTo(Verdict.HOLDS);
        assertThat(worst(place, holds, tight)).isEqualTo(Verdict.TIGHT);
        assertThat(worst(place, tight, unknown, holds)).isEqualTo(Verdict.UNKNOWN);
        assertThat(worst(place, unknown, fails, tight)).isEqualTo(Verdict.FAILS);
    }

    private static Verdict worst(String place, String... wants) {
        FilmAnswer film = Solved.film(Solved.text(CAMERA, place, "wants: [" + String.join(", ", wants) + "]"));
        assertThat(film.verdict()).isEqualTo(film.shots().getFirst().verdict());
        return film.verdict();
    }

    @Test
    void leewayWithout_namesWhatFails_andLeewayIsOfTheRest() {
        String[] wants = {"{fills: hero, height: 10 %}", "{hidden: back, behind: hero}"};
        ShotAnswer both = Solved.shot(Solved.text(CAMERA, FILE, "wants: [" + String.join(", ", wants) + "]"));
        ShotAnswer alone = Solved.shot(Solved.text(CAMERA, FILE, "wants: [" + wants[1] + "]"));
        assertThat(both.leewayWithout()).containsExactly("one.1");
        assertThat(alone.leewayWithout()).isEmpty();
        assertThat(Solved.mark(both, "back.x").leeway())
                .isEqualTo(Solved.mark(alone, "back.x").leeway());
        assertThat(both.together()).isEqualTo(alone.together());
    }

    @Test
    void hiddenBehindAClearBody_isUnknown_withTheReason() {
        WantAnswer want = Solved.want(
                Solved.shot(Solved.text(
                        CAMERA,
                        FILE.replace("hero: {thing: tall", "hero: {thing: glass"),
                        "wants: [{hidden: back, behind: hero}]")),
                1);
        assertThat(want.verdict()).isEqualTo(Verdict.UNKNOWN);
        assertThat(want.margin()).isEqualTo(new WantAnswer.Margin.None());
        assertThat(want.because().getFirst()).startsWith("Clear glass: what stands behind hero");
    }

    @Test
    void unknown_leavesItsFreeMarkOpen() {
        ShotAnswer answer = Solved.shot(Solved.text(
                CAMERA,
                "place: {hero: {thing: tall, at: [0 mm, 0 mm]}}",
                "lights: {key: {light: strip, at: free}}",
                "wants: [{sharp_enough: wide}]"));
        assertThat(Solved.want(answer, 1).because())
                .containsExactly("Not known: how many pixels wide has. Write its size: [1080 px, 1920 px].");
        assertThat(Solved.mark(answer, "key.x").setting()).isEqualTo(new MarkAnswer.Setting.Open());
    }

    @Test
    void wantOnPasses_countsAndNamesTheWorst() {
        String passes = "passes: {near: {}, far: {place.hero.at.y: 60 mm}, farther: {place.hero.at.y: 120 mm}}";
        String place = "place: {hero: {thing: tall, at: [0 mm, 0 mm]}}";
        String want = "{fills: hero, height: 53 %, within: 60 %%}".replace("%%", "%");
        ShotAnswer answer = Solved.shot(Solved.text(
                CAMERA.replace("aim: hero", "aim: hero, focus: 600 mm"), place, passes, "wants: [" + want + "]"));
        assertThat(Solved.want(answer, 1).pass()).isEqualTo("farther");
        ShotAnswer named = Solved.shot(Solved.text(
                CAMERA.replace("aim: hero", "aim: hero, focus: 600 mm"),
                place,
                passes,
                "wants: [" + want.replace("}", ", pass: far}") + "]"));
        assertThat(Solved.want(named, 1).pass()).isEqualTo("far");
        // 118 mm at 660 mm under the scale of 600 mm.
        double share = 100 * 118 / 660.0 * (50 * 600 / 550.0) / 20.25;
        assertThat(Solved.margin(Solved.want(named, 1))).isEqualTo(0.6 * 53 - (53 - share), within(1e-6));
    }

    @Test
    void reaches_whatTheKitLacks_fails() {
        ShotAnswer answer = Solved.shot(Solved.text(
                CAMERA.replace("aim: hero", "aim: hero, f_number: 1.4"), FILE, "wants: [{reaches: camera}]"));
        assertThat(Solved.want(answer, 1).verdict()).isEqualTo(Verdict.FAILS);
        assertThat(Solved.want(answer, 1).because()).containsExactly("fifty has f/2 to f/22, not f/1.4.");
    }

    @Test
    void keptMarks_solvedAgain_giveTheSameFindings() {
        for (int i = 0; i < 4; i++) {
            Plan plan = Solved.plan(RandomSet.of(SEED + 20 + i).freed());
            FilmAnswer first = Solve.film(plan);
            ShotAnswer once = first.shots().getFirst();
            ShotAnswer again = Solved.shot(Solved.kept(plan, first));
            String which = "seed " + (SEED + 20 + i);
            assertThat(again.wants().stream().map(WantAnswer::verdict).toList())
                    .as(which)
                    .isEqualTo(once.wants().stream().map(WantAnswer::verdict).toList());
            for (int m = 0; m < once.marks().size(); m++) {
                MarkAnswer mark = again.marks().get(m);
                assertThat(Solved.si(mark))
                        .as(which)
                        .isEqualTo(Solved.si(once.marks().get(m)), within(1e-12));
                assertThat(switched(mark))
                        .as(which)
                        .isEqualTo(switched(once.marks().get(m)));
                assertThat(mark.mark().isFree()).isFalse();
            }
        }
    }

    @Test
    void freeHiddenThings_areFound() {
        ShotAnswer answer = Solved.shot(Solved.text(
                CAMERA,
                "place: {hero: {thing: tall, at: [0 mm, 0 mm]}, back: {thing: tall, at: [free, free between 60 mm and"
                        + " 300 mm]}}",
                "wants: [{hidden: back, behind: hero}, {clear: all, by: 10 mm}]"));
        assertThat(answer.verdict()).isIn(Verdict.HOLDS, Verdict.TIGHT);
        // In file on the axis by symmetry; the farther off, the more it is hidden, so it goes to the bound.
        assertThat(Solved.millimetres(answer, "back.x")).isEqualTo(0, within(1.1));
        assertThat(Solved.millimetres(answer, "back.y")).isGreaterThan(150);
    }

    @Test
    void film_wantIsTheWorstShotsAndNamesIt() {
        String text = Solved.text(CAMERA, "place: {hero: {thing: tall, at: [0 mm, 0 mm]}}")
                + "  two:\n    " + CAMERA.replace("-600", "-280")
                + "\n    place: {hero: {thing: tall, at: [0 mm, 0 mm]}}\n"
                + "wants: [{inside: wide}]\n";
        FilmAnswer film = Solved.film(text);
        assertThat(film.wants().getFirst().verdict()).isEqualTo(Verdict.FAILS);
        assertThat(film.wants().getFirst().because().getFirst()).isEqualTo("Worst in two.");
        assertThat(film.verdict()).isEqualTo(Verdict.FAILS);
        assertThat(film.shots()).extracting(ShotAnswer::shot).containsExactly("one", "two");
    }

    @Test
    void sameSize_isSolvedAgainstTheOtherShot_whicheverComesFirst() {
        String one = Solved.text(
                CAMERA.replace("-600 mm", "free"),
                "place: {hero: {thing: tall, at: [0 mm, 0 mm]}}",
                "wants: [{same_size: hero, as: two}]");
        String two = "  two:\n    " + CAMERA.replace("-600", "-720")
                + "\n    place: {hero: {thing: tall, at: [0 mm, 0 mm]}}\n";
        FilmAnswer film = Solved.film(one + two);
        assertThat(Solved.millimetres(film.shots().getFirst(), "camera.y")).isEqualTo(-720, within(1.1));
        assertThat(film.verdict()).isIn(Verdict.HOLDS, Verdict.TIGHT);
    }

    @Test
    void move_thatIsNotOver_isNoted() {
        ShotAnswer answer = Solved.shot(Solved.text(
                CAMERA,
                FILE,
                "moves: {slide: {machine: slider, by: [-100 mm, 0 mm], in: 2 s}}",
                "frames: 24",
                "wants: [{clear: all}]"));
        assertThat(answer.notes()).anyMatch(note -> note.startsWith("slide is not over when the last frame ends"));
    }

    @Test
    void reaches_isTheWayToTheNearestFocus_whateverTheFNumber() {
        double fromSensor = 1000 + 50 * (1 + 50.0 / 950);
        for (String fNumber : new String[] {"2", "2.8", "4", "8", "22"}) {
            ShotAnswer answer = Solved.shot(Solved.text(
                    "camera: {body: main, lens: fifty, at: [0 mm, -1000 mm, 50 mm], aim: ahead, focus: 1000 mm,"
                            + " f_number: " + fNumber + "}",
                    "place: {hero: {thing: tall, at: [0 mm, 0 mm]}}",
                    "wants: [{reaches: camera}]"));
            assertThat(Solved.margin(answer.wants().getFirst())).as(fNumber).isEqualTo(fromSensor - 350, within(1e-6));
        }
    }

    @Test
    void shown_sideBySideButCutByThePicturesEdge_isSaid() {
        String text = Solved.text(
                "camera: {body: main, lens: fifty, at: [0 mm, -600 mm, 59 mm], aim: ahead}",
                "place: {hero: {thing: tall, at: [0 mm, 0 mm]}, back: {thing: tall, at: [190 mm, 0 mm]}}",
                "wants: [{shown: [hero, back], gap: 1 %}]");
        // Half the picture is 600 · 18 / 54.5 = 198 mm wide there, the thing reaches to 211 mm.
        assertThat(Solved.sentences(Solved.shot(text)))
                .contains("back goes over the picture's edge, which this want doesn't count: want inside too.");
        assertThat(Solved.sentences(Solved.shot(text.replace("190 mm", "150 mm"))))
                .noneMatch(sentence -> sentence.contains("picture's edge"));
    }

    @Test
    void movingShot_ofOneFrame_isJudgedAtThatFrame() {
        ShotAnswer answer = Solved.shot(Solved.text(
                "camera: {body: main, lens: macro, at: [0 mm, -1000 mm, 61 mm], aim: hero, f_number: 8, rate: 24 fps}",
                "place: {hero: {thing: can, at: [0 mm, 0 mm]}}",
                "moves: {slide: {machine: slider, by: [-40 mm, 0 mm], in: 4 s}}",
                "frames: 1",
                "wants: [{sharp: hero, sharp_to: 8 px}]"));
        assertThat(Solved.want(answer, 1).verdict()).isEqualTo(Verdict.HOLDS);
        assertThat(Solved.margin(Solved.want(answer, 1))).isBetween(1.0, 50.0);
    }
}
