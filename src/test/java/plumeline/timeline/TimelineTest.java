package plumeline.timeline;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;
import plumeline.plan.Plan;
import plumeline.plan.Plans;

/// Every frame has exactly one picture, and it is the one that the cut says.
final class TimelineTest {
    private static final String HEAD = """
            plumeline: 1
            film: {rate: 24 fps, tempo: 120 bpm%s}
            deliver: {wide: {ratio: "16:9"}, short: {ratio: "1:1"%s}}
            kit:
              cameras: {main: {sensor: {width: 36 mm, height: 20.25 mm, across: 3840 px}}}
              lenses: {fifty: {focal_length: 50 mm}}
            shots:
              one:
                camera: {body: main, lens: fifty, at: [0 mm, -600 mm, 59 mm], rate: 120 fps}
                speed: 20 %%
              two:
                camera: {body: main, lens: fifty, at: [0 mm, -600 mm, 59 mm], rate: 48 fps}
                speed: [[0 frames, 100 %%], [10 frames, -100 %%]]
                clip: {file: takes/A003.mov, reel: A003, starts: "10:00:00:00", go: 12 frames}
                passes: {a: {}, b: {clip.file: takes/b 2.mov, clip.go: 5}}
            cut:
            """;

    static Plan plan(String cut) {
        return plan("", "", cut);
    }

    static Plan plan(String film, String square, String cut) {
        String text = HEAD.formatted(film, square) + cut.indent(2);
        Plans.Reading reading = Plans.read(text.getBytes(UTF_8), "p.yaml");
        assertThat(reading.problems()).isEmpty();
        return reading.plan().orElseThrow();
    }

    @Test
    void everyFrame_hasOnePicture_ofTheShotsOwnFrame() {
        Random random = new Random(9);
        for (int round = 0; round < 50; round++) {
            StringBuilder cut = new StringBuilder();
            List<Long> lengths =
                    random.longs(1 + random.nextInt(9), 1, 60).boxed().toList();
            for (long frames : lengths) {
                cut.append(
                        random.nextBoolean()
                                ? "- {shot: one, frames: %d, from: %d}\n".formatted(frames, random.nextInt(30))
                                : "- {shot: two, frames: %d, alternate: [a, b], each: %d}\n"
                                        .formatted(frames, 1 + random.nextInt(9)));
            }
            Timeline timeline = Timeline.of(plan(cut.toString()));
            assertThat(timeline.frames())
                    .isEqualTo(lengths.stream().mapToLong(each -> each).sum());
            for (long frame = 0; frame < timeline.frames(); frame++) {
                long now = frame;
                assertThat(timeline.spans().stream().filter(span -> span.has(now)))
                        .containsExactly(timeline.findSpan(frame).orElseThrow());
            }
            assertThat(timeline.findSpan(-1)).isEmpty();
            assertThat(timeline.findSpan(timeline.frames())).isEmpty();
        }
    }

    @Test
    void alternating_looksRunOnTogether() {
        Timeline timeline = Timeline.of(plan("- {shot: two, frames: 14, alternate: [a, b], each: 6, from: 3}"));
        assertThat(timeline.spans()).extracting(Span::pass).containsExactly("a", "b", "a");
        assertThat(timeline.spans()).extracting(Span::first).containsExactly(0L, 6L, 12L);
        assertThat(timeline.spans()).extracting(Span::frames).containsExactly(6L, 6L, 2L);
        assertThat(timeline.spans()).extracting(Span::shotFrame).containsExactly(3L, 9L, 15L);
    }

    /// 120 frames a second at a fifth of real time on 24: each recorded frame once.
    @Test
    void sourceFrames_countFromGo() {
        Timeline timeline = Timeline.of(plan("- {shot: one, frames: 30}\n- {shot: one, frames: 10, from: 30}"));
        assertThat(timeline.findSpan(29).orElseThrow().sourceFrame(29)).isEqualTo(29);
        assertThat(timeline.findSpan(30).orElseThrow().sourceFrame(30)).isEqualTo(30);
        assertThat(timeline.findSpan(39).orElseThrow().sourceFrame(39)).isEqualTo(39);
        assertThat(timeline.spans().getFirst().played().frames()).isEqualTo(40);
        assertThat(timeline.spans().getFirst().played().isRamped(0, 40)).isFalse();
        assertThat(Timeline.of(plan("- {shot: two, frames: 12}"))
                        .spans()
                        .getFirst()
                        .played()
                        .isRamped(0, 12))
                .isTrue();
    }

    /// A shot that comes back: GO is the earliest instant that it shows, the end of its last frame.
    @Test
    void backward_countsFromTheEarliestInstant() {
        Timeline timeline = Timeline.of(plan("- {shot: two, frames: 21}"));
        Span span = timeline.spans().getFirst();
        long least = 99;
        for (long frame = 0; frame < 21; frame++) {
            least = Math.min(least, span.sourceFrame(frame));
        }
        assertThat(least).isEqualTo(2);
        assertThat(span.sourceFrame(5)).isGreaterThan(span.sourceFrame(10));
    }

    @Test
    void instants_areFoundWhereTheyAreFirstSeen() {
        Plan plan = plan("- {shot: two, pass: a, frames: 8}\n- {shot: one, frames: 30, from: 24}\n"
                + "- {shot: one, frames: 60}");
        Timeline timeline = Timeline.of(plan);
        assertThat(at(plan, timeline, "shot: one, when: start")).isEqualTo(8);
        assertThat(at(plan, timeline, "shot: one, when: end")).isEqualTo(37);
        assertThat(at(plan, timeline, "shot: one, when: 30 frames")).isEqualTo(14);
        assertThat(at(plan, timeline, "shot: one, when: 3 frames")).isEqualTo(41);
        assertThat(at(plan, timeline, "shot: one, when: 0.25 s")).isEqualTo(14);
        assertThat(at(plan, timeline, "shot: two, pass: a, when: 7 frames")).isEqualTo(7);
        assertThat(at(plan, timeline, "shot: two, pass: b, when: 7 frames")).isEqualTo(-1);
        assertThat(at(plan, timeline, "shot: one, when: 99 frames")).isEqualTo(-1);
    }

    /// Looks alternate: an instant of one of them is where that one is seen.
    @Test
    void instantsOfAPass_areWhereThatPassIsSeen() {
        Plan plan = plan("- {shot: one, frames: 10}\n- {shot: two, frames: 24, alternate: [a, b], each: 6}");
        Timeline timeline = Timeline.of(plan);
        assertThat(at(plan, timeline, "shot: two, when: start")).isEqualTo(10);
        assertThat(at(plan, timeline, "shot: two, pass: b, when: start")).isEqualTo(16);
        assertThat(at(plan, timeline, "shot: two, pass: a, when: end")).isEqualTo(27);
        assertThat(at(plan, timeline, "shot: two, pass: b, when: end")).isEqualTo(33);
        assertThat(at(plan, timeline, "shot: two, pass: b, when: 3 frames")).isEqualTo(-1);
        assertThat(at(plan, timeline, "shot: two, pass: b, when: 7 frames")).isEqualTo(17);
        assertThat(timeline.findEntry(sync(plan, "shot: two, pass: b, when: start"))
                        .orElseThrow()
                        .first())
                .isEqualTo(10);
    }

    /// Forward for 20 frames' worth, then back: what lies before the entry is passed again within it.
    @Test
    void anInstantThatIsPassedTwice_isFoundWhereItIsShown() {
        Plan plan = plan("- {shot: two, frames: 10, from: 12}\n- {shot: two, frames: 22}");
        Timeline timeline = Timeline.of(plan);
        double seconds = timeline.spans().getFirst().played().retime().realSeconds(15);
        assertThat(timeline.spans().getFirst().findFrame(seconds)).hasValueCloseTo(3.0, within());
        double early = timeline.spans().getFirst().played().retime().realSeconds(2);
        assertThat(timeline.spans().get(1).findFrame(early)).hasValueCloseTo(12.0, within());
        assertThat(timeline.spans().getFirst().findFrame(99)).isEmpty();
    }

    private static double at(Plan plan, Timeline timeline, String sync) {
        return timeline.findFrame(sync(plan, sync)).orElse(-1);
    }

    private static Plan.Sync sync(Plan plan, String sync) {
        String text = plan.source().text() + "cues: [{sound: tick, sync: {" + sync + "}}]\n";
        Plan with = Plans.read(text.getBytes(UTF_8), "p.yaml").plan().orElseThrow();
        return with.cutList().cues().getFirst().sync();
    }

    @Test
    void aDeliverysOwnCut_isATimelineOfItsOwn() {
        Plan plan = plan("", ", length: 1 s, cut: [{shot: one, frames: 24, from: 40}]", "- {shot: one, frames: 30}");
        assertThat(Timeline.listAll(plan)).extracting(Timeline::delivery).containsExactly("", "short");
        assertThat(Timeline.of(plan, plan.findDelivery("wide").orElseThrow()).frames())
                .isEqualTo(30);
        Timeline own = Timeline.of(plan, plan.findDelivery("short").orElseThrow());
        assertThat(own.frames()).isEqualTo(24);
        assertThat(own.spans().getFirst().played().frames()).isEqualTo(64);
    }

    @Test
    void clips_areThoseWritten_orMissingWithANameOfTheirOwn() {
        Plan plan = plan("- {shot: two, frames: 12}");
        assertThat(Clip.of(plan, "one", ""))
                .isEqualTo(new Clip("one", Optional.empty(), "one", 86_400, 86_376, java.util.OptionalLong.empty()));
        Clip whole = Clip.of(plan, "two", "");
        assertThat(whole.file()).contains("takes/A003.mov");
        assertThat(whole.reel()).isEqualTo("A003");
        assertThat(whole.goFrame()).isEqualTo(864_012);
        assertThat(Clip.of(plan, "two", "a").isMissing()).isTrue();
        assertThat(Clip.of(plan, "two", "a").name()).isEqualTo("two.a");
        Clip own = Clip.of(plan, "two", "b");
        assertThat(own.name()).isEqualTo("b 2");
        assertThat(own.goFrame()).isEqualTo(864_005);
    }

    /// A name can't have a dot, so that `two-a` and pass a of `two` are two names.
    @Test
    void namesOfPasses_areNoOtherShots() {
        Plan plan = plan("- {shot: two, frames: 12}");
        assertThat(Clip.of(plan, "two", "a").name()).isEqualTo("two.a");
        Plan film = plan("", ", length: 1 s, cut: [{shot: one, frames: 24}]", "- {shot: one, frames: 30}");
        Plan called = Plans.read(film.source().text().replace("short:", "film:").getBytes(UTF_8), "p.yaml")
                .plan()
                .orElseThrow();
        assertThat(Timeline.listAll(called)).extracting(Timeline::name).containsExactly("film", "film.own");
    }

    @Test
    void aTakeThatIsMissing_mayHaveItsTimecodeWritten() {
        Plan plan = plan("- {shot: two, frames: 12}");
        String text = plan.source()
                .text()
                .replace("file: takes/A003.mov, ", "")
                .replace("go: 12 frames}", "go: 12, frames: 99}");
        Plan missing = Plans.read(text.getBytes(UTF_8), "p.yaml").plan().orElseThrow();
        Clip clip = Clip.of(missing, "two", "");
        assertThat(clip.isMissing()).isTrue();
        assertThat(clip.goFrame()).isEqualTo(864_012);
        assertThat(clip.startFrame()).isEqualTo(864_000);
        assertThat(clip.frames()).hasValue(99);
    }

    /// A pass may name its take though the shot names none.
    @Test
    void aPass_mayNameItsTakeAlone() {
        Plan plan = plan("- {shot: two, frames: 12}");
        String text = plan.source().text().replaceAll("    clip: .*\n", "");
        Plan alone = Plans.read(text.getBytes(UTF_8), "p.yaml").plan().orElseThrow();
        assertThat(Clip.of(alone, "two", "b").file()).contains("takes/b 2.mov");
        assertThat(Clip.of(alone, "two", "").isMissing()).isTrue();
    }

    /// A delivery's own cut that doesn't have a shot shows none of it; a shot that no cut has is judged whole.
    @Test
    void uses_areThoseOfTheDeliverysCut() {
        Plan plan = plan("", ", length: 1 s, cut: [{shot: one, frames: 24}]", "- {shot: two, frames: 30, from: 4}");
        assertThat(Use.list(plan, plan.findDelivery("short").orElseThrow(), "two", "", 34))
                .isEmpty();
        assertThat(Use.list(plan, plan.findDelivery("wide").orElseThrow(), "two", "", 34))
                .containsExactly(new Use(4, 34, List.of()));
        Plan none = Plans.read(
                        plan.source().text().replaceAll("(?s)cut:\n.*", "").getBytes(UTF_8), "p.yaml")
                .plan()
                .orElseThrow();
        assertThat(Use.list(none, none.findDelivery("wide").orElseThrow(), "two", "", 34))
                .containsExactly(new Use(0, 34, List.of()));
    }

    @Test
    void framing_runsFromKeyToKeyByItsProfile() {
        Plan plan = plan("- {shot: one, frames: 48, reframe: [{at: 10}, {at: 20, scale: 150 %, place: [10 %, -20 %],"
                + " turn: 8 deg, profile: even}, {at: 30, scale: 100 %}]}\n"
                + "- {shot: one, frames: 8, reframe: {wide: [{at: 0, scale: 200 %}]}}");
        var keys = plan.cuts().get(0).listReframes("wide");
        assertThat(plan.cuts().get(0).listReframes("short")).isEqualTo(keys);
        assertThat(Framing.at(keys, 0)).isEqualTo(Framing.PLAIN);
        Framing half = Framing.at(keys, 15);
        assertThat(half.scale()).isEqualTo(1.25);
        assertThat(half.x()).isEqualTo(0.05);
        assertThat(half.y()).isEqualTo(-0.1);
        assertThat(Math.toDegrees(half.turnRadians())).isCloseTo(4, within());
        assertThat(Framing.at(keys, 22.5).scale()).isCloseTo(1.5 - 0.5 * 0.103515625, within());
        assertThat(Framing.at(keys, 48)).isEqualTo(Framing.PLAIN);
        assertThat(plan.cuts().get(1).listReframes("short")).isEmpty();
        assertThat(Framing.at(plan.cuts().get(1).listReframes("wide"), 3).scale())
                .isEqualTo(2);
    }

    private static org.assertj.core.data.Offset<Double> within() {
        return org.assertj.core.data.Offset.offset(1e-12);
    }

    @Test
    void screenBlend_takesTheBlackOff() {
        ScreenBlend blend = new ScreenBlend(0.06, 1);
        assertThat(blend.of(0.3, 0.06)).isCloseTo(0.3, within());
        assertThat(blend.of(0.3, 0.02)).isCloseTo(0.3, within());
        assertThat(blend.of(0.3, 1)).isEqualTo(1);
        assertThat(blend.lifted(0.53)).isCloseTo(0.5, within());
        assertThat(new ScreenBlend(0.06, 0.5).of(0.2, 0.53)).isCloseTo(1 - 0.8 * 0.75, within());
    }
}
