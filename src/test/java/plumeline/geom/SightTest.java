package plumeline.geom;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.operation.union.UnaryUnionOp;

final class SightTest {
    private static final Solid CAN = Solid.cylinder(0.042, 0.118);
    private static final Solid FLACON = new Solid.Revolved(List.of(
            new Station(0, 0.021), new Station(0.09, 0.021), new Station(0.09, 0.010), new Station(0.118, 0.010)));

    private static Pinhole level(double x, double y, double z) {
        return new Pinhole(new Aim(new Vec(x, y, z), 0, 0));
    }

    private static Body at(Solid solid, double x, double y) {
        return new Body(solid, Pose.at(x, y));
    }

    @Test
    void extent_uprightCylinder_isItsTangents() {
        Extent extent = Sight.extent(level(0, -0.6, 0.059), at(CAN, 0, 0));
        double tangent = Math.tan(Math.asin(0.021 / 0.6));
        assertThat(extent.right()).isEqualTo(tangent, within(1e-14));
        assertThat(extent.left()).isEqualTo(-tangent, within(1e-14));
        assertThat(extent.top()).isEqualTo(0.059 / (0.6 - 0.021), within(1e-14));
    }

    @Test
    void hidden_cansInFile_haveTheLeewayOfTheirSpacing() {
        Pinhole lens = level(0, -0.6, 0.059);
        Body front = at(CAN, 0, 0);
        for (int i = 1; i <= 3; i++) {
            Sides sides = Sight.hidden(lens, at(CAN, 0, 0.1 * i), List.of(front));
            double depth = 0.6 + 0.1 * i;
            double expected = depth * (Math.tan(Math.asin(0.021 / 0.6)) - Math.tan(Math.asin(0.021 / depth)));
            assertThat(sides.right() * depth).isEqualTo(expected, within(1e-9));
            assertThat(sides.left() * depth).isEqualTo(expected, within(1e-9));
        }
    }

    @Test
    void hidden_sideways_sticksOutByWhatIsMissing() {
        Sides sides = Sight.hidden(level(0, -0.6, 0.059), at(CAN, 0.01, 0.1), List.of(at(CAN, 0, 0)));
        double right = Math.tan(Math.atan(0.01 / 0.7) + Math.asin(0.021 / Math.hypot(0.7, 0.01)));
        assertThat(sides.right()).isEqualTo(Math.tan(Math.asin(0.021 / 0.6)) - right, within(1e-9));
        assertThat(sides.least()).isEqualTo(sides.right());
    }

    @Test
    void hidden_equalCylindersInFile_allPeekAtOneRadius() {
        for (double spacing : new double[] {0.05, 0.1, 0.4, 1.3}) {
            for (double moved : new double[] {0.02099, 0.02101}) {
                Pinhole lens = level(moved, -0.6, 0.059);
                Body front = at(CAN, 0, 0);
                double least =
                        Sight.hidden(lens, at(CAN, 0, spacing), List.of(front)).least();
                assertThat(least > 0).isEqualTo(moved < 0.021);
            }
        }
    }

    @Test
    void hidden_lensAboveTheLid_showsFartherLids() {
        Body front = at(CAN, 0, 0);
        assertThat(Sight.hidden(level(0, -0.6, 0.117), at(CAN, 0, 0.1), List.of(front))
                        .least())
                .isPositive();
        assertThat(Sight.hidden(level(0, -0.6, 0.119), at(CAN, 0, 0.1), List.of(front))
                        .above())
                .isNegative();
    }

    @Test
    void hidden_flaconBehindFlacon_isLimitedByItsStopper() {
        Sides sides = Sight.hidden(level(0, -0.6, 0.059), at(FLACON, 0, 0.1), List.of(at(FLACON, 0, 0)));
        double expected = Math.tan(Math.asin(0.010 / 0.6)) - Math.tan(Math.asin(0.010 / 0.7));
        assertThat(sides.right()).isEqualTo(expected, within(1e-7));
        assertThat(sides.left()).isEqualTo(expected, within(1e-7));
    }

    @Test
    void hidden_agreesWithDensePolygons() {
        long seed = 20260726;
        Random random = new Random(seed);
        int inside = 0;
        for (int n = 0; n < 120; n++) {
            boolean wide = random.nextInt(3) > 0;
            Vec eye = new Vec(
                    random.nextDouble(-0.05, 0.05), random.nextDouble(-0.9, -0.4), random.nextDouble(0.02, 0.25));
            Aim aim = Aim.toward(eye, new Vec(random.nextDouble(-0.02, 0.02), 0, 0.05));
            Body hidden = new Body(
                    random.nextBoolean() ? FLACON : CAN,
                    new Pose(
                            new Vec(
                                    random.nextDouble(-0.02, 0.02),
                                    random.nextDouble(0.1, 0.5),
                                    random.nextDouble(-0.02, 0.02)),
                            0,
                            random.nextDouble(-0.2, 0.2)));
            List<Body> hiders = new ArrayList<>(List.of(at(FLACON, 0, 0)));
            if (wide) {
                hiders.add(at(CAN, random.nextDouble(-0.06, 0.06), random.nextDouble(0, 0.03)));
            }
            Projection lens = new Pinhole(aim);
            double margin = Sight.hidden(lens, hidden, hiders).least();
            double dense = dense(lens, hidden, hiders);
            inside += dense > 0 ? 1 : 0;
            assertThat(margin)
                    .as("seed %d case %d", seed, n)
                    .isEqualTo(dense, within(3e-6 + (dense > 0 ? 1e-3 * dense : -0.05 * dense)));
        }
        assertThat(inside).isGreaterThan(5);
    }

    private static double dense(Projection lens, Body hidden, List<Body> hiders) {
        Geometry union = union(lens, hiders);
        Geometry own = union(lens, List.of(hidden));
        Geometry edge = union.getBoundary();
        double most = 0;
        double least = Double.POSITIVE_INFINITY;
        for (Coordinate coordinate : densified(own)) {
            var point = new GeometryFactory().createPoint(coordinate);
            most = Math.max(most, union.distance(point));
            least = Math.min(least, edge.distance(point));
        }
        return most > 0 ? -most : least;
    }

    private static List<Coordinate> densified(Geometry shape) {
        List<Coordinate> points = new ArrayList<>();
        Coordinate[] ring = shape.getBoundary().getCoordinates();
        for (int i = 1; i < ring.length; i++) {
            for (int k = 0; k < 10; k++) {
                double share = k / 10.0;
                points.add(new Coordinate(
                        ring[i - 1].x + share * (ring[i].x - ring[i - 1].x),
                        ring[i - 1].y + share * (ring[i].y - ring[i - 1].y)));
            }
        }
        return points;
    }

    private static Geometry union(Projection lens, List<Body> bodies) {
        GeometryFactory factory = new GeometryFactory();
        List<Geometry> parts = new ArrayList<>();
        for (Body body : bodies) {
            for (List<Vec> rings : frusta(body)) {
                parts.add(factory.createMultiPointFromCoords(rings.stream()
                                .map(place -> {
                                    Vec way = place.minus(lens.aim().eye());
                                    double depth = lens.aim().forward().dot(way);
                                    return new Coordinate(
                                            lens.aim().right().dot(way) / depth,
                                            lens.aim().up().dot(way) / depth);
                                })
                                .toArray(Coordinate[]::new))
                        .convexHull());
            }
        }
        return UnaryUnionOp.union(parts);
    }

    private static List<List<Vec>> frusta(Body body) {
        List<List<Vec>> frusta = new ArrayList<>();
        List<Station> stations = ((Solid.Revolved) body.solid()).stations();
        for (int i = 1; i < stations.size(); i++) {
            if (stations.get(i).heightMetres() > stations.get(i - 1).heightMetres()) {
                List<Vec> points = new ArrayList<>();
                for (int k = 0; k < 480; k++) {
                    double angle = 2 * Math.PI * k / 480;
                    for (Station station : List.of(stations.get(i - 1), stations.get(i))) {
                        points.add(body.place(new Vec(
                                station.radiusMetres() * Math.cos(angle),
                                station.radiusMetres() * Math.sin(angle),
                                station.heightMetres())));
                    }
                }
                frusta.add(points);
            }
        }
        return frusta;
    }

    @Test
    void gaps_afterTheSlide_areBriefA() {
        Aim aim = new Aim(new Vec(-0.6, -0.6, 0.059), Math.toRadians(39.5), 0);
        List<Body> row = List.of(at(CAN, 0, 0), at(CAN, 0, 0.1), at(CAN, 0, 0.2), at(CAN, 0, 0.3));
        List<Gap> gaps = Sight.gaps(new Pinhole(aim), row);
        assertThat(gaps).hasSize(3);
        assertThat(gaps).allMatch(gap -> gap.width() > 0);
    }

    @Test
    void depths_uprightCylinderSeenLevel_areClosedForm() {
        Depths depths = Sight.depths(new Aim(new Vec(0, -0.6, 0.059), 0, 0), at(CAN, 0, 0));
        assertThat(depths.nearMetres()).isEqualTo(0.6 - 0.021, within(1e-12));
        assertThat(depths.outlineMetres()).isEqualTo(0.6 - 0.021 * 0.021 / 0.6, within(1e-12));
        assertThat(depths.axisMetres()).isEqualTo(0.6, within(1e-12));
    }

    @Test
    void clearance_ofCylinders_isAxesLessRadii_orTheirOverlap() {
        assertThat(Clearance.betweenMetres(at(CAN, 0, 0), at(CAN, 0.06, 0.08))).isEqualTo(0.1 - 0.042, within(1e-9));
        assertThat(Clearance.betweenMetres(at(CAN, 0, 0), at(CAN, 0.03, 0))).isEqualTo(-0.012, within(1e-6));
        assertThat(Clearance.toMetres(at(CAN, 0, 0), new Vec(0, -0.6, 0.05))).isEqualTo(0.579, within(1e-9));
    }
}
