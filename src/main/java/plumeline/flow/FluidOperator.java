package plumeline.flow;

import java.util.Arrays;

/// −∇² over open faces, and what conjugate gradients need beside it: sums over the cells of water, layer by layer.
final class FluidOperator {
    private final Tank tank;
    private final Grid grid;
    private final Workers workers;

    FluidOperator(Tank tank, Workers workers) {
        this.tank = tank;
        this.grid = tank.grid();
        this.workers = workers;
    }

    /// A loop over the cells of a row, from one index to before another.
    @FunctionalInterface
    private interface Row {
        void over(int first, int end);
    }

    @FunctionalInterface
    private interface RowValue {
        double over(int first, int end);
    }

    private void each(Row row) {
        workers.each(grid.nz(), k -> {
            for (int j = 0; j < grid.ny(); j++) {
                int first = grid.index(0, j, k);
                row.over(first, first + grid.nx());
            }
        });
    }

    private double sum(RowValue row) {
        return workers.sum(grid.nz(), k -> {
            double sum = 0;
            for (int j = 0; j < grid.ny(); j++) {
                int first = grid.index(0, j, k);
                sum += row.over(first, first + grid.nx());
            }
            return sum;
        });
    }

    /// −∇² of a field, 0 in bodies.
    void apply(float[] field, float[] to) {
        boolean deep = grid.ny() > 1;
        each((first, end) -> {
            Arrays.fill(to, first, end, 0);
            applyAlong(field, tank.open(0), 1, squared(0), to, first, end);
            if (deep) {
                applyAlong(field, tank.open(1), grid.strideY(), squared(1), to, first, end);
            }
            applyAlong(field, tank.open(2), grid.strideZ(), squared(2), to, first, end);
        });
    }

    private float squared(int axis) {
        return (float) (1 / (grid.edgeMetres(axis) * grid.edgeMetres(axis)));
    }

    private static void applyAlong(float[] field, float[] open, int step, float per, float[] to, int first, int end) {
        for (int p = first; p < end; p++) {
            float here = field[p];
            to[p] += per * (open[p] * (here - field[p - step]) + open[p + step] * (here - field[p + step]));
        }
    }

    /// ∇·u − s in the cells of water.
    void fillDivergence(float[][] velocity, float[] source, float[] to) {
        float perX = (float) (1 / grid.dxMetres());
        float perY = grid.ny() > 1 ? (float) (1 / grid.dyMetres()) : 0;
        float perZ = (float) (1 / grid.dzMetres());
        int y = grid.strideY();
        int z = grid.strideZ();
        float[] water = tank.water();
        float[] u = velocity[0];
        float[] v = velocity[1];
        float[] w = velocity[2];
        each((first, end) -> {
            for (int p = first; p < end; p++) {
                float out = perX * (u[p + 1] - u[p]) + perY * (v[p + y] - v[p]) + perZ * (w[p + z] - w[p]);
                to[p] = water[p] * (out - source[p]);
            }
        });
    }

    /// Sets a field to nought in bodies and gives its product with another.
    double maskAndDot(float[] field, float[] other) {
        float[] water = tank.water();
        return sum((first, end) -> {
            for (int p = first; p < end; p++) {
                field[p] *= water[p];
            }
            return rowDot(field, other, first, end);
        });
    }

    double dot(float[] one, float[] other) {
        return sum((first, end) -> rowDot(one, other, first, end));
    }

    /// Four sums run beside each other, so that none waits for the last addition.
    private static double rowDot(float[] one, float[] other, int first, int end) {
        double a = 0;
        double b = 0;
        double c = 0;
        double d = 0;
        int p = first;
        for (; p + 4 <= end; p += 4) {
            a += (double) one[p] * other[p];
            b += (double) one[p + 1] * other[p + 1];
            c += (double) one[p + 2] * other[p + 2];
            d += (double) one[p + 3] * other[p + 3];
        }
        for (; p < end; p++) {
            a += (double) one[p] * other[p];
        }
        return a + b + (c + d);
    }

    double sumOf(float[] field) {
        return sum((first, end) -> {
            double sum = 0;
            for (int p = first; p < end; p++) {
                sum += field[p];
            }
            return sum;
        });
    }

    /// The greatest size of a field.
    double greatest(float[] field) {
        return workers.greatest(grid.nz(), k -> {
            float greatest = 0;
            for (int j = 0; j < grid.ny(); j++) {
                int first = grid.index(0, j, k);
                for (int p = first; p < first + grid.nx(); p++) {
                    greatest = Math.max(greatest, Math.abs(field[p]));
                }
            }
            return greatest;
        });
    }

    /// field += factor · other.
    void add(float[] field, double factor, float[] other) {
        float by = (float) factor;
        each((first, end) -> {
            for (int p = first; p < end; p++) {
                field[p] += by * other[p];
            }
        });
    }

    /// field = other + factor · field.
    void turn(float[] field, float[] other, double factor) {
        float by = (float) factor;
        each((first, end) -> {
            for (int p = first; p < end; p++) {
                field[p] = other[p] + by * field[p];
            }
        });
    }
}
