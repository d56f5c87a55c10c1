package plumeline.plume;

import plumeline.flow.Grid;
import plumeline.geom.Vec;

/// How much dye a straight way through the water crosses: from cell to cell, each with its share and the exact way in
/// it.
///
/// **Source:** the walk from cell to cell is J. Amanatides and A. Woo's, "A fast voxel traversal algorithm for ray
/// tracing", Eurographics 1987, from memory.
final class Beam {
    private Beam() {}

    /// The dye along a way.
    ///
    /// @param frame the dye
    /// @param grid its cells
    /// @param from one end, from the grid's origin, metres
    /// @param to the other end
    /// @return share times metres, ≥ 0
    static double shareMetres(DyeFrame frame, Grid grid, Vec from, Vec to) {
        if (frame.box().cells() == 0) {
            return 0;
        }
        double[] start = {from.x() / grid.dxMetres(), from.y() / grid.dyMetres(), from.z() / grid.dzMetres()};
        double[] end = {to.x() / grid.dxMetres(), to.y() / grid.dyMetres(), to.z() / grid.dzMetres()};
        double metres = from.distanceMetres(to);
        int[] cell = new int[3];
        int[] step = new int[3];
        double[] atNext = new double[3];
        double[] perCell = new double[3];
        for (int axis = 0; axis < 3; axis++) {
            double way = end[axis] - start[axis];
            cell[axis] = (int) Math.floor(start[axis]);
            step[axis] = way < 0 ? -1 : 1;
            perCell[axis] = way == 0 ? Double.POSITIVE_INFINITY : 1 / Math.abs(way);
            double first = way < 0 ? start[axis] - cell[axis] : cell[axis] + 1 - start[axis];
            atNext[axis] = way == 0 ? Double.POSITIVE_INFINITY : first * perCell[axis];
        }
        double sum = 0;
        double at = 0;
        while (at < 1) {
            int axis = atNext[0] < atNext[1] ? atNext[0] < atNext[2] ? 0 : 2 : atNext[1] < atNext[2] ? 1 : 2;
            double until = Math.min(1, atNext[axis]);
            sum += frame.share(cell[0], cell[1], cell[2]) * (until - at);
            at = until;
            cell[axis] += step[axis];
            atNext[axis] += perCell[axis];
        }
        return sum * metres;
    }
}
