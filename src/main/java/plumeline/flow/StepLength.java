package plumeline.flow;

/// How long the next step may be: 4ν·dt/h² summed over the axes, the share of a cell's water that leaves it, and what
/// forces may add to that, stay below one together.
///
/// **Source:** the stability of Adams–Bashforth 2 for friction, 4ν·dt/h² ≤ 1 (own derivation in
/// `docs/derivations/flow.md`); Courant, Friedrichs and Lewy 1928.
final class StepLength {
    private static final double MOST = 0.8;
    private static final double MOST_SPREAD = 0.9;

    private final Grid grid;
    private final Liquid liquid;
    private final Workers workers;
    private final double perSecond;
    private final double mostSpreadSeconds;
    private final double shortestMetres;

    StepLength(Tank tank, Liquid liquid, Workers workers) {
        this.grid = tank.grid();
        this.liquid = liquid;
        this.workers = workers;
        double squares = 0;
        double walls = 0;
        double shortest = Double.POSITIVE_INFINITY;
        for (int axis : grid.axes()) {
            double edge = grid.edgeMetres(axis);
            shortest = Math.min(shortest, edge);
            squares += 1 / (edge * edge);
            for (int across : grid.axes()) {
                walls += across == axis ? 0 : Math.abs(tank.walls().low(across).speed(axis)) / edge;
                walls += across == axis ? 0 : Math.abs(tank.walls().high(across).speed(axis)) / edge;
            }
        }
        this.shortestMetres = shortest;
        this.perSecond = 4 * liquid.viscosityMetres2PerSecond() * squares + walls;
        double spread = 2 * liquid.diffusivityMetres2PerSecond() * squares;
        this.mostSpreadSeconds = spread > 0 ? MOST_SPREAD / spread : Double.POSITIVE_INFINITY;
    }

    /// The length of a step that goes evenly into what is left of a span, seconds.
    double seconds(Fields fields, double outPerSecond, Injection injection, double from, double until) {
        double through = perSecond + outPerSecond;
        double force = accelerationMetresPerSecond2(fields) / shortestMetres;
        double plain = longest(through, force);
        double nozzles = injection.accelerationMetresPerSecond2(from, from + plain) / shortestMetres;
        double most = Math.min(mostSpreadSeconds, longest(through, force + nozzles));
        double left = until - from;
        return most >= left ? left : left / Math.ceil(left / most);
    }

    /// The longest t with through·t + force·t² = [#MOST].
    private static double longest(double through, double force) {
        double root = through + Math.sqrt(through * through + 4 * force * MOST);
        return root > 0 ? 2 * MOST / root : Double.MAX_VALUE;
    }

    private double accelerationMetresPerSecond2(Fields fields) {
        double greatest = workers.greatest(grid.nz(), k -> {
            float share = 0;
            for (int j = 0; j < grid.ny(); j++) {
                int first = grid.index(0, j, k);
                for (int p = first; p < first + grid.nx(); p++) {
                    share = Math.max(share, fields.dye[p]);
                }
            }
            return share;
        });
        return greatest * Math.abs(liquid.sinkingMetresPerSecond2());
    }
}
