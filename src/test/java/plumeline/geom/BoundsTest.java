package plumeline.geom;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import org.junit.jupiter.api.Test;

/// Boxes round places.
final class BoundsTest {
    @Test
    void of_isTheLeastBox() {
        Bounds box = Bounds.of(List.of(new Vec(1, -2, 3), new Vec(-1, 5, 3), new Vec(0, 0, 0)));
        assertThat(box).isEqualTo(new Bounds(new Vec(-1, -2, 0), new Vec(1, 5, 3)));
        assertThat(box.corners()).hasSize(8).doesNotHaveDuplicates().contains(new Vec(1, -2, 3), new Vec(-1, 5, 0));
        assertThat(Bounds.of(box.corners())).isEqualTo(box);
    }

    @Test
    void ofNothing_orUpsideDown_isRefused() {
        assertThatThrownBy(() -> Bounds.of(List.of())).hasMessageContaining("one place at least");
        assertThatThrownBy(() -> new Bounds(Vec.UP, Vec.ZERO)).hasMessageContaining("low at or under high");
    }
}
