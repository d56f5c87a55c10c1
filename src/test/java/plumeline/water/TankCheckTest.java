package plumeline.water;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import org.junit.jupiter.api.Test;

/// Tanks: which panes bend, what helps, how they fill, empty and come to rest.
final class TankCheckTest {
    private static final GlassTank TANK =
            new GlassTank(0.6, 0.4, 0.4, 0.008, GlassTank.Rim.NONE, GlassTank.Support.EDGES);
    private static final double NU = 1.0e-6;

    @Test
    void everyPane_isLookedAt() {
        TankCheck.Found found = TankCheck.of(full(TANK));
        assertThat(found.panes().stream().map(TankCheck.Finding::place))
                .containsExactly(TankCheck.Place.LONG_WALL, TankCheck.Place.SHORT_WALL, TankCheck.Place.FLOOR);
        assertThat(found.mostStressed().place()).isEqualTo(TankCheck.Place.FLOOR);
        assertThat(found.mostBent().place()).isEqualTo(TankCheck.Place.LONG_WALL);
        assertThat(TankCheck.of(full(TANK.withSupport(GlassTank.Support.FULL))).panes())
                .hasSize(2);
        GlassTank cube = new GlassTank(0.4, 0.4, 0.4, 0.008, GlassTank.Rim.NONE, GlassTank.Support.FULL);
        assertThat(TankCheck.of(full(cube)).panes()).hasSize(1);
    }

    @Test
    void turnedTank_isTheSame() {
        GlassTank turned = new GlassTank(0.4, 0.6, 0.4, 0.008, GlassTank.Rim.NONE, GlassTank.Support.EDGES);
        assertThat(TankCheck.of(full(turned)).panes())
                .isEqualTo(TankCheck.of(full(TANK)).panes());
    }

    @Test
    void rimBedAndGlass_help() {
        double bare = TankCheck.of(full(TANK)).safetyFactor();
        assertThat(TankCheck.of(full(TANK.withSupport(GlassTank.Support.FULL))).safetyFactor())
                .isGreaterThan(bare);
        GlassTank rimmed = TANK.withSupport(GlassTank.Support.FULL).withRim(GlassTank.Rim.ALL_ROUND);
        assertThat(TankCheck.of(full(rimmed)).safetyFactor())
                .isGreaterThan(TankCheck.of(full(TANK.withSupport(GlassTank.Support.FULL)))
                        .safetyFactor());
        assertThat(TankCheck.of(full(TANK.withGlass(0.012))).safetyFactor())
                .isCloseTo(bare * 2.25, withinPercentage(1e-6));
    }

    @Test
    void worstPane_givesTheValidity() {
        GlassTank thin = TANK.withGlass(0.004);
        assertThat(TankCheck.of(full(TANK)).validity()).isEqualTo(PaneBending.Validity.GOOD);
        assertThat(TankCheck.of(full(thin)).validity()).isEqualTo(PaneBending.Validity.MEMBRANE_BEGINS);
        assertThat(TankCheck.of(full(TANK.withGlass(0.05))).validity()).isEqualTo(PaneBending.Validity.NO_THIN_PLATE);
    }

    @Test
    void halfFull_isEasier_andWeighsHalfTheWater() {
        TankLoad full = full(TANK);
        TankLoad half = full.withDepth(0.2);
        assertThat(half.liquidKilograms()).isCloseTo(full.liquidKilograms() / 2, within(1e-9));
        assertThat(TankCheck.of(half).safetyFactor())
                .isGreaterThan(1.9 * TankCheck.of(full).safetyFactor());
        assertThat(TankCheck.floorOwnShare(half)).isCloseTo(2500 * 0.008 / (998.2 * 0.2), within(1e-12));
        assertThatThrownBy(() -> full.withDepth(0.41))
                .hasMessageStartingWith("liquid's depth is 0.41; must be at most");
    }

    @Test
    void fillAndDrain_takeTheirTime() {
        assertThat(TankTimes.fillSeconds(0.096, 10e-3 / 60)).isCloseTo(576, within(1e-9));
        TankTimes.Hose hose = new TankTimes.Hose(0.012, 2, 0.7);
        double seconds = TankTimes.drainSeconds(full(TANK), hose, NU);
        double speed = TankTimes.hoseMetresPerSecond(hose, 0.9, NU, 9.80665);
        double roughly = 0.096 / (Math.PI / 4 * 0.012 * 0.012 * speed);
        assertThat(seconds).isCloseTo(roughly, withinPercentage(2));
        assertThat(TankTimes.drainSeconds(full(TANK), new TankTimes.Hose(0.019, 2, 0.7), NU))
                .isLessThan(seconds / 2);
    }

    @Test
    void rest_comesLater_inALargerTank() {
        TankLoad small = full(TANK);
        TankLoad large = full(new GlassTank(1.2, 0.8, 0.8, 0.015, GlassTank.Rim.NONE, GlassTank.Support.FULL));
        assertThat(TankTimes.waveDecaySeconds(small, NU)).isBetween(60.0, 240.0);
        assertThat(TankTimes.waveDecaySeconds(large, NU)).isGreaterThan(TankTimes.waveDecaySeconds(small, NU));
        assertThat(TankTimes.swirlSeconds(large, 0.25, 0.005, NU))
                .isGreaterThan(TankTimes.swirlSeconds(small, 0.25, 0.005, NU));
        assertThat(TankTimes.eddySeconds(small, 1e-3)).isCloseTo(400, within(1e-9));
    }

    @Test
    void swirl_diesAsItsLawSays() {
        TankLoad load = full(TANK);
        double turning = 0.25;
        double step = 1;
        double seconds = 0;
        double walls = NU * Math.PI * Math.PI * (1 / 0.36 + 1 / 0.16);
        while (turning > 0.005) {
            turning -= step * turning * (Math.sqrt(NU * turning) / 0.4 + walls);
            seconds += step;
        }
        assertThat(TankTimes.swirlSeconds(load, 0.25, 0.005, NU)).isCloseTo(seconds, withinPercentage(0.1));
    }

    private static TankLoad full(GlassTank tank) {
        return new TankLoad(tank, tank.wallsHeightMetres(), tank.glassKilograms(), 998.2, 9.80665);
    }
}
