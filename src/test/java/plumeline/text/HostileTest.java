package plumeline.text;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import java.util.function.Supplier;
import org.junit.jupiter.api.Assertions;
import org.junit.jupiter.api.Test;
import plumeline.quantity.Kind;

/// Texts that nobody writes by hand: nothing throws, nothing hangs.
final class HostileTest {
    private static final Duration LONG = Duration.ofSeconds(20);
    private static final int ROUNDS = 1500;

    /// A shape that leads anywhere, so that whatever is read is checked too.
    private static final Shape ANYTHING = Shape.AnyOf.of(
            new Shape.Amount(Kind.LENGTH, Range.POSITIVE, Shape.Mark.FREE),
            new Shape.Items(new Shape.Choice(List.of("one", "two")), 1, 4),
            new Shape.Named("a thing", new Shape.Named("a part", new Shape.Whole(0, 9))));

    private static <T> T soon(Supplier<T> work) {
        return Assertions.assertTimeoutPreemptively(LONG, work::get);
    }

    private static List<Problem> read(byte[] bytes) {
        return soon(() -> {
            Document document = Document.read(bytes, "p.yaml");
            document.findRoot().ifPresent(root -> Check.against(ANYTHING, root, ""));
            Tidy.rewrite(document.text());
            for (Problem problem : document.problems()) {
                assertThat(problem.place().end())
                        .isLessThanOrEqualTo(document.text().length());
                assertThat(problem.toText()).doesNotContain("null;").hasSizeLessThan(2000);
            }
            return document.problems();
        });
    }

    private static List<Problem> read(String text) {
        return read(text.getBytes(StandardCharsets.UTF_8));
    }

    private static void checkCode(String text, String code) {
        assertThat(read(text)).extracting(Problem::code).as(code).contains(code);
    }

    @Test
    void aBillionLaughs_areAliasesThatNobodyExpands() {
        var text = new StringBuilder("l0: &l0 [ha]\n");
        for (int i = 1; i < 40; i++) {
            String before = "*l" + (i - 1);
            text.append("l").append(i).append(": &l").append(i).append(" [").append(before);
            text.append((", " + before).repeat(9)).append("]\n");
        }
        checkCode(text.toString(), "P-TEXT-06");
    }

    @Test
    void aMillionBrackets_areTooDeep() {
        checkCode("[".repeat(1_000_000), "P-TEXT-13");
        checkCode("{a: ".repeat(200_000), "P-TEXT-13");
        checkCode("- ".repeat(500_000) + "x", "P-TEXT-13");
        checkCode("? ".repeat(500_000) + "x", "P-TEXT-13");
        assertThat(read("]".repeat(1_000_000))).isNotEmpty();
    }

    @Test
    void nesting_isAllowedToFortyLevels() {
        assertThat(read("[".repeat(39) + "x" + "]".repeat(39))).isEmpty();
        checkCode("[".repeat(40) + "x" + "]".repeat(40), "P-TEXT-13");
        var text = new StringBuilder();
        for (int i = 0; i < 41; i++) {
            text.repeat(' ', i).append("a:\n");
        }
        checkCode(text + " ".repeat(42) + "b: 1\n", "P-TEXT-13");
    }

    @Test
    void tooManyValues_areRefused() {
        checkCode("a: [" + "1,".repeat(50_000) + "1]", "P-TEXT-14");
        checkCode("{" + "a,".repeat(60_000) + "}", "P-TEXT-14");
    }

    @Test
    void twoMebibytes_areRefusedWithoutReading() {
        byte[] bytes = new byte[2 << 20];
        Arrays.fill(bytes, (byte) 'a');
        assertThat(Texts.said(read(bytes)))
                .containsExactly("p.yaml:1:1 the text is 2097152 bytes long; must be at most 1048576 bytes (1 MiB)\n"
                        + "  Leave out what does not belong in it.   (P-TEXT-01, docs/problems.md)");
    }

    @Test
    void aMebibyteOfOneText_isRead() {
        assertThat(read("a: " + "x".repeat((1 << 20) - 4) + "\n")).isEmpty();
        assertThat(read("a: \"" + "\\u0041".repeat(170_000) + "\"\n")).isEmpty();
        read("a".repeat(1 << 20));
        read(" ".repeat(1 << 20));
        read("\n".repeat(1 << 20));
        read("#\n".repeat(1 << 19));
        read("'".repeat(1 << 20));
        read("\"".repeat(1 << 20));
        read("a:\n".repeat(1 << 18));
        read("&a ".repeat(1 << 18));
        read("\u0001".repeat(1 << 20));
    }

    @Test
    void oddEscapesAndDirectives_areProblemsAtMost() {
        for (String text : List.of(
                "\"\\U00110000\"",
                "\"\\UFFFFFFFF\"",
                "\"\\ud800\"",
                "\"\\x\"",
                "\"\\q\"",
                "%YAML 9.9\n--- a",
                "%TAG ! x\n--- a",
                "!<",
                "!<x> a",
                "!!",
                "&",
                "*",
                "&a",
                "@a",
                "`a",
                "|9\n x",
                "|0\n x",
                "|+-\n x",
                ">a",
                "? ",
                ": ",
                "- - -",
                "---",
                "...",
                "--- ---",
                "a: b: c",
                "[a]: [b]",
                "{[]: {}}",
                "? [a]\n: b",
                "!a !b c",
                "{? }",
                "[? ]",
                "{:}",
                "[,]",
                "{,}",
                "\uFFFE",
                "\uFEFF\uFEFF",
                "a\uFEFF: 1",
                "\u2028",
                "a: \u0085 b",
                "<<: {a: 1}",
                "=: 1")) {
            read(text);
        }
    }

    @Test
    void randomBytes_neverThrow() {
        long seed = 31;
        var random = new Random(seed);
        for (int i = 0; i < ROUNDS; i++) {
            byte[] bytes = new byte[random.nextInt(200)];
            random.nextBytes(bytes);
            checkQuiet(bytes, "seed " + seed + " round " + i);
        }
    }

    @Test
    void randomText_neverThrows() {
        long seed = 32;
        var random = new Random(seed);
        String alphabet = "ab:-{}[],\n\n  #|>\"'?!&*%@\t\\~1é\uD83C\uDF39\uFEFF";
        for (int i = 0; i < ROUNDS; i++) {
            var text = new StringBuilder();
            for (int n = random.nextInt(60); n > 0; n--) {
                text.append(alphabet.charAt(random.nextInt(alphabet.length())));
            }
            checkQuiet(text.toString().getBytes(StandardCharsets.UTF_8), "seed " + seed + " round " + i + " " + text);
        }
    }

    @Test
    void example_cutShortAnywhere_neverThrows() {
        byte[] example = Texts.example().getBytes(StandardCharsets.UTF_8);
        int examined = 0;
        for (int length = 0; length < example.length; length += 6) {
            checkQuiet(Arrays.copyOf(example, length), "cut at " + length);
            examined++;
        }
        assertThat(examined).isGreaterThan(800);
    }

    private static void checkQuiet(byte[] bytes, String what) {
        try {
            read(bytes);
        } catch (RuntimeException e) {
            throw new AssertionError(what, e);
        }
    }
}
