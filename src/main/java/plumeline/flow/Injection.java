package plumeline.flow;

import java.util.Arrays;
import java.util.List;
import plumeline.ranges.Ranges;

/// What nozzles bring in a step: water, dye and push, spread over the cells and faces about their mouths; and the clear
/// water that leaves evenly from the top layer in their stead.
final class Injection {
    private static final long STREAMS = 1_000_000;

    private final Tank tank;
    private final Grid grid;
    private final long seed;
    private final List<Spout> spouts;
    private final double[] runs;
    private final float[] source;
    private final float[] added;
    private final int cellsAtTop;

    Injection(Tank tank, List<Release> releases, long seed) {
        this.tank = tank;
        this.grid = tank.grid();
        this.seed = seed;
        this.spouts = releases.stream()
                .filter(Release.Nozzle.class::isInstance)
                .map(nozzle -> new Spout(tank, (Release.Nozzle) nozzle))
                .toList();
        this.runs = new double[spouts.size()];
        this.source = new float[grid.length()];
        this.added = new float[grid.length()];
        int count = 0;
        for (int j = 0; j < grid.ny(); j++) {
            for (int i = 0; i < grid.nx(); i++) {
                count += tank.isSolid(i, j, grid.nz() - 1) ? 0 : 1;
            }
        }
        Ranges.check(spouts.isEmpty() || count > 0, "cells of water in the top layer", count, "one or more");
        this.cellsAtTop = count;
    }

    /// What nozzles add less what leaves, in each cell, cells a second.
    float[] source() {
        return source;
    }

    /// The dye that nozzles add, as a share per second.
    float[] added() {
        return added;
    }

    /// The cells into which nozzles bring dye, as places in a field's array.
    List<Integer> places() {
        return spouts.stream().flatMap(spout -> spout.cells().places().stream()).toList();
    }

    /// Makes ready for a step.
    void prepare(double seconds, double step) {
        if (spouts.isEmpty()) {
            return;
        }
        Arrays.fill(source, 0);
        Arrays.fill(added, 0);
        double inflow = 0;
        for (int n = 0; n < spouts.size(); n++) {
            Release.Nozzle nozzle = spouts.get(n).nozzle();
            runs[n] = nozzle.runsSeconds(seconds, seconds + step);
            double rate = nozzle.metres3PerSecond() * runs[n] / step;
            spouts.get(n).cells().add(added, rate / grid.cellMetres3());
            inflow += rate;
        }
        System.arraycopy(added, 0, source, 0, added.length);
        double leaving = inflow / (cellsAtTop * grid.cellMetres3());
        for (int j = 0; j < grid.ny(); j++) {
            for (int i = 0; i < grid.nx(); i++) {
                int p = grid.index(i, j, grid.nz() - 1);
                source[p] -= (float) (leaving * tank.water()[p]);
            }
        }
    }

    /// Pushes the water with the momentum of what comes out, its speed wandering.
    void push(float[][] velocity, double seconds) {
        for (int n = 0; n < spouts.size(); n++) {
            Release.Nozzle nozzle = spouts.get(n).nozzle();
            double push = nozzle.metres3PerSecond() * nozzle.speedMetresPerSecond() * runs[n] / grid.cellMetres3();
            for (int axis : grid.axes()) {
                double turns = seconds / spouts.get(n).wanderingSeconds();
                double wander = nozzle.noise() * Noise.smooth(seed, STREAMS + 3L * n + axis, turns, 0, 0);
                double along = nozzle.mouth().towards(axis) + wander;
                spouts.get(n).faces(axis).add(velocity[axis], push * along);
            }
        }
    }

    /// The dye brought in the prepared step, cubic metres.
    double releasedMetres3() {
        double released = 0;
        for (int n = 0; n < spouts.size(); n++) {
            released += spouts.get(n).nozzle().metres3PerSecond() * runs[n];
        }
        return released;
    }

    /// The greatest acceleration that nozzles may give in a span, metres per second squared.
    double accelerationMetresPerSecond2(double fromSeconds, double toSeconds) {
        double greatest = 0;
        for (Spout spout : spouts) {
            Release.Nozzle nozzle = spout.nozzle();
            if (nozzle.runsSeconds(fromSeconds, toSeconds) > 0) {
                double force = nozzle.metres3PerSecond() * nozzle.speedMetresPerSecond() / grid.cellMetres3();
                greatest = Math.max(greatest, force * spout.greatestWeight());
            }
        }
        return greatest;
    }
}
