package plumeline.plume;

import plumeline.ranges.Ranges;

/// How finely and how long a shot's ink is followed.
///
/// @param cellMetres the wanted edge of a cell, metres, 1 mm to 20 mm
/// @param seed chooses the noise of all runs
/// @param until how long
public record InkCourse(double cellMetres, long seed, Until until) {
    /// A cell where nothing else is asked: a can is thirteen of them across.
    public static final double CELL_METRES = 0.005;

    /// Ink that isn't on the floor after so many times the shot isn't waited for.
    private static final double PATIENCE = 2;

    private static final double MOST_SECONDS = 600;

    /// Checks the ranges.
    public InkCourse {
        Ranges.check(cellMetres >= 0.001 && cellMetres <= 0.02, "cellMetres", cellMetres, "0.001 to 0.02");
    }

    /// How long ink is followed.
    public sealed interface Until {
        /// To a time.
        ///
        /// @param seconds from the release's start, seconds, > 0, at most 600
        record Time(double seconds) implements Until {
            /// Checks the range.
            public Time {
                Ranges.check(seconds > 0 && seconds <= MOST_SECONDS, "seconds", seconds, "over 0, at most 600");
            }
        }

        /// To the shot's last frame; and on until the ink is on the floor and a fifth longer, so that its front is seen
        /// there, for as long again at most.
        record ShotAndFloor() implements Until {}
    }

    /// The seed of one run. Runs of neighbouring seeds share none.
    ///
    /// @param number the run, from 1
    /// @return the seed
    public long seed(int number) {
        return seed * 1_000_003L + number;
    }

    /// The frame with which a run ends, whatever the ink does.
    int lastFrame(InkShot.Timing timing) {
        double seconds = switch (until) {
            case Until.Time(double time) -> time;
            case Until.ShotAndFloor() -> PATIENCE * timing.shotSeconds();
        };
        return frame(seconds, timing);
    }

    /// The frame before which no run ends.
    int leastFrame(InkShot.Timing timing) {
        return switch (until) {
            case Until.Time _ -> lastFrame(timing);
            case Until.ShotAndFloor() -> frame(timing.shotSeconds(), timing);
        };
    }

    /// The frame with which a run is likely to end.
    int likelyFrame(InkShot.Timing timing) {
        int floor = frame(timing.floorSeconds(), timing);
        return Math.clamp(floor, leastFrame(timing), lastFrame(timing));
    }

    private static int frame(double seconds, InkShot.Timing timing) {
        return (int) Math.ceil(Math.min(seconds, MOST_SECONDS) * timing.framesPerSecond() - 1e-6);
    }
}
