package plumeline.lit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.function.DoubleBinaryOperator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import plumeline.geom.Vec;
import plumeline.light.Patch;
import plumeline.tidy.Outside;

/// Lamps that aren't even, windows, grids, cards, flags of a plan, against sums over small pieces of them.
@Outside(
        source = "Lambert's law, light thrown back by a matt surface `L = ρ E/π` (any text on photometry); midpoint"
                + " quadrature written here",
        kind = "worked example")
final class EmittersOutsideTest {
    private static final String AT = "lights: {key: {light: lamp, at: [0 mm, -600 mm, 250 mm], turn: 0 deg";
    private static final Vec BACK = new Vec(0, -1, 0);

    private static Lighting lighting(String lamp, String lights) {
        return LitPlan.lighting("60 mm", "300 mm", lamp, "place: {can: {thing: can, at: [3000 mm, 200 mm]}}", lights);
    }

    /// Light of a face 600 by 400 mm at y = −0.6, middle 0.25 m up, on a place facing it; `shining` of −1 to 1 across
    /// and up, `passing` of the tangent of the angle at which light leaves.
    private static double sum(Vec place, DoubleBinaryOperator shining, double cutTangent) {
        int across = 450;
        int up = 300;
        double sum = 0;
        for (int i = 0; i < across; i++) {
            for (int j = 0; j < up; j++) {
                double u = 2 * (i + 0.5) / across - 1;
                double v = 2 * (j + 0.5) / up - 1;
                Vec way = new Vec(0.3 * u, -0.6, 0.25 + 0.2 * v).minus(place);
                double square = way.dot(way);
                double moved = Math.hypot(way.x(), way.z()) / -way.y() / cutTangent;
                double passing =
                        moved >= 1 ? 0 : 2 / Math.PI * (Math.acos(moved) - moved * Math.sqrt(1 - moved * moved));
                sum += shining.applyAsDouble(u, v)
                        * (Double.isInfinite(cutTangent) ? 1 : passing)
                        * way.y()
                        * way.y()
                        / (square * square);
            }
        }
        return sum * 0.24 / (across * up);
    }

    private static final double NONE = Double.POSITIVE_INFINITY;
    private static final Vec MIDDLE_AT_A_METRE = new Vec(0, 0.4, 0.25);

    private static double hot(double u, double v) {
        return Math.pow(2, -1.5 * (u * u + v * v) / 2);
    }

    /// A lamp that gives 1000 lx at 1 m with a hot centre of 1.5 stops.
    @ParameterizedTest
    @CsvSource({"0, -0.3, 0.25", "0.2, 0, 0.1", "-0.5, 0.4, 0.6", "0, 2, 0"})
    void hotCentre_isWhatItsPartsGive(double x, double y, double z) {
        Lighting lighting =
                lighting("panel: [600 mm, 400 mm], hot_centre: 1.5 stops, gives: 1000 lx at 1 m", AT + "}}");
        Vec place = new Vec(x, y, z);
        double scale = 1000 / sum(MIDDLE_AT_A_METRE, EmittersOutsideTest::hot, NONE);
        double expected = scale * sum(place, EmittersOutsideTest::hot, NONE);
        assertThat(LitPlan.lux(lighting, place, BACK)).isCloseTo(expected, within(0.002 * expected));
    }

    /// A hot centre given by candela and by lumens: π times.
    @Test
    void hotCentre_isAsBrightHoweverItIsGiven() {
        String form = "panel: [600 mm, 400 mm], hot_centre: 1.5 stops, gives: ";
        double byCandela = LitPlan.lux(lighting(form + "500 cd", AT + "}}"), MIDDLE_AT_A_METRE, BACK);
        double byLumens = LitPlan.lux(lighting(form + 500 * Math.PI + " lm", AT + "}}"), MIDDLE_AT_A_METRE, BACK);
        assertThat(byLumens).isCloseTo(byCandela, within(1e-3));
        // Far off a face is a point of its candelas.
        assertThat(LitPlan.lux(lighting(form + "500 cd", AT + "}}"), new Vec(0, 49.4, 0.25), BACK) * 2500)
                .isCloseTo(500, within(0.1));
    }

    /// Far off a face is a point of its candelas. All its lumens are π times those of a flat face, π² of a tube, whose
    /// side of 2π r l gives π times its luminance and shows as 2 r l (Lambert's law).
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "disc: 500 mm, hot_centre: 1.5 stops | 1",
                "panel: [600 mm, 400 mm], window: [300 mm, 200 mm], field: bright | 1",
                "panel: [600 mm, 400 mm], window: [300 mm, 200 mm] | 1",
                "tube: [600 mm, 40 mm] | 3.14159265"
            })
    void face_isFarOffAPointOfItsCandelas(String form, double more) {
        Vec far = new Vec(0, 49.4, 0.25);
        Lighting byCandela = lighting(form + ", gives: 500 cd", AT + "}}");
        assertThat(LitPlan.lux(byCandela, far, BACK) * 2500).isCloseTo(500, within(0.2));
        Lighting byLumens = lighting(form + ", gives: " + 500 * Math.PI * more + " lm", AT + "}}");
        assertThat(LitPlan.lux(byLumens, far, BACK) * 2500).isCloseTo(500, within(0.2));
    }

    /// A disc's rings on its axis: each by `2π r h²/(r² + h²)²`, 1.5 stops darker at the edge than in the middle.
    private static double rings(double away, double radius) {
        int count = 2000;
        double sum = 0;
        for (int i = 0; i < count; i++) {
            double r = radius * (i + 0.5) / count;
            double shining = Math.pow(2, -1.5 * r * r / (radius * radius));
            sum += shining * 2 * Math.PI * r * away * away / Math.pow(r * r + away * away, 2) * radius / count;
        }
        return sum;
    }

    @Test
    void hotCentre_ofADisc_isWhatItsRingsGive() {
        Lighting lighting = lighting("disc: 500 mm, hot_centre: 1.5 stops, gives: 1000 lx at 1 m", AT + "}}");
        double expected = 1000 * rings(0.2, 0.25) / rings(1, 0.25);
        assertThat(LitPlan.lux(lighting, new Vec(0, -0.4, 0.25), BACK)).isCloseTo(expected, within(0.002 * expected));
    }

    /// A card's light is of the lamp that shines on it: as unsure as that, and as what the card throws back. A lamp
    /// that the card doesn't see counts for nothing there.
    @Test
    void card_isAsUnsureAsTheLampThatLightsIt() {
        Lighting lighting = lighting(
                "gives: 800 cd ± 20 %}, other: {gives: 800 cd ± 60 %}, board: {card: [500 mm, 400 mm], reflects: 70 % ±"
                        + " 7 %",
                "lights: {key: {light: lamp, at: [400 mm, -300 mm, 300 mm], turn: -60 deg},"
                        + " back: {light: other, at: [-900 mm, 300 mm, 250 mm], turn: -90 deg},"
                        + " fill: {light: board, at: [-200 mm, 300 mm, 250 mm], turn: 90 deg}}");
        Lighting.Light light = lighting.light(new Patch(new Vec(0.6, 0.5, 0.4), new Vec(-1, 0, 0.1).unit()));
        double fill = light.lamps().get(2);
        assertThat(light.lux()).isCloseTo(light.lamps().getFirst() + fill, within(1e-9));
        double ofKey = 0.2 * light.lux();
        double ofCard = 0.1 * fill;
        assertThat(light.halfShare()).isCloseTo(Math.hypot(ofKey, ofCard) / light.lux(), within(1e-6));
    }

    /// A window 300 by 200 mm: in a dark field a panel of its size; in a bright field the panel less the window.
    @ParameterizedTest
    @CsvSource({"0, -0.3, 0.25", "0.2, 0, 0.1", "-0.5, 0.4, 0.6"})
    void window_inDarkAndBrightField(double x, double y, double z) {
        String form = "panel: [600 mm, 400 mm], window: [300 mm, 200 mm], gives: 1000 lx at 1 m";
        Vec place = new Vec(x, y, z);
        DoubleBinaryOperator window = (u, v) -> Math.abs(u) < 0.5 && Math.abs(v) < 0.5 ? 1 : 0;
        double dark = 1000 * sum(place, window, NONE) / sum(MIDDLE_AT_A_METRE, window, NONE);
        assertThat(LitPlan.lux(lighting(form, AT + "}}"), place, BACK)).isCloseTo(dark, within(0.002 * dark));
        DoubleBinaryOperator round = (u, v) -> 1 - window.applyAsDouble(u, v);
        double bright = 1000 * sum(place, round, NONE) / sum(MIDDLE_AT_A_METRE, round, NONE);
        assertThat(LitPlan.lux(lighting(form + ", field: bright", AT + "}}"), place, BACK))
                .isCloseTo(bright, within(0.002 * bright));
    }

    /// A grid of 40 degrees: of the light without it what passes its cells. Half passes where tan = tan 20 / 0.40397.
    @ParameterizedTest
    @CsvSource({"0, -0.3, 0.25", "0.2, 0, 0.1", "-0.5, 0.4, 0.6"})
    void grid_cutsWhatGoesAslant(double x, double y, double z) {
        Vec place = new Vec(x, y, z);
        double cut = Math.tan(Math.toRadians(20)) / 0.4039727533;
        double expected = 1000 * sum(place, (u, v) -> 1, cut) / sum(MIDDLE_AT_A_METRE, (u, v) -> 1, NONE);
        String form = "panel: [600 mm, 400 mm], gives: 1000 lx at 1 m";
        assertThat(LitPlan.lux(lighting(form, AT + ", grid: 40 deg}}"), place, BACK))
                .isCloseTo(expected, within(0.003 * expected));
        assertThat(LitPlan.lux(lighting(form + ", grid: 40 deg", AT + "}}"), place, BACK))
                .isCloseTo(expected, within(0.003 * expected));
    }

    /// A point's grid: at 20 degrees from its axis half is left of 40.
    @Test
    void grid_beforeAPoint() {
        double open = LitPlan.lux(lighting("gives: 800 cd", AT + "}}"), MIDDLE_AT_A_METRE, BACK);
        double slant = Math.tan(Math.toRadians(20));
        Vec aside = new Vec(slant, 0.4, 0.25);
        double bare = LitPlan.lux(lighting("gives: 800 cd", AT + "}}"), aside, BACK);
        Lighting gridded = lighting("gives: 800 cd", AT + ", grid: 40 deg}}");
        assertThat(LitPlan.lux(gridded, MIDDLE_AT_A_METRE, BACK)).isCloseTo(open, within(1e-6));
        assertThat(LitPlan.lux(gridded, aside, BACK)).isCloseTo(bare / 2, within(1e-4));
    }

    private static final String CARD = "gives: 800 cd}, board: {card: [500 mm, 400 mm], reflects: 70 %";

    /// A card 500 by 400 mm beside, lit by a point: each of its parts shines by what falls on it.
    @ParameterizedTest
    @CsvSource({"0.3, 0.1, 0.2", "0.6, 0.5, 0.4", "0.9, 0.2, 0.1"})
    void card_throwsBackWhatFallsOnIt(double x, double y, double z) {
        // The card's middle is at (-0.2, 0.3, 0.25), facing +x; the lamp at (0.4, -0.3, 0.3) shines on it.
        Lighting lighting = lighting(
                CARD,
                "lights: {key: {light: lamp, at: [400 mm, -300 mm, 300 mm], turn: -60 deg},"
                        + " fill: {light: board, at: [-200 mm, 300 mm, 250 mm], turn: 90 deg}}");
        Vec place = new Vec(x, y, z);
        Vec facing = new Vec(-1, 0, 0);
        Vec lamp = new Vec(0.4, -0.3, 0.3);
        double sum = 0;
        int across = 250;
        int up = 200;
        for (int i = 0; i < across; i++) {
            for (int j = 0; j < up; j++) {
                Vec part = new Vec(-0.2, 0.05 + 0.5 * (i + 0.5) / across, 0.05 + 0.4 * (j + 0.5) / up);
                Vec in = lamp.minus(part);
                double fallen = 800 * in.x() / Math.pow(in.dot(in), 1.5);
                Vec out = place.minus(part);
                double square = out.dot(out);
                sum += 0.7 / Math.PI * fallen * out.x() * out.x() / (square * square);
            }
        }
        double expected = sum * 0.2 / (across * up);
        double found = lighting.lux(new Patch(place, facing))[1];
        assertThat(found).isCloseTo(expected, within(0.003 * expected));
    }

    /// A ceiling 2 by 2 m, 1 m up, faces down: at its level nothing, below it light, tilted as told.
    @Test
    void ceiling_shinesDown() {
        Lighting lighting = lighting(
                "gives: 800 cd}, board: {card: [2000 mm, 2000 mm]",
                "lights: {key: {light: lamp, at: [0 mm, 0 mm, 500 mm], tilt: 90 deg},"
                        + " top: {light: board, at: [0 mm, 0 mm, 1000 mm], tilt: -90 deg}}");
        assertThat(lighting.lux(new Patch(new Vec(0.3, 0.2, 0), Vec.UP))[1]).isGreaterThan(50);
        assertThat(lighting.lux(new Patch(new Vec(0.3, 0.2, 1.5), Vec.UP.times(-1)))[1])
                .isZero();
    }

    /// A flag keeps a point's light off what lies in its shadow, and off nothing else.
    @ParameterizedTest
    @CsvSource({"0, 0", "0.09, 0", "0.11, 200", "-0.11, 200"})
    void flag_keepsLightOff(double x, double lux) {
        // Half way it is 100 mm wide, so its shadow is 200 mm wide 2 m from the lamp.
        Lighting lighting = lighting(
                "gives: 800 cd}, black: {flag: [100 mm, 100 mm]",
                "lights: {key: {light: lamp, at: [0 mm, -1000 mm, 250 mm], turn: 0 deg},"
                        + " cut: {light: black, at: [0 mm, 0 mm, 250 mm], turn: 0 deg}}");
        assertThat(LitPlan.lux(lighting, new Vec(x, 1, 0.25), BACK)).isCloseTo(lux, within(2.0));
    }
}
