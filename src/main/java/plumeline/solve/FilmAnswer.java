package plumeline.solve;

import java.util.List;
import plumeline.plan.Plan;

/// The finding on a film.
///
/// @param plan the plan
/// @param planSha256 SHA-256 of its text and of what lessons put in the place of its values, in hexadecimal
/// @param verdict the worst of its shots and wants
/// @param shots its shots in order
/// @param wants the film's own wants in order
public record FilmAnswer(
        Plan plan, String planSha256, Verdict verdict, List<ShotAnswer> shots, List<WantAnswer> wants) {
    /// Copies the lists.
    public FilmAnswer {
        shots = List.copyOf(shots);
        wants = List.copyOf(wants);
    }
}
