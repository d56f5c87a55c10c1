package plumeline.resect;

/// How far off may be what has no placing error in the plan: clicks, and what of the camera isn't a mark. Each is a 95
/// % half-width.
///
/// @param clickPixels how far a click may be off, across and down, pixels of the still, over 0
/// @param aimRadians how far a turn or tilt that is not a mark (`aim: first`) may be off where it should look, radians
/// @param rollRadians how far the camera may be rolled, radians
/// @param focalShare by what share of itself the focal length may be off, dimensionless
/// @param tankMetres how far the tank may stand off, metres
public record Allowance(
        double clickPixels, double aimRadians, double rollRadians, double focalShare, double tankMetres) {
    /// Clicks within 2 px, a hand-set aim 2 deg, roll 0.5 deg, focal length 2 %, a tank's tape mark 2 mm.
    public static final Allowance USUAL = new Allowance(2, Math.toRadians(2), Math.toRadians(0.5), 0.02, 0.002);

    /// Checks the numbers.
    ///
    /// @throws IllegalArgumentException where a click can't be off, or another is below 0
    public Allowance {
        if (!(clickPixels > 0)
                || !(aimRadians >= 0 && rollRadians >= 0 && focalShare >= 0 && tankMetres >= 0)
                || !Double.isFinite(clickPixels + aimRadians + rollRadians + focalShare + tankMetres)) {
            throw new IllegalArgumentException("an allowance needs a click error over 0 px and no other below 0");
        }
    }

    /// Gives the same with another click error.
    ///
    /// @param pixels pixels of the still, over 0
    /// @return the allowance
    public Allowance withClickPixels(double pixels) {
        return new Allowance(pixels, aimRadians, rollRadians, focalShare, tankMetres);
    }
}
