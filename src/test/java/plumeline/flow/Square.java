package plumeline.flow;

import java.util.List;

/// Two-dimensional flows in a unit square.
final class Square {
    private final int cells;
    private final Flow flow;

    private Square(int cells, Walls walls, Liquid liquid, List<Release> releases) {
        this.cells = cells;
        Grid grid = new Grid(cells, 1, cells, 1, 1.0 / cells, 1);
        this.flow = Flow.start(new Flow.Setting(Tank.of(grid, walls), liquid, releases, 1), Workers.alone());
    }

    /// A box whose lid is drawn along at speed 1, after a time.
    static Square cavity(int cells, double reynolds, double seconds) {
        Wall glass = Wall.glass();
        var square = new Square(
                cells, Walls.flat(glass, glass, glass, Wall.lid(1)), new Liquid(1 / reynolds, 0, 0), List.of());
        square.flow.run(seconds);
        return square;
    }

    /// A box with a warm wall left and a cold one right, Prandtl number 0.71, in diffusive units, after a time. Dye
    /// stands for warmth: 1 warm, 0 cold.
    static Square convection(int cells, double rayleigh, double seconds) {
        Wall glass = Wall.glass();
        Release lukewarm = new Release.Cloud((_, _, _) -> true, 0.5, 0, 0);
        var square = new Square(
                cells,
                Walls.flat(glass.holding(1), glass.holding(0), glass, glass),
                new Liquid(0.71, 1, -0.71 * rayleigh),
                List.of(lukewarm));
        square.flow.run(seconds);
        return square;
    }

    Flow flow() {
        return flow;
    }

    /// The speed to the right on the vertical middle line, from the three nearest values, walls counted.
    ///
    /// @param height 0 to 1
    /// @param lid the lid's speed
    double along(double height, double lid) {
        int k = Math.min(cells - 1, (int) (height * cells));
        double[] heights = {k == 0 ? 0 : (k - 0.5) / cells, (k + 0.5) / cells, k == cells - 1 ? 1 : (k + 1.5) / cells};
        double[] speeds = {k == 0 ? 0 : u(k - 1), u(k), k == cells - 1 ? lid : u(k + 1)};
        double sum = 0;
        for (int a = 0; a < 3; a++) {
            double weight = speeds[a];
            for (int b = 0; b < 3; b++) {
                weight *= a == b ? 1 : (height - heights[b]) / (heights[a] - heights[b]);
            }
            sum += weight;
        }
        return sum;
    }

    private double u(int k) {
        return flow.velocity()[0][index(cells / 2, k)];
    }

    private int index(int i, int k) {
        return flow.dye().grid().index(i, 0, k);
    }

    /// The greatest speed to the right on the vertical middle line.
    double greatestU() {
        double greatest = 0;
        for (int k = 0; k < cells; k++) {
            greatest = Math.max(greatest, u(k));
        }
        return greatest;
    }

    /// The greatest speed up on the horizontal middle line.
    double greatestW() {
        double greatest = 0;
        for (int i = 0; i < cells; i++) {
            greatest = Math.max(greatest, flow.velocity()[2][index(i, cells / 2)]);
        }
        return greatest;
    }

    /// The mean flow of warmth to the right over the whole square: what is carried and what is conducted.
    double nusselt() {
        Dye warmth = flow.dye();
        double sum = 0;
        for (int k = 0; k < cells; k++) {
            for (int i = 1; i < cells; i++) {
                double left = warmth.share(i - 1, 0, k);
                double right = warmth.share(i, 0, k);
                sum += flow.velocity()[0][index(i, k)] * (left + right) / 2 - (right - left) * cells;
            }
        }
        return sum / cells / (cells - 1);
    }
}
