package plumeline.pace;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import plumeline.stage.Gauge;

class PaceMeasuresTest {
    private static final String SLIDE = "moves: {slide: {machine: slider, by: [50 mm, 0 mm], in: 1 s}}";

    private static String missing(String text) {
        return ((Gauge.Reading.Missing<Paced>) PacePlan.reading(text)).reason();
    }

    @Test
    void standing_saysWhatIsMeasuredAndWhatIsAllowed() {
        assertThat(PacePlan.standing(PacePlan.plan("rate: 24 fps", SLIDE, "smear: hero, under: 9 px, when: start")))
                .isEqualTo("hero smears over 12.3 px while a frame is exposed for 1/48 s; 9 px is allowed.");
        assertThat(PacePlan.standing(PacePlan.plan(
                        "rate: 24 fps",
                        SLIDE + "\n    passes: {one: {}, other: {}}",
                        "registers: [one, other], within: 2 px, when: start")))
                .isEqualTo("hero may lie 13.5 px apart: 12.3 px by half a captured frame's travel, as camera and move"
                        + " don't start together, 1.2 px by what the machines repeat; 2 px is allowed.");
        assertThat(PacePlan.standing(PacePlan.plan("rate: 24 fps", SLIDE, "reachable: slide")))
                .isEqualTo("slide asks of slider: speed 50 mm/s of 80 mm/s, way 62.5 mm of 600.0 mm.");
        assertThat(PacePlan.standing(PacePlan.plan("rate: 48 fps", "speed: 20 %", "whole_frames: shot")))
                .isEqualTo("Its slowest speed is 20 %, which needs 120 fps; it is captured at 48 fps.");
    }

    @Test
    void whatIsMissing_isSaid() {
        assertThat(missing(PacePlan.plan(
                        "rate: 24 fps", "moves: {slide: {by: [50 mm, 0 mm], in: 1 s}}", "reachable: slide")))
                .startsWith("Not known: what makes slide.");
        assertThat(missing(PacePlan.plan("rate: 24 fps", SLIDE, "smear: bean, under: 9 px")))
                .startsWith("Nothing lets bean go");
        String unmeasured = PacePlan.plan(
                "rate: 24 fps",
                "moves: {slide: {by: [50 mm, 0 mm], in: 1 s}}\n    passes: {one: {}, other: {}}",
                "registers: [one, other], within: 2 px");
        assertThat(PacePlan.gauge(unmeasured).findUnknown(PacePlan.paced(unmeasured)))
                .hasValueSatisfying(reason -> assertThat(reason).startsWith("Not known: how well slide repeats."));
    }

    /// Passes that the plan itself has 3 mm apart can't lie on each other.
    @Test
    void passes_thatArePlacedApart_countThatToo() {
        String text = PacePlan.plan(
                "rate: 24 fps",
                "passes: {one: {}, other: {place.hero.at.x: 3 mm}}",
                "registers: [one, other], within: 50 px");
        assertThat(50 - PacePlan.margin(text)).isCloseTo(3 * PacePlan.PIXELS_PER_MM, within(0.01));
        assertThat(PacePlan.standing(text)).contains("as the passes are written");
    }

    /// 0.02 deg of a pan in pixels: f(1 + m) = 111.1 mm by 9.375 µm a pixel.
    @Test
    void aPansRepeats_countByAngle() {
        String text = PacePlan.plan(
                "rate: 24 fps",
                "moves: {pan: {machine: head, by: 10 deg, in: 10 s, triggered: yes}}\n    passes: {one: {}, other: {}}",
                "registers: [one, other], within: 50 px, when: start");
        assertThat(50 - PacePlan.margin(text)).isCloseTo(Math.toRadians(0.02) * 1000 / 9 / 0.009375, within(0.01));
    }

    /// Half a second after its ramp a machine that swung over 0.2 mm at 5 Hz, damped 3 %, still swings over
    /// 0.2·e^(−0.471).
    @Test
    void whatSways_countsLessTheLongerAgo() {
        String text = PacePlan.plan(
                        "rate: 24 fps",
                        "moves: {slide: {machine: slider, by: [60 mm, 0 mm], in: 2 s, profile: trapezoid,"
                                + " triggered: yes}}\n"
                                + "    passes: {one: {}, other: {}}\n    frames: 72",
                        "registers: [one, other], within: 50 px, when: 2.5 s")
                .replace(
                        "repeats: 0.1 mm}\n    plate",
                        "repeats: 0 mm," + " sways: {by: 0.2 mm, rate: 5 Hz, damping: 3 %}}\n    plate");
        double left = 0.2 * Math.exp(-2 * Math.PI * 5 * 0.03 * 0.5);
        assertThat(50 - PacePlan.margin(text)).isCloseTo(left * PacePlan.PIXELS_PER_MM, within(0.02));
    }

    @Test
    void aHungThingThatIsCarried_isUnknown() {
        String text = PacePlan.plan(
                        "rate: 24 fps",
                        SLIDE.replace("in: 1 s", "in: 1 s, carries: hero"),
                        "holds_still: hero, under: 1 px")
                .replace("turn: 0 deg", "lines: 2");
        assertThat(PacePlan.gauge(text).findUnknown(PacePlan.paced(text))).isPresent();
        String still = text.replace(", carries: hero", "");
        assertThat(PacePlan.gauge(still).findUnknown(PacePlan.paced(still))).isEmpty();
        assertThat(PacePlan.gauge(still).findCaution(PacePlan.paced(still)))
                .hasValueSatisfying(caution -> assertThat(caution).startsWith("It hangs: wait"));
    }

    /// A pan that keeps a can in the middle beside a slide of v at distance d turns v/d at first.
    @Test
    void aPanThatKeeps_isAskedOfItsHead() {
        String text = PacePlan.plan(
                "rate: 24 fps",
                "moves: {slide: {machine: slider, by: [80 mm, 0 mm], in: 1 s, profile: even},"
                        + " pan: {machine: head, keeps: hero}}",
                "reachable: pan");
        double degrees = Math.toDegrees(0.08);
        assertThat(PacePlan.gauge(text).parts(PacePlan.paced(text))[0])
                .isCloseTo(100 * (1 - degrees / 20), within(0.1));
    }

    @Test
    void within_aMachinesOwnSpread_isTight() {
        String text = PacePlan.plan("rate: 24 fps", SLIDE.replace("50 mm", "78 mm"), "reachable: slide")
                .replace("speed: 80 mm/s,", "speed: 80 mm/s ± 5 mm/s,");
        assertThat(PacePlan.gauge(text).findTight(PacePlan.paced(text)))
                .hasValueSatisfying(words -> assertThat(words).startsWith("Within the ± of its speed slider"));
    }

    /// A camera that turns away, or slides past, has the can behind it: that fails by far.
    @Test
    void whatComesBehindTheLens_failsByFar() {
        for (String move :
                new String[] {"machine: head, axis: pan, by: 170 deg", "machine: slider, by: [0 mm, 3000 mm]"}) {
            for (String want : new String[] {
                "smear: hero, under: 9 px, when: 23 frames",
                "judder_free: hero, when: 22 frames",
                "holds_still: hero, under: 9 px, when: end"
            }) {
                String text = PacePlan.plan("rate: 24 fps", "moves: {one: {" + move + ", in: 1 s}}", want);
                assertThat(PacePlan.margin(text)).as(move + want).isLessThan(-20);
            }
        }
    }

    /// A pan beside an even slide runs up and out with it: what the slide's sudden end would ask counts for nothing.
    /// 150 mm in 3 s seen from 700 mm turn at most 50/700 rad a second.
    @Test
    void aPanBesideAnEvenSlide_isNotAskedToStopAtOnce() {
        for (int frames : new int[] {72, 73, 80, 96}) {
            String text = PacePlan.plan(
                            "rate: 24 fps",
                            "moves: {slide: {machine: slider, by: [150 mm, 0 mm], in: 3 s, profile: even},"
                                    + " pan: {machine: head, keeps: hero}}\n    frames: " + frames,
                            "reachable: pan")
                    .replace("[0 mm, -1000 mm, 61 mm]", "[-75 mm, -700 mm, 61 mm]");
            assertThat(PacePlan.margin(text)).isCloseTo(100 * (1 - Math.toDegrees(50.0 / 700) / 20), within(0.3));
        }
    }

    /// Passes are compared once, in the first that is named, or in the one that the want names.
    @Test
    void passes_areComparedInThePassThatIsNamed() {
        String text = PacePlan.plan(
                "rate: 24 fps", SLIDE + "\n    passes: {one: {}, other: {}}", "registers: [one, other], within: 2 px");
        var line = PacePlan.read(text).shots().getFirst().wants().getFirst();
        assertThat(PaceMeasures.isJudgedIn(line, "one")).isTrue();
        assertThat(PaceMeasures.isJudgedIn(line, "other")).isFalse();
        var named = PacePlan.read(text.replace("within: 2 px", "within: 2 px, pass: other"))
                .shots()
                .getFirst()
                .wants()
                .getFirst();
        assertThat(PaceMeasures.isJudgedIn(named, "other")).isTrue();
        assertThat(PaceMeasures.isJudgedIn(named, "one")).isFalse();
    }

    @Test
    void aMoveWithoutATime_leavesTheMeasureUnknown() {
        for (String want : new String[] {"smear: hero, under: 9 px", "registers: [one, other], within: 2 px"}) {
            String text = PacePlan.plan(
                    "rate: 24 fps", SLIDE.replace(", in: 1 s", "") + "\n    passes: {one: {}, other: {}}", want);
            assertThat(PacePlan.gauge(text).findUnknown(PacePlan.paced(text)))
                    .contains("Not known: in which time slide goes. Write `in`, or `keys`.");
        }
    }

    /// 100 % to nothing and back: near nothing no rate is enough.
    @Test
    void aSpeedThroughNothing_isTight_aHoldIsNot() {
        String through = PacePlan.plan(
                "rate: 24 fps",
                "speed: [[0 frames, 100 %], [24 frames, 0 %], [48 frames, 100 %]]\n    frames: 48",
                "whole_frames: shot");
        assertThat(PacePlan.margin(through)).isZero();
        assertThat(PacePlan.gauge(through).findTight(PacePlan.paced(through)))
                .contains("Where its speed comes to nothing 24 frames show the same as the one before.");
        String held = PacePlan.plan(
                "rate: 24 fps",
                "speed: [[0 frames, 100 %], [24 frames, 100 %], [25 frames, 0 %], [48 frames, 0 %]]\n    frames: 48",
                "whole_frames: shot");
        assertThat(PacePlan.gauge(held).findTight(PacePlan.paced(held))).isEmpty();
    }

    /// 96 mm in 48 frames are 2 mm a frame, 23.7 px: for 10 px it takes 114 frames.
    @Test
    void judder_saysHowManyFramesItsWayTakes() {
        String text = PacePlan.plan(
                "rate: 24 fps",
                "moves: {slide: {by: [96 mm, 0 mm], in: 2 s}}\n    frames: 48",
                "judder_free: hero, under: 10 px, when: start");
        assertThat(PacePlan.gauge(text).listAttempts(PacePlan.paced(text)))
                .containsExactly("Give its way 114 frames of the film instead of 48, or let it go less far.");
    }

    /// The picture is 36/111.1 wide: a can 300 mm aside at a metre is out of it by more than its size.
    @Test
    void smearOutsideThePicture_isSaid() {
        String text = PacePlan.plan("rate: 24 fps", SLIDE, "smear: hero, under: 9 px, when: start");
        assertThat(PacePlan.gauge(text).findCaution(PacePlan.paced(text))).isEmpty();
        String aside = text.replace("at: [0 mm, 0 mm]", "at: [300 mm, 0 mm]");
        assertThat(PacePlan.gauge(aside).findCaution(PacePlan.paced(aside)))
                .contains("hero is outside the picture then: say with when which instant counts.");
    }

    /// A machine of which only some limits are known is judged by those.
    @Test
    void aLimitThatIsNotKnown_isLeftOut() {
        for (String profile : new String[] {"trapezoid", "smooth", "s-curve", "even"}) {
            String text = PacePlan.plan(
                            "rate: 24 fps",
                            SLIDE.replace("in: 1 s", "in: 1 s, profile: " + profile),
                            "reachable: slide")
                    .replace("speed: 80 mm/s, acceleration: 200 mm/s2,", "speed: 100 mm/s,");
            assertThat(PacePlan.standing(text))
                    .startsWith("slide asks of slider: speed ")
                    .doesNotContain("acceleration");
        }
    }

    /// A pan that keeps two things one behind the other turns by the nearer's edge until the farther's is outside:
    /// there its rate jumps, and that is no acceleration.
    @Test
    void aPanThatKeepsSeveral_saysWhereItsRateJumps() {
        String text = PacePlan.plan(
                        "rate: 24 fps",
                        "moves: {slide: {machine: slider, by: [-500 mm, 0 mm], in: 6.6 s, profile: trapezoid},"
                                + " pan: {machine: head, keeps: [hero, back]}}",
                        "reachable: pan")
                .replace("place: {", "place: {back: {thing: can, at: [0 mm, 400 mm]}, ");
        assertThat(PacePlan.gauge(text).findCaution(PacePlan.paced(text)))
                .hasValueSatisfying(words -> assertThat(words).startsWith("Its turn rate jumps by "));
        assertThat(PacePlan.margin(text)).isGreaterThan(50);
    }
}
