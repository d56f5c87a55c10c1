package plumeline.solve;

import java.util.ArrayList;
import java.util.List;

/// Something set otherwise so that there is more light, or less.
///
/// @param keys what the shot's keys say then
/// @param stops how much more light it makes, about; negative for less
/// @param words what to do, such as `set camera.iso 1600 instead of 800`
/// @param cost what comes with it, in a sentence; empty for nothing
/// @param longer how many times as long a frame is exposed then
/// @param lamps lamps that stand otherwise then
record Turn(List<Otherwise.Key> keys, double stops, String words, String cost, double longer, List<String> lamps) {
    Turn {
        keys = List.copyOf(keys);
        lamps = List.copyOf(lamps);
    }

    /// Both at once.
    Turn and(Turn other) {
        return new Turn(
                joined(keys, other.keys),
                stops + other.stops,
                words + ", and " + other.words,
                cost.isEmpty() || other.cost.isEmpty() ? cost + other.cost : cost + " " + other.cost,
                longer * other.longer,
                joined(lamps, other.lamps));
    }

    private static <T> List<T> joined(List<T> one, List<T> other) {
        List<T> both = new ArrayList<>(one);
        both.addAll(other);
        return both;
    }

    /// @param smear how things smear
    String sentence(Smear smear) {
        String smears = smear.sentence(longer);
        return Character.toUpperCase(words.charAt(0)) + words.substring(1) + "." + (cost.isEmpty() ? "" : " " + cost)
                + (smears.isEmpty() ? "" : " " + smears);
    }

    /// One thing that can be set otherwise.
    interface Knob {
        /// Lists the settings that come nearest to so much more light, the nearest first.
        ///
        /// @param stops how much more, negative for less
        List<Turn> listNear(double stops);

        /// Lists settings that make some of it, for another knob to make the rest; the least first.
        ///
        /// @param stops how much more is wanted altogether
        List<Turn> listPart(double stops);
    }
}
