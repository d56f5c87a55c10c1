package plumeline.flow;

import plumeline.ranges.Ranges;

/// A region of the tank, told by asking for points. It must give the same answer for the same point, from any thread.
@FunctionalInterface
public interface Inside {
    /// Whether a point lies in the region.
    ///
    /// @param xMetres from the left wall, metres
    /// @param yMetres from the front wall, metres
    /// @param zMetres over the floor, metres
    /// @return whether it does
    boolean holds(double xMetres, double yMetres, double zMetres);

    /// No point at all.
    ///
    /// @return the empty region
    static Inside nothing() {
        return (_, _, _) -> false;
    }

    /// A ball.
    ///
    /// @param xMetres its middle from the left wall, metres
    /// @param yMetres its middle from the front wall, metres
    /// @param zMetres its middle over the floor, metres
    /// @param radiusMetres its radius, metres, > 0
    /// @return the region
    static Inside ball(double xMetres, double yMetres, double zMetres, double radiusMetres) {
        Ranges.checkPositive(radiusMetres, "radiusMetres");
        double square = radiusMetres * radiusMetres;
        return (x, y, z) -> {
            double dx = x - xMetres;
            double dy = y - yMetres;
            double dz = z - zMetres;
            return dx * dx + dy * dy + dz * dz <= square;
        };
    }

    /// The share of a cell that lies in the region, from points spread evenly over it.
    ///
    /// @param grid the cells
    /// @param i cell to the right
    /// @param j cell away
    /// @param k cell up
    /// @param points how many along each edge
    /// @return share, 0 to 1
    default double share(Grid grid, int i, int j, int k, int points) {
        int within = 0;
        for (int c = 0; c < points; c++) {
            double z = (k + (c + 0.5) / points) * grid.dzMetres();
            for (int b = 0; b < points; b++) {
                double y = (j + (b + 0.5) / points) * grid.dyMetres();
                for (int a = 0; a < points; a++) {
                    within += holds((i + (a + 0.5) / points) * grid.dxMetres(), y, z) ? 1 : 0;
                }
            }
        }
        return within / (double) (points * points * points);
    }

    /// Whether the region fills a cell: it holds its middle, or at least half of it.
    ///
    /// @param grid the cells
    /// @param i cell to the right
    /// @param j cell away
    /// @param k cell up
    /// @return whether it does
    default boolean fills(Grid grid, int i, int j, int k) {
        return share(grid, i, j, k, 1) == 1 || share(grid, i, j, k, 2) >= 0.5;
    }
}
