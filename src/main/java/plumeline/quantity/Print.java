package plumeline.quantity;

import java.math.BigDecimal;
import java.math.RoundingMode;

/// Prints numbers as a hand can set them, in one unit of length for all of a film's papers.
///
/// Lengths are in whole millimetres, or inches and sixteenths; a motor axis takes tenths of a millimetre, or hundredths
/// of an inch. Halves round away from zero; there is never a negative zero. Differences in
/// millimetres, such as a leeway, are finer where they are small.
///
/// @param unit the unit of length
public record Print(PaperUnit unit) {
    private static final double SIXTEENTH_METRES = 0.0254 / 16;
    private static final double HUNDREDTH_METRES = 0.0254 / 100;

    /// This part of a step is forgiven before rounding down: the last bits of what was computed, no more.
    private static final double FORGIVEN = 1e-6;

    /// What sets a length: it decides how finely it is printed.
    public enum Hand {
        /// A tape: 1 mm, or 1/16 in.
        TAPE,
        /// A motor axis: 0.1 mm, or 0.01 in.
        MOTOR
    }

    /// How a difference is rounded.
    public enum Rounding {
        /// To the nearest step.
        NEAREST,
        /// To the step below, so that nothing promises more than there is.
        DOWN
    }

    /// Gives the step that a hand sets.
    ///
    /// @param hand what sets it
    /// @return the step, metres
    public double stepMetres(Hand hand) {
        return switch (unit) {
            case MILLIMETRES -> hand == Hand.TAPE ? 1e-3 : 1e-4;
            case INCHES -> hand == Hand.TAPE ? SIXTEENTH_METRES : HUNDREDTH_METRES;
        };
    }

    /// Rounds a length to what a hand can set, so that text and number agree.
    ///
    /// @param metres the length, metres, finite
    /// @param hand what sets it
    /// @return the length that [#length] prints, metres
    public double roundMetres(double metres, Hand hand) {
        long steps = steps(metres, stepMetres(hand));
        return switch (unit) {
            case MILLIMETRES -> hand == Hand.TAPE ? steps / 1e3 : steps / 1e4;
            case INCHES -> hand == Hand.TAPE ? steps * 0.0254 / 16 : steps * 0.0254 / 100;
        };
    }

    /// Counts steps, halves away from zero, forgiving the last bits of what was computed.
    private static long steps(double value, double step) {
        double steps = value / step;
        double rounded = Math.floor(Math.abs(steps) + 0.5 + 1e-9);
        return (long) (steps < 0 ? -rounded : rounded);
    }

    /// Prints a length with its unit: `12 mm`, `2 5/8 in`, `0 in`.
    ///
    /// @param metres the length, metres, finite
    /// @param hand what sets it
    /// @return the text, which reads back as the rounded length
    public String length(double metres, Hand hand) {
        return lengthNumber(metres, hand) + " " + lengthUnit();
    }

    /// Prints a tape length with its unit.
    ///
    /// @param metres the length, metres, finite
    /// @return the text
    public String length(double metres) {
        return length(metres, Hand.TAPE);
    }

    /// Prints a length without its unit, for a column whose head names it.
    ///
    /// @param metres the length, metres, finite
    /// @param hand what sets it
    /// @return the number
    public String lengthNumber(double metres, Hand hand) {
        long steps = steps(metres, stepMetres(hand));
        return switch (unit) {
            case MILLIMETRES -> hand == Hand.TAPE ? Long.toString(steps) : decimals(steps, 1);
            case INCHES -> hand == Hand.TAPE ? sixteenths(steps) : decimals(steps, 2);
        };
    }

    /// Rounds a difference of lengths, so that text and number agree.
    ///
    /// @param metres the difference, metres, >= 0
    /// @param hand what sets it
    /// @param rounding to which step
    /// @return the difference that [#difference] prints, metres
    public double roundDifferenceMetres(double metres, Hand hand, Rounding rounding) {
        Fineness fine = fineness(metres, hand);
        return countSteps(metres, fine.stepMetres(), rounding) * fine.stepMetres();
    }

    /// Prints a difference of lengths without its unit: millimetres whole, in tenths below 2 mm; inches in sixteenths,
    /// as a tape has them, and hundredths on a motor.
    ///
    /// @param metres the difference, metres, >= 0
    /// @param hand what sets it
    /// @param rounding to which step
    /// @return the number, 0 where it rounds to that
    public String differenceNumber(double metres, Hand hand, Rounding rounding) {
        Fineness fine = fineness(metres, hand);
        return fine.number(countSteps(metres, fine.stepMetres(), rounding));
    }

    /// Prints a difference of lengths with its unit, to the nearest step: `7 mm`, `0.4 mm`, `3/16 in`. What would round
    /// to nothing is said to be under a step.
    ///
    /// @param metres the difference, metres, >= 0
    /// @param hand what sets it
    /// @return the text
    public String difference(double metres, Hand hand) {
        Fineness fine = fineness(metres, hand);
        long steps = countSteps(metres, fine.stepMetres(), Rounding.NEAREST);
        return (steps == 0 ? "under " + fine.number(1) : fine.number(steps)) + " " + lengthUnit();
    }

    /// In which steps a difference is counted, and how so many are written.
    private enum Fineness {
        WHOLE(1e-3),
        TENTHS(1e-4),
        SIXTEENTHS(SIXTEENTH_METRES),
        HUNDREDTHS(HUNDREDTH_METRES);

        private final double stepMetres;

        Fineness(double stepMetres) {
            this.stepMetres = stepMetres;
        }

        double stepMetres() {
            return stepMetres;
        }

        String number(long steps) {
            return switch (this) {
                case WHOLE -> Long.toString(steps);
                case TENTHS -> decimals(steps, 1);
                case SIXTEENTHS -> mixed(steps, 16);
                case HUNDREDTHS -> decimals(steps, 2);
            };
        }
    }

    private Fineness fineness(double metres, Hand hand) {
        if (unit == PaperUnit.MILLIMETRES) {
            return metres < 0.002 ? Fineness.TENTHS : Fineness.WHOLE;
        }
        return hand == Hand.MOTOR ? Fineness.HUNDREDTHS : Fineness.SIXTEENTHS;
    }

    private static long countSteps(double value, double step, Rounding rounding) {
        return switch (rounding) {
            case NEAREST -> steps(value, step);
            case DOWN -> roundDown(value, step);
        };
    }

    /// Counts the whole steps in a value, forgiving the last bits of what was computed.
    ///
    /// @param value finite, >= 0
    /// @param step in the value's unit, > 0
    /// @return how many
    public static long roundDown(double value, double step) {
        return (long) Math.floor(value / step + FORGIVEN);
    }

    /// Names the unit of length.
    ///
    /// @return `mm` or `in`
    public String lengthUnit() {
        return unit == PaperUnit.MILLIMETRES ? "mm" : "in";
    }

    private static String sixteenths(long steps) {
        return mixed(steps, 16);
    }

    /// Writes so many parts of a whole as whole and lowest fraction: 42 sixteenths are `2 5/8`.
    private static String mixed(long parts, int whole) {
        long size = Math.abs(parts);
        long above = size % whole;
        long below = whole;
        while (above > 0 && above % 2 == 0 && below % 2 == 0) {
            above /= 2;
            below /= 2;
        }
        String sign = parts < 0 ? "-" : "";
        if (above == 0) {
            return sign + size / whole;
        }
        return sign + (size >= whole ? size / whole + " " : "") + above + "/" + below;
    }

    /// Writes so many powers of a tenth: 123 with one place is `12.3`. Trailing zeros stay: they say how finely to set
    /// it.
    private static String decimals(long steps, int places) {
        return BigDecimal.valueOf(steps, places).toPlainString();
    }

    /// Prints an angle in whole degrees, as a hand sets it: `39 deg`.
    ///
    /// @param radians the angle, finite
    /// @return the text
    public static String degrees(double radians) {
        return steps(Math.toDegrees(radians), 1) + " deg";
    }

    /// Prints an angle in tenths of a degree, as a motor axis takes it: `39.5 deg`.
    ///
    /// @param radians the angle, finite
    /// @return the text
    public static String fineDegrees(double radians) {
        return decimals(steps(Math.toDegrees(radians), 0.1), 1) + " deg";
    }

    /// Prints stops in thirds: `1 2/3 stops`, `1 stop`, `-1/3 stops`.
    ///
    /// @param stops factors of two, finite
    /// @return the text
    public static String stops(double stops) {
        long thirds = steps(stops, 1.0 / 3);
        return mixed(thirds, 3) + (Math.abs(thirds) == 3 ? " stop" : " stops");
    }

    /// Prints a share in whole per cent, or with this many decimals: `12.5 %`.
    ///
    /// @param share a fraction of one, finite
    /// @param places decimals, 0 to 3
    /// @return the text
    public static String share(double share, int places) {
        return number(share * 100, places) + " %";
    }

    /// Says a share of takes as a crew counts them: `about 7 takes in 10`.
    ///
    /// @param share the share, 0 to 1
    /// @return the words, in the middle of a sentence
    public static String takesInTen(double share) {
        long tenths = Math.round(10 * share);
        if (tenths <= 0) {
            return "fewer than 1 take in 10";
        }
        return tenths >= 10
                ? "more than 9 takes in 10"
                : "about " + tenths + (tenths == 1 ? " take" : " takes") + " in 10";
    }

    /// Prints a time in seconds with this many decimals: `1.25 s`.
    ///
    /// @param seconds the time, finite
    /// @param places decimals, 0 to 3
    /// @return the text
    public static String seconds(double seconds, int places) {
        return number(seconds, places) + " s";
    }

    /// Prints a plain number with this many decimals at most, without trailing zeros and without a negative zero.
    ///
    /// @param value finite
    /// @param places decimals, 0 to 9
    /// @return the text
    public static String number(double value, int places) {
        BigDecimal rounded = new BigDecimal(Double.toString(value)).setScale(places, RoundingMode.HALF_UP);
        return rounded.signum() == 0 ? "0" : rounded.stripTrailingZeros().toPlainString();
    }
}
