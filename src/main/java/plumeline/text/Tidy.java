package plumeline.text;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import org.snakeyaml.engine.v2.api.LoadSettings;
import org.snakeyaml.engine.v2.scanner.ScannerImpl;
import org.snakeyaml.engine.v2.scanner.StreamReader;
import org.snakeyaml.engine.v2.tokens.ScalarToken;
import org.snakeyaml.engine.v2.tokens.Token;

/// Rewrites the white space of a text and nothing else.
///
/// Each level of nesting is indented by two spaces, lists under a key too. Inside brackets there is a space behind
/// commas and colons and none elsewhere; inside a quantity or a mark one where there are some, while texts keep
/// theirs. Spaces at the ends of lines go, of several blank lines one stays, blank lines
/// at the start and end go, and the text ends with one line end. Line breaks stay where they are, so do the spaces
/// before a comment that follows something on its line, and values that neighbouring lines have lined up in one column.
public final class Tidy {
    private Tidy() {}

    /// Rewrites the white space. The new text is read again before it is given back: its tokens, comments and tree must
    /// be those of the old one. Where spaces inside a quantity were drawn together, it must
    /// read as before. Tidying twice gives the same as tidying once.
    ///
    /// @param text the whole text, YAML or JSON
    /// @return the tidy text; the text as it is where [Document#read] finds problems in it, or where we cannot
    /// prove that
    ///     nothing but white space would change
    public static String rewrite(String text) {
        Document before = read(text);
        if (!before.problems().isEmpty()
                || before.findRoot().isEmpty()
                || !before.text().equals(text)) {
            return text;
        }
        Node root = before.findRoot().get();
        Source source = new Source("", text);
        List<Piece> pieces = Pieces.cut(source, root);
        if (pieces.isEmpty()) {
            return text;
        }
        String tidy = Spacing.write(source, pieces);
        return isSame(text, root, tidy) ? tidy : text;
    }

    private static Document read(String text) {
        return Document.read(text.getBytes(StandardCharsets.UTF_8), "");
    }

    private static boolean isSame(String text, Node root, String tidy) {
        if (!withoutSpace(text).equals(withoutSpace(tidy))) {
            return false;
        }
        Document after = read(tidy);
        return after.problems().isEmpty()
                && after.findRoot().isPresent()
                && sameTree(root, after.findRoot().get(), true)
                && comments(text, root).equals(comments(tidy, after.findRoot().get()))
                && tokens(text).equals(tokens(tidy));
    }

    private static String withoutSpace(String text) {
        StringBuilder rest = new StringBuilder(text.length());
        for (int i = 0; i < text.length(); i++) {
            char c = text.charAt(i);
            if (c != ' ' && c != '\t' && c != '\n' && c != '\r') {
                rest.append(c);
            }
        }
        return rest.toString();
    }

    private static boolean sameTree(Node a, Node b, boolean mayBeLoose) {
        if (a instanceof Node.Scalar one && b instanceof Node.Scalar other) {
            boolean same = one.text().equals(other.text())
                    || mayBeLoose && Loose.is(one) && Loose.drawn(one.text()).equals(other.text());
            return same && one.quoted() == other.quoted();
        }
        if (a instanceof Node.Sequence one && b instanceof Node.Sequence other) {
            boolean same = one.items().size() == other.items().size();
            for (int i = 0; same && i < one.items().size(); i++) {
                same = sameTree(one.items().get(i), other.items().get(i), mayBeLoose);
            }
            return same;
        }
        if (a instanceof Node.Mapping one && b instanceof Node.Mapping other) {
            boolean same = one.keys().equals(other.keys());
            for (int i = 0; same && i < one.entries().size(); i++) {
                Node.Entry entry = one.entries().get(i);
                boolean loose = mayBeLoose && Loose.mayBe(entry.key());
                same = sameTree(entry.value(), other.entries().get(i).value(), loose);
            }
            return same;
        }
        return false;
    }

    private static List<String> comments(String text, Node root) {
        List<String> comments = new ArrayList<>();
        for (Piece piece : Pieces.cut(new Source("", text), root)) {
            if (piece.sort() == Piece.Sort.COMMENT) {
                comments.add(text.substring(piece.start(), piece.end()));
            }
        }
        return comments;
    }

    private static String scalar(ScalarToken token) {
        return token.getStyle() + " " + (token.isPlain() ? Loose.tight(token.getValue()) : token.getValue());
    }

    /// Lists the parser's own tokens, without those that stand for the indentation itself: an indented list has one
    /// where the same list in its key's column has none. The trees say that the nesting is the same.
    private static List<String> tokens(String text) {
        LoadSettings settings = DocumentReader.settings();
        List<String> tokens = new ArrayList<>();
        ScannerImpl scanner = new ScannerImpl(settings, new StreamReader(settings, new Source("", text).forParser()));
        while (scanner.hasNext()) {
            Token token = scanner.next();
            switch (token.getTokenId()) {
                case BlockMappingStart, BlockSequenceStart, BlockEnd -> {}
                case Scalar -> tokens.add(token instanceof ScalarToken s ? scalar(s) : "");
                default -> tokens.add(token.getTokenId().name());
            }
        }
        return tokens;
    }
}
