package plumeline.plan;

import java.util.List;
import plumeline.text.Node;

/// Puts a pass's overrides into its shot.
final class Passes {
    private Passes() {}

    /// Gives the shot's keys with the overrides in them and without its passes. An override that reaches nothing is left
    /// out; the check has said so.
    static Node.Mapping effective(Node.Mapping shot, Node pass) {
        var out = Overlay.without(shot, "passes");
        for (var over : Tree.entries(pass)) {
            out = Overlay.set(out, List.of(over.key().split("\\.", -1)), over).orElse(out);
        }
        return out;
    }
}
