package plumeline.ink;

import java.util.Arrays;
import java.util.OptionalDouble;
import java.util.function.Function;

/// What no table tells of a crew's ink, as numbers that are independent and standard normal before any take. The laws'
/// coefficients follow from them; a pace is what is left, a factor on the time.
///
/// **Source:** published ranges as in [Coefficients], each read as what holds eight to nine times in ten: puff 0.13 to
/// 0.34, its middle such that a gentle puff's strength is 5.5 √B; added mass 0 to 0.5, its middle taken; stream 0.10 to
/// 0.16 and front's share 0.5 to 1.1, which is 1.2 to 0.55 in time; a laminar thread's factor of two; half of the push
/// left after the surface, 0.25 to all. What paces are wider by is our own guess at what the laws leave out. Tilts are
/// as wide as lets a front be read that goes by a power of time, as practice has it (n 0.5 to 0.75), and not by the
/// laws; these are furthest from it where push lasts.
final class Unknowns {
    /// How many there are.
    static final int COUNT = 9;

    private static final int PUFF_GROWTH = 0;
    private static final int PUFF_PACE = 1;
    private static final int STREAM_GROWTH = 2;
    private static final int STREAM_PACE = 3;
    private static final int LAMINAR_PACE = 4;
    private static final int KEPT_PUSH = 5;
    private static final int COMMON_PACE = 6;
    private static final int PUFF_TILT = 7;
    private static final int STREAM_TILT = 8;

    /// The way at which a tilt changes nothing, m.
    private static final double TILT_METRES = 0.1;

    /// The middle of 0 to 0.5.
    private static final double ADDED_MASS = 0.25;

    private static final double STEP = 0.25;

    private Unknowns() {}

    private static Coefficients coefficients(double[] at) {
        return new Coefficients(
                0.233 * Math.exp(0.30 * at[PUFF_GROWTH]),
                ADDED_MASS,
                0.127 * Math.exp(0.14 * at[STREAM_GROWTH]),
                Coefficients.USUAL.frontShare(),
                Math.min(1, 0.5 * Math.exp(0.42 * at[KEPT_PUSH])));
    }

    /// How much of a puff's momentum is its push still when it has gone the tilt's way; none of ink that turns, which
    /// follows no power of time.
    private static double pushShare(Descent descent) {
        Release release = descent.release();
        double push = release.volumeMetres3() * descent.pushMetresPerSecond(Coefficients.USUAL);
        if (push == 0 || release.buoyancyMetres4PerSecond2() < 0) {
            return 0;
        }
        double seconds = descent.findSeconds(descent.startMetres() + TILT_METRES, Regime.PUFF, Coefficients.USUAL)
                        .orElseThrow()
                - descent.airSeconds();
        return push / (push + release.buoyancyMetres4PerSecond2() * seconds);
    }

    private static double logPace(double[] at, Regime regime, double way, double pushShare) {
        double far = Math.log(way / TILT_METRES);
        return 0.06 * at[COMMON_PACE]
                + switch (regime) {
                    case PUFF -> 0.16 * at[PUFF_PACE] + (0.10 + 0.15 * pushShare) * at[PUFF_TILT] * far;
                    case STREAM -> -0.08 + 0.28 * at[STREAM_PACE] + 0.12 * at[STREAM_TILT] * far;
                    case LAMINAR -> 0.5 * at[LAMINAR_PACE];
                };
    }

    /// Something of which the logarithm is wanted; empty where there is none.
    interface Law {
        OptionalDouble find(double[] at);

        /// How it changes with each unknown, there; zero where it has no value to either side.
        default double[] slopes(double[] at) {
            double[] slopes = new double[COUNT];
            double[] moved = at.clone();
            for (int i = 0; i < COUNT; i++) {
                moved[i] = at[i] + STEP;
                OptionalDouble more = find(moved);
                moved[i] = at[i] - STEP;
                OptionalDouble less = find(moved);
                moved[i] = at[i];
                if (more.isPresent() && less.isPresent()) {
                    slopes[i] = (more.getAsDouble() - less.getAsDouble()) / (2 * STEP);
                }
            }
            return slopes;
        }
    }

    /// What the regimes' laws say together. Slopes are roots of mean squares: where one law goes over into another
    /// nothing is surer than by either.
    private record Blend(Borders borders, Function<Regime, Law> laws) implements Law {
        @Override
        public OptionalDouble find(double[] at) {
            return borders.mean(regime -> laws.apply(regime).find(at));
        }

        @Override
        public double[] slopes(double[] at) {
            if (borders.isAlone()) {
                return laws.apply(borders.regime()).slopes(at);
            }
            double[] means = new double[COUNT];
            double[] squares = new double[COUNT];
            for (Regime regime : Regime.values()) {
                double weight = borders.weight(regime);
                if (weight > 0) {
                    double[] slopes = laws.apply(regime).slopes(at);
                    for (int i = 0; i < COUNT; i++) {
                        means[i] += weight * slopes[i];
                        squares[i] += weight * slopes[i] * slopes[i];
                    }
                }
            }
            Arrays.setAll(squares, i -> Math.copySign(Math.sqrt(squares[i]), means[i]));
            return squares;
        }
    }

    /// The logarithm of the time when the front is at a depth, s.
    static Law seconds(Descent descent, double depthMetres) {
        double way = depthMetres - descent.startMetres();
        Borders borders = Borders.of(descent, depthMetres);
        double pushShare = borders.weight(Regime.PUFF) > 0 ? pushShare(descent) : 0;
        return new Blend(borders, regime -> at -> {
            OptionalDouble seconds = descent.findSeconds(depthMetres, regime, coefficients(at), borders);
            return seconds.isEmpty() || seconds.getAsDouble() <= 0
                    ? OptionalDouble.empty()
                    : OptionalDouble.of(Math.log(seconds.getAsDouble()) + logPace(at, regime, way, pushShare));
        });
    }

    /// The logarithm of the front's half-width at a depth, m.
    static Law halfWidth(Descent descent, double depthMetres) {
        return new Blend(
                Borders.of(descent, depthMetres),
                regime ->
                        at -> OptionalDouble.of(Math.log(descent.radiusMetres(depthMetres, regime, coefficients(at)))));
    }

    /// The logarithm of the dilution at a depth.
    static Law dilution(Descent descent, double depthMetres) {
        return new Blend(
                Borders.of(descent, depthMetres),
                regime -> at -> OptionalDouble.of(Math.log(descent.dilution(depthMetres, regime, coefficients(at)))));
    }

    /// The logarithm of how much the half-width grows by over the way. A laminar thread's law has no such share, its
    /// head widens by what catches up with it: a stream's stands for it, as the widest that it may become.
    static Law growth(Regime regime) {
        return at -> OptionalDouble.of(Math.log(
                switch (regime) {
                    case PUFF -> coefficients(at).puffEntrainment();
                    case STREAM, LAMINAR -> 1.2 * coefficients(at).streamEntrainment();
                }));
    }

    /// The logarithm of a puff's strength, m²/s.
    static Law strength(Release release) {
        return at -> {
            double alpha = coefficients(at).puffEntrainment();
            double square =
                    3 * release.buoyancyMetres4PerSecond2() / (2 * Math.PI * (1 + ADDED_MASS) * alpha * alpha * alpha);
            return OptionalDouble.of(Math.log(square) / 2 - logPace(at, Regime.PUFF, TILT_METRES, 0));
        };
    }
}
