package plumeline.flow;

import java.util.List;
import plumeline.ranges.Ranges;

/// All that a flow needs to go on: numbers and plain arrays, to be kept by whoever wants to.
///
/// It belongs to one setting; with another tank, liquid, release or seed it would go on as something else.
public final class State {
    /// How many arrays there are: velocities along x, y and z (metres a second), their last rates of change (metres per
    /// second squared), dye (share), pressure over density (square metres per second squared).
    public static final int FIELDS = 8;

    static final int DYE = 6;
    static final int PRESSURE = 7;

    private final Clock clock;
    private final List<float[]> fields;

    private State(Clock clock, List<float[]> fields) {
        this.clock = clock;
        this.fields = fields;
    }

    /// When it was.
    ///
    /// @param seconds the flow's own time, seconds, ≥ 0
    /// @param steps steps since time began, ≥ 0
    /// @param lastStepSeconds how long the last step was, seconds; 0 before the first
    /// @param releasedMetres3 dye released since time began, as a volume of share 1, cubic metres
    public record Clock(double seconds, long steps, double lastStepSeconds, double releasedMetres3) {
        /// Checks the ranges.
        public Clock {
            Ranges.checkNotNegative(seconds, "seconds");
            Ranges.checkNotNegative((double) steps, "steps");
            Ranges.checkNotNegative(lastStepSeconds, "lastStepSeconds");
            Ranges.checkNotNegative(releasedMetres3, "releasedMetres3");
        }
    }

    /// Puts a state together from what was kept. Arrays are copied.
    ///
    /// @param clock when it was
    /// @param fields [#FIELDS] arrays in their order, all of one length
    /// @return the state
    public static State of(Clock clock, List<float[]> fields) {
        Ranges.check(fields.size() == FIELDS, "fields", fields.size(), "" + FIELDS);
        int length = fields.getFirst().length;
        for (float[] field : fields) {
            Ranges.check(field.length == length, "length of a field", field.length, "" + length);
        }
        return new State(clock, copy(fields));
    }

    private static List<float[]> copy(List<float[]> fields) {
        return fields.stream().map(float[]::clone).toList();
    }

    /// When it was.
    ///
    /// @return the clock
    public Clock clock() {
        return clock;
    }

    /// The arrays in their order, as copies; each laid out as its [Grid] says.
    ///
    /// @return [#FIELDS] arrays
    public List<float[]> fields() {
        return copy(fields);
    }

    /// One of the arrays, as a copy.
    ///
    /// @param number its number, 0 to [#FIELDS] − 1
    /// @return the array
    public float[] field(int number) {
        return fields.get(number).clone();
    }

    /// The arrays themselves.
    List<float[]> bare() {
        return fields;
    }
}
