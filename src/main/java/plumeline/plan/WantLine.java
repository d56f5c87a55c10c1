package plumeline.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import plumeline.quantity.Kind;
import plumeline.quantity.PaperUnit;
import plumeline.quantity.Print;
import plumeline.quantity.Quantity;
import plumeline.text.Node;
import plumeline.text.Place;

/// A want as it is written: its word, its subject, its further keys.
///
/// @param id the want's id: the shot's name or `film`, and its number from 1
/// @param word its want word
/// @param subjects the names under the want word; `all`, `camera`, `cuts` and `shot` stand as written
/// @param when the instants that count
/// @param pass the pass that it is about, where written
/// @param written all its keys as written: `within`, `by`, `gap`, `behind` …
/// @param place where its want word is written
public record WantLine(
        String id, String word, List<Named> subjects, When when, Optional<String> pass, Written written, Place place) {
    /// Copies the list.
    public WantLine {
        subjects = List.copyOf(subjects);
    }

    /// Gives the want as a sentence without verb: `hidden second, third, fourth behind first at start`.
    ///
    /// @param unit the papers' unit; lengths written in the other one are said in it
    /// @return its words in the order written
    public String toText(PaperUnit unit) {
        var out = new StringBuilder(word);
        for (var entry : written.node().entries()) {
            var key = entry.key();
            var value = value(entry.value(), unit);
            if (key.equals(word)) out.append(' ').append(value);
            else if (!key.equals("when"))
                out.append(' ').append(key.replace('_', ' ')).append(' ').append(value);
        }
        return out.append(when(when)).toString();
    }

    private static String value(Node node, PaperUnit unit) {
        return switch (node) {
            case Node.Scalar s -> scalar(s, unit);
            case Node.Sequence s -> join(s.items(), unit);
            case Node.Mapping m ->
                join(m.entries().stream().map(Node.Entry::value).toList(), unit);
        };
    }

    private static String scalar(Node.Scalar scalar, PaperUnit unit) {
        return Written.quantityOf(scalar)
                .filter(quantity -> quantity.kind() == Kind.LENGTH && isForeign(quantity, unit))
                .map(quantity -> new Print(unit).difference(quantity.si(), Print.Hand.TAPE))
                .orElse(scalar.text());
    }

    private static boolean isForeign(Quantity length, PaperUnit unit) {
        return length.unit().symbol().equals("in") == (unit == PaperUnit.MILLIMETRES);
    }

    private static String join(List<Node> items, PaperUnit unit) {
        var parts = new ArrayList<String>();
        for (Node item : items) parts.add(value(item, unit));
        return String.join(", ", parts);
    }

    private static String when(When when) {
        return switch (when) {
            case When.Start _ -> " at start";
            case When.End _ -> " at end";
            case When.Whole _ -> "";
            case When.AtTime at -> " at " + at.time().valueText();
            case When.AtFrame at -> " at frame " + at.frame();
        };
    }
}
