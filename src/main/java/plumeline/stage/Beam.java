package plumeline.stage;

import java.util.Optional;
import plumeline.geom.Aim;
import plumeline.geom.Vec;
import plumeline.light.Photometry;

/// How a lamp stands at an instant.
///
/// @param aim the middle of what shines and where it faces
/// @param level the share of what it gives, 0 to 1
/// @param file what its photometric file says, where it has one
/// @param tint the colour it is set to
public record Beam(Aim aim, double level, Optional<Photometry> file, Tint tint) {
    /// Gives the same lamp switched off.
    ///
    /// @return it, at level 0
    public Beam off() {
        return new Beam(aim, 0, file, tint);
    }

    /// Gives the same lamp elsewhere, facing as before.
    Beam movedBy(Vec way) {
        return new Beam(aim.from(aim.eye().plus(way)), level, file, tint);
    }
}
