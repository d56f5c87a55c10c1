package plumeline.render;

import java.io.IOException;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;
import plumeline.jobs.Job;
import plumeline.jobs.Jobs;
import plumeline.jobs.Progress;
import plumeline.jobs.Result;
import plumeline.jobs.Stop;
import plumeline.stage.Frame;
import plumeline.trace.Exposing;
import plumeline.trace.Look;
import plumeline.trace.Plate;

/// Exposes pictures of shots, by several threads; the same seed gives the same picture by any number of them.
public final class Render {
    /// An exposure is cut into so many instants at most.
    private static final int MOST_INSTANTS = 64;

    /// What one task draws, pixels each way.
    private static final int TILE = 32;

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
        Plate plate = new Plate(quality.width(), quality.height());
        Window window = new Window(Frame.WHOLE, quality.width(), quality.height());
        List<Look> looks = looks(set, realSeconds, openSeconds, quality.samples(), window);
        var rays = new Exposing.Rays(0, quality.samples(), quality.samples(), quality.seed());
        return expose(looks, plate, rays, threads, progress, stop);
    }

    /// Gives how a shot looks over an exposure: a single ray sees the instant at which the shutter opens.
    ///
    /// @param set the shot
    /// @param realSeconds when the shutter opens, real seconds after GO
    /// @param openSeconds how long it is open; 0 freezes all
    /// @param samples rays a pixel in all, > 0
    /// @param window what of the camera's picture is seen
    /// @return the looks, so ordered that some of the first cover all of the exposure
    public static List<Look> looks(ShotSet set, double realSeconds, double openSeconds, int samples, Window window) {
        boolean isStill = samples == 1 || openSeconds == 0 || !set.isMoving();
        List<Look> looks = isStill
                ? List.of(set.at(realSeconds))
                : set.over(realSeconds, openSeconds, Math.min(samples, MOST_INSTANTS));
        return IntStream.range(0, looks.size())
                .boxed()
                .sorted(Comparator.comparingDouble(Render::halved))
                .map(looks::get)
                .map(look -> new Look(look.tracer(), window.of(look.eye())))
                .toList();
    }

    /// An index's binary digits behind the point, the lowest first.
    private static double halved(int index) {
        return Integer.toUnsignedLong(Integer.reverse(index)) / (double) (1L << 32);
    }

    /// Exposes some rays of each pixel more.
    ///
    /// @param looks the looks over the exposure, in order
    /// @param plate takes the light
    /// @param rays which rays of each pixel
    /// @param threads how many threads work
    /// @param progress who hears how far it is
    /// @param stop what ends it before: some pixels then have them and others haven't
    /// @return the plate
    /// @throws IOException never of itself
    public static Result<Plate> expose(
            List<Look> looks, Plate plate, Exposing.Rays rays, Jobs.Threads threads, Progress progress, Stop stop)
            throws IOException {
        List<Job<Exposing.Tile>> jobs = new ArrayList<>();
        for (Exposing.Tile tile : tiles(plate)) {
            jobs.add(_ -> {
                Exposing.expose(looks, plate, tile, rays);
                return tile;
            });
        }
        return switch (Jobs.run(jobs, threads, progress, stop)) {
            case Result.Whole<Exposing.Tile> _ -> new Result.Whole<>(List.of(plate));
            case Result.Stopped<Exposing.Tile>() -> new Result.Stopped<>();
        };
    }

    private static List<Exposing.Tile> tiles(Plate plate) {
        List<Exposing.Tile> tiles = new ArrayList<>();
        for (int top = 0; top < plate.height(); top += TILE) {
            for (int left = 0; left < plate.width(); left += TILE) {
                tiles.add(new Exposing.Tile(
                        left, top, Math.min(TILE, plate.width() - left), Math.min(TILE, plate.height() - top)));
            }
        }
        return tiles;
    }
}
