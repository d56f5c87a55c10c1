package plumeline.water;

import plumeline.ranges.Ranges;

/// How a pane bends under a load, by the theory of thin plates and small deflections.
///
/// @param stressPascals largest principal bending stress at the faces, pascals
/// @param xMetres where that is, from a side, metres
/// @param yMetres where that is, above the lower edge, metres
/// @param deflectionMetres largest deflection, metres
/// @param validity whether the theory bears the figures
public record PaneBending(
        double stressPascals, double xMetres, double yMetres, double deflectionMetres, Validity validity) {
    /// Whether the theory bears its own figures, best first.
    public enum Validity {
        /// Thin, and the deflection at most half the thickness: within about 2 % of the plate so idealised.
        GOOD,
        /// The deflection is over half the thickness: the pane begins to carry as a membrane too. What is computed
        /// bends too far and, by that, is on the safe side; [#leastBowShare] says by how much at most.
        MEMBRANE_BEGINS,
        /// The deflection is over the whole thickness: the figures are those of the linear theory, which no longer
        /// describes the pane.
        MEMBRANE,
        /// Too thick for its size, or too long for its height: the theory says nothing.
        NO_THIN_PLATE
    }

    /// Largest deflection over thickness with which the linear theory is good, dimensionless.
    ///
    /// **Source:** Timoshenko & Woinowsky-Krieger, Theory of Plates and Shells, 2nd ed. 1959, introduction to
    /// chapter 13 (from memory: within a few per cent up to half the thickness).
    public static final double GOOD_DEFLECTION = 0.5;

    /// Least shorter side over thickness of a thin plate, dimensionless.
    ///
    /// **Source:** common practice in plate theory: shear adds to the deflection by a few per cent at 10.
    public static final double LEAST_SLENDERNESS = 10;

    /// Largest ratio of a pane's sides that is worked out here, dimensionless; own limit, far past any tank.
    public static final double LONGEST = 20;

    /// Stiffening by stretching: with bow x and linear bow w over the thickness, `x + 1.852 x³ = w`.
    private static final double STIFFENING = 1.852;

    private static final double BENDING_STRESS = 1.778;
    private static final double STRETCHING_STRESS = 0.905;

    /// Gives the least that a bow can be that is over half the thickness. Stretched as it bows, a pane carries as a
    /// membrane too; how much depends on how far its edges draw in, which nobody knows of a glued or framed edge.
    /// Edges that don't draw in at all give the least, the linear theory gives the most. Taken from a round plate
    /// under an even load, simply supported, Poisson 0.3; a pane with an open top stiffens less, so that its own
    /// lies within.
    ///
    /// **Source:** S. Timoshenko and S. Woinowsky-Krieger, Theory of Plates and Shells, 2nd ed. 1959, chapter 13,
    /// the table of constants for round plates (from memory; found again by Ritz's method, in the tests).
    ///
    /// @param linear bow by the linear theory over the thickness, dimensionless, 0 to 1
    /// @return least bow over the linear one, dimensionless, over 0 to 1
    public static double leastBowShare(double linear) {
        return linear == 0 ? 1 : stretched(linear) / linear;
    }

    /// Gives the least that the largest stress can be: `(1.778 x + 0.905 x²)/(1.778 w)` at the middle of that plate.
    ///
    /// **Source:** as of [#leastBowShare].
    ///
    /// @param linear bow by the linear theory over the thickness, dimensionless, 0 to 1
    /// @return least stress over the linear one, dimensionless, over 0 to 1
    public static double leastStressShare(double linear) {
        double x = stretched(linear);
        return linear == 0 ? 1 : (BENDING_STRESS * x + STRETCHING_STRESS * x * x) / (BENDING_STRESS * linear);
    }

    private static double stretched(double linear) {
        Ranges.check(linear >= 0 && linear <= 1 + 1e-9, "linear", linear, "0 to 1");
        double low = 0;
        double high = linear;
        for (int i = 0; i < 60; i++) {
            double middle = (low + high) / 2;
            if (middle + STIFFENING * middle * middle * middle < linear) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return (low + high) / 2;
    }

    static Validity validity(Pane pane, double deflectionMetres) {
        double shorter = Math.min(pane.widthMetres(), pane.heightMetres());
        double longer = Math.max(pane.widthMetres(), pane.heightMetres());
        double t = pane.thicknessMetres();
        if (shorter < LEAST_SLENDERNESS * t * (1 - 1e-12) || longer > LONGEST * shorter) {
            return Validity.NO_THIN_PLATE;
        }
        if (deflectionMetres > t) {
            return Validity.MEMBRANE;
        }
        return deflectionMetres > GOOD_DEFLECTION * t ? Validity.MEMBRANE_BEGINS : Validity.GOOD;
    }
}
