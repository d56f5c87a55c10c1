package plumeline.water;

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
        /// bends too far and, by that, is on the safe side.
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
