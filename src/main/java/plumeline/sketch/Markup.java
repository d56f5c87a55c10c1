package plumeline.sketch;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/// An element of SVG or XHTML under construction. Whatever text or attribute goes in comes out escaped, so that no name
/// or title of a plan can become markup.
public final class Markup {
    private sealed interface Child {
        record Text(String text) implements Child {}

        record Element(Markup markup) implements Child {}

        /// Style sheets and scripts only: text that is ours and must not be escaped.
        record Raw(String text) implements Child {}
    }

    /// HTML elements that have no end tag.
    private static final Set<String> VOID = Set.of("meta", "br", "hr", "link", "img", "col", "input");

    /// SVG elements without content.
    private static final Set<String> SHAPES = Set.of("path", "line", "rect", "circle", "polyline", "polygon", "use");

    private final String name;
    private final Map<String, String> attributes = new LinkedHashMap<>();
    private final List<Child> children = new ArrayList<>();

    private Markup(String name) {
        this.name = name;
    }

    /// Makes an element.
    ///
    /// @param name its name
    /// @param children its children, in order
    /// @return the element
    public static Markup of(String name, Markup... children) {
        return new Markup(name).add(children);
    }

    /// Makes an element that holds a text.
    ///
    /// @param name its name
    /// @param text the text as people read it
    /// @return the element
    public static Markup of(String name, String text) {
        return new Markup(name).text(text);
    }

    /// Makes a `style` element.
    ///
    /// @param css a style sheet of ours, without anything that a plan says
    /// @return the element
    public static Markup style(String css) {
        if (css.contains("</")) {
            throw new IllegalArgumentException("a style sheet must not end its own element");
        }
        Markup style = new Markup("style");
        style.children.add(new Child.Raw(css));
        return style;
    }

    /// Makes a `script` element.
    ///
    /// @param script a script of ours, without anything that a plan says
    /// @return the element
    public static Markup script(String script) {
        if (script.contains("</")) {
            throw new IllegalArgumentException("a script must not end its own element");
        }
        Markup element = new Markup("script");
        element.children.add(new Child.Raw(script));
        return element;
    }

    /// Sets an attribute.
    ///
    /// @param attribute its name
    /// @param value its value as people read it
    /// @return this element
    public Markup with(String attribute, String value) {
        attributes.put(attribute, value);
        return this;
    }

    /// Sets an attribute to a number with two decimals at most.
    ///
    /// @param attribute its name
    /// @param value finite
    /// @return this element
    public Markup with(String attribute, double value) {
        return with(attribute, number(value));
    }

    /// Finds an attribute.
    ///
    /// @param attribute its name
    /// @return its value as people read it
    public Optional<String> findAttribute(String attribute) {
        return Optional.ofNullable(attributes.get(attribute));
    }

    /// Finds the first element of a class in this one, itself included.
    ///
    /// @param word one of the words of its class
    /// @return the element
    public Optional<Markup> findClass(String word) {
        if (List.of(attributes.getOrDefault("class", "").split(" ")).contains(word)) {
            return Optional.of(this);
        }
        return children.stream()
                .filter(Child.Element.class::isInstance)
                .flatMap(child -> ((Child.Element) child).markup().findClass(word).stream())
                .findFirst();
    }

    /// Gives its name.
    String name() {
        return name;
    }

    /// Gives a copy of it alone, without what is in it and without its id.
    Markup bare() {
        Markup bare = new Markup(name);
        bare.attributes.putAll(attributes);
        bare.attributes.remove("id");
        return bare;
    }

    /// Takes an attribute away.
    Markup without(String attribute) {
        attributes.remove(attribute);
        return this;
    }

    /// Gives the elements in it.
    List<Markup> elements() {
        return children.stream()
                .filter(Child.Element.class::isInstance)
                .map(child -> ((Child.Element) child).markup())
                .toList();
    }

    /// Gives the text that stands in it itself.
    String ownText() {
        return children.stream()
                .filter(Child.Text.class::isInstance)
                .map(child -> ((Child.Text) child).text())
                .collect(Collectors.joining());
    }

    /// Adds elements at the end.
    ///
    /// @param elements the elements
    /// @return this element
    public Markup add(Markup... elements) {
        for (Markup element : elements) {
            children.add(new Child.Element(element));
        }
        return this;
    }

    /// Adds elements at the end.
    ///
    /// @param elements the elements
    /// @return this element
    public Markup add(List<Markup> elements) {
        return add(elements.toArray(Markup[]::new));
    }

    /// Adds an element before all others.
    ///
    /// @param element the element
    /// @return this element
    public Markup addFirst(Markup element) {
        children.addFirst(new Child.Element(element));
        return this;
    }

    /// Adds text at the end.
    ///
    /// @param text the text as people read it
    /// @return this element
    public Markup text(String text) {
        children.add(new Child.Text(text));
        return this;
    }

    /// Writes the element and all in it.
    ///
    /// @return well-formed markup
    public String toText() {
        StringBuilder out = new StringBuilder();
        write(out);
        return out.toString();
    }

    private void write(StringBuilder out) {
        out.append('<').append(name);
        attributes.forEach((key, value) ->
                out.append(' ').append(key).append("=\"").append(escaped(value)).append('"'));
        if (VOID.contains(name) || (SHAPES.contains(name) && children.isEmpty())) {
            out.append("/>");
            return;
        }
        out.append('>');
        for (Child child : children) {
            switch (child) {
                case Child.Text(String text) -> out.append(escaped(text));
                case Child.Raw(String text) -> out.append(text);
                case Child.Element(Markup markup) -> markup.write(out);
            }
        }
        out.append("</").append(name).append('>');
        if (isBlock()) {
            out.append('\n');
        }
    }

    private boolean isBlock() {
        return Set.of("g", "svg", "p", "tr", "table", "section", "div", "h1", "h2", "h3", "li", "text")
                .contains(name);
    }

    /// Escapes a text for an element or an attribute in double quotes. What XML can't hold becomes U+FFFD.
    ///
    /// @param text any text
    /// @return the text escaped
    public static String escaped(String text) {
        StringBuilder out = new StringBuilder(text.length() + 16);
        text.codePoints().forEach(c -> {
            switch (c) {
                case '&' -> out.append("&amp;");
                case '<' -> out.append("&lt;");
                case '>' -> out.append("&gt;");
                case '"' -> out.append("&quot;");
                case '\'' -> out.append("&#39;");
                default -> out.appendCodePoint(isAllowed(c) ? c : 0xFFFD);
            }
        });
        return out.toString();
    }

    private static boolean isAllowed(int c) {
        return c == 9
                || c == 10
                || c == 13
                || (c >= 0x20 && c <= 0xD7FF)
                || (c >= 0xE000 && c <= 0xFFFD)
                || c >= 0x10000;
    }

    /// Writes a number with two decimals at most, without trailing zeros and without a negative zero.
    ///
    /// @param value finite
    /// @return the number
    public static String number(double value) {
        BigDecimal rounded = new BigDecimal(Double.toString(value)).setScale(2, RoundingMode.HALF_UP);
        return rounded.signum() == 0 ? "0" : rounded.stripTrailingZeros().toPlainString();
    }
}
