package plumeline.want;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
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
/// Margin in mm: the smallest clearance of each named body to every other one, less the gap, as [Air] has it. The
/// tank is its five panes. The table isn't counted: what stands on it touches it. One part a named body.
///
/// @param line as written
/// @param bodies what must be clear
/// @param gapMetres air wanted, metres
/// @param barrel the lens's barrel
/// @param papers the unit of length that the papers speak
record Clear(WantLine line, List<Air.Standing> bodies, double gapMetres, Optional<Kit.Barrel> barrel, PaperUnit papers)
        implements Want {
    /// Beyond this nothing is near, millimetres.
    private static final double FAR_MILLIMETRES = 10_000;

    Clear {
        bodies = List.copyOf(bodies);
    }

    @Override
    public String unit() {
        return "mm";
    }

    @Override
    public double[] parts(Moments moments) {
        List<Instant> instants = instants(moments);
        return bodies.stream()
                .mapToDouble(own -> nearest(own, instants).metres())
                .map(metres -> Math.min(FAR_MILLIMETRES, Parts.MILLIMETRES * (metres - gapMetres)))
                .toArray();
    }

    /// An instant and what stands elsewhere than an instant before; all of it at first.
    private record Instant(Air now, List<Air.Standing> moved) {}

    private List<Instant> instants(Moments moments) {
        Optional<TankWalls> tank = moments.stage().findTank();
        List<Instant> instants = new ArrayList<>();
        for (Scene scene : moments.during(line.when())) {
            Air now = new Air(scene, tank, barrel);
            List<Air.Standing> moved = now.all();
            if (!instants.isEmpty()) {
                Air before = instants.getLast().now();
                moved.removeIf(one -> now.isAsAt(before, one));
            }
            instants.add(new Instant(now, moved));
        }
        return instants;
    }

    /// Two at an instant.
    private record Pair(Air now, Air.Standing own, Air.Standing other) {
        double atLeastMetres() {
            return now.atLeastMetres(own, other);
        }

        Near measured() {
            return new Near(other, now.betweenMetres(own, other));
        }
    }

    private record Near(Air.Standing other, double metres) {}

    /// What one comes nearest to in all the instants: the pair that can be nearest is measured first, then those that
    /// can still be nearer.
    private static Near nearest(Air.Standing own, List<Instant> instants) {
        List<Pair> pairs = changing(own, instants);
        if (pairs.isEmpty()) {
            return new Near(own, Double.POSITIVE_INFINITY);
        }
        double[] atLeast = pairs.stream().mapToDouble(Pair::atLeastMetres).toArray();
        int first = Parts.worstOf(atLeast);
        Near nearest = pairs.get(first).measured();
        for (int i = 0; i < atLeast.length; i++) {
            if (i != first && atLeast[i] < nearest.metres()) {
                Near near = pairs.get(i).measured();
                nearest = near.metres() < nearest.metres() ? near : nearest;
            }
        }
        return nearest;
    }

    /// One and each other, once and again whenever one of the two has moved.
    private static List<Pair> changing(Air.Standing own, List<Instant> instants) {
        List<Pair> pairs = new ArrayList<>();
        for (Instant instant : instants) {
            List<Air.Standing> others =
                    instant.moved().contains(own) ? instant.now().all() : instant.moved();
            for (Air.Standing other : others) {
                if (!other.equals(own)) {
                    pairs.add(new Pair(instant.now(), own, other));
                }
            }
        }
        return pairs;
    }

    @Override
    public Optional<String> findStanding(Moments moments, PaperUnit unit) {
        double[] parts = parts(moments);
        int worst = Parts.worstOf(parts);
        if (parts[worst] >= FAR_MILLIMETRES) {
            return Optional.of("Clear; nothing is near.");
        }
        String size = Parts.distance(parts[worst], unit);
        String own = name(bodies.get(worst), moments);
        String other = name(nearest(bodies.get(worst), instants(moments)).other(), moments);
        if (gapMetres > 0) {
            String asked = " than the " + new Print(unit).difference(gapMetres, Print.Hand.TAPE) + " of air asked for.";
            String between = "between " + own + " and " + other + " " + size;
            return Optional.of(
                    parts[worst] >= 0
                            ? "Clear; " + between + " more" + asked
                            : "Too close: " + between + " less" + asked);
        }
        return Optional.of(
                parts[worst] >= 0
                        ? "Clear; " + size + " of air between " + own + " and " + other + "."
                        : own + " runs " + size + " into " + other + ".");
    }

    private static String name(Air.Standing body, Moments moments) {
        return switch (body) {
            case Air.Standing.Thing(int index) -> Parts.name(moments, index);
            case Air.Standing.Lamp(int index) ->
                moments.stage().shot().lights().get(index).name();
            case Air.Standing.Camera() -> "the camera";
            case Air.Standing.Tank() -> "the tank";
        };
    }

    /// A camera may stand before the table and lower than its top, and on the table it may not: say so.
    @Override
    public Optional<String> findCaution(Moments moments) {
        if (!bodies.contains(new Air.Standing.Camera())) {
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
                ? Clearance.aboveMetres(Air.posed(barrel.get(), scene), new Plane(Vec.ZERO, Vec.UP))
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
