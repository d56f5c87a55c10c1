package plumeline.render;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import plumeline.geom.Barrel;
import plumeline.geom.Vec;
import plumeline.scenery.Coat;
import plumeline.scenery.Form;
import plumeline.scenery.Part;
import plumeline.stage.Scene;
import plumeline.stage.Stage;

/// Lines, rods and the nozzle as parts.
final class StrandsTest {
    private static final String HUNG = "place: {tin: {thing: tin, at: [0 mm, 0 mm, 50 mm], lines: 1,"
            + " line: {diameter: 0.3 mm, material: fluorocarbon}}}";

    private static List<Part> parts(Stage stage) {
        return Strands.parts(stage, stage.startValues(), scene(stage));
    }

    private static Scene scene(Stage stage) {
        return stage.scene(stage.startValues(), 0);
    }

    private static Barrel rod(Part part) {
        return ((Form.Rod) part.form()).barrel();
    }

    @Test
    void line_runsFromTheThingThroughTheSurface_atItsDiameter() {
        Stage stage = LooseShots.stage(LooseShots.CAMERA, LooseShots.TANK, HUNG);
        assertThat(parts(stage)).singleElement().satisfies(part -> {
            assertThat(part.name()).isEqualTo("tin-line");
            Barrel rod = rod(part);
            assertThat(rod.fromRadiusMetres()).isEqualTo(0.15e-3);
            assertThat(rod.toRadiusMetres()).isEqualTo(0.15e-3);
            // The tin's top is at 110 mm, the water at 168 mm; the foot a little inside the tin.
            assertThat(rod.from().z()).isBetween(0.109, 0.110);
            assertThat(rod.to().z()).isEqualTo(0.110 + 2, within(1e-9));
            assertThat(((Coat.Clear) part.coat()).wall().index()).isEqualTo(1.42);
        });
    }

    /// As wide in the picture as the small-angle rule says: diameter over depth, in pixels of a tangent.
    @Test
    void line_isSoManyPixelsWide() {
        Stage stage = LooseShots.stage(LooseShots.CAMERA, HUNG);
        Barrel rod = rod(parts(stage).getFirst());
        Scene scene = scene(stage);
        Vec middle = new Vec(rod.from().x(), rod.from().y(), 0.2);
        Vec aside = scene.aim().right().times(rod.fromRadiusMetres());
        double tangent = scene.projection().project(middle.plus(aside)).x()
                - scene.projection().project(middle.minus(aside)).x();
        // 0.3 mm at 600 mm, by a 50 mm lens focused there, 3840 px on 36 mm.
        double image = 50e-3 * 0.6 / (0.6 - 50e-3);
        double pixels = tangent * scene.picture().imageMetres() * 3840 / 36e-3;
        assertThat(pixels).isEqualTo(0.3e-3 / 0.6 * image * 3840 / 36e-3, within(0.01 * pixels));
    }

    @Test
    void nylonLine_whereNothingIsWritten() {
        Stage stage = LooseShots.stage(
                LooseShots.CAMERA, LooseShots.TANK, "place: {tin: {thing: tin, at: [0 mm, 0 mm, 50 mm], lines: 2}}");
        assertThat(((Coat.Clear) parts(stage).getFirst().coat()).wall().index()).isEqualTo(1.53);
        assertThat(Strands.assumed(stage)).anyMatch(words -> words.contains("0.5 mm"));
    }

    @Test
    void rig_isSteelAndEndsWhereItIsWritten() {
        Stage stage = LooseShots.stage(
                LooseShots.CAMERA,
                "place: {tin: {thing: tin, at: [0 mm, 0 mm, 50 mm],"
                        + " rig: {diameter: 6 mm, to: [0 mm, 400 mm, 80 mm]}}}");
        assertThat(parts(stage)).singleElement().satisfies(part -> {
            assertThat(part.name()).isEqualTo("tin-rig");
            assertThat(rod(part).fromRadiusMetres()).isEqualTo(0.003);
            assertThat(rod(part).to()).isEqualTo(new Vec(0, 0.4, 0.08));
            assertThat(part.coat()).isInstanceOf(Coat.Opaque.class);
        });
    }

    @Test
    void nozzle_isAPipeOverItsMouth() {
        Stage stage = LooseShots.stage(LooseShots.CAMERA, LooseShots.TANK, LooseShots.TIN, LooseShots.INK);
        assertThat(parts(stage)).singleElement().satisfies(part -> {
            assertThat(part.name()).isEqualTo("nozzle");
            assertThat(rod(part).from()).isEqualTo(new Vec(0, -0.005, 0.15));
            assertThat(rod(part).to()).isEqualTo(new Vec(0, -0.005, 0.30));
            // Its bore of 4 mm and a millimetre of wall.
            assertThat(rod(part).fromRadiusMetres()).isEqualTo(0.003);
        });
    }
}
