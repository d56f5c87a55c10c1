package plumeline.water;

import plumeline.ranges.Ranges;

/// Volume and mass by a kitchen scale: weigh it dry; then a jug of water on the scale, zeroed, and the product held
/// just under the surface, off the walls. What the scale gains is the mass of the displaced water, whatever the hand
/// does, as the jug's water bears the lift and no more.
///
/// Half-widths are at 95 %, independent and normal. Bubbles on the skin count as volume: wipe them off.
///
/// @param wholeKilograms the product's mass, kilograms, > 0
/// @param wholeHalfKilograms half-width of that, kilograms, ≥ 0
/// @param gainedKilograms what the scale gained, kilograms, > 0
/// @param gainedHalfKilograms half-width of that, kilograms, ≥ 0
public record KitchenScale(
        double wholeKilograms, double wholeHalfKilograms, double gainedKilograms, double gainedHalfKilograms) {
    /// Checks the ranges.
    public KitchenScale {
        Ranges.checkPositive(wholeKilograms, "wholeKilograms");
        Ranges.checkPositive(gainedKilograms, "gainedKilograms");
        Ranges.checkNotNegative(wholeHalfKilograms, "wholeHalfKilograms");
        Ranges.checkNotNegative(gainedHalfKilograms, "gainedHalfKilograms");
    }

    /// Gives the volume.
    ///
    /// @param jugKilogramsPerMetre3 density of the water in the jug, kilograms a cubic metre, > 0
    /// @return volume, cubic metres
    public double volumeMetres3(double jugKilogramsPerMetre3) {
        return gainedKilograms / Ranges.checkPositive(jugKilogramsPerMetre3, "jugKilogramsPerMetre3");
    }

    /// Gives the net lift in a tank.
    ///
    /// @param jugKilogramsPerMetre3 density of the water in the jug, kilograms a cubic metre, > 0
    /// @param tankKilogramsPerMetre3 density of the water in the tank, kilograms a cubic metre, > 0
    /// @return lift less weight, newtons; positive floats
    public double netLiftNewtons(double jugKilogramsPerMetre3, double tankKilogramsPerMetre3) {
        double lifted = volumeMetres3(jugKilogramsPerMetre3) * tankKilogramsPerMetre3;
        return (lifted - wholeKilograms) * Water.GRAVITY_METRES_PER_SECOND2;
    }

    /// Gives the half-width of the net lift: root sum of squares.
    ///
    /// @param jugKilogramsPerMetre3 density of the water in the jug, kilograms a cubic metre, > 0
    /// @param tankKilogramsPerMetre3 density of the water in the tank, kilograms a cubic metre, > 0
    /// @return 95 % half-width, newtons
    public double halfWidthNewtons(double jugKilogramsPerMetre3, double tankKilogramsPerMetre3) {
        double lifted = gainedHalfKilograms * tankKilogramsPerMetre3 / jugKilogramsPerMetre3;
        return Math.hypot(lifted, wholeHalfKilograms) * Water.GRAVITY_METRES_PER_SECOND2;
    }

    /// Gives the odds that it sinks.
    ///
    /// @param jugKilogramsPerMetre3 density of the water in the jug, kilograms a cubic metre, > 0
    /// @param tankKilogramsPerMetre3 density of the water in the tank, kilograms a cubic metre, > 0
    /// @return probability, 0 to 1
    public double oddsOfSinking(double jugKilogramsPerMetre3, double tankKilogramsPerMetre3) {
        return Buoyancy.oddsOfSinking(
                netLiftNewtons(jugKilogramsPerMetre3, tankKilogramsPerMetre3),
                halfWidthNewtons(jugKilogramsPerMetre3, tankKilogramsPerMetre3));
    }
}
