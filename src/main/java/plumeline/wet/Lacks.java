package plumeline.wet;

import java.util.ArrayList;
import java.util.List;
import plumeline.plan.Shot;
import plumeline.plan.TankPlace;
import plumeline.quantity.Print;
import plumeline.stage.Immersed;
import plumeline.stage.InkRelease;
import plumeline.stage.TankFill;
import plumeline.water.Figure;

/// What wants about water say of what is missing, and of figures they share.
public final class Lacks {
    /// Grams in a kilogram.
    public static final double GRAMS = 1000;

    /// There is no tank.
    public static final String NO_TANK = "The shot has no tank.";

    /// The tank's water isn't told.
    public static final String NO_DEPTH = "Measure how deep the tank's water is: write the tank's water.";

    private static final double FREEZING_KELVIN = 273.15;

    private Lacks() {}

    /// Gives what to measure, and where to write it.
    ///
    /// @param lack what is missing
    /// @param name the thing's name
    /// @return a sentence
    public static String sentence(Immersed.Lack lack, String name) {
        return switch (lack) {
            case MASS -> "Weigh " + name + ", whole and filled: write its mass.";
            case CENTRE -> "A centre of " + name + " lies outside it. Balance it on a ruler, and count from its base.";
            case TOO_LIGHT -> name + " weighs no more than its contents. Weigh it again, full.";
            case AIR ->
                name + " is open: write how much air stays in it, 0 ml once it is flooded and no bubble is left.";
            case TOO_FULL ->
                "Wall, contents and air have no room in " + name
                        + ". Push it under in a jug on a kitchen scale: the grams gained are the millilitres it"
                        + " displaces; measure what is in it.";
            case PROFILE -> name + "'s profile has a hole. Measure its radius at each height where the outline bends.";
            case OUTLINE ->
                name + " can't displace so much: its form holds far less."
                        + " Measure its form again, and push it under in a jug on a kitchen scale again: the grams"
                        + " gained are the millilitres it displaces.";
            case BASE ->
                "The hollow under " + name + "'s base has no room in its form, or less room than air. Measure its"
                        + " diameter at the rim and its depth in the middle; fill it with water, upside down on a"
                        + " scale: 1 g is 1 ml.";
        };
    }

    /// Says what is missing of ink that is let go, and where to write it.
    ///
    /// @param lack what is missing
    /// @param shot the shot that lets it go
    /// @return a sentence
    public static String sentence(InkRelease.Lack lack, Shot shot) {
        return switch (lack) {
            case INK -> "No ink is let go in this shot: write its release.";
            case TANK -> NO_TANK;
            case DEPTH -> NO_DEPTH;
            case TEMPERATURE -> water(shot.findTank().orElseThrow());
            case READINGS ->
                "The ink's front doesn't go down with time: read [time, depth under the surface] of one front at two"
                        + " times or more, below the nozzle's mouth.";
            case VOLUME ->
                "Not known: how much ink is let go. Write the release's volume, or two readings of its front.";
            case DENSITY ->
                "Weigh 100 ml of the ink: its grams over 100 are g/ml. Write the ink's density, or two readings of its"
                        + " front.";
            case BORE ->
                "Measure the nozzle's bore with the drill that just fits: write the release's bore, or two readings of"
                        + " the ink's front.";
        };
    }

    /// Says past which temperatures the tank's water isn't known.
    ///
    /// @param place the tank, of whose water density or viscosity isn't known
    /// @return a sentence
    public static String water(TankPlace place) {
        Figure density = TankFill.density(place);
        Figure figure = density instanceof Figure.Unknown ? density : TankFill.viscosity(place);
        if (!(figure instanceof Figure.Unknown(var _, var _, double low, double high))) {
            throw new IllegalArgumentException("water of a known density and viscosity");
        }
        return "The water's temperature is past " + celsius(low) + " to " + celsius(high) + " degC"
                + (place.tank().written().has("salt")
                        ? ", where salt water is known: weigh a litre of it and write its density."
                        : ".");
    }

    private static String celsius(double kelvin) {
        return Print.number(kelvin - FREEZING_KELVIN, 0);
    }

    /// Gives how a thing's spread reaches past what decides, and what to measure more closely.
    ///
    /// @param name the thing's name
    /// @param immersed the thing
    /// @return a sentence
    public static String tooNear(String name, Immersed immersed) {
        double net = immersed.net().value();
        String closer = switch (immersed.basis()) {
            case DISPLACES -> ": weigh it more closely.";
            case FORM ->
                ", as its volume is taken from its form. Push it just under in a jug on a kitchen scale: the grams"
                        + " gained are the millilitres it displaces.";
        };
        return name + (net < 0 ? " floats by " : " sinks by ") + grams(net) + ", but that may be off by "
                + grams(immersed.net().half()) + closer;
    }

    /// Says what was assumed.
    ///
    /// @param assumed each in a few words
    /// @return a sentence; empty where nothing was
    public static String assumed(List<String> assumed) {
        return assumed.isEmpty() ? "" : "Assumed: " + String.join("; ", assumed) + ".";
    }

    /// Says what was assumed of a thing and of its vessel.
    ///
    /// @param immersed the thing
    /// @param body its vessel
    /// @return a sentence; empty where nothing was
    public static String assumed(Immersed immersed, Immersed.Body.Of body) {
        List<String> all = new ArrayList<>(immersed.assumed());
        all.addAll(body.assumed());
        return assumed(all);
    }

    /// Prints a mass without its sign.
    ///
    /// @param kilograms the mass
    /// @return to the gram, below 10 to a tenth
    public static String grams(double kilograms) {
        double grams = Math.abs(kilograms * GRAMS);
        return Print.number(grams, grams < 10 ? 1 : 0) + " g";
    }

    /// Prints an angle.
    ///
    /// @param degrees the angle
    /// @return to the degree, below 10 to a tenth
    public static String degrees(double degrees) {
        return Print.number(degrees, Math.abs(degrees) < 10 ? 1 : 0) + " deg";
    }

    /// Prints a force.
    ///
    /// @param newtons the force
    /// @return to the newton, below 10 to a tenth, below 1 to a hundredth
    public static String newtons(double newtons) {
        return Print.number(newtons, newtons < 1 ? 2 : newtons < 10 ? 1 : 0) + " N";
    }
}
