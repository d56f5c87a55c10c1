package plumeline.optics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import plumeline.tidy.Outside;
import plumeline.tidy.OutsideRow;

/// Lens sums against published worked examples and formulas.
final class LensOutsideTest {
    @Test
    @Outside(
            source = "worked examples and formulas of photography and optics texts, named row by row in lens.csv",
            place = "src/test/resources/outside/optics/lens.csv",
            kind = "published examples",
            printedDigits = 3)
    void everyRow_agreesWithItsSource() {
        List<OutsideRow> rows = OutsideRow.readAll("optics", "lens.csv");
        for (OutsideRow row : rows) {
            assertThat(compute(row))
                    .as(row.id() + " " + row.source())
                    .isCloseTo(row.expected(), within(row.tolerance()));
        }
        assertThat(rows).hasSize(52);
    }

    private static double compute(OutsideRow row) {
        return switch (row.law()) {
            case "image" -> Optics.imageDistanceMetres(lens(row), Optics.magnificationAt(lens(row), row.in(1)));
            case "magnification" -> Optics.magnificationAt(lens(row), row.in(1));
            case "object" -> Optics.distanceForMagnificationMetres(lens(row), row.in(1));
            case "image_m" -> Optics.imageDistanceMetres(lens(row), row.in(1));
            case "total" ->
                Optics.distanceForMagnificationMetres(lens(row), row.in(1))
                        + Optics.imageDistanceMetres(lens(row), row.in(1));
            case "bellows" -> Math.pow(Optics.pupilFactor(LensModel.ofFocalLength(1), row.in(0)), 2);
            case "loss" -> Optics.lightLossStops(new LensModel(1, row.in(1)), row.in(0));
            case "working" -> Optics.workingFNumber(new LensModel(1, row.in(2)), row.in(0), row.in(1));
            case "view" ->
                Math.toDegrees(Optics.angleOfViewRadians(new LensModel(row.in(1), row.in(3)), row.in(2), row.in(0)));
            case "airy_factor" -> Optics.AIRY_FACTOR;
            case "airy" -> 1e6 * Optics.airyDiameterMetres(row.in(0), row.in(1) * 1e-9);
            case "airy_equals" -> row.in(0) * 1e-3 / Optics.airyDiameterMetres(1, row.in(1) * 1e-9);
            default -> computeDepth(row);
        };
    }

    private static double computeDepth(OutsideRow row) {
        return switch (row.law()) {
            case "hyperfocal" -> Optics.hyperfocalMetres(sharpness(row, 1));
            case "hyperfocal_ft" -> Optics.hyperfocalMetres(sharpness(row, 1)) / 12;
            case "hyperfocal_less_f" -> Optics.hyperfocalMetres(sharpness(row, 1)) - row.in(0);
            case "near" -> Optics.nearLimitMetres(sharpness(row, 1), row.in(3));
            case "near_ft" -> Optics.nearLimitMetres(sharpness(row, 1), row.in(3)) / 12;
            case "far" -> farMetres(sharpness(row, 1), row.in(3));
            case "far_ft" -> farMetres(sharpness(row, 1), row.in(3)) / 12;
            case "centre" -> Optics.focusCentringMetres(lens(row), SharpZone.of(row.in(1), row.in(2)));
            case "near_share" -> farField(row.in(0)).nearMetres();
            case "far_share" ->
                switch (farField(row.in(0)).far()) {
                    case FarLimit.At(double metres) -> metres;
                    case FarLimit.Endless() -> throw new AssertionError(row.id());
                };
            case "front" -> front(row, 1);
            case "rear" -> rear(row, 1);
            case "front_half" -> front(row, 0.5);
            case "rear_half" -> rear(row, 0.5);
            case "front_two" -> front(row, 2);
            case "rear_two" -> rear(row, 2);
            case "front_three" -> front(row, 3);
            case "rear_three" -> rear(row, 3);
            default -> throw new AssertionError("no law " + row.law());
        };
    }

    private static LensModel lens(OutsideRow row) {
        return LensModel.ofFocalLength(row.in(0));
    }

    private static Sharpness sharpness(OutsideRow row, double pupilRatio) {
        return new Sharpness(new LensModel(row.in(0), pupilRatio), row.in(1), row.in(2));
    }

    private static double front(OutsideRow row, double pupilRatio) {
        double focus = Optics.distanceForMagnificationMetres(lens(row), row.in(3));
        return focus - Optics.nearLimitMetres(sharpness(row, pupilRatio), focus);
    }

    private static double rear(OutsideRow row, double pupilRatio) {
        double focus = Optics.distanceForMagnificationMetres(lens(row), row.in(3));
        return farMetres(sharpness(row, pupilRatio), focus) - focus;
    }

    private static double farMetres(Sharpness sharpness, double focusMetres) {
        return switch (Optics.farLimit(sharpness, focusMetres)) {
            case FarLimit.At(double metres) -> metres;
            case FarLimit.Endless() -> throw new AssertionError("endless");
        };
    }

    /// Limits in shares of a focus that is the given part of the hyperfocal distance, where f doesn't matter.
    private static SharpZone farField(double part) {
        double f = 1e-8;
        return Optics.sharpZone(new Sharpness(LensModel.ofFocalLength(f), 1, f * f / part), 1);
    }
}
