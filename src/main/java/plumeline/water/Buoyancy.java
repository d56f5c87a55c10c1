package plumeline.water;

import plumeline.ranges.Ranges;

/// Whether it floats, what makes it sink.
///
/// Archimedes: lift is the weight of the displaced water. No surface tension (a gram at most for what a hand holds; it
/// counts for needles), no current, air weighs nothing.
public final class Buoyancy {
    private Buoyancy() {}

    /// Gives the net lift with all of it under.
    ///
    /// @param vessel the vessel
    /// @param waterKilogramsPerMetre3 the water's density, kilograms a cubic metre, > 0
    /// @return lift less weight, newtons; positive floats
    public static double netLiftNewtons(Vessel vessel, double waterKilogramsPerMetre3) {
        double mass = vessel.displacedMetres3() * waterKilogramsPerMetre3 - vessel.massKilograms();
        return mass * Water.GRAVITY_METRES_PER_SECOND2;
    }

    /// Gives the share of its volume that is under water.
    ///
    /// @param vessel the vessel
    /// @param waterKilogramsPerMetre3 the water's density, kilograms a cubic metre, > 0
    /// @return share, 0 to 1; 1 where it sinks
    public static double shareUnder(Vessel vessel, double waterKilogramsPerMetre3) {
        return Math.min(1, vessel.massKilograms() / (vessel.displacedMetres3() * waterKilogramsPerMetre3));
    }

    /// Gives the ballast that holds down a lift, its own buoyancy counted.
    ///
    /// @param liftNewtons what it must hold, newtons; nothing is needed where that isn't > 0
    /// @param densityKilogramsPerMetre3 the ballast's density, kilograms a cubic metre, greater than the water's
    /// where it hangs outside
    /// @param waterKilogramsPerMetre3 the density of what it lies in, kilograms a cubic metre; 0 where it lies in a
    /// cavity's air
    /// @return mass, kilograms, ≥ 0
    public static double ballastKilograms(
            double liftNewtons, double densityKilogramsPerMetre3, double waterKilogramsPerMetre3) {
        Ranges.check(
                densityKilogramsPerMetre3 > waterKilogramsPerMetre3,
                "densityKilogramsPerMetre3",
                densityKilogramsPerMetre3,
                "greater than the water's " + waterKilogramsPerMetre3);
        double share = 1 - waterKilogramsPerMetre3 / densityKilogramsPerMetre3;
        return Math.max(0, liftNewtons) / Water.GRAVITY_METRES_PER_SECOND2 / share;
    }

    /// Gives the most air a cavity may hold before its vessel floats; the rest of it is filled with liquid.
    ///
    /// @param cavityMetres3 the room inside, cubic metres, ≥ 0
    /// @param outerMetres3 what the vessel displaces, cubic metres, > 0
    /// @param emptyKilograms the empty vessel's mass, kilograms, > 0
    /// @param liquidKilogramsPerMetre3 density of what fills the rest, kilograms a cubic metre, > 0
    /// @param waterKilogramsPerMetre3 the water's density, kilograms a cubic metre, > 0
    /// @return volume, cubic metres; negative where it floats even without air, by that much liquid that has no
    /// room
    public static double mostAirMetres3(
            double cavityMetres3,
            double outerMetres3,
            double emptyKilograms,
            double liquidKilogramsPerMetre3,
            double waterKilogramsPerMetre3) {
        Ranges.checkPositive(liquidKilogramsPerMetre3, "liquidKilogramsPerMetre3");
        double leastLiquid = (outerMetres3 * waterKilogramsPerMetre3 - emptyKilograms) / liquidKilogramsPerMetre3;
        return Math.min(cavityMetres3, cavityMetres3 - leastLiquid);
    }

    /// Opens, drains and floods a vessel: tank water inside, no air, none under its base.
    ///
    /// @param vessel the vessel
    /// @param waterKilogramsPerMetre3 the water's density, kilograms a cubic metre, > 0
    /// @return the flooded vessel
    public static Vessel flooded(Vessel vessel, double waterKilogramsPerMetre3) {
        Vessel.Inside inside = switch (vessel.inside()) {
            case Vessel.Inside.Solid solid -> solid;
            case Vessel.Inside.Filled(Form cavity, double _, double _) -> {
                double room = cavity.whole().volumeMetres3();
                for (Vessel.Ballast each : vessel.ballasts()) {
                    room -= each.where() == Vessel.Ballast.Where.INSIDE ? each.volumeMetres3() : 0;
                }
                yield new Vessel.Inside.Filled(cavity, room, waterKilogramsPerMetre3);
            }
        };
        return vessel.holding(inside).withAirUnder(0);
    }

    /// Gives the odds that something sinks whose net lift is uncertain.
    ///
    /// @param netLiftNewtons its net lift, newtons; positive floats
    /// @param halfWidthNewtons the 95 % half-width of that, newtons, ≥ 0
    /// @return probability, 0 to 1, for a normal spread
    public static double oddsOfSinking(double netLiftNewtons, double halfWidthNewtons) {
        if (halfWidthNewtons == 0) {
            return netLiftNewtons <= 0 ? 1 : 0;
        }
        return normal(-netLiftNewtons / halfWidthNewtons * NINETY_FIVE);
    }

    /// Standard deviations in a 95 % half-width of a normal spread.
    private static final double NINETY_FIVE = 1.959963984540054;

    private static final double FAR = 7;

    /// The normal distribution's integral, by its series in odd powers.
    ///
    /// **Source:** G. Marsaglia, "Evaluating the normal distribution", J. Stat. Software 11(4), 2004 (from memory).
    private static double normal(double x) {
        if (Math.abs(x) > FAR) {
            return x > 0 ? 1 : 0;
        }
        double sum = x;
        double term = x;
        for (int i = 3; sum + term != sum; i += 2) {
            term *= x * x / i;
            sum += term;
        }
        return 0.5 + sum * Math.exp(-x * x / 2) / Math.sqrt(2 * Math.PI);
    }
}
