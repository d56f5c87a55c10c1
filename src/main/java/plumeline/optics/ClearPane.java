package plumeline.optics;

/// A clear pane with flat, parallel faces between two clear media, as a tank's wall or a window: what it mirrors and
/// what it lets pass, with all that goes to and fro inside. Brightnesses add, as they do in any pane thicker than a
/// film; nothing is absorbed, so both shares make up the whole.
///
/// @param before index of the medium that the light comes from, dimensionless, ≥ 1
/// @param pane index of the pane, dimensionless, ≥ 1
/// @param behind index of the medium behind, dimensionless, ≥ 1
public record ClearPane(double before, double pane, double behind) {
    /// Checks the ranges.
    ///
    /// @throws IllegalArgumentException where an index is below 1
    public ClearPane {
        new Boundary(before, pane);
        new Boundary(pane, behind);
    }

    /// Gives what both faces mirror together: `R₁ + (1 − R₁)² R₂/(1 − R₁R₂)`, R₁ of the first face, R₂ of the second;
    /// `2R/(1 + R)` with the same medium on both sides.
    ///
    /// **Source:** geometric series of the ways to and fro (any optics text on a stack of plates).
    ///
    /// @param radians of the light before the pane, to the normal, 0 to π/2
    /// @return share of the light, by polarisation
    public Polarised reflectance(double radians) {
        Polarised passing = transmittance(radians);
        return new Polarised(1 - passing.s(), 1 - passing.p());
    }

    /// Gives what passes: `(1 − R₁)(1 − R₂)/(1 − R₁R₂)`; `(1 − R)/(1 + R)` with the same medium on both sides.
    ///
    /// **Source:** as for [#reflectance].
    ///
    /// @param radians of the light before the pane, to the normal, 0 to π/2
    /// @return share of the light, by polarisation; nothing where a face mirrors all
    public Polarised transmittance(double radians) {
        return transmittance(Math.sin(radians), Math.cos(radians));
    }

    /// Gives [#transmittance] by the angle's sine.
    ///
    /// **Source:** as for [#reflectance].
    ///
    /// @param sine of the angle of the light before the pane to the normal, 0 to 1
    /// @return share of the light, by polarisation; nothing where a face mirrors all
    public Polarised transmittanceAtSine(double sine) {
        return transmittance(sine, Math.sqrt(1 - sine * sine));
    }

    private Polarised transmittance(double sine, double cosine) {
        Polarised first = new Boundary(before, pane).reflectance(sine, cosine);
        double inside = before * sine / pane;
        Polarised second =
                inside > 1 ? first : new Boundary(pane, behind).reflectance(inside, Math.sqrt(1 - inside * inside));
        return new Polarised(passing(first.s(), second.s()), passing(first.p(), second.p()));
    }

    private static double passing(double first, double second) {
        return first >= 1 || second >= 1 ? 0 : (1 - first) * (1 - second) / (1 - first * second);
    }
}
