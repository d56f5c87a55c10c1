package plumeline.water;

import plumeline.ranges.Ranges;

/// A tank and what is in it.
///
/// @param tank the tank
/// @param depthMetres the liquid's depth, metres, > 0, at most the walls' height
/// @param emptyKilograms the tank's own mass, kilograms, ≥ 0
/// @param densityKilogramsPerMetre3 the liquid's density, kilograms a cubic metre, > 0
/// @param gravityMetresPerSecond2 gravity, metres a second squared, > 0
public record TankLoad(
        GlassTank tank,
        double depthMetres,
        double emptyKilograms,
        double densityKilogramsPerMetre3,
        double gravityMetresPerSecond2) {
    /// Checks the ranges.
    ///
    /// @throws IllegalArgumentException outside them
    public TankLoad {
        Ranges.checkPositive(depthMetres, "liquid's depth");
        Ranges.checkAtMost(depthMetres, tank.wallsHeightMetres() * (1 + 1e-12), "liquid's depth");
        Ranges.checkNotNegative(emptyKilograms, "empty mass");
        Ranges.checkPositive(densityKilogramsPerMetre3, "density");
        Ranges.checkPositive(gravityMetresPerSecond2, "gravity");
    }

    /// Gives the liquid's volume.
    ///
    /// @return volume, cubic metres
    public double volumeMetres3() {
        return tank.insideMetres2() * depthMetres;
    }

    /// Gives the liquid's mass: `ρLWh`.
    ///
    /// @return mass, kilograms
    public double liquidKilograms() {
        return densityKilogramsPerMetre3 * volumeMetres3();
    }

    /// Gives the mass of tank and liquid.
    ///
    /// @return mass, kilograms
    public double totalKilograms() {
        return liquidKilograms() + emptyKilograms;
    }

    /// Gives the pressure on the inside floor over the air's: `ρgh`.
    ///
    /// @return pressure, pascals
    public double bottomPascals() {
        return densityKilogramsPerMetre3 * gravityMetresPerSecond2 * depthMetres;
    }

    /// Gives what the whole presses with on what it stands on, spread over the outside footprint.
    ///
    /// @return pressure, pascals
    public double floorPascals() {
        return totalKilograms() * gravityMetresPerSecond2 / tank.footprintMetres2();
    }

    /// Gives the force on a wall of this width: `ρgh²w/2`, acting a third of the depth above the floor.
    ///
    /// @param widthMetres the wall's clear width, metres, > 0
    /// @return force, newtons
    public double wallNewtons(double widthMetres) {
        return bottomPascals() * depthMetres * widthMetres / 2;
    }

    /// Gives the same tank with another depth of liquid.
    ///
    /// @param metres depth, metres, > 0
    /// @return tank and liquid
    public TankLoad withDepth(double metres) {
        return new TankLoad(tank, metres, emptyKilograms, densityKilogramsPerMetre3, gravityMetresPerSecond2);
    }

    /// Gives the same liquid in another tank of the same mass.
    ///
    /// @param other the tank
    /// @return tank and liquid
    public TankLoad withTank(GlassTank other) {
        return new TankLoad(other, depthMetres, emptyKilograms, densityKilogramsPerMetre3, gravityMetresPerSecond2);
    }
}
