package plumeline.quantity;

import java.util.Optional;

/// A picture's ratio, width to height: `16:9`.
///
/// @param across > 0
/// @param down > 0
public record Ratio(int across, int down) {
    /// Checks the ranges.
    public Ratio {
        if (across <= 0 || down <= 0) {
            throw new IllegalArgumentException("a ratio's parts must be > 0, are " + across + ":" + down);
        }
    }

    /// Reads `16:9`, `2.39:1` or `1:1`.
    ///
    /// @param text without spaces round it
    /// @return the ratio, or nothing where the text is none
    public static Optional<Ratio> read(String text) {
        int colon = text.indexOf(':');
        if (colon < 1 || text.length() > 16) {
            return Optional.empty();
        }
        long across = thousandths(text.substring(0, colon));
        long down = thousandths(text.substring(colon + 1));
        if (across <= 0 || down <= 0) {
            return Optional.empty();
        }
        long common = across % 1000 == 0 && down % 1000 == 0 ? 1000 : gcd(across, down);
        return Optional.of(new Ratio((int) (across / common), (int) (down / common)));
    }

    private static long gcd(long a, long b) {
        return b == 0 ? a : gcd(b, a % b);
    }

    /// Reads up to five digits and up to three decimals as thousandths; 0 where the text is something else.
    private static long thousandths(String text) {
        int dot = text.indexOf('.');
        String whole = dot < 0 ? text : text.substring(0, dot);
        String part = dot < 0 ? "" : text.substring(dot + 1);
        if (whole.isEmpty() || whole.length() > 5 || part.length() > 3 || dot >= 0 && part.isEmpty()) {
            return 0;
        }
        String all = whole + part + "000".substring(part.length());
        long sum = 0;
        for (int i = 0; i < all.length(); i++) {
            char digit = all.charAt(i);
            if (digit < '0' || digit > '9') {
                return 0;
            }
            sum = sum * 10 + digit - '0';
        }
        return sum;
    }

    /// Gives width over height.
    ///
    /// @return the quotient, dimensionless
    public double value() {
        return (double) across / down;
    }

    /// Writes it as a plan does, without quotes.
    ///
    /// @return `16:9`
    public String toText() {
        return across + ":" + down;
    }
}
