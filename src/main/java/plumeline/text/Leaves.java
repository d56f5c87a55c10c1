package plumeline.text;

import java.util.ArrayList;
import java.util.List;

/// The texts of a tree in their order, each with the blocks it lies in: what the cutting of a text into pieces goes by.
final class Leaves {
    /// Spaces that each level of nesting adds.
    static final int STEP = 2;

    private final String text;
    private final Source source;
    private final List<Leaf> leaves = new ArrayList<>();

    private Leaves(Source source) {
        this.source = source;
        this.text = source.text;
    }

    /// A list or map without brackets.
    ///
    /// @param oldColumn where its dashes or keys stand
    /// @param newColumn where they are to stand
    /// @param sequence true for a list
    record Level(int oldColumn, int newColumn, boolean sequence) {}

    /// What a leaf is.
    enum Part {
        KEY,
        VALUE,
        /// A value in which a run of spaces is as good as one.
        LOOSE_VALUE,
        BRACKETS
    }

    /// A key, a single value, or the place where the outermost brackets open.
    ///
    /// @param start offset of its first character
    /// @param end offset behind its last; the same as the start where brackets open
    /// @param part what it is
    /// @param levels the blocks it lies in, from the outermost
    /// @param pad for a key, how many spaces follow its colon
    record Leaf(int start, int end, Part part, List<Level> levels, int pad) {
        /// Where a value goes that begins a line.
        int contentColumn() {
            return levels.isEmpty() ? 0 : levels.getLast().newColumn() + STEP;
        }

        /// Where a key of the innermost block goes.
        int keyColumn() {
            return levels.isEmpty() ? 0 : levels.getLast().newColumn();
        }

        /// From where brackets count that open behind something else on their line.
        int flowColumn() {
            return !levels.isEmpty() && levels.getLast().sequence() ? contentColumn() : keyColumn();
        }

        int shift() {
            return levels.isEmpty()
                    ? 0
                    : levels.getLast().newColumn() - levels.getLast().oldColumn();
        }
    }

    static List<Leaf> of(Source source, Node root) {
        Leaves leaves = new Leaves(source);
        leaves.walk(root, List.of(), true);
        return leaves.leaves;
    }

    private static Part part(Node.Scalar scalar, boolean mayBeLoose) {
        return mayBeLoose && Loose.is(scalar) ? Part.LOOSE_VALUE : Part.VALUE;
    }

    private void walk(Node node, List<Level> levels, boolean mayBeLoose) {
        if (node instanceof Node.Scalar scalar) {
            add(scalar.place(), part(scalar, mayBeLoose), levels, 1);
        } else if (isFlow(node)) {
            leaves.add(new Leaf(node.place().start(), node.place().start(), Part.BRACKETS, levels, 1));
            walkFlow(node, levels, mayBeLoose);
        } else if (node instanceof Node.Sequence sequence) {
            List<Level> inner = inner(sequence.place(), levels, true);
            sequence.items().forEach(item -> walk(item, inner, mayBeLoose));
        } else if (node instanceof Node.Mapping mapping) {
            List<Level> inner = inner(mapping.place(), levels, false);
            int[] pads = pads(mapping);
            for (int i = 0; i < pads.length; i++) {
                Node.Entry entry = mapping.entries().get(i);
                add(entry.keyPlace(), Part.KEY, inner, pads[i]);
                walk(entry.value(), inner, mayBeLoose && Loose.mayBe(entry.key()));
            }
        }
    }

    private void walkFlow(Node node, List<Level> levels, boolean mayBeLoose) {
        switch (node) {
            case Node.Scalar scalar -> add(scalar.place(), part(scalar, mayBeLoose), levels, 1);
            case Node.Sequence sequence -> sequence.items().forEach(item -> walkFlow(item, levels, mayBeLoose));
            case Node.Mapping mapping ->
                mapping.entries().forEach(entry -> {
                    add(entry.keyPlace(), Part.KEY, levels, 1);
                    walkFlow(entry.value(), levels, mayBeLoose && Loose.mayBe(entry.key()));
                });
        }
    }

    private void add(Place place, Part part, List<Level> levels, int pad) {
        int end = place.end();
        while (end > place.start() && text.charAt(end - 1) <= ' ') {
            end--;
        }
        leaves.add(new Leaf(place.start(), end, part, levels, pad));
    }

    private boolean isFlow(Node node) {
        char first = text.charAt(node.place().start());
        return first == '{' || first == '[';
    }

    private List<Level> inner(Place place, List<Level> levels, boolean sequence) {
        List<Level> inner = new ArrayList<>(levels);
        int newColumn = levels.isEmpty() ? 0 : levels.getLast().newColumn() + STEP;
        inner.add(new Level(source.columnOf(place.start()), newColumn, sequence));
        return List.copyOf(inner);
    }

    /// Decides how many spaces follow each key's colon: one; more only where keys on neighbouring lines have their
    /// values in one column, as near as the longest key lets them.
    private int[] pads(Node.Mapping mapping) {
        int count = mapping.entries().size();
        int[] pads = new int[count];
        int[] columns = new int[count];
        for (int i = 0; i < count; i++) {
            Node.Entry entry = mapping.entries().get(i);
            pads[i] = spacesAfterColon(entry);
            columns[i] = entry.keyPlace().end() - entry.keyPlace().start() + pads[i];
        }
        for (int from = 0; from < count; ) {
            int to = from + 1;
            boolean near = pads[from] == 1;
            while (to < count && columns[to] == columns[from] && line(mapping, to) == line(mapping, to - 1) + 1) {
                near |= pads[to] == 1;
                to++;
            }
            for (int i = from; i < to; i++) {
                pads[i] = near ? pads[i] : 1;
            }
            from = to;
        }
        return pads;
    }

    private static int line(Node.Mapping mapping, int index) {
        return mapping.entries().get(index).keyPlace().line();
    }

    private int spacesAfterColon(Node.Entry entry) {
        int colon = text.indexOf(':', entry.keyPlace().end());
        boolean sameLine = entry.value().place().line() == entry.keyPlace().line();
        return sameLine && colon >= 0 ? Math.max(1, entry.value().place().start() - colon - 1) : 1;
    }
}
