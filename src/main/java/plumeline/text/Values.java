package plumeline.text;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalLong;
import plumeline.quantity.Quantities;
import plumeline.quantity.Quantity;
import plumeline.quantity.Ratio;

/// Reads a checked map into records, without any further handling of what may be wrong: where the check has passed,
/// every `getX`-like method here finds what it looks for, and a missing optional key is what `find` is for.
///
/// Every quantity passes a [Lookup] under its path, so that a caller can read the same map again with one value moved.
public final class Values {
    private final Node.Mapping map;
    private final String path;
    private final Place keyPlace;
    private final Lookup lookup;

    /// What a quantity is taken to be: as written, or moved.
    public interface Lookup {
        /// Gives the quantity to use.
        ///
        /// @param path its dotted path
        /// @param written as it stands in the text
        /// @return the quantity to use instead, of the same kind; or the written one
        Quantity quantity(String path, Quantity written);

        /// Gives the lookup that takes everything as written.
        ///
        /// @return the lookup
        static Lookup asWritten() {
            return (path, written) -> written;
        }

        /// Gives the lookup that moves one quantity and takes the others as written.
        ///
        /// @param moved the path of the one
        /// @param si its value in SI
        /// @return the lookup
        static Lookup moving(String moved, double si) {
            return (path, written) -> path.equals(moved) ? written.withSi(si) : written;
        }
    }

    private Values(Node.Mapping map, String path, Place keyPlace, Lookup lookup) {
        this.map = map;
        this.path = path;
        this.keyPlace = keyPlace;
        this.lookup = lookup;
    }

    /// Reads a whole document's map as written.
    ///
    /// @param map the root
    /// @return its values
    public static Values of(Node.Mapping map) {
        return new Values(map, "", map.place(), Lookup.asWritten());
    }

    /// Reads a map that stands at a path.
    ///
    /// @param map the map
    /// @param path its dotted path; empty for the root
    /// @param lookup what quantities are taken to be
    /// @return its values
    public static Values of(Node.Mapping map, String path, Lookup lookup) {
        return new Values(map, path, map.place(), lookup);
    }

    /// Gives the map itself.
    ///
    /// @return the map
    public Node.Mapping map() {
        return map;
    }

    /// Gives the map's dotted path.
    ///
    /// @return the path; empty for the root
    public String path() {
        return path;
    }

    /// Gives the path of a key.
    ///
    /// @param key the key
    /// @return the dotted path
    public String path(String key) {
        return Paths.join(path, key);
    }

    /// Gives the place of the map's key, where problems with the map as a whole are reported.
    ///
    /// @return the place
    public Place place() {
        return keyPlace;
    }

    /// Gives the place of a key's value, or this map's where the key is missing.
    ///
    /// @param key the key
    /// @return the place
    public Place place(String key) {
        return map.find(key).map(Node::place).orElse(keyPlace);
    }

    /// Lists the keys in order.
    ///
    /// @return the keys
    public List<String> keys() {
        return map.keys();
    }

    /// Tells whether a key is there.
    ///
    /// @param key the key
    /// @return true where it is
    public boolean has(String key) {
        return map.find(key).isPresent();
    }

    /// Finds the node of a key.
    ///
    /// @param key the key
    /// @return the node
    public Optional<Node> findNode(String key) {
        return map.find(key);
    }

    /// Gets the node of a key.
    ///
    /// @param key the key
    /// @return the node
    /// @throws IllegalStateException where the key is missing: the check has not passed
    public Node node(String key) {
        return map.find(key).orElseThrow(() -> unchecked(key, "there"));
    }

    private IllegalStateException unchecked(String key, String wanted) {
        return new IllegalStateException(path(key) + " should have been checked to be " + wanted);
    }

    /// Finds the text of a key.
    ///
    /// @param key the key
    /// @return the text
    public Optional<String> findText(String key) {
        return has(key) ? Optional.of(text(key)) : Optional.empty();
    }

    /// Gets the text of a key.
    ///
    /// @param key the key
    /// @return the text
    public String text(String key) {
        return textOf(key, node(key));
    }

    /// Gets the text of a key, or another where the key is missing.
    ///
    /// @param key the key
    /// @param other what it is by default
    /// @return the text
    public String text(String key, String other) {
        return has(key) ? text(key) : other;
    }

    private String textOf(String key, Node node) {
        if (node instanceof Node.Scalar scalar) {
            return scalar.text();
        }
        throw unchecked(key, "a single value");
    }

    /// Tells whether a key is there and says `yes`.
    ///
    /// @param key the key
    /// @return true for `yes`, false for `no` or where it is missing
    public boolean isYes(String key) {
        return text(key, "no").equals("yes");
    }

    /// Gets the quantity of a key.
    ///
    /// @param key the key
    /// @return the quantity, as the lookup gives it
    public Quantity quantity(String key) {
        return quantityOf(path(key), node(key));
    }

    /// Finds the quantity of a key.
    ///
    /// @param key the key
    /// @return the quantity, as the lookup gives it
    public Optional<Quantity> findQuantity(String key) {
        return has(key) ? Optional.of(quantity(key)) : Optional.empty();
    }

    /// Gets the quantity that a node says, as the lookup gives it.
    ///
    /// @param at the node's dotted path
    /// @param node a single value that was checked to be a quantity
    /// @return the quantity
    public Quantity quantityOf(String at, Node node) {
        return lookup.quantity(at, Quantities.get(textOf(at, node)));
    }

    /// Gets the SI value of a key.
    ///
    /// @param key the key
    /// @return the value in SI
    public double si(String key) {
        return quantity(key).si();
    }

    /// Gets the SI value of a key, or another where the key is missing.
    ///
    /// @param key the key
    /// @param otherSi what it is by default, in SI
    /// @return the value in SI
    public double si(String key, double otherSi) {
        return has(key) ? si(key) : otherSi;
    }

    /// Finds the SI value of a key.
    ///
    /// @param key the key
    /// @return the value in SI
    public OptionalDouble findSi(String key) {
        return has(key) ? OptionalDouble.of(si(key)) : OptionalDouble.empty();
    }

    /// Gets the whole number of a key.
    ///
    /// @param key the key
    /// @return the number
    public long whole(String key) {
        return Checker.findWhole(text(key)).orElseThrow(() -> unchecked(key, "a whole number"));
    }

    /// Finds the whole number of a key.
    ///
    /// @param key the key
    /// @return the number
    public OptionalLong findWhole(String key) {
        return has(key) ? OptionalLong.of(whole(key)) : OptionalLong.empty();
    }

    /// Gets the ratio of a key.
    ///
    /// @param key the key
    /// @return the ratio
    public Ratio ratio(String key) {
        return Ratio.read(text(key)).orElseThrow(() -> unchecked(key, "a ratio"));
    }

    /// Lists the nodes of a key: the items of its list, the one value where it is no list, or nothing where it is
    /// missing.
    ///
    /// @param key the key
    /// @return the nodes
    public List<Node> list(String key) {
        Optional<Node> node = map.find(key);
        if (node.isEmpty()) {
            return List.of();
        }
        return node.get() instanceof Node.Sequence sequence ? sequence.items() : List.of(node.get());
    }

    /// Lists the texts of a key, as [#list] does.
    ///
    /// @param key the key
    /// @return the texts
    public List<String> texts(String key) {
        List<String> all = new ArrayList<>();
        for (Node node : list(key)) {
            all.add(textOf(key, node));
        }
        return all;
    }

    /// Lists the quantities of a key, as [#list] does: a size `[3840 px, 2160 px]` or a position.
    ///
    /// @param key the key
    /// @return the quantities
    public List<Quantity> quantities(String key) {
        return quantities(
                path(key), list(key), map.find(key).isPresent() && map.find(key).get() instanceof Node.Sequence);
    }

    private List<Quantity> quantities(String at, List<Node> nodes, boolean counted) {
        List<Quantity> all = new ArrayList<>();
        for (int i = 0; i < nodes.size(); i++) {
            all.add(quantityOf(counted ? Paths.item(at, i + 1) : at, nodes.get(i)));
        }
        return all;
    }

    /// Lists the rows of a key whose value is a list of lists of quantities, as a curve or a profile is.
    ///
    /// @param key the key
    /// @return the rows; none where the key is missing
    public List<List<Quantity>> rows(String key) {
        List<List<Quantity>> rows = new ArrayList<>();
        List<Node> items = list(key);
        for (int i = 0; i < items.size(); i++) {
            if (items.get(i) instanceof Node.Sequence row) {
                rows.add(quantities(Paths.item(path(key), i + 1), row.items(), true));
            }
        }
        return rows;
    }

    /// Gets the map of a key.
    ///
    /// @param key the key
    /// @return its values
    public Values map(String key) {
        return mapOf(key, path(key), node(key), keyPlace(key));
    }

    private Place keyPlace(String key) {
        return map.findEntry(key).map(Node.Entry::keyPlace).orElse(keyPlace);
    }

    private Values mapOf(String key, String at, Node node, Place where) {
        if (node instanceof Node.Mapping inner) {
            return new Values(inner, at, where, lookup);
        }
        throw unchecked(key, "a map");
    }

    /// Finds the map of a key.
    ///
    /// @param key the key
    /// @return its values
    public Optional<Values> findMap(String key) {
        return has(key) ? Optional.of(map(key)) : Optional.empty();
    }

    /// Lists the maps in a key's list.
    ///
    /// @param key the key
    /// @return the values of each; none where the key is missing
    public List<Values> maps(String key) {
        List<Values> all = new ArrayList<>();
        for (Node node : list(key)) {
            all.add(mapOf(key, Paths.item(path(key), all.size() + 1), node, node.place()));
        }
        return all;
    }

    /// Lists the maps in a key's map of names, in order.
    ///
    /// @param key the key
    /// @return name and values of each; none where the key is missing
    public Map<String, Values> named(String key) {
        Map<String, Values> all = new LinkedHashMap<>();
        if (map.find(key).isPresent() && node(key) instanceof Node.Mapping inner) {
            for (Node.Entry entry : inner.entries()) {
                String at = Paths.join(path(key), entry.key());
                all.put(entry.key(), mapOf(entry.key(), at, entry.value(), entry.keyPlace()));
            }
        }
        return all;
    }
}
