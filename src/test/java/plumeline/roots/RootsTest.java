package plumeline.roots;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

/// Roots that are known, functions that jump, ends on either side.
final class RootsTest {
    @Test
    void falsePosition_findsTheRoot_ofStraightAndCrooked() {
        assertThat(Roots.falsePosition(x -> 3 - x, 0, 3, 10, -7, 1e-12).orElseThrow())
                .isCloseTo(3, within(1e-12));
        assertThat(Roots.falsePosition(x -> 2 - x * x, 0, 2, 2, -2, 1e-13).orElseThrow())
                .isCloseTo(Math.sqrt(2), within(1e-12));
        assertThat(Roots.falsePosition(x -> 1e-3 - Math.pow(x, 9), 0, 1e-3, 4, 1e-3 - Math.pow(4, 9), 1e-15)
                        .orElseThrow())
                .isCloseTo(Math.pow(1e-3, 1.0 / 9), within(1e-9));
    }

    @Test
    void falsePosition_overAJump_isNone() {
        assertThat(Roots.falsePosition(x -> x < 0.3 ? 1 : -1, 0, 1, 1, -1, 1e-9))
                .isEmpty();
    }

    @Test
    void end_isTheFirstPlaceThatDoesntHold_toEitherSide() {
        assertThat(Roots.end(x -> x < 0.7, 0, 2)).isCloseTo(0.7, within(1e-11)).isGreaterThanOrEqualTo(0.7);
        assertThat(Roots.end(x -> x > 0.7, 2, 0)).isCloseTo(0.7, within(1e-11)).isLessThanOrEqualTo(0.7);
        assertThat(Roots.end(_ -> true, 0, 2)).isEqualTo(2);
        assertThat(Roots.end(_ -> false, 0, 2)).isCloseTo(0, within(1e-11));
    }
}
