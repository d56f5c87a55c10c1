package plumeline.press;

import java.awt.BasicStroke;
import java.awt.Shape;
import java.awt.geom.Area;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Line2D;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.w3c.dom.Element;
import org.w3c.dom.Node;

/// Shapes and lines of our own drawings at a place and a scale of what they are put on.
///
/// @param left where the drawing begins across
/// @param top where it begins down
/// @param scale to be multiplied to its pixels
record DrawingShapes(double left, double top, double scale) {
    /// Elements that show nothing.
    static final Set<String> SILENT = Set.of("title", "clipPath", "defs");

    static double pixels(Element element, String attribute) {
        return Double.parseDouble(element.getAttribute(attribute));
    }

    /// What a drawing's elements are cut off by, as they refer to it.
    static Map<String, Element> clips(Element svg) {
        Map<String, Element> clips = new HashMap<>();
        var found = svg.getElementsByTagName("clipPath");
        for (int i = 0; i < found.getLength(); i++) {
            Element clip = (Element) found.item(i);
            clips.put("url(#" + clip.getAttribute("id") + ")", clip);
        }
        return clips;
    }

    /// What an element takes from those around it.
    record Style(String fill, String stroke, double weight, double letters, boolean isBold) {
        Style(Element svg) {
            this(or(svg, "fill", "#000"), "none", 1, number(svg, "font-size", 16), false);
        }

        Style within(Element element) {
            return new Style(
                    or(element, "fill", fill),
                    or(element, "stroke", stroke),
                    number(element, "stroke-width", weight),
                    number(element, "font-size", letters),
                    element.hasAttribute("font-weight")
                            ? element.getAttribute("font-weight").equals("bold")
                            : isBold);
        }

        private static String or(Element element, String attribute, String otherwise) {
            return element.hasAttribute(attribute) ? element.getAttribute(attribute) : otherwise;
        }

        private static double number(Element element, String attribute, double otherwise) {
            return element.hasAttribute(attribute) ? Double.parseDouble(element.getAttribute(attribute)) : otherwise;
        }
    }

    Area clip(Element clip) {
        Area area = new Area();
        for (Node child = clip.getFirstChild(); child != null; child = child.getNextSibling()) {
            if (child instanceof Element element) {
                area.add(new Area(shape(element)));
            }
        }
        return area;
    }

    BasicStroke stroke(Element element, Style style) {
        boolean isRound = element.getAttribute("stroke-linecap").equals("round");
        boolean isJoinedRound = element.getAttribute("stroke-linejoin").equals("round");
        float weight = (float) (style.weight() * scale);
        int cap = isRound ? BasicStroke.CAP_ROUND : BasicStroke.CAP_BUTT;
        int join = isJoinedRound ? BasicStroke.JOIN_ROUND : BasicStroke.JOIN_MITER;
        String dashes = element.getAttribute("stroke-dasharray");
        if (dashes.isEmpty()) {
            return new BasicStroke(weight, cap, join, 4);
        }
        String[] parts = dashes.split("[ ,]+", -1);
        float[] lengths = new float[parts.length];
        for (int i = 0; i < parts.length; i++) {
            lengths[i] = (float) (Double.parseDouble(parts[i]) * scale);
        }
        return new BasicStroke(weight, cap, join, 4, lengths, 0);
    }

    double x(double pixels) {
        return left + pixels * scale;
    }

    double y(double pixels) {
        return top + pixels * scale;
    }

    Shape shape(Element element) {
        return switch (element.getTagName()) {
            case "line" ->
                new Line2D.Double(
                        x(pixels(element, "x1")),
                        y(pixels(element, "y1")),
                        x(pixels(element, "x2")),
                        y(pixels(element, "y2")));
            case "rect" ->
                new Rectangle2D.Double(
                        x(pixels(element, "x")),
                        y(pixels(element, "y")),
                        pixels(element, "width") * scale,
                        pixels(element, "height") * scale);
            case "circle" -> {
                double radius = pixels(element, "r");
                yield new Ellipse2D.Double(
                        x(pixels(element, "cx") - radius),
                        y(pixels(element, "cy") - radius),
                        2 * radius * scale,
                        2 * radius * scale);
            }
            case "path" -> path(element.getAttribute("d"));
            default -> throw new IllegalArgumentException("drawings have no " + element.getTagName());
        };
    }

    /// Moves, lines and closings; `h` and `v` count from where the pen is.
    private Path2D path(String way) {
        Path2D.Double path = new Path2D.Double();
        double atX = 0;
        double atY = 0;
        for (PathStep step : PathStep.listOf(way)) {
            switch (step.letter()) {
                case 'M', 'L' -> {
                    atX = step.numbers().get(0);
                    atY = step.numbers().get(1);
                    if (step.letter() == 'M') {
                        path.moveTo(x(atX), y(atY));
                    } else {
                        path.lineTo(x(atX), y(atY));
                    }
                }
                case 'h', 'v' -> {
                    atX += step.letter() == 'h' ? step.numbers().getFirst() : 0;
                    atY += step.letter() == 'v' ? step.numbers().getFirst() : 0;
                    path.lineTo(x(atX), y(atY));
                }
                case 'z', 'Z' -> path.closePath();
                default -> throw new IllegalArgumentException("drawings have no path step " + step.letter());
            }
        }
        return path;
    }

    /// A step of a path.
    private record PathStep(char letter, List<Double> numbers) {
        PathStep {
            numbers = List.copyOf(numbers);
        }

        static List<PathStep> listOf(String way) {
            List<PathStep> steps = new ArrayList<>();
            int at = 0;
            while (at < way.length()) {
                char letter = way.charAt(at++);
                int from = at;
                while (at < way.length() && !Character.isLetter(way.charAt(at))) {
                    at++;
                }
                List<Double> numbers = new ArrayList<>(2);
                for (String number : way.substring(from, at).trim().split("[ ,]+", -1)) {
                    if (!number.isEmpty()) {
                        numbers.add(Double.valueOf(number));
                    }
                }
                steps.add(new PathStep(letter, numbers));
            }
            return steps;
        }
    }
}
