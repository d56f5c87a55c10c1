package plumeline.ink;

/// The normal distribution.
public final class Gauss {
    /// Standard deviations from the middle to either end of the middle 80 % of a normal spread (its quantile at 0.9).
    public static final double EIGHTY = 1.2815515655446004;

    private Gauss() {}

    /// Gives the share of a standard normal spread that lies below a value, within 2·10⁻⁷.
    ///
    /// **Source:** Abramowitz and Stegun, Handbook of Mathematical Functions, 26.2.17, from memory.
    static double below(double value) {
        double t = 1 / (1 + 0.2316419 * Math.abs(value));
        double tail = Math.exp(-value * value / 2)
                / Math.sqrt(2 * Math.PI)
                * t
                * (0.319381530 + t * (-0.356563782 + t * (1.781477937 + t * (-1.821255978 + t * 1.330274429))));
        return value < 0 ? tail : 1 - tail;
    }
}
