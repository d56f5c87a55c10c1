package plumeline.draw;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import plumeline.sketch.Box;
import plumeline.sketch.Drawing;
import plumeline.sketch.Stretch;
import plumeline.solve.FilmAnswer;

final class UnrolledLabelTest {
    /// A can of 21 mm radius, its axis 600 mm before the lens, its label 30 mm wide.
    private static final String PLAN = """
            plumeline: 1
            film: {title: Labels, rate: 24 fps, papers: mm}
            deliver: {wide: {ratio: "16:9", size: [3840 px, 2160 px]}}
            things:
              can: {diameter: 42 mm, height: 90 mm, label: {width: 30 mm, height: 50 mm, bottom: 20 mm}}
              carton: {width: 60 mm, depth: 40 mm, height: 90 mm, label: {width: 40 mm, height: 50 mm, bottom: 20 mm}}
              cone: {profile: [[0 mm, 40 mm], [100 mm, 20 mm]], label: {width: 30 mm, height: 40 mm}}
              plain: {diameter: 42 mm, height: 90 mm}
            kit:
              cameras: {main: {sensor: {width: 36 mm, height: 20.25 mm, across: 3600 px}}}
              lenses: {macro: {focal_length: 100 mm}}
              machines: {plate: {speed: 12 rpm}}
              tanks: {glass: {inside: [300 mm, 300 mm, 300 mm], pane: 8 mm}}
            shots:
              one:
                camera: {body: main, lens: macro, at: [0 mm, 0 mm, 45 mm], aim: ahead, focus: 600 mm, f_number: 8}
                place: {hero: {thing: can, at: [0 mm, 600 mm]}}
                frames: 48
                wants: [{fills: hero, height: 40 %}]
            """;

    private static List<Drawing> drawings(String text) {
        FilmAnswer film = Made.film(text);
        return Drawings.unrolledLabel(film.plan(), Made.shot(film, "one"));
    }

    private static Document label(String text) {
        return SvgReader.parse(drawings(text).getFirst().toSvg());
    }

    private static double number(Element element, String attribute) {
        return Double.parseDouble(element.getAttribute(attribute));
    }

    private static double width(Document svg, String id) {
        return number(SvgReader.shapes(svg, id, "rect").getFirst(), "width");
    }

    private static String text(Document svg) {
        return svg.getDocumentElement().getTextContent();
    }

    /// Degrees from the label's middle of a place on the page.
    private static double degrees(Document svg, double x) {
        Element mantle = SvgReader.shapes(svg, "one.label.hero.mantle", "rect").getFirst();
        return ((x - number(mantle, "x")) / number(mantle, "width") - 0.5) * 360;
    }

    /// Ends of the bracket over what is toward the lens, degrees.
    private static double[] bracket(Document svg, String when) {
        Element line =
                SvgReader.shapes(svg, "one.label.hero.lens." + when, "line").getFirst();
        return new double[] {degrees(svg, number(line, "x1")), degrees(svg, number(line, "x2"))};
    }

    @Test
    void aLabel_isToScaleOnTheMantle() {
        Document svg = label(PLAN);
        double mantle = width(svg, "one.label.hero.mantle");
        assertThat(width(svg, "one.label.hero.label") / mantle)
                .as("30 mm of 2 pi 21 mm")
                .isCloseTo(30 / (2 * Math.PI * 21), within(1e-4));
        // 30 mm on 21 mm of radius: 30/21 rad = 81.9 deg.
        assertThat(text(svg))
                .contains("30 × 50 mm", "82 deg round", "20 mm up", "Unrolled at 21 mm radius", "seam", "logo middle");
        Element box = SvgReader.shapes(svg, "one.label.hero.mantle", "rect").getFirst();
        assertThat(number(box, "height") / number(box, "width")).isCloseTo(90 / (2 * Math.PI * 21), within(1e-4));
    }

    @Test
    void whatIsTowardTheLens_endsWhereSightLinesTouch() {
        double half = Math.toDegrees(Math.acos(21.0 / 600));
        double[] ends = bracket(label(PLAN), "start");
        assertThat(ends[0]).isCloseTo(-half, within(0.02));
        assertThat(ends[1]).isCloseTo(half, within(0.02));
        assertThat(text(label(PLAN)))
                .contains("toward lens at start −88..88 deg")
                .doesNotContain("at end");
        double near = Math.toDegrees(Math.acos(21.0 / 60));
        assertThat(bracket(label(PLAN.replace("[0 mm, 600 mm]", "[0 mm, 60 mm]")), "start")[1])
                .isCloseTo(near, within(0.02));
    }

    /// Turned clockwise by 30 deg, the place 30 deg right of the label's middle faces the lens. With the lens at camera
    /// right of the thing, places at the label's right do.
    @Test
    void degrees_countAsBearingsAndTurnsDo() {
        double half = Math.toDegrees(Math.acos(21.0 / 600));
        double[] turned = bracket(label(PLAN.replace("[0 mm, 600 mm]}", "[0 mm, 600 mm], turn: 30 deg}")), "start");
        assertThat(turned[0]).isCloseTo(30 - half, within(0.02));
        assertThat(turned[1]).isCloseTo(30 + half, within(0.02));
        double[] left = bracket(label(PLAN.replace("[0 mm, 600 mm]}", "[-600 mm, 600 mm]}")), "start");
        assertThat((left[0] + left[1]) / 2).isCloseTo(45, within(0.02));
    }

    @Test
    void aTurningThing_hasTheEndDashed() {
        Document svg = label(PLAN.replace(
                "    frames: 48",
                "    moves: {turn: {machine: plate, carries: hero, by: 60 deg, in: 1 s, profile: even}}\n"
                        + "    frames: 48"));
        double[] start = bracket(svg, "start");
        double[] end = bracket(svg, "end");
        assertThat(end[0] - start[0]).isCloseTo(60, within(0.02));
        assertThat(SvgReader.shapes(svg, "one.label.hero.lens.end", "line")
                        .getFirst()
                        .getAttribute("stroke-dasharray"))
                .isNotEmpty();
        Document over = label(PLAN.replace("[0 mm, 600 mm]}", "[0 mm, 600 mm], turn: 170 deg}"));
        assertThat(text(over)).contains("82..−102 deg over the seam");
    }

    /// In water behind the flat wall rays run closer to the axis, so more of the mantle is turned to the lens.
    @Test
    void behindATanksWall_raysAreBent() {
        double air = bracket(label(PLAN), "start")[1];
        double water = bracket(
                label(PLAN.replace(
                        "    frames: 48",
                        "    tank: {tank: glass, at: [0 mm, 600 mm], water: 280 mm}\n    frames: 48")),
                "start")[1];
        assertThat(water).isBetween(air + 0.2, 89.9);
    }

    @Test
    void bands_areHatchedByTheirBearings() {
        FilmAnswer film = Made.film(PLAN.replace("[0 mm, 600 mm]}", "[0 mm, 600 mm], turn: 30 deg}"));
        Band key = new Band("key", "key light", Math.toRadians(0), Math.toRadians(20));
        Document svg = SvgReader.parse(
                Drawings.unrolledLabel(film.plan(), Made.shot(film, "one"), Map.of("hero", List.of(key)))
                        .getFirst()
                        .toSvg());
        List<Element> sides = SvgReader.shapes(svg, "one.label.hero.band.key", "line");
        assertThat(degrees(svg, number(sides.get(0), "x1"))).isCloseTo(30, within(0.02));
        assertThat(degrees(svg, number(sides.get(1), "x1"))).isCloseTo(50, within(0.02));
        assertThat(text(svg)).contains("key light: 30..50 deg");
    }

    @Test
    void boxesAndCones_sayWhatIsUnrolled() {
        String carton =
                PLAN.replace("thing: can, at: [0 mm, 600 mm]", "thing: carton, at: [0 mm, 600 mm], turn: 20 deg");
        assertThat(text(label(carton))).contains("front face toward lens at start, 20 deg off square");
        assertThat(text(label(carton.replace("turn: 20 deg", "turn: 120 deg")))).contains("Nothing of it is toward");
        assertThat(text(label(PLAN.replace("thing: can", "thing: cone"))))
                .contains("Unrolled at 30 mm radius", "runs from 34 mm below to 26 mm above", "isn't written");
        assertThat(drawings(PLAN.replace("thing: can", "thing: plain"))).isEmpty();
    }

    @Test
    void thingsOfOneKindAndTurn_areDrawnOnceAndSixAtMost() {
        StringBuilder more = new StringBuilder("place: {hero: {thing: can, at: [0 mm, 600 mm]}");
        for (int i = 0; i < 8; i++) {
            more.append(", t" + i + ": {thing: can, at: [" + (60 * i - 200) + " mm, 700 mm], turn: " + (i / 2 * 10 + 0)
                    + " deg}");
        }
        List<Drawing> few = drawings(PLAN.replace("place: {hero: {thing: can, at: [0 mm, 600 mm]}", more));
        assertThat(few).hasSize(4);
        assertThat(few.getFirst().toSvg()).contains("t0 is the same: toward lens at start");
        StringBuilder many = new StringBuilder("place: {hero: {thing: can, at: [0 mm, 600 mm]}");
        for (int i = 0; i < 8; i++) {
            many.append(", t" + i + ": {thing: can, at: [" + (60 * i - 200) + " mm, 700 mm], turn: " + (i * 10 + 5)
                    + " deg}");
        }
        List<Drawing> all = drawings(PLAN.replace("place: {hero: {thing: can, at: [0 mm, 600 mm]}", many));
        assertThat(all).hasSize(6);
        assertThat(all.getLast().toSvg()).contains("Labels not drawn: t5, t6, t7.");
    }

    /// A bottle whose label takes nearly half of a mantle that is narrow on the page, and wider ones.
    @Test
    void noLabel_coversALineOrAFigureOfTheScale() {
        String small = PLAN.replace("can: {diameter: 42 mm, height: 90 mm", "can: {diameter: 60 mm, height: 180 mm")
                .replace("label: {width: 30 mm, height: 50 mm", "label: {width: 80 mm, height: 90 mm");
        String tall = small.replace("diameter: 60 mm", "diameter: 20 mm").replace("width: 80 mm", "width: 55 mm");
        String turned = "[0 mm, 600 mm], turn: 30 deg}";
        for (String text : List.of(
                PLAN,
                small,
                tall,
                small.replace("[0 mm, 600 mm]}", turned),
                PLAN.replace("[0 mm, 600 mm]}", turned),
                PLAN.replace("thing: can", "thing: carton"),
                PLAN.replace("papers: mm", "papers: in"))) {
            Document svg = label(text);
            List<Stretch> lines = DrawnChecks.strokes(svg, "hero.mantle", "hero.label", "hero.lens", "hero.heights");
            assertThat(lines).hasSizeGreaterThan(12);
            List<SvgReader.Lettered> letters = SvgReader.letters(svg);
            for (SvgReader.Lettered each : letters) {
                Box box = new Box(each.left(), each.top(), each.right(), each.bottom());
                assertThat(lines).as(each.toString()).noneMatch(line -> line.crosses(box));
            }
            assertThat(text(svg)).contains("logo middle", "label");
            assertThat(letters)
                    .extracting(SvgReader.Lettered::text)
                    .contains(text.contains("papers: in") ? "up, in" : "up, mm");
        }
        assertThat(letters(small)).contains("0", "50", "100", "150", "80 × 90 mm", "logo middle");
    }

    /// The can lit by a panel 400 mm wide at camera left, at the height of the lens and of the label's middle.
    private static final String LIT = PLAN.replace(
                    "machines:", "lights: {soft: {panel: [400 mm, 300 mm]}}\n  machines:")
            .replace(
                    "    frames: 48",
                    "    lights: {key: {light: soft, at: [-500 mm, 300 mm, 45 mm], aim: hero}}\n    frames: 48");

    /// Where round the can, degrees, a place at its middle's height is mirrored to the lens: the normal halves the
    /// angle between both ways (law of reflection), found by halving.
    private static double mirrored(double x, double y) {
        double low = -90;
        double high = 90;
        while (high - low > 1e-9) {
            double middle = (low + high) / 2;
            double angle = Math.toRadians(middle);
            double px = 21 * Math.sin(angle);
            double py = 600 - 21 * Math.cos(angle);
            double toLens = Math.atan2(-px, py);
            double toPlace = Math.atan2(x - px, py - y);
            if (toLens + toPlace > 2 * angle) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return low;
    }

    /// Places on the page of an outline, as pairs of x and y.
    private static List<double[]> outline(Document svg, String id, int index) {
        String way = SvgReader.shapes(svg, id, "path").get(index).getAttribute("d");
        return Pattern.compile("[ML]([-\\d.]+) ([-\\d.]+)")
                .matcher(way)
                .results()
                .map(each -> new double[] {Double.parseDouble(each.group(1)), Double.parseDouble(each.group(2))})
                .toList();
    }

    /// The panel's ends by hand: it faces (500, 300) from its middle, so it runs along (300, −500)/583.1.
    @Test
    void lamps_areHatchedWhereTheyAreMirrored() {
        Document svg = label(LIT);
        double ux = 300 / Math.hypot(300, 500);
        double uy = -500 / Math.hypot(300, 500);
        double left = mirrored(-500 - 200 * ux, 300 - 200 * uy);
        double right = mirrored(-500 + 200 * ux, 300 + 200 * uy);
        Element box = SvgReader.shapes(svg, "one.label.hero.mantle", "rect").getFirst();
        double level = number(box, "y") + number(box, "height") / 2;
        double[] across = outline(svg, "one.label.hero.mirrored.key", 1).stream()
                .filter(spot -> Math.abs(spot[1] - level) < 0.1)
                .mapToDouble(spot -> degrees(svg, spot[0]))
                .sorted()
                .toArray();
        assertThat(across).hasSize(2);
        assertThat(across[0]).isCloseTo(Math.min(left, right), within(0.05));
        assertThat(across[1]).isCloseTo(Math.max(left, right), within(0.05));
        assertThat(SvgReader.letters(svg)).extracting(SvgReader.Lettered::text).contains("key");
        assertThat(text(svg))
                .contains(("key " + Math.round(across[0]) + ".." + Math.round(across[1]) + " deg").replace('-', '−'))
                .contains("Taken as glossy");
        assertThat(DrawnChecks.checkSheets(drawings(LIT))).isPositive();
    }

    @Test
    void lamps_ofATurningLens_areDashedAtTheEnd_thoseOffAreSaidToBe() {
        String moving = LIT.replace(
                        "    frames: 48",
                        "    moves: {slide: {machine: rail, by: [100 mm, 0 mm], in: 1 s, profile: even}}\n"
                                + "    frames: 48")
                .replace("machines: {", "machines: {rail: {travel: 600 mm}, ");
        Document svg = label(moving);
        assertThat(SvgReader.shapes(svg, "one.label.hero.mirrored.key", "path").stream()
                        .filter(path -> !path.getAttribute("stroke-dasharray").isEmpty()))
                .hasSize(1);
        assertThat(text(svg)).contains("Dashed: at the end");
        assertThat(text(label(LIT.replace("aim: hero", "aim: hero, level: 0 %"))))
                .contains("key is off");
    }

    @Test
    void whatMirrorsNothing_orIsntKnown_saysSo() {
        String matte = LIT.replace("can: {diameter", "can: {finish: matte, diameter");
        assertThat(text(label(matte))).contains("Matte: no lamp is mirrored in it");
        assertThat(text(label(LIT.replace(
                        "    frames: 48",
                        "    tank: {tank: glass, at: [0 mm, 600 mm], water: 280 mm}\n    frames: 48"))))
                .contains("Not computed: what hero mirrors through a tank's glass and water");
        assertThat(text(label(LIT.replace("at: [-500 mm, 300 mm, 45 mm]", "at: free"))))
                .contains("the place of key is still open")
                .doesNotContain("Hatched");
        // A box's front face toward a lamp behind it mirrors nothing of it.
        assertThat(text(label(LIT.replace("thing: can", "thing: carton").replace("-500 mm, 300 mm", "0 mm, 900 mm"))))
                .contains("key isn't seen in it");
    }

    private static List<String> letters(String text) {
        return SvgReader.letters(label(text)).stream()
                .map(SvgReader.Lettered::text)
                .toList();
    }
}
