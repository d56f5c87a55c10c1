package plumeline.render;

import java.io.IOException;
import plumeline.jobs.Jobs;
import plumeline.jobs.Progress;
import plumeline.jobs.Result;
import plumeline.jobs.Stop;
import plumeline.trace.Plate;

/// Exposes pictures of shots, by several threads; the same seed gives the same picture by any number of them.
public final class Render {
    private Render() {}

    /// How a picture is exposed.
    ///
    /// @param width pixels across, > 0
    /// @param height pixels down, > 0
    /// @param samples rays a pixel, > 0
    /// @param seed draws their places
    public record Quality(int width, int height, int samples, long seed) {}

    /// Exposes one frame.
    ///
    /// @param set the shot
    /// @param realSeconds when the shutter opens, real seconds after GO
    /// @param openSeconds how long it is open; 0 freezes all
    /// @param quality how finely
    /// @param threads how many threads work
    /// @param progress who hears how far it is
    /// @param stop what ends it before
    /// @return the exposed plate
    /// @throws IOException never of itself
    public static Result<Plate> expose(
            ShotSet set,
            double realSeconds,
            double openSeconds,
            Quality quality,
            Jobs.Threads threads,
            Progress progress,
            Stop stop)
            throws IOException {
        throw new UnsupportedOperationException("to come");
    }
}
