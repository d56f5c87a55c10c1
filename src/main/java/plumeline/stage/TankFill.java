package plumeline.stage;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import plumeline.plan.Kit;
import plumeline.plan.TankPlace;
import plumeline.plan.Written;
import plumeline.quantity.Quantity;
import plumeline.water.Figure;
import plumeline.water.GlassTank;
import plumeline.water.Solution;
import plumeline.water.TankLoad;
import plumeline.water.Water;

/// A plan's tank with its water, as plain numbers.
public sealed interface TankFill {
    /// Room-temperature tap water, where the tank's `temperature` isn't written.
    double ROOM_KELVIN = Water.ROOM_KELVIN;

    /// Enough is written.
    ///
    /// @param load tank and water
    /// @param assumed what was taken for what isn't written, each in a few words
    record Known(TankLoad load, List<String> assumed) implements TankFill {
        /// Copies the list.
        public Known {
            assumed = List.copyOf(assumed);
        }
    }

    /// The water's depth isn't written.
    record NoDepth() implements TankFill {}

    /// More water than the tank holds.
    ///
    /// @param depth the water's depth as written
    /// @param height the tank's height inside
    record TooDeep(Quantity depth, Quantity height) implements TankFill {}

    /// The water is warmer or colder than its density is known for: see [#density].
    record TooHotOrCold() implements TankFill {}

    /// Finds the density of the tank's water: as it was measured, else by its salt and temperature, else fresh.
    ///
    /// @param place the tank
    /// @return kilograms a cubic metre; empty past 0 to 40 degC, with table salt past 5 to 40 degC
    static OptionalDouble findDensity(TankPlace place) {
        return density(place).find();
    }

    /// Gives the density of the tank's water, or the limits past which it isn't known.
    ///
    /// @param place the tank
    /// @return kilograms a cubic metre: as measured, else by its salt and temperature, else fresh
    static Figure density(TankPlace place) {
        Written tank = place.tank().written();
        Optional<Quantity> measured = tank.findQuantity("density");
        return measured.isPresent()
                ? new Figure.Known(measured.get().si(), 0)
                : findSolution(tank)
                        .map(solution -> solution.densityKilogramsPerMetre3(kelvin(tank)))
                        .orElseGet(() -> Water.densityKilogramsPerMetre3(kelvin(tank)));
    }

    /// Gives the viscosity of the tank's water, or the limits past which it isn't known.
    ///
    /// @param place the tank
    /// @return dynamic, Pa s: by its salt and temperature, else fresh, as water is of which only the density was
    /// measured
    static Figure viscosity(TankPlace place) {
        Written tank = place.tank().written();
        return findSolution(tank)
                .map(solution -> solution.viscosityPascalSeconds(kelvin(tank)))
                .orElseGet(() -> Water.viscosityPascalSeconds(kelvin(tank)));
    }

    private static double kelvin(Written tank) {
        return tank.findQuantity("temperature").map(Quantity::si).orElse(ROOM_KELVIN);
    }

    private static Optional<Solution> findSolution(Written tank) {
        return tank.findQuantity("salt")
                .map(share -> new Solution(Solution.Solute.SALT, share.si()))
                .or(() ->
                        tank.findQuantity("sea_salt").map(share -> new Solution(Solution.Solute.SEA_SALT, share.si())));
    }

    /// Reads a tank. A rim that isn't written is none; a floor lies on its edges; the glass weighs what its panes
    /// weigh.
    ///
    /// @param place the tank as placed
    /// @return tank and water, or what is missing
    static TankFill of(TankPlace place) {
        OptionalDouble density = findDensity(place);
        if (place.water().isEmpty()) {
            return new NoDepth();
        }
        if (density.isEmpty()) {
            return new TooHotOrCold();
        }
        Kit.Tank kit = place.tank();
        Quantity depth = place.water().get();
        if (depth.si() > kit.inside().height().si()) {
            return new TooDeep(depth, kit.inside().height());
        }
        List<String> assumed = new ArrayList<>();
        if (!kit.written().has("rim")) {
            assumed.add("no rim");
        }
        if (!kit.written().has("floor_support")) {
            assumed.add("the floor carried by its edges only");
        }
        boolean full =
                kit.written().findWord("floor_support").filter("full"::equals).isPresent();
        GlassTank glass = new GlassTank(
                kit.inside().width().si(),
                kit.inside().depth().si(),
                kit.inside().height().si(),
                kit.pane().si(),
                kit.written().says("rim") ? GlassTank.Rim.ALL_ROUND : GlassTank.Rim.NONE,
                full ? GlassTank.Support.FULL : GlassTank.Support.EDGES);
        double empty =
                kit.written().findQuantity("empty_mass").map(Quantity::si).orElse(glass.glassKilograms());
        if (!kit.written().has("empty_mass")) {
            assumed.add("the tank as heavy as its panes");
        }
        TankLoad load = new TankLoad(glass, depth.si(), empty, density.getAsDouble(), Water.GRAVITY_METRES_PER_SECOND2);
        return new Known(load, assumed);
    }
}
