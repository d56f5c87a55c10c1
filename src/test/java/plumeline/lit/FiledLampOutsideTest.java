package plumeline.lit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.charset.StandardCharsets;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import plumeline.geom.Vec;
import plumeline.light.Patch;
import plumeline.plan.Plan;
import plumeline.plan.Plans;
import plumeline.stage.Stage;
import plumeline.tidy.Outside;

/// A plan's lamps with photometric files, against sums by hand.
@Outside(
        source = "inverse square and cosine law (any text on photometry); a file in LM-63-2002's form made here;"
                + " linear between its angles",
        kind = "worked example")
final class FiledLampOutsideTest {
    private static final String FILE = """
        IESNA:LM-63-2002
        [TEST] made here
        TILT=NONE
        1 1000 1 5 2 1 2 0.2 0.2 0
        1 1 50
        0 10 20 40 90
        0 90
        2000 1800 1000 200 0
        2000 1600 600 100 0
        """;

    private static final String TILTED = FILE.replace("TILT=NONE", "TILT=INCLUDE\n1\n2\n0 90\n1 0.5");

    private static Lighting lighting(String file, String lamp, String placed) {
        String text = """
            plumeline: 1
            film: {rate: 24 fps}
            things: {can: {diameter: 60 mm, height: 120 mm}}
            kit:
              cameras: {main: {sensor: {width: 36 mm, height: 20.25 mm, across: 3840 px}}}
              lenses: {fifty: {focal_length: 50 mm}}
              lights: {lamp: {file: spot.ies%s}}
            shots:
              one:
                camera: {body: main, lens: fifty, at: [0 mm, -2000 mm, 100 mm], aim: ahead}
                place: {can: {thing: can, at: [5000 mm, 5000 mm]}}
                lights: {key: {light: lamp, at: [0 mm, 0 mm, 500 mm], %s}}
            """.formatted(lamp, placed);
        Plan plan = Plans.withFiles(
                Plans.read(text.getBytes(StandardCharsets.UTF_8), "p.yaml")
                        .plan()
                        .orElseThrow(),
                Map.of("lamp", file));
        Stage stage = Stage.of(plan, plan.shots().getFirst());
        return new Lighting(stage.shot(), stage.scene(stage.startValues(), 0), stage.findTank());
    }

    /// Along the axis 2000 cd, at 15 degrees to its right (C0) 1400, up (C90) 1100, at 20 degrees between them 800:
    /// each over the distance's square, on a surface that faces the lamp.
    @ParameterizedTest
    @CsvSource({"0, 0, 2000", "15, 0, 1400", "15, 90, 1100", "20, 45, 800", "20, 135, 800", "30, 180, 600", "95, 0, 0"})
    void light_isTheFilesByDirection(double off, double plane, double candela) {
        double gamma = Math.toRadians(off);
        double c = Math.toRadians(plane);
        // The lamp faces +y: its right is +x.
        Vec way = new Vec(Math.sin(gamma) * Math.cos(c), Math.cos(gamma), Math.sin(gamma) * Math.sin(c));
        Vec place = new Vec(0, 0, 0.5).plus(way.times(2));
        assertThat(LitPlan.lux(lighting(FILE, "", "turn: 0 deg"), place, way.times(-1)))
                .isCloseTo(candela / 4, within(1e-6 * (1 + candela)));
    }

    /// A grid of 40 degrees leaves half at 20: of 800 cd 400, over the distance's square.
    @Test
    void grid_isBeforeAFilesLightToo() {
        double gamma = Math.toRadians(20);
        double aside = Math.sin(gamma) * Math.sqrt(0.5);
        Vec way = new Vec(aside, Math.cos(gamma), aside);
        Vec place = new Vec(0, 0, 0.5).plus(way.times(2));
        assertThat(LitPlan.lux(lighting(FILE, ", grid: 40 deg", "turn: 0 deg"), place, way.times(-1)))
                .isCloseTo(100, within(1e-6));
    }

    /// What it gives, where that is written, sets how much; the file only where it goes.
    @Test
    void gives_setsHowMuch() {
        Vec place = new Vec(0, 2, 0.5);
        Vec back = new Vec(0, -1, 0);
        assertThat(LitPlan.lux(lighting(FILE, ", gives: 400 lx at 2 m measured", "turn: 0 deg"), place, back))
                .isCloseTo(400, within(1e-6));
        double whole = LitPlan.lux(lighting(FILE, ", gives: 1000 lm", "turn: 0 deg"), place, back);
        double half = LitPlan.lux(lighting(FILE, ", gives: 1000 lm", "turn: 0 deg, level: 50 %"), place, back);
        assertThat(half).isCloseTo(whole / 2, within(1e-9));
        Lamp.Known lamp = (Lamp.Known) lighting(FILE, "", "turn: 0 deg").lamps().getFirst();
        double flux = ((Shine.Ray) lamp.shine()).intensity().fluxLumens();
        assertThat(whole).isCloseTo(500 * 1000 / flux, within(1e-6));
    }

    /// A lamp that gives half as much lying as hanging straight down gives three quarters half-way.
    @Test
    void tilt_countsFromStraightDown() {
        Vec below = new Vec(0, 0, -1.5);
        assertThat(LitPlan.lux(lighting(TILTED, "", "turn: 0 deg, tilt: -90 deg"), below, Vec.UP))
                .isCloseTo(500, within(1e-3));
        double slant = Math.sqrt(2);
        assertThat(LitPlan.lux(
                        lighting(TILTED, "", "turn: 0 deg, tilt: -45 deg"),
                        new Vec(0, slant, 0.5 - slant),
                        new Vec(0, -1, 1).unit()))
                .isCloseTo(375, within(1e-3));
    }

    /// Nearer than five times its size a point's light may be off by more than a hundredth: that is counted. An even
    /// disc of 200 mm seen from 200 mm before it gives 1/(1 + 0.25) of a point's.
    @Test
    void near_isLessSure() {
        Lighting lighting = lighting(FILE, ", gives: 400 lx at 2 m measured", "turn: 0 deg");
        Vec back = new Vec(0, -1, 0);
        assertThat(lighting.light(new Patch(new Vec(0, 2, 0.5), back)).halfShare())
                .isLessThan(0.01);
        assertThat(lighting.light(new Patch(new Vec(0, 0.2, 0.5), back)).halfShare())
                .isCloseTo(0.2, within(1e-9));
    }
}
