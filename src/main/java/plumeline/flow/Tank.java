package plumeline.flow;

import java.util.Arrays;
import plumeline.ranges.Ranges;

/// A box of water with its walls and what stands solid in it, cell by cell.
///
/// A cell is solid where its middle or at least half of it is; so a body is a staircase whose volume is right to about
/// a cell's share of its surface, and dye never stands at a place inside it. Faces between two cells of water are open,
/// all others shut.
public final class Tank {
    private final Grid grid;
    private final Walls walls;
    private final boolean solidAnywhere;
    private final float[] water;
    private final float[][] open = new float[3][];
    private final float[][] drag = new float[3][];

    private Tank(Grid grid, Walls walls, Inside solid) {
        this.grid = grid;
        this.walls = walls;
        Ranges.check(
                grid.ny() > 1 || slips(walls.front()) && slips(walls.back()),
                "ny",
                grid.ny(),
                "2 or more where front or back wall holds the water");
        this.water = new float[grid.length()];
        this.solidAnywhere = fillWater(solid);
        for (int axis = 0; axis < 3; axis++) {
            open[axis] = findOpen(axis);
        }
        for (int axis = 0; axis < 3; axis++) {
            drag[axis] = findDrag(axis);
        }
    }

    /// A tank with solid bodies in it.
    ///
    /// @param grid its cells
    /// @param walls its sides
    /// @param solid what is solid; some water must be left
    /// @return the tank
    public static Tank of(Grid grid, Walls walls, Inside solid) {
        return new Tank(grid, walls, solid);
    }

    /// A tank with nothing but water in it.
    ///
    /// @param grid its cells
    /// @param walls its sides
    /// @return the tank
    public static Tank of(Grid grid, Walls walls) {
        return new Tank(grid, walls, Inside.nothing());
    }

    /// Its cells.
    ///
    /// @return the grid
    public Grid grid() {
        return grid;
    }

    /// Its sides.
    ///
    /// @return the walls
    public Walls walls() {
        return walls;
    }

    /// Whether a cell is solid.
    ///
    /// @param i cell to the right, 0 to nx − 1
    /// @param j cell away, 0 to ny − 1
    /// @param k cell up, 0 to nz − 1
    /// @return whether it is
    public boolean isSolid(int i, int j, int k) {
        return water[grid.index(i, j, k)] == 0;
    }

    boolean isSolidAnywhere() {
        return solidAnywhere;
    }

    /// 1 for a cell of water, 0 for a solid one; 1 in the rim.
    float[] water() {
        return water;
    }

    /// 1 for a face between two cells of water, else 0: shut by a solid cell or the wall.
    float[] open(int axis) {
        return open[axis];
    }

    /// What solid cells beside a face do to the water going along them, per viscosity, 1/m²: friction is that times the
    /// face's velocity.
    float[] drag(int axis) {
        return drag[axis];
    }

    private static boolean slips(Wall wall) {
        return wall.grip() instanceof Wall.Grip.Slip;
    }

    private boolean fillWater(Inside solid) {
        Arrays.fill(water, 1);
        long left = 0;
        for (int k = 0; k < grid.nz(); k++) {
            for (int j = 0; j < grid.ny(); j++) {
                for (int i = 0; i < grid.nx(); i++) {
                    boolean is = solid.fills(grid, i, j, k);
                    water[grid.index(i, j, k)] = is ? 0 : 1;
                    left += is ? 0 : 1;
                }
            }
        }
        long all = (long) grid.nx() * grid.ny() * grid.nz();
        Ranges.check(left > 0, "cells of water", (double) left, "at least one of " + all);
        return left < all;
    }

    private float[] findOpen(int axis) {
        float[] faces = new float[grid.length()];
        int step = grid.stride(axis);
        for (int k = axis == 2 ? 1 : 0; k < grid.nz(); k++) {
            for (int j = axis == 1 ? 1 : 0; j < grid.ny(); j++) {
                for (int i = axis == 0 ? 1 : 0; i < grid.nx(); i++) {
                    int p = grid.index(i, j, k);
                    faces[p] = water[p] * water[p - step];
                }
            }
        }
        return faces;
    }

    /// A solid neighbour lies half a cell beside the face; the plain difference takes it to be a whole one away, so the
    /// other half of the friction is added. A neighbour that is solid on one side only counts half.
    private float[] findDrag(int axis) {
        float[] faces = new float[grid.length()];
        int own = grid.stride(axis);
        for (int beside : grid.axes()) {
            if (beside == axis || !solidAnywhere) {
                continue;
            }
            int step = grid.stride(beside);
            double perSolid = 0.5 / (grid.edgeMetres(beside) * grid.edgeMetres(beside));
            for (int p = own + step; p < faces.length - step; p++) {
                if (open[axis][p] == 1) {
                    float solids =
                            4 - water[p + step] - water[p + step - own] - water[p - step] - water[p - step - own];
                    faces[p] += (float) (solids * perSolid);
                }
            }
        }
        return faces;
    }
}
