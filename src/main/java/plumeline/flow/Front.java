package plumeline.flow;

import plumeline.ranges.Ranges;

/// How far the dye has come: the box about all that is at least so strong. Its edges lie between cells where the
/// strength passes the threshold, taken to change evenly from one cell's middle to the next.
public sealed interface Front {
    /// Dye is as strong as that nowhere.
    record Nowhere() implements Front {}

    /// Dye is as strong as that somewhere.
    ///
    /// @param lowMetres its lowest edge over the floor, metres
    /// @param highMetres its highest edge over the floor, metres
    /// @param leftMetres its leftmost edge from the left wall, metres
    /// @param rightMetres its rightmost edge from the left wall, metres
    record Seen(double lowMetres, double highMetres, double leftMetres, double rightMetres) implements Front {
        /// How wide it is.
        ///
        /// @return metres
        public double widthMetres() {
            return rightMetres - leftMetres;
        }

        /// How far it reaches below a height.
        ///
        /// @param zMetres the height over the floor, metres
        /// @return metres, negative where it stays above
        public double depthMetres(double zMetres) {
            return zMetres - lowMetres;
        }
    }

    /// The front of all cells that hold at least a share.
    ///
    /// @param dye the dye
    /// @param share the threshold, as a share, > 0
    /// @return the front
    static Front ofShare(Dye dye, double share) {
        Ranges.checkPositive(share, "share");
        Grid grid = dye.grid();
        double[] right = new double[grid.nx()];
        double[] up = new double[grid.nz()];
        for (int k = 0; k < grid.nz(); k++) {
            for (int j = 0; j < grid.ny(); j++) {
                for (int i = 0; i < grid.nx(); i++) {
                    float here = dye.share(i, j, k);
                    right[i] = Math.max(right[i], here);
                    up[k] = Math.max(up[k], here);
                }
            }
        }
        return of(grid, right, up, share);
    }

    /// The front as a camera in front sees it: where a look along y goes through at least so much dye.
    ///
    /// @param dye the dye
    /// @param shareMetres the threshold, share times metres, > 0
    /// @return the front
    static Front ofSight(Dye dye, double shareMetres) {
        Ranges.checkPositive(shareMetres, "shareMetres");
        Grid grid = dye.grid();
        float[] seen = dye.alongY();
        double[] right = new double[grid.nx()];
        double[] up = new double[grid.nz()];
        for (int n = 0; n < seen.length; n++) {
            right[n % grid.nx()] = Math.max(right[n % grid.nx()], seen[n]);
            up[n / grid.nx()] = Math.max(up[n / grid.nx()], seen[n]);
        }
        return of(grid, right, up, shareMetres);
    }

    private static Front of(Grid grid, double[] right, double[] up, double threshold) {
        double low = edge(up, threshold, 1);
        if (Double.isNaN(low)) {
            return new Nowhere();
        }
        return new Seen(
                low * grid.dzMetres(),
                edge(up, threshold, -1) * grid.dzMetres(),
                edge(right, threshold, 1) * grid.dxMetres(),
                edge(right, threshold, -1) * grid.dxMetres());
    }

    /// Where a row of strengths first passes a threshold, in cells from its beginning, looking up or down it.
    private static double edge(double[] strength, double threshold, int direction) {
        int cells = strength.length;
        int n = direction > 0 ? 0 : cells - 1;
        for (; n >= 0 && n < cells; n += direction) {
            if (strength[n] >= threshold) {
                int before = n - direction;
                if (before < 0 || before >= cells) {
                    return direction > 0 ? 0 : cells;
                }
                double part = (strength[n] - threshold) / (strength[n] - strength[before]);
                return n + 0.5 - direction * part;
            }
        }
        return Double.NaN;
    }
}
