package plumeline.plan;

import static org.assertj.core.api.Assertions.assertThat;

import com.networknt.schema.Schema;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.nio.charset.StandardCharsets;
import org.junit.jupiter.api.Test;
import plumeline.text.Document;
import plumeline.text.JsonSchema;
import plumeline.text.Node;
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
