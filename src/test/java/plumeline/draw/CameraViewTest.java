package plumeline.draw;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import plumeline.sketch.Drawing;
import plumeline.solve.FilmAnswer;

final class CameraViewTest {
    /// A lens of 100 mm at f/8 on 10 µm pixels, focused at 1 m, level at half a can's height.
    private static final String PLAN = """
            plumeline: 1
            film: {title: Views, rate: 24 fps, papers: mm}
            deliver: {wide: {ratio: "16:9", size: [3840 px, 2160 px]}}
            things: {can: {diameter: 60 mm, height: 100 mm, body: opaque}}
            kit:
              cameras: {main: {sensor: {width: 36 mm, height: 20.25 mm, across: 3600 px}}}
              lenses: {macro: {focal_length: 100 mm}}
              tanks: {glass: {inside: [100 mm, 100 mm, 100 mm], pane: 8 mm}}
            shots:
              one:
                camera: {body: main, lens: macro, at: [0 mm, 0 mm, 50 mm], aim: ahead, focus: 1000 mm, f_number: 8}
                place: {can: {thing: can, at: [0 mm, 1000 mm]}}
                frames: 48
                wants: [{fills: can, height: 40 %}]
            """;

    private static String view(String text, Moment moment) {
        FilmAnswer film = Made.film(text);
        return Drawings.cameraView(film.plan(), Made.shot(film, "one"), moment).toSvg();
    }

    /// Limits by the usual sums with H = f²/(N·c) + f (from memory of any text on depth of field; pupil ratio 1):
    /// near = s(H − f)/(H + s − 2f), far = s(H − f)/(H − s), mm.
    private static double[] limits(double blurMillimetres) {
        double f = 100;
        double s = 1000;
        double h = f * f / (8 * blurMillimetres) + f;
        return new double[] {s * (h - f) / (h + s - 2 * f), s * (h - f) / (h - s)};
    }

    private static String at(double yMillimetres, String wants) {
        return PLAN.replace("at: [0 mm, 1000 mm]", "at: [0 mm, " + yMillimetres + " mm]")
                .replace("[{fills: can, height: 40 %}]", wants);
    }

    /// A can of radius 30 mm: its nearest place is 30 mm before its axis, its outline d − r²/d deep.
    @ParameterizedTest
    @CsvSource({"2, '[{fills: can, height: 40 %}]'", "6, '[{sharp: can, sharp_to: 6 px}]'"})
    void aThing_isNamedSoftExactlyWhereTheLimitsSaySo(double pixels, String wants) {
        double[] limits = limits(0.01 * pixels);
        double nearEdge = limits[0] + 30;
        double farEdge = limits[1] / 2 + Math.sqrt(limits[1] * limits[1] / 4 + 900);
        double wholeNear = limits[0] / 2 + Math.sqrt(limits[0] * limits[0] / 4 + 900);
        double wholeFar = limits[1] + 30;
        double hair = 0.01;
        if (pixels > 2) {
            assertThat(view(at(1000, wants), Moment.START)).contains(">can<").doesNotContain("soft");
        }
        assertThat(view(at(nearEdge - hair, wants), Moment.START)).contains("front edge");
        assertThat(view(at(nearEdge + hair, wants), Moment.START)).doesNotContain("front edge");
        assertThat(view(at(farEdge + hair, wants), Moment.START)).contains("outline soft");
        assertThat(view(at(farEdge - hair, wants), Moment.START)).doesNotContain("outline");
        assertThat(view(at(wholeNear - hair, wants), Moment.START)).contains(">can (soft)<");
        assertThat(view(at(wholeNear + hair, wants), Moment.START)).doesNotContain(">can (soft)<");
        assertThat(view(at(wholeFar + hair, wants), Moment.START)).contains(">can (soft)<");
        assertThat(view(at(wholeFar - hair, wants), Moment.START)).doesNotContain(">can (soft)<");
    }

    @Test
    void whatIsSoft_isHatchedAndNothingElse() {
        String sharp = "[{sharp: can, sharp_to: 8 px}]";
        assertThat(hatching(view(at(1000, sharp), Moment.START))).isEmpty();
        String all = hatching(view(at(1200, "[{fills: can, height: 40 %}]"), Moment.START));
        String front = hatching(view(at(1000, "[{fills: can, height: 40 %}]"), Moment.START));
        assertThat(all).hasSizeGreaterThan(200);
        // At 2 px the near limit is 986.8 mm: of a can at 1 m the places less than 26.1° off its front are soft, less
        // than half of its width.
        double[] limits = limits(0.02);
        double halfWidth = 30 * Math.sin(Math.acos((1000 - limits[0]) / 30)) / limits[0];
        double[] reach = reach(front);
        // 36 mm behind 100 mm of focal length focused at 1 m show on 341 px: X·(1000/9)/36 of them.
        double pixels = halfWidth * (1000.0 / 9) / 36 * 341;
        assertThat(reach[1] - reach[0]).isBetween(2 * pixels - 6, 2 * pixels + 1);
    }

    private static String hatching(String svg) {
        var groups = SvgReader.parse(svg).getElementsByTagName("path");
        for (int i = 0; i < groups.getLength(); i++) {
            Element path = (Element) groups.item(i);
            boolean isOfCan =
                    ((Element) path.getParentNode()).getAttribute("id").equals("one.view.start.thing.can");
            if (isOfCan && path.getAttribute("stroke-width").equals("0.4")) {
                return path.getAttribute("d");
            }
        }
        return "";
    }

    private static double[] reach(String way) {
        double least = 1e9;
        double most = -1e9;
        for (String part : way.split("[ML]")) {
            if (!part.isBlank()) {
                double x = Double.parseDouble(part.split(" ")[0]);
                least = Math.min(least, x);
                most = Math.max(most, x);
            }
        }
        return new double[] {least, most};
    }

    @Test
    void anyFrame_isDrawnLikeTheNamedOnes() {
        FilmAnswer film = Made.film(Made.text());
        var reveal = Made.shot(film, "reveal");
        long frames = reveal.posed().stages().getFirst().stage().frames();
        Drawing end = Drawings.cameraView(film.plan(), reveal, Moment.END);
        Drawing same = Drawings.cameraView(film.plan(), reveal, Moment.atFrame(frames - 1));
        assertThat(end.id()).isEqualTo("reveal.view.end");
        assertThat(same.id()).isEqualTo("reveal.view.frame" + (frames - 1));
        assertThat(same.title()).endsWith("at frame " + (frames - 1));
        assertThat(same.toSvg().replace(same.id(), "").replace(same.title(), "").replace("frame " + (frames - 1), ""))
                .isEqualTo(end.toSvg().replace(end.id(), "").replace(end.title(), ""));
        assertThat(Moment.atFrame(1_000_000).frame(frames)).isEqualTo(frames - 1);
        assertThat(Moment.values()).containsExactly(Moment.START, Moment.MIDDLE, Moment.END);
    }

    /// A tank far to the side changes nothing of a can that is looked at past it.
    @Test
    void aThingBesideATank_isSeenStraight() {
        String beside = PLAN.replace(
                "    frames: 48", "    tank: {tank: glass, at: [-400 mm, 1000 mm], water: 60 mm}\n    frames: 48");
        assertThat(outline(view(beside, Moment.START))).isEqualTo(outline(view(PLAN, Moment.START)));
        String within = PLAN.replace(
                        "    frames: 48", "    tank: {tank: glass, at: [0 mm, 1000 mm], water: 60 mm}\n    frames: 48")
                .replace("diameter: 60 mm, height: 100 mm", "diameter: 60 mm, height: 80 mm");
        assertThat(view(within, Moment.START)).contains("(cut by the water line: not computed)");
    }

    private static List<String> outline(String svg) {
        var paths = SvgReader.parse(svg).getElementsByTagName("path");
        return java.util.stream.IntStream.range(0, paths.getLength())
                .mapToObj(i -> (Element) paths.item(i))
                .filter(path ->
                        ((Element) path.getParentNode()).getAttribute("id").endsWith("thing.can"))
                .map(path -> path.getAttribute("d"))
                .toList();
    }

    /// A level lens at 60 mm, the front glass 900 mm before it and wet up to 268 mm. The farthest of the image's rim is
    /// 72 mm of water behind the glass, which looks 54 mm (over n = 1.333), and 5 mm of pane: it is below the
    /// glass's wet edge while it is under 60 + 208 · 959/900 = 282 mm, and it is 2 · 268 mm less the can's top.
    @ParameterizedTest
    @CsvSource({"256, yes", "262, yes", "252, no", "240, no"})
    void surface_showsAThingTwiceWhereTheFrontGlassIsWet(double top, String isSeen) {
        String tank = "tank: {tank: glass, at: [0 mm, 958 mm], water: 260 mm}";
        String hung = PLAN.replace("[100 mm, 100 mm, 100 mm]", "[500 mm, 100 mm, 300 mm]")
                .replace("at: [0 mm, 1000 mm]", "at: [0 mm, 950 mm, " + (top - 100) + " mm], lines: 2")
                .replace("0 mm, 0 mm, 50 mm", "0 mm, 0 mm, 60 mm")
                .replace("focal_length: 100 mm", "focal_length: 30 mm")
                .replace("frames: 48", tank + "\n    frames: 48");
        String view = view(hung, Moment.START);
        assertThat(view.contains("mirrored by the surface: can")).isEqualTo(isSeen.equals("yes"));
        assertThat(view.contains("one.view.start.mirrored.can.SURFACE")).isEqualTo(isSeen.equals("yes"));
    }

    /// Behind clear glass a thing is seen; behind an opaque one of the same size it isn't.
    @ParameterizedTest
    @CsvSource({"clear, yes", "opaque, no"})
    void aThingBehindClearGlass_isDrawnThroughIt(String body, String isSeen) {
        String two = PLAN.replace("body: opaque}", "body: " + body + "}, small: {diameter: 20 mm, height: 40 mm}")
                .replace(
                        "at: [0 mm, 1000 mm]}",
                        "at: [0 mm, 1000 mm]}, back: {thing: small, at: [0 mm, 1200 mm, 30 mm]}");
        String view = view(two, Moment.START);
        List<Element> runs = SvgReader.shapes(SvgReader.parse(view), "one.view.start.thing.back", "path");
        assertThat(runs).isNotEmpty();
        if (isSeen.equals("yes")) {
            assertThat(runs)
                    .allMatch(run -> run.getAttribute("stroke-dasharray").isEmpty());
            assertThat(view).contains(">back (").doesNotContain("hidden:");
        } else {
            assertThat(runs)
                    .allMatch(run -> !run.getAttribute("stroke-dasharray").isEmpty());
            assertThat(view).contains("hidden: back");
        }
    }

    @Test
    void whatHasNoPlaceYet_isSaidAndNeitherDrawnNorHidesAnything() {
        String lamp = PLAN.replace(
                        "tanks:", "lights: {strip: {panel: [300 mm, 1200 mm], gives: 400 lx at 1 m}}\n  tanks:")
                .replace(
                        "    frames: 48",
                        "    lights: {key: {light: strip, at: [free, 500 mm, 50 mm]}}\n    frames: 48");
        String open = view(lamp, Moment.START);
        assertThat(open)
                .contains("place still open: key", ">can")
                .doesNotContain("thing.key")
                .doesNotContain("hidden:");
        String placed = view(lamp.replace("[free, 500", "[0 mm, 500"), Moment.START);
        assertThat(placed).contains("one.view.start.thing.key", "hidden: can").doesNotContain("still open");
        String height = view(PLAN.replace("[0 mm, 1000 mm]", "[0 mm, 1000 mm, free]"), Moment.START);
        assertThat(height).contains("place still open: can").doesNotContain("thing.can");
    }

    /// Without the camera's place nothing is where it looks to be.
    @Test
    void openCamera_isSaidAndShowsNothing() {
        String text = PLAN.replace("at: [0 mm, 0 mm, 50 mm]", "at: [0 mm, free, 50 mm]")
                .replace("height: 100 mm, body", "height: 100 mm, label: {width: 30 mm, height: 40 mm}, body");
        FilmAnswer film = Made.film(text);
        var shot = Made.shot(film, "one");
        assertThat(view(text, Moment.START))
                .contains("place still open: camera")
                .doesNotContain("thing.can");
        for (Drawing drawing :
                List.of(Drawings.planFromAbove(film.plan(), shot), Drawings.sideElevation(film.plan(), shot))) {
            assertThat(drawing.toSvg())
                    .contains("camera: its place is still open, so it", ".thing.can")
                    .doesNotContain("lens at start")
                    .doesNotContain(".sight.");
        }
        assertThat(Drawings.sharpRuler(film.plan(), shot)).isEmpty();
        assertThat(Drawings.unrolledLabel(film.plan(), shot).getFirst().toSvg())
                .contains("place is still open: what is toward the lens")
                .doesNotContain("toward lens at start");
    }

    /// How far a move goes isn't known: nothing is drawn where it would end.
    @Test
    void openMove_isDrawnAtItsStart() {
        MadeSet set = MadeSet.of("lens: fifty, at: [0 mm, -961 mm, 61 mm], aim: ahead, f_number: 11", MadeSet.crowd(1))
                .with("moves: {slide: {machine: slider, by: [free between 50 mm and 100 mm, 0 mm], in: 2 s}}");
        var plan = set.film().plan();
        assertThat(Drawings.cameraView(plan, set.shot(), Moment.END).toSvg())
                .contains("place still open: ends of moves");
        assertThat(Drawings.travel(plan, set.shot())).isEmpty();
        assertThat(Drawings.planFromAbove(plan, set.shot()).toSvg())
                .contains("lens at start")
                .doesNotContain("lens at end")
                .doesNotContain("way.slide");
        assertThat(Drawings.sideElevation(plan, set.shot()).toSvg()).doesNotContain("lens at end");
    }

    /// Four of twelve names are nearly as long as the picture is wide.
    @Test
    void twelveNames_allStandNumberedWhereTheyFindNoRoom() {
        String place = MadeSet.crowd(12);
        for (int i = 1; i < 5; i++) {
            place = place.replace("      b" + i + ":", "      the_long_name_of_bottle_number_" + i + "_of_twelve:");
        }
        for (String each : List.of(place, MadeSet.crowd(12), MadeSet.crowd(4))) {
            MadeSet set = MadeSet.of("lens: fifty, at: [0 mm, -961 mm, 61 mm], aim: ahead, f_number: 11", each);
            Document svg = SvgReader.parse(Drawings.cameraView(set.film().plan(), set.shot(), Moment.START)
                    .toSvg());
            String words = SvgReader.letters(svg).stream()
                    .map(letters -> " " + letters.text() + " ")
                    .collect(java.util.stream.Collectors.joining());
            assertThat(words).doesNotContain("no room for");
            for (var placed : set.film().plan().shots().getFirst().placed()) {
                String name = placed.name();
                String number = name.replaceAll("\\D", "");
                assertThat(words)
                        .as(name)
                        .containsPattern(
                                name.length() < 4
                                        ? "[ :]" + name + "[ ,]"
                                        : number.isEmpty()
                                                ? "the_very.*_left"
                                                : "the_lo\\S*(..._| )?" + number + "_( )*of_twelve");
            }
        }
    }
}
