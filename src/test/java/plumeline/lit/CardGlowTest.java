package plumeline.lit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.ToDoubleFunction;
import org.junit.jupiter.api.Test;
import plumeline.geom.Vec;
import plumeline.light.Panel;
import plumeline.light.Patch;

/// What falls on a card, asked as often as it takes.
final class CardGlowTest {
    private static final Panel CARD = new Panel(new Vec(0, 0, 1), new Vec(0, -1, 0), new Vec(1, 0, 0), 0.8, 0.6, 1);

    private final AtomicInteger asked = new AtomicInteger();

    private CardGlow glow(ToDoubleFunction<Vec> lux) {
        return new CardGlow(CARD, patch -> {
            asked.incrementAndGet();
            return lux.applyAsDouble(patch.place());
        });
    }

    private static double at(CardGlow glow, double x, double z) {
        return glow.share(new Vec(x, 0, z), new Vec(0, -1, 0));
    }

    @Test
    void untilNeeded_itIsntAsked() {
        CardGlow glow = glow(place -> 100);
        assertThat(asked).hasValue(0);
        assertThat(at(glow, 0.13, 1.1)).isCloseTo(100, within(1e-9));
        assertThat(at(glow, -0.4, 0.7)).isCloseTo(100, within(1e-9));
        assertThat(asked).hasValue(41);
    }

    /// A parabola is told by every other place; the shadow of a flag's edge isn't.
    @Test
    void asClosely_asItDiffers() {
        CardGlow smooth = glow(place -> 100 - 50 * place.x() * place.x() + 20 * place.z());
        assertThat(at(smooth, 0.17, 1.08)).isCloseTo(100 - 50 * 0.17 * 0.17 + 21.6, within(1e-9));
        assertThat(asked).hasValue(41);
        asked.set(0);
        CardGlow edge = glow(place -> place.x() < 0.05 ? 100 : 20);
        assertThat(at(edge, 0.02, 1)).isBetween(60.0, 110.0);
        assertThat(at(edge, 0.39, 1)).isCloseTo(20, within(1e-9));
        assertThat(asked.get()).isGreaterThan(50);
    }

    @Test
    void equallyLitCards_areEqual() {
        assertThat(glow(Vec::x)).isEqualTo(glow(Vec::x)).hasSameHashCodeAs(glow(Vec::x));
        assertThat(glow(Vec::x)).isNotEqualTo(glow(Vec::z));
        Patch corner = CardGlow.patch(CARD, 0, 0);
        assertThat(corner.place().distanceMetres(new Vec(-0.4, 0, 0.7))).isLessThan(1e-12);
    }
}
