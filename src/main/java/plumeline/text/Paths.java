package plumeline.text;

import java.util.Optional;

/// Dotted paths: `shots.reveal.camera.at[2]`.
final class Paths {
    private Paths() {}

    static String join(String path, String key) {
        return path.isEmpty() ? key : path + "." + key;
    }

    static String item(String path, int fromOne) {
        return path + "[" + fromOne + "]";
    }

    static Optional<Node> find(Node node, String path) {
        if (path.isEmpty()) {
            return Optional.of(node);
        }
        return switch (node) {
            case Node.Scalar scalar -> Optional.empty();
            case Node.Sequence sequence -> findItem(sequence, path);
            case Node.Mapping mapping -> findKey(mapping, path);
        };
    }

    private static Optional<Node> findItem(Node.Sequence sequence, String path) {
        int close = path.indexOf(']');
        if (path.charAt(0) != '[' || close < 2 || close > 7) {
            return Optional.empty();
        }
        int index = 0;
        for (int i = 1; i < close; i++) {
            char digit = path.charAt(i);
            if (digit < '0' || digit > '9') {
                return Optional.empty();
            }
            index = index * 10 + digit - '0';
        }
        if (index < 1 || index > sequence.items().size()) {
            return Optional.empty();
        }
        return find(sequence.items().get(index - 1), rest(path, close + 1));
    }

    private static Optional<Node> findKey(Node.Mapping mapping, String path) {
        for (Node.Entry entry : mapping.entries()) {
            String key = entry.key();
            if (path.startsWith(key)
                    && (path.length() == key.length()
                            || path.charAt(key.length()) == '.'
                            || path.charAt(key.length()) == '[')) {
                Optional<Node> found = find(entry.value(), rest(path, key.length()));
                if (found.isPresent()) {
                    return found;
                }
            }
        }
        return Optional.empty();
    }

    private static String rest(String path, int from) {
        return from < path.length() && path.charAt(from) == '.' ? path.substring(from + 1) : path.substring(from);
    }
}
