package plumeline.answer;

import java.util.List;
import plumeline.quantity.PaperUnit;
import plumeline.quantity.Print;

/// Values as sentences say them: rounded to what a hand can set, lengths in the crew's unit.
public final class Words {
    /// In millimetres.
    public static final Words MILLIMETRES = new Words(PaperUnit.MILLIMETRES);

    private static final double FINE_METRES = 0.01;
    private static final double FAR_METRES = 10;
    private static final int MOST_LISTED = 12;
    private static final double FOOT_METRES = 0.3048;
    private static final double FINE_INCHES_METRES = 0.0254 / 8;

    private final Print print;

    Words(PaperUnit unit) {
        print = new Print(unit);
    }

    /// Gives the unit of lengths.
    ///
    /// @return the unit
    public PaperUnit unit() {
        return print.unit();
    }

    /// Whole millimetres, tenths of what is under a centimetre; metres with three digits that count from ten on, or
    /// feet; sixteenths of an inch, hundredths of what is under an
    /// eighth and between them.
    ///
    /// @param metres the length, metres
    /// @return the text
    public String length(double metres) {
        double size = Math.abs(metres);
        if (size >= FAR_METRES) {
            return print.unit() == PaperUnit.MILLIMETRES ? far(metres) + " m" : far(metres / FOOT_METRES) + " ft";
        }
        if (print.unit() == PaperUnit.MILLIMETRES) {
            return size < FINE_METRES ? Print.number(metres * 1e3, 1) + " mm" : tape(metres);
        }
        double steps = size / stepMetres();
        boolean between = Math.abs(steps - Math.rint(steps)) > 1e-6;
        return size < FINE_INCHES_METRES && between ? Print.number(metres / 0.0254, 2) + " in" : tape(metres);
    }

    /// Three digits of what is ten or more.
    private static String far(double value) {
        double size = Math.abs(value);
        double unit = size < 100 ? 0.1 : Math.pow(10, Math.floor(Math.log10(size)) - 2);
        return Print.number(Math.rint(value / unit) * unit, 1);
    }

    /// Whole millimetres or sixteenths of an inch: what a hand is told to set.
    ///
    /// @param metres the length, metres
    /// @return the text
    public String tape(double metres) {
        return print.length(metres, Print.Hand.TAPE);
    }

    /// A small length, never more than there is: tenths of a millimetre or hundredths of an inch.
    ///
    /// @param metres the length, metres, ≥ 0
    /// @return the text
    public String down(double metres) {
        double step = print.stepMetres(Print.Hand.MOTOR);
        return print.length(Math.floor(metres / step + 1e-6) * step, Print.Hand.MOTOR);
    }

    /// Gives what a hand can set at the tape.
    ///
    /// @return the step, metres
    public double stepMetres() {
        return print.stepMetres(Print.Hand.TAPE);
    }

    /// Gives the next whole step of the tape that is no less.
    ///
    /// @param metres the length, metres
    /// @return the step, metres
    public double up(double metres) {
        return Math.ceil(metres / stepMetres() - 1e-6) * stepMetres();
    }

    /// An f-number: tenths, whole ones from ten on.
    ///
    /// @param fNumber the f-number
    /// @return the text
    public static String fNumber(double fNumber) {
        return "f/" + Print.number(fNumber, fNumber < 10 ? 1 : 0);
    }

    /// With a tenth, where it matters which side of a whole number it is on.
    ///
    /// @param fNumber the f-number
    /// @return the text
    public static String fineFNumber(double fNumber) {
        return "f/" + Print.number(fNumber, 1);
    }

    /// Micrometre-fine, for blur discs.
    ///
    /// @param metres the length, metres
    /// @return the text
    public static String fineMillimetres(double metres) {
        return Print.number(metres * 1e3, 4) + " mm";
    }

    /// Tenths of a pixel.
    ///
    /// @param pixels how many
    /// @return the text
    public static String pixels(double pixels) {
        return Print.number(pixels, 1) + " px";
    }

    /// Tenths of a per cent, where it matters that the number itself is enough.
    ///
    /// @param share a fraction of one
    /// @return the text
    public static String fineShare(double share) {
        return Print.share(share, 1);
    }

    /// Per cent as a number: tenths, whole ones from ten on.
    ///
    /// @param percent per cent
    /// @return the text
    public static String percent(double percent) {
        return Print.number(percent, Math.abs(percent) < 10 ? 1 : 0) + " %";
    }

    /// Per cent of what is lacking, which is never said to be nothing.
    ///
    /// @param percent per cent, ≥ 0
    /// @return the text
    public static String somePercent(double percent) {
        return percent < 0.05 ? "under 0.1 %" : percent(percent);
    }

    /// A length that is lacking, which is never said to be nothing.
    ///
    /// @param metres the length, metres, ≥ 0
    /// @return the text
    public String some(double metres) {
        double least = print.unit() == PaperUnit.MILLIMETRES ? 1e-4 : 0.000254;
        return metres < least / 2 ? "under " + print.length(least, Print.Hand.MOTOR) : length(metres);
    }

    /// Whole per cent, tenths of what is under ten.
    ///
    /// @param share a fraction of one
    /// @return the text
    public static String share(double share) {
        return Print.share(share, Math.abs(share) < 0.1 ? 1 : 0);
    }

    String value(Item item) {
        if (item.rounding() == Item.Rounding.HUNDREDTHS_UP) {
            return hundredths(item.value());
        }
        if (item.rounding() == Item.Rounding.ROUGH) {
            return rough(item.value());
        }
        return switch (item.value()) {
            case Value.Number(double number, String unit) when unit.equals("mm") -> length(safe(number / 1e3, item));
            case Value.Number _, Value.Spread _, Value.Numbers _, Value.Word _ -> value(item.value());
        };
    }

    private String rough(Value value) {
        return switch (value) {
            case Value.Number(double number, String unit) when !unit.equals("mm") -> rough(number, unit);
            case Value.Spread(double number, String unit, double low, double high)
            when !unit.equals("mm") -> between(rough(number, unit), rough(low, unit), rough(high, unit));
            case Value.Number _, Value.Spread _, Value.Numbers _, Value.Word _ -> value(value);
        };
    }

    private static String rough(double value, String unit) {
        if (value == 0) {
            return number("0", unit);
        }
        double step = Math.pow(10, Math.floor(Math.log10(Math.abs(value))) - 1);
        return number(Print.number(Math.rint(value / step) * step, 9), unit);
    }

    private static String number(String digits, String unit) {
        return unit.equals("1") ? digits : digits + " " + unit;
    }

    private String hundredths(Value value) {
        return switch (value) {
            case Value.Number(double number, String _) -> hundredthsUp(number) + " mm";
            case Value.Spread(double number, String _, double low, double high) ->
                between(hundredthsUp(number) + " mm", hundredthsUp(low) + " mm", hundredthsUp(high) + " mm");
            case Value.Numbers _, Value.Word _ -> value(value);
        };
    }

    private static String hundredthsUp(double millimetres) {
        return Print.number(Math.ceil(millimetres * 100 - 1e-6) / 100, 2);
    }

    /// A length on a step that it is printed in, rounded the way that keeps the promise.
    private double safe(double metres, Item item) {
        boolean metric = print.unit() == PaperUnit.MILLIMETRES;
        boolean fine = Math.abs(metres) < (metric ? FINE_METRES : FINE_INCHES_METRES);
        double step = fine ? print.stepMetres(Print.Hand.MOTOR) : stepMetres();
        double steps = metres / step;
        return switch (item.rounding()) {
            case NEAREST, ROUGH -> metres;
            case DOWN -> Math.floor(steps + 1e-6) * step;
            case UP, HUNDREDTHS_UP -> Math.ceil(steps - 1e-6) * step;
        };
    }

    private String value(Value value) {
        return switch (value) {
            case Value.Number(double number, String unit) -> number(number, unit);
            case Value.Spread(double number, String unit, double low, double high) ->
                between(number(number, unit), number(low, unit), number(high, unit));
            case Value.Numbers(List<Double> numbers, String unit) -> listed(numbers, unit);
            case Value.Word(String word) -> word;
        };
    }

    /// As far as a line goes; angles and rates as cameras are set.
    private String listed(List<Double> numbers, String unit) {
        StringBuilder all = new StringBuilder(numbers.isEmpty() ? "none" : "");
        for (double number : numbers.subList(0, Math.min(numbers.size(), MOST_LISTED))) {
            String text = switch (unit) {
                case "deg" -> Print.number(number, 1) + " deg";
                case "fps" -> Print.number(number, 3) + " fps";
                default -> number(number, unit);
            };
            all.append(all.isEmpty() ? "" : ", ").append(text);
        }
        int more = numbers.size() - MOST_LISTED;
        return all + (more > 0 ? " and " + more + " more" : "");
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
            case "min" -> Print.number(value, Math.abs(value) < 10 ? 1 : 0) + " min";
            case "degC" -> Print.number(value, 1) + " degC";
            case "fps" -> rate(value);
            case "LUFS", "LU", "dBTP", "dB" -> Print.number(value, 1) + " " + unit;
            default -> significant(value) + " " + unit;
        };
    }

    /// A frame rate: three digits that count, a broadcast one (24000/1001) as crews write it.
    ///
    /// @param framesPerSecond the rate, 1/s
    /// @return the text
    public static String rate(double framesPerSecond) {
        double whole = framesPerSecond * 1.001;
        boolean isBroadcast = Math.abs(whole - Math.rint(whole)) < 1e-6 && framesPerSecond > 1;
        return (isBroadcast ? Print.number(framesPerSecond, 3) : significant(framesPerSecond)) + " fps";
    }

    /// Three digits that count.
    private static String significant(double value) {
        double size = Math.abs(value);
        return Print.number(value, size >= 100 ? 0 : size >= 10 ? 1 : size >= 1 ? 2 : size >= 0.1 ? 3 : 4);
    }
}
