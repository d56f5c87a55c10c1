package plumeline.ink;

import java.util.OptionalDouble;

/// How a descent comes down to a depth, and how near that is to coming down otherwise: laminar while nozzle and plume
/// are slow; else a stream where it flows for longer than half the time that a puff would take.
///
/// No border between two regimes is sharp. Each is a factor in a quantity, and within that factor to either side the
/// descent belongs to both, by shares that are equal at the border.
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
        return new Borders(smooth, over(flows, thread / 2, TIME_FACTOR), over(flows, way / 2, TIME_FACTOR));
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

    private double part(Regime regime) {
        double laminar = part(-smooth);
        return switch (regime) {
            case LAMINAR -> laminar * part(longAsThread);
            case STREAM -> (1 - laminar) * part(longAsPuff);
            case PUFF -> laminar * part(-longAsThread) + (1 - laminar) * part(-longAsPuff);
        };
    }

    /// A half at the border, all of it one factor inside.
    private static double part(double inside) {
        return Math.clamp((1 + inside) / 2, 0, 1);
    }
}
