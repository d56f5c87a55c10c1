package plumeline.plan;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import plumeline.text.Document;
import plumeline.text.Node;
import plumeline.text.Problem;
import plumeline.text.Shape;

/// Reads plans, gives their grammar, writes solved marks back.
public final class Plans {
    private Plans() {}

    /// What reading a plan gave.
    ///
    /// @param plan the plan; empty where there are problems
    /// @param problems all problems, in the order of the text
    public record Reading(Optional<Plan> plan, List<Problem> problems) {
        /// Copies the list.
        public Reading {
            problems = List.copyOf(problems);
        }
    }

    /// Reads a plan and finds all its problems in one go: of the text, of its form, of its meaning. Never throws on bad
    /// input. A plan of a newer form is refused with that one problem.
    ///
    /// @param bytes the file's bytes, UTF-8
    /// @param file the file's name, for the places
    /// @return the plan, where it has no problems, and its problems
    public static Reading read(byte[] bytes, String file) {
        var document = Document.read(bytes, file);
        var problems = PlanCheck.problems(document);
        if (!problems.isEmpty()) return new Reading(Optional.empty(), problems);
        var source = new Plan.Source(
                document.file(),
                document.text(),
                (Node.Mapping) document.findRoot().orElseThrow(),
                "",
                Map.of());
        return new Reading(Optional.of(PlanBuilder.plan(source)), List.<Problem>of());
    }

    /// Puts values that were measured in the place of a plan's own; its text stays. Each value keeps the place where it
    /// is written, so that problems name its own file.
    ///
    /// @param plan the plan
    /// @param values by dotted path (`kit.lenses.fifty.focal_length`) what comes there; a path that leads nowhere
    /// changes nothing
    /// @return the plan with the values in it, or their problems
    public static Reading with(Plan plan, List<Node.Entry> values) {
        var root = plan.source().root();
        for (var value : values) {
            root = Overlay.set(root, List.of(value.key().split("\\.", -1)), value)
                    .orElse(root);
        }
        var problems = PlanCheck.problems(root, plan.source().file());
        if (!problems.isEmpty()) return new Reading(Optional.empty(), problems);
        var source = new Plan.Source(
                plan.source().file(),
                plan.source().text(),
                root,
                plan.source().measured()
                        + values.stream()
                                .map(value -> "\n" + value.key() + ": " + plain(value.value()))
                                .collect(Collectors.joining()),
                plan.source().files());
        return new Reading(Optional.of(PlanBuilder.plan(source)), List.<Problem>of());
    }

    /// Puts what lamps' photometric files hold into a plan.
    ///
    /// @param plan the plan
    /// @param files what they hold, each byte as a character, by the lamp of the kit that names them
    /// @return the plan with them in it
    public static Plan withFiles(Plan plan, Map<String, String> files) {
        if (files.isEmpty()) {
            return plan;
        }
        String all = files.entrySet().stream()
                .sorted(Map.Entry.comparingByKey())
                .map(file -> "\nkit.lights." + file.getKey() + ".file: " + file.getValue())
                .collect(Collectors.joining());
        var source = new Plan.Source(
                plan.source().file(),
                plan.source().text(),
                plan.source().root(),
                plan.source().measured() + all,
                files);
        return PlanBuilder.plan(source);
    }

    /// A value without its place.
    private static String plain(Node node) {
        return switch (node) {
            case Node.Scalar scalar -> scalar.text();
            case Node.Sequence list ->
                list.items().stream().map(Plans::plain).collect(Collectors.joining(", ", "[", "]"));
            case Node.Mapping keys ->
                keys.entries().stream()
                        .map(entry -> entry.key() + ": " + plain(entry.value()))
                        .collect(Collectors.joining(", ", "{", "}"));
        };
    }

    /// Gives the keys of a take of ink as it was read, which stand under `kit.inks.NAME.takes`.
    ///
    /// @return the keys, all optional
    public static List<Shape.Key> inkTake() {
        return KitGrammar.inkTake();
    }

    /// Gives the grammar of a plan as data, for the check and the JSON Schema.
    ///
    /// @return the shape of a whole plan
    public static Shape grammar() {
        return Grammar.plan();
    }

    /// Writes solved values into the plan's text: `12 mm solved` in place of `free` or `free between A and B`. Nothing
    /// else changes. A length is written in the papers' unit, in inches as a tape reads them (`2 3/4 in solved`),
    /// or in its bounds' unit where both are metric; an angle in its bounds' unit, else deg. `at: free` becomes a
    /// list; what stood in quotes, as in JSON, stays in them.
    ///
    /// @param plan the plan
    /// @param solvedSi by shot name and mark path (`second.x`) the values in SI: m, rad, a share for a level, bare
    /// for an
    ///     f-number; marks left out stay free
    /// @return the whole new text
    /// @throws IllegalArgumentException where there is no such shot, or no such free mark in it
    public static String keep(Plan plan, Map<String, Map<String, Double>> solvedSi) {
        return Keep.text(plan, solvedSi);
    }
}
