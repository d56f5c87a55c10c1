package plumeline.water;

import plumeline.geom.Vec;

/// A vessel in the water, turned one way: masses, centres, energy and moment.
///
/// **Source:** own derivation in `docs/derivations/float.md`: potential energy of weights and of displaced water;
/// liquids and waterline lie where that energy is least, so its slope over the direction is the moment of the forces
/// alone.
///
/// @param up the world's upward direction in the body's frame, unit
/// @param massKilograms all that weighs, kilograms
/// @param massCentre its centre in the body's frame, metres
/// @param displacedKilograms mass of the displaced water, kilograms
/// @param displacedCentre the displaced water's centre in the body's frame, metres
/// @param levelMetres height of the surface over the body's origin, metres; infinite where all is under
/// @param hold what holds it
public record Stance(
        Vec up,
        double massKilograms,
        Vec massCentre,
        double displacedKilograms,
        Vec displacedCentre,
        double levelMetres,
        Hold hold) {
    static Stance of(Vessel vessel, double waterKilogramsPerMetre3, Hold hold, Vec up) {
        double mass = vessel.massKilograms();
        boolean afloat = hold instanceof Hold.Free && mass < vessel.displacedMetres3() * waterKilogramsPerMetre3;
        Level.At at = afloat
                ? vessel.displacedAfloat(up, waterKilogramsPerMetre3)
                : new Level.At(Double.POSITIVE_INFINITY, vessel.displacedUnder(up));
        double displaced = at.under().volumeMetres3() * waterKilogramsPerMetre3;
        Vec centre = at.under().centroid();
        return new Stance(up, mass, vessel.massCentre(up), displaced, centre, at.levelMetres(), hold);
    }

    static Vec up(double tiltRadians) {
        return new Vec(Math.sin(tiltRadians), 0, Math.cos(tiltRadians));
    }

    static Vec up(double tiltRadians, double towardRadians) {
        double side = Math.sin(tiltRadians);
        return new Vec(side * Math.cos(towardRadians), side * Math.sin(towardRadians), Math.cos(tiltRadians));
    }

    /// Gives the tilt of its axis from upright.
    ///
    /// @return tilt, radians, 0 to π
    public double tiltRadians() {
        return Math.atan2(Math.hypot(up.x(), up.y()), up.z());
    }

    /// Gives the potential energy of body and displaced water over what holds it.
    ///
    /// @return energy, joules
    public double energyJoules() {
        return up.dot(balance());
    }

    /// Gives the righting moment: the slope of the energy over the tilt. Positive turns it back towards upright.
    ///
    /// @return moment, newton metres
    public double rightingNewtonMetres() {
        double side = Math.hypot(up.x(), up.y());
        Vec growing = side > 0
                ? new Vec(up.x() / side * up.z(), up.y() / side * up.z(), -side)
                : new Vec(Math.signum(up.z()), 0, 0);
        return growing.dot(balance());
    }

    /// The slope of the energy over the direction: at right angles to it, newton metres a radian.
    Vec slope() {
        Vec all = balance();
        return all.minus(up.times(up.dot(all)));
    }

    /// What the energy is with `up` once: weights and lift at their places, newton metres.
    private Vec balance() {
        Vec net = switch (hold) {
            case Hold.Free() -> massCentre.minus(displacedCentre).times(massKilograms);
            case Hold.Tied(double height) ->
                massCentre
                        .times(massKilograms)
                        .minus(displacedCentre.times(displacedKilograms))
                        .minus(new Vec(0, 0, (massKilograms - displacedKilograms) * height));
        };
        return net.times(Water.GRAVITY_METRES_PER_SECOND2);
    }
}
