package plumeline.scenery;

import java.util.List;
import java.util.Optional;
import plumeline.colour.Rgb;

/// What there is at one instant.
///
/// @param parts bodies and surfaces; a part is told by its index here
/// @param lights what shines; faces of lights are seen too
/// @param basin a tank of water, where there is one
/// @param clouds ink in the water
/// @param surround luminance all round, beyond everything else, cd/m² a channel; it is seen, it lights, and what it
/// lights throws some of it at what else there is
public record World(List<Part> parts, List<Light> lights, Optional<Basin> basin, List<Cloud> clouds, Rgb surround) {
    /// Copies the lists.
    public World {
        parts = List.copyOf(parts);
        lights = List.copyOf(lights);
        clouds = List.copyOf(clouds);
    }
}
