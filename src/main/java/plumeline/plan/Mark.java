package plumeline.plan;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import plumeline.quantity.Quantity;
import plumeline.text.Place;

/// One thing that a hand sets: a tape mark, a height, an angle, a dial. Its path is its name without the shot's:
/// `second.x`, `first.turn`, `camera.y`, `camera.focus`, `key.level`, `slide.by`, `release.z`, `bottle.tied_1`.
public sealed interface Mark {
    /// Gives the mark's name.
    ///
    /// @return the path without the shot
    String path();

    /// Gives what kind of setting it is.
    ///
    /// @return the kind
    Kind kind();

    /// Gives how far off a hand may set it.
    ///
    /// @return the placing error
    PlacingError error();

    /// Gives where it is written; for `at: free` the place of `free`.
    ///
    /// @return the place
    Place place();

    /// Tells whether solving may move the mark.
    ///
    /// @return true for `free` and `free between A and B`
    default boolean isFree() {
        return switch (this) {
            case Fixed _ -> false;
            case Free _ -> true;
            case Between _ -> true;
        };
    }

    /// A mark with a value.
    ///
    /// @param path its name
    /// @param kind its kind
    /// @param quantity the value, with spread and origin as written
    /// @param error its placing error: its own ± where written
    /// @param place where it is written
    record Fixed(String path, Kind kind, Quantity quantity, PlacingError error, Place place) implements Mark {}

    /// A mark that solving finds.
    ///
    /// @param path its name
    /// @param kind its kind
    /// @param error its placing error
    /// @param place where it is written
    record Free(String path, Kind kind, PlacingError error, Place place) implements Mark {}

    /// A mark that solving finds between two bounds.
    ///
    /// @param path its name
    /// @param kind its kind
    /// @param low the lower bound
    /// @param high the upper bound
    /// @param error its placing error
    /// @param place where it is written
    record Between(String path, Kind kind, Quantity low, Quantity high, PlacingError error, Place place)
            implements Mark {}

    /// What kind of setting a mark is, with the placing error it has where the plan gives none.
    enum Kind {
        /// A tape mark on the table, the camera's too: 2 mm.
        TAPE,
        /// A height: 2 mm.
        HEIGHT,
        /// A place of a hung thing: 5 mm.
        HUNG,
        /// A place of a lamp: 20 mm.
        LAMP_PLACE,
        /// A turn or tilt set by hand: 2 deg.
        TURN,
        /// A turn or tilt of a lamp: 3 deg.
        LAMP_TURN,
        /// An axis of a machine along a line: its `repeats`, 2 mm where the plan gives none.
        MOTOR,
        /// An axis of a machine round an axis: its `repeats`, 2 deg where the plan gives none.
        MOTOR_TURN,
        /// A focus distance: 1 % of it.
        FOCUS,
        /// A value dialled on a device: no error.
        DIAL;

        /// Gives the placing error where neither the mark nor its machine gives one.
        ///
        /// @return the default
        public PlacingError usualError() {
            return switch (this) {
                case TAPE, HEIGHT, MOTOR -> new PlacingError(0.002, 0);
                case HUNG -> new PlacingError(0.005, 0);
                case LAMP_PLACE -> new PlacingError(0.020, 0);
                case TURN, MOTOR_TURN -> new PlacingError(Math.toRadians(2), 0);
                case LAMP_TURN -> new PlacingError(Math.toRadians(3), 0);
                case FOCUS -> new PlacingError(0, 0.01);
                case DIAL -> new PlacingError(0, 0);
            };
        }
    }

    /// A placing error: a 95 % half-width, fixed or a share of the value.
    ///
    /// @param fixedSi the fixed part in the mark's SI unit (m, rad or none), >= 0
    /// @param share the part that grows with the value, dimensionless, >= 0
    record PlacingError(double fixedSi, double share) {
        /// Gives the half-width at a value.
        ///
        /// @param valueSi the mark's value in its SI unit
        /// @return the half-width in the same unit
        public double at(double valueSi) {
            return fixedSi + share * Math.abs(valueSi);
        }
    }

    /// Where something stands or hangs, in the table's frame.
    ///
    /// @param x to camera right
    /// @param y away from the camera
    /// @param z up; empty for a thing that stands on the table with two coordinates written
    /// @param place where it is written
    record Spot(Mark x, Mark y, Optional<Mark> z, Place place) {
        /// Gives its marks in the order x, y, z.
        ///
        /// @return two or three marks
        public List<Mark> marks() {
            return Stream.concat(Stream.of(x, y), z.stream()).toList();
        }
    }
}
