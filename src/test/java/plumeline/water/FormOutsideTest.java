package plumeline.water;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
import org.junit.jupiter.api.Test;
import plumeline.geom.Vec;
import plumeline.tidy.Outside;

/// Cut forms against closed forms and against points thrown at random.
final class FormOutsideTest {
    private static final long SEED = 77;

    @Test
    @Outside(
            source = "hoof of a cylinder (cylindrical wedge) through its base's diameter: V = 2/3 r² h; ungula",
            place = "any table of solids; from memory",
            kind = "closed form")
    void hoof_hasItsVolume() {
        double r = 0.03;
        double h = 0.05;
        Turned cylinder = Turned.cylinder(r, 0.2);
        // The plane through the base's diameter that meets the wall at height h: z = h·x/r for x > 0.
        Vec up = new Vec(-h / r, 0, 1).unit();
        Portion hoof = cylinder.below(up, 0);
        assertThat(hoof.volumeMetres3()).isCloseTo(2.0 / 3 * r * r * h, within(1e-9 * r * r * h));
        assertThat(hoof.centroid().x()).isCloseTo(3 * Math.PI * r / 16, within(1e-9 * r));
        assertThat(hoof.centroid().z()).isCloseTo(3 * Math.PI * h / 32, within(1e-9 * h));
    }

    @Test
    @Outside(source = "lying cylinder: circular segment times length", place = "plane geometry", kind = "closed form")
    void lyingCylinder_isSegmentTimesLength() {
        double r = 0.033;
        double length = 0.115;
        Turned cylinder = Turned.cylinder(r, length);
        for (double c : new double[] {-0.032, -0.02, -0.001, 0, 0.01, 0.03, 0.0329}) {
            double segment = r * r * Math.acos(-c / r) + c * Math.sqrt(r * r - c * c);
            Portion under = cylinder.below(new Vec(1, 0, 0), c);
            assertThat(under.volumeMetres3()).isCloseTo(segment * length, within(1e-12));
            double arm = -2.0 / 3 * Math.pow(r * r - c * c, 1.5) / segment;
            assertThat(under.centroid().x()).isCloseTo(arm, within(1e-10));
            assertThat(under.centroid().z()).isCloseTo(length / 2, within(1e-10));
        }
    }

    @Test
    @Outside(
            source = "oblique cut of a cone: V = 1/3 · area of the ellipse · distance of the apex from it",
            place = "solid geometry",
            kind = "closed form")
    void cone_cutAskew_isAThirdOfBaseTimesHeight() {
        double half = Math.toRadians(25);
        Turned cone = FormTest.turned(0, 0, 0.4, 0.4 * Math.tan(half));
        for (double degrees : new double[] {0, 5, 20, 35, 50}) {
            double away = 0.06;
            Vec up = FormTest.up(degrees);
            double tilt = Math.toRadians(degrees);
            // Along the tilt the cut meets the wall at these distances from the apex's foot on it.
            double near = away * Math.tan(half - tilt);
            double far = away * Math.tan(half + tilt);
            double major = (near + far) / 2;
            double middleX = (far - near) / 2;
            double axial = away * Math.cos(tilt) + middleX * Math.sin(tilt);
            double across = away * Math.sin(tilt) - middleX * Math.cos(tilt);
            double minor = Math.sqrt(axial * axial * Math.tan(half) * Math.tan(half) - across * across);
            double volume = Math.PI * major * minor * away / 3;
            Portion under = cone.below(up, away);
            assertThat(under.volumeMetres3()).as("tilt " + degrees).isCloseTo(volume, within(1e-9 * volume));
            assertThat(under.sectionMetres2()).isCloseTo(Math.PI * major * minor, within(1e-8));
        }
    }

    @Test
    @Outside(source = "Archimedes, On the Sphere and Cylinder: spherical cap", place = "", kind = "closed form")
    void ballOfFrusta_comesNearTheBall_askew() {
        double r = 0.04;
        int count = 400;
        double[] rings = new double[2 * (count + 1)];
        for (int i = 0; i <= count; i++) {
            double angle = Math.PI * i / count;
            rings[2 * i] = r - r * Math.cos(angle);
            rings[2 * i + 1] = i == 0 || i == count ? 0 : r * Math.sin(angle);
        }
        Turned ball = FormTest.turned(rings);
        for (double degrees : new double[] {0, 30, 77, 90, 150}) {
            double depth = 0.025;
            Vec up = FormTest.up(degrees);
            double cap = Math.PI * depth * depth * (r - depth / 3);
            Portion under = ball.below(up, r * up.z() - r + depth);
            assertThat(under.volumeMetres3()).isCloseTo(cap, within(1e-4 * cap));
            double below = 3 * (2 * r - depth) * (2 * r - depth) / (4 * (3 * r - depth));
            double height = up.dot(under.centroid()) - r * up.z();
            assertThat(height).isCloseTo(-below, within(1e-4 * r));
        }
    }

    @Test
    @Outside(source = "points thrown at random into the form's case", place = "this test", kind = "other method")
    void randomForms_agreeWithThrownPoints() {
        Random random = new Random(SEED);
        System.out.println("seed " + SEED);
        int throwsEach = 40_000;
        for (int i = 0; i < 60; i++) {
            boolean box = i % 3 == 0;
            Turned turned = FormTest.randomTurned(random);
            Block block = new Block(0.04 + 0.05 * random.nextDouble(), 0.05, 0.03 + 0.1 * random.nextDouble());
            Form form = box ? block : turned;
            double wide = box ? 0.09 : 0.11;
            double height = box ? block.heightMetres() : turned.heightMetres();
            Vec up = new Vec(random.nextGaussian(), random.nextGaussian(), random.nextGaussian()).unit();
            double low = form.lowestMetres(up);
            double level = low + (0.2 + 0.6 * random.nextDouble()) * (form.highestMetres(up) - low);
            int hits = 0;
            Vec sum = Vec.ZERO;
            for (int t = 0; t < throwsEach; t++) {
                double x = (random.nextDouble() - 0.5) * wide;
                double y = (random.nextDouble() - 0.5) * wide;
                Vec p = new Vec(x, y, random.nextDouble() * height);
                boolean in = box
                        ? Math.abs(p.x()) < block.widthMetres() / 2 && Math.abs(p.y()) < block.depthMetres() / 2
                        : Math.hypot(p.x(), p.y()) < radius(turned, p.z());
                if (in && up.dot(p) < level) {
                    hits++;
                    sum = sum.plus(p);
                }
            }
            double cased = wide * wide * height;
            double share = hits / (double) throwsEach;
            double error = 5 * Math.sqrt(share * (1 - share) / throwsEach) * cased;
            Portion under = form.below(up, level);
            assertThat(under.volumeMetres3()).as("form " + i).isCloseTo(share * cased, within(error));
            double spread = 5 * 0.1 / Math.sqrt(hits);
            assertThat(under.centroid().distanceMetres(sum.times(1.0 / hits))).isLessThan(spread);
        }
    }

    private static double radius(Turned turned, double z) {
        for (int i = 1; i < turned.rings().size(); i++) {
            Turned.Ring a = turned.rings().get(i - 1);
            Turned.Ring b = turned.rings().get(i);
            if (z <= b.heightMetres()) {
                double share = (z - a.heightMetres()) / (b.heightMetres() - a.heightMetres());
                return a.radiusMetres() + share * (b.radiusMetres() - a.radiusMetres());
            }
        }
        return 0;
    }
}
