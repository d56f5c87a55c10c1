package plumeline.flow;

/// The greatest speeds in the water.
final class Extremes {
    private Extremes() {}

    /// The greatest velocity along any axis, metres a second.
    static double speedMetresPerSecond(Fields fields, Grid grid, Workers workers) {
        return workers.greatest(grid.nz(), k -> {
            float greatest = 0;
            for (int axis : grid.axes()) {
                float[] velocity = fields.velocity[axis];
                for (int j = 0; j < grid.ny(); j++) {
                    int first = grid.index(0, j, k);
                    for (int p = first; p < first + grid.nx(); p++) {
                        greatest = Math.max(greatest, Math.abs(velocity[p]));
                    }
                }
            }
            return greatest;
        });
    }

    /// The greatest share of a cell's water that goes out of it in a second.
    static double outPerSecond(Fields fields, Grid grid, Workers workers) {
        float perX = (float) (1 / grid.dxMetres());
        float perY = grid.ny() > 1 ? (float) (1 / grid.dyMetres()) : 0;
        float perZ = (float) (1 / grid.dzMetres());
        int y = grid.strideY();
        int z = grid.strideZ();
        float[] u = fields.velocity[0];
        float[] v = fields.velocity[1];
        float[] w = fields.velocity[2];
        return workers.greatest(grid.nz(), k -> {
            float greatest = 0;
            for (int j = 0; j < grid.ny(); j++) {
                int first = grid.index(0, j, k);
                for (int p = first; p < first + grid.nx(); p++) {
                    float out = perX * (Math.max(u[p + 1], 0) - Math.min(u[p], 0))
                            + perY * (Math.max(v[p + y], 0) - Math.min(v[p], 0))
                            + perZ * (Math.max(w[p + z], 0) - Math.min(w[p], 0));
                    greatest = Math.max(greatest, out);
                }
            }
            return greatest;
        });
    }
}
