package plumeline.draw;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.regex.MatchResult;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;
import plumeline.sketch.Box;
import plumeline.sketch.Drawing;
import plumeline.sketch.Spot;
import plumeline.sketch.Stretch;

/// Looks at drawings as drawn: labels' boxes, ids, places of lines.
final class DrawnChecks {
    private static final Pattern NUMBER = Pattern.compile("-?\\d+(\\.\\d+)?");

    private static final Set<String> SHOWN =
            Set.of("path", "line", "rect", "circle", "ellipse", "polygon", "polyline", "text");

    private static final Pattern COLOUR = Pattern.compile("(fill|stroke|color)=\"[^\"]*\"");

    private DrawnChecks() {}

    /// Checks the labels and the ids of drawings that go on one film's papers.
    ///
    /// @return how many pairs of labels were compared
    static int checkSheets(List<Drawing> drawings) {
        List<String> ids = new ArrayList<>();
        int compared = 0;
        for (Drawing drawing : drawings) {
            Document svg = SvgReader.parse(drawing.toSvg());
            assertThat(drawing.toSvg()).doesNotContain("NaN").doesNotContain("Infinity");
            assertThat(COLOUR.matcher(drawing.toSvg()).results().map(MatchResult::group))
                    .isNotEmpty()
                    .allMatch(value ->
                            value.endsWith("\"#000\"") || value.endsWith("\"#fff\"") || value.endsWith("\"none\""));
            assertThat(svg.getDocumentElement().getAttribute("aria-label"))
                    .isEqualTo(drawing.title())
                    .isNotBlank();
            ids.addAll(SvgReader.ids(svg));
            checkOwners(drawing, svg);
            compared += checkLabels(drawing, SvgReader.letters(svg));
        }
        assertThat(ids).doesNotHaveDuplicates();
        return compared;
    }

    /// Checks that each shape and each text is, or lies within, an element with an id below the drawing's own.
    ///
    /// @return how many there are
    static int checkOwners(Drawing drawing, Document svg) {
        int checked = 0;
        NodeList all = svg.getElementsByTagName("*");
        for (int i = 0; i < all.getLength(); i++) {
            Element element = (Element) all.item(i);
            if (SHOWN.contains(element.getTagName())) {
                assertThat(owner(element))
                        .as("%s in %s", element.getTextContent(), drawing.id())
                        .startsWith(drawing.id() + ".");
                checked++;
            }
        }
        return checked;
    }

    /// The nearest id above; the drawing's own where there is no other.
    private static String owner(Element element) {
        String id = element.getAttribute("id");
        return id.isEmpty() ? owner((Element) element.getParentNode()) : id;
    }

    private static int checkLabels(Drawing drawing, List<SvgReader.Lettered> letters) {
        int compared = 0;
        for (int i = 0; i < letters.size(); i++) {
            SvgReader.Lettered one = letters.get(i);
            assertThat(one.left() >= 0
                            && one.top() >= -0.5
                            && one.right() <= drawing.widthPixels()
                            && one.bottom() <= drawing.heightPixels())
                    .as("%s on the sheet of %s", one, drawing.id())
                    .isTrue();
            for (int k = i + 1; k < letters.size(); k++) {
                compared++;
                assertThat(one.meets(letters.get(k)))
                        .as("%s: %s meets %s", drawing.id(), one, letters.get(k))
                        .isFalse();
            }
        }
        return compared;
    }

    static Element group(Document svg, String id) {
        NodeList groups = svg.getElementsByTagName("g");
        for (int i = 0; i < groups.getLength(); i++) {
            if (((Element) groups.item(i)).getAttribute("id").equals(id)) {
                return (Element) groups.item(i);
            }
        }
        throw new AssertionError("no group " + id);
    }

    static Element element(Document svg, String id, String name, int index) {
        return (Element) group(svg, id).getElementsByTagName(name).item(index);
    }

    static double number(Element element, String attribute) {
        return Double.parseDouble(element.getAttribute(attribute));
    }

    /// The smallest box round a path of straight lines.
    static Box box(Element path) {
        List<Spot> spots = new ArrayList<>();
        Matcher numbers = NUMBER.matcher(path.getAttribute("d"));
        while (numbers.find()) {
            double x = Double.parseDouble(numbers.group());
            assertThat(numbers.find()).isTrue();
            spots.add(new Spot(x, Double.parseDouble(numbers.group())));
        }
        return Box.about(spots);
    }

    /// Pixels in a metre by a drawing's own scale bar of a length.
    static double pixelsPerMetre(Document svg, String drawing, double barMetres) {
        Element bar = element(svg, drawing + ".scale", "line", 0);
        return (number(bar, "x2") - number(bar, "x1")) / barMetres;
    }

    /// All straight strokes in groups whose ids hold one of some words.
    static List<Stretch> strokes(Document svg, String... words) {
        List<Stretch> all = new ArrayList<>();
        NodeList groups = svg.getElementsByTagName("g");
        for (int i = 0; i < groups.getLength(); i++) {
            Element group = (Element) groups.item(i);
            String id = group.getAttribute("id");
            if (!id.contains(".name.") && List.of(words).stream().anyMatch(id::contains)) {
                addStrokes(all, group);
            }
        }
        return all;
    }

    private static void addStrokes(List<Stretch> all, Element group) {
        NodeList lines = group.getElementsByTagName("line");
        for (int i = 0; i < lines.getLength(); i++) {
            all.add(stretch((Element) lines.item(i)));
        }
        NodeList boxes = group.getElementsByTagName("rect");
        for (int i = 0; i < boxes.getLength(); i++) {
            Element box = (Element) boxes.item(i);
            double x = number(box, "x");
            double y = number(box, "y");
            all.addAll(new Box(x, y, x + number(box, "width"), y + number(box, "height")).sides());
        }
        NodeList paths = group.getElementsByTagName("path");
        for (int i = 0; i < paths.getLength(); i++) {
            addRuns(all, ((Element) paths.item(i)).getAttribute("d"));
        }
    }

    private static void addRuns(List<Stretch> all, String way) {
        for (String run : way.split("(?=M)", -1)) {
            List<Spot> spots = new ArrayList<>();
            Matcher numbers = NUMBER.matcher(run);
            while (numbers.find()) {
                double x = Double.parseDouble(numbers.group());
                assertThat(numbers.find()).isTrue();
                spots.add(new Spot(x, Double.parseDouble(numbers.group())));
            }
            for (int k = 1; k < spots.size(); k++) {
                all.add(new Stretch(spots.get(k - 1), spots.get(k)));
            }
            if (run.endsWith("Z")) {
                all.add(new Stretch(spots.getLast(), spots.getFirst()));
            }
        }
    }

    /// Lines from labels to what they name.
    static List<Stretch> leaders(Document svg) {
        List<Stretch> all = new ArrayList<>();
        NodeList lines = svg.getElementsByTagName("line");
        for (int i = 0; i < lines.getLength(); i++) {
            Element line = (Element) lines.item(i);
            if (line.getAttribute("id").endsWith(".leader")) {
                all.add(stretch(line));
            }
        }
        return all;
    }

    private static Stretch stretch(Element line) {
        return new Stretch(
                new Spot(number(line, "x1"), number(line, "y1")), new Spot(number(line, "x2"), number(line, "y2")));
    }
}
