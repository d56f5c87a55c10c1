package plumeline.flow;

import java.util.Collection;

/// The box of cells outside of which there is no dye. It only grows: a cell outside it has never held any, so that
/// whatever is kept of it besides the dye is as it was at the beginning.
final class DyeBox {
    private final Grid grid;
    private final int[] low = {Integer.MAX_VALUE, Integer.MAX_VALUE, Integer.MAX_VALUE};
    private final int[] high = {-1, -1, -1};

    DyeBox(Grid grid) {
        this.grid = grid;
    }

    /// Makes it the whole tank.
    void includeAll() {
        include(0, 0, 0);
        include(grid.nx() - 1, grid.ny() - 1, grid.nz() - 1);
    }

    /// Adds cells by their places in a field's array.
    void includeAll(Collection<Integer> places) {
        for (int place : places) {
            int k = place / grid.strideZ();
            int j = place % grid.strideZ() / grid.strideY();
            include(place % grid.strideY() - Grid.RIM, j - Grid.RIM, k - Grid.RIM);
        }
    }

    /// Adds what a layer's rows hold.
    void includeLayer(float[] dye, int fromJ, int toJ, int k) {
        for (int j = fromJ; j <= toJ; j++) {
            int first = grid.index(0, j, k);
            int left = 0;
            while (left < grid.nx() && dye[first + left] == 0) {
                left++;
            }
            if (left < grid.nx()) {
                int right = grid.nx() - 1;
                while (dye[first + right] == 0) {
                    right--;
                }
                include(left, j, k);
                include(right, j, k);
            }
        }
    }

    private void include(int i, int j, int k) {
        int[] cell = {i, j, k};
        for (int axis = 0; axis < 3; axis++) {
            low[axis] = Math.min(low[axis], cell[axis]);
            high[axis] = Math.max(high[axis], cell[axis]);
        }
    }

    boolean isEmpty() {
        return high[0] < 0;
    }

    /// The first cell along an axis that dye may come to within one step.
    int from(int axis) {
        return Math.max(0, low[axis] - 1);
    }

    /// The last one.
    int to(int axis) {
        return Math.min(grid.cells(axis) - 1, high[axis] + 1);
    }
}
