package plumeline.cut.list;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import plumeline.cut.StrictJson;

/// Reads an open timeline by its schemas in reference/time.md, part C; shares nothing with the writer.
final class OtioReader {
    /// The fields that objects of a schema may have besides name and metadata.
    private static final Map<String, List<String>> FIELDS = Map.ofEntries(
            Map.entry("Timeline.1", List.of("global_start_time", "tracks")),
            Map.entry("Stack.1", List.of("source_range", "effects", "markers", "enabled", "color", "children")),
            Map.entry("Track.1", List.of("source_range", "effects", "markers", "enabled", "color", "kind", "children")),
            Map.entry(
                    "Clip.2",
                    List.of(
                            "source_range",
                            "effects",
                            "markers",
                            "enabled",
                            "color",
                            "media_references",
                            "active_media_reference_key")),
            Map.entry("Gap.1", List.of("source_range", "effects", "markers", "enabled", "color")),
            Map.entry("LinearTimeWarp.1", List.of("effect_name", "enabled", "time_scalar")),
            Map.entry("FreezeFrame.1", List.of("effect_name", "enabled", "time_scalar")),
            Map.entry("Marker.2", List.of("marked_range", "color", "comment")),
            Map.entry("ExternalReference.1", List.of("target_url", "available_range", "available_image_bounds")),
            Map.entry("MissingReference.1", List.of("available_range", "available_image_bounds")),
            Map.entry(
                    "GeneratorReference.1",
                    List.of("available_range", "available_image_bounds", "generator_kind", "parameters")),
            Map.entry("RationalTime.1", List.of("rate", "value")),
            Map.entry("TimeRange.1", List.of("start_time", "duration")));

    /// A clip or a gap in its track.
    record Item(String schema, String name, long first, long frames, double start, double scalar, Object json) {
        /// How many frames of its source it spans.
        double source() {
            return frames * Math.abs(scalar);
        }

        Object media() {
            return StrictJson.at(json, "media_references", StrictJson.text(json, "active_media_reference_key"));
        }
    }

    record Track(String name, String kind, boolean isEnabled, List<Item> items) {
        long frames() {
            return items.stream().mapToLong(Item::frames).sum();
        }
    }

    final Object json;
    final double rate;
    final List<Track> tracks = new ArrayList<>();

    OtioReader(String text, double rate) {
        json = StrictJson.read(text);
        this.rate = rate;
        check(json);
        assertThat(StrictJson.text(json, "OTIO_SCHEMA")).isEqualTo("Timeline.1");
        for (Object track : StrictJson.list(json, "tracks", "children")) {
            tracks.add(track(track));
        }
    }

    /// Every object has a schema that we know, with no field but its own.
    private static void check(Object value) {
        if (value instanceof List<?> list) {
            list.forEach(OtioReader::check);
        } else if (value instanceof Map<?, ?> map) {
            if (map.containsKey("OTIO_SCHEMA")) {
                String schema = StrictJson.text(map, "OTIO_SCHEMA");
                assertThat(FIELDS).containsKey(schema);
                List<Object> others = new ArrayList<>(map.keySet());
                others.removeAll(List.of("OTIO_SCHEMA", "metadata", "name"));
                assertThat(FIELDS.get(schema))
                        .as(schema)
                        .containsAll(others.stream().map(String::valueOf).toList());
            }
            map.forEach((name, each) -> {
                if (!name.equals("metadata") && !name.equals("parameters")) {
                    check(each);
                }
            });
        }
    }

    private Track track(Object track) {
        List<Item> items = new ArrayList<>();
        long done = 0;
        for (Object child : StrictJson.list(track, "children")) {
            Object range = StrictJson.at(child, "source_range");
            double scalar = 1;
            List<Object> effects = StrictJson.list(child, "effects");
            assertThat(effects).hasSizeLessThan(2);
            for (Object effect : effects) {
                scalar = StrictJson.number(effect, "time_scalar");
                boolean isHeld = StrictJson.text(effect, "OTIO_SCHEMA").equals("FreezeFrame.1");
                assertThat(isHeld).isEqualTo(scalar == 0);
            }
            long frames = (long) time(StrictJson.at(range, "duration"));
            items.add(new Item(
                    StrictJson.text(child, "OTIO_SCHEMA"),
                    StrictJson.text(child, "name"),
                    done,
                    frames,
                    time(StrictJson.at(range, "start_time")),
                    scalar,
                    child));
            done += frames;
        }
        return new Track(
                StrictJson.text(track, "name"),
                StrictJson.text(track, "kind"),
                StrictJson.at(track, "enabled").equals(true),
                items);
    }

    /// A time's frames; all are at the film's rate.
    double time(Object time) {
        assertThat(StrictJson.text(time, "OTIO_SCHEMA")).isEqualTo("RationalTime.1");
        assertThat(StrictJson.number(time, "rate")).isEqualTo(rate);
        return StrictJson.number(time, "value");
    }

    Track named(String name) {
        return tracks.stream()
                .filter(track -> track.name().equals(name))
                .findFirst()
                .orElseThrow();
    }
}
