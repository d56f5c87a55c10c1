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

    /// An input as it was written, with the files that lie beside it.
    static Given of(Node.Mapping root, Beside beside) {
        return of(new Ledger(root, beside.once(), Map.of()));
    }

    private static Given of(Ledger ledger) {
        return new Given(Values.of(ledger.root, "", ledger), ledger);
    }

    /// The whole input anew with quantities moved.
    ///
    /// @param movedSi their new values, SI, by path
    Given moving(Map<String, Double> movedSi) {
        return of(new Ledger(ledger.root, ledger.beside, movedSi));
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

    /// Takes a value that the input doesn't give and that may well be another.
    ///
    /// @param key the key under which it is listed as assumed
    /// @param value the value, with its unit
    /// @param low low end of its middle 80 %, with its unit
    /// @param high high end of its middle 80 %, with its unit
    /// @param why where it comes from
    /// @return the value, SI
    public double guess(String key, String value, String low, String high, String why) {
        double si = assume(key, value, why);
        String path = values.path(key);
        ledger.spreads.put(
                path,
                new Ends(si, Quantities.get(low).si(), Quantities.get(high).si(), false));
        return ledger.movedSi.getOrDefault(path, si);
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

    /// Tells whether a key that may be a quantity or a list is a list.
    ///
    /// @param key the key
    /// @return true where it is
    public boolean isList(String key) {
        return values.findNode(key).orElse(null) instanceof Node.Sequence;
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

    /// Looks up the file that a key names.
    ///
    /// @param key a key that must be there
    /// @param mostBytes how many bytes are wanted of it at most, ≥ 0
    /// @return its first bytes, or why there are none
    public Beside.File file(String key, int mostBytes) {
        return ledger.beside.find(values.text(key), mostBytes);
    }

    /// Looks up the sound that a key names.
    ///
    /// @param key a key that must be there
    /// @param mostBytes how many bytes are wanted of it at most, ≥ 0
    /// @return a WAV file's first bytes, or those of what it is instead, or why there are none
    public Beside.File sound(String key, int mostBytes) {
        return ledger.beside.findSound(values.text(key), mostBytes);
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

    /// Lists the maps of a list of which each may also be written as one of its quantities alone.
    ///
    /// @param key the key
    /// @param alone the key of that quantity in the map
    /// @return what each holds, in order; empty where the key isn't there
    public List<Given> maps(String key, String alone) {
        List<Given> all = new ArrayList<>();
        for (Node each : values.list(key)) {
            String at = values.path(key) + "[" + (all.size() + 1) + "]";
            Node.Mapping map = each instanceof Node.Mapping written
                    ? written
                    : new Node.Mapping(List.of(new Node.Entry(alone, each.place(), each)), each.place());
            all.add(new Given(Values.of(map, at, ledger), ledger));
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
    Map<String, Ends> spreads() {
        return ledger.spreads;
    }

    /// A quantity's middle 80 %.
    ///
    /// @param si the quantity
    /// @param lowSi low end
    /// @param highSi high end
    /// @param even whether it was written with ±
    record Ends(double si, double lowSi, double highSi, boolean even) {
        static Ends of(Quantity quantity) {
            double half = quantity.eightyHalfWidthSi();
            return new Ends(quantity.si(), quantity.si() - half, quantity.si() + half, true);
        }

        double halfSi() {
            return (highSi - lowSi) / 2;
        }
    }

    /// How far a value reaches by what every ± and guess does to it, the middle 80 %.
    ///
    /// @param down how far down, ≥ 0
    /// @param up how far up, ≥ 0
    public record Reach(double down, double up) {}

    /// Gives what every ± and guess read so far does to a value, to first order.
    ///
    /// @param law the value as the input gives it
    /// @return how far it reaches; nowhere where an input is moved already
    public Reach reach(ToDoubleFunction<Given> law) {
        double down = 0;
        double up = 0;
        if (ledger.movedSi.isEmpty()) {
            for (var entry : List.copyOf(spreads().entrySet())) {
                Ends ends = entry.getValue();
                double least = Math.max(1e-3 * Math.abs(ends.si()), 1e-12);
                double step = ends.even() ? Math.min(ends.halfSi(), least) : least;
                double slope = (at(law, entry.getKey(), ends.si() + step) - at(law, entry.getKey(), ends.si() - step))
                        / (2 * step);
                double low = slope * (ends.lowSi() - ends.si());
                double high = slope * (ends.highSi() - ends.si());
                down = Math.hypot(down, Math.min(0, Math.min(low, high)));
                up = Math.hypot(up, Math.max(0, Math.max(low, high)));
            }
        }
        return new Reach(down, up);
    }

    private double at(ToDoubleFunction<Given> law, String path, double si) {
        return law.applyAsDouble(moving(Map.of(path, si)));
    }

    /// Inches where more lengths were written in inches or feet than otherwise; lens and sensor are in mm anywhere.
    PaperUnit unit() {
        return ledger.imperial > ledger.metric ? PaperUnit.INCHES : PaperUnit.MILLIMETRES;
    }

    private static final class Ledger implements Values.Lookup {
        private final Node.Mapping root;
        private final Beside beside;
        private final Map<String, Double> movedSi;
        private final List<Assumed> assumed = new ArrayList<>();
        private final List<Problem> problems = new ArrayList<>();
        private final Map<String, Ends> spreads = new LinkedHashMap<>();
        private int imperial;
        private int metric;

        private Ledger(Node.Mapping root, Beside beside, Map<String, Double> movedSi) {
            this.root = root;
            this.beside = beside;
            this.movedSi = movedSi;
        }

        @Override
        public Quantity quantity(String path, Quantity written) {
            if (written.halfWidthSi() > 0) {
                spreads.put(path, Ends.of(written));
            }
            if (written.kind() == Kind.LENGTH && !path.startsWith("sensor") && !path.startsWith("focal")) {
                String symbol = written.unit().symbol();
                boolean inches = symbol.equals("in") || symbol.equals("ft");
                imperial += inches ? 1 : 0;
                metric += inches ? 0 : 1;
            }
            Double si = movedSi.get(path);
            return si == null ? written : written.withSi(si);
        }
    }
}
