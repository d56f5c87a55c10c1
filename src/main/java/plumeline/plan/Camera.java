package plumeline.plan;

import java.util.Optional;
import java.util.OptionalDouble;
import plumeline.quantity.Quantity;
import plumeline.text.Place;

/// The camera of a shot. `at` is the lens point.
///
/// @param body the body
/// @param lens the lens
/// @param at the lens point
/// @param aim where it looks
/// @param focus what it is focused on; empty where the plan doesn't say (the aimed thing's middle, then)
/// @param fNumber the mark of the f-number, where written
/// @param held how it is held; empty where the plan doesn't say (level, then)
/// @param written all keys as written: `rate`, `shutter`, `iso`, `pivot`, `sensor_behind` …
public record Camera(
        Kit.CameraBody body,
        Kit.Lens lens,
        Mark.Spot at,
        Aim aim,
        Optional<Focus> focus,
        Optional<Mark> fNumber,
        Optional<Held> held,
        Written written) {

    /// How a camera is held.
    public enum Held {
        /// Long side down.
        LEVEL,
        /// Short side down.
        UPRIGHT
    }

    /// Where a camera or a lamp looks.
    public sealed interface Aim {
        /// Gives where it is written.
        ///
        /// @return the place of the value, or of its owner's name where nothing is written
        Place place();

        /// To the middle of a thing.
        ///
        /// @param thing the placed thing's name
        /// @param place where it is written
        record At(String thing, Place place) implements Aim {}

        /// Level and facing +y.
        ///
        /// @param place where it is written
        record Ahead(Place place) implements Aim {}

        /// By angles: a turn clockwise seen from above, a tilt upwards; one that isn't written is 0.
        ///
        /// @param turn the mark of the turn
        /// @param tilt the mark of the tilt
        /// @param place where the first of them is written
        record By(Optional<Mark> turn, Optional<Mark> tilt, Place place) implements Aim {}

        /// Nothing is written.
        ///
        /// @param place the place of what would be aimed
        record Untold(Place place) implements Aim {}
    }

    /// What a camera is focused on.
    public sealed interface Focus {
        /// The middle of a thing.
        ///
        /// @param thing the placed thing's name
        /// @param place where it is written
        record On(String thing, Place place) implements Focus {}

        /// A distance along the axis from the lens point, or free.
        ///
        /// @param mark the mark `camera.focus`
        record At(Mark mark) implements Focus {}
    }

    /// Gives how the camera is held, level where the plan doesn't say.
    ///
    /// @return how it is held
    public Held heldOrDefault() {
        return held.orElse(Held.LEVEL);
    }

    /// Finds the capture rate.
    ///
    /// @return the rate where written
    public Optional<Quantity> findRate() {
        return written.findQuantity("rate");
    }

    /// Finds the shutter, an angle or a time.
    ///
    /// @return the shutter where written
    public Optional<Quantity> findShutter() {
        return written.findQuantity("shutter");
    }

    /// Finds the sensitivity that counts: the shot's, else the body's base.
    ///
    /// @return the sensitivity, dimensionless; empty where neither is written
    public OptionalDouble findIso() {
        var own = written.findNumber("iso");
        return own.isPresent() ? own : body.written().findNumber("iso.base");
    }

    /// Finds how far the sensor mark lies behind the lens point: the shot's, else the lens's, else the body's.
    ///
    /// @return the distance where one of them is written
    public Optional<Quantity> findSensorBehind() {
        return written.findQuantity("sensor_behind")
                .or(() -> lens.written().findQuantity("sensor_behind"))
                .or(() -> body.written().findQuantity("sensor_behind"));
    }

    /// Gives exit over entrance pupil: the shot's, else the lens's, else 1.
    ///
    /// @return the pupil ratio, dimensionless
    public double pupilRatioOrDefault() {
        return written.findNumber("pupil_ratio").orElse(lens.pupilRatioOrDefault());
    }

    /// Finds the pan axis relative to the lens point, in the camera's frame at turn 0: the shot's, else the body's.
    ///
    /// @return two or three lengths x, y(, z); empty list where not written (the lens point, then)
    public java.util.List<Quantity> listPivot() {
        var own = written.listQuantities("pivot");
        return own.isEmpty() ? body.written().listQuantities("pivot") : own;
    }
}
