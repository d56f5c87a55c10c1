package plumeline.cut.list;

import java.util.List;
import java.util.function.Consumer;
import plumeline.quantity.FrameRate;
import tools.jackson.core.JsonGenerator;

/// Writes the objects that an open timeline is made of, each with its schema's name and version.
///
/// **Source:** OpenTimelineIO (ASWF), core schemas of release 0.17: their names, versions and fields.
final class OtioJson {
    private final JsonGenerator out;
    private final double framesPerSecond;

    OtioJson(JsonGenerator out, FrameRate rate) {
        this.out = out;
        framesPerSecond = rate.framesPerSecond();
    }

    /// A part of an object.
    interface Part {
        void write();
    }

    void object(String schema, String name, Part metadata, Part rest) {
        out.writeStartObject();
        out.writeStringProperty("OTIO_SCHEMA", schema);
        out.writeObjectPropertyStart("metadata");
        out.writeObjectPropertyStart("plumeline");
        metadata.write();
        out.writeEndObject();
        out.writeEndObject();
        out.writeStringProperty("name", name);
        rest.write();
        out.writeEndObject();
    }

    void plain(String schema, String name, Part rest) {
        out.writeStartObject();
        out.writeStringProperty("OTIO_SCHEMA", schema);
        out.writeObjectPropertyStart("metadata");
        out.writeEndObject();
        out.writeStringProperty("name", name);
        rest.write();
        out.writeEndObject();
    }

    <T> void list(String name, List<T> items, Consumer<T> writer) {
        out.writeArrayPropertyStart(name);
        items.forEach(writer);
        out.writeEndArray();
    }

    void time(String name, long frame) {
        out.writeName(name);
        out.writeStartObject();
        out.writeStringProperty("OTIO_SCHEMA", "RationalTime.1");
        out.writeNumberProperty("rate", framesPerSecond);
        out.writeNumberProperty("value", (double) frame);
        out.writeEndObject();
    }

    void range(String name, long first, long past) {
        out.writeName(name);
        out.writeStartObject();
        out.writeStringProperty("OTIO_SCHEMA", "TimeRange.1");
        time("duration", past - first);
        time("start_time", first);
        out.writeEndObject();
    }

    void gap(long frames) {
        plain("Gap.1", "", () -> {
            range("source_range", 0, frames);
            list("effects", List.of(), _ -> {});
            list("markers", List.of(), _ -> {});
            out.writeBooleanProperty("enabled", true);
        });
    }

    /// What an item is called by whoever edits, and where it lies in what it is of.
    void item(long first, long past, Part effects) {
        range("source_range", first, past);
        out.writeArrayPropertyStart("effects");
        effects.write();
        out.writeEndArray();
        list("markers", List.of(), _ -> {});
        out.writeBooleanProperty("enabled", true);
    }

    void speed(double scalar) {
        boolean isHeld = scalar == 0;
        plain(isHeld ? "FreezeFrame.1" : "LinearTimeWarp.1", "", () -> {
            out.writeStringProperty("effect_name", isHeld ? "FreezeFrame" : "LinearTimeWarp");
            out.writeBooleanProperty("enabled", true);
            out.writeNumberProperty("time_scalar", scalar);
        });
    }

    /// The one reference of a clip.
    void media(Part reference) {
        out.writeObjectPropertyStart("media_references");
        out.writeName("DEFAULT_MEDIA");
        reference.write();
        out.writeEndObject();
        out.writeStringProperty("active_media_reference_key", "DEFAULT_MEDIA");
    }

    void external(String url, long first, long past) {
        plain("ExternalReference.1", url.substring(url.lastIndexOf('/') + 1), () -> {
            range("available_range", first, past);
            out.writeNullProperty("available_image_bounds");
            out.writeStringProperty("target_url", url);
        });
    }

    /// What is to come.
    void missing(String name, long first, long past) {
        plain("MissingReference.1", name, () -> {
            range("available_range", first, past);
            out.writeNullProperty("available_image_bounds");
        });
    }

    /// Markers have a colour by their schema: the one it takes where none is given.
    void marker(long frame, String name, String comment) {
        plain("Marker.2", name, () -> {
            out.writeStringProperty("color", "GREEN");
            out.writeStringProperty("comment", comment);
            range("marked_range", frame, frame);
        });
    }
}
