package plumeline.answer;

import java.util.ArrayList;
import java.util.List;
import plumeline.quantity.PaperUnit;

/// The answer to a question, always of this form.
///
/// @param question the question's name
/// @param verdict how it came out
/// @param answers the values, in the contract's units
/// @param assumed every default that was used
/// @param notes because, try, cautions, sources
public record Answer(String question, Verdict verdict, List<Item> answers, List<Assumed> assumed, Notes notes) {
    /// Copies the lists.
    public Answer {
        answers = List.copyOf(answers);
        assumed = List.copyOf(assumed);
    }

    /// Gets a value by its name.
    ///
    /// @param name the answer's name
    /// @return its value
    /// @throws IllegalArgumentException where there is none of that name
    public Value getValue(String name) {
        for (Item item : answers) {
            if (item.name().equals(name)) {
                return item.value();
            }
        }
        throw new IllegalArgumentException("no answer " + name + " to " + question);
    }

    /// Writes it as JSON, one object on lines of its own; numbers to seven digits.
    ///
    /// @return JSON text, with a line end behind it
    public String toJson() {
        return AnswerJson.write(this);
    }

    /// Writes it as text of about 30 lines at most, rounded to what a hand can set.
    ///
    /// @param unit the unit of lengths
    /// @return text, with a line end behind it
    public String toText(PaperUnit unit) {
        return new AnswerText(unit).write(this);
    }

    /// A default that was used because the input left it out.
    ///
    /// @param name the field's dotted path
    /// @param value what was taken
    /// @param why where it comes from
    public record Assumed(String name, Value value, String why) {}

    /// What an answer says beside its numbers.
    ///
    /// @param because what the numbers rest on and mean
    /// @param attempts what to try, each tried here first
    /// @param cautions what can hurt, or spoil the picture whatever the numbers say
    /// @param sources where the laws come from
    public record Notes(List<String> because, List<String> attempts, List<String> cautions, List<String> sources) {
        /// Nothing said.
        public static final Notes NONE = new Notes(List.of(), List.of(), List.of(), List.of());

        /// Copies the lists.
        public Notes {
            because = List.copyOf(because);
            attempts = List.copyOf(attempts);
            cautions = List.copyOf(cautions);
            sources = List.copyOf(sources);
        }

        Notes withBecause(String more) {
            List<String> all = new ArrayList<>(because);
            all.add(more);
            return new Notes(all, attempts, cautions, sources);
        }
    }
}
