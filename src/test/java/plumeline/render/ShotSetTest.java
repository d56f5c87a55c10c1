package plumeline.render;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import plumeline.colour.Primaries;
import plumeline.colour.Rgb;
import plumeline.geom.Body;
import plumeline.geom.Pinhole;
import plumeline.geom.Point;
import plumeline.geom.Solid;
import plumeline.geom.Vec;
import plumeline.light.Patch;
import plumeline.lit.Lighting;
import plumeline.mirror.Finish;
import plumeline.scenery.Art;
import plumeline.scenery.Coat;
import plumeline.scenery.Form;
import plumeline.scenery.Light;
import plumeline.scenery.Part;
import plumeline.scenery.World;
import plumeline.stage.Scene;
import plumeline.trace.Plate;
import plumeline.trace.Tracer;

/// A staged shot as a world for rays.
final class ShotSetTest {
    private static final String TIN = "diameter: 60 mm, height: 90 mm";
    private static final String LAMP =
            "lights: {strip: {panel: [300 mm, 600 mm], gives: 2000 lx at 1 m, white: 5600 K}}";
    private static final String LIT = "lights: {key: {light: strip, at: [500 mm, -500 mm, 500 mm]}}";

    private static Part part(World world, String name) {
        return world.parts().stream()
                .filter(each -> each.name().equals(name))
                .findFirst()
                .orElseThrow();
    }

    private static Coat.Opaque opaque(ShotSet set, String name) {
        return (Coat.Opaque) part(set.worldAt(0), name).coat();
    }

    private static double luminance(Rgb rgb) {
        return Primaries.REC_709.toXyz(rgb).y();
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "gloss|Gloss",
                "matte|Matte",
                "satin|Satin",
                "mirror|Metal",
            })
    void finishes_areThoseOfWants(String word, String finish) {
        ShotSet set = SetShots.one(TIN + ", finish: " + word, "", "");
        assertThat(opaque(set, "hero").finish().getClass().getSimpleName()).isEqualTo(finish);
        assertThat(set.assumed()).noneMatch(told -> told.contains("finish"));
    }

    @Test
    void nothingWritten_isGreyAndGlossyAndTold() {
        ShotSet set = SetShots.one(TIN, "", "");
        assertThat(opaque(set, "hero").paint().body().green()).isEqualTo(0.5);
        assertThat(opaque(set, "hero").finish()).isEqualTo(Finish.Gloss.USUAL);
        assertThat(set.assumed())
                .contains(
                        "The finish of hero isn't written: drawn glossy.",
                        "The colour of hero isn't written: drawn grey, throwing back 50 %.",
                        "No lamp is written: lit evenly from all round.");
    }

    @Test
    void colour_isAsBrightAsReflectsSays() {
        ShotSet set = SetShots.one(TIN + ", colour: \"#800000\", reflects: 10 %", "", "");
        var body = opaque(set, "hero").paint().body();
        assertThat(luminance(body)).isEqualTo(0.1, within(1e-4));
        assertThat(body.green()).isLessThan(0.001);
    }

    @Test
    void colourBrighterThanItCanBe_keepsItsHue() {
        var body = opaque(SetShots.one(TIN + ", colour: \"#800000\", reflects: 90 %", "", ""), "hero")
                .paint()
                .body();
        assertThat(body.red()).isEqualTo(1, within(1e-9));
        assertThat(body.green()).isLessThan(0.01);
    }

    @Test
    void withoutLamps_midGreyIsRightlyExposed() {
        ShotSet set = SetShots.one(TIN, "", "");
        double needed = set.developing(0).setting().neededLux();
        Tracer tracer = set.at(0).tracer();
        double lux = luminance(tracer.lux(new Patch(new Vec(0, 0, 0.5), Vec.UP), 1, 1));
        assertThat(lux / needed).isEqualTo(1, within(1e-3));
    }

    @Test
    void light_isThatOfTheLightRoom() {
        ShotSet set = SetShots.one(TIN, LAMP, LIT);
        Scene scene = set.sceneAt(0);
        Patch patch = new Patch(new Vec(0, -0.031, 0.05), new Vec(0, -1, 0));
        double asked = new Lighting(set.stage().shot(), scene, set.stage().findTank())
                .light(patch)
                .lux();
        double lux = luminance(set.at(0).tracer().lux(patch, 64, 1));
        assertThat(asked).isGreaterThan(100);
        assertThat(lux / asked).isEqualTo(1, within(0.01));
    }

    @Test
    void lamp_shinesWhereItIsAndItsHousingIsBehind() {
        World world = SetShots.one(TIN, LAMP, LIT).worldAt(0);
        Light key = world.lights().getFirst();
        var face = (Light.Source.Face) key.source();
        assertThat(face.emitter().middle().distanceMetres(new Vec(0.5, -0.5, 0.5)))
                .isLessThan(1e-12);
        Body housing = ((Form.Posed) part(world, "key").form()).body();
        Vec out = housing.middle().minus(face.emitter().middle());
        assertThat(out.dot(face.emitter().facing())).isEqualTo(-0.0251, within(1e-9));
        assertThat(out.lengthMetres()).isEqualTo(0.0251, within(1e-9));
        assertThat(housing.solid()).isEqualTo(new Solid.Box(0.05, 0.3, 0.6));
    }

    @Test
    void card_throwsBackTheColourThatFallsOnIt() {
        String kit = "lights: {red: {panel: [300 mm, 600 mm], gives: 2000 lx at 1 m, primaries: typical},"
                + " card: {card: [400 mm, 400 mm], reflects: 80 %}}";
        String shot = "lights: {key: {light: red, at: [500 mm, -500 mm, 500 mm], hue: 30 deg},"
                + " white: {light: card, at: [-300 mm, 0 mm, 200 mm]}}";
        World world = SetShots.one(TIN, kit, shot).worldAt(0);
        Light card = world.lights().getLast();
        Light key = world.lights().getFirst();
        assertThat(card.name()).isEqualTo("white");
        assertThat(card.tint().red()).isEqualTo(key.tint().red(), within(1e-9));
        assertThat(((Light.Source.Face) card.source()).emitter().luminance()).isGreaterThan(0);
    }

    @Test
    void unknownLamp_isToldAndTheSetIsLitAllRound() {
        String kit = "lights: {strip: {panel: [300 mm, 600 mm]}}";
        ShotSet set = SetShots.one(TIN, kit, LIT);
        assertThat(set.worldAt(0).surround().least()).isGreaterThan(0);
        assertThat(set.assumed())
                .contains(
                        "Nobody says what key gives: drawn dark.",
                        "Of no lamp is it known how it shines: lit evenly from all round.");
    }

    @Test
    void sweep_liesOnTheTableAndBendsUp() {
        ShotSet set = SetShots.one(
                TIN,
                LAMP,
                LIT + "\n    sweep: {behind: 500 mm, radius: 200 mm, width: 2 m, height: 1 m, reflects: 60 %,"
                        + " gradient: [100 %, 40 %]}");
        List<Part> sweep = set.worldAt(0).parts().stream()
                .filter(each -> each.name().equals("the sweep"))
                .toList();
        assertThat(sweep).hasSize(3);
        var floor = (Form.Sheet) sweep.get(0).form();
        var bend = (Form.Bend) sweep.get(1).form();
        var wall = (Form.Sheet) sweep.get(2).form();
        assertThat(floor.middle().y() + floor.heightMetres() / 2).isEqualTo(0.3, within(1e-12));
        assertThat(bend.middle()).isEqualTo(new Vec(0, 0.3, 0.2));
        assertThat(wall.middle().y()).isEqualTo(0.5);
        assertThat(wall.middle().z() + wall.heightMetres() / 2).isEqualTo(1, within(1e-12));
        var top = ((Coat.Opaque) sweep.get(2).coat()).paint().fade().orElseThrow();
        var between = ((Coat.Opaque) sweep.get(1).coat()).paint().fade().orElseThrow();
        assertThat(top.top()).isEqualTo(0.4);
        assertThat(top.foot()).isEqualTo(between.top());
        assertThat(between.foot()).isEqualTo(1);
        assertThat(set.assumed()).noneMatch(told -> told.contains("sweep"));
    }

    @Test
    void clearVial_hasARoomAWallFurtherIn() {
        String vial = "profile: [[0 mm, 21 mm], [90 mm, 21 mm], [90 mm, 10 mm], [118 mm, 10 mm]], body: clear,"
                + " closed: yes, wall: {thickness: 2 mm, index: 1.52}, contents: {volume: 60 ml, index: 1.36}";
        var coat =
                (Coat.Clear) part(SetShots.one(vial, "", "").worldAt(0), "hero").coat();
        Coat.Room room = coat.room().orElseThrow();
        var form = (Solid.Revolved) room.solid();
        assertThat(room.bottomMetres()).isEqualTo(0.002, within(1e-12));
        assertThat(room.liquid().index()).isEqualTo(1.36);
        assertThat(coat.wall().index()).isEqualTo(1.52);
        assertThat(form.heightMetres()).isEqualTo(0.114, within(1e-9));
        assertThat(form.radiusAtMetres(0.08)).isEqualTo(0.019, within(1e-9));
        // The shoulder is as thick as the wall: at 88 mm over the base the room is already as slim as its neck.
        assertThat(form.radiusAtMetres(0.0865)).isEqualTo(0.008, within(1e-9));
        double poured = Math.PI * 0.019 * 0.019 * (room.levelMetres() - 0.002);
        assertThat(poured).isEqualTo(60e-6, within(1e-9));
    }

    @Test
    void solidRod_hasNoRoom() {
        var coat = (Coat.Clear) part(
                        SetShots.one("diameter: 6 mm, height: 90 mm, body: clear, wall: {thickness: 5 mm}", "", "")
                                .worldAt(0),
                        "hero")
                .coat();
        assertThat(coat.room()).isEmpty();
    }

    @Test
    void tintedVial_isAsDarkAsItsColourThroughItsMiddle() throws IOException {
        String vial = TIN + ", body: clear, wall: {thickness: 1 mm, index: 1.5}, colour: \"#bcbcbc\","
                + " contents: {volume: 100 ml, index: 1.5}";
        ShotSet tinted = SetShots.one(vial, "", "");
        ShotSet clear = SetShots.one(vial.replace(" colour: \"#bcbcbc\",", ""), "", "");
        // Seen over the table's edge, where the surround is behind it.
        double left = SetShots.draft(tinted, 90, 60).light(45, 31, 1)
                / SetShots.draft(clear, 90, 60).light(45, 31, 1);
        assertThat(left).isEqualTo(0.503, within(0.02));
    }

    @Test
    void art_isWhereTheUnrolledLabelSays() throws IOException {
        float[] texels = new float[4 * 4];
        Arrays.fill(texels, 1f);
        // Upper left red, upper right green, lower left blue, lower right white.
        texels[1] = texels[2] = texels[4] = texels[6] = texels[8] = texels[9] = 0.02f;
        var art = new Art(2, 2, texels);
        String tin = TIN + ", finish: matte, label: {width: 40 mm, height: 40 mm, bottom: 20 mm}";
        ShotSet set = SetShots.one(tin, "", "", Map.of("tin", art));
        Plate plate = SetShots.draft(set, 360, 240);
        assertThat(most(set, plate, -0.015, 0.055)).isEqualTo("r");
        assertThat(most(set, plate, 0.015, 0.055)).isEqualTo("g");
        assertThat(most(set, plate, -0.015, 0.025)).isEqualTo("b");
        assertThat(most(set, plate, 0.015, 0.025)).isEqualTo("rgb");
        assertThat(most(set, plate, 0.022, 0.055)).as("beside it").isEqualTo("rgb");
    }

    /// Which channels are bright at a place of the side, along it to the right and above the base.
    private static String most(ShotSet set, Plate plate, double rightMetres, double heightMetres) {
        double angle = rightMetres / 0.03;
        Scene scene = set.sceneAt(0);
        Vec place = new Vec(0.03 * Math.sin(angle), -0.03 * Math.cos(angle), heightMetres);
        Point point = new Pinhole(scene.aim()).project(place);
        int x = (int) ((point.x() / scene.picture().widthTangent() + 0.5) * plate.width());
        int y = (int) ((0.5 - point.y() / scene.picture().heightTangent()) * plate.height());
        StringBuilder channels = new StringBuilder();
        double all = Math.max(plate.light(x, y, 0), Math.max(plate.light(x, y, 1), plate.light(x, y, 2)));
        for (int i = 0; i < 3; i++) {
            if (plate.light(x, y, i) > 0.6 * all) {
                channels.append("rgb".charAt(i));
            }
        }
        return channels.toString();
    }

    @Test
    void eye_seesAsThePictureAndIsAsWideAsItsStop() {
        var look = SetShots.one(TIN, "", "").at(0);
        assertThat(look.eye().pupilMetres()).isEqualTo(0.05 / 16, within(1e-12));
        assertThat(look.eye().focusMetres()).isGreaterThan(0.5);
    }

    @Test
    void stillShot_keepsItsWorldBetweenInstants() {
        ShotSet set = SetShots.one(TIN, LAMP, LIT);
        assertThat(set.at(0).tracer()).isSameAs(set.at(0.1).tracer());
    }
}
