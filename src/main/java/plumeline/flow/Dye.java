package plumeline.flow;

import plumeline.ranges.Ranges;

/// The dye in a tank at one instant: a share in each cell.
public final class Dye {
    private final Grid grid;
    private final float[] shares;

    Dye(Grid grid, float[] shares) {
        this.grid = grid;
        this.shares = shares;
    }

    /// Puts dye together from shares that were kept.
    ///
    /// @param grid the cells
    /// @param shares nx · ny · nz shares, x running fastest, then y, then z, as [#shares] gives them
    /// @return the dye
    /// @throws IllegalArgumentException where there are more or fewer
    public static Dye of(Grid grid, float[] shares) {
        int cells = grid.nx() * grid.ny() * grid.nz();
        Ranges.check(shares.length == cells, "shares", shares.length, "one a cell, " + cells);
        float[] rimmed = new float[grid.length()];
        int at = 0;
        for (int k = 0; k < grid.nz(); k++) {
            for (int j = 0; j < grid.ny(); j++, at += grid.nx()) {
                System.arraycopy(shares, at, rimmed, grid.index(0, j, k), grid.nx());
            }
        }
        return new Dye(grid, rimmed);
    }

    /// The cells.
    ///
    /// @return the grid
    public Grid grid() {
        return grid;
    }

    /// The share in a cell, 0 in a solid one.
    ///
    /// @param i cell to the right, 0 to nx − 1
    /// @param j cell away, 0 to ny − 1
    /// @param k cell up, 0 to nz − 1
    /// @return share of one; 1 is as it came out of the nozzle
    public float share(int i, int j, int k) {
        return shares[grid.index(i, j, k)];
    }

    /// All shares without a rim.
    ///
    /// @return nx · ny · nz shares, x running fastest, then y, then z
    public float[] shares() {
        float[] all = new float[grid.nx() * grid.ny() * grid.nz()];
        int at = 0;
        for (int k = 0; k < grid.nz(); k++) {
            for (int j = 0; j < grid.ny(); j++, at += grid.nx()) {
                System.arraycopy(shares, grid.index(0, j, k), all, at, grid.nx());
            }
        }
        return all;
    }

    /// What a look along y goes through: the shares along each such line, times its length.
    ///
    /// @return nx · nz sums, share times metres, x running fastest
    public float[] alongY() {
        float[] sums = new float[grid.nx() * grid.nz()];
        float per = (float) grid.dyMetres();
        for (int k = 0; k < grid.nz(); k++) {
            for (int j = 0; j < grid.ny(); j++) {
                int first = grid.index(0, j, k);
                for (int i = 0; i < grid.nx(); i++) {
                    sums[k * grid.nx() + i] += per * shares[first + i];
                }
            }
        }
        return sums;
    }

    /// How much dye there is.
    ///
    /// @return as a volume of share 1, cubic metres
    public double totalMetres3() {
        double total = 0;
        for (int k = 0; k < grid.nz(); k++) {
            for (int j = 0; j < grid.ny(); j++) {
                int first = grid.index(0, j, k);
                for (int p = first; p < first + grid.nx(); p++) {
                    total += shares[p];
                }
            }
        }
        return total * grid.cellMetres3();
    }
}
