package plumeline.flow;

import plumeline.ranges.Ranges;

/// Where a nozzle's mouth lies among cells and faces.
///
/// The mouth is a disc of points; each gives its share to the eight cells or faces about it, by how near it is. So a
/// mouth smaller than a cell does not depend on where in the cell it lies, and a wide one keeps its width.
final class Spout {
    private static final int RINGS = 4;
    private static final int ROUND = 12;

    /// Swings of a round jet per time in which it goes its own width, where it swings most (Strouhal number).
    private static final double STROUHAL = 0.3;

    private final Release.Nozzle nozzle;
    private final double wanderingSeconds;
    private final Weights cells;
    private final Weights[] faces = new Weights[3];

    Spout(Tank tank, Release.Nozzle nozzle) {
        this.nozzle = nozzle;
        Grid grid = tank.grid();
        for (int axis = 0; axis < 3; axis++) {
            double place = nozzle.mouth().place(axis);
            double size = grid.edgeMetres(axis) * grid.cells(axis);
            Ranges.check(place >= 0 && place <= size, "mouth along axis " + axis, place, "in the tank, 0 to " + size);
        }
        this.cells = new Weights(grid.length());
        for (int axis : grid.axes()) {
            faces[axis] = new Weights(grid.length());
        }
        double wide = Math.max(nozzle.boreMetres(), 2 * Math.cbrt(grid.cellMetres3()));
        double speed = nozzle.speedMetresPerSecond() * nozzle.boreMetres() / wide;
        this.wanderingSeconds = wide / speed / STROUHAL / 2;
        fill(tank);
        cells.even();
        for (int axis : grid.axes()) {
            faces[axis].even();
        }
    }

    Release.Nozzle nozzle() {
        return nozzle;
    }

    /// How long a swing to one side takes as the cells see the stream: at least two cells wide, its push kept.
    ///
    /// **Source:** the preferred mode of jets, S. Crow and F. Champagne, J. Fluid Mech. 48 (1971) (from memory).
    double wanderingSeconds() {
        return wanderingSeconds;
    }

    Weights cells() {
        return cells;
    }

    Weights faces(int axis) {
        return faces[axis];
    }

    double greatestWeight() {
        double greatest = 0;
        for (Weights each : faces) {
            greatest = each == null ? greatest : Math.max(greatest, each.greatest());
        }
        return greatest;
    }

    private void fill(Tank tank) {
        double[] towards = new double[3];
        int least = 0;
        for (int axis = 0; axis < 3; axis++) {
            towards[axis] = nozzle.mouth().towards(axis);
            least = Math.abs(towards[axis]) < Math.abs(towards[least]) ? axis : least;
        }
        double[] aside = new double[3];
        aside[least] = 1;
        double[] across = unit(cross(towards, aside));
        double[] beside = cross(towards, across);
        for (int ring = 0; ring < RINGS; ring++) {
            // Rings of equal area.
            double radius = nozzle.boreMetres() / 2 * Math.sqrt((ring + 0.5) / RINGS);
            for (int n = 0; n < ROUND; n++) {
                double angle = 2 * Math.PI * (n + 0.5 * (ring % 2)) / ROUND;
                double[] at = new double[3];
                for (int axis = 0; axis < 3; axis++) {
                    at[axis] = nozzle.mouth().place(axis)
                            + radius * (StrictMath.cos(angle) * across[axis] + StrictMath.sin(angle) * beside[axis]);
                }
                addPoint(tank, at);
            }
        }
    }

    private void addPoint(Tank tank, double[] at) {
        Grid grid = tank.grid();
        spread(grid, at, -1, tank.water(), cells);
        for (int axis : grid.axes()) {
            spread(grid, at, axis, tank.open(axis), faces[axis]);
        }
    }

    /// Gives one point to the eight cells about it, or to the eight faces across an axis.
    private static void spread(Grid grid, double[] at, int faceAxis, float[] allowed, Weights weights) {
        int[] low = new int[3];
        double[] part = new double[3];
        for (int axis = 0; axis < 3; axis++) {
            double place = at[axis] / grid.edgeMetres(axis) - (axis == faceAxis ? 0 : 0.5);
            low[axis] = (int) Math.floor(place);
            part[axis] = place - low[axis];
        }
        for (int corner = 0; corner < 8; corner++) {
            double weight = 1;
            int[] cell = new int[3];
            boolean within = true;
            for (int axis = 0; axis < 3; axis++) {
                int up = corner >> axis & 1;
                weight *= up == 1 ? part[axis] : 1 - part[axis];
                // One layer stands for all along its axis.
                cell[axis] = grid.cells(axis) == 1 ? 0 : low[axis] + up;
                within &= cell[axis] >= 0 && cell[axis] < grid.cells(axis);
            }
            if (within) {
                int p = grid.index(cell[0], cell[1], cell[2]);
                weights.put(p, weight * allowed[p]);
            }
        }
    }

    private static double[] cross(double[] a, double[] b) {
        return new double[] {a[1] * b[2] - a[2] * b[1], a[2] * b[0] - a[0] * b[2], a[0] * b[1] - a[1] * b[0]};
    }

    private static double[] unit(double[] vector) {
        double length = Math.sqrt(vector[0] * vector[0] + vector[1] * vector[1] + vector[2] * vector[2]);
        return new double[] {vector[0] / length, vector[1] / length, vector[2] / length};
    }
}
