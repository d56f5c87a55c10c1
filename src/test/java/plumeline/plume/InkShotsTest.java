package plumeline.plume;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import plumeline.flow.Grid;
import plumeline.geom.Vec;

/// What is read from a staged shot, and what is said where something is missing.
final class InkShotsTest {
    private static void checkLacks(String field, String lack, String... lines) {
        assertThat(Poured.read(lines)).isInstanceOfSatisfying(InkReading.Lacking.class, lacking -> {
            assertThat(lacking.field()).isEqualTo(field);
            assertThat(lacking.lack()).contains(lack);
            assertThat(lacking.attempt()).isNotBlank();
        });
    }

    private static String release(String changed, String to) {
        assertThat(Poured.RELEASE).contains(changed);
        return Poured.RELEASE.replace(changed, to);
    }

    @Test
    void shot_isReadInNumbers() {
        InkShot shot = Poured.shot(Poured.stage());
        assertThat(shot.waters().box().low()).isEqualTo(new Vec(-0.06, -0.05, 0.008));
        assertThat(shot.waters().depthMetres()).isEqualTo(0.160, within(1e-12));
        // Water of 20 degC has 0.9982 g/ml and 1.004 mm²/s (common practice): 9.80665 (1.06 / 0.9982 − 1) = 0.607.
        assertThat(shot.waters().sinkingMetresPerSecond2()).isEqualTo(0.607, within(0.001));
        assertThat(shot.waters().viscosityMetres2PerSecond()).isEqualTo(1.004e-6, within(0.002e-6));
        assertThat(shot.pour().metres3PerSecond()).isEqualTo(15e-6, within(1e-12));
        assertThat(shot.pour().startSeconds()).isZero();
        assertThat(shot.pour().endSeconds()).isEqualTo(0.2, within(1e-12));
        assertThat(shot.things()).hasSize(1);
        assertThat(shot.timing().framesPerSecond()).isEqualTo(50);
        assertThat(shot.timing().startSeconds()).isEqualTo(0.1);
        assertThat(shot.timing().shotSeconds()).isEqualTo(1.1, within(1e-9));
        assertThat(shot.assumed()).isEmpty();
    }

    @Test
    void fastCamera_keepsAWholePartOfItsFrames() {
        InkReading read =
                Poured.read(Poured.CAMERA.replace("50 fps", "240 fps"), Poured.TANK, Poured.PLACE, Poured.RELEASE);
        assertThat(((InkReading.Ready) read).shot().timing().framesPerSecond()).isEqualTo(120);
    }

    @Test
    void whatIsMissing_isNamed() {
        checkLacks("shots.one.tank", "is missing", Poured.CAMERA, Poured.PLACE, Poured.RELEASE);
        checkLacks(
                "shots.one.tank.water",
                "is missing",
                Poured.CAMERA,
                "tank: {tank: glass, at: [0 mm, 0 mm]}",
                Poured.PLACE,
                Poured.RELEASE);
        checkLacks("shots.one.release", "is missing", Poured.CAMERA, Poured.TANK, Poured.PLACE);
        checkLacks(
                "shots.one.release",
                "lets no ink go",
                Poured.CAMERA,
                Poured.TANK,
                Poured.PLACE,
                "release: {thing: tin}");
        checkLacks(
                "kit.inks.unweighed.density",
                "is missing",
                Poured.CAMERA,
                Poured.TANK,
                Poured.PLACE,
                release("ink: rose", "ink: unweighed"));
        checkLacks(
                "shots.one.release.volume",
                "is missing",
                Poured.CAMERA,
                Poured.TANK,
                Poured.PLACE,
                release("volume: 3 ml, ", ""));
    }

    @Test
    void whatIsNotComputed_isRefused() {
        checkLacks(
                "kit.inks.syrup.density",
                "within 10 %",
                Poured.CAMERA,
                Poured.TANK,
                Poured.PLACE,
                release("ink: rose", "ink: syrup"));
        checkLacks(
                "shots.one.release.at",
                "outside the tank's water",
                Poured.CAMERA,
                Poured.TANK,
                Poured.PLACE,
                release("-5 mm", "-55 mm"));
        checkLacks(
                "shots.one.release.at",
                "is inside a placed thing",
                Poured.CAMERA,
                Poured.TANK,
                Poured.PLACE,
                release("-5 mm, 150 mm", "20 mm, 50 mm"));
        checkLacks(
                "shots.one.release.at",
                "falls in drops",
                Poured.CAMERA,
                Poured.TANK,
                Poured.PLACE,
                release("150 mm", "400 mm"));
        checkLacks(
                "shots.one.release.start",
                "1.20 s",
                Poured.CAMERA,
                Poured.TANK,
                Poured.PLACE,
                release("start: 0.1 s", "start: 1.2 s"));
    }

    private static String tank(String name) {
        return Poured.TANK.replace("tank: glass", "tank: " + name);
    }

    /// Fresh water is known from 0 to 40 degC; with table salt from 5 on, where the law's data begin (Laliberté, J.
    /// Chem. Eng. Data 54 (2009) 1725). A density that was measured says nothing of how thick the water is.
    @Test
    void waterPastItsLimits_isToldThoseOfWhatIsInIt() {
        checkLacks(
                "kit.tanks.hot.temperature",
                "is past 0 to 40 degC, where water is known",
                Poured.CAMERA,
                tank("hot"),
                Poured.PLACE,
                Poured.RELEASE);
        checkLacks(
                "kit.tanks.hot_brine.temperature",
                "is past 5 to 40 degC, where salt water is known",
                Poured.CAMERA,
                tank("hot_brine"),
                Poured.PLACE,
                Poured.RELEASE);
        checkLacks(
                "kit.tanks.hot_weighed.temperature",
                "is past 0 to 40 degC, where water is known",
                Poured.CAMERA,
                tank("hot_weighed"),
                Poured.PLACE,
                Poured.RELEASE);
    }

    /// Table salt of 5 % at 20 degC: 1.034 g/ml and 1.083 mPa s (from memory of the CRC Handbook's rows).
    @Test
    void saltWater_isAsThickAsItIs() {
        InkReading read = Poured.read(Poured.CAMERA, tank("brine"), Poured.PLACE, Poured.RELEASE);
        assertThat(((InkReading.Ready) read).shot().waters().viscosityMetres2PerSecond())
                .isEqualTo(1.083e-3 / 1034, within(0.01e-6));
    }

    @Test
    void whatIsNotWritten_isAssumedAndSaid() {
        InkReading read =
                Poured.read(Poured.CAMERA, Poured.TANK, Poured.PLACE, release("bore: 4 mm, squeeze_time: 0.2 s, ", ""));
        assertThat(((InkReading.Ready) read).shot().assumed()).containsExactly("a bore of 4 mm", "squeezed in 1 s");
    }

    @Test
    void nozzleAboveTheWater_inkFallsOntoIt() {
        InkReading read = Poured.read(Poured.CAMERA, Poured.TANK, Poured.PLACE, release("150 mm", "188 mm"));
        InkShot shot = ((InkReading.Ready) read).shot();
        assertThat(shot.pour().mouth().z()).isEqualTo(0.168, within(1e-12));
        assertThat(shot.pour().startSeconds()).isPositive();
        assertThat(shot.pour().endSeconds() - shot.pour().startSeconds()).isEqualTo(0.2, within(1e-9));
        assertThat(shot.assumed()).anyMatch(each -> each.startsWith("the ink falls 20 mm"));
    }

    @Test
    void solid_isWhereTheBodyIs() {
        InkShot shot = Poured.shot(Poured.stage());
        assertThat(shot.isSolid(new Vec(0, 0.039, 0.067))).isTrue();
        assertThat(shot.isSolid(new Vec(0, 0.041, 0.067))).isFalse();
        assertThat(shot.isSolid(new Vec(0, 0.02, 0.069))).isFalse();
        Grid grid = shot.grid(0.004);
        var tank = shot.tank(grid);
        long solid = 0;
        for (int k = 0; k < grid.nz(); k++) {
            for (int j = 0; j < grid.ny(); j++) {
                for (int i = 0; i < grid.nx(); i++) {
                    solid += tank.isSolid(i, j, k) ? 1 : 0;
                }
            }
        }
        assertThat(solid * grid.cellMetres3())
                .isEqualTo(Math.PI * 0.02 * 0.02 * 0.06, within(0.08 * Math.PI * 0.02 * 0.02 * 0.06));
    }

    /// No place inside a thing is in a cell of water whose middle it is, whatever the cells.
    @Test
    void cellWhoseMiddleIsInside_isSolid() {
        InkShot shot = ((InkReading.Ready) Poured.read(
                        Poured.CAMERA.replace("aim: tin", "aim: ahead"),
                        Poured.TANK,
                        "place: {brick: {thing: brick, at: [3 mm, 20 mm, 40 mm], tilt: 70 deg, lines: 2}}",
                        Poured.RELEASE))
                .shot();
        int examined = 0;
        for (double cell : new double[] {0.003, 0.0047, 0.007, 0.01}) {
            Grid grid = shot.grid(cell);
            var tank = shot.tank(grid);
            for (int k = 0; k < grid.nz(); k++) {
                for (int j = 0; j < grid.ny(); j++) {
                    for (int i = 0; i < grid.nx(); i++) {
                        Vec middle = shot.waters()
                                .box()
                                .low()
                                .plus(new Vec(
                                        (i + 0.5) * grid.dxMetres(),
                                        (j + 0.5) * grid.dyMetres(),
                                        (k + 0.5) * grid.dzMetres()));
                        if (shot.isSolid(middle)) {
                            assertThat(tank.isSolid(i, j, k)).isTrue();
                            examined++;
                        }
                    }
                }
            }
        }
        assertThat(examined).isGreaterThan(1000);
    }

    /// A tin of 40 mm is well seen in cells of 4 mm; a sheet of 2 mm isn't in cells of 10 mm.
    @Test
    void sizeInCells_tellsWhatIsTooThin() {
        InkShot tin = Poured.shot(Poured.stage());
        assertThat(tin.sizeInCells(tin.things().getFirst(), tin.grid(0.004))).isEqualTo(1, within(0.08));
        InkShot sheet = ((InkReading.Ready) Poured.read(
                        Poured.CAMERA.replace("aim: tin", "aim: ahead"),
                        Poured.TANK,
                        "place: {sheet: {thing: sheet, at: [0 mm, 18 mm, 8 mm]}}",
                        Poured.RELEASE))
                .shot();
        assertThat(sheet.sizeInCells(sheet.things().getFirst(), sheet.grid(0.01)))
                .isNotCloseTo(1, within(0.5));
        assertThat(sheet.sizeInCells(sheet.things().getFirst(), sheet.grid(0.001)))
                .isEqualTo(1, within(0.1));
    }

    @Test
    void leaningBox_isSolidWhereItLeans() {
        InkReading read = Poured.read(
                Poured.CAMERA.replace("aim: tin", "aim: ahead"),
                Poured.TANK,
                "place: {brick: {thing: brick, at: [0 mm, 20 mm, 40 mm], tilt: 90 deg, lines: 2}}",
                Poured.RELEASE);
        InkShot shot = ((InkReading.Ready) read).shot();
        // Its axis lies level, 65 mm over the table: 50 mm long along x, 40 mm high.
        assertThat(shot.isSolid(new Vec(0.024, 0.02, 0.065))).isTrue();
        assertThat(shot.isSolid(new Vec(0.026, 0.02, 0.065))).isFalse();
        assertThat(shot.isSolid(new Vec(0, 0.02, 0.084))).isTrue();
        assertThat(shot.isSolid(new Vec(0, 0.02, 0.086))).isFalse();
    }

    @Test
    void key_changesWithWhatDecidesTheFlowOnly() {
        InkKey key = InkKey.ofFlow(Poured.shot(Poured.stage()));
        String[] others = {"4 mm", "0.2 s", "3 ml", "-5 mm", "150 mm", "ink: rose"};
        String[] changed = {"3 mm", "0.3 s", "4 ml", "-4 mm", "149 mm", "ink: unknown"};
        for (int n = 0; n < others.length; n++) {
            InkShot shot = ((InkReading.Ready)
                            Poured.read(Poured.CAMERA, Poured.TANK, Poured.PLACE, release(others[n], changed[n])))
                    .shot();
            boolean sameInk = changed[n].equals("ink: unknown");
            assertThat(InkKey.ofFlow(shot).equals(key)).as(changed[n]).isEqualTo(sameInk);
        }
        InkShot nearer = ((InkReading.Ready) Poured.read(
                        Poured.CAMERA.replace("-600 mm", "-500 mm"), Poured.TANK, Poured.PLACE, Poured.RELEASE))
                .shot();
        assertThat(InkKey.ofFlow(nearer)).isEqualTo(key);
        var coarse = new InkCourse(0.01, 1, new InkCourse.Until.Time(1));
        assertThat(InkKey.ofRuns(nearer, coarse))
                .isNotEqualTo(InkKey.ofRuns(nearer, new InkCourse(0.008, 1, coarse.until())))
                .isNotEqualTo(InkKey.ofRuns(nearer, new InkCourse(0.01, 2, coarse.until())))
                .isNotEqualTo(InkKey.ofRuns(nearer, new InkCourse(0.01, 1, new InkCourse.Until.ShotAndFloor())));
    }
}
