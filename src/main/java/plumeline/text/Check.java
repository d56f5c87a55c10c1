package plumeline.text;

import java.util.List;

/// Checks a tree against a shape.
public final class Check {
    private Check() {}

    /// Finds everything in a tree that does not fit a shape, all in one go.
    ///
    /// @param shape what is wanted
    /// @param node what is there
    /// @param path the dotted path to the node, for messages; empty for the root
    /// @return the problems in the order of the text; none where the tree fits
    public static List<Problem> against(Shape shape, Node node, String path) {
        return against(shape, node, path, node.place());
    }

    /// Finds everything in a question that does not fit its shape.
    ///
    /// @param shape what is wanted
    /// @param node what is there
    /// @param keysShownBy the command that shows which keys there are: `./plumeline ask float --example`
    /// @return the problems in the order of the text; none where the tree fits
    public static List<Problem> question(Shape shape, Node node, String keysShownBy) {
        return check(new Checker(keysShownBy), shape, new Checker.At(node, "", node.place(), "", ""));
    }

    /// Finds everything in a tree that does not fit a shape, where the node has a key of its own.
    ///
    /// @param shape what is wanted
    /// @param node what is there
    /// @param path the dotted path to the node, for messages
    /// @param keyPlace the place that a missing key is reported at
    /// @return the problems in the order of the text; none where the tree fits
    public static List<Problem> against(Shape shape, Node node, String path, Place keyPlace) {
        return check(new Checker("./plumeline schema"), shape, new Checker.At(node, path, keyPlace, "", ""));
    }

    private static List<Problem> check(Checker checker, Shape shape, Checker.At at) {
        checker.check(shape, at);
        return checker.sorted();
    }

    /// Tells whether a text can be one of the crew's own names: `[a-z0-9_-]+`.
    ///
    /// @param text the text
    /// @return true where it can
    public static boolean isName(String text) {
        for (int i = 0; i < text.length(); i++) {
            char c = text.charAt(i);
            if (!(c >= 'a' && c <= 'z' || c >= '0' && c <= '9' || c == '_' || c == '-')) {
                return false;
            }
        }
        return !text.isEmpty();
    }
}
