package plumeline.text;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import plumeline.quantity.Kind;
import plumeline.text.Shape.Key;

final class CheckTest {
    static final Shape LENGTH = new Shape.Amount(Kind.LENGTH, Range.POSITIVE, Shape.Mark.FIXED);
    private static final Shape MARK = new Shape.Amount(Kind.LENGTH, Range.ANY, Shape.Mark.FREE);
    private static final Shape POSITION = new Shape.Tuple(
            List.of(new Shape.Part("x", MARK), new Shape.Part("y", MARK), new Shape.Part("z", MARK)), 2);
    static final Shape LENS = Shape.Keys.of(
            Key.required("focal_length", "what the lens is called by", LENGTH)
                    .hint("the value engraved on the lens, such as 50 mm", "P-LENS-01"),
            Key.optional("nearest", "how near it focuses", LENGTH),
            Key.optional("kind", "what it is", new Shape.Choice(List.of("spherical", "macro"))));

    static void check(Shape shape, String text, String... said) {
        assertThat(Texts.said(Check.against(shape, Texts.root(text), "")))
                .as(text)
                .containsExactly(said);
    }

    static void checkValue(Shape shape, String value, String... said) {
        check(Shape.Keys.of(Key.optional("a", "a", shape)), "a: " + value, said);
    }

    @Test
    void houseForm_isAsTheStyleGuideShowsIt() {
        Shape kit = Shape.Keys.of(Key.optional(
                "kit", "kit", Shape.Keys.of(Key.optional("lenses", "lenses", new Shape.Named("a lens", LENS)))));
        check(
                kit,
                "kit:\n  lenses:\n    fifty: {focal_length: 0 mm}\n",
                "p.yaml:3:27 kit.lenses.fifty.focal_length is 0 mm; must be greater than 0 mm\n"
                        + "  Try the value engraved on the lens, such as 50 mm.   (P-LENS-01, docs/problems.md)");
    }

    @Test
    void bareNumber_isToldItsUnit() {
        checkValue(
                LENGTH,
                "50",
                "p.yaml:1:4 a is a bare number (50); must be a length in mm, cm, m, in, ft, µm or nm\n"
                        + "  Add the unit: try 50 mm.   (P-UNIT-01, docs/problems.md)");
    }

    @Test
    void freedom_isForMarksOnly() {
        checkValue(
                LENGTH,
                "free",
                "p.yaml:1:4 a is free; must be a length in mm, cm, m, in, ft, µm or nm (only marks may be free)\n"
                        + "  Try 66 mm.   (P-FREE-01, docs/problems.md)");
        checkValue(MARK, "free");
        checkValue(MARK, "free between 1 mm and 2 in");
        checkValue(
                MARK,
                "free between 2 in and 1 mm",
                "p.yaml:1:4 a is free between 2 in and 1 mm; must be free between a lower and a higher value\n"
                        + "  Try free between 1 mm and 2 in.   (P-UNIT-01, docs/problems.md)");
        checkValue(
                MARK,
                "free betwixt 1 mm and 2 mm",
                "p.yaml:1:4 a is free betwixt 1 mm and 2 mm; must be a length in mm, cm, m, in, ft, µm or nm,"
                        + " free, or free"
                        + " between A and B\n  Try free between 66 mm and a greater one.   (P-UNIT-01,"
                        + " docs/problems.md)");
    }

    @Test
    void ranges_areSaidInTheUsersUnit() {
        Shape share = new Shape.Amount(Kind.SHARE, Range.between("0 %", "100 %"), Shape.Mark.FIXED);
        checkValue(share, "100 %");
        checkValue(
                share,
                "101 %",
                "p.yaml:1:4 a is 101 %; must be from 0 % to 100 %\n  Try 30 %.   (P-RANGE-01, docs/problems.md)");
        checkValue(
                new Shape.Amount(Kind.LENGTH, Range.atMost("254 mm"), Shape.Mark.FIXED),
                "11 in",
                "p.yaml:1:4 a is 11 in; must be at most 10 in\n  Try 66 mm.   (P-RANGE-01, docs/problems.md)");
        checkValue(new Shape.Amount(Kind.LENGTH, Range.atMost("254 mm"), Shape.Mark.FIXED), "10 in");
    }

    @Test
    void wholeNumbersAndWords_areHeldToTheirChoice() {
        checkValue(new Shape.Whole(1, 9), "9");
        checkValue(
                new Shape.Whole(1, 9),
                "10",
                "p.yaml:1:4 a is 10; must be a whole number from 1 to 9\n  Try 1.   (P-RANGE-01, docs/problems.md)");
        checkValue(
                new Shape.Whole(0, Long.MAX_VALUE),
                "1.5",
                "p.yaml:1:4 a is 1.5; must be a whole number, 0 or more\n  Try 1.   (P-FORM-01, docs/problems.md)");
        checkValue(
                new Shape.Choice(List.of("level", "upright")),
                "uprigth",
                "p.yaml:1:4 a is uprigth; must be level or upright\n  Try upright.   (P-WORD-01, docs/problems.md)");
        checkValue(
                new Shape.YesNo(),
                "off",
                "p.yaml:1:4 a is off; must be yes or no\n  Try no.   (P-WORD-01, docs/problems.md)");
    }

    @Test
    void ratios_areQuoted() {
        checkValue(new Shape.RatioText(), "\"16:9\"");
        checkValue(
                new Shape.RatioText(),
                "16:9",
                "p.yaml:1:4 a is 16:9 without quotes; must be in quotes\n  Write \"16:9\".   (P-RATIO-01,"
                        + " docs/problems.md)");
        checkValue(
                new Shape.RatioText(),
                "wide",
                "p.yaml:1:4 a is wide; must be a ratio of width to height in quotes\n"
                        + "  Try \"16:9\".   (P-RATIO-01, docs/problems.md)");
    }

    @Test
    void names_areWrittenWithFewLetters() {
        Shape lens = new Shape.Reference("a lens", Shape.Variants.NONE);
        Shape thing = new Shape.Reference("a thing", Shape.Variants.ALLOWED);
        checkValue(thing, "flacon.rose");
        checkValue(
                lens,
                "fifty.red",
                "p.yaml:1:4 a is fifty.red; must be the name of a lens\n  Try fifty.   (P-NAME-01, docs/problems.md)");
        checkValue(
                lens,
                "Fifty",
                "p.yaml:1:4 a is Fifty; must be the name of a lens\n"
                        + "  Names are written with a-z, 0-9, _ and - only.   (P-NAME-01, docs/problems.md)");
        check(
                new Shape.Named("a lens", LENS),
                "Big one: {focal_length: 1 m}",
                "p.yaml:1:10 Big one is named \"Big one\"; must be named with a-z, 0-9, _ and - only\n"
                        + "  Try big_one.   (P-NAME-01, docs/problems.md)");
    }

    @Test
    void lists_haveTheirLengths() {
        checkValue(
                POSITION,
                "[1 mm]",
                "p.yaml:1:4 a is a list of 1; must be a list of x and y, and perhaps z\n"
                        + "  Try [66 mm, 66 mm].   (P-LIST-01, docs/problems.md)");
        checkValue(
                POSITION,
                "[1 mm, free, 3]",
                "p.yaml:1:17 a[3] is a bare number (3); must be a length in mm, cm, m, in, ft, µm or nm, or free\n"
                        + "  Add the unit: try 3 mm.   (P-UNIT-01, docs/problems.md)");
        checkValue(
                new Shape.Items(LENGTH, 1, 2),
                "[1 mm, 2 mm, 3 mm]",
                "p.yaml:1:4 a is a list of 3; must be a list of from 1 to 2\n  Try [66 mm].   (P-LIST-01,"
                        + " docs/problems.md)");
        checkValue(
                POSITION,
                "{x: 1 mm}",
                "p.yaml:1:4 a is a map; must be a list of x and y, and perhaps z\n"
                        + "  Try [66 mm, 66 mm].   (P-FORM-01, docs/problems.md)");
    }

    @Test
    void curves_neverGoBack() {
        Shape curve = new Shape.Curve(new Shape.Amount(Kind.TIME, Range.ANY, Shape.Mark.FIXED), LENGTH, 2);
        checkValue(curve, "[[0 s, 1 mm], [1 s, 2 mm], [1 s, 3 mm]]");
        checkValue(
                curve,
                "[[1 s, 1 mm], [500 ms, 2 mm]]",
                "p.yaml:1:18 a[2] is at 500 ms, before the pair above it; must be at 1 s or later\n"
                        + "  Put the pairs in order.   (P-CURVE-01, docs/problems.md)");
    }

    @Test
    void overrides_followDottedPaths() {
        Shape passes = new Shape.Overrides(Shape.Keys.of(
                Key.optional(
                        "place",
                        "things",
                        new Shape.Named("a thing", Shape.Keys.of(Key.optional("at", "where", POSITION)))),
                Key.optional("speed", "speed", LENGTH)));
        check(passes, "{place.hero.at: [1 mm, 2 mm], place.hero.at.x: 3 mm, speed: 1 m}");
        check(
                passes,
                "{place.hero.ta: [1 mm, 2 mm]}",
                "p.yaml:1:17 place.hero.ta is not a known key; must be at\n"
                        + "  Try place.hero.at.   (P-KEY-01, docs/problems.md)");
        check(
                passes,
                "{place.hero.at.x: red}",
                "p.yaml:1:19 place.hero.at.x is red; must be a length in mm, cm, m, in, ft, µm or nm, or free\n"
                        + "  Begin with a number: try 66 mm.   (P-UNIT-01, docs/problems.md)");
    }

    @Test
    void oneWord_decidesTheKeys() {
        Shape wants = new Shape.OneWord(
                "a want word",
                List.of(
                        Shape.Word.of(
                                Key.required("sharp", "sharp", new Shape.Free(9)), Key.optional("at", "where", LENGTH)),
                        Shape.Word.of(Key.required("shown", "shown", new Shape.Free(9)))),
                List.of(Key.optional("when", "when", new Shape.Free(9))));
        check(wants, "{sharp: a, at: 1 mm, when: end}");
        check(
                wants,
                "{shown: a, at: 1 mm}",
                "p.yaml:1:16 at is not a known key; must be one of shown or when\n"
                        + "  Leave it out, or see `./plumeline schema` for the keys known here.   (P-KEY-01,"
                        + " docs/problems.md)");
        check(
                wants,
                "{when: end}",
                "p.yaml:1:1 the text is without a want word; must be given one of sharp or shown\n"
                        + "  Try {sharp: some words}.   (P-KEY-04, docs/problems.md)");
        check(
                wants,
                "{shrap: a}",
                "p.yaml:1:9 shrap is not a known key; must be one of sharp or shown\n  Try sharp.   (P-KEY-01,"
                        + " docs/problems.md)");
        check(
                wants,
                "{sharp: a, shown: b}",
                "p.yaml:1:1 the text is given sharp and shown; must be given only one of them\n"
                        + "  Put each into a line of its own.   (P-KEY-03, docs/problems.md)");
    }

    @Test
    void misspeltWord_hidesNothingElse() {
        Shape share = new Shape.Amount(Kind.SHARE, Range.POSITIVE, Shape.Mark.FIXED);
        Shape wants = new Shape.OneWord(
                "a want word",
                List.of(
                        Shape.Word.of(
                                Key.required("fills", "fills", new Shape.Reference("a thing", Shape.Variants.NONE)),
                                Key.required("height", "how much", share),
                                Key.optional("within", "how near", share)),
                        Shape.Word.of(Key.required("hangs", "hangs", new Shape.Free(9)))),
                List.of(Key.optional("when", "when", new Shape.Choice(List.of("start", "end")))));
        for (String text :
                List.of("{fils: A, within: 5, whenn: endd, zzz: 1}", "{zzz: 1, whenn: endd, within: 5, fils: A}")) {
            assertThat(Check.against(wants, Texts.root(text), ""))
                    .as(text)
                    .extracting(p -> p.code() + " " + p.field())
                    .containsExactlyInAnyOrder(
                            "P-KEY-01 fils",
                            "P-NAME-01 fils",
                            "P-KEY-02 height",
                            "P-UNIT-01 within",
                            "P-KEY-01 whenn",
                            "P-WORD-01 whenn",
                            "P-KEY-01 zzz");
        }
        assertThat(Check.against(wants, Texts.root("{qqqqq: a, within: 5, when: endd}"), ""))
                .extracting(Problem::code)
                .containsExactly("P-KEY-04", "P-UNIT-01", "P-WORD-01");
    }

    @Test
    void attempt_fitsItsOwnField() {
        Shape ratio = new Shape.Amount(Kind.NUMBER, Range.between("0.1", "10"), Shape.Mark.FIXED);
        check(
                Shape.Keys.of(Key.optional("pupil_ratio", "exit over entrance pupil", ratio)),
                "pupil_ratio: 0",
                "p.yaml:1:14 pupil_ratio is 0; must be from 0.1 to 10\n  Try 1.   (P-RANGE-01, docs/problems.md)");
        checkValue(
                LENGTH,
                "-5",
                "p.yaml:1:4 a is a bare number (-5); must be a length in mm, cm, m, in, ft, µm or nm\n"
                        + "  Add the unit: try 66 mm.   (P-UNIT-01, docs/problems.md)");
    }

    @Test
    void true_isToldWhatCanStandInItsPlace() {
        Shape thing = Shape.Keys.of(
                Key.optional("height", "how high", LENGTH), Key.optional("closed", "closed", new Shape.YesNo()));
        Document document = Texts.read("{height: true, closed: true}");
        var form = Check.against(thing, document.findRoot().orElseThrow(), "");
        assertThat(Texts.said(Problem.merge(document.problems(), form)))
                .containsExactly(
                        "p.yaml:1:10 height is true; must be a length in mm, cm, m, in, ft, µm or nm\n"
                                + "  Begin with a number: try 66 mm.   (P-UNIT-01, docs/problems.md)",
                        "p.yaml:1:24 closed is true; must be yes or no where that is meant\n"
                                + "  Write yes, or put a text in quotes.   (P-TEXT-09, docs/problems.md)");
    }

    @Test
    void alternatives_areToldApartByTheirForm() {
        Shape focus = Shape.AnyOf.of(new Shape.Reference("a thing", Shape.Variants.NONE), MARK, POSITION);
        checkValue(focus, "bottle");
        checkValue(focus, "12 in");
        checkValue(focus, "[1 mm, 2 mm]");
        checkValue(
                focus,
                "12 kg",
                "p.yaml:1:4 a is 12 kg; must be a length in mm, cm, m, in, ft, µm or nm\n  Try 12 mm.  "
                        + " (P-UNIT-01, docs/problems.md)");
        checkValue(
                focus,
                "[1 mm]",
                "p.yaml:1:4 a is a list of 1; must be a list of x and y, and perhaps z\n"
                        + "  Try [66 mm, 66 mm].   (P-LIST-01, docs/problems.md)");
        checkValue(
                focus,
                "{x: 1 mm}",
                "p.yaml:1:4 a is a map; must be the name of a thing, or a length in mm, cm, m, in, ft, µm or"
                        + " nm, or free, or"
                        + " a list of x and y, and perhaps z\n"
                        + "  Write the name of a thing alone.   (P-FORM-01, docs/problems.md)");
    }

    @Test
    void textsAndPatterns_areHeldToTheirForm() {
        checkValue(
                new Shape.Free(5),
                "longer",
                "p.yaml:1:4 a is 6 characters long; must be text of at most 5 characters\n"
                        + "  Say it shorter.   (P-RANGE-01, docs/problems.md)");
        checkValue(new Shape.Written("#[0-9a-f]{6}", "a colour", "#2a9d8f"), "'#2a9d8f'");
        checkValue(
                new Shape.Written("#[0-9a-f]{6}", "a colour", "#2a9d8f"),
                "red",
                "p.yaml:1:4 a is red; must be a colour\n  Try #2a9d8f.   (P-FORM-01, docs/problems.md)");
    }

    @Test
    void allProblems_areFoundAtOnceInTheOrderOfTheText() {
        Shape shape = new Shape.Named("a lens", LENS);
        var problems = Check.against(
                shape,
                Texts.root("a: {focal_length: 0 mm, nearest: 5, kind: makro}\nb: {}\nC: {focal_length: [1]}\n"),
                "kit");
        assertThat(problems)
                .extracting(
                        p -> p.code() + " " + p.place().line() + ":" + p.place().column() + " " + p.field())
                .containsExactly(
                        "P-LENS-01 1:19 kit.a.focal_length",
                        "P-UNIT-01 1:34 kit.a.nearest",
                        "P-WORD-01 1:43 kit.a.kind",
                        "P-KEY-02 2:1 kit.b.focal_length",
                        "P-NAME-01 3:4 kit.C",
                        "P-FORM-01 3:19 kit.C.focal_length");
    }
}
