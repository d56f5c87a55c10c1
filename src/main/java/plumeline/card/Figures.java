package plumeline.card;

import plumeline.quantity.Origin;
import plumeline.quantity.PaperUnit;
import plumeline.quantity.Print;
import plumeline.quantity.Quantity;
import plumeline.stage.Immersed;
import plumeline.water.Water;
import plumeline.wet.Lacks;

/// Figures as cards print them.
final class Figures {
    private Figures() {}

    /// A mass and what it pulls: `64 g (0.63 N)`.
    static String load(double kilograms) {
        return Lacks.grams(kilograms) + " (" + Lacks.newtons(kilograms * Water.GRAVITY_METRES_PER_SECOND2) + ")";
    }

    static String pull(double newtons) {
        return load(newtons / Water.GRAVITY_METRES_PER_SECOND2);
    }

    /// A mass with its spread.
    static String grams(Immersed.Amount amount) {
        return Lacks.grams(amount.value()) + (amount.half() > 0 ? " ± " + Lacks.grams(amount.half()) : "");
    }

    static String millilitres(Immersed.Amount amount) {
        String half = amount.half() > 0 ? " ± " + millilitres(amount.half()) : "";
        return millilitres(amount.value()) + half;
    }

    private static String millilitres(double metres3) {
        double ml = metres3 * 1e6;
        return Print.number(ml, ml < 10 ? 1 : 0) + " ml";
    }

    static String litres(double metres3) {
        double litres = metres3 * 1000;
        return Print.number(litres, litres < 100 ? 1 : 0) + " l";
    }

    /// A quantity as written, and where it comes from.
    static String written(Quantity quantity) {
        String origin = switch (quantity.origin()) {
            case GIVEN -> " (as planned, not measured)";
            case MEASURED -> " (measured)";
            case TYPICAL -> " (typical: measure yours)";
            case SOLVED -> " (solved)";
        };
        return quantity.withOrigin(Origin.GIVEN).toText() + origin;
    }

    /// A rough time.
    static String minutes(double seconds) {
        double minutes = seconds / 60;
        if (minutes < 1) {
            return "a minute";
        }
        return minutes < 100 ? Print.number(minutes, 0) + " min" : Print.number(minutes / 60, 0) + " h";
    }

    static boolean isMetric(Print print) {
        return print.unit() == PaperUnit.MILLIMETRES;
    }
}
