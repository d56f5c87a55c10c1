package plumeline.want;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

/// What `tank_carries` says of glass and table.
final class TankCarriesTest {
    private static final String BODY = "diameter: 42 mm, height: 118 mm";
    private static final String INSIDE = "inside: [450 mm, 300 mm, 300 mm], pane: 8 mm";
    private static final String WANT = "{tank_carries: glass}";
    private static final String HURTS =
            "Glass: no scratched, chipped, seamed or twisted pane, and nothing here speaks for"
                    + " the seams; if one breaks, 35 l run out at once. Water near mains: residual-current"
                    + " protection tested that"
                    + " day, drip loops, low voltage within reach of the water, unplug before hands go in."
                    + " Lifting: two people"
                    + " from about 20 kg (empty: 12 kg); 4 times a 10 l bucket; never move it with water in it."
                    + " Slippery floor:"
                    + " wipe at once, keep cables off it. Local codes, the house and the tank's maker have the"
                    + " last word.";

    private static Wet tank(String inside) {
        return Wet.changed(BODY, "", WANT, INSIDE, inside);
    }

    private static Wet table(String table) {
        return Wet.changed(BODY, "", WANT, "size: [1200 mm, 800 mm]", table);
    }

    @Test
    void whatIsAllRight_isNoObjectionFound_withTheCautions() {
        Wet wet = tank(INSIDE + ", rim: no, floor_support: full, empty_mass: 12 kg");
        assertThat(wet.want().isSafety()).isTrue();
        assertThat(wet.want().restsOnMarks()).isFalse();
        assertThat(wet.standing())
                .isEqualTo(
                        "glass's long walls bear 0.93 MPa: a safety factor of 20.63; 3.8 is asked for, and no objection"
                                + " was found.");
        assertThat(wet.margin()).isEqualTo(20.63 - 3.8, within(0.01));
        assertThat(wet.caution())
                .isEqualTo("Hold 47 kg against the table's own rating: write what it carries. " + HURTS);
    }

    @Test
    void whatIsAssumed_isSaid() {
        assertThat(tank(INSIDE).caution())
                .endsWith(" Assumed: no rim; the floor carried by its edges only; the tank as heavy as its panes.");
    }

    @Test
    void thinPanes_fail_andSayWhatHelps() {
        Wet thin = tank("inside: [600 mm, 400 mm, 300 mm], pane: 5 mm, floor_support: edges");
        assertThat(thin.margin()).isNegative();
        assertThat(thin.standing())
                .endsWith(
                        "3.8 is asked for. Less water, a rim all round, a level bed under all of the floor, or thicker"
                                + " glass.");
    }

    /// 47 kg of tank and water; 400 N carry 40.8 kg.
    @Test
    void aTableThatIsTooWeakOrTooSmall_fails() {
        assertThat(table("carries: 40 kg")
                        .want()
                        .findLack(table("carries: 40 kg").moments()))
                .contains("The table carries 40 kg; tank and water weigh 47 kg. Take a stronger table, or less water. "
                        + HURTS
                        + " Assumed: no rim; the floor carried by its edges only; the tank as heavy as its panes.");
        assertThat(table("carries: 400 N")
                        .want()
                        .findLack(table("carries: 400 N").moments()))
                .hasValueSatisfying(lack -> assertThat(lack).startsWith("The table carries 41 kg;"));
        Wet small = table("size: [440 mm, 800 mm]");
        assertThat(small.want().findLack(small.moments()))
                .hasValueSatisfying(
                        lack -> assertThat(lack).startsWith("The tank's outer base is larger than the table. "));
        Wet strong = table("carries: 60 kg, size: [1200 mm, 800 mm]");
        assertThat(strong.want().findLack(strong.moments())).isEmpty();
        assertThat(strong.caution()).startsWith("Glass:");
    }

    @Test
    void whatIsMissingOrCantBe_isNamed() {
        assertThat(Wet.changed(BODY, "", WANT, ", water: 260 mm", "").unknown())
                .isEqualTo("Measure how deep the water in glass is: write the tank's water.");
        assertThat(Wet.changed(BODY, "", WANT, "water: 260 mm", "water: 320 mm").unknown())
                .isEqualTo("320 mm of water don't go into glass, which is 300 mm high inside. Measure both.");
        assertThat(tank(INSIDE + ", temperature: 60 degC").unknown())
                .isEqualTo("The water's temperature is past 0 to 40 degC.");
        assertThat(tank("inside: [450 mm, 300 mm, 300 mm], pane: 40 mm").unknown())
                .isEqualTo("A pane of glass is thicker than a tenth of its shorter side, or longer than 20 times"
                        + " it: no thin"
                        + " plate, so nothing is said of its stress. Ask the tank's maker.");
        assertThat(tank("inside: [1200 mm, 400 mm, 300 mm], pane: 3 mm").unknown())
                .isEqualTo(
                        "A pane of glass bows by more than its thickness: past what is computed. Don't fill it so: take"
                                + " thicker glass, a rim all round, or less water.");
    }
}
