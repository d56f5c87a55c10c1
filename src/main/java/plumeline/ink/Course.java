package plumeline.ink;

import java.util.OptionalDouble;

/// How a front goes, by one of the laws. Ways count straight down from the initial front.
public sealed interface Course permits Puff, RowPuff, Stream, LaminarThread, Slanted {
    /// Finds when the front has come so far down.
    ///
    /// @param metres way from the initial front, m, ≥ 0
    /// @return s; empty where it never comes so far
    OptionalDouble findSeconds(double metres);

    /// Gives how far down the front has come.
    ///
    /// @param seconds time from the release, s, ≥ 0
    /// @return way from the initial front, m; of light ink its deepest once it has turned
    double frontMetres(double seconds);

    /// Gives the front's half-width where it has come so far down.
    ///
    /// @param metres way from the initial front, m, ≥ 0
    /// @return m
    double radiusMetres(double metres);

    /// Gives how many times its own volume the ink then fills.
    ///
    /// @param metres way from the initial front, m, ≥ 0; > 0 for a stream
    /// @return dimensionless, ≥ 1
    double dilution(double metres);

    /// Gives the farthest that the front goes down.
    ///
    /// @return way from the initial front, m; endless (infinite) for ink that doesn't turn
    double deepestMetres();

    /// Gives how far the front has gone aside where it has come so far down.
    ///
    /// @param metres way from the initial front, m, ≥ 0
    /// @return m, + to where the nozzle points; 0 for one that points straight down
    default double asideMetres(double metres) {
        return 0;
    }
}
