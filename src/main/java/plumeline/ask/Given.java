package plumeline.ask;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.ToDoubleFunction;
import plumeline.ask.Answer.Assumed;
import plumeline.quantity.Kind;
import plumeline.quantity.PaperUnit;
import plumeline.quantity.Quantities;
import plumeline.quantity.Quantity;
import plumeline.text.Node;
import plumeline.text.Problem;
import plumeline.text.Values;

/// A question's checked input while it is being read: gives values, and keeps what was assumed, what has a spread
/// and what doesn't make sense together.
final class Given {
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

    double si(String key) {
        return values.si(key);
    }

    /// A quantity, or its default, which is then listed as assumed.
    double si(String key, String otherwise, String why) {
        return values.has(key) ? values.si(key) : assume(key, otherwise, why);
    }

    /// Takes a value that the input can't give.
    double assume(String key, String value, String why) {
        Quantity quantity = Quantities.get(value);
        String unit = quantity.kind() == Kind.NUMBER ? "1" : quantity.unit().symbol();
        ledger.assumed.add(new Assumed(values.path(key), new Value.Number(quantity.value(), unit), why));
        return quantity.si();
    }

    OptionalDouble findSi(String key) {
        return values.findSi(key);
    }

    Quantity quantity(String key) {
        return values.quantity(key);
    }

    boolean has(String key) {
        return values.has(key);
    }

    /// Whether a key that may be a word or a map is a map.
    boolean isMap(String key) {
        return values.findNode(key).orElse(null) instanceof Node.Mapping;
    }

    String text(String key) {
        return values.text(key);
    }

    String text(String key, String otherwise, String why) {
        if (!values.has(key)) {
            ledger.assumed.add(new Assumed(values.path(key), new Value.Word(otherwise), why));
        }
        return values.text(key, otherwise);
    }

    Given map(String key) {
        return new Given(values.map(key), ledger);
    }

    Optional<Given> findMap(String key) {
        return has(key) ? Optional.of(map(key)) : Optional.empty();
    }

    List<Given> maps(String key) {
        List<Given> all = new ArrayList<>();
        for (Values each : values.maps(key)) {
            all.add(new Given(each, ledger));
        }
        return all;
    }

    /// The quantities of a list in SI, in order.
    List<Double> list(String key) {
        return values.quantities(key).stream().map(Quantity::si).toList();
    }

    /// The rows of a curve or profile in SI.
    List<List<Double>> rows(String key) {
        List<List<Double>> rows = new ArrayList<>();
        for (List<Quantity> row : values.rows(key)) {
            rows.add(row.stream().map(Quantity::si).toList());
        }
        return rows;
    }

    /// Adds a problem of meaning with a key that is there.
    void refuse(String key, String code, String given, String allowed, String attempt) {
        ledger.problems.add(new Problem(values.place(key), values.path(key), code, given, allowed, attempt));
    }

    List<Assumed> assumed() {
        return ledger.assumed;
    }

    List<Problem> problems() {
        return ledger.problems;
    }

    /// Quantities with a spread, by path.
    Map<String, Quantity> spreads() {
        return ledger.spreads;
    }

    /// What every ± read so far does to a value, to first order, at 95 %; 0 where an input is moved already.
    double halfWidth(ToDoubleFunction<Given> law) {
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
