package plumeline.flow;

import java.util.List;
import plumeline.ranges.Ranges;

/// Puts the dye of clouds into the tank before time begins, with the push they were given and the stirring that is left
/// in them.
///
/// Stirring has eddies of a third of the cloud's size (the cube root of its volume) and goes with its buoyancy and
/// push: noise 1 moves points at up to √(g'·size + push²) along each axis.
final class Pour {
    private static final long STREAMS = 1000;
    private static final int POINTS = 4;
    private static final double EDDIES_ACROSS = 3;

    private final Tank tank;
    private final Grid grid;
    private final Liquid liquid;
    private final long seed;
    private final Fields fields;

    Pour(Tank tank, Liquid liquid, long seed, Fields fields) {
        this.tank = tank;
        this.grid = tank.grid();
        this.liquid = liquid;
        this.seed = seed;
        this.fields = fields;
    }

    /// Adds all clouds and gives their dye, cubic metres.
    double pour(List<Release> releases) {
        double poured = 0;
        for (int n = 0; n < releases.size(); n++) {
            if (releases.get(n) instanceof Release.Cloud cloud) {
                poured += pour(cloud, STREAMS + 3L * n);
            }
        }
        return poured;
    }

    private double pour(Release.Cloud cloud, long stream) {
        float[] within = new float[grid.length()];
        double cells = 0;
        for (int k = 0; k < grid.nz(); k++) {
            for (int j = 0; j < grid.ny(); j++) {
                for (int i = 0; i < grid.nx(); i++) {
                    int p = grid.index(i, j, k);
                    within[p] = (float) (tank.water()[p] * cloud.where().share(grid, i, j, k, POINTS));
                    cells += within[p];
                }
            }
        }
        Ranges.check(cells > 0, "water in a cloud, cells", cells, "more than none");
        for (int p = 0; p < within.length; p++) {
            fields.dye[p] += (float) cloud.share() * within[p];
        }
        double volume = cells * grid.cellMetres3();
        double size = StrictMath.cbrt(volume);
        double weight = Math.abs(liquid.sinkingMetresPerSecond2()) * cloud.share() * size;
        double push = cloud.downMetresPerSecond();
        double stirring = cloud.noise() * Math.sqrt(weight + push * push);
        for (int axis : grid.axes()) {
            stir(within, axis, axis == 2 ? -push : 0, stirring, size / EDDIES_ACROSS, stream + axis);
        }
        return volume * cloud.share();
    }

    /// Adds an even speed and stirring to what lies within; stirring pushes the whole neither way.
    private void stir(float[] within, int axis, double even, double noise, double eddy, long stream) {
        float[] stirred = new float[within.length];
        float[] shares = new float[within.length];
        int step = grid.stride(axis);
        double all = 0;
        double pushed = 0;
        for (int k = 0; k < grid.nz(); k++) {
            for (int j = 0; j < grid.ny(); j++) {
                for (int i = 0; i < grid.nx(); i++) {
                    int p = grid.index(i, j, k);
                    shares[p] = 0.5f * tank.open(axis)[p] * (within[p] + within[p - step]);
                    if (shares[p] > 0) {
                        double x = i * grid.dxMetres() / eddy;
                        double y = j * grid.dyMetres() / eddy;
                        double z = k * grid.dzMetres() / eddy;
                        stirred[p] = (float) (noise * Noise.smooth(seed, stream, x, y, z));
                        all += shares[p];
                        pushed += shares[p] * stirred[p];
                    }
                }
            }
        }
        float mean = (float) (all > 0 ? even - pushed / all : 0);
        float[] velocity = fields.velocity[axis];
        for (int p = 0; p < shares.length; p++) {
            velocity[p] += shares[p] * (stirred[p] + mean);
        }
    }
}
