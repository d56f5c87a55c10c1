package plumeline.plan;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import plumeline.quantity.Origin;
import plumeline.quantity.PaperUnit;
import plumeline.quantity.Quantity;
import plumeline.quantity.Unit;
import plumeline.text.Edit;
import plumeline.text.Place;

/// Writes solved values over free marks.
final class Keep {
    private static final int SIXTEENTHS = 16;
    /// How near a sixteenth of an inch a value must be to be written as one, in sixteenths.
    private static final double NEAR = 1e-6;

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
        var parts = new ArrayList<String>();
        for (var mark : marks) {
            var value = values.get(mark.path());
            parts.add(value == null ? "free" : text(plan, mark, value));
        }
        return parts.size() == 1 ? parts.getFirst() : "[" + String.join(", ", parts) + "]";
    }

    private static String text(Plan plan, Mark mark, double valueSi) {
        var unit = unit(plan, mark);
        if (unit.equals(Unit.INCH)) return inches(unit.ofSi(valueSi)) + " " + Origin.SOLVED.word();
        return Quantity.of(valueSi, unit).withOrigin(Origin.SOLVED).toText();
    }

    private static Unit unit(Plan plan, Mark mark) {
        if (mark instanceof Mark.Between between) return between.low().unit();
        return switch (mark.kind()) {
            case TAPE, HEIGHT, HUNG, LAMP_PLACE, MOTOR, FOCUS ->
                plan.film().papersOrDefault() == PaperUnit.INCHES ? Unit.INCH : Unit.MILLIMETRE;
            case TURN, LAMP_TURN, MOTOR_TURN -> Unit.DEGREE;
            case DIAL -> mark.path().endsWith(".level") ? Unit.PERCENT : Unit.NONE;
        };
    }

    /// Writes whole sixteenths as a tape shows them, `-2 5/8 in`; anything else in decimals.
    private static String inches(double inches) {
        long parts = Math.round(inches * SIXTEENTHS);
        if (Math.abs(inches * SIXTEENTHS - parts) > NEAR)
            return Quantity.ofValue(inches, Unit.INCH).toText();
        long size = Math.abs(parts);
        long whole = size / SIXTEENTHS;
        long top = size % SIXTEENTHS;
        long below = SIXTEENTHS;
        while (top > 0 && top % 2 == 0) {
            top /= 2;
            below /= 2;
        }
        var sign = parts < 0 ? "-" : "";
        if (top == 0) return sign + whole + " in";
        return sign + (whole > 0 ? whole + " " : "") + top + "/" + below + " in";
    }
}
