package plumeline.answer;

import java.util.List;
import plumeline.quantity.PaperUnit;
import plumeline.text.Problem;

/// What came of a question.
public sealed interface Outcome {
    /// It was answered, whatever the verdict.
    ///
    /// @param answer the answer
    /// @param unit the unit of lengths the input was written in, for text
    record Answered(Answer answer, PaperUnit unit) implements Outcome {
        /// Writes the answer as text in the input's unit.
        ///
        /// @return text, with a line end behind it
        public String toText() {
            return answer.toText(unit);
        }
    }

    /// It was answered row by row.
    ///
    /// @param text a line of heads, then a line a row, with a line end behind it
    record Listed(String text) implements Outcome {}

    /// The input is wrong; every problem that was found.
    ///
    /// @param problems the problems in the order of the text, at least one
    record Refused(List<Problem> problems) implements Outcome {
        /// Copies the list.
        public Refused {
            problems = List.copyOf(problems);
        }
    }
}
