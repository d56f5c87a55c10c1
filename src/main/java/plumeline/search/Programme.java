package plumeline.search;

import java.util.ArrayList;
import java.util.List;
import org.hipparchus.exception.MathRuntimeException;
import org.hipparchus.optim.linear.LinearConstraint;
import org.hipparchus.optim.linear.LinearConstraintSet;
import org.hipparchus.optim.linear.LinearObjectiveFunction;
import org.hipparchus.optim.linear.NonNegativeConstraint;
import org.hipparchus.optim.linear.Relationship;
import org.hipparchus.optim.linear.SimplexSolver;
import org.hipparchus.optim.nonlinear.scalar.GoalType;

/// The linear programme behind one step: move the free axes inside a box so that the least share grows most.
///
/// Variables are the moves from the box's low side and the share raised, each non-negative, as the simplex method
/// wants.
final class Programme {
    private final List<LinearConstraint> constraints = new ArrayList<>();
    private final double[] lowMove;
    private final double[] width;
    private final double baseShare;

    /// @param lowMove least move of each free axis
    /// @param highMove largest move of each free axis
    /// @param baseShare a share that the answer surely reaches or passes
    Programme(double[] lowMove, double[] highMove, double baseShare) {
        this.lowMove = lowMove;
        this.baseShare = baseShare;
        this.width = new double[lowMove.length];
        for (int i = 0; i < lowMove.length; i++) {
            width[i] = Math.max(highMove[i] - lowMove[i], 1e-12);
            double[] row = new double[lowMove.length + 1];
            row[i] = 1;
            constraints.add(new LinearConstraint(row, Relationship.LEQ, 1));
        }
    }

    /// Asks that `margin + slope·move ≥ share·feel + floor`, the share being the one that is raised.
    void raise(double margin, double[] slope, double feel) {
        add(margin, slope, feel, baseShare * feel);
    }

    /// Asks that `margin + slope·move ≥ floor`.
    void hold(double margin, double[] slope, double floor) {
        add(margin, slope, 0, floor);
    }

    private void add(double margin, double[] slope, double feel, double floor) {
        double[] row = new double[slope.length + 1];
        double constant = margin - floor;
        double size = Math.max(Math.abs(feel), 1e-12);
        for (int i = 0; i < slope.length; i++) {
            row[i] = slope[i] * width[i];
            constant += slope[i] * lowMove[i];
            size = Math.max(size, Math.abs(row[i]));
        }
        row[slope.length] = -feel;
        for (int i = 0; i < row.length; i++) {
            row[i] /= size;
        }
        constraints.add(new LinearConstraint(row, Relationship.GEQ, -constant / size));
    }

    /// Gives the moves that raise the share most; an empty array where the simplex method finds none.
    double[] best(double mostShare) {
        double[] ceiling = new double[lowMove.length + 1];
        ceiling[lowMove.length] = 1;
        constraints.add(new LinearConstraint(ceiling, Relationship.LEQ, mostShare - baseShare));
        double[] aim = new double[lowMove.length + 1];
        aim[lowMove.length] = 1;
        try {
            double[] point = new SimplexSolver()
                    .optimize(
                            new LinearObjectiveFunction(aim, 0),
                            new LinearConstraintSet(constraints),
                            GoalType.MAXIMIZE,
                            new NonNegativeConstraint(true))
                    .getPoint();
            double[] moves = new double[lowMove.length];
            for (int i = 0; i < moves.length; i++) {
                moves[i] = lowMove[i] + Math.clamp(point[i], 0, 1) * width[i];
            }
            return moves;
        } catch (MathRuntimeException none) {
            return new double[0];
        }
    }
}
