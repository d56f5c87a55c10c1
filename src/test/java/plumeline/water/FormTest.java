package plumeline.water;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import plumeline.geom.Vec;

/// Volumes and centroids of what lies under a plane.
final class FormTest {
    private static final long SEED = 20251;

    static Turned turned(double... heightsAndRadii) {
        List<Turned.Ring> rings = new ArrayList<>();
        for (int i = 0; i < heightsAndRadii.length; i += 2) {
            rings.add(new Turned.Ring(heightsAndRadii[i], heightsAndRadii[i + 1]));
        }
        return new Turned(rings);
    }

    static Vec up(double degrees) {
        return new Vec(Math.sin(Math.toRadians(degrees)), 0, Math.cos(Math.toRadians(degrees)));
    }

    static Turned randomTurned(Random random) {
        int count = 2 + random.nextInt(6);
        double[] values = new double[2 * count];
        double height = 0;
        for (int i = 0; i < count; i++) {
            values[2 * i] = height;
            values[2 * i + 1] = 0.005 + 0.05 * random.nextDouble();
            height += 0.01 + 0.05 * random.nextDouble();
        }
        return turned(values);
    }

    @Test
    void partsAboveAndBelow_makeTheWhole_atAnyTilt() {
        Random random = new Random(SEED);
        System.out.println("seed " + SEED);
        for (int i = 0; i < 1000; i++) {
            Form form = i % 2 == 0 ? randomTurned(random) : new Block(0.03 + random.nextDouble() * 0.1, 0.05, 0.08);
            Vec up = new Vec(random.nextGaussian(), random.nextGaussian(), random.nextGaussian()).unit();
            double low = form.lowestMetres(up);
            double level = low + random.nextDouble() * (form.highestMetres(up) - low);
            Portion under = form.below(up, level);
            Portion over = form.below(up.times(-1), -level);
            Portion whole = form.whole();
            double all = whole.volumeMetres3();
            assertThat(under.volumeMetres3() + over.volumeMetres3()).isCloseTo(all, within(1e-9 * all));
            assertThat(under.sectionMetres2()).isCloseTo(over.sectionMetres2(), within(1e-8));
            Vec moment = under.centroid()
                    .times(under.volumeMetres3())
                    .plus(over.centroid().times(over.volumeMetres3()));
            double off = moment.times(1 / all).distanceMetres(whole.centroid());
            assertThat(off).isLessThan(1e-9);
            assertThat(form.below(up, form.highestMetres(up) + 1e-9).volumeMetres3())
                    .isCloseTo(all, within(1e-9 * all));
            assertThat(form.below(up, low - 1e-9).volumeMetres3()).isZero();
        }
    }

    @Test
    void section_isTheSlopeOfTheVolume() {
        Random random = new Random(SEED);
        for (int i = 0; i < 200; i++) {
            Form form = i % 2 == 0 ? randomTurned(random) : new Block(0.06, 0.05, 0.08);
            Vec up = new Vec(random.nextGaussian(), random.nextGaussian(), random.nextGaussian()).unit();
            double low = form.lowestMetres(up);
            double high = form.highestMetres(up);
            double level = low + (0.1 + 0.8 * random.nextDouble()) * (high - low);
            double step = 1e-6;
            double slope = (form.below(up, level + step).volumeMetres3()
                            - form.below(up, level - step).volumeMetres3())
                    / (2 * step);
            assertThat(form.below(up, level).sectionMetres2()).isCloseTo(slope, within(3e-6));
        }
    }

    @Test
    void level_holdsTheVolumeAsked() {
        Random random = new Random(SEED);
        for (int i = 0; i < 1000; i++) {
            Turned form = randomTurned(random);
            double all = form.whole().volumeMetres3();
            double asked = all * random.nextDouble();
            Vec up = up(i % 10 == 0 ? 90 * (i % 3) : 180 * random.nextDouble());
            Level.At at = Level.find(form, up, asked);
            assertThat(at.under().volumeMetres3()).isCloseTo(asked, within(1e-10 * all));
            assertThat(form.below(up, at.levelMetres()).volumeMetres3()).isCloseTo(asked, within(1e-10 * all));
        }
    }

    @Test
    void formsThatAreNoBodies_areRefused() {
        assertThatThrownBy(() -> turned(0, 0.01)).hasMessageContaining("two rings");
        assertThatThrownBy(() -> turned(0, 0.01, 0.02, 0, 0.03, 0.01)).hasMessageContaining("a hole in the profile");
        assertThatThrownBy(() -> turned(0, 0.01, 0.02, 0.01, 0.01, 0.01)).hasMessageContaining("step to ring 2");
        assertThatThrownBy(() -> turned(0, 0.01, 0.02, -0.01)).hasMessageContaining("radiusMetres");
        assertThatThrownBy(() -> turned(0, 0.01, 0, 0.02)).hasMessageContaining("without volume");
        assertThatThrownBy(() -> turned(0, 0, 0.02, 0)).hasMessageContaining("without volume");
        assertThatThrownBy(() -> new Block(0, 1, 1)).hasMessageContaining("widthMetres");
    }
}
