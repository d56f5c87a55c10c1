package plumeline.ask.water;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;
import static plumeline.ask.Asking.answer;
import static plumeline.ask.Asking.number;
import static plumeline.ask.Asking.problems;
import static plumeline.ask.Asking.spread;

import org.junit.jupiter.api.Test;
import plumeline.answer.Answer;
import plumeline.answer.Answer.Assumed;
import plumeline.answer.Value;
import plumeline.answer.Verdict;
import plumeline.quantity.PaperUnit;
import plumeline.water.Surface;

/// The question `beads`.
final class BeadsTest {
    private static final String CAN = "surface: {advancing: 80 deg, receding: 50 deg}\n";

    /// By hand: d² = k σ (cos 50° − cos 80°)/(ρ g c), c the volume of a cap at 65° on a base of 1.
    @Test
    void measuredAngles_giveFurmidgesBalanceOverItsFactors() {
        double height = Math.tan(Math.toRadians(32.5)) / 2;
        double cap = Math.PI * height * (0.75 + height * height) / 6;
        double hold = Math.cos(Math.toRadians(50)) - Math.cos(Math.toRadians(80));
        Value.Spread largest = spread(answer("beads", CAN), "largest_staying");
        double unit = 0.07274 * hold / (998.207 * 9.80665 * cap) * 1e6;
        assertThat(largest.low()).isCloseTo(Math.sqrt(0.77 * unit), within(0.002));
        assertThat(largest.value()).isCloseTo(Math.sqrt(0.78 * unit), within(0.002));
        assertThat(largest.high()).isCloseTo(Math.sqrt(0.79 * unit), within(0.002));
        // Row D18 of the project's check values, factor 0.774: 4.36 mm.
        assertThat(largest.low()).isLessThan(4.37);
        assertThat(largest.high()).isGreaterThan(4.35);
    }

    @Test
    void runsFrom_isTheUpperEndOfWhatStays() {
        for (String text : new String[] {
            CAN,
            "{}",
            "surface: wax\n",
            "tilt: 60 deg ± 5 deg\n",
            CAN.replace("80 deg", "80 deg ± 5 deg"),
            CAN + "tilt: 45 deg\nliquid: {glycerine: 30 % ± 5 %}\n"
        }) {
            Answer answer = answer("beads", text);
            assertThat(answer.getValue("runs_from"))
                    .isEqualTo(
                            new Value.Number(spread(answer, "largest_staying").high(), "mm"));
            assertThat(answer.verdict()).isEqualTo(Verdict.HOLDS);
        }
    }

    @Test
    void leaning_holdsLargerDrops_byTheRootOfTheSine() {
        double upright = number(answer("beads", CAN), "largest_staying");
        double leaning = number(answer("beads", CAN + "tilt: 45 deg\n"), "largest_staying");
        assertThat(leaning / upright).isCloseTo(Math.pow(2, 0.25), within(1e-9));
        assertThat(leaning).isCloseTo(5.18, withinPercentage(1));
    }

    @Test
    void spreadOfAnAngle_isTheLawsOwnSlope() {
        Value.Spread exact = spread(answer("beads", CAN), "largest_staying");
        Value.Spread wide = spread(answer("beads", CAN.replace("50 deg", "50 deg ± 6 deg")), "largest_staying");
        double low = number(answer("beads", CAN.replace("50 deg", "53.923 deg")), "largest_staying");
        double law = exact.value() - exact.low();
        assertThat(wide.value() - wide.low()).isCloseTo(Math.hypot(law, exact.value() - low), within(1e-3));
    }

    @Test
    void level_holdsEveryDrop_andNearLevelIsNotKnown() {
        Answer level = answer("beads", "tilt: 0 deg\n");
        assertThat(level.getValue("largest_staying")).isEqualTo(new Value.Word("endless"));
        assertThat(level.verdict()).isEqualTo(Verdict.HOLDS);
        Answer near = answer("beads", "tilt: 5 deg\n");
        assertThat(near.verdict()).isEqualTo(Verdict.UNKNOWN);
        assertThat(near.getValue("runs_from")).isEqualTo(new Value.Word("unknown"));
        assertThat(near.notes().because())
                .anyMatch(text -> text.startsWith("Every drop that is a cap stays, up to 9.2 mm"));
    }

    @Test
    void cleanGlass_hasNoBeads_andWaxIsTried() {
        Answer answer = answer("beads", "surface: clean glass\n");
        assertThat(answer.verdict()).isEqualTo(Verdict.UNKNOWN);
        assertThat(answer.getValue("dries_in")).isEqualTo(new Value.Word("unknown"));
        assertThat(answer.notes().attempts())
                .containsExactly("Coat it with wax or polish: up to 2 mm stay there, larger ones run.");
        assertThat(number(answer("beads", "surface: wax\n"), "largest_staying")).isCloseTo(2, within(0.05));
    }

    /// Row D25 of the project's check values: a base of 2 mm at 60 degrees, 20 degC, 50 %: 15.6 min ± 8 %.
    @Test
    void water_driesInMinutes_glycerineNever() {
        String sixty = "surface: {advancing: 75 deg, receding: 45 deg}\n";
        Value.Spread dries = spread(answer("beads", sixty), "dries_in");
        assertThat(dries.value()).isCloseTo(15.6, withinPercentage(8));
        assertThat(dries.low()).isCloseTo(dries.value() / 2, within(1e-9));
        assertThat(dries.high()).isCloseTo(dries.value() * 2, within(1e-9));
        Answer mixed = answer("beads", sixty + "liquid: {glycerine: 50 %}\n");
        assertThat(mixed.getValue("dries_in")).isEqualTo(new Value.Word("never"));
        assertThat(mixed.notes().because())
                .anyMatch(text -> text.startsWith("Glycerine never dries: such a drop shrinks to 66 %"));
        assertThat(mixed.notes().cautions()).anyMatch(text -> text.startsWith("Reset: "));
        assertThat(answer("beads", "air: {humidity: 100 %}\n").getValue("dries_in"))
                .isEqualTo(new Value.Word("never"));
        assertThat(answer("beads", "liquid: {glycerine: 50 %}\nair: {humidity: 95 %}\n")
                        .notes()
                        .because())
                .anyMatch(text -> text.contains("draws water and grows"));
    }

    @Test
    void defaults_areListed() {
        assertThat(answer("beads", "{}").assumed().stream().map(Assumed::name))
                .containsExactlyInAnyOrder("surface", "tilt", "liquid.glycerine", "air.temperature", "air.humidity");
        assertThat(answer("beads", "air: {humidity: 30 %}\n").assumed().stream().map(Assumed::name))
                .containsExactlyInAnyOrder("surface", "tilt", "liquid.glycerine", "air.temperature");
    }

    @Test
    void refusals_nameWhatToMeasure() {
        assertThat(problems("beads", "surface: {advancing: 40 deg, receding: 50 deg}\n"))
                .containsExactly(
                        "ask.yaml:1:40 surface.receding is 50 deg; must be at most the advancing angle, 40 deg\n"
                                + "  Measure again: the angle is larger while a drop grows than while it shrinks.   "
                                + "(P-ASK-32, docs/problems.md)");
        assertThat(problems("beads", "liquid: {glycerine: 20 %}\nair: {temperature: 35 degC}\n"))
                .containsExactly(
                        "ask.yaml:2:20 air.temperature is 35 degC; must be from 15 degC to 30 degC with glycerine\n"
                                + "  Measure where the drops sit; past that its mixes aren't known here.   (P-ASK-31,"
                                + " docs/problems.md)");
        assertThat(problems("beads", "surface: felt\n"))
                .hasSize(1)
                .allMatch(text -> text.contains("photograph a growing and a shrinking drop"));
        assertThat(problems("beads", "surface: {advancing: 80 deg}\n")).hasSize(1);
        assertThat(problems("beads", "tilt: 100 deg\nliquid: {glycerine: 120 %}\n"))
                .hasSize(2);
    }

    @Test
    void everySurface_isAnsweredInFewLines() {
        for (Surface surface : Surface.values()) {
            for (String tilt : new String[] {"0 deg", "1 deg", "30 deg", "90 deg"}) {
                for (String glycerine : new String[] {"0 %", "5 % ± 5 %", "100 %"}) {
                    Answer answer = answer(
                            "beads",
                            "surface: " + surface.word() + "\ntilt: " + tilt + "\nliquid: {glycerine: " + glycerine
                                    + "}\n");
                    assertThat(answer.toText(PaperUnit.MILLIMETRES).lines().count())
                            .isLessThanOrEqualTo(30);
                }
            }
        }
    }
}
