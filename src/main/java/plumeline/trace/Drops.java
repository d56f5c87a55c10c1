package plumeline.trace;

import plumeline.scenery.Paint;
import plumeline.trace.sums.Draws;

/// Drops on a surface: round caps, in space one a cell at a place of its own, of which those near the surface count.
/// They are seen as a surface that faces elsewhere.
final class Drops {
    /// A drop's edge stands up by so much: the angle of contact, its sine (60 deg, our guess for lacquer and glass).
    private static final double EDGE_SINE = 0.87;

    private static final double WHOLE = 0x1p-53;

    private final double least;
    private final double most;
    private final double cell;
    private final long seed;

    Drops(Paint.Beads beads) {
        least = beads.leastMetres() / 2;
        most = Math.max(least, beads.mostMetres() / 2);
        seed = beads.seed();
        double square = (least * least + least * most + most * most) / 3;
        double thick = -Math.log1p(-Math.min(0.95, beads.cover()));
        cell = Math.max(Math.sqrt(Math.PI * square / thick), most / 1.5);
    }

    /// Turns a facing to that of the drop at a place, if there is one. All in the shape's own frame.
    ///
    /// @param facing takes it: the surface's facing, three numbers of length 1
    /// @return whether there is a drop
    boolean turn(double x, double y, double z, double[] facing) {
        long i = (long) Math.floor(x / cell);
        long j = (long) Math.floor(y / cell);
        long k = (long) Math.floor(z / cell);
        double best = 1;
        double bestX = 0;
        double bestY = 0;
        double bestZ = 0;
        for (int n = 0; n < 27; n++) {
            long ci = i + n % 3 - 1;
            long cj = j + n / 3 % 3 - 1;
            long ck = k + n / 9 - 1;
            long bits = Draws.mixed(seed + Draws.mixed(ci * 73856093L ^ Draws.mixed(cj * 19349663L ^ ck * 83492791L)));
            double outX = x - (ci + part(bits)) * cell;
            bits = Draws.mixed(bits + 1);
            double outY = y - (cj + part(bits)) * cell;
            bits = Draws.mixed(bits + 1);
            double outZ = z - (ck + part(bits)) * cell;
            bits = Draws.mixed(bits + 1);
            double radius = least + part(bits) * (most - least);
            double high = outX * facing[0] + outY * facing[1] + outZ * facing[2];
            if (Math.abs(high) > cell / 2) {
                continue;
            }
            double besideX = outX - high * facing[0];
            double besideY = outY - high * facing[1];
            double besideZ = outZ - high * facing[2];
            double share = Math.sqrt(besideX * besideX + besideY * besideY + besideZ * besideZ) / radius;
            if (share < best) {
                best = share;
                bestX = besideX / radius;
                bestY = besideY / radius;
                bestZ = besideZ / radius;
            }
        }
        if (best >= 1) {
            return false;
        }
        double up = Math.sqrt(1 - best * best * EDGE_SINE * EDGE_SINE);
        facing[0] = facing[0] * up + bestX * EDGE_SINE;
        facing[1] = facing[1] * up + bestY * EDGE_SINE;
        facing[2] = facing[2] * up + bestZ * EDGE_SINE;
        return true;
    }

    private static double part(long bits) {
        return (bits >>> 11) * WHOLE;
    }
}
