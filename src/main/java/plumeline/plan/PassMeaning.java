package plumeline.plan;

import java.util.List;
import java.util.Set;
import plumeline.text.Nearest;
import plumeline.text.Node;

/// Checks that a pass's overrides reach something in its shot, and free nothing.
final class PassMeaning {
    /// Maps of the crew's own names: an override can't bring a new one in.
    private static final Set<String> NAMED = Set.of("place", "lights", "moves");

    private final Node.Mapping shot;
    private final Node.Entry pass;
    private final String path;
    private final Issues issues;

    PassMeaning(Node.Mapping shot, Node.Entry pass, String path, Issues issues) {
        this.shot = shot;
        this.pass = pass;
        this.path = path;
        this.issues = issues;
    }

    void check() {
        for (var over : Tree.entries(pass.value())) {
            checkReach(over);
            checkFree(over.value(), path + "." + over.key());
        }
    }

    private void checkReach(Node.Entry over) {
        var steps = List.of(over.key().split("\\.", -1));
        Node at = shot;
        for (int i = 0; i + 1 < steps.size(); i++) {
            var next = Tree.find(at, steps.get(i));
            if (next.isEmpty()) {
                addLost(over, steps, i, at);
                return;
            }
            at = next.get();
        }
        boolean coordinate = at instanceof Node.Sequence list && isCoordinate(list, steps.getLast());
        boolean newName = steps.size() == 2 && NAMED.contains(steps.getFirst()) && !Tree.has(at, steps.getLast());
        if (newName || !(at instanceof Node.Mapping) && !coordinate) addLost(over, steps, steps.size() - 1, at);
    }

    private static boolean isCoordinate(Node.Sequence list, String step) {
        int index = step.length() == 1 ? "xyz".indexOf(step) : -1;
        return index >= 0 && index < list.items().size();
    }

    private void addLost(Node.Entry over, List<String> steps, int lost, Node at) {
        var known = Tree.entries(at).stream().map(Node.Entry::key).toList();
        var before = String.join(".", steps.subList(0, lost)) + (lost == 0 ? "" : ".");
        var after = String.join(".", steps.subList(lost + 1, steps.size()));
        var attempt = Nearest.find(steps.get(lost), known)
                .map(near -> "Try " + before + near + (after.isEmpty() ? "" : ".") + after + ".")
                .orElse("Write it in the shot first, or override what is there.");
        issues.add(over.keyPlace(), path + "." + over.key(), "P-PASS-01", "a path that reaches nothing in the shot",
                "a path to something written in the shot", attempt);
    }

    private void checkFree(Node value, String field) {
        switch (value) {
            case Node.Scalar s -> {
                if (s.text().equals("free") || s.text().startsWith("free ")) {
                    issues.add(s, field, "P-PASS-02", Issues.shown(s.text()), "a value: all passes share the shot's marks",
                            "Free it in the shot instead.");
                }
            }
            case Node.Sequence s -> s.items().forEach(item -> checkFree(item, field));
            case Node.Mapping m -> m.entries().forEach(e -> checkFree(e.value(), field + "." + e.key()));
        }
    }
}
