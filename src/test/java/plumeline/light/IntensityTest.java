package plumeline.light;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static plumeline.light.WrittenLamp.at;
import static plumeline.light.WrittenLamp.near;
import static plumeline.light.WrittenLamp.radians;

import org.junit.jupiter.api.Test;

/// What holds for intensities whatever the lamp, and how a table is read between and outside its angles.
final class IntensityTest {
    private static final IntensityTable TEN_ROUND_ZERO = IntensityTable.of(
            radians(10, 180, 350), radians(20, 40, 60), new double[][] {{100, 80, 0}, {50, 50, 50}, {300, 200, 100}});

    @Test
    void table_acrossTheTurnsEnd_isLinear() {
        assertThat(at(TEN_ROUND_ZERO, 350, 20)).isCloseTo(300, near(1e-9));
        assertThat(at(TEN_ROUND_ZERO, 355, 20)).isCloseTo(250, near(1e-9));
        assertThat(at(TEN_ROUND_ZERO, 0, 20)).isCloseTo(200, near(1e-9));
        assertThat(at(TEN_ROUND_ZERO, 360, 20)).isCloseTo(200, near(1e-9));
        assertThat(at(TEN_ROUND_ZERO, 5, 20)).isCloseTo(150, near(1e-9));
        assertThat(at(TEN_ROUND_ZERO, -5, 20)).isCloseTo(250, near(1e-9));
        assertThat(at(TEN_ROUND_ZERO, 365, 20)).isCloseTo(150, near(1e-9));
        assertThat(at(TEN_ROUND_ZERO, -1e-15, 20)).isCloseTo(200, near(1e-9));
        assertThat(at(TEN_ROUND_ZERO, 95, 20)).isCloseTo(75, near(1e-9));
    }

    @Test
    void table_betweenFourValues_isBilinear() {
        assertThat(at(TEN_ROUND_ZERO, 0, 30)).isCloseTo((100 + 80 + 300 + 200) / 4.0, near(1e-9));
        assertThat(at(TEN_ROUND_ZERO, 10, 55)).isCloseTo(20, near(1e-9));
    }

    @Test
    void table_outsideItsGammas_isDark() {
        assertThat(at(TEN_ROUND_ZERO, 350, 20)).isCloseTo(300, near(1e-9));
        assertThat(at(TEN_ROUND_ZERO, 350, 19.999)).isZero();
        assertThat(at(TEN_ROUND_ZERO, 350, 60)).isCloseTo(100, near(1e-9));
        assertThat(at(TEN_ROUND_ZERO, 350, 60.001)).isZero();
        assertThat(at(TEN_ROUND_ZERO, 350, 180)).isZero();
    }

    @Test
    void table_keepsNothingOfTheArraysItWasGiven() {
        double[][] rows = {{1, 1}};
        IntensityTable table = IntensityTable.of(radians(0), radians(0, 90), rows);
        rows[0][0] = 7;
        assertThat(at(table, 0, 0)).isEqualTo(1);
    }

    @Test
    void table_ofUnevenPlanes_countsEachForItsHalfSteps() {
        IntensityTable table = IntensityTable.of(radians(0, 90), radians(0, 90), new double[][] {{6, 6}, {0, 0}});
        assertThat(table.fluxLumens()).isCloseTo(6 * Math.PI, near(1e-12));
        IntensityTable three =
                IntensityTable.of(radians(0, 40, 100), radians(0, 90), new double[][] {{0, 0}, {9, 9}, {0, 0}});
        assertThat(three.fluxLumens()).isCloseTo(9 * Math.toRadians(50), near(1e-12));
    }

    @Test
    void widths_ofACurveThatFallsLinearly_areItsShares() {
        IntensityTable table = IntensityTable.of(radians(0), radians(0, 40), new double[][] {{100, 0}});
        checkDegrees(table.findBeamRadians(0).orElseThrow(), 40);
        checkDegrees(table.findFieldRadians(2).orElseThrow(), 72);
    }

    @Test
    void widths_ofAnUnevenLamp_areThoseOfThePlane() {
        IntensityTable table = IntensityTable.of(
                radians(0, 90, 180, 270), radians(0, 40), new double[][] {{100, 0}, {100, 50}, {100, 0}, {100, 50}});
        checkDegrees(table.findBeamRadians(0).orElseThrow(), 40);
        checkDegrees(table.findBeamRadians(Math.PI / 2).orElseThrow(), 80);
        checkDegrees(table.findBeamRadians(Math.PI * 1.5).orElseThrow(), 80);
    }

    @Test
    void widths_ofABeamBesideTheAxis_areFromEdgeToEdge() {
        IntensityTable table = IntensityTable.of(
                radians(0, 180), radians(0, 20, 30, 40), new double[][] {{0, 100, 100, 0}, {0, 0, 0, 0}});
        checkDegrees(table.findBeamRadians(0).orElseThrow(), 25);
        checkDegrees(table.findBeamRadians(Math.PI).orElseThrow(), 25);
    }

    @Test
    void widths_ofWings_areFromWingToWing() {
        IntensityTable table = IntensityTable.of(radians(0), radians(0, 50, 70), new double[][] {{20, 100, 0}});
        checkDegrees(table.findBeamRadians(0).orElseThrow(), 120);
    }

    @Test
    void widths_ofLightThatGoesRound_areNone() {
        assertThat(new Intensity.AllRound(5).findBeamRadians(0)).isEmpty();
        IntensityTable all = IntensityTable.of(radians(0), radians(0, 180), new double[][] {{3, 3}});
        assertThat(all.findBeamRadians(1)).isEmpty();
        IntensityTable backward = IntensityTable.of(radians(0), radians(90, 180), new double[][] {{0, 3}});
        assertThat(backward.findFieldRadians(1)).isEmpty();
    }

    @Test
    void widths_ofSimpleOnes_areTheirBeams() {
        checkDegrees(
                new Intensity.Cone(9, Math.toRadians(36)).findFieldRadians(0).orElseThrow(), 36);
        var soft = new Intensity.CosineBeam(9, Math.toRadians(36));
        checkDegrees(soft.findBeamRadians(0).orElseThrow(), 36);
        double field = soft.findFieldRadians(0).orElseThrow();
        assertThat(soft.candelas(0, field / 2)).isCloseTo(0.9, near(1e-9));
    }

    @Test
    void simpleOnes_areDarkBehindTheirEdge() {
        var cone = new Intensity.Cone(9, Math.toRadians(36));
        assertThat(at(cone, 0, 17.999)).isEqualTo(9);
        assertThat(at(cone, 0, 18.001)).isZero();
        var soft = new Intensity.CosineBeam(9, Math.toRadians(36));
        assertThat(at(soft, 0, 18)).isCloseTo(4.5, near(1e-12));
        assertThat(at(soft, 0, 90)).isZero();
        assertThat(at(soft, 0, 180)).isZero();
    }

    @Test
    void narrowestAndWidestBeams_keepTheirFlux() {
        for (double beam : new double[] {Intensity.NARROWEST_RADIANS, 0.01, 1, Math.nextDown(Math.PI)}) {
            assertThat(Intensity.Cone.ofLumens(10, beam).fluxLumens()).isCloseTo(10, near(1e-9));
            var soft = Intensity.CosineBeam.ofLumens(10, beam);
            assertThat(soft.fluxLumens()).isCloseTo(10, near(1e-9));
            assertThat(soft.findBeamRadians(0).orElseThrow()).isCloseTo(beam, near(1e-7));
            assertThat(soft.candelas(0, beam / 2) / soft.peakCandelas()).isCloseTo(0.5, near(1e-6));
        }
    }

    @Test
    void directionsAndTables_outsideTheirRanges_areOurMistake() {
        Intensity lamp = new Intensity.AllRound(1);
        assertThatIllegalArgumentException().isThrownBy(() -> lamp.candelas(0, -0.1));
        assertThatIllegalArgumentException().isThrownBy(() -> lamp.candelas(Double.NaN, 0));
        assertThatIllegalArgumentException().isThrownBy(() -> TEN_ROUND_ZERO.candelas(0, Double.NaN));
        assertThatIllegalArgumentException().isThrownBy(() -> lamp.findWidthRadians(0, 0));
        assertThatIllegalArgumentException().isThrownBy(() -> new Intensity.Cone(1, 0));
        assertThatIllegalArgumentException().isThrownBy(() -> new Intensity.CosineBeam(1, Math.PI));
        checkNoTable(radians(0, 0), radians(0, 1), new double[][] {{1, 1}, {1, 1}});
        checkNoTable(radians(0), radians(0), new double[][] {{1}});
        checkNoTable(radians(0), radians(0, 181), new double[][] {{1, 1}});
        checkNoTable(radians(360), radians(0, 1), new double[][] {{1, 1}});
        checkNoTable(radians(0), radians(0, 1), new double[][] {{1, -1}});
        checkNoTable(radians(0), radians(0, 1), new double[][] {{1}});
        checkNoTable(radians(0), radians(0, 1), new double[][] {});
    }

    private static void checkNoTable(double[] planes, double[] gammas, double[][] rows) {
        assertThatIllegalArgumentException().isThrownBy(() -> IntensityTable.of(planes, gammas, rows));
    }

    private static void checkDegrees(double radians, double degrees) {
        assertThat(Math.toDegrees(radians)).isCloseTo(degrees, near(1e-9));
    }
}
