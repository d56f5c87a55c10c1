package plumeline.text;

import static org.assertj.core.api.Assertions.assertThat;

import com.networknt.schema.Schema;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import plumeline.quantity.Kind;
import plumeline.quantity.Unit;
import plumeline.text.Shape.Key;
import plumeline.tidy.Outside;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/// Holds the schema and the check together. The schema is read by a validator, and the JSON by a reader, that share no
/// code with us.
final class JsonSchemaTest {
    private static final JsonMapper JSON = new JsonMapper();
    private static final Shape LENGTH = new Shape.Amount(Kind.LENGTH, Range.ANY, Shape.Mark.FIXED);
    private static final Shape MARK = new Shape.Amount(Kind.LENGTH, Range.ANY, Shape.Mark.FREE);

    private static Schema schema(Shape shape) {
        return SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
                .getSchema(JsonSchema.write(shape));
    }

    private static JsonNode json(String text) {
        return JSON.readTree(text);
    }

    /// Checks that both take these JSON texts.
    private static void checkTaken(Shape shape, String... texts) {
        Schema schema = schema(shape);
        for (String text : texts) {
            assertThat(schema.validate(json(text))).as("schema: " + text).isEmpty();
            assertThat(Check.against(shape, Texts.root(text), ""))
                    .as("check: " + text)
                    .isEmpty();
        }
    }

    /// Checks that both refuse these JSON texts.
    private static void checkRefused(Shape shape, String... texts) {
        Schema schema = schema(shape);
        for (String text : texts) {
            assertThat(schema.validate(json(text))).as("schema: " + text).isNotEmpty();
            assertThat(Check.against(shape, Texts.root(text), ""))
                    .as("check: " + text)
                    .isNotEmpty();
        }
    }

    private static String quoted(String text) {
        return "\"" + text.replace("\\", "\\\\").replace("\"", "\\\"") + "\"";
    }

    @Test
    @Outside(source = "JSON Schema, draft 2020-12, its meta-schema as the validator holds it", kind = "standard")
    void schemas_areSchemas() {
        Schema meta = SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
                .getSchema(com.networknt.schema.SchemaLocation.of("https://json-schema.org/draft/2020-12/schema"));
        assertThat(meta.validate(json(JsonSchema.write(everything())))).isEmpty();
        assertThat(meta.validate(json("{\"type\": 5}")))
                .as("the meta-schema can refuse")
                .isNotEmpty();
    }

    private static Shape everything() {
        Shape part = Shape.Keys.of(
                        Key.required("a", "says \"a\" \\ b", LENGTH),
                        Key.optional(
                                "b",
                                "b",
                                new Shape.Tuple(List.of(new Shape.Part("x", MARK), new Shape.Part("y", MARK)), 1)),
                        Key.optional("c", "c", new Shape.Curve(LENGTH, MARK, 2)))
                .with(
                        new Shape.Rule.AtMostOne(List.of("b", "c")),
                        new Shape.Rule.AtLeastOne(List.of("a", "b")),
                        new Shape.Rule.Needs("c", "a"),
                        new Shape.Rule.ExactlyOne(List.of(List.of("a"), List.of("b", "c"))));
        return Shape.Keys.of(
                Key.optional("named", "n", new Shape.Named("a part", part)),
                Key.optional("passes", "p", new Shape.Overrides(part)),
                Key.optional(
                        "words",
                        "w",
                        new Shape.OneWord(
                                "a word",
                                List.of(Shape.Word.of(Key.required("sharp", "s", part))),
                                List.of(Key.optional("when", "w", new Shape.Choice(List.of("start", "end")))))),
                Key.optional("ratio", "r", new Shape.RatioText()),
                Key.optional("ref", "r", new Shape.Reference("a thing", Shape.Variants.ALLOWED)),
                Key.optional("free", "f", new Shape.Free(20)),
                Key.optional("written", "w", new Shape.Written("#[0-9a-f]{6}", "a colour", "#2a9d8f")),
                Key.optional("items", "i", new Shape.Items(new Shape.YesNo(), 1, 3)),
                Key.optional("any", "a", Shape.AnyOf.of(new Shape.Whole(0, 9), LENGTH)));
    }

    @Test
    void everySpellingOfEveryUnit_isTakenByBoth() {
        int examined = 0;
        for (Kind kind : Kind.values()) {
            Shape shape = new Shape.Amount(kind, Range.ANY, Shape.Mark.FREE);
            Schema schema = schema(shape);
            for (String unit : kind == Kind.NUMBER ? List.of("") : Unit.listSpellings(kind)) {
                for (String text : List.of("2 " + unit, "-2.5" + unit, "1/48 " + unit, "2 5/8 " + unit, "free")) {
                    assertThat(schema.validate(json(quoted(text)))).as(text).isEmpty();
                    assertThat(Check.against(shape, Texts.root(quoted(text)), ""))
                            .as(text)
                            .isEmpty();
                    examined++;
                }
            }
        }
        assertThat(examined).isGreaterThan(400);
    }

    @Test
    void tailsOfQuantities_areTakenAlike() {
        checkTaken(
                LENGTH, "\"66 mm ± 1 mm measured\"", "\"66 mm+-1 %\"", "\"66mm +/- 1mm typical\"", "\"66 mm solved\"");
        checkRefused(
                LENGTH,
                "\"66\"",
                "66",
                "\"66 mn\"",
                "\"66 mm ± 1 s\"",
                "\"66 mm guessed\"",
                "\"mm\"",
                "\"free\"",
                "\"66 mm at 1 m\"");
        checkTaken(MARK, "\"free\"", "\"free between 1 mm and 2 in\"", "\"1 mm ± 1 mm\"");
        checkRefused(MARK, "\"free between 1 mm\"", "\"free between 1 s and 2 s\"");
        Shape light = new Shape.Amount(Kind.ILLUMINANCE, Range.ANY, Shape.Mark.FIXED);
        checkTaken(light, "\"4000 lx at 1 m ± 15 % typical\"");
        checkRefused(light, "\"4000 lx at 1 s\"");
        checkTaken(new Shape.Amount(Kind.LOUDNESS, Range.ANY, Shape.Mark.FIXED), "\"-14 LUFS ± 1 LU\"");
    }

    @Test
    void signsAndNothing_followTheRange() {
        Shape over = new Shape.Amount(Kind.MASS, Range.POSITIVE, Shape.Mark.FIXED);
        checkTaken(
                over, "\"197 g\"", "\"+197 g\"", "\"0.5 g\"", "\"0 1/2 g\"", "\"3 0/8 g\"", "\".10 g\"", "\"5e-3 g\"");
        checkRefused(
                over, "\"-197 g\"", "\"\u2212197 g\"", "\"0 g\"", "\"0.00 g\"", "\"-0 g\"", "\"0/5 g\"", "\"0e5 g\"");
        checkRefused(over, "\"0 0/5 g\"", "\"0 g ± 5 g\"", "\"-1/2 g\"", "\"5 g ± -1 g\"");
        Shape from0 = new Shape.Amount(Kind.LENGTH, Range.NOT_NEGATIVE, Shape.Mark.FREE);
        checkTaken(from0, "\"0 mm\"", "\"-0 mm\"", "\"-0.0 mm\"", "\"1 mm\"", "\"free between 0 mm and 2 mm\"");
        checkRefused(from0, "\"-1 mm\"", "\"-0.01 mm\"", "\"free between -1 mm and 2 mm\"");
        Shape between = new Shape.Amount(Kind.ANGLE, Range.between("-90 deg", "90 deg"), Shape.Mark.FIXED);
        checkTaken(between, "\"-90 deg\"", "\"0 deg\"");
        Shape water = new Shape.Amount(Kind.TEMPERATURE, Range.atLeast("-10 degC"), Shape.Mark.FIXED);
        checkTaken(water, "\"-4 degC\"", "\"20 degF\"");
        Shape light = new Shape.Amount(Kind.ILLUMINANCE, Range.POSITIVE, Shape.Mark.FIXED);
        checkRefused(light, "\"-4000 lx at 1 m\"", "\"4000 lx at -1 m\"", "\"4000 lx at 0 m\"");
    }

    @Test
    void bareNumbers_haveTheirBounds() {
        Shape over = new Shape.Amount(Kind.NUMBER, Range.POSITIVE, Shape.Mark.FIXED);
        checkTaken(over, "8", "0.5", "\"8\"");
        checkRefused(over, "0", "-8", "0.0", "\"0\"", "\"-8\"");
        Shape ratio = new Shape.Amount(Kind.NUMBER, Range.between("0.1", "10"), Shape.Mark.FIXED);
        checkTaken(ratio, "0.1", "10", "1");
        checkRefused(ratio, "0.09", "10.1", "0", "-1");
    }

    @Test
    void bareNumbers_mayBeNumbersOrText() {
        Shape number = new Shape.Amount(Kind.NUMBER, Range.ANY, Shape.Mark.FIXED);
        checkTaken(number, "8", "2.8", "\"2.8\"", "\"8 ± 1\"");
        checkRefused(number, "\"8 mm\"", "\"eight\"");
        checkTaken(new Shape.Whole(1, 9), "1", "9");
        checkRefused(new Shape.Whole(1, 9), "0", "10", "1.5", "[1]");
    }

    @Test
    void formsOfTexts_areTakenAlike() {
        checkTaken(new Shape.Choice(List.of("level", "upright")), "\"level\"");
        checkRefused(new Shape.Choice(List.of("level", "upright")), "\"Level\"", "[]");
        checkTaken(new Shape.YesNo(), "\"yes\"", "\"no\"");
        checkRefused(new Shape.YesNo(), "\"true\"", "1");
        checkTaken(new Shape.RatioText(), "\"16:9\"", "\"2.39:1\"");
        checkRefused(new Shape.RatioText(), "\"16x9\"", "16");
        checkTaken(new Shape.Reference("a", Shape.Variants.ALLOWED), "\"a.b\"", "\"a-1_b\"", "5");
        checkRefused(new Shape.Reference("a", Shape.Variants.NONE), "\"a.b\"", "\"A\"");
        checkTaken(new Shape.Free(5), "\"a b:\"", "12");
        checkRefused(new Shape.Free(5), "\"123456\"", "[]");
        checkTaken(new Shape.Written("#[0-9a-f]{6}", "a colour", "#2a9d8f"), "\"#2a9d8f\"");
        checkRefused(new Shape.Written("#[0-9a-f]{6}", "a colour", "#2a9d8f"), "\"x#2a9d8f\"", "\"#2a9d8f0\"");
    }

    @Test
    void listsAndMaps_areTakenAlike() {
        checkTaken(new Shape.Items(LENGTH, 1, 2), "[\"1 mm\"]", "[\"1 mm\", \"2 mm\"]");
        checkRefused(new Shape.Items(LENGTH, 1, 2), "[]", "[\"1 mm\", \"1 mm\", \"1 mm\"]", "\"1 mm\"");
        Shape place = new Shape.Tuple(List.of(new Shape.Part("x", MARK), new Shape.Part("y", LENGTH)), 1);
        checkTaken(place, "[\"free\"]", "[\"free\", \"1 mm\"]");
        checkRefused(place, "[]", "[\"1 mm\", \"free\"]", "[\"1 mm\", \"1 mm\", \"1 mm\"]");
        checkRefused(new Shape.Curve(LENGTH, LENGTH, 2), "[[\"1 mm\", \"1 mm\"]]", "[[\"1 mm\"], [\"1 mm\"]]");
        checkTaken(new Shape.Named("a", LENGTH), "{}", "{\"a-b\": \"1 mm\"}");
        checkRefused(new Shape.Named("a", LENGTH), "{\"A\": \"1 mm\"}", "{\"a\": 5}");
    }

    @Test
    void rulesAndOverrides_areTakenAlike() {
        Shape thing = Shape.Keys.of(
                        Key.optional("a", "a", LENGTH), Key.optional("b", "b", LENGTH), Key.optional("c", "c", LENGTH))
                .with(new Shape.Rule.ExactlyOne(List.of(List.of("a", "b"), List.of("c"))));
        checkTaken(thing, "{\"a\": \"1 mm\", \"b\": \"1 mm\"}", "{\"c\": \"1 mm\"}");
        checkRefused(
                thing,
                "{}",
                "{\"a\": \"1 mm\"}",
                "{\"a\": \"1 mm\", \"c\": \"1 mm\"}",
                "{\"c\": \"1 mm\", \"d\": \"1 mm\"}");
        Shape passes =
                new Shape.Overrides(Shape.Keys.of(Key.optional("place", "p", new Shape.Named("a thing", thing))));
        checkTaken(passes, "{\"place.hero.a\": \"1 mm\"}");
        checkRefused(passes, "{\"place.hero.z\": \"1 mm\"}", "{\"place.hero.a\": 5}", "{\"hero\": 5}");
    }

    @Test
    void randomQuantities_fareAlike() {
        long seed = 2020;
        var random = new Random(seed);
        Schema schema = schema(MARK);
        var parts = List.of(
                "2", "-1.5", "1/3", "2 5/8", " ", "  ", "mm", "in", "s", "±", "+-", "%", "typical", "free", "between",
                "and", ".");
        var taken = new ArrayList<String>();
        for (int i = 0; i < 20_000; i++) {
            var text = new StringBuilder();
            for (int n = random.nextInt(1, 8); n > 0; n--) {
                text.append(parts.get(random.nextInt(parts.size())));
            }
            boolean checked =
                    Check.against(MARK, Texts.root(quoted(text.toString())), "").isEmpty();
            boolean matched = schema.validate(json(quoted(text.toString()))).isEmpty();
            if (checked) {
                assertThat(matched)
                        .as("seed " + seed + " round " + i + " \"" + text + "\"")
                        .isTrue();
                taken.add(text.toString());
            }
        }
        assertThat(taken).hasSizeGreaterThan(200);
    }
}
