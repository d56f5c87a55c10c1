package plumeline.ask;

import java.util.List;
import plumeline.quantity.PaperUnit;
import plumeline.quantity.Print;

/// Values as sentences say them: rounded to what a hand can set, lengths in the crew's unit.
final class Words {
    static final Words MILLIMETRES = new Words(PaperUnit.MILLIMETRES);

    private static final double FINE_METRES = 0.01;
    private static final double FINE_INCHES_METRES = 0.0254 / 8;

    private final Print print;

    Words(PaperUnit unit) {
        print = new Print(unit);
    }

    PaperUnit unit() {
        return print.unit();
    }

    /// Whole millimetres, tenths of what is under a centimetre; sixteenths of an inch, hundredths of what is under an
    /// eighth and between them.
    String length(double metres) {
        double size = Math.abs(metres);
        if (print.unit() == PaperUnit.MILLIMETRES) {
            return size < FINE_METRES ? Print.number(metres * 1e3, 1) + " mm" : tape(metres);
        }
        double steps = size / stepMetres();
        boolean between = Math.abs(steps - Math.rint(steps)) > 1e-6;
        return size < FINE_INCHES_METRES && between ? Print.number(metres / 0.0254, 2) + " in" : tape(metres);
    }

    /// Whole millimetres or sixteenths of an inch: what a hand is told to set.
    String tape(double metres) {
        return print.length(metres, Print.Hand.TAPE);
    }

    /// A small length, never more than there is: tenths of a millimetre or hundredths of an inch.
    String down(double metres) {
        double step = print.stepMetres(Print.Hand.MOTOR);
        return print.length(Math.floor(metres / step + 1e-6) * step, Print.Hand.MOTOR);
    }

    /// What a hand can set at the tape.
    double stepMetres() {
        return print.stepMetres(Print.Hand.TAPE);
    }

    /// The next whole step of the tape that is no less.
    double up(double metres) {
        return Math.ceil(metres / stepMetres() - 1e-6) * stepMetres();
    }

    static String fNumber(double fNumber) {
        return "f/" + Print.number(fNumber, fNumber < 10 ? 1 : 0);
    }

    /// With a tenth, where it matters which side of a whole number it is on.
    static String fineFNumber(double fNumber) {
        return "f/" + Print.number(fNumber, 1);
    }

    /// Micrometre-fine, for blur discs.
    static String fineMillimetres(double metres) {
        return Print.number(metres * 1e3, 4) + " mm";
    }

    static String pixels(double pixels) {
        return Print.number(pixels, 1) + " px";
    }

    /// Tenths of a per cent, where it matters that the number itself is enough.
    static String fineShare(double share) {
        return Print.share(share, 1);
    }

    /// Per cent as a number: tenths, whole ones from ten on.
    static String percent(double percent) {
        return Print.number(percent, Math.abs(percent) < 10 ? 1 : 0) + " %";
    }

    static String share(double share) {
        return Print.share(share, Math.abs(share) < 0.1 ? 1 : 0);
    }

    String value(Value value) {
        return switch (value) {
            case Value.Number(double number, String unit) -> number(number, unit);
            case Value.Spread(double number, String unit, double low, double high) ->
                between(number(number, unit), number(low, unit), number(high, unit));
            case Value.Numbers(List<Double> numbers, String unit) -> {
                StringBuilder all = new StringBuilder();
                for (double number : numbers) {
                    all.append(all.isEmpty() ? "" : ", ").append(number(number, unit));
                }
                yield all.toString();
            }
            case Value.Word(String word) -> word;
        };
    }

    /// An interval that rounds away isn't worth a reader's time.
    private static String between(String value, String low, String high) {
        return low.equals(high) ? value : value + " (" + low + " to " + high + ")";
    }

    /// A default as it stands in our own tables, in its unit.
    static String plain(Value value) {
        return switch (value) {
            case Value.Number(double number, String unit) ->
                Print.number(number, 4) + (unit.equals("1") ? "" : " " + unit);
            case Value.Word(String word) -> word;
            case Value.Spread spread -> throw new IllegalArgumentException("a default with a spread: " + spread);
            case Value.Numbers numbers -> throw new IllegalArgumentException("a list as a default: " + numbers);
        };
    }

    private String number(double value, String unit) {
        return switch (unit) {
            case "mm" -> length(value / 1e3);
            case "1" -> significant(value);
            case "stops" -> Print.stops(value);
            case "deg" -> Print.number(value, 0) + " deg";
            case "%" -> Print.number(value, 1) + " %";
            case "px" -> pixels(value);
            default -> significant(value) + " " + unit;
        };
    }

    /// Three digits that count.
    private static String significant(double value) {
        double size = Math.abs(value);
        return Print.number(value, size >= 100 ? 0 : size >= 10 ? 1 : size >= 1 ? 2 : size >= 0.1 ? 3 : 4);
    }
}
