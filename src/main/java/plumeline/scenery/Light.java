package plumeline.scenery;

import java.util.Optional;
import plumeline.colour.Rgb;
import plumeline.geom.Aim;
import plumeline.light.Emitter;
import plumeline.light.Glow;
import plumeline.light.Intensity;

/// What shines.
///
/// @param name what it is called
/// @param source how it shines
/// @param tint its light's channels at luminance 1; 1 in each is neutral
public record Light(String name, Source source, Rgb tint) {
    /// How it shines.
    public sealed interface Source {
        /// From a face, which is seen too. What of it is turned away is not.
        ///
        /// @param emitter what shines, with its luminance, cd/m²
        /// @param glow how its brightness differs from place to place and direction to direction
        /// @param hole what of it doesn't shine
        record Face(Emitter emitter, Glow glow, Optional<Emitter> hole) implements Source {}

        /// From a point, which isn't seen.
        ///
        /// @param aim where it is and faces
        /// @param intensity what it gives into each direction, about where it faces
        /// @param grid what a grid before it lets through
        record Spot(Aim aim, Intensity intensity, Glow grid) implements Source {}
    }
}
