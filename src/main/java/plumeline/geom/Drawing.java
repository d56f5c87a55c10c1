package plumeline.geom;

import java.util.ArrayList;
import java.util.List;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.LinearRing;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.operation.union.UnaryUnionOp;

/// Outlines and edges for drawing and for checking; the solver's inner loop does without.
final class Drawing {
    private static final GeometryFactory FACTORY = new GeometryFactory();
    private static final int STEPS = 64;
    private static final double ON_EDGE = 1e-9;
    private static final double AHEAD = 1 - 1e-6;

    private Drawing() {}

    static Outline outline(Hull hull) {
        List<Point> corners = new ArrayList<>(hull.count);
        for (int i = 0; i < hull.count; i++) {
            corners.add(new Point(hull.x[i], hull.y[i]));
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

    /// The deepest corner that lies on the outline of the union of parts.
    static double deepest(List<Seen> parts) {
        List<Hull> hulls = new ArrayList<>();
        for (Seen part : parts) {
            hulls.add(Hull.of(part, STEPS));
        }
        double deepest = Double.NEGATIVE_INFINITY;
        for (Hull hull : hulls) {
            for (int i = 0; i < hull.count; i++) {
                boolean covered = false;
                for (Hull other : hulls) {
                    covered |= other != hull && other.outside(hull.x[i], hull.y[i]) < -ON_EDGE;
                }
                if (!covered) {
                    deepest = Math.max(deepest, hull.depth[i]);
                }
            }
        }
        return deepest;
    }

    /// The rims of a body (or a box's edges) as runs that are seen or hidden.
    static List<Edge> edges(Projection projection, Body body, List<Body> others, int steps) {
        List<Lump> blockers = new ArrayList<>(Lump.of(body));
        for (Body other : others) {
            if (!other.equals(body) && Sight.leastDepthMetres(projection, other) > 0) {
                blockers.addAll(Lump.of(other));
            }
        }
        List<Edge> edges = new ArrayList<>();
        for (List<Vec> line : lines(body, steps)) {
            split(projection, line, blockers, edges);
        }
        return edges;
    }

    private static List<List<Vec>> lines(Body body, int steps) {
        List<List<Vec>> lines = new ArrayList<>();
        switch (body.solid()) {
            case Solid.Revolved revolved -> {
                for (Station station : revolved.stations()) {
                    if (station.radiusMetres() > 0) {
                        lines.add(rim(body, station, steps));
                    }
                }
            }
            case Solid.Box box -> {
                for (int i = 0; i < 8; i++) {
                    for (int bit = 1; bit < 8; bit <<= 1) {
                        if ((i & bit) == 0) {
                            lines.add(straight(corner(body, box, i), corner(body, box, i | bit), steps));
                        }
                    }
                }
            }
        }
        return lines;
    }

    private static List<Vec> rim(Body body, Station station, int steps) {
        List<Vec> rim = new ArrayList<>(steps + 1);
        for (int i = 0; i <= steps; i++) {
            double angle = 2 * Math.PI * i / steps;
            rim.add(body.place(new Vec(
                    station.radiusMetres() * Math.cos(angle),
                    station.radiusMetres() * Math.sin(angle),
                    station.heightMetres())));
        }
        return rim;
    }

    private static Vec corner(Body body, Solid.Box box, int i) {
        return body.place(new Vec(
                ((i & 1) == 0 ? -0.5 : 0.5) * box.widthMetres(),
                ((i & 2) == 0 ? -0.5 : 0.5) * box.depthMetres(),
                (i & 4) == 0 ? 0 : box.heightMetres()));
    }

    private static List<Vec> straight(Vec from, Vec to, int steps) {
        List<Vec> line = new ArrayList<>();
        for (int i = 0; i <= steps; i++) {
            double share = (double) i / steps;
            line.add(from.times(1 - share).plus(to.times(share)));
        }
        return line;
    }

    private static void split(Projection projection, List<Vec> line, List<Lump> blockers, List<Edge> edges) {
        List<Point> run = new ArrayList<>();
        Edge.Showing showing = Edge.Showing.SEEN;
        for (int i = 1; i < line.size(); i++) {
            Vec middle = line.get(i - 1).plus(line.get(i)).times(0.5);
            Edge.Showing here = isBlocked(projection, middle, blockers) ? Edge.Showing.HIDDEN : Edge.Showing.SEEN;
            if (run.isEmpty()) {
                run.add(projection.project(line.get(i - 1)));
            } else if (here != showing) {
                edges.add(new Edge(run, showing));
                run = new ArrayList<>(List.of(run.getLast()));
            }
            showing = here;
            run.add(projection.project(line.get(i)));
        }
        if (run.size() > 1) {
            edges.add(new Edge(run, showing));
        }
    }

    /// Whether something stands between the lens point and a place of a surface; through a tank's wall the straight
    /// line to the place counts, which is near enough for line art.
    private static boolean isBlocked(Projection projection, Vec place, List<Lump> blockers) {
        Vec eye = projection.aim().eye();
        Vec end = eye.plus(place.minus(eye).times(AHEAD));
        for (Lump lump : blockers) {
            if (Rays.crosses(lump, eye, end)) {
                return true;
            }
        }
        return false;
    }
}
