package plumeline.resect;

import java.util.List;

/// Something that may be grossly wrong, beyond its error: marks that were set to another place, or a click on another
/// spot.
sealed interface Doubt {
    /// How many readings are let go if it is so.
    int count();

    /// Marks that are off together, each by itself or all by one amount.
    ///
    /// @param names what they are called
    /// @param wider how many times their placing errors away they are looked for
    /// @param ways each way in which they may be off: by how much each unknown then is, in its placing errors
    record Misplaced(String names, double wider, List<double[]> ways) implements Doubt {
        @Override
        public int count() {
            return ways.size();
        }
    }

    /// A click that isn't on its place.
    ///
    /// @param point its index among the clicks
    record Misclick(int point) implements Doubt {
        @Override
        public int count() {
            return 2;
        }
    }
}
