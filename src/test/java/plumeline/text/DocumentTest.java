package plumeline.text;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import org.junit.jupiter.api.Test;

final class DocumentTest {
    private static final String TEXT = """
        # top
        a: {b: 12 mm, "c d": [x, 'y z']}
        e:
          - 1
          - f: two words   # behind
        """;

    private static void checkPlace(Node root, String path, int line, int column, String span, String text) {
        Place place = root.at(path).orElseThrow().place();
        assertThat(place.line()).as(path).isEqualTo(line);
        assertThat(place.column()).as(path).isEqualTo(column);
        assertThat(text.substring(place.start(), place.end())).as(path).isEqualTo(span);
    }

    private static void checkProblem(String text, String said) {
        Document document = Texts.read(text);
        assertThat(Texts.said(document.problems())).as(text).containsExactly(said);
    }

    @Test
    void places_areThoseOfTheText() {
        Node root = Texts.root(TEXT);
        checkPlace(root, "a", 2, 4, "{b: 12 mm, \"c d\": [x, 'y z']}", TEXT);
        checkPlace(root, "a.b", 2, 8, "12 mm", TEXT);
        checkPlace(root, "a.c d[2]", 2, 26, "'y z'", TEXT);
        checkPlace(root, "e[1]", 4, 5, "1", TEXT);
        checkPlace(root, "e[2]", 5, 5, "f: two words", TEXT);
        checkPlace(root, "e[2].f", 5, 8, "two words", TEXT);
    }

    @Test
    void keys_haveTheirOwnPlaces() {
        Node.Mapping a = (Node.Mapping) Texts.root(TEXT).at("a").orElseThrow();
        Place key = a.findEntry("c d").orElseThrow().keyPlace();
        assertThat(TEXT.substring(key.start(), key.end())).isEqualTo("\"c d\"");
        assertThat(key.toText()).isEqualTo("p.yaml:2:15");
    }

    @Test
    void charactersBeyondSixteenBits_countOnceInColumnsAndTwiceInOffsets() {
        String text = "# \uD83C\uDFA5\n\uD83C\uDF39: {b: \uD83C\uDF39, c: 1}\n";
        Node root = Texts.root(text);
        checkPlace(root, "\uD83C\uDF39.c", 2, 14, "1", text);
        checkPlace(root, "\uD83C\uDF39.b", 2, 8, "\uD83C\uDF39", text);
    }

    @Test
    void carriageReturns_endLines() {
        String text = "a: 1\r\nb:\r\n  c: 2\r\n";
        checkPlace(Texts.root(text), "b.c", 3, 6, "2", text);
        String old = "a: 1\rb: 2";
        checkPlace(Texts.root(old), "b", 2, 4, "2", old);
    }

    @Test
    void byteOrderMark_countsInOffsetsOnly() {
        String text = "\uFEFFa: 1\nb: 2\n";
        Node root = Texts.root(text);
        checkPlace(root, "a", 1, 4, "1", text);
        checkPlace(root, "b", 2, 4, "2", text);
        assertThat(Texts.read(text).text()).isEqualTo(text);
    }

    @Test
    void json_readsWithTabsEscapesAndNestedQuotes() {
        String text = "{\n\t\"a\": \"x\\\"\\u00e9\\n\",\n\t\"b\": [1, 2.5, \"3 mm\"]\n}";
        Node root = Texts.root(text);
        assertThat(root.at("a")).map(n -> ((Node.Scalar) n).text()).contains("x\"é\n");
        checkPlace(root, "b[3]", 3, 16, "\"3 mm\"", text);
        assertThat(((Node.Scalar) root.at("b[2]").orElseThrow()).quoted()).isFalse();
    }

    @Test
    void tabsInAStringOfJson_stay() {
        Node root = Texts.root("{\"a\": \"x\ty\"}");
        assertThat(root.at("a")).map(n -> ((Node.Scalar) n).text()).contains("x\ty");
    }

    @Test
    void at_pathsThatLeadNowhere_findNothing() {
        Node root = Texts.root(TEXT);
        for (String path :
                new String[] {"z", "a.z", "a[1]", "e[0]", "e[3]", "e[x]", "e[99999999999]", "a.b.c", "e.f"}) {
            assertThat(root.at(path)).as(path).isEmpty();
        }
        assertThat(root.at("")).contains(root);
        assertThat(Texts.root("a.b: {c: 1}").at("a.b.c")).isPresent();
    }

    @Test
    void trueAndNull_canBeKept() {
        Document document = Document.read(
                "{\"a\": true, \"b\": null}".getBytes(StandardCharsets.UTF_8), "p", Document.Mode.KEEP_TRUE_AND_NULL);
        assertThat(document.problems()).isEmpty();
        assertThat(document.findRoot().flatMap(r -> r.at("b")))
                .map(n -> ((Node.Scalar) n).text())
                .contains("null");
    }

    @Test
    void wordsInQuotes_areNoProblem() {
        assertThat(Texts.read("a: \"true\"\nb: 'null'\nc: ''\n").problems()).isEmpty();
    }

    @Test
    void trueFalseAndNull_sayWhatToWrite() {
        checkProblem(
                "a: {b: True}",
                "p.yaml:1:8 a.b is True; must be yes or no where that is meant\n"
                        + "  Write yes, or put a text in quotes.   (P-TEXT-09, docs/problems.md)");
        checkProblem(
                "a: false",
                "p.yaml:1:4 a is false; must be yes or no where that is meant\n"
                        + "  Write no, or put a text in quotes.   (P-TEXT-09, docs/problems.md)");
        checkProblem(
                "a: [~]",
                "p.yaml:1:5 a[1] is ~; must be a value\n"
                        + "  Leave the key out where there is nothing to say.   (P-TEXT-08, docs/problems.md)");
        checkProblem(
                "b: 1\na:\n",
                "p.yaml:2:1 a is empty; must be a value\n"
                        + "  Write a value (in quotes where it begins with #), or leave the key out.   (P-TEXT-08,"
                        + " docs/problems.md)");
    }

    @Test
    void keyGivenTwice_namesTheFirst() {
        checkProblem(
                "a: 1\nb: 2\na: 3\n",
                "p.yaml:3:4 a is given twice; must be given once\n"
                        + "  Keep one of them; the first is on line 1.   (P-TEXT-10, docs/problems.md)");
    }

    @Test
    void keyGivenTwice_withABlockOrAList_isToldAtThatValue() {
        checkProblem(
                "a: 1\na:\n  b: 2\n",
                "p.yaml:3:3 a is given twice; must be given once\n"
                        + "  Keep one of them; the first is on line 1.   (P-TEXT-10, docs/problems.md)");
        checkProblem(
                "{a: [1], a: [2]}",
                "p.yaml:1:13 a is given twice; must be given once\n"
                        + "  Keep one of them; the first is on line 1.   (P-TEXT-10, docs/problems.md)");
    }

    @Test
    void anchorsAliasesAndTags_areRefused() {
        Document document = Texts.read("a: &x 1\nb: *x\nc: !!str 2\n");
        assertThat(Texts.said(document.problems()))
                .containsExactly(
                        "p.yaml:1:4 a is marked with an anchor (&x); must be written without one\n"
                                + "  Leave out &x.   (P-TEXT-06, docs/problems.md)",
                        "p.yaml:2:4 b is an alias (*x); must be written out\n"
                                + "  Write the value itself here: a plan has no aliases.   (P-TEXT-06,"
                                + " docs/problems.md)",
                        "p.yaml:3:4 c is marked with a tag (tag:yaml.org,2002:str); must be written without one\n"
                                + "  Leave out the tag: the key decides what its value is.   (P-TEXT-07,"
                                + " docs/problems.md)");
    }

    @Test
    void tabsThatIndent_areRefusedAndOthersAreNot() {
        checkProblem(
                "a:\n\tb: 1\n",
                "p.yaml:2:1 the text is indented with a tab here; must be indented with spaces\n"
                        + "  Put two spaces for each level.   (P-TEXT-04, docs/problems.md)");
        assertThat(Texts.read("a:\t1\t# c\n\t\nb: 2\n").problems()).isEmpty();
    }

    @Test
    void charactersThatNobodySees_areNamed() {
        checkProblem(
                "a: x\u0007y",
                "p.yaml:1:5 the text is written with the character U+0007 here; must be text without"
                        + " control characters\n  Delete that character: many editors do not show it.  "
                        + " (P-TEXT-03, docs/problems.md)");
    }

    @Test
    void bytesThatAreNoText_areNamedByTheirPlace() {
        byte[] bytes = {'a', ':', ' ', 'x', '\n', 'b', (byte) 0xff, '\n'};
        Document document = Document.read(bytes, "p.yaml");
        assertThat(Texts.said(document.problems()))
                .containsExactly("p.yaml:2:2 the text is not UTF-8 at byte 7 (FF); must be UTF-8\n"
                        + "  Save the file as UTF-8 and read it again.   (P-TEXT-02, docs/problems.md)");
        assertThat(document.findRoot()).isEmpty();
    }

    @Test
    void unreadableText_saysWhere() {
        Document document = Texts.read("a: {b: 1\nc: [2\n");
        assertThat(document.problems()).hasSize(1);
        assertThat(document.problems().getFirst().code()).isEqualTo("P-TEXT-05");
        assertThat(document.problems().getFirst().place().line()).isGreaterThanOrEqualTo(2);
        assertThat(document.findRoot()).isEmpty();
        Document nested = Texts.read("a: b: c\n");
        assertThat(Texts.said(nested.problems()))
                .containsExactly("p.yaml:1:5 the text is not readable here (mapping values are not allowed here); must"
                        + " be `key: value` lines"
                        + " in YAML, or JSON\n  Put each key on a line of its own; quote a text that"
                        + " holds a colon and a"
                        + " space.   (P-TEXT-05, docs/problems.md)");
    }

    @Test
    void emptyTexts_saySo() {
        for (String text : new String[] {"", "\n\n", "# only a comment\n", "---\n", "\uFEFF"}) {
            checkProblem(
                    text,
                    "p.yaml:1:1 the text is empty; must be `key: value` lines\n"
                            + "  Begin with an example.   (P-TEXT-15, docs/problems.md)");
        }
    }

    @Test
    void severalDocuments_areRefusedAtTheSecond() {
        Document document = Texts.read("a: 1\n---\nb: 2\n");
        assertThat(document.problems()).extracting(Problem::code).containsExactly("P-TEXT-12");
        assertThat(document.problems().getFirst().place().line()).isEqualTo(2);
    }

    @Test
    void keysThatAreNoWords_areRefused() {
        assertThat(Texts.read("{a: 1}: 2\n").problems())
                .extracting(Problem::code)
                .containsExactly("P-TEXT-11");
        assertThat(Texts.read("[1, 2]: 2\n").problems())
                .extracting(Problem::code)
                .containsExactly("P-TEXT-11");
        assertThat(Texts.read("'': 2\n").problems()).extracting(Problem::code).containsExactly("P-TEXT-11");
    }

    @Test
    void allProblems_comeAtOnceInTheOrderOfTheText() {
        Document document = Texts.read("a: true\nb: {c: null, c: 1, d: &e 1}\nf: !x y\n");
        assertThat(document.problems())
                .extracting(Problem::code)
                .containsExactly("P-TEXT-09", "P-TEXT-08", "P-TEXT-10", "P-TEXT-06", "P-TEXT-07");
        assertThat(document.findRoot()).isPresent();
    }

    @Test
    void merge_leavesOutWhatWasSaidOfTheSameSpan() {
        Document document = Texts.read("a: true\nb: 1\n");
        Node root = document.findRoot().orElseThrow();
        var shape = Shape.Keys.of(
                Shape.Key.optional("a", "a", new Shape.YesNo()), Shape.Key.optional("b", "b", new Shape.YesNo()));
        var all = Problem.merge(document.problems(), Check.against(shape, root, ""));
        assertThat(all).extracting(Problem::code).containsExactly("P-TEXT-09", "P-WORD-01");
    }
}
