package plumeline.text;

import static org.assertj.core.api.Assertions.assertThat;
import static plumeline.text.CheckTest.LENGTH;
import static plumeline.text.CheckTest.LENS;
import static plumeline.text.CheckTest.check;
import static plumeline.text.CheckTest.checkValue;

import java.util.List;
import org.junit.jupiter.api.Test;
import plumeline.quantity.Kind;
import plumeline.text.Shape.Key;

/// Keys that are missing, unknown or misspelt, and rules of what goes together.
final class CheckKeysTest {
    @Test
    void missingKey_isReportedAtTheKeyAbove() {
        check(
                new Shape.Named("a lens", LENS),
                "fifty: {nearest: 1 m}\n",
                "p.yaml:1:1 fifty.focal_length is missing; must be a length in mm, cm, m, in, ft, µm or nm\n"
                        + "  Try the value engraved on the lens, such as 50 mm.   (P-KEY-02, docs/problems.md)");
        check(
                Shape.Keys.of(Key.required("a", "a", LENGTH)),
                "{}",
                "p.yaml:1:1 a is missing; must be a length in mm, cm, m, in, ft, µm or nm\n"
                        + "  Add `a: 66 mm`.   (P-KEY-02, docs/problems.md)");
    }

    @Test
    void unknownKey_namesTheNearest() {
        check(
                LENS,
                "{focal_length: 50 mm, neerest: 1 m}",
                "p.yaml:1:32 neerest is not a known key; must be one of focal_length, nearest or kind\n"
                        + "  Try nearest.   (P-KEY-01, docs/problems.md)");
        check(
                LENS,
                "{focal_length: 50 mm, colour: red}",
                "p.yaml:1:31 colour is not a known key; must be one of focal_length, nearest or kind\n"
                        + "  Leave it out, or see `./plumeline schema` for the keys known here.   (P-KEY-01,"
                        + " docs/problems.md)");
    }

    @Test
    void unknownKey_isToldAtItsValueWhateverItIs() {
        Shape kit = Shape.Keys.of(Key.optional("lenses", "lenses", new Shape.Named("a lens", LENS)));
        for (String value : List.of("[1 mm]", "{b: 1}", "5", "\n  c: 1", "\n  - 1")) {
            String text = "colour: " + value + "\n";
            Node root = Texts.root(text);
            assertThat(Check.against(kit, root, ""))
                    .as(text)
                    .extracting(Problem::place)
                    .containsExactly(root.at("colour").orElseThrow().place());
        }
    }

    @Test
    void misspeltKey_itsValueIsCheckedAsTheNearestOnes() {
        check(
                LENS,
                "{focal_lenght: 50}",
                "p.yaml:1:16 focal_lenght is not a known key; must be one of focal_length, nearest or kind\n"
                        + "  Try focal_length.   (P-KEY-01, docs/problems.md)",
                "p.yaml:1:16 focal_lenght is a bare number (50); must be a length in mm, cm, m, in, ft, µm or nm\n"
                        + "  Add the unit: try 50 mm.   (P-UNIT-01, docs/problems.md)");
    }

    @Test
    void misspeltRequiredKey_isOneProblem() {
        check(
                LENS,
                "{focal_lenght: 50 mm}",
                "p.yaml:1:16 focal_lenght is not a known key; must be one of focal_length, nearest or kind\n"
                        + "  Try focal_length.   (P-KEY-01, docs/problems.md)");
    }

    @Test
    void unknownKeyThatMeansAnother_doesNotHideAMissingOne() {
        assertThat(Check.against(LENS, Texts.root("{neerest: 50 mm}"), ""))
                .extracting(Problem::code)
                .containsExactly("P-KEY-02", "P-KEY-01");
    }

    @Test
    void minusSign_thatIsAllThatIsWrong_isTriedWithoutIt() {
        Shape radius = new Shape.Amount(Kind.LENGTH, Range.between("0 mm", "10 m"), Shape.Mark.FIXED);
        checkValue(
                radius,
                "-5 mm",
                "p.yaml:1:4 a is -5 mm; must be from 0 mm to 10000 mm\n"
                        + "  Leave out the minus sign: try 5 mm.   (P-RANGE-01, docs/problems.md)");
        checkValue(
                radius,
                "-50 m",
                "p.yaml:1:4 a is -50 m; must be from 0 m to 10 m\n  Try 66 mm.   (P-RANGE-01, docs/problems.md)");
    }

    @Test
    void choiceInAnyCase_takesNamesAsPeopleWriteThem() {
        Shape names = Shape.Choice.inAnyCase(List.of("PET", "can aluminium"));
        for (String name : List.of("PET", "pet", "Can_Aluminium", "can-aluminium", "CAN ALUMINIUM")) {
            checkValue(names, name);
        }
        checkValue(
                names,
                "peet",
                "p.yaml:1:4 a is peet; must be PET or can aluminium\n  Try PET.   (P-WORD-01, docs/problems.md)");
        checkValue(
                new Shape.Choice(List.of("full")),
                "Full",
                "p.yaml:1:4 a is Full; must be full\n  Try full.   (P-WORD-01, docs/problems.md)");
    }

    @Test
    void misspeltKeyOfARule_isOneProblem() {
        Shape thing = Shape.Keys.of(
                        Key.optional("diameter", "across", LENGTH),
                        Key.optional("height", "up", LENGTH),
                        Key.optional("profile", "outline", new Shape.Curve(LENGTH, LENGTH, 2)))
                .with(new Shape.Rule.ExactlyOne(List.of(List.of("diameter", "height"), List.of("profile"))));
        check(
                thing,
                "{diametre: 4 mm, height: 5 mm}",
                "p.yaml:1:12 diametre is not a known key; must be one of diameter, height or profile\n"
                        + "  Try diameter.   (P-KEY-01, docs/problems.md)");
        check(
                thing,
                "{height: 5 mm}",
                "p.yaml:1:1 the text is given height; must be given diameter and height, or profile\n"
                        + "  Add diameter.   (P-KEY-03, docs/problems.md)");
        check(
                thing,
                "{height: 5 mm, profile: [[1 mm, 1 mm], [2 mm, 1 mm]]}",
                "p.yaml:1:1 the text is given height and profile; must be given diameter and height, or profile\n"
                        + "  Keep one of these choices.   (P-KEY-03, docs/problems.md)");
        check(
                thing,
                "{}",
                "p.yaml:1:1 the text is given none of diameter, height and profile; must be given diameter and"
                        + " height, or"
                        + " profile\n  Add diameter and height.   (P-KEY-03, docs/problems.md)");
    }

    @Test
    void rules_sayWhatGoesTogether() {
        Shape shape = Shape.Keys.of(
                        Key.optional("a", "a", LENGTH), Key.optional("b", "b", LENGTH), Key.optional("c", "c", LENGTH))
                .with(
                        new Shape.Rule.AtMostOne(List.of("a", "b")),
                        new Shape.Rule.AtLeastOne(List.of("a", "b")),
                        new Shape.Rule.Needs("c", "a"));
        check(
                shape,
                "{a: 1 mm, b: 1 mm}",
                "p.yaml:1:1 the text is given a and b; must be given at most one of a and b\n"
                        + "  Keep one of them.   (P-KEY-03, docs/problems.md)");
        check(
                shape,
                "{c: 1 mm}",
                "p.yaml:1:1 the text is given none of a and b; must be given at least one of them\n"
                        + "  Add a.   (P-KEY-03, docs/problems.md)",
                "p.yaml:1:1 the text is given c without a; must be given both or neither\n"
                        + "  Add a.   (P-KEY-03, docs/problems.md)");
        check(shape, "{a: 1 mm, c: 1 mm}");
    }
}
