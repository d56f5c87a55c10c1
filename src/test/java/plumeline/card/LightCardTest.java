package plumeline.card;

import static org.assertj.core.api.Assertions.assertThat;
import static plumeline.card.CardsTest.card;
import static plumeline.card.CardsTest.cards;
import static plumeline.card.CardsTest.fact;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import plumeline.geom.Aim;
import plumeline.geom.Vec;
import plumeline.quantity.PaperUnit;

/// What stands on the light card of a solved plan, against sums by hand.
final class LightCardTest {
    /// The label's middle is at y −30, 1 m before the key; the side lamp as far away and 1 m to camera right.
    private static final String PLAN = """
        plumeline: 1
        film: {rate: 24 fps, papers: mm}
        things:
          can: {diameter: 60 mm, height: 100 mm, body: opaque, label: {width: 60 mm, height: 60 mm, bottom: 20 mm}}
        kit:
          cameras: {main: {sensor: {width: 36 mm, height: 20.25 mm, across: 3840 px}}}
          lenses: {macro: {focal_length: 100 mm}}
          lights:
            bulb: {point: yes, gives: 800 cd ± 10 %, white: 5600 K}
            soft: {panel: [400 mm, 600 mm], gives: 800 lx at 1 m}
            rod: {tube: [600 mm, 30 mm], gives: 800 cd}
            dish: {disc: 250 mm, gives: 800 cd}
            paper: {card: [500 mm, 700 mm], reflects: 75 %}
            white: {card: [500 mm, 700 mm]}
            black: {flag: [300 mm, 200 mm]}
        shots:
          one:
            camera:
              {body: main, lens: macro, at: [0 mm, -1000 mm, 50 mm], aim: hero, f_number: 8, iso: 800, shutter: 180 deg}
            place: {hero: {thing: can, at: [0 mm, 0 mm]}}
            lights:
              key: {light: bulb, at: [0 mm, -1030 mm, 50 mm]}
              side: {light: bulb, at: [1000 mm, -1030 mm, 50 mm]}
            frames: 24
            wants: [{ratio: hero, key: key, fill: side, by: 1.5 stops}]
        """;

    private static final Card CARD = light(PLAN);

    private static Card light(String text) {
        return card(cards(text), "Light card");
    }

    private static String changed(String part, String by) {
        assertThat(PLAN).contains(part);
        return PLAN.replace(part, by);
    }

    private static List<List<String>> rows(Card card) {
        return card.parts().stream()
                .filter(Card.Part.Grid.class::isInstance)
                .map(part -> ((Card.Part.Grid) part).rows())
                .findFirst()
                .orElseThrow();
    }

    private static String read(Card card, String name) {
        return rows(card).stream()
                .filter(row -> row.getFirst().equals(name))
                .map(row -> row.get(1))
                .findFirst()
                .orElseThrow(() -> new AssertionError(rows(card).toString()));
    }

    /// Six o'clock is toward the camera wherever that is; three at its right hand.
    @ParameterizedTest
    @CsvSource({
        "0, -1, 0, -5, at 6 o'clock of", "1, 0, 0, -5, at 3 o'clock of", "0, 1, 0, -5, at 12 o'clock of",
        "-1, 0, 0, -5, at 9 o'clock of", "1, 1, 0, -5, at half past 1 of", "-0.05, 1, 0, -5, at 12 o'clock of",
        "1, 0, 5, 0, at 6 o'clock of", "0, 1, 5, 0, at 3 o'clock of", "0.1, 0.9, 0, -5, at 12 o'clock of",
        "0.15, 0.9, 0, -5, at half past 12 of", "0.001, 0, 0, -5, straight over"
    })
    void hours_areThoseOfAClockSeenFromAbove(double x, double y, double cameraX, double cameraY, String hour) {
        Vec thing = new Vec(2, 3, 0.05);
        assertThat(ClockFace.hour(
                        thing, thing.plus(new Vec(x, y, 0.4)), new Aim(thing.plus(new Vec(cameraX, cameraY, 0)), 0, 0)))
                .isEqualTo(hour);
    }

    /// Straight over the thing, the picture's upper edge is away: a lamp at +x of a camera turned by 90 deg is at 12.
    @Test
    void hours_fromACameraOverhead_areThePictures() {
        Aim overhead = new Aim(new Vec(0, 0, 2), Math.PI / 2, -Math.PI / 2);
        assertThat(ClockFace.hour(Vec.ZERO, new Vec(1, 0, 0), overhead)).isEqualTo("at 12 o'clock of");
    }

    /// The side lamp is at (1000, −1030) from the can's axis: 136 deg from away, 4.5 hours; its way √(1000² + 1030²)
    /// mm.
    @Test
    void eachLamp_hasItsRolePlaceTurnAndLevel() {
        assertThat(fact(CARD, "key"))
                .isEqualTo("Key on hero, 1.5 stops over side. At 6 o'clock of hero, 1030 mm from its middle; from the"
                        + " zero mark x 0 mm, y −1030 mm; 50 mm over the table top; turn 0 deg, tilt 0 deg, facing"
                        + " hero. Lamp: bulb; level 100 %, white 5600 K.");
        assertThat(fact(CARD, "side"))
                .startsWith("Fill on hero, 1.5 stops under key. At half past 4 of hero, 1436 mm from its middle")
                .contains("turn 44 deg anticlockwise");
        assertThat(fact(card(cards(CardsTest.solve(PLAN), PaperUnit.INCHES), "Light card"), "side"))
                .contains("56 1/2 in from its middle");
        assertThat(fact(
                        light(changed(
                                "by: 1.5 stops}", "by: 1.5 stops}, {highlight: key, upon: hero, from_left: 30 %}")),
                        "key"))
                .contains("To be mirrored in hero at 30 % from the left.");
    }

    @Test
    void aPanelThatReachesBelowTheTable_standsBesideIt() {
        Card card = light(
                changed("light: bulb, at: [1000 mm, -1030 mm, 50 mm]", "light: soft, at: [1000 mm, -1030 mm, 50 mm]"));
        assertThat(fact(card, "side")).contains("reaches 250 mm below the table top: beside the table");
        assertThat(fact(card, "key")).doesNotContain("below");
    }

    /// 800 cd at 1 m are 800 lx; at √2 m and 45 deg aslant 800/2·cos 45° = 283 lx. The setting: 250·8²/(1/48 s · 800) =
    /// 960 lx, times (1 + 1/9)² for the image at a ninth of full size (100 mm at 1000 mm): 1185 lx.
    @Test
    void meter_hasEachLampAloneAndAllTogether() {
        assertThat(read(CARD, "key")).isEqualTo("800 lx ± 10 %");
        assertThat(read(CARD, "side")).isEqualTo("280 lx ± 10 %");
        assertThat(read(CARD, "all together")).isEqualTo("1100 lx ± 8 %");
        assertThat(rows(CARD)).allMatch(row -> row.subList(2, 4).equals(List.of("", "")));
        assertThat(fact(CARD, "At hero")).isEqualTo("the camera's setting needs 1200 lx: 0.1 stops too little.");
    }

    /// Straight between what is written: 55 % is half way from 10 to 100, so half way from 40 to 100.
    @ParameterizedTest
    @CsvSource({"55 %, 70 %", "6 %, 25 %", "10 %, 40 %", "100 %, 100 %", "2 %, 10 %"})
    void level_isWithItsDimmersSetting(String level, String set) {
        Card card = light(
                changed("gives: 800 cd ± 10 %", "gives: 800 cd, dims: [[10 %, 2 %], [40 %, 10 %], [100 %, 100 %]]")
                        .replace("light: bulb, at: [0 mm", "light: bulb, level: " + level + ", at: [0 mm"));
        assertThat(fact(card, "key")).contains("level " + level + ", its dimmer at " + set + ", white 5600 K.");
    }

    private static String fill(String light) {
        return fact(light(changed("side: {light: bulb", "side: {light: " + light)), "side");
    }

    /// What a crew takes to hand: what it is, how large, what is set on it.
    @Test
    void eachLampCardAndFlag_isNamedWithItsSizeAndWhatIsSet() {
        assertThat(fill("paper")).endsWith("Card: paper, 500 mm wide, 700 mm tall; throws back 75 %.");
        assertThat(fill("white")).endsWith("Card: white, 500 mm wide, 700 mm tall; white side to it.");
        assertThat(fill("black")).endsWith("Flag: black, 300 mm wide, 200 mm tall.");
        assertThat(fill("rod")).endsWith("Lamp: rod, 600 mm long, lying; level 100 %.");
        assertThat(fill("dish")).endsWith("Lamp: dish, 250 mm across; level 100 %.");
        assertThat(fill("soft, grid: 40 deg"))
                .endsWith("Lamp: soft, 400 mm wide, 600 mm tall; level 100 %, a grid before it that leaves 40 deg.");
        assertThat(fill("bulb, turn: 30 deg")).contains("turn 30 deg clockwise, tilt 0 deg. ");
    }

    /// A card has no reading of its own: with it as it stands, the lamps alone are metered.
    @Test
    void meter_hasNoRowOfACardOrAFlag() {
        Card card = light(changed("side: {light: bulb", "side: {light: paper")
                .replace("{ratio: hero, key: key, fill: side, by: 1.5 stops}", "{lit: hero}"));
        assertThat(rows(card)).extracting(List::getFirst).containsExactly("key");
        assertThat(card.parts().toString()).contains("all other light off, cards and flags as they stand.");
        assertThat(CARD.parts().toString()).contains("all other light off.").doesNotContain("flags");
    }

    @Test
    void passes_haveTheirOwnLevels() {
        Card card = light(changed("frames: 24", "passes: {both: {}, one: {lights.side.level: 0 %}}\n    frames: 24"));
        assertThat(fact(card, "side")).contains("Lamp: bulb; in pass both level 100 %, white 5600 K; in pass one off.");
        assertThat(read(card, "side, pass one")).isEqualTo("off");
        assertThat(read(card, "key")).isEqualTo("800 lx ± 10 %");
        assertThat(read(card, "all together, pass one")).isEqualTo("800 lx ± 10 %");
    }

    @Test
    void whatIsntKnown_saysWhy() {
        Card dark = light(changed("gives: 800 cd ± 10 %, ", ""));
        assertThat(read(dark, "key")).isEqualTo("not known: nobody says what it gives");
        assertThat(read(dark, "all together")).startsWith("not known");
        assertThat(fact(dark, "At hero")).isEqualTo("the camera's setting needs 1200 lx.");
        assertThat(read(
                        light(changed("at: [1000 mm, -1030 mm, 50 mm]", "at: [1000 mm, -1030 mm, 50 mm], hue: 90 deg")),
                        "side"))
                .isEqualTo("not known: how much less it gives at its hue");
        Card free = light(changed("at: [1000 mm, -1030 mm, 50 mm]", "at: free")
                .replace("{ratio: hero, key: key, fill: side, by: 1.5 stops}", "{fills: hero, height: 40 %}"));
        assertThat(fact(free, "side")).contains("Where it stands isn't known");
        assertThat(read(free, "side")).startsWith("not known: its own place");
        assertThat(fact(light(changed("iso: 800, ", "")), "At hero")).contains("isn't known: write its iso");
    }

    @Test
    void inATank_lightIsFollowed_andMainsAreNearWater() {
        assertThat(String.join(" ", CARD.cautions()))
                .contains("sandbag", "Hot lamps", "Light in eyes", "Mains", "licensed")
                .doesNotContain("water")
                .doesNotContainIgnoringCase(" safe");
        Card wet = light(CardsTest.PLAN
                .replace("kit:\n", "kit:\n  lights: {bulb: {point: yes, gives: 800 cd}}\n")
                .replace(
                        "frames: 24\n",
                        "lights: {key: {light: bulb, at: [0 mm, -900 mm, 100 mm], aim: hero}}\n    frames: 24\n"));
        assertThat(wet.cautions()).anyMatch(text -> text.startsWith("Mains near water"));
        assertThat(read(wet, "key")).isEqualTo("1000 lx ± 15 %");
        assertThat(wet.parts().toString()).contains("Readings are with the water in, where no meter goes");
        Card gel = light(changed("light: bulb, ", "light: bulb, loss: 1 stops, "));
        assertThat(gel.parts().toString()).contains("gel or cloth before it: −1 stops");
    }
}
