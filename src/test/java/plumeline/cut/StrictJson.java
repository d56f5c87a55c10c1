package plumeline.cut;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/// A strict reader of JSON for tests, by the grammar of RFC 8259; shares nothing with what writes. Objects are maps,
/// numbers are doubles. Whatever is against the grammar, and a name that comes twice in an object, is an error.
public final class StrictJson {
    private final String text;
    private int at;

    private StrictJson(String text) {
        this.text = text;
    }

    /// Reads a text of one value.
    public static Object read(String text) {
        StrictJson reader = new StrictJson(text);
        reader.blanks();
        Object value = reader.value();
        reader.blanks();
        if (reader.at != text.length()) {
            throw reader.broken("more behind the value");
        }
        return value;
    }

    /// Follows names and indices to a value.
    public static Object at(Object value, Object... way) {
        Object now = value;
        for (Object step : way) {
            now = step instanceof Integer index ? ((List<?>) now).get(index) : ((Map<?, ?>) now).get(step);
        }
        return now;
    }

    @SuppressWarnings("unchecked")
    public static Map<String, Object> map(Object value, Object... way) {
        return (Map<String, Object>) at(value, way);
    }

    @SuppressWarnings("unchecked")
    public static List<Object> list(Object value, Object... way) {
        return (List<Object>) at(value, way);
    }

    public static double number(Object value, Object... way) {
        return (Double) at(value, way);
    }

    public static String text(Object value, Object... way) {
        return (String) at(value, way);
    }

    private Object value() {
        char c = peek();
        return switch (c) {
            case '{' -> object();
            case '[' -> array();
            case '"' -> string();
            case 't' -> word("true", true);
            case 'f' -> word("false", false);
            case 'n' -> word("null", "null");
            default -> number();
        };
    }

    private Object word(String word, Object meaning) {
        if (!text.startsWith(word, at)) {
            throw broken("no value");
        }
        at += word.length();
        return meaning;
    }

    private Map<String, Object> object() {
        Map<String, Object> object = new LinkedHashMap<>();
        at++;
        blanks();
        while (peek() != '}') {
            if (!object.isEmpty()) {
                expect(',');
                blanks();
            }
            if (peek() != '"') {
                throw broken("no name");
            }
            String name = string();
            blanks();
            expect(':');
            blanks();
            if (object.put(name, value()) != null) {
                throw broken("twice: " + name);
            }
            blanks();
        }
        at++;
        return object;
    }

    private List<Object> array() {
        List<Object> array = new ArrayList<>();
        at++;
        blanks();
        while (peek() != ']') {
            if (!array.isEmpty()) {
                expect(',');
                blanks();
            }
            array.add(value());
            blanks();
        }
        at++;
        return array;
    }

    private String string() {
        StringBuilder string = new StringBuilder();
        at++;
        for (char c = peek(); c != '"'; c = peek()) {
            at++;
            if (c < ' ') {
                throw broken("a control character");
            }
            string.append(c == '\\' ? escaped() : c);
        }
        at++;
        return string.toString();
    }

    private char escaped() {
        char c = peek();
        at++;
        return switch (c) {
            case '"', '\\', '/' -> c;
            case 'b' -> '\b';
            case 'f' -> '\f';
            case 'n' -> '\n';
            case 'r' -> '\r';
            case 't' -> '\t';
            case 'u' -> {
                at += 4;
                yield (char) Integer.parseInt(text.substring(at - 4, at), 16);
            }
            default -> throw broken("escaped");
        };
    }

    private Double number() {
        int from = at;
        while (at < text.length() && "+-.eE0123456789".indexOf(text.charAt(at)) >= 0) {
            at++;
        }
        String number = text.substring(from, at);
        if (!number.matches("-?(0|[1-9][0-9]*)(\\.[0-9]+)?([eE][+-]?[0-9]+)?")) {
            throw broken("no number: " + number);
        }
        return Double.valueOf(number);
    }

    private void blanks() {
        while (at < text.length() && " \t\r\n".indexOf(text.charAt(at)) >= 0) {
            at++;
        }
    }

    private void expect(char c) {
        if (peek() != c) {
            throw broken("no " + c);
        }
        at++;
    }

    private char peek() {
        if (at >= text.length()) {
            throw broken("an end");
        }
        return text.charAt(at);
    }

    private AssertionError broken(String what) {
        return new AssertionError(what + " at " + at + " of " + text.length());
    }
}
