package plumeline.water;

import plumeline.geom.Vec;

/// A vessel in the water at one tilt: masses, centres, energy and moment.
///
/// **Source:** own derivation in `docs/derivations/float.md`: potential energy of weights and of displaced water;
/// liquids and waterline lie where that energy is least, so its slope over the tilt is the moment of the forces alone.
///
/// @param tiltRadians tilt of the axis from upright, radians, 0 to π
/// @param massKilograms all that weighs, kilograms
/// @param massCentre its centre in the body's frame, metres
/// @param displacedKilograms mass of the displaced water, kilograms
/// @param displacedCentre the displaced water's centre in the body's frame, metres
/// @param levelMetres height of the surface over the body's origin, metres; infinite where all is under
/// @param hold what holds it
public record Stance(
        double tiltRadians,
        double massKilograms,
        Vec massCentre,
        double displacedKilograms,
        Vec displacedCentre,
        double levelMetres,
        Hold hold) {
    static Stance of(Vessel vessel, double waterKilogramsPerMetre3, Hold hold, double tiltRadians) {
        Vec up = up(tiltRadians);
        double mass = vessel.massKilograms();
        boolean afloat = hold instanceof Hold.Free && mass < vessel.displacedMetres3() * waterKilogramsPerMetre3;
        Level.At at = afloat
                ? vessel.displacedAfloat(up, waterKilogramsPerMetre3)
                : new Level.At(Double.POSITIVE_INFINITY, vessel.displacedUnder(up));
        double displaced = at.under().volumeMetres3() * waterKilogramsPerMetre3;
        Vec centre = at.under().centroid();
        return new Stance(tiltRadians, mass, vessel.massCentre(up), displaced, centre, at.levelMetres(), hold);
    }

    static Vec up(double tiltRadians) {
        return new Vec(Math.sin(tiltRadians), 0, Math.cos(tiltRadians));
    }

    private static double lever(Vec p, Vec up) {
        return p.x() * up.z() - p.z() * up.x();
    }

    /// Gives the potential energy of body and displaced water over what holds it.
    ///
    /// @return energy, joules
    public double energyJoules() {
        Vec up = up(tiltRadians);
        return Water.GRAVITY_METRES_PER_SECOND2 * balance(up.dot(massCentre), up.dot(displacedCentre), up.z());
    }

    /// Gives the righting moment: the slope of the energy over the tilt. Positive turns it back towards upright.
    ///
    /// @return moment, newton metres
    public double rightingNewtonMetres() {
        Vec up = up(tiltRadians);
        return Water.GRAVITY_METRES_PER_SECOND2 * balance(lever(massCentre, up), lever(displacedCentre, up), -up.x());
    }

    private double balance(double ofMass, double ofWater, double ofAxis) {
        return switch (hold) {
            case Hold.Free() -> massKilograms * (ofMass - ofWater);
            case Hold.Tied(double height) ->
                massKilograms * ofMass
                        - displacedKilograms * ofWater
                        - (massKilograms - displacedKilograms) * height * ofAxis;
        };
    }
}
