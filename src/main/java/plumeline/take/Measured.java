package plumeline.take;

import java.util.List;
import java.util.Optional;
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

    /// What a meter showed on a part of a thing in a shot, lamps alone or together, all others off.
    ///
    /// @param at where it was held
    /// @param reads the illuminance
    /// @param others what of it lamps gave that a meter had shown there alone before; empty where there were none
    /// @param computed what was computed there of the lamps when it was noted
    /// @param lamps the other lamps that were on, at their levels, with what they were taken to give then
    record LuxAt(Spot at, Quantity reads, Optional<Quantity> others, Quantity computed, List<Gave> lamps)
            implements Measured {
        /// Copies the list.
        public LuxAt {
            lamps = List.copyOf(lamps);
        }

        /// A place on a thing.
        ///
        /// @param shot the shot's name
        /// @param thing the thing's name there
        /// @param part `label`, `top`, `middle` or `base`
        public record Spot(String shot, String thing, String part) {}

        /// A lamp.
        ///
        /// @param light its name in the shot
        /// @param lamp its name in the kit
        /// @param gives what it was taken to give at full level
        public record Gave(String light, String lamp, Quantity gives) {}

        /// Gives what was read of the lamps over what was computed of them.
        ///
        /// @return dimensionless, > 0
        public double ratio() {
            return (reads.si() - othersLux()) / computed.si();
        }

        /// Gives what the other lamps gave.
        ///
        /// @return lx; 0 where there were none
        public double othersLux() {
            return others.map(Quantity::si).orElse(0.0);
        }
    }

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
