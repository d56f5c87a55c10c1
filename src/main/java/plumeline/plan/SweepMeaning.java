package plumeline.plan;

import java.util.List;
import java.util.Optional;
import plumeline.quantity.Quantity;
import plumeline.text.Node;

/// Checks what the form of a sweep and of beads can't say.
final class SweepMeaning {
    private SweepMeaning() {}

    /// A wall ends over its bend.
    static void check(Node sweep, String path, Issues issues) {
        Optional<Quantity> radius = Tree.find(sweep, "radius").flatMap(Written::quantityOf);
        Optional<Node> height = Tree.find(sweep, "height");
        Optional<Quantity> high = height.flatMap(Written::quantityOf);
        if (radius.isEmpty() || high.isEmpty() || high.get().si() > radius.get().si()) return;
        issues.add(
                height.get(),
                path + ".height",
                "P-SWEEP-01",
                high.get().valueText(),
                "more than " + radius.get().valueText() + ", the bend's radius",
                "Measure from the table to its upper edge.");
    }

    /// The smallest drop comes first.
    static void checkBeads(Node placed, String path, Issues issues) {
        List<Node> size = Tree.items(placed, "beads", "size");
        if (size.size() != 2) return;
        Optional<Quantity> least = Written.quantityOf(size.getFirst());
        Optional<Quantity> most = Written.quantityOf(size.getLast());
        if (least.isEmpty() || most.isEmpty() || most.get().si() >= least.get().si()) return;
        issues.add(
                size.getLast(),
                path + ".size[2]",
                "P-BEADS-01",
                most.get().valueText(),
                least.get().valueText() + " or more: the smallest comes first",
                "Try [" + most.get().valueText() + ", " + least.get().valueText() + "].");
    }
}
