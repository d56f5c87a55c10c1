package plumeline.want;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import plumeline.plan.Plan;
import plumeline.quantity.PaperUnit;

/// Wants about the picture, each against a sum done another way.
final class PictureWantsTest {
    private static final String MACRO_900 =
            "camera: {body: main, lens: macro, at: [0 mm, -900 mm, 61 mm], aim: hero, f_number: 8}";
    private static final String CAN = "place: {hero: {thing: can, at: [0 mm, 0 mm]}}";
    private static final String FIFTY_600 = "camera: {body: main, lens: fifty, at: [0 mm, -600 mm, 59 mm], aim: ahead}";

    @Test
    void fills_isTheSizeInTheMiddlePlane() {
        // magnification = image / object; picture height 20.25 mm; tolerance 2 % of 70 %.
        double share = 100 * 122 * Plain.image(100, 900) / 900 / 20.25;
        double margin = Wanted.margin(MACRO_900, CAN, "wants: [{fills: hero, height: 75 %}]");
        assertThat(margin).isEqualTo(1.5 - Math.abs(share - 75), within(1e-9));
        assertThat(margin).isEqualTo(1.5 - (75.30864197530863 - 75), within(1e-9));
    }

    @Test
    void fills_width_countsTheWidth() {
        double share = 100 * 66 * Plain.image(100, 900) / 900 / 36;
        assertThat(Wanted.margin(MACRO_900, CAN, "wants: [{fills: hero, width: 20 %, within: 30 %}]"))
                .isEqualTo(6 - (share - 20), within(1e-9));
    }

    @Test
    void fills_offTheFocus_keepsTheScaleOfTheFocus() {
        String place = "place: {hero: {thing: can, at: [0 mm, 0 mm]}, back: {thing: can, at: [80 mm, 150 mm]}}";
        double share = 100 * 122 * Plain.image(100, 900) / 1050 / 20.25;
        assertThat(Wanted.margin(MACRO_900, place, "wants: [{fills: back, height: 60 %, within: 20 %}]"))
                .isEqualTo(12 - (share - 60), within(1e-9));
    }

    /// Airy disc 2.44 lambda N at 550 nm: N = 32 (1 + 0.125), 36 mm over 3840 px; 48.3 um or 5.2 px.
    @Test
    void sharp_stoppedDownFar_saysThatDiffractionBlursMore() {
        String want = "wants: [{sharp: hero}]";
        assertThat(Wanted.caution(MACRO_900.replace("f_number: 8", "f_number: 32"), CAN, want))
                .contains("At f/32 diffraction alone blurs to 5.2 px, more than the 2 px asked for, "
                        + "and that isn't counted here.");
        assertThat(Wanted.caution(MACRO_900, CAN, want)).isEmpty();
    }

    @Test
    void fills_orMore_isContentWithMore() {
        double share = 100 * 122 * Plain.image(100, 900) / 900 / 20.25;
        assertThat(Wanted.margin(MACRO_900, CAN, "wants: [{fills: hero, height: 50 %, or: more}]"))
                .isEqualTo(share - 50 + 1, within(1e-9));
        assertThat(Wanted.margin(MACRO_900, CAN, "wants: [{fills: hero, height: 50 %}]"))
                .isNegative();
        assertThat(Wanted.margin(MACRO_900, CAN, "wants: [{fills: hero, height: 80 %, or: more}]"))
                .isNegative();
    }

    @Test
    void fills_byOutline_countsTheNearRimsToo() {
        // From mid-height the near rims bound the outline: ±61 mm at 900 − 33 mm.
        double share = 100 * 122 / (900 - 33.0) * Plain.image(100, 900) / 20.25;
        assertThat(Wanted.margin(MACRO_900, CAN, "wants: [{fills: hero, height: 78 %, by: outline}]"))
                .isEqualTo(78 * 0.02 - Math.abs(share - 78), within(1e-9));
        double wide = 100 * 2 * Plain.halfWidth(33, 900) * Plain.image(100, 900) / 36;
        assertThat(Wanted.margin(MACRO_900, CAN, "wants: [{fills: hero, width: 23 %, by: outline}]"))
                .isEqualTo(23 * 0.02 - Math.abs(wide - 23), within(1e-9));
    }

    @Test
    void fills_ofSeveral_countsTheWorst() {
        String place = "place: {hero: {thing: can, at: [0 mm, 0 mm]}, back: {thing: can, at: [80 mm, 150 mm]}}";
        double back = 100 * 122 * Plain.image(100, 900) / 1050 / 20.25;
        assertThat(Wanted.margin(MACRO_900, place, "wants: [{fills: [hero, back], height: 70 %, within: 10 %}]"))
                .isEqualTo(7 - (70 - back), within(1e-9));
    }

    @Test
    void fills_heldUpright_isOfThePictureAsHeld() {
        double share = 100 * 122 * Plain.image(100, 900) / 900 / 36;
        String upright = MACRO_900.replace("f_number: 8}", "held: upright}");
        assertThat(Wanted.margin(upright, CAN, "wants: [{fills: hero, height: 42 %}]"))
                .isEqualTo(0.84 - Math.abs(share - 42), within(1e-9));
    }

    @Test
    void sharp_isToTheNearerLimitOfABlurOfTwoPixels() {
        double disc = 2 * 36.0 / 3840;
        double near = Plain.depthOfBlur(100, 8, 890, disc, 400);
        double far = Plain.depthOfBlur(100, 8, 890, disc, 4000);
        // Nearest surface at 900 − 33; the outline's touching points at 900 − 33²/900.
        double nearMargin = 900 - 33 - near;
        double farMargin = far - (900 - 33 * 33 / 900.0);
        assertThat(nearMargin).isLessThan(farMargin);
        String camera = MACRO_900.replace("f_number: 8", "f_number: 8, focus: 890 mm");
        assertThat(Wanted.margin(camera, CAN, "wants: [{sharp: hero}]")).isEqualTo(nearMargin, within(1e-5));
        String farther = MACRO_900.replace("f_number: 8", "f_number: 8, focus: 860 mm");
        double limit = Plain.depthOfBlur(100, 8, 860, disc, 4000);
        assertThat(Wanted.margin(farther, CAN, "wants: [{sharp: hero}]"))
                .isEqualTo(limit - (900 - 33 * 33 / 900.0), within(1e-5));
    }

    @Test
    void sharp_atAxis_takesTheAxisOnly_andItsOwnBlur() {
        double disc = 3 * 36.0 / 3840;
        double far = Plain.depthOfBlur(100, 8, 890, disc, 4000);
        String camera = MACRO_900.replace("f_number: 8", "f_number: 8, focus: 890 mm");
        assertThat(Wanted.margin(camera, CAN, "wants: [{sharp: hero, at: axis, sharp_to: 3 px}]"))
                .isEqualTo(far - 900, within(1e-5));
    }

    @Test
    void sharp_pastTheHyperfocal_hasNoFarLimit() {
        String camera = "camera: {body: main, lens: fifty, at: [0 mm, -4000 mm, 61 mm], aim: hero, f_number: 22}";
        double near = Plain.depthOfBlur(50, 22, 4000, 5 * 36.0 / 3840, 300);
        assertThat(Wanted.margin(camera, CAN, "wants: [{sharp: hero, sharp_to: 5 px}]"))
                .isEqualTo(4000 - 33 - near, within(1e-3));
    }

    @Test
    void hidden_inFile_isTheDifferenceOfTheTangents() {
        String place = "place: {hero: {thing: tall, at: [0 mm, 0 mm]}, back: {thing: tall, at: [0 mm, 100 mm]}}";
        double margin = 700 * (Plain.halfWidth(21, 600) - Plain.halfWidth(21, 700));
        assertThat(Wanted.margin(FIFTY_600, place, "wants: [{hidden: back, behind: hero}]"))
                .isEqualTo(margin, within(1e-6));
    }

    @Test
    void hidden_aside_losesTheShift_andOutsideItIsTheProtrusion() {
        double inside = hiddenAt(2);
        double hider = Plain.halfWidth(21, 600);
        assertThat(inside).isEqualTo(700 * (hider - edge(2)), within(1e-6));
        assertThat(hiddenAt(9)).isEqualTo(700 * (hider - edge(9)), within(1e-6)).isNegative();
    }

    /// The right edge in the picture of a cylinder of radius 21 mm, some way aside at a depth of 700 mm.
    private static double edge(double aside) {
        return Math.tan(Math.atan2(aside, 700) + Math.asin(21 / Math.hypot(aside, 700)));
    }

    private static double hiddenAt(int aside) {
        return Wanted.margin(
                FIFTY_600,
                "place: {hero: {thing: tall, at: [0 mm, 0 mm]}, back: {thing: tall, at: [" + aside + " mm, 100 mm]}}",
                "wants: [{hidden: back, behind: hero}]");
    }

    @Test
    void hidden_seenFromAboveTheLid_sticksOutAtTheTop() {
        String camera = "camera: {body: main, lens: fifty, at: [0 mm, -600 mm, 160 mm], aim: ahead}";
        String place = "place: {hero: {thing: tall, at: [0 mm, 0 mm]}, back: {thing: tall, at: [0 mm, 100 mm]}}";
        // From above the far rims bound both lids: 42 mm under the lens point, at 621 and 721 mm.
        double protrusion = 700 * (42 / 621.0 - 42 / 721.0);
        assertThat(Wanted.margin(camera, place, "wants: [{hidden: back, behind: hero}]"))
                .isEqualTo(-protrusion, within(0.02));
    }

    @Test
    void hidden_behindTwo_isBehindTheirUnion() {
        String boxes = "place: {left: {thing: box, at: [-29 mm, 0 mm]}, right: {thing: box, at: [29 mm, 0 mm]},"
                + " back: {thing: box, at: [0 mm, 100 mm]}}";
        String camera = "camera: {body: main, lens: fifty, at: [0 mm, -600 mm, 60 mm], aim: ahead}";
        // Fronts at depths of 590 and 690 mm; the tops, 40 mm over the lens point, come nearest.
        assertThat(Wanted.margin(camera, boxes, "wants: [{hidden: back, behind: [left, right]}]"))
                .isEqualTo(700 * (40 / 590.0 - 40 / 690.0), within(1e-6));
        // The left one reaches 1 mm past the middle, the hidden one 30 mm.
        assertThat(Wanted.margin(camera, boxes, "wants: [{hidden: back, behind: left}]"))
                .isEqualTo(-700 * (30 / 690.0 - 1 / 590.0), within(1e-6));
    }

    @Test
    void hidden_behindAClearBody_isUnknown() {
        Plan plan = Wanted.plan(
                FIFTY_600,
                "place: {hero: {thing: glass, at: [0 mm, 0 mm]}, back: {thing: tall, at: [0 mm, 100 mm]}}",
                "wants: [{hidden: back, behind: hero}]");
        assertThat(Wanted.want(plan).findUnknown().orElseThrow()).startsWith("Clear glass: what stands behind hero");
    }

    @Test
    void shown_isTheGapBetweenTangents() {
        String place = "place: {hero: {thing: tall, at: [-40 mm, 0 mm]}, back: {thing: tall, at: [60 mm, 120 mm]}}";
        double left = Math.tan(Math.atan2(-40, 600) + Math.asin(21 / Math.hypot(40, 600)));
        double right = Math.tan(Math.atan2(60, 720) - Math.asin(21 / Math.hypot(60, 720)));
        // The focus is the middle nearest the lens point, 600 mm deep.
        double gap = 100 * (right - left) * Plain.image(50, 600) / 36;
        assertThat(Wanted.margin(FIFTY_600, place, "wants: [{shown: [hero, back], gap: 2 %}]"))
                .isEqualTo(gap - 2, within(1e-9));
        assertThat(Wanted.margin(FIFTY_600, place, "wants: [{shown: [back, hero]}]"))
                .isEqualTo(gap, within(1e-9));
    }

    @Test
    void shown_overlapping_isNegative() {
        String place = "place: {hero: {thing: tall, at: [0 mm, 0 mm]}, back: {thing: tall, at: [10 mm, 120 mm]}}";
        assertThat(Wanted.margin(FIFTY_600, place, "wants: [{shown: [hero, back]}]"))
                .isNegative();
    }

    @Test
    void inside_whole_isToTheNearestSide() {
        // From mid-height: half the outline is 59 mm at the near rim, 579 mm deep.
        double top = 50 - 100 * 59 / 579.0 * Plain.image(50, 600) / 20.25;
        String place = "place: {hero: {thing: tall, at: [0 mm, 0 mm]}}";
        assertThat(Wanted.margin(FIFTY_600, place, "wants: [{inside: wide}]")).isEqualTo(top, within(1e-9));
    }

    @Test
    void inside_phone_isInTheCropWithoutItsKeepOuts() {
        String camera = FIFTY_600.replace("-600", "-1200");
        double across = Plain.image(50, 1200) / 36;
        double crop = 9 / 16.0 / (16 / 9.0);
        double right = Math.tan(Math.atan2(30, 1200) + Math.asin(21 / Math.hypot(30, 1200))) * across;
        String place = "place: {hero: {thing: tall, at: [30 mm, 0 mm]}}";
        assertThat(Wanted.margin(camera, place, "wants: [{inside: phone}]"))
                .isEqualTo(100 * (crop / 2 - 0.12 * crop - right), within(1e-9));
    }

    @Test
    void inside_bottomKeepOut_countsOfTheHeight() {
        // Held upright and seen from the table's height up: the foot is 59 mm under the lens point at the near rim.
        String camera = FIFTY_600.replace("-600", "-1200").replace("aim: ahead", "aim: ahead, held: upright");
        String place = "place: {hero: {thing: tall, at: [0 mm, 0 mm]}}";
        assertThat(Wanted.margin(camera, place, "wants: [{inside: phone}]"))
                .isEqualTo(100 * (0.5 - 0.2 - 59 / 1179.0 * Plain.image(50, 1200) / 36), within(1e-9));
    }

    @Test
    void inside_crop_movesTheFrame() {
        String camera = FIFTY_600.replace("-600", "-1200");
        String place = "place: {hero: {thing: tall, at: [-100 mm, 0 mm]}}";
        double left =
                Math.tan(Math.atan2(-100, 1200) - Math.asin(21 / Math.hypot(100, 1200))) * Plain.image(50, 1200) / 36;
        double crop = 9 / 16.0 / (16 / 9.0);
        assertThat(Wanted.margin(camera, place, "crop: {phone: [-5 %, 0 %]}", "wants: [{inside: phone}]"))
                .isEqualTo(100 * (left - (-0.05 - crop / 2)), within(1e-9));
    }

    @Test
    void inside_heldUpright_keepsTheWholeWidthForThePhone() {
        String camera = FIFTY_600.replace("-600", "-1200").replace("aim: ahead", "aim: ahead, held: upright");
        String place = "place: {hero: {thing: tall, at: [90 mm, 0 mm]}}";
        double right =
                Math.tan(Math.atan2(90, 1200) + Math.asin(21 / Math.hypot(90, 1200))) * Plain.image(50, 1200) / 20.25;
        assertThat(Wanted.margin(camera, place, "wants: [{inside: phone}]"))
                .isEqualTo(100 * (0.5 - 0.12 - right), within(1e-9));
    }

    @Test
    void inside_of_countsOnlyThose() {
        String place = "place: {hero: {thing: tall, at: [0 mm, 0 mm]}, out: {thing: tall, at: [500 mm, 0 mm]}}";
        assertThat(Wanted.margin(FIFTY_600, place, "wants: [{inside: wide}]")).isNegative();
        assertThat(Wanted.margin(FIFTY_600, place, "wants: [{inside: wide, of: hero}]"))
                .isPositive();
    }

    @Test
    void inside_ofSeveralDeliveries_countsTheWorst() {
        String place = "place: {hero: {thing: tall, at: [0 mm, 0 mm]}}";
        String camera = FIFTY_600.replace("-600", "-1200");
        double phone = Wanted.margin(camera, place, "wants: [{inside: phone}]");
        double square = Wanted.margin(camera, place, "wants: [{inside: square}]");
        assertThat(Wanted.margin(camera, place, "wants: [{inside: [wide, square, phone]}]"))
                .isEqualTo(Math.min(phone, square), within(1e-12));
        assertThat(phone).isLessThan(square);
    }

    @Test
    void inside_aCropBeyondThePicture_endsWithThePicture() {
        String camera = FIFTY_600.replace("-600", "-1200");
        String place = "place: {hero: {thing: tall, at: [-330 mm, 0 mm]}}";
        double left =
                Math.tan(Math.atan2(-330, 1200) - Math.asin(21 / Math.hypot(330, 1200))) * Plain.image(50, 1200) / 36;
        // The crop would reach 5.8 % of the width over the left side.
        assertThat(Wanted.margin(camera, place, "crop: {phone: [-40 %, 0 %]}", "wants: [{inside: phone}]"))
                .isEqualTo(100 * (left + 0.5), within(1e-9));
    }

    @Test
    void inside_saysWhatOfWhichPictureToWhichSide() {
        String camera = FIFTY_600.replace("-600", "-1200");
        String place = "place: {hero: {thing: tall, at: [30 mm, 0 mm]}, far: {thing: tall, at: [500 mm, 600 mm]}}";
        // A crop 31.64 % wide less 12 % of it on the right; the tangent right of the axis is at 6.16 %.
        assertThat(Wanted.standing(PaperUnit.INCHES, camera, place, "wants: [{inside: [wide, phone], of: hero}]"))
                .contains("Inside; hero is 5.9 % of the camera picture's width from phone's right side.");
        assertThat(Wanted.standing(PaperUnit.MILLIMETRES, camera, place, "wants: [{inside: [wide, phone]}]")
                        .orElseThrow())
                .startsWith("far goes ")
                .endsWith(" % of the camera picture's width over phone's right side.");
    }

    @Test
    void fills_saysWhatFillsHowMuchAndWhetherItIsTooBig() {
        assertThat(Wanted.standing(PaperUnit.MILLIMETRES, MACRO_900, CAN, "wants: [{fills: hero, height: 70 %}]"))
                .contains("hero fills 75.3 % of the picture's height; wanted 70 % ± 1.4 %: 3.9 % too big.");
        assertThat(Wanted.standing(PaperUnit.MILLIMETRES, MACRO_900, CAN, "wants: [{fills: hero, height: 80 %}]"))
                .contains("hero fills 75.3 % of the picture's height; wanted 80 % ± 1.6 %: 3.1 % too small.");
        assertThat(Wanted.standing(PaperUnit.MILLIMETRES, MACRO_900, CAN, "wants: [{fills: hero, height: 75 %}]"))
                .contains("hero fills 75.3 % of the picture's height; wanted 75 % ± 1.5 %: 1.2 % to spare.");
        assertThat(Wanted.standing(
                        PaperUnit.MILLIMETRES, MACRO_900, CAN, "wants: [{fills: hero, width: 20 %, or: more}]"))
                .contains("hero fills 22.9 % of the picture's width; wanted 20 % or more, less 0.4 %: 3.3 % to spare.");
    }

    @Test
    void whatIsntBeforeTheLens_isSaidSo_insteadOfAFigure() {
        String place = "place: {hero: {thing: can, at: [0 mm, 0 mm]}, late: {thing: can, at: [0 mm, -900 mm]}}";
        for (String want : List.of(
                "fills: late, height: 9 %",
                "sharp: late", "shown: [hero, late]", "inside: wide", "hidden: late, behind: hero")) {
            assertThat(Wanted.standing(PaperUnit.MILLIMETRES, MACRO_900, place, "wants: [{" + want + "}]"))
                    .as(want)
                    .contains("late isn't wholly in front of the lens.");
        }
    }

    @Test
    void when_beyondTheShot_isUnknown() {
        String place = "place: {hero: {thing: tall, at: [0 mm, 0 mm]}}";
        String wants = "wants: [{inside: wide, when: 48 frames}]";
        assertThat(Wanted.never(FIFTY_600, place, "frames: 48", wants))
                .contains("No such frame: the shot has 48, counted from 0.");
        assertThat(Wanted.never(FIFTY_600, place, "frames: 49", wants)).isEmpty();
        String time = wants.replace("48 frames", "2.1 s");
        assertThat(Wanted.never(FIFTY_600, place, "frames: 48", time))
                .contains("No such time: the shot is over after 2 s on the table.");
        assertThat(Wanted.never(FIFTY_600, place, "frames: 48", time.replace("2.1", "1.9")))
                .isEmpty();
    }

    @Test
    void offPicture_ofALampFromBeforeTheLensToBehindIt_countsWhatIsBefore() {
        String place = "place: {hero: {thing: tall, at: [0 mm, 0 mm]}}";
        // A tube along y, 600 mm long, 300 mm aside, from 250 mm before the lens point to 350 mm behind it.
        String tube = "lights: {key: {light: tubes, at: [300 mm, -650 mm, 59 mm], turn: 90 deg}}";
        double slope = (300 - 15) / 250.0;
        assertThat(Wanted.margin(FIFTY_600, place, tube, "wants: [{off_picture: key}]"))
                .isEqualTo(100 * (slope * Plain.image(50, 600) / 36 - 0.5), within(1e-6));
        // Right over the lens point it is in the picture, before it and behind.
        String over = tube.replace("300 mm, -650 mm, 59 mm", "0 mm, -650 mm, 70 mm");
        assertThat(Wanted.margin(FIFTY_600, place, over, "wants: [{off_picture: key}]"))
                .isNegative();
    }

    @Test
    void offPicture_isTheWayPastTheSideItClearsBest() {
        String place = "place: {hero: {thing: tall, at: [0 mm, 0 mm]}, out: {thing: tall, at: [400 mm, 0 mm]}}";
        double left = Math.tan(Math.atan2(400, 600) - Math.asin(21 / Math.hypot(400, 600)));
        double margin = 100 * (left * Plain.image(50, 600) / 36 - 0.5);
        assertThat(Wanted.margin(FIFTY_600, place, "wants: [{off_picture: out}]"))
                .isEqualTo(margin, within(1e-9));
        assertThat(Wanted.margin(FIFTY_600, place, "wants: [{off_picture: hero}]"))
                .isNegative();
    }

    @Test
    void offPicture_ofALamp_countsItsHousing_andBehindTheCameraIsOff() {
        String place = "place: {hero: {thing: tall, at: [0 mm, 0 mm]}}";
        String aside = "lights: {key: {light: strip, at: [200 mm, 0 mm, 700 mm], turn: -90 deg}}";
        String behind = "lights: {key: {light: strip, at: [0 mm, -2000 mm, 700 mm]}}";
        assertThat(Wanted.margin(FIFTY_600, place, aside, "wants: [{off_picture: key}]"))
                .isNegative();
        assertThat(Wanted.margin(FIFTY_600, place, behind, "wants: [{off_picture: key}]"))
                .isPositive();
        // Aimed at the hero it leans over the picture's corner, and out of it.
        String leaning = "lights: {key: {light: strip, at: [300 mm, 200 mm, 700 mm]}}";
        assertThat(Wanted.margin(FIFTY_600, place, leaning, "wants: [{off_picture: key}]"))
                .isPositive();
        // Faced down, it lies above the picture.
        String down = "lights: {key: {light: strip, at: [200 mm, 0 mm, 700 mm], tilt: -90 deg}}";
        assertThat(Wanted.margin(FIFTY_600, place, down, "wants: [{off_picture: key}]"))
                .isPositive();
    }

    @Test
    void sameSize_comparesShares() {
        double share = 122 * Plain.image(100, 900) / 900 / 20.25;
        Plan plan = Wanted.plan(MACRO_900, CAN, "wants: [{same_size: hero, as: one}]");
        Want want = Wanted.want(plan, (_, _, _) -> Optional.of(share / 1.004));
        assertThat(Wanted.least(plan, want, List.of(0.0))).isEqualTo(1 - 0.4, within(1e-9));
        Plan wide = Wanted.plan(MACRO_900, CAN, "wants: [{same_size: hero, as: one, within: 3 %}]");
        Want smaller = Wanted.want(wide, (_, _, _) -> Optional.of(share / 0.98));
        assertThat(Wanted.least(wide, smaller, List.of(0.0))).isEqualTo(3 - 2, within(1e-9));
        assertThat(Wanted.want(plan).findUnknown()).isPresent();
    }

    @Test
    void sameSize_ofTheSameProductUnderAnotherName_findsIt() {
        String two =
                "\n  two:\n    " + MACRO_900.replace("aim: hero", "aim: star") + "\n    " + CAN.replace("hero", "star");
        Plan plan = Wanted.plan(MACRO_900, CAN, "wants: [{same_size: hero, as: two}]" + two);
        Want want = Wanted.want(plan, (_, thing, _) -> thing.equals("star") ? Optional.of(0.75) : Optional.empty());
        assertThat(want.findUnknown()).isEmpty();
        assertThat(want.findStanding(Wanted.start(plan), PaperUnit.MILLIMETRES))
                .contains("hero fills 75.3 % of the picture's height, 75 % in two: 0.4 % larger; 1 % is allowed.");
    }

    @Test
    void when_start_end_aFrameAndTheWhole_countTheirInstants() {
        String place = "place: {hero: {thing: tall, at: [0 mm, 0 mm]}, back: {thing: tall, at: [0 mm, 100 mm]}}";
        String[] moving = {
            FIFTY_600, place, "moves: {slide: {machine: slider, by: [48 mm, 0 mm], in: 2 s}}", "frames: 49"
        };
        double start = during(moving, "when: start");
        double end = during(moving, "when: end");
        double quarter = during(moving, "when: 12 frames");
        assertThat(start).isEqualTo(700 * (Plain.halfWidth(21, 600) - Plain.halfWidth(21, 700)), within(1e-6));
        // At the end the camera stands 48 mm aside, a quarter of the way 12 mm.
        assertThat(end).isEqualTo(asideBy(48), within(1e-6));
        assertThat(quarter).isEqualTo(asideBy(12), within(1e-6));
        assertThat(during(moving, "when: whole")).isEqualTo(end, within(1e-12));
    }

    private static double during(String[] moving, String when) {
        return Wanted.margin(
                List.of(0.0, 24.0, 48.0), Wanted.with(moving, "wants: [{hidden: back, behind: hero, " + when + "}]"));
    }

    /// Two in file seen from aside: what is left between the tangents on the worse side, at 700 mm.
    private static double asideBy(double x) {
        double front = Math.atan2(-x, 600) + Math.asin(21 / Math.hypot(x, 600));
        double back = Math.atan2(-x, 700) + Math.asin(21 / Math.hypot(x, 700));
        return 700 * (Math.tan(front) - Math.tan(back));
    }
}
