package plumeline.optics;

/// A share of the light, apart for its two polarisations.
///
/// @param s of light that swings square to the plane of incidence, 0 to 1
/// @param p of light that swings in that plane, 0 to 1
public record Polarised(double s, double p) {
    /// Gives the share of unpolarised light, as lamps give.
    ///
    /// @return 0 to 1
    public double mean() {
        return (s + p) / 2;
    }
}
