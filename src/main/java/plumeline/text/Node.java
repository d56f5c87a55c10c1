package plumeline.text;

import java.util.List;
import java.util.Optional;

/// A node of a text's tree.
public sealed interface Node {
    /// Gives where it stands.
    ///
    /// @return its span, without the spaces round it
    Place place();

    /// A single value.
    ///
    /// @param text without quotes, escapes resolved
    /// @param quoted true where it stood in quotes or in a block
    /// @param place its span, quotes included
    record Scalar(String text, boolean quoted, Place place) implements Node {}

    /// A list.
    ///
    /// @param items in order
    /// @param place its span
    record Sequence(List<Node> items, Place place) implements Node {
        /// Copies the list.
        public Sequence {
            items = List.copyOf(items);
        }
    }

    /// A map whose keys keep their order; each key is there once.
    ///
    /// @param entries in order
    /// @param place its span
    record Mapping(List<Entry> entries, Place place) implements Node {
        /// Copies the list.
        public Mapping {
            entries = List.copyOf(entries);
        }

        /// Finds the value of a key.
        ///
        /// @param key the key
        /// @return its value
        public Optional<Node> find(String key) {
            for (Entry entry : entries) {
                if (entry.key().equals(key)) {
                    return Optional.of(entry.value());
                }
            }
            return Optional.empty();
        }

        /// Finds the entry of a key.
        ///
        /// @param key the key
        /// @return the key with its place and value
        public Optional<Entry> findEntry(String key) {
            for (Entry entry : entries) {
                if (entry.key().equals(key)) {
                    return Optional.of(entry);
                }
            }
            return Optional.empty();
        }

        /// Lists the keys in order.
        ///
        /// @return the keys
        public List<String> keys() {
            return entries.stream().map(Entry::key).toList();
        }
    }

    /// A key and its value.
    ///
    /// @param key the key's text
    /// @param keyPlace the key's span
    /// @param value the value
    record Entry(String key, Place keyPlace, Node value) {}

    /// Finds the node at a dotted path: `shots.reveal.camera.at[2]`; items of lists count from 1. A key that holds dots
    /// itself, as an override does, is found too.
    ///
    /// @param path the path; empty for this node
    /// @return the node
    default Optional<Node> at(String path) {
        return Paths.find(this, path);
    }
}
