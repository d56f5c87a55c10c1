package plumeline.search;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;

final class SearchTest {
    private static Axis free(String name, double value, double low, double high) {
        return new Axis(name, value, 0.002, new Axis.Freedom.Free(low, high), 0.001, 10);
    }

    private static Axis locked(String name, double value) {
        return new Axis(name, value, 0.002, new Axis.Freedom.Locked(), 0.001, 10);
    }

    @Test
    void solve_betweenTwoWalls_standsInTheMiddle() {
        List<Axis> axes = List.of(free("x", 0.3, -1, 1));
        Margins walls = v -> new double[] {v[0] - 0.1, 0.2 - v[0]};
        double[] found = Search.solve(axes, walls, List.of());
        assertThat(found[0]).isEqualTo(0.15, within(1e-12));
        assertThat(Search.together(axes, walls, found)).isEqualTo(25, within(0.01));
    }

    @Test
    void solve_steeperWall_standsFartherFromIt() {
        List<Axis> axes = List.of(free("x", 0.3, -1, 1), locked("y", 0));
        // Both marks hurt the right wall, only x the left one: shares (x - 0.1)/0.002 and (0.2 - x)/0.004 meet at 2/15.
        Margins walls = v -> new double[] {v[0] - 0.1, 0.2 - v[0] - Math.abs(v[1] - 1) + 1};
        double[] found = Search.solve(axes, walls, List.of());
        assertThat(found[0]).isEqualTo(0.133, within(1e-9));
        assertThat(found[1]).isZero();
    }

    @Test
    void solve_tie_goesToTheNextTightest() {
        List<Axis> axes = List.of(free("x", 0, -1, 1), free("y", 0.9, -1, 1));
        Margins margins = v -> new double[] {0.004 - v[0], 0.004 + v[0], v[1] - 0.5, 0.7 - v[1]};
        double[] found = Search.solve(axes, margins, List.of());
        assertThat(found).containsExactly(new double[] {0, 0.6}, within(1e-9));
    }

    @Test
    void solve_curvedMargins_reachesTheKnownOptimum() {
        // Farthest point from three walls of a triangle counted equally: its incentre. Circle margins bend the slopes.
        List<Axis> axes = List.of(free("x", 0.1, 0, 4), free("y", 0.1, 0, 4));
        Margins triangle = v -> new double[] {v[0], v[1], (12 - 3 * v[0] - 4 * v[1]) / 5};
        double[] found = Search.solve(axes, triangle, List.of());
        // Shares are margins over slope sums: x/1, y/1, (12 - 3x - 4y)/7, equal at 12/14.
        assertThat(found).containsExactly(new double[] {0.857, 0.857}, within(1.1e-3));
    }

    @Test
    void leeway_endsWhereAPartFails_andIsEndlessWhereNoneDoes() {
        List<Axis> axes = List.of(locked("x", 0.15), locked("y", 0));
        Margins margins = v -> new double[] {v[0] - 0.1, v[1] + 0.03};
        Leeway x = Search.leeway(axes, margins, Search.values(axes), 0);
        assertThat(x.minus().distance()).isEqualTo(0.05, within(5e-5));
        assertThat(x.plus()).isEqualTo(new Leeway.Side.Endless());
        assertThat(x.least()).isEqualTo(0.05, within(5e-5));
    }

    @Test
    void together_isTheWorstCornerNotTheAxesAlone() {
        List<Axis> axes = List.of(locked("x", 0), locked("y", 0));
        Margins margins = v -> new double[] {0.012 - v[0] - 2 * v[1]};
        assertThat(Search.together(axes, margins, Search.values(axes))).isEqualTo(2, within(1e-3));
    }

    @Test
    void together_partThatBends_isFollowedToItsCorner() {
        List<Axis> axes = List.of(locked("x", 0.001));
        // |x| grows both ways; from 0.001 the nearer end is +, at 0.01.
        Margins margins = v -> new double[] {0.01 - Math.abs(v[0])};
        assertThat(Search.together(axes, margins, Search.values(axes))).isEqualTo(4.5, within(1e-2));
    }

    /// Two things 14 mm apart that must keep 10 mm: both off by 2 mm meet. Far beyond they have passed each other and
    /// are apart again; what matters is the first failure.
    @Test
    void together_endsWhereAPartFirstFails_notWhereItHoldsAgain() {
        List<Axis> axes = List.of(locked("x", 0), locked("y", 0.014));
        Margins margins = v -> new double[] {Math.abs(v[1] - v[0]) - 0.010, 5 - Math.abs(v[0])};
        assertThat(Search.together(axes, margins, Search.values(axes))).isEqualTo(1, within(1e-3));
    }

    @Test
    void solve_isTheSameEveryTime() {
        List<Axis> axes = List.of(free("x", 0.1, 0, 4), free("y", 0.1, 0, 4));
        Margins margins = v -> new double[] {Math.sin(v[0]) - 0.2 * v[1], Math.cos(v[1]) - 0.1 * v[0]};
        assertThat(Search.solve(axes, margins, List.of())).isEqualTo(Search.solve(axes, margins, List.of()));
    }
}
