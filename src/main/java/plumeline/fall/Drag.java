package plumeline.fall;

/// Drag coefficients, on the face turned to the flow, by Reynolds number on the piece's size.
public enum Drag {
    /// A smooth ball, Reynolds number up to 338,000, within 6 %. Drops of water stay balls up to about 2 mm.
    ///
    /// **Source:** Clift, Grace and Weber, Bubbles, Drops, and Particles (1978), table 5.2, as in two public codes.
    BALL {
        @Override
        public double coefficient(double reynolds) {
            return clift(reynolds);
        }

        @Override
        public double lowShare() {
            return 0.94;
        }

        @Override
        public double highShare() {
            return 1.06;
        }
    },
    /// A cube: as a ball while that has more, else 1.05 face-on; 0.80 edge-on, 1.65 to 1.7 where it tumbles as it
    /// falls.
    ///
    /// **Source:** Hoerner, Fluid-Dynamic Drag (1965), from memory; falling cubes: Haider and Levenspiel, Powder
    /// Technology 58 (1989) 63, sphericity 0.806, from memory; Pettyjohn and Christiansen, Chem. Eng. Prog. 44
    /// (1948) 157, 5.31 − 4.88·0.806 on the face of the ball of its volume, from memory.
    CUBE {
        @Override
        public double coefficient(double reynolds) {
            return Math.max(1.05, clift(reynolds));
        }

        @Override
        public double lowShare() {
            return 0.76;
        }

        @Override
        public double highShare() {
            return 1.7;
        }
    },
    /// A flat disc broadside: 1.17 from Reynolds number 133 on; an upright or fluttering one has less.
    ///
    /// **Source:** Hoerner (1965) above; below Clift, Grace and Weber (1978), from memory.
    DISC {
        @Override
        public double coefficient(double reynolds) {
            return reynolds > 133
                    ? 1.17
                    : Math.max(1.17, 64 / (Math.PI * reynolds) * (1 + 0.138 * Math.pow(reynolds, 0.792)));
        }

        @Override
        public double lowShare() {
            return 0.5;
        }

        @Override
        public double highShare() {
            return 1.25;
        }
    };

    /// What a ball that rises in a zigzag has at least: 0.75, up to 0.95.
    ///
    /// **Source:** Horowitz and Williamson (2010); Karamanev and Nikolov, AIChE J. 38 (1992) 1843; both from
    /// memory.
    static final double ZIGZAG = 0.75;

    /// Above this a ball's drag falls to a fifth, at a number that its roughness decides.
    public static final double MOST_REYNOLDS = 338_000;

    /// Gives the coefficient.
    ///
    /// @param reynolds density times speed times size over viscosity, dimensionless, > 0, ≤ [#MOST_REYNOLDS]
    /// @return dimensionless
    public abstract double coefficient(double reynolds);

    /// Gives how much less it may be, four times in five.
    ///
    /// @return share of the coefficient
    public abstract double lowShare();

    /// Gives how much more it may be, four times in five.
    ///
    /// @return share of the coefficient
    public abstract double highShare();

    /// Tells whether a ball that rises does so in a zigzag: a light one, its wake pushing it to and fro. What falls
    /// goes straight.
    ///
    /// **Source:** Horowitz and Williamson, J. Fluid Mech. 651 (2010) 251: from a Reynolds number of 260 on below
    /// 0.4 of the medium's density, from 1550 on below 0.6; abstract (0.36 at 450, 0.61 at 10,000), limits from
    /// memory.
    ///
    /// @param reynolds density times speed times size over viscosity, dimensionless, > 0
    /// @param densityShare its density over the medium's, dimensionless, > 0
    /// @return true where it does
    static boolean zigzags(double reynolds, double densityShare) {
        return reynolds > 260 && densityShare < (reynolds > 1550 ? 0.6 : 0.4);
    }

    private static double clift(double re) {
        double log = Math.log10(re);
        if (re < 0.01) {
            return 24 / re + 3.0 / 16;
        }
        if (re < 20) {
            return 24 / re * (1 + 0.1315 * Math.pow(re, 0.82 - 0.05 * log));
        }
        if (re < 260) {
            return 24 / re * (1 + 0.1935 * Math.pow(re, 0.6305));
        }
        if (re < 1500) {
            return Math.pow(10, 1.6435 - 1.1242 * log + 0.1558 * log * log);
        }
        if (re < 12_000) {
            return Math.pow(10, -2.4571 + 2.5558 * log - 0.9295 * log * log + 0.1049 * log * log * log);
        }
        if (re < 44_000) {
            return Math.pow(10, -1.9181 + 0.6370 * log - 0.0636 * log * log);
        }
        return Math.pow(10, -4.3390 + 1.5809 * log - 0.1546 * log * log);
    }
}
