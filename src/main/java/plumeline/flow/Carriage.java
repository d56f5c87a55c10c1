package plumeline.flow;

import java.util.Arrays;

/// Carries the dye with the water, none lost, none below nought.
///
/// One axis after the other: what goes through a face is the upwind cell's share, sloped by the harmonic mean of the
/// differences on its two sides and taken at the middle of what flows by. Each cell's volume of water is carried along,
/// as it is not kept from one axis to the next, only by all together; so an even share stays even. No more than a
/// cell's water leaves it in one go, and so the share can't fall below nought nor rise above its neighbours'.
///
/// **Source:** B. van Leer, J. Comput. Phys. 14 (1974) (the slope); the volume's carriage as in D. Durran, "Numerical
/// Methods for Fluid Dynamics", section 5.7 (both from memory); own derivation in `docs/derivations/flow.md`.
final class Carriage {
    /// The greatest part of a cell's water that goes out at once.
    private static final double MOST_OUT = 0.9;

    /// Taken from each cell at each step, so that what thins out ends and doesn't slow down the arithmetic.
    private static final float DUST = 1e-15f;

    private static final float TINY = 1e-30f;

    private final Tank tank;
    private final Grid grid;
    private final Rim rim;
    private final Workers workers;
    private final float[] between;
    private float[] volume;
    private float[] nextVolume;

    Carriage(Tank tank, Rim rim, Workers workers) {
        this.tank = tank;
        this.grid = tank.grid();
        this.rim = rim;
        this.workers = workers;
        this.between = new float[grid.length()];
        this.volume = new float[grid.length()];
        this.nextVolume = new float[grid.length()];
        Arrays.fill(volume, 1);
        Arrays.fill(nextVolume, 1);
    }

    /// Carries the dye for one step.
    ///
    /// @param fields velocities and dye
    /// @param added dye that nozzles add, as a share per second
    /// @param seconds the step
    /// @param order which way round the axes are taken: they turn about from step to step
    void carry(Fields fields, float[] added, double seconds, long order) {
        double out = Extremes.outPerSecond(fields, grid, workers) * seconds;
        int turns = Math.max(1, (int) Math.ceil(out / MOST_OUT));
        for (int turn = 0; turn < turns; turn++) {
            carryOnce(fields, added, seconds / turns, order + turn);
        }
    }

    private void carryOnce(Fields fields, float[] added, double seconds, long order) {
        int[] axes = grid.axes();
        float[] from = fields.dye;
        float[] to = between;
        for (int n = 0; n < axes.length; n++) {
            int axis = axes[order % 2 == 0 ? n : axes.length - 1 - n];
            rim.fillDye(from, axis);
            sweep(from, to, fields.velocity[axis], axis, seconds);
            float[] swapped = from;
            from = to;
            to = swapped;
            float[] swappedVolume = volume;
            volume = nextVolume;
            nextVolume = swappedVolume;
        }
        settle(from, fields.dye, added, (float) seconds);
    }

    private void sweep(float[] from, float[] to, float[] velocity, int axis, double seconds) {
        float per = (float) (seconds / grid.edgeMetres(axis));
        int step = grid.stride(axis);
        float[] before = volume;
        float[] after = nextVolume;
        workers.each(grid.nz(), k -> {
            for (int j = 0; j < grid.ny(); j++) {
                int first = grid.index(0, j, k);
                sweepRow(from, to, before, after, velocity, first, first + grid.nx(), step, per);
            }
        });
    }

    private static void sweepRow(
            float[] from,
            float[] to,
            float[] before,
            float[] after,
            float[] velocity,
            int first,
            int end,
            int step,
            float per) {
        for (int p = first; p < end; p++) {
            float low = per * velocity[p];
            float high = per * velocity[p + step];
            float in = through(from, before, p, step, low);
            float out = through(from, before, p + step, step, high);
            float left = before[p] + low - high;
            after[p] = left;
            to[p] = (from[p] * before[p] + in - out) / left;
        }
    }

    /// The dye that goes through the lower face of cell p.
    ///
    /// @param crossing how much water does, in cells
    private static float through(float[] share, float[] volume, int p, int step, float crossing) {
        float a = share[p - 2 * step];
        float b = share[p - step];
        float c = share[p];
        float d = share[p + step];
        float up = Math.max(crossing, 0);
        float down = Math.min(crossing, 0);
        float here = c - b;
        float below = b + (0.5f - 0.5f * up / volume[p - step]) * slope(b - a, here);
        float above = c - (0.5f + 0.5f * down / volume[p]) * slope(here, d - c);
        return up * below + down * above;
    }

    /// The harmonic mean of two differences; nought where they differ in sign.
    private static float slope(float one, float other) {
        float size = Math.abs(one);
        float otherSize = Math.abs(other);
        return (one * otherSize + size * other) / (size + otherSize + TINY);
    }

    /// Turns shares of what volume is left into shares of whole cells, adds what nozzles bring, and clears away dust.
    private void settle(float[] from, float[] dye, float[] added, float seconds) {
        float[] left = volume;
        float[] water = tank.water();
        workers.each(grid.nz(), k -> {
            for (int j = 0; j < grid.ny(); j++) {
                int first = grid.index(0, j, k);
                for (int p = first; p < first + grid.nx(); p++) {
                    float all = from[p] * left[p] + seconds * added[p];
                    dye[p] = water[p] * Math.max(all - DUST, 0);
                    left[p] = 1;
                }
            }
        });
    }
}
