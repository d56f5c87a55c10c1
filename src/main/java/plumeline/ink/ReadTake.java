package plumeline.ink;

import java.util.List;
import plumeline.ranges.Ranges;

/// A take as it was read: what was let go, when its front was how deep, how wide it was there. Deviations are standard
/// deviations of one reading; depths count from the still surface, times from the first ink that leaves the nozzle.
///
/// @param descent what was let go, and from where
/// @param startDeviationSeconds how far off the instant is that all its times count from, s, ≥ 0
/// @param fronts readings of the front, deeper than the start
/// @param widths readings of its half-width, deeper than the start
public record ReadTake(
        Descent descent, double startDeviationSeconds, List<FrontReading> fronts, List<WidthReading> widths) {
    /// What a time is read to where nobody says, frames, standard deviation: half a frame to a frame (common practice).
    public static final double USUAL_FRAMES = 0.75;

    /// What a time is read to where no rate is told, s, standard deviation: as off 50 frames a second. Faster footage
    /// doesn't tell a billow's edge any better (our guess).
    public static final double USUAL_SECONDS = USUAL_FRAMES / 50;

    /// What a depth, or an edge, is read to where nobody says, m, standard deviation: 2 to 5 mm by a ruler in the
    /// picture (common practice).
    public static final double USUAL_METRES = 0.0035;

    /// Checks the ranges, copies the lists.
    ///
    /// @throws IllegalArgumentException outside them
    public ReadTake {
        Ranges.checkNotNegative(startDeviationSeconds, "start's deviation");
        fronts = List.copyOf(fronts);
        widths = List.copyOf(widths);
        fronts.forEach(each -> Ranges.checkPositive(each.depthMetres() - descent.startMetres(), "way"));
        widths.forEach(each -> Ranges.checkPositive(each.depthMetres() - descent.startMetres(), "way"));
    }

    /// The front at an instant.
    ///
    /// @param seconds time from the first ink, s, > 0
    /// @param deviationSeconds its deviation, s, ≥ 0
    /// @param depthMetres depth below the surface, m, > 0
    /// @param deviationMetres its deviation, m, ≥ 0
    public record FrontReading(double seconds, double deviationSeconds, double depthMetres, double deviationMetres) {
        /// Checks the ranges.
        ///
        /// @throws IllegalArgumentException outside them
        public FrontReading {
            Ranges.checkPositive(seconds, "time");
            Ranges.checkNotNegative(deviationSeconds, "time's deviation");
            Ranges.checkPositive(depthMetres, "depth");
            Ranges.checkNotNegative(deviationMetres, "depth's deviation");
        }
    }

    /// The width of a front as it was at a depth.
    ///
    /// @param depthMetres depth of the front below the surface, m, > 0
    /// @param halfWidthMetres half of what is seen from edge to edge, m, > 0
    /// @param deviationMetres the half-width's deviation, m, ≥ 0
    public record WidthReading(double depthMetres, double halfWidthMetres, double deviationMetres) {
        /// Checks the ranges.
        ///
        /// @throws IllegalArgumentException outside them
        public WidthReading {
            Ranges.checkPositive(depthMetres, "depth");
            Ranges.checkPositive(halfWidthMetres, "half-width");
            Ranges.checkNotNegative(deviationMetres, "half-width's deviation");
        }
    }
}
