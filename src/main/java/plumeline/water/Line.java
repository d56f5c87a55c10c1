package plumeline.water;

import plumeline.ranges.Ranges;

/// Thin lines that things hang on: strength, knots, how they swing and turn.
public final class Line {
    /// Share of its strength that a line is planned to keep at a knot, dimensionless.
    ///
    /// **Source:** common practice: testers plan with 0.5 to 0.6, good knots keep 0.85 to 0.9.
    public static final double PLANNED_KNOT = 0.5;

    /// Least safety factor on the knotted strength for something hung where people work, dimensionless.
    ///
    /// **Source:** common practice (jerks, wet line, nicks).
    public static final double LEAST_FACTOR = 5;

    private Line() {}

    /// What a line is made of.
    public enum Material {
        /// Nylon monofilament.
        ///
        /// **Source:** retail charts of 0.20 to 0.50 mm lines: 530 to 780 N/mm² on the label; 600 to plan with.
        NYLON(600e6, 530e6, 780e6),
        /// Fluorocarbon (PVDF) monofilament.
        ///
        /// **Source:** common practice, from memory: labelled a tenth to a fifth weaker than nylon.
        FLUOROCARBON(500e6, 430e6, 650e6);

        private final double plannedPascals;
        private final double lowPascals;
        private final double highPascals;

        Material(double plannedPascals, double lowPascals, double highPascals) {
            this.plannedPascals = plannedPascals;
            this.lowPascals = lowPascals;
            this.highPascals = highPascals;
        }

        /// Gives the breaking stress to plan with.
        ///
        /// @return stress, pascals
        public double plannedPascals() {
            return plannedPascals;
        }

        /// Gives the lowest breaking stress that labels give.
        ///
        /// @return stress, pascals
        public double lowPascals() {
            return lowPascals;
        }

        /// Gives the highest breaking stress that labels give.
        ///
        /// @return stress, pascals
        public double highPascals() {
            return highPascals;
        }
    }

    /// Gives the strength of an unknotted line: `σπd²/4`.
    ///
    /// @param diameterMetres d, metres, > 0
    /// @param stressPascals σ, breaking stress, pascals, > 0
    /// @return strength, newtons
    public static double strengthNewtons(double diameterMetres, double stressPascals) {
        double d = Ranges.checkPositive(diameterMetres, "diameter");
        return Ranges.checkPositive(stressPascals, "breaking stress") * Math.PI / 4 * d * d;
    }

    /// Gives the diameter of an unknotted line of a strength: `√(4F/(πσ))`.
    ///
    /// @param strengthNewtons F, newtons, > 0
    /// @param stressPascals σ, breaking stress, pascals, > 0
    /// @return diameter, metres
    public static double diameterMetres(double strengthNewtons, double stressPascals) {
        Ranges.checkPositive(strengthNewtons, "strength");
        return Math.sqrt(4 * strengthNewtons / (Math.PI * Ranges.checkPositive(stressPascals, "breaking stress")));
    }

    /// Gives the strength left at the knot over the load.
    ///
    /// @param strengthNewtons unknotted, newtons, > 0
    /// @param knotShare share that is left at the knot, 0 to 1
    /// @param loadNewtons load, newtons, > 0
    /// @return factor, dimensionless
    public static double safetyFactor(double strengthNewtons, double knotShare, double loadNewtons) {
        checkKnot(knotShare);
        return Ranges.checkPositive(strengthNewtons, "strength")
                * knotShare
                / Ranges.checkPositive(loadNewtons, "load");
    }

    /// Gives the unknotted strength that a load asks for.
    ///
    /// @param loadNewtons load, newtons, > 0
    /// @param knotShare share that is left at the knot, 0 to 1
    /// @param factor safety factor, > 0
    /// @return strength, newtons
    public static double neededNewtons(double loadNewtons, double knotShare, double factor) {
        checkKnot(knotShare);
        return Ranges.checkPositive(loadNewtons, "load") * Ranges.checkPositive(factor, "factor") / knotShare;
    }

    private static void checkKnot(double knotShare) {
        Ranges.checkAtMost(Ranges.checkPositive(knotShare, "knot's share"), 1, "knot's share");
    }

    /// Gives the load of each of two lines that lean apart alike: `W/(2 cos a)`.
    ///
    /// @param weightNewtons W, newtons, > 0
    /// @param leanRadians a, from the upright, radians, 0 to under π/2
    /// @return load, newtons
    public static double leaningNewtons(double weightNewtons, double leanRadians) {
        Ranges.checkNotNegative(leanRadians, "lean");
        return Ranges.checkPositive(weightNewtons, "weight")
                / (2 * Ranges.checkPositive(Math.cos(leanRadians), "cosine of the lean"));
    }

    /// A thing that hangs, in what surrounds it.
    ///
    /// @param kilograms its mass with all that is inside, kilograms, > 0
    /// @param displacedKilograms mass of the water it displaces, kilograms, ≥ 0, less than its own; 0 in air
    /// @param draggedShare added mass over displaced mass, ≥ 0: a ball 0.5, an upright cylinder across itself about
    /// 1
    public record Hung(double kilograms, double displacedKilograms, double draggedShare) {
        /// Checks the ranges.
        ///
        /// @throws IllegalArgumentException where it doesn't hang, or outside them
        public Hung {
            Ranges.checkPositive(kilograms, "mass");
            Ranges.checkNotNegative(displacedKilograms, "displaced mass");
            Ranges.checkPositive(kilograms - displacedKilograms, "mass less displaced mass");
            Ranges.checkNotNegative(draggedShare, "added mass");
        }

        /// A thing in air.
        ///
        /// @param kilograms its mass, kilograms, > 0
        /// @return the thing
        public static Hung inAir(double kilograms) {
            return new Hung(kilograms, 0, 0);
        }

        private double slowness() {
            return (kilograms + draggedShare * displacedKilograms) / (kilograms - displacedKilograms);
        }
    }

    /// Gives the period of a small swing: `2π√(l/g · (m + m_added)/(m − m_displaced))`. A point on a line without mass;
    /// 10° either way make it 0.2 % longer.
    ///
    /// **Source:** pendulum law with added mass (Lamb, Hydrodynamics, 6th ed., art. 92, from memory).
    ///
    /// @param hung what hangs
    /// @param lengthMetres l, from where the line is held to the thing's middle, metres, > 0
    /// @param gravityMetresPerSecond2 g, metres a second squared, > 0
    /// @return period there and back, seconds
    public static double swingSeconds(Hung hung, double lengthMetres, double gravityMetresPerSecond2) {
        double still =
                Ranges.checkPositive(lengthMetres, "length") / Ranges.checkPositive(gravityMetresPerSecond2, "gravity");
        return 2 * Math.PI * Math.sqrt(still * hung.slowness());
    }

    /// Gives how long a swing takes to die to a share of itself when each period leaves the same share.
    ///
    /// @param periodSeconds period, seconds, > 0
    /// @param keptShare share of the swing left after one period, over 0 and under 1
    /// @param endShare share of the swing that may be left, over 0 and under 1
    /// @return time, seconds
    public static double waitSeconds(double periodSeconds, double keptShare, double endShare) {
        Ranges.checkPositive(1 - keptShare, "share lost in a period");
        Ranges.checkPositive(1 - endShare, "share to be lost");
        double periods = Math.log(Ranges.checkPositive(endShare, "end share"))
                / Math.log(Ranges.checkPositive(keptShare, "kept share"));
        return Ranges.checkPositive(periodSeconds, "period") * periods;
    }

    /// Gives the period in which a thing on two parallel lines turns to and fro: that of a swing times `2k/d`, with k
    /// its
    /// radius of gyration about the upright. On one line it has none worth the name: thin line hardly resists a
    /// turn.
    ///
    /// **Source:** bifilar pendulum (any text on mechanics).
    ///
    /// @param swingSeconds period of its swing on the same length, seconds, > 0
    /// @param gyrationMetres k, metres, > 0; a full cylinder's is its radius over √2
    /// @param apartMetres d, how far the lines are apart, metres, > 0
    /// @return period there and back, seconds
    public static double turnSeconds(double swingSeconds, double gyrationMetres, double apartMetres) {
        Ranges.checkPositive(swingSeconds, "period");
        return swingSeconds
                * 2
                * Ranges.checkPositive(gyrationMetres, "radius")
                / Ranges.checkPositive(apartMetres, "way apart");
    }
}
