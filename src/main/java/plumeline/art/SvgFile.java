package plumeline.art;

import static java.nio.charset.StandardCharsets.UTF_8;

import com.github.weisj.jsvg.SVGDocument;
import com.github.weisj.jsvg.parser.LoaderContext;
import com.github.weisj.jsvg.parser.SVGLoader;
import com.github.weisj.jsvg.parser.resources.ResourcePolicy;
import com.github.weisj.jsvg.renderer.NullPlatformSupport;
import com.github.weisj.jsvg.view.FloatSize;
import com.github.weisj.jsvg.view.ViewBox;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.util.Locale;
import java.util.Optional;
import java.util.logging.Level;
import java.util.logging.Logger;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/// SVG files, by a library; nothing outside the file is looked at.
final class SvgFile {
    /// What is drawn of one, texels along its longer side.
    private static final int DRAWN = 1536;

    /// In so many first characters an SVG says that it is one.
    private static final int HEAD = 4096;

    private static final Pattern POINTER = Pattern.compile("(?:\\bhref\\s*=\\s*[\"']\\s*|\\bsrc\\s*=\\s*[\"']\\s*|"
            + "url\\(\\s*[\"']?\\s*|@import\\s*[\"']?\\s*)([^\"')\\s>]*)");

    /// The library would tell the console of damage; here the answer does.
    private static final Logger QUIET = Logger.getLogger("com.github.weisj.jsvg");

    private SvgFile() {}

    static boolean isOne(byte[] bytes) {
        String head = new String(bytes, 0, Math.min(bytes.length, HEAD), UTF_8);
        return head.contains("<svg") || head.contains(":svg");
    }

    static ArtFile read(byte[] bytes) {
        String text = new String(bytes, UTF_8);
        if (text.contains("<!ENTITY")
                || text.contains("<!DOCTYPE") && text.contains("[") && text.indexOf('[') < text.indexOf("<svg")) {
            return new ArtFile.Refused("an SVG with entities of its own", "Save it anew as plain SVG, or as a PNG.");
        }
        Optional<String> outside = findOutside(text);
        if (outside.isPresent()) {
            return new ArtFile.Refused(
                    "an SVG that points at something outside itself: " + outside.get(),
                    "Embed it in the file, or save it as a PNG.");
        }
        try {
            return draw(bytes);
        } catch (RuntimeException | LinkageError e) {
            // The library answers damage by exceptions of all kinds, a machine without lettering by an error.
            return new ArtFile.Refused("an SVG that can't be drawn here", "Save it as a PNG.");
        }
    }

    /// What it points at but itself and what it holds.
    private static Optional<String> findOutside(String text) {
        Matcher pointer = POINTER.matcher(text);
        while (pointer.find()) {
            String to = pointer.group(1).toLowerCase(Locale.ROOT);
            if (!to.isEmpty() && !to.startsWith("#") && !to.startsWith("data:")) {
                return Optional.of(pointer.group(1));
            }
        }
        return Optional.empty();
    }

    private static ArtFile draw(byte[] bytes) {
        QUIET.setLevel(Level.OFF);
        LoaderContext closed = LoaderContext.builder()
                .externalResourcePolicy(ResourcePolicy.DENY_EXTERNAL)
                .build();
        SVGDocument document = new SVGLoader().load(new ByteArrayInputStream(bytes), null, closed);
        if (document == null) {
            return new ArtFile.Refused("a damaged SVG", "Save it anew, or as a PNG.");
        }
        FloatSize size = document.size();
        if (!(size.getWidth() > 0 && size.getHeight() > 0)) {
            return new ArtFile.Refused("an SVG without a size", "Write its viewBox, or its width and height.");
        }
        double scale = DRAWN / Math.max(size.getWidth(), size.getHeight());
        int width = (int) Math.max(1, Math.round(scale * size.getWidth()));
        int height = (int) Math.max(1, Math.round(scale * size.getHeight()));
        var image = new BufferedImage(width, height, BufferedImage.TYPE_INT_ARGB);
        Graphics2D pen = image.createGraphics();
        try {
            pen.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
            pen.setRenderingHint(RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);
            document.renderWithPlatform(NullPlatformSupport.INSTANCE, pen, new ViewBox(0, 0, width, height));
        } finally {
            pen.dispose();
        }
        return new ArtFile.Read(Texels.of(image));
    }
}
