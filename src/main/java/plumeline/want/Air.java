package plumeline.want;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import plumeline.geom.Barrel;
import plumeline.geom.Body;
import plumeline.geom.Bounds;
import plumeline.geom.Clearance;
import plumeline.geom.Vec;
import plumeline.plan.Kit;
import plumeline.stage.Scene;
import plumeline.stage.TankWalls;

/// How far what stands in a shot is apart at one instant: things, lamps, the camera with its barrel, the tank's panes.
///
/// The barrel is a cylinder that ends at the lens point and reaches back along the axis; without one the lens point
/// itself counts.
///
/// @param scene the instant
/// @param tank the tank's walls
/// @param barrel the lens's barrel
record Air(Scene scene, Optional<TankWalls> tank, Optional<Kit.Barrel> barrel) {
    /// What stands in a shot.
    sealed interface Standing {
        record Thing(int index) implements Standing {}

        record Lamp(int index) implements Standing {}

        record Camera() implements Standing {}

        record Tank() implements Standing {}
    }

    /// Gives all that stands here.
    List<Standing> all() {
        List<Standing> all = new ArrayList<>();
        for (int i = 0; i < scene.things().size(); i++) {
            all.add(new Standing.Thing(i));
        }
        for (int i = 0; i < scene.lamps().size(); i++) {
            all.add(new Standing.Lamp(i));
        }
        all.add(new Standing.Camera());
        if (tank.isPresent()) {
            all.add(new Standing.Tank());
        }
        return all;
    }

    /// Gives a clearance that two have at least, at next to no cost, metres.
    double atLeastMetres(Standing one, Standing other) {
        Optional<Body> body = findBody(one);
        if (body.isEmpty()) {
            return findBody(other).isPresent() ? atLeastMetres(other, one) : Double.NEGATIVE_INFINITY;
        }
        return switch (other) {
            case Standing.Thing(int index) ->
                Clearance.atLeastMetres(body.get(), scene.things().get(index));
            case Standing.Lamp(int index) ->
                Clearance.atLeastMetres(body.get(), scene.lamps().get(index));
            case Standing.Camera() -> {
                double half = barrel.map(own -> own.length().si() / 2).orElse(0.0);
                double radius = barrel.map(own -> own.diameter().si() / 2).orElse(0.0);
                Vec middle = scene.aim().eye().minus(scene.aim().forward().times(half));
                yield Clearance.atLeastMetres(body.get(), middle, Math.hypot(half, radius));
            }
            case Standing.Tank() -> Double.NEGATIVE_INFINITY;
        };
    }

    /// Gives the clearance of two, metres.
    double betweenMetres(Standing one, Standing other) {
        Optional<Body> body = findBody(one);
        if (body.isEmpty()) {
            return findBody(other).isPresent() ? betweenMetres(other, one) : cameraToTank();
        }
        return switch (other) {
            case Standing.Thing(int index) ->
                Clearance.betweenMetres(body.get(), scene.things().get(index));
            case Standing.Lamp(int index) ->
                Clearance.betweenMetres(body.get(), scene.lamps().get(index));
            case Standing.Camera() -> toCamera(body.get());
            case Standing.Tank() -> tank.map(walls -> toTank(body.get(), walls)).orElse(Double.POSITIVE_INFINITY);
        };
    }

    /// Gives the clearance of one to a pane of glass, metres.
    double toPaneMetres(Standing one, Body pane) {
        return findBody(one).map(body -> Clearance.betweenMetres(body, pane)).orElseGet(() -> toCamera(pane));
    }

    /// Gives bounds that one doesn't leave where it stands, however a lamp or the camera turns there.
    Bounds bounds(Standing one) {
        return switch (one) {
            case Standing.Thing(int index) -> scene.things().get(index).bounds();
            case Standing.Lamp(int index) -> {
                Body lamp = scene.lamps().get(index);
                double reach = lamp.solid().reachMetres();
                double half = lamp.solid().heightMetres() / 2;
                yield about(lamp.middle(), new Vec(reach, reach, half));
            }
            case Standing.Camera() -> {
                double reach = barrel.map(own ->
                                Math.hypot(own.length().si(), own.diameter().si() / 2))
                        .orElse(0.0);
                yield about(scene.aim().eye(), new Vec(reach, reach, reach));
            }
            case Standing.Tank() -> tank.orElseThrow().outside();
        };
    }

    private static Bounds about(Vec middle, Vec half) {
        return new Bounds(middle.minus(half), middle.plus(half));
    }

    /// Says whether one stands just as it does at another instant of the same shot.
    boolean isAsAt(Air other, Standing one) {
        return posed(one).equals(other.posed(one));
    }

    /// Gives what decides how far one is from others: its shape where it stands.
    Record posed(Standing one) {
        return switch (one) {
            case Standing.Thing(int index) -> scene.things().get(index);
            case Standing.Lamp(int index) -> scene.lamps().get(index);
            case Standing.Camera() ->
                barrel.<Record>map(own -> posed(own, scene)).orElse(scene.aim().eye());
            case Standing.Tank() -> tank.orElseThrow();
        };
    }

    private Optional<Body> findBody(Standing one) {
        return switch (one) {
            case Standing.Thing(int index) -> Optional.of(scene.things().get(index));
            case Standing.Lamp(int index) -> Optional.of(scene.lamps().get(index));
            case Standing.Camera(), Standing.Tank() -> Optional.empty();
        };
    }

    /// Wholly between the walls a body's bounds tell how near they are; else each pane is asked.
    private static double toTank(Body body, TankWalls walls) {
        return Clearance.insideMetres(body, walls.inside()) >= 0
                ? Clearance.insideMetres(body, openAbove(walls.inside()))
                : walls.panes().stream()
                        .mapToDouble(pane -> Clearance.betweenMetres(body, pane))
                        .min()
                        .orElseThrow();
    }

    /// A tank has no lid.
    private static Bounds openAbove(Bounds inside) {
        Vec high = inside.high();
        return new Bounds(inside.low(), new Vec(high.x(), high.y(), Double.MAX_VALUE));
    }

    private double cameraToTank() {
        return tank.stream()
                .flatMap(walls -> walls.panes().stream())
                .mapToDouble(this::toCamera)
                .min()
                .orElse(Double.POSITIVE_INFINITY);
    }

    private double toCamera(Body body) {
        return barrel.isPresent()
                ? Clearance.betweenMetres(body, posed(barrel.get(), scene))
                : Clearance.toMetres(body, scene.aim().eye());
    }

    /// Gives the barrel where the camera holds it.
    static Barrel posed(Kit.Barrel barrel, Scene scene) {
        double radius = barrel.diameter().si() / 2;
        Vec front = scene.aim().eye();
        Vec back = front.minus(scene.aim().forward().times(barrel.length().si()));
        return new Barrel(back, front, radius, radius);
    }
}
