package plumeline.water;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import plumeline.tidy.Outside;
import plumeline.tidy.OutsideRow;

/// Solutions, solids, drops and dew against tables.
final class SubstancesOutsideTest {
    @Test
    @Outside(
            source = "CRC Handbook of Chemistry and Physics, 102nd edition, and others by row in solutions.csv",
            place = "src/test/resources/outside/water/solutions.csv",
            kind = "standard",
            printedDigits = 5)
    void everySolution_agreesWithItsSource() {
        List<OutsideRow> rows = OutsideRow.readAll("water", "solutions.csv");
        for (OutsideRow row : rows) {
            Solution solution = new Solution(Solution.Solute.valueOf(row.word(0).toUpperCase(Locale.ROOT)), row.in(1));
            double kelvin = row.in(2) + 273.15;
            double computed = switch (row.law()) {
                case "density" -> value(solution.densityKilogramsPerMetre3(kelvin)) / 1000;
                case "viscosity" -> value(solution.viscosityPascalSeconds(kelvin)) * 1000;
                case "index" -> value(solution.refractiveIndex(kelvin));
                default -> throw new AssertionError("no law " + row.law());
            };
            assertThat(computed).as(row.id() + " " + row.source()).isCloseTo(row.expected(), within(row.tolerance()));
        }
        assertThat(rows).hasSize(129);
    }

    @Test
    @Outside(
            source = "CRC Handbook, density of solids; EN 572-1",
            place = "src/test/resources/outside/water/materials.csv",
            kind = "standard",
            printedDigits = 3)
    void everySolid_agreesWithItsSource() {
        List<OutsideRow> rows = OutsideRow.readAll("water", "materials.csv");
        for (OutsideRow row : rows) {
            Material material = Material.find(row.word(0)).orElseThrow();
            assertThat(material.densityKilogramsPerMetre3())
                    .as(row.id() + " " + row.source())
                    .isCloseTo(row.expected(), within(row.tolerance()));
            assertThat(material.basis()).isEqualTo(Material.Basis.TABLE);
        }
        assertThat(rows).hasSize(5);
    }

    @Test
    @Outside(
            source = "survey of contact angles, papers on drops, humidity tables, named row by row in drops.csv",
            place = "src/test/resources/outside/water/drops.csv",
            kind = "published values",
            printedDigits = 2)
    void everyDrop_agreesWithItsSource() {
        List<OutsideRow> rows = OutsideRow.readAll("water", "drops.csv");
        for (OutsideRow row : rows) {
            if (row.law().equals("equilibrium")) {
                checkEquilibrium(row);
            } else {
                assertThat(compute(row))
                        .as(row.id() + " " + row.source())
                        .isCloseTo(row.expected(), within(row.tolerance()));
            }
        }
        assertThat(rows).hasSize(24);
    }

    private static void checkEquilibrium(OutsideRow row) {
        ContactAngles usual = Surface.find(row.word(0)).orElseThrow().usual();
        assertThat(Math.toDegrees(usual.recedingRadians())).as(row.id()).isLessThan(row.expected() + row.tolerance());
        assertThat(Math.toDegrees(usual.advancingRadians()))
                .as(row.id())
                .isGreaterThan(row.expected() - row.tolerance());
    }

    private static double compute(OutsideRow row) {
        return switch (row.law()) {
            // Both published factors lie within what we take.
            case "hold" -> Math.clamp(row.expected(), Drops.LEAST_HOLD, Drops.MOST_HOLD);
            case "sessile" -> {
                MoistAir full = new MoistAir(row.in(0) + 273.15, 1);
                yield (1 - row.in(1))
                        * full.vapourKilogramsPerMetre3()
                        / value(Water.densityKilogramsPerMetre3(row.in(0) + 273.15));
            }
            case "film" -> filmKelvin(row.in(0) * 1e-3, row.in(1) * 1e-6);
            case "balance" -> value(Glycerine.balanceHumidity(glycerine(row.in(0)), row.in(1) + 273.15));
            case "sublimation" -> Laws.sublimation(row.in(0));
            case "supercooled" -> value(MoistAir.saturationPascals(row.in(0) + 273.15));
            default -> throw new AssertionError("no law " + row.law());
        };
    }

    /// What a film's heat of condensing does to a can of that volume: the balance that `Chilled` takes, on its can.
    private static double filmKelvin(double filmMetres, double volumeMetres3) {
        double area = Chilled.CAN.areaMetres2() * volumeMetres3 / 330e-6;
        return filmMetres * area * 1000 * Chilled.EVAPORATION_JOULES_PER_KILOGRAM / (volumeMetres3 * 1e6 * 4.186);
    }

    private static Solution glycerine(double massShare) {
        return new Solution(Solution.Solute.GLYCERINE, massShare);
    }

    private static double value(Figure figure) {
        return figure.find().orElseThrow();
    }
}
