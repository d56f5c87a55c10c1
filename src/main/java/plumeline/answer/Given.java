package plumeline.answer;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.ToDoubleFunction;
import plumeline.answer.Answer.Assumed;
import plumeline.quantity.Kind;
import plumeline.quantity.PaperUnit;
import plumeline.quantity.Quantities;
import plumeline.quantity.Quantity;
import plumeline.text.Node;
import plumeline.text.Problem;
import plumeline.text.Values;

/// A question's checked input while it is being read: gives values, and keeps what was assumed, what has a spread
/// and what doesn't make sense together.
public final class Given {
    private final Values values;
    private final Ledger ledger;

    private Given(Values values, Ledger ledger) {
        this.values = values;
        this.ledger = ledger;
    }

    static Given of(Node.Mapping root) {
        return moving(root, "", 0);
    }

    /// The same input with one quantity moved.
    static Given moving(Node.Mapping root, String path, double si) {
        Ledger ledger = new Ledger(root, path, si);
        return new Given(Values.of(root, "", ledger), ledger);
    }

    /// Gets a quantity.
    ///
    /// @param key a key that must be there
    /// @return its value, SI
    public double si(String key) {
        return values.si(key);
    }

    /// Gets a quantity, or its default, which is then listed as assumed.
    ///
    /// @param key the key
    /// @param otherwise the default, with its unit
    /// @param why where the default comes from
    /// @return the value, SI
    public double si(String key, String otherwise, String why) {
        return values.has(key) ? values.si(key) : assume(key, otherwise, why);
    }

    /// Takes a value that the input can't give.
    ///
    /// @param key the key under which it is listed as assumed
    /// @param value the value, with its unit
    /// @param why where it comes from
    /// @return the value, SI
    public double assume(String key, String value, String why) {
        Quantity quantity = Quantities.get(value);
        String unit = quantity.kind() == Kind.NUMBER ? "1" : quantity.unit().symbol();
        ledger.assumed.add(new Assumed(values.path(key), new Value.Number(quantity.value(), unit), why));
        return quantity.si();
    }

    /// Finds a quantity.
    ///
    /// @param key the key
    /// @return its value, SI; empty where it isn't there
    public OptionalDouble findSi(String key) {
        return values.findSi(key);
    }

    /// Gets a quantity as it was written.
    ///
    /// @param key a key that must be there
    /// @return the quantity
    public Quantity quantity(String key) {
        return values.quantity(key);
    }

    /// Tells whether a key is there.
    ///
    /// @param key the key
    /// @return true where it is
    public boolean has(String key) {
        return values.has(key);
    }

    /// Tells whether a key that may be a word or a map is a map.
    ///
    /// @param key the key
    /// @return true where it is
    public boolean isMap(String key) {
        return values.findNode(key).orElse(null) instanceof Node.Mapping;
    }

    /// Gets a word.
    ///
    /// @param key a key that must be there
    /// @return the word
    public String text(String key) {
        return values.text(key);
    }

    /// Gets a word, or its default, which is then listed as assumed.
    ///
    /// @param key the key
    /// @param otherwise the default
    /// @param why where the default comes from
    /// @return the word
    public String text(String key, String otherwise, String why) {
        if (!values.has(key)) {
            ledger.assumed.add(new Assumed(values.path(key), new Value.Word(otherwise), why));
        }
        return values.text(key, otherwise);
    }

    /// Gets a map.
    ///
    /// @param key a key that must be there
    /// @return what the map holds
    public Given map(String key) {
        return new Given(values.map(key), ledger);
    }

    /// Finds a map.
    ///
    /// @param key the key
    /// @return what the map holds; empty where it isn't there
    public Optional<Given> findMap(String key) {
        return has(key) ? Optional.of(map(key)) : Optional.empty();
    }

    /// Lists the maps of a list.
    ///
    /// @param key the key
    /// @return what each holds, in order; empty where the key isn't there
    public List<Given> maps(String key) {
        List<Given> all = new ArrayList<>();
        for (Values each : values.maps(key)) {
            all.add(new Given(each, ledger));
        }
        return all;
    }

    /// Lists the quantities of a list.
    ///
    /// @param key the key
    /// @return the values in SI, in order
    public List<Double> list(String key) {
        return values.quantities(key).stream().map(Quantity::si).toList();
    }

    /// Lists the rows of a curve or profile.
    ///
    /// @param key the key
    /// @return the rows in SI, in order
    public List<List<Double>> rows(String key) {
        List<List<Double>> rows = new ArrayList<>();
        for (List<Quantity> row : values.rows(key)) {
            rows.add(row.stream().map(Quantity::si).toList());
        }
        return rows;
    }

    /// Adds a problem of meaning with a key that is there.
    ///
    /// @param key the key
    /// @param code the problem's code
    /// @param given what was given
    /// @param allowed what is allowed, as it follows "must be"
    /// @param attempt what to try, a sentence
    public void refuse(String key, String code, String given, String allowed, String attempt) {
        ledger.problems.add(new Problem(values.place(key), values.path(key), code, given, allowed, attempt));
    }

    List<Assumed> assumed() {
        return ledger.assumed;
    }

    /// Lists what was refused so far.
    ///
    /// @return the problems of meaning
    public List<Problem> problems() {
        return ledger.problems;
    }

    /// Quantities with a spread, by path.
    Map<String, Quantity> spreads() {
        return ledger.spreads;
    }

    /// Gives what every ± read so far does to a value, to first order.
    ///
    /// @param law the value as the input gives it
    /// @return half-width at 95 %; 0 where an input is moved already
    public double halfWidth(ToDoubleFunction<Given> law) {
        double squares = 0;
        if (ledger.moved.isEmpty()) {
            for (var entry : List.copyOf(spreads().entrySet())) {
                Quantity quantity = entry.getValue();
                double step = Math.min(quantity.halfWidthSi(), Math.max(1e-3 * Math.abs(quantity.si()), 1e-12));
                double above = law.applyAsDouble(moving(ledger.root, entry.getKey(), quantity.si() + step));
                double below = law.applyAsDouble(moving(ledger.root, entry.getKey(), quantity.si() - step));
                double half = (above - below) / 2 / step * quantity.halfWidthSi();
                squares += half * half;
            }
        }
        return Math.sqrt(squares);
    }

    /// Inches where more lengths were written in inches or feet than otherwise; lens and sensor are in mm anywhere.
    PaperUnit unit() {
        return ledger.imperial > ledger.metric ? PaperUnit.INCHES : PaperUnit.MILLIMETRES;
    }

    private static final class Ledger implements Values.Lookup {
        private final Node.Mapping root;
        private final String moved;
        private final double movedSi;
        private final List<Assumed> assumed = new ArrayList<>();
        private final List<Problem> problems = new ArrayList<>();
        private final Map<String, Quantity> spreads = new LinkedHashMap<>();
        private int imperial;
        private int metric;

        private Ledger(Node.Mapping root, String moved, double movedSi) {
            this.root = root;
            this.moved = moved;
            this.movedSi = movedSi;
        }

        @Override
        public Quantity quantity(String path, Quantity written) {
            if (written.halfWidthSi() > 0) {
                spreads.put(path, written);
            }
            if (written.kind() == Kind.LENGTH && !path.startsWith("sensor") && !path.startsWith("focal")) {
                String symbol = written.unit().symbol();
                boolean inches = symbol.equals("in") || symbol.equals("ft");
                imperial += inches ? 1 : 0;
                metric += inches ? 0 : 1;
            }
            return path.equals(moved) ? written.withSi(movedSi) : written;
        }
    }
}
