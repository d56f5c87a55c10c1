package plumeline.geom;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

final class EquationsTest {
    @Test
    void solve_firstFactorNought_givesTheAnswer() {
        // y + z = 5, 2x + z = 5, x − y = −1: x 1, y 2, z 3.
        double[][] matrix = {{0, 1, 1, 5}, {2, 0, 1, 5}, {1, -1, 0, -1}};
        assertThat(Equations.solve(matrix)).isTrue();
        for (int i = 0; i < 3; i++) {
            assertThat(matrix[i][3]).isEqualTo(i + 1, within(1e-14));
        }
    }

    @Test
    void solve_oneRowTwiceAnother_hasNoSingleAnswer() {
        assertThat(Equations.solve(new double[][] {{1, 2, 3}, {2, 4, 6}})).isFalse();
    }
}
