package plumeline.trace;

/// How light that leaves a basin's water goes on through a wall over it: moved aside by that pane, as by any.
///
/// **Source:** Snell's law, Fresnel's formulas (any optics text); own derivation.
final class Rim {
    private final Walls walls;
    private final double glassIndex;

    Rim(Walls walls, double glassIndex) {
        this.walls = walls;
        this.glassIndex = glassIndex;
    }

    /// Which wall a way up from the water's surface comes to: along which axis.
    private int axis(double[] at, double[] way) {
        return walls.untilWall(at, way, 0) < walls.untilWall(at, way, 1) ? 0 : 1;
    }

    private double inGlass(double cosine) {
        return Math.sqrt(glassIndex * glassIndex - 1 + cosine * cosine);
    }

    /// Notes where such a way goes: as if to what is moved toward the wall.
    void move(double[] at, double[] way, double[] to, double[] moved) {
        int axis = axis(at, way);
        double cosine = Math.abs(way[axis]);
        int sign = way[axis] > 0 ? 1 : -1;
        double pane = sign < 0 ? walls.low[axis] - walls.outLow[axis] : walls.outHigh[axis] - walls.high[axis];
        System.arraycopy(to, 0, moved, 0, 3);
        moved[axis] -= sign * pane * (1 - cosine / inGlass(cosine));
    }

    /// What passes the pane; 0 where the way doesn't go by it.
    double passes(double[] at, double[] way, double[] to) {
        int axis = axis(at, way);
        double until = walls.untilWall(at, way, axis);
        double cosine = Math.abs(way[axis]);
        double inGlass = inGlass(cosine);
        int sign = way[axis] > 0 ? 1 : -1;
        double back = sign < 0 ? walls.outLow[axis] : walls.outHigh[axis];
        double pane = Math.abs(back - (sign < 0 ? walls.low : walls.high)[axis]);
        if (sign * (to[axis] - back) < Walls.AHEAD_METRES
                || at[2] + until * way[2] + way[2] * pane / inGlass > walls.high[2]) {
            return 0;
        }
        double s = (cosine - inGlass) / (cosine + inGlass);
        double dense = glassIndex * glassIndex;
        double p = (dense * cosine - inGlass) / (dense * cosine + inGlass);
        return ((1 - s * s) / (1 + s * s) + (1 - p * p) / (1 + p * p)) / 2;
    }
}
