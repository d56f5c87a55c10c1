package plumeline.draw;

import java.util.ArrayList;
import java.util.List;
import plumeline.geom.Body;
import plumeline.geom.Point;
import plumeline.geom.Projection;
import plumeline.geom.Solid;
import plumeline.geom.Station;
import plumeline.sight.Edge;
import plumeline.sight.Extent;
import plumeline.sight.Face;
import plumeline.sight.Sight;

/// The lines of bodies in the picture: outlines as unions and rims within them, split into what is seen and what stands
/// behind something opaque.
final class Silhouettes {
    private static final int STEPS = 48;
    private static final int LEAST_STEPS = 8;
    private static final double TENTH = 0.1;

    /// A rim is drawn where the profile turns by this much or more; a smoothly curved bottle has none.
    private static final double LEAST_TURN_RADIANS = Math.toRadians(18);

    /// A body as the picture sees it.
    ///
    /// @param name its name
    /// @param body the body
    /// @param view how it is seen
    /// @param isOpaque whether it hides what stands behind
    record Subject(String name, Body body, Projection view, boolean isOpaque) {}

    /// A run of a line.
    ///
    /// @param points its points
    /// @param isSeen whether it is in view
    record Run(List<Point> points, boolean isSeen) {
        Run {
            points = List.copyOf(points);
        }
    }

    /// A body's lines.
    ///
    /// @param name the body's name
    /// @param outline runs of its outline
    /// @param rims runs of its rims and edges that are in view
    /// @param shape its outline whole
    /// @param hiders outlines of what may hide it
    record Drawn(String name, List<Run> outline, List<Run> rims, List<Face> shape, List<List<Face>> hiders) {
        Drawn {
            outline = List.copyOf(outline);
            rims = List.copyOf(rims);
            shape = List.copyOf(shape);
            hiders = List.copyOf(hiders);
        }

        boolean isSeen() {
            return outline.stream().anyMatch(Run::isSeen);
        }
    }

    /// A body flat in the picture.
    private record Flat(Subject subject, double depth, List<Face> faces, Extent extent) {
        boolean meets(Extent other) {
            return extent.left() <= other.right()
                    && other.left() <= extent.right()
                    && extent.bottom() <= other.top()
                    && other.bottom() <= extent.top();
        }

        boolean covers(Point point) {
            return point.x() >= extent.left()
                    && point.x() <= extent.right()
                    && point.y() >= extent.bottom()
                    && point.y() <= extent.top()
                    && faces.stream().anyMatch(face -> isInside(point, face));
        }

        /// Whether all of a body lies behind this one.
        boolean coversAll(Flat other) {
            return faces.size() == 1
                    && faces.getFirst().holes().isEmpty()
                    && other.faces().stream()
                            .allMatch(face -> face.shell().stream().allMatch(this::covers));
        }
    }

    private final double fineness;
    private final List<Flat> flats = new ArrayList<>();

    /// @param fineness longest straight piece that is judged as one, tangent
    Silhouettes(List<Subject> subjects, double fineness) {
        this.fineness = fineness;
        for (Subject subject : subjects) {
            Projection view = subject.view();
            if (Sight.leastDepthMetres(view, subject.body()) > 0) {
                List<Face> faces = Sight.united(Sight.outline(view, subject.body(), STEPS));
                double depth = view.aim().depthMetres(subject.body().middle());
                flats.add(new Flat(subject, depth, faces, Sight.extent(view, subject.body())));
            }
        }
    }

    /// Draws every body that is in front of the lens and reaches into a part of the picture, farthest first.
    List<Drawn> draw(Extent part) {
        List<Flat> order = new ArrayList<>(flats);
        order.removeIf(flat -> !flat.meets(part));
        order.sort((a, b) -> Double.compare(b.depth(), a.depth()));
        return order.stream().map(this::draw).toList();
    }

    private Drawn draw(Flat flat) {
        List<Flat> before = flats.stream()
                .filter(other ->
                        other.depth() < flat.depth() && other.subject().isOpaque() && other.meets(flat.extent()))
                .toList();
        List<Run> outline = new ArrayList<>();
        for (Face face : flat.faces()) {
            outline.addAll(splitRing(face.shell(), before));
            face.holes().forEach(hole -> outline.addAll(splitRing(hole, before)));
        }
        return new Drawn(
                flat.subject().name(),
                outline,
                rims(flat, before),
                flat.faces(),
                before.stream().map(Flat::faces).toList());
    }

    /// Rims that the body itself doesn't hide, as far as nothing else does.
    private List<Run> rims(Flat flat, List<Flat> before) {
        if (before.stream().anyMatch(other -> other.coversAll(flat))) {
            return List.of();
        }
        Subject subject = flat.subject();
        return Sight.edges(subject.view(), plainer(subject.body()), List.of(), rimSteps(flat)).stream()
                .filter(edge -> edge.showing() == Edge.Showing.SEEN)
                .flatMap(edge -> split(edge.points(), before).stream())
                .filter(Run::isSeen)
                .toList();
    }

    /// As many steps round a rim as keep it within a tenth of the fineness; a straight edge of a box, which hides it
    /// whole or not at all, takes the fewest.
    private int rimSteps(Flat flat) {
        if (flat.subject().body().solid() instanceof Solid.Box) {
            return LEAST_STEPS;
        }
        double radius = flat.extent().width() / 2 / fineness;
        int quarter = (int) Math.ceil(Math.PI * Math.sqrt(radius / 2 / TENTH) / 4);
        return Math.clamp(4L * quarter, LEAST_STEPS, STEPS);
    }

    private List<Run> splitRing(List<Point> ring, List<Flat> before) {
        List<Point> closed = new ArrayList<>(ring);
        closed.add(ring.getFirst());
        return split(closed, before);
    }

    private List<Run> split(List<Point> line, List<Flat> before) {
        if (before.isEmpty()) {
            return List.of(new Run(line, true));
        }
        List<Run> runs = new ArrayList<>();
        List<Point> points = new ArrayList<>(List.of(line.getFirst()));
        boolean seen = true;
        for (int i = 1; i < line.size(); i++) {
            Point from = line.get(i - 1);
            Point to = line.get(i);
            int pieces =
                    (int) Math.clamp(Math.ceil(Math.hypot(to.x() - from.x(), to.y() - from.y()) / fineness), 1, 400);
            for (int k = 0; k < pieces; k++) {
                boolean here = !isCovered(between(from, to, (k + 0.5) / pieces), before);
                if (points.size() > 1 && here != seen) {
                    runs.add(new Run(points, seen));
                    points = new ArrayList<>(List.of(points.getLast()));
                }
                seen = here;
                points.add(between(from, to, (k + 1.0) / pieces));
            }
        }
        runs.add(new Run(points, seen));
        return runs;
    }

    private static Point between(Point from, Point to, double share) {
        return new Point(from.x() + (to.x() - from.x()) * share, from.y() + (to.y() - from.y()) * share);
    }

    private static boolean isCovered(Point point, List<Flat> before) {
        return before.stream().anyMatch(flat -> flat.covers(point));
    }

    static boolean isInside(Point point, Face face) {
        return isInside(point, face.shell()) && face.holes().stream().noneMatch(hole -> isInside(point, hole));
    }

    private static boolean isInside(Point point, List<Point> ring) {
        boolean inside = false;
        for (int i = 0, j = ring.size() - 1; i < ring.size(); j = i++) {
            Point a = ring.get(i);
            Point b = ring.get(j);
            if (a.y() > point.y() != b.y() > point.y()
                    && point.x() < (b.x() - a.x()) * (point.y() - a.y()) / (b.y() - a.y()) + a.x()) {
                inside = !inside;
            }
        }
        return inside;
    }

    /// The same body without the rims of a smooth profile.
    private static Body plainer(Body body) {
        return switch (body.solid()) {
            case Solid.Box _ -> body;
            case Solid.Revolved(List<Station> stations) -> {
                List<Station> kept = new ArrayList<>(List.of(stations.getFirst()));
                for (int i = 1; i < stations.size() - 1; i++) {
                    if (turn(stations.get(i - 1), stations.get(i), stations.get(i + 1)) >= LEAST_TURN_RADIANS) {
                        kept.add(stations.get(i));
                    }
                }
                kept.add(stations.getLast());
                yield body.solid() instanceof Solid.Revolved && kept.size() < stations.size() && spans(kept)
                        ? new Body(new Solid.Revolved(kept), body.pose())
                        : body;
            }
        };
    }

    private static boolean spans(List<Station> stations) {
        return stations.getLast().heightMetres() > 0
                && stations.stream().anyMatch(station -> station.radiusMetres() > 0);
    }

    private static double turn(Station a, Station b, Station c) {
        double before = Math.atan2(b.radiusMetres() - a.radiusMetres(), b.heightMetres() - a.heightMetres());
        double after = Math.atan2(c.radiusMetres() - b.radiusMetres(), c.heightMetres() - b.heightMetres());
        return Math.abs(after - before);
    }
}
