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
import java.awt.Shape;
import java.io.File;
import java.util.List;
import java.util.Map;
import org.w3c.dom.Element;
import org.w3c.dom.Node;

/// Prints our own drawings: the few shapes that room `draw` makes, and their lettering as text that can be found and
/// copied.
///
/// A general SVG renderer prints letters as shapes and takes most of the time of a print; what this one doesn't know,
/// it refuses.
final class DrawingPrinter implements SVGDrawer {
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
        double wide = cssWidth >= 0 ? cssWidth : DrawingShapes.pixels(svg, "width") * dotsPerPixel;
        double high = cssHeight >= 0 ? cssHeight : DrawingShapes.pixels(svg, "height") * dotsPerPixel;
        return new Image(svg, wide, high, wide / Double.parseDouble(view[2]));
    }

    @Override
    public void close() {
        // Nothing is held.
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
            new Drawn(device, context, new DrawingShapes(x, y, scale), DrawingShapes.clips(svg))
                    .draw(svg, new DrawingShapes.Style(svg));
        }
    }

    /// A drawing in its place on the paper.
    private record Drawn(
            OutputDevice device, RenderingContext context, DrawingShapes shapes, Map<String, Element> clips) {
        void draw(Element parent, DrawingShapes.Style around) {
            for (Node child = parent.getFirstChild(); child != null; child = child.getNextSibling()) {
                if (child instanceof Element element && !DrawingShapes.SILENT.contains(element.getTagName())) {
                    DrawingShapes.Style style = around.within(element);
                    Element clip = clips.get(element.getAttribute("clip-path"));
                    if (clip != null) {
                        device.pushClip(shapes.clip(clip));
                    }
                    switch (element.getTagName()) {
                        case "g" -> draw(element, style);
                        case "text" -> letter(element, style);
                        default -> paint(shapes.shape(element), element, style);
                    }
                    if (clip != null) {
                        device.popClip();
                    }
                }
            }
        }

        private void paint(Shape shape, Element element, DrawingShapes.Style style) {
            if (!style.fill().equals("none")) {
                device.setColor(color(style.fill()));
                device.fill(shape);
            }
            if (!style.stroke().equals("none")) {
                device.setColor(color(style.stroke()));
                device.setStroke(shapes.stroke(element, style));
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

        private void letter(Element element, DrawingShapes.Style style) {
            FontSpecification font = new FontSpecification();
            font.families = new String[] {Bundled.FAMILY};
            font.size = (float) (style.letters() * shapes.scale());
            font.fontWeight = style.isBold() ? IdentValue.BOLD : IdentValue.NORMAL;
            font.fontStyle = IdentValue.NORMAL;
            font.variant = IdentValue.NORMAL;
            device.setColor(color(style.fill()));
            device.setFont(context.getFont(font));
            if (device instanceof AbstractOutputDevice remembering) {
                // Else the weight of the text before would be imitated.
                remembering.setFontSpecification(font);
            }
            float x = (float) shapes.x(DrawingShapes.pixels(element, "x"));
            float y = (float) shapes.y(DrawingShapes.pixels(element, "y"));
            context.getTextRenderer().drawString(device, element.getTextContent(), x, y);
        }
    }
}
