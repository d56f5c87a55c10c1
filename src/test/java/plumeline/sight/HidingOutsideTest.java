package plumeline.sight;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.algorithm.construct.LargestEmptyCircle;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.operation.distance.IndexedFacetDistance;
import org.locationtech.jts.operation.overlayng.OverlayNG;
import org.locationtech.jts.operation.overlayng.OverlayNGRobust;
import plumeline.geom.Aim;
import plumeline.geom.Body;
import plumeline.geom.Pinhole;
import plumeline.geom.Point;
import plumeline.geom.Pose;
import plumeline.geom.Projection;
import plumeline.geom.Solid;
import plumeline.geom.Station;
import plumeline.geom.Vec;
import plumeline.tidy.Outside;

/// Hidden margins against a general-purpose geometry library that unites dense polygons and knows nothing of ellipses.
final class HidingOutsideTest {
    private static final GeometryFactory FACTORY = new GeometryFactory();
    private static final int ROUND = 1200;
    private static final double STEP = 4e-5;

    /// Polygons of so many corners lie this much inside their outlines.
    private static final double INSIDE_TOLERANCE = 1e-6;
    /// A sharp top of the distance may lie half a step beside the nearest sample.
    private static final double OUTSIDE_TOLERANCE = 1e-6 + STEP;

    private static final Solid CAN = Solid.cylinder(0.042, 0.118);
    private static final Solid FLACON = new Solid.Revolved(List.of(
            new Station(0, 0.021), new Station(0.09, 0.021), new Station(0.09, 0.010), new Station(0.118, 0.010)));
    private static final Solid BOTTLE = new Solid.Revolved(List.of(
            new Station(0, 0.015),
            new Station(0.05, 0.03),
            new Station(0.09, 0.03),
            new Station(0.11, 0.012),
            new Station(0.15, 0.012),
            new Station(0.16, 0.016)));
    private static final Solid CARTON = new Solid.Box(0.05, 0.03, 0.1);
    private static final List<Solid> SOLIDS = List.of(CAN, FLACON, BOTTLE, CARTON);

    @Test
    @Outside(
            source = "JTS Topology Suite 1.20.0, union, difference, distance and largest empty circle",
            place = "150 random scenes of one to three hiders",
            kind = "reference library",
            printedDigits = 6)
    void hidden_randomScenes_isTheLibrarysMargin() {
        compare(20261125, 150, 3, 3, false);
    }

    @Test
    @Outside(
            source = "JTS Topology Suite 1.20.0, union and distance",
            place = "120 scenes of a smaller thing well behind",
            kind = "reference library",
            printedDigits = 6)
    void hidden_wellBehind_isTheLibrarysMargin() {
        assertThat(compare(4711, 120, 2, 0.6, false)).isGreaterThan(20);
    }

    /// Seen level, upright bodies have sides that are exactly parallel in the picture: two outlines then bend sharply
    /// in the very same direction, which once hid a contact.
    @Test
    @Outside(
            source = "JTS Topology Suite 1.20.0, union, difference, distance and largest empty circle",
            place = "100 random scenes seen by a level lens, bodies upright or leaning",
            kind = "reference library",
            printedDigits = 6)
    void hidden_seenLevel_isTheLibrarysMargin() {
        compare(815, 100, 3, 4, true);
    }

    @Test
    @Outside(
            source = "JTS Topology Suite 1.20.0, union and difference",
            place = "a flacon that stands out over a cylinder standing twice in one place, level lens: it once read"
                    + " as hidden",
            kind = "reference library",
            printedDigits = 6)
    void hidden_parallelSides_isTheLibrarysMargin() {
        Pinhole lens = new Pinhole(new Aim(new Vec(0, -0.6176790103332288, 0.4008204531800359), 0, 0));
        Vec base = new Vec(-0.006388775443004908, 0.47539333072498835, 0);
        Body hidden = new Body(FLACON, new Pose(base, 0.1562773091467684, -0.36162262297048053));
        Vec low = new Vec(0, 0, 0.01755127293667543);
        List<Body> hiders = List.of(
                new Body(CAN, new Pose(low, 5.057665533858749, 0)),
                new Body(CAN, new Pose(low, -5.057665533858749, 0)));
        assertThat(Sight.hidden(lens, hidden, hiders).least())
                .isEqualTo(margin(lens, hidden, hiders), within(OUTSIDE_TOLERANCE));
    }

    private static int compare(long seed, int scenes, int mostHiders, double spread, boolean isLevel) {
        Random random = new Random(seed);
        int inside = 0;
        for (int n = 0; n < scenes; n++) {
            Vec eye = new Vec(
                    random.nextDouble(-0.05, 0.05),
                    random.nextDouble(-0.9, -0.4),
                    random.nextDouble(0.02, 0.08 + spread * 0.05));
            Aim aim = Aim.toward(eye, new Vec(random.nextDouble(-0.02, 0.02), 0, 0.05));
            Pinhole lens = new Pinhole(isLevel ? new Aim(eye, aim.turnRadians(), 0) : aim);
            Vec base = new Vec(
                    random.nextDouble(-0.01, 0.01) * spread,
                    random.nextDouble(0.1, 0.5),
                    random.nextDouble(-0.01, 0.005) * spread);
            Body hidden = new Body(pick(random), new Pose(base, random.nextDouble(6), lean(random) * spread / 3));
            List<Body> hiders = new ArrayList<>();
            for (int i = 0; i <= n % mostHiders; i++) {
                Vec at = new Vec(random.nextDouble(-0.017, 0.017) * spread, random.nextDouble(-0.03, 0.03), 0);
                hiders.add(new Body(pick(random), new Pose(at, random.nextDouble(6), lean(random) * spread / 3)));
            }
            double margin = Sight.hidden(lens, hidden, hiders).least();
            double expected = margin(lens, hidden, hiders);
            inside += expected > 0 ? 1 : 0;
            assertThat(margin)
                    .as("seed %d scene %d", seed, n)
                    .isEqualTo(expected, within(expected > 0 ? INSIDE_TOLERANCE : OUTSIDE_TOLERANCE));
        }
        return inside;
    }

    private static Solid pick(Random random) {
        return SOLIDS.get(random.nextInt(SOLIDS.size()));
    }

    private static double lean(Random random) {
        return random.nextInt(3) == 0 ? random.nextDouble(-0.3, 0.3) : 0;
    }

    static double margin(Projection lens, Body hidden, List<Body> hiders) {
        Geometry union = union(lens, hiders);
        Geometry own = union(lens, List.of(hidden));
        Geometry out = OverlayNGRobust.overlay(own, union, OverlayNG.DIFFERENCE);
        if (out.getArea() < 1e-13) {
            return own.getBoundary().distance(union.getBoundary());
        }
        var distance = new IndexedFacetDistance(union);
        double most = new LargestEmptyCircle(union, own, 1e-6).getRadiusLine().getLength();
        for (int i = 0; i < out.getNumGeometries(); i++) {
            Coordinate[] ring = out.getGeometryN(i).getBoundary().getCoordinates();
            for (int j = 1; j < ring.length; j++) {
                int pieces = (int) Math.ceil(ring[j].distance(ring[j - 1]) / STEP);
                for (int k = 0; k < pieces; k++) {
                    double share = (double) k / pieces;
                    Coordinate at = new Coordinate(
                            ring[j - 1].x + share * (ring[j].x - ring[j - 1].x),
                            ring[j - 1].y + share * (ring[j].y - ring[j - 1].y));
                    most = Math.max(most, distance.distance(FACTORY.createPoint(at)));
                }
            }
        }
        return -most;
    }

    static Geometry union(Projection lens, List<Body> bodies) {
        List<Geometry> parts = new ArrayList<>();
        for (Body body : bodies) {
            switch (body.solid()) {
                case Solid.Revolved(List<Station> stations) -> {
                    for (int i = 1; i < stations.size(); i++) {
                        List<Coordinate> rims = new ArrayList<>();
                        addRim(rims, lens, body, stations.get(i - 1));
                        addRim(rims, lens, body, stations.get(i));
                        parts.add(hull(rims));
                    }
                }
                case Solid.Box box -> {
                    List<Coordinate> corners = new ArrayList<>();
                    for (int i = 0; i < 8; i++) {
                        corners.add(seen(
                                lens,
                                body,
                                new Vec(
                                        ((i & 1) - 0.5) * box.widthMetres(),
                                        ((i >> 1 & 1) - 0.5) * box.depthMetres(),
                                        (i >> 2) * box.heightMetres())));
                    }
                    parts.add(hull(corners));
                }
            }
        }
        return OverlayNGRobust.union(parts);
    }

    private static void addRim(List<Coordinate> to, Projection lens, Body body, Station station) {
        for (int k = 0; k < ROUND; k++) {
            double angle = 2 * Math.PI * k / ROUND;
            double radius = station.radiusMetres();
            to.add(seen(
                    lens, body, new Vec(radius * Math.cos(angle), radius * Math.sin(angle), station.heightMetres())));
        }
    }

    private static Coordinate seen(Projection lens, Body body, Vec own) {
        Point point = lens.project(body.place(own));
        return new Coordinate(point.x(), point.y());
    }

    private static Geometry hull(List<Coordinate> points) {
        return FACTORY.createMultiPointFromCoords(points.toArray(new Coordinate[0]))
                .convexHull();
    }
}
