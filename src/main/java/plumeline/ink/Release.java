package plumeline.ink;

import plumeline.ranges.Ranges;

/// What is let go, at the nozzle's tip.
///
/// @param volumeMetres3 volume of ink, m³, > 0
/// @param reducedGravityMetresPerSecond2 gravity times how much denser the ink is than the water, as a share of the
/// water, m/s²; + sinks, − rises
/// @param boreMetres the nozzle's bore, m, > 0
/// @param speedMetresPerSecond mean speed out of it, m/s, ≥ 0; 0 for ink that is let go at once without push
/// @param viscosityMetres2PerSecond the water's kinematic viscosity, m²/s, > 0
/// @param rowMetres length of a slot as wide as the bore, m, at least the bore; 0 for a round mouth
public record Release(
        double volumeMetres3,
        double reducedGravityMetresPerSecond2,
        double boreMetres,
        double speedMetresPerSecond,
        double viscosityMetres2PerSecond,
        double rowMetres) {
    /// Checks the ranges.
    ///
    /// @throws IllegalArgumentException outside them
    public Release {
        Ranges.checkPositive(volumeMetres3, "volume");
        Ranges.checkPositive(boreMetres, "bore");
        Ranges.checkNotNegative(speedMetresPerSecond, "speed");
        Ranges.checkPositive(viscosityMetres2PerSecond, "viscosity");
        Ranges.checkNotNegative(Math.abs(reducedGravityMetresPerSecond2), "size of the reduced gravity");
        if (rowMetres != 0) {
            Ranges.checkNotNegative(rowMetres - boreMetres, "row less its width");
        }
    }

    /// Makes a release from a round mouth.
    ///
    /// @param volumeMetres3 volume of ink, m³, > 0
    /// @param reducedGravityMetresPerSecond2 as the record's, m/s²
    /// @param boreMetres the nozzle's bore, m, > 0
    /// @param speedMetresPerSecond mean speed out of it, m/s, ≥ 0
    /// @param viscosityMetres2PerSecond the water's kinematic viscosity, m²/s, > 0
    public Release(
            double volumeMetres3,
            double reducedGravityMetresPerSecond2,
            double boreMetres,
            double speedMetresPerSecond,
            double viscosityMetres2PerSecond) {
        this(
                volumeMetres3,
                reducedGravityMetresPerSecond2,
                boreMetres,
                speedMetresPerSecond,
                viscosityMetres2PerSecond,
                0);
    }

    /// Makes a release of a squeeze from a round mouth.
    ///
    /// @param volumeMetres3 volume of ink, m³, > 0
    /// @param reducedGravityMetresPerSecond2 as the record's, m/s²
    /// @param boreMetres the nozzle's bore, m, > 0
    /// @param squeezeSeconds how long it flows, s, > 0
    /// @param viscosityMetres2PerSecond the water's kinematic viscosity, m²/s, > 0
    /// @return the release
    public static Release ofSqueeze(
            double volumeMetres3,
            double reducedGravityMetresPerSecond2,
            double boreMetres,
            double squeezeSeconds,
            double viscosityMetres2PerSecond) {
        return new Release(volumeMetres3, reducedGravityMetresPerSecond2, boreMetres, 0, viscosityMetres2PerSecond)
                .withSqueeze(squeezeSeconds);
    }

    private double area() {
        return rowMetres > 0 ? rowMetres * boreMetres : Math.PI / 4 * boreMetres * boreMetres;
    }

    /// Gives the Reynolds number at the nozzle: speed times bore over viscosity.
    ///
    /// @return dimensionless
    public double reynolds() {
        return speedMetresPerSecond * boreMetres / viscosityMetres2PerSecond;
    }

    /// Gives how long the ink flows.
    ///
    /// @return s; 0 for ink that is let go at once
    public double seconds() {
        return speedMetresPerSecond == 0 ? 0 : volumeMetres3 / volumeFluxMetres3PerSecond();
    }

    /// Gives the volume flux out of the nozzle.
    ///
    /// @return m³/s
    public double volumeFluxMetres3PerSecond() {
        return area() * speedMetresPerSecond;
    }

    /// Gives the buoyancy of all the ink: reduced gravity times volume.
    ///
    /// @return m⁴/s², + sinks
    public double buoyancyMetres4PerSecond2() {
        return reducedGravityMetresPerSecond2 * volumeMetres3;
    }

    /// Gives the flux of buoyancy while it flows.
    ///
    /// @return m⁴/s³, + sinks
    public double buoyancyFluxMetres4PerSecond3() {
        return reducedGravityMetresPerSecond2 * volumeFluxMetres3PerSecond();
    }

    /// Gives the length over which a stream is driven by its push, and beyond which by its weight:
    /// `(QU)^¾ / (g′Q)^½`.
    ///
    /// **Source:** dimensional; Fischer and others, Mixing in Inland and Coastal Waters (1979), from memory.
    ///
    /// @return m; endless (infinite) where the ink is as dense as the water
    public double jetMetres() {
        double push = volumeFluxMetres3PerSecond() * speedMetresPerSecond;
        return Math.pow(push, 0.75) / Math.sqrt(Math.abs(buoyancyFluxMetres4PerSecond3()));
    }

    /// Gives the same release at another speed.
    ///
    /// @param metresPerSecond the speed, m/s, ≥ 0
    /// @return the release
    public Release withSpeed(double metresPerSecond) {
        return new Release(
                volumeMetres3,
                reducedGravityMetresPerSecond2,
                boreMetres,
                metresPerSecond,
                viscosityMetres2PerSecond,
                rowMetres);
    }

    /// Gives the same release by a squeeze that lasts so long.
    ///
    /// @param seconds how long it flows, s, > 0
    /// @return the release
    public Release withSqueeze(double seconds) {
        Ranges.checkPositive(seconds, "squeeze time");
        return withSpeed(volumeMetres3 / (area() * seconds));
    }

    /// Gives the same release of another volume.
    ///
    /// @param metres3 the volume, m³, > 0
    /// @return the release
    public Release withVolume(double metres3) {
        return new Release(
                metres3,
                reducedGravityMetresPerSecond2,
                boreMetres,
                speedMetresPerSecond,
                viscosityMetres2PerSecond,
                rowMetres);
    }

    /// Gives the same release of ink of another weight.
    ///
    /// @param metresPerSecond2 its reduced gravity, m/s²
    /// @return the release
    public Release withReducedGravity(double metresPerSecond2) {
        return new Release(
                volumeMetres3,
                metresPerSecond2,
                boreMetres,
                speedMetresPerSecond,
                viscosityMetres2PerSecond,
                rowMetres);
    }

    /// Gives the same release along a slot.
    ///
    /// @param metres the slot's length, m, at least the bore; 0 for a round mouth
    /// @return the release, at the same speed
    public Release withRow(double metres) {
        return new Release(
                volumeMetres3,
                reducedGravityMetresPerSecond2,
                boreMetres,
                speedMetresPerSecond,
                viscosityMetres2PerSecond,
                metres);
    }
}
