package plumeline.text;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

final class TidyTest {
    private static final int ROUNDS = 120;

    private static void check(String messy, String tidy) {
        assertThat(Tidy.rewrite(messy)).isEqualTo(tidy);
        assertThat(Tidy.rewrite(tidy)).as("twice").isEqualTo(tidy);
    }

    private static void checkLeftAlone(String text) {
        assertThat(Tidy.rewrite(text)).isEqualTo(text);
    }

    @Test
    void example_isTidyAsItIs() {
        checkLeftAlone(Texts.example());
    }

    @Test
    void flowPunctuation_hasASpaceBehindAndNoneElsewhere() {
        check("a:   {x : 1,y: [ 1 ,2,3 ]  , z: { }}\n", "a: {x: 1, y: [1, 2, 3], z: {}}\n");
    }

    @Test
    void spacesInsideQuantities_areDrawnTogether() {
        check("""
            film:
              title:  five   words   as  they   are   # and   a comment
              rate:   24     fps
            tin:
              mass:   197    g    ±   2   g    measured
              tube: 2   5/8  in
              gives: 4000   lx   at   1   m
              at:
                -  free   between   -1 mm    and  2 mm
                -  free
              flow: {a: 1   mm, b: [2   deg,3\t\tdeg]}
            """, """
            film:
              title: five   words   as  they   are   # and   a comment
              rate: 24 fps
            tin:
              mass: 197 g ± 2 g measured
              tube: 2 5/8 in
              gives: 4000 lx at 1 m
              at:
                - free between -1 mm and 2 mm
                - free
              flow: {a: 1 mm, b: [2 deg, 3 deg]}
            """);
    }

    @Test
    void spacesInsideTexts_stay() {
        checkLeftAlone("title: 24   fps\n");
        checkLeftAlone("a: \"24   fps\"\nb: '1   mm'\n");
        checkLeftAlone("a: |\n  1   mm\nb: >-\n  2   mm\n");
        checkLeftAlone("titles: {one: {en: 3   m, de: [4   m]}}\n");
        checkLeftAlone("a: one   two\nb: 12   zz\nc: free   between   all\nd: free   between 1   mm and a   b\n");
        checkLeftAlone("a: 1   mm\n  or   so\n");
    }

    @Test
    void everyLevel_isIndentedByTwo() {
        check("""
            a:
                b:
                       c: 1
                       d:
                        - x
                        -   y: 1
                            z: 2
            e:
             f: 3
            """, """
            a:
              b:
                c: 1
                d:
                  - x
                  - y: 1
                    z: 2
            e:
              f: 3
            """);
    }

    @Test
    void listInItsKeysColumn_isIndented() {
        check("a:\n- 1\n- - 2\n  - 3\nb: 4\n", "a:\n  - 1\n  - - 2\n    - 3\nb: 4\n");
    }

    @Test
    void bracketsOverSeveralLines_keepTheirLines() {
        check("""
            a: {b: 1,
                    c: [
              2,3   # three
                ],
             }
            d:
                   [4,
                 5]
            e:
             -  [6,
              7]
            """, """
            a: {b: 1,
              c: [
                2, 3   # three
              ],
            }
            d:
              [4,
                5]
            e:
              - [6,
                  7]
            """);
    }

    @Test
    void blankLinesAndLineEnds_areOneAtMost() {
        check("\n\n\na: 1   \n\n  \n\nb: 2\n\n\n", "a: 1\n\nb: 2\n");
        check("a: 1", "a: 1\n");
    }

    @Test
    void comments_goWithTheirBlock() {
        check("""
            # top
            a:
                # of b
                b: 1   # behind
                # still in a

            # of c
            c:
                # nowhere in particular, so with d
              d: 1
            # end
            """, """
            # top
            a:
              # of b
              b: 1   # behind
              # still in a

            # of c
            c:
              # nowhere in particular, so with d
              d: 1
            # end
            """);
    }

    @Test
    void valuesLinedUp_stayLinedUpAndOthersCloseUp() {
        check("""
            first:  1
            second: 2
            third:  3

            a:    4
            bb:  5
            """, """
            first:  1
            second: 2
            third:  3

            a: 4
            bb: 5
            """);
    }

    @Test
    void textsOverSeveralLines_keepWhatTheySay() {
        String messy = """
            a:
                long: value that
                       goes on

                       and on
                said:  "in \\"quotes\\"
                  too  "
                lines: |
                    one
                      two

                    three
                folded: >-
                    four
                    five
            """;
        String tidy = """
            a:
              long: value that
                goes on

                and on
              said: "in \\"quotes\\"
                too  "
              lines: |
                  one
                    two

                  three
              folded: >-
                  four
                  five
            """;
        check(messy, tidy);
        assertThat(Texts.root(tidy).at("a.lines"))
                .map(n -> ((Node.Scalar) n).text())
                .contains("one\n  two\n\nthree\n");
    }

    @Test
    void carriageReturns_stay() {
        check("a:\r\n    b: 1  \r\n\r\n\r\n\r\nc: [ 2 ]", "a:\r\n  b: 1\r\n\r\nc: [2]\r\n");
    }

    @Test
    void byteOrderMarkAndMarkers_stay() {
        check("\uFEFF---\na:   1\n...\n", "\uFEFF---\na: 1\n...\n");
    }

    @Test
    void json_isTidiedToo() {
        check("{\"a\":1,\n\t\"b\" : [1,2,\n3],\n\"c\":{}}", "{\"a\": 1,\n  \"b\": [1, 2,\n    3],\n  \"c\": {}}\n");
    }

    @Test
    void explicitKeys_areKept() {
        check("?   a\n:   1\n", "? a\n: 1\n");
    }

    @Test
    void textWithProblems_isLeftAlone() {
        for (String text : List.of(
                "a:    true\n",
                "a:   \n",
                "a:  1\na:  2\n",
                "a:  {b:   1\n",
                "a:  &x   1\n",
                "\ta:   1\n",
                "",
                "a:  1\n---\nb:  2\n",
                "a:  \ud800\n")) {
            checkLeftAlone(text);
        }
    }

    @Test
    void textWhoseSpacesMean_isLeftAlone() {
        checkLeftAlone("a: |+\n  text\n\n\n\nb:   1\n");
    }

    @Test
    void example_spacedAnyhow_becomesTidyAndNothingElseChanges() {
        long seed = 20261125;
        var random = new Random(seed);
        String example = Texts.example();
        int changed = 0;
        for (int i = 0; i < ROUNDS; i++) {
            String messy = messed(example, random);
            String what = "seed " + seed + " round " + i;
            assertThat(Texts.read(messy).problems()).as(what).isEmpty();
            changed += messy.equals(example) ? 0 : 1;
            String tidy = Tidy.rewrite(messy);
            assertThat(closed(tidy)).as(what).isEqualTo(closed(example));
            assertThat(Tidy.rewrite(tidy)).as(what).isEqualTo(tidy);
        }
        assertThat(changed).isEqualTo(ROUNDS);
    }

    /// Makes runs of spaces within lines one, since how values are lined up may be lost.
    private static String closed(String text) {
        return text.lines()
                .map(line -> line.substring(0, indent(line)) + line.strip().replaceAll(" +", " "))
                .toList()
                .toString();
    }

    private static int indent(String line) {
        return line.length() - line.stripLeading().length();
    }

    /// Spreads brackets, indents each level by another step, and adds spaces at line ends. The example has no text in
    /// quotes or over several lines that this would change.
    private static String messed(String text, Random random) {
        int step = random.nextInt(1, 8);
        var lines = new ArrayList<String>();
        for (String line : text.lines().toList()) {
            int comment = line.indexOf('#');
            String code = comment < 0 ? line : line.substring(0, comment);
            String spread = code.strip();
            if (!code.isBlank()) {
                spread = spaced(spread, random);
            }
            String behind = comment < 0 ? "" : (code.isBlank() ? "" : "   ") + line.substring(comment);
            lines.add(
                    " ".repeat(indent(line) / 2 * Math.max(step, 2)) + spread + behind + " ".repeat(random.nextInt(3)));
        }
        return String.join("\n", lines) + "\n".repeat(random.nextInt(4));
    }

    private static String spaced(String code, Random random) {
        var out = new StringBuilder();
        for (int i = 0; i < code.length(); i++) {
            char c = code.charAt(i);
            boolean bracket = "{}[],".indexOf(c) >= 0;
            if (bracket && random.nextBoolean() && i > 0) {
                out.repeat(' ', random.nextInt(3));
            }
            out.append(c);
            boolean space =
                    c == ' ' && (code.charAt(Math.max(0, i - 1)) == ':' || code.charAt(Math.max(0, i - 1)) == ',');
            if (space || bracket && random.nextBoolean()) {
                out.repeat(' ', random.nextInt(3));
            }
        }
        return out.toString();
    }

    @Test
    void anyText_neverChangesButInItsSpaces() {
        long seed = 88;
        var random = new Random(seed);
        String alphabet = "ab: -{}[],\n\n  #|>\"'?1";
        int changed = 0;
        for (int i = 0; i < 15_000; i++) {
            var text = new StringBuilder();
            for (int n = random.nextInt(1, 30); n > 0; n--) {
                text.append(alphabet.charAt(random.nextInt(alphabet.length())));
            }
            String tidy = Tidy.rewrite(text.toString());
            String what = "seed " + seed + " round " + i + ": " + text;
            assertThat(tidy.replaceAll("\\s", ""))
                    .as(what)
                    .isEqualTo(text.toString().replaceAll("\\s", ""));
            if (!tidy.contentEquals(text)) {
                changed++;
                assertThat(Tidy.rewrite(tidy)).as(what).isEqualTo(tidy);
            }
        }
        assertThat(changed).isGreaterThan(200);
    }
}
