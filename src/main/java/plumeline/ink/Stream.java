package plumeline.ink;

import java.util.OptionalDouble;
import plumeline.ranges.Ranges;

/// Ink that flows on: driven by its push near the nozzle, by its weight beyond. The front goes at a share of the mean
/// speed of the steady stream behind it, of a jet's or a plume's, whichever is faster; a jet's never faster than out of
/// the nozzle.
///
/// Plume: `w = (5/(6α)) (9αF/(10π))^⅓ z^−⅓`; jet, with 3/5 of the plume's entrainment: `w = 5 √(M/π)/(6αz)`; both are
/// `(6/5) α z` in radius. Turbulent water at rest; after the flow has ended it still holds for about as long again.
///
/// **Source:** plume: Morton, Taylor and Turner, Proc. R. Soc. A 234 (1956) 1; share 0.6: Bhamidipati and Woods, J.
/// Fluid Mech. 833 (2017) R2, abstract; jet's entrainment: Carazzo, Kaminski and Tait, J. Fluid Mech. 547 (2006) 137;
/// fountain: Turner, J. Fluid Mech. 26 (1966) 779, from memory.
///
/// @param buoyancyFluxMetres4PerSecond3 F, m⁴/s³; − for ink that is lighter
/// @param pushMetres4PerSecond2 M: volume flux times speed, downward, m⁴/s², ≥ 0
/// @param volumeFluxMetres3PerSecond Q, m³/s, > 0
/// @param boreMetres width at the start, m, > 0
/// @param entrainment the plume's α, dimensionless, > 0
/// @param frontShare the front's speed over the mean behind it, dimensionless, > 0
public record Stream(
        double buoyancyFluxMetres4PerSecond3,
        double pushMetres4PerSecond2,
        double volumeFluxMetres3PerSecond,
        double boreMetres,
        double entrainment,
        double frontShare)
        implements Course {
    /// Turner's coefficient of a fountain's first height.
    private static final double FOUNTAIN = 1.85;

    private static final double SPREAD = 6.0 / 5;

    /// Checks the ranges.
    ///
    /// @throws IllegalArgumentException outside them
    public Stream {
        Ranges.checkNotNegative(pushMetres4PerSecond2, "push");
        Ranges.checkPositive(volumeFluxMetres3PerSecond, "volume flux");
        Ranges.checkPositive(boreMetres, "bore");
        Ranges.checkPositive(entrainment, "entrainment");
        Ranges.checkPositive(frontShare, "front's share");
    }

    /// Makes a stream of a release.
    ///
    /// @param release what is let go, with a speed > 0
    /// @param speedMetresPerSecond its speed where it enters the water, m/s, ≥ 0
    /// @param coefficients the coefficients
    /// @return the stream
    public static Stream of(Release release, double speedMetresPerSecond, Coefficients coefficients) {
        double flux = release.volumeFluxMetres3PerSecond();
        return new Stream(
                release.buoyancyFluxMetres4PerSecond3(),
                flux * speedMetresPerSecond,
                flux,
                release.boreMetres(),
                coefficients.streamEntrainment(),
                coefficients.frontShare());
    }

    /// The plume's mean speed times the cube root of the way, m^(4/3)/s.
    private double plume() {
        double flux = Math.max(0, buoyancyFluxMetres4PerSecond3);
        return 5 / (6 * entrainment) * Math.cbrt(0.9 * entrainment * flux / Math.PI);
    }

    /// The jet's mean speed times the way, m²/s.
    private double jet() {
        return Math.sqrt(pushMetres4PerSecond2 / Math.PI) / (SPREAD * entrainment);
    }

    /// Gives the mean speed of the steady plume at a way from a small source.
    ///
    /// @param metres the way, m, > 0
    /// @return m/s; 0 for ink that is not denser than the water
    public double plumeMetresPerSecond(double metres) {
        return plume() / Math.cbrt(metres);
    }

    /// Gives the speed of the front where it has come so far.
    ///
    /// @param metres way from the initial front, m, > 0
    /// @return m/s; endless (infinite) at 0
    double frontMetresPerSecond(double metres) {
        return metres == 0
                ? plume() > 0 ? Double.POSITIVE_INFINITY : mouth()
                : Math.max(frontShare * plumeMetresPerSecond(metres), Math.min(mouth(), frontShare * jet() / metres));
    }

    /// Gives the way from which on the weight drives it faster than the push.
    ///
    /// @return m; endless (infinite) for ink that is not denser than the water
    public double turnoverMetres() {
        return Math.pow(jet() / plume(), 1.5);
    }

    /// Gives the deepest that light ink goes before it turns: `1.85 M^¾ / |F|^½`.
    ///
    /// @return m; endless (infinite) for ink that is not lighter than the water; 0 for such ink without push
    @Override
    public double deepestMetres() {
        return buoyancyFluxMetres4PerSecond3 < 0
                ? FOUNTAIN * Math.pow(pushMetres4PerSecond2, 0.75) / Math.sqrt(-buoyancyFluxMetres4PerSecond3)
                : Double.POSITIVE_INFINITY;
    }

    /// The speed out of the nozzle, m/s: no jet's front is faster.
    private double mouth() {
        return pushMetres4PerSecond2 / volumeFluxMetres3PerSecond;
    }

    /// Ways at which it changes what drives the front: to the first its weight as from a point, then the nozzle's
    /// speed, then its push, from the last on its weight. All at nothing where its weight drives it from the start.
    private double[] turns() {
        double slows = mouth() == 0 ? 0 : frontShare * jet() / mouth();
        double starts = mouth() == 0 ? 0 : Math.pow(frontShare * plume() / mouth(), 3);
        return starts < slows
                ? new double[] {starts, slows, plume() == 0 ? Double.POSITIVE_INFINITY : turnoverMetres()}
                : new double[] {0, 0, 0};
    }

    @Override
    public OptionalDouble findSeconds(double metres) {
        if (metres > deepestMetres() || (plume() == 0 && jet() == 0)) {
            return OptionalDouble.empty();
        }
        double[] turns = turns();
        double seconds = sinking(Math.min(metres, turns[0]));
        if (metres > turns[0] && turns[1] > 0) {
            seconds += (Math.min(metres, turns[1]) - turns[0]) / mouth();
        }
        if (metres > turns[1] && turns[2] > 0) {
            double to = Math.min(metres, turns[2]);
            seconds += (to * to - turns[1] * turns[1]) / (2 * frontShare * jet());
        }
        if (metres > turns[2]) {
            seconds += sinking(metres) - sinking(turns[2]);
        }
        return OptionalDouble.of(seconds);
    }

    /// Seconds from a small source by weight alone.
    private double sinking(double metres) {
        return metres == 0 ? 0 : 0.75 * metres * Math.cbrt(metres) / (frontShare * plume());
    }

    private double sunkMetres(double seconds) {
        return Math.pow(seconds * frontShare * plume() / 0.75, 0.75);
    }

    @Override
    public double frontMetres(double seconds) {
        double[] turns = turns();
        double first = sinking(turns[0]);
        double second = first + (turns[1] > 0 ? (turns[1] - turns[0]) / mouth() : 0);
        if (seconds < first) {
            return sunkMetres(seconds);
        }
        if (seconds < second) {
            return Math.min(turns[0] + (seconds - first) * mouth(), deepestMetres());
        }
        double pushed = Math.sqrt(turns[1] * turns[1] + 2 * frontShare * jet() * (seconds - second));
        if (turns[2] > 0 && pushed < turns[2]) {
            return Math.min(pushed, deepestMetres());
        }
        double third =
                turns[2] > 0 ? second + (turns[2] * turns[2] - turns[1] * turns[1]) / (2 * frontShare * jet()) : second;
        return sunkMetres(seconds - third + sinking(turns[2]));
    }

    @Override
    public double radiusMetres(double metres) {
        return boreMetres / 2 + SPREAD * entrainment * metres;
    }

    @Override
    public double dilution(double metres) {
        double radius = SPREAD * entrainment * metres;
        double speed = Math.max(plumeMetresPerSecond(metres), jet() / metres);
        return Math.max(1, Math.PI * radius * radius * speed / volumeFluxMetres3PerSecond);
    }
}
