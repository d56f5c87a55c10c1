package plumeline.render;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.function.DoubleBinaryOperator;
import org.junit.jupiter.api.Test;
import plumeline.colour.Planck;
import plumeline.colour.Primaries;
import plumeline.colour.Rgb;
import plumeline.sketch.Spot;
import plumeline.trace.MadePlate;
import plumeline.trace.Plate;

final class LevelsTest {
    private static final int WIDE = 160;
    private static final int HIGH = 90;

    private static Levels levels(Shown shown, Plate plate) {
        return Levels.of(plate, shown.stage(), shown.scene(), shown.plan());
    }

    /// A plate of daylight whose luminance gives these shares of white.
    private static Plate plate(Shown shown, DoubleBinaryOperator share) {
        double unit = 1 / shown.developing().sharePerLuminance();
        return MadePlate.of(WIDE, HIGH, (x, y) -> {
            Rgb rgb = Primaries.REC_709.toRgb(Planck.chromaticity(5600).at(unit * share.applyAsDouble(x, y)));
            return new double[] {rgb.red(), rgb.green(), rgb.blue()};
        });
    }

    private static Levels.Level level(Levels levels, String name) {
        return levels.levels().stream()
                .filter(level -> level.name().equals(name))
                .findFirst()
                .orElseThrow();
    }

    private static List<Contours.Line> lines(Levels levels, String name) {
        return levels.lines(level(levels, name));
    }

    /// A slanting ramp: the line where it passes a share is straight and known.
    @Test
    void lines_lieWhereARampPassesTheirLevel() {
        Shown shown = Shown.plain();
        Levels levels = levels(shown, plate(shown, (x, y) -> 0.01 + x * 0.0065 + y * 0.0021));
        for (String name : List.of("clips", "over", "grey", "under")) {
            double share = level(levels, name).share();
            List<Contours.Line> lines = lines(levels, name);
            assertThat(lines).as(name).hasSize(1);
            for (Spot spot : lines.getFirst().spots()) {
                if (spot.x() > 2 && spot.x() < WIDE - 2 && spot.y() > 2 && spot.y() < HIGH - 2) {
                    assertThat(spot.x()).isCloseTo((share - 0.01 - spot.y() * 0.0021) / 0.0065, within(0.1));
                }
            }
        }
    }

    /// A round hill, exponential: a closed ring, as far from its middle as the sum says.
    @Test
    void lines_roundAHill_areClosedAtTheirRadius() {
        Shown shown = Shown.plain();
        Levels levels = levels(shown, plate(shown, (x, y) -> 1.9 * Math.exp(-Math.hypot(x - 80.3, y - 44.8) / 18)));
        for (String name : List.of("clips", "grey", "under")) {
            double radius = 18 * Math.log(1.9 / level(levels, name).share());
            List<Contours.Line> lines = lines(levels, name);
            if (radius < 40) {
                assertThat(lines)
                        .as(name)
                        .singleElement()
                        .satisfies(line -> assertThat(line.isClosed()).isTrue());
            }
            for (Spot spot : lines.getFirst().spots()) {
                if (spot.x() > 2 && spot.x() < WIDE - 2 && spot.y() > 2 && spot.y() < HIGH - 2) {
                    assertThat(spot.distance(new Spot(80.3, 44.8))).isCloseTo(radius, within(0.1));
                }
            }
        }
    }

    @Test
    void ambiguousSquares_makeWholeLines() {
        Contours chequered = new Contours(3, 3, new double[] {1, 0, 1, 0, 1, 0, 1, 0, 1});
        List<Contours.Line> lines = chequered.at(0.5);
        assertThat(lines.stream().mapToInt(line -> line.spots().size() - 1).sum())
                .isEqualTo(8);
        assertThat(lines).noneMatch(Contours.Line::isClosed);
        assertThat(lines).hasSize(4);
    }

    /// The body holds 5 stops over mid grey at ISO 800; at 1600 six, as it is rated, and a stop less under it.
    @Test
    void theBodysLatitude_isWhereItClips() {
        Shown shown = Shown.of("latitude: {over: 2 stops, under: 6 stops}", "", ", iso: 1600", "");
        Levels levels = levels(shown, plate(shown, (x, y) -> 0.2));
        assertThat(level(levels, "clips").share()).isCloseTo(Developing.share(3), within(1e-9));
        assertThat(level(levels, "noise").share()).isCloseTo(Developing.share(-5), within(1e-9));
        assertThat(levels(Shown.plain(), plate(shown, (x, y) -> 0.2)).levels())
                .noneMatch(level -> level.name().equals("noise"));
    }

    @Test
    void numbers_areStopsOverMidGreyInThirds() {
        Shown shown = Shown.plain();
        double third = Developing.share(1 + 2 / 3.0);
        Levels levels = levels(shown, plate(shown, (x, y) -> Math.abs(x - 80) < 30 ? third : Developing.share(-2)));
        assertThat(levels.numbers().stream()
                        .map(number -> number.name() + " " + number.text())
                        .toList())
                .containsExactly("can +1 2/3", "table, left −2", "table, right −2", "background −2");
        Levels black = levels(shown, plate(shown, (x, y) -> 0));
        assertThat(black.numbers().getFirst().text()).isEqualTo("black");
    }

    @Test
    void greyed_isLightAndWithoutColour() {
        Shown shown = Shown.plain();
        Pixels greyed = levels(shown, plate(shown, (x, y) -> x / WIDE)).greyed();
        int dark = greyed.at(0, 10);
        int light = greyed.at(WIDE - 1, 10);
        assertThat(dark & 255).isGreaterThanOrEqualTo(89).isLessThan(120);
        assertThat(light & 255).isGreaterThan(250);
        assertThat(dark >> 16).isEqualTo(dark & 255);
    }
}
