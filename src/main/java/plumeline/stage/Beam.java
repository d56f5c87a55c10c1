package plumeline.stage;

import plumeline.geom.Aim;
import plumeline.geom.Vec;

/// How a lamp stands at an instant.
///
/// @param aim the middle of what shines and where it faces
/// @param level the share of what it gives, 0 to 1
public record Beam(Aim aim, double level) {
    /// Gives the same lamp elsewhere, facing as before.
    Beam movedBy(Vec way) {
        return new Beam(new Aim(aim.eye().plus(way), aim.turnRadians(), aim.tiltRadians()), level);
    }
}
