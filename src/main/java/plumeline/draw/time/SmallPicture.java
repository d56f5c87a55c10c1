package plumeline.draw.time;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import plumeline.geom.Body;
import plumeline.geom.Point;
import plumeline.geom.Projection;
import plumeline.sight.Face;
import plumeline.sight.Sight;
import plumeline.sketch.Box;
import plumeline.sketch.Markup;
import plumeline.sketch.Pen;
import plumeline.sketch.Shapes;
import plumeline.sketch.Spot;
import plumeline.solve.FilmAnswer;
import plumeline.solve.ShotAnswer;
import plumeline.stage.Picture;
import plumeline.stage.Scene;
import plumeline.timeline.Span;

/// The outlines of a shot's things as the camera sees them at one frame, the nearest last, cut off at the picture's
/// edge.
final class SmallPicture {
    private static final int STEPS = 24;
    private static final double NEAREST_METRES = 0.01;

    private final Scene scene;
    private final Picture picture;

    private SmallPicture(Scene scene) {
        this.scene = scene;
        picture = scene.picture();
    }

    /// Finds what a span shows first; empty where its shot isn't answered.
    static Optional<SmallPicture> find(FilmAnswer film, Span span) {
        return film.shots().stream()
                .filter(answer -> answer.shot().equals(span.shot()))
                .findFirst()
                .map(answer -> new SmallPicture(scene(answer, span)));
    }

    private static Scene scene(ShotAnswer answer, Span span) {
        List<ShotAnswer.Run> runs = answer.posed().stages();
        ShotAnswer.Run run = runs.stream()
                .filter(one -> one.pass().equals(span.pass()))
                .findFirst()
                .orElse(runs.getFirst());
        return run.stage().scene(answer.posed().values(), (double) span.shotFrame());
    }

    /// How wide it is for its height.
    double aspect() {
        return picture.widthMetres() / picture.heightMetres();
    }

    /// Draws it into a rectangle of its own shape.
    List<Markup> draw(Box box) {
        List<Markup> all = new ArrayList<>();
        List<Body> things = scene.things().stream()
                .filter(body -> Sight.leastDepthMetres(scene.view(body), body) > NEAREST_METRES)
                .sorted(Comparator.comparingDouble((Body body) -> -depth(body)))
                .toList();
        for (Body body : things) {
            Projection view = scene.view(body);
            for (Face face : Sight.united(Sight.outline(view, body, STEPS))) {
                List<Point> seen = cutOff(face.shell());
                if (seen.size() > 2) {
                    all.add(Shapes.closed(
                                    Pen.EDGE,
                                    seen.stream().map(point -> spot(point, box)).toList())
                            .with("fill", "#fff"));
                }
            }
        }
        all.add(Shapes.box(Pen.THIN, box));
        return all;
    }

    private double depth(Body body) {
        return scene.aim().depthMetres(body.pose().base());
    }

    private Spot spot(Point point, Box box) {
        return new Spot(
                box.left() + (point.x() / picture.widthTangent() + 0.5) * box.width(),
                box.top() + (0.5 - point.y() / picture.heightTangent()) * box.height());
    }

    /// What of a polygon lies in the picture, edge by edge of that.
    ///
    /// **Source:** Sutherland and Hodgman, Reentrant polygon clipping, CACM 17 (1974) 32, from memory.
    private List<Point> cutOff(List<Point> polygon) {
        double right = picture.widthTangent() / 2;
        double top = picture.heightTangent() / 2;
        List<Point> kept = polygon;
        for (double[] edge : new double[][] {{1, 0, right}, {-1, 0, right}, {0, 1, top}, {0, -1, top}}) {
            kept = within(kept, edge);
        }
        return kept;
    }

    private static List<Point> within(List<Point> polygon, double[] edge) {
        List<Point> kept = new ArrayList<>();
        for (int i = 0; i < polygon.size(); i++) {
            Point here = polygon.get(i);
            Point next = polygon.get((i + 1) % polygon.size());
            double inside = edge[2] - edge[0] * here.x() - edge[1] * here.y();
            double then = edge[2] - edge[0] * next.x() - edge[1] * next.y();
            if (inside >= 0) {
                kept.add(here);
            }
            if (inside * then < 0) {
                double share = inside / (inside - then);
                kept.add(new Point(here.x() + share * (next.x() - here.x()), here.y() + share * (next.y() - here.y())));
            }
        }
        return kept;
    }
}
