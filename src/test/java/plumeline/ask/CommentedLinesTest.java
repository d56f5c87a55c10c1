package plumeline.ask;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import plumeline.answer.Outcome;
import plumeline.answer.Question;
import plumeline.text.Document;
import plumeline.text.Node;
import plumeline.text.Shape;

/// What a question's example offers in comments runs too: each line alone, in place of what it excludes.
final class CommentedLinesTest {
    private static final Pattern COMMENTED = Pattern.compile("# +(?:or )?([a-z_]+: .*?)( +#.*)?");

    @Test
    void everyCommentedLine_runsWhenItIsUncommented() {
        List<String> tried = new ArrayList<>();
        List<String> refusals = new ArrayList<>();
        for (Question question : Questions.listAll()) {
            Shape.Keys shape = (Shape.Keys) question.shape();
            for (String line : question.example().split("\n")) {
                Matcher matcher = COMMENTED.matcher(line);
                if (!matcher.matches()) {
                    continue;
                }
                Optional<List<String>> keys = findKeys(matcher.group(1), shape);
                if (keys.isPresent()) {
                    String text = without(question.example(), excluded(keys.get(), shape)) + unfolded(matcher.group(1));
                    if (Asking.ask(question.name(), text) instanceof Outcome.Refused refused) {
                        refusals.add(question.name() + ": " + line + " " + refused);
                    }
                    tried.add(matcher.group(1));
                }
            }
        }
        assertThat(refusals).isEmpty();
        assertThat(tried).hasSizeGreaterThanOrEqualTo(14).anyMatch(line -> line.startsWith("base:"));
    }

    /// Several keys in a line are plain values, to be written one below the other.
    private static String unfolded(String line) {
        List<Node.Entry> entries = map(line).orElseThrow().entries();
        return entries.size() == 1
                ? line + "\n"
                : entries.stream()
                        .map(entry -> entry.key() + ": " + ((Node.Scalar) entry.value()).text() + "\n")
                        .collect(Collectors.joining());
    }

    private static Optional<Node.Mapping> map(String line) {
        Document document = Document.read(("{" + line + "}").getBytes(StandardCharsets.UTF_8), "line");
        return document.findRoot().filter(_ -> document.problems().isEmpty()).map(Node.Mapping.class::cast);
    }

    /// The keys that a line writes, where all of them are the question's.
    private static Optional<List<String>> findKeys(String line, Shape.Keys shape) {
        List<String> known = shape.keys().stream().map(Shape.Key::name).toList();
        return map(line).map(Node.Mapping::keys).map(List::copyOf).filter(known::containsAll);
    }

    /// The keys themselves, and what a rule doesn't let stand beside them.
    private static List<String> excluded(List<String> keys, Shape.Keys shape) {
        List<String> all = new ArrayList<>(keys);
        for (Shape.Rule rule : shape.rules()) {
            List<List<String>> groups = switch (rule) {
                case Shape.Rule.ExactlyOne one -> one.groups();
                case Shape.Rule.AtMostOne one ->
                    one.keys().stream().map(List::of).toList();
                default -> List.of();
            };
            if (groups.stream().flatMap(List::stream).anyMatch(keys::contains)) {
                groups.stream().flatMap(List::stream).forEach(all::add);
            }
        }
        return all;
    }

    private static String without(String example, List<String> keys) {
        String text = example;
        for (String key : keys) {
            text = text.replaceAll("(?m)^" + key + ":.*\n(?:[ \t]+.*\n)*", "");
        }
        return text;
    }
}
