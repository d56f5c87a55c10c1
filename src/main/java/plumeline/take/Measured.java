package plumeline.take;

import plumeline.quantity.Quantity;

/// Something that was measured on the set.
public sealed interface Measured {
    /// A take of ink.
    ///
    /// @param shot the shot's name
    /// @param number the take's number, from 1
    /// @param ink the ink's name
    /// @param take what was read
    record OfTake(String shot, int number, String ink, Take take) implements Measured {}

    /// What a lamp gives at full level, at a distance.
    ///
    /// @param light the lamp's name
    /// @param gives the illuminance
    record Lux(String light, Quantity gives) implements Measured {}

    /// A lens's true focal length.
    ///
    /// @param lens the lens's name
    /// @param length the focal length
    record FocalLength(String lens, Quantity length) implements Measured {}

    /// A machine's true top speed.
    ///
    /// @param machine the machine's name
    /// @param speed the speed, along a line or round an axis
    record Speed(String machine, Quantity speed) implements Measured {}

    /// How long setting a shot up again takes.
    ///
    /// @param shot the shot's name
    /// @param time the time between two takes
    record Reset(String shot, Quantity time) implements Measured {}

    /// How strongly an ink colours.
    ///
    /// @param ink the ink's name
    /// @param absorbance decadic absorbance of neat ink over a length
    record Strength(String ink, Quantity absorbance) implements Measured {}
}
