package plumeline.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import plumeline.quantity.Kind;
import plumeline.text.Node;

/// Makes the records of wants from a checked tree.
final class WantBuilder {
    private WantBuilder() {}

    static List<WantLine> wants(String owner, List<Node> items) {
        var out = new ArrayList<WantLine>();
        for (Node item : items) {
            out.add(want(owner + "." + (out.size() + 1), (Node.Mapping) item));
        }
        return out;
    }

    private static WantLine want(String id, Node.Mapping node) {
        var word = node.entries().stream()
                .filter(e -> WantGrammar.isWord(e.key()))
                .findFirst()
                .orElseThrow();
        var w = new Written(node, node.place());
        return new WantLine(
                id, word.key(), Written.namesOf(word.value()), when(w), w.findWord("pass"), w, word.keyPlace());
    }

    static When when(Written w) {
        var node = w.findNode("when");
        if (node.isEmpty()) return new When.Whole();
        Optional<String> word = w.findWord("when");
        return switch (word.orElse("")) {
            case "start" -> new When.Start();
            case "end" -> new When.End();
            case "whole" -> new When.Whole();
            default -> {
                var at = w.findQuantity("when").orElseThrow();
                yield at.kind() == Kind.TIME ? new When.AtTime(at) : new When.AtFrame(Math.round(at.si()));
            }
        };
    }
}
