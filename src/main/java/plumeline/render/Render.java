package plumeline.render;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import plumeline.jobs.Job;
import plumeline.jobs.Jobs;
import plumeline.jobs.Progress;
import plumeline.jobs.Result;
import plumeline.jobs.Stop;
import plumeline.stage.Frame;
import plumeline.trace.Exposing;
import plumeline.trace.Instants;
import plumeline.trace.Look;
import plumeline.trace.Plate;

/// Exposes pictures of shots, by several threads; the same seed gives the same picture by any number of them.
public final class Render {
    /// What one task draws, pixels each way.
    private static final int TILE = 32;

    /// Likewise where there are many instants: each is made ready anew for each task.
    private static final int MOVING_TILE = 64;

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
        Instants instants = instants(set, realSeconds, openSeconds, quality.samples(), window);
        var rays = new Exposing.Rays(0, quality.samples(), quality.samples(), quality.seed());
        return expose(instants, plate, rays, threads, progress, stop);
    }

    /// Gives how a shot looks over an exposure: a single ray sees the instant at which the shutter opens.
    ///
    /// @param set the shot
    /// @param realSeconds when the shutter opens, real seconds after GO
    /// @param openSeconds how long it is open; 0 freezes all
    /// @param samples rays a pixel in all, > 0
    /// @param window what of the camera's picture is seen
    /// @return its instants, seen by the window's plate
    public static Instants instants(ShotSet set, double realSeconds, double openSeconds, int samples, Window window) {
        boolean isStill = samples == 1 || openSeconds == 0 || !set.isMoving();
        if (isStill) {
            Look look = set.at(realSeconds);
            return Instants.of(new Look(look.tracer(), window.of(look.eye())));
        }
        Shutter shutter = Shutter.of(openSeconds, set.readoutSeconds(), set.mostInstants());
        List<Look> looks = set.over(realSeconds, shutter.eachSeconds(), shutter.instants(), samples).stream()
                .map(look -> new Look(look.tracer(), window.of(look.eye())))
                .toList();
        return looks.stream().distinct().count() == 1
                ? Instants.of(looks.getFirst())
                : new Instants(
                        looks,
                        shutter.open(),
                        window.topShare() * shutter.laterAtFoot(),
                        window.bottomShare() * shutter.laterAtFoot());
    }

    /// Exposes some rays of each pixel more.
    ///
    /// @param instants the looks over the exposure
    /// @param plate takes the light
    /// @param rays which rays of each pixel
    /// @param threads how many threads work
    /// @param progress who hears how far it is
    /// @param stop what ends it before: some pixels then have them and others haven't
    /// @return the plate
    /// @throws IOException never of itself
    public static Result<Plate> expose(
            Instants instants, Plate plate, Exposing.Rays rays, Jobs.Threads threads, Progress progress, Stop stop)
            throws IOException {
        List<Job<Exposing.Tile>> jobs = new ArrayList<>();
        for (Exposing.Tile tile : tiles(plate, instants.isOne() ? TILE : MOVING_TILE)) {
            jobs.add(_ -> {
                Exposing.expose(instants, plate, tile, rays);
                return tile;
            });
        }
        return switch (Jobs.run(jobs, threads, progress, stop)) {
            case Result.Whole<Exposing.Tile> _ -> new Result.Whole<>(List.of(plate));
            case Result.Stopped<Exposing.Tile>() -> new Result.Stopped<>();
        };
    }

    private static List<Exposing.Tile> tiles(Plate plate, int size) {
        List<Exposing.Tile> tiles = new ArrayList<>();
        for (int top = 0; top < plate.height(); top += size) {
            for (int left = 0; left < plate.width(); left += size) {
                tiles.add(new Exposing.Tile(
                        left, top, Math.min(size, plate.width() - left), Math.min(size, plate.height() - top)));
            }
        }
        return tiles;
    }
}
