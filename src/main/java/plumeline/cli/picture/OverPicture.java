package plumeline.cli.picture;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import plumeline.desk.Arguments;
import plumeline.desk.PlainFile;
import plumeline.desk.Refusal;
import plumeline.desk.Usage;
import plumeline.plan.Delivery;
import plumeline.press.DrawingPainter;
import plumeline.render.Develop;
import plumeline.render.Levels;
import plumeline.render.OnTop;
import plumeline.render.PngFile;
import plumeline.render.Window;
import plumeline.stage.Frame;
import plumeline.stage.Scene;
import plumeline.stage.Stage;
import plumeline.trace.Plate;

/// What a picture is shown with: the plan's truth upon it, or its levels; or as it is.
///
/// @param layers what is drawn upon it
/// @param isLevels whether its levels are shown instead
record OverPicture(Set<OnTop.Layer> layers, boolean isLevels) {
    /// Drawings upon small pictures are painted as wide at least, pixels.
    private static final int LEAST_WIDE = 960;

    private static final String ON_TOP = "--on-top";

    OverPicture {
        layers = Set.copyOf(layers);
    }

    static Usage.Option onTop() {
        return Usage.valued(ON_TOP, "LIST", "Draws upon it: frames, marks, highlights, masks, by commas; an SVG too.");
    }

    /// Reads what is asked for.
    ///
    /// @throws Refusal for any other word, and where only a part of the camera's picture is asked for
    static OverPicture read(Arguments given) throws Refusal {
        Set<OnTop.Layer> layers = EnumSet.noneOf(OnTop.Layer.class);
        for (String word : given.findValue(ON_TOP)
                .map(list -> List.of(list.split(",", -1)))
                .orElse(List.of())) {
            layers.add(OnTop.Layer.find(word.strip())
                    .orElseThrow(() -> new Refusal(
                            ON_TOP + " has " + word.strip() + "; must be of " + words(),
                            "Such as --on-top frames,marks.")));
        }
        OverPicture over = new OverPicture(
                layers, given.findValue("--view").filter("levels"::equals).isPresent());
        if (over.isLevels() && !layers.isEmpty()) {
            throw new Refusal(ON_TOP + " goes with a picture, not with its levels", "Leave one of both out.");
        }
        if (over.isAny() && given.findValue("--delivery").isPresent()) {
            throw whole();
        }
        return over;
    }

    private static Refusal whole() {
        return new Refusal(
                ON_TOP + " and --view levels are of the camera's whole picture",
                "Leave --delivery out, and --size or its other ratio.");
    }

    private static String words() {
        return EnumSet.allOf(OnTop.Layer.class).stream().map(OnTop.Layer::word).collect(Collectors.joining(", "));
    }

    boolean isAny() {
        return isLevels || !layers.isEmpty();
    }

    /// Whose frame is seen: nobody's where something is drawn over the whole picture.
    Optional<Delivery> of(Optional<Delivery> delivery) {
        return isAny() ? Optional.empty() : delivery;
    }

    /// Refuses a window that isn't the camera's whole picture.
    void check(Window window) throws Refusal {
        if (isAny() && !window.frame().equals(Frame.WHOLE)) {
            throw whole();
        }
    }

    /// Writes the picture as it is shown: a PNG file; where something is drawn, an SVG file beside it too.
    ///
    /// @return what is to be said of it, a line each
    String lay(PictureChoice choice, Window window, Plate plate, Path file) throws IOException {
        var set = choice.set();
        byte[] png = PngFile.of(window.cut(Develop.of(plate, set.developing(choice.realSeconds()))));
        if (!isAny()) {
            PlainFile.lay(file, png);
            return "";
        }
        Stage stage = set.stage();
        Scene scene = set.sceneAt(choice.realSeconds());
        OnTop.Drawn drawn;
        if (isLevels) {
            Levels levels = Levels.of(plate, stage, scene, choice.plan());
            drawn = levels.draw(PngFile.of(levels.greyed()));
        } else {
            drawn = OnTop.draw(choice.plan(), stage, set.values(), scene, png, layers);
        }
        String svg = drawn.drawing().toSvg();
        int scaled = Math.max(1, (int) Math.ceil(LEAST_WIDE / (double) Math.max(window.width(), window.height())));
        PlainFile.lay(file, DrawingPainter.png(svg, window.width() * scaled));
        PlainFile.lay(beside(file), svg.getBytes(StandardCharsets.UTF_8));
        return "As a drawing too: " + beside(file) + ".\n"
                + (scaled > 1 ? "The PNG file is " + scaled + " times as large, so that its words can be read.\n" : "")
                + drawn.notes().stream().map(note -> note + "\n").collect(Collectors.joining());
    }

    private static Path beside(Path file) {
        String name = String.valueOf(file.getFileName());
        return file.resolveSibling(name.replaceFirst("[.][pP][nN][gG]$", "") + ".svg");
    }
}
