package plumeline.want;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import plumeline.tidy.Outside;

/// Margins against figures that aren't ours.
final class WantsOutsideTest {
    private static final String DRY = "place: {bottle: {thing: flacon, at: [0 mm, 0 mm, 80 mm], lines: 2}}";

    @Test
    @Outside(
            source = "brief A as a crew would hand it over, shot A2: 1071 mm dry, 1104 mm through 8 mm glass and"
                    + " 120 mm water",
            place = "Expected findings",
            kind = "worked example",
            printedDigits = 4)
    void briefA_aBottleInTheTankFillsSixtyPercentFrom1104() {
        String camera = "camera: {body: main, lens: macro, at: [0 mm, -1071 mm, 139 mm], aim: bottle}";
        String wants = "wants: [{fills: bottle, height: 60 %, within: 0.1 %}]";
        assertThat(Wanted.margin(camera, DRY, wants)).isPositive();
        String tank = "tank: {tank: glass, at: [0 mm, 30 mm], water: 260 mm}";
        assertThat(Wanted.margin(camera.replace("1071", "1104"), tank, DRY, wants))
                .isPositive();
        assertThat(Wanted.margin(camera.replace("1071", "1102"), tank, DRY, wants))
                .isNegative();
        assertThat(Wanted.margin(camera.replace("1071", "1106"), tank, DRY, wants))
                .isNegative();
    }

    @Test
    @Outside(
            source = "brief B as a crew would hand it over, shot B2: tin of 96 mm at 30 % of an upright frame"
                    + " from 989 mm",
            place = "Expected findings",
            kind = "worked example",
            printedDigits = 3)
    void briefB_aTinAtThirtyPercentStandsAt989() {
        // A can of 122 mm at that share, and the brief's tin of 96 mm by the same rule, f (1 + 1/m).
        double magnification = 0.30 * 36 / 122;
        double distance = 100 * (1 + 1 / magnification);
        String camera =
                "camera: {body: main, lens: macro, at: [0 mm, -" + distance + " mm, 61 mm], aim: hero, held: upright}";
        String place = "place: {hero: {thing: can, at: [0 mm, 0 mm]}}";
        assertThat(Wanted.margin(camera, place, "wants: [{fills: hero, height: 30 %}]"))
                .isEqualTo(0.6, within(1e-6));
        assertThat(100 * (1 + 96 / (0.30 * 36))).isEqualTo(989, within(0.5));
    }

    @Test
    @Outside(
            source = "table of the job's questions, framing: 122.2 mm at 70 % of 20.25 mm through 100 mm from 962.1 mm,"
                    + " sharp from 949.8 to 974.7 mm at f/8 to 2 px of 3840 on 36 mm",
            place = "framing in full",
            kind = "worked example",
            printedDigits = 4)
    void framing_sharpLimits() {
        String camera = "camera: {body: main, lens: macro, at: [0 mm, -962.1 mm, 61 mm], aim: hero, f_number: 8}";
        String place = "place: {hero: {thing: can, at: [0 mm, 0 mm]}}";
        double axis = Wanted.margin(camera, place, "wants: [{sharp: hero, at: axis}]");
        assertThat(axis).isEqualTo(962.1 - 949.8, within(0.1));
        String nearer =
                camera.replace("f_number: 8", "f_number: 8, focus: 962.1 mm").replace("-962.1 mm", "-974.7 mm");
        assertThat(Wanted.margin(nearer, place, "wants: [{sharp: hero, at: axis}]"))
                .isEqualTo(0, within(0.1));
    }
}
