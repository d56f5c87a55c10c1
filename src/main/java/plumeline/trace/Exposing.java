package plumeline.trace;

import java.util.List;

/// Sums rays into a plate.
public final class Exposing {
    private Exposing() {}

    /// A part of a plate, pixels from its left and its top.
    ///
    /// @param left its first column
    /// @param top its first row
    /// @param width columns
    /// @param height rows
    public record Tile(int left, int top, int width, int height) {}

    /// Which rays of each pixel are followed: ray i of all goes at instant `i mod instants`, and is drawn by the seed,
    /// the pixel and i alone, so that it doesn't matter in how many goes a plate is exposed.
    ///
    /// @param from the first
    /// @param count how many, > 0
    /// @param all how many there will be in all: their places in pixel, pupil and lights are spread over so many
    /// @param seed draws them
    public record Rays(int from, int count, int all, long seed) {}

    /// Exposes a part of a plate.
    ///
    /// @param instants the looks over the time the shutter is open, in order, at least one
    /// @param plate takes the light
    /// @param tile which pixels
    /// @param rays which rays of each
    public static void expose(List<Look> instants, Plate plate, Tile tile, Rays rays) {
        Walker[] walkers =
                instants.stream().map(look -> look.tracer().walker(look.eye())).toArray(Walker[]::new);
        Draws draws = new Draws();
        for (int row = tile.top(); row < tile.top() + tile.height(); row++) {
            for (int column = tile.left(); column < tile.left() + tile.width(); column++) {
                long pixel = (long) row * plate.width() + column;
                for (int i = rays.from(); i < rays.from() + rays.count(); i++) {
                    draws.begin(rays.seed(), pixel, i, rays.all());
                    walkers[i % walkers.length].expose(column, row, plate, draws);
                }
            }
        }
    }
}
