package plumeline.water;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import org.junit.jupiter.api.Test;
import plumeline.tidy.Outside;

/// Tanks against the worked figures of the aquarium trade and the project's check values.
final class TankOutsideTest {
    private static final double G = 9.80665;

    @Test
    @Outside(
            source = "Stilwell, Calculating Glass Thickness for Aquariums, 2001, worked example of its spreadsheet",
            place = "1000 mm deep, 3000 mm long, four edges, factor 3.8: 27.06 mm, bow 0.49 mm; 19 mm: factor 1.873",
            kind = "worked example",
            printedDigits = 3)
    void aquariumExample_givesItsNumbers() {
        // It takes water as 10 kN/m³, E as 69,000 N/mm², and bends as if Poisson's ratio were 0.3.
        Pane.Elasticity glass = new Pane.Elasticity(69e9, 0.3);
        PaneBending thick = Plates.bend(new Pane(3, 1, 0.02706, Pane.Top.HELD), new PaneLoad.Liquid(1, 10_000), glass);
        assertThat(TankCheck.STRENGTH_PASCALS / thick.stressPascals()).isCloseTo(3.8, withinPercentage(1.5));
        assertThat(thick.deflectionMetres() * 1e3).isCloseTo(0.49, within(0.005));
        PaneBending thin = Plates.bend(new Pane(3, 1, 0.019, Pane.Top.HELD), new PaneLoad.Liquid(1, 10_000), glass);
        assertThat(TankCheck.STRENGTH_PASCALS / thin.stressPascals()).isCloseTo(1.873, withinPercentage(1.5));
        assertThat(TankCheck.STRENGTH_PASCALS / TankCheck.LEAST_FACTOR / 1e6).isCloseTo(5.05, within(0.005));
    }

    @Test
    @Outside(
            source = "arithmetic of the project's check values (hydrostatics)",
            place = "rows T01 to T08",
            kind = "closed form",
            printedDigits = 4)
    void massesAndPressures() {
        TankLoad full = load(0.6, 0.4, 0.4, 0.4, 0.008, GlassTank.Rim.NONE);
        assertThat(full.liquidKilograms()).isCloseTo(95.83, within(0.02));
        assertThat(full.bottomPascals()).isCloseTo(3915.6, within(1.0));
        assertThat(full.wallNewtons(0.6)).isCloseTo(469.9, within(0.5));
        // T06 and T07 take 600 by 400 mm outside, and walls that reach down beside the floor pane.
        GlassTank outside = new GlassTank(0.584, 0.384, 0.392, 0.008, GlassTank.Rim.NONE, GlassTank.Support.FULL);
        assertThat(outside.glassKilograms()).isCloseTo(20.5, within(0.4));
        TankLoad stated = new TankLoad(outside, 0.392, 20.5, 95.83 / outside.insideMetres2() / 0.392, G);
        assertThat(stated.floorPascals() / 1e3).isCloseTo(4.76, within(0.05));
        assertThat(stated.totalKilograms() / outside.footprintMetres2()).isCloseTo(485, within(3.0));
    }

    @Test
    @Outside(
            source = "Ritz solution of the project's check values, Poisson's ratio 0.3",
            place = "rows T37 to T41",
            kind = "other program",
            printedDigits = 3)
    void openAndRimmedTanks() {
        checkLongWall(0.6, 0.008, GlassTank.Rim.NONE, 3.50, 0.47);
        checkLongWall(0.6, 0.006, GlassTank.Rim.NONE, 6.23, 0);
        checkLongWall(0.6, 0.008, GlassTank.Rim.ALL_ROUND, 2.52, 0);
        checkLongWall(0.8, 0.008, GlassTank.Rim.NONE, 0, 1.12);
    }

    private static void checkLongWall(double length, double glass, GlassTank.Rim rim, double stress, double bow) {
        TankCheck.Found found = TankCheck.of(load(length, 0.4, 0.4, 0.4, glass, rim));
        TankCheck.Finding wall = found.panes().getFirst();
        assertThat(wall.place()).isEqualTo(TankCheck.Place.LONG_WALL);
        if (stress > 0) {
            assertThat(wall.bending().stressPascals() / 1e6).isCloseTo(stress, withinPercentage(3));
        }
        if (bow > 0) {
            assertThat(wall.bending().deflectionMetres() * 1e3).isCloseTo(bow, withinPercentage(4));
        }
    }

    @Test
    @Outside(
            source = "Merian's formula for long waves in a shallow basin, T = 2L/√(gh) (from memory)",
            place = "the shallow limit of the wave's period; deep: T = √(4πL/g)",
            kind = "closed form",
            printedDigits = 0)
    void waves_shallowAndDeep() {
        assertThat(TankTimes.wavePeriodSeconds(10, 0.05, G))
                .isCloseTo(20 / Math.sqrt(G * 0.05), withinPercentage(0.01));
        assertThat(TankTimes.wavePeriodSeconds(0.5, 5, G))
                .isCloseTo(Math.sqrt(4 * Math.PI * 0.5 / G), withinPercentage(0.01));
    }

    @Test
    @Outside(
            source = "Torricelli's law for a wide short spout with its ends' losses, integrated by hand",
            place = "t = A/a · √(2·1.5/g) · (√(z+h) − √z)",
            kind = "closed form",
            printedDigits = 0)
    void drain_shortWideHose_isTorricellis() {
        TankLoad full = load(0.6, 0.4, 0.4, 0.4, 0.008, GlassTank.Rim.NONE);
        TankTimes.Hose hose = new TankTimes.Hose(0.02, 1e-6, 0.7);
        double area = Math.PI / 4 * 0.02 * 0.02;
        double seconds = 0.24 / area * Math.sqrt(2 * 1.5 / G) * (Math.sqrt(1.1) - Math.sqrt(0.7));
        assertThat(TankTimes.drainSeconds(full, hose, 1e-6)).isCloseTo(seconds, withinPercentage(0.01));
    }

    @Test
    @Outside(
            source = "Hagen and Poiseuille: v = g H d²/(32 ν l)",
            place = "the laminar limit of the hose",
            kind = "closed form",
            printedDigits = 0)
    void drain_longThinHose_isPoiseuilles() {
        TankTimes.Hose hose = new TankTimes.Hose(0.002, 20, 0.5);
        double speed = G * 0.5 * 4e-6 / (32 * 1e-6 * 20);
        assertThat(TankTimes.hoseMetresPerSecond(hose, 0.5, 1e-6, G)).isCloseTo(speed, withinPercentage(0.1));
    }

    private static TankLoad load(
            double length, double width, double walls, double depth, double glass, GlassTank.Rim rim) {
        GlassTank tank = new GlassTank(length, width, walls, glass, rim, GlassTank.Support.FULL);
        return new TankLoad(tank, depth, tank.glassKilograms(), 998.2, G);
    }
}
