package plumeline.want;

import java.util.Optional;
import plumeline.geom.Body;
import plumeline.ink.Clarity;
import plumeline.plan.Release;
import plumeline.plan.TankPlace;
import plumeline.plan.WantLine;
import plumeline.quantity.Origin;
import plumeline.quantity.PaperUnit;
import plumeline.quantity.Print;
import plumeline.quantity.Quantity;
import plumeline.stage.Stage;
import plumeline.stage.TankWalls;

/// The water between a thing and the front glass is clear enough after the takes that went into it.
///
/// Margin in %: light that is left in the ink's worst colour channel, well mixed, less what is wanted.
///
/// @param line as written
/// @param thing index of the thing
/// @param least light that must be left, share of one
/// @param water the water and what goes into it
record SeeThrough(WantLine line, int thing, double least, Water water) implements Want {
    /// As the question `clear-water` has it.
    private static final double LEAST_CLEAR = 0.95;

    /// Takes that went into the water, where the tank doesn't say: then the second one is judged.
    private static final double TAKES = 1;

    /// The water and what goes into it.
    ///
    /// @param strength decadic absorbance of the neat ink
    /// @param metres3 the water, m³
    /// @param inkMetres3 ink a take, m³
    /// @param takes takes that went into it
    record Water(Quantity strength, double metres3, double inkMetres3, double takes) {
        Clarity clarity(double pathMetres, double strengthPerMetre) {
            return new Clarity(strengthPerMetre, Math.max(pathMetres, 1e-6), metres3);
        }
    }

    /// Makes the want, or one that says what is missing.
    static Want of(WantLine line, Stage stage, int thing) {
        Optional<TankWalls> walls = stage.findTank();
        if (walls.isEmpty()) {
            return new NotComputed(line, "The shot has no tank.");
        }
        TankPlace tank = stage.shot().findTank().orElseThrow();
        if (tank.water().isEmpty()) {
            return new NotComputed(line, "Measure how deep the tank's water is: write the tank's water.");
        }
        if (!(stage.shot().findRelease().orElse(null) instanceof Release.OfInk ink)) {
            return new NotComputed(line, "No ink is let go in this shot: write its release.");
        }
        Optional<Quantity> volume = ink.written().findQuantity("volume");
        if (volume.isEmpty()) {
            return new NotComputed(line, "Not known: how much ink a take lets go. Write the release's volume.");
        }
        Optional<Quantity> strength = ink.ink().written().findQuantity("strength");
        if (strength.isEmpty()) {
            return new NotComputed(line, "Not known: how strong " + ink.ink().name() + " is. " + HOW_TO_MEASURE);
        }
        if (strength.get().origin() == Origin.TYPICAL) {
            return new NotComputed(
                    line, "Not measured: " + ink.ink().name() + "'s strength is typical. " + HOW_TO_MEASURE);
        }
        var inside = walls.get().inside();
        double area = (inside.high().x() - inside.low().x())
                * (inside.high().y() - inside.low().y());
        Water water = new Water(
                strength.get(),
                area * tank.water().get().si(),
                volume.get().si(),
                tank.written().findNumber("takes").orElse(TAKES));
        double least = line.written().findQuantity("least").map(Quantity::si).orElse(LEAST_CLEAR);
        return new SeeThrough(line, thing, least, water);
    }

    /// How a crew measures an ink's strength.
    private static final String HOW_TO_MEASURE =
            "Put 1 ml of it into a litre in a straight-sided jar, photograph it and a jar of clean water on one white"
                    + " sheet, exposure locked, and ask clear-water: write the ink's strength, in /cm.";

    @Override
    public String unit() {
        return "%";
    }

    private double pathMetres(Moments moments) {
        Body body = moments.at(0).things().get(thing);
        return Math.max(
                0,
                body.bounds().low().y()
                        - moments.stage()
                                .findTank()
                                .orElseThrow()
                                .inside()
                                .low()
                                .y());
    }

    private double clear(Moments moments, double strengthPerMetre) {
        return water.clarity(pathMetres(moments), strengthPerMetre).clearShare(water.takes() * water.inkMetres3());
    }

    @Override
    public double[] parts(Moments moments) {
        return new double[] {Parts.PERCENT * (clear(moments, water.strength().si()) - least)};
    }

    @Override
    public Optional<String> findStanding(Moments moments, PaperUnit papers) {
        Clarity clarity = water.clarity(pathMetres(moments), water.strength().si());
        double takes = clarity.takes(water.inkMetres3(), least);
        String after = "After " + Print.number(water.takes(), 0) + (water.takes() == 1 ? " take " : " takes ")
                + Print.share(clear(moments, water.strength().si()), 0)
                + " of the light comes through the water before "
                + Parts.name(moments, thing) + "; " + Print.share(least, 0) + " is wanted.";
        return Optional.of(after
                + (takes > 1
                        ? " The first " + Print.number(takes, 0) + " takes begin so."
                        : " Only the first take begins so: change at least "
                                + Print.share(clarity.changeShare(water.inkMetres3(), least), 0)
                                + " of the water after every take."));
    }

    @Override
    public Optional<String> findTight(Moments moments) {
        double strong = water.strength().si() + water.strength().halfWidthSi();
        return clear(moments, strong) < least
                ? Optional.of(
                        "The ink may be as strong as its measurement's spread allows: then it isn't clear enough.")
                : Optional.empty();
    }
}
