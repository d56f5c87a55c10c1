package plumeline.ink;

import java.util.OptionalDouble;
import plumeline.ranges.Ranges;
import plumeline.water.Water;

/// A release from a nozzle, and its front on the way down. Depths count from the still surface, times from the first
/// ink that leaves the nozzle.
///
/// From above the surface the ink falls freely, and part of its push is lost where it goes in; its puff or stream
/// begins at the surface.
///
/// @param release what is let go
/// @param heightMetres the nozzle's tip over the surface, m; − below it
public record Descent(Release release, double heightMetres) {
    private static final double GRAVITY = Water.GRAVITY_METRES_PER_SECOND2;

    /// A jet out of a nozzle stays smooth below this: from memory of experiments on round jets, smooth up to 300 to
    /// 1000; one at 1700 is turbulent within 2 cm (Bhamidipati and Woods 2017).
    private static final double LAMINAR_NOZZLE = 500;

    /// A plume's `F z²/ν³` where it becomes turbulent: middle of 10⁹ to 10¹⁰, from memory of thermal plumes.
    private static final double LAMINAR_PLUME = 3e9;

    /// Checks the range.
    ///
    /// @throws IllegalArgumentException for a height that isn't finite
    public Descent {
        Ranges.checkNotNegative(Math.abs(heightMetres), "size of the height");
    }

    /// Gives the depth of the initial front: the tip's, or the surface's below it.
    ///
    /// @return m, ≥ 0
    public double startMetres() {
        return Math.max(0, -heightMetres);
    }

    /// Gives how long the first ink falls through air.
    ///
    /// @return s; 0 for a tip in the water
    public double airSeconds() {
        return heightMetres <= 0 ? 0 : (surfaceSpeed() - release.speedMetresPerSecond()) / GRAVITY;
    }

    private double surfaceSpeed() {
        double speed = release.speedMetresPerSecond();
        return heightMetres <= 0 ? speed : Math.sqrt(speed * speed + 2 * GRAVITY * heightMetres);
    }

    /// Gives the speed that is left in the water.
    ///
    /// @param coefficients the coefficients
    /// @return m/s
    public double pushMetresPerSecond(Coefficients coefficients) {
        return surfaceSpeed() * (heightMetres <= 0 ? 1 : coefficients.keptPush());
    }

    /// Tells how the ink comes down to a depth: laminar while nozzle and plume are slow; else a stream where it flows
    /// for longer than half the time that a puff would take.
    ///
    /// @param depthMetres depth below the surface, m, ≥ the start's
    /// @return the regime
    public Regime regime(double depthMetres) {
        double flows = release.seconds();
        if (flows == 0) {
            return Regime.PUFF;
        }
        double way = depthMetres - startMetres();
        if (isLaminar(way)) {
            return flows > LaminarThread.of(release).seconds(way) / 2 ? Regime.LAMINAR : Regime.PUFF;
        }
        Puff puff = puff(Coefficients.USUAL);
        double turns = Math.abs(puff.impulseMetres4PerSecond() / puff.buoyancyMetres4PerSecond2());
        return flows > puff.findSeconds(way).orElse(turns) / 2 ? Regime.STREAM : Regime.PUFF;
    }

    private boolean isLaminar(double way) {
        double nu = release.viscosityMetres2PerSecond();
        double flux = release.buoyancyFluxMetres4PerSecond3();
        return heightMetres <= 0
                && flux > 0
                && release.reynolds() < LAMINAR_NOZZLE
                && flux * way * way < LAMINAR_PLUME * nu * nu * nu;
    }

    private Puff puff(Coefficients coefficients) {
        return Puff.of(release, pushMetresPerSecond(coefficients), coefficients);
    }

    private Stream stream(Coefficients coefficients) {
        return Stream.of(release, pushMetresPerSecond(coefficients), coefficients);
    }

    /// Finds when the front is at a depth.
    ///
    /// @param depthMetres depth below the surface, m, ≥ the start's
    /// @param regime how it comes down
    /// @param coefficients the coefficients
    /// @return s; empty where it never comes so deep
    public OptionalDouble findSeconds(double depthMetres, Regime regime, Coefficients coefficients) {
        double way = depthMetres - startMetres();
        OptionalDouble seconds = switch (regime) {
            case PUFF -> puff(coefficients).findSeconds(way);
            case STREAM -> stream(coefficients).findSeconds(way);
            case LAMINAR -> OptionalDouble.of(LaminarThread.of(release).seconds(way));
        };
        return seconds.isPresent() ? OptionalDouble.of(seconds.getAsDouble() + airSeconds()) : seconds;
    }

    /// Gives how deep the front is.
    ///
    /// @param seconds time from the first ink that leaves the nozzle, s
    /// @param regime how it comes down
    /// @param coefficients the coefficients
    /// @return depth below the surface, m; the start's while it is in the air
    public double frontMetres(double seconds, Regime regime, Coefficients coefficients) {
        double t = Math.max(0, seconds - airSeconds());
        return startMetres()
                + switch (regime) {
                    case PUFF -> puff(coefficients).frontMetres(t);
                    case STREAM -> stream(coefficients).frontMetres(t);
                    case LAMINAR -> LaminarThread.of(release).frontMetres(t);
                };
    }

    /// Gives the front's half-width at a depth.
    ///
    /// @param depthMetres depth below the surface, m, ≥ the start's
    /// @param regime how it comes down
    /// @param coefficients the coefficients
    /// @return m
    public double radiusMetres(double depthMetres, Regime regime, Coefficients coefficients) {
        double way = depthMetres - startMetres();
        return switch (regime) {
            case PUFF -> puff(coefficients).radiusMetres(way);
            case STREAM -> stream(coefficients).radiusMetres(way);
            case LAMINAR -> LaminarThread.of(release).radiusMetres(way);
        };
    }

    /// Gives how many times its own volume the ink fills at a depth.
    ///
    /// @param depthMetres depth below the surface, m, > the start's
    /// @param regime how it comes down
    /// @param coefficients the coefficients
    /// @return dimensionless, ≥ 1; 1 for a laminar thread
    public double dilution(double depthMetres, Regime regime, Coefficients coefficients) {
        double way = depthMetres - startMetres();
        return switch (regime) {
            case PUFF -> puff(coefficients).dilution(way);
            case STREAM -> stream(coefficients).dilution(way);
            case LAMINAR -> 1;
        };
    }

    /// Gives the deepest that the front goes.
    ///
    /// @param regime how it comes down
    /// @param coefficients the coefficients
    /// @return depth below the surface, m; endless (infinite) for ink that doesn't turn
    public double deepestMetres(Regime regime, Coefficients coefficients) {
        double reduced = release.reducedGravityMetresPerSecond2();
        if (reduced > 0 || (reduced == 0 && pushMetresPerSecond(coefficients) > 0)) {
            return Double.POSITIVE_INFINITY;
        }
        if (reduced == 0) {
            return startMetres();
        }
        return startMetres()
                + switch (regime) {
                    case PUFF, LAMINAR -> puff(coefficients).frontMetres(Double.POSITIVE_INFINITY);
                    case STREAM -> stream(coefficients).deepestMetres();
                };
    }

    /// Gives the same descent of another release.
    ///
    /// @param other what is let go
    /// @return the descent
    public Descent with(Release other) {
        return new Descent(other, heightMetres);
    }
}
