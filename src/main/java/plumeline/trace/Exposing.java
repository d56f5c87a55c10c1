package plumeline.trace;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import plumeline.trace.sums.Draws;

/// Sums rays into a plate.
public final class Exposing {
    /// So many rays are followed before the light where they went is worked out.
    private static final int SLOTS = 512;

    /// So many are parted by instants: those of an instant are followed one after another.
    private static final int PARTED_SLOTS = 8192;

    private Exposing() {}

    /// A part of a plate, pixels from its left and its top.
    ///
    /// @param left its first column
    /// @param top its first row
    /// @param width columns
    /// @param height rows
    public record Tile(int left, int top, int width, int height) {
        private int column(int pixel) {
            return left + pixel % width;
        }

        private int row(int pixel) {
            return top + pixel / width;
        }
    }

    /// Which rays of each pixel are followed. Each is drawn by the seed, the pixel and its number alone, and so is the
    /// instant that it sees: it doesn't matter in how many goes a plate is exposed.
    ///
    /// @param from the first
    /// @param count how many, > 0
    /// @param all how many there will be in all: their places in pixel, pupil and lights are spread over so many
    /// @param seed draws them
    public record Rays(int from, int count, int all, long seed) {}

    /// Exposes a part of a plate, all rows at once.
    ///
    /// @param looks the looks over the time in which it is exposed, in order, at least one
    /// @param plate takes the light
    /// @param tile which pixels
    /// @param rays which rays of each
    public static void expose(List<Look> looks, Plate plate, Tile tile, Rays rays) {
        expose(Instants.of(looks), plate, tile, rays);
    }

    /// Exposes a part of a plate.
    ///
    /// @param instants the looks over the time in which it is exposed
    /// @param plate takes the light
    /// @param tile which pixels
    /// @param rays which rays of each
    public static void expose(Instants instants, Plate plate, Tile tile, Rays rays) {
        Crew crew = new Crew(instants, plate, rays);
        int high = Math.max(1, Integer.highestOneBit((int) Math.sqrt(crew.pixels)));
        int wide = crew.pixels / high;
        int right = tile.left() + tile.width();
        int foot = tile.top() + tile.height();
        for (int top = tile.top(); top < foot; top += high) {
            for (int left = tile.left(); left < right; left += wide) {
                crew.expose(new Tile(left, top, Math.min(wide, right - left), Math.min(high, foot - top)));
            }
        }
    }

    /// Follows the rays of a block of a tile's pixels at a time. For one thread.
    private static final class Crew {
        private final Instants instants;
        private final Plate plate;
        private final Rays rays;
        private final int pixels;
        private final double[] light;
        private final int[] ends;
        private final int[] seen;
        private final int[] order;
        private final List<Optional<Walker>> walkers;
        private final Draws draws = new Draws();

        Crew(Instants instants, Plate plate, Rays rays) {
            this.instants = instants;
            this.plate = plate;
            this.rays = rays;
            int most = instants.isOne() ? SLOTS : PARTED_SLOTS;
            pixels = Math.max(1, most / rays.count());
            light = new double[3 * pixels * rays.count()];
            seen = new int[pixels * rays.count()];
            order = new int[seen.length];
            int looks = instants.looks().size();
            ends = new int[looks + 1];
            walkers = new ArrayList<>(Collections.nCopies(looks, Optional.empty()));
        }

        void expose(Tile block) {
            int slots = block.width() * block.height() * rays.count();
            Arrays.fill(light, 0, 3 * slots, 0);
            part(block, slots);
            Optional<Walker> before = Optional.empty();
            for (int look = 0; look < walkers.size(); look++) {
                int first = look == 0 ? 0 : ends[look - 1];
                if (ends[look] > first) {
                    Walker walker = walker(look, before);
                    if (before.isPresent() && !walker.isWith(before.get())) {
                        before.get().settle(light);
                    }
                    before = Optional.of(walker);
                    walker.begin(block, plate);
                    follow(walker, block, first, ends[look]);
                }
            }
            before.ifPresent(walker -> walker.settle(light));
            for (int slot = 0; slot < slots; slot++) {
                int pixel = slot / rays.count();
                plate.add(block.column(pixel), block.row(pixel), light, 3 * slot);
            }
        }

        /// Orders rays by the looks that they see: those of look i end at `ends[i]`.
        private void part(Tile block, int slots) {
            Arrays.fill(ends, 0);
            for (int slot = 0; slot < slots; slot++) {
                int pixel = slot / rays.count();
                int ray = rays.from() + slot % rays.count();
                seen[slot] = instants.index(rays.seed(), block.column(pixel), block.row(pixel), plate, ray);
                ends[seen[slot] + 1]++;
            }
            for (int look = 1; look < ends.length; look++) {
                ends[look] += ends[look - 1];
            }
            for (int slot = 0; slot < slots; slot++) {
                order[ends[seen[slot]]++] = slot;
            }
        }

        /// Makes one for a look; those of one world gather their light together.
        private Walker walker(int look, Optional<Walker> before) {
            Optional<Walker> made = walkers.get(look);
            if (made.isPresent()) {
                return made.get();
            }
            Look its = instants.looks().get(look);
            Walker walker = its.tracer().walker(its.eye(), before);
            walkers.set(look, Optional.of(walker));
            return walker;
        }

        private void follow(Walker walker, Tile block, int first, int end) {
            for (int i = first; i < end; i++) {
                int slot = order[i];
                int pixel = slot / rays.count();
                int row = block.row(pixel);
                int column = block.column(pixel);
                draws.begin(
                        rays.seed(),
                        (long) row * plate.width() + column,
                        rays.from() + slot % rays.count(),
                        rays.all());
                walker.expose(column, row, plate, draws, slot, light);
                if (walker.waiting() >= SLOTS) {
                    walker.settle(light);
                }
            }
        }
    }
}
