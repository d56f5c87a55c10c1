package plumeline.flow;

/// Solves −∇²p = b in the box without bodies, its walls letting nothing through: a cosine transform along x and y
/// leaves one three-term system up the tank for each pair of frequencies, which elimination solves (Thomas).
///
/// The solution is fixed but for a constant; it is chosen to be nought at the top, on the mean. b must add up to
/// nought.
///
/// **Source:** U. Schumann and R. Sweet, "Fast Fourier transforms for direct solution of Poisson's equation with
/// staggered boundary conditions", J. Comput. Phys. 75 (1988) (from memory).
final class BoxSolve {
    private final Grid grid;
    private final Workers workers;
    private final CosineTransform alongX;
    private final CosineTransform alongY;

    /// Layer by layer, by frequency along y, then along x.
    private final float[][][] planes;

    private final float[][][] pivots;
    private final float coupling;

    BoxSolve(Grid grid, Workers workers) {
        this.grid = grid;
        this.workers = workers;
        this.alongX = new CosineTransform(grid.nx());
        this.alongY = new CosineTransform(grid.ny());
        this.planes = new float[grid.nz()][grid.ny()][grid.nx()];
        this.pivots = new float[grid.nz()][grid.ny()][grid.nx()];
        double up = 1 / (grid.dzMetres() * grid.dzMetres());
        this.coupling = (float) up;
        for (int a = 0; a < grid.nx(); a++) {
            for (int b = 0; b < grid.ny(); b++) {
                double across = eigenvalue(alongX.frequency(a), grid.nx(), grid.dxMetres())
                        + eigenvalue(alongY.frequency(b), grid.ny(), grid.dyMetres());
                fillPivots(a, b, across, up);
            }
        }
    }

    private static double eigenvalue(int frequency, int cells, double edge) {
        double half = StrictMath.sin(Math.PI * frequency / (2 * cells));
        return 4 * half * half / (edge * edge);
    }

    private void fillPivots(int a, int b, double across, double up) {
        double pivot = 0;
        for (int k = 0; k < grid.nz(); k++) {
            boolean atEnd = k == 0 || k == grid.nz() - 1;
            double fixed = across == 0 && k == grid.nz() - 1 ? up : 0;
            pivot = 1 / (across + (atEnd ? up : 2 * up) + fixed - up * up * pivot);
            pivots[k][b][a] = (float) pivot;
        }
    }

    /// Solves for what a field holds inside; the answer stands in another, whose rim stays as it was.
    void solve(float[] from, float[] to) {
        workers.each(grid.nz(), k -> forward(from, k));
        workers.each(grid.ny(), this::eliminate);
        workers.each(grid.nz(), k -> back(to, k));
    }

    private void forward(float[] from, int k) {
        int nx = grid.nx();
        int ny = grid.ny();
        float[][] rows = planes[k];
        for (int j = 0; j < ny; j++) {
            System.arraycopy(from, grid.index(0, j, k), rows[j], 0, nx);
        }
        alongY.forward(rows, new float[ny][nx]);
        float[][] turned = new float[nx][ny];
        turn(rows, turned);
        alongX.forward(turned, new float[nx][ny]);
        turn(turned, rows);
    }

    private void back(float[] to, int k) {
        int nx = grid.nx();
        int ny = grid.ny();
        float[][] rows = planes[k];
        float[][] turned = new float[nx][ny];
        turn(rows, turned);
        alongX.back(turned, new float[nx][ny]);
        turn(turned, rows);
        alongY.back(rows, new float[ny][nx]);
        for (int j = 0; j < ny; j++) {
            System.arraycopy(rows[j], 0, to, grid.index(0, j, k), nx);
        }
    }

    /// Makes rows of columns.
    private static void turn(float[][] from, float[][] to) {
        for (int r = 0; r < from.length; r++) {
            float[] row = from[r];
            for (int c = 0; c < row.length; c++) {
                to[c][r] = row[c];
            }
        }
    }

    private void eliminate(int b) {
        scale(planes[0][b], pivots[0][b]);
        for (int k = 1; k < planes.length; k++) {
            down(planes[k][b], planes[k - 1][b], pivots[k][b], coupling);
        }
        for (int k = planes.length - 2; k >= 0; k--) {
            up(planes[k][b], planes[k + 1][b], pivots[k][b], coupling);
        }
    }

    private static void scale(float[] here, float[] pivot) {
        for (int a = 0; a < here.length; a++) {
            here[a] *= pivot[a];
        }
    }

    private static void down(float[] here, float[] below, float[] pivot, float coupling) {
        for (int a = 0; a < here.length; a++) {
            here[a] = (here[a] + coupling * below[a]) * pivot[a];
        }
    }

    private static void up(float[] here, float[] above, float[] pivot, float coupling) {
        for (int a = 0; a < here.length; a++) {
            here[a] += coupling * pivot[a] * above[a];
        }
    }
}
