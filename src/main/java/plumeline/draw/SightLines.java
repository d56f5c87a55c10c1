package plumeline.draw;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import plumeline.geom.Aim;
import plumeline.geom.Point;
import plumeline.geom.Vec;
import plumeline.optics.TankView;
import plumeline.stage.Scene;
import plumeline.stage.TankWalls;

/// The lines from the lens point to the picture's left and right edges, as they run over the table, bent at a tank's
/// wall.
final class SightLines {
    private SightLines() {}

    /// Gives both lines as places in order from the lens point.
    static List<List<Vec>> of(Scene scene, Optional<TankWalls> tank, double lengthMetres) {
        double half = scene.picture().widthTangent() / 2;
        return List.of(line(scene, tank, -half, lengthMetres), line(scene, tank, half, lengthMetres));
    }

    private static List<Vec> line(Scene scene, Optional<TankWalls> tank, double tangent, double lengthMetres) {
        Aim aim = scene.aim();
        List<Vec> line = new ArrayList<>();
        line.add(aim.eye());
        Vec way = aim.forward().plus(aim.right().times(tangent)).unit();
        Vec straight = aim.eye().plus(way.times(lengthMetres));
        if (scene.projection() instanceof TankView view && tank.isPresent()) {
            double toWall =
                    -view.wall().normal().dot(aim.eye().minus(view.wall().through()))
                            / view.wall().normal().dot(way);
            if (toWall > 0 && toWall < lengthMetres) {
                line.add(aim.eye().plus(way.times(toWall)));
                line.add(view.placeBehind(new Point(tangent, 0), depthMetres(tank.get(), view)));
                return line;
            }
        }
        line.add(straight);
        return line;
    }

    /// How deep the tank is inside, across the wall that is looked through.
    private static double depthMetres(TankWalls tank, TankView view) {
        return Math.abs(
                tank.inside().high().minus(tank.inside().low()).dot(view.wall().normal()));
    }
}
