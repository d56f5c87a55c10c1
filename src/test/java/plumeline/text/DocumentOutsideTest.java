package plumeline.text;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import plumeline.tidy.Outside;
import tools.jackson.core.JsonParser;
import tools.jackson.core.JsonToken;
import tools.jackson.core.ObjectReadContext;
import tools.jackson.core.json.JsonFactory;

/// JSON is read as its standard and another reader of it say.
final class DocumentOutsideTest {
    private static final int ROUNDS = 3000;
    private static final String[] SPACES = {"", "", "", " ", "\n", "\r\n", "\t", " \n\t "};
    private static final String[] NUMBERS = {
        "0", "-0", "12", "-3.25", "1e3", "6.02E+23", "1.5e-7", "true", "false", "null"
    };
    private static final String[] LETTERS = {
        "a",
        "Z",
        "0",
        " ",
        "#",
        ":",
        ": ",
        ",",
        "{",
        "]",
        "'",
        "- ",
        "?",
        "&",
        "*",
        "!",
        "%",
        "é",
        "\u2028",
        "😀",
        "\\\"",
        "\\\\",
        "\\/",
        "\\b",
        "\\f",
        "\\n",
        "\\r",
        "\\t",
        "\\u00e9",
        "\\u0000",
        "\\u007F",
        "\\ud83d\\ude00"
    };

    private static Node read(String json) {
        Document document =
                Document.read(json.getBytes(StandardCharsets.UTF_8), "a.json", Document.Mode.KEEP_TRUE_AND_NULL);
        assertThat(document.problems()).as(json).isEmpty();
        return document.findRoot().orElseThrow();
    }

    private static String text(String json, String path) {
        return read(json).at(path).map(n -> ((Node.Scalar) n).text()).orElseThrow();
    }

    @Test
    @Outside(
            source = "RFC 8259, from memory",
            place = "section 13, both examples and the three texts of one value",
            kind = "standard")
    void examplesOfTheStandard_read() {
        String image = """
                {
                        "Image": {
                            "Width":  800,
                            "Height": 600,
                            "Title":  "View from 15th Floor",
                            "Thumbnail": {
                                "Url":    "http://www.example.com/image/481989943",
                                "Height": 125,
                                "Width":  100
                            },
                            "Animated" : false,
                            "IDs": [116, 943, 234, 38793]
                          }
                      }
                """;
        assertThat(text(image, "Image.Thumbnail.Url")).isEqualTo("http://www.example.com/image/481989943");
        assertThat(text(image, "Image.Animated")).isEqualTo("false");
        assertThat(text(image, "Image.IDs[4]")).isEqualTo("38793");
        String cities = """
                [
                        {
                           "precision": "zip",
                           "Latitude":  37.7668,
                           "Longitude": -122.3959,
                           "Address":   "",
                           "Zip":       "94107",
                           "Country":   "US"
                        },
                        {
                           "precision": "zip",
                           "Latitude":  37.371991,
                           "Longitude": -122.026020,
                           "Address":   ""
                        }
                      ]
                """;
        assertThat(text(cities, "[2].Longitude")).isEqualTo("-122.026020");
        assertThat(text(cities, "[1].Address")).isEmpty();
        assertThat(((Node.Scalar) read("\"Hello world!\"")).text()).isEqualTo("Hello world!");
        assertThat(((Node.Scalar) read("42")).text()).isEqualTo("42");
        assertThat(((Node.Scalar) read("true")).text()).isEqualTo("true");
    }

    @Test
    @Outside(
            source = "RFC 8259, from memory",
            place = "section 7: the G clef as a pair of surrogates",
            kind = "standard")
    void escapesOfTheStandard_read() {
        assertThat(((Node.Scalar) read("\"\\uD834\\uDD1E\"")).text()).isEqualTo("𝄞");
        assertThat(((Node.Scalar) read("\"\\\"\\\\\\/\\b\\f\\n\\r\\t\\u005C\"")).text())
                .isEqualTo("\"\\/\b\f\n\r\t\\");
    }

    @Test
    @Outside(source = "jackson-core 3.1.7, its streaming reader", kind = "program")
    void randomJson_readsAsAnotherReaderDoes() {
        long seed = 20261125;
        Random random = new Random(seed);
        int values = 0;
        for (int round = 0; round < ROUNDS; round++) {
            String json = value(random, 0);
            List<String> ours = new ArrayList<>();
            collect(read(json), ours);
            assertThat(ours).as("seed %d, round %d: %s", seed, round, json).isEqualTo(theirs(json));
            values += ours.size();
        }
        assertThat(values).isGreaterThan(20_000);
    }

    private static String value(Random random, int level) {
        int kind = level == 0 ? 2 + random.nextInt(2) : random.nextInt(level > 4 ? 2 : 4);
        String space = SPACES[random.nextInt(SPACES.length)];
        String after = SPACES[random.nextInt(SPACES.length)];
        return space
                + switch (kind) {
                    case 0 -> NUMBERS[random.nextInt(NUMBERS.length)];
                    case 1 -> string(random);
                    case 2 -> list(random, level);
                    default -> object(random, level);
                }
                + after;
    }

    private static String list(Random random, int level) {
        List<String> items = new ArrayList<>();
        for (int i = random.nextInt(5); i > 0; i--) {
            items.add(value(random, level + 1));
        }
        return "[" + String.join(",", items) + (items.isEmpty() ? " " : "") + "]";
    }

    private static String object(Random random, int level) {
        List<String> entries = new ArrayList<>();
        for (int i = random.nextInt(5); i > 0; i--) {
            String key = string(random);
            String space = SPACES[random.nextInt(SPACES.length)];
            String colon = SPACES[random.nextInt(SPACES.length)] + ":";
            entries.add(space + "\"" + i + key.substring(1) + colon + value(random, level + 1));
        }
        return "{" + String.join(",", entries) + "}";
    }

    private static String string(Random random) {
        StringBuilder text = new StringBuilder("\"");
        for (int i = random.nextInt(6); i > 0; i--) {
            text.append(LETTERS[random.nextInt(LETTERS.length)]);
        }
        return text.append('"').toString();
    }

    private static void collect(Node node, List<String> into) {
        switch (node) {
            case Node.Scalar scalar -> into.add((scalar.quoted() ? "text " : "bare ") + scalar.text());
            case Node.Sequence sequence -> {
                into.add("[");
                sequence.items().forEach(item -> collect(item, into));
                into.add("]");
            }
            case Node.Mapping mapping -> {
                into.add("{");
                for (Node.Entry entry : mapping.entries()) {
                    into.add("key " + entry.key());
                    collect(entry.value(), into);
                }
                into.add("}");
            }
        }
    }

    private static List<String> theirs(String json) {
        List<String> all = new ArrayList<>();
        try (JsonParser parser = new JsonFactory().createParser(ObjectReadContext.empty(), json)) {
            for (JsonToken token = parser.nextToken(); token != null; token = parser.nextToken()) {
                all.add(
                        switch (token) {
                            case VALUE_STRING -> "text " + parser.getString();
                            case PROPERTY_NAME -> "key " + parser.getString();
                            case START_ARRAY, END_ARRAY, START_OBJECT, END_OBJECT -> token.asString();
                            default -> "bare " + parser.getString();
                        });
            }
        }
        return all;
    }
}
