package plumeline.draw;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import plumeline.geom.Pinhole;
import plumeline.geom.Point;
import plumeline.geom.Vec;
import plumeline.sight.Extent;
import plumeline.sketch.Box;
import plumeline.sketch.Markup;
import plumeline.sketch.Page;
import plumeline.sketch.Pen;
import plumeline.sketch.Shapes;
import plumeline.sketch.Spot;
import plumeline.stage.Mirrored;
import plumeline.stage.Scene;
import plumeline.stage.Stage;
import plumeline.stage.TankWalls;

/// What the water's surface and the walls beside the facing one show a second time, dashed, within the front glass as
/// far as it is wet.
final class MirrorImages {
    private final Stage stage;
    private final Scene scene;
    private final TankWalls walls;
    private final Function<Point, Spot> onPaper;

    /// @param onPaper from the picture to the paper
    MirrorImages(Stage stage, Scene scene, TankWalls walls, Function<Point, Spot> onPaper) {
        this.stage = stage;
        this.scene = scene;
        this.walls = walls;
        this.onPaper = onPaper;
    }

    /// Draws the images that are in the picture.
    ///
    /// @param subjects what stands there itself, and may stand before an image
    /// @param fineness longest straight piece that is judged as one, tangent
    /// @param picture the picture on the paper
    /// @param clip id of the picture's clipping path
    /// @return the images that are seen
    List<Mirrored> draw(Page page, List<Silhouettes.Subject> subjects, double fineness, Box picture, String clip) {
        List<Spot> wet = wetGlass();
        if (wet.isEmpty()) {
            return List.of();
        }
        String wetClip = page.id("clip.wet");
        Markup group = page.group("mirrored").with("clip-path", "url(#" + clip + ")");
        group.add(Markup.of("clipPath", Shapes.closed(Pen.EDGE, wet)).with("id", wetClip));
        double across = scene.picture().widthTangent() / 2;
        double up = scene.picture().heightTangent() / 2;
        List<Mirrored> seen = new ArrayList<>();
        for (Mirrored mirrored : Mirrored.of(walls, scene)) {
            String name = stage.shot().placed().get(mirrored.thing()).name();
            if (subjects.stream().noneMatch(subject -> subject.name().equals(name))) {
                continue;
            }
            List<Silhouettes.Subject> all = new ArrayList<>(subjects);
            all.add(new Silhouettes.Subject("", mirrored.image(), mirrored.view(), false));
            List<List<Spot>> runs = new Silhouettes(all, fineness)
                    .draw(new Extent(-across, across, -up, up)).stream()
                            .filter(drawn -> drawn.name().isEmpty())
                            .flatMap(drawn -> drawn.outline().stream())
                            .filter(Silhouettes.Run::isSeen)
                            .map(run -> run.points().stream().map(onPaper).toList())
                            .toList();
            if (runs.stream().flatMap(List::stream).anyMatch(spot -> picture.holds(spot) && isInside(spot, wet))) {
                Markup image = Markup.of("g")
                        .with("id", page.id("mirrored." + name + "." + mirrored.by()))
                        .with("clip-path", "url(#" + wetClip + ")");
                runs.forEach(run -> image.add(Shapes.run(Pen.HIDDEN, run)));
                group.add(image);
                seen.add(mirrored);
            }
        }
        return seen;
    }

    /// The outer front glass below the water line; nothing where the camera isn't before it.
    private List<Spot> wetGlass() {
        Vec low = walls.outside().low();
        Vec high = walls.outside().high();
        double water = walls.waterLineMetres();
        Pinhole plain = new Pinhole(scene.aim());
        List<Vec> corners = List.of(
                low,
                new Vec(high.x(), low.y(), low.z()),
                new Vec(high.x(), low.y(), water),
                new Vec(low.x(), low.y(), water));
        return scene.aim().eye().y() >= low.y() || corners.stream().anyMatch(corner -> plain.depth(corner) <= 0.01)
                ? List.of()
                : corners.stream().map(plain::project).map(onPaper).toList();
    }

    /// Whether a spot is inside a convex ring, whichever way it runs.
    private static boolean isInside(Spot spot, List<Spot> ring) {
        int left = 0;
        for (int i = 0; i < ring.size(); i++) {
            Spot a = ring.get(i);
            Spot b = ring.get((i + 1) % ring.size());
            if ((b.x() - a.x()) * (spot.y() - a.y()) - (b.y() - a.y()) * (spot.x() - a.x()) > 0) {
                left++;
            }
        }
        return left == 0 || left == ring.size();
    }
}
