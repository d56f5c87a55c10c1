package plumeline.resect;

/// Quantiles of the normal law, and how far squares of such readings scatter.
final class Normal {
    /// Half-width in standard deviations that holds 95 %.
    static final double HALF_95 = 1.959963984540054;

    /// Half-width in standard deviations that holds 80 %.
    static final double HALF_80 = 1.2815515655446004;

    private Normal() {}

    /// What a sum of so many squares stays under but once in a thousand.
    ///
    /// **Source:** E. B. Wilson, M. M. Hilferty, "The distribution of chi-square", PNAS 17 (1931), 684–688; within
    /// 1 % from 2 squares on. From memory.
    static double sumOfSquares999(double count) {
        double spread = 2 / (9 * count);
        double root = 1 - spread + 3.090232306167814 * Math.sqrt(spread);
        return count * root * root * root;
    }
}
