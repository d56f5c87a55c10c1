package plumeline.render;

import java.util.Map;
import java.util.Optional;
import plumeline.plume.DyeFilm;
import plumeline.scenery.Art;

/// What a shot's pictures need beside its plan.
///
/// @param art prints of labels by the thing as the plan refers to it (`flacon.rose`)
/// @param ink what a simulation of the shot's ink gave; without it a smooth field from the law stands for it
public record Props(Map<String, Art> art, Optional<DyeFilm> ink) {
    /// None.
    public static final Props NONE = new Props(Map.of(), Optional.empty());

    /// Copies the map.
    public Props {
        art = Map.copyOf(art);
    }
}
