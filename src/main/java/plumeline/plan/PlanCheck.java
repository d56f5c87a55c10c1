package plumeline.plan;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import plumeline.text.Check;
import plumeline.text.Document;
import plumeline.text.Nearest;
import plumeline.text.Node;
import plumeline.text.Place;
import plumeline.text.Problem;

/// Finds all problems of a plan: of the text, of its form, of its meaning, in the order of the text.
final class PlanCheck {
    private PlanCheck() {}

    static List<Problem> problems(Document document) {
        var root = document.findRoot();
        if (root.isEmpty()) return document.problems();
        var newer = newerForm(root.get());
        if (!newer.isEmpty()) return newer;
        var tooMuch = tooMuch(root.get());
        if (!tooMuch.isEmpty()) return Problem.merge(document.problems(), tooMuch);
        var form = Check.against(Grammar.plan(), root.get(), "", Place.ofFile(document.file()));
        var written = Problem.merge(document.problems(), form);
        return Problem.merge(written, meaning(root.get()));
    }

    /// Finds what is wrong with a tree whose text was without problems.
    static List<Problem> problems(Node root, String file) {
        return Problem.merge(Check.against(Grammar.plan(), root, "", Place.ofFile(file)), meaning(root));
    }

    private static List<Problem> newerForm(Node root) {
        var version = Tree.scalar(root, "plumeline");
        if (version.isEmpty() || !version.get().text().matches("[1-9][0-9]{0,8}")) return List.of();
        if (Long.parseLong(version.get().text()) <= Grammar.VERSION) return List.of();
        return List.of(new Problem(
                version.get().place(),
                "plumeline",
                "P-PLAN-01",
                version.get().text() + ", a form newer than this program",
                Grammar.VERSION + " for this program",
                "Read this plan with a newer Plumeline; this one reads plans of form " + Grammar.VERSION + "."));
    }

    private static List<Problem> tooMuch(Node root) {
        var issues = new Issues();
        limit(issues, root, "shots", Grammar.SHOTS, "shots");
        limit(issues, root, "deliver", Grammar.SORT, "deliveries");
        limit(issues, root, "things", Grammar.SORT, "things");
        for (var thing : Tree.entries(root, "things")) {
            limit(issues, thing.value(), "variants", Grammar.SORT, "variants", "things", thing.key());
        }
        for (var sort : Tree.entries(root, "kit")) {
            limit(issues, Tree.find(root, "kit").orElse(root), sort.key(), Grammar.SORT, "entries", "kit");
        }
        for (var shot : Tree.entries(root, "shots")) {
            for (var section : List.of("place", "lights", "moves", "passes")) {
                limit(issues, shot.value(), section, Grammar.IN_SHOT, "entries", "shots", shot.key());
            }
        }
        long readings = Tree.entries(root, "shots").stream()
                .mapToLong(e -> weight(e.value())
                        * (1L + Tree.entries(e.value(), "passes").size()))
                .sum();
        if (readings <= Grammar.READINGS) return issues.list();
        issues.add(
                Tree.entry(root, "shots").orElseThrow().value(),
                "shots",
                "P-PLAN-02",
                "made of too much: its shots and their passes come to " + readings + " values",
                "made of at most " + Grammar.READINGS + " values, a shot's once for each of its passes",
                "Split the film into several plans.");
        return issues.list();
    }

    /// Counts the values under a node.
    private static long weight(Node node) {
        return switch (node) {
            case Node.Scalar _ -> 1;
            case Node.Sequence s ->
                s.items().stream().mapToLong(PlanCheck::weight).sum() + 1;
            case Node.Mapping m ->
                m.entries().stream().mapToLong(e -> weight(e.value())).sum() + 1;
        };
    }

    private static void limit(Issues issues, Node node, String key, int most, String what, String... path) {
        int count = Tree.entries(node, key).size();
        if (count <= most) return;
        var field = String.join(".", path) + (path.length == 0 ? "" : ".") + key;
        Tree.entry(node, key)
                .ifPresent(e -> issues.add(
                        e.value(),
                        field,
                        "P-PLAN-02",
                        count + " " + what + " long",
                        "at most " + most + " " + what + " long",
                        "Split it into several plans, or leave out what isn't used."));
    }

    private static List<Problem> meaning(Node root) {
        var names = Names.of(root);
        var issues = new Issues();
        new KitMeaning(root, issues).check();
        new FilmMeaning(root, names, issues).check();
        for (var shot : Tree.entries(root, "shots")) {
            var path = "shots." + shot.key();
            var own = shotProblems(shot, path, names);
            own.forEach(issues::add);
            var passes = Tree.entries(shot.value(), "passes");
            if (passes.isEmpty()) continue;
            var before = new HashSet<>(own);
            before.addAll(Check.against(Grammar.shot(), shot.value(), path, shot.keyPlace()));
            for (var pass : passes)
                passProblems(shot, pass, path, names, before).forEach(issues::add);
        }
        return issues.list();
    }

    private static List<Problem> shotProblems(Node.Entry shot, String path, Names names) {
        var issues = new Issues();
        new ShotMeaning(shot, path, names, issues).check();
        return issues.list();
    }

    /// What is wrong with a shot only because of a pass: said at the override where that is the place, else at the
    /// pass's name.
    private static List<Problem> passProblems(
            Node.Entry shot, Node.Entry pass, String path, Names names, Set<Problem> before) {
        if (!(shot.value() instanceof Node.Mapping keys)) return List.of();
        var issues = new Issues();
        var passPath = path + ".passes." + pass.key();
        new PassMeaning(keys, pass, passPath, issues).check();
        var effective = Overlay.without(Overlay.effective(keys, pass.value()), "wants");
        var changed = new Node.Entry(shot.key(), shot.keyPlace(), effective);
        var after = new ArrayList<>(Check.against(Grammar.shot(), effective, path, shot.keyPlace()));
        after.addAll(shotProblems(changed, path, names));
        for (var problem : after) {
            if (!before.contains(problem)) issues.add(moved(problem, path, passPath, pass));
        }
        return issues.list();
    }

    private static Problem moved(Problem problem, String path, String passPath, Node.Entry pass) {
        var span = pass.value().place();
        boolean inside =
                problem.place().start() >= span.start() && problem.place().end() <= span.end();
        var field = problem.field().startsWith(path)
                ? passPath + problem.field().substring(path.length())
                : problem.field();
        return new Problem(
                inside ? problem.place() : pass.keyPlace(),
                field,
                problem.code(),
                problem.given(),
                problem.allowed(),
                problem.attempt());
    }

    /// Checks that a pass's overrides reach something in its shot, and free nothing.
    private static final class PassMeaning {
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
            if (steps.size() == 2 && Overlay.MADE.contains(steps.getFirst())) return;
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
            issues.add(
                    over.value(),
                    path + "." + over.key(),
                    "P-PASS-01",
                    "a path that reaches nothing in the shot",
                    "a path to something written in the shot",
                    attempt);
        }

        private void checkFree(Node value, String field) {
            switch (value) {
                case Node.Scalar s -> {
                    if (s.text().equals("free") || s.text().startsWith("free ")) {
                        issues.add(
                                s,
                                field,
                                "P-PASS-02",
                                Issues.shown(s.text()),
                                "a value: all passes share the shot's marks",
                                "Free it in the shot instead.");
                    }
                }
                case Node.Sequence s -> s.items().forEach(item -> checkFree(item, field));
                case Node.Mapping m -> m.entries().forEach(e -> checkFree(e.value(), field + "." + e.key()));
            }
        }
    }
}
