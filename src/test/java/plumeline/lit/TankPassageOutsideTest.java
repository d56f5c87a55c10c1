package plumeline.lit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import plumeline.geom.Bounds;
import plumeline.geom.Hull;
import plumeline.geom.Vec;
import plumeline.light.Glow;
import plumeline.light.Panel;
import plumeline.light.Patch;
import plumeline.optics.FlatWall;
import plumeline.stage.TankWalls;
import plumeline.tidy.Outside;

/// Light that goes through a tank and out again, against rays followed from the place through it by laws written here.
@Outside(
        source = "Fresnel's and Snell's laws (any optics text); rays by midpoint quadrature, written here",
        kind = "worked example")
final class TankPassageOutsideTest {
    /// Water from z = 8 mm to that of the case; x −300 to 300 mm, y −200 to 200 mm, rim at 408 mm; glass 8 mm.
    private record Set(String lamp, int water, String can, String post, String at) {
        Lighting lighting() {
            return LitPlan.lighting(
                    "80 mm",
                    "100 mm",
                    lamp,
                    "tank: {tank: glass, at: [0 mm, 0 mm], water: " + water + " mm}",
                    "place: {can: {thing: can, at: [" + can + "]}, post: {thing: post, at: [" + post + "]}}",
                    "lights: {key: {light: lamp, at: [" + at + "}}");
        }
    }

    private static final String PANEL = "panel: [400 mm, 200 mm], gives: 1000 cd";
    private static final String AWAY = "2000 mm, 1500 mm";

    /// By hand at right angles: air to glass ((1.52 − 1)/2.52)² = 0.04258, glass to water
    /// ((1.52 − 1.333)/2.853)² = 0.00430; each pane passes (1 − 0.04258)(1 − 0.00430)/(1 − 0.04258 · 0.00430) =
    /// 0.95348, both together 0.90912. A lamp of 100 lx at 100 m seems some 0.1 m nearer: 0.2 %.
    @Test
    void farLamp_straightThrough_isDimmedTwice() {
        Lighting far = new Set("gives: 1000000 cd", 300, AWAY, AWAY, "0 mm, -100 m, 150 mm]").lighting();
        double nearer = 0.4 * (1 - 1 / 1.333) + 0.016 * (1 - 1 / 1.52);
        double expected = 90.912 / Math.pow((100.5 - nearer) / 100, 2);
        assertThat(LitPlan.lux(far, new Vec(0, 0.5, 0.15), new Vec(0, -1, 0))).isCloseTo(expected, within(0.01));
    }

    /// Through two panes across from each other, over and beside the tank, through water and air, past a can in the
    /// water and a post before or behind the tank; over the surface; through panes that meet at a corner; touching.
    @ParameterizedTest
    @CsvSource({
        "300, 2000, 1500, 0, 1500, 0, -600, 150, 0, 0.05, 0.5, 0.15, 0",
        "300, 2000, 1500, 0, 1500, 300, -700, 200, 0, 0.35, 0.4, 0.1, 0",
        "300, 2000, 1500, 0, 1500, 300, -700, 200, 0, 0.1, 0.208, 0.12, 0",
        "300, 2000, 1500, 0, 1500, -100, -900, 700, 0, 0.1, 0.7, 0.2, 0",
        "300, 2000, 1500, 0, 1500, 0, -1500, 900, 0, 0, 0.25, 0.09, 0",
        "300, 2000, 1500, 0, 1500, -100, -500, 100, 0, 0.1, 0.3, 0.75, 0",
        "1, 2000, 1500, 0, 1500, -600, -300, 150, 60, 0.2, 0.5, 0.25, 0",
        "300, 30, 0, 2000, 1500, 0, -600, 150, 0, 0.05, 0.5, 0.15, 0",
        "300, 2000, 1500, -40, -400, 0, -600, 150, 0, 0.05, 0.5, 0.15, 0",
        "300, 2000, 1500, 20, 350, 0, -600, 150, 0, 0.05, 0.5, 0.15, 0",
        "300, 2000, 1500, 0, 1500, -650, -800, 150, 0, 0.1, 0.3, 0.15, -45",
        "300, 2000, 1500, 0, 1500, -500, -600, 500, 0, 0.1, 0.3, 0.3, -45",
        "300, 2000, 1500, 0, 1500, -900, 150, 200, 90, 0.6, -0.1, 0.15, -90"
    })
    void panel_isWhatRaysMeet(
            int water,
            int canX,
            int canY,
            int postX,
            int postY,
            int lampX,
            int lampY,
            int lampZ,
            int turn,
            double x,
            double y,
            double z,
            int facing) {
        Lighting lighting = new Set(
                        PANEL,
                        water,
                        canX + " mm, " + canY + " mm" + (canY == 0 ? ", 8 mm" : ""),
                        postX + " mm, " + postY + " mm",
                        lampX + " mm, " + lampY + " mm, " + lampZ + " mm], turn: " + turn + " deg")
                .lighting();
        Vec out = new Vec(Math.sin(Math.toRadians(facing)), -Math.cos(Math.toRadians(facing)), 0);
        Panel panel = panel(lighting);
        TankRays rays = new TankRays(
                0.008 + water / 1000.0,
                canX / 1000.0,
                canY / 1000.0,
                canY == 0 ? 0.008 : 0,
                postX / 1000.0,
                postY / 1000.0);
        double expected = rays.lux(panel, new Vec(x, y, z).minus(out.times(1e-7)), out, 1000);
        assertThat(LitPlan.lux(lighting, new Vec(x, y, z), out) / expected).isCloseTo(1, within(0.005));
    }

    /// A strip 300 by 900 mm that reaches over the rim's plane, over a side wall's, and one close beside the tank: what
    /// of it lies beyond all faces of a way comes by that way.
    @ParameterizedTest
    @CsvSource({
        "350, -77, -770, 553, -41, -12, 0.54, 0.71, 0.48",
        "1, 83, -642, 498, 13, -38, -0.09, 0.87, 0.44",
        "350, -204, -875, 437, -14, -7, 0.02, 0.35, 0.30",
        "200, -566, -366, 570, -9, 10, 0.47, 0.44, 0.42"
    })
    void stripThatReachesOverAFace_isWhatRaysMeet(
            int water, int lampX, int lampY, int lampZ, int turn, int tilt, double x, double y, double z) {
        Lighting lighting = new Set(
                        "panel: [300 mm, 900 mm], gives: 1000 cd",
                        water,
                        AWAY,
                        AWAY,
                        lampX + " mm, " + lampY + " mm, " + lampZ + " mm], turn: " + turn + " deg, tilt: " + tilt
                                + " deg")
                .lighting();
        Vec place = new Vec(x, y, z);
        Vec out = new Vec(0, -1, 0);
        double expected =
                new TankRays(0.008 + water / 1000.0, 2, 1.5, 0, 2, 1.5).lux(panel(lighting), place, out, 1500);
        assertThat(LitPlan.lux(lighting, place, out) / expected).isCloseTo(1, within(0.003));
    }

    /// A panel that isn't even, through two panes and water: each ray as bright as where it comes from, and whither.
    @ParameterizedTest
    @ValueSource(strings = {"hot_centre: 1.5 stops", "window: [200 mm, 100 mm], field: bright", "grid: 40 deg"})
    void unevenPanel_isWhatRaysMeet(String keys) {
        Lighting lighting =
                new Set(PANEL + ", " + keys, 300, AWAY, AWAY, "0 mm, -400 mm, 150 mm], turn: 0 deg").lighting();
        Uneven uneven = Uneven.of(keys);
        Panel panel = new Panel(
                new Vec(0, -0.4, 0.15), new Vec(0, 1, 0), new Vec(1, 0, 0), 0.4, 0.2, 1000 / (0.08 * uneven.mean()));
        Vec place = new Vec(0.15, 0.3, 0.2);
        Vec out = new Vec(0, -1, 0);
        double expected = new TankRays(0.308, 2, 1.5, 0, 2, 1.5).lux(panel, uneven, place, out, 1000);
        assertThat(LitPlan.lux(lighting, place, out) / expected).isCloseTo(1, within(0.005));
    }

    /// A point of 1000 cd: as a panel so small that it is one.
    @ParameterizedTest
    @CsvSource({"300, 0.15, 0.05, 0.5, 0.15", "300, 0.7, 0.1, 0.7, 0.2", "1, 0.3, 0.1, 0.5, 0.2"})
    void point_isWhatRaysMeet(int water, double lampZ, double x, double y, double z) {
        Lighting lighting = new Set(
                        "point: yes, gives: 1000 cd", water, AWAY, AWAY, "0 mm, -700 mm, " + 1000 * lampZ + " mm]")
                .lighting();
        Vec lamp = new Vec(0, -0.7, lampZ);
        Vec place = new Vec(x, y, z);
        Vec toward = place.minus(lamp).unit();
        Vec right = toward.cross(Vec.UP).unit();
        Panel small = new Panel(lamp, toward, right, 0.01, 0.01, 1000 / 1e-4);
        double expected =
                new TankRays(0.008 + water / 1000.0, 2, 1.5, 0, 2, 1.5).lux(small, place, new Vec(0, -1, 0), 1000);
        assertThat(LitPlan.lux(lighting, place, new Vec(0, -1, 0)) / expected).isCloseTo(1, within(0.005));
    }

    /// A tank of nothing: what passes it and what passes beside it are together what comes without it; where the way
    /// folds at an edge between two faces, to a ten-thousandth.
    @ParameterizedTest
    @CsvSource({
        "0, 0.5, 0.02, 1e-7",
        "0, 0.5, 0.15, 1e-4",
        "0.35, 0.4, 0.1, 1e-4",
        "0.2, 0.25, 0.5, 1e-4",
        "-0.5, 0.25, 0.2, 1e-4"
    })
    void withoutGlassAndWater_itIsTheLightInAir(double x, double y, double z, double off) {
        Bounds box = new Bounds(new Vec(-0.3, -0.2, 0), new Vec(0.3, 0.2, 0.4));
        TankWalls walls = new TankWalls(box, box, 0, 0.3);
        FlatWall none = new FlatWall(0, 1, 1);
        List<TankPassage> passages =
                TankPassage.of(TankWindow.of(walls, 0, 0.3, none), TankWindow.of(walls, 0.3, 0.4, none), box);
        Panel panel = new Panel(new Vec(-0.1, -0.6, 0.35), new Vec(0, 1, 0), new Vec(-1, 0, 0), 0.4, 0.2, 1000);
        Shine.Face face = new Shine.Face(panel, Glow.even(), Optional.empty(), 0.3);
        Patch patch = new Patch(new Vec(x, y, z), new Vec(0, -1, 0));
        double sum = face.lux(patch, Hull.of(walls.block(), 64));
        for (TankPassage passage : passages) {
            if (passage.leads(patch, Bounds.of(panel.outline(panel.middle().plus(panel.facing()))))) {
                sum += passage.findSight(panel, patch)
                        .map(sight -> passage.lux(face, patch, sight, List.of(List.of())))
                        .orElse(0.0);
            }
        }
        assertThat(sum / panel.lux(patch)).isCloseTo(1, within(off));
    }

    /// What a flag before a panel keeps off is what a panel of the flag's form and place would give, the panel being
    /// behind all of it; so with a dark window, which is in the panel's own face. Light goes straight or bent, so
    /// that this holds by whatever way it comes; flag and window reach over the plane of a pane or of the rim here.
    /// By the definition of luminance.
    @ParameterizedTest
    @CsvSource({
        "1, -440, -1329, 772, 0, -5, 1105, 1122, 723.2, 785.2, 38.1, -0.0552, 0.3231, 0.2842",
        "200, -73, -1055, 560, 8, -19, 1059, 1107, 451.2, 605.8, 24.7, -0.0244, 0.6145, 0.1814",
        "200, 156, -1079, 496, -15, -4, 635, 661, 422.8, 372.2, 42, 0.336, 0.5844, 0.5366",
        "300, -613, -1107, 426, 22, -27, 1108, 873, 286.1, 594.3, 47.6, 0.1297, 0.6641, 0.4923",
        "200, 122, -1280, 325, -1, -15, 937, 906, 425.8, 611.1, 23.6, -0.3985, 0.3356, 0.3579",
        "200, 411, -1009, 339, -33, -17, 766, 1088, 252.2, 758.9, 49.4, -0.133, 0.5012, 0.2486",
        "300, 668, -1022, 191, -37, -5, 1064, 1124, 689.5, 768.1, 32.9, -0.1618, -0.0146, 0.1843"
    })
    void flagOrWindow_takesWhatItsFaceWouldGive(
            int water,
            double lampX,
            double lampY,
            double lampZ,
            double turn,
            double tilt,
            double width,
            double height,
            double ofFlag,
            double upFlag,
            double ahead,
            double x,
            double y,
            double z) {
        double round = Math.toRadians(turn);
        double up = Math.toRadians(tilt);
        Vec facing = new Vec(Math.sin(round) * Math.cos(up), Math.cos(round) * Math.cos(up), Math.sin(up));
        Vec at = new Vec(lampX, lampY, lampZ);
        Vec flag = at.plus(facing.times(ahead));
        String turned = "], turn: " + turn + " deg, tilt: " + tilt + " deg";
        Vec place = new Vec(x, y, z);
        Vec toward = new Vec(0, -1, 0);
        double whole = LitPlan.lux(
                new Set(panel(width, height, ""), water, AWAY, AWAY, millimetres(at) + turned).lighting(),
                place,
                toward);
        double ofItsFace = LitPlan.lux(
                new Set(panel(ofFlag, upFlag, ""), water, AWAY, AWAY, millimetres(flag) + turned).lighting(),
                place,
                toward);
        Set flagged = new Set(
                panel(width, height, "") + "}, no: {flag: [" + ofFlag + " mm, " + upFlag + " mm]",
                water,
                AWAY,
                AWAY,
                millimetres(at) + turned + "}, no: {light: no, at: [" + millimetres(flag) + turned);
        assertThat(LitPlan.lux(flagged.lighting(), place, toward) / (whole - ofItsFace))
                .isCloseTo(1, within(0.003));
        double ofWindow = LitPlan.lux(
                new Set(panel(ofFlag, upFlag, ""), water, AWAY, AWAY, millimetres(at) + turned).lighting(),
                place,
                toward);
        double share = 1 - ofFlag * upFlag / (width * height);
        String dark = ", window: [" + ofFlag + " mm, " + upFlag + " mm], field: bright";
        Set windowed = new Set(panel(width, height, dark), water, AWAY, AWAY, millimetres(at) + turned);
        assertThat(LitPlan.lux(windowed.lighting(), place, toward) * share / (whole - ofWindow))
                .isCloseTo(1, within(1e-4));
        assertThat(ofWindow / whole).isGreaterThan(0.1);
    }

    /// A flag that leans from behind the tank over its rim, its middle over the tank, keeps off of what comes through
    /// the tank as much as its part behind the back pane alone: what is over the rim is in no such way.
    @Test
    void flagThatLeansOverTheTank_hidesAsItsPartBehindIt() {
        double tilt = Math.toDegrees(Math.atan2(0.35, 0.9));
        double whole = Math.hypot(350, 900);
        Vec place = new Vec(0.02, 0.6, 0.1);
        Vec toward = new Vec(0, -1, 0);
        double[] lux = new double[3];
        String[] flags = {
            "", leaning(whole, "0 mm, 175 mm, 565 mm", tilt), leaning(0.4 * whole, "0 mm, 280 mm, 295 mm", tilt)
        };
        for (int i = 0; i < flags.length; i++) {
            String[] parts = flags[i].split("\\|", -1);
            Set set = new Set(
                    panel(300, 200, "") + parts[0],
                    300,
                    AWAY,
                    AWAY,
                    "0 mm, -900 mm, 150 mm], turn: 0 deg" + (parts.length > 1 ? parts[1] : ""));
            lux[i] = LitPlan.lux(set.lighting(), place, toward);
        }
        assertThat(lux[1] / lux[2]).isCloseTo(1, within(1e-6));
        assertThat(lux[1] / lux[0]).isBetween(0.2, 0.9);
    }

    /// Of one luminance, whatever its size.
    private static String panel(double width, double height, String more) {
        return "panel: [" + width + " mm, " + height + " mm], gives: " + width * height + " cd" + more;
    }

    /// The flag for the kit, then for the shot.
    private static String leaning(double high, String at, double tilt) {
        return "}, no: {flag: [300 mm, " + high + " mm]|}, no: {light: no, at: [" + at + "], turn: 0 deg, tilt: " + tilt
                + " deg";
    }

    private static String millimetres(Vec at) {
        return at.x() + " mm, " + at.y() + " mm, " + at.z() + " mm";
    }

    /// As a place moves out from behind the tank its light nowhere jumps: 8 mm aside change less than a sixth
    /// of what comes without the tank, of a lamp that is 400 mm wide and 1.2 m off.
    @Test
    void outOfTheShadow_lightIsContinuous() {
        Lighting lighting = new Set(PANEL, 300, AWAY, AWAY, "0 mm, -700 mm, 150 mm], turn: 0 deg").lighting();
        double last = LitPlan.lux(lighting, new Vec(0.2, 0.5, 0.15), new Vec(0, -1, 0));
        double least = last;
        for (int i = 1; i <= 125; i++) {
            double next = LitPlan.lux(lighting, new Vec(0.2 + i / 125.0, 0.5, 0.15), new Vec(0, -1, 0));
            assertThat(next).isCloseTo(last, within(60.0));
            last = next;
            least = Math.min(least, next);
        }
        Panel open = panel(lighting);
        assertThat(last).isCloseTo(open.lux(new Patch(new Vec(1.2, 0.5, 0.15), new Vec(0, -1, 0))), within(1e-6));
        // The seam at the corner keeps some off on the way.
        assertThat(least).isLessThan(last);
    }

    /// What a card gets through the tank it throws back: beside it an open one gets the same but for the tank.
    @Test
    void card_isLitThroughTheTank() {
        String card = "card: [100 mm, 100 mm], reflects: 80 %}, key: {point: yes, gives: 100000 cd";
        String lights = "lights: {card: {light: lamp, at: [0 mm, 2000 mm, 150 mm], turn: 180 deg},"
                + " key: {light: key, at: [0 mm, -8000 mm, 150 mm]}}";
        Vec place = new Vec(0, 1.5, 0.15);
        Vec facing = new Vec(0, 1, 0);
        Lighting behind = LitPlan.lighting(
                "40 mm", "100 mm", card, "tank: {tank: glass, at: [0 mm, 0 mm], water: 300 mm}", lights);
        Lighting open = LitPlan.lighting("40 mm", "100 mm", card, lights);
        double nearer = 0.4 * (1 - 1 / 1.333) + 0.016 * (1 - 1 / 1.52);
        assertThat(LitPlan.lux(behind, place, facing) / LitPlan.lux(open, place, facing))
                .isCloseTo(0.90912 / Math.pow((10 - nearer) / 10, 2), within(0.002));
    }

    private static Panel panel(Lighting lighting) {
        return (Panel) ((Shine.Face) ((Lamp.Known) lighting.lamps().getFirst()).shine()).emitter();
    }
}
