package plumeline.ask.water;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static plumeline.ask.Asking.answer;
import static plumeline.ask.Asking.number;
import static plumeline.ask.Asking.problems;
import static plumeline.ask.Asking.spread;

import com.hummeling.if97.IF97;
import org.junit.jupiter.api.Test;
import plumeline.answer.Answer;
import plumeline.answer.Value;
import plumeline.answer.Verdict;
import plumeline.tidy.Outside;

/// The question `sweat`.
final class SweatTest {
    private static String asked(String product, String air, String humidity) {
        return "product: {temperature: " + product + "}\nair: {temperature: " + air + ", humidity: " + humidity + "}\n";
    }

    @Test
    @Outside(
            source = "if97 1.0.5: saturation temperature of the vapour's pressure",
            kind = "other program",
            printedDigits = 6)
    void dewPointAndMargin_agreeWithAnotherProgram() {
        IF97 program = new IF97(IF97.UnitSystem.SI);
        double dew = program.saturationTemperatureP(0.5 * program.saturationPressureT(293.15)) - 273.15;
        Answer answer = answer("sweat", asked("4 degC", "20 degC", "50 %"));
        assertThat(number(answer, "dew_point")).isCloseTo(dew, within(1e-6));
        assertThat(number(answer, "margin")).isCloseTo(dew - 4, within(1e-6));
        assertThat(answer.getValue("sweats")).isEqualTo(new Value.Word("yes"));
        assertThat(answer.verdict()).isEqualTo(Verdict.HOLDS);
        assertThat(answer.toJson()).contains("\"sweats\": \"yes\"").contains("\"unit\": \"degC\"");
    }

    /// Rows C01 to C05 and C10 of the project's check values (Magnus's formula of WMO-No. 8, another one than ours).
    @Test
    void dewPoints_agreeWithTheWeatherServicesFormula() {
        checkDew("20 degC", "50 %", 9.27);
        checkDew("20 degC", "40 %", 6.01);
        checkDew("25 degC", "40 %", 10.48);
        checkDew("25 degC", "60 %", 16.70);
        checkDew("30 degC", "70 %", 23.93);
        assertThat(answer("sweat", asked("10 degC", "20 degC", "40 %")).getValue("sweats"))
                .isEqualTo(new Value.Word("no"));
    }

    private static void checkDew(String air, String humidity, double expectedCelsius) {
        assertThat(number(answer("sweat", asked("4 degC", air, humidity)), "dew_point"))
                .isCloseTo(expectedCelsius, within(0.04));
    }

    @Test
    void atTheDewPoint_itDoesNotSweatYet() {
        Answer answer = answer("sweat", asked("20 degC", "20 degC", "100 %"));
        assertThat(number(answer, "margin")).isCloseTo(0, within(1e-6));
        assertThat(answer.notes().because()).anyMatch(text -> text.startsWith("Too near to call"));
    }

    @Test
    void nearTheDewPoint_nothingIsSaidToBeNothing() {
        String all = String.join(
                " ",
                answer("sweat", asked("9.25 degC", "20 degC", "50 %")).notes().because());
        assertThat(all).contains("the product is at it, within 0.1 degC.").contains("under 0.1 µm a minute");
        assertThat(all).doesNotContain(" 0 degC").doesNotContain(" 0 µm");
    }

    @Test
    void tries_flipTheAnswer() {
        Answer wet = answer("sweat", asked("4 degC", "20 degC", "50 %"));
        assertThat(wet.notes().attempts())
                .containsExactly("To keep it dry, let it warm to 10 degC, or dry the air to 34 %.");
        assertThat(answer("sweat", asked("10 degC", "20 degC", "50 %")).getValue("sweats"))
                .isEqualTo(new Value.Word("no"));
        assertThat(answer("sweat", asked("4 degC", "20 degC", "34 %")).getValue("sweats"))
                .isEqualTo(new Value.Word("no"));
        Answer dry = answer("sweat", asked("10 degC", "20 degC", "40 %"));
        assertThat(dry.notes().attempts())
                .containsExactly("To let it sweat, chill it to 5 degC or colder, or bring the air above 54 %.");
        assertThat(answer("sweat", asked("5 degC", "20 degC", "40 %")).getValue("sweats"))
                .isEqualTo(new Value.Word("yes"));
        assertThat(answer("sweat", asked("10 degC", "20 degC", "54 %")).getValue("sweats"))
                .isEqualTo(new Value.Word("yes"));
    }

    @Test
    void fullAirWithASpread_isMovedOneWayOnly() {
        Value.Spread dew = spread(answer("sweat", asked("4 degC", "30 degC", "100 % ± 4 %")), "dew_point");
        // By hand: d(dew)/d ln(humidity) is about T²·R/L = 17.3 K at 30 degC; 80 % of ± 4 % is 2.6 %.
        assertThat(dew.high() - dew.value()).isCloseTo(0.026 * 17.3, within(0.03));
    }

    @Test
    void belowFreezing_frostIsTold() {
        Answer sliver = answer("sweat", asked("-7 degC", "20 degC", "15 %"));
        assertThat(sliver.getValue("sweats")).isEqualTo(new Value.Word("no"));
        assertThat(sliver.notes().because())
                .contains("Below 0 degC it is frost, or dew that freezes, and it shows white.")
                .contains("dew_point is over liquid water; frost grows below the frost point, -6.6 degC.");
        assertThat(sliver.notes().cautions()).anyMatch(text -> text.contains("bursts"));
    }

    @Test
    void airTooDryForTheLaw_isSaidSo() {
        Answer answer = answer("sweat", asked("-5 degC", "20 degC", "0.1 %"));
        assertThat(answer.getValue("dew_point")).isEqualTo(new Value.Word("below -45 degC"));
        assertThat(answer.getValue("margin")).isEqualTo(new Value.Word("unknown"));
        assertThat(answer.getValue("sweats")).isEqualTo(new Value.Word("no"));
    }

    @Test
    void refusals_nameWhatToMeasure() {
        assertThat(problems("sweat", "product: {temperature: 4 degC}\nair: {temperature: 20 degC}\n"))
                .containsExactly("ask.yaml:2:1 air.humidity is missing; must be a share in %\n"
                        + "  Try what a hygrometer beside the product reads, such as 50 %.   (P-KEY-02,"
                        + " docs/problems.md)");
        assertThat(problems("sweat", asked("4 degC", "20 degC", "120 %"))).hasSize(1);
        assertThat(problems("sweat", asked("4 degC", "20 degC", "0 %"))).hasSize(1);
        assertThat(problems("sweat", asked("90 degC", "70 degC", "50 %"))).hasSize(2);
    }

    @Test
    void extremes_areAnsweredWithoutNonsense() {
        for (String air : new String[] {"-20 degC", "0 degC", "60 degC"}) {
            for (String humidity : new String[] {"0.001 %", "1 %", "99 % ± 5 %", "100 %"}) {
                for (String product : new String[] {"-40 degC", "0 degC", "60 degC ± 3 degC"}) {
                    assertThat(answer("sweat", asked(product, air, humidity)).verdict())
                            .isEqualTo(Verdict.HOLDS);
                }
            }
        }
    }
}
