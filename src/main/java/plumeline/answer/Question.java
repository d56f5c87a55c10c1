package plumeline.answer;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import plumeline.answer.Answer.Assumed;
import plumeline.text.Check;
import plumeline.text.Document;
import plumeline.text.Node;
import plumeline.text.Place;
import plumeline.text.Problem;
import plumeline.text.Shape;

/// A question that can be asked.
public final class Question {
    private final Inquiry<?> inquiry;

    /// Makes a question of how it is asked.
    ///
    /// @param inquiry its grammar, reading and answering
    public Question(Inquiry<?> inquiry) {
        this.inquiry = inquiry;
    }

    /// Gives its name.
    ///
    /// @return such as `framing`
    public String name() {
        return inquiry.name();
    }

    /// Says what it asks.
    ///
    /// @return one line without a full stop
    public String asks() {
        return inquiry.asks();
    }

    /// Gives its grammar.
    ///
    /// @return the shape of its input
    public Shape shape() {
        return inquiry.shape();
    }

    /// Gives an input with comments that runs as it is.
    ///
    /// @return YAML, with a line end behind it
    public String example() {
        return inquiry.example();
    }

    /// Answers an input beside which nothing lies.
    ///
    /// @param bytes YAML or JSON in UTF-8
    /// @param file its name, as messages say it
    /// @return the answer, or every problem of the input
    public Outcome answer(byte[] bytes, String file) {
        return answer(bytes, file, Beside.NOTHING);
    }

    /// Answers an input.
    ///
    /// @param bytes YAML or JSON in UTF-8
    /// @param file its name, as messages say it
    /// @param beside the files that it may name
    /// @return the answer, or every problem of the input
    public Outcome answer(byte[] bytes, String file, Beside beside) {
        return answer(bytes, file, beside, Form.WHOLE);
    }

    /// Tells whether its answer can be listed row by row too.
    ///
    /// @return true where [#list] does it
    public boolean hasTable() {
        return inquiry.hasTable();
    }

    /// Answers an input row by row.
    ///
    /// @param bytes YAML or JSON in UTF-8
    /// @param file its name, as messages say it
    /// @param beside the files that it may name
    /// @return the rows, or every problem of the input
    public Outcome list(byte[] bytes, String file, Beside beside) {
        return answer(bytes, file, beside, Form.ROWS);
    }

    private enum Form {
        WHOLE,
        ROWS
    }

    private Outcome answer(byte[] bytes, String file, Beside beside, Form form) {
        Document document = Document.read(bytes, file);
        Optional<Node> root = document.findRoot();
        if (root.isEmpty()) {
            return new Outcome.Refused(document.problems().isEmpty() ? nothing(file) : document.problems());
        }
        String example = "./plumeline ask " + inquiry.name() + " --example";
        List<Problem> problems =
                Problem.merge(document.problems(), Check.question(inquiry.shape(), root.get(), example));
        if (!problems.isEmpty() || !(root.get() instanceof Node.Mapping map)) {
            return new Outcome.Refused(problems.isEmpty() ? nothing(file) : problems);
        }
        return answer(inquiry, Given.of(map, beside.or(inquiry.files())), form);
    }

    private static <I> Outcome answer(Inquiry<I> inquiry, Given given, Form form) {
        I inputs = inquiry.read(given);
        if (!given.problems().isEmpty()) {
            return new Outcome.Refused(Problem.merge(given.problems(), List.of()));
        }
        double[] settled = inquiry.settle(inputs, given.unit());
        if (form == Form.ROWS) {
            return new Outcome.Listed(inquiry.table(inputs, settled));
        }
        Words words = new Words(given.unit());
        Draft draft = inquiry.answer(inputs, settled, words);
        Spreads spreads = new Spreads(draft);
        if (!given.spreads().isEmpty()) {
            new Moves<>(inquiry, given, settled).addTo(spreads, given.spreads());
        }
        List<Assumed> assumed = new ArrayList<>(given.assumed());
        assumed.addAll(draft.assumed());
        return new Outcome.Answered(
                new Answer(inquiry.name(), spreads.verdict(), spreads.items(), assumed, spreads.notes()), given.unit());
    }

    private static List<Problem> nothing(String file) {
        return List.of(new Problem(
                Place.ofFile(file),
                "",
                "P-ASK-01",
                "empty",
                "a map of the question's fields",
                "Try the question's example: add --example."));
    }
}
