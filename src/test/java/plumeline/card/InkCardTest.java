package plumeline.card;

import static org.assertj.core.api.Assertions.assertThat;
import static plumeline.card.CardsTest.PLAN;
import static plumeline.card.CardsTest.card;
import static plumeline.card.CardsTest.cards;
import static plumeline.card.CardsTest.fact;

import org.junit.jupiter.api.Test;

/// What stands on the recipe card of a solved plan, against sums by hand.
final class InkCardTest {
    private static final String INK =
            "kit:\n  inks: {rose: {density: 1.03 g/ml typical, recipe: food dye and salt, front:"
                    + " [[0.40 s, 70 mm], [1.90 s, 188 mm]], spread: 0.20 measured, strength: 100 /cm measured}}\n";
    private static final String RELEASE =
            "frames: 24\n    release: {ink: rose, volume: 3 ml, at: [0 mm, -70 mm, 298 mm]}\n";

    private static Card recipe(String ink) {
        String text = PLAN.replace("kit:\n", ink).replace("frames: 24\n", RELEASE);
        return card(cards(text), "Recipe card: rose");
    }

    /// z = k tⁿ through 70 mm at 0.40 s and 188 mm at 1.90 s; its half-width a fifth of that.
    @Test
    void recipe_saysWhatIsLetGo_andWhereItsFrontIs() {
        Card card = recipe(INK);
        assertThat(fact(card, "Ink")).isEqualTo("food dye and salt. Stir, let bubbles rise.");
        assertThat(fact(card, "Volume")).startsWith("3 ml (as planned, not measured)");
        assertThat(fact(card, "Bore")).endsWith("Yours [box]");
        assertThat(fact(card, "Nozzle"))
                .startsWith("mouth 30 mm over the water's surface, 50 mm behind the front glass");
        Card.Part.Grid fronts = grid(card, "After release");
        double n = Math.log(188.0 / 70) / Math.log(1.9 / 0.4);
        double[] times = {0.25, 0.5, 1, 2};
        assertThat(fronts.rows()).hasSize(times.length);
        for (int i = 0; i < times.length; i++) {
            double depth = 70 * Math.pow(times[i] / 0.4, n);
            assertThat(fronts.rows().get(i).get(1)).isEqualTo(Math.round(depth) + " mm");
            assertThat(fronts.rows().get(i).get(3)).isEqualTo(Math.round(0.4 * depth) + " mm");
        }
        assertThat(card.cautions())
                .anyMatch(text -> text.contains("Dyes stain"))
                .anyMatch(text -> text.contains("mains"));
    }

    /// The tin begins 99 mm behind the glass. −lg 0.95 · 35.1 l / (100 /cm · 9.9 cm) = 0.79 ml may be in the water:
    /// 3/(3 + 0.79) of it, 27.8 l, is changed.
    @Test
    void recipe_saysHowMuchWaterToChange_orHowToFindOut() {
        assertThat(fact(recipe(INK), "Change water"))
                .startsWith(
                        "with 95 % of the light left before hero only the first take begins. From then on change 79 %,"
                                + " 27.8 l, after every take");
        Card unmeasured = recipe(INK.replace(", strength: 100 /cm measured", ""));
        assertThat(fact(unmeasured, "Change water")).contains("isn't known").endsWith("[box]");
        assertThat(unmeasured.parts())
                .anyMatch(part -> part instanceof Card.Part.Tick(String text) && text.contains("a jar and a phone"));
        assertThat(grid(unmeasured, "Ink ml").rows().getFirst()).allMatch(String::isEmpty);
    }

    @Test
    void log_hasBoxesForTwoReadingsATake_andOneChange() {
        Card card = recipe(INK);
        Card.Part.Grid log = grid(card, "Take, its one change");
        assertThat(log.heads()).contains("1st s", "1st mm", "2nd s", "2nd mm", "Width mm");
        assertThat(log.rows())
                .hasSize(6)
                .allMatch(row -> row.subList(1, row.size()).stream().allMatch(String::isEmpty));
        assertThat(card.parts())
                .anyMatch(part -> part instanceof Card.Part.Say(String text) && text.startsWith("One change a take"));
        Card lawless = recipe(INK.replace("front: [[0.40 s, 70 mm], [1.90 s, 188 mm]], ", ""));
        assertThat(fact(lawless, "Front"))
                .contains("isn't known. Measure the nozzle's bore")
                .endsWith("Film one take with a ruler beside it.");
    }

    private static final String FRONT = "front: [[0.40 s, 70 mm], [1.90 s, 188 mm]], spread: 0.20 measured";

    private static Card recipe(String front, String release) {
        String text = PLAN.replace("kit:\n", INK.replace(FRONT, front)).replace("frames: 24\n", release);
        return card(cards(text), "Recipe card: rose");
    }

    /// What a front rests on, in the order in which it counts: takes told whole, two readings, one, none.
    @Test
    void recipe_saysWhatTheFrontRestsOn() {
        String told = RELEASE.replace("3 ml,", "3 ml, bore: 4 mm, squeeze_time: 1 s,");
        String take = "{volume: 3 ml, density: 1.03 g/ml, bore: 4 mm, squeeze_time: 1 s, height: 30 mm,"
                + " front: [[0.5 s, 70 mm], [2 s, 190 mm]]}";
        assertThat(fact(recipe(FRONT, told), "Front by"))
                .isEqualTo(
                        "takes: 70 mm down after 0.40 s, 188 mm down after 1.90 s; to each side 0.20 (measured) of its"
                                + " way wide.");
        assertThat(fact(recipe("front: [[0.40 s, 70 mm]]", told), "Front by"))
                .isEqualTo("the laws, set right by one reading: 70 mm down after 0.40 s.");
        assertThat(fact(recipe("spread: 0.20 measured", told), "Front by")).startsWith("the laws; one take filmed");
        Card once = recipe(FRONT + ", takes: [" + take + "]", told);
        assertThat(fact(once, "Front by"))
                .isEqualTo("the laws, as one take has taught them: 70 mm down after 0.5 s, 190 mm down after 2 s.");
        assertThat(once.parts())
                .anyMatch(part -> part instanceof Card.Part.Say(String text) && text.contains("go in by lesson add"))
                .noneMatch(part -> part instanceof Card.Part.Say(String text) && text.contains("the ink's front"));
        String wide = take.replace("0.5 s, 70 mm], [2 s, 190 mm", "1 s, 90 mm");
        assertThat(fact(recipe("takes: [" + take + ", " + wide + "]", told), "Front by"))
                .isEqualTo("the laws, as 2 takes have taught them; the last: 90 mm down after 1 s.");
    }

    /// The reason that is given is the one there is.
    @Test
    void recipe_withTheStrengthKnown_saysWhatElseIsMissing() {
        assertThat(fact(recipe(FRONT, RELEASE.replace("volume: 3 ml, ", "")), "Change water"))
                .isEqualTo("how much after each take isn't known without the volume of a take: all of it, until it is."
                        + " Changed [box]");
        Card typical = recipe(INK.replace("100 /cm measured", "100 /cm typical"));
        assertThat(fact(typical, "Change water")).contains("without a measurement of the ink's strength:");
        String text = PLAN.replace("kit:\n", INK).replace("frames: 24\n", RELEASE);
        String dry = text.substring(0, text.indexOf("      hero: {"))
                + "      hero: {thing: box, at: [400 mm, 0 mm]}\n    frames: 24\n"
                + RELEASE.replace("frames: 24\n", "")
                + "    wants: [{tank_carries: glass}]\n";
        assertThat(fact(card(cards(dry), "Recipe card: rose"), "Change water")).contains("without what stands in it:");
    }

    @Test
    void recipe_ofANozzleThatIsFree_asksForItsPlace() {
        String free = RELEASE.replace("at: [0 mm, -70 mm, 298 mm]", "at: [free, -70 mm, 298 mm]");
        assertThat(fact(recipe(FRONT, free), "Front")).startsWith("not known while the nozzle's place is free");
    }

    private static Card.Part.Grid grid(Card card, String head) {
        return card.parts().stream()
                .filter(part -> part instanceof Card.Part.Grid grid
                        && grid.heads().getFirst().equals(head))
                .map(Card.Part.Grid.class::cast)
                .findFirst()
                .orElseThrow(() -> new AssertionError("no grid " + head));
    }
}
