package plumeline.lit;

import java.util.function.Supplier;
import plumeline.stage.Scene;

/// A shot at an instant, with its light where that is asked for.
///
/// @param scene the instant
/// @param lit gives its light
/// @param memory what was asked of it before
public record Instant(Scene scene, Supplier<Lighting> lit, LightMemory memory) {
    /// Gives the light.
    ///
    /// @return the light
    public Lighting lighting() {
        return lit.get();
    }
}
