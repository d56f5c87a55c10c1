package plumeline.plume;

import java.util.List;

/// A thing in the water, as it is looked at.
///
/// @param thing its name in the shot
/// @param heights where it is looked at, rising from its base to its top
/// @param unseen why the look at it isn't computed, to be read after its name; empty where it is
public record Subject(String thing, List<Height> heights, String unseen) {
    /// Copies the list.
    public Subject {
        heights = List.copyOf(heights);
    }

    /// Whether the look at it is computed.
    ///
    /// @return whether it is
    public boolean isSeen() {
        return unseen.isEmpty();
    }

    /// The height that is nearest to one asked for.
    ///
    /// @param metres over the thing's base along its axis, metres
    /// @return its index among the heights
    public int nearest(double metres) {
        int best = 0;
        for (int n = 1; n < heights.size(); n++) {
            double off = Math.abs(heights.get(n).metres() - metres);
            best = off < Math.abs(heights.get(best).metres() - metres) ? n : best;
        }
        return best;
    }

    /// A height.
    ///
    /// @param metres over the thing's base along its axis, metres
    /// @param zMetres of the axis there, over the table, metres, when the release starts
    public record Height(double metres, double zMetres) {}

    /// A part that wants name.
    public enum Part {
        /// Its top.
        TOP,
        /// Half its height.
        MIDDLE,
        /// Its base.
        BASE;

        /// The word in a plan.
        ///
        /// @return `top`, `middle` or `base`
        public String word() {
            return name().toLowerCase(java.util.Locale.ROOT);
        }
    }

    /// The height of a part.
    ///
    /// @param part the part
    /// @return the height
    public Height at(Part part) {
        return switch (part) {
            case TOP -> heights.getLast();
            case MIDDLE -> heights.get(nearest(heights.getLast().metres() / 2));
            case BASE -> heights.getFirst();
        };
    }
}
