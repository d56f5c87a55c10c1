package plumeline.want;

import java.util.List;
import java.util.Optional;
import plumeline.ink.Clarity;
import plumeline.plan.Release;
import plumeline.plan.WantLine;
import plumeline.quantity.PaperUnit;
import plumeline.quantity.Print;
import plumeline.quantity.Quantity;
import plumeline.stage.InkRelease;
import plumeline.stage.Stage;
import plumeline.wet.InkedWater;
import plumeline.wet.Lacks;

/// The water between a thing and the front glass is clear enough after the takes that went into it.
///
/// Margin in %: light that is left in the ink's worst colour channel, well mixed, less what is wanted.
///
/// @param line as written
/// @param thing index of the thing
/// @param wished how clear it is wanted, and after what
/// @param water the water and what goes into it
record SeeThrough(WantLine line, int thing, Wished wished, InkedWater.Known water) implements Want {
    /// Takes that went into the water, where the tank doesn't say: then the second one is judged.
    private static final double TAKES = 1;

    /// How clear it is wanted.
    ///
    /// @param least light that must be left, share of one
    /// @param takes takes that went into the water
    record Wished(double least, double takes) {}

    /// Makes the want, or one that says what is missing.
    static Want of(WantLine line, Stage stage, int thing) {
        return switch (InkedWater.of(stage)) {
            case InkedWater.Known water -> new SeeThrough(line, thing, wished(line, stage), water);
            case InkedWater.Missing(List<InkedWater.Lack> lacks) ->
                new NotComputed(line, missing(lacks.getFirst(), stage));
        };
    }

    private static Wished wished(WantLine line, Stage stage) {
        double takes = stage.shot()
                .findTank()
                .orElseThrow()
                .written()
                .findNumber("takes")
                .orElse(TAKES);
        return new Wished(line.written().findQuantity("least").map(Quantity::si).orElse(InkedWater.LEAST_CLEAR), takes);
    }

    private static String missing(InkedWater.Lack lack, Stage stage) {
        String ink = stage.shot().findRelease().orElse(null) instanceof Release.OfInk release
                ? release.ink().name()
                : "";
        return switch (lack) {
            case TANK -> Lacks.NO_TANK;
            case DEPTH -> Lacks.NO_DEPTH;
            case INK -> Lacks.sentence(InkRelease.Lack.INK, stage.shot());
            case VOLUME -> "Not known: how much ink a take lets go. Write the release's volume.";
            case STRENGTH -> "Not known: how strong " + ink + " is. " + HOW_TO_MEASURE;
            case MEASUREMENT -> "Not measured: " + ink + "'s strength is typical. " + HOW_TO_MEASURE;
        };
    }

    /// How a crew measures an ink's strength.
    private static final String HOW_TO_MEASURE =
            "Put 1 ml of it into a litre in a straight-sided jar, photograph it and a jar of clean water on one white"
                    + " sheet, exposure locked, and ask clear-water: write the ink's strength, in /cm.";

    @Override
    public String unit() {
        return "%";
    }

    private Clarity clarity(Moments moments, double strengthPerMetre) {
        return water.before(moments.at(0).things().get(thing), strengthPerMetre);
    }

    private double clear(Moments moments, double strengthPerMetre) {
        return clarity(moments, strengthPerMetre).clearShare(wished.takes() * water.inkMetres3());
    }

    @Override
    public double[] parts(Moments moments) {
        return new double[] {Parts.PERCENT * (clear(moments, water.strength().si()) - wished.least())};
    }

    @Override
    public Optional<String> findStanding(Moments moments, PaperUnit papers) {
        Clarity clarity = clarity(moments, water.strength().si());
        double takes = clarity.takes(water.inkMetres3(), wished.least());
        String after = "After " + Print.number(wished.takes(), 0) + (wished.takes() == 1 ? " take " : " takes ")
                + Print.share(clear(moments, water.strength().si()), 0)
                + " of the light comes through the water before "
                + Parts.name(moments, thing) + "; " + Print.share(wished.least(), 0) + " is wanted.";
        return Optional.of(after
                + (takes > 1
                        ? " The first " + Print.number(takes, 0) + " takes begin so."
                        : " Only the first take begins so: change at least "
                                + Print.share(clarity.changeShare(water.inkMetres3(), wished.least()), 0)
                                + " of the water after every take."));
    }

    @Override
    public Optional<String> findTight(Moments moments) {
        double strong = water.strength().si() + water.strength().halfWidthSi();
        return clear(moments, strong) < wished.least()
                ? Optional.of(
                        "The ink may be as strong as its measurement's spread allows: then it isn't clear enough.")
                : Optional.empty();
    }
}
