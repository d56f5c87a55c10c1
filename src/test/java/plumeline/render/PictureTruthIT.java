package plumeline.render;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import plumeline.geom.Body;
import plumeline.geom.Point;
import plumeline.geom.Vec;
import plumeline.light.Patch;
import plumeline.lit.Lighting;
import plumeline.lit.Reflections;
import plumeline.plan.Plan;
import plumeline.sight.Sight;
import plumeline.stage.Frame;
import plumeline.stage.Scene;
import plumeline.stage.Stage;
import plumeline.trace.Exposing;
import plumeline.trace.Instants;
import plumeline.trace.Look;
import plumeline.trace.Plate;
import plumeline.trace.Tracer;
import plumeline.want.Moments;
import plumeline.want.Recall;
import plumeline.want.Want;
import plumeline.want.Wants;

/// Stripes, exposure, an even world, and the same picture from the same seed.
final class PictureTruthIT {
    private static final String MOVING = """
        camera: {body: full, lens: fifty, at: [0 mm, -500 mm, 160 mm], aim: a, f_number: 2.8, shutter: 180 deg}
        place: {a: {thing: vase, at: [0 mm, 0 mm]}, b: {thing: jar, at: [80 mm, 30 mm]}, c: {thing: can,
          at: [-70 mm, 20 mm]}}
        lights: {key: {light: strip, at: [400 mm, -200 mm, 500 mm], aim: a}, fill: {light: bounce,
          at: [-300 mm, -100 mm, 200 mm], aim: a}}
        moves: {slide: {machine: slider, by: [140 mm, -30 mm], in: 1 s}}
        frames: 25
        """;

    private static double[] lights(Plate plate) {
        double[] lights = new double[3 * plate.width() * plate.height()];
        for (int i = 0; i < lights.length; i++) {
            lights[i] = plate.light(i / 3 % plate.width(), i / 3 / plate.width(), i % 3);
        }
        return lights;
    }

    @Test
    void plates_areTheSameByAnyNumberOfThreads() throws IOException {
        var quality = new Render.Quality(150, 100, 6, 11);
        double[] one = lights(TruthShots.exposed(TruthShots.of(MOVING), 0.3, 0.02, quality, 1));
        for (int threads = 2; threads <= 3; threads++) {
            assertThat(lights(TruthShots.exposed(TruthShots.of(MOVING), 0.3, 0.02, quality, threads)))
                    .isEqualTo(one);
        }
        assertThat(lights(TruthShots.exposed(TruthShots.of(MOVING), 0.3, 0.02, new Render.Quality(150, 100, 6, 12), 2)))
                .isNotEqualTo(one);
        ShotSet set = TruthShots.of(MOVING);
        Window window = new Window(Frame.WHOLE, 150, 100);
        Instants looks = Render.instants(set, 0.3, 0.02, 6, window);
        Plate plate = new Plate(150, 100);
        for (int from = 0; from < 6; from += 2) {
            for (int left = 0; left < 150; left += 50) {
                Exposing.expose(looks, plate, new Exposing.Tile(left, 0, 50, 100), new Exposing.Rays(from, 2, 6, 11));
            }
        }
        assertThat(lights(plate)).isEqualTo(one);
        System.out.println("same | threads 1, 2, 3, other tiles and three goes | identical; another seed differs");
    }

    @ParameterizedTest
    @CsvSource({
        "strip, 400, -200, 500, 0",
        "strip, -500, 100, 480, 0",
        "strip, 250, -300, 470, 0",
        "strip, 120, -500, 460, 30",
        "soft, -350, -250, 300, 40",
        "rod, 300, -100, 120, 0",
        "rod, -450, 200, 110, 0",
    })
    void stripes_areWhereTheLightRoomHasThem(String lamp, double x, double y, double z, double camera) {
        String text = "camera: {body: wide, lens: fifty, at: [" + camera + " mm, -600 mm, " + (67.5 + camera)
                + " mm], aim: a, f_number: 8}\nplace: {a: {thing: can, at: [0 mm, 0 mm]}}\nlights: {key: {light: "
                + lamp + ", at: [" + x + " mm, " + y + " mm, " + z + " mm], aim: a}}\nframes: 5";
        ShotSet set = TruthShots.of(text);
        Scene scene = set.sceneAt(0);
        Body body = scene.things().get(0);
        var extent = Sight.extent(scene.view(body), body);
        Look look = set.at(0);
        var seen = (Reflections.Seen) Reflections.of(set.stage(), scene, 0, 0.01, 0.125);
        double worst = 0;
        int edges = 0;
        for (Reflections.Row row : seen.lamps().get(0)) {
            for (Reflections.Stretch stretch : row.stretches()) {
                for (int end = -1; end <= 1; end += 2) {
                    Vec place = body.place(end < 0 ? stretch.from() : stretch.to());
                    worst = Math.max(worst, offShare(look, scene.view(body).project(place), extent.width()));
                    edges++;
                }
            }
        }
        System.out.printf(
                Locale.ROOT,
                "stripe | %s %.0f, %.0f, %.0f | %d edges, worst %.3f %% of the width%n",
                lamp,
                x,
                y,
                z,
                edges,
                100 * worst);
        assertThat(edges).isGreaterThan(0);
        assertThat(worst).isLessThan(0.01);
    }

    /// How far from a place the edge of what is mirrored of the lamp is,
    /// share of a width: the smallest circle round it
    /// on which some shows and some doesn't.
    private static double offShare(Look look, Point at, double width) {
        for (int i = 1; i <= 100; i++) {
            double out = i * 2e-4 * width;
            int shown = 0;
            for (int turn = 0; turn < 16; turn++) {
                Tracer.Seen sight = look.tracer()
                        .seen(
                                look.eye(),
                                at.x() + out * Math.cos(turn * Math.PI / 8),
                                at.y() + out * Math.sin(turn * Math.PI / 8));
                shown += sight.part() >= 0 && sight.mirrored() == -2 ? 1 : 0;
            }
            if (shown > 0 && shown < 16) {
                return i * 2e-4;
            }
        }
        return 1;
    }

    @ParameterizedTest
    @CsvSource({"matte, 100 %, opaque", "gloss, 100 %, opaque", "gloss, 100 %, clear"})
    void evenWorld_isEven(String finish, String reflects, String body) throws IOException {
        String text = """
            plumeline: 1
            film: {rate: 25 fps}
            things:
              vase: {profile: [[0 mm, 18 mm], [14 mm, 31 mm], [60 mm, 34 mm], [95 mm, 25 mm]],
                body: BODY, finish: FINISH, reflects: REFLECTS, closed: yes, wall: {thickness: 3 mm,
                  index: 1.5}, contents: {volume: 100 ml, index: 1.36}}
            kit:
              table: {size: [1 mm, 1 mm]}
              cameras: {one: {sensor: {width: 36 mm, height: 24 mm, across: 4000 px}, iso: {base: 800}}}
              lenses: {one: {focal_length: 50 mm}}
            shots:
              one:
                camera: {body: one, lens: one, at: [0 mm, -300 mm, 1 m], aim: a, f_number: 8}
                place: {a: {thing: vase, at: [0 mm, 0 mm, 900 mm], tilt: 20 deg}}
                frames: 5
            """;
        Plan plan = SetShots.plan(
                text.replace("BODY", body).replace("FINISH", finish).replace("REFLECTS", reflects));
        ShotSet set = TruthShots.set(plan, Stage.of(plan, plan.shots().getFirst()));
        Plate plate = TruthShots.exposed(set, 0, 0, new Render.Quality(60, 40, 256, 5), 2);
        double[] surround = {
            set.worldAt(0).surround().red(),
            set.worldAt(0).surround().green(),
            set.worldAt(0).surround().blue()
        };
        double least = 2;
        double most = 0;
        double mean = 0;
        int count = 0;
        Look look = set.at(0);
        for (int y = 0; y < 40; y++) {
            for (int x = 0; x < 60; x++) {
                Tracer.Seen seen = look.tracer()
                        .seen(
                                look.eye(),
                                ((x + 0.5) / 60 - 0.5) * look.eye().widthTangent(),
                                (0.5 - (y + 0.5) / 40) * look.eye().heightTangent());
                if (seen.part() >= 0) {
                    double share = plate.light(x, y, 1) / surround[1];
                    least = Math.min(least, share);
                    most = Math.max(most, share);
                    mean += share;
                    count++;
                }
            }
        }
        System.out.printf(
                Locale.ROOT,
                "even world | %s %s %s | mean %.4f, least %.4f, most %.4f of %d pixels%n",
                finish,
                reflects,
                body,
                mean / count,
                least,
                most,
                count);
        assertThat(mean / count).isEqualTo(1, within(0.01));
    }

    @ParameterizedTest
    @CsvSource({
        "wide, fifty, 5.6, -700, 1",
        "full, mid, 11, -400, 1",
        "small, short, 2.8, -250, 0.35",
        "full, deep, 8, -330, 1",
        "four, long, 4, -1500, 2.5"
    })
    void midGrey_isMidGrey(String body, String lens, String stop, double away, double over) throws IOException {
        String text = """
            camera: {body: BODY, lens: LENS, at: [0 mm, AWAY mm, 600 mm], aim: a, f_number: STOP, shutter: 172.8 deg}
            place: {a: {thing: grey, at: [0 mm, 0 mm, 545 mm]}}
            lights: {key: {light: LAMP, at: [300 mm, -900 mm, 900 mm], aim: a, level: LEVEL}}
            frames: 5
            """;
        for (String lamp : List.of("spot", "soft", "strip")) {
            String shot = text.replace("BODY", body)
                    .replace("LENS", lens)
                    .replace("AWAY", "" + away)
                    .replace("STOP", stop)
                    .replace("LAMP", lamp);
            ShotSet full = grey(shot.replace("LEVEL", "100 %"), "1 lx");
            Patch patch = new Patch(new Vec(0, -0.012, 0.6), new Vec(0, -1, 0));
            double lux = new Lighting(
                            full.stage().shot(), full.sceneAt(0), full.stage().findTank())
                    .light(patch)
                    .lux();
            double needed = full.developing(0).setting().neededLux();
            ShotSet set =
                    grey(shot.replace("LEVEL", "100 %"), String.format(Locale.ROOT, "%.9f lx", over * needed / lux));
            Plate plate = TruthShots.exposed(set, 0, 0, new Render.Quality(48, 28, 16, 5), 2);
            Pixels pixels = Develop.of(plate, set.developing(0));
            int got = pixels.packed()[14 * 48 + 24];
            int want = ScreenScale.step(0.157 * over);
            double share = plate.light(24, 14, 1)
                    * set.developing(0).sharePerLuminance()
                    * set.developing(0).gains().green();
            System.out.printf(
                    Locale.ROOT,
                    "exposure | %s %s f/%s, %s, %.2f of the need | 8 bit %06x, wanted %02x; %+.4f stops%n",
                    body,
                    lens,
                    stop,
                    lamp,
                    over,
                    got,
                    want,
                    Math.log(share / 0.157 / over) / Math.log(2));
            for (int shift = 0; shift <= 16; shift += 8) {
                assertThat((got >> shift) & 255).isCloseTo(want, within(1));
            }
        }
    }

    private static ShotSet grey(String shot, String gives) {
        Plan plan = SetShots.plan(TruthShots.text(shot)
                .replace(
                        "things:\n",
                        "things:\n  grey: {width: 70 mm, height: 110 mm, depth: 24 mm, body: opaque, "
                                + "finish: matte, reflects: 15.7 %}\n")
                .replace("gives: 3000 lx", "gives: " + gives)
                .replace("gives: 1500 lx", "gives: " + gives)
                .replace("gives: 900 lx", "gives: " + gives));
        return TruthShots.set(plan, Stage.of(plan, plan.shots().getFirst()));
    }

    @ParameterizedTest
    @CsvSource({"mid, -30, 0.0", "fifty, 0, 0.0", "fifty, 40, 0.4", "long, 0, 0.0", "short, 25, 0.2"})
    void hidden_showsNoPixel(String lens, double camera, double seconds) {
        String text = """
            camera: {body: wide, lens: LENS, at: [CAMERA mm, -600 mm, 150 mm], aim: a, f_number: 8}
            place: {a: {thing: can, at: [0 mm, 0 mm]}, b: {thing: post, at: [BX mm, 90 mm]}, c: {thing: post,
              at: [CX mm, 200 mm]}}
            moves: {slide: {by: [4 mm, 0 mm], in: 1 s}}
            wants: [{hidden: [b, c], behind: a}]
            frames: 25
            """;
        double slope = -camera / 600;
        String shot = text.replace("LENS", lens)
                .replace("CAMERA", "" + camera)
                .replace("BX", String.format(Locale.ROOT, "%.3f", slope * 90))
                .replace("CX", String.format(Locale.ROOT, "%.3f", slope * 200));
        Plan plan = SetShots.plan(TruthShots.text(shot)
                .replace("things:\n", "things:\n  post: {diameter: 56 mm, height: 100 mm, body: opaque}\n"));
        ShotSet set = TruthShots.set(plan, Stage.of(plan, plan.shots().getFirst()));
        double margin = margin(plan, set, set.stage().retime().frameAt(seconds, 25.0));
        Window window = TruthShots.window(set, 4 * 480 * 270);
        PartsView view = PartsView.of(set, seconds, window);
        int shown = view.parts().stream()
                .filter(part -> part.name().equals("b") || part.name().equals("c"))
                .mapToInt(PartsView.Named::pixels)
                .sum();
        System.out.printf(
                Locale.ROOT,
                "hidden | %s, camera at %.0f mm, %.1f s | margin %.4f, pixels shown of hidden things %d%n",
                lens,
                camera,
                seconds,
                margin,
                shown);
        assertThat(margin).isPositive();
        assertThat(shown).isZero();
    }

    @ParameterizedTest
    @CsvSource({"strip, -0.0265", "soft, -0.0265", "hot, -0.0265", "rod, -0.0265"})
    void lit_isAsThePictureIs(String lamp, double front) throws IOException {
        compareLit(lamp, front, "");
    }

    /// In the water of a tank, seen through its wall. What is lit through one is compared place by place in
    /// [TankTruthIT].
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "strip|-0.0265|tank: {tank: glass, at: [0 mm, 0 mm], water: 260 mm}",
                "soft|-0.0265|tank: {tank: glass, at: [60 mm, 50 mm], water: 230 mm}",
                "rod|-0.0265|tank: {tank: low, at: [-40 mm, 0 mm], water: 180 mm}",
            })
    void litInATank_isAsThePictureIs(String lamp, double front, String tank) throws IOException {
        compareLit(lamp, front, tank);
    }

    private static void compareLit(String lamp, double front, String tank) throws IOException {
        String shot = """
            camera: {body: full, lens: mid, at: [0 mm, -600 mm, 88 mm], aim: a, f_number: 5.6, shutter: 180 deg}
            place: {a: {thing: tin, at: [0 mm, 0 mm, 20 mm]}}
            lights: {key: {light: LAMP, at: [350 mm, -600 mm, 500 mm], aim: a, loss: 1 stops}}
            wants: [{lit: a, part: middle, within: 9 stops}]
            frames: 5
            """.replace("LAMP", lamp) + tank;
        Plan plan = SetShots.plan(TruthShots.text(shot)
                .replace(
                        "things:\n",
                        "things:\n  tin: {diameter: 53 mm, height: 135 mm, body: opaque, finish: matte, "
                                + "reflects: 18 %}\n"));
        ShotSet set = TruthShots.set(plan, Stage.of(plan, plan.shots().getFirst()));
        double margin = margin(plan, set, 0);
        Plate plate = TruthShots.exposed(set, 0, 0, new Render.Quality(241, 161, 64, 5), 2);
        Scene scene = set.sceneAt(0);
        Body body = scene.things().get(0);
        Point at = scene.view(body).project(new Vec(0, front, 0.0875));
        int x = (int) ((at.x() / scene.picture().widthTangent() + 0.5) * 241);
        int y = (int) ((0.5 - at.y() / scene.picture().heightTangent()) * 161);
        double share = plate.light(x, y, 1)
                * set.developing(0).sharePerLuminance()
                * set.developing(0).gains().green();
        double over = Math.log(share / 0.18) / Math.log(2);
        System.out.printf(
                Locale.ROOT,
                "lit | %s %s | want |%.3f| stops off, picture %+.3f stops%n",
                lamp,
                tank,
                9 - margin,
                over);
        assertThat(Math.abs(over)).isEqualTo(9 - margin, within(0.05));
    }

    private static double margin(Plan plan, ShotSet set, double frame) {
        Stage stage = set.stage();
        Want want = Wants.of(stage.shot().wants().getFirst(), plan, stage, (_, _, _) -> Optional.empty());
        var moments = new Moments(stage, stage.startValues(), List.of(frame), new Recall());
        return want.margin(want.parts(moments));
    }
}
