package plumeline.plan;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import plumeline.quantity.Origin;
import plumeline.quantity.PaperUnit;
import plumeline.quantity.Print;
import plumeline.quantity.Quantity;
import plumeline.quantity.Unit;
import plumeline.text.Edit;
import plumeline.text.Place;

/// Writes solved values over free marks.
final class Keep {
    /// How near to what a tape shows a value must be to be written so, metres.
    private static final double NEAR_METRES = 1e-9;

    private static final Print INCHES = new Print(PaperUnit.INCHES);

    private Keep() {}

    static String text(Plan plan, Map<String, Map<String, Double>> solvedSi) {
        var replacements = new ArrayList<Edit.Replacement>();
        solvedSi.forEach((name, values) -> {
            var shot = plan.findShot(name).orElseThrow(() -> new IllegalArgumentException("no shot " + name));
            replacements.addAll(replacements(plan, shot, values));
        });
        return Edit.replace(plan.source().text(), replacements);
    }

    private static List<Edit.Replacement> replacements(Plan plan, Shot shot, Map<String, Double> values) {
        Map<Place, List<Mark>> spans = new LinkedHashMap<>();
        var known = new ArrayList<String>();
        for (var mark : shot.marks()) {
            if (!mark.isFree()) continue;
            known.add(mark.path());
            spans.computeIfAbsent(mark.place(), _ -> new ArrayList<>()).add(mark);
        }
        for (var path : values.keySet()) {
            if (!known.contains(path)) {
                throw new IllegalArgumentException("shot " + shot.name() + " has no free mark " + path);
            }
        }
        var out = new ArrayList<Edit.Replacement>();
        spans.forEach((place, marks) -> {
            if (marks.stream().noneMatch(m -> values.containsKey(m.path()))) return;
            out.add(new Edit.Replacement(place, text(plan, marks, values)));
        });
        return out;
    }

    private static String text(Plan plan, List<Mark> marks, Map<String, Double> values) {
        var quote = quote(plan.source().text(), marks.getFirst().place());
        var parts = new ArrayList<String>();
        for (var mark : marks) {
            var value = values.get(mark.path());
            parts.add(quote + (value == null ? "free" : text(plan, mark, value)) + quote);
        }
        return parts.size() == 1 ? parts.getFirst() : "[" + String.join(", ", parts) + "]";
    }

    /// Gives the quote that `free` is written in, none or one: a plan in JSON stays JSON.
    private static String quote(String text, Place place) {
        var first = text.substring(place.start(), place.start() + 1);
        return first.equals("\"") || first.equals("'") ? first : "";
    }

    private static String text(Plan plan, Mark mark, double valueSi) {
        var unit = unit(plan, mark);
        if (unit.equals(Unit.INCH) && mark.kind() != Mark.Kind.MOTOR && isOnTape(valueSi)) {
            return INCHES.length(valueSi) + " " + Origin.SOLVED.word();
        }
        return Quantity.of(valueSi, unit).withOrigin(Origin.SOLVED).toText();
    }

    /// Whether a value is what a tape in inches shows; anything else, and a motor's way, is written in decimals.
    private static boolean isOnTape(double metres) {
        return Math.abs(INCHES.roundMetres(metres, Print.Hand.TAPE) - metres) < NEAR_METRES;
    }

    /// Gives the unit to write in: for a length the papers', or its bounds' where both are metric; else the bounds' or
    /// the usual one.
    private static Unit unit(Plan plan, Mark mark) {
        return switch (mark.kind()) {
            case TAPE, HEIGHT, HUNG, LAMP_PLACE, MOTOR, FOCUS ->
                plan.film().papersOrDefault() == PaperUnit.INCHES ? Unit.INCH : metric(mark);
            case TURN, LAMP_TURN, MOTOR_TURN -> boundsOr(mark, Unit.DEGREE);
            case DIAL -> boundsOr(mark, mark.path().endsWith(".level") ? Unit.PERCENT : Unit.NONE);
        };
    }

    private static Unit metric(Mark mark) {
        var unit = boundsOr(mark, Unit.MILLIMETRE);
        return List.of("in", "ft").contains(unit.symbol()) ? Unit.MILLIMETRE : unit;
    }

    private static Unit boundsOr(Mark mark, Unit usual) {
        return mark instanceof Mark.Between between ? between.low().unit() : usual;
    }
}
