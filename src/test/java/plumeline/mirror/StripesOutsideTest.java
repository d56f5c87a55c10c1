package plumeline.mirror;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import plumeline.geom.Aim;
import plumeline.geom.Body;
import plumeline.geom.Pinhole;
import plumeline.geom.Pose;
import plumeline.geom.Solid;
import plumeline.geom.Station;
import plumeline.geom.Vec;
import plumeline.light.Disc;
import plumeline.light.Emitter;
import plumeline.light.Panel;
import plumeline.light.RoundMirror;
import plumeline.light.Tube;
import plumeline.tidy.Outside;

/// What lights show as across bodies, against Alhazen's problem, mirrored planes, and ways followed one by one.
@Outside(
        source = "Alhazen's problem, the law of reflection, ways followed one by one (any optics text)",
        kind = "closed form")
final class StripesOutsideTest {
    private static final Body CAN = new Body(Solid.cylinder(0.066, 1), Pose.at(0, 0));
    private static final Solid FLACON = new Solid.Revolved(List.of(
            new Station(0, 0.018), new Station(0.05, 0.030), new Station(0.09, 0.012), new Station(0.115, 0.008)));

    static Vec at(double millimetres, double degrees, double height) {
        double radians = Math.toRadians(degrees);
        return new Vec(millimetres * Math.cos(radians), millimetres * Math.sin(radians), height).times(1e-3);
    }

    /// A panel at a place, its front to another.
    static Panel panel(Vec middle, Vec to, double width, double height) {
        Vec facing = to.minus(middle).unit();
        return new Panel(middle, facing, Vec.UP.cross(facing).unit(), width, height, 1000);
    }

    private static Panel upright(double millimetres, double degrees, double width, double height) {
        return panel(at(millimetres, degrees, 500), new Vec(0, 0, 0.5), width, height);
    }

    private static GlossyBody level(Body body, Vec camera) {
        return GlossyBody.alone(body, Aim.toward(camera, new Vec(0, 0, camera.z())));
    }

    /// Case D09: a panel of 300 mm, 500 mm off at 60 deg, seen from 600 mm: azimuths 21.7423 and 38.5028 deg.
    @Test
    @Outside(
            source = "Alhazen's problem at both edges, Fujimura and others 2019, reckoned apart",
            kind = "worked example",
            printedDigits = 6)
    void panel_onACan() {
        GlossyBody can = level(CAN, at(600, 0, 500));
        List<Stripe> stripes = can.listStripes(0.5, upright(500, 60, 0.3, 1.2));
        assertThat(stripes).hasSize(1);
        assertThat(degrees(stripes.getFirst().left())).isCloseTo(21.7423, within(6e-5));
        assertThat(degrees(stripes.getFirst().right())).isCloseTo(38.5028, within(6e-5));
        double shown = 66 * 600 / Math.sqrt(600 * 600 - 33 * 33);
        assertThat(stripes.getFirst().wide() * shown).isCloseTo(8.58588, within(2e-3));
    }

    private static double degrees(Spot spot) {
        return Math.toDegrees(Math.atan2(spot.place().y(), spot.place().x()));
    }

    /// The plan's own mirror, whatever the panel's place and width, also where it runs behind the can's edge.
    @Test
    void uprightPanels_agreeWithRoundMirror() {
        Random random = new Random(1);
        int seen = 0;
        for (int i = 0; i < 500; i++) {
            double from = 360 * random.nextDouble();
            double to = from + 130 * (2 * random.nextDouble() - 1);
            Vec camera = at(300 + 900 * random.nextDouble(), from, 500);
            Panel panel = upright(200 + 900 * random.nextDouble(), to, 0.3 * random.nextDouble(), 40);
            Vec edge = panel.right().times(panel.widthMetres() / 2);
            List<RoundMirror.Stripe> expected = new RoundMirror(0.033)
                    .stripes(camera, panel.middle().plus(edge), panel.middle().minus(edge));
            List<Stripe> found = level(CAN, camera).listStripes(0.5, panel);
            assertThat(found).as("case " + i).hasSize(expected.size());
            for (int k = 0; k < expected.size(); k++) {
                assertThat(found.get(k).leftShare())
                        .isCloseTo((1 + expected.get(k).left()) / 2, within(1e-9));
                assertThat(found.get(k).rightShare())
                        .isCloseTo((1 + expected.get(k).right()) / 2, within(1e-9));
                seen++;
            }
        }
        assertThat(seen).isGreaterThan(200);
    }

    /// A light straight behind the can is mirrored at both its edges.
    @Test
    void lightBehind_showsAtBothEdges() {
        List<Stripe> stripes = level(CAN, at(600, 0, 500)).listStripes(0.5, upright(500, 180, 0.3, 1));
        assertThat(stripes).hasSize(2);
        assertThat(stripes.getFirst().leftShare()).isCloseTo(0, within(1e-9));
        assertThat(stripes.getLast().rightShare()).isCloseTo(1, within(1e-9));
        assertThat(stripes.getFirst().wide()).isCloseTo(stripes.getLast().wide(), within(1e-9));
    }

    private static Body someBody(Random random) {
        Solid solid = random.nextInt(3) == 0 ? new Solid.Box(0.05, 0.04, 0.115) : FLACON;
        return new Body(solid, new Pose(new Vec(0.02, 0.01, 0), 6 * random.nextDouble(), 0.5 * random.nextGaussian()));
    }

    private static Vec someWhere(Random random) {
        return at(250 + 500 * random.nextDouble(), 360 * random.nextDouble(), 60 + 200 * random.nextGaussian());
    }

    private static Emitter someEmitter(Random random, Vec to) {
        Panel panel = panel(someWhere(random), to, 0.3 * random.nextDouble(), 0.3 * random.nextDouble());
        double turn = 3 * random.nextDouble();
        Vec right = panel.right().times(Math.cos(turn)).plus(panel.up().times(Math.sin(turn)));
        return switch (random.nextInt(3)) {
            case 0 -> new Panel(panel.middle(), panel.facing(), right, panel.widthMetres(), panel.heightMetres(), 1);
            case 1 -> new Disc(panel.middle(), panel.facing(), panel.widthMetres() / 2, 1);
            default -> new Tube(panel.middle(), right, panel.facing(), 0.1 + panel.heightMetres(), 0.02, 1);
        };
    }

    /// Bodies leaned and turned, cameras above and below, lights of every sort turned about: ways of sight followed
    /// from places close together on the surface, straight out found from neighbouring places, what they meet from
    /// the light's outline; as much of the surface at that height is lit as the stripes say.
    @Test
    @Outside(source = "law of reflection, ways of sight followed one by one", kind = "closed form")
    void stripes_areWhatWaysOfSightMeet() {
        Random random = new Random(2);
        int lit = 0;
        for (int i = 0; i < 400; i++) {
            Body body = someBody(random);
            Vec camera = someWhere(random);
            Emitter emitter = someEmitter(random, body.middle());
            double height = 0.002 + 0.111 * random.nextDouble();
            GlossyBody glossy = GlossyBody.alone(body, Aim.toward(camera, body.middle()));
            List<Stripe> stripes = glossy.listStripes(height, emitter);
            double step = 2 * Math.PI / 4000;
            double counted = 0;
            for (int k = 0; k < 4000; k++) {
                counted += Followed.meets(body, height, k * step, camera, emitter) ? step : 0;
            }
            double told = stripes.stream().mapToDouble(one -> turn(glossy, one)).sum();
            assertThat(told).as("case " + i + " " + emitter).isCloseTo(counted, within(3 * step));
            lit += counted > 10 * step ? 1 : 0;
        }
        assertThat(lit).isGreaterThan(40);
    }

    private static double turn(GlossyBody glossy, Stripe stripe) {
        double left = glossy.azimuthRadians(stripe.left().place());
        double right = glossy.azimuthRadians(stripe.right().place());
        return (right - left + 4 * Math.PI) % (2 * Math.PI);
    }

    /// What a stripe's edge shows lies on the light's edge, and the shortest way over the body to there is over it.
    @Test
    @Outside(source = "Fermat's principle, by the room's own least ways", kind = "closed form")
    void edges_mirrorTheLightsEdges() {
        Random random = new Random(3);
        int edges = 0;
        for (int i = 0; i < 600; i++) {
            Body body = someBody(random);
            Vec camera = someWhere(random);
            Panel panel = panel(someWhere(random), body.middle(), 0.2, 0.3);
            GlossyBody glossy = GlossyBody.alone(body, Aim.toward(camera, body.middle()));
            for (Stripe stripe : glossy.listStripes(0.115 * random.nextDouble(), panel)) {
                for (Spot spot : List.of(stripe.left(), stripe.right())) {
                    Vec onward = spot.onward(camera);
                    double on = panel.middle().minus(spot.place()).dot(panel.facing()) / onward.dot(panel.facing());
                    Vec met = spot.place().plus(onward.times(on));
                    Vec from = met.minus(panel.middle());
                    double rim =
                            Math.max(Math.abs(from.dot(panel.right())) / 0.1, Math.abs(from.dot(panel.up())) / 0.15);
                    if (Math.abs(rim - 1) < 1e-6) {
                        assertThat(glossy.listSpots(met))
                                .as("case " + i)
                                .anyMatch(one -> one.place().distanceMetres(spot.place()) < 1e-7);
                        edges++;
                    }
                }
            }
        }
        assertThat(edges).isGreaterThan(150);
    }

    /// On the picture of a level camera that looks aside: places as a pinhole projects them, between the can's edges
    /// there; of a tilted camera: row by row, between the edges at the row.
    @Test
    @Outside(source = "central projection", kind = "closed form")
    void shares_areOfThePicture() {
        Vec camera = new Vec(0.1, -0.6, 0.7);
        for (double tilt : new double[] {0, -0.35}) {
            Aim aim = new Aim(camera, 0.1, tilt);
            Pinhole picture = new Pinhole(aim);
            Panel panel = panel(new Vec(0.5, -0.4, 0.4), new Vec(0, 0, 0.5), 0.2, 0.8);
            Stripe stripe = GlossyBody.alone(CAN, aim).listStripes(0.5, panel).getFirst();
            double toCamera = Math.atan2(camera.y(), camera.x());
            double limb = Math.acos(0.033 / Math.hypot(camera.x(), camera.y()));
            double row = picture.project(stripe.left().place()).y();
            double left = atRow(picture, toCamera - limb, row);
            double right = atRow(picture, toCamera + limb, row);
            double x = picture.project(stripe.left().place()).x();
            assertThat(stripe.leftShare()).isCloseTo((x - left) / (right - left), within(1e-9));
        }
    }

    private static double atRow(Pinhole picture, double azimuth, double row) {
        double low = -1;
        double high = 2;
        for (int i = 0; i < 60; i++) {
            double middle = (low + high) / 2;
            Vec at = new Vec(0.033 * Math.cos(azimuth), 0.033 * Math.sin(azimuth), middle);
            low = picture.project(at).y() < row ? middle : low;
            high = picture.project(at).y() < row ? high : middle;
        }
        return picture.project(new Vec(0.033 * Math.cos(azimuth), 0.033 * Math.sin(azimuth), low))
                .x();
    }

    /// A line of light 1 mm wide, 3 m off, shows 0.01 mm wide, and is found.
    @Test
    void thinLight_isFound() {
        Stripe stripe = level(CAN, at(600, 0, 500))
                .listStripes(0.5, upright(3000, 70, 0.001, 1))
                .getFirst();
        assertThat(stripe.wide()).isBetween(1e-5, 1e-3);
        assertThat(level(CAN, at(600, 0, 500)).listStripes(0.5, new Disc(at(3000, 70, 500), at(-1000, 70, 0), 1e-4, 1)))
                .hasSize(1);
    }

    /// Every length doubled moves no highlight; nor does a turntable under a round thing.
    @Test
    @Outside(source = "similar figures; a round surface goes into itself", kind = "conserved quantity")
    void doubledOrTurned_nothingMoves() {
        Vec camera = new Vec(0.1, -0.6, 0.3);
        Panel panel = panel(new Vec(0.5, -0.3, 0.4), new Vec(0, 0, 0.05), 0.3, 0.4);
        Aim aim = new Aim(camera, 0, -0.3);
        Stripe plain = GlossyBody.alone(new Body(FLACON, Pose.at(0, 0)), aim)
                .listStripes(0.07, panel)
                .getFirst();
        Solid doubled = new Solid.Revolved(((Solid.Revolved) FLACON)
                .stations().stream()
                        .map(one -> new Station(2 * one.heightMetres(), 2 * one.radiusMetres()))
                        .toList());
        Panel far = panel(panel.middle().times(2), new Vec(0, 0, 0.1), 0.6, 0.8);
        Stripe twice = GlossyBody.alone(new Body(doubled, Pose.at(0, 0)), new Aim(camera.times(2), 0, -0.3))
                .listStripes(0.14, far)
                .getFirst();
        Stripe turned = GlossyBody.alone(new Body(FLACON, new Pose(Vec.ZERO, 1.1, 0)), aim)
                .listStripes(0.07, panel)
                .getFirst();
        for (Stripe other : List.of(twice, turned)) {
            assertThat(other.leftShare()).isCloseTo(plain.leftShare(), within(1e-9));
            assertThat(other.rightShare()).isCloseTo(plain.rightShare(), within(1e-9));
        }
    }

    /// The front of a carton 100 mm wide, 800 mm before a panel's plane, seen from (−300, 900): it mirrors 172.22 to
    /// 361.11 mm of that plane (mirrored camera). A panel up to 266.67 mm, the middle, covers half of it.
    @Test
    @Outside(source = "mirrored camera, any optics text", kind = "closed form", printedDigits = 7)
    void carton_isAFlatMirror() {
        Body carton = new Body(new Solid.Box(0.1, 0.05, 0.2), new Pose(new Vec(0, 0.025, 0), 0, 0));
        Vec camera = new Vec(-0.3, -0.9, 0.1);
        Panel panel = new Panel(new Vec(0.21666667, -0.8, 0.1), new Vec(0, 1, 0), new Vec(1, 0, 0), 0.1, 0.3, 1);
        List<Stripe> stripes = GlossyBody.alone(carton, new Aim(camera, 0, 0)).listStripes(0.1, panel);
        assertThat(stripes).hasSize(1);
        assertThat(stripes.getFirst().left().place().x()).isCloseTo(-0.05, within(1e-9));
        assertThat(stripes.getFirst().right().place().x()).isCloseTo(0, within(1e-6));
    }

    /// A rod between a panel and the can parts the stripe in two; a screen takes it away.
    @Test
    void whatStandsInTheWay_isNotLookedThrough() {
        Aim aim = Aim.toward(at(600, 0, 500), new Vec(0, 0, 0.5));
        Panel panel = upright(500, 60, 0.3, 1.2);
        Vec rod = at(300, 60, 0);
        Body thin = new Body(Solid.cylinder(0.02, 1), Pose.at(rod.x(), rod.y()));
        Body broad = new Body(Solid.cylinder(0.3, 1), Pose.at(rod.x(), rod.y()));
        assertThat(new GlossyBody(CAN, aim, Ways.past(List.of(CAN, thin))).listStripes(0.5, panel))
                .hasSize(2);
        assertThat(new GlossyBody(CAN, aim, Ways.past(List.of(CAN, broad))).listStripes(0.5, panel))
                .isEmpty();
    }

    /// From a place across the outline sight goes on by bearing = 2i − θ − asin((r/L) sin i) (a crew's sheet).
    @Test
    @Outside(source = "a crew's sheet: bearing = 2i − θ − asin((r/L) sin i)", kind = "closed form")
    void spotAcross_goesOnByTheSheetsBearing() {
        Vec camera = at(600, 0, 500);
        double share = 0.3;
        Spot spot = level(CAN, camera).findSpot(0.5, share).orElseThrow();
        double theta = Math.atan((2 * share - 1) * Math.tan(Math.asin(33.0 / 600)));
        double incidence = Math.asin(600 * Math.sin(theta) / 33);
        double bearing = 2 * incidence - theta - Math.asin(33.0 / 500 * Math.sin(incidence));
        Vec way = spot.onward(camera);
        double behind = spot.place().x() * way.x() + spot.place().y() * way.y();
        double on = -behind + Math.sqrt(behind * behind + 0.25 - 0.033 * 0.033);
        Vec met = spot.place().plus(way.times(on));
        assertThat(Math.atan2(met.y(), met.x())).isCloseTo(bearing, within(1e-9));
        assertThat(level(CAN, camera).findSpot(1.5, share)).isEmpty();
    }

    @Test
    void bodyBehindTheCamera_isRefused() {
        GlossyBody behind = GlossyBody.alone(CAN, new Aim(at(600, 0, 500), Math.PI / 2, 0));
        assertThatThrownBy(() -> behind.listStripes(0.5, upright(500, 60, 0.3, 1.2)))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("before the camera");
    }
}
