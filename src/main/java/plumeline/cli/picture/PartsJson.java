package plumeline.cli.picture;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.io.StringWriter;
import java.nio.file.Path;
import plumeline.render.PartsView;
import tools.jackson.core.JsonGenerator;
import tools.jackson.core.ObjectWriteContext;
import tools.jackson.core.json.JsonFactory;

/// The parts of a picture as JSON: what there is, by which colour it is drawn, and how many pixels show it.
final class PartsJson {
    private static final JsonFactory FACTORY = JsonFactory.builder().build();

    private PartsJson() {}

    /// The list's file beside the picture's.
    static Path beside(Path picture) {
        String name = String.valueOf(picture.getFileName());
        return picture.resolveSibling((name.endsWith(".png") ? name.substring(0, name.length() - 4) : name) + ".json");
    }

    static byte[] of(PictureChoice choice, PartsView view) {
        StringWriter text = new StringWriter();
        try (JsonGenerator out = FACTORY.createGenerator(ObjectWriteContext.empty(), text)) {
            out.writeStartObject();
            out.writeStringProperty("shot", choice.set().stage().shot().name());
            if (!choice.set().stage().pass().isEmpty()) {
                out.writeStringProperty("pass", choice.set().stage().pass());
            }
            out.writeNumberProperty("real_seconds", choice.realSeconds());
            out.writeNumberProperty("width", view.window().width());
            out.writeNumberProperty("height", view.window().height());
            out.writeName("parts");
            out.writeStartArray();
            for (PartsView.Named part : view.parts()) {
                out.writeStartObject();
                out.writeNumberProperty("index", part.index());
                out.writeStringProperty("name", part.name());
                out.writeStringProperty("colour", part.hex());
                out.writeNumberProperty("pixels", part.pixels());
                out.writeNumberProperty("mirrored_pixels", part.mirroredPixels());
                out.writeEndObject();
            }
            out.writeEndArray();
            out.writeEndObject();
        }
        return (text + "\n").getBytes(UTF_8);
    }
}
