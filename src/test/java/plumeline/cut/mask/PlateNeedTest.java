package plumeline.cut.mask;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import plumeline.plan.Plan;

/// Which clean plates are asked for.
final class PlateNeedTest {
    private static final String CAMERA =
            "camera: {body: main, lens: macro, at: [0 mm, -1100 mm, 139 mm], aim: ahead, focus: 1100 mm, f_number: 8,"
                    + " rate: 120 fps, shutter: 180 deg}";
    private static final String PLACE =
            "place: {hero: {thing: flacon, at: [0 mm, 0 mm, 80 mm], tied: [30 mm, 100 mm], line: {diameter: 0.25 mm}}}";
    private static final String TANK = "tank: {tank: glass, at: [0 mm, 30 mm], water: 260 mm}";

    private static PlateNeed need(String... lines) {
        Plan plan = Held.plan(lines);
        Masked masked = Held.masked(plan);
        return PlateNeed.of(plan, masked, MaskNumbers.of(plan, masked));
    }

    @Test
    void aLockedCamera_needsASecond() {
        PlateNeed need = need(CAMERA, TANK, PLACE);
        assertThat(need.sort()).isEqualTo(PlateNeed.Sort.STILL);
        assertThat(need.frames()).isEqualTo(120);
        assertThat(need.without()).containsExactly("hero", "hero's 2 lines");
        assertThat(need.does().getLast())
                .isEqualTo("Leave all else as it is: lens macro, focus 1100 mm from the lens point as seen, f/8,"
                        + " exposure 1/240 s, sensitivity, white, lamps and their levels, what stands about. Record it"
                        + " by the same codec and curve.");
        assertThat(need.cautions())
                .containsExactly(
                        "Lift hero out with a hand beneath it: out of the water its lines bear all of it, over glass.",
                        "Without hero the water stands lower: fill to the mark again, and wait until it is still and"
                                + " clear.");
    }

    /// What is carried is out of the picture: the plate doesn't move.
    @Test
    void aMoveOfTheThingAlone_needsNoMove() {
        String carry = "moves: {spin: {machine: plate, carries: hero, by: 90 deg, in: 1 s}}";
        assertThat(need(CAMERA, PLACE, carry).sort()).isEqualTo(PlateNeed.Sort.STILL);
    }

    @Test
    void aTriggeredSlide_isRunAgainInPhase() {
        PlateNeed need =
                need(CAMERA, PLACE, "moves: {slide: {machine: slider, by: [200 mm, 0 mm], in: 2 s, profile: even}}");
        assertThat(need.sort()).isEqualTo(PlateNeed.Sort.MOVED);
        assertThat(need.firstCaptured()).isEqualTo(-24);
        assertThat(need.frames()).isEqualTo(24 + 47 * 5 + 1 + 24);
        assertThat(need.apartPixels()).isEqualTo(0);
        assertThat(need.does().getFirst())
                .isEqualTo("Run the same again without it: slide, from the same starting place and the same side, at"
                        + " 120 fps: 284 frames, of which 24 before GO.");
        assertThat(need.does().get(1)).startsWith("Camera and moves start together");
        assertThat(need.does()).noneMatch(sentence -> sentence.contains("isn't known"));
    }

    /// 100 mm/s at 120 fps is 0.83 mm a frame, 10.67 px a mm: half of it 4.4 px.
    @Test
    void aFreeSlide_mayLieHalfAFrameApart() {
        PlateNeed need =
                need(CAMERA, PLACE, "moves: {slide: {machine: loose, by: [200 mm, 0 mm], in: 2 s, profile: even}}");
        assertThat(need.apartPixels()).isEqualTo(100.0 / 120 / 2 * 0.1 * 3840 / 36, within(0.05));
        assertThat(need.does().get(1)).contains("half a captured frame's travel apart, 4.4 px.");
        assertThat(need.does().get(2)).startsWith("How well slide repeats isn't known");
    }

    private static PlateNeed.Sort sortWith(String letGo, String more, String... sayings) {
        Plan plan = Held.planWith(
                "  machines:",
                "  inks: {dye: {density: 1.03 g/ml}}\n  pieces: {berry: {size: 16 mm, mass: 2.6 g}}\n  machines:",
                CAMERA,
                TANK,
                PLACE.replace("place: {", "place: {other: {thing: flacon, at: [100 mm, 40 mm, 300 mm]}, "),
                "release: {" + letGo + "}",
                more);
        Masked masked = Held.masked(plan);
        PlateNeed need = PlateNeed.of(plan, masked, MaskNumbers.of(plan, masked));
        String all = String.join(" ", need.does()) + " " + String.join(" ", need.cautions());
        assertThat(all).contains(sayings).doesNotContain("nothing moves but", "or after the takes");
        return need.sort();
    }

    /// Ink stains the water, and goes before and behind the line: no plate has it.
    @Test
    void aShotWithInk_wantsItsPlateBefore_inCleanWater() {
        String ink = "ink: dye, volume: 2 ml, bore: 4 mm, at: [0 mm, 30 mm, 250 mm]";
        assertThat(sortWith(
                        ink,
                        "",
                        "right before the take, in clean water, before any ink is in it: after the take the water is"
                                + " stained, is enough.",
                        "Where ink goes behind or before what is painted out",
                        "paint from the same place in neighbouring frames there."))
                .isEqualTo(PlateNeed.Sort.STILL);
        assertThat(sortWith(
                        ink,
                        "moves: {slide: {machine: slider, by: [20 mm, 0 mm], in: 2 s, profile: even}}",
                        "Run it before the take, in clean water, before any ink is in it"))
                .isEqualTo(PlateNeed.Sort.MOVED);
    }

    @Test
    void whatFalls_isLetGoAfterThePlate() {
        sortWith(
                "piece: berry, count: 3, at: [0 mm, 30 mm, 500 mm]",
                "",
                "before any piece is let go",
                "Where pieces go");
        sortWith(
                "thing: other", "", "before other is let go and with it out of the picture", "Where other, or what it");
    }

    /// Lines that aren't tied one by one are one line in the masks, but as many to take away.
    @Test
    void linesThatAreOnlyCounted_areAllSaid() {
        String place = "place: {hero: {thing: flacon, at: [0 mm, 0 mm, 80 mm], lines: 3}}";
        assertThat(need(CAMERA, place).without()).containsExactly("hero", "hero's 3 lines");
        assertThat(need(CAMERA, place.replace("3", "1")).without()).containsExactly("hero", "hero's line");
    }

    /// An end before the last that is shown: masks are missing, and that is said.
    @Test
    void aTakeThatEndsTooSoon_isSaid() {
        String clip = "clip: {file: a.mov, starts: \"02:00:00:00\", go: 199 frames, frames: 200 frames}";
        String slide = "moves: {slide: {machine: slider, by: [200 mm, 0 mm], in: 2 s, profile: even}}";
        assertThat(need(CAMERA, PLACE, slide, clip.replace("199", "20")).cautions())
                .contains(
                        "The take ends before what is shown of it does: it has 200 frames, its GO is at 20, and frames"
                                + " up to GO + 235 are shown. So source/ has no masks from GO + 180 on: see clip.go and"
                                + " clip.frames.");
        assertThat(need(CAMERA, PLACE, slide, clip.replace("200", "600")).cautions())
                .noneMatch(each -> each.contains("take ends"));
    }

    @Test
    void aShotCutWithoutAPass_isSaidToHaveItsOwn() {
        String passes = "passes: {low: {place.hero.at.z: 70 mm}}";
        assertThat(need(CAMERA, PLACE, passes).cautions())
                .contains("The cut names no pass here: masks and plate are for the shot itself, beside those of its"
                        + " passes.");
        assertThat(need(CAMERA, PLACE).cautions()).noneMatch(each -> each.contains("no pass"));
    }
}
