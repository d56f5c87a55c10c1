package plumeline.card;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;
import static plumeline.card.CardsTest.card;
import static plumeline.card.CardsTest.cards;
import static plumeline.card.CardsTest.fact;

import java.util.List;
import org.junit.jupiter.api.Test;

/// What stands on the look card of a solved plan, against sums by hand.
final class LookCardTest {
    /// The label's middle is at y −30, a metre before both lamps.
    private static final String PLAN = """
        plumeline: 1
        film: {rate: 24 fps, papers: mm}
        things:
          can:
            diameter: 60 mm
            height: 100 mm
            body: opaque
            label: {width: 60 mm, height: 60 mm, bottom: 20 mm}
            hue: 220 deg
            variants: {lime: {hue: 130 deg}}
        kit:
          cameras: {main: {sensor: {width: 36 mm, height: 20.25 mm, across: 3840 px}}}
          lenses: {macro: {focal_length: 100 mm}}
          lights:
            bulb: {point: yes, gives: 800 cd ± 10 %, white: 5600 K, dims: [[0 %, 0 %], [50 %, 20 %], [100 %, 100 %]]}
            tube: {point: yes, gives: 1000 cd measured, changes_in: 1.5 s, primaries: [
              {name: red, x: 0.64, y: 0.33, lumens: 212.6 lm}, {name: green, x: 0.30, y: 0.60, lumens: 715.2 lm},
              {name: blue, x: 0.15, y: 0.06, lumens: 72.2 lm}]}
        shots:
          one:
            camera:
              {body: main, lens: macro, at: [0 mm, -1000 mm, 50 mm], aim: hero, f_number: 8, iso: 800, shutter: 180 deg}
            place: {hero: {thing: can, at: [0 mm, 0 mm]}}
            lights:
              key: {light: bulb, at: [0 mm, -1030 mm, 50 mm]}
              wash: {light: tube, at: [0 mm, -1030 mm, 50 mm], hue: complement, level: 50 %}
            frames: 24
            passes: {red: {lights.key.level: 0 %}, white: {lights.wash.level: 0 %, lights.key.level: 20 %}}
            wants: [{matched: [red, white], within: 0.2 stops}]
        cut: [{shot: one, frames: 24, alternate: [red, white], each: 6}]
        """;

    private static Card looks(String text) {
        return card(cards(text), "Look card");
    }

    private static String changed(String part, String by) {
        assertThat(PLAN).contains(part);
        return PLAN.replace(part, by);
    }

    private static List<Card.Part.Chip> chips(Card card) {
        return card.parts().stream()
                .filter(Card.Part.Chip.class::isInstance)
                .map(Card.Part.Chip.class::cast)
                .toList();
    }

    private static List<List<String>> rows(Card card) {
        return card.parts().stream()
                .filter(Card.Part.Grid.class::isInstance)
                .map(part -> ((Card.Part.Grid) part).rows())
                .findFirst()
                .orElseThrow();
    }

    /// Opposite to 220 deg is 40 deg, the red primary of screens: 212.6 of 1000 cd at full, half of it at 50 %.
    @Test
    void eachLook_hasItsLampsLevelsColoursAndDrives() {
        Card card = looks(PLAN);
        assertThat(fact(card, "red"))
                .isEqualTo("key off. wash level 50 %, hue 40 deg (red); drives red 50 %, green 0 %, blue 0 %.");
        assertThat(fact(card, "white")).isEqualTo("key level 20 % (its dimmer at 50 %), white 5600 K. wash off.");
        assertThat(rows(card)).containsExactly(List.of("red", "110 lx", ""), List.of("white", "160 lx ± 10 %", ""));
    }

    /// Never colour alone: each chip has its word and its coordinates.
    @Test
    void chips_haveWordsAndCoordinates() {
        assertThat(chips(looks(PLAN)))
                .extracting(Card.Part.Chip::name, Card.Part.Chip::code)
                .containsExactly(tuple("wash, red", "#ff0000"), tuple("key, white", "#ffeee4"));
        assertThat(chips(looks(PLAN)).getFirst().text())
                .startsWith("red: x 0.6")
                .contains(", y 0.33")
                .endsWith("; on a screen about #ff0000");
        assertThat(chips(looks(PLAN)).getLast().text()).startsWith("white: x 0.3302, y 0.3391");
    }

    @Test
    void whatChanges_isToldWithItsTime_andHowItIsCut() {
        Card card = looks(PLAN);
        assertThat(fact(card, "To change"))
                .isEqualTo("key not known: time it, and write bulb's changes_in; wash 1.5 s. Then wait and roll.");
        assertThat(fact(card, "In the cut")).isEqualTo("red, white in turn, 6 frames each, 24 in all.");
        assertThat(fact(card, "To match")).startsWith("fails. In white key at ");
    }

    @Test
    void looksCutInLessThanASecond_areCautioned() {
        assertThat(looks(PLAN).cautions().getFirst())
                .startsWith("Looks that flash: ")
                .contains("seizures", "no permission");
        Card slow = looks(changed("alternate: [red, white], each: 6", "pass: red"));
        assertThat(slow.cautions().getFirst()).startsWith("Light in eyes");
        assertThat(slow.cautions()).isNotEmpty().allMatch(caution -> !caution.contains("seizures"));
    }

    @Test
    void variants_areNamedWithTheirHues() {
        Card card = looks(changed(
                "passes: {red: {lights.key.level: 0 %}, white: {",
                "passes: {red: {place.hero.thing: can.lime}, white: {"));
        assertThat(fact(card, "red"))
                .startsWith(
                        "hero is can.lime, hue 130 deg (green). key level 100 % (its dimmer at 100 %), white 5600 K."
                                + " wash level 50 %, hue 310 deg (violet)");
        assertThat(fact(card, "white")).startsWith("hero is can, hue 220 deg (cyan). ");
    }

    @Test
    void plainLight_hasNoLookCard() {
        String plain = changed(
                        "    passes: {red: {lights.key.level: 0 %}, white: {lights.wash.level: 0 %,"
                                + " lights.key.level: 20 %}}\n",
                        "")
                .replaceAll("\n +wants: .*", "")
                .replaceAll("\n +wash: .*", "")
                .replaceAll("\ncut: .*", "");
        assertThat(cards(plain)).extracting(Card::title).containsExactly("Light card");
    }

    @Test
    void whatALampCantDo_isSaid() {
        Card typical = looks(PLAN.replaceFirst("(?s)primaries: \\[.*?]}", "primaries: typical}"));
        assertThat(fact(typical, "red")).endsWith("(typical emitters: a start, meter it).");
        Card none = looks(PLAN.replaceFirst("(?s), primaries: \\[.*?]}", "}"));
        assertThat(fact(none, "red")).contains("hue 40 deg (red); not known: what tube is made of.");
        assertThat(rows(none).getFirst().get(1)).startsWith("not known: ");
    }
}
