package plumeline.cut.scene;

import java.io.StringWriter;
import java.util.List;
import java.util.function.BiConsumer;
import java.util.function.ToDoubleFunction;
import plumeline.geom.Vec;
import plumeline.stage.Picture;
import tools.jackson.core.JsonGenerator;
import tools.jackson.core.ObjectWriteContext;
import tools.jackson.core.json.JsonFactory;

/// The part of a scene that is JSON.
///
/// **Source:** glTF 2.0, Khronos Group, version 2.0.1 of the specification, sections 3 and 5.
final class SceneJson {
    private static final JsonFactory FACTORY = new JsonFactory();

    /// Figures stand to 1e-9 of their unit, so that they read the same on every machine.
    private static final double FINEST = 1e9;

    /// What is nearer to the lens point isn't drawn, metres.
    private static final double NEAREST_METRES = 0.01;

    /// What is farther isn't drawn, metres, unless something of the scene is.
    private static final double FARTHEST_METRES = 100;

    private final JsonGenerator out;
    private final MovesGlb.About about;
    private final Parts parts;

    private SceneJson(JsonGenerator out, MovesGlb.About about, Parts parts) {
        this.out = out;
        this.about = about;
        this.parts = parts;
    }

    static String of(MovesGlb.About about, Parts parts) {
        StringWriter text = new StringWriter();
        try (JsonGenerator out = FACTORY.createGenerator(ObjectWriteContext.empty(), text)) {
            new SceneJson(out, about, parts).write();
        }
        return text.toString();
    }

    private void write() {
        out.writeStartObject();
        asset();
        out.writeNumberProperty("scene", 0);
        list("scenes", List.of(about.name()), (_, name) -> scene(name));
        list("nodes", parts.nodes(), (_, node) -> node(node));
        list("cameras", List.of(parts.scenes().getFirst().picture()), (_, picture) -> camera(picture));
        list("meshes", parts.surfaces(), (_, surface) -> surface(surface));
        list("materials", parts.looks(), (_, look) -> look(look));
        if (!parts.channels().isEmpty()) {
            list("animations", List.of(about.name()), (_, name) -> animation(name));
        }
        list("accessors", parts.figures().rows(), this::row);
        list("bufferViews", parts.figures().rows(), (_, row) -> view(row));
        list(
                "buffers",
                List.of(parts.figures().bytes().length),
                (_, bytes) -> out.writeNumberProperty("byteLength", bytes));
        out.writeEndObject();
    }

    /// A list of objects, one an item, told its index.
    private <T> void list(String name, List<T> items, BiConsumer<Integer, T> writer) {
        out.writeArrayPropertyStart(name);
        for (int i = 0; i < items.size(); i++) {
            out.writeStartObject();
            writer.accept(i, items.get(i));
            out.writeEndObject();
        }
        out.writeEndArray();
    }

    private void asset() {
        out.writeObjectPropertyStart("asset");
        out.writeStringProperty("version", "2.0");
        out.writeStringProperty("generator", "Plumeline");
        out.writeObjectPropertyStart("extras");
        out.writeStringProperty("film", about.film());
        out.writeStringProperty("shot", about.shot());
        out.writeStringProperty("pass", about.pass());
        out.writeObjectPropertyStart("film_rate");
        out.writeNumberProperty("numerator", about.rate().numerator());
        out.writeNumberProperty("denominator", about.rate().denominator());
        out.writeEndObject();
        out.writeNumberProperty("frames", parts.scenes().size());
        out.writeStringProperty("units", "metres; radians; seconds of screen time, the shot's first frame at 0");
        out.writeStringProperty(
                "axes", "from the zero mark on the table: x to camera right, y up from its top, z toward the camera");
        out.writeArrayPropertyStart("notes");
        about.notes().forEach(out::writeString);
        out.writeEndArray();
        out.writeEndObject();
        out.writeEndObject();
    }

    private void scene(String name) {
        out.writeStringProperty("name", name);
        out.writeArrayPropertyStart("nodes");
        for (int i = 0; i < parts.nodes().size(); i++) {
            out.writeNumber(i);
        }
        out.writeEndArray();
    }

    private void node(Parts.Node node) {
        Vec place = node.track().places().getFirst();
        Turn turn = node.track().turns().getFirst();
        out.writeStringProperty("name", node.name());
        node.surface()
                .ifPresentOrElse(
                        surface -> out.writeNumberProperty("mesh", surface),
                        () -> out.writeNumberProperty("camera", 0));
        numbers("translation", List.of(place.x(), place.y(), place.z()));
        numbers("rotation", List.of(turn.x(), turn.y(), turn.z(), turn.w()));
    }

    private void camera(Picture picture) {
        out.writeStringProperty("name", "camera");
        out.writeStringProperty("type", "perspective");
        out.writeObjectPropertyStart("perspective");
        number("yfov", heightRadians(picture));
        number("aspectRatio", picture.widthMetres() / picture.heightMetres());
        number("znear", NEAREST_METRES);
        number("zfar", Math.max(FARTHEST_METRES, 2 * farthestMetres()));
        out.writeEndObject();
        out.writeObjectPropertyStart("extras");
        lens(picture);
        out.writeEndObject();
    }

    /// What the camera is set to, for who matches it by hand; frame by frame what changes.
    private void lens(Picture picture) {
        number("focal_length_metres", picture.lens().focalLengthMetres());
        number("sensor_width_metres", picture.widthMetres());
        number("sensor_height_metres", picture.heightMetres());
        number("f_number", picture.fNumber());
        number("focus_metres", picture.focusMetres());
        byFrame("focal_length_metres_by_frame", one -> one.lens().focalLengthMetres());
        byFrame("yfov_radians_by_frame", SceneJson::heightRadians);
        byFrame("focus_metres_by_frame", Picture::focusMetres);
    }

    private void byFrame(String name, ToDoubleFunction<Picture> figure) {
        List<Double> figures = parts.scenes().stream()
                .map(scene -> round(figure.applyAsDouble(scene.picture())))
                .toList();
        if (figures.stream().distinct().count() > 1) {
            numbers(name, figures);
        }
    }

    /// Gives the angle that the picture's height spans.
    static double heightRadians(Picture picture) {
        return 2 * StrictMath.atan(picture.heightTangent() / 2);
    }

    private double farthestMetres() {
        double most = 0;
        for (int n = 0; n < parts.scenes().size(); n++) {
            Vec eye = Turn.place(parts.scenes().get(n).aim().eye());
            for (Parts.Node node : parts.nodes()) {
                List<Vec> places = node.track().places();
                most = Math.max(most, eye.distanceMetres(places.get(Math.min(n, places.size() - 1))));
            }
        }
        return most;
    }

    private void surface(Parts.Surface surface) {
        out.writeStringProperty("name", surface.name());
        out.writeArrayPropertyStart("primitives");
        out.writeStartObject();
        out.writeObjectPropertyStart("attributes");
        out.writeNumberProperty("POSITION", surface.places());
        out.writeNumberProperty("NORMAL", surface.normals());
        out.writeEndObject();
        out.writeNumberProperty("indices", surface.corners());
        out.writeNumberProperty("material", parts.looks().indexOf(surface.look()));
        out.writeEndObject();
        out.writeEndArray();
    }

    private void look(Parts.Look look) {
        out.writeStringProperty("name", look.word());
        out.writeObjectPropertyStart("pbrMetallicRoughness");
        numbers("baseColorFactor", look.colour());
        number("metallicFactor", 0);
        number("roughnessFactor", look.roughness());
        out.writeEndObject();
        if (look.colour().getLast() < 1) {
            out.writeStringProperty("alphaMode", "BLEND");
        }
    }

    private void animation(String name) {
        out.writeStringProperty("name", name);
        list("channels", parts.channels(), (i, channel) -> {
            out.writeNumberProperty("sampler", i);
            out.writeObjectPropertyStart("target");
            out.writeNumberProperty("node", channel.node());
            out.writeStringProperty("path", channel.path());
            out.writeEndObject();
        });
        list("samplers", parts.channels(), (_, channel) -> {
            out.writeNumberProperty("input", parts.times().orElseThrow());
            out.writeStringProperty("interpolation", "LINEAR");
            out.writeNumberProperty("output", channel.row());
        });
    }

    private void row(int index, Figures.Row row) {
        out.writeNumberProperty("bufferView", index);
        out.writeNumberProperty("componentType", row.component());
        out.writeNumberProperty("count", row.count());
        out.writeStringProperty("type", row.use().type());
        if (!row.least().isEmpty()) {
            exact("min", row.least());
            exact("max", row.most());
        }
    }

    private void view(Figures.Row row) {
        out.writeNumberProperty("buffer", 0);
        out.writeNumberProperty("byteOffset", row.start());
        out.writeNumberProperty("byteLength", row.bytes());
        if (row.use().target() != 0) {
            out.writeNumberProperty("target", row.use().target());
        }
    }

    private void number(String name, double value) {
        out.writeNumberProperty(name, round(value));
    }

    private void numbers(String name, List<Double> values) {
        exact(name, values.stream().map(SceneJson::round).toList());
    }

    private void exact(String name, List<Double> values) {
        out.writeArrayPropertyStart(name);
        values.forEach(out::writeNumber);
        out.writeEndArray();
    }

    private static double round(double value) {
        return Math.rint(value * FINEST) / FINEST + 0.0;
    }
}
