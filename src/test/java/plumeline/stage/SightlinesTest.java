package plumeline.stage;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import plumeline.geom.Body;
import plumeline.geom.Pinhole;
import plumeline.optics.TankView;

/// Which sight lines are computed where a tank stands. The tank's outside is 466 mm wide and 316 mm deep about x 0,
/// y 30 mm, so that its front is at y −128 mm; its floor is 8 mm thick, its rim 308 mm up, the water line 268 mm up.
final class SightlinesTest {
    private static final String TANK = "tank: {tank: glass, at: [0 mm, 30 mm], water: 260 mm}";
    private static final String HUNG = "place: {hero: {thing: tin, at: [0 mm, 0 mm, 80 mm], lines: 2}}";

    private static Sightlines.Seeing seeing(String camera, String place) {
        Scene scene = Staged.start("camera: {body: main, lens: fifty, at: [" + camera + "], aim: ahead}", TANK, place);
        return scene.lines().at(scene.things());
    }

    private static String standing(String at) {
        return "place: {hero: {thing: tin, at: [" + at + "]}}";
    }

    @Test
    void inTheWater_seenLevel_isThroughTheWall() {
        Sightlines.Seeing seen = seeing("0 mm, -800 mm, 130 mm", HUNG);
        assertThat(seen.isCovered()).isTrue();
        assertThat(seen.projection()).isInstanceOf(TankView.class);
    }

    @Test
    void fromOverTheWaterLine_theSightOfItsTopGoesThroughTheSurface() {
        Sightlines.Seeing seen = seeing("0 mm, -200 mm, 600 mm", HUNG);
        assertThat(seen.isCovered()).isFalse();
        assertThat(seen.trouble()).isEqualTo(Sightlines.Trouble.SURFACE);
    }

    @Test
    void fromOverTheTank_nothingInItIsCovered() {
        assertThat(seeing("0 mm, 0 mm, 900 mm", HUNG).isCovered()).isFalse();
        assertThat(seeing("-100 mm, 100 mm, 400 mm", HUNG).isCovered()).isFalse();
    }

    @Test
    void coverEnds_whereTheHighestSightLineMeetsTheSurfaceAtTheWall() {
        // By Snell's law a sight line that meets the inner face of the pane at the water line, from high up.
        double covered = 268;
        double lost = 600;
        for (int i = 0; i < 60; i++) {
            double middle = (covered + lost) / 2;
            if (seeing("0 mm, -400 mm, " + middle + " mm", HUNG).isCovered()) {
                covered = middle;
            } else {
                lost = middle;
            }
        }
        // The tin's top is 176 mm up; the corners about its rim reach 38/cos 22.5° back, and as far aside.
        double radius = 38 / Math.cos(Math.PI / 8);
        double least = Double.POSITIVE_INFINITY;
        for (int corner = 0; corner < 8; corner++) {
            double angle = Math.PI / 4 * corner;
            least = Math.min(least, height(radius * Math.sin(angle), radius * Math.cos(angle), 176));
        }
        assertThat(covered).isEqualTo(least, within(1e-3));
    }

    /// How high a lens point 400 mm before the zero mark sees a place just at the water line of the pane's inner face.
    private static double height(double y, double x, double z) {
        double low = 268;
        double high = 2000;
        for (int i = 0; i < 80; i++) {
            double middle = (low + high) / 2;
            if (crossing(middle, x, y, z) < 268) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return low;
    }

    /// The height at which light from a place leaves the water into the pane, by halving on the ray's slope in air.
    private static double crossing(double lens, double x, double y, double z) {
        double aside = Math.hypot(x, lens - z);
        double air = 400 - 128;
        double deep = 120 + y;
        double low = 0;
        double high = 100;
        for (int i = 0; i < 100; i++) {
            double sine = Math.sin(Math.atan((low + high) / 2));
            double reached = air * (low + high) / 2
                    + 8 * Math.tan(Math.asin(sine / 1.52))
                    + deep * Math.tan(Math.asin(sine / 1.333));
            if (reached < aside) {
                low = (low + high) / 2;
            } else {
                high = (low + high) / 2;
            }
        }
        double water = deep * Math.tan(Math.asin(Math.sin(Math.atan(low)) / 1.333));
        return z + water / aside * (lens - z);
    }

    @Test
    void cutByTheWaterLine_isNotCovered() {
        Sightlines.Seeing seen = seeing("0 mm, -800 mm, 268 mm", standing("0 mm, 0 mm, 200 mm"));
        assertThat(seen.trouble()).isEqualTo(Sightlines.Trouble.WATER_LINE);
        assertThat(seen.coverMetres()).isEqualTo(-0.028, within(1e-9));
    }

    @Test
    void throughTheSideWall_isNotCovered() {
        // Nearer to the front's plane than to the left wall's; but straight on it would pass the front's plane at x
        // −295.
        Sightlines.Seeing seen =
                seeing("-500 mm, -500 mm, 130 mm", HUNG.replace("0 mm, 0 mm, 80 mm", "-170 mm, 100 mm, 80 mm"));
        assertThat(seen.isCovered()).isFalse();
        assertThat(seen.trouble()).isEqualTo(Sightlines.Trouble.OTHER_WALL);
    }

    @Test
    void besideAndBeforeTheTank_isSeenStraight() {
        for (String at : List.of("400 mm, 200 mm", "0 mm, -300 mm", "0 mm, 600 mm, 700 mm")) {
            Sightlines.Seeing seen = seeing("0 mm, -800 mm, 130 mm", standing(at));
            assertThat(seen.isCovered()).as(at).isTrue();
            assertThat(seen.projection()).as(at).isInstanceOf(Pinhole.class);
        }
    }

    @Test
    void behindTheTank_isNotCovered() {
        assertThat(seeing("0 mm, -800 mm, 130 mm", standing("0 mm, 300 mm")).trouble())
                .isEqualTo(Sightlines.Trouble.OTHER_WALL);
        // Its top shows over the rim, its foot through two walls.
        assertThat(seeing("0 mm, -800 mm, 900 mm", standing("0 mm, 300 mm")).isCovered())
                .isFalse();
    }

    @Test
    void inADryTank_isThroughGlassAndAir() {
        Scene scene = Staged.start(
                "camera: {body: main, lens: fifty, at: [0 mm, -800 mm, 56 mm], aim: ahead}",
                "tank: {tank: glass, at: [0 mm, 30 mm]}",
                standing("0 mm, 0 mm, 8 mm"));
        assertThat(scene.lines().at(scene.things()).isCovered()).isTrue();
        Body hero = scene.things().getFirst();
        assertThat(scene.view(hero).depth(hero.middle())).isEqualTo(0.8 - 0.008 * (1 - 1 / 1.52), within(1e-5));
    }

    @Test
    void oneInAndOneBeside_areNotOnePicture_butOneInAndOneBeforeAre() {
        String in = "hero: {thing: tin, at: [0 mm, 0 mm, 80 mm], lines: 2}";
        assertThat(seeing("0 mm, -800 mm, 130 mm", "place: {" + in + ", b: {thing: tin, at: [400 mm, 200 mm]}}")
                        .isCovered())
                .isFalse();
        assertThat(seeing("0 mm, -800 mm, 130 mm", "place: {" + in + ", b: {thing: tin, at: [90 mm, -300 mm]}}")
                        .isCovered())
                .isTrue();
    }

    @Test
    void noTank_isSeenStraight() {
        Scene scene = Staged.start(Staged.CAMERA, Staged.HERO);
        assertThat(scene.lines()).isInstanceOf(Sightlines.Free.class);
        assertThat(scene.view(scene.things().getFirst())).isEqualTo(scene.projection());
    }
}
