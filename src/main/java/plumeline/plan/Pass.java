package plumeline.plan;

import java.util.Map;
import plumeline.text.Node;
import plumeline.text.Place;

/// A pass, look or variant run of a shot.
///
/// @param name its name
/// @param overrides what it changes, by dotted path, in the order written
/// @param effective the shot with the changes in it; its own passes are empty
/// @param place where its name is written
public record Pass(String name, Map<String, Node> overrides, Shot effective, Place place) {
    /// Copies the map, keeping its order.
    public Pass {
        overrides = java.util.Collections.unmodifiableMap(new java.util.LinkedHashMap<>(overrides));
    }
}
