package plumeline.water;

import plumeline.ranges.Ranges;

/// How long a tank takes to fill, to empty and to come to rest.
public final class TankTimes {
    private static final int STEPS = 50;

    /// Losses of a hose's ends in velocity heads: in 0.5, out 1.
    ///
    /// **Source:** common practice in hydraulics (sharp-edged entrance, free outlet).
    private static final double END_LOSSES = 1.5;

    private static final double WAVE_SHARE = 0.01;
    private static final double STILL_METRES_PER_SECOND = 1e-3;
    private static final double SWIRL_METRES_PER_SECOND = 0.05;

    /// What a tap usually gives: 10 litres a minute, cubic metres a second.
    ///
    /// **Source:** common practice; measure yours with a bucket.
    public static final double TAP_METRES3_PER_SECOND = 10e-3 / 60;

    /// Kinematic viscosity of tap water at 20 degC, square metres a second.
    ///
    /// **Source:** IAPWS R12-08, rounded.
    public static final double TAP_WATER_METRES2_PER_SECOND = 1.0e-6;

    private TankTimes() {}

    /// Gives the time to fill: `V/Q`.
    ///
    /// @param volumeMetres3 V, cubic metres, ≥ 0
    /// @param flowMetres3PerSecond Q, cubic metres a second, > 0
    /// @return time, seconds
    public static double fillSeconds(double volumeMetres3, double flowMetres3PerSecond) {
        return Ranges.checkNotNegative(volumeMetres3, "volume") / Ranges.checkPositive(flowMetres3PerSecond, "flow");
    }

    /// A hose that empties a tank as a siphon, filled all along.
    ///
    /// @param boreMetres inside diameter, metres, > 0
    /// @param lengthMetres length, metres, > 0
    /// @param dropMetres how far its lower end is under the tank's inside floor, metres, > 0
    public record Hose(double boreMetres, double lengthMetres, double dropMetres) {
        /// Checks the ranges.
        ///
        /// @throws IllegalArgumentException where one isn't > 0
        public Hose {
            Ranges.checkPositive(boreMetres, "bore");
            Ranges.checkPositive(lengthMetres, "hose's length");
            Ranges.checkPositive(dropMetres, "drop");
        }
    }

    /// Gives the speed of water in a hose under a head: from `2gH = v²(1.5 + λl/d)`, with the friction of a smooth pipe
    /// (λ = 64/Re below 2300, 0.316 Re^(−1/4) above).
    ///
    /// **Source:** Darcy and Weisbach; Blasius (any text on hydraulics). Real hoses with bends and a tap are slower
    /// by a tenth or two.
    ///
    /// @param hose the hose
    /// @param headMetres H, surface above the lower end, metres, > 0
    /// @param viscosityMetres2PerSecond kinematic viscosity, square metres a second, > 0
    /// @param gravityMetresPerSecond2 g, metres a second squared, > 0
    /// @return speed, metres a second
    public static double hoseMetresPerSecond(
            Hose hose, double headMetres, double viscosityMetres2PerSecond, double gravityMetresPerSecond2) {
        double twoGh = 2 * gravityMetresPerSecond2 * Ranges.checkPositive(headMetres, "head");
        Ranges.checkPositive(viscosityMetres2PerSecond, "viscosity");
        double slow = 0;
        double fast = Math.sqrt(twoGh);
        // The needed head rises with the speed but for the jump of the friction at Re 2300; halving finds the crossing.
        for (int i = 0; i < 44; i++) {
            double speed = (slow + fast) / 2;
            double reynolds = speed * hose.boreMetres() / viscosityMetres2PerSecond;
            double friction = reynolds < 2300 ? 64 / reynolds : 0.316 / Math.sqrt(Math.sqrt(reynolds));
            double needs = speed * speed * (END_LOSSES + friction * hose.lengthMetres() / hose.boreMetres());
            if (needs > twoGh) {
                fast = speed;
            } else {
                slow = speed;
            }
        }
        return slow;
    }

    /// Gives the time to empty through a hose: the surface's fall from step to step at the speed of the hose.
    ///
    /// @param load tank and liquid
    /// @param hose the hose
    /// @param viscosityMetres2PerSecond kinematic viscosity, square metres a second, > 0
    /// @return time, seconds
    public static double drainSeconds(TankLoad load, Hose hose, double viscosityMetres2PerSecond) {
        double area = Math.PI / 4 * hose.boreMetres() * hose.boreMetres();
        double step = load.depthMetres() / STEPS;
        double seconds = 0;
        for (int i = 0; i < STEPS; i++) {
            double head = hose.dropMetres() + (i + 0.5) * step;
            double speed = hoseMetresPerSecond(hose, head, viscosityMetres2PerSecond, load.gravityMetresPerSecond2());
            seconds += load.tank().insideMetres2() * step / (area * speed);
        }
        return seconds;
    }

    /// Gives the period of the slowest wave to and fro along a side: `2π/√(gk tanh kh)`, `k = π/L`.
    ///
    /// **Source:** Airy's theory of small waves (Lamb, Hydrodynamics, 6th ed. 1932, art. 228; from memory).
    ///
    /// @param sideMetres L, the side along which it runs, metres, > 0
    /// @param depthMetres h, metres, > 0
    /// @param gravityMetresPerSecond2 g, metres a second squared, > 0
    /// @return period, seconds
    public static double wavePeriodSeconds(double sideMetres, double depthMetres, double gravityMetresPerSecond2) {
        double k = Math.PI / Ranges.checkPositive(sideMetres, "side");
        double kh = k * Ranges.checkPositive(depthMetres, "depth");
        return 2 * Math.PI / Math.sqrt(gravityMetresPerSecond2 * k * Math.tanh(kh));
    }

    /// Gives the time in which that wave's height falls to 1/e, by friction at floor and walls alone:
    /// a clean surface. Dust and the wet edge shorten it, often by half.
    ///
    /// **Source:** own derivation in `docs/derivations/panes.md`, from the loss of an oscillating layer (Landau &
    /// Lifshitz, Fluid Mechanics, § 24, from memory).
    ///
    /// @param load tank and liquid; the wave runs along the tank's length
    /// @param viscosityMetres2PerSecond ν, kinematic viscosity, square metres a second, > 0
    /// @return time, seconds
    public static double waveDecaySeconds(TankLoad load, double viscosityMetres2PerSecond) {
        double side = load.tank().lengthMetres();
        double across = load.tank().widthMetres();
        double k = Math.PI / side;
        double kh = k * load.depthMetres();
        double omega = 2 * Math.PI / wavePeriodSeconds(side, load.depthMetres(), load.gravityMetresPerSecond2());
        // Squared speeds in all of the water and at the solid faces, each over k² sinh 2kh, which may be endless.
        double flat = 1 / Math.sinh(2 * kh);
        double energy = side * across / (4 * k);
        double floor = side * across / 2 * flat;
        double frontAndBack = side / (2 * k);
        double ends = across * (1 / (2 * k) - load.depthMetres() * flat);
        double layer = Math.sqrt(Ranges.checkPositive(viscosityMetres2PerSecond, "viscosity") * omega / 2);
        return 2 * energy / (layer * (floor + frontAndBack + ends));
    }

    /// Gives the time in which a swirl that fills the tank dies to a slower one: friction at the floor
    /// (`√(νΩ)/h` a second) and at the walls (`νπ²(1/L² + 1/W²)`). An order of magnitude: it may be three times
    /// longer or shorter. A swirl is what dies last.
    ///
    /// **Source:** spin-down by the floor's boundary layer, Greenspan & Howard, J. Fluid Mech. 17 (1963) 385 (from
    /// memory); slowest viscous mode of a box.
    ///
    /// @param load tank and liquid
    /// @param fromRadiansPerSecond turning at first, radians a second, > `toRadiansPerSecond`
    /// @param toRadiansPerSecond turning at last, radians a second, > 0
    /// @param viscosityMetres2PerSecond ν, kinematic viscosity, square metres a second, > 0
    /// @return time, seconds
    public static double swirlSeconds(
            TankLoad load, double fromRadiansPerSecond, double toRadiansPerSecond, double viscosityMetres2PerSecond) {
        double nu = Ranges.checkPositive(viscosityMetres2PerSecond, "viscosity");
        Ranges.checkPositive(toRadiansPerSecond, "last turning");
        Ranges.checkPositive(fromRadiansPerSecond - toRadiansPerSecond, "turning to be lost");
        double length = load.tank().lengthMetres();
        double width = load.tank().widthMetres();
        double walls = nu * Math.PI * Math.PI * (1 / (length * length) + 1 / (width * width));
        double floor = Math.sqrt(nu) / load.depthMetres();
        // With s = √Ω: ds/dt = −s(floor·s + walls)/2.
        double from = Math.sqrt(fromRadiansPerSecond);
        double to = Math.sqrt(toRadiansPerSecond);
        return 2 / walls * Math.log(from / (floor * from + walls) * (floor * to + walls) / to);
    }

    /// Gives about how long stirred water takes until its eddies are slower than this: size over speed. An order of
    /// magnitude only.
    ///
    /// **Source:** an eddy turns once or twice before it breaks up (common practice in turbulence).
    ///
    /// @param load tank and liquid
    /// @param speedMetresPerSecond speed that may be left, metres a second, > 0
    /// @return time, seconds
    public static double eddySeconds(TankLoad load, double speedMetresPerSecond) {
        double smallest = Math.min(
                load.depthMetres(),
                Math.min(load.tank().lengthMetres(), load.tank().widthMetres()));
        return smallest / Ranges.checkPositive(speedMetresPerSecond, "speed");
    }

    /// How long until a filled tank is still for a camera.
    ///
    /// @param waveSeconds until its slowest wave is down to a hundredth, seconds, at most
    /// @param eddySeconds until churned water is slower than 1 mm/s, seconds, roughly
    /// @param swirlSeconds until a swirl of 50 mm/s is, seconds, roughly
    public record Stillness(double waveSeconds, double eddySeconds, double swirlSeconds) {}

    /// Gives how long until tap water in a tank is still for a camera, by [#waveDecaySeconds], [#eddySeconds] and
    /// [#swirlSeconds].
    ///
    /// @param load tank and liquid
    /// @return the three times
    public static Stillness stillness(TankLoad load) {
        double radius = Math.min(load.tank().lengthMetres(), load.tank().widthMetres()) / 2;
        return new Stillness(
                Math.log(1 / WAVE_SHARE) * waveDecaySeconds(load, TAP_WATER_METRES2_PER_SECOND),
                eddySeconds(load, STILL_METRES_PER_SECOND),
                swirlSeconds(
                        load,
                        SWIRL_METRES_PER_SECOND / radius,
                        STILL_METRES_PER_SECOND / radius,
                        TAP_WATER_METRES2_PER_SECOND));
    }
}
