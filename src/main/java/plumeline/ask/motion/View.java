package plumeline.ask.motion;

import plumeline.answer.Given;
import plumeline.answer.Sensor;
import plumeline.answer.Shutter;
import plumeline.answer.Words;
import plumeline.optics.LensModel;
import plumeline.optics.Optics;
import plumeline.quantity.Kind;
import plumeline.text.Range;
import plumeline.text.Shape;
import plumeline.text.Shape.Key;

/// How what moves is seen: the key `view`.
///
/// @param distanceMetres front principal plane to what is looked at
/// @param lens the lens
/// @param pitchMetres from pixel to pixel
/// @param rate frames captured per real second
/// @param exposureSeconds how long one is exposed
record View(double distanceMetres, LensModel lens, double pitchMetres, double rate, double exposureSeconds) {
    /// A picture of what is all but at the lens isn't taken.
    private static final double NEAREST = 1.0001;

    static Shape shape() {
        return Shape.Keys.of(
                Key.required(
                        "distance",
                        "front principal plane to what is looked at",
                        new Shape.Amount(Kind.LENGTH, Range.between("1 mm", "100 m"), Shape.Mark.FIXED)),
                Key.required(
                                "focal_length",
                                "the lens's focal length",
                                new Shape.Amount(Kind.LENGTH, Range.between("1 mm", "5 m"), Shape.Mark.FIXED))
                        .hint("the value engraved on the lens, such as 50 mm", ""),
                Key.required("sensor", "the part of the sensor that makes the picture", Sensor.shape()),
                Key.optional("rate", "the capture rate", rateShape()),
                Key.optional("shutter", "angle or time", Shutter.shape()));
    }

    static Shape rateShape() {
        return new Shape.Amount(Kind.RATE, Range.between("1 fps", "100000 fps"), Shape.Mark.FIXED);
    }

    /// Reads it.
    ///
    /// @param given a map of that shape
    /// @param rate frames captured per real second
    static View read(Given given, double rate) {
        double focalLength = given.si("focal_length");
        double distance = given.si("distance");
        if (distance <= focalLength * NEAREST) {
            given.refuse(
                    "distance",
                    "P-ASK-40",
                    Words.MILLIMETRES.length(distance),
                    "more than " + Words.MILLIMETRES.length(focalLength) + " with this lens",
                    "Measure from the lens to what is looked at, such as 900 mm.");
            distance = 2 * focalLength;
        }
        return new View(
                distance,
                LensModel.ofFocalLength(focalLength),
                Sensor.read(given.map("sensor")).pitchMetres(),
                rate,
                Shutter.readSeconds(given, rate));
    }

    double magnification() {
        return Optics.magnificationAt(lens, distanceMetres);
    }

    /// px a metre at what is looked at.
    double pixelsPerMetre() {
        return magnification() / pitchMetres;
    }
}
