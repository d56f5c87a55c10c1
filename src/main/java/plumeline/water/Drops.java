package plumeline.water;

/// Drops on a surface: how large one stays on a slope, how fast one dries. A drop is a cap of a sphere on a round base;
/// diameters are of the wetted base.
public final class Drops {
    /// Share of σ·d·hysteresis that holds a drop of base diameter d, measured drops: 24/π³ = 0.774, rounded down.
    ///
    /// **Source:** ElSherbini and Jacobi, J. Colloid Interface Sci. 299 (2006) 841, from memory.
    public static final double LEAST_HOLD = 0.77;

    /// The same, of a round base in the first order: π/4 = 0.785, rounded up.
    ///
    /// **Source:** Contact angles of a drop pinned on an incline, arXiv:1610.06725.
    public static final double MOST_HOLD = 0.79;

    private static final double LEAST_MEAN_RADIANS = Math.toRadians(15);
    private static final double MOST_MEAN_RADIANS = Math.toRadians(165);
    private static final int STEPS = 400;

    private Drops() {}

    /// A liquid as drops know it.
    ///
    /// @param densityKilogramsPerMetre3 density, kg/m³, > 0
    /// @param tensionNewtonsPerMetre surface tension, N/m, > 0
    public record Liquid(double densityKilogramsPerMetre3, double tensionNewtonsPerMetre) {}

    /// How large a drop stays.
    public sealed interface Stay {
        /// Drops up to this base diameter stay.
        ///
        /// @param diameterMetres m, ≥ 0
        record UpTo(double diameterMetres) implements Stay {}

        /// The surface is level: every drop stays.
        record Every() implements Stay {}

        /// Every drop that is a cap stays; larger ones are flattened by their weight into puddles, of which this law
        /// says nothing.
        ///
        /// @param diameterMetres base diameter up to which a drop is a cap, m
        record PastCaps(double diameterMetres) implements Stay {}

        /// The liquid spreads or hardly touches: the mean angle is outside 15 to 165 degrees, and there are no beads
        /// for this law.
        ///
        /// @param meanRadians the mean angle, radians
        record NoBeads(double meanRadians) implements Stay {}
    }

    /// Gives a cap's volume: `π h (3a² + h²)/6` with `a = d/2`, `h = a tan(θ/2)`.
    ///
    /// **Source:** solid geometry.
    ///
    /// @param diameterMetres d, base diameter, m, ≥ 0
    /// @param angleRadians θ, contact angle, radians, 0 to below π
    /// @return volume, m³
    /// @throws IllegalArgumentException outside these ranges
    public static double capMetres3(double diameterMetres, double angleRadians) {
        check(diameterMetres >= 0 && angleRadians >= 0 && angleRadians < Math.PI, diameterMetres, angleRadians);
        double radius = diameterMetres / 2;
        double height = radius * Math.tan(angleRadians / 2);
        return Math.PI * height * (3 * radius * radius + height * height) / 6;
    }

    /// Gives the base diameter up to which a drop stays on a slope: weight along it against what the edge holds,
    /// `ρ V g sin α = k σ d (cos θ_R − cos θ_A)`, V the cap at the mean angle. Holds while such a cap is less tall
    /// than the tallest puddle of the liquid, `d ≤ 4 √(σ/(ρ g)) cos(θ/2)`. Shaking, dust and a drop that runs into
    /// another bring down smaller ones.
    ///
    /// **Source:** Furmidge, J. Colloid Sci. 17 (1962) 309; puddle's height `2 √(σ/(ρ g)) sin(θ/2)`: any text on
    /// capillarity.
    ///
    /// @param liquid the liquid
    /// @param angles its contact angles there
    /// @param tiltRadians α, the surface's angle from level, radians, 0 to π/2
    /// @param hold k, [#LEAST_HOLD] to [#MOST_HOLD]
    /// @return how large a drop stays
    /// @throws IllegalArgumentException outside these ranges
    public static Stay largestStaying(Liquid liquid, ContactAngles angles, double tiltRadians, double hold) {
        check(tiltRadians >= 0 && tiltRadians <= Math.PI / 2 + 1e-9 && hold > 0 && hold < 2, tiltRadians, hold);
        double mean = angles.meanRadians();
        if (mean < LEAST_MEAN_RADIANS || mean > MOST_MEAN_RADIANS) {
            return new Stay.NoBeads(mean);
        }
        if (Math.sin(tiltRadians) < 1e-9) {
            return new Stay.Every();
        }
        double weight = liquid.densityKilogramsPerMetre3() * Water.GRAVITY_METRES_PER_SECOND2;
        double squared = hold
                * liquid.tensionNewtonsPerMetre()
                * angles.hysteresis()
                / (weight * capMetres3(1, mean) * Math.sin(tiltRadians));
        double diameter = Math.sqrt(squared);
        double most = 4 * Math.sqrt(liquid.tensionNewtonsPerMetre() / weight) * Math.cos(mean / 2);
        return diameter <= most ? new Stay.UpTo(diameter) : new Stay.PastCaps(most);
    }

    /// Gives how fast a drop of water dries in still air of its own temperature: `π R D (c_s − c) f(θ)`, R the base's
    /// radius, D vapour's diffusivity, f the exact shape factor of a cap on a plane. A draught of 0.1 m/s about
    /// doubles it; a drop that cools itself on a poor conductor has down to half.
    ///
    /// **Source:** Popov, Phys. Rev. E 71 (2005) 036313, equation A9 (from memory); the exact limits are 4/π for a
    /// flat drop, 2 for a half ball. Diffusivity: Massman, Atmos. Environ. 32 (1998) 1111.
    ///
    /// @param diameterMetres base diameter, m, ≥ 0
    /// @param angleRadians contact angle, radians, 0 to 165 degrees
    /// @param air the air, 0 to 60 degC
    /// @return drying rate, kg/s, ≥ 0
    public static Figure dryingKilogramsPerSecond(double diameterMetres, double angleRadians, MoistAir air) {
        Range angles = new Range(Figure.Measure.CONTACT_ANGLE, 0, MOST_MEAN_RADIANS);
        if (!angles.holds(angleRadians)) {
            return angles.refuse(angleRadians);
        }
        double temperature = air.temperatureKelvin();
        return Range.ofCelsius(0, 60).figure(temperature, 0.5, () -> {
            double lacking = air.vapourKilogramsPerMetre3() * (1 / air.humidityShare() - 1);
            return Math.PI * diameterMetres / 2 * Laws.vapourDiffusivity(temperature) * lacking * shape(angleRadians);
        });
    }

    /// Gives the time in which a drop of water dries at its first rate: the edge stays, the cap gets flatter. A pinned
    /// drop slows down a little: at 60 degrees it takes a tenth longer.
    ///
    /// @param diameterMetres base diameter, m, > 0
    /// @param angleRadians contact angle, radians, 0 to 165 degrees
    /// @param air the air, 0 to 40 degC, humidity below 1
    /// @return time, s; in full air a drop doesn't dry, which is unknown here
    public static Figure dryingSeconds(double diameterMetres, double angleRadians, MoistAir air) {
        Range dry = new Range(Figure.Measure.HUMIDITY, 0, 0.999);
        if (!dry.holds(air.humidityShare())) {
            return dry.refuse(air.humidityShare());
        }
        return switch (Water.densityKilogramsPerMetre3(air.temperatureKelvin())) {
            case Figure.Unknown unknown -> unknown;
            case Figure.Known(double density, double _) ->
                dryingKilogramsPerSecond(diameterMetres, angleRadians, air)
                        .map(rate -> density * capMetres3(diameterMetres, angleRadians) / rate);
        };
    }

    /// The shape factor: `sin θ/(1 + cos θ) + 4∫(1 + cosh 2θτ)/sinh 2πτ · tanh((π − θ)τ) dτ` from 0 on.
    static double shape(double theta) {
        double open = Math.PI - theta;
        double end = 20 / open;
        double step = end / STEPS;
        double sum = integrand(theta, 0) + integrand(theta, end);
        for (int i = 1; i < 2 * STEPS; i++) {
            sum += (i % 2 == 1 ? 4 : 2) * integrand(theta, i * step / 2);
        }
        return Math.tan(theta / 2) + 4 * sum * step / 6;
    }

    private static double integrand(double theta, double tau) {
        double open = Math.PI - theta;
        if (tau == 0) {
            return open / Math.PI;
        }
        // Written so that nothing overflows: both hyperbolic functions over e^(2πτ).
        double fall = Math.exp(-2 * Math.PI * tau);
        double above = fall + (Math.exp(-2 * open * tau) + Math.exp(-2 * (Math.PI + theta) * tau)) / 2;
        return above / ((1 - fall * fall) / 2) * Math.tanh(open * tau);
    }

    private static void check(boolean allowed, double first, double second) {
        if (!allowed) {
            throw new IllegalArgumentException("out of range: " + first + ", " + second);
        }
    }
}
