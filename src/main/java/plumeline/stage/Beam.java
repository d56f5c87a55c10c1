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
public record Beam(Aim aim, double level, Optional<Photometry> file) {
    /// Makes a lamp without a photometric file.
    ///
    /// @param aim the middle of what shines and where it faces
    /// @param level the share of what it gives, 0 to 1
    public Beam(Aim aim, double level) {
        this(aim, level, Optional.empty());
    }

    /// Gives the same lamp elsewhere, facing as before.
    Beam movedBy(Vec way) {
        return new Beam(new Aim(aim.eye().plus(way), aim.turnRadians(), aim.tiltRadians()), level, file);
    }
}
