package plumeline.trace;

import java.util.List;

/// Sums rays into a plate.
public final class Exposing {
    /// So many rays are followed before the light where they went is worked out.
    private static final int SLOTS = 512;

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
        Walker[] walkers = walkers(instants);
        int pixels = Math.max(1, SLOTS / rays.count());
        int high = Math.max(1, Integer.highestOneBit((int) Math.sqrt(pixels)));
        int wide = pixels / high;
        double[] light = new double[3 * wide * high * rays.count()];
        for (int top = tile.top(); top < tile.top() + tile.height(); top += high) {
            for (int left = tile.left(); left < tile.left() + tile.width(); left += wide) {
                Tile block = new Tile(
                        left,
                        top,
                        Math.min(wide, tile.left() + tile.width() - left),
                        Math.min(high, tile.top() + tile.height() - top));
                expose(walkers, plate, block, rays, light);
            }
        }
    }

    private static void expose(Walker[] walkers, Plate plate, Tile block, Rays rays, double[] light) {
        Draws draws = new Draws();
        for (Walker walker : walkers) {
            walker.begin(block, plate);
        }
        int slot = 0;
        for (int row = block.top(); row < block.top() + block.height(); row++) {
            for (int column = block.left(); column < block.left() + block.width(); column++) {
                for (int i = 0; i < rays.count(); i++) {
                    int ray = rays.from() + i;
                    draws.begin(rays.seed(), (long) row * plate.width() + column, ray, rays.all());
                    walkers[ray % walkers.length].expose(column, row, plate, draws, slot++, light);
                }
            }
        }
        for (Walker walker : walkers) {
            walker.settle(light);
        }
        slot = 0;
        for (int row = block.top(); row < block.top() + block.height(); row++) {
            for (int column = block.left(); column < block.left() + block.width(); column++) {
                for (int i = 0; i < rays.count(); i++) {
                    plate.add(column, row, light, 3 * slot++);
                }
            }
        }
    }

    /// Makes one for each look; for looks that are the same only one.
    private static Walker[] walkers(List<Look> instants) {
        Walker[] walkers = new Walker[instants.size()];
        for (int i = 0; i < walkers.length; i++) {
            Look look = instants.get(i);
            int same = instants.indexOf(look);
            walkers[i] = same < i ? walkers[same] : look.tracer().walker(look.eye());
        }
        return walkers;
    }
}
