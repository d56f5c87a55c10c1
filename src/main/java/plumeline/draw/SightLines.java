package plumeline.draw;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.DoubleStream;
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

    /// Gives the axis and the lines to the picture's upper and lower edge as they are seen from the side. Each ends at
    /// the table, at a tank's floor, at the water's surface, and before a tank into which it would go over the rim.
    static List<List<Vec>> upright(Scene scene, Optional<TankWalls> tank, double lengthMetres) {
        double half = scene.picture().heightTangent() / 2;
        return DoubleStream.of(0, half, -half)
                .mapToObj(tangent -> upright(scene, tank, tangent, lengthMetres))
                .toList();
    }

    private static List<Vec> upright(Scene scene, Optional<TankWalls> tank, double tangent, double lengthMetres) {
        Point point = new Point(0, tangent);
        List<Vec> line = line(scene, tank, point, lengthMetres);
        if (line.size() == 3 && tank.isPresent()) {
            line = within(line, tank.get(), line(scene, Optional.empty(), point, lengthMetres));
        }
        return stopped(line, 1, 0);
    }

    private static List<Vec> within(List<Vec> line, TankWalls tank, List<Vec> straight) {
        Vec wall = line.get(1);
        Vec low = tank.outside().low();
        Vec high = tank.outside().high();
        boolean isPast = wall.x() < low.x() || wall.x() > high.x() || wall.z() < low.z();
        if (isPast || (wall.z() > high.z() && straight.getLast().z() >= wall.z())) {
            return straight;
        }
        if (wall.z() > high.z()) {
            return line.subList(0, 2);
        }
        return stopped(stopped(line, 2, tank.inside().low().z()), 2, tank.waterLineMetres());
    }

    /// A line up to where a piece of it, the first or a later one, crosses a height.
    private static List<Vec> stopped(List<Vec> line, int firstPiece, double heightMetres) {
        List<Vec> kept = new ArrayList<>(line.subList(0, Math.min(firstPiece, line.size())));
        for (int i = firstPiece; i < line.size(); i++) {
            Vec from = line.get(i - 1);
            Vec to = line.get(i);
            double before = from.z() - heightMetres;
            double after = to.z() - heightMetres;
            boolean crosses = before * after < 0;
            kept.add(crosses ? from.plus(to.minus(from).times(before / (before - after))) : to);
            if (crosses) {
                break;
            }
        }
        return kept;
    }

    private static List<Vec> line(Scene scene, Optional<TankWalls> tank, double tangent, double lengthMetres) {
        return line(scene, tank, new Point(tangent, 0), lengthMetres);
    }

    private static List<Vec> line(Scene scene, Optional<TankWalls> tank, Point picture, double lengthMetres) {
        Aim aim = scene.aim();
        List<Vec> line = new ArrayList<>();
        line.add(aim.eye());
        Vec way = aim.forward()
                .plus(aim.right().times(picture.x()))
                .plus(aim.up().times(picture.y()))
                .unit();
        Vec straight = aim.eye().plus(way.times(lengthMetres));
        if (scene.projection() instanceof TankView view && tank.isPresent()) {
            double toWall =
                    -view.wall().normal().dot(aim.eye().minus(view.wall().through()))
                            / view.wall().normal().dot(way);
            if (toWall > 0 && toWall < lengthMetres) {
                line.add(aim.eye().plus(way.times(toWall)));
                line.add(view.placeBehind(picture, depthMetres(tank.get(), view)));
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
