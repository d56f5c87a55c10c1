package plumeline.ink;

/// The normal distribution.
final class Normal {
    private Normal() {}

    /// Gives the share under so many standard deviations from the middle, within 1e-7.
    ///
    /// **Source:** Abramowitz and Stegun, Handbook of Mathematical Functions (1964), 26.2.17, from memory.
    static double shareUnder(double deviations) {
        double t = 1 / (1 + 0.2316419 * Math.abs(deviations));
        double tail = Math.exp(-deviations * deviations / 2)
                / Math.sqrt(2 * Math.PI)
                * t
                * (0.319381530 + t * (-0.356563782 + t * (1.781477937 + t * (-1.821255978 + t * 1.330274429))));
        return deviations < 0 ? tail : 1 - tail;
    }
}
