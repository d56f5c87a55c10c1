package plumeline.flow;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import plumeline.tidy.Outside;
import plumeline.tidy.OutsideRow;

/// Two-dimensional flows with known answers, through the solver that runs in three dimensions.
final class FlowOutsideTest {
    @Test
    @Outside(
            source = "G. Taylor and A. Green, Proc. R. Soc. A 158 (1937), in two dimensions",
            place = "u = sin x cos z exp(-2 viscosity t), an exact solution in a box of slip walls",
            kind = "closed form")
    void taylorGreen_decaysAsItMust() {
        int n = 32;
        double h = Math.PI / n;
        Grid grid = new Grid(n, 1, n, Math.PI, h, Math.PI);
        var setting = new Flow.Setting(Tank.of(grid, Walls.all(Wall.surface())), new Liquid(0.01, 0, 0), List.of(), 1);
        State still = Flow.start(setting, Workers.alone()).state();
        List<float[]> fields = still.fields();
        for (int k = 0; k <= n; k++) {
            for (int i = 0; i <= n; i++) {
                int p = grid.index(i, 0, k);
                fields.get(0)[p] = (float) (Math.sin(i * h) * Math.cos((k + 0.5) * h));
                fields.get(2)[p] = (float) (-Math.cos((i + 0.5) * h) * Math.sin(k * h));
            }
        }
        Flow flow = Flow.resume(setting, Workers.alone(), State.of(still.clock(), fields));
        flow.run(1);
        double wrong = 0;
        double all = 0;
        for (int k = 0; k < n; k++) {
            for (int i = 0; i <= n; i++) {
                double exact = Math.sin(i * h) * Math.cos((k + 0.5) * h) * Math.exp(-0.02);
                double off = flow.velocity()[0][grid.index(i, 0, k)] - exact;
                wrong += off * off;
                all += exact * exact;
            }
        }
        assertThat(Math.sqrt(wrong / all)).isLessThanOrEqualTo(5e-4);
        assertThat(flow.divergence()).isLessThanOrEqualTo(1e-4);
    }

    @Test
    @Outside(
            source = "T. Benjamin, J. Fluid Mech. 31 (1968) 209-248",
            place = "half the root of reduced gravity times depth, for half the depth; mixing slows it a little",
            kind = "closed form",
            printedDigits = 2)
    void lockExchange_goesAtBenjaminsSpeed() {
        int n = 32;
        Grid grid = new Grid(8 * n, 1, n, 8, 1.0 / n, 1);
        Release behindTheLock = new Release.Cloud((x, _, _) -> x < 4, 1, 0, 0);
        var setting = new Flow.Setting(
                Tank.of(grid, Walls.all(Wall.surface())), new Liquid(1e-4, 0, 1), List.of(behindTheLock), 1);
        Flow flow = Flow.start(setting, Workers.alone());
        flow.run(2);
        double early = right(flow);
        flow.run(6);
        assertThat((right(flow) - early) / 4).isBetween(0.46, 0.51);
        assertThat(flow.dye().totalMetres3() / flow.releasedMetres3()).isEqualTo(1, within(1e-4));
    }

    private static double right(Flow flow) {
        return Front.ofShare(flow.dye(), 0.5) instanceof Front.Seen seen ? seen.rightMetres() : Double.NaN;
    }

    @ParameterizedTest
    @CsvSource({"100, 32, 15", "400, 48, 30", "1000, 64, 60"})
    @Outside(
            source = "Ghia, Ghia and Shin 1982, row by row in flow.csv",
            place = "src/test/resources/outside/flow/flow.csv",
            kind = "other program",
            printedDigits = 5)
    void cavity_agreesWithTheTable(double reynolds, int cells, double seconds) {
        Square square = Square.cavity(cells, reynolds, seconds);
        int compared = 0;
        for (OutsideRow row : OutsideRow.readAll("flow", "flow.csv")) {
            if (row.law().equals("cavity") && row.in(0) == reynolds) {
                assertThat(square.along(row.in(1), 1))
                        .as(row.id() + " " + row.source())
                        .isCloseTo(row.expected(), within(row.tolerance()));
                compared++;
            }
        }
        assertThat(compared).isEqualTo(15);
        assertThat(square.flow().divergence()).isLessThanOrEqualTo(1e-4);
    }

    @ParameterizedTest
    @CsvSource({"1e4, 32, 0.25", "1e5, 48, 0.3"})
    @Outside(
            source = "de Vahl Davis 1983 (from memory), row by row in flow.csv",
            place = "src/test/resources/outside/flow/flow.csv",
            kind = "other program",
            printedDigits = 4)
    void convection_agreesWithTheBenchmark(double rayleigh, int cells, double seconds) {
        Square square = Square.convection(cells, rayleigh, seconds);
        int compared = 0;
        for (OutsideRow row : OutsideRow.readAll("flow", "flow.csv")) {
            if (row.law().equals("convection") && row.in(0) == rayleigh) {
                double value = switch (row.word(1)) {
                    case "u" -> square.greatestU();
                    case "w" -> square.greatestW();
                    default -> square.nusselt();
                };
                assertThat(value).as(row.id() + " " + row.source()).isCloseTo(row.expected(), within(row.tolerance()));
                compared++;
            }
        }
        assertThat(compared).isEqualTo(3);
    }
}
