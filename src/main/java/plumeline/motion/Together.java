package plumeline.motion;

import java.util.List;

/// Several axes on one clock.
///
/// @param moves each axis with its run, times on the one clock
public record Together(List<Move> moves) {
    /// One axis.
    ///
    /// @param axis what moves
    /// @param startSeconds when its run's time 0 is, real seconds
    /// @param run its run
    public record Move(Axis axis, double startSeconds, Run run) {
        /// Gives where it is.
        ///
        /// @param seconds real seconds on the one clock
        /// @return metres or radians
        public double at(double seconds) {
            return run.at(seconds - startSeconds);
        }
    }

    /// An axis before its time is known.
    ///
    /// @param distance how far, signed, metres or radians
    /// @param profile how its speed runs
    /// @param limits the device's
    public record Way(double distance, Profile profile, Limits limits) {
        /// Gives the shortest time for it alone.
        ///
        /// @return real seconds
        public double leastSeconds() {
            return Travel.leastSeconds(Math.abs(distance), profile, limits);
        }
    }

    /// Copies the list and checks it.
    ///
    /// @throws IllegalArgumentException without a move
    public Together {
        moves = List.copyOf(moves);
        if (moves.isEmpty()) {
            throw new IllegalArgumentException("no axis moves");
        }
    }

    /// Gives the shortest time in which several axes get to their ends together: that of the slowest.
    ///
    /// @param ways each axis's
    /// @return real seconds; 0 for none
    public static double leastSeconds(List<Way> ways) {
        return ways.stream().mapToDouble(Way::leastSeconds).max().orElse(0);
    }

    /// Gives when the first axis begins.
    ///
    /// @return real seconds on the one clock
    public double firstSeconds() {
        return moves.stream()
                .mapToDouble(move -> move.startSeconds() + move.run().firstSeconds())
                .min()
                .orElseThrow();
    }

    /// Gives when the last axis is over.
    ///
    /// @return real seconds on the one clock
    public double lastSeconds() {
        return moves.stream()
                .mapToDouble(move -> move.startSeconds() + move.run().lastSeconds())
                .max()
                .orElseThrow();
    }

    /// Lists where every axis is.
    ///
    /// @param seconds real seconds on the one clock
    /// @return metres or radians, in the moves' order
    public List<Double> listAt(double seconds) {
        return moves.stream().map(move -> move.at(seconds)).toList();
    }
}
