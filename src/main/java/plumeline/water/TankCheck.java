package plumeline.water;

import java.util.ArrayList;
import java.util.List;

/// What a filled tank's panes bear. Every pane is taken as simply supported on each edge that is held, and alone: seams
/// don't help it, its neighbours don't bend it. That is no calculation for a seam, a scratched, chipped or toughened
/// pane, a knock, or a tank that stands twisted.
public final class TankCheck {
    /// Strength of annealed float glass that the safety factor counts on, pascals.
    ///
    /// **Source:** aquarium trade: 19.2 N/mm², the mean of makers' 19.3 to 28.4 being taken at its low end
    /// (Stilwell, Aquarium World, February 2001).
    public static final double STRENGTH_PASCALS = 19.2e6;

    /// Least safety factor to which nothing is objected, dimensionless; with the strength above 5.05 MPa are left.
    ///
    /// **Source:** aquarium trade, as above.
    public static final double LEAST_FACTOR = 3.8;

    private TankCheck() {}

    /// Which pane.
    public enum Place {
        /// The two walls along the tank's length.
        LONG_WALL,
        /// The two walls along the tank's width.
        SHORT_WALL,
        /// The floor, where only its edges are borne.
        FLOOR
    }

    /// A pane and how it bends.
    ///
    /// @param place which one
    /// @param pane its measures
    /// @param bending how it bends
    public record Finding(Place place, Pane pane, PaneBending bending) {
        /// Gives the least that its largest stress can be: less than the linear theory's where it begins to carry as a
        /// membrane.
        ///
        /// @return stress, pascals
        public double leastStressPascals() {
            return bending.stressPascals() * (stretches() ? PaneBending.leastStressShare(bow()) : 1);
        }

        /// Gives the least that its bow can be.
        ///
        /// @return deflection, metres
        public double leastDeflectionMetres() {
            return bending.deflectionMetres() * (stretches() ? PaneBending.leastBowShare(bow()) : 1);
        }

        private boolean stretches() {
            return bending.validity() == PaneBending.Validity.MEMBRANE_BEGINS;
        }

        private double bow() {
            return bending.deflectionMetres() / pane.thicknessMetres();
        }
    }

    /// What was found.
    ///
    /// @param load tank and liquid
    /// @param panes every pane that bends; of two alike one
    public record Found(TankLoad load, List<Finding> panes) {
        /// Copies the list.
        public Found {
            panes = List.copyOf(panes);
        }

        /// Gives the pane with the largest stress.
        ///
        /// @return the pane
        public Finding mostStressed() {
            Finding most = panes.getFirst();
            for (Finding each : panes) {
                most = each.bending().stressPascals() > most.bending().stressPascals() ? each : most;
            }
            return most;
        }

        /// Gives the pane that bends farthest.
        ///
        /// @return the pane
        public Finding mostBent() {
            Finding most = panes.getFirst();
            for (Finding each : panes) {
                most = each.bending().deflectionMetres() > most.bending().deflectionMetres() ? each : most;
            }
            return most;
        }

        /// Gives the least that the largest stress of all panes can be.
        ///
        /// @return stress, pascals
        public double leastStressPascals() {
            return panes.stream().mapToDouble(Finding::leastStressPascals).max().orElseThrow();
        }

        /// Gives the least that the largest bow of all panes can be.
        ///
        /// @return deflection, metres
        public double leastDeflectionMetres() {
            return panes.stream()
                    .mapToDouble(Finding::leastDeflectionMetres)
                    .max()
                    .orElseThrow();
        }

        /// Gives the strength over the largest stress.
        ///
        /// @return factor, dimensionless
        public double safetyFactor() {
            return STRENGTH_PASCALS / mostStressed().bending().stressPascals();
        }

        /// Gives the strength over the largest stress where the floor pane's own weight counts too.
        ///
        /// @return factor, dimensionless
        public double safetyFactorWithOwnWeight() {
            double stress = 0;
            for (Finding each : panes) {
                double share = each.place() == Place.FLOOR ? 1 + floorOwnShare(load) : 1;
                stress = Math.max(stress, share * each.bending().stressPascals());
            }
            return STRENGTH_PASCALS / stress;
        }

        /// Gives the worst validity of all panes.
        ///
        /// @return validity
        public PaneBending.Validity validity() {
            PaneBending.Validity worst = PaneBending.Validity.GOOD;
            for (Finding each : panes) {
                PaneBending.Validity validity = each.bending().validity();
                worst = validity.compareTo(worst) > 0 ? validity : worst;
            }
            return worst;
        }
    }

    /// Bends every pane of a tank. Spans are the clear ones inside.
    ///
    /// @param load tank and liquid
    /// @return what was found
    public static Found of(TankLoad load) {
        GlassTank tank = load.tank();
        PaneLoad water = new PaneLoad.Liquid(
                load.depthMetres(), load.densityKilogramsPerMetre3() * load.gravityMetresPerSecond2());
        Pane.Top top = switch (tank.rim()) {
            case NONE -> Pane.Top.FREE;
            case ALL_ROUND -> Pane.Top.HELD;
        };
        List<Finding> panes = new ArrayList<>();
        double longer = Math.max(tank.lengthMetres(), tank.widthMetres());
        double shorter = Math.min(tank.lengthMetres(), tank.widthMetres());
        panes.add(bend(Place.LONG_WALL, new Pane(longer, tank.wallsHeightMetres(), tank.glassMetres(), top), water));
        if (shorter < longer) {
            panes.add(bend(
                    Place.SHORT_WALL, new Pane(shorter, tank.wallsHeightMetres(), tank.glassMetres(), top), water));
        }
        switch (tank.support()) {
            case EDGES ->
                panes.add(bend(
                        Place.FLOOR,
                        new Pane(longer, shorter, tank.glassMetres(), Pane.Top.HELD),
                        new PaneLoad.Even(load.bottomPascals())));
            case FULL -> {}
        }
        return new Found(load, panes);
    }

    private static Finding bend(Place place, Pane pane, PaneLoad load) {
        return new Finding(place, pane, Plates.bend(pane, load, Pane.Elasticity.FLOAT_GLASS));
    }

    /// Gives how much of the liquid's pressure the floor pane's own weight adds: `ρ_glass t/(ρh)`. It isn't in the
    /// stress, which is the liquid's alone.
    ///
    /// @param load tank and liquid
    /// @return share of the liquid's pressure, dimensionless
    public static double floorOwnShare(TankLoad load) {
        return GlassTank.GLASS_KILOGRAMS_PER_METRE3
                * load.tank().glassMetres()
                / (load.densityKilogramsPerMetre3() * load.depthMetres());
    }
}
