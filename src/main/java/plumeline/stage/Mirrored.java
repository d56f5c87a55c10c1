package plumeline.stage;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import plumeline.geom.Body;
import plumeline.geom.Mirror;
import plumeline.geom.Plane;
import plumeline.geom.Vec;
import plumeline.optics.Boundary;
import plumeline.optics.FlatWall;
import plumeline.optics.Layer;
import plumeline.optics.TankView;

/// What a tank's water shows a second time: seen from below, its surface is a mirror, and so are the walls beside the
/// one that is looked through. Light that comes to them more slantingly than the critical angle is reflected whole.
///
/// For things wholly in the water, seen through the wall that faces the camera. What is reflected twice isn't told, nor
/// what the floor and the wall behind reflect in part.
///
/// @param thing index of the thing in [Scene#things]
/// @param by what mirrors it
/// @param image where the thing seems to be
/// @param view how the image is seen: through the wall, as if the water went on behind the mirror
public record Mirrored(int thing, By by, Body image, TankView view) {
    /// What mirrors.
    public enum By {
        /// The water's surface, from below.
        SURFACE,
        /// A wall beside the one that is looked through.
        WALL
    }

    /// Finds the images at an instant.
    ///
    /// @param walls the tank
    /// @param scene the instant
    /// @return the images that the camera's rays can meet; none where the camera doesn't look through a wall
    public static List<Mirrored> of(TankWalls walls, Scene scene) {
        if (!(scene.projection() instanceof TankView plain)
                || walls.waterLineMetres() <= walls.inside().low().z()) {
            return List.of();
        }
        TankView view =
                new TankView(scene.aim(), plain.wall(), FlatWall.ofWater(walls.paneMetres()), Double.POSITIVE_INFINITY);
        List<Mirrored> images = new ArrayList<>();
        for (int i = 0; i < scene.things().size(); i++) {
            Body body = scene.things().get(i);
            if (isWithin(body, walls)) {
                for (Silvered mirror : mirrors(walls, plain.wall())) {
                    find(i, body, mirror, view).ifPresent(images::add);
                }
            }
        }
        return images;
    }

    private record Silvered(By by, Mirror mirror, Vec normal) {}

    private static List<Silvered> mirrors(TankWalls walls, Plane facing) {
        Vec low = walls.inside().low();
        Vec high = walls.inside().high();
        Silvered surface = new Silvered(By.SURFACE, new Mirror(Mirror.Axis.Z, walls.waterLineMetres()), Vec.UP);
        return facing.normal().x() == 0
                ? List.of(
                        surface,
                        new Silvered(By.WALL, new Mirror(Mirror.Axis.X, low.x()), new Vec(1, 0, 0)),
                        new Silvered(By.WALL, new Mirror(Mirror.Axis.X, high.x()), new Vec(1, 0, 0)))
                : List.of(
                        surface,
                        new Silvered(By.WALL, new Mirror(Mirror.Axis.Y, low.y()), new Vec(0, 1, 0)),
                        new Silvered(By.WALL, new Mirror(Mirror.Axis.Y, high.y()), new Vec(0, 1, 0)));
    }

    private static boolean isWithin(Body body, TankWalls walls) {
        var own = body.bounds();
        Vec low = walls.inside().low();
        Vec high = walls.inside().high();
        return own.low().x() >= low.x()
                && own.high().x() <= high.x()
                && own.low().y() >= low.y()
                && own.high().y() <= high.y()
                && own.low().z() >= low.z()
                && own.high().z() <= walls.waterLineMetres();
    }

    private static Optional<Mirrored> find(int thing, Body body, Silvered mirror, TankView view) {
        Body image = mirror.mirror().image(body);
        List<Vec> path = view.path(image.middle());
        Vec inWater = path.getLast().minus(path.get(path.size() - 2)).unit();
        double toNormal = Math.acos(Math.min(1, Math.abs(inWater.dot(mirror.normal()))));
        OptionalDouble bent = new Boundary(Layer.WATER_INDEX, 1).findBentRadians(toNormal);
        return bent.isPresent() ? Optional.empty() : Optional.of(new Mirrored(thing, mirror.by(), image, view));
    }
}
