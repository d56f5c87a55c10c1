package plumeline.mirror;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import plumeline.geom.Aim;
import plumeline.geom.Body;
import plumeline.geom.Pose;
import plumeline.geom.Solid;
import plumeline.geom.Station;
import plumeline.geom.Vec;
import plumeline.light.RoundMirror;
import plumeline.tidy.Outside;

/// Where places are mirrored in bodies, against the law of reflection, least ways and worked cases.
@Outside(source = "the law of reflection, Fermat's least way, mirrored planes (any optics text)", kind = "closed form")
final class SpotsOutsideTest {
    private static final Solid FLACON = new Solid.Revolved(List.of(
            new Station(0, 0.018),
            new Station(0.02, 0.030),
            new Station(0.08, 0.030),
            new Station(0.09, 0.010),
            new Station(0.115, 0.008)));

    private static Vec at(double millimetres, double degrees, double height) {
        double radians = Math.toRadians(degrees);
        return new Vec(millimetres * Math.cos(radians), millimetres * Math.sin(radians), height).times(1e-3);
    }

    private static GlossyBody alone(Body body, Vec camera) {
        return GlossyBody.alone(body, Aim.toward(camera, body.middle()));
    }

    /// A can of 66 mm round: camera at 0 deg and 300 mm, light at 800 mm; heights are linear along the unfolded way.
    @ParameterizedTest
    @CsvSource({
        "600, 500, 60, 30.1663, 31.8284, 571.710, 471.659",
        "600, 500, 90, 45.2328, 47.5590, 577.236, 477.137",
        "1000, 300, 120, 61.9816, 63.6766, 984.929, 283.905",
        "400, 150, 30, 16.1941, 17.6255, 368.424, 118.216",
        "300, 2000, 140, 67.4264, 73.4800, 288.944, 1990.366"
    })
    @Outside(
            source = "Alhazen's problem by its quartic, Fujimura and others 2019, cases reckoned apart",
            kind = "worked example",
            printedDigits = 6)
    void cylinder_isAlhazens(
            double camera, double light, double round, double azimuth, double flat, double one, double other) {
        Body can = new Body(Solid.cylinder(0.066, 1), Pose.at(0, 0));
        Vec eye = at(camera, 0, 300);
        Vec lamp = at(light, round, 800);
        Spot spot = alone(can, eye).listSpots(lamp).getFirst();
        assertThat(Math.toDegrees(Math.atan2(spot.place().y(), spot.place().x())))
                .isCloseTo(azimuth, within(6e-5));
        assertThat(1e3 * spot.place().z()).isCloseTo(300 + 500 * one / (one + other), within(1e-3));
        Vec way = eye.minus(spot.place());
        double cosine = Math.cos(Math.toRadians(flat)) * Math.hypot(way.x(), way.y()) / way.lengthMetres();
        assertThat(Math.cos(spot.incidenceRadians())).isCloseTo(cosine, within(1e-6));
    }

    /// Case D04 of the same table: a light 600 mm tall shows 328.768 mm tall, by the plane mirror's ratio.
    @Test
    @Outside(source = "plane mirror's ratio along the unfolded way", kind = "closed form", printedDigits = 6)
    void lightsHeight_inACylinder() {
        GlossyBody can = alone(new Body(Solid.cylinder(0.066, 2), Pose.at(0, 0)), at(600, 0, 300));
        double low = can.listSpots(at(500, 60, 500)).getFirst().place().z();
        double high = can.listSpots(at(500, 60, 1100)).getFirst().place().z();
        assertThat(1e3 * (high - low)).isCloseTo(328.768, within(1e-3));
    }

    /// A label 100 mm wide along x, seen from (−300, 900): it mirrors 172.22 to 361.11 mm of a plane 800 mm before it.
    @ParameterizedTest
    @CsvSource({"172.23, true", "361.10, true", "172.21, false", "361.12, false"})
    @Outside(source = "mirrored camera, any optics text", kind = "closed form", printedDigits = 7)
    void flatLabel(double x, boolean isMirrored) {
        FlatMirror label = new FlatMirror(Vec.ZERO, new Vec(0, 1, 0), new Vec(-1, 0, 0), 0.1, 0.05);
        assertThat(label.findSpot(new Vec(-0.3, 0.9, 0), new Vec(1e-3 * x, 0.8, 0))
                        .isPresent())
                .isEqualTo(isMirrored);
        assertThat(label.findSpot(new Vec(-0.3, 0.9, 0), new Vec(1e-3 * x, -0.8, 0)))
                .isEmpty();
    }

    private static Vec someWhere(Random random, double least) {
        Vec way = new Vec(random.nextGaussian(), random.nextGaussian(), random.nextGaussian()).unit();
        return way.times(least + random.nextDouble());
    }

    /// Turned, leaned and moved bodies of every sort: the ways make equal angles with straight out, in one plane with
    /// it.
    @Test
    @Outside(source = "law of reflection, any optics text", kind = "closed form")
    void everySpot_keepsTheLawOfReflection() {
        Random random = new Random(6);
        int seen = 0;
        for (int i = 0; i < 15000; i++) {
            Solid solid = i % 2 == 0 ? FLACON : new Solid.Box(0.06, 0.04, 0.1);
            Body body = new Body(
                    solid, new Pose(new Vec(0.1, -0.05, 0.02), 6 * random.nextDouble(), 3 * random.nextDouble()));
            Vec camera = body.middle().plus(someWhere(random, 0.15));
            Vec place = body.middle().plus(someWhere(random, 0.15));
            for (Spot spot : alone(body, camera).listSpots(place)) {
                Vec in = camera.minus(spot.place()).unit();
                Vec on = place.minus(spot.place()).unit();
                assertThat(spot.onward(camera).distanceMetres(on))
                        .as("case " + i)
                        .isLessThan(1e-9);
                assertThat(in.dot(spot.facing())).isCloseTo(Math.cos(spot.incidenceRadians()), within(1e-12));
                assertThat(isOn(body, spot)).as("case " + i).isTrue();
                seen++;
            }
        }
        assertThat(seen).isGreaterThan(1000);
    }

    /// On the surface, and straight out of it is out of the body.
    private static boolean isOn(Body body, Spot spot) {
        double off = 1e-6;
        Vec out = spot.place().plus(spot.facing().times(off));
        Vec in = spot.place().minus(spot.facing().times(off));
        return !isIn(body, out) && isIn(body, in);
    }

    private static boolean isIn(Body body, Vec place) {
        Vec own = body.own(place);
        return switch (body.solid()) {
            case Solid.Box box ->
                Math.abs(own.x()) < box.widthMetres() / 2
                        && Math.abs(own.y()) < box.depthMetres() / 2
                        && own.z() > 0
                        && own.z() < box.heightMetres();
            case Solid.Revolved revolved -> Math.hypot(own.x(), own.y()) < revolved.radiusAtMetres(own.z());
        };
    }

    /// One cone, cameras and lights all about, also over its tip: where the least way over a fine net of its surface
    /// lies well inside it and faces both, a spot is found there; where not, none is.
    @Test
    @Outside(source = "Fermat's principle: ways counted over a net of the surface", kind = "closed form")
    void cone_mirrorsWhereTheWayIsLeast() {
        Random random = new Random(7);
        int found = 0;
        int none = 0;
        for (int i = 0; i < 300; i++) {
            Station low = new Station(0, 0.01 + 0.04 * random.nextDouble());
            Station high = new Station(0.06, i % 4 == 0 ? low.radiusMetres() : 0.05 * random.nextDouble());
            ConeMirror cone = new ConeMirror(low, high, 1);
            double round = 360 * random.nextDouble();
            Vec camera = at(20 + 500 * random.nextDouble(), round, 30 + 150 * random.nextGaussian());
            double other = round + 60 * random.nextGaussian();
            Vec place = at(20 + 500 * random.nextDouble(), other, 30 + 150 * random.nextGaussian());
            Optional<Spot> spot = cone.findSpot(camera, place);
            Net net = Net.of(cone, camera, place);
            if (net.isClear) {
                assertThat(spot.isPresent()).as("case " + i).isEqualTo(net.isInside);
                if (net.isInside) {
                    double way = way(spot.orElseThrow().place(), camera, place);
                    assertThat(way).as("case " + i).isBetween(net.least - 5e-5, net.least + 1e-12);
                    found++;
                } else {
                    none++;
                }
            }
        }
        assertThat(found).isGreaterThan(40);
        assertThat(none).isGreaterThan(40);
    }

    private static double way(Vec at, Vec camera, Vec place) {
        return at.distanceMetres(camera) + at.distanceMetres(place);
    }

    /// The least way among places that face both ends, of a net that goes a quarter past the piece's ends.
    private record Net(double least, boolean isInside, boolean isClear) {
        private static final int ROWS = 120;

        static Net of(ConeMirror cone, Vec camera, Vec place) {
            int round = 360;
            double least = Double.POSITIVE_INFINITY;
            int row = 0;
            boolean isAtLimb = false;
            for (int j = -ROWS / 4; j <= ROWS * 5 / 4; j++) {
                double z = cone.high().heightMetres() * j / ROWS;
                double radius = cone.radiusMetres(z);
                for (int k = 0; k < round && radius > 0; k++) {
                    double azimuth = 2 * Math.PI * k / round;
                    Vec at = new Vec(radius * Math.cos(azimuth), radius * Math.sin(azimuth), z);
                    Vec facing = cone.facing(azimuth);
                    double one = camera.minus(at).unit().dot(facing);
                    double other = place.minus(at).unit().dot(facing);
                    if (one > 0 && other > 0 && way(at, camera, place) < least) {
                        least = way(at, camera, place);
                        row = j;
                        isAtLimb = one < 0.1 || other < 0.1;
                    }
                }
            }
            boolean isSeen = least < Double.POSITIVE_INFINITY;
            boolean isNearEnd = Math.abs(row) < 4 || Math.abs(row - ROWS) < 4;
            return new Net(least, row > 0 && row < ROWS, isSeen && !isAtLimb && !isNearEnd);
        }
    }

    /// Behind a wide shoulder the neck mirrors nothing of a lamp that stands low behind: the shoulder is in the way.
    @Test
    void neckBehindItsShoulder_isNotSeen() {
        Solid jar = new Solid.Revolved(List.of(
                new Station(0, 0.05), new Station(0.06, 0.05), new Station(0.06, 0.01), new Station(0.1, 0.01)));
        Body body = new Body(jar, Pose.at(0, 0));
        Vec lamp = new Vec(0.3, -0.3, 0.3);
        Vec below = new Vec(0, -0.5, -0.2);
        Aim up = Aim.toward(below, body.middle());
        assertThat(new GlossyBody(body, up, (from, to) -> true).listSpots(lamp)).anyMatch(spot -> spot.piece() == 3);
        assertThat(alone(body, below).listSpots(lamp)).noneMatch(spot -> spot.piece() == 3);
        assertThat(alone(body, new Vec(0, -0.5, 0.05)).listSpots(lamp.minus(new Vec(0, 0, 0.2))))
                .anyMatch(spot -> spot.piece() == 3);
    }

    /// A shoulder and a top are level mirrors, each within its own rims.
    @Test
    void shoulderAndTop_areLevelMirrors() {
        Solid jar = new Solid.Revolved(List.of(
                new Station(0, 0.05), new Station(0.06, 0.05), new Station(0.06, 0.01), new Station(0.1, 0.01)));
        GlossyBody body = alone(new Body(jar, Pose.at(0, 0)), new Vec(0, -0.5, 0.5));
        List<Spot> shoulder = body.listSpots(new Vec(0.05, 0.5, 0.5));
        assertThat(shoulder).extracting(Spot::piece).containsExactly(2);
        assertThat(shoulder.getFirst().place().distanceMetres(new Vec(0.025, 0, 0.06)))
                .isLessThan(1e-12);
        assertThat(body.listSpots(new Vec(0.01, 0.5, 0.5)))
                .extracting(Spot::piece)
                .containsExactly(4);
    }

    /// The upright cylinder on the plan, by the room's other mirror.
    @Test
    void cylinder_agreesWithRoundMirror() {
        Random random = new Random(8);
        Body can = new Body(Solid.cylinder(0.066, 4), new Pose(new Vec(0, 0, -2), 1, 0));
        for (int i = 0; i < 300; i++) {
            Vec camera = at(40 + 900 * random.nextDouble(), 360 * random.nextDouble(), 300 * random.nextDouble());
            Vec lamp = at(40 + 900 * random.nextDouble(), 360 * random.nextDouble(), 300 * random.nextDouble());
            Optional<Vec> expected = new RoundMirror(0.033).find(camera, lamp).map(RoundMirror.Spot::place);
            List<Spot> found = alone(can, camera).listSpots(lamp);
            assertThat(found).hasSize(expected.isPresent() ? 1 : 0);
            if (expected.isPresent()) {
                assertThat(found.getFirst().place().distanceMetres(expected.get()))
                        .isLessThan(1e-9);
            }
        }
    }
}
