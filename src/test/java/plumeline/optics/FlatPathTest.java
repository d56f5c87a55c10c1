package plumeline.optics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import plumeline.geom.Aim;
import plumeline.geom.Plane;
import plumeline.geom.Vec;
import plumeline.tidy.Outside;

/// Ways across flat faces.
@Outside(source = "Snell's law (any optics text), traced forward here", kind = "worked example")
final class FlatPathTest {
    private static final Plane FRONT = new Plane(new Vec(0, -0.2, 0), new Vec(0, -1, 0));
    private static final Plane INNER = new Plane(new Vec(0, -0.192, 0), new Vec(0, -1, 0));
    private static final Plane SIDE = new Plane(new Vec(0.3, 0, 0), new Vec(1, 0, 0));
    private static final Plane OUTER = new Plane(new Vec(0.308, 0, 0), new Vec(1, 0, 0));

    /// One pane of a tank: as the closed law has it.
    @Test
    void onePane_isAsTheWallHasIt() {
        Vec eye = new Vec(0.1, -0.9, 0.4);
        Vec place = new Vec(-0.2, 0.1, 0.05);
        List<Vec> path = new TankView(new Aim(eye, 0, 0), FRONT, FlatWall.ofWater(0.008), 1).path(place);
        List<Vec> found = new FlatPath(List.of(new FlatPath.Face(FRONT, 1.52), new FlatPath.Face(INNER, 1.333)))
                .crossings(eye, place);
        assertThat(found.get(0).distanceMetres(path.get(1))).isLessThan(1e-12);
        assertThat(found.get(1).distanceMetres(path.get(2))).isLessThan(1e-12);
    }

    /// Ways traced forward from the water by Snell's law, out through the front and through the side: the one between
    /// their ends is found again.
    @Test
    void crossedPanes_areFoundAgain() {
        Random random = new Random(7);
        int seen = 0;
        for (int i = 0; i < 4000; i++) {
            Vec in = new Vec(0.29 - 0.1 * random.nextDouble(), -0.19 + 0.1 * random.nextDouble(), 0.1);
            double turn = Math.toRadians(40 + 10 * random.nextDouble());
            Vec way = new Vec(Math.sin(turn), Math.cos(turn), 0.2 * random.nextDouble() - 0.1).unit();
            List<Vec> back = trace(in, way.times(-1), INNER, FRONT);
            List<Vec> on = trace(in, way, SIDE, OUTER);
            if (back.isEmpty() || on.isEmpty()) {
                continue;
            }
            seen++;
            List<Vec> found = new FlatPath(List.of(
                            new FlatPath.Face(FRONT, 1.52),
                            new FlatPath.Face(INNER, 1.333),
                            new FlatPath.Face(SIDE, 1.52),
                            new FlatPath.Face(OUTER, 1)))
                    .crossings(back.get(2), on.get(2));
            List<Vec> expected = new ArrayList<>(List.of(back.get(1), back.get(0), on.get(0), on.get(1)));
            for (int face = 0; face < 4; face++) {
                assertThat(found.get(face).distanceMetres(expected.get(face))).isCloseTo(0, within(1e-8));
            }
        }
        assertThat(seen).isGreaterThan(200);
    }

    /// Through panes of an empty tank at a corner, and across from each other through water, the way is the same as
    /// over panes tilted by 1e-6 radian, for which no shorter law is used.
    @Test
    void shorterLaws_agreeWithTheSearch() {
        Vec from = new Vec(-0.1, -0.9, 0.35);
        List<FlatPath.Face> corner = List.of(
                new FlatPath.Face(FRONT, 1.52),
                new FlatPath.Face(INNER, 1),
                new FlatPath.Face(SIDE, 1.52),
                new FlatPath.Face(OUTER, 1));
        compare(new Vec(-0.6, -0.6, 0.35), new Vec(0.9, 0.3, 0.1), corner, 1e-5);
        List<FlatPath.Face> across = List.of(
                new FlatPath.Face(FRONT, 1.52),
                new FlatPath.Face(INNER, 1.333),
                new FlatPath.Face(new Plane(new Vec(0, 0.192, 0), new Vec(0, 1, 0)), 1.52),
                new FlatPath.Face(new Plane(new Vec(0, 0.2, 0), new Vec(0, 1, 0)), 1));
        compare(from, new Vec(0.4, 0.8, -0.2), across, 1e-5);
        compare(from, new Vec(0.4, 0.196, 0.1), across.subList(0, 3), 1e-5);
    }

    private static void compare(Vec from, Vec to, List<FlatPath.Face> faces, double off) {
        List<FlatPath.Face> tilted = new ArrayList<>();
        for (int i = 0; i < faces.size(); i++) {
            Plane plane = faces.get(i).plane();
            Vec normal = plane.normal().plus(new Vec(1e-6, 1e-6, 0.5e-6).times(i % 2 == 0 ? 1 : -1));
            tilted.add(new FlatPath.Face(
                    new Plane(plane.through(), normal), faces.get(i).behindIndex()));
        }
        List<Vec> found = new FlatPath(faces).crossings(from, to);
        List<Vec> searched = new FlatPath(tilted).crossings(from, to);
        for (int i = 0; i < faces.size(); i++) {
            assertThat(found.get(i).distanceMetres(searched.get(i))).isLessThan(off);
        }
    }

    /// Across air in a pane's stead the way is straight.
    @Test
    void withoutGlass_itIsStraight() {
        Vec from = new Vec(-0.1, -0.9, 0.35);
        Vec to = new Vec(0.9, 0.1, 0.1);
        List<Vec> found =
                new FlatPath(List.of(new FlatPath.Face(FRONT, 1), new FlatPath.Face(OUTER, 1))).crossings(from, to);
        assertThat(found.get(0).distanceMetres(from.plus(to.minus(from).times(0.7))))
                .isLessThan(1e-12);
        assertThat(found.get(1).distanceMetres(from.plus(to.minus(from).times(0.408))))
                .isLessThan(1e-12);
    }

    /// On the inner face, on the outer one, and 0.7 m on in air; nothing where it is thrown back.
    private static List<Vec> trace(Vec from, Vec way, Plane inner, Plane outer) {
        Vec one = from.plus(way.times(inner.through().minus(from).dot(inner.normal()) / way.dot(inner.normal())));
        Vec aside = way.minus(inner.normal().times(way.dot(inner.normal()))).times(1.333);
        double square = aside.dot(aside);
        if (square >= 1) {
            return List.of();
        }
        double thick = outer.through().minus(inner.through()).dot(inner.normal());
        Vec two = one.plus(inner.normal().times(thick)).plus(aside.times(thick / Math.sqrt(1.52 * 1.52 - square)));
        return List.of(
                one,
                two,
                two.plus(aside.plus(inner.normal().times(Math.sqrt(1 - square))).times(0.7)));
    }

    @Test
    void withoutFaces_isRefused() {
        assertThatThrownBy(() -> new FlatPath(List.of())).hasMessageContaining("needs one");
        assertThatThrownBy(() -> new FlatPath.Face(FRONT, 0.9)).isInstanceOf(IllegalArgumentException.class);
    }
}
