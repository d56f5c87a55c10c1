package plumeline.render;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.util.Locale;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import plumeline.geom.Vec;
import plumeline.optics.FocusedPoint;
import plumeline.optics.Optics;
import plumeline.pace.Shift;
import plumeline.stage.Picture;
import plumeline.stage.Scene;
import plumeline.stage.Stage;
import plumeline.trace.Plate;

/// Blur discs are as wide as the lens sums have them, smears as long as wants have them.
final class BlurTruthIT {
    private static final int WIDTH = 240;

    private static final String TEXT = """
        plumeline: 1
        film: {rate: 25 fps}
        things:
          bar: {width: 30 mm, height: 400 mm, depth: 1 mm, body: opaque, finish: matte, reflects: 1 %}
          can: {diameter: 40 mm, height: 135 mm, body: opaque, finish: matte, reflects: 90 %,
            label: {width: 31.4159 mm, height: 100 mm, bottom: 20 mm, reflects: 1 %}}
        kit:
          table: {size: [10 mm, 10 mm]}
          cameras: {one: {sensor: {width: SENSOR, height: HIGH, across: 4000 px}, iso: {base: 800}
            MODES}}
          lenses: {one: {focal_length: FOCAL, pupil_ratio: RATIO}}
          lights: {dot: {disc: DOT, gives: 10 lx at 1 m}}
          tanks: {glass: {inside: [450 mm, 300 mm, 300 mm], pane: 10 mm}}
        shots:
          one:
            camera: {body: one, lens: one, f_number: STOP, CAMERA}
            SHOT
            frames: 50
        """;

    private static ShotSet set(
            String sensor,
            String high,
            String focal,
            String ratio,
            String dot,
            String stop,
            String camera,
            String shot) {
        return set("", sensor, high, focal, ratio, dot, stop, camera, shot);
    }

    private static ShotSet set(
            String modes,
            String sensor,
            String high,
            String focal,
            String ratio,
            String dot,
            String stop,
            String camera,
            String shot) {
        var plan = SetShots.plan(TEXT.replace("MODES", modes)
                .replace("SENSOR", sensor)
                .replace("HIGH", high)
                .replace("FOCAL", focal)
                .replace("RATIO", ratio)
                .replace("DOT", dot)
                .replace("STOP", stop)
                .replace("CAMERA", camera)
                .replace("SHOT", shot));
        return TruthShots.set(plan, Stage.of(plan, plan.shots().getFirst()));
    }

    @ParameterizedTest
    @CsvSource({
        "36 mm, 24 mm, 50 mm, 1, 2, 600, 1200, 0",
        "36 mm, 24 mm, 50 mm, 1, 2, 600, 450, 0",
        "36 mm, 24 mm, 50 mm, 1, 1.4, 900, 1000, 0",
        "17.3 mm, 13 mm, 25 mm, 1, 1.4, 400, 700, 0",
        "13.2 mm, 8.8 mm, 17 mm, 1, 1, 300, 420, 0",
        "36 mm, 24 mm, 100 mm, 1, 2.8, 450, 550, 0",
        "36 mm, 24 mm, 100 mm, 1, 2.8, 450, 380, 0",
        "36 mm, 24 mm, 135 mm, 1, 4, 1500, 2500, 0",
        "36 mm, 24 mm, 100 mm, 0.6, 2.8, 450, 550, 0",
        "36 mm, 24 mm, 100 mm, 1.8, 2.8, 450, 550, 0",
        "36 mm, 24 mm, 50 mm, 1, 2, 600, 750, 150",
        "36 mm, 24 mm, 50 mm, 1, 2, 900, 700, 100",
    })
    void blur_isThatOfTheLens(
            String sensor, String high, String focal, String ratio, String stop, double focus, double far, double deep)
            throws IOException {
        String tank = deep > 0
                ? "tank: {tank: glass, at: [0 mm, " + (far - deep + 160) + " mm, 900 mm], water: 260 mm}\n    "
                : "";
        ShotSet set = set(
                sensor,
                high,
                focal,
                ratio,
                "6 mm",
                stop,
                "at: [0 mm, 0 mm, 1 m], aim: ahead, focus: " + focus + " mm",
                tank + "lights: {dot: {light: dot, at: [0 mm, " + far + " mm, 1 m], turn: 180 deg}}");
        Scene scene = set.sceneAt(0);
        Picture picture = scene.picture();
        int height = (int) Math.round(WIDTH * picture.heightTangent() / picture.widthTangent());
        Plate plate = TruthShots.exposed(set, 0, 0, new Render.Quality(WIDTH, height, 256, 5), 2);
        double[] sums = new double[4];
        for (int y = 0; y < height; y++) {
            for (int x = 0; x < WIDTH; x++) {
                double light = plate.light(x, y, 1);
                double px = x + 0.5 - WIDTH / 2.0;
                double py = y + 0.5 - height / 2.0;
                sums[0] += light;
                sums[1] += light * px;
                sums[2] += light * py;
                sums[3] += light * (px * px + py * py);
            }
        }
        double square = sums[3] / sums[0] - Math.pow(sums[1] / sums[0], 2) - Math.pow(sums[2] / sums[0], 2);
        Vec place = new Vec(0, far / 1000, 1);
        double depth = scene.projection().depth(place);
        double pixel = picture.widthMetres() / WIDTH;
        double own = 0.006 / depth * picture.imageMetres() / pixel;
        double measured = Math.sqrt(8 * (square - 1 / 6.0) - own * own);
        double asked = Optics.blurDiameterMetres(
                        picture.lens(), picture.fNumber(), new FocusedPoint(picture.focusMetres(), depth))
                / pixel;
        System.out.printf(
                Locale.ROOT,
                "blur | %s f/%s P %s focus %.0f at %.0f mm%s | %.3f px, optics %.3f px, %+.2f %%%n",
                focal,
                stop,
                ratio,
                focus,
                far,
                deep > 0 ? " in water" : "",
                measured,
                asked,
                100 * (measured / asked - 1));
        assertThat(measured / asked).isBetween(0.95, 1.05);
    }

    @ParameterizedTest
    @CsvSource({
        "slide, 64, 'moves: {slide: {carries: it, by: [300 mm, 0 mm], in: 1 s, profile: even}}'",
        "slide, 2, 'moves: {slide: {carries: it, by: [300 mm, 0 mm], in: 1 s, profile: even}}'",
        "slide, 4, 'moves: {slide: {carries: it, by: [300 mm, 0 mm], in: 1 s, profile: even}}'",
        "slide, 7, 'moves: {slide: {carries: it, by: [300 mm, 0 mm], in: 1 s, profile: even}}'",
        "slide, 16, 'moves: {slide: {carries: it, by: [300 mm, 0 mm], in: 1 s, profile: even}}'",
        "slide aslant, 64, 'moves: {slide: {carries: it, by: [300 mm, 200 mm], in: 1 s, profile: even}}'",
        "slide aslant, 4, 'moves: {slide: {carries: it, by: [300 mm, 200 mm], in: 1 s, profile: even}}'",
        "camera slides, 64, 'moves: {slide: {by: [300 mm, 0 mm], in: 1 s, profile: even}}'",
        "camera slides, 4, 'moves: {slide: {by: [300 mm, 0 mm], in: 1 s, profile: even}}'",
        "pan, 64, 'moves: {pan: {axis: pan, by: 14 deg, in: 1 s, profile: even}}'",
        "pan, 4, 'moves: {pan: {axis: pan, by: 14 deg, in: 1 s, profile: even}}'",
        "slide with ramps, 64, 'moves: {slide: {carries: it, by: [300 mm, 0 mm], in: 1 s, profile: trapezoid}}'",
        "slide with ramps, 4, 'moves: {slide: {carries: it, by: [300 mm, 0 mm], in: 1 s, profile: trapezoid}}'",
        "turntable, 64, 'moves: {turn: {carries: it, by: 360 deg, in: 1 s, profile: even}}'",
    })
    void smear_isThatOfTheWant(String name, int samples, String moves) throws IOException {
        boolean isTurned = name.equals("turntable");
        String thing = isTurned ? "can" : "bar";
        double seconds = 0.4;
        ShotSet set = set(
                "36 mm",
                "24 mm",
                "100 mm",
                "1",
                "1 mm",
                "400",
                "at: [0 mm, -1.5 m, 1 m], turn: -5 deg, tilt: 0 deg, focus: 1.4 m",
                "place: {it: {thing: " + thing + ", at: [0 mm, 0 mm, 940 mm]" + (isTurned ? ", turn: -102.6 deg" : "")
                        + "}}\n    " + moves);
        Scene scene = set.sceneAt(seconds);
        Scene later = set.sceneAt(seconds + set.shutterSeconds());
        int width = 960;
        int height = 120;
        double asked = Shift.ofThing(scene, later, 0) * width / 4000;
        Plate plate =
                TruthShots.exposed(set, seconds, set.shutterSeconds(), new Render.Quality(width, 640, samples, 5), 2);
        double[] profile = new double[width];
        for (int x = 0; x < width; x++) {
            for (int y = 320 - height / 2; y < 320 + height / 2; y++) {
                profile[x] += plate.light(x, y, 1);
            }
        }
        // The edge in the middle, or the left one of what passes: where the profile falls or rises first.
        double middle = scene.view(scene.things().get(0))
                                .project(scene.things().get(0).middle())
                                .x()
                        / scene.picture().widthTangent()
                        * width
                + width / 2.0;
        double edge = isTurned
                ? 0
                : 15e-3 / 1.5 * scene.picture().imageMetres() / scene.picture().widthMetres() * width;
        int from = (int) Math.max(0, middle - edge - 2 * asked - 12);
        int to = Math.min(width, (int) (middle - edge + 2 * asked + 12));
        double measured = 2 * Math.abs(crossing(profile, from, to, 0.75) - crossing(profile, from, to, 0.25));
        System.out.printf(
                Locale.ROOT,
                "smear | %s, %d rays | %.3f px, want %.3f px, %+.2f %%%n",
                name,
                samples,
                measured,
                asked,
                100 * (measured / asked - 1));
        assertThat(measured / asked).isBetween(0.97, 1.03);
    }

    /// An upright edge that slides leans by what it goes on while the sensor is read, and is as smeared as before.
    @ParameterizedTest
    @CsvSource({
        "20 ms, 4, 180 deg, 300 mm",
        "20 ms, 64, 180 deg, 300 mm",
        "12 ms, 4, 180 deg, -300 mm",
        "30 ms, 16, 90 deg, 200 mm",
        "8 ms, 4, 1 ms, 300 mm",
        "15 ms, 3, 4 ms, -250 mm",
    })
    void readout_makesUprightEdgesLean(String readout, int samples, String shutter, String by) throws IOException {
        ShotSet set = set(
                ", modes: [{rate: 25 fps, readout: " + readout + "}]",
                "36 mm",
                "24 mm",
                "100 mm",
                "1",
                "1 mm",
                "400, shutter: " + shutter,
                "at: [0 mm, -1.5 m, 1 m], turn: 0 deg, tilt: 0 deg, focus: 1.5 m",
                "place: {it: {thing: bar, at: [0 mm, 0 mm, 800 mm]}}\n    moves: {slide: {carries: it, by: [" + by
                        + ", 0 mm], in: 1 s, profile: even}}");
        double seconds = 0.4;
        int width = 960;
        int height = 640;
        Plate plate = TruthShots.exposed(
                set, seconds, set.shutterSeconds(), new Render.Quality(width, height, samples, 5), 2);
        Scene scene = set.sceneAt(seconds);
        double pixels = width / scene.picture().widthTangent() / 1.5;
        double toRight = scene.things().get(0).middle().x() + 0.015;
        double metresPerSecond = Double.parseDouble(by.split(" ")[0]) / 1000;
        double asked = metresPerSecond * set.readoutSeconds() * pixels;
        int rows = 160;
        double[] edges = new double[2];
        for (int i = 0; i < 2; i++) {
            double[] profile = new double[width];
            int top = i == 0 ? 0 : height - rows;
            for (int x = 0; x < width; x++) {
                for (int y = top; y < top + rows; y++) {
                    profile[x] += plate.light(x, y, 1);
                }
            }
            int near = (int) (width / 2.0 + toRight * pixels + asked);
            edges[i] = crossing(profile, near - 30, near + 30, 0.5);
        }
        double measured = (edges[1] - edges[0]) * height / (height - rows);
        double upper = width / 2.0
                + (toRight + metresPerSecond * (set.shutterSeconds() / 2 + set.readoutSeconds() * rows / 2 / height))
                        * pixels;
        System.out.printf(
                Locale.ROOT,
                "lean | %s, %d rays, %s, %s in 1 s | %.3f px, speed times readout %.3f px, %+.2f %%; its upper end"
                        + " off by %+.3f px%n",
                readout,
                samples,
                shutter,
                by,
                measured,
                asked,
                100 * (measured / asked - 1),
                edges[0] + 0.5 - upper);
        assertThat(measured / asked).isBetween(0.97, 1.03);
        assertThat(edges[0] + 0.5).isBetween(upper - 0.25, upper + 0.25);
    }

    /// Where a slope first comes to a share of its way from its foot to its top.
    private static double crossing(double[] profile, int from, int to, double share) {
        double foot = 0;
        double top = 0;
        for (int i = 0; i < 6; i++) {
            foot += profile[from + i] / 6;
            top += profile[to - 1 - i] / 6;
        }
        double level = foot + share * (top - foot);
        for (int x = from + 1; x < to; x++) {
            if ((profile[x - 1] - level) * (profile[x] - level) <= 0) {
                return x - 1 + (level - profile[x - 1]) / (profile[x] - profile[x - 1]);
            }
        }
        return Double.NaN;
    }
}
