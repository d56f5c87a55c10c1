package plumeline.plan;

import java.util.Set;
import plumeline.quantity.Kind;
import plumeline.text.Node;

/// Checks what the film's cut, cues, titles and wants point at, and that frames are counted whole.
final class PlanMeaning {
    private final Node root;
    private final Names names;
    private final Issues issues;

    PlanMeaning(Node root, Names names, Issues issues) {
        this.root = root;
        this.names = names;
        this.issues = issues;
    }

    void check() {
        Tree.find(root, "film", "frames").ifPresent(n -> wholeFrames(n, "film.frames", issues));
        new KitMeaning(root, issues).checkRate(root, "film.rate", "film", "rate");
        int index = 0;
        for (Node item : Tree.items(root, "cut")) checkCut(item, "cut[" + ++index + "]");
        index = 0;
        for (Node item : Tree.items(root, "cues")) checkSync(item, "cues[" + ++index + "].sync");
        for (var title : Tree.entries(root, "titles")) {
            issues.known(
                    new Named(title.key(), title.value().place()),
                    "titles." + title.key(),
                    names.shots().keySet(),
                    "a shot",
                    "shots");
        }
        new WantMeaning(names, "", root, issues).check(Tree.items(root, "wants"), "wants");
    }

    private void checkCut(Node cut, String path) {
        checkShotAndPass(cut, path);
        for (var key : new String[] {"frames", "each"}) {
            Tree.find(cut, key).ifPresent(n -> wholeFrames(n, path + "." + key, issues));
        }
        var passes = passesOf(cut);
        int index = 0;
        for (Node item : Tree.items(cut, "alternate")) {
            index++;
            int at = index;
            Written.named(item)
                    .ifPresent(
                            name -> issues.known(name, path + ".alternate[" + at + "]", passes, "a pass", home(cut)));
        }
    }

    private void checkSync(Node cue, String path) {
        Tree.find(cue, "sync").ifPresent(sync -> {
            checkShotAndPass(sync, path);
            Tree.find(sync, "when").ifPresent(n -> wholeFrames(n, path + ".when", issues));
        });
    }

    private void checkShotAndPass(Node node, String path) {
        Tree.find(node, "shot")
                .flatMap(Written::named)
                .ifPresent(
                        name -> issues.known(name, path + ".shot", names.shots().keySet(), "a shot", "shots"));
        Tree.find(node, "pass").flatMap(Written::named).ifPresent(name -> {
            if (knowsShot(node)) issues.known(name, path + ".pass", passesOf(node), "a pass", home(node));
        });
    }

    private boolean knowsShot(Node node) {
        return names.shots().containsKey(shotOf(node));
    }

    private Set<String> passesOf(Node node) {
        var shot = names.shots().get(shotOf(node));
        return shot == null ? Set.of() : shot.passes();
    }

    private static String shotOf(Node node) {
        return Tree.scalar(node, "shot").map(Node.Scalar::text).orElse("");
    }

    private static String home(Node node) {
        return "shots." + shotOf(node) + ".passes";
    }

    /// Says where a count of frames isn't whole.
    static void wholeFrames(Node node, String field, Issues issues) {
        var count = Written.quantityOf(node).filter(q -> q.kind() == Kind.FRAMES);
        if (count.isEmpty() || count.get().si() == Math.rint(count.get().si())) return;
        issues.add(
                node,
                field,
                "P-FRAMES-01",
                count.get().valueText(),
                "whole frames",
                "Try " + Math.round(count.get().si()) + " frames.");
    }
}
