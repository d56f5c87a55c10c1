package plumeline.lesson;

import java.util.List;
import java.util.Optional;
import plumeline.text.Problem;

/// What reading a text of lessons gave.
///
/// @param lessons the lessons; empty where there are problems
/// @param problems all problems, in the order of the text
public record LessonsReading(Optional<Lessons> lessons, List<Problem> problems) {
    /// Copies the list.
    public LessonsReading {
        problems = List.copyOf(problems);
    }
}
