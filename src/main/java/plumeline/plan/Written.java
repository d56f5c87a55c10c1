package plumeline.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import plumeline.quantity.Kind;
import plumeline.quantity.Quantities;
import plumeline.quantity.Quantity;
import plumeline.quantity.Reading;
import plumeline.text.Node;
import plumeline.text.Place;

/// The keys of one part of a plan as the crew wrote them, for the keys that its record doesn't spell out. Paths are
/// dotted: `contents.volume`. The plan has been checked, so a key that is there has a value of the right form.
///
/// @param node the part's keys
/// @param place where the part is written: its name's place, or its value's where it has no name
public record Written(Node.Mapping node, Place place) {

    /// Gives the same keys with one of them saying something else.
    ///
    /// @param key the key, written or not
    /// @param text what it says
    /// @return the keys
    public Written with(String key, String text) {
        var entry = new Node.Entry(key, place, new Node.Scalar(text, false, place));
        var changed = Overlay.set(node, List.of(key), entry).orElse(node);
        return new Written(changed, place);
    }

    /// Finds a value.
    ///
    /// @param path the dotted path of the key
    /// @return the value where the key is written
    public Optional<Node> findNode(String path) {
        Node at = node;
        for (String key : path.split("\\.", -1)) {
            var next = at instanceof Node.Mapping m ? m.find(key) : Optional.<Node>empty();
            if (next.isEmpty()) return next;
            at = next.get();
        }
        return Optional.of(at);
    }

    /// Tells whether a key is written.
    ///
    /// @param path the dotted path of the key
    /// @return true where it is
    public boolean has(String path) {
        return findNode(path).isPresent();
    }

    /// Finds a quantity, bare numbers too.
    ///
    /// @param path the dotted path of the key
    /// @return the quantity; empty where the key isn't written or its value is no quantity, such as `free`
    public Optional<Quantity> findQuantity(String path) {
        return findNode(path).flatMap(Written::quantityOf);
    }

    /// Finds a bare number.
    ///
    /// @param path the dotted path of the key
    /// @return the number; empty where the key isn't written or its value has a unit
    public OptionalDouble findNumber(String path) {
        return findQuantity(path).filter(q -> q.kind() == Kind.NUMBER).stream()
                .mapToDouble(Quantity::si)
                .findFirst();
    }

    /// Finds a word.
    ///
    /// @param path the dotted path of the key
    /// @return the text of the value where the key is written and its value is a single one
    public Optional<String> findWord(String path) {
        return findNode(path).flatMap(n -> n instanceof Node.Scalar s ? Optional.of(s.text()) : Optional.empty());
    }

    /// Tells whether a key says `yes`.
    ///
    /// @param path the dotted path of the key
    /// @return true where its value is `yes`
    public boolean says(String path) {
        return findWord(path).filter("yes"::equals).isPresent();
    }

    /// Lists quantities: those of a list, or the one that stands alone.
    ///
    /// @param path the dotted path of the key
    /// @return the quantities; empty where the key isn't written
    public List<Quantity> listQuantities(String path) {
        return items(path).stream().flatMap(n -> quantityOf(n).stream()).toList();
    }

    /// Lists names: those of a list, or the one that stands alone.
    ///
    /// @param path the dotted path of the key
    /// @return the names with their places; empty where the key isn't written
    public List<Named> listNames(String path) {
        return items(path).stream().flatMap(n -> named(n).stream()).toList();
    }

    /// Lists the pairs of a curve.
    ///
    /// @param path the dotted path of the key
    /// @return the pairs in the order written; empty where the key isn't written
    public List<List<Quantity>> listPairs(String path) {
        return items(path).stream()
                .map(item -> itemsOf(item).stream()
                        .flatMap(n -> quantityOf(n).stream())
                        .toList())
                .filter(pair -> pair.size() == 2)
                .toList();
    }

    private List<Node> items(String path) {
        return findNode(path).map(Written::itemsOf).orElse(List.of());
    }

    static List<Node> itemsOf(Node node) {
        return node instanceof Node.Sequence s ? s.items() : List.of(node);
    }

    static List<Named> namesOf(Node node) {
        var out = new ArrayList<Named>();
        for (Node item : itemsOf(node)) named(item).ifPresent(out::add);
        return out;
    }

    static Optional<Named> named(Node node) {
        return node instanceof Node.Scalar s ? Optional.of(new Named(s.text(), s.place())) : Optional.empty();
    }

    static Optional<Quantity> quantityOf(Node node) {
        return node instanceof Node.Scalar s && Quantities.read(s.text()) instanceof Reading.Read read
                ? Optional.of(read.quantity())
                : Optional.empty();
    }
}
