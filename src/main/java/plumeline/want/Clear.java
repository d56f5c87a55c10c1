package plumeline.want;

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
    Clear {
        bodies = List.copyOf(bodies);
    }

    @Override
    public String unit() {
        return "mm";
    }

    @Override
    public double[] parts(Moments moments) {
        Crowd crowd = crowd(moments);
        return bodies.stream()
                .mapToDouble(own -> crowd.nearest(own).metres())
                .map(metres -> Math.min(Parts.FAR_MILLIMETRES, Parts.MILLIMETRES * (metres - gapMetres)))
                .toArray();
    }

    private Crowd crowd(Moments moments) {
        return new Crowd(moments.during(line.when()), moments.stage().findTank(), barrel, moments.recall());
    }

    @Override
    public Optional<String> findStanding(Moments moments, PaperUnit unit) {
        double[] parts = parts(moments);
        int worst = Parts.worstOf(parts);
        if (parts[worst] >= Parts.FAR_MILLIMETRES) {
            return Optional.of("Clear; nothing is near.");
        }
        String size = Parts.distance(parts[worst], unit);
        String own = name(bodies.get(worst), moments);
        String other = name(crowd(moments).nearest(bodies.get(worst)).other(), moments);
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
