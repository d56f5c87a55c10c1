package plumeline.sheet;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import plumeline.plan.Mark;
import plumeline.quantity.PaperUnit;
import plumeline.search.Leeway;
import plumeline.solve.FilmAnswer;
import plumeline.solve.MarkAnswer;
import plumeline.solve.ShotAnswer;

/// The marks that have a value, as comma-separated values.
///
/// **Source:** RFC 4180, section 2: records end in CRLF, fields with comma, quote or line break stand in quotes, a
/// quote in them is doubled.
///
/// Lengths are in the papers' unit, angles in deg, levels in %, f-numbers in 1; to a ten-thousandth of the unit, so
/// that a reader may compare them with the answers. An endless side says `endless`.
final class MarksCsv {
    private static final int PLACES = 4;
    private static final String END = "\r\n";

    private MarksCsv() {}

    static String of(FilmAnswer film) {
        StringBuilder out = new StringBuilder();
        row(out, List.of("shot", "mark", "value", "unit", "origin", "leeway_minus", "leeway_plus", "leeway_unit"));
        PaperUnit paper = film.plan().film().papersOrDefault();
        for (ShotAnswer shot : film.shots()) {
            for (MarkAnswer answer : shot.marks()) {
                if (answer.setting() instanceof MarkAnswer.Setting.At at) {
                    row(out, fields(shot, answer, at, paper));
                }
            }
        }
        return out.toString();
    }

    private static List<String> fields(ShotAnswer shot, MarkAnswer answer, MarkAnswer.Setting.At at, PaperUnit paper) {
        Mark mark = answer.mark();
        double perSi = perSi(mark, paper);
        String unit = unit(mark, paper);
        List<String> fields = new ArrayList<>(List.of(shot.shot(), mark.path()));
        fields.add(number(at.si() * perSi));
        fields.add(unit);
        fields.add(at.origin().word());
        fields.add(side(answer.leeway().minus(), perSi));
        fields.add(side(answer.leeway().plus(), perSi));
        fields.add(unit);
        return fields;
    }

    private static String side(Leeway.Side side, double perSi) {
        return switch (side) {
            case Leeway.Side.Ends(double distance) -> number(distance * perSi);
            case Leeway.Side.Endless() -> "endless";
        };
    }

    private static String unit(Mark mark, PaperUnit paper) {
        return switch (mark.kind()) {
            case TAPE, HEIGHT, HUNG, LAMP_PLACE, MOTOR, FOCUS -> paper == PaperUnit.MILLIMETRES ? "mm" : "in";
            case TURN, LAMP_TURN, MOTOR_TURN -> "deg";
            case DIAL -> isFNumber(mark) ? "1" : "%";
        };
    }

    private static double perSi(Mark mark, PaperUnit paper) {
        return switch (mark.kind()) {
            case TAPE, HEIGHT, HUNG, LAMP_PLACE, MOTOR, FOCUS -> paper == PaperUnit.MILLIMETRES ? 1000 : 1 / 0.0254;
            case TURN, LAMP_TURN, MOTOR_TURN -> 180 / Math.PI;
            case DIAL -> isFNumber(mark) ? 1 : 100;
        };
    }

    private static boolean isFNumber(Mark mark) {
        return mark.path().equals("camera.f_number");
    }

    private static String number(double value) {
        BigDecimal rounded = new BigDecimal(Double.toString(value)).setScale(PLACES, RoundingMode.HALF_UP);
        return rounded.signum() == 0 ? "0" : rounded.stripTrailingZeros().toPlainString();
    }

    private static void row(StringBuilder out, List<String> fields) {
        out.append(fields.stream().map(MarksCsv::field).collect(Collectors.joining(",")))
                .append(END);
    }

    static String field(String text) {
        boolean plain = text.chars().noneMatch(c -> c == ',' || c == '"' || c == '\r' || c == '\n');
        return plain ? text : '"' + text.replace("\"", "\"\"") + '"';
    }
}
