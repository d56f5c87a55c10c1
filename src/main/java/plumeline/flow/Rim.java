package plumeline.flow;

/// Fills the rim of the fields from the walls, so that inside the same formula serves everywhere.
///
/// Along a wall that holds the water, the rim mirrors the speed about the wall's own; along one that lets it slide, it
/// repeats it. Across a wall the speed is nought at the wall and turned about beyond. Dye is repeated behind a sealed
/// wall and mirrored about what a wall holds.
final class Rim {
    private final Grid grid;
    private final Walls walls;
    private final Workers workers;

    Rim(Tank tank, Workers workers) {
        this.grid = tank.grid();
        this.walls = tank.walls();
        this.workers = workers;
    }

    void fillVelocity(float[][] velocity) {
        workers.each(grid.nz(), k -> {
            for (int component = 0; component < 3; component++) {
                for (int j = 0; j < grid.ny(); j++) {
                    int row = grid.index(0, j, k);
                    fillVelocity(velocity[component], component, 0, row, 1, 1);
                }
                if (grid.ny() > 1) {
                    fillVelocity(velocity[component], component, 1, grid.index(0, 0, k), grid.nx(), 1);
                }
            }
        });
        for (int component = 0; component < 3; component++) {
            for (int j = 0; j < grid.ny(); j++) {
                fillVelocity(velocity[component], component, 2, grid.index(0, j, 0), grid.nx(), 1);
            }
        }
    }

    /// Fills both ends of an axis for `count` lines of cells that begin at `first` and lie `apart`.
    private void fillVelocity(float[] field, int component, int axis, int first, int count, int apart) {
        int step = grid.stride(axis);
        int cells = grid.cells(axis);
        if (component == axis) {
            for (int n = 0, p = first; n < count; n++, p += apart) {
                int end = p + cells * step;
                field[p] = 0;
                field[p - step] = -field[p + step];
                field[p - 2 * step] = -field[p + 2 * step];
                field[end] = 0;
                field[end + step] = -field[end - step];
            }
            return;
        }
        float lowSign = sign(walls.low(axis));
        float highSign = sign(walls.high(axis));
        float lowTwice = (float) (2 * walls.low(axis).speed(component));
        float highTwice = (float) (2 * walls.high(axis).speed(component));
        for (int n = 0, p = first; n < count; n++, p += apart) {
            int last = p + (cells - 1) * step;
            field[p - step] = lowTwice + lowSign * field[p];
            field[p - 2 * step] = lowTwice + lowSign * field[p + step];
            field[last + step] = highTwice + highSign * field[last];
            field[last + 2 * step] = highTwice + highSign * field[last - step];
        }
    }

    private static float sign(Wall wall) {
        return wall.grip() instanceof Wall.Grip.Slip ? 1 : -1;
    }

    /// Fills the rim of the dye along one axis.
    void fillDye(float[] dye, int axis) {
        if (axis == 2) {
            for (int j = 0; j < grid.ny(); j++) {
                fillDye(dye, 2, grid.index(0, j, 0), grid.nx());
            }
            return;
        }
        workers.each(grid.nz(), k -> fillDye(dye, axis, k));
    }

    /// Fills the rim of the dye in one layer along x or y.
    void fillDye(float[] dye, int axis, int k) {
        if (axis == 1) {
            fillDye(dye, 1, grid.index(0, 0, k), grid.nx());
            return;
        }
        for (int j = 0; j < grid.ny(); j++) {
            fillDye(dye, 0, grid.index(0, j, k), 1);
        }
    }

    private void fillDye(float[] dye, int axis, int first, int count) {
        int step = grid.stride(axis);
        Wall.Keeps low = walls.low(axis).keeps();
        Wall.Keeps high = walls.high(axis).keeps();
        for (int p = first; p < first + count; p++) {
            int last = p + (grid.cells(axis) - 1) * step;
            dye[p - step] = beyond(low, dye[p]);
            dye[last + step] = beyond(high, dye[last]);
        }
    }

    private static float beyond(Wall.Keeps keeps, float share) {
        return switch (keeps) {
            case Wall.Keeps.Sealed() -> share;
            case Wall.Keeps.Held(double held) -> (float) (2 * held) - share;
        };
    }
}
