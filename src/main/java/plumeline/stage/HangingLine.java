package plumeline.stage;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import plumeline.plan.Placed;
import plumeline.plan.Written;
import plumeline.quantity.Quantity;
import plumeline.water.Line;

/// The line that a placed thing hangs on, as plain numbers.
///
/// @param diameterMetres its diameter, metres, > 0
/// @param strengthNewtons unknotted, newtons, > 0
/// @param knotShare share of the strength that is left at the knot, over 0 to 1
/// @param assumed what was taken for what isn't written, each in a few words
public record HangingLine(double diameterMetres, double strengthNewtons, double knotShare, List<String> assumed) {
    /// Copies the list.
    public HangingLine {
        assumed = List.copyOf(assumed);
    }

    /// Finds the line of a thing.
    ///
    /// @param placed the thing
    /// @return its line; empty where neither its diameter nor its strength is written
    public static Optional<HangingLine> find(Placed placed) {
        Written written = placed.written();
        Optional<Double> diameter = written.findQuantity("line.diameter").map(Quantity::si);
        Optional<Double> strength = written.findQuantity("line.strength").map(Quantity::si);
        if (diameter.isEmpty() && strength.isEmpty()) {
            return Optional.empty();
        }
        List<String> assumed = new ArrayList<>();
        boolean isFluorocarbon =
                written.findWord("line.material").filter("fluorocarbon"::equals).isPresent();
        Line.Material material = isFluorocarbon ? Line.Material.FLUOROCARBON : Line.Material.NYLON;
        if (diameter.isEmpty() || strength.isEmpty()) {
            String kind = isFluorocarbon ? "fluorocarbon" : "nylon";
            assumed.add((diameter.isEmpty() ? "the diameter" : "the strength") + " usual of " + kind);
        }
        if (!written.has("line.knot")) {
            assumed.add("a knot that leaves 50 %");
        }
        double stress = material.plannedPascals();
        return Optional.of(new HangingLine(
                diameter.orElseGet(() -> Line.diameterMetres(strength.orElseThrow(), stress)),
                strength.orElseGet(() -> Line.strengthNewtons(diameter.orElseThrow(), stress)),
                written.findQuantity("line.knot").map(Quantity::si).orElse(Line.PLANNED_KNOT),
                assumed));
    }

    /// Gives how many times the heaviest load it bears at the knot: all of the thing, out of the water, on one line.
    ///
    /// @param newtons the load, newtons, > 0
    /// @return factor, dimensionless
    public double safetyFactor(double newtons) {
        return Line.safetyFactor(strengthNewtons, knotShare, newtons);
    }
}
