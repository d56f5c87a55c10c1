package plumeline.plan;

import java.util.List;
import plumeline.quantity.Quantity;
import plumeline.text.Place;

/// The playback speed of a shot, in shares of real time.
public sealed interface Playback {
    /// Gives where it is written.
    ///
    /// @return the place of `speed`, or the shot's name where the plan doesn't say
    Place place();

    /// One speed all through; real time where the plan doesn't say.
    ///
    /// @param speed screen speed over real speed, dimensionless
    /// @param place where it is written
    record Constant(double speed, Place place) implements Playback {}

    /// A speed by screen frames; before the first key as there, after the last as there.
    ///
    /// @param keys the keys, frames increasing
    /// @param ease how the speed goes between two keys
    /// @param place where it is written
    record Curve(List<Key> keys, Ease ease, Place place) implements Playback {
        /// Copies the list.
        public Curve {
            keys = List.copyOf(keys);
        }
    }

    /// A key of the curve.
    ///
    /// @param frame the screen frame counted from the shot's first, 0
    /// @param speed screen speed over real speed, dimensionless
    /// @param written the speed as written
    record Key(double frame, double speed, Quantity written) {}

    /// How a curve goes between two keys.
    enum Ease {
        /// Straight.
        STRAIGHT,
        /// By 10u³ − 15u⁴ + 6u⁵.
        SMOOTH
    }
}
