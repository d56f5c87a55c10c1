package plumeline.flow;

import plumeline.ranges.Ranges;

/// A box of water cut into equal cells.
///
/// Fields lie in flat arrays with [#RIM] cells of rim on each side, x running fastest, then y, then z: the value of
/// cell (i, j, k) stands at `index(i, j, k)`. Velocities stand on faces: `index(i, j, k)` of the x velocity is the face
/// to the left of that cell, of the y velocity the one in front, of the z velocity the one below.
///
/// @param nx cells to the right, 2 to 2048
/// @param ny cells away, 1 to 2048; 1 makes the flow two-dimensional, in x and z
/// @param nz cells up, 2 to 2048
/// @param widthMetres inner width along x, metres, > 0
/// @param depthMetres inner depth along y, metres, > 0
/// @param heightMetres height of the water along z, metres, > 0
public record Grid(int nx, int ny, int nz, double widthMetres, double depthMetres, double heightMetres) {
    /// How many cells of rim the arrays have on each side.
    public static final int RIM = 2;

    private static final int MOST = 2048;
    private static final long MOST_CELLS = 100_000_000;

    /// Checks the ranges.
    public Grid {
        Ranges.check(nx >= 2 && nx <= MOST, "nx", nx, "2 to " + MOST);
        Ranges.check(ny >= 1 && ny <= MOST, "ny", ny, "1 to " + MOST);
        Ranges.check(nz >= 2 && nz <= MOST, "nz", nz, "2 to " + MOST);
        long cells = (long) nx * ny * nz;
        Ranges.check(cells <= MOST_CELLS, "nx * ny * nz", (double) cells, "at most " + MOST_CELLS);
        Ranges.checkPositive(widthMetres, "widthMetres");
        Ranges.checkPositive(depthMetres, "depthMetres");
        Ranges.checkPositive(heightMetres, "heightMetres");
    }

    /// Cuts a box into cells that are as near to cubes of a wanted size as whole numbers allow.
    ///
    /// @param widthMetres inner width, metres, > 0
    /// @param depthMetres inner depth, metres, > 0
    /// @param heightMetres height of the water, metres, > 0
    /// @param cellMetres the wanted edge of a cell, metres, > 0
    /// @return the grid; along y and up even numbers of cells, which the pressure solve likes, along x multiples of
    /// four
    public static Grid ofCells(double widthMetres, double depthMetres, double heightMetres, double cellMetres) {
        Ranges.checkPositive(cellMetres, "cellMetres");
        return new Grid(
                multiple(widthMetres / cellMetres, 4),
                multiple(depthMetres / cellMetres, 2),
                multiple(heightMetres / cellMetres, 2),
                widthMetres,
                depthMetres,
                heightMetres);
    }

    /// Counts the cells that [#ofCells] would cut.
    ///
    /// @param widthMetres inner width, metres, > 0
    /// @param depthMetres inner depth, metres, > 0
    /// @param heightMetres height of the water, metres, > 0
    /// @param cellMetres the wanted edge of a cell, metres, > 0
    /// @return cells; `Long.MAX_VALUE` where they are more than a grid may have
    public static long countOfCells(double widthMetres, double depthMetres, double heightMetres, double cellMetres) {
        Ranges.checkPositive(cellMetres, "cellMetres");
        long nx = multiple(widthMetres / cellMetres, 4);
        long ny = multiple(depthMetres / cellMetres, 2);
        long nz = multiple(heightMetres / cellMetres, 2);
        return Math.max(nx, Math.max(ny, nz)) <= MOST && nx * ny * nz <= MOST_CELLS ? nx * ny * nz : Long.MAX_VALUE;
    }

    private static int multiple(double cells, int of) {
        return Math.max(1, (int) Math.round(cells / of)) * of;
    }

    /// A cell's edge along x.
    ///
    /// @return metres
    public double dxMetres() {
        return widthMetres / nx;
    }

    /// A cell's edge along y.
    ///
    /// @return metres
    public double dyMetres() {
        return depthMetres / ny;
    }

    /// A cell's edge along z.
    ///
    /// @return metres
    public double dzMetres() {
        return heightMetres / nz;
    }

    /// A cell's volume.
    ///
    /// @return cubic metres
    public double cellMetres3() {
        return dxMetres() * dyMetres() * dzMetres();
    }

    /// A cell's place in a field's array.
    ///
    /// @param i cell to the right, −2 to nx + 1
    /// @param j cell away, −2 to ny + 1
    /// @param k cell up, −2 to nz + 1
    /// @return the index
    public int index(int i, int j, int k) {
        return i + RIM + (j + RIM) * strideY() + (k + RIM) * strideZ();
    }

    /// How long a field's array is.
    ///
    /// @return entries
    public int length() {
        return strideZ() * (nz + 2 * RIM);
    }

    int strideY() {
        return nx + 2 * RIM;
    }

    int strideZ() {
        return strideY() * (ny + 2 * RIM);
    }

    /// Steps in the arrays along x, y and z.
    int stride(int axis) {
        return axis == 0 ? 1 : axis == 1 ? strideY() : strideZ();
    }

    int cells(int axis) {
        return axis == 0 ? nx : axis == 1 ? ny : nz;
    }

    double edgeMetres(int axis) {
        return axis == 0 ? dxMetres() : axis == 1 ? dyMetres() : dzMetres();
    }

    /// The axes along which something can change: y is left out where there is one layer only.
    int[] axes() {
        return ny == 1 ? new int[] {0, 2} : new int[] {0, 1, 2};
    }
}
