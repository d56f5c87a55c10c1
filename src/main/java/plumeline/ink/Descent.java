package plumeline.ink;

import java.util.OptionalDouble;
import java.util.function.Function;
import plumeline.ranges.Ranges;
import plumeline.roots.Roots;
import plumeline.water.Water;

/// A release from a nozzle, and its front on the way down. Depths count from the still surface, times from the first
/// ink that leaves the nozzle.
///
/// From above the surface the ink falls freely, and part of its push is lost where it goes in; its puff or stream
/// begins at the surface.
///
/// What is asked without a regime is by the laws' usual coefficients, and by the regime at the depth; near a border
/// between two regimes it is the weighted mean of both laws' logarithms, so that nothing steps ([Borders]).
///
/// @param release what is let go
/// @param heightMetres the nozzle's tip over the surface, m; − below it
/// @param tiltRadians how far the nozzle points from straight down, rad, 0 to π/2; 0 for a slot
public record Descent(Release release, double heightMetres, double tiltRadians) {
    private static final double GRAVITY = Water.GRAVITY_METRES_PER_SECOND2;

    /// From this height on the surface takes all that it takes of the push, less from lower: our guess.
    private static final double LOSING_METRES = 0.02;

    /// So near to where it turns a front is counted as turning, share of its way.
    private static final double NEAR_TURN = 1e-9;

    /// Checks the range.
    ///
    /// @throws IllegalArgumentException for a height that isn't finite, a tilt out of range, a tilted slot
    public Descent {
        Ranges.checkFinite(heightMetres, "height");
        Ranges.checkNotNegative(tiltRadians, "tilt");
        Ranges.checkAtMost(tiltRadians, release.rowMetres() > 0 ? 0 : Math.PI / 2, "tilt");
    }

    /// Makes a descent from a nozzle that points straight down.
    ///
    /// @param release what is let go
    /// @param heightMetres the nozzle's tip over the surface, m; − below it
    public Descent(Release release, double heightMetres) {
        this(release, heightMetres, 0);
    }

    /// Gives the depth of the initial front: the tip's, or the surface's below it.
    ///
    /// @return m, ≥ 0
    public double startMetres() {
        return Math.max(0, -heightMetres);
    }

    private double asideSpeed() {
        return release.speedMetresPerSecond() * Math.sin(tiltRadians);
    }

    private double downSpeed() {
        return release.speedMetresPerSecond() * Math.cos(tiltRadians);
    }

    /// Gives how long the first ink falls through air.
    ///
    /// @return s; 0 for a tip in the water
    public double airSeconds() {
        return heightMetres <= 0 ? 0 : (surfaceDownSpeed() - downSpeed()) / GRAVITY;
    }

    private double surfaceDownSpeed() {
        return heightMetres <= 0 ? downSpeed() : Math.sqrt(downSpeed() * downSpeed() + 2 * GRAVITY * heightMetres);
    }

    /// Gives the speed that is left in the water.
    ///
    /// @param coefficients the coefficients
    /// @return m/s
    public double pushMetresPerSecond(Coefficients coefficients) {
        double lost = (1 - coefficients.keptPush()) * Math.clamp(heightMetres / LOSING_METRES, 0, 1);
        return Math.hypot(surfaceDownSpeed(), asideSpeed()) * (1 - lost);
    }

    /// Tells how the ink comes down to a depth: laminar while nozzle and plume are slow; else a stream where it flows
    /// for longer than half the time that a puff would take.
    ///
    /// @param depthMetres depth below the surface, m, ≥ the start's
    /// @return the regime
    public Regime regime(double depthMetres) {
        return Borders.of(this, depthMetres).regime();
    }

    /// Gives the course of the front from its start.
    private Course course(Regime regime, Coefficients coefficients) {
        double push = pushMetresPerSecond(coefficients);
        boolean slants = tiltRadians > 0 && push > 0;
        double tilt = Math.atan2(asideSpeed(), surfaceDownSpeed());
        return switch (regime) {
            case PUFF -> {
                Course course = RowPuff.of(release, push, coefficients);
                yield slants && course instanceof Puff puff ? Slanted.of(puff, tilt) : course;
            }
            case STREAM -> {
                Stream stream = Stream.of(release, push, coefficients);
                yield slants ? Slanted.of(stream, tilt) : stream;
            }
            case LAMINAR -> LaminarThread.of(release);
        };
    }

    /// What the laws near a depth say together of something above 0.
    private static OptionalDouble findBlend(Borders borders, Function<Regime, OptionalDouble> law) {
        if (borders.isAlone()) {
            return law.apply(borders.regime());
        }
        OptionalDouble logarithm = borders.mean(regime -> {
            OptionalDouble value = law.apply(regime);
            return value.isPresent() ? OptionalDouble.of(Math.log(value.getAsDouble())) : value;
        });
        return logarithm.isPresent() ? OptionalDouble.of(Math.exp(logarithm.getAsDouble())) : logarithm;
    }

    /// Finds when the front is at a depth.
    ///
    /// @param depthMetres depth below the surface, m, ≥ the start's
    /// @return s; empty where it never comes so deep
    public OptionalDouble findSeconds(double depthMetres) {
        Borders borders = Borders.of(this, depthMetres);
        return findBlend(borders, regime -> findSeconds(depthMetres, regime, Coefficients.USUAL, borders));
    }

    /// Finds when the front is at a depth by one of the laws near it; where another than that which is taken has turned
    /// before, when it turned.
    OptionalDouble findSeconds(double depthMetres, Regime regime, Coefficients coefficients, Borders borders) {
        return regime == borders.regime()
                ? findSeconds(depthMetres, regime, coefficients)
                : findSecondsOrTurn(depthMetres, regime, coefficients);
    }

    /// Finds when the front is at a depth, or turns before it.
    OptionalDouble findSecondsOrTurn(double depthMetres, Regime regime, Coefficients coefficients) {
        OptionalDouble seconds = findSeconds(depthMetres, regime, coefficients);
        double start = startMetres();
        double turn = start + (1 - NEAR_TURN) * (deepestMetres(regime, coefficients) - start);
        return seconds.isPresent() || !(turn > start && turn < depthMetres)
                ? seconds
                : findSeconds(turn, regime, coefficients);
    }

    /// Gives how deep the front is: where it is at that time by [#findSeconds(double)].
    ///
    /// @param seconds time from the first ink that leaves the nozzle, s
    /// @return depth below the surface, m; the start's while it is in the air, of light ink its deepest once it has
    /// turned
    public double frontMetres(double seconds) {
        double least = Double.POSITIVE_INFINITY;
        double most = startMetres();
        for (Regime regime : Regime.values()) {
            if (hasLaw(regime)) {
                double depth = frontMetres(seconds, regime, Coefficients.USUAL);
                Borders there = Borders.of(this, depth);
                if (there.regime() == regime && there.isAlone()) {
                    return depth;
                }
                least = Math.min(least, depth);
                most = Math.max(most, depth);
            }
        }
        return Roots.end(depth -> findSeconds(depth).orElse(Double.POSITIVE_INFINITY) <= seconds, least, most);
    }

    private boolean hasLaw(Regime regime) {
        return switch (regime) {
            case PUFF -> true;
            case STREAM -> release.seconds() > 0 && release.rowMetres() == 0;
            case LAMINAR -> release.buoyancyFluxMetres4PerSecond3() > 0 && release.rowMetres() == 0;
        };
    }

    /// Gives the front's half-width at a depth.
    ///
    /// @param depthMetres depth below the surface, m, ≥ the start's
    /// @return m
    public double radiusMetres(double depthMetres) {
        return findBlend(
                        Borders.of(this, depthMetres),
                        regime -> OptionalDouble.of(radiusMetres(depthMetres, regime, Coefficients.USUAL)))
                .orElseThrow();
    }

    /// Gives how far the front has gone to where the nozzle points, at a depth: near a border the mean of both laws
    /// themselves, as a thread's is nothing.
    ///
    /// @param depthMetres depth below the surface, m, ≥ the start's
    /// @return m, from under the nozzle's tip
    public double asideMetres(double depthMetres) {
        return Borders.of(this, depthMetres)
                .mean(regime -> OptionalDouble.of(asideMetres(depthMetres, regime, Coefficients.USUAL)))
                .orElseThrow();
    }

    /// Gives how many times its own volume the ink fills at a depth.
    ///
    /// @param depthMetres depth below the surface, m, > the start's
    /// @return dimensionless, ≥ 1
    public double dilution(double depthMetres) {
        return findBlend(
                        Borders.of(this, depthMetres),
                        regime -> OptionalDouble.of(dilution(depthMetres, regime, Coefficients.USUAL)))
                .orElseThrow();
    }

    /// Finds when the front is at a depth.
    ///
    /// @param depthMetres depth below the surface, m, ≥ the start's
    /// @param regime how it comes down
    /// @param coefficients the coefficients
    /// @return s; empty where it never comes so deep
    public OptionalDouble findSeconds(double depthMetres, Regime regime, Coefficients coefficients) {
        OptionalDouble seconds = course(regime, coefficients).findSeconds(depthMetres - startMetres());
        return seconds.isPresent() ? OptionalDouble.of(seconds.getAsDouble() + airSeconds()) : seconds;
    }

    /// Gives how deep the front is.
    ///
    /// @param seconds time from the first ink that leaves the nozzle, s
    /// @param regime how it comes down
    /// @param coefficients the coefficients
    /// @return depth below the surface, m; the start's while it is in the air
    public double frontMetres(double seconds, Regime regime, Coefficients coefficients) {
        return startMetres() + course(regime, coefficients).frontMetres(Math.max(0, seconds - airSeconds()));
    }

    /// Gives the front's half-width at a depth.
    ///
    /// @param depthMetres depth below the surface, m, ≥ the start's
    /// @param regime how it comes down
    /// @param coefficients the coefficients
    /// @return m
    public double radiusMetres(double depthMetres, Regime regime, Coefficients coefficients) {
        return course(regime, coefficients).radiusMetres(depthMetres - startMetres());
    }

    /// Gives how far the front has gone to where the nozzle points, at a depth.
    ///
    /// @param depthMetres depth below the surface, m, ≥ the start's
    /// @param regime how it comes down
    /// @param coefficients the coefficients
    /// @return m, from under the nozzle's tip
    public double asideMetres(double depthMetres, Regime regime, Coefficients coefficients) {
        return asideSpeed() * airSeconds() + course(regime, coefficients).asideMetres(depthMetres - startMetres());
    }

    /// Gives how many times its own volume the ink fills at a depth.
    ///
    /// @param depthMetres depth below the surface, m, > the start's
    /// @param regime how it comes down
    /// @param coefficients the coefficients
    /// @return dimensionless, ≥ 1; 1 for a laminar thread
    public double dilution(double depthMetres, Regime regime, Coefficients coefficients) {
        return course(regime, coefficients).dilution(depthMetres - startMetres());
    }

    /// Gives the deepest that the front goes.
    ///
    /// @param regime how it comes down
    /// @param coefficients the coefficients
    /// @return depth below the surface, m; endless (infinite) for ink that doesn't turn
    public double deepestMetres(Regime regime, Coefficients coefficients) {
        return startMetres() + course(regime, coefficients).deepestMetres();
    }

    /// Gives the same descent of another release.
    ///
    /// @param other what is let go
    /// @return the descent
    public Descent with(Release other) {
        return new Descent(other, heightMetres, tiltRadians);
    }

    /// Gives the same descent from another height.
    ///
    /// @param metres the tip over the surface, m; − below it
    /// @return the descent
    public Descent withHeight(double metres) {
        return new Descent(release, metres, tiltRadians);
    }
}
