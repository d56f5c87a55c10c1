package plumeline.text;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;
import plumeline.quantity.Kind;
import plumeline.quantity.Quantities;
import plumeline.quantity.Quantity;
import plumeline.quantity.Ratio;
import plumeline.quantity.Reading;

/// Walks shape and tree side by side and collects problems; made for one use.
final class Checker {
    private static final int MOST_PROBLEMS = 1000;
    private static final int LONGEST_SHOWN = 60;

    private final List<Problem> problems = new ArrayList<>();

    /// False where only whether there are problems is asked, not what they say.
    private final boolean talks;

    /// The command that shows which keys there are.
    private final String keysShownBy;

    Checker(String keysShownBy) {
        this(true, keysShownBy);
    }

    private Checker(boolean talks, String keysShownBy) {
        this.talks = talks;
        this.keysShownBy = keysShownBy;
    }

    String keysShownBy() {
        return keysShownBy;
    }

    /// Tells whether a node fits a shape.
    static boolean fits(Shape shape, Node node) {
        Checker silent = new Checker(false, "");
        silent.check(shape, new At(node, "", node.place(), "", ""));
        return silent.problems.isEmpty();
    }

    /// Gives a checker whose problems are thrown away or taken over as a whole.
    Checker another() {
        return new Checker(talks, keysShownBy);
    }

    /// A node with what messages about it need.
    ///
    /// @param node the node
    /// @param path its dotted path
    /// @param keyPlace where a missing key is reported
    /// @param hint its key's hint, or empty
    /// @param code its key's own code, or empty
    record At(Node node, String path, Place keyPlace, String hint, String code) {
        At item(Node item, int fromOne) {
            return new At(item, Paths.item(path, fromOne), item.place(), hint, code);
        }
    }

    List<Problem> sorted() {
        problems.sort((a, b) -> Integer.compare(a.place().start(), b.place().start()));
        return List.copyOf(problems);
    }

    List<Problem> unsorted() {
        return problems;
    }

    void check(Shape shape, At at) {
        switch (shape) {
            case Shape.Amount amount -> checkAmount(amount, at);
            case Shape.Whole whole -> checkWhole(whole, at);
            case Shape.Choice choice -> checkChoice(choice, at);
            case Shape.YesNo yesNo -> checkYesNo(yesNo, at);
            case Shape.RatioText ratio -> checkRatio(ratio, at);
            case Shape.Reference reference -> checkReference(reference, at);
            case Shape.Free free -> checkFree(free, at);
            case Shape.Written written -> checkWritten(written, at);
            case Shape.Items items -> checkItems(items, at);
            case Shape.Tuple tuple -> checkTuple(tuple, at);
            case Shape.Curve curve -> checkCurve(curve, at);
            case Shape.Keys keys -> new MapChecker(this).checkKeys(keys, at);
            case Shape.Named named -> new MapChecker(this).checkNamed(named, at);
            case Shape.Overrides overrides -> new MapChecker(this).checkOverrides(overrides, at);
            case Shape.OneWord oneWord -> new MapChecker(this).checkOneWord(oneWord, at);
            case Shape.AnyOf any -> new Alternatives(this).check(any, at);
        }
    }

    void add(Place place, String path, String code, String given, String allowed, String attempt) {
        if (problems.size() < MOST_PROBLEMS) {
            problems.add(new Problem(place, path, code, given, allowed, attempt));
        }
    }

    void addAll(List<Problem> more) {
        problems.addAll(more.subList(0, Math.min(more.size(), Math.max(0, MOST_PROBLEMS - problems.size()))));
    }

    void add(At at, String code, String given, String allowed, String attempt) {
        add(at.node.place(), at.path, code, given, allowed, attempt);
    }

    /// Says that the node has the wrong form for this shape.
    void addForm(Shape shape, At at) {
        String given = switch (at.node) {
            case Node.Scalar scalar -> shown(scalar.text());
            case Node.Sequence sequence -> "a list";
            case Node.Mapping mapping -> "a map";
        };
        String name = nameOf(shape);
        add(
                at,
                "P-FORM-01",
                given,
                Phrases.of(shape),
                name.isEmpty() ? "Try " + attempt(shape, at) + "." : "Write " + name + " alone.");
    }

    /// Says whose name a shape is, where it is one; else empty.
    private static String nameOf(Shape shape) {
        return switch (shape) {
            case Shape.Reference reference -> Phrases.of(reference);
            case Shape.AnyOf any -> nameOf(any.shapes().getFirst());
            default -> "";
        };
    }

    /// Gives what to try, as it follows "Try ".
    String attempt(Shape shape, At at) {
        return at.hint.isEmpty() ? example(shape, at.path) : at.hint;
    }

    /// Gives a text that fits a shape; empty where nobody will read it.
    String example(Shape shape, String path) {
        return talks && problems.size() < MOST_PROBLEMS ? Attempts.example(shape, path) : "";
    }

    /// Gives what the reader of quantities says to try, with this key's own example in place of a common one.
    String fitting(String sentence, Shape shape, At at) {
        return talks && problems.size() < MOST_PROBLEMS ? Attempts.fitting(sentence, shape, attempt(shape, at)) : "";
    }

    static String shown(String text) {
        String line = text.replace('\n', ' ');
        return line.isEmpty() ? "empty" : line.length() > LONGEST_SHOWN ? line.substring(0, LONGEST_SHOWN) + "…" : line;
    }

    private void checkAmount(Shape.Amount amount, At at) {
        if (!(at.node instanceof Node.Scalar scalar)) {
            addForm(amount, at);
            return;
        }
        String text = scalar.text();
        if (amount.mark() == Shape.Mark.FREE) {
            switch (MarkText.read(text, amount.kind())) {
                case MarkText.Given(Quantity quantity) -> checkRange(amount, quantity, at);
                case MarkText.Unbounded() -> {}
                case MarkText.Between between -> {
                    checkRange(amount, between.low(), at);
                    checkRange(amount, between.high(), at);
                }
                case MarkText.Refused refused ->
                    addUnit(refused.given(), refused.allowed(), refused.attempt(), amount, at);
            }
            return;
        }
        if (text.equals("free") || text.startsWith("free ")) {
            add(
                    at,
                    "P-FREE-01",
                    shown(text),
                    amount.kind().allowed() + " (only marks may be free)",
                    "Try " + attempt(amount, at) + ".");
            return;
        }
        switch (Quantities.read(text, List.of(amount.kind()))) {
            case Reading.Read(Quantity quantity) -> checkRange(amount, quantity, at);
            case Reading.Refused refused -> addUnit(refused.given(), refused.allowed(), refused.attempt(), amount, at);
        }
    }

    /// Says that a text is no quantity of the kind wanted.
    void addUnit(String given, String allowed, String sentence, Shape shape, At at) {
        add(at, "P-UNIT-01", given, allowed, fitting(sentence, shape, at));
    }

    private void checkRange(Shape.Amount amount, Quantity quantity, At at) {
        if (!amount.range().allows(quantity.si())) {
            add(
                    at,
                    at.code.isEmpty() ? "P-RANGE-01" : at.code,
                    quantity.valueText(),
                    amount.range().toText(quantity.unit()),
                    unsigned(amount, quantity, attempt(amount, at)));
        }
    }

    /// Where no more is known of the key than its kind, a value that its minus sign makes wrong is tried without it.
    private static String unsigned(Shape.Amount amount, Quantity quantity, String attempt) {
        boolean signed = quantity.digits().startsWith("-") && amount.range().allows(-quantity.si());
        return signed && attempt.equals(amount.kind().example())
                ? "Leave out the minus sign: try " + quantity.valueText().substring(1) + "."
                : "Try " + attempt + ".";
    }

    private void checkWhole(Shape.Whole whole, At at) {
        if (at.node instanceof Node.Scalar scalar) {
            Optional<Long> value = findWhole(scalar.text());
            if (value.isPresent()) {
                if (value.get() < whole.least() || value.get() > whole.most()) {
                    add(
                            at,
                            at.code.isEmpty() ? "P-RANGE-01" : at.code,
                            shown(scalar.text()),
                            Phrases.of(whole),
                            "Try " + attempt(whole, at) + ".");
                }
                return;
            }
        }
        addForm(whole, at);
    }

    /// Reads a whole number of at most 15 digits.
    static Optional<Long> findWhole(String text) {
        String digits = text.startsWith("-") ? text.substring(1) : text;
        if (digits.isEmpty() || digits.length() > 15) {
            return Optional.empty();
        }
        for (int i = 0; i < digits.length(); i++) {
            if (digits.charAt(i) < '0' || digits.charAt(i) > '9') {
                return Optional.empty();
            }
        }
        return Optional.of(Long.parseLong(text));
    }

    private void checkChoice(Shape.Choice choice, At at) {
        if (!(at.node instanceof Node.Scalar scalar)) {
            addForm(choice, at);
        } else if (!choice.allows(scalar.text())) {
            String near = Nearest.find(scalar.text(), choice.words()).orElse(attempt(choice, at));
            add(at, "P-WORD-01", shown(scalar.text()), Phrases.of(choice), "Try " + near + ".");
        }
    }

    private void checkYesNo(Shape.YesNo yesNo, At at) {
        if (!(at.node instanceof Node.Scalar scalar)) {
            addForm(yesNo, at);
        } else if (!scalar.text().equals("yes") && !scalar.text().equals("no")) {
            String word = scalar.text().toLowerCase(java.util.Locale.ROOT);
            boolean no = word.equals("no") || word.equals("false") || word.equals("off") || word.equals("0");
            add(at, "P-WORD-01", shown(scalar.text()), "yes or no", no ? "Try no." : "Try yes.");
        }
    }

    private void checkRatio(Shape.RatioText ratio, At at) {
        if (!(at.node instanceof Node.Scalar scalar)) {
            addForm(ratio, at);
        } else if (Ratio.read(scalar.text()).isEmpty()) {
            add(at, "P-RATIO-01", shown(scalar.text()), "a ratio of width to height in quotes", "Try \"16:9\".");
        } else if (!scalar.quoted()) {
            add(at, "P-RATIO-01", scalar.text() + " without quotes", "in quotes", "Write \"" + scalar.text() + "\".");
        }
    }

    private void checkReference(Shape.Reference reference, At at) {
        if (!(at.node instanceof Node.Scalar scalar)) {
            addForm(reference, at);
            return;
        }
        String text = scalar.text();
        int dot = text.indexOf('.');
        boolean dotted = dot > 0 && Check.isName(text.substring(0, dot)) && Check.isName(text.substring(dot + 1));
        if (Check.isName(text) || dotted && reference.variants() == Shape.Variants.ALLOWED) {
            return;
        }
        String attempt =
                dotted ? "Try " + text.substring(0, dot) + "." : "Names are written with a-z, 0-9, _ and - only.";
        add(at, "P-NAME-01", shown(text), Phrases.of(reference), attempt);
    }

    private void checkFree(Shape.Free free, At at) {
        if (!(at.node instanceof Node.Scalar scalar)) {
            addForm(free, at);
        } else if (scalar.text().length() > free.longest()) {
            add(at, "P-RANGE-01", scalar.text().length() + " characters long", Phrases.of(free), "Say it shorter.");
        }
    }

    private void checkWritten(Shape.Written written, At at) {
        if (!(at.node instanceof Node.Scalar scalar) || !Pattern.matches(written.pattern(), scalar.text())) {
            addForm(written, at);
        }
    }

    private void checkItems(Shape.Items items, At at) {
        if (!(at.node instanceof Node.Sequence sequence)) {
            addForm(items, at);
            return;
        }
        int count = sequence.items().size();
        if (count < items.least() || count > items.most()) {
            String allowed = items.most() == Integer.MAX_VALUE
                    ? items.least() + " or more"
                    : items.least() == items.most()
                            ? Integer.toString(items.least())
                            : "from " + items.least() + " to " + items.most();
            add(at, "P-LIST-01", "a list of " + count, "a list of " + allowed, "Try " + attempt(items, at) + ".");
        }
        for (int i = 0; i < count; i++) {
            check(items.item(), at.item(sequence.items().get(i), i + 1));
        }
    }

    private void checkTuple(Shape.Tuple tuple, At at) {
        if (!(at.node instanceof Node.Sequence sequence)) {
            addForm(tuple, at);
            return;
        }
        int count = sequence.items().size();
        if (count < tuple.least() || count > tuple.parts().size()) {
            add(
                    at,
                    "P-LIST-01",
                    "a list of " + count,
                    "a list of " + Phrases.parts(tuple),
                    "Try " + attempt(tuple, at) + ".");
        }
        for (int i = 0; i < Math.min(count, tuple.parts().size()); i++) {
            check(tuple.parts().get(i).shape(), at.item(sequence.items().get(i), i + 1));
        }
    }

    private void checkCurve(Shape.Curve curve, At at) {
        if (!(at.node instanceof Node.Sequence sequence)) {
            addForm(curve, at);
            return;
        }
        if (sequence.items().size() < curve.least()) {
            add(
                    at,
                    "P-LIST-01",
                    "a list of " + sequence.items().size(),
                    "a list of " + curve.least() + " or more pairs [where, value]",
                    "Try " + attempt(curve, at) + ".");
        }
        Shape.Tuple pair = new Shape.Tuple(
                List.of(new Shape.Part("where", curve.where()), new Shape.Part("value", curve.value())), 2);
        Optional<Quantity> before = Optional.empty();
        for (int i = 0; i < sequence.items().size(); i++) {
            At item = at.item(sequence.items().get(i), i + 1);
            check(pair, item);
            Optional<Quantity> where = findWhere(item.node);
            if (before.isPresent()
                    && where.isPresent()
                    && comparable(before.get(), where.get())
                    && where.get().si() < before.get().si()) {
                add(
                        item,
                        "P-CURVE-01",
                        "at " + where.get().valueText() + ", before the pair above it",
                        "at " + before.get().valueText() + " or later",
                        "Put the pairs in order.");
            }
            before = where;
        }
    }

    private static boolean comparable(Quantity a, Quantity b) {
        return a.kind() == b.kind();
    }

    private static Optional<Quantity> findWhere(Node pair) {
        if (pair instanceof Node.Sequence sequence
                && !sequence.items().isEmpty()
                && sequence.items().getFirst() instanceof Node.Scalar scalar
                && Quantities.read(scalar.text(), List.<Kind>of()) instanceof Reading.Read(Quantity quantity)) {
            return Optional.of(quantity);
        }
        return Optional.empty();
    }
}
