package plumeline.want;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import plumeline.geom.Barrel;
import plumeline.geom.Body;
import plumeline.geom.Bounds;
import plumeline.geom.Clearance;
import plumeline.geom.Plane;
import plumeline.geom.Vec;
import plumeline.plan.Kit;
import plumeline.plan.WantLine;
import plumeline.quantity.PaperUnit;
import plumeline.quantity.Print;
import plumeline.stage.Scene;
import plumeline.stage.TankWalls;

/// Nothing runs into anything: things, lamps, the camera with its barrel, and the tank's panes keep a stated air gap.
///
/// Margin in mm: the smallest clearance of each named body to every other one, less the gap. The barrel is taken as a
/// cylinder that ends at the lens point and reaches back along the axis; without one the lens point itself counts. The
/// tank is its five panes. The table isn't counted: what stands on it touches it. One part a named body.
///
/// @param line as written
/// @param bodies what must be clear
/// @param gapMetres air wanted, metres
/// @param barrel the lens's barrel
/// @param papers the unit of length that the papers speak
record Clear(WantLine line, List<Named> bodies, double gapMetres, Optional<Kit.Barrel> barrel, PaperUnit papers)
        implements Want {
    /// Beyond this nothing is near, millimetres.
    private static final double FAR_MILLIMETRES = 10_000;

    /// What a want names.
    sealed interface Named {
        record Thing(int index) implements Named {}

        record Lamp(int index) implements Named {}

        record Camera() implements Named {}

        record Tank() implements Named {}
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
                case Named.Camera() ->
                    Math.min(least(others, body -> toCamera(scene, body)), cameraToTank(scene, tank));
                case Named.Tank() -> Math.min(least(others, body -> toTank(body, tank)), cameraToTank(scene, tank));
            };
            parts[i] = Math.min(FAR_MILLIMETRES, Parts.MILLIMETRES * (metres - gapMetres));
        }
        return parts;
    }

    private double bodyClearance(Scene scene, int own, List<Body> all, Optional<TankWalls> tank) {
        Body body = all.get(own);
        double least = Math.min(toCamera(scene, body), toTank(body, tank));
        for (int i = 0; i < all.size(); i++) {
            if (i != own) {
                least = Math.min(least, Clearance.betweenMetres(body, all.get(i)));
            }
        }
        return least;
    }

    private static double least(List<Body> bodies, ToDoubleFunction<Body> metres) {
        return bodies.stream().mapToDouble(metres).min().orElse(Double.POSITIVE_INFINITY);
    }

    /// Wholly between the walls a body's bounds tell how near they are; else each pane is asked.
    private static double toTank(Body body, Optional<TankWalls> tank) {
        if (tank.isEmpty()) {
            return Double.POSITIVE_INFINITY;
        }
        Bounds inside = tank.get().inside();
        return Clearance.insideMetres(body, inside) >= 0
                ? Clearance.insideMetres(body, openAbove(inside))
                : least(tank.get().panes(), pane -> Clearance.betweenMetres(body, pane));
    }

    /// A tank has no lid.
    private static Bounds openAbove(Bounds inside) {
        Vec high = inside.high();
        return new Bounds(inside.low(), new Vec(high.x(), high.y(), Double.MAX_VALUE));
    }

    private double cameraToTank(Scene scene, Optional<TankWalls> tank) {
        return tank.isPresent() ? least(tank.get().panes(), pane -> toCamera(scene, pane)) : Double.POSITIVE_INFINITY;
    }

    private double toCamera(Scene scene, Body body) {
        return barrel.isPresent()
                ? Clearance.betweenMetres(body, posed(barrel.get(), scene))
                : Clearance.toMetres(body, scene.aim().eye());
    }

    private static Barrel posed(Kit.Barrel barrel, Scene scene) {
        double radius = barrel.diameter().si() / 2;
        Vec front = scene.aim().eye();
        Vec back = front.minus(scene.aim().forward().times(barrel.length().si()));
        return new Barrel(back, front, radius, radius);
    }

    @Override
    public Optional<String> findStanding(Moments moments, PaperUnit unit) {
        double[] parts = parts(moments);
        int worst = Parts.worstOf(parts);
        String size = Parts.distance(parts[worst], unit);
        String name = name(bodies.get(worst), moments);
        String asked = gapMetres > 0
                ? " than the " + new Print(unit).difference(gapMetres, Print.Hand.TAPE) + " of air asked for"
                : "";
        if (parts[worst] >= 0) {
            return Optional.of(
                    parts[worst] >= FAR_MILLIMETRES
                            ? "Clear; nothing is near."
                            : gapMetres > 0
                                    ? "Clear; round " + name + " " + size + " more" + asked + "."
                                    : "Clear; " + size + " of air round " + name + ".");
        }
        return Optional.of(
                gapMetres > 0
                        ? "Too close: round " + name + " " + size + " less" + asked + "."
                        : name + " runs " + size + " into something.");
    }

    private static String name(Named body, Moments moments) {
        return switch (body) {
            case Named.Thing(int index) -> Parts.name(moments, index);
            case Named.Lamp(int index) ->
                moments.stage().shot().lights().get(index).name();
            case Named.Camera() -> "the camera";
            case Named.Tank() -> "the tank";
        };
    }

    /// A camera may stand before the table and lower than its top, and on the table it may not: say so.
    @Override
    public Optional<String> findCaution(Moments moments) {
        if (!bodies.contains(new Named.Camera())) {
            return Optional.empty();
        }
        double least = moments.during(line.when()).stream()
                .mapToDouble(this::aboveTable)
                .min()
                .orElse(0);
        return least >= 0
                ? Optional.empty()
                : Optional.of("The lens reaches " + new Print(papers).length(-least)
                        + " below the table's top, which this want doesn't count.");
    }

    private double aboveTable(Scene scene) {
        return barrel.isPresent()
                ? Clearance.aboveMetres(posed(barrel.get(), scene), new Plane(Vec.ZERO, Vec.UP))
                : scene.aim().eye().z();
    }

    @Override
    public List<Relaxed> listRelaxed(double lack, Moments moments) {
        Print print = new Print(papers);
        double step = print.stepMetres(Print.Hand.TAPE);
        double easier = Math.floor((gapMetres - lack / Parts.MILLIMETRES) / step) * step;
        return easier < 0
                ? List.of()
                : List.of(new Relaxed(
                        new Clear(line, bodies, easier, barrel, papers),
                        "by " + print.length(easier) + " instead of " + print.length(gapMetres) + "."));
    }
}
