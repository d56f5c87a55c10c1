package plumeline.flow;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.concurrent.Executors;
import org.junit.jupiter.api.Test;

/// What must hold of any flow: what is kept, what never happens, that it is the same again.
final class FlowTest {
    private static Flow run(double seconds) {
        Flow flow = Flow.start(Small.setting(7), Workers.alone());
        flow.run(seconds);
        return flow;
    }

    private static void checkSame(Flow one, Flow other) {
        List<float[]> fields = one.state().fields();
        List<float[]> others = other.state().fields();
        for (int n = 0; n < State.FIELDS; n++) {
            assertThat(fields.get(n)).as("field " + n).isEqualTo(others.get(n));
        }
        assertThat(one.state().clock()).isEqualTo(other.state().clock());
    }

    @Test
    void dye_isKeptAndNeverBelowNought() {
        Flow flow = run(0.8);
        double poured = 4 / 3.0 * Math.PI * 0.012 * 0.012 * 0.012;
        assertThat(flow.releasedMetres3()).isEqualTo(poured + 2e-6 * 0.35, within(0.02 * poured));
        assertThat(flow.dye().totalMetres3() / flow.releasedMetres3()).isEqualTo(1, within(1e-4));
        for (float share : flow.dye().shares()) {
            assertThat(share).isBetween(0f, 1.3f);
        }
    }

    @Test
    void aNozzle_bringsItsVolume() {
        var setting = new Flow.Setting(Small.tank(), new Liquid(1e-6, 0, 0.5), List.of(Small.nozzle()), 1);
        Flow flow = Flow.start(setting, Workers.alone());
        flow.run(0.2);
        assertThat(flow.releasedMetres3()).isEqualTo(2e-6 * 0.15, within(1e-15));
        assertThat(flow.dye().totalMetres3()).isEqualTo(2e-6 * 0.15, within(2e-6 * 0.15 * 1e-4));
        for (float share : flow.dye().shares()) {
            assertThat(share).isBetween(0f, 1.001f);
        }
        assertThat(Front.ofShare(flow.dye(), 0.05))
                .isInstanceOfSatisfying(
                        Front.Seen.class, seen -> assertThat(seen.lowMetres()).isLessThan(0.12));
    }

    @Test
    void aBody_neverHoldsDyeNorMoves() {
        Flow flow = Flow.start(Small.setting(7), Workers.alone());
        Tank tank = Small.tank();
        Grid grid = tank.grid();
        for (double seconds = 0.1; seconds < 0.85; seconds += 0.1) {
            flow.run(seconds);
            assertThat(flow.divergence()).isLessThanOrEqualTo(1e-4);
            int examined = 0;
            for (int k = 0; k < grid.nz(); k++) {
                for (int j = 0; j < grid.ny(); j++) {
                    for (int i = 0; i < grid.nx(); i++) {
                        if (tank.isSolid(i, j, k)) {
                            int p = grid.index(i, j, k);
                            assertThat(flow.dye().share(i, j, k)).isZero();
                            assertThat(flow.velocity()[0][p]).isZero();
                            assertThat(flow.velocity()[0][p + 1]).isZero();
                            assertThat(flow.velocity()[2][p + grid.strideZ()]).isZero();
                            examined++;
                        }
                    }
                }
            }
            assertThat(examined).isGreaterThan(500);
        }
    }

    @Test
    void twoThreads_giveTheSameBitsAsOne() {
        try (var pool = Executors.newFixedThreadPool(2)) {
            Flow helped = Flow.start(Small.setting(7), Workers.of(pool, 2));
            helped.run(0.3);
            checkSame(helped, run(0.3));
        }
    }

    @Test
    void anotherSeed_givesAnotherFlow() {
        Flow other = Flow.start(Small.setting(8), Workers.alone());
        other.run(0.1);
        assertThat(other.dye().shares()).isNotEqualTo(run(0.1).dye().shares());
    }

    @Test
    void aResumedFlow_goesOnAsIfItHadNotStopped() {
        Flow broken = Flow.start(Small.setting(7), Workers.alone());
        for (int n = 0; n < 6; n++) {
            broken.step(0.3);
        }
        State kept = State.of(broken.state().clock(), broken.state().fields());
        Flow resumed = Flow.resume(Small.setting(7), Workers.alone(), kept);
        resumed.run(0.3);
        checkSame(resumed, run(0.3));
    }

    @Test
    void aRun_endsAtItsTime() {
        Flow flow = Flow.start(Small.setting(7), Workers.alone());
        flow.run(0.1);
        assertThat(flow.seconds()).isEqualTo(0.1);
        long steps = flow.steps();
        flow.run(0.05);
        assertThat(flow.steps()).isEqualTo(steps);
    }

    @Test
    void stillWater_staysStill() {
        var setting = new Flow.Setting(Small.tank(), new Liquid(1e-6, 0, 0.5), List.of(), 1);
        Flow flow = Flow.start(setting, Workers.alone());
        flow.run(10);
        assertThat(flow.fastestMetresPerSecond()).isZero();
        assertThat(flow.divergence()).isZero();
    }

    @Test
    void evenDye_staysEvenInAnyFlow() {
        // All of the water is dyed: stirred by a nozzle it must stay so, but for what leaves at the top.
        Release all = new Release.Cloud((_, _, _) -> true, 1, 0, 0);
        var setting = new Flow.Setting(Small.tank(), new Liquid(1e-6, 0, 0.5), List.of(all, Small.nozzle()), 1);
        Flow flow = Flow.start(setting, Workers.alone());
        flow.run(0.3);
        Grid grid = Small.tank().grid();
        for (int k = 0; k < grid.nz() - 4; k++) {
            for (int i = 0; i < grid.nx(); i++) {
                if (!Small.tank().isSolid(i, 10, k)) {
                    assertThat(flow.dye().share(i, 10, k)).isEqualTo(1f, within(1e-3f));
                }
            }
        }
    }

    @Test
    void lightDye_risesAsHeavyDyeSinks() {
        double[] way = new double[2];
        for (int n = 0; n < 2; n++) {
            Grid grid = new Grid(16, 16, 32, 0.08, 0.08, 0.16);
            Release cloud = new Release.Cloud(Inside.ball(0.04, 0.04, 0.08, 0.012), 1, 0, 0);
            var setting = new Flow.Setting(
                    Tank.of(grid, Walls.all(Wall.glass())),
                    new Liquid(1e-6, 0, n == 0 ? 0.5 : -0.5),
                    List.of(cloud),
                    1);
            Flow flow = Flow.start(setting, Workers.alone());
            flow.run(0.5);
            if (Front.ofShare(flow.dye(), 0.1) instanceof Front.Seen seen) {
                way[n] = n == 0 ? 0.08 - seen.lowMetres() : seen.highMetres() - 0.08;
            }
        }
        assertThat(way[0]).isGreaterThan(0.02).isEqualTo(way[1], within(1e-4));
    }

    @Test
    void whatDoesNotFit_isRefused() {
        State small = run(0.05).state();
        var other = new Flow.Setting(
                Tank.of(new Grid(8, 8, 8, 1, 1, 1), Walls.tank()), new Liquid(1e-6, 0, 0), List.of(), 1);
        assertThatThrownBy(() -> Flow.resume(other, Workers.alone(), small))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("length of the state's arrays");
        var inTheCan = new Release.Nozzle(Release.Mouth.down(0.06, 0.05, 0.03), 0.003, 1e-6, 0, 1, 0);
        var setting = new Flow.Setting(Small.tank(), new Liquid(1e-6, 0, 0), List.of(inTheCan), 1);
        assertThatThrownBy(() -> Flow.start(setting, Workers.alone()))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("it lies in a body");
    }
}
