package plumeline.plan;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import plumeline.text.Document;
import plumeline.text.Problem;
import plumeline.text.Shape;

/// Reads plans, gives their grammar, writes solved marks back.
public final class Plans {
    private Plans() {}

    /// Reads a plan and finds all its problems in one go: of the text, of its form, of its meaning. Never throws on bad
    /// input. A plan of a newer form is refused with that one problem.
    ///
    /// @param bytes the file's bytes, UTF-8
    /// @param file the file's name, for the places
    /// @return the plan, where it has no problems, and its problems
    public static PlanReading read(byte[] bytes, String file) {
        var document = Document.read(bytes, file);
        var problems = PlanCheck.problems(document);
        if (!problems.isEmpty()) return new PlanReading(Optional.empty(), problems);
        return new PlanReading(Optional.of(PlanBuilder.plan(document)), List.<Problem>of());
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
