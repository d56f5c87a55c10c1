package plumeline.stage;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import plumeline.plan.Mark;

/// Where a number comes from: one of the shot's marks by its place in the list of values, or a constant.
///
/// A pass's own overrides become constants; everything else follows the shot's marks.
final class Slots {
    /// One number of a shot.
    sealed interface Slot {
        /// @param values the marks' values
        double in(double[] values);

        record Constant(double value) implements Slot {
            @Override
            public double in(double[] values) {
                return value;
            }
        }

        record OfMark(int index) implements Slot {
            @Override
            public double in(double[] values) {
                return values[index];
            }
        }
    }

    static final Slot ZERO = new Slot.Constant(0);

    private final Map<String, Integer> indexByPath = new HashMap<>();
    private final List<Mark> marks;

    Slots(List<Mark> marks) {
        this.marks = marks;
        for (int i = 0; i < marks.size(); i++) {
            indexByPath.put(marks.get(i).path(), i);
        }
    }

    Slot of(Mark mark) {
        Integer index = indexByPath.get(mark.path());
        if (index != null && (mark.isFree() || marks.get(index).equals(mark))) {
            return new Slot.OfMark(index);
        }
        if (mark instanceof Mark.Fixed fixed) {
            return new Slot.Constant(fixed.quantity().si());
        }
        return ZERO;
    }

    Slot of(Optional<Mark> mark, double otherwise) {
        return mark.isPresent() ? of(mark.get()) : new Slot.Constant(otherwise);
    }
}
