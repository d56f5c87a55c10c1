package plumeline.draw;

import java.io.IOException;
import java.io.StringReader;
import java.util.ArrayList;
import java.util.List;
import javax.xml.parsers.DocumentBuilderFactory;
import javax.xml.parsers.ParserConfigurationException;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;
import org.xml.sax.InputSource;
import org.xml.sax.SAXException;

/// Reads markup back with the JDK's own parser, knowing nothing of how it was made.
public final class SvgReader {
    /// A letter box as drawn.
    public record Lettered(String text, double left, double top, double right, double bottom) {
        boolean meets(Lettered other) {
            return left < other.right && other.left < right && top < other.bottom && other.top < bottom;
        }
    }

    private SvgReader() {}

    /// Parses well-formed XML, or fails.
    public static Document parse(String xml) {
        try {
            DocumentBuilderFactory factory = DocumentBuilderFactory.newInstance();
            factory.setFeature("http://apache.org/xml/features/nonvalidating/load-external-dtd", false);
            return factory.newDocumentBuilder()
                    .parse(new InputSource(new StringReader(xml.replace("<!DOCTYPE html>", ""))));
        } catch (ParserConfigurationException | SAXException | IOException broken) {
            throw new IllegalArgumentException("not well-formed: " + broken.getMessage(), broken);
        }
    }

    /// Every id, in order.
    public static List<String> ids(Document document) {
        List<String> ids = new ArrayList<>();
        NodeList all = document.getElementsByTagName("*");
        for (int i = 0; i < all.getLength(); i++) {
            String id = ((Element) all.item(i)).getAttribute("id");
            if (!id.isEmpty()) {
                ids.add(id);
            }
        }
        return ids;
    }

    /// The box of each text from its own attributes: 19 pixels tall letters, as wide as it says.
    public static List<Lettered> letters(Document document) {
        List<Lettered> boxes = new ArrayList<>();
        NodeList all = document.getElementsByTagName("text");
        for (int i = 0; i < all.getLength(); i++) {
            Element text = (Element) all.item(i);
            double x = Double.parseDouble(text.getAttribute("x"));
            double y = Double.parseDouble(text.getAttribute("y"));
            double width = Double.parseDouble(text.getAttribute("textLength"));
            boxes.add(new Lettered(text.getTextContent(), x, y - 15, x + width, y + 4));
        }
        return boxes;
    }

    /// Shapes of a name that stand directly in the group of an id.
    public static List<Element> shapes(Document svg, String id, String name) {
        List<Element> found = new ArrayList<>();
        var all = svg.getElementsByTagName(name);
        for (int i = 0; i < all.getLength(); i++) {
            if (((Element) all.item(i).getParentNode()).getAttribute("id").equals(id)) {
                found.add((Element) all.item(i));
            }
        }
        return found;
    }
}
