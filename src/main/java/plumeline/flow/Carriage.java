package plumeline.flow;

import java.util.Arrays;
import java.util.function.IntConsumer;

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

    /// Which rows hold what: first five of shares, then three of volumes, two of crossings, three of slopes, then what
    /// comes of them.
    private static final int VOLUME = 5;

    private static final int CROSSING = 8;
    private static final int SLOPE = 10;
    private static final int IN = 13;
    private static final int OUT = 14;
    private static final int VOLUME_LEFT = 15;
    private static final int SHARE_LEFT = 16;

    private final Tank tank;
    private final Grid grid;
    private final DyeBox box;
    private final Rim rim;
    private final Workers workers;
    private final float[] between;
    private float[] volume;
    private float[] nextVolume;

    /// @param tank the tank
    /// @param box where there is dye; grows with it
    /// @param rim fills rims
    /// @param workers who does the work
    Carriage(Tank tank, DyeBox box, Rim rim, Workers workers) {
        this.tank = tank;
        this.grid = tank.grid();
        this.box = box;
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
    /// @param outPerSecond the greatest share of a cell's water that goes out of it in a second
    /// @param added dye that nozzles add, as a share per second
    /// @param seconds the step
    /// @param order which way round the axes are taken: they turn about from step to step
    void carry(Fields fields, double outPerSecond, float[] added, double seconds, long order) {
        int turns = Math.max(1, (int) Math.ceil(outPerSecond * seconds / MOST_OUT));
        for (int turn = 0; turn < turns; turn++) {
            carryOnce(fields, added, seconds / turns, order + turn);
        }
    }

    /// Only where dye may come to: elsewhere it would give nought again.
    private void carryOnce(Fields fields, float[] added, double seconds, long order) {
        if (box.isEmpty()) {
            return;
        }
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
        int fromJ = box.from(1);
        int toJ = box.to(1);
        int toK = box.to(2);
        for (int k = box.from(2); k <= toK; k++) {
            box.includeLayer(fields.dye, fromJ, toJ, k);
        }
    }

    private void sweep(float[] from, float[] to, float[] velocity, int axis, double seconds) {
        float per = (float) (seconds / grid.edgeMetres(axis));
        int step = grid.stride(axis);
        float[] before = volume;
        float[] after = nextVolume;
        layers(k -> {
            var rows = new Rows(17, box.to(0) - box.from(0) + 1);
            for (int j = box.from(1); j <= box.to(1); j++) {
                int first = grid.index(box.from(0), j, k);
                for (int n = 0; n < 5; n++) {
                    rows.load(n, from, first + (n - 2) * step);
                }
                for (int n = 0; n < 3; n++) {
                    rows.load(VOLUME + n, before, first + (n - 1) * step);
                }
                rows.load(CROSSING, velocity, first);
                rows.load(CROSSING + 1, velocity, first + step);
                sweepRow(rows, per);
                rows.store(VOLUME_LEFT, after, first);
                rows.store(SHARE_LEFT, to, first);
            }
        });
    }

    private void layers(IntConsumer layer) {
        int first = box.from(2);
        workers.each(box.to(2) - first + 1, n -> layer.accept(first + n));
    }

    /// Works out a row: what comes in below, what goes out above, what is left. Neighbours work out what goes through
    /// the face between them by the same formula, so to the same bit. Short loops, which the compiler makes wide.
    private static void sweepRow(Rows rows, float per) {
        float[] below = rows.get(1);
        float[] here = rows.get(2);
        float[] above = rows.get(3);
        float[] volume = rows.get(VOLUME + 1);
        float[] low = rows.get(CROSSING);
        float[] high = rows.get(CROSSING + 1);
        float[] slopeBelow = rows.get(SLOPE);
        float[] slopeHere = rows.get(SLOPE + 1);
        float[] slopeAbove = rows.get(SLOPE + 2);
        slope(rows.get(0), below, here, slopeBelow);
        slope(below, here, above, slopeHere);
        slope(here, above, rows.get(4), slopeAbove);
        scale(low, per);
        scale(high, per);
        float[] in = rows.get(IN);
        float[] out = rows.get(OUT);
        Arrays.fill(in, 0);
        Arrays.fill(out, 0);
        addUp(low, below, rows.get(VOLUME), slopeBelow, in);
        addDown(low, here, volume, slopeHere, in);
        addUp(high, here, volume, slopeHere, out);
        addDown(high, above, rows.get(VOLUME + 2), slopeAbove, out);
        float[] volumeLeft = rows.get(VOLUME_LEFT);
        float[] shareLeft = rows.get(SHARE_LEFT);
        for (int n = 0; n < shareLeft.length; n++) {
            float left = volume[n] + low[n] - high[n];
            volumeLeft[n] = left;
            shareLeft[n] = (here[n] * volume[n] + in[n] - out[n]) / left;
        }
    }

    private static void scale(float[] row, float by) {
        for (int n = 0; n < row.length; n++) {
            row[n] *= by;
        }
    }

    /// The harmonic mean of the differences on both sides of c; nought where they differ in sign.
    private static void slope(float[] b, float[] c, float[] d, float[] to) {
        for (int n = 0; n < to.length; n++) {
            float one = c[n] - b[n];
            float other = d[n] - c[n];
            float size = Math.abs(one);
            float otherSize = Math.abs(other);
            to[n] = (one * otherSize + size * other) / (size + otherSize + TINY);
        }
    }

    /// Adds the dye that goes up through a face from the cell below it.
    private static void addUp(float[] crossing, float[] share, float[] volume, float[] slope, float[] to) {
        for (int n = 0; n < to.length; n++) {
            float up = 0.5f * (crossing[n] + Math.abs(crossing[n]));
            to[n] += up * (share[n] + (0.5f - 0.5f * up / volume[n]) * slope[n]);
        }
    }

    /// Adds the dye that goes down through a face from the cell above it, as less than nought.
    private static void addDown(float[] crossing, float[] share, float[] volume, float[] slope, float[] to) {
        for (int n = 0; n < to.length; n++) {
            float down = 0.5f * (crossing[n] - Math.abs(crossing[n]));
            to[n] += down * (share[n] - (0.5f + 0.5f * down / volume[n]) * slope[n]);
        }
    }

    /// Turns shares of what volume is left into shares of whole cells, adds what nozzles bring, and clears away dust.
    private void settle(float[] from, float[] dye, float[] added, float seconds) {
        float[] left = volume;
        float[] water = tank.water();
        layers(k -> {
            for (int j = box.from(1); j <= box.to(1); j++) {
                int end = grid.index(box.to(0), j, k);
                for (int p = grid.index(box.from(0), j, k); p <= end; p++) {
                    float all = from[p] * left[p] + seconds * added[p];
                    dye[p] = water[p] * Math.max(all - DUST, 0);
                    left[p] = 1;
                }
            }
        });
    }
}
