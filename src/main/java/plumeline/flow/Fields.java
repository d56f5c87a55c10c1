package plumeline.flow;

import java.util.List;

/// The arrays a flow lives in.
final class Fields {
    /// Velocities on faces, metres a second.
    final float[][] velocity;

    /// The dye's share in cells.
    final float[] dye;

    /// Pressure over density in cells, square metres per second squared.
    final float[] pressure;

    /// Rates of change of the velocities, without pressure, at the last step and at this one.
    private float[][] before;
    private float[][] now;

    private Fields(float[][] velocity, float[][] before, float[] dye, float[] pressure) {
        this.velocity = velocity;
        this.before = before;
        this.now = new float[3][dye.length];
        this.dye = dye;
        this.pressure = pressure;
    }

    static Fields still(Grid grid) {
        int length = grid.length();
        return new Fields(new float[3][length], new float[3][length], new float[length], new float[length]);
    }

    static Fields of(State state) {
        List<float[]> all = state.fields();
        return new Fields(
                new float[][] {all.get(0), all.get(1), all.get(2)},
                new float[][] {all.get(3), all.get(4), all.get(5)},
                all.get(State.DYE),
                all.get(State.PRESSURE));
    }

    List<float[]> list() {
        return List.of(velocity[0], velocity[1], velocity[2], before[0], before[1], before[2], dye, pressure);
    }

    float[] rateBefore(int axis) {
        return before[axis];
    }

    float[] rateNow(int axis) {
        return now[axis];
    }

    /// What was now is before.
    void turn() {
        float[][] turned = before;
        before = now;
        now = turned;
    }
}
