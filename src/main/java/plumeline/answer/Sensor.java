package plumeline.answer;

import java.util.List;
import plumeline.quantity.Kind;
import plumeline.text.Range;
import plumeline.text.Shape;

/// The part of a sensor that makes the picture, as the camera is held.
///
/// @param widthMetres width, metres, > 0
/// @param heightMetres height, metres, > 0
/// @param acrossPixels pixels across the width, > 0
public record Sensor(double widthMetres, double heightMetres, double acrossPixels) {
    /// Checks the ranges.
    ///
    /// @throws IllegalArgumentException where one isn't > 0
    public Sensor {
        if (!(widthMetres > 0 && heightMetres > 0 && acrossPixels > 0)) {
            throw new IllegalArgumentException(
                    "a sensor of " + widthMetres + " m by " + heightMetres + " m, " + acrossPixels + " px across");
        }
    }

    /// Gives the distance between two pixels.
    ///
    /// @return pitch, metres
    public double pitchMetres() {
        return widthMetres / acrossPixels;
    }

    /// Gives how a text says it.
    ///
    /// @return the shape
    public static Shape shape() {
        Shape side = new Shape.Amount(Kind.LENGTH, Range.between("0.1 mm", "1 m"), Shape.Mark.FIXED);
        Shape across = new Shape.Amount(Kind.PIXELS, Range.between("1 px", "1000000 px"), Shape.Mark.FIXED);
        return new Shape.Keys(
                List.of(
                        Shape.Key.required("width", "width of the picture on the sensor", side)
                                .hint("the width of the picture as the camera is held, such as 36 mm", ""),
                        Shape.Key.required("height", "height of the picture on the sensor", side)
                                .hint("the height of the picture as the camera is held, such as 20.25 mm", ""),
                        Shape.Key.required("across", "pixels across the width", across)),
                List.of());
    }

    /// Reads it.
    ///
    /// @param given a checked map of that shape
    /// @return the sensor
    public static Sensor read(Given given) {
        return new Sensor(given.si("width"), given.si("height"), given.si("across"));
    }
}
