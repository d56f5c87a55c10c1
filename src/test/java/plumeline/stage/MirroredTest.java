package plumeline.stage;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import plumeline.geom.Point;
import plumeline.geom.Vec;
import plumeline.optics.Bent;
import plumeline.optics.Boundary;
import plumeline.optics.TankView;

/// Images in the tank's surface and side walls against rays that are traced from the lens point, boundary by boundary.
final class MirroredTest {
    /// Inside x −225 to 225, y −120 to 180, floor at 8 mm; water up to 268 mm.
    private static final String TANK = "tank: {tank: glass, at: [0 mm, 30 mm], water: 260 mm}";

    private static final String LOW = Staged.CAMERA.replace("48 mm", "60 mm");

    private static List<Mirrored> images(String camera, String place) {
        Stage stage = Staged.stage(camera, "place: {hero: {thing: tin, at: " + place + "}}", TANK);
        return Mirrored.of(stage.findTank().orElseThrow(), Staged.at(stage, 0));
    }

    private static Mirrored image(List<Mirrored> images, Mirrored.By by) {
        return images.stream().filter(one -> one.by() == by).findFirst().orElseThrow();
    }

    /// The ray towards the seen place of the image goes through glass into water, is reflected whole where it meets
    /// the surface, and then comes to the thing's own middle.
    @Test
    void rayTowardsTheSurfacesImage_isReflectedToTheThing() {
        Mirrored mirrored = image(images(LOW, "[40 mm, 20 mm, 160 mm]"), Mirrored.By.SURFACE);
        reflectAndCompare(mirrored, Vec.UP, 0.268, new Vec(0.04, 0.02, 0.208));
    }

    @Test
    void rayTowardsAWallsImage_isReflectedToTheThing() {
        Mirrored right = images(LOW, "[150 mm, 20 mm, 160 mm]").stream()
                .filter(one ->
                        one.by() == Mirrored.By.WALL && one.image().middle().x() > 0)
                .findFirst()
                .orElseThrow();
        assertThat(right.image().middle().x()).isEqualTo(0.3, within(1e-12));
        reflectAndCompare(right, new Vec(1, 0, 0), 0.225, new Vec(0.15, 0.02, 0.208));
    }

    private static void reflectAndCompare(Mirrored mirrored, Vec normal, double at, Vec thing) {
        TankView view = mirrored.view();
        Point seen = view.project(mirrored.image().middle());
        Vec ray = view.aim()
                .forward()
                .plus(view.aim().right().times(seen.x()))
                .plus(view.aim().up().times(seen.y()));
        Vec outer = view.aim().eye().plus(ray.times((-0.128 - view.aim().eye().y()) / ray.y()));
        Vec inGlass = passed(new Boundary(1, 1.52).bend(ray, new Vec(0, 1, 0)));
        Vec inner = outer.plus(inGlass.times(0.008 / inGlass.y()));
        Vec inWater = passed(new Boundary(1.52, 1.333).bend(inGlass, new Vec(0, 1, 0)));
        Vec met = inner.plus(inWater.times((at - inner.dot(normal)) / inWater.dot(normal)));
        Vec back = switch (new Boundary(1.333, 1).bend(inWater, normal)) {
            case Bent.Reflected(Vec direction) -> direction;
            case Bent.Passed passed -> throw new AssertionError("light leaves the water: " + passed);
        };
        Vec missed = thing.minus(met);
        assertThat(missed.minus(back.times(missed.dot(back))).lengthMetres()).isLessThan(1e-6);
    }

    private static Vec passed(Bent bent) {
        return switch (bent) {
            case Bent.Passed(Vec direction) -> direction;
            case Bent.Reflected reflected -> throw new AssertionError("nothing passes: " + reflected);
        };
    }

    /// **Source:** Snell's law: the wall beside is a mirror for rays that come to the front glass at less than
    /// asin √(n² − 1) = 61.8 degrees (n = 1.333), and is looked through by steeper ones.
    @ParameterizedTest
    @ValueSource(doubles = {58, 61.5, 62.1, 65})
    void sideWall_isAMirrorUpTo62Degrees(double degrees) {
        double water = Math.asin(Math.sin(Math.toRadians(degrees)) / 1.333);
        double glass = Math.asin(Math.sin(Math.toRadians(degrees)) / 1.52);
        // To the image of x = 180 mm in the wall at 225 mm, at y 20 mm, level with the lens.
        double aside = 140 * Math.tan(water) + 8 * Math.tan(glass);
        double x = 270 - aside - 172 * Math.tan(Math.toRadians(degrees));
        String camera = String.format(
                Locale.ROOT,
                "camera: {body: main, lens: fifty, at: [%.3f mm, -300 mm, 148 mm], turn: %.1f deg}",
                x,
                degrees);
        List<Mirrored> images = images(camera, "[180 mm, 20 mm, 100 mm]");
        assertThat(images.stream().anyMatch(one -> one.image().middle().x() > 0.225))
                .isEqualTo(degrees < 61.8);
    }

    @Test
    void thingCutByTheWaterLine_orNoWater_orACameraAbove_hasNoImage() {
        assertThat(images(LOW, "[0 mm, 20 mm, 200 mm]")).isEmpty();
        Stage dry = Staged.stage(
                LOW, Staged.HERO.replace("[0 mm, 0 mm]", "[0 mm, 0 mm, 8 mm]"), TANK.replace(", water: 260 mm", ""));
        assertThat(Mirrored.of(dry.findTank().orElseThrow(), Staged.at(dry, 0))).isEmpty();
        Stage above = Staged.stage(
                "camera: {body: main, lens: fifty, at: [0 mm, 0 mm, 900 mm], aim: hero}",
                Staged.HERO.replace("[0 mm, 0 mm]", "[0 mm, 0 mm, 8 mm]"),
                TANK);
        assertThat(Mirrored.of(above.findTank().orElseThrow(), Staged.at(above, 0)))
                .isEmpty();
    }
}
