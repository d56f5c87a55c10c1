package plumeline.plan;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import plumeline.quantity.Kind;
import plumeline.text.Nearest;
import plumeline.text.Node;
import plumeline.text.Place;
import plumeline.text.Problem;

/// Collects what is wrong with a plan's meaning.
final class Issues {
    private static final int MOST = 1000;
    private static final int NAMED = 12;
    private static final int LONGEST = 60;

    private final List<Problem> problems = new ArrayList<>();

    List<Problem> list() {
        return problems;
    }

    void add(Place place, String field, String code, String given, String allowed, String attempt) {
        if (problems.size() < MOST) problems.add(new Problem(place, field, code, given, allowed, attempt));
    }

    void add(Node node, String field, String code, String given, String allowed, String attempt) {
        add(node.place(), field, code, given, allowed, attempt);
    }

    void add(Problem problem) {
        if (problems.size() < MOST) problems.add(problem);
    }

    /// Says that a name isn't known, unless it is.
    ///
    /// @param what what should be named, with its article: `a lens`
    /// @param home where such names are given: `kit.lenses`
    void known(Named name, String field, Collection<String> known, String what, String home) {
        if (known.contains(name.name())) return;
        add(
                name.place(),
                field,
                "P-REF-01",
                shown(name.name()),
                allowed(known, what, home),
                attempt(name.name(), known, home));
    }

    /// Says where a clip's or picture's file isn't named by a path from the plan's folder.
    void beside(Node node, String field) {
        beside(node, field, "Try takes/A003.mov, or ../footage/A003.mov.");
    }

    /// Says where a file isn't named by a path from the plan's folder.
    void beside(Node node, String field, String attempt) {
        if (!(node instanceof Node.Scalar file)) return;
        boolean isElsewhere = file.text().matches("/.*|\\\\.*|[A-Za-z][A-Za-z0-9+.-]*:.*");
        boolean isNamed = file.text().matches(".*[^/\\\\.\\s][^/\\\\]*");
        if (!isElsewhere && isNamed) return;
        add(
                node,
                field,
                "P-CLIP-02",
                isNamed ? shown(file.text()) : "no file's name",
                "a path from the plan's folder, so that it is found wherever both are",
                attempt);
    }

    /// Says where a count of frames isn't whole.
    void wholeFrames(Node node, String field) {
        var count = Written.quantityOf(node).filter(q -> q.kind() == Kind.FRAMES);
        if (count.isEmpty() || count.get().si() == Math.rint(count.get().si())) return;
        add(
                node,
                field,
                "P-FRAMES-01",
                count.get().valueText(),
                "whole frames",
                "Try " + Math.round(count.get().si()) + " frames.");
    }

    private static String allowed(Collection<String> known, String what, String home) {
        var of = "the name of " + what + " in " + home;
        if (known.isEmpty()) return of + ", which has none";
        return of + ": " + list(known);
    }

    private static String attempt(String name, Collection<String> known, String home) {
        return Nearest.find(name, known)
                .map(near -> "Try " + near + ".")
                .orElse("Add `" + shown(name) + "` to " + home + ", or use a name that is there.");
    }

    /// Lists names as messages do: `a, b or c`; of many the first dozen.
    static String list(Collection<String> names) {
        var all = new ArrayList<>(names.stream().limit(NAMED).map(Issues::shown).toList());
        if (names.size() > NAMED) all.add("one of " + (names.size() - NAMED) + " more");
        if (all.size() < 2) return String.join("", all);
        return String.join(", ", all.subList(0, all.size() - 1)) + " or " + all.getLast();
    }

    static String shown(String text) {
        var line = text.replace('\n', ' ');
        return line.length() > LONGEST ? line.substring(0, LONGEST) + "…" : line;
    }
}
