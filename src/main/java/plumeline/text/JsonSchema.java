package plumeline.text;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import plumeline.quantity.Kind;
import plumeline.quantity.Quantity;
import plumeline.quantity.Unit;

/// Writes a shape as a JSON Schema (2020-12), for editors. A schema can't look names up, compare values or count
/// frames; of a quantity's range it holds the sign and whether it may be 0, of a bare number's all; what it refuses the
/// check refuses too, and it accepts everything that the check accepts.
public final class JsonSchema {
    private static final String NAME = "[a-z0-9_-]+";
    private static final String MINUS = "[-\\u2212]";

    /// A number without its sign.
    private static final String SIZE =
            "(?:[0-9]+ +[0-9]+/[0-9]+|[0-9]+/[0-9]+|(?:[0-9]+\\.?[0-9]*|\\.[0-9]+)(?:[eE][-+]?[0-9]+)?)";

    private static final String NUMBER = "[-+\\u2212]?" + SIZE;

    /// What stands before a number that is not nothing: somewhere before its unit or exponent a digit other than 0, in
    /// a fraction before the slash.
    private static final String SOMETHING = "(?=[0-9. ]*[1-9])";

    private static final String NOTHING = "(?:0+ +0+/[0-9]+|0+/[0-9]+|(?:0+\\.?0*|\\.0+)(?:[eE][-+]?[0-9]+)?)";

    private static final String NOT_NEGATIVE = "(?:\\+?" + SIZE + "|" + MINUS + NOTHING + ")";
    private static final String POSITIVE = "\\+?" + SOMETHING + SIZE;
    private static final String ORIGIN = "(?: +(?:given|measured|typical|solved))?";

    /// Definitions by shape; equal shapes are written once.
    private final Map<Shape, String> names = new LinkedHashMap<>();

    private final Map<String, String> definitions = new LinkedHashMap<>();

    private JsonSchema() {}

    /// Writes a shape as a schema.
    ///
    /// @param shape the shape of a whole text
    /// @return the schema as JSON text, one definition a line
    public static String write(Shape shape) {
        var writer = new JsonSchema();
        var root = writer.of(shape);
        var lines = writer.definitions.entrySet().stream()
                .map(e -> "    " + quoted(e.getKey()) + ": " + e.getValue())
                .collect(Collectors.joining(",\n"));
        return "{\n  \"$schema\": \"https://json-schema.org/draft/2020-12/schema\",\n  \"allOf\": [" + root
                + "],\n  \"$defs\": {\n" + lines + "\n  }\n}\n";
    }

    private String of(Shape shape) {
        return switch (shape) {
            case Shape.Amount amount -> amount(amount);
            case Shape.Whole whole -> whole(whole);
            case Shape.Choice choice ->
                object(
                        "enum",
                        list(choice.words().stream().map(JsonSchema::quoted).toList()));
            case Shape.YesNo() -> object("enum", "[\"yes\", \"no\"]");
            case Shape.RatioText() -> pattern("[0-9]{1,5}(?:\\.[0-9]{1,3})?:[0-9]{1,5}(?:\\.[0-9]{1,3})?");
            case Shape.Reference reference ->
                textOrDigits(
                        pattern(reference.variants() == Shape.Variants.ALLOWED ? NAME + "(?:\\." + NAME + ")?" : NAME));
            case Shape.Free free -> object("type", "[\"string\", \"number\"]", "maxLength", "" + free.longest());
            case Shape.Written written -> pattern(written.pattern());
            case Shape.Items items ->
                object(
                        "type",
                        "\"array\"",
                        "items",
                        of(items.item()),
                        "minItems",
                        "" + items.least(),
                        "maxItems",
                        "" + items.most());
            case Shape.Tuple tuple -> tuple(tuple);
            case Shape.Curve curve -> curve(curve);
            case Shape.Keys keys -> defined(shape, () -> keys(keys));
            case Shape.Named named ->
                object("type", "\"object\"", "propertyNames", pattern(NAME), "additionalProperties", of(named.value()));
            case Shape.Overrides overrides -> defined(shape, () -> overrides(overrides));
            case Shape.OneWord oneWord -> defined(shape, () -> oneWord(oneWord));
            case Shape.AnyOf any ->
                object("anyOf", list(any.shapes().stream().map(this::of).toList()));
        };
    }

    private String defined(Shape shape, java.util.function.Supplier<String> text) {
        var known = names.get(shape);
        if (known == null) {
            known = "part_" + (names.size() + 1);
            names.put(shape, known);
            definitions.put(known, text.get());
        }
        return object("$ref", quoted("#/$defs/" + known));
    }

    private static String amount(Shape.Amount amount) {
        var quantity = quantity(amount.kind(), number(amount.kind(), amount.range()));
        var written = amount.mark() == Shape.Mark.FREE
                ? quantity + "| *free *| *free +between +" + quantity + " +and +" + quantity
                : quantity;
        return amount.kind() == Kind.NUMBER
                ? object("anyOf", list(List.of(pattern(written), digits(amount.range()))))
                : pattern(written);
    }

    /// Numbers of a range as far as a pattern can tell: their sign, and whether they may be nothing. Units with a zero
    /// of their own, such as degC, say nothing of a sign.
    private static String number(Kind kind, Range range) {
        boolean ownZero = Unit.listUnits(kind).stream().anyMatch(unit -> unit.offset() != 0);
        if (ownZero || range.lowSi() < 0) {
            return NUMBER;
        }
        return range.allows(0) ? NOT_NEGATIVE : POSITIVE;
    }

    /// Bare numbers of a range.
    private static String digits(Range range) {
        var bounds = new ArrayList<>(List.of("type", "\"number\""));
        if (!Double.isInfinite(range.lowSi())) {
            bounds.add(range.low() == Range.Bound.OPEN ? "exclusiveMinimum" : "minimum");
            bounds.add(number(range.lowSi()));
        }
        if (!Double.isInfinite(range.highSi())) {
            bounds.add(range.high() == Range.Bound.OPEN ? "exclusiveMaximum" : "maximum");
            bounds.add(number(range.highSi()));
        }
        return object(bounds.toArray(String[]::new));
    }

    private static String number(double value) {
        return Quantity.of(value, Unit.NONE).valueText();
    }

    private static String quantity(Kind kind, String number) {
        var unit = units(kind);
        var at = kind == Kind.ILLUMINANCE ? "(?: +at +" + POSITIVE + " *" + units(Kind.LENGTH) + ")?" : "";
        var spread = "(?: *(?:\\u00b1|\\+-|\\+/-) *" + NOT_NEGATIVE + " *(?:" + spreadUnits(kind, unit) + "%)?)?";
        return " *" + number + (kind == Kind.NUMBER ? "" : " *" + unit) + at + spread + ORIGIN + " *";
    }

    /// The units of a spread, followed by a bar: its own kind's, and LU for LUFS, dB for dBTP.
    private static String spreadUnits(Kind kind, String own) {
        return switch (kind) {
            case NUMBER -> "";
            case LOUDNESS -> own + "|LU|";
            case TRUE_PEAK -> own + "|dB|";
            default -> own + "|";
        };
    }

    private static String units(Kind kind) {
        return Unit.listSpellings(kind).stream()
                .map(u -> u.replaceAll("([./+*()?\\[\\]{}^$|\\\\])", "\\\\$1"))
                .collect(Collectors.joining("|", "(?:", ")"));
    }

    private static String whole(Shape.Whole whole) {
        return object("type", "\"integer\"", "minimum", "" + whole.least(), "maximum", "" + whole.most());
    }

    private String tuple(Shape.Tuple tuple) {
        var parts = tuple.parts().stream().map(p -> of(p.shape())).toList();
        return object(
                "type", "\"array\"", "prefixItems", list(parts), "items", "false", "minItems", "" + tuple.least());
    }

    private String curve(Shape.Curve curve) {
        var pair = object(
                "type",
                "\"array\"",
                "prefixItems",
                list(List.of(of(curve.where()), of(curve.value()))),
                "items",
                "false",
                "minItems",
                "2");
        return object("type", "\"array\"", "items", pair, "minItems", "" + curve.least());
    }

    private String keys(Shape.Keys keys) {
        var all = new ArrayList<String>();
        for (var rule : keys.rules()) all.add(rule(rule));
        var object = object(keys.keys());
        return all.isEmpty() ? object : object.substring(0, object.length() - 1) + ", \"allOf\": " + list(all) + "}";
    }

    private String object(List<Shape.Key> keys) {
        var properties = new LinkedHashMap<String, String>();
        for (var key : keys) properties.put(key.name(), described(of(key.shape()), key.doc()));
        var required = keys.stream()
                .filter(k -> k.need() == Shape.Need.REQUIRED)
                .map(k -> quoted(k.name()))
                .toList();
        return object(
                "type",
                "\"object\"",
                "properties",
                map(properties),
                "required",
                list(required),
                "additionalProperties",
                "false");
    }

    private static String described(String schema, String doc) {
        return "{\"description\": " + quoted(doc) + ", " + schema.substring(1);
    }

    private static String rule(Shape.Rule rule) {
        return switch (rule) {
            case Shape.Rule.ExactlyOne(List<List<String>> groups) -> exactlyOne(groups);
            case Shape.Rule.AtMostOne(List<String> keys) -> {
                var pairs = new ArrayList<String>();
                for (int i = 0; i < keys.size(); i++) {
                    for (int j = i + 1; j < keys.size(); j++) pairs.add(required(List.of(keys.get(i), keys.get(j))));
                }
                yield object("not", object("anyOf", list(pairs)));
            }
            case Shape.Rule.AtLeastOne(List<String> keys) ->
                object(
                        "anyOf",
                        list(keys.stream().map(k -> required(List.of(k))).toList()));
            case Shape.Rule.Needs(String key, String other) ->
                object("dependentRequired", object(key, list(List.of(quoted(other)))));
        };
    }

    private static String exactlyOne(List<List<String>> groups) {
        var choices = new ArrayList<String>();
        for (var group : groups) {
            var others = groups.stream()
                    .flatMap(List::stream)
                    .distinct()
                    .filter(k -> !group.contains(k))
                    .map(k -> required(List.of(k)))
                    .toList();
            choices.add(object("allOf", list(List.of(required(group), object("not", object("anyOf", list(others)))))));
        }
        return object("anyOf", list(choices));
    }

    private static String required(List<String> keys) {
        return object("required", list(keys.stream().map(JsonSchema::quoted).toList()));
    }

    private String oneWord(Shape.OneWord oneWord) {
        var words = new ArrayList<String>();
        for (var word : oneWord.words()) words.add(object(MapChecker.keys(word, oneWord)));
        return object("anyOf", list(words));
    }

    private String overrides(Shape.Overrides overrides) {
        Map<String, List<String>> paths = new LinkedHashMap<>();
        collect(overrides.target(), "", paths);
        var properties = new LinkedHashMap<String, String>();
        paths.forEach((path, schemas) -> properties.put(
                "^" + path + "$", schemas.size() == 1 ? schemas.getFirst() : object("anyOf", list(schemas))));
        return object("type", "\"object\"", "patternProperties", map(properties), "additionalProperties", "false");
    }

    private void collect(Shape shape, String before, Map<String, List<String>> paths) {
        switch (shape) {
            case Shape.Keys keys -> keys.keys().forEach(k -> collectStep(k.name(), k.shape(), before, paths));
            case Shape.Named named -> collectStep(NAME, named.value(), before, paths);
            case Shape.Tuple tuple -> tuple.parts().forEach(p -> collectStep(p.name(), p.shape(), before, paths));
            case Shape.AnyOf any -> any.shapes().forEach(s -> collect(s, before, paths));
            default -> {}
        }
    }

    private void collectStep(String step, Shape shape, String before, Map<String, List<String>> paths) {
        var path = before.isEmpty() ? step : before + "\\." + step;
        paths.computeIfAbsent(path, _ -> new ArrayList<>()).add(of(shape));
        collect(shape, path, paths);
    }

    private static String textOrDigits(String text) {
        return object("anyOf", list(List.of(text, object("type", "\"number\""))));
    }

    private static String pattern(String pattern) {
        return object("type", "\"string\"", "pattern", quoted("^(?:" + pattern + ")$"));
    }

    private static String object(String... keysAndValues) {
        var map = new LinkedHashMap<String, String>();
        for (int i = 0; i < keysAndValues.length; i += 2) map.put(keysAndValues[i], keysAndValues[i + 1]);
        return map(map);
    }

    private static String map(Map<String, String> map) {
        return map.entrySet().stream()
                .map(e -> quoted(e.getKey()) + ": " + e.getValue())
                .collect(Collectors.joining(", ", "{", "}"));
    }

    private static String list(List<String> items) {
        return "[" + String.join(", ", items) + "]";
    }

    private static String quoted(String text) {
        return "\"" + text.replace("\\", "\\\\").replace("\"", "\\\"") + "\"";
    }
}
