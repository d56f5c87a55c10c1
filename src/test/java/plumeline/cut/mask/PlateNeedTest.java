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
        assertThat(need.without()).containsExactly("hero", "hero's lines");
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
}
