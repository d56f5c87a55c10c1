package plumeline.lit;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import plumeline.geom.Body;
import plumeline.geom.Solid;
import plumeline.geom.Station;
import plumeline.plan.Placed;
import plumeline.plan.Thing;
import plumeline.plan.Written;
import plumeline.quantity.Print;
import plumeline.quantity.Quantity;
import plumeline.rim.ClearRound;
import plumeline.rim.Indices;
import plumeline.roots.Roots;

/// A thing of a shot as round clear glass: its wall, and what is in it up to which height.
///
/// Contents without a volume fill it, less its `air`; without contents air is in it. Liquid stands level on an even
/// floor as thick as the wall.
///
/// @param glass the glass
/// @param assumed what was taken for what isn't written, each in a few words
public record ClearThing(ClearRound glass, List<String> assumed) {
    /// A wall that nobody measured: 1 to 4 mm (common practice).
    static final double WALL_METRES = 0.002;

    /// See [#WALL_METRES].
    static final double THIN_METRES = 0.001;

    /// See [#WALL_METRES].
    static final double THICK_METRES = 0.004;

    /// No wall is thinner, m.
    static final double LEAST_METRES = 1e-5;

    private static final double AIR = 1;

    /// From memory of makers' data sheets.
    private static final Map<String, Double> BY_MATERIAL = Map.of("acrylic", 1.49, "pet", 1.57);

    private static final double UPRIGHT = 1e-6;

    /// Copies the list.
    public ClearThing {
        assumed = List.copyOf(assumed);
    }

    /// A clear thing's wall, and what is in it, whatever its form.
    ///
    /// @param wallMetres the wall's thickness, m, > 0
    /// @param indices what air, wall and contents bend by
    /// @param levelMetres how high its contents stand, over its base along its axis, m; below its floor it is empty,
    /// above its top full
    /// @param assumed what was taken for what isn't written, each in a few words
    public record Filled(double wallMetres, Indices indices, double levelMetres, List<String> assumed) {
        /// Copies the list.
        public Filled {
            assumed = List.copyOf(assumed);
        }
    }

    /// What is read of a thing.
    sealed interface Reading {
        /// @param thing the thing
        record Of(ClearThing thing) implements Reading {}

        /// @param reason what is missing, or isn't computed
        record Missing(String reason) implements Reading {}
    }

    /// Reads a thing by its wall as written.
    static Reading of(Placed placed, Body body) {
        return of(
                placed,
                body,
                placed.thing().written().findQuantity("wall.thickness").map(Quantity::si));
    }

    /// Reads a thing.
    ///
    /// @param wall its wall's thickness, m; empty where the usual one is taken
    static Reading of(Placed placed, Body body, Optional<Double> wall) {
        Thing thing = placed.thing();
        if (thing.body().isEmpty()) {
            return new Reading.Missing("Not known: whether " + placed.name() + " is clear. Write its body: clear.");
        }
        if (!(body.solid() instanceof Solid.Revolved outer)) {
            return new Reading.Missing("Not computed: the rims of what isn't round. Look at " + placed.name()
                    + " through the lens with the lamps in place.");
        }
        Filled filled = filled(thing.written(), outer, wall);
        double level = filled.levelMetres();
        boolean isPartly = level > 0 && level < outer.heightMetres();
        return isPartly && body.axis().z() < 1 - UPRIGHT
                ? new Reading.Missing("Not computed: the rims of a leaning thing that is partly full.")
                : new Reading.Of(new ClearThing(
                        new ClearRound(outer, filled.wallMetres(), filled.indices(), level), filled.assumed()));
    }

    /// Reads a clear thing's wall and contents.
    ///
    /// @param thing the thing
    /// @param solid its form
    /// @return its wall and contents
    public static Filled filled(Thing thing, Solid solid) {
        return filled(
                thing.written(),
                solid,
                thing.written().findQuantity("wall.thickness").map(Quantity::si));
    }

    private static Filled filled(Written written, Solid solid, Optional<Double> wall) {
        List<String> assumed = new ArrayList<>();
        if (wall.isEmpty()) {
            assumed.add("a wall of 2 mm");
        }
        double metres = Math.max(wall.orElse(WALL_METRES), LEAST_METRES);
        Indices indices = new Indices(AIR, glassIndex(written, assumed), liquidIndex(written, assumed));
        return new Filled(metres, indices, level(written, solid, metres, assumed), assumed);
    }

    private static double glassIndex(Written written, List<String> assumed) {
        if (written.has("wall.index")) {
            return written.findNumber("wall.index").orElseThrow();
        }
        double usual = written.findWord("material")
                .map(word -> BY_MATERIAL.getOrDefault(word.toLowerCase(Locale.ROOT), Indices.GLASS))
                .orElse(Indices.GLASS);
        assumed.add("its index " + Print.number(usual, 3));
        return usual;
    }

    private static double liquidIndex(Written written, List<String> assumed) {
        if (written.has("contents") && !written.has("contents.index")) {
            assumed.add("contents that bend as water does, 1.333");
        }
        return written.findNumber("contents.index").orElse(Indices.WATER);
    }

    /// How high liquid stands in it, m; -1 where none is.
    private static double level(Written written, Solid outer, double wall, List<String> assumed) {
        Optional<Double> volume = written.findQuantity("contents.volume").map(Quantity::si);
        if (!written.has("contents") || volume.filter(metres3 -> metres3 <= 0).isPresent()) {
            if (volume.isEmpty()) {
                assumed.add("nothing in it but air");
            }
            return -1;
        }
        double height = outer.heightMetres();
        Optional<Double> air = written.findQuantity("air").map(Quantity::si);
        if (volume.isEmpty() && air.isEmpty()) {
            assumed.add("full to the top");
            return 2 * height;
        }
        double room = roomMetres3(outer, wall, height);
        double wanted = volume.orElseGet(() -> room - air.orElseThrow());
        return wanted >= room ? 2 * height : Roots.end(level -> roomMetres3(outer, wall, level) < wanted, 0, height);
    }

    /// The room inside up to a height.
    private static double roomMetres3(Solid solid, double wall, double level) {
        return switch (solid) {
            case Solid.Revolved round -> roomMetres3(round, wall, level);
            case Solid.Box box ->
                Math.max(0, box.widthMetres() - 2 * wall)
                        * Math.max(0, box.depthMetres() - 2 * wall)
                        * Math.max(0, Math.min(level, box.heightMetres()) - wall);
        };
    }

    private static double roomMetres3(Solid.Revolved outer, double wall, double level) {
        double sum = 0;
        List<Station> stations = outer.stations();
        for (int i = 1; i < stations.size(); i++) {
            Station low = stations.get(i - 1);
            Station high = stations.get(i);
            double rise = high.heightMetres() - low.heightMetres();
            double from = Math.max(low.heightMetres(), wall);
            double to = Math.min(high.heightMetres(), level);
            if (rise > 0 && to > from) {
                double slope = (high.radiusMetres() - low.radiusMetres()) / rise;
                double inward = wall * Math.hypot(1, slope);
                double one = Math.max(0, low.radiusMetres() + slope * (from - low.heightMetres()) - inward);
                double other = Math.max(0, low.radiusMetres() + slope * (to - low.heightMetres()) - inward);
                sum += Math.PI / 3 * (to - from) * (one * one + one * other + other * other);
            }
        }
        return sum;
    }
}
