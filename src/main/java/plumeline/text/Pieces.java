package plumeline.text;

import java.util.ArrayList;
import java.util.List;

/// Cuts a text into pieces between which there is nothing but white space; made for one use.
final class Pieces {
    /// A comment's column until the piece behind it is known.
    private static final int AS_NEXT = -1;

    private static final Leaves.Leaf NOTHING = new Leaves.Leaf(0, 0, Leaves.Part.BRACKETS, List.of(), 1);

    private final String text;
    private final Source source;
    private final List<Piece> pieces = new ArrayList<>();
    private Leaves.Leaf before = NOTHING;
    private int at;
    private int depth;
    private int flowColumn;

    private Pieces(Source source) {
        this.source = source;
        this.text = source.text;
        this.at = source.first;
    }

    /// Cuts a text.
    ///
    /// @param source the text
    /// @param root its tree
    /// @return the pieces in order; none where the text has something that we do not tidy
    static List<Piece> cut(Source source, Node root) {
        Pieces pieces = new Pieces(source);
        for (Leaves.Leaf leaf : Leaves.of(source, root)) {
            if (!pieces.cutGap(leaf.start(), leaf)) {
                return List.of();
            }
            pieces.addLeaf(leaf);
        }
        return pieces.cutGap(source.text.length(), NOTHING) ? pieces.placed() : List.of();
    }

    private void addLeaf(Leaves.Leaf leaf) {
        before = leaf;
        at = Math.max(at, leaf.end());
        if (leaf.part() == Leaves.Part.BRACKETS) {
            return;
        }
        char first = text.charAt(leaf.start());
        boolean block = depth == 0 && (first == '|' || first == '>');
        int column = depth > 0 ? inFlow() : leaf.part() == Leaves.Part.KEY ? leaf.keyColumn() : leaf.contentColumn();
        int further = block ? leaf.shift() : depth > 0 ? inFlow() : leaf.contentColumn();
        boolean loose = leaf.part() == Leaves.Part.LOOSE_VALUE;
        Piece.Sort sort = block ? Piece.Sort.BLOCK_TEXT : loose ? Piece.Sort.LOOSE_TEXT : Piece.Sort.TEXT;
        pieces.add(new Piece(leaf.start(), leaf.end(), sort, column, further));
    }

    private int inFlow() {
        return flowColumn + Leaves.STEP * depth;
    }

    /// Cuts what stands before a leaf. Gives false where that is nothing we know.
    private boolean cutGap(int to, Leaves.Leaf next) {
        while (at < to) {
            char c = text.charAt(at);
            if (c == ' ' || c == '\t' || c == '\n' || c == '\r') {
                at++;
            } else if (c == '#') {
                addComment(next);
            } else if (isMarker()) {
                add(3, Piece.Sort.MARKER, 0, 1);
            } else if (!addIndicator(c, next)) {
                return false;
            }
        }
        return true;
    }

    private boolean isMarker() {
        return source.columnOf(at) == 0
                && (text.startsWith("---", at) || text.startsWith("...", at))
                && (at + 3 == text.length() || text.charAt(at + 3) <= ' ');
    }

    private void addComment(Leaves.Leaf next) {
        int end = at;
        while (end < text.length() && text.charAt(end) != '\n' && text.charAt(end) != '\r') {
            end++;
        }
        while (text.charAt(end - 1) <= ' ') {
            end--;
        }
        add(end - at, Piece.Sort.COMMENT, depth > 0 ? inFlow() : commentColumn(next), 1);
    }

    /// Keeps a comment in the block whose column it stands in; else it goes with what follows it.
    private int commentColumn(Leaves.Leaf next) {
        int column = source.columnOf(at);
        for (Leaves.Level level : next.levels().reversed()) {
            if (level.oldColumn() == column) {
                return level.newColumn();
            }
        }
        for (Leaves.Level level : before.levels()) {
            if (level.oldColumn() == column) {
                return level.newColumn();
            }
        }
        return AS_NEXT;
    }

    private boolean addIndicator(char c, Leaves.Leaf next) {
        switch (c) {
            case '{', '[' -> open();
            case '}', ']' -> {
                depth--;
                add(1, Piece.Sort.CLOSE, inFlow(), 1);
            }
            case ',' -> add(1, Piece.Sort.COMMA, inFlow(), 1);
            case ':' ->
                add(1, Piece.Sort.COLON, depth > 0 ? inFlow() : before.keyColumn(), depth > 0 ? 1 : before.pad());
            case '?' -> add(1, Piece.Sort.QUESTION, depth > 0 ? inFlow() : next.keyColumn(), 1);
            case '-' -> {
                return addDash(next);
            }
            default -> {
                return false;
            }
        }
        return depth >= 0;
    }

    private void open() {
        if (depth == 0) {
            flowColumn = isFirstOnLine() ? before.contentColumn() : before.flowColumn();
        }
        int column = depth == 0 ? before.contentColumn() : inFlow();
        add(1, Piece.Sort.OPEN, column, 1);
        depth++;
    }

    private boolean addDash(Leaves.Leaf next) {
        int column = source.columnOf(at);
        for (Leaves.Level level : next.levels()) {
            if (level.sequence() && level.oldColumn() == column) {
                add(1, Piece.Sort.DASH, level.newColumn(), 1);
                return true;
            }
        }
        return false;
    }

    private boolean isFirstOnLine() {
        return text.substring(at - source.columnOf(at), at).isBlank();
    }

    private void add(int length, Piece.Sort sort, int column, int pad) {
        pieces.add(new Piece(at, at + length, sort, column, pad));
        at += length;
    }

    /// Gives comments that go with what follows them its column.
    private List<Piece> placed() {
        int column = 0;
        for (int i = pieces.size() - 1; i >= 0; i--) {
            if (pieces.get(i).column() == AS_NEXT) {
                pieces.set(i, pieces.get(i).at(column));
            }
            column = pieces.get(i).column();
        }
        return List.copyOf(pieces);
    }
}
