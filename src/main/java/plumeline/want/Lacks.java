package plumeline.want;

import java.util.ArrayList;
import java.util.List;
import plumeline.quantity.Print;
import plumeline.stage.Immersed;

/// What wants about water say of what is missing, and of figures they share.
final class Lacks {
    static final double GRAMS = 1000;

    private Lacks() {}

    /// What to measure, and where to write it.
    static String sentence(Immersed.Lack lack, String name) {
        return switch (lack) {
            case MASS -> "Weigh " + name + ", whole and filled: write its mass.";
            case TOO_LIGHT -> name + " weighs no more than its contents. Weigh it again, full.";
            case AIR ->
                name + " is open: write how much air stays in it, 0 ml once it is flooded and no bubble is left.";
            case TOO_FULL ->
                "Wall, contents and air have no room in " + name
                        + ". Push it under in a jug on a kitchen scale: the grams gained are the millilitres it"
                        + " displaces; measure what is in it.";
            case PROFILE -> name + "'s profile has a hole. Measure its radius at each height where the outline bends.";
        };
    }

    /// What was assumed, in a sentence; empty where nothing was.
    static String assumed(List<String> assumed) {
        return assumed.isEmpty() ? "" : "Assumed: " + String.join("; ", assumed) + ".";
    }

    /// What was assumed of a thing and of its vessel.
    static String assumed(Immersed immersed, Immersed.Body.Of body) {
        List<String> all = new ArrayList<>(immersed.assumed());
        all.addAll(body.assumed());
        return assumed(all);
    }

    static String grams(double kilograms) {
        double grams = Math.abs(kilograms * GRAMS);
        return Print.number(grams, grams < 10 ? 1 : 0) + " g";
    }

    static String degrees(double degrees) {
        return Print.number(degrees, Math.abs(degrees) < 10 ? 1 : 0) + " deg";
    }

    static String newtons(double newtons) {
        return Print.number(newtons, newtons < 1 ? 2 : newtons < 10 ? 1 : 0) + " N";
    }
}
