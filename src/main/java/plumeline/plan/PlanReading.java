package plumeline.plan;

import java.util.List;
import java.util.Optional;
import plumeline.text.Problem;

/// What reading a plan gave.
///
/// @param plan the plan; empty where there are problems
/// @param problems all problems, in the order of the text
public record PlanReading(Optional<Plan> plan, List<Problem> problems) {
    /// Copies the list.
    public PlanReading {
        problems = List.copyOf(problems);
    }
}
