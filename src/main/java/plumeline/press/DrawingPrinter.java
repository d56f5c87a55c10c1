package plumeline.press;

import com.openhtmltopdf.css.constants.IdentValue;
import com.openhtmltopdf.css.parser.FSRGBColor;
import com.openhtmltopdf.css.sheet.FontFaceRule;
import com.openhtmltopdf.css.style.CssContext;
import com.openhtmltopdf.css.value.FontSpecification;
import com.openhtmltopdf.extend.OutputDevice;
import com.openhtmltopdf.extend.SVGDrawer;
import com.openhtmltopdf.layout.SharedContext;
import com.openhtmltopdf.outputdevice.helper.BaseRendererBuilder.FontStyle;
import com.openhtmltopdf.render.AbstractOutputDevice;
import com.openhtmltopdf.render.Box;
import com.openhtmltopdf.render.RenderingContext;
import java.awt.BasicStroke;
import java.awt.Shape;
import java.awt.geom.Area;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Line2D;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.io.File;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.w3c.dom.Element;
import org.w3c.dom.Node;

/// Prints our own drawings: the few shapes that room `draw` makes, and their lettering as text that can be found and
/// copied.
///
/// A general SVG renderer prints letters as shapes and takes most of the time of a print; what this one doesn't know,
/// it refuses.
final class DrawingPrinter implements SVGDrawer {
    private static final Set<String> SILENT = Set.of("title", "clipPath", "defs");

    @Override
    public void importFontFaceRules(List<FontFaceRule> rules, SharedContext context) {
        // The lettering is that of the page.
    }

    @Override
    public void addFontFile(File file, String family, Integer weight, FontStyle style) {
        // The lettering is that of the page.
    }

    @Override
    public SVGImage buildSVGImage(
            Element svg, Box box, CssContext context, double cssWidth, double cssHeight, double dotsPerPixel) {
        String[] view = svg.getAttribute("viewBox").split(" ", -1);
        double wide = cssWidth >= 0 ? cssWidth : pixels(svg, "width") * dotsPerPixel;
        double high = cssHeight >= 0 ? cssHeight : pixels(svg, "height") * dotsPerPixel;
        return new Image(svg, wide, high, wide / Double.parseDouble(view[2]));
    }

    @Override
    public void close() {
        // Nothing is held.
    }

    private static double pixels(Element element, String attribute) {
        return Double.parseDouble(element.getAttribute(attribute));
    }

    /// A drawing of a size, in the printer's dots.
    private record Image(Element svg, double wide, double high, double scale) implements SVGImage {
        @Override
        public int getIntrinsicWidth() {
            return (int) Math.round(wide);
        }

        @Override
        public int getIntrinsicHeight() {
            return (int) Math.round(high);
        }

        @Override
        public void drawSVG(OutputDevice device, RenderingContext context, double x, double y) {
            new Drawn(device, context, x, y, scale, clips(svg)).draw(svg, new Style(svg));
        }

        private static Map<String, Element> clips(Element svg) {
            Map<String, Element> clips = new HashMap<>();
            var found = svg.getElementsByTagName("clipPath");
            for (int i = 0; i < found.getLength(); i++) {
                Element clip = (Element) found.item(i);
                clips.put("url(#" + clip.getAttribute("id") + ")", clip);
            }
            return clips;
        }
    }

    /// What an element takes from those around it.
    private record Style(String fill, String stroke, double weight, double letters, boolean isBold) {
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

    /// A drawing in its place on the paper.
    private record Drawn(
            OutputDevice device,
            RenderingContext context,
            double left,
            double top,
            double scale,
            Map<String, Element> clips) {
        void draw(Element parent, Style around) {
            for (Node child = parent.getFirstChild(); child != null; child = child.getNextSibling()) {
                if (child instanceof Element element && !SILENT.contains(element.getTagName())) {
                    Style style = around.within(element);
                    Element clip = clips.get(element.getAttribute("clip-path"));
                    if (clip != null) {
                        device.pushClip(clip(clip));
                    }
                    switch (element.getTagName()) {
                        case "g" -> draw(element, style);
                        case "text" -> letter(element, style);
                        default -> paint(shape(element), element, style);
                    }
                    if (clip != null) {
                        device.popClip();
                    }
                }
            }
        }

        private Area clip(Element clip) {
            Area area = new Area();
            for (Node child = clip.getFirstChild(); child != null; child = child.getNextSibling()) {
                if (child instanceof Element element) {
                    area.add(new Area(shape(element)));
                }
            }
            return area;
        }

        private void paint(Shape shape, Element element, Style style) {
            if (!style.fill().equals("none")) {
                device.setColor(color(style.fill()));
                device.fill(shape);
            }
            if (!style.stroke().equals("none")) {
                device.setColor(color(style.stroke()));
                device.setStroke(stroke(element, style));
                device.draw(shape);
            }
        }

        private static FSRGBColor color(String name) {
            return switch (name) {
                case "#000" -> FSRGBColor.BLACK;
                case "#fff" -> new FSRGBColor(255, 255, 255);
                default -> throw new IllegalArgumentException("drawings are black and white, not " + name);
            };
        }

        private BasicStroke stroke(Element element, Style style) {
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

        private double x(double pixels) {
            return left + pixels * scale;
        }

        private double y(double pixels) {
            return top + pixels * scale;
        }

        private Shape shape(Element element) {
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

        private void letter(Element element, Style style) {
            FontSpecification font = new FontSpecification();
            font.families = new String[] {Bundled.FAMILY};
            font.size = (float) (style.letters() * scale);
            font.fontWeight = style.isBold() ? IdentValue.BOLD : IdentValue.NORMAL;
            font.fontStyle = IdentValue.NORMAL;
            font.variant = IdentValue.NORMAL;
            device.setColor(color(style.fill()));
            device.setFont(context.getFont(font));
            if (device instanceof AbstractOutputDevice remembering) {
                // Else the weight of the text before would be imitated.
                remembering.setFontSpecification(font);
            }
            context.getTextRenderer()
                    .drawString(device, element.getTextContent(), (float) x(pixels(element, "x")), (float)
                            y(pixels(element, "y")));
        }
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
