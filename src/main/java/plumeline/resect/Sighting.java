package plumeline.resect;

import java.util.List;
import java.util.Optional;
import plumeline.geom.Body;
import plumeline.geom.Bounds;
import plumeline.geom.Pinhole;
import plumeline.geom.Point;
import plumeline.geom.Vec;
import plumeline.optics.TankView;
import plumeline.stage.PlaceSight;
import plumeline.stage.Scene;
import plumeline.stage.Sightlines;

/// How a scene's lens sees landmarks, each by one fixed way of sight: straight, or through the tank's facing wall.
///
/// A rim's end is where sight, after its last bend, grazes the mantle: with the ray's last corner e before it, in the
/// body's own frame, `r − e·(cos φ, sin φ) − k (h − e₃) = 0`, r and h being the rim's radius and height and k the
/// mantle's slope. In a pinhole picture e is the lens point and this is exact; through a wall e is where the ray leaves
/// the pane, found again from each φ until it stays.
///
/// **Source:** own derivation; normal and sight at right angles.
final class Sighting {
    private static final int MOST_TURNS = 60;
    private static final double SETTLED = 1e-13;

    private Sighting() {}

    /// By which way a place is seen.
    enum By {
        AIR,
        WALL
    }

    /// By which way a place is seen; empty where that isn't computed.
    static Optional<By> way(Scene scene, Vec place) {
        return switch (PlaceSight.of(scene, place)) {
            case PlaceSight.Seen seen -> Optional.of(seen.way() == PlaceSight.Way.AIR ? By.AIR : By.WALL);
            case PlaceSight.Behind() -> Optional.empty();
            case PlaceSight.Unknown _ -> Optional.empty();
        };
    }

    /// Where a place shows, tangents; empty where it isn't before the lens.
    static Optional<Point> point(Scene scene, By by, Vec place) {
        Pinhole straight = new Pinhole(scene.aim());
        if (by == By.WALL && wall(scene).isPresent()) {
            TankView view = wall(scene).get();
            return view.depth(place) > PlaceSight.NEAREST_METRES ? Optional.of(view.project(place)) : Optional.empty();
        }
        return straight.depth(place) > PlaceSight.NEAREST_METRES
                ? Optional.of(straight.project(place))
                : Optional.empty();
    }

    private static Optional<TankView> wall(Scene scene) {
        return scene.lines() instanceof Sightlines.WithTank tank && tank.through() instanceof TankView view
                ? Optional.of(view)
                : Optional.empty();
    }

    /// The place in space that a landmark is, as seen now; empty where the outline has no such place.
    static Optional<Vec> place(Scene scene, By by, Landmark landmark) {
        return switch (landmark) {
            case Landmark.OnThing on ->
                Optional.of(scene.things().get(on.thing()).place(on.own()));
            case Landmark.Mouth _ -> scene.nozzle();
            case Landmark.OnTank on -> tank(scene, on);
            case Landmark.Rim rim -> rim(scene, by, rim);
        };
    }

    private static Optional<Vec> rim(Scene scene, By by, Landmark.Rim rim) {
        Body body = scene.things().get(rim.thing());
        Vec eye = scene.aim().eye();
        double before = Double.NaN;
        for (int i = 0; i < MOST_TURNS; i++) {
            Vec own = body.own(eye);
            double flat = Math.hypot(own.x(), own.y());
            double cosine = (rim.radiusMetres() - rim.slope() * (rim.heightMetres() - own.z())) / flat;
            if (!(Math.abs(cosine) < 1)) {
                return Optional.empty();
            }
            double aside = rim.side() == Landmark.Side.LEFT ? -Math.acos(cosine) : Math.acos(cosine);
            double angle = Math.atan2(own.y(), own.x()) + aside;
            Vec place = body.place(new Vec(
                    rim.radiusMetres() * Math.cos(angle), rim.radiusMetres() * Math.sin(angle), rim.heightMetres()));
            if (by == By.AIR || Math.abs(angle - before) < SETTLED) {
                return Optional.of(place);
            }
            before = angle;
            eye = corner(scene, place);
        }
        return Optional.empty();
    }

    /// The last place at which sight to a place is bent, else the lens point.
    static Vec corner(Scene scene, Vec place) {
        if (wall(scene).isEmpty()) {
            return scene.aim().eye();
        }
        List<Vec> path = wall(scene).get().path(place);
        return path.get(path.size() - 2);
    }

    private static Optional<Vec> tank(Scene scene, Landmark.OnTank on) {
        if (!(scene.lines() instanceof Sightlines.WithTank tank) || !(tank.through() instanceof TankView view)) {
            return Optional.empty();
        }
        boolean isWater = on.corner() == Landmark.Corner.WATER;
        Bounds block = isWater ? tank.walls().inside() : tank.walls().outside();
        double height = switch (on.corner()) {
            case RIM -> block.high().z();
            case FOOT -> block.low().z();
            case WATER -> tank.walls().waterLineMetres();
        };
        // The wall's own right, as one sees it who looks at it: its normal, toward the lens, a quarter turn on.
        Vec normal = view.wall().normal();
        Vec right = new Vec(-normal.y(), normal.x(), 0).times(on.side() == Landmark.Side.LEFT ? -1 : 1);
        Vec low = block.low();
        Vec high = block.high();
        return Optional.of(new Vec(
                right.x() + normal.x() > 0 ? high.x() : low.x(),
                right.y() + normal.y() > 0 ? high.y() : low.y(),
                height));
    }
}
