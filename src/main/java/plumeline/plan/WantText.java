package plumeline.plan;

import java.util.ArrayList;
import java.util.List;
import plumeline.text.Node;

/// Writes a want in a line, in the words of the plan.
final class WantText {
    private WantText() {}

    static String of(WantLine want) {
        var out = new StringBuilder(want.word());
        for (var entry : want.written().node().entries()) {
            var key = entry.key();
            var value = value(entry.value());
            if (key.equals(want.word())) out.append(' ').append(value);
            else if (!key.equals("when")) out.append(' ').append(key.replace('_', ' ')).append(' ').append(value);
        }
        return out.append(when(want.when())).toString();
    }

    private static String value(Node node) {
        return switch (node) {
            case Node.Scalar s -> s.text();
            case Node.Sequence s -> join(s.items());
            case Node.Mapping m -> join(m.entries().stream().map(Node.Entry::value).toList());
        };
    }

    private static String join(List<Node> items) {
        var parts = new ArrayList<String>();
        for (Node item : items) parts.add(value(item));
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
