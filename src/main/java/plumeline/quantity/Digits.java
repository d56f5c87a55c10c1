package plumeline.quantity;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;

/// Numbers as text and back, without a locale.
final class Digits {
    /// Values beyond this are refused: no film needs them, and sums of their squares stay finite.
    static final double LARGEST = 1e15;

    /// The longest number we read, in characters.
    static final int LONGEST = 40;

    private Digits() {}

    /// Writes a double in plain decimals with at most 12 significant digits, without trailing zeros.
    static String shortest(double value) {
        if (value == Math.rint(value) && Math.abs(value) < 1e12) {
            return Long.toString((long) value);
        }
        return new BigDecimal(value)
                .round(new MathContext(12, RoundingMode.HALF_EVEN))
                .stripTrailingZeros()
                .toPlainString();
    }

    /// Finds where the number that starts at `from` ends: a sign, then decimals with an exponent, a fraction, or a
    /// whole number and a fraction. Gives `from` where there is no number.
    static int end(String text, int from) {
        int at = from;
        if (at < text.length() && (text.charAt(at) == '-' || text.charAt(at) == '+')) {
            at++;
        }
        int whole = digits(text, at);
        if (whole > at && fraction(text, whole) > whole) {
            return fraction(text, whole);
        }
        if (whole > at) {
            int gap = spaces(text, whole);
            int top = digits(text, gap);
            if (gap > whole && top > gap && fraction(text, top) > top) {
                return fraction(text, top);
            }
        }
        return decimalEnd(text, at, whole, from);
    }

    private static int decimalEnd(String text, int first, int whole, int from) {
        int at = whole;
        if (at < text.length() && text.charAt(at) == '.') {
            int tail = digits(text, at + 1);
            if (tail == at + 1 && whole == first) {
                return from;
            }
            at = tail;
        } else if (whole == first) {
            return from;
        }
        if (at < text.length() && (text.charAt(at) == 'e' || text.charAt(at) == 'E')) {
            int sign = at + 1;
            if (sign < text.length() && (text.charAt(sign) == '-' || text.charAt(sign) == '+')) {
                sign++;
            }
            int tail = digits(text, sign);
            if (tail > sign) {
                return tail;
            }
        }
        return at;
    }

    private static int fraction(String text, int slash) {
        return slash < text.length() && text.charAt(slash) == '/' ? Math.max(slash, digitsAfter(text, slash)) : slash;
    }

    private static int digitsAfter(String text, int slash) {
        int end = digits(text, slash + 1);
        return end == slash + 1 ? slash : end;
    }

    private static int digits(String text, int from) {
        int at = from;
        while (at < text.length() && text.charAt(at) >= '0' && text.charAt(at) <= '9') {
            at++;
        }
        return at;
    }

    private static int spaces(String text, int from) {
        int at = from;
        while (at < text.length() && text.charAt(at) == ' ') {
            at++;
        }
        return at;
    }

    /// Reads what [#end] has found. Gives NaN where it is too long, too large or divides by zero.
    static double value(String digits) {
        if (digits.length() > LONGEST) {
            return Double.NaN;
        }
        int slash = digits.indexOf('/');
        double value;
        if (slash < 0) {
            value = Double.parseDouble(digits);
        } else {
            int space = digits.indexOf(' ');
            boolean below = digits.charAt(0) == '-';
            double whole = space < 0 ? 0 : Math.abs(Double.parseDouble(digits.substring(0, space)));
            double top = Double.parseDouble(digits.substring(space + 1, slash));
            double part = Math.abs(top) / Double.parseDouble(digits.substring(slash + 1));
            value = below ? -(whole + part) : whole + part;
        }
        return Math.abs(value) <= LARGEST ? value + 0.0 : Double.NaN;
    }
}
