package plumeline.want;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import plumeline.geom.Barrel;
import plumeline.geom.Body;
import plumeline.geom.Bounds;
import plumeline.geom.Clearance;
import plumeline.geom.Plane;
import plumeline.geom.Pose;
import plumeline.geom.Solid;
import plumeline.geom.Vec;
import plumeline.plan.Kit;
import plumeline.plan.WantLine;
import plumeline.stage.Scene;
import plumeline.stage.TankWalls;

/// Nothing runs into anything: things, lamps, the camera with its barrel, and the tank's walls keep a stated air gap.
///
/// Margin in mm: the smallest clearance of each named body to every other one, less the gap. The barrel is taken as a
/// cylinder that ends at the lens point and reaches back along the axis; without one the lens point itself counts. A
/// thing that hangs in the tank is measured to its walls from inside. One part a named body.
///
/// @param line as written
/// @param bodies what must be clear
/// @param gapMetres air wanted, metres
/// @param barrel the lens's barrel
record Clear(WantLine line, List<Named> bodies, double gapMetres, Optional<Kit.Barrel> barrel) implements Want {
    /// Beyond this nothing is near, millimetres.
    private static final double FAR_MILLIMETRES = 10_000;

    private static final double NO_LID_METRES = 100;

    /// What a want names.
    sealed interface Named {
        record Thing(int index) implements Named {}

        record Lamp(int index) implements Named {}

        record Camera() implements Named {}
    }

    Clear {
        bodies = List.copyOf(bodies);
    }

    @Override
    public String unit() {
        return "mm";
    }

    @Override
    public double[] parts(Moments moments) {
        return Parts.worst(
                moments.during(line.when()),
                scene -> partsIn(scene, moments.stage().findTank()));
    }

    private double[] partsIn(Scene scene, Optional<TankWalls> tank) {
        double[] parts = new double[bodies.size()];
        List<Body> others = new ArrayList<>(scene.things());
        others.addAll(scene.lamps());
        for (int i = 0; i < parts.length; i++) {
            double metres = switch (bodies.get(i)) {
                case Named.Thing(int index) -> bodyClearance(scene, index, others, tank);
                case Named.Lamp(int index) ->
                    bodyClearance(scene, scene.things().size() + index, others, tank);
                case Named.Camera() -> cameraClearance(scene, others, tank);
            };
            parts[i] = Math.min(FAR_MILLIMETRES, Parts.MILLIMETRES * (metres - gapMetres));
        }
        return parts;
    }

    private double bodyClearance(Scene scene, int own, List<Body> all, Optional<TankWalls> tank) {
        Body body = all.get(own);
        double least = toCamera(scene, body);
        for (int i = 0; i < all.size(); i++) {
            if (i != own) {
                least = Math.min(least, Clearance.betweenMetres(body, all.get(i)));
            }
        }
        if (tank.isPresent()) {
            least = Math.min(least, toTank(body, tank.get()));
        }
        return least;
    }

    private static double toTank(Body body, TankWalls tank) {
        return holds(tank.inside(), body.middle())
                ? Clearance.insideMetres(body, openAbove(tank.inside()))
                : Clearance.betweenMetres(body, block(tank.outside()));
    }

    private double cameraClearance(Scene scene, List<Body> others, Optional<TankWalls> tank) {
        double least = Double.POSITIVE_INFINITY;
        for (Body other : others) {
            least = Math.min(least, toCamera(scene, other));
        }
        if (tank.isPresent()) {
            least = Math.min(least, toCamera(scene, block(tank.get().outside())));
        }
        return Math.min(least, aboveTable(scene));
    }

    private double toCamera(Scene scene, Body body) {
        return barrel.isPresent()
                ? Clearance.betweenMetres(body, posed(barrel.get(), scene))
                : Clearance.toMetres(body, scene.aim().eye());
    }

    private double aboveTable(Scene scene) {
        Plane table = new Plane(Vec.ZERO, Vec.UP);
        return barrel.isPresent()
                ? Clearance.aboveMetres(posed(barrel.get(), scene), table)
                : scene.aim().eye().z();
    }

    private static Barrel posed(Kit.Barrel barrel, Scene scene) {
        double radius = barrel.diameter().si() / 2;
        Vec front = scene.aim().eye();
        Vec back = front.minus(scene.aim().forward().times(barrel.length().si()));
        return new Barrel(back, front, radius, radius);
    }

    private static boolean holds(Bounds room, Vec place) {
        return place.x() > room.low().x()
                && place.x() < room.high().x()
                && place.y() > room.low().y()
                && place.y() < room.high().y()
                && place.z() > room.low().z();
    }

    /// A tank has no lid: only its sides and its floor are near.
    private static Bounds openAbove(Bounds inside) {
        return new Bounds(inside.low(), new Vec(inside.high().x(), inside.high().y(), NO_LID_METRES));
    }

    private static Body block(Bounds bounds) {
        Vec size = bounds.high().minus(bounds.low());
        Vec base = new Vec(
                bounds.low().x() + size.x() / 2,
                bounds.low().y() + size.y() / 2,
                bounds.low().z());
        return new Body(new Solid.Box(size.x(), size.y(), size.z()), new Pose(base, 0, 0));
    }

    @Override
    public Optional<Relaxed> findRelaxed(double lack) {
        double easier = Math.floor(gapMetres * Parts.MILLIMETRES - lack) / Parts.MILLIMETRES;
        return easier < 0
                ? Optional.empty()
                : Optional.of(new Relaxed(
                        new Clear(line, bodies, easier, barrel),
                        "by " + Math.round(easier * Parts.MILLIMETRES) + " mm instead of "
                                + Math.round(gapMetres * Parts.MILLIMETRES) + " mm."));
    }
}
