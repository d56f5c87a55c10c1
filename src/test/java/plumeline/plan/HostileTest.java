package plumeline.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatCode;

import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Random;
import java.util.Set;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Assertions;
import org.junit.jupiter.api.Test;
import plumeline.text.Document;
import plumeline.text.Node;
import plumeline.text.Problem;
import plumeline.text.Shape;

/// Files that nobody would write by hand: no throw, no hang, and every slip is said at its place.
final class HostileTest {
    private static final int ROUNDS = 400;

    private static List<Problem> problems(String text) {
        return Assertions.assertTimeoutPreemptively(
                Duration.ofSeconds(20), () -> Texts.read(text).problems());
    }

    @Test
    void tenThousandShots_areRefused() {
        var text = new StringBuilder(Texts.SMALL);
        for (int i = 0; i < 10_000; i++) text.append("  s").append(i).append(": {frames: 1}\n");
        assertThat(problems(text.toString())).extracting(Problem::toText).containsExactly("""
            p.yaml:14:3 shots is 10001 shots long; must be at most 200 shots long
              Split it into several plans, or leave out what isn't used.   (P-PLAN-02, docs/problems.md)\
            """);
    }

    @Test
    void manyThingsInAShot_areRefused() {
        var text = new StringBuilder(Texts.SMALL.replace("{hero: {thing: tin, at: [0 mm, 0 mm]}}", "\n"));
        for (int i = 0; i < 101; i++) text.append("      t").append(i).append(": {thing: tin, at: free}\n");
        assertThat(problems(text.toString())).extracting(Problem::code).containsExactly("P-PLAN-02");
    }

    @Test
    void manyPassesOfALongShot_areRefusedBeforeTheyAreRead() {
        var text = new StringBuilder(Texts.SMALL).append("    speed:\n");
        for (int i = 0; i < 5000; i++) text.append("      - [").append(i).append(" frames, 100 %]\n");
        text.append("    passes:\n");
        for (int i = 0; i < 90; i++) text.append("      p").append(i).append(": {camera.f_number: 8}\n");
        assertThat(problems(text.toString())).extracting(Problem::code).containsExactly("P-PLAN-02");
    }

    @Test
    void thousandsOfSlips_areCutShort() {
        var text = new StringBuilder(Texts.SMALL).append("    speed:\n");
        for (int i = 0; i < 5000; i++) text.append("      - [x").append(i).append(", 5]\n");
        assertThat(problems(text.toString())).hasSizeBetween(100, 3000);
    }

    @Test
    void oddRoots_areProblems() {
        for (var text : List.of(
                "",
                "a",
                "[1, 2]",
                "- plumeline: 1",
                "plumeline",
                "plumeline: [1]",
                "{}",
                "\u0000",
                "shots: 3",
                "plumeline: 99999999999999999999",
                "kit: [1]\nshots: []\nthings: x\ncut: {a: b}")) {
            assertThat(problems(text)).as(text).isNotEmpty();
        }
    }

    @Test
    void oddBytes_areProblems() {
        long seed = 4711;
        var random = new Random(seed);
        var example = Texts.text(Texts.EXAMPLE).getBytes(StandardCharsets.UTF_8);
        for (int i = 0; i < ROUNDS; i++) {
            var bytes = example.clone();
            for (int k = random.nextInt(1, 6); k > 0; k--)
                bytes[random.nextInt(bytes.length)] = (byte) random.nextInt(256);
            var round = i;
            assertThatCode(() -> Plans.read(bytes, "p.yaml"))
                    .as("seed %d round %d", seed, round)
                    .doesNotThrowAnyException();
        }
    }

    @Test
    void example_withAKeyRenamed_hasThatProblemInItsLine() {
        var lines = Texts.text(Texts.EXAMPLE).lines().toList();
        var known = new HashSet<String>();
        collectKeys(Plans.grammar(), known);
        // The example's crew gives a light, a move, a delivery and a pass these names.
        known.removeAll(Set.of("key", "turn", "wide", "white"));
        var word = Pattern.compile("(?<=[ {])[a-z_]+(?=: )");
        int examined = 0;
        for (int line = 0; line < lines.size(); line++) {
            if (lines.get(line).startsWith("#")) continue;
            var match = word.matcher(lines.get(line));
            while (match.find()) {
                if (!known.contains(match.group())) continue;
                checkRenamed(lines, line, match.start(), match.group());
                examined++;
            }
        }
        assertThat(examined).isGreaterThan(120);
    }

    private static void collectKeys(Shape shape, Set<String> into) {
        switch (shape) {
            case Shape.Keys keys -> keys.keys().forEach(k -> collectKey(k, into));
            case Shape.Named named -> collectKeys(named.value(), into);
            case Shape.Items items -> collectKeys(items.item(), into);
            case Shape.AnyOf any -> any.shapes().forEach(s -> collectKeys(s, into));
            case Shape.OneWord words -> {
                words.common().forEach(k -> collectKey(k, into));
                words.words().forEach(w -> {
                    collectKey(w.subject(), into);
                    w.further().forEach(k -> collectKey(k, into));
                });
            }
            default -> {}
        }
    }

    private static void collectKey(Shape.Key key, Set<String> into) {
        into.add(key.name());
        collectKeys(key.shape(), into);
    }

    private static void checkRenamed(List<String> lines, int line, int at, String key) {
        var changed = new ArrayList<>(lines);
        var odd = key.charAt(0) + "q" + key.substring(1);
        var old = lines.get(line);
        changed.set(line, old.substring(0, at) + odd + old.substring(at + key.length()));
        var text = String.join("\n", changed);
        var root = Document.read(text.getBytes(StandardCharsets.UTF_8), "p.yaml")
                .findRoot()
                .orElseThrow();
        assertThat(problems(text)).as("line " + (line + 1) + " " + odd).anySatisfy(p -> {
            assertThat(p.field()).endsWith(odd);
            assertThat(root.at(p.field()).map(Node::place)).contains(p.place());
            assertThat(p.code()).isEqualTo("P-KEY-01");
        });
    }

    @Test
    void example_mutilated_neverThrowsAndProblemsLieInTheText() {
        long seed = 1914;
        var random = new Random(seed);
        var text = Texts.text(Texts.EXAMPLE);
        int withProblems = 0;
        for (int i = 0; i < ROUNDS; i++) {
            var changed = mutilated(text, random);
            var found = problems(changed);
            withProblems += found.isEmpty() ? 0 : 1;
            for (var problem : found) checkPlace(problem, changed, "seed " + seed + " round " + i);
        }
        assertThat(withProblems).isGreaterThan(ROUNDS / 2);
    }

    private static void checkPlace(Problem problem, String text, String what) {
        var place = problem.place();
        assertThat(place.end()).as(what).isLessThanOrEqualTo(text.length());
        var before = text.substring(0, place.start());
        assertThat(place.line())
                .as(what + " " + problem.toText())
                .isEqualTo(1 + (int) before.chars().filter(c -> c == '\n').count());
        assertThat(problem.toText()).as(what).doesNotContain("null");
        assertThat(problem.attempt()).as(what).isNotBlank();
    }

    /// Deletes, doubles or swaps pieces of the text, or changes units and words in it.
    private static String mutilated(String text, Random random) {
        var out = text;
        for (int k = random.nextInt(1, 4); k > 0; k--) {
            out = switch (random.nextInt(6)) {
                case 0 -> withoutLine(out, random);
                case 1 -> twiceLine(out, random);
                case 2 -> replaceSomewhere(out, " mm", random.nextBoolean() ? " deg" : " mmm", random);
                case 3 -> replaceSomewhere(out, ": ", random.nextBoolean() ? ":" : ": free ", random);
                case 4 -> replaceSomewhere(out, ", ", random.nextBoolean() ? "" : ", x: 1, ", random);
                default -> replaceSomewhere(out, "e", random.nextBoolean() ? "E" : "", random);
            };
        }
        return out;
    }

    private static String withoutLine(String text, Random random) {
        var lines = new ArrayList<>(text.lines().toList());
        lines.remove(random.nextInt(lines.size()));
        return String.join("\n", lines);
    }

    private static String twiceLine(String text, Random random) {
        var lines = new ArrayList<>(text.lines().toList());
        int at = random.nextInt(lines.size());
        lines.add(at, lines.get(at));
        return String.join("\n", lines);
    }

    private static String replaceSomewhere(String text, String old, String with, Random random) {
        int at = text.indexOf(old, random.nextInt(text.length()));
        return at < 0 ? text : text.substring(0, at) + with + text.substring(at + old.length());
    }
}
