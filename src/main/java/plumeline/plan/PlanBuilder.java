package plumeline.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import plumeline.quantity.Kind;
import plumeline.quantity.PaperUnit;
import plumeline.quantity.Ratio;
import plumeline.text.Node;

/// Makes the records of a whole plan from a checked tree.
final class PlanBuilder {
    private PlanBuilder() {}

    static Plan plan(Plan.Source source) {
        var root = source.root();
        var kit = KitBuilder.kit(root, source.files());
        var things = Tree.entries(root, "things").stream()
                .map(e -> KitBuilder.thing(root, e.key()))
                .toList();
        var shots = new ShotBuilder(root, kit);
        return new Plan(
                source,
                film(root),
                Tree.entries(root, "deliver").stream()
                        .map(PlanBuilder::delivery)
                        .toList(),
                things,
                kit,
                Tree.entries(root, "shots").stream().map(shots::shot).toList(),
                new Plan.CutList(Cut.list(Tree.items(root, "cut")), overlays(root), cues(root), titles(root)),
                wants("film", Tree.items(root, "wants")));
    }

    private static Plan.Film film(Node root) {
        var w = KitBuilder.written(Tree.entry(root, "film").orElseThrow());
        var papers = w.findWord("papers").map(p -> p.equals("in") ? PaperUnit.INCHES : PaperUnit.MILLIMETRES);
        return new Plan.Film(
                w.findWord("title"),
                KitBuilder.get(w, "rate"),
                KitBuilder.whole(w, "frames"),
                w.findQuantity("tempo"),
                papers,
                w);
    }

    private static Delivery delivery(Node.Entry entry) {
        var w = KitBuilder.written(entry);
        var size = w.listQuantities("size");
        return new Delivery(
                entry.key(),
                w.findWord("ratio").flatMap(Ratio::read),
                size.isEmpty()
                        ? Optional.empty()
                        : Optional.of(new Delivery.Size(
                                (int) size.get(0).si(), (int) size.get(1).si())),
                w.findQuantity("length"),
                new Delivery.KeepOut(
                        share(w, "keep_out.top"),
                        share(w, "keep_out.bottom"),
                        share(w, "keep_out.left"),
                        share(w, "keep_out.right")),
                w);
    }

    private static double share(Written w, String path) {
        return w.findQuantity(path).map(q -> q.si()).orElse(0.0);
    }

    private static List<Plan.Overlay> overlays(Node root) {
        var out = new ArrayList<Plan.Overlay>();
        for (Node item : Tree.items(root, "overlays")) {
            var w = new Written((Node.Mapping) item, item.place());
            out.add(new Plan.Overlay(w.findWord("overlay").orElseThrow(), sync(w, "over"), w));
        }
        return out;
    }

    private static Plan.Sync sync(Written owner, String key) {
        var w = owner.findNode(key)
                .map(n -> new Written((Node.Mapping) n, n.place()))
                .orElseThrow();
        return new Plan.Sync(
                w.listNames("shot").getFirst(), w.listNames("pass").stream().findFirst(), when(w));
    }

    private static List<Plan.Cue> cues(Node root) {
        var out = new ArrayList<Plan.Cue>();
        for (Node item : Tree.items(root, "cues")) {
            var w = new Written((Node.Mapping) item, item.place());
            out.add(new Plan.Cue(w.findWord("sound").orElseThrow(), sync(w, "sync"), w));
        }
        return out;
    }

    private static List<Plan.Title> titles(Node root) {
        var out = new ArrayList<Plan.Title>();
        for (var shot : Tree.entries(root, "titles")) {
            for (var line : Tree.entries(shot.value())) {
                if (line.value() instanceof Node.Scalar s) {
                    out.add(new Plan.Title(shot.key(), line.key(), s.text(), s.place()));
                }
            }
        }
        return out;
    }

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
