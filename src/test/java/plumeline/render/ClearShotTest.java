package plumeline.render;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import plumeline.geom.Aim;
import plumeline.geom.Solid;
import plumeline.geom.Vec;
import plumeline.light.Panel;
import plumeline.light.Patch;
import plumeline.rim.ClearRound;
import plumeline.rim.Indices;
import plumeline.rim.Passage;
import plumeline.scenery.Art;
import plumeline.scenery.Coat;
import plumeline.scenery.Light;
import plumeline.trace.Exposing;
import plumeline.trace.Eye;
import plumeline.trace.Look;
import plumeline.trace.Plate;
import plumeline.trace.Tracer;

/// Clear things of a plan in its pictures: what their colour takes, what they bend, what sticks to them; and a sweep's
/// gradient.
final class ClearShotTest {
    private static final String LAMP =
            "lights: {strip: {panel: [300 mm, 600 mm], gives: 200 lx at 1 m, white: 5600 K}}";
    private static final String BEHIND = "lights: {left: {light: strip, at: [-600 mm, 100 mm, 300 mm]},"
            + " right: {light: strip, at: [600 mm, 100 mm, 300 mm]}}\n"
            + "    sweep: {behind: 500 mm, radius: 30 mm, width: 2 m, height: 1 m, reflects: 80 %}";
    private static final String VESSEL =
            "width: 60 mm, depth: 60 mm, height: 120 mm, body: clear, wall: {thickness: 3 mm, index: 1.5},"
                    + " contents: {index: 1.333}";

    /// A row of narrow sights.
    private static Plate row(Look look, Aim aim, double widthTangent, int pixels, int samples) {
        Plate plate = new Plate(pixels, 1);
        Exposing.expose(
                List.of(new Look(look.tracer(), new Eye(aim, widthTangent, 1e-6, 0, 0.6))),
                plate,
                new Exposing.Tile(0, 0, pixels, 1),
                new Exposing.Rays(0, samples, samples, 3));
        return plate;
    }

    private static double linear(int channel) {
        double share = channel / 255.0;
        return share <= 0.04045 ? share / 12.92 : Math.pow((share + 0.055) / 1.055, 2.4);
    }

    /// Before a white sweep, against the same vessel full of clear water: `exp(−α d)`, α from its colour straight
    /// through 54 mm, d bent in the water.
    @ParameterizedTest
    @CsvSource({"0", "20", "-35"})
    void filledVessel_takesByBeerAndLambert(double degrees) {
        String turned = BEHIND.replace(
                "lights:", "place: {hero: {thing: tin, at: [0 mm, 0 mm], turn: " + degrees + " deg}}\n    lights:");
        Aim aim = new Aim(new Vec(0, -0.6, 0.04), 0, 0);
        Look tinted =
                SetShots.placed(VESSEL + ", colour: \"#e0b070\"", LAMP, turned).at(0);
        Look clear = SetShots.placed(VESSEL, LAMP, turned).at(0);
        double way = 0.054 / Math.cos(Math.asin(Math.sin(Math.toRadians(degrees)) / 1.333));
        double[] left = {linear(0xe0), linear(0xb0), linear(0x70)};
        for (int i = 0; i < 3; i++) {
            double takes = -Math.log(left[i]) / 0.054;
            double share = row(tinted, aim, 1e-6, 1, 1).light(0, 0, i)
                    / row(clear, aim, 1e-6, 1, 1).light(0, 0, i);
            double wanted = Math.exp(-takes * way);
            assertThat(share).as("channel %d", i).isCloseTo(wanted, within(0.01 * wanted));
        }
    }

    /// A lamp behind and beside a filled tumbler: which columns of the picture show it is as the rim room's ways go.
    @Test
    void lampBehindGlass_showsWhereTheRimRoomSays() {
        String tumbler = "diameter: 60 mm, height: 120 mm, body: clear, wall: {thickness: 3 mm, index: 1.52},"
                + " contents: {index: 1.333}";
        String lit = "lights: {rim: {light: strip, at: [200 mm, 500 mm, 60 mm]}}";
        ShotSet set = SetShots.one(tumbler, LAMP, lit);
        Look look = set.at(0);
        Panel lamp =
                (Panel) ((Light.Source.Face) set.worldAt(0).lights().getFirst().source()).emitter();
        ClearRound glass = new ClearRound(Solid.cylinder(0.06, 0.12), 0.003, new Indices(1, 1.52, 1.333), 0.2);
        Vec eye = new Vec(0, -0.6, 0.04);
        int pixels = 401;
        double tangent = 0.12;
        Plate plate = row(look, new Aim(eye, 0, 0), tangent, pixels, 1);
        int shown = 0;
        int compared = 0;
        int wrong = 0;
        for (int x = 0; x < pixels; x++) {
            Vec way = new Vec(((x + 0.5) / pixels - 0.5) * tangent, 1, 0).unit();
            double toAxis = 0.6 * way.y();
            Vec near = eye.plus(way.times(toAxis));
            double beside = Math.hypot(near.x(), near.y());
            if (beside > 0.028) {
                continue;
            }
            Vec at = eye.plus(way.times(toAxis - Math.sqrt(0.03 * 0.03 - beside * beside)));
            boolean wanted = glass.follow(at, way) instanceof Passage.Out out && meets(lamp, out);
            boolean found = plate.light(x, 0, 1) > 0.4 * lamp.luminance();
            compared++;
            shown += wanted ? 1 : 0;
            wrong += wanted == found ? 0 : 1;
        }
        assertThat(compared).isGreaterThan(250);
        assertThat(shown).isBetween(20, 200);
        // Two edges, a column each.
        assertThat(wrong).isLessThanOrEqualTo(2);
    }

    private static boolean meets(Panel lamp, Passage.Out out) {
        double toward = out.direction().dot(lamp.facing());
        double far = lamp.middle().minus(out.place()).dot(lamp.facing()) / toward;
        Vec on = out.place().plus(out.direction().times(far)).minus(lamp.middle());
        Vec up = lamp.facing().cross(lamp.right());
        return toward < 0
                && Math.abs(on.dot(lamp.right())) < lamp.widthMetres() / 2
                && Math.abs(on.dot(up)) < lamp.heightMetres() / 2;
    }

    /// A label on a clear thing: its print before, its paper behind; the parts view says whose it is.
    @Test
    void labelAndDropsOnAClearThing_areDrawn() {
        Art red = new Art(1, 1, new float[] {0.8f, 0, 0, 1});
        String vial =
                "diameter: 60 mm, height: 120 mm, body: clear, label: {width: 40 mm, height: 40 mm, bottom: 20 mm}";
        String beads = "place: {hero: {thing: tin, at: [0 mm, 0 mm], beads: {cover: 20 %, size: [1 mm, 2 mm]}}}";
        ShotSet set = SetShots.placed(vial, "", beads, Map.of("tin", red));
        var coat = (Coat.Clear) set.worldAt(0).parts().stream()
                .filter(part -> part.name().equals("hero"))
                .findFirst()
                .orElseThrow()
                .coat();
        assertThat(coat.label().orElseThrow().art()).contains(red);
        assertThat(coat.label().orElseThrow().paper().green()).isEqualTo(0.8);
        assertThat(coat.beads().orElseThrow().cover()).isEqualTo(0.2);
        assertThat(set.assumed())
                .contains("The label of hero is drawn matte, its back as bare paper.")
                .noneMatch(told -> told.contains("aren't drawn"));
        ShotSet dry = SetShots.placed(vial, "", "", Map.of("tin", red));
        Plate front = row(dry.at(0), new Aim(new Vec(0, -0.6, 0.04), 0, 0), 1e-6, 1, 1);
        assertThat(front.light(0, 0, 0) / dry.worldAt(0).surround().red()).isCloseTo(0.8, within(1e-6));
        assertThat(front.light(0, 0, 1)).isZero();
        Plate back = row(dry.at(0), new Aim(new Vec(0, 0.6, 0.04), Math.PI, 0), 1e-6, 1, 1);
        assertThat(back.light(0, 0, 1) / back.light(0, 0, 0))
                .isCloseTo(
                        dry.worldAt(0).surround().green()
                                / dry.worldAt(0).surround().red(),
                        within(0.05));
        assertThat(back.light(0, 0, 1)).isPositive();
        Tracer.Seen seen = dry.at(0).tracer().seen(dry.at(0).eye().sharp(), 0, 0);
        assertThat(dry.worldAt(0).parts().get(seen.part()).name()).isEqualTo("hero");
        assertThat(seen.mirrored()).isEqualTo(-1);
    }

    /// Foot, bend's end and top of a sweep with a gradient, lit evenly from all round: straight along its length.
    @Test
    void sweepsGradient_runsFromItsFootToItsTop() {
        String sweep = "sweep: {behind: 500 mm, radius: 200 mm, width: 2 m, height: 1 m, reflects: 60 %,"
                + " gradient: [100 %, 40 %]}";
        ShotSet set = SetShots.one(
                "diameter: 6 mm, height: 9 mm",
                LAMP,
                sweep + "\n    lights: {key: {light: strip," + " at: [0 mm, -900 mm, 900 mm]}}");
        double bend = 0.2 * Math.PI / 2;
        double all = bend + 0.8;
        double[][] places = {
            // y, z, way from the foot, facing
            {0.0, 0, 0},
            {0.25, 0, 0},
            {0.3 + 0.2 * Math.sin(Math.PI / 4), 0.2 - 0.2 * Math.cos(Math.PI / 4), bend / 2},
            {0.5, 0.2 + 1e-6, bend},
            {0.5, 0.6, bend + 0.4},
            {0.5, 0.999, all - 0.001},
        };
        for (double[] place : places) {
            Vec at = new Vec(0.1, place[0], place[1]);
            double angle = Math.clamp(place[2] / bend, 0, 1) * Math.PI / 2;
            Vec facing = new Vec(0, -Math.sin(angle), Math.cos(angle));
            Aim aim = Aim.toward(at.plus(facing.times(0.15)), at);
            double seen = row(set.at(0), aim, 1e-6, 1, 1).light(0, 0, 1);
            double falls = set.at(0)
                    .tracer()
                    .lux(new Patch(at.plus(facing.times(1e-5)), facing), 64, 1)
                    .green();
            double wanted = 0.6 * (1 + (0.4 - 1) * place[2] / all);
            assertThat(falls).isGreaterThan(10);
            assertThat(Math.PI * seen / falls).as("%.2f along", place[2]).isCloseTo(wanted, within(0.005));
        }
    }
}
