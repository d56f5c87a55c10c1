package plumeline.sight;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Random;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;
import plumeline.geom.Aim;
import plumeline.geom.Body;
import plumeline.geom.Pinhole;
import plumeline.geom.Point;
import plumeline.geom.Pose;
import plumeline.geom.Projection;
import plumeline.geom.Solid;
import plumeline.geom.Station;
import plumeline.geom.Vec;

/// What must not change, whatever the figures are; edges and the entrance pupil.
final class SeenFromTest {
    private static final Solid CAN = Solid.cylinder(0.042, 0.118);
    private static final Solid FLACON = new Solid.Revolved(List.of(
            new Station(0, 0.021), new Station(0.09, 0.021), new Station(0.09, 0.010), new Station(0.118, 0.010)));
    private static final List<Solid> SOLIDS = List.of(CAN, FLACON, new Solid.Box(0.05, 0.03, 0.1));

    /// A lens point's picture that doesn't say it is a plain one, as through a wall of the air's own index.
    private record Disguise(Pinhole plain) implements Projection {
        @Override
        public Aim aim() {
            return plain.aim();
        }

        @Override
        public Point project(Vec place) {
            return plain.project(place);
        }

        @Override
        public double depth(Vec place) {
            return plain.depth(place);
        }
    }

    private record Scene(Aim aim, Body hidden, List<Body> hiders) {
        static Scene of(Random random) {
            Vec eye =
                    new Vec(random.nextDouble(-0.1, 0.1), random.nextDouble(-0.9, -0.5), random.nextDouble(0.02, 0.2));
            return new Scene(
                    Aim.toward(eye, new Vec(random.nextDouble(-0.02, 0.02), 0, 0.05)),
                    body(random, random.nextDouble(0.1, 0.4)),
                    List.of(body(random, 0), body(random, 0.02)));
        }

        private static Body body(Random random, double y) {
            Vec base = new Vec(random.nextDouble(-0.03, 0.03), y, random.nextDouble(-0.01, 0.01));
            return new Body(
                    SOLIDS.get(random.nextInt(SOLIDS.size())),
                    new Pose(base, random.nextDouble(6), random.nextInt(2) * random.nextDouble(-0.3, 0.3)));
        }

        /// The whole set turned about the zero mark, then shifted.
        Scene moved(double turn, Vec way) {
            Aim there = new Aim(aim.eye().turned(turn).plus(way), aim.turnRadians() + turn, aim.tiltRadians());
            return new Scene(
                    there,
                    moved(hidden, turn, way),
                    hiders.stream().map(hider -> moved(hider, turn, way)).toList());
        }

        private static Body moved(Body body, double turn, Vec way) {
            Pose pose = body.pose();
            return body.at(new Pose(pose.base().turned(turn).plus(way), pose.turnRadians() + turn, pose.leanRadians()));
        }

        Sides sides() {
            return Sight.hidden(new Pinhole(aim), hidden, hiders);
        }
    }

    private static Offset<Double> relative(double of) {
        return within(1e-12 * Math.max(1, Math.abs(of)));
    }

    private static boolean isHidden(Edge edge) {
        return edge.showing() == Edge.Showing.HIDDEN;
    }

    private static Pinhole level(double x, double y, double z) {
        return new Pinhole(new Aim(new Vec(x, y, z), 0, 0));
    }

    @Test
    void anything_setTurnedAndShifted_staysTheSame() {
        Random random = new Random(99);
        for (int n = 0; n < 300; n++) {
            Scene scene = Scene.of(random);
            Scene moved = scene.moved(
                    random.nextDouble(-3, 3), new Vec(random.nextDouble(-2, 2), random.nextDouble(-2, 2), 0.3));
            double least = scene.sides().least();
            assertThat(moved.sides().least()).as("scene %d", n).isEqualTo(least, relative(least));
            Extent extent = Sight.extent(new Pinhole(scene.aim), scene.hidden);
            Extent other = Sight.extent(new Pinhole(moved.aim), moved.hidden);
            assertThat(other.left()).as("scene %d", n).isEqualTo(extent.left(), relative(1));
            assertThat(other.top()).as("scene %d", n).isEqualTo(extent.top(), relative(1));
            assertThat(Sight.leastDepthMetres(new Pinhole(moved.aim), moved.hidden))
                    .isEqualTo(Sight.leastDepthMetres(new Pinhole(scene.aim), scene.hidden), relative(1));
        }
    }

    @Test
    void hidden_sameHiderTwice_isAsOnce() {
        Random random = new Random(7);
        for (int n = 0; n < 300; n++) {
            Scene scene = Scene.of(random);
            double once = Sight.hidden(new Pinhole(scene.aim), scene.hidden, scene.hiders.subList(0, 1))
                    .least();
            Body hider = scene.hiders.getFirst();
            double twice = Sight.hidden(new Pinhole(scene.aim), scene.hidden, List.of(hider, hider))
                    .least();
            assertThat(twice).as("scene %d", n).isEqualTo(once, relative(once));
        }
    }

    @Test
    void hidden_pinholeInDisguise_isThePinholes() {
        Random random = new Random(3);
        for (int n = 0; n < 300; n++) {
            Scene scene = Scene.of(random);
            Pinhole plain = new Pinhole(scene.aim);
            Sides disguised = Sight.hidden(new Disguise(plain), scene.hidden, scene.hiders);
            assertThat(disguised.least())
                    .as("scene %d", n)
                    .isEqualTo(scene.sides().least(), within(1e-5));
            Extent extent = Sight.extent(plain, scene.hidden);
            Extent other = Sight.extent(new Disguise(plain), scene.hidden);
            assertThat(other.right()).isEqualTo(extent.right(), within(1e-5));
            assertThat(other.bottom()).isEqualTo(extent.bottom(), within(1e-5));
        }
    }

    @Test
    void edges_cylinderFromAbove_showTheLidAndTheNearHalfOfTheFoot() {
        // From distance d a circle's tangents touch where the way to the touching point makes a right angle with the
        // radius: the near arc is 2 acos(r / d) wide.
        Pinhole lens = new Pinhole(Aim.toward(new Vec(0, -0.6, 0.3), new Vec(0, 0, 0.06)));
        List<Edge> edges = Sight.edges(lens, new Body(CAN, Pose.at(0, 0)), List.of(), 720);
        double seenLow = 0;
        double hiddenLow = 0;
        double middle = lens.project(new Vec(0, 0, 0.06)).y();
        for (Edge edge : edges) {
            List<Point> points = edge.points();
            boolean isLid = points.getFirst().y() > middle;
            assertThat(isLid && isHidden(edge)).isFalse();
            seenLow += isLid || isHidden(edge) ? 0 : points.size() - 1;
            hiddenLow += isLid || !isHidden(edge) ? 0 : points.size() - 1;
        }
        double share = seenLow / (seenLow + hiddenLow);
        assertThat(share).isEqualTo(Math.acos(0.021 / 0.6) / Math.PI, within(0.01));
    }

    @Test
    void edges_behindSomethingWider_areHidden() {
        Body screen = new Body(new Solid.Box(0.3, 0.01, 0.3), Pose.at(0, -0.1));
        List<Edge> edges = Sight.edges(level(0, -0.6, 0.06), new Body(FLACON, Pose.at(0, 0)), List.of(screen), 60);
        assertThat(edges).isNotEmpty().allMatch(SeenFromTest::isHidden);
    }

    @Test
    void hiddenOverPupil_isTheWorstOfItsRim() {
        Aim aim = level(0, -0.6, 0.059).aim();
        Body hidden = new Body(CAN, Pose.at(0, 0.1));
        List<Body> front = List.of(new Body(CAN, Pose.at(0, 0)));
        Sides point = Sight.hidden(new Pinhole(aim), hidden, front);
        assertThat(Sight.hiddenOverPupil(aim, Pinhole::new, hidden, front, 0)).isEqualTo(point);
        // From half the pupil aside the hidden one stands farther aside, by half the pupil times 1/0.6 − 1/0.7.
        double pupil = 0.02;
        Sides wide = Sight.hiddenOverPupil(aim, Pinhole::new, hidden, front, pupil);
        Sides aside = Sight.hidden(level(pupil / 2, -0.6, 0.059), hidden, front);
        assertThat(wide.least()).isEqualTo(aside.least(), relative(1)).isLessThan(point.least());
        assertThat(Sight.hiddenOverPupil(aim, Pinhole::new, hidden, front, 0.0419)
                        .least())
                .isPositive();
        assertThat(Sight.hiddenOverPupil(aim, Pinhole::new, hidden, front, 0.0421)
                        .least())
                .isNegative();
    }
}
