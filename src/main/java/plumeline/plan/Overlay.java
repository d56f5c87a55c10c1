package plumeline.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import plumeline.text.Node;

/// Puts keys over other keys: a variant over its thing, a pass's overrides over its shot. Every value keeps the place
/// where it is written.
final class Overlay {
    private static final List<String> BOX = List.of("width", "depth");

    /// Keys that can't stand beside each other; an override of the first puts the others away. What was metered of a
    /// lamp is none of another in its place.
    private static final Map<String, List<String>> RIVALS = Map.of(
            "hue", List.of("white"),
            "white", List.of("hue"),
            "light", List.of("output", "readings"),
            "aim", List.of("turn", "tilt"),
            "turn", List.of("aim"),
            "tilt", List.of("aim"),
            "speed", List.of("squeeze_time"),
            "squeeze_time", List.of("speed"));

    /// Keys that an override may bring in one by one.
    static final Set<String> MADE = Set.of("clip");

    private Overlay() {}

    /// Merges mappings key by key; anything else under a key is replaced.
    static Node.Mapping merge(Node.Mapping below, Node.Mapping above) {
        var out = new ArrayList<Node.Entry>();
        for (var entry : below.entries()) {
            var over = Tree.entry(above, entry.key());
            out.add(over.map(o -> merge(entry, o)).orElse(entry));
        }
        for (var entry : above.entries()) {
            if (!Tree.has(below, entry.key())) out.add(entry);
        }
        return new Node.Mapping(out, below.place());
    }

    private static Node.Entry merge(Node.Entry below, Node.Entry above) {
        return below.value() instanceof Node.Mapping low && above.value() instanceof Node.Mapping high
                ? new Node.Entry(above.key(), above.keyPlace(), merge(low, high))
                : above;
    }

    /// Gives the thing as one of its variants: without `variants`, the variant's keys on top. A variant that writes a
    /// form of another sort puts the thing's own form away.
    static Node.Mapping variant(Node.Mapping thing, Optional<Node.Mapping> variant) {
        var own = without(thing, List.of("variants"));
        return variant.map(v -> merge(without(own, formPutAway(v)), v)).orElse(own);
    }

    private static List<String> formPutAway(Node.Mapping variant) {
        if (Tree.has(variant, "profile")) return List.of("width", "depth", "height", "diameter");
        if (Tree.has(variant, "diameter")) return List.of("width", "depth", "profile");
        return BOX.stream().anyMatch(k -> Tree.has(variant, k)) ? List.of("diameter", "profile") : List.of();
    }

    private static Node.Mapping without(Node.Mapping mapping, List<String> keys) {
        var kept =
                mapping.entries().stream().filter(e -> !keys.contains(e.key())).toList();
        return new Node.Mapping(kept, mapping.place());
    }

    /// Gives the keys without one of them.
    static Node.Mapping without(Node.Mapping mapping, String key) {
        return without(mapping, List.of(key));
    }

    /// Puts one value at a dotted path; the last step may be a coordinate, `at.x`. A key that can't stand beside the
    /// new one, such as `hue` beside `white`, gives way.
    ///
    /// @return the changed keys; empty where a key on the way isn't there or has no keys of its own
    static Optional<Node.Mapping> set(Node.Mapping root, List<String> path, Node.Entry value) {
        var key = path.getFirst();
        if (path.size() == 1) {
            var one = new Node.Entry(key, value.keyPlace(), value.value());
            var rest = without(root, RIVALS.getOrDefault(key, List.of()));
            return Optional.of(replace(rest, one));
        }
        var entry = Tree.entry(root, key)
                .or(() -> MADE.contains(key)
                        ? Optional.of(
                                new Node.Entry(key, value.keyPlace(), new Node.Mapping(List.of(), value.keyPlace())))
                        : Optional.empty());
        if (entry.isEmpty()) return Optional.empty();
        var keyPlace = entry.get().keyPlace();
        var inner = path.subList(1, path.size());
        Optional<? extends Node> changed = switch (entry.get().value()) {
            case Node.Mapping m -> set(m, inner, value);
            case Node.Sequence s -> setCoordinate(s, inner, value.value());
            case Node.Scalar _ -> Optional.<Node>empty();
        };
        return changed.map(node -> replace(root, new Node.Entry(key, keyPlace, node)));
    }

    private static Optional<Node> setCoordinate(Node.Sequence list, List<String> path, Node value) {
        int index = path.size() == 1 && path.getFirst().length() == 1 ? "xyz".indexOf(path.getFirst()) : -1;
        if (index < 0 || index >= list.items().size()) return Optional.empty();
        var items = new ArrayList<>(list.items());
        items.set(index, value);
        return Optional.of(new Node.Sequence(items, list.place()));
    }

    private static Node.Mapping replace(Node.Mapping below, Node.Entry one) {
        var out = new ArrayList<Node.Entry>();
        for (var entry : below.entries()) out.add(entry.key().equals(one.key()) ? one : entry);
        if (!Tree.has(below, one.key())) out.add(one);
        return new Node.Mapping(out, below.place());
    }

    /// Gives the shot's keys with the overrides in them and without its passes. An override that reaches nothing is
    /// left out; the check has said so.
    static Node.Mapping effective(Node.Mapping shot, Node pass) {
        var out = without(shot, "passes");
        for (var over : Tree.entries(pass)) {
            out = set(out, List.of(over.key().split("\\.", -1)), over).orElse(out);
        }
        return out;
    }
}
