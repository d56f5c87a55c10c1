package plumeline.flow;

import java.util.Arrays;

/// Spreads the dye by diffusion, one plain step; shut faces let nothing through, held walls do.
final class Spreading {
    private final Tank tank;
    private final Grid grid;
    private final Rim rim;
    private final Workers workers;
    private final double diffusivity;
    private final float[] change;

    Spreading(Tank tank, Liquid liquid, Rim rim, Workers workers) {
        this.tank = tank;
        this.grid = tank.grid();
        this.rim = rim;
        this.workers = workers;
        this.diffusivity = liquid.diffusivityMetres2PerSecond();
        this.change = new float[diffusivity > 0 ? grid.length() : 0];
    }

    void spread(float[] dye, double seconds) {
        if (diffusivity == 0) {
            return;
        }
        for (int axis : grid.axes()) {
            rim.fillDye(dye, axis);
        }
        workers.each(grid.nz(), k -> {
            for (int j = 0; j < grid.ny(); j++) {
                int first = grid.index(0, j, k);
                Arrays.fill(change, first, first + grid.nx(), 0);
                for (int axis : grid.axes()) {
                    double edge = grid.edgeMetres(axis);
                    addRow(dye, first, first + grid.nx(), grid.stride(axis), (float)
                            (diffusivity * seconds / (edge * edge)));
                }
            }
        });
        workers.each(grid.nz(), k -> {
            for (int j = 0; j < grid.ny(); j++) {
                int first = grid.index(0, j, k);
                for (int p = first; p < first + grid.nx(); p++) {
                    dye[p] += change[p];
                }
            }
        });
    }

    private void addRow(float[] dye, int first, int end, int step, float share) {
        float[] water = tank.water();
        for (int p = first; p < end; p++) {
            float low = water[p - step] * (dye[p - step] - dye[p]);
            float high = water[p + step] * (dye[p + step] - dye[p]);
            change[p] += share * water[p] * (low + high);
        }
    }
}
