package plumeline.ink;

import java.util.OptionalDouble;
import java.util.function.DoubleUnaryOperator;
import java.util.function.Function;

/// How a descent comes down to a depth, and how near that is to coming down otherwise: laminar while nozzle and plume
/// are slow; else a stream where it flows for longer than half the time that a puff would take.
///
/// No border between two regimes is sharp. Each is a factor in a quantity, and within that factor to either side the
/// descent belongs to both, by shares that are equal at the border: so far intervals cover both laws. Within a narrower
/// band values go over from one law to the other, by weights. Where no law is known beyond a border, it is sharp.
///
/// @param smooth how far over the border of the laminar regime, logarithm in units of that border's factor: − laminar,
/// endless (infinite) where no thread can be
/// @param longAsThread how much longer it flows than half a laminar thread's way takes, logarithm of 2's powers
/// @param longAsPuff how much longer it flows than half a puff's way takes, logarithm of 2's powers
record Borders(double smooth, double longAsThread, double longAsPuff) {
    /// A jet out of a nozzle stays smooth below this: from memory of experiments on round jets, smooth up to 300 to
    /// 1000; one at 1700 is turbulent within 2 cm (Bhamidipati and Woods 2017).
    private static final double LAMINAR_NOZZLE = 500;

    private static final double NOZZLE_FACTOR = 2;

    /// A plume's `F z²/ν³` where it becomes turbulent: middle of 10⁹ to 10¹⁰, from memory of thermal plumes.
    private static final double LAMINAR_PLUME = 3e9;

    private static final double PLUME_FACTOR = 3;

    /// Falling in from so high a thread is stirred through; less from lower: our guess.
    private static final double STIRRED_METRES = 0.02;

    /// Farther over the border than this nothing counts any more.
    private static final double FAR_OVER = 3;

    /// The time it flows against half the way's: our guess.
    private static final double TIME_FACTOR = 2;

    /// Values go over so far to either side of a border, in its factor's logarithm: our guess, wide enough that a front
    /// still comes the later the deeper.
    static final double BAND = 0.4;

    /// Finds where a descent stands.
    ///
    /// @param descent what is let go, and from where
    /// @param depthMetres depth below the surface, m, ≥ the start's
    static Borders of(Descent descent, double depthMetres) {
        Release release = descent.release();
        double flows = release.seconds();
        if (flows == 0) {
            return new Borders(Double.POSITIVE_INFINITY, 0, Double.NEGATIVE_INFINITY);
        }
        double smooth = smooth(descent, depthMetres - descent.startMetres());
        double thread = smooth < 1
                ? LaminarThread.of(release)
                        .findSeconds(depthMetres - descent.startMetres())
                        .orElseThrow()
                : 0;
        double push = descent.pushMetresPerSecond(Coefficients.USUAL);
        OptionalDouble puff = descent.findSeconds(depthMetres, Regime.PUFF, Coefficients.USUAL);
        double turns = Math.abs(push / release.reducedGravityMetresPerSecond2());
        double way = puff.isPresent() ? puff.getAsDouble() - descent.airSeconds() : turns;
        double longAsPuff = over(flows, way / 2, TIME_FACTOR);
        return new Borders(
                smooth,
                over(flows, thread / 2, TIME_FACTOR),
                release.rowMetres() > 0 ? Math.copySign(Double.POSITIVE_INFINITY, longAsPuff) : longAsPuff);
    }

    private static double smooth(Descent descent, double way) {
        Release release = descent.release();
        double nu = release.viscosityMetres2PerSecond();
        double flux = release.buoyancyFluxMetres4PerSecond3();
        if (release.rowMetres() > 0 || flux <= 0) {
            return Double.POSITIVE_INFINITY;
        }
        double under = Math.max(
                over(release.reynolds(), LAMINAR_NOZZLE, NOZZLE_FACTOR),
                over(flux * way * way / (nu * nu * nu), LAMINAR_PLUME, PLUME_FACTOR));
        double stirred = Math.clamp(descent.heightMetres() / STIRRED_METRES, 0, 1);
        return stirred == 0 ? under : (1 - stirred) * Math.clamp(under, -FAR_OVER, FAR_OVER) + stirred * FAR_OVER;
    }

    private static double over(double value, double border, double factor) {
        return Math.log(value / border) / Math.log(factor);
    }

    /// Tells how it comes down.
    Regime regime() {
        if (smooth < 0) {
            return longAsThread > 0 ? Regime.LAMINAR : Regime.PUFF;
        }
        return longAsPuff > 0 ? Regime.STREAM : Regime.PUFF;
    }

    /// Gives how much a regime counts beside the one that is taken.
    ///
    /// @param other another regime
    /// @param taken the regime that is taken
    /// @return 0 far from their border, 1 at it and beyond
    double share(Regime other, Regime taken) {
        double others = part(other);
        double own = part(taken);
        return others == 0 ? 0 : others >= own ? 1 : others / own;
    }

    /// Gives how much a regime's law weighs in a value.
    ///
    /// @param regime a regime
    /// @return 0 to 1; of all regimes together 1
    double weight(Regime regime) {
        return part(regime, Borders::smoothstep);
    }

    /// Gives what the regimes' laws say together: the mean by their weights, the law's own far from every border.
    ///
    /// @param law what a regime's law says; empty where it says nothing, which then doesn't count
    /// @return the mean, in the law's unit; empty where the law of the regime that is taken says nothing
    OptionalDouble mean(Function<Regime, OptionalDouble> law) {
        OptionalDouble taken = law.apply(regime());
        if (taken.isEmpty() || isAlone()) {
            return taken;
        }
        double sum = 0;
        double weights = 0;
        for (Regime regime : Regime.values()) {
            double weight = weight(regime);
            OptionalDouble value = weight == 0 ? OptionalDouble.empty() : law.apply(regime);
            if (value.isPresent()) {
                sum += weight * value.getAsDouble();
                weights += weight;
            }
        }
        return OptionalDouble.of(sum / weights);
    }

    /// Tells whether values are those of one law.
    ///
    /// @return true outside every border's band
    boolean isAlone() {
        return weight(regime()) == 1;
    }

    private double part(Regime regime) {
        return part(regime, Borders::even);
    }

    private double part(Regime regime, DoubleUnaryOperator inside) {
        double laminar = inside.applyAsDouble(-smooth);
        double thread = inside.applyAsDouble(longAsThread);
        double stream = inside.applyAsDouble(longAsPuff);
        return switch (regime) {
            case LAMINAR -> laminar * thread;
            case STREAM -> (1 - laminar) * stream;
            case PUFF -> laminar * (1 - thread) + (1 - laminar) * (1 - stream);
        };
    }

    /// A half at the border, all of it one factor inside.
    private static double even(double inside) {
        return Math.clamp((1 + inside) / 2, 0, 1);
    }

    /// A half at the border, all of it at the band's end, without a bend there.
    private static double smoothstep(double inside) {
        double even = even(inside / BAND);
        return even * even * (3 - 2 * even);
    }
}
