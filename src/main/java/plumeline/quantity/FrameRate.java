package plumeline.quantity;

import java.math.BigDecimal;
import java.math.BigInteger;

/// An exact frame rate, frames a second. Never a double: 23.976 for 24000/1001 is 3.6 ms out after an hour.
///
/// @param numerator > 0
/// @param denominator > 0, without common factors with the numerator
public record FrameRate(long numerator, long denominator) {
    /// Checks the ranges and takes out common factors.
    public FrameRate {
        if (numerator <= 0 || denominator <= 0) {
            throw new IllegalArgumentException("a frame rate must be > 0, is " + numerator + "/" + denominator);
        }
        long common = gcd(numerator, denominator);
        numerator /= common;
        denominator /= common;
    }

    /// Gives the exact rate of a quantity of kind RATE. 23.976, 23.98, 29.97, 47.952, 47.95, 59.94 and 119.88 fps are
    /// the broadcast fractions such as 24000/1001; every other number is taken as written.
    ///
    /// **Source:** the fractions are common practice of broadcast: whole rates times 1000/1001.
    ///
    /// @param rate a frame rate > 0
    /// @return the exact rate
    /// @throws IllegalArgumentException for another kind or a rate that is not > 0
    public static FrameRate of(Quantity rate) {
        if (rate.kind() != Kind.RATE) {
            throw new IllegalArgumentException("no frame rate: " + rate.toText());
        }
        long whole = broadcast(rate.value());
        if (whole > 0) {
            return new FrameRate(whole * 1000, 1001);
        }
        String digits = rate.digits();
        int slash = digits.indexOf('/');
        if (slash < 0) {
            return ofDecimal(new BigDecimal(digits));
        }
        int space = digits.indexOf(' ');
        long below = Long.parseLong(digits.substring(slash + 1));
        long above = Long.parseLong(digits.substring(space + 1, slash));
        long more = space < 0 ? 0 : Long.parseLong(digits.substring(0, space));
        return new FrameRate(more * below + above, below);
    }

    /// Tells whether numerator and denominator of a typed rate are sure to fit: at most 18 digits in all, with the
    /// zeros of an exponent counted.
    static boolean isExact(String digits) {
        int slash = digits.indexOf('/');
        if (slash >= 0) {
            return digits.length() <= 18;
        }
        BigDecimal plain = new BigDecimal(digits).stripTrailingZeros();
        int whole = plain.precision() - plain.scale();
        return plain.precision() <= 18 && plain.scale() <= 18 && whole <= 18;
    }

    private static FrameRate ofDecimal(BigDecimal decimal) {
        BigDecimal plain = decimal.stripTrailingZeros();
        int scale = Math.max(plain.scale(), 0);
        BigInteger below = BigInteger.TEN.pow(scale);
        BigInteger above = plain.multiply(new BigDecimal(below)).toBigIntegerExact();
        BigInteger common = above.gcd(below);
        return new FrameRate(
                above.divide(common).longValueExact(), below.divide(common).longValueExact());
    }

    /// Gives the whole rate whose 1000/1001 a typed number means, or 0.
    private static long broadcast(double typed) {
        if (typed == 23.976 || typed == 23.98) {
            return 24;
        }
        if (typed == 47.952 || typed == 47.95) {
            return 48;
        }
        return typed == 29.97 ? 30 : typed == 59.94 ? 60 : typed == 119.88 ? 120 : 0;
    }

    /// Gives the double nearest to what a typed rate means.
    static double roundBroadcast(double typed) {
        long whole = broadcast(typed);
        return whole > 0 ? whole * 1000 / 1001.0 : typed;
    }

    private static long gcd(long a, long b) {
        return b == 0 ? a : gcd(b, a % b);
    }

    /// Gives the rate as the nearest double.
    ///
    /// @return frames a second
    public double framesPerSecond() {
        return (double) numerator / denominator;
    }

    /// Gives the time of so many frames.
    ///
    /// @param frames a count
    /// @return seconds
    public double secondsOf(double frames) {
        return frames * denominator / numerator;
    }

    /// Writes the rate as crews do: `24 fps`, `23.976 fps`, `25/2 fps` for what has no usual decimals.
    ///
    /// @return text that reads back as an equal rate
    public String toText() {
        if (denominator == 1) {
            return numerator + " fps";
        }
        if (denominator == 1001 && numerator % 1000 == 0) {
            switch ((int) Math.min(numerator / 1000, 1000)) {
                case 24:
                    return "23.976 fps";
                case 30:
                    return "29.97 fps";
                case 48:
                    return "47.952 fps";
                case 60:
                    return "59.94 fps";
                case 120:
                    return "119.88 fps";
                default:
                    break;
            }
        }
        return numerator + "/" + denominator + " fps";
    }
}
