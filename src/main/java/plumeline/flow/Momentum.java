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
                for (int j = component == 1 ? 1 : 0; j < grid.ny(); j++) {
                    if (component != 2 || k > 0) {
                        fillRow(fields, component, j, k);
                    }
                }
            }
        });
    }

    private void fillRow(Fields fields, int component, int j, int k) {
        int first = grid.index(component == 0 ? 1 : 0, j, k);
        int end = grid.index(grid.nx(), j, k);
        float[] rate = fields.rateNow(component);
        float[] carried = fields.velocity[component];
        int own = grid.stride(component);
        Arrays.fill(rate, first, end, 0);
        for (int axis : grid.axes()) {
            double edge = grid.edgeMetres(axis);
            float perEdge = (float) (0.5 / 12 / edge);
            float friction = (float) (liquid.viscosityMetres2PerSecond() / (edge * edge));
            addRow(rate, carried, fields.velocity[axis], first, end, grid.stride(axis), own, perEdge, friction);
        }
        if (component == 2) {
            addWeight(rate, fields.dye, first, end);
        }
        if (tank.isSolidAnywhere()) {
            addDrag(rate, carried, tank.drag(component), first, end);
        }
    }

    /// Adds what goes through the two sides along one axis.
    private static void addRow(
            float[] rate,
            float[] carried,
            float[] carrying,
            int first,
            int end,
            int step,
            int own,
            float perEdge,
            float friction) {
        for (int p = first; p < end; p++) {
            float a = carried[p - 2 * step];
            float b = carried[p - step];
            float c = carried[p];
            float d = carried[p + step];
            float e = carried[p + 2 * step];
            float low = carrying[p] + carrying[p - own];
            float high = carrying[p + step] + carrying[p + step - own];
            float in = low * (7 * (b + c) - (a + d)) + Math.abs(low) * (d - a - 3 * (c - b));
            float out = high * (7 * (c + d) - (b + e)) + Math.abs(high) * (e - b - 3 * (d - c));
            rate[p] += perEdge * (in - out) + friction * (b - 2 * c + d);
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
