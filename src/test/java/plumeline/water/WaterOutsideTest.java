package plumeline.water;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import com.hummeling.if97.IF97;
import java.util.List;
import org.junit.jupiter.api.Test;
import plumeline.tidy.Outside;
import plumeline.tidy.OutsideRow;

/// Pure water against the formulations' own tables, and against another program over the whole range.
final class WaterOutsideTest {
    private static final IF97 PROGRAM = new IF97(IF97.UnitSystem.SI);
    private static final double ATMOSPHERE_PASCALS = 101325;

    @Test
    @Outside(
            source = "IAPWS releases' check tables, ASHRAE Handbook, and programs, named row by row in water.csv",
            place = "src/test/resources/outside/water/water.csv",
            kind = "standard",
            printedDigits = 5)
    void everyRow_agreesWithItsSource() {
        List<OutsideRow> rows = OutsideRow.readAll("water", "water.csv");
        for (OutsideRow row : rows) {
            assertThat(compute(row))
                    .as(row.id() + " " + row.source())
                    .isCloseTo(row.expected(), within(row.tolerance()));
        }
        assertThat(rows).hasSize(22);
    }

    private static double compute(OutsideRow row) {
        return switch (row.law()) {
            case "density" -> value(Water.densityKilogramsPerMetre3(kelvin(row)));
            case "viscosity_at" -> Laws.viscosity(row.in(0), row.in(1));
            case "viscosity" -> value(Water.viscosityPascalSeconds(kelvin(row)));
            case "tension" -> value(Water.surfaceTensionNewtonsPerMetre(kelvin(row)));
            case "saturation" -> value(Water.vapourPressurePascals(kelvin(row)));
            case "vapour" -> new MoistAir(kelvin(row), 1).vapourKilogramsPerMetre3();
            case "index_at" ->
                Laws.refractiveIndex(kelvin(row), PROGRAM.densityPT(row.in(1) * 1e6, kelvin(row)), row.in(2));
            case "index" -> value(Water.refractiveIndex(kelvin(row), row.in(1) * 1e-6));
            default -> throw new AssertionError("no law " + row.law());
        };
    }

    private static double kelvin(OutsideRow row) {
        return row.in(0) + 273.15;
    }

    private static double value(Figure figure) {
        return figure.find().orElseThrow();
    }

    @Test
    @Outside(
            source = "if97 1.0.5, a program for water by the industrial formulation (another equation of state)",
            kind = "other program",
            printedDigits = 6)
    void everyHalfDegree_agreesWithAnotherProgram() {
        int compared = 0;
        for (double celsius = 0.5; celsius <= 40; celsius += 0.5) {
            double kelvin = celsius + 273.15;
            assertThat(value(Water.densityKilogramsPerMetre3(kelvin)))
                    .isCloseTo(PROGRAM.densityPT(ATMOSPHERE_PASCALS, kelvin), withinPercentage(0.002));
            assertThat(value(Water.viscosityPascalSeconds(kelvin)))
                    .isCloseTo(PROGRAM.dynamicViscosityPT(ATMOSPHERE_PASCALS, kelvin), withinPercentage(0.02));
            assertThat(value(Water.surfaceTensionNewtonsPerMetre(kelvin)))
                    .isCloseTo(PROGRAM.surfaceTensionT(kelvin), withinPercentage(0.001));
            assertThat(value(Water.vapourPressurePascals(kelvin)))
                    .isCloseTo(PROGRAM.saturationPressureT(kelvin), withinPercentage(1e-7));
            for (double micrometres : new double[] {0.4, 0.55, 0.7}) {
                assertThat(value(Water.refractiveIndex(kelvin, micrometres * 1e-6)))
                        .isCloseTo(
                                PROGRAM.refractiveIndexPTLambda(ATMOSPHERE_PASCALS, kelvin, micrometres * 1e-6),
                                within(1e-5));
            }
            compared++;
        }
        assertThat(compared).isEqualTo(80);
    }

    @Test
    @Outside(source = "if97 1.0.5: saturation temperature of a pressure", kind = "other program", printedDigits = 6)
    void dewPoints_agreeWithAnotherProgram() {
        int compared = 0;
        for (double celsius = 5; celsius <= 45; celsius += 5) {
            for (double humidity = 0.4; humidity <= 1; humidity += 0.1) {
                MoistAir air = new MoistAir(celsius + 273.15, humidity);
                double pressure = humidity * PROGRAM.saturationPressureT(celsius + 273.15);
                if (pressure > 612) {
                    assertThat(value(air.dewPointKelvin()))
                            .isCloseTo(PROGRAM.saturationTemperatureP(pressure), within(1e-6));
                    compared++;
                }
            }
        }
        assertThat(compared).isGreaterThan(40);
    }
}
