package plumeline.stage;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.charset.StandardCharsets;
import java.util.List;
import org.junit.jupiter.api.Test;
import plumeline.colour.Chromaticity;
import plumeline.colour.Lab;
import plumeline.colour.Planck;
import plumeline.plan.PlacedLight;
import plumeline.plan.Plan;
import plumeline.plan.Plans;

/// The colour of a lamp as a plan sets it.
final class TintTest {
    private static final String PLAN = """
        plumeline: 1
        film: {rate: 24 fps}
        things:
          can:
            diameter: 66 mm
            height: 122 mm
            hue: 95 deg
            variants: {rose: {hue: 345 deg}, sky: {hue: 200.5 deg}}
        kit:
          cameras: {main: {sensor: {width: 36 mm, height: 20.25 mm, across: 3840 px}}}
          lenses: {fifty: {focal_length: 50 mm}}
          lights: {lamp: {LAMP}}
        shots:
          one:
            camera: {body: main, lens: fifty, at: [0 mm, -900 mm, 60 mm], aim: hero}
            place: {hero: {thing: can, at: [0 mm, 0 mm]}, other: {thing: can.sky, at: [90 mm, 0 mm]}}
            lights: {key: {light: lamp, at: [0 mm, -900 mm, 500 mm]PLACED}}
            passes: {rose: {place.hero.thing: can.rose}, white: {lights.key.white: 4000 K}}
        """;

    private static Plan plan(String lamp, String placed) {
        String text = PLAN.replace("LAMP", lamp).replace("PLACED", placed);
        var reading = Plans.read(text.getBytes(StandardCharsets.UTF_8), "p.yaml");
        assertThat(reading.problems()).isEmpty();
        return reading.plan().orElseThrow();
    }

    private static PlacedLight light(String lamp, String placed) {
        return plan(lamp, placed).shots().getFirst().lights().getFirst();
    }

    private static Tint tint(String lamp, String placed) {
        return Tint.of(light(lamp, placed));
    }

    private static final String THREE = "gives: 900 cd, primaries: [{name: red, x: 0.64, y: 0.33, lumens: 212.6 lm},"
            + " {name: green, x: 0.30, y: 0.60, lumens: 715.2 lm}, {name: blue, x: 0.15, y: 0.06, lumens: 72.2 lm}]";

    /// Three emitters that make D65 at full: by its red alone a lamp gives 212.6 of 1000.
    @Test
    void hue_leavesWhatItsEmittersGive() {
        Tint.Mixed red = (Tint.Mixed) tint(THREE, ", hue: 39.999 deg");
        assertThat(red.share()).isCloseTo(0.2126, within(2e-3));
        assertThat(red.mixture().drives().get(0)).isCloseTo(1, within(1e-6));
        assertThat(red.mixture().drives().get(1)).isCloseTo(0, within(2e-3));
        assertThat(red.halfShare()).isZero();
        assertThat(red.listDrives(0.5).getFirst()).isEqualTo("red 50 %");
    }

    @Test
    void white_isPlancks_andWithoutColourAllIsOn() {
        Tint.Mixed white = (Tint.Mixed) tint(THREE, ", white: 5600 K");
        assertThat(white.mixture().colour().distance(Planck.chromaticity(5600))).isLessThan(1e-9);
        assertThat(white.share()).isBetween(0.7, 0.99);
        Tint.Mixed all = (Tint.Mixed) tint(THREE, "");
        assertThat(all.share()).isEqualTo(1);
        assertThat(all.mixture().colour().distance(Chromaticity.D65)).isLessThan(1e-3);
    }

    @Test
    void whatWasReadAtTheColour_isAllThere() {
        assertThat(tint(THREE + ", gives_with: set", ", hue: 40 deg").leftShare())
                .isEqualTo(1);
        assertThat(tint(THREE + ", gives_with: all", ", hue: 40 deg").leftShare())
                .isLessThan(0.3);
    }

    @Test
    void typicalEmitters_areLessSure() {
        Tint.Mixed typical = (Tint.Mixed) tint("gives: 900 cd, primaries: typical", ", hue: 275 deg");
        assertThat(typical.halfShare()).isEqualTo(0.3);
        assertThat(typical.names()).containsExactly("red", "green", "blue", "white");
    }

    @Test
    void lampsWithoutEmitters_haveTheirWhite_andNoHue() {
        assertThat(tint("gives: 900 cd, white: 5600 K", "")).isEqualTo(new Tint.White(5600));
        assertThat(tint("gives: 900 cd, white: [2700 K, 6500 K]", ", white: 3200 K"))
                .isEqualTo(new Tint.White(3200));
        assertThat(tint("gives: 900 cd, white: [2700 K, 6500 K]", "")).isEqualTo(new Tint.Untold());
        assertThat(tint("gives: 900 cd", "")).isEqualTo(new Tint.Untold());
        assertThat(tint("gives: 900 cd, white: 5600 K", ", hue: 40 deg"))
                .isInstanceOfSatisfying(
                        Tint.Unknown.class,
                        unknown -> assertThat(unknown.reason())
                                .startsWith("Not known: what lamp is made of. Write its primaries"));
        String two = "gives: 900 cd, primaries: [{name: warm, x: 0.46, y: 0.41, lumens: 900 lm},"
                + " {name: cool, x: 0.31, y: 0.32, lumens: 900 lm}]";
        assertThat(tint(two, ", hue: 40 deg"))
                .isInstanceOfSatisfying(
                        Tint.Unknown.class,
                        unknown -> assertThat(unknown.reason()).endsWith("its emitters don't even mix white."));
    }

    /// The opposite of what the camera looks at, in each pass of its own thing; of what the light is aimed at first.
    @Test
    void complement_isOppositeToTheThings() {
        Plan plan = plan("gives: 900 cd, primaries: typical", ", hue: complement");
        var shot = plan.shots().getFirst();
        assertThat(hue(shot.lights().getFirst())).isEqualTo(275);
        assertThat(hue(shot.findPass("rose").orElseThrow().effective().lights().getFirst()))
                .isEqualTo(165);
        var white = shot.findPass("white").orElseThrow().effective().lights().getFirst();
        assertThat(white.written().has("hue")).isFalse();
        assertThat(hue(light("gives: 900 cd, primaries: typical", ", hue: complement, aim: other")))
                .isEqualTo(20.5);
        Lab lab = Lab.of(
                Tint.of(shot.lights().getFirst()).findColour().orElseThrow().at(1), Chromaticity.D65);
        assertThat(Math.toDegrees(lab.hueRadians()) + 360).isCloseTo(275, within(1e-6));
    }

    private static double hue(PlacedLight light) {
        return light.written().findQuantity("hue").orElseThrow().value();
    }

    @Test
    void drives_areListedOfMixturesOnly() {
        assertThat(new Tint.White(5600).listDrives(1)).isEqualTo(List.of());
        assertThat(new Tint.White(5600).leftShare()).isEqualTo(1);
    }
}
