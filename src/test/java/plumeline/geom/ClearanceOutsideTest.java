package plumeline.geom;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import plumeline.tidy.Outside;

final class ClearanceOutsideTest {
    @Test
    @Outside(
            source = "JTS Topology Suite 1.20.0, distance of polygons",
            place = "upright boxes of one height, turned at random: their floor plans' distance",
            kind = "reference library",
            printedDigits = 9)
    void betweenBoxes_isTheLibrarysDistanceOfTheirFloorPlans() {
        long seed = 4711;
        Random random = new Random(seed);
        int apart = 0;
        for (int i = 0; i < 200; i++) {
            Body one = box(random, 0);
            Body other = box(random, random.nextDouble(0.05, 0.3));
            double distance = floorPlan(one).distance(floorPlan(other));
            if (distance > 1e-6) {
                apart++;
                assertThat(Clearance.betweenMetres(one, other))
                        .as("seed %d case %d", seed, i)
                        .isEqualTo(distance, within(1e-9));
            } else {
                assertThat(Clearance.betweenMetres(one, other)).isLessThan(1e-6);
            }
        }
        assertThat(apart).isGreaterThan(100);
    }

    @Test
    @Outside(
            source = "axes' distance less both radii, school geometry",
            place = "cylinders side by side, apart and overlapping",
            kind = "textbook formula",
            printedDigits = 6)
    void betweenCylinders_isTheirAxesLessTheirRadii() {
        Solid can = Solid.cylinder(0.042, 0.118);
        Body here = new Body(can, Pose.at(0, 0));
        assertThat(Clearance.betweenMetres(here, new Body(can, Pose.at(0.06, 0.08))))
                .isEqualTo(0.058, within(1e-9));
        assertThat(Clearance.betweenMetres(here, new Body(can, Pose.at(0.03, 0))))
                .isEqualTo(-0.012, within(1e-6));
    }

    @Test
    @Outside(
            source = "a plane between two convex bodies, school geometry: their distance is no less than its two gaps",
            place = "a lens barrel aimed at the middle of a leaned can; its face's plane",
            kind = "textbook formula",
            printedDigits = 6)
    void aBarrelAimedAtAThing_isNoNearerThanItsFacesPlaneSays() {
        long seed = 815;
        Random random = new Random(seed);
        for (int i = 0; i < 500; i++) {
            Body can = new Body(
                    Solid.cylinder(0.066, 0.122),
                    new Pose(Vec.ZERO, random.nextDouble(-3, 3), random.nextDouble(-0.4, 0.4)));
            Vec eye = new Vec(random.nextDouble(-0.2, 0.2), random.nextDouble(-0.6, -0.3), random.nextDouble(0, 0.2));
            Aim aim = Aim.toward(eye, can.middle());
            Barrel barrel = new Barrel(eye.minus(aim.forward().times(0.15)), eye, 0.035, 0.035);
            double distance = Clearance.betweenMetres(can, barrel);
            assertThat(distance)
                    .as("seed %d case %d", seed, i)
                    .isGreaterThan(Clearance.aboveMetres(can, new Plane(eye, aim.forward())) - 1e-9)
                    .isLessThan(Clearance.toMetres(can, eye) + 1e-9);
        }
    }

    private static Body box(Random random, double away) {
        Solid solid = new Solid.Box(random.nextDouble(0.02, 0.1), random.nextDouble(0.02, 0.1), 0.1);
        return new Body(solid, new Pose(new Vec(away, random.nextDouble(-0.05, 0.05), 0), random.nextDouble(0, 3), 0));
    }

    private static Geometry floorPlan(Body body) {
        Solid.Box box = (Solid.Box) body.solid();
        Coordinate[] ring = new Coordinate[5];
        double[][] corners = {{-1, -1}, {1, -1}, {1, 1}, {-1, 1}, {-1, -1}};
        for (int i = 0; i < 5; i++) {
            Vec place = body.place(
                    new Vec(corners[i][0] * box.widthMetres() / 2, corners[i][1] * box.depthMetres() / 2, 0));
            ring[i] = new Coordinate(place.x(), place.y());
        }
        return new GeometryFactory().createPolygon(ring);
    }
}
