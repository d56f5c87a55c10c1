package plumeline.want;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import plumeline.plan.Plan;

/// Wants about a picture that a tank stands in: judged where the sight lines are computed, unknown elsewhere.
final class TankWantsTest {
    private static final String TANK = "tank: {tank: glass, at: [0 mm, 30 mm], water: 260 mm}";
    private static final String HUNG = "place: {hero: {thing: tall, at: [0 mm, 0 mm, 80 mm], lines: 2},"
            + " back: {thing: tall, at: [0 mm, 100 mm, 80 mm], lines: 2}}";
    private static final String LEVEL = "camera: {body: main, lens: macro, at: [0 mm, -1000 mm, 139 mm], aim: hero}";
    private static final String ABOVE = LEVEL.replace("-1000 mm, 139 mm", "-220 mm, 620 mm");
    private static final List<String> WANTS = List.of(
            "fills: hero, height: 60 %",
            "fills: hero, height: 60 %, by: outline",
            "sharp: hero",
            "hidden: back, behind: hero",
            "shown: [hero, back]",
            "inside: wide",
            "off_picture: hero",
            "same_size: hero, as: one",
            "reaches: camera");

    private static Want want(Plan plan) {
        return Wanted.want(plan, (_, _, _) -> java.util.Optional.of(0.5));
    }

    private static java.util.Optional<String> unknown(String camera, String want) {
        Plan plan = Wanted.plan(camera, TANK, HUNG, "wants: [{" + want + "}]");
        return want(plan).findUnknown(Wanted.start(plan));
    }

    @Test
    void everyPictureWant_throughTheFlatWall_isJudged() {
        for (String want : WANTS) {
            assertThat(unknown(LEVEL, want)).as(want).isEmpty();
        }
    }

    @Test
    void everyPictureWant_throughTheWatersSurface_isUnknown() {
        for (String want : WANTS) {
            assertThat(unknown(ABOVE, want).orElse("judged"))
                    .as(want)
                    .startsWith("Not computed: the camera looks through the water's surface at hero");
        }
        assertThat(unknown(ABOVE, "clear: all")).isEmpty();
    }

    @Test
    void throughTheSideWall_orOverTheRim_isUnknown() {
        String corner = LEVEL.replace("0 mm, -1000 mm", "-500 mm, -500 mm");
        String left = HUNG.replace("0 mm, 0 mm, 80 mm", "-170 mm, 100 mm, 80 mm")
                .replace("at: [0 mm, 100", "at: [150 mm, 100");
        assertThat(Wanted.unknown(corner, TANK, left, "wants: [{inside: wide, of: hero}]"))
                .contains("Not computed: the camera sees hero over the tank's rim or through another wall than the one"
                        + " that faces it.");
        String inTheAir = "place: {hero: {thing: tall, at: [0 mm, 0 mm, 300 mm]}}";
        assertThat(Wanted.unknown(LEVEL.replace("139 mm", "700 mm"), TANK, inTheAir, "wants: [{inside: wide}]"))
                .isPresent();
    }

    @Test
    void cutByTheWaterLine_isUnknown() {
        String floats = "place: {hero: {thing: tall, at: [0 mm, 0 mm, 200 mm]}}";
        assertThat(Wanted.unknown(LEVEL, TANK, floats, "wants: [{fills: hero, height: 60 %}]"))
                .contains("Not computed: the water line cuts hero, and the picture breaks there.");
    }

    @Test
    void aThingBesideTheTank_isSeenAsIfThereWereNone() {
        String place = "place: {hero: {thing: tall, at: [0 mm, -300 mm]}, other: {thing: tall, at: [320 mm, 100 mm]}}";
        String camera = LEVEL.replace("aim: hero", "aim: hero, focus: 900 mm");
        for (String want : List.of("fills: other, height: 40 %, within: 50 %", "inside: wide", "off_picture: other")) {
            String wants = "wants: [{" + want + "}]";
            assertThat(Wanted.unknown(camera, TANK, place, wants)).as(want).isEmpty();
            assertThat(Wanted.said(camera, TANK, place, wants))
                    .as(want)
                    .isEqualTo(Wanted.margin(camera, place, wants), within(1e-9));
        }
    }

    @Test
    void cover_isOnePartMore_andNoneOfTheMargin() {
        String[] lines = {LEVEL, TANK, HUNG, "wants: [{fills: hero, height: 60 %, within: 50 %}]"};
        Plan plan = Wanted.plan(lines);
        double[] parts = Wanted.want(plan).parts(Wanted.start(plan));
        assertThat(parts).hasSize(3);
        // The floor under the lower rim is 72 mm, the water over the upper one 70 mm: seen level that is nearest.
        assertThat(parts[2]).isEqualTo(70, within(1e-6));
        assertThat(Wanted.said(lines)).isEqualTo(Math.min(parts[0], parts[1]), within(1e-12));
        Plan high = Wanted.plan(ABOVE, TANK, HUNG, lines[3]);
        assertThat(Wanted.want(high).parts(Wanted.start(high))[2]).isNegative();
    }

    @Test
    void sharp_inTheWater_isMeasuredWhereTheThingIs_notWhereTheAxisPasses() {
        // The camera looks level from over the water line at a bottle in the water, and is focused on it.
        String camera = "camera: {body: main, lens: macro, at: [0 mm, -800 mm, 300 mm], aim: ahead, focus: hero,"
                + " f_number: 8}";
        double seen = 800 - 8 * (1 - 1 / 1.52) - 120 * (1 - 1 / 1.333);
        double near = Plain.depthOfBlur(100, 8, seen, 2 * 36.0 / 3840, 300);
        // A true millimetre in the water looks 1/1.333 as deep.
        assertThat(Wanted.said(camera, TANK, HUNG, "wants: [{sharp: hero, at: axis}]"))
                .isEqualTo((seen - near) * 1.333, within(0.3));
    }
}
