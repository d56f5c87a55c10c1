package plumeline.render;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import plumeline.draw.DeliveryFrames;
import plumeline.plan.Mark;
import plumeline.plan.Plan;
import plumeline.sketch.Box;
import plumeline.sketch.Drawing;
import plumeline.sketch.Lettering;
import plumeline.sketch.Spot;
import plumeline.solve.Words;
import plumeline.stage.Scene;
import plumeline.stage.Stage;

/// A picture with the plan's truth upon it in line art: deliveries' frames and keep-outs, names of things with their
/// marks, outlines of highlights, the way of lines that are masked.
///
/// All of it comes from what answers wants, so that it tells where a picture is wrong.
public final class OnTop {
    private static final double HATCH = 14;
    private static final double HATCH_WEIGHT = 0.9;

    /// So wide the marks of a thing are written, pixels.
    private static final double WIDEST = 250;

    private final Plan plan;
    private final Stage stage;
    private final double[] values;
    private final Scene scene;
    private final PictureSheet sheet;

    /// What may be drawn upon a picture.
    public enum Layer {
        /// Deliveries' frames, their keep-outs hatched.
        FRAMES,
        /// Names of things with their marks.
        MARKS,
        /// Outlines of lamps as they are mirrored in things.
        HIGHLIGHTS,
        /// The way of lines and rods that are masked.
        MASKS;

        /// Gives its word.
        ///
        /// @return such as `frames`
        public String word() {
            return name().toLowerCase(Locale.ROOT);
        }

        /// Finds a layer by its word.
        ///
        /// @param word such as `frames`
        /// @return the layer; empty for any other word
        public static Optional<Layer> find(String word) {
            return EnumSet.allOf(Layer.class).stream()
                    .filter(layer -> layer.word().equals(word))
                    .findFirst();
        }
    }

    /// What was drawn.
    ///
    /// @param drawing the picture with line art upon it; it is a document of its own
    /// @param notes what isn't computed, or was taken for granted, sentences
    public record Drawn(Drawing drawing, List<String> notes) {
        /// Copies the list.
        public Drawn {
            notes = List.copyOf(notes);
        }
    }

    private OnTop(Plan plan, Stage stage, double[] values, Scene scene) {
        this.plan = plan;
        this.stage = stage;
        this.values = values;
        this.scene = scene;
        String name = stage.shot().name() + (stage.pass().isEmpty() ? "" : "." + stage.pass());
        sheet = new PictureSheet(name + ".picture", "Shot " + name + ": picture", scene.picture());
    }

    /// Draws upon a picture.
    ///
    /// @param plan the plan
    /// @param stage the shot or pass
    /// @param values its marks' values, SI, in the stage's order
    /// @param scene the instant that the picture shows
    /// @param png the whole picture of the camera, a PNG file's bytes, of any size
    /// @param layers what to draw
    /// @return the drawing; its picture lies at 0, 0 and is 960 pixels of the drawing along its longer side
    public static Drawn draw(
            Plan plan, Stage stage, double[] values, Scene scene, byte[] png, Set<Layer> layers) {
        return new OnTop(plan, stage, values, scene).draw(png, layers);
    }

    /// Draws deliveries' frames upon a picture that is too small for names.
    ///
    /// @param plan the plan
    /// @param stage the shot or pass
    /// @param scene the instant that the picture shows
    /// @param png the whole picture of the camera, a PNG file's bytes, of any size
    /// @return the drawing
    public static Drawing unnamedFrames(Plan plan, Stage stage, Scene scene, byte[] png) {
        OnTop top = new OnTop(plan, stage, stage.startValues(), scene);
        top.drawFrames();
        return top.sheet.finish(png);
    }

    private Drawn draw(byte[] png, Set<Layer> layers) {
        List<String> notes = new ArrayList<>();
        for (Layer layer : Layer.values()) {
            if (layers.contains(layer)) {
                notes.addAll(draw(layer));
            }
        }
        List<String> unplaced = sheet.placeNames();
        if (!unplaced.isEmpty()) {
            notes.add("No room upon the picture to name: " + String.join(", ", unplaced) + ".");
        }
        return new Drawn(sheet.finish(png), notes);
    }

    private List<String> draw(Layer layer) {
        return switch (layer) {
            case FRAMES -> frames();
            case MARKS -> marks();
            case HIGHLIGHTS -> new Highlights(stage, scene, sheet).draw();
            case MASKS ->
                new StrandLines(stage, values, scene, sheet, plan.film().papersOrDefault()).draw();
        };
    }

    private List<DeliveryFrames.Framed> drawFrames() {
        List<DeliveryFrames.Framed> frames = DeliveryFrames.list(plan, stage.shot(), scene.picture());
        DeliveryFrames.draw(frames, sheet.box(), sheet.page(), new DeliveryFrames.Hatch(HATCH, HATCH_WEIGHT));
        return frames;
    }

    private List<String> frames() {
        for (DeliveryFrames.Framed framed : drawFrames()) {
            Box free = framed.free(sheet.box());
            sheet.name(
                    "name.delivery." + framed.delivery().name(),
                    List.of(framed.words()),
                    new Spot(free.left(), free.top()),
                    6);
        }
        return List.of();
    }

    private List<String> marks() {
        List<String> hidden = new ArrayList<>();
        for (int i = 0; i < scene.things().size(); i++) {
            String name = stage.shot().placed().get(i).name();
            Optional<Box> room = Covering.findRoom(scene, scene.things().get(i), sheet::spot)
                    .filter(sheet.box()::meets);
            if (room.isPresent() && Covering.isHidden(stage, scene, i)) {
                hidden.add(name);
            } else {
                room.ifPresent(found -> sheet.nameBelow(
                        "name.thing." + name, markLines(name), new Spot(found.middle().x(), found.bottom())));
            }
        }
        return hidden.isEmpty()
                ? List.of()
                : List.of("Hidden, so not named upon the picture: " + String.join(", ", hidden) + ".");
    }

    /// A thing's name, and each of its marks as it is set.
    private List<String> markLines(String name) {
        Words words = new Words(plan.film().papersOrDefault());
        List<String> set = new ArrayList<>();
        for (int i = 0; i < stage.marks().size(); i++) {
            Mark mark = stage.marks().get(i).mark();
            if (mark.path().startsWith(name + ".")) {
                set.add(mark.path().substring(name.length() + 1).replace('_', ' ') + " "
                        + words.value(mark, values[i]).replace('-', '−'));
            }
        }
        List<String> lines = new ArrayList<>(List.of(name));
        if (!set.isEmpty()) {
            lines.addAll(Lettering.wrapped(String.join(", ", set), WIDEST));
        }
        return lines;
    }
}
