package plumeline.trace;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Random;
import java.util.function.Predicate;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import plumeline.geom.Barrel;
import plumeline.geom.Body;
import plumeline.geom.Pose;
import plumeline.geom.Solid;
import plumeline.geom.Station;
import plumeline.geom.Vec;
import plumeline.mirror.Finish;
import plumeline.scenery.Form;
import plumeline.scenery.Part;

/// Where rays meet forms against small steps along them.
final class MeetsTest {
    private static final double STEP_METRES = 1e-4;

    /// A form and whether a place is in it.
    record Case(Form form, Predicate<Vec> holds) {}

    static Stream<Case> cases() {
        Solid.Revolved turned = new Solid.Revolved(List.of(
                new Station(0, 0.02),
                new Station(0.03, 0.04),
                new Station(0.03, 0.03),
                new Station(0.05, 0.03),
                new Station(0.05, 0.045),
                new Station(0.09, 0)));
        Body leaned = new Body(turned, new Pose(new Vec(0.01, 0.02, 0.005), 0.7, 0.4));
        Body box = new Body(new Solid.Box(0.06, 0.05, 0.08), new Pose(new Vec(0, 0.01, 0), 0.5, -0.3));
        Barrel barrel = new Barrel(new Vec(-0.03, 0.01, 0), new Vec(0.02, 0.02, 0.08), 0.01, 0.02);
        Vec axis = barrel.to().minus(barrel.from());
        double length = axis.lengthMetres();
        return Stream.of(
                new Case(new Form.Posed(leaned), place -> {
                    Vec own = leaned.own(place);
                    return own.z() >= 0 && Math.hypot(own.x(), own.y()) < turned.radiusAtMetres(own.z());
                }),
                new Case(new Form.Posed(box), place -> {
                    Vec own = box.own(place);
                    return Math.abs(own.x()) < 0.03 && Math.abs(own.y()) < 0.025 && own.z() > 0 && own.z() < 0.08;
                }),
                new Case(
                        new Form.Ball(new Vec(0.01, 0, 0.04), 0.035),
                        place -> place.distanceMetres(new Vec(0.01, 0, 0.04)) < 0.035),
                new Case(new Form.Rod(barrel), place -> {
                    double on = place.minus(barrel.from()).dot(axis) / length;
                    double out = place.minus(barrel.from())
                            .minus(axis.times(on / length))
                            .lengthMetres();
                    return on > 0 && on < length && out < 0.01 + 0.01 * on / length;
                }));
    }

    /// From outside the first place within, and from inside the first one out of it, is where the form is met.
    @ParameterizedTest
    @MethodSource("cases")
    void met_whereStepsComeIn(Case each) {
        Shapes shapes = new Shapes();
        shapes.add(each.form());
        Meets meets = new Meets(shapes);
        Random random = new Random(11);
        Hit hit = new Hit();
        int met = 0;
        for (int i = 0; i < 3000; i++) {
            Vec from = new Vec(random.nextGaussian(), random.nextGaussian(), random.nextGaussian())
                    .times(i % 3 == 0 ? 0.02 : 0.1)
                    .plus(new Vec(0, 0, 0.04));
            Vec to = new Vec(random.nextGaussian(), random.nextGaussian(), random.nextGaussian() + 2).times(0.02);
            Vec way = to.minus(from).unit();
            hit.clear(Double.POSITIVE_INFINITY);
            boolean is = meets.meets(0, from.x(), from.y(), from.z(), way.x(), way.y(), way.z(), hit);
            double stepped = stepped(each.holds(), from, way);
            if (is && stepped < Double.POSITIVE_INFINITY) {
                met++;
                if (Math.abs(hit.t - stepped) > 2 * STEP_METRES) {
                    // Between two steps an edge may be cut: the place itself must lie on the surface then.
                    assertThat(onSurface(each.holds(), from.plus(way.times(hit.t))))
                            .isTrue();
                    assertThat(hit.t).isLessThan(stepped);
                }
            } else if (is) {
                assertThat(onSurface(each.holds(), from.plus(way.times(hit.t)))).isTrue();
            } else {
                assertThat(stepped).isInfinite();
            }
        }
        assertThat(met).isGreaterThan(1000);
    }

    private static double stepped(Predicate<Vec> holds, Vec from, Vec way) {
        boolean inside = holds.test(from);
        for (double t = STEP_METRES; t < 0.6; t += STEP_METRES) {
            if (holds.test(from.plus(way.times(t))) != inside) {
                return t;
            }
        }
        return Double.POSITIVE_INFINITY;
    }

    private static boolean onSurface(Predicate<Vec> holds, Vec place) {
        Random random = new Random(1);
        boolean in = false;
        boolean out = false;
        for (int i = 0; i < 200; i++) {
            Vec beside = new Vec(random.nextGaussian(), random.nextGaussian(), random.nextGaussian()).times(2e-6);
            in |= holds.test(place.plus(beside));
            out |= !holds.test(place.plus(beside));
        }
        return in && out;
    }

    @Test
    void facing_isOutOfTheForm() {
        for (Case each : cases().toList()) {
            Shapes shapes = new Shapes();
            shapes.add(each.form());
            Meets meets = new Meets(shapes);
            Random random = new Random(12);
            Hit hit = new Hit();
            int met = 0;
            for (int i = 0; i < 500; i++) {
                Vec from = new Vec(random.nextGaussian(), random.nextGaussian(), random.nextGaussian()).times(0.2);
                Vec way = new Vec(0, 0.01, 0.04).minus(from).unit();
                hit.clear(Double.POSITIVE_INFINITY);
                if (!meets.meets(0, from.x(), from.y(), from.z(), way.x(), way.y(), way.z(), hit)) {
                    continue;
                }
                Vec place = from.plus(way.times(hit.t));
                hit.x = place.x();
                hit.y = place.y();
                hit.z = place.z();
                meets.face(0, hit);
                Vec facing = new Vec(hit.nx, hit.ny, hit.nz);
                assertThat(facing.lengthMetres()).isCloseTo(1, within(1e-9));
                boolean out = each.holds().test(place.plus(facing.times(1e-6)));
                boolean in = each.holds().test(place.minus(facing.times(1e-6)));
                met += in && !out ? 1 : 0;
            }
            assertThat(met).isGreaterThan(400);
        }
    }

    @Test
    void bend_isMetOnItsQuarterOnly() {
        Form bend = new Form.Bend(new Vec(0, 0, 0.2), new Vec(1, 0, 0), new Vec(0, 0, -1), new Vec(0, 1, 0), 1, 0.2);
        Shapes shapes = new Shapes();
        shapes.add(bend);
        Meets meets = new Meets(shapes);
        Hit hit = new Hit();
        hit.clear(Double.POSITIVE_INFINITY);
        assertThat(meets.meets(0, 0, -1, 0.1, 0, 1, 0, hit)).isTrue();
        assertThat(hit.t).isCloseTo(1 + Math.sqrt(0.04 - 0.01), within(1e-12));
        hit.clear(Double.POSITIVE_INFINITY);
        assertThat(meets.meets(0, 0, -1, 0.3, 0, 1, 0, hit)).isFalse();
        assertThat(meets.meets(0, 0.6, -1, 0.1, 0, 1, 0, hit)).isFalse();
    }

    /// Whatever the number of parts, the same is met: by the tree and one by one.
    @Test
    void manyParts_areMetAsFew() {
        Random random = new Random(4);
        List<Part> parts = Stream.generate(() -> Sets.part(
                        "ball",
                        new Form.Ball(new Vec(random.nextDouble(), random.nextDouble(), random.nextDouble()), 0.03),
                        Sets.ONE,
                        new Finish.Matte()))
                .limit(300)
                .toList();
        Tracer all = Tracer.of(Sets.world(parts, List.of(), Sets.DARK));
        int met = 0;
        for (int i = 0; i < 200; i++) {
            Vec from = new Vec(random.nextDouble(), -1, random.nextDouble());
            Eye eye = Sets.eye(from, new Vec(random.nextDouble(), 1, random.nextDouble()), 0.1);
            Tracer.Seen seen = all.seen(eye, 0, 0);
            double least = Double.POSITIVE_INFINITY;
            int which = -1;
            for (int j = 0; j < parts.size(); j++) {
                double way = Tracer.of(Sets.world(List.of(parts.get(j)), List.of(), Sets.DARK))
                        .seen(eye, 0, 0)
                        .wayMetres();
                if (way < least) {
                    least = way;
                    which = j;
                }
            }
            assertThat(seen.part()).isEqualTo(which);
            met += which >= 0 ? 1 : 0;
        }
        assertThat(met).isGreaterThan(50);
    }
}
