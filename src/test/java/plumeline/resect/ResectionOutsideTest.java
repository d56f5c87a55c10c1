package plumeline.resect;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.io.InputStream;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import org.junit.jupiter.api.Test;
import plumeline.plan.Plan;
import plumeline.plan.Plans;
import plumeline.stage.Frame;
import plumeline.stage.Stage;
import plumeline.tidy.Outside;

/// Where a camera stood, against a textbook's worked example of a single photograph, and a general-purpose library.
final class ResectionOutsideTest {
    private static final String[] PLACES = {
        "top.front_left", "top.front_right", "top.back_left", "top.back_right", "base.front_left", "base.front_right"
    };

    /// Four control points from the air: picture x, y in mm; X, Y, Z on the ground in m.
    private static final double[][] CONTROL = {
        {-86.15, -68.99, 36589.41, 25273.32, 2195.17},
        {-53.40, 82.21, 37631.08, 31324.51, 728.69},
        {-14.78, -76.63, 39100.97, 24934.98, 2386.50},
        {10.46, 64.43, 40426.54, 30319.81, 757.31}
    };

    /// The example's ground at 1 : 1000, looked at level: our x, y, z are its X, −Z, Y; a corner of a tiny box is each
    /// control point. Clicks are as sure as the example finds its picture points to be, 0.00726 mm at 100 px a mm.
    @Test
    @Outside(
            source = "Photogrammetry, Wuhan University's textbook, worked resection with f = 153.24 mm",
            place = "four control points, in many published exercises; solution from memory, recomputed",
            kind = "worked example",
            printedDigits = 7)
    void camera_ofTheTextbooksPhotograph_standsWhereItSays() {
        StringBuilder text = new StringBuilder("""
            plumeline: 1
            film: {rate: 24 fps}
            things: {dot: {width: 1 mm, depth: 1 mm, height: 1 mm}}
            kit:
              cameras: {air: {sensor: {width: 240 mm, height: 240 mm, across: 24000 px}}}
              lenses: {wide: {focal_length: 153.24 mm}}
            shots:
              one:
                camera: {body: air, lens: wide, at: [38437 mm ± 5 m, -7570 mm ± 5 m, 3963 mm ± 5 m], aim: ahead,
                  focus: 100000 m ± 0.001 m}
                place:
            """);
        List<Resection.Click> clicks = new ArrayList<>();
        for (int i = 0; i < CONTROL.length; i++) {
            double[] row = CONTROL[i];
            text.append(String.format(
                    Locale.ROOT,
                    "      p%d: {thing: dot, at: [%.2f mm ± 0.0001 mm, %.2f mm ± 0.0001 mm, %.2f mm ± 0.0001 mm]}%n",
                    i,
                    row[2] + 0.5,
                    -row[4] + 0.5,
                    row[3] - 24000));
            clicks.add(new Resection.Click("p" + i + ".base.front_left", 12000 + 100 * row[0], 12000 - 100 * row[1]));
        }
        Plan plan =
                Plans.read(text.toString().getBytes(UTF_8), "air.yaml").plan().orElseThrow();
        Stage stage = Stage.of(plan, plan.shots().getFirst());
        Still still = new Still(24000, 24000, "", Frame.WHOLE);
        StillView view = StillView.of(stage, stage.startValues(), 0, still);
        Allowance allowance = new Allowance(0.726 * Normal.HALF_95, Math.toRadians(20), Math.toRadians(20), 0, 0);
        Findings found = Sets.find(view, clicks, allowance);
        List<double[]> expected =
                List.of(new double[] {39795.45 - 38437, 1.107}, new double[] {-7572.69 + 7570, 0.488}, new double[] {
                    27476.46 - 24000 - 3963, 1.249
                });
        int compared = 0;
        for (int i = 0; i < expected.size(); i++) {
            Findings.Off off = found.offs().get(i);
            assertThat(off.offSi() * 1e3).as(off.sought().name()).isCloseTo(expected.get(i)[0], within(0.03));
            assertThat(off.sigmaSi() * 1e3).as(off.sought().name()).isCloseTo(expected.get(i)[1], within(0.01));
            compared++;
        }
        assertThat(compared).isEqualTo(3);
    }

    @Test
    @Outside(
            source = "OpenCV 5.0.0, solvePnP and solvePnPRefineLM",
            place = "24 made-up cameras before three boxes",
            kind = "reference library",
            printedDigits = 7)
    void camera_beforeThingsHeldAtTheirMarks_isTheLibrarys() throws IOException {
        Plan plan = Sets.plan(
                "camera: {body: main, lens: fifty, at: [0 mm ± 2 m, -900 mm ± 2 m, 160 mm ± 2 m], aim: ahead,"
                        + " focus: 900 mm ± 0.000001 mm}",
                "place:",
                box("first", 0, 0, 0),
                box("second", -130, 160, 20),
                box("third", 120, 50, -35));
        Stage stage = Stage.of(plan, plan.shots().getFirst());
        StillView view = StillView.of(stage, stage.startValues(), 0, Sets.WHOLE);
        Allowance allowance = new Allowance(2, 3, 3, 0, 0);
        int compared = 0;
        for (String line : lines()) {
            double[] row = Arrays.stream(line.split(","))
                    .mapToDouble(Double::parseDouble)
                    .toArray();
            List<Resection.Click> clicks = new ArrayList<>();
            for (int i = 0; i < 18; i++) {
                String name = List.of("first", "second", "third").get(i / 6) + "." + PLACES[i % 6];
                clicks.add(new Resection.Click(name, row[3 + 2 * i], row[4 + 2 * i]));
            }
            Findings found = Sets.find(view, clicks, allowance);
            double[] marks = {0, -900, 160};
            for (int i = 0; i < 3; i++) {
                assertThat(marks[i] + found.offs().get(i).offSi() * 1e3)
                        .as(line.substring(0, 30) + " " + i)
                        .isCloseTo(row[i], within(0.01));
                compared++;
            }
        }
        assertThat(compared).isEqualTo(72);
    }

    private static String box(String name, int x, int y, int turn) {
        return String.format(
                Locale.ROOT,
                "  %s: {thing: box, at: [%d mm ± 0.00001 mm, %d mm ± 0.00001 mm], turn: %d deg ± 0.000001 deg}",
                name,
                x,
                y,
                turn);
    }

    private static List<String> lines() throws IOException {
        try (InputStream in =
                Objects.requireNonNull(ResectionOutsideTest.class.getResourceAsStream("/outside/resect/pose.csv"))) {
            return new String(in.readAllBytes(), UTF_8)
                    .lines()
                    .filter(line -> !line.startsWith("#"))
                    .toList();
        }
    }
}
