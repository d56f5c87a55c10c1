package plumeline.render;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.util.ArrayList;
import java.util.Base64;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Test;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import plumeline.draw.SvgReader;
import plumeline.plan.Delivery;
import plumeline.press.DrawingPainter;
import plumeline.solve.Solve;
import plumeline.stage.Frame;

final class OnTopTest {
    private static final double WIDE = 960;
    private static final double HIGH = 540;

    /// A PNG of one grey.
    private static byte[] grey(int width, int height) {
        var image = new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB);
        for (int i = 0; i < width * height; i++) {
            image.setRGB(i % width, i / width, 0x6e6e6e);
        }
        var bytes = new ByteArrayOutputStream();
        try {
            ImageIO.write(image, "png", bytes);
        } catch (IOException broken) {
            throw new IllegalStateException(broken);
        }
        return bytes.toByteArray();
    }

    private static OnTop.Drawn drawn(Shown shown, Set<OnTop.Layer> layers) {
        return OnTop.draw(
                shown.plan(), shown.stage(), shown.stage().startValues(), shown.scene(), grey(480, 270), layers);
    }

    private static Element find(Document svg, String id) {
        var all = svg.getElementsByTagName("*");
        for (int i = 0; i < all.getLength(); i++) {
            Element element = (Element) all.item(i);
            if (element.getAttribute("id").equals(id)) {
                return element;
            }
        }
        throw new AssertionError("no " + id + " among " + SvgReader.ids(svg));
    }

    private static double number(Element element, String attribute) {
        return Double.parseDouble(element.getAttribute(attribute));
    }

    /// Frames lie where [Frame] says, to half a pixel of a picture of 3840.
    @Test
    void frames_lieWhereTheDeliveriesAre() {
        Shown shown = Shown.of("", "", "", "crop: {phone: [11 %, 0 %]}");
        Document svg = SvgReader.parse(
                drawn(shown, Set.of(OnTop.Layer.FRAMES)).drawing().toSvg());
        for (Delivery delivery : shown.plan().deliveries()) {
            Frame frame = Frame.of(
                    shown.scene().picture(), delivery, shown.stage().shot().cropOrDefault(delivery.name()));
            Element box = (Element) find(svg, "one.picture.delivery." + delivery.name())
                    .getElementsByTagName("rect")
                    .item(0);
            double half = 0.5 * WIDE / 3840;
            assertThat(number(box, "x")).isCloseTo((frame.left() + 0.5) * WIDE, within(half));
            assertThat(number(box, "y")).isCloseTo((0.5 - frame.top()) * HIGH, within(half));
            assertThat(number(box, "width")).isCloseTo((frame.right() - frame.left()) * WIDE, within(2 * half));
            assertThat(number(box, "height")).isCloseTo((frame.top() - frame.bottom()) * HIGH, within(2 * half));
        }
    }

    /// The picture itself fills the camera's frame, so that line art and pixels can't be apart.
    @Test
    void thePicture_liesUnderItAll() throws IOException {
        Document svg = SvgReader.parse(
                drawn(Shown.plain(), Set.of(OnTop.Layer.FRAMES)).drawing().toSvg());
        Element image = (Element) svg.getElementsByTagName("image").item(0);
        assertThat(List.of(number(image, "x"), number(image, "y"), number(image, "width"), number(image, "height")))
                .containsExactly(0.0, 0.0, WIDE, HIGH);
        byte[] png = Base64.getDecoder().decode(image.getAttribute("href").replaceFirst("^[^,]*,", ""));
        assertThat(ImageIO.read(new ByteArrayInputStream(png)).getWidth()).isEqualTo(480);
    }

    private record Ends(double left, double right) {}

    /// Where a ring lies at a row.
    private static Ends at(String way, double y) {
        List<double[]> spots = new ArrayList<>();
        for (String part : way.replace("Z", "").split("[ML]", -1)) {
            if (!part.isBlank()) {
                String[] numbers = part.trim().split(" ", -1);
                spots.add(new double[] {Double.parseDouble(numbers[0]), Double.parseDouble(numbers[1])});
            }
        }
        double left = Double.POSITIVE_INFINITY;
        double right = Double.NEGATIVE_INFINITY;
        for (int i = 0; i < spots.size(); i++) {
            double[] a = spots.get(i);
            double[] b = spots.get((i + 1) % spots.size());
            if ((a[1] - y) * (b[1] - y) <= 0 && a[1] != b[1]) {
                double x = a[0] + (b[0] - a[0]) * (y - a[1]) / (b[1] - a[1]);
                left = Math.min(left, x);
                right = Math.max(right, x);
            }
        }
        return new Ends(left, right);
    }

    /// The outline of the highlight, as shares of the can's outline (r/√(d² − r²) either side), against the finding.
    @Test
    void highlights_lieWhereTheWantHasThem() {
        Shown shown = Shown.of("", "", "", "wants: [{highlight: key, upon: can, from_left: 20 %, wide: 10 %}]");
        String finding = String.join(
                " ",
                Solve.film(shown.plan()).shots().getFirst().wants().getFirst().because());
        Matcher says = Pattern.compile("shows in can at ([0-9.]+) % of its width from the left, ([0-9.]+) % wide")
                .matcher(finding);
        assertThat(says.find()).as(finding).isTrue();
        Document svg = SvgReader.parse(
                drawn(shown, Set.of(OnTop.Layer.HIGHLIGHTS)).drawing().toSvg());
        Element ring = (Element) find(svg, "one.picture.highlight.can.key")
                .getElementsByTagName("path")
                .item(0);
        Ends ends = at(ring.getAttribute("d"), HIGH / 2);
        double tangent = 33 / Math.sqrt(800.0 * 800 - 33 * 33);
        double half = tangent / shown.scene().picture().widthTangent() * WIDE;
        double from = (ends.left() - (WIDE / 2 - half)) / (2 * half);
        double to = (ends.right() - (WIDE / 2 - half)) / (2 * half);
        assertThat(50 * (from + to)).isCloseTo(Double.parseDouble(says.group(1)), within(0.2));
        assertThat(100 * (to - from)).isCloseTo(Double.parseDouble(says.group(2)), within(0.2));
    }

    @Test
    void marks_areNamedAsTheyAreSet() {
        String svg = drawn(Shown.plain(), Set.of(OnTop.Layer.MARKS)).drawing().toSvg();
        assertThat(svg).contains(">can<").contains(">x 0 mm, y 0 mm<");
    }

    /// A line of 0.3 mm from the middle of a hung can's top straight up: a pinhole sees it on the middle column.
    @Test
    void aLine_isDrawnWhereItHangs() {
        String text = Shown.text("", "", "", "")
                .replace(
                        "place: {can: {thing: can, at: [0 mm, 0 mm]}}",
                        "place: {can: {thing: can, at: [20 mm, 0 mm, 10 mm], lines: 1, line: {diameter: 0.3 mm}}}");
        Shown shown = Shown.of(text);
        Document svg = SvgReader.parse(
                drawn(shown, Set.of(OnTop.Layer.MASKS)).drawing().toSvg());
        Element path = (Element) find(svg, "one.picture.mask.can-line")
                .getElementsByTagName("path")
                .item(0);
        String first = path.getAttribute("d").replaceFirst("^M", "").split("L", -1)[0];
        double x = Double.parseDouble(first.split(" ", -1)[0]);
        double y = Double.parseDouble(first.split(" ", -1)[1]);
        double scale = WIDE / shown.scene().picture().widthTangent();
        assertThat(x).isCloseTo(WIDE / 2 + 20 / 800.0 * scale, within(0.02));
        assertThat(y).isCloseTo(HIGH / 2 - (132 - 61) / 800.0 * scale, within(0.02));
        assertThat(path.getAttribute("stroke-dasharray")).isNotEmpty();
    }

    /// Painted in pixels, the phone's left frame line is dark where it should be, and the grey stays grey between.
    @Test
    void painted_itShowsTheSame() throws IOException {
        Shown shown = Shown.plain();
        String svg = drawn(shown, EnumSet.allOf(OnTop.Layer.class)).drawing().toSvg();
        var image = ImageIO.read(new ByteArrayInputStream(DrawingPainter.png(svg, 1920)));
        assertThat(image.getWidth()).isEqualTo(1920);
        assertThat(image.getHeight()).isEqualTo(1080);
        assertThat(image.getRGB(200, 500) & 0xffffff).isEqualTo(0x6e6e6e);
        double left = (0.5 - 9 / 16.0 * 9 / 16.0 / 2) * 1920;
        int darkest = 255;
        int at = 0;
        for (int x = (int) left - 12; x < left + 12; x++) {
            int sum = 0;
            for (int y = 480; y < 600; y++) {
                sum += image.getRGB(x, y) & 255;
            }
            if (sum / 120 < darkest) {
                darkest = sum / 120;
                at = x;
            }
        }
        assertThat(darkest).isLessThan(0x6e);
        assertThat(at + 0.5).isCloseTo(left, within(1.0));
    }
}
