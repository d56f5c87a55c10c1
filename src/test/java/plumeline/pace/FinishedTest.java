package plumeline.pace;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

/// What is left of a picture in what is delivered, and cuts beside beats.
final class FinishedTest {
    private static String sharp(String size, String camera, String cut) {
        return PacePlan.plan(camera, "", "sharp_enough: wide")
                        .replace("film: {rate: 24 fps}", "film: {rate: 24 fps}\ndeliver: {wide: {size: " + size + "}}")
                + "cut: " + cut + "\n";
    }

    /// 9:16 out of 3840 × 2160 is 1215 across: 1.125 for each of 1080.
    @Test
    void sharpEnough_countsTheCropsPixels() {
        String plain = sharp("[1080 px, 1920 px]", "rate: 24 fps", "[{shot: one, frames: 48}]");
        assertThat(PacePlan.margin(plain)).isEqualTo(0.125, within(1e-9));
        assertThat(PacePlan.standing(plain))
                .isEqualTo("wide gets 1.12 captured pixels for each of its own: 1215 of 3840 across are in its crop,"
                        + " for 1080.");
        assertThat(PacePlan.margin(sharp("[3840 px, 2160 px]", "rate: 24 fps", "[{shot: one, frames: 48}]")))
                .isZero();
        assertThat(PacePlan.margin(
                        sharp("[1080 px, 1920 px]", "rate: 24 fps, held: upright", "[{shot: one, frames: 48}]")))
                .isEqualTo(1, within(1e-9));
    }

    @Test
    void sharpEnough_isWorstWhereThePictureIsLargest() {
        String cut = "[{shot: one, frames: 48, reframe: [{at: 0}, {at: 47 frames, scale: 150 %}]}]";
        String text = sharp("[1080 px, 1920 px]", "rate: 24 fps", cut);
        assertThat(PacePlan.margin(text)).isEqualTo(1.125 / 1.5 - 1, within(1e-9));
        assertThat(PacePlan.standing(text)).contains("at the shot's frame 47, where it is scaled to 150 %");
        assertThat(PacePlan.gauge(text).listAttempts(PacePlan.paced(text)))
                .containsExactly(
                        "Scale it to 112 % at most for wide.",
                        "Deliver wide at most 810 px across, or frame the shot nearer.");
        String start = text.replace("sharp_enough: wide", "sharp_enough: wide, when: start");
        assertThat(PacePlan.margin(start)).isEqualTo(0.125, within(1e-9));
    }

    @Test
    void sharpEnough_namesAModeWithMorePixels() {
        String text = sharp("[1080 px, 1920 px]", "rate: 240 fps", "[{shot: one, frames: 48}]");
        assertThat(PacePlan.margin(text)).isEqualTo(607.5 / 1080 - 1, within(1e-9));
        assertThat(PacePlan.gauge(text).listAttempts(PacePlan.paced(text)).getFirst())
                .isEqualTo("Capture at 120 fps or slower: 3840 px across are enough.");
    }

    /// A crop over the picture's edge leaves a border, and what is seen is as sharp as before.
    @Test
    void sharpEnough_ofACropOverTheEdge_isAsElsewhere() {
        String text = sharp("[1920 px, 1080 px]", "rate: 24 fps", "[{shot: one, frames: 48}]");
        assertThat(PacePlan.margin(text.replace("wants:", "crop: {wide: [10 %, 0 %]}\n    wants:")))
                .isEqualTo(PacePlan.margin(text));
    }

    /// A delivery that doesn't show the shot asks nothing of it.
    @Test
    void sharpEnough_ofAShotThatIsntShown_isIdle() {
        String text = sharp(
                        "[1920 px, 1080 px], cut: [{shot: two, frames: 9}]", "rate: 24 fps", "[{shot: one, frames: 9}]")
                .replace(
                        "shots:\n", "shots:\n  two: {camera: {body: main, lens: macro, at: [0 mm, -900 mm, 61 mm]}}\n");
        var plan = PacePlan.read(text);
        var stage = plumeline.stage.Stage.of(plan, plan.findShot("one").orElseThrow());
        var line = plan.findShot("one").orElseThrow().wants().getFirst();
        var gauge = ((plumeline.stage.Gauge.Reading.Of<Paced>) PaceMeasures.of(line, plan, stage)).gauge();
        var laid = stage.laid(stage.startValues());
        Paced at = new Paced(stage, java.util.List.of(), laid.scene(0), laid);
        assertThat(gauge.isIdle(at)).isTrue();
        assertThat(gauge.parts(at)[0]).isPositive();
    }

    @Test
    void sharpEnough_leastIsWhatIsWanted() {
        String text = sharp("[1920 px, 1080 px]", "rate: 24 fps", "[{shot: one, frames: 48}]");
        assertThat(PacePlan.margin(text.replace("sharp_enough: wide", "sharp_enough: wide, least: 250 %")))
                .isEqualTo(-0.5, within(1e-9));
    }

    private static String beat(String film, String want, String cut) {
        return PacePlan.plan("rate: 24 fps", "", want)
                        .replace("film: {rate: 24 fps}", "film: {rate: 24 fps" + film + "}")
                + "cut: " + cut + "\n";
    }

    /// 128 bpm at 24: beats at 0, 11, 23, 34, 45 (each by itself, halves up).
    @Test
    void onBeat_isOfEachBeatsOwnFrame() {
        String cut = "[{shot: one, frames: 23}, {shot: one, frames: 22}, {shot: one, frames: 9}]";
        assertThat(PacePlan.margin(beat(", tempo: 128 bpm", "on_beat: cuts", cut)))
                .isZero();
        String off = cut.replace("frames: 22", "frames: 20");
        String text = beat(", tempo: 128 bpm", "on_beat: cuts", off);
        assertThat(PacePlan.margin(text)).isEqualTo(-2);
        assertThat(PacePlan.standing(text))
                .isEqualTo("1 of 2 cuts is off the beat; worst is that to one at frame 43, 2 frames before beat 5 at"
                        + " frame 45.");
        assertThat(PacePlan.gauge(text).listAttempts(PacePlan.paced(text)))
                .containsExactly("Make entry 2, one, 22 frames (now 20); 3, one, 7 frames (now 9): then every cut is on"
                        + " a beat.");
        assertThat(PacePlan.margin(beat(", tempo: 128 bpm", "on_beat: cuts, within: 3 frames", off)))
                .isEqualTo(1);
    }

    @Test
    void onBeat_countsFromTheFirstBeat() {
        String cut = "[{shot: one, frames: 18}, {shot: one, frames: 24}]";
        assertThat(PacePlan.margin(beat(", tempo: 120 bpm, first_beat: 0.25 s", "on_beat: cuts", cut)))
                .isZero();
        assertThat(PacePlan.margin(beat(", tempo: 120 bpm", "on_beat: cuts", cut)))
                .isEqualTo(-6);
        String alone = beat(", tempo: 120 bpm", "on_beat: cuts", "[{shot: one, frames: 18}]");
        assertThat(PacePlan.standing(alone)).isEqualTo("There is no cut.");
    }

    @Test
    void onBeat_withoutTempoOrCut_saysWhatIsMissing() {
        assertThat(PacePlan.reading(beat("", "on_beat: cuts", "[{shot: one, frames: 18}]")))
                .isInstanceOf(plumeline.stage.Gauge.Reading.Missing.class);
    }
}
