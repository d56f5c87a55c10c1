package plumeline.render;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import plumeline.scenery.World;
import plumeline.trace.Eye;
import plumeline.trace.Look;
import plumeline.trace.Tracer;

/// Which part each pixel shows at its middle, seen from the lens point: a flat colour a name, and how many pixels each
/// has. Panes and water are looked through.
///
/// @param parts what there is, in the world's order, lamps after bodies; what has one name is one part
/// @param seen the part of each pixel, row by row from the top: an index into the parts, −1 for nothing
/// @param mirrored what each shows mirrored, likewise
/// @param window what of the camera's picture is seen
public record PartsView(List<Named> parts, List<Integer> seen, List<Integer> mirrored, Window window) {
    /// Nothing.
    private static final int NONE = -1;

    private static final int BLACK = 0;

    /// How far hues lie apart from one name to the next, turns: the golden section, so that near names differ most.
    private static final double TURN = 0.6180339887498949;

    private static final double[] LIGHTS = {1, 0.72, 0.48};
    private static final double[] DEPTHS = {0.85, 0.5};

    /// A part by its name.
    ///
    /// @param index its place in the list
    /// @param name what it is called
    /// @param colour its flat colour, `red · 65536 + green · 256 + blue`
    /// @param pixels how many pixels show it
    /// @param mirroredPixels how many show it mirrored
    public record Named(int index, String name, int colour, int pixels, int mirroredPixels) {
        /// Gives its colour as it is written.
        ///
        /// @return `#rrggbb`
        public String hex() {
            return String.format(Locale.ROOT, "#%06x", colour);
        }
    }

    /// Copies the lists.
    public PartsView {
        parts = List.copyOf(parts);
        seen = List.copyOf(seen);
        mirrored = List.copyOf(mirrored);
    }

    /// Looks.
    ///
    /// @param set the shot
    /// @param realSeconds when, real seconds after GO
    /// @param window what of the camera's picture is seen
    /// @return the view
    public static PartsView of(ShotSet set, double realSeconds, Window window) {
        World world = set.worldAt(realSeconds);
        Look look = set.at(realSeconds);
        List<String> names = new ArrayList<>();
        world.parts().forEach(part -> addOnce(names, part.name()));
        world.lights().forEach(light -> addOnce(names, light.name()));
        List<Integer> seen = new ArrayList<>();
        List<Integer> mirrored = new ArrayList<>();
        Eye eye = window.of(look.eye());
        int width = window.plateWidth();
        int height = window.plateHeight();
        int left = window.leftPixels();
        int top = window.topPixels();
        for (int y = top; y < top + window.height(); y++) {
            for (int x = left; x < left + window.width(); x++) {
                Tracer.Seen at = look.tracer()
                        .seen(
                                eye,
                                ((x + 0.5) / width - 0.5) * eye.widthTangent(),
                                (0.5 - (y + 0.5) / height) * eye.heightTangent());
                seen.add(index(world, names, at.part()));
                mirrored.add(index(world, names, at.mirrored()));
            }
        }
        return new PartsView(list(names, seen, mirrored), seen, mirrored, window);
    }

    private static void addOnce(List<String> names, String name) {
        if (!names.contains(name)) {
            names.add(name);
        }
    }

    private static int index(World world, List<String> names, int part) {
        if (part == NONE) {
            return NONE;
        }
        return names.indexOf(
                part >= 0
                        ? world.parts().get(part).name()
                        : world.lights().get(NONE - 1 - part).name());
    }

    private static List<Named> list(List<String> names, List<Integer> seen, List<Integer> mirrored) {
        int[] pixels = new int[names.size()];
        int[] inMirrors = new int[names.size()];
        seen.stream().filter(index -> index != NONE).forEach(index -> pixels[index]++);
        mirrored.stream().filter(index -> index != NONE).forEach(index -> inMirrors[index]++);
        List<Named> parts = new ArrayList<>();
        for (int i = 0; i < names.size(); i++) {
            parts.add(new Named(i, names.get(i), colour(i), pixels[i], inMirrors[i]));
        }
        return parts;
    }

    /// No two of the first hundreds are alike, and none is black.
    private static int colour(int index) {
        double hue = 6 * (index * TURN % 1);
        double light = LIGHTS[index / 2 % LIGHTS.length];
        double depth = DEPTHS[index % DEPTHS.length];
        return channel(hue, 5, light, depth) << 16 | channel(hue, 3, light, depth) << 8 | channel(hue, 1, light, depth);
    }

    /// A channel of a colour by hue, depth and light.
    private static int channel(double hue, int from, double light, double depth) {
        double at = (from + hue) % 6;
        double less = Math.clamp(Math.min(at, 4 - at), 0, 1);
        return (int) Math.round(255 * light * (1 - depth * less));
    }

    /// Gives the picture: what each pixel shows.
    ///
    /// @return flat colours, black for nothing
    public Pixels picture() {
        return picture(seen);
    }

    /// Gives the picture of what each pixel shows mirrored.
    ///
    /// @return flat colours, black where nothing is mirrored
    public Pixels mirroredPicture() {
        return picture(mirrored);
    }

    private Pixels picture(List<Integer> of) {
        int[] packed = new int[of.size()];
        for (int i = 0; i < packed.length; i++) {
            packed[i] = of.get(i) == NONE ? BLACK : parts.get(of.get(i)).colour();
        }
        return new Pixels(window.width(), window.height(), packed);
    }
}
