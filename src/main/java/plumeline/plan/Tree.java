package plumeline.plan;

import java.util.List;
import java.util.Optional;
import plumeline.text.Node;

/// Looks into a tree that may not have the form that a plan should have: what isn't there is empty, never a problem.
final class Tree {
    private Tree() {}

    static Optional<Node> find(Node node, String... keys) {
        var at = node;
        for (String key : keys) {
            var next = at instanceof Node.Mapping m ? m.find(key) : Optional.<Node>empty();
            if (next.isEmpty()) return next;
            at = next.get();
        }
        return Optional.of(at);
    }

    static List<Node.Entry> entries(Node node, String... keys) {
        return find(node, keys).orElse(node) instanceof Node.Mapping m
                        && (keys.length == 0 || find(node, keys).isPresent())
                ? m.entries()
                : List.of();
    }

    static List<Node> items(Node node, String... keys) {
        return find(node, keys)
                .map(n -> n instanceof Node.Sequence s ? s.items() : List.<Node>of())
                .orElse(List.of());
    }

    static Optional<Node.Scalar> scalar(Node node, String... keys) {
        return find(node, keys).flatMap(n -> n instanceof Node.Scalar s ? Optional.of(s) : Optional.empty());
    }

    static Optional<Node.Entry> entry(Node node, String key) {
        return entries(node).stream().filter(e -> e.key().equals(key)).findFirst();
    }

    static boolean has(Node node, String key) {
        return entry(node, key).isPresent();
    }
}
