package plumeline.colour;

import java.util.List;
import plumeline.ranges.Ranges;

/// One colour of emitter in a lamp.
///
/// @param colour its colour, the same at every drive
/// @param lumens its light at full drive, lm, > 0; in proportion to its drive
public record Primary(Chromaticity colour, double lumens) {
    /// Checks the range.
    ///
    /// @throws IllegalArgumentException outside it
    public Primary {
        Ranges.checkPositive(lumens, "lumens");
    }

    /// Gives the light of several, each at its drive.
    ///
    /// @param primaries the emitters
    /// @param drives how far each is driven, 0 to 1
    /// @return X, Y and Z, lm
    static Xyz sum(List<Primary> primaries, List<Double> drives) {
        Xyz all = Xyz.DARK;
        for (int i = 0; i < primaries.size(); i++) {
            Primary each = primaries.get(i);
            all = all.plus(each.colour.at(each.lumens), drives.get(i));
        }
        return all;
    }
}
