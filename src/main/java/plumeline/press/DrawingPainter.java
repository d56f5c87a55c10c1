package plumeline.press;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.Shape;
import java.awt.geom.AffineTransform;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Base64;
import java.util.List;
import java.util.Map;
import javax.imageio.IIOImage;
import javax.imageio.ImageIO;
import javax.imageio.ImageWriteParam;
import javax.imageio.ImageWriter;
import javax.imageio.stream.MemoryCacheImageInputStream;
import javax.imageio.stream.MemoryCacheImageOutputStream;
import javax.xml.XMLConstants;
import javax.xml.parsers.DocumentBuilderFactory;
import javax.xml.parsers.ParserConfigurationException;
import org.w3c.dom.Element;
import org.w3c.dom.Node;
import org.xml.sax.SAXException;

/// Paints our own drawings in pixels, with pictures in them where they hold any: for who wants one file.
///
/// Letters are outlines of the bundled lettering; no letter of the system is asked for.
public final class DrawingPainter {
    private static final String PNG = "data:image/png;base64,";

    private static final float QUALITY = 0.8f;

    private final Graphics2D on;
    private final DrawingShapes shapes;
    private final Map<String, Element> clips;
    private final LetterShapes letters = new LetterShapes();

    private DrawingPainter(Graphics2D on, Element svg, double scale) {
        this.on = on;
        shapes = new DrawingShapes(0, 0, scale);
        clips = DrawingShapes.clips(svg);
    }

    /// Paints a drawing on white.
    ///
    /// @param svg one of our drawings, a document of its own
    /// @param widthPixels how wide it becomes, > 0
    /// @return a PNG file's bytes
    public static byte[] png(String svg, int widthPixels) {
        return png(painted(svg, widthPixels));
    }

    /// Paints a drawing on white for papers: small, a little of it lost.
    ///
    /// @param svg one of our drawings, a document of its own
    /// @param widthPixels how wide it becomes, > 0
    /// @return a JPEG file's bytes
    public static byte[] jpeg(String svg, int widthPixels) {
        return jpeg(painted(svg, widthPixels));
    }

    private static BufferedImage painted(String svg, int widthPixels) {
        Element drawing = read(svg);
        String[] view = drawing.getAttribute("viewBox").split(" ", -1);
        double scale = widthPixels / Double.parseDouble(view[2]);
        int high = (int) Math.max(1, Math.round(Double.parseDouble(view[3]) * scale));
        BufferedImage image = new BufferedImage(widthPixels, high, BufferedImage.TYPE_INT_RGB);
        Graphics2D on = image.createGraphics();
        on.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
        on.setRenderingHint(RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);
        on.setRenderingHint(RenderingHints.KEY_INTERPOLATION, RenderingHints.VALUE_INTERPOLATION_BILINEAR);
        on.setColor(Color.WHITE);
        on.fillRect(0, 0, widthPixels, high);
        new DrawingPainter(on, drawing, scale).draw(drawing, new DrawingShapes.Style(drawing));
        on.dispose();
        return image;
    }

    private static Element read(String svg) {
        try {
            DocumentBuilderFactory factory = DocumentBuilderFactory.newInstance();
            factory.setFeature(XMLConstants.FEATURE_SECURE_PROCESSING, true);
            factory.setFeature("http://apache.org/xml/features/disallow-doctype-decl", true);
            return factory.newDocumentBuilder()
                    .parse(new ByteArrayInputStream(svg.getBytes(StandardCharsets.UTF_8)))
                    .getDocumentElement();
        } catch (ParserConfigurationException | SAXException broken) {
            throw new IllegalArgumentException("no drawing of ours", broken);
        } catch (IOException broken) {
            throw new UncheckedIOException(broken);
        }
    }

    private static byte[] png(BufferedImage image) {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try (MemoryCacheImageOutputStream out = new MemoryCacheImageOutputStream(bytes)) {
            if (!ImageIO.write(image, "png", out)) {
                throw new IllegalStateException("nothing here writes PNG");
            }
        } catch (IOException broken) {
            throw new UncheckedIOException(broken);
        }
        return bytes.toByteArray();
    }

    private static byte[] jpeg(BufferedImage image) {
        ImageWriter writer = ImageIO.getImageWritersByFormatName("jpeg").next();
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try (MemoryCacheImageOutputStream out = new MemoryCacheImageOutputStream(bytes)) {
            ImageWriteParam how = writer.getDefaultWriteParam();
            how.setCompressionMode(ImageWriteParam.MODE_EXPLICIT);
            how.setCompressionQuality(QUALITY);
            writer.setOutput(out);
            writer.write(null, new IIOImage(image, List.of(), null), how);
        } catch (IOException broken) {
            throw new UncheckedIOException(broken);
        } finally {
            writer.dispose();
        }
        return bytes.toByteArray();
    }

    private void draw(Element parent, DrawingShapes.Style around) {
        for (Node child = parent.getFirstChild(); child != null; child = child.getNextSibling()) {
            if (child instanceof Element element && !DrawingShapes.SILENT.contains(element.getTagName())) {
                DrawingShapes.Style style = around.within(element);
                Element clip = clips.get(element.getAttribute("clip-path"));
                Shape before = on.getClip();
                if (clip != null) {
                    on.clip(shapes.clip(clip));
                }
                switch (element.getTagName()) {
                    case "g" -> draw(element, style);
                    case "image" -> lay(element);
                    case "text" -> letter(element, style);
                    default -> paint(shapes.shape(element), style, shapes.stroke(element, style));
                }
                on.setClip(before);
            }
        }
    }

    private void paint(Shape shape, DrawingShapes.Style style, BasicStroke stroke) {
        if (!style.fill().equals("none")) {
            on.setColor(Color.decode(whole(style.fill())));
            on.fill(shape);
        }
        if (!style.stroke().equals("none")) {
            on.setColor(Color.decode(whole(style.stroke())));
            on.setStroke(stroke);
            on.draw(shape);
        }
    }

    /// A colour of three digits by six.
    private static String whole(String name) {
        return name.length() == 4 ? name.replaceAll("([0-9a-f])", "$1$1") : name;
    }

    private void letter(Element element, DrawingShapes.Style style) {
        double length = element.hasAttribute("textLength") ? DrawingShapes.pixels(element, "textLength") : 0;
        Shape outline = letters.outline(
                element.getTextContent(), style.letters() * shapes.scale(), length * shapes.scale());
        AffineTransform at = AffineTransform.getTranslateInstance(
                shapes.x(DrawingShapes.pixels(element, "x")), shapes.y(DrawingShapes.pixels(element, "y")));
        paint(at.createTransformedShape(outline), style, shapes.stroke(element, style));
    }

    /// Lays a picture into its room.
    private void lay(Element element) {
        String address = element.getAttribute("href");
        if (!address.startsWith(PNG)) {
            throw new IllegalArgumentException("drawings have no pictures but PNG within themselves");
        }
        byte[] bytes = Base64.getDecoder().decode(address.substring(PNG.length()));
        try {
            // Reading closes it.
            BufferedImage picture = ImageIO.read(new MemoryCacheImageInputStream(new ByteArrayInputStream(bytes)));
            AffineTransform at = AffineTransform.getTranslateInstance(
                    shapes.x(DrawingShapes.pixels(element, "x")), shapes.y(DrawingShapes.pixels(element, "y")));
            at.scale(
                    DrawingShapes.pixels(element, "width") * shapes.scale() / picture.getWidth(),
                    DrawingShapes.pixels(element, "height") * shapes.scale() / picture.getHeight());
            on.drawRenderedImage(picture, at);
        } catch (IOException broken) {
            throw new UncheckedIOException(broken);
        }
    }
}
