package plumeline.keys;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import plumeline.plan.Plans;
import plumeline.solve.Solve;

/// Rows of moves, against sums by hand.
final class KeysCsvTest {
    private static final String PLAN = """
        plumeline: 1
        film: {rate: 25 fps, papers: mm}
        things: {can: {diameter: 60 mm, height: 100 mm}}
        kit:
          cameras: {main: {sensor: {width: 36 mm, height: 20.25 mm, across: 3840 px}}}
          lenses: {macro: {focal_length: 100 mm}}
          machines:
            rail: {travel: 900 mm, speed: 200 mm/s, resolution: 0.5 mm}
            head: {speed: 20 deg/s, resolution: 1 deg}
            plate: {speed: 12 rpm, resolution: 7.5 deg}
        shots:
          one:
            camera: {body: main, lens: macro, at: [0 mm, -1000 mm, 50 mm], aim: hero, rate: 100 fps}
            place: {hero: {thing: can, at: [0 mm, 0 mm]}}
            moves:
              slide: {machine: rail, by: [-600 mm, 0 mm], in: 12 s}
              pan: {machine: head, keeps: [hero]}
              turn: {machine: plate, carries: hero, by: -60 deg, in: 1 s, start: 2 s}
            speed: 400 %
            frames: 75
        """;

    /// Columns of a row after the machine's.
    private record Row(String kind, String frame, String captured, double seconds, double place, double speed) {}

    private static final KeysCsv KEYS = keys(PLAN);
    private static final List<String> LINES = text(KEYS).lines().toList();

    private static KeysCsv keys(String plan) {
        return KeysCsv.of(
                Solve.film(Plans.read(plan.getBytes(UTF_8), "plan.yaml").plan().orElseThrow()));
    }

    private static String text(KeysCsv keys) {
        StringBuilder out = new StringBuilder();
        try {
            keys.writeTo(out);
        } catch (IOException e) {
            throw new AssertionError(e);
        }
        return out.toString();
    }

    private static List<Row> rows(String head, String kind, String unit) {
        List<Row> rows = new ArrayList<>();
        for (String line : LINES) {
            String[] cells = line.split(",", -1);
            if (line.startsWith(head + ",") && cells[5].equals(kind)) {
                assertThat(cells).hasSize(12);
                assertThat(cells[11]).isEqualTo(unit);
                rows.add(new Row(
                        kind,
                        cells[6],
                        cells[7],
                        Double.parseDouble(cells[8]),
                        Double.parseDouble(cells[9]),
                        Double.parseDouble(cells[10])));
            }
        }
        return rows;
    }

    @Test
    void head_isTheColumns_andEveryRecordEndsInCrlf() {
        assertThat(LINES.getFirst())
                .isEqualTo("shot,pass,move,axis,machine,kind,frame,captured,seconds,position,speed,unit");
        String text = text(KEYS);
        assertThat(text).endsWith("\r\n");
        assertThat(text.replace("\r\n", "")).doesNotContain("\r").doesNotContain("\n");
        assertThat(KEYS.notes()).isEmpty();
    }

    /// Four times as fast as real at 25 a second: 0.16 s a screen frame, 16 captured frames at 100 a second, 8 mm at 50
    /// mm/s.
    @Test
    void frames_ofAnEvenSlide() {
        List<Row> rows = rows("one,,slide,slide,rail", "frame", "mm");
        assertThat(rows).hasSize(75);
        for (int n = 0; n < 75; n++) {
            assertThat(rows.get(n).frame()).isEqualTo(Integer.toString(n));
            assertThat(rows.get(n).captured()).isEqualTo(Integer.toString(16 * n));
            assertThat(rows.get(n).seconds()).isCloseTo(0.16 * n, within(1e-9));
            assertThat(rows.get(n).place()).isCloseTo(-8 * n, within(1e-6));
            assertThat(rows.get(n).speed()).isCloseTo(-50, within(1e-6));
        }
    }

    /// Half millimetres at 50 mm/s: one each 0.01 s, 1200 in all.
    @Test
    void steps_ofAnEvenSlide() {
        List<Row> rows = rows("one,,slide,slide,rail", "step", "mm");
        assertThat(rows).hasSize(1200);
        for (int n = 0; n < 1200; n++) {
            assertThat(rows.get(n).frame()).isEmpty();
            assertThat(rows.get(n).captured()).isEmpty();
            assertThat(rows.get(n).seconds()).isCloseTo(0.01 * (n + 1), within(1e-9));
            assertThat(rows.get(n).place()).isCloseTo(-0.5 * (n + 1), within(1e-6));
        }
    }

    /// Anticlockwise is negative; 60 deg/s from 2 s on, 7.5 deg each 0.125 s.
    @Test
    void turn_hasItsSign_andWaitsForItsStart() {
        List<Row> frames = rows("one,,turn,turntable,plate", "frame", "deg");
        assertThat(frames.get(12).place()).isZero();
        assertThat(frames.get(12).speed()).isZero();
        // Frame 15 is 2.4 s after GO.
        assertThat(frames.get(15).place()).isCloseTo(-24, within(1e-6));
        assertThat(frames.get(15).speed()).isCloseTo(-60, within(1e-6));
        assertThat(frames.get(74).place()).isCloseTo(-60, within(1e-6));
        List<Row> steps = rows("one,,turn,turntable,plate", "step", "deg");
        assertThat(steps).hasSize(8);
        for (int n = 0; n < 8; n++) {
            assertThat(steps.get(n).seconds()).isCloseTo(2 + 0.125 * (n + 1), within(1e-9));
            assertThat(steps.get(n).place()).isCloseTo(-7.5 * (n + 1), within(1e-6));
        }
    }

    /// From 1000 mm before it the lens sees the thing's axis at atan(50t/1000); its speed is 0.05/(1 + (0.05t)²).
    @Test
    void pan_followsWhatItKeeps() {
        List<Row> frames = rows("one,,pan,pan,head", "frame", "deg");
        assertThat(frames).hasSize(75);
        for (Row row : frames) {
            double u = 0.05 * row.seconds();
            assertThat(row.place()).isCloseTo(Math.toDegrees(Math.atan(u)), within(1e-6));
            assertThat(row.speed()).isCloseTo(Math.toDegrees(0.05 / (1 + u * u)), within(2e-6));
        }
        List<Row> steps = rows("one,,pan,pan,head", "step", "deg");
        // atan(0.6) is 30.96 deg.
        assertThat(steps).hasSize(30);
        for (int n = 0; n < 30; n++) {
            assertThat(steps.get(n).place()).isCloseTo(n + 1.0, within(1e-6));
            assertThat(steps.get(n).seconds()).isCloseTo(Math.tan(Math.toRadians(n + 1)) / 0.05, within(1e-6));
        }
    }

    @Test
    void machineWithoutResolution_hasFramesOnly_andThatIsSaid() {
        KeysCsv keys = keys(PLAN.replace(", resolution: 0.5 mm", ""));
        assertThat(text(keys)).doesNotContain("rail,step").contains("rail,frame", "head,step");
        assertThat(keys.notes()).containsExactly("one: slide has no step rows: write rail's resolution");
    }

    @Test
    void moreStepsThanAnyoneReads_areLeftOut() {
        KeysCsv keys = keys(PLAN.replace("resolution: 0.5 mm", "resolution: 0.0001 mm"));
        assertThat(text(keys)).doesNotContain("rail,step");
        assertThat(keys.notes()).containsExactly("one: slide has no step rows: they would be more than 2000000");
    }

    /// How far is free and no want bears on it: what follows the camera waits too.
    @Test
    void movesWithoutFigure_areLeftOut_andThatIsSaid() {
        KeysCsv keys = keys(PLAN.replace("by: [-600 mm, 0 mm]", "by: [free, 0 mm]"));
        assertThat(text(keys)).doesNotContain(",slide,").doesNotContain(",pan,").contains(",turn,");
        assertThat(keys.notes())
                .containsExactly(
                        "one: slide is left out; not known: where slide.by is set",
                        "one: pan is left out; not known: where slide.by is set");
    }

    @Test
    void passes_haveRowsEach() {
        KeysCsv keys = keys(PLAN + "    passes: {low: {moves.turn.by: 30 deg}, high: {}}\n");
        assertThat(text(keys).lines().filter(line -> line.contains(",turn,") && line.contains(",step,")))
                .hasSize(4 + 8)
                .filteredOn(line -> line.startsWith("one,low,turn,"))
                .hasSize(4)
                .last()
                .isEqualTo("one,low,turn,turntable,plate,step,,,3,30,30,deg");
    }
}
