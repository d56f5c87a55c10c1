package plumeline.flow;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Random;
import java.util.concurrent.atomic.AtomicInteger;
import org.junit.jupiter.api.Test;

/// The parts a flow is made of, each by itself.
final class PartsTest {
    @Test
    void theTransform_isTheCosineSumAndComesBack() {
        for (int length : new int[] {1, 3, 8, 12, 15, 48}) {
            var transform = new CosineTransform(length);
            var random = new Random(length);
            float[][] rows = new float[length][5];
            for (float[] row : rows) {
                for (int n = 0; n < row.length; n++) {
                    row[n] = random.nextFloat() - 0.5f;
                }
            }
            float[][] there = new float[length][];
            for (int i = 0; i < length; i++) {
                there[i] = rows[i].clone();
            }
            transform.forward(there, new float[length][5]);
            for (int m = 0; m < length; m++) {
                int frequency = transform.frequency(m);
                double sum = 0;
                for (int i = 0; i < length; i++) {
                    sum += rows[i][2] * Math.cos(Math.PI * frequency * (2 * i + 1) / (2 * length));
                }
                double expected = sum * Math.sqrt((frequency == 0 ? 1.0 : 2.0) / length);
                assertThat((double) there[m][2]).as(length + " at " + frequency).isEqualTo(expected, within(2e-6));
            }
            transform.back(there, new float[length][5]);
            for (int i = 0; i < length; i++) {
                assertThat(there[i]).containsExactly(rows[i], within(2e-6f));
            }
        }
    }

    @Test
    void theBoxSolve_undoesTheOperator() {
        Grid grid = new Grid(12, 10, 16, 0.3, 0.2, 0.5);
        var operator = new FluidOperator(Tank.of(grid, Walls.tank()), Workers.alone());
        var random = new Random(3);
        float[] pressure = new float[grid.length()];
        for (int k = 0; k < grid.nz(); k++) {
            for (int j = 0; j < grid.ny(); j++) {
                for (int i = 0; i < grid.nx(); i++) {
                    pressure[grid.index(i, j, k)] = random.nextFloat();
                }
            }
        }
        float[] right = new float[grid.length()];
        operator.apply(pressure, right);
        float[] solved = new float[grid.length()];
        new BoxSolve(grid, Workers.alone()).solve(right, solved);
        float constant = pressure[grid.index(3, 3, 3)] - solved[grid.index(3, 3, 3)];
        for (int k = 0; k < grid.nz(); k++) {
            for (int i = 0; i < grid.nx(); i++) {
                int p = grid.index(i, 4, k);
                assertThat(solved[p] + constant).isEqualTo(pressure[p], within(2e-4f));
            }
        }
    }

    /// Dye is carried only where it may have come to; with specks in all corners, too thin to weigh anything, that is
    /// the whole tank.
    @Test
    void dye_carriedInItsBoxOnly_isThatOfTheWholeTank() {
        Grid grid = Small.tank().grid();
        Flow small = Flow.start(Small.setting(7), Workers.alone());
        small.run(0.1);
        State state = small.state();
        List<float[]> fields = state.fields();
        float speck = 1e-12f;
        for (int k : new int[] {0, grid.nz() - 1}) {
            for (int j : new int[] {0, grid.ny() - 1}) {
                fields.get(State.DYE)[grid.index(0, j, k)] += speck;
                fields.get(State.DYE)[grid.index(grid.nx() - 1, j, k)] += speck;
            }
        }
        Flow whole = Flow.resume(Small.setting(7), Workers.alone(), State.of(state.clock(), fields));
        small.run(0.4);
        whole.run(0.4);
        float[] expected = small.dye().shares();
        assertThat(whole.dye().shares()).containsExactly(expected, within(1e-5f));
        int dyed = 0;
        for (float share : expected) {
            dyed += share > 1e-3 ? 1 : 0;
        }
        assertThat(dyed).isGreaterThan(100);
    }

    @Test
    void aDyeBox_growsAroundWhatItIsGiven() {
        Grid grid = new Grid(8, 6, 10, 0.8, 0.6, 1);
        var box = new DyeBox(grid);
        assertThat(box.isEmpty()).isTrue();
        float[] dye = new float[grid.length()];
        dye[grid.index(5, 3, 7)] = 1e-14f;
        box.includeLayer(dye, 0, 5, 7);
        assertThat(List.of(box.from(0), box.to(0), box.from(1), box.to(1), box.from(2), box.to(2)))
                .containsExactly(4, 6, 2, 4, 6, 8);
        box.includeAll(List.of(grid.index(0, 5, 9)));
        assertThat(List.of(box.from(0), box.to(0), box.from(1), box.to(1), box.from(2), box.to(2)))
                .containsExactly(0, 6, 2, 5, 6, 9);
        box.includeAll();
        assertThat(List.of(box.from(0), box.to(0), box.from(1), box.to(1), box.from(2), box.to(2)))
                .containsExactly(0, 7, 0, 5, 0, 9);
    }

    @Test
    void workers_finishAloneWhereNobodyHelps() {
        var done = new AtomicInteger();
        Workers.of(_ -> {}, 4).each(20, _ -> done.incrementAndGet());
        assertThat(done.get()).isEqualTo(20);
    }

    @Test
    void workers_tellOfAPartThatBreaks() {
        assertThatThrownBy(() -> Workers.of(Runnable::run, 2).each(5, part -> {
                    if (part == 3) {
                        throw new IllegalArgumentException("three");
                    }
                }))
                .isInstanceOf(IllegalStateException.class)
                .hasRootCauseMessage("three");
    }

    @Test
    void noise_isEvenAndItsOwnAtEachPlace() {
        double sum = 0;
        double squares = 0;
        int count = 20_000;
        for (int n = 0; n < count; n++) {
            double value = Noise.at(5, 2, n);
            assertThat(value).isBetween(-1.0, 1.0);
            sum += value;
            squares += value * value;
        }
        assertThat(sum / count).isEqualTo(0, within(0.02));
        assertThat(squares / count).isEqualTo(1 / 3.0, within(0.01));
        assertThat(Noise.at(5, 2, 0)).isEqualTo(Noise.at(5, 2, 0)).isNotEqualTo(Noise.at(6, 2, 0));
    }

    @Test
    void aFront_liesBetweenTheCells() {
        Grid grid = new Grid(10, 1, 10, 1, 0.1, 1);
        float[] shares = new float[grid.length()];
        shares[grid.index(4, 0, 6)] = 1;
        shares[grid.index(4, 0, 5)] = 0.5f;
        Dye dye = new Dye(grid, shares);
        assertThat(Front.ofShare(dye, 0.25)).isInstanceOfSatisfying(Front.Seen.class, seen -> {
            assertThat(seen.lowMetres()).isEqualTo(0.5, within(1e-9));
            assertThat(seen.highMetres()).isEqualTo(0.725, within(1e-9));
            assertThat(seen.widthMetres()).isEqualTo(0.15, within(1e-9));
            assertThat(seen.depthMetres(0.9)).isEqualTo(0.4, within(1e-9));
        });
        // A look through one cell of 0.1 m.
        assertThat(Front.ofSight(dye, 0.05))
                .isInstanceOfSatisfying(
                        Front.Seen.class, seen -> assertThat(seen.lowMetres()).isEqualTo(0.55, within(1e-6)));
        assertThat(Front.ofShare(dye, 1.5)).isInstanceOf(Front.Nowhere.class);
        assertThat(dye.totalMetres3()).isEqualTo(1.5e-3, within(1e-9));
        assertThat(dye.shares()[5 * 10 + 4]).isEqualTo(0.5f);
    }

    @Test
    void aGrid_takesCellsOfAboutTheWantedSize() {
        Grid grid = Grid.ofCells(0.24, 0.18, 0.36, 0.00375);
        assertThat(grid.nx()).isEqualTo(64);
        assertThat(grid.ny()).isEqualTo(48);
        assertThat(grid.nz()).isEqualTo(96);
        assertThat(grid.dxMetres()).isEqualTo(0.00375, within(1e-12));
        assertThatThrownBy(() -> new Grid(1, 1, 4, 1, 1, 1))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage("nx is 1.0; must be 2 to 2048");
    }

    @Test
    void aTank_needsWaterAndFlatWallsThatSlip() {
        Grid flat = new Grid(4, 1, 4, 1, 0.25, 1);
        assertThatThrownBy(() -> Tank.of(flat, Walls.tank()))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("front or back wall");
        Grid grid = new Grid(4, 4, 4, 1, 1, 1);
        assertThatThrownBy(() -> Tank.of(grid, Walls.tank(), (_, _, _) -> true))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("cells of water");
    }
}
