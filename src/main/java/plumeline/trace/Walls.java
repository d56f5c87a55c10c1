package plumeline.trace;

import plumeline.geom.Vec;
import plumeline.scenery.Basin;

/// Where a basin's walls and water are, and which ways may go through them.
final class Walls {
    /// What shines is at least so far before a wall, m.
    static final double AHEAD_METRES = 1e-6;

    /// Panes move light aside by less than so many times their thickness, but nearly along them.
    private static final int NEAR_PANES = 4;

    /// The room inside, and the glass's outer bounds, m.
    final double[] low;

    final double[] high;
    final double[] outLow;
    final double[] outHigh;

    /// The water's height, within the room, m.
    final double level;

    private final double waterIndex;

    Walls(Basin basin) {
        low = numbers(basin.inside().low());
        high = numbers(basin.inside().high());
        outLow = numbers(basin.outside().low());
        outHigh = numbers(basin.outside().high());
        level = Math.clamp(basin.waterLineMetres(), low[2], high[2]);
        waterIndex = basin.water().index();
    }

    private static double[] numbers(Vec vec) {
        return new double[] {vec.x(), vec.y(), vec.z()};
    }

    static boolean holds(double[] low, double[] high, double x, double y, double z) {
        return x > low[0] && x < high[0] && y > low[1] && y < high[1] && z > low[2] && z < high[2];
    }

    /// Whether the place's light from another place may be bent by the basin's walls that both are outside of: they are
    /// on either side of it, or the straight way between them meets it.
    boolean mayCross(double[] place, double[] other) {
        if (holds(outLow, outHigh, place[0], place[1], place[2])
                || holds(outLow, outHigh, other[0], other[1], other[2])) {
            return false;
        }
        for (int i = 0; i < 3; i++) {
            if (place[i] <= outLow[i] && other[i] <= outLow[i] || place[i] >= outHigh[i] && other[i] >= outHigh[i]) {
                return false;
            }
        }
        return sideways(place, 0, other) != 0 || sideways(place, 1, other) != 0 || meetsBlock(place, other);
    }

    /// Which way along an axis light to another place outside goes right across the basin: 0 where it doesn't.
    int sideways(double[] place, int axis, double[] other) {
        if (place[axis] <= outLow[axis] && other[axis] >= outHigh[axis] + AHEAD_METRES) {
            return 1;
        }
        return place[axis] >= outHigh[axis] && other[axis] <= outLow[axis] - AHEAD_METRES ? -1 : 0;
    }

    /// Whether light right across the basin may cross it between two heights. However bent, it crosses within as far
    /// aside as the straight way is between the outer faces: it goes most aside in the air.
    boolean mayGoAcross(double[] place, double[] other, int axis, double from, double to) {
        double over = 1 / (other[axis] - place[axis]);
        double one = (outLow[axis] - place[axis]) * over;
        double two = (outHigh[axis] - place[axis]) * over;
        int side = 1 - axis;
        return touches(place[side], other[side] - place[side], one, two, low[side], high[side])
                && touches(place[2], other[2] - place[2], one, two, from, to);
    }

    private static boolean touches(double at, double way, double one, double two, double least, double most) {
        double first = at + one * way;
        double second = at + two * way;
        return Math.max(first, second) >= least && Math.min(first, second) <= most;
    }

    /// Whether a place faces any way that light may come from through a face: between straight in and the critical
    /// angle, to a side.
    ///
    /// @param facing all 0 for one that faces all round
    /// @param index of what the place is in
    static boolean isFaced(double[] facing, double[] aside, int axis, int sign, double index) {
        double straight = sign * facing[axis];
        double beside = aside[0] * facing[0] + aside[1] * facing[1] + aside[2] * facing[2];
        return straight >= 0 || beside + straight * Math.sqrt(index * index - 1) > 0;
    }

    /// Whether light may cross a face within the room's bounds. It is bent there to go at least as far aside as the
    /// sine of the straight way asks.
    ///
    /// @param rest from the place to the face, m
    /// @param all from there to the light across the face, m, and `far` along it
    boolean mayComeIn(double[] place, double[] aside, int axis, double rest, double index, double all, double far) {
        double least = rest * far / (index * Math.sqrt(all * all + far * far));
        for (int i = 0; i < 3; i++) {
            double at = place[i] + aside[i] * least;
            if (i != axis && (at < low[i] || at > high[i])) {
                return false;
            }
        }
        return true;
    }

    /// How far aside of a place another is, by an axis.
    ///
    /// @param aside takes the way there
    static double away(double[] place, int axis, double[] other, double[] aside) {
        double all = 0;
        for (int i = 0; i < 3; i++) {
            aside[i] = i == axis ? 0 : other[i] - place[i];
            all += aside[i] * aside[i];
        }
        double far = Math.sqrt(all);
        double over = far > 0 ? 1 / far : 0;
        for (int i = 0; i < 3; i++) {
            aside[i] *= over;
        }
        return far;
    }

    /// Whether the straight way meets the basin's outside.
    boolean meetsBlock(double[] place, double[] other) {
        double from = 0;
        double to = 1;
        for (int i = 0; i < 3; i++) {
            double way = other[i] - place[i];
            if (way == 0) {
                if (place[i] <= outLow[i] || place[i] >= outHigh[i]) {
                    return false;
                }
                continue;
            }
            from = Math.max(from, ((way > 0 ? outLow : outHigh)[i] - place[i]) / way);
            to = Math.min(to, ((way > 0 ? outHigh : outLow)[i] - place[i]) / way);
        }
        return from < to;
    }

    boolean isBeyond(double[] at, int axis, int sign) {
        return sign > 0 ? at[axis] - outHigh[axis] > -1e-9 : outLow[axis] - at[axis] > -1e-9;
    }

    /// Whether a way by both faces is worth a search: through air the straight way must come near both openings;
    /// through water light must come in and leave so aslant that it isn't thrown back.
    boolean mayTurn(double[] one, double[] other, int axis, int sign, int last, int lastSign, double from, double to) {
        double nearIn = (sign > 0 ? low : high)[axis];
        double farIn = last == 2 ? to : (lastSign > 0 ? high : low)[last];
        if (to <= level) {
            double least = waterIndex * waterIndex - 1;
            double before = Math.abs((sign > 0 ? outLow : outHigh)[axis] - one[axis]);
            double beyond = Math.abs(other[last] - (last == 2 ? to : (lastSign > 0 ? outHigh : outLow)[last]));
            double along = lastSign * (farIn - one[last]);
            double aside = sign * (other[axis] - nearIn);
            return along > 0
                    && aside > 0
                    && along * along * (1 - least) >= before * before * least
                    && aside * aside * (1 - least) >= beyond * beyond * least;
        }
        double slack = NEAR_PANES * (low[0] - outLow[0]);
        return isNear(one, other, axis, nearIn, from, to, slack) && isNear(one, other, last, farIn, from, to, slack);
    }

    private boolean isNear(double[] one, double[] other, int axis, double face, double from, double to, double slack) {
        double share = (face - one[axis]) / (other[axis] - one[axis]);
        for (int i = 0; i < 3; i++) {
            double at = one[i] + share * (other[i] - one[i]);
            if (i != axis && (at < (i == 2 ? from : low[i]) - slack || at > (i == 2 ? to : high[i]) + slack)) {
                return false;
            }
        }
        return true;
    }

    static boolean isOn(double[] low, double[] high, int side, double[] at, double from, double to) {
        return at[side] >= low[side] && at[side] <= high[side] && at[2] >= from && at[2] <= to;
    }

    double untilWall(double[] at, double[] way, int axis) {
        double toward = way[axis];
        return toward == 0 ? Double.POSITIVE_INFINITY : ((toward > 0 ? high : low)[axis] - at[axis]) / toward;
    }

    /// Whether a way up from a place on the water leaves by the open top.
    boolean isOverRim(double[] at, double[] way) {
        return (high[2] - at[2]) / way[2] <= Math.min(untilWall(at, way, 0), untilWall(at, way, 1));
    }

    static double apart(double[] one, double[] other) {
        double x = one[0] - other[0];
        double y = one[1] - other[1];
        double z = one[2] - other[2];
        return Math.sqrt(x * x + y * y + z * z);
    }
}
