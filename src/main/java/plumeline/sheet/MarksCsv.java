package plumeline.sheet;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import plumeline.draw.LeewayText;
import plumeline.plan.Mark;
import plumeline.quantity.PaperUnit;
import plumeline.quantity.Print;
import plumeline.search.Leeway;
import plumeline.solve.FilmAnswer;
import plumeline.solve.MarkAnswer;
import plumeline.solve.ShotAnswer;

/// The marks that have a value, as comma-separated values.
///
/// **Source:** RFC 4180, section 2: records end in CRLF, fields with comma, quote or line break stand in quotes, a
/// quote in them is doubled.
///
/// Lengths are in the papers' unit, in decimals, angles in deg, levels in %, f-numbers in 1. Values are as a hand can
/// set them, leeway is rounded down, as on the other papers. An endless side says `endless`; leeway minds wants only
/// and may go on past a machine's travel.
final class MarksCsv {
    /// A thirty-second of an inch has five.
    private static final int PLACES = 5;

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
        fields.add(number(settable(mark, at.si(), paper) * perSi));
        fields.add(unit);
        fields.add(at.origin().word());
        fields.add(side(mark, answer.leeway().minus(), paper));
        fields.add(side(mark, answer.leeway().plus(), paper));
        fields.add(unit);
        return fields;
    }

    private static String side(Mark mark, Leeway.Side side, PaperUnit paper) {
        return switch (side) {
            case Leeway.Side.Ends(double distance) ->
                number(new LeewayText(paper).roundedDownSi(mark, distance) * perSi(mark, paper));
            case Leeway.Side.Endless() -> "endless";
        };
    }

    /// A value as a hand can set it, SI.
    private static double settable(Mark mark, double si, PaperUnit paper) {
        Print print = new Print(paper);
        return switch (mark.kind()) {
            case TAPE, HEIGHT, HUNG, LAMP_PLACE, FOCUS -> print.roundMetres(si, Print.Hand.TAPE);
            case MOTOR -> print.roundMetres(si, Print.Hand.MOTOR);
            case TURN, LAMP_TURN -> nearest(si, Math.toRadians(1));
            case MOTOR_TURN -> nearest(si, Math.toRadians(0.1));
            case DIAL -> nearest(si, isFNumber(mark) ? 0.1 : 0.01);
        };
    }

    private static double nearest(double value, double step) {
        return Math.rint(value / step) * step;
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
