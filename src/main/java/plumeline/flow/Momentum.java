package plumeline.flow;

import java.util.Arrays;

/// How fast the velocities change by what the water carries along, by friction and by the dye's weight.
///
/// Momentum goes through the sides of a velocity's own box by the third-order upwind-biased value of it there, with the
/// mean of the two velocities across that side; friction is the plain second difference.
///
/// **Source:** the upwind-biased flux of L. Wicker and W. Skamarock, "Time-splitting methods for elastic models using
/// forward time schemes", Monthly Weather Review 130 (2002), equation 4b (from memory); the staggered grid of F. Harlow
/// and J. Welch, Physics of Fluids 8 (1965).
final class Momentum {
    /// Which rows hold what: first nine that are loaded, then what goes in and out, then the rate.
    private static final int IN = 9;

    private static final int OUT = 10;
    private static final int RATE = 11;

    private final Tank tank;
    private final Grid grid;
    private final Liquid liquid;
    private final Workers workers;

    Momentum(Tank tank, Liquid liquid, Workers workers) {
        this.tank = tank;
        this.grid = tank.grid();
        this.liquid = liquid;
        this.workers = workers;
    }

    /// Fills the rates of now. The rims must be filled.
    void fillRates(Fields fields) {
        workers.each(grid.nz(), k -> {
            for (int component : grid.axes()) {
                var rows = new Rows(12, grid.nx() - (component == 0 ? 1 : 0));
                for (int j = component == 1 ? 1 : 0; j < grid.ny(); j++) {
                    if (component != 2 || k > 0) {
                        fillRow(fields, component, j, k, rows);
                    }
                }
            }
        });
    }

    private void fillRow(Fields fields, int component, int j, int k, Rows rows) {
        int first = grid.index(component == 0 ? 1 : 0, j, k);
        int end = grid.index(grid.nx(), j, k);
        float[] rate = fields.rateNow(component);
        float[] carried = fields.velocity[component];
        Arrays.fill(rows.get(RATE), 0);
        for (int axis : grid.axes()) {
            double edge = grid.edgeMetres(axis);
            float perEdge = (float) (0.5 / 12 / edge);
            float friction = (float) (liquid.viscosityMetres2PerSecond() / (edge * edge));
            loadRows(rows, carried, fields.velocity[axis], first, grid.stride(axis), grid.stride(component));
            addRow(rows, perEdge, friction);
        }
        rows.store(RATE, rate, first);
        if (component == 2) {
            addWeight(rate, fields.dye, first, end);
        }
        if (tank.isSolidAnywhere()) {
            addDrag(rate, carried, tank.drag(component), first, end);
        }
    }

    /// Five values of what is carried along an axis, and the crossing velocities on both sides of the two faces.
    private static void loadRows(Rows rows, float[] carried, float[] carrying, int first, int step, int own) {
        for (int n = 0; n < 5; n++) {
            rows.load(n, carried, first + (n - 2) * step);
        }
        rows.load(5, carrying, first);
        rows.load(6, carrying, first - own);
        rows.load(7, carrying, first + step);
        rows.load(8, carrying, first + step - own);
    }

    /// Adds what goes through the two sides along one axis. Short loops, which the compiler makes wide.
    private static void addRow(Rows rows, float perEdge, float friction) {
        float[] below = rows.get(1);
        float[] here = rows.get(2);
        float[] above = rows.get(3);
        float[] in = rows.get(IN);
        float[] out = rows.get(OUT);
        carry(rows.get(5), rows.get(6), rows.get(0), below, here, above, in);
        carry(rows.get(7), rows.get(8), below, here, above, rows.get(4), out);
        float[] rate = rows.get(RATE);
        for (int n = 0; n < rate.length; n++) {
            rate[n] += perEdge * (in[n] - out[n]) + friction * (below[n] - 2f * here[n] + above[n]);
        }
    }

    /// What goes through a side between b and c, times 24.
    private static void carry(float[] one, float[] other, float[] a, float[] b, float[] c, float[] d, float[] to) {
        for (int n = 0; n < to.length; n++) {
            float crossing = one[n] + other[n];
            float across = d[n] - a[n];
            float even = 7f * (b[n] + c[n]) - (a[n] + d[n]);
            to[n] = crossing * even + Math.abs(crossing) * (across - 3f * (c[n] - b[n]));
        }
    }

    private void addWeight(float[] rate, float[] dye, int first, int end) {
        float half = (float) (-0.5 * liquid.sinkingMetresPerSecond2());
        int step = grid.strideZ();
        for (int p = first; p < end; p++) {
            rate[p] += half * (dye[p] + dye[p - step]);
        }
    }

    private void addDrag(float[] rate, float[] carried, float[] drag, int first, int end) {
        float viscosity = (float) liquid.viscosityMetres2PerSecond();
        for (int p = first; p < end; p++) {
            rate[p] -= viscosity * drag[p] * carried[p];
        }
    }

    /// Steps the velocities with the rates of now and before (Adams–Bashforth 2 for steps of any length), and turns the
    /// rates. Through shut faces nothing goes.
    ///
    /// @param fields the fields
    /// @param seconds this step
    /// @param lastSeconds the step before; 0 at the first, which then takes the rates of now alone
    void step(Fields fields, double seconds, double lastSeconds) {
        double ratio = lastSeconds > 0 ? seconds / lastSeconds : 0;
        float now = (float) (seconds * (1 + ratio / 2));
        float before = (float) (-seconds * ratio / 2);
        workers.each(grid.nz(), k -> {
            for (int component : grid.axes()) {
                float[] velocity = fields.velocity[component];
                float[] rate = fields.rateNow(component);
                float[] last = fields.rateBefore(component);
                float[] open = tank.open(component);
                for (int j = 0; j < grid.ny(); j++) {
                    int first = grid.index(0, j, k);
                    for (int p = first; p < first + grid.nx(); p++) {
                        velocity[p] = open[p] * (velocity[p] + now * rate[p] + before * last[p]);
                    }
                }
            }
        });
        fields.turn();
    }
}
