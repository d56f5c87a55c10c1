package plumeline.water;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import org.junit.jupiter.api.Test;

/// Ranges on both sides, limits and orders that must hold.
final class WaterTest {
    private static final double ROOM = 293.15;

    @Test
    void outsideItsRange_everyLawRefusesWithTheRange() {
        assertThat(Water.densityKilogramsPerMetre3(273.15)).isInstanceOf(Figure.Known.class);
        assertThat(Water.densityKilogramsPerMetre3(313.15)).isInstanceOf(Figure.Known.class);
        assertThat(Water.densityKilogramsPerMetre3(273.14))
                .isEqualTo(new Figure.Unknown(Figure.Measure.TEMPERATURE, 273.14, 273.15, 313.15));
        assertThat(Water.viscosityPascalSeconds(313.2)).isInstanceOf(Figure.Unknown.class);
        assertThat(Water.surfaceTensionNewtonsPerMetre(273)).isInstanceOf(Figure.Unknown.class);
        assertThat(Water.surfaceTensionNewtonsPerMetre(650)).isInstanceOf(Figure.Unknown.class);
        assertThat(Water.vapourPressurePascals(270)).isInstanceOf(Figure.Unknown.class);
        assertThat(Water.capillaryLengthMetres(320)).isInstanceOf(Figure.Unknown.class);
        assertThat(Water.refractiveIndex(ROOM, 1.2e-6))
                .isEqualTo(new Figure.Unknown(Figure.Measure.WAVELENGTH, 1.2e-6, 0.2e-6, 1.1e-6));
        assertThat(Water.refractiveIndex(320, 0.5e-6)).isInstanceOf(Figure.Unknown.class);
        assertThat(Water.densityKilogramsPerMetre3(Double.NaN)).isInstanceOf(Figure.Unknown.class);
    }

    @Test
    void solutions_refuseTooMuchAndTooHot() {
        assertThat(new Solution(Solution.Solute.SALT, 0.27).densityKilogramsPerMetre3(ROOM))
                .isEqualTo(new Figure.Unknown(Figure.Measure.MASS_SHARE, 0.27, 0, 0.26));
        assertThat(new Solution(Solution.Solute.SUGAR, 0.51).viscosityPascalSeconds(ROOM))
                .isInstanceOf(Figure.Unknown.class);
        assertThat(new Solution(Solution.Solute.SUGAR, 0.1).densityKilogramsPerMetre3(280))
                .isInstanceOf(Figure.Unknown.class);
        assertThat(new Solution(Solution.Solute.GLYCERINE, 1).densityKilogramsPerMetre3(304))
                .isInstanceOf(Figure.Unknown.class);
        assertThat(new Solution(Solution.Solute.GLYCERINE, 1).viscosityPascalSeconds(304))
                .isInstanceOf(Figure.Known.class);
        assertThat(new Solution(Solution.Solute.SALT, 0.1).refractiveIndex(310)).isInstanceOf(Figure.Unknown.class);
        assertThatThrownBy(() -> new Solution(Solution.Solute.SALT, 1.1)).isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void nothingDissolved_isWater() {
        for (Solution.Solute solute : Solution.Solute.values()) {
            Solution none = new Solution(solute, 0);
            checkWithinItsError(none.densityKilogramsPerMetre3(ROOM), 998.2067);
            checkWithinItsError(none.viscosityPascalSeconds(ROOM), 1.0016e-3);
            checkWithinItsError(none.refractiveIndex(ROOM), 1.33299);
        }
        double toAir = value(Water.refractiveIndex(ROOM, 589.3e-9)) / Water.AIR_INDEX;
        assertThat(toAir).isCloseTo(1.33299, within(2e-5));
    }

    private static void checkWithinItsError(Figure figure, double expected) {
        double share = ((Figure.Known) figure).errorShare();
        assertThat(value(figure)).isCloseTo(expected, withinPercentage(100 * share));
    }

    @Test
    void waterIsHeaviestNearFourDegrees_andCapillaryLengthIsOfMillimetres() {
        double heaviest = value(Water.densityKilogramsPerMetre3(277.13));
        assertThat(value(Water.densityKilogramsPerMetre3(276.9))).isLessThan(heaviest);
        assertThat(value(Water.densityKilogramsPerMetre3(277.4))).isLessThan(heaviest);
        assertThat(value(Water.capillaryLengthMetres(ROOM))).isCloseTo(2.726e-3, within(1e-6));
    }

    @Test
    void mixByVolume_isHeavierInGlycerineByMass() {
        assertThat(Solution.ofGlycerineByVolume(0.5).massShare()).isCloseTo(0.558, within(0.001));
        assertThat(Solution.ofGlycerineByVolume(0).massShare()).isZero();
        assertThat(Solution.ofGlycerineByVolume(1).massShare()).isEqualTo(1);
    }

    @Test
    void glycerineDrop_keepsItsShareInDryAirAndGrowsInDampAir() {
        Solution half = new Solution(Solution.Solute.GLYCERINE, 0.5);
        assertThat(value(Glycerine.keptVolumeShare(half, 0.5, ROOM))).isCloseTo(0.58, within(0.02));
        assertThat(value(Glycerine.keptVolumeShare(half, 0.4, ROOM))).isCloseTo(0.54, within(0.02));
        assertThat(value(Glycerine.keptVolumeShare(half, 0.95, ROOM))).isGreaterThan(1);
        double humidity = value(Glycerine.balanceHumidity(half, ROOM));
        assertThat(value(Glycerine.balanceMassShare(humidity, ROOM))).isCloseTo(0.5, within(1e-9));
        assertThat(Glycerine.balanceMassShare(0.05, ROOM)).isInstanceOf(Figure.Unknown.class);
        assertThat(Glycerine.balanceMassShare(0.5, 310)).isInstanceOf(Figure.Unknown.class);
        assertThatThrownBy(() -> Glycerine.balanceHumidity(new Solution(Solution.Solute.SALT, 0.1), ROOM))
                .isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void dewPoint_isTheAirsOwnTemperatureWhenFull_andUnbrokenAtFreezing() {
        for (double celsius = 1; celsius <= 59; celsius += 2) {
            assertThat(value(new MoistAir(celsius + 273.15, 1).dewPointKelvin()) - 273.15)
                    .isCloseTo(celsius, within(1e-6));
        }
        double before = 0;
        for (double humidity = 0.02; humidity <= 1; humidity += 0.001) {
            double dew = value(new MoistAir(ROOM, humidity).dewPointKelvin());
            assertThat(dew).isGreaterThan(before);
            before = dew;
        }
        assertThat(new MoistAir(ROOM, 0.002).dewPointKelvin()).isInstanceOf(Figure.Unknown.class);
    }

    @Test
    void frostPoint_liesAboveTheDewPoint_belowFreezingOnly() {
        MoistAir dry = new MoistAir(ROOM, 0.15);
        double frost = value(dry.frostPointKelvin());
        double dew = value(dry.dewPointKelvin());
        assertThat(frost).isGreaterThan(dew).isLessThan(dew + 1);
        assertThat(new MoistAir(ROOM, 0.5).frostPointKelvin()).isInstanceOf(Figure.Unknown.class);
    }

    /// The project's check values by a lumped balance of its own, each ± 40 %: rows C13 to C15.
    @Test
    void chilledCan_gathersDewForHalfAnHourOrSo() {
        MoistAir room = new MoistAir(ROOM, 0.5);
        MoistAir damp = new MoistAir(303.15, 0.7);
        assertThat(value(Chilled.filmMetresPerSecond(room, 277.15)) * 60e6).isCloseTo(0.6, withinPercentage(40));
        assertThat(value(Chilled.filmMetresPerSecond(damp, 277.15)) * 60e6).isCloseTo(3.8, withinPercentage(40));
        assertThat(value(Chilled.CAN.secondsToDewPoint(new MoistAir(295.15, 0.5), 277.15)) / 60)
                .isCloseTo(40, withinPercentage(40));
        assertThat(value(Chilled.filmMetresPerSecond(room, 290.15))).isNegative();
        assertThat(Chilled.CAN.secondsToDewPoint(room, 290)).isInstanceOf(Figure.Unknown.class);
        assertThat(Chilled.CAN.secondsToDewPoint(room, 270)).isInstanceOf(Figure.Unknown.class);
        assertThat(Chilled.CAN.secondsToDewPoint(new MoistAir(ROOM, 1), 280)).isInstanceOf(Figure.Unknown.class);
    }

    @Test
    void materials_lieWithinTheirOwnRange() {
        for (Material material : Material.values()) {
            assertThat(material.densityKilogramsPerMetre3())
                    .isBetween(material.lowKilogramsPerMetre3(), material.highKilogramsPerMetre3());
            assertThat(Material.find(material.word())).contains(material);
        }
        assertThat(Material.find("can-aluminium")).contains(Material.CAN_ALUMINIUM);
        assertThat(Material.find("gold")).isEmpty();
    }

    private static double value(Figure figure) {
        return figure.find().orElseThrow();
    }
}
