package plumeline.motion;

/// How the speed at a key follows from its neighbours, so that a run between keys never goes past them.
public enum SlopeRule {
    /// The weighted harmonic mean of the speeds on either side, nothing where they differ in sign: Fritsch and Butland,
    /// SIAM J. Sci. Stat. Comput. 5 (1984) 300, from memory; as PCHIM does.
    FRITSCH_BUTLAND {
        @Override
        double inner(double before, double behind, double slopeBefore, double slopeBehind) {
            if (slopeBefore * slopeBehind <= 0) {
                return 0;
            }
            double first = 2 * behind + before;
            double second = behind + 2 * before;
            return (first + second) / (first / slopeBefore + second / slopeBehind);
        }

        @Override
        void limit(double[] speeds, double[] slopes) {
            // Harmonic means are within the limits.
        }
    },
    /// Slopes of parabolas through three keys, nothing where the speeds on either side differ in sign, then brought
    /// down from left to right to where the squares of both ends' over the mean sum to nine: Fritsch and Carlson,
    /// SIAM J. Numer. Anal. 17 (1980) 238, from memory.
    FRITSCH_CARLSON {
        @Override
        double inner(double before, double behind, double slopeBefore, double slopeBehind) {
            return slopeBefore * slopeBehind <= 0
                    ? 0
                    : (behind * slopeBefore + before * slopeBehind) / (before + behind);
        }

        @Override
        void limit(double[] speeds, double[] slopes) {
            for (int i = 0; i < slopes.length; i++) {
                double size = Math.hypot(speeds[i], speeds[i + 1]);
                if (size > 3 * Math.abs(slopes[i])) {
                    speeds[i] *= 3 * Math.abs(slopes[i]) / size;
                    speeds[i + 1] *= 3 * Math.abs(slopes[i]) / size;
                }
            }
        }
    };

    /// The speed at a key that isn't the first or last.
    ///
    /// @param before time since the key before
    /// @param behind time to the key behind
    /// @param slopeBefore mean speed since the key before
    /// @param slopeBehind mean speed to the key behind
    abstract double inner(double before, double behind, double slopeBefore, double slopeBehind);

    /// Brings speeds down to where no stretch goes past its keys.
    abstract void limit(double[] speeds, double[] slopes);
}
