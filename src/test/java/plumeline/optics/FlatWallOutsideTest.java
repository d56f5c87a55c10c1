package plumeline.optics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import plumeline.tidy.Outside;
import plumeline.tidy.OutsideRow;

/// Refraction at a flat wall against published worked examples and formulas.
final class FlatWallOutsideTest {
    /// The web article's eye: its nodal point is 0.8 cm behind the cornea; water 1.33.
    private static final double EYE_CENTIMETRES = 0.8;

    @Test
    @Outside(
            source = "worked examples of physics texts and an article's table, named row by row in wall.csv",
            place = "src/test/resources/outside/optics/wall.csv",
            kind = "published examples",
            printedDigits = 3)
    void everyRow_agreesWithItsSource() {
        List<OutsideRow> rows = OutsideRow.readAll("optics", "wall.csv");
        for (OutsideRow row : rows) {
            assertThat(compute(row))
                    .as(row.id() + " " + row.source())
                    .isCloseTo(row.expected(), within(row.tolerance()));
        }
        assertThat(rows).hasSize(31);
    }

    private static double compute(OutsideRow row) {
        return switch (row.law()) {
            case "water_index" -> Layer.WATER_INDEX;
            case "bend" -> bentDegrees(row.in(1), row.in(2), row.in(0));
            case "tank_depth" -> row.in(2) / new Layer(1, row.in(1)).asideMetres(slope(row.in(0)));
            case "through" -> bentDegrees(row.in(1), row.in(2), bentDegrees(1, row.in(1), row.in(0)));
            case "full_field" -> 2 * bentDegrees(1, row.in(1), row.in(0) / 2);
            case "widest_field" -> 2 * criticalDegrees(row.in(0), 1);
            case "focal_factor" -> 1 / new Layer(1, row.in(1)).shareSeen(slope(row.in(0)));
            case "apparent" -> row.in(0) - new Layer(row.in(0), row.in(1)).paraxialShiftMetres();
            case "tank_apparent" ->
                row.in(0) + row.in(1) - FlatWall.ofWater(row.in(0)).paraxialShiftMetres(row.in(1));
            case "window" -> window(row.in(0), row.in(1) + EYE_CENTIMETRES);
            case "tank_larger" -> {
                FlatWall wall = FlatWall.ofWater(row.in(1));
                double whole = row.in(0) + row.in(1) + row.in(2);
                yield whole / (whole - wall.paraxialShiftMetres(row.in(2)));
            }
            case "tank_aside" ->
                FlatWall.ofWater(row.in(1)).asideMetres(new WallDepths(row.in(0), row.in(2)), slope(row.in(3)));
            case "critical" -> criticalDegrees(row.in(0), row.in(1));
            default -> throw new AssertionError("no law " + row.law());
        };
    }

    private static double window(double waterCentimetres, double airCentimetres) {
        WallDepths depths = new WallDepths(airCentimetres, waterCentimetres);
        double apparent = new FlatWall(0, 1, 1.33).apparentMetres(depths, 0);
        return (waterCentimetres + airCentimetres) / apparent;
    }

    private static double slope(double degrees) {
        return Math.tan(Math.toRadians(degrees));
    }

    private static double bentDegrees(double from, double to, double degrees) {
        return Math.toDegrees(
                new Boundary(from, to).findBentRadians(Math.toRadians(degrees)).orElseThrow());
    }

    private static double criticalDegrees(double from, double to) {
        return Math.toDegrees(new Boundary(from, to).findCriticalRadians().orElseThrow());
    }
}
