package plumeline.ask.light;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static plumeline.ask.Asking.answer;
import static plumeline.ask.Asking.number;
import static plumeline.ask.Asking.spread;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import plumeline.answer.Answer;
import plumeline.answer.Verdict;

/// The question `power`.
final class PowerTest {
    /// Volts times amperes times power factor are watts; 15 A and 20 A circuits of 120 V carry 12 A and 16 A for hours:
    /// 1440 W and 1920 W of tungsten (common practice in North America).
    @Test
    void eightyPercent_isKeptForHours() {
        String lamp = "devices: [{name: lamp, watts: 1440 W, power_factor: 1}]\nvolts: 120 V\nbreaker: 15 A\n";
        Answer full = answer("power", lamp);
        assertThat(number(full, "amps")).isCloseTo(12, within(1e-9));
        assertThat(number(full, "used")).isCloseTo(80, within(1e-9));
        assertThat(full.verdict()).isEqualTo(Verdict.NO_OBJECTION_FOUND);
        assertThat(answer("power", lamp.replace("1440", "1450")).verdict()).isEqualTo(Verdict.FAILS);
        assertThat(answer("power", lamp.replace("1440", "1450") + "region: europe")
                        .verdict())
                .isEqualTo(Verdict.NO_OBJECTION_FOUND);
        assertThat(answer("power", lamp.replace("1440", "1450") + "continuous: no")
                        .verdict())
                .isEqualTo(Verdict.NO_OBJECTION_FOUND);
        assertThat(full.notes().cautions()).anyMatch(text -> text.contains("licensed"));
    }

    /// 300 W at 230 V and power factor 0.6 take 2.17 A.
    @Test
    void unknownLamps_takeMore() {
        Answer answer = answer("power", "devices: [{name: a, watts: 300 W}]\nvolts: 230 V\nbreaker: 16 A\n");
        assertThat(number(answer, "amps")).isCloseTo(300 / (230 * 0.6), within(1e-9));
        assertThat(answer.assumed()).anyMatch(each -> each.name().contains("power_factor"));
    }

    /// These handfuls go on the fewest circuits there could be, counted out over every way to share them.
    @Test
    void circuits_ofAHandful_areTheFewest() {
        Random random = new Random(5);
        for (int i = 0; i < 60; i++) {
            List<Double> amperes = new ArrayList<>();
            StringBuilder text = new StringBuilder("volts: 100 V\nbreaker: 10 A\ndevices:\n");
            for (int n = 0; n < 6; n++) {
                double watts = 50 + Math.rint(700 * random.nextDouble());
                amperes.add(watts / 100);
                text.append("- {name: d")
                        .append(n)
                        .append(", watts: ")
                        .append(watts)
                        .append(" W, power_factor: 1}\n");
            }
            assertThat(number(answer("power", text.toString()), "circuits")).isEqualTo(fewest(amperes, 8));
        }
    }

    /// 4, 4, 3, 3, 3, 3 A make 4 + 3 + 3 twice, where the largest first makes 4 + 4, 3 + 3 + 3 and 3.
    @Test
    void circuits_areTheFewest_notTheLargestFirst() {
        StringBuilder text = new StringBuilder("volts: 100 V\nbreaker: 10 A\ncontinuous: no\ndevices:\n");
        int name = 0;
        for (int amperes : new int[] {4, 4, 3, 3, 3, 3}) {
            text.append("- {name: d")
                    .append(name++)
                    .append(", watts: ")
                    .append(100 * amperes)
                    .append(" W, power_factor: 1}\n");
        }
        assertThat(number(answer("power", text.toString()), "circuits")).isEqualTo(2);
    }

    /// 12.6 A ± 0.9 A of 12.8 A: one circuit, or two where more flows; never a part of one.
    @Test
    void circuits_areWhole_whateverThePlusMinus() {
        Answer answer = answer(
                "power",
                "devices: [{name: a, watts: 1900 W ± 300 W, power_factor: 1}, "
                        + "{name: b, watts: 1 kW, power_factor: 1}]\n"
                        + "volts: 230 V\nbreaker: 16 A\n");
        assertThat(answer.verdict()).isEqualTo(Verdict.TIGHT);
        assertThat(spread(answer, "circuits").low()).isEqualTo(1);
        assertThat(spread(answer, "circuits").high()).isEqualTo(2);
    }

    /// Two hundred devices are answered too, a larger one than any circuit takes by itself.
    @Test
    void circuits_ofManyDevices_holdThemAll() {
        Random random = new Random(6);
        StringBuilder text = new StringBuilder("volts: 100 V\nbreaker: 10 A\ndevices:\n- {name: big, watts: 1 kW}\n");
        double amperes = 0;
        for (int n = 0; n < 199; n++) {
            double watts = 10 + Math.rint(400 * random.nextDouble());
            amperes += watts / 100;
            text.append("- {name: d")
                    .append(n)
                    .append(", watts: ")
                    .append(watts)
                    .append(" W, power_factor: 1}\n");
        }
        assertThat(number(answer("power", text.toString()), "circuits"))
                .isBetween(1 + Math.ceil(amperes / 8), 2 + Math.ceil(11.0 / 9 * amperes / 8));
    }

    private static int fewest(List<Double> amperes, double most) {
        int best = amperes.size();
        int all = (int) Math.pow(amperes.size(), amperes.size());
        for (int way = 0; way < all; way++) {
            double[] circuits = new double[amperes.size()];
            int rest = way;
            for (double each : amperes) {
                circuits[rest % amperes.size()] += each;
                rest /= amperes.size();
            }
            int used = 0;
            boolean holds = true;
            for (double each : circuits) {
                used += each > 0 ? 1 : 0;
                holds &= each <= most + 1e-9;
            }
            best = holds ? Math.min(best, used) : best;
        }
        return best;
    }
}
