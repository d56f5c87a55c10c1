package plumeline.plan;

import static org.assertj.core.api.Assertions.assertThat;

import com.networknt.schema.Schema;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.Test;
import plumeline.quantity.Kind;
import plumeline.quantity.Quantities;
import plumeline.quantity.Reading;
import plumeline.quantity.Unit;
import plumeline.text.Check;
import plumeline.text.Document;
import plumeline.text.JsonSchema;
import plumeline.text.Node;
import plumeline.text.Shape;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.JsonNodeFactory;

/// Holds the JSON Schema and the reader together on good and bad plans. The schema is read by a validator that shares
/// no code with us. It can't look names up or compare values; bad plans say at their end what a schema does with them.
final class SchemaTest {
    private static final JsonNodeFactory JSON = JsonNodeFactory.instance;

    private static Schema schema() {
        return SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
                .getSchema(JsonSchema.write(Plans.grammar()));
    }

    private static Node tree(String text) {
        return Document.read(text.getBytes(StandardCharsets.UTF_8), "p.yaml")
                .findRoot()
                .orElseThrow();
    }

    /// Converts a tree as an editor's YAML reader does: plain whole and decimal numbers are numbers, all else is text.
    private static JsonNode json(Node node) {
        return switch (node) {
            case Node.Scalar s -> {
                boolean plain = !s.quoted();
                if (plain && s.text().matches("-?(0|[1-9][0-9]{0,14})"))
                    yield JSON.numberNode(Long.parseLong(s.text()));
                if (plain && s.text().matches("-?[0-9]+\\.[0-9]+")) yield JSON.numberNode(Double.parseDouble(s.text()));
                if (plain && s.text().equals("true")) yield JSON.booleanNode(true);
                if (plain && s.text().isEmpty()) yield JSON.nullNode();
                yield JSON.stringNode(s.text());
            }
            case Node.Sequence s -> {
                var array = JSON.arrayNode();
                s.items().forEach(item -> array.add(json(item)));
                yield array;
            }
            case Node.Mapping m -> {
                var object = JSON.objectNode();
                m.entries().forEach(e -> object.set(e.key(), json(e.value())));
                yield object;
            }
        };
    }

    @Test
    void goodPlans_passTheSchema() {
        var schema = schema();
        var paths = Texts.list("good");
        assertThat(paths).hasSizeGreaterThanOrEqualTo(12);
        for (var path : paths) {
            assertThat(schema.validate(json(tree(Texts.text(path)))))
                    .as(path.toString())
                    .isEmpty();
        }
        assertThat(schema.validate(json(tree(Texts.text(Texts.EXAMPLE)))))
                .as("the example")
                .isEmpty();
    }

    /// Every quantity of the grammar, with the sign and the nothing that its own range allows: made from the fields'
    /// definitions, so that a new field is held too.
    @Test
    void everyQuantity_isTakenAndRefusedAsItsRangeSays() {
        var amounts = new LinkedHashSet<Shape.Amount>();
        collect(Plans.grammar(), amounts);
        int refused = 0;
        for (var amount : amounts) {
            var schema = schema(amount);
            for (var unit : amount.kind() == Kind.NUMBER ? List.of("") : Unit.listSpellings(amount.kind())) {
                for (var number : NUMBERS) {
                    refused += checkAlike(amount, schema, (number + " " + unit).strip());
                    if (amount.mark() == Shape.Mark.FREE) {
                        refused +=
                                checkAlike(amount, schema, "free between " + number + " " + unit + " and 9e9 " + unit);
                    }
                }
            }
        }
        assertThat(amounts).hasSizeGreaterThan(50);
        assertThat(refused).isGreaterThan(900);
    }

    private static final List<String> NUMBERS = List.of(
            "-197",
            "\u22122.5",
            "-1/2",
            "-2 5/8",
            "-.5",
            "-1e-3",
            "-0",
            "-0.0",
            "0",
            "0.00",
            "0/3",
            "0 0/3",
            "0e3",
            "+0",
            ".0",
            "+1",
            "1",
            "1/3",
            "0 1/3",
            "3 0/3",
            "0.004",
            ".5",
            "2e-3",
            "95",
            "100000",
            "1e8");

    /// Checks that the schema takes what the check takes, and refuses what is refused for its sign or as nothing.
    private static int checkAlike(Shape.Amount amount, Schema schema, String text) {
        boolean taken = Check.against(amount, tree("\"" + text + "\""), "").isEmpty();
        var what = amount + " \"" + text + "\"";
        boolean matched = schema.validate(JSON.stringNode(text)).isEmpty();
        if (taken) {
            assertThat(matched).as(what).isTrue();
            return 0;
        }
        var number = text.replace("free between ", "");
        boolean below = number.startsWith("-") || number.startsWith("\u2212");
        boolean nothing = !number.replaceAll("[/eE ].*", "").matches(".*[1-9].*")
                && !number.matches("[+-]?0 [0-9]*[1-9][0-9]*/.*");
        boolean told = below && !nothing && amount.range().lowSi() >= 0
                || nothing && !amount.range().allows(0);
        if (told) assertThat(matched).as(what).isFalse();
        return told ? 1 : 0;
    }

    private static Schema schema(Shape shape) {
        return SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
                .getSchema(JsonSchema.write(shape));
    }

    private static void collect(Shape shape, Set<Shape.Amount> into) {
        switch (shape) {
            case Shape.Amount amount -> into.add(amount);
            case Shape.Items items -> collect(items.item(), into);
            case Shape.Tuple tuple -> tuple.parts().forEach(p -> collect(p.shape(), into));
            case Shape.Curve curve -> {
                collect(curve.where(), into);
                collect(curve.value(), into);
            }
            case Shape.Keys keys -> keys.keys().forEach(k -> collect(k.shape(), into));
            case Shape.Named named -> collect(named.value(), into);
            case Shape.AnyOf any -> any.shapes().forEach(s -> collect(s, into));
            case Shape.OneWord words -> {
                words.common().forEach(k -> collect(k.shape(), into));
                words.words().forEach(w -> w.further().forEach(k -> collect(k.shape(), into)));
            }
            default -> {}
        }
    }

    /// Takes the plan with every key of the contract, turns the sign of a value under each of them, or makes it
    /// nothing, and reads the whole with both.
    @Test
    void everyValueOfAPlan_negativeOrNothing_faresAlikeWithBoth() {
        var text = Texts.text(Texts.PLANS.resolve(Path.of("good", "contract.yaml")));
        var schema = schema();
        var grammar = Plans.grammar();
        int refused = 0;
        var values = new LinkedHashMap<String, Node.Scalar>();
        collectQuantities("", tree(text), values);
        for (var value : values.values()) {
            var place = value.place();
            for (var other : List.of(
                    value.text().replaceFirst("^-?[0-9./]+", "-7"), value.text().replaceFirst("^-?[0-9./]+", "0"))) {
                var changed = text.substring(0, place.start()) + other + text.substring(place.end());
                var root = tree(changed);
                boolean range = Check.against(grammar, root, "").stream()
                        .anyMatch(p -> p.place().start() == place.start());
                boolean matched = schema.validate(json(root)).isEmpty();
                assertThat(matched)
                        .as(place.toText() + " " + value.text() + " as " + other)
                        .isEqualTo(!range);
                refused += range ? 1 : 0;
            }
        }
        assertThat(values).hasSizeGreaterThan(100);
        assertThat(refused).isGreaterThan(100);
    }

    /// Collects a quantity under each two keys that stand below one another, and each item of a list there.
    private static void collectQuantities(String keys, Node node, Map<String, Node.Scalar> into) {
        switch (node) {
            case Node.Scalar s -> {
                if (Quantities.read(s.text()) instanceof Reading.Read && !s.quoted()) into.putIfAbsent(keys, s);
            }
            case Node.Sequence s -> {
                for (int i = 0; i < s.items().size(); i++) {
                    collectQuantities(
                            keys + "[" + Math.min(i, 2) + "]", s.items().get(i), into);
                }
            }
            case Node.Mapping m ->
                m.entries()
                        .forEach(e -> collectQuantities(
                                keys.substring(keys.lastIndexOf('.') + 1) + "." + e.key(), e.value(), into));
        }
    }

    @Test
    void badPlans_fareAsTheySay() {
        var schema = schema();
        int refused = 0;
        var paths = Texts.list("bad");
        assertThat(paths).hasSizeGreaterThanOrEqualTo(25);
        for (var path : paths) {
            var text = Texts.text(path);
            boolean refuses = text.contains("# A schema refuses it.");
            assertThat(refuses || text.contains("# A schema passes it."))
                    .as(path.toString())
                    .isTrue();
            var errors = schema.validate(json(tree(text)));
            assertThat(errors.isEmpty()).as(path + " " + errors).isEqualTo(!refuses);
            refused += refuses ? 1 : 0;
        }
        assertThat(refused).isGreaterThanOrEqualTo(15);
    }
}
