package plumeline.sheet;

import plumeline.quantity.Kind;
import plumeline.quantity.PaperUnit;
import plumeline.quantity.Print;
import plumeline.quantity.Quantity;

/// Written quantities as papers say them: lengths and speeds in the papers' unit, where a value comes from beside it.
///
/// @param print the papers' unit
record Told(Print print) {
    String quantity(Quantity quantity) {
        return value(quantity) + origin(quantity);
    }

    /// The same with how far off it may be, where that is written, as a share of it.
    String spread(Quantity quantity) {
        String half = quantity.hasSpread() ? " ± " + Print.share(quantity.halfWidthSi() / quantity.si(), 0) : "";
        return value(quantity) + half + origin(quantity);
    }

    private String value(Quantity quantity) {
        String text = switch (quantity.kind()) {
            case LENGTH -> (quantity.si() < 0 ? "−" : "") + print.difference(Math.abs(quantity.si()), Print.Hand.TAPE);
            case SPEED -> speed(quantity.si());
            case ACCELERATION -> motor(quantity.si()) + "/s2";
            default -> Rows.minus(quantity.valueText());
        };
        return quantity.findAt()
                .filter(at -> at.kind() == Kind.LENGTH)
                .map(at -> text + " at " + distance(at.si()))
                .orElse(text);
    }

    /// How far a meter stood from a lamp: in metres as lamps are told, where papers are in millimetres.
    private String distance(double metres) {
        return print.unit() == PaperUnit.MILLIMETRES ? Print.number(metres, 2) + " m" : print.length(metres);
    }

    /// A speed along a line.
    String speed(double metresPerSecond) {
        return motor(metresPerSecond) + "/s";
    }

    private String motor(double metres) {
        boolean metric = print.unit() == PaperUnit.MILLIMETRES;
        return Print.number(metres * (metric ? 1000 : 1 / 0.0254), metric ? 1 : 2) + (metric ? " mm" : " in");
    }

    static String origin(Quantity quantity) {
        return switch (quantity.origin()) {
            case GIVEN -> "";
            case MEASURED -> " (measured)";
            case TYPICAL -> " (typical: measure yours)";
            case SOLVED -> " (solved)";
        };
    }
}
