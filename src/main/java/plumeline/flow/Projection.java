package plumeline.flow;

/// Makes the water keep its volume: finds the pressure that undoes what the step has squeezed, and lets it push.
///
/// The pressure obeys −∇²p = −(∇·u − s)/dt over open faces only, s being what nozzles add. Without bodies the box solve
/// gives it at once; with bodies it is the preconditioner of conjugate gradients, which begin at the last step's
/// pressure. Shut faces never move: neither water nor dye gets into a body.
final class Projection {
    /// What may be left: of the right side, by its norm.
    private static final double LEFT = 1e-3;

    /// What may be left in any cell: of the greatest speed over a cell's edge.
    private static final double LEFT_IN_A_CELL = 4e-5;

    private static final int MOST_ROUNDS = 60;

    private final Tank tank;
    private final Grid grid;
    private final Workers workers;
    private final BoxSolve box;
    private final FluidOperator operator;
    private final float[] left;
    private final float[] made;
    private final float[] towards;
    private final float[] applied;
    private final double cellsOfWater;
    private final double shortestMetres;

    Projection(Tank tank, Workers workers) {
        this.tank = tank;
        this.grid = tank.grid();
        this.workers = workers;
        this.box = new BoxSolve(grid, workers);
        this.operator = new FluidOperator(tank, workers);
        this.left = new float[grid.length()];
        boolean bodies = tank.isSolidAnywhere();
        this.made = bodies ? new float[grid.length()] : left;
        this.towards = bodies ? new float[grid.length()] : left;
        this.applied = bodies ? new float[grid.length()] : left;
        this.cellsOfWater = operator.sumOf(tank.water());
        double shortest = Double.POSITIVE_INFINITY;
        for (int axis : grid.axes()) {
            shortest = Math.min(shortest, grid.edgeMetres(axis));
        }
        this.shortestMetres = shortest;
    }

    /// Projects the velocities.
    ///
    /// @param fields velocities, and the pressure, which is where the search begins and what it gives
    /// @param source what nozzles add less what leaves, in each cell, per second; adds up to nought
    /// @param seconds the step
    void project(Fields fields, float[] source, double seconds) {
        double speed = Extremes.speedMetresPerSecond(fields, grid, workers);
        fillRight(fields.velocity, source, seconds);
        if (tank.isSolidAnywhere()) {
            solveAround(fields.pressure, LEFT_IN_A_CELL * speed / shortestMetres / seconds);
        } else {
            box.solve(left, fields.pressure);
        }
        push(fields, seconds);
    }

    /// Fills what is left to solve with the right side, made to add up to nought to the last bit it can.
    private void fillRight(float[][] velocity, float[] source, double seconds) {
        float per = (float) (-1 / seconds);
        operator.fillDivergence(velocity, source, left);
        float mean = (float) (operator.sumOf(left) / cellsOfWater);
        workers.each(grid.nz(), k -> {
            for (int j = 0; j < grid.ny(); j++) {
                int first = grid.index(0, j, k);
                for (int p = first; p < first + grid.nx(); p++) {
                    left[p] = per * tank.water()[p] * (left[p] - mean);
                }
            }
        });
    }

    /// Conjugate gradients, preconditioned by the box solve.
    ///
    /// **Source:** M. Hestenes and E. Stiefel, J. Research NBS 49 (1952) (from memory).
    private void solveAround(float[] pressure, double leftInACell) {
        double enough = LEFT * Math.sqrt(operator.dot(left, left));
        operator.apply(pressure, applied);
        operator.add(left, -1, applied);
        double last = 0;
        for (int round = 0; round < MOST_ROUNDS; round++) {
            boolean close = Math.sqrt(operator.dot(left, left)) <= enough;
            if (close && operator.greatest(left) <= leftInACell) {
                return;
            }
            box.solve(left, made);
            double dot = operator.maskAndDot(made, left);
            operator.turn(towards, made, round == 0 ? 0 : dot / last);
            last = dot;
            operator.apply(towards, applied);
            double curvature = operator.dot(towards, applied);
            if (!(curvature > 0)) {
                return;
            }
            operator.add(pressure, dot / curvature, towards);
            operator.add(left, -dot / curvature, applied);
        }
    }

    private void push(Fields fields, double seconds) {
        float[] pressure = fields.pressure;
        workers.each(grid.nz(), k -> {
            for (int axis : grid.axes()) {
                float[] velocity = fields.velocity[axis];
                float[] open = tank.open(axis);
                int step = grid.stride(axis);
                float per = (float) (seconds / grid.edgeMetres(axis));
                for (int j = 0; j < grid.ny(); j++) {
                    int first = grid.index(0, j, k);
                    for (int p = first; p < first + grid.nx(); p++) {
                        velocity[p] -= per * open[p] * (pressure[p] - pressure[p - step]);
                    }
                }
            }
        });
    }

    /// The greatest divergence that is left over, times the shortest edge, over the greatest speed; 0 where nothing
    /// moves.
    double divergence(Fields fields, float[] source) {
        double speed = Extremes.speedMetresPerSecond(fields, grid, workers);
        if (speed == 0) {
            return 0;
        }
        operator.fillDivergence(fields.velocity, source, left);
        return operator.greatest(left) * shortestMetres / speed;
    }
}
