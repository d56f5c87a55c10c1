package plumeline.render;

import java.util.List;
import plumeline.plan.Plan;
import plumeline.stage.Stage;
import plumeline.trace.Look;

/// A staged shot, its marks set, as a world for rays at any instant.
public final class ShotSet {
    private final Stage stage;

    private ShotSet(Stage stage) {
        this.stage = stage;
    }

    /// Sets a shot up.
    ///
    /// @param plan its plan
    /// @param stage the shot or one of its passes, staged
    /// @param values its marks' values, SI, in the stage's order
    /// @param props prints and ink
    /// @return the set
    public static ShotSet of(Plan plan, Stage stage, double[] values, Props props) {
        return new ShotSet(stage);
    }

    /// Gives the shot as staged.
    ///
    /// @return the stage
    public Stage stage() {
        return stage;
    }

    /// Gives how long the shutter is open for a recorded frame.
    ///
    /// @return real seconds
    public double shutterSeconds() {
        throw new UnsupportedOperationException("to come");
    }

    /// Gives the world at an instant on the table.
    ///
    /// @param realSeconds real seconds after the shot's GO
    /// @return the look
    public Look at(double realSeconds) {
        throw new UnsupportedOperationException("to come");
    }

    /// Gives the world over an exposure, so many instants, each in the middle of its part of it.
    ///
    /// @param realSeconds when the shutter opens, real seconds after GO
    /// @param openSeconds how long it is open, ≥ 0
    /// @param instants how many, > 0
    /// @return the looks in order
    public List<Look> over(double realSeconds, double openSeconds, int instants) {
        throw new UnsupportedOperationException("to come");
    }

    /// Tells what was taken for what the plan doesn't say.
    ///
    /// @return sentences
    public List<String> assumed() {
        throw new UnsupportedOperationException("to come");
    }
}
