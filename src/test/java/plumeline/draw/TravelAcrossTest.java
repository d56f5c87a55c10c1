package plumeline.draw;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import plumeline.sketch.Drawing;
import plumeline.solve.FilmAnswer;

final class TravelAcrossTest {
    /// A level camera slides 200 mm to camera right, evenly, past a can of 20 mm radius at 1 m and a carton at 1.5 m.
    private static final String PLAN = """
            plumeline: 1
            film: {title: Travel, rate: 24 fps, papers: mm}
            deliver:
              wide: {ratio: "16:9", size: [3840 px, 2160 px]}
              phone: {ratio: "9:16", size: [1080 px, 1920 px]}
            things:
              can: {diameter: 40 mm, height: 90 mm}
              carton: {width: 60 mm, depth: 40 mm, height: 90 mm}
            kit:
              cameras: {main: {sensor: {width: 36 mm, height: 20.25 mm, across: 3600 px}}}
              lenses: {macro: {focal_length: 100 mm}}
              machines: {slider: {travel: 600 mm, speed: 80 mm/s}}
            shots:
              one:
                camera: {body: main, lens: macro, at: [0 mm, 0 mm, 45 mm], aim: ahead, focus: 1000 mm, f_number: 8}
                place: {can: {thing: can, at: [50 mm, 1000 mm]}, carton: {thing: carton, at: [100 mm, 1500 mm]}}
                moves: {slide: {machine: slider, by: [200 mm, 0 mm], in: 4 s, profile: even}}
                wants: [{fills: can, height: 40 %}]
            """;

    private static List<Drawing> drawings(String text) {
        FilmAnswer film = Made.film(text);
        return Drawings.travel(film.plan(), Made.shot(film, "one"));
    }

    /// The edges of a thing where they begin and end: share of the picture's width and of its height on the page.
    private static List<double[]> ends(Document svg, String thing) {
        Element box = SvgReader.shapes(svg, "one.travel.picture", "rect").getFirst();
        String way = SvgReader.shapes(svg, "one.travel.thing." + thing, "path")
                .getFirst()
                .getAttribute("d");
        List<double[]> spots = new ArrayList<>();
        for (String part : way.split("[ML]")) {
            if (!part.isBlank()) {
                String[] xy = part.split(" ");
                spots.add(new double[] {
                    (Double.parseDouble(xy[0]) - number(box, "x")) / number(box, "width"),
                    (Double.parseDouble(xy[1]) - number(box, "y")) / number(box, "height")
                });
            }
        }
        return spots;
    }

    private static double number(Element element, String attribute) {
        return Double.parseDouble(element.getAttribute(attribute));
    }

    /// Where a sight line at an angle to the axis meets the picture: 1/2 + tan · f(1 + m)/width, f = 100 mm focused at
    /// 1 m, so f(1 + m) = 1000/9 mm.
    private static double share(double tangent) {
        return 0.5 + tangent * (1000.0 / 9) / 36;
    }

    @Test
    void edges_standWhereTheProjectionPutsThem() {
        Document svg = SvgReader.parse(drawings(PLAN).getFirst().toSvg());
        List<double[]> can = ends(svg, "can");
        // Tangent lines to a circle of 20 mm about (x, 1000): angle of the middle less and plus asin(20/d).
        assertThat(can.getFirst()[0])
                .isCloseTo(share(Math.tan(Math.atan2(50, 1000) - Math.asin(20 / Math.hypot(50, 1000)))), within(1e-4));
        assertThat(can.getFirst()[1]).isCloseTo(0, within(1e-4));
        // 4 s at 24 fps are 96 frames; the last one, 95, begins 95/96 of the way along.
        double end = 50 - 200 * 95.0 / 96;
        assertThat(can.getLast()[0])
                .isCloseTo(
                        share(Math.tan(Math.atan2(end, 1000) + Math.asin(20 / Math.hypot(end, 1000)))), within(1e-4));
        assertThat(can.getLast()[1]).isCloseTo(1, within(1e-4));
        // Of a carton to the right of the axis, the left edge is that of its back, 1520 mm deep.
        assertThat(ends(svg, "carton").getFirst()[0]).isCloseTo(share(70.0 / 1520), within(1e-4));
    }

    @Test
    void deliveriesFramesAndTimes_areMarked() {
        Document svg = SvgReader.parse(drawings(PLAN).getFirst().toSvg());
        Element box = SvgReader.shapes(svg, "one.travel.picture", "rect").getFirst();
        List<Element> phone = SvgReader.shapes(svg, "one.travel.delivery.phone", "line");
        // 9:16 out of 16:9 is (9/16)² of the width.
        double half = 81.0 / 256 / 2;
        assertThat((number(phone.get(0), "x1") - number(box, "x")) / number(box, "width"))
                .isCloseTo(0.5 - half, within(1e-4));
        assertThat((number(phone.get(1), "x1") - number(box, "x")) / number(box, "width"))
                .isCloseTo(0.5 + half, within(1e-4));
        assertThat(phone.getFirst().getAttribute("stroke-dasharray")).isNotEmpty();
        assertThat(svg.getDocumentElement().getTextContent())
                .contains("frame 1", "0 s real", "frame 49", "2 s real", "frame 96", "3.96 s real", "100 %");
    }

    @Test
    void stillShotsAndTurnsOfRoundThings_haveNone() {
        assertThat(drawings(PLAN.replaceAll("    moves: .*\\n", "    frames: 48\n")))
                .isEmpty();
        assertThat(drawings(PLAN.replace(
                        "slide: {machine: slider, by: [200 mm, 0 mm]", "slide: {carries: can, by: 60 deg")))
                .isEmpty();
    }

    @Test
    void whatComesInLater_isNamedWhereItDoes() {
        String later = PLAN.replace("at: [100 mm, 1500 mm]", "at: [400 mm, 1500 mm]");
        Document svg = SvgReader.parse(drawings(later).getFirst().toSvg());
        assertThat(svg.getDocumentElement().getTextContent()).contains("carton", "can");
        assertThat(ends(svg, "carton").getFirst()[1]).isGreaterThan(0.2);
        String never = PLAN.replace("at: [100 mm, 1500 mm]", "at: [900 mm, 1500 mm]");
        assertThat(drawings(never).getFirst().toSvg()).doesNotContain("carton");
    }

    @Test
    void aThingBehindTheLens_isLeftOut() {
        String behind = PLAN.replace("at: [100 mm, 1500 mm]", "at: [0 mm, -300 mm]");
        assertThat(drawings(behind).getFirst().toSvg()).doesNotContain("carton").doesNotContain("NaN");
    }

    /// Hatching says soft elsewhere; twelve names fit one page of 240 mm, 907 pixels of 96 to the inch.
    @Test
    void twelveThings_areOutlinedWithoutHatchingOnOnePage() {
        MadeSet set = MadeSet.of("lens: fifty, at: [0 mm, -961 mm, 61 mm], aim: ahead, f_number: 11", MadeSet.crowd(12))
                .with("moves: {slide: {machine: slider, by: [100 mm, 0 mm], in: 2 s, profile: even}}");
        Drawing travel = Drawings.travel(set.film().plan(), set.shot()).getFirst();
        assertThat(travel.heightPixels()).isLessThanOrEqualTo(907);
        assertThat(travel.toSvg()).doesNotContain("stroke-width=\"0.4\"").contains("its left and its right edge");
    }
}
