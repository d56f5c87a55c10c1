package plumeline.render;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import plumeline.geom.Aim;
import plumeline.geom.Body;
import plumeline.geom.Order;
import plumeline.geom.Point;
import plumeline.geom.Vec;
import plumeline.optics.Layer;
import plumeline.plan.Placed;
import plumeline.sight.Outline;
import plumeline.sight.Sight;
import plumeline.stage.Scene;
import plumeline.stage.TankWalls;
import plumeline.trace.Look;

/// Each thing shows in the picture just where its outline is, but within half a pixel of it,
/// however camera and things
/// stand, hang, lean and move.
final class OutlinesTruthIT {
    private static final int PIXELS = 480 * 270;
    private static final int STEPS = 512;
    private static final int ROUND = 24;

    /// A thing flat in the picture.
    private record Flat(int index, String name, Body body, List<Outline> parts) {
        boolean covers(double x, double y) {
            return parts.stream().anyMatch(part -> isIn(part.corners(), x, y));
        }

        private static boolean isIn(List<Point> corners, double x, double y) {
            for (int i = 0; i < corners.size(); i++) {
                Point from = corners.get(i);
                Point to = corners.get((i + 1) % corners.size());
                if ((to.x() - from.x()) * (y - from.y()) - (to.y() - from.y()) * (x - from.x()) < 0) {
                    return false;
                }
            }
            return true;
        }

        /// 1 more than half a pixel inside, −1 more than that outside, 0 between.
        int side(double x, double y, double pixelX, double pixelY) {
            boolean in = covers(x, y);
            for (int i = 0; i < ROUND; i++) {
                double angle = 2 * Math.PI * i / ROUND;
                if (covers(x + 0.5 * pixelX * Math.cos(angle), y + 0.5 * pixelY * Math.sin(angle)) != in) {
                    return 0;
                }
            }
            return in ? 1 : -1;
        }
    }

    static Stream<Arguments> shots() {
        return Stream.of(
                Arguments.of("level, wide", """
                    camera: {body: wide, lens: mid, at: [30 mm, -420 mm, 150 mm], turn: -4 deg, tilt: -9 deg,
                      f_number: 8}
                    place:
                      a: {thing: can, at: [-60 mm, 10 mm]}
                      b: {thing: card, at: [-20 mm, 90 mm], turn: 33 deg}
                      c: {thing: vase, at: [80 mm, 30 mm, 40 mm], tilt: 17 deg, turn: 50 deg}
                      d: {thing: cone, at: [150 mm, 200 mm]}
                      e: {thing: tray, at: [300 mm, 60 mm], turn: 12 deg}
                    lights: {key: {light: strip, at: [300 mm, 150 mm, 300 mm], aim: a}}
                    moves: {slide: {machine: slider, by: [140 mm, -30 mm], in: 2 s}, pan: {machine: head,
                      by: -11 deg, in: 2 s}}
                    frames: 60
                    """, List.of(0.0, 0.7, 2.0)),
                Arguments.of("upright, turned table", """
                    camera: {body: full, lens: fifty, held: upright, at: [0 mm, -500 mm, 260 mm], aim: b, f_number: 4}
                    place:
                      a: {thing: vase, at: [-60 mm, 0 mm, 40 mm], tilt: -25 deg}
                      b: {thing: card, at: [90 mm, 20 mm, 50 mm], tilt: 40 deg, turn: -20 deg}
                      c: {thing: can, at: [60 mm, 120 mm, 40 mm], tilt: 90 deg, turn: 70 deg}
                    moves: {spin: {machine: plate, carries: [a, b], by: 200 deg, in: 1 s}, up: {carries: c,
                      by: [0 mm, 0 mm, 80 mm], in: 1 s}}
                    frames: 25
                    """, List.of(0.0, 0.31, 1.0)),
                Arguments.of("roll, tilt, pivot", """
                    camera: {body: four, lens: short, at: [-90 mm, -300 mm, 90 mm], turn: 12 deg, f_number: 5.6}
                    place:
                      a: {thing: can, at: [-120 mm, -40 mm]}
                      b: {thing: jar, at: [0 mm, 0 mm]}
                      c: {thing: cone, at: [20 mm, 120 mm]}
                      d: {thing: vase, at: [110 mm, 10 mm], tilt: 8 deg}
                    moves:
                      pan: {axis: pan, by: 25 deg, in: 1 s}
                      nod: {axis: tilt, by: -10 deg, in: 1 s}
                      roll: {axis: roll, by: 14 deg, in: 1 s}
                    frames: 25
                    """, List.of(0.0, 0.5, 1.0)));
    }

    static Stream<Arguments> farShots() {
        return Stream.of(
                Arguments.of("zoom and pull", """
                    camera: {body: small, lens: short, at: [200 mm, -700 mm, 350 mm], turn: -16 deg,
                      tilt: -22 deg, focus: 700 mm, f_number: 2.8}
                    place:
                      a: {thing: can, at: [-40 mm, 0 mm]}
                      b: {thing: card, at: [30 mm, 60 mm], turn: 80 deg}
                      c: {thing: tray, at: [0 mm, 250 mm, 10 mm], tilt: 3 deg}
                    moves: {zoom: {axis: zoom, by: 8 mm, in: 1 s}, pull: {axis: focus, by: -150 mm, in: 1 s}}
                    frames: 25
                    """, List.of(0.0, 0.6, 1.0)),
                Arguments.of("tank, at an angle", """
                    camera: {body: wide, lens: mid, at: [260 mm, -520 mm, 190 mm], turn: -26 deg, tilt: -4 deg,
                      f_number: 8}
                    tank: {tank: glass, at: [0 mm, 30 mm], water: 255 mm}
                    place:
                      a: {thing: can, at: [-70 mm, 10 mm, 30 mm], tilt: 14 deg, turn: 20 deg}
                      b: {thing: card, at: [20 mm, 60 mm, 10 mm], turn: -35 deg}
                      c: {thing: cone, at: [110 mm, -20 mm, 10 mm]}
                      d: {thing: vase, at: [330 mm, -260 mm]}
                    moves: {slide: {machine: slider, by: [-180 mm, 20 mm], in: 2 s}, pan: {machine: head, keeps: a}}
                    frames: 60
                    """, List.of(0.0, 1.1, 2.0)),
                Arguments.of("tank from its side, upright, rolled", """
                    camera: {body: small, lens: short, held: upright, at: [-800 mm, 10 mm, 130 mm],
                      turn: 90 deg, f_number: 8}
                    tank: {tank: low, at: [0 mm, 30 mm], water: 190 mm}
                    place:
                      a: {thing: jar, at: [-200 mm, 0 mm, 20 mm]}
                      b: {thing: vase, at: [-60 mm, 40 mm, 15 mm], tilt: -12 deg, turn: 60 deg}
                      c: {thing: card, at: [-450 mm, 90 mm], turn: 15 deg}
                    moves: {roll: {axis: roll, by: -9 deg, in: 1 s}, nod: {axis: tilt, by: 3 deg, in: 1 s}}
                    frames: 25
                    """, List.of(0.0, 1.0)),
                Arguments.of("long lens, from above", """
                    camera: {body: full, lens: long, at: [0 mm, -700 mm, 1300 mm], aim: b, f_number: 11}
                    place:
                      a: {thing: tray, at: [0 mm, 0 mm], turn: 30 deg}
                      b: {thing: vase, at: [10 mm, 0 mm, 13 mm]}
                      c: {thing: can, at: [-70 mm, 210 mm], turn: 5 deg}
                      d: {thing: cone, at: [95 mm, -30 mm, 13 mm], tilt: 180 deg}
                    lights: {disc: {light: soft, at: [460 mm, -300 mm, 700 mm], aim: a}, tube: {light: rod,
                      at: [-200 mm, 100 mm, 200 mm]}}
                    passes: {low: {camera.at: [0 mm, -900 mm, 500 mm], place.b.thing: can}}
                    frames: 5
                    """, List.of(0.0)));
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource({"shots", "farShots"})
    void things_showWhereTheirOutlinesAre(String name, String shot, List<Double> instants) {
        ShotSet set = TruthShots.of(shot);
        List<String> wrong = new ArrayList<>();
        for (double seconds : instants) {
            measure(name, set, seconds, wrong);
        }
        if (shot.contains("passes: {low")) {
            measure(name + ", pass", TruthShots.of(shot, "low"), 0, wrong);
        }
        Map<String, Integer> kinds = new TreeMap<>();
        wrong.forEach(each -> kinds.merge(each.substring(0, each.indexOf(':')), 1, Integer::sum));
        assertThat(kinds).isEmpty();
    }

    private static void measure(String name, ShotSet set, double seconds, List<String> wrong) {
        Window window = TruthShots.window(set, PIXELS);
        PartsView view = PartsView.of(set, seconds, window);
        Scene scene = set.sceneAt(seconds);
        List<Flat> flats = flats(set, scene);
        double pixelX = scene.picture().widthTangent() / window.width();
        double pixelY = scene.picture().heightTangent() / window.height();
        int[] inside = new int[flats.size()];
        int[] shown = new int[flats.size()];
        int before = wrong.size();
        int images = 0;
        Look look = set.at(seconds);
        for (int i = 0; i < window.width() * window.height(); i++) {
            int part = view.seen().get(i);
            String seen = part < 0 ? "" : view.parts().get(part).name();
            double x = (i % window.width() + 0.5 - window.width() / 2.0) * pixelX;
            double y = (window.height() / 2.0 - i / window.width() - 0.5) * pixelY;
            for (int k = 0; k < flats.size(); k++) {
                Flat flat = flats.get(k);
                int side = flat.side(x, y, pixelX, pixelY);
                inside[k] += side > 0 ? 1 : 0;
                shown[k] += seen.equals(flat.name()) ? 1 : 0;
                boolean isRight = side == 0
                        || (side < 0
                                ? !seen.equals(flat.name())
                                : seen.equals(flat.name()) || mayHide(set, scene, seen, flat));
                if (!isRight && side < 0 && isImage(set, look, x, y)) {
                    images++;
                } else if (!isRight) {
                    wrong.add("shows " + seen + ", " + flat.name() + (side > 0 ? " covers it" : " doesn't") + " at "
                            + seconds + " s: " + i % window.width() + ", " + i / window.width());
                }
            }
        }
        StringBuilder line = new StringBuilder(String.format(
                Locale.ROOT,
                "outlines | %s at %.2f s | %d x %d | wrong %d, further images %d |",
                name,
                seconds,
                window.width(),
                window.height(),
                wrong.size() - before,
                images));
        for (int k = 0; k < flats.size(); k++) {
            line.append(String.format(Locale.ROOT, " %s %d/%d", flats.get(k).name(), shown[k], inside[k]));
        }
        System.out.println(line + " | of " + set.stage().shot().placed().size() + " things");
    }

    private static boolean mayHide(ShotSet set, Scene scene, String seen, Flat flat) {
        if (set.stage().lampIndex(seen) >= 0) {
            return true;
        }
        int other = set.stage().thingIndex(seen);
        return other >= 0 && Order.isBefore(scene.aim().eye(), scene.things().get(other), flat.body());
    }

    /// Whether sight comes to what it meets another way than straight through the facing wall: over another
    /// wall, or mirrored by one or by the water.
    private static boolean isImage(ShotSet set, Look look, double x, double y) {
        if (set.stage().findTank().isEmpty()) {
            return false;
        }
        TankWalls walls = set.stage().findTank().get();
        Aim.Frame frame = look.eye().aim().frame();
        Vec way = frame.forward()
                .plus(frame.right().times(x))
                .plus(frame.up().times(y))
                .unit();
        Vec from = look.eye().aim().eye();
        double met = look.tracer().seen(look.eye(), x, y).wayMetres();
        boolean isAcross = from.y() < walls.outside().low().y();
        Vec normal = isAcross ? new Vec(0, 1, 0) : new Vec(1, 0, 0);
        double outer = (isAcross
                        ? walls.outside().low().y() - from.y()
                        : walls.outside().low().x() - from.x())
                / way.dot(normal);
        Vec glass = bent(way, normal, 1, Layer.GLASS_INDEX);
        double through = walls.paneMetres() / glass.dot(normal);
        Vec in = from.plus(way.times(outer)).plus(glass.times(through));
        boolean isWet = in.z() < walls.waterLineMetres();
        Vec inside = isWet ? bent(glass, normal, Layer.GLASS_INDEX, Layer.WATER_INDEX) : way;
        if (!walls.isOver(in.plus(inside.times(1e-6)))
                || in.z() < walls.inside().low().z()) {
            return true;
        }
        Vec low = walls.inside().low();
        Vec high = walls.inside().high();
        double leaves = Math.min(
                Math.min(
                        leaving(in.x(), inside.x(), low.x(), high.x()), leaving(in.y(), inside.y(), low.y(), high.y())),
                leaving(
                        in.z(),
                        inside.z(),
                        isWet ? low.z() : walls.waterLineMetres(),
                        isWet ? walls.waterLineMetres() : high.z()));
        return met > outer + through + leaves - 1e-6;
    }

    private static double leaving(double at, double toward, double low, double high) {
        return toward == 0 ? Double.POSITIVE_INFINITY : ((toward > 0 ? high : low) - at) / toward;
    }

    private static Vec bent(Vec way, Vec normal, double from, double to) {
        double along = way.dot(normal);
        Vec across = way.minus(normal.times(along)).times(from / to);
        return across.plus(normal.times(Math.sqrt(1 - across.dot(across))));
    }

    private static List<Flat> flats(ShotSet set, Scene scene) {
        List<Flat> flats = new ArrayList<>();
        List<Placed> placed = set.stage().shot().placed();
        for (int i = 0; i < placed.size(); i++) {
            Body body = scene.things().get(i);
            if (scene.lines().at(List.of(body)).isCovered() && Sight.leastDepthMetres(scene.view(body), body) > 0) {
                flats.add(new Flat(i, placed.get(i).name(), body, Sight.outline(scene.view(body), body, STEPS)));
            }
        }
        return flats;
    }
}
