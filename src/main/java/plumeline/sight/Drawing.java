package plumeline.sight;

import java.util.ArrayList;
import java.util.List;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.LinearRing;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.operation.union.UnaryUnionOp;
import plumeline.geom.Body;
import plumeline.geom.Clearance;
import plumeline.geom.Point;
import plumeline.geom.Projection;
import plumeline.geom.Solid;
import plumeline.geom.Station;
import plumeline.geom.Vec;

/// Outlines and edges for drawing and for checking; the solver's inner loop does without.
final class Drawing {
    private static final GeometryFactory FACTORY = new GeometryFactory();
    private static final int HALVINGS = 10;
    private static final double AHEAD = 1 - 1e-6;

    /// A rim or an edge, from share 0 to 1.
    private interface Line {
        Vec at(double share);
    }

    private Drawing() {}

    /// Corners on the exact outline, both ends of each straight side among them.
    static Outline outline(Shade shade, int steps) {
        List<Point> corners = new ArrayList<>();
        for (Shade.Run run : shade.runs()) {
            double length = run.to() - run.from();
            int pieces = run.isSide() ? 1 : Math.max(1, (int) Math.ceil(steps * length / (2 * Math.PI) - 1e-9));
            for (int i = 0; i < pieces; i++) {
                shade.at(run, run.from() + length * i / pieces);
                corners.add(new Point(shade.tx, shade.ty));
            }
        }
        return new Outline(corners);
    }

    static List<Face> united(List<Outline> parts) {
        List<Geometry> polygons = new ArrayList<>();
        for (Outline part : parts) {
            polygons.add(FACTORY.createPolygon(ring(part.corners())));
        }
        Geometry union = UnaryUnionOp.union(polygons);
        List<Face> faces = new ArrayList<>();
        for (int i = 0; union != null && i < union.getNumGeometries(); i++) {
            if (union.getGeometryN(i) instanceof Polygon polygon) {
                List<List<Point>> holes = new ArrayList<>();
                for (int h = 0; h < polygon.getNumInteriorRing(); h++) {
                    holes.add(points(polygon.getInteriorRingN(h)));
                }
                faces.add(new Face(points(polygon.getExteriorRing()), holes));
            }
        }
        return faces;
    }

    private static Coordinate[] ring(List<Point> corners) {
        Coordinate[] ring = new Coordinate[corners.size() + 1];
        for (int i = 0; i < corners.size(); i++) {
            ring[i] = new Coordinate(corners.get(i).x(), corners.get(i).y());
        }
        ring[corners.size()] =
                new Coordinate(corners.getFirst().x(), corners.getFirst().y());
        return ring;
    }

    private static List<Point> points(LinearRing ring) {
        List<Point> points = new ArrayList<>();
        for (int i = 0; i < ring.getNumPoints() - 1; i++) {
            points.add(new Point(ring.getCoordinateN(i).x, ring.getCoordinateN(i).y));
        }
        return points;
    }

    /// The rims of a body (or a box's edges) as runs that are seen or hidden.
    static List<Edge> edges(Projection projection, Body body, List<Body> others, int steps) {
        List<Body> blockers = new ArrayList<>(List.of(body));
        for (Body other : others) {
            if (!other.equals(body) && Sight.leastDepthMetres(projection, other) > 0) {
                blockers.add(other);
            }
        }
        List<Edge> edges = new ArrayList<>();
        for (Line line : lines(body)) {
            split(projection, line, steps, blockers, edges);
        }
        return edges;
    }

    private static List<Line> lines(Body body) {
        List<Line> lines = new ArrayList<>();
        switch (body.solid()) {
            case Solid.Revolved revolved -> {
                for (Station station : revolved.stations()) {
                    if (station.radiusMetres() > 0) {
                        lines.add(share -> rim(body, station, share));
                    }
                }
            }
            case Solid.Box box -> {
                List<Vec> corners = box.corners().stream().map(body::place).toList();
                for (int i = 0; i < 8; i++) {
                    for (int bit = 1; bit < 8; bit <<= 1) {
                        if ((i & bit) == 0) {
                            Vec from = corners.get(i);
                            Vec to = corners.get(i | bit);
                            lines.add(share -> from.times(1 - share).plus(to.times(share)));
                        }
                    }
                }
            }
        }
        return lines;
    }

    private static Vec rim(Body body, Station station, double share) {
        double angle = 2 * Math.PI * share;
        return body.place(new Vec(
                station.radiusMetres() * Math.cos(angle),
                station.radiusMetres() * Math.sin(angle),
                station.heightMetres()));
    }

    private static void split(Projection projection, Line line, int steps, List<Body> blockers, List<Edge> edges) {
        List<Point> run = new ArrayList<>(List.of(projection.project(line.at(0))));
        Edge.Showing showing = showing(projection, line.at(0.5 / steps), blockers);
        for (int i = 1; i <= steps; i++) {
            Edge.Showing here = showing(projection, line.at((i - 0.5) / steps), blockers);
            if (here != showing) {
                double turn = turn(projection, line, (i - 1.5) / steps, (i - 0.5) / steps, showing, blockers);
                Point last = run.getLast();
                boolean isPast = turn < (i - 1.0) / steps;
                if (isPast) {
                    run.removeLast();
                }
                run.add(projection.project(line.at(turn)));
                edges.add(new Edge(run, showing));
                run = new ArrayList<>(List.of(run.getLast()));
                if (isPast) {
                    run.add(last);
                }
            }
            showing = here;
            run.add(projection.project(line.at((double) i / steps)));
        }
        edges.add(new Edge(run, showing));
    }

    /// Where between two places of a line it passes from seen to hidden or back, by halving.
    private static double turn(
            Projection projection, Line line, double from, double to, Edge.Showing showing, List<Body> blockers) {
        double low = from;
        double high = to;
        for (int i = 0; i < HALVINGS; i++) {
            double middle = (low + high) / 2;
            if (showing(projection, line.at(middle), blockers) == showing) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return (low + high) / 2;
    }

    private static Edge.Showing showing(Projection projection, Vec place, List<Body> blockers) {
        return isBlocked(projection, place, blockers) ? Edge.Showing.HIDDEN : Edge.Showing.SEEN;
    }

    /// Whether something stands between the lens point and a place of a surface; through a tank's wall the straight
    /// line to the place counts, which is near enough for line art.
    private static boolean isBlocked(Projection projection, Vec place, List<Body> blockers) {
        Vec eye = projection.aim().eye();
        Vec end = eye.plus(place.minus(eye).times(AHEAD));
        for (Body blocker : blockers) {
            if (Clearance.isMet(blocker, eye, end)) {
                return true;
            }
        }
        return false;
    }
}
