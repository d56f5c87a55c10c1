package plumeline.trace;

import plumeline.geom.Vec;

/// How a basin bends light on its way from a lamp: to a place in it by each wall, and by the water's surface or the
/// open top; to a place outside through two walls that face each other. For one thread.
///
/// A lamp's place and a place to be lit are joined by the one way that Snell's law allows; what comes is the lamp's
/// luminance by how the flux tube spreads on that way, Fresnel's losses of both polarisations taken. Light that comes
/// to the surface through a wall over it is moved aside by that pane as by any. What is mirrored inside is left out.
///
/// **Source:** Snell's law, Fresnel's formulas (any optics text); own derivation.
final class Bending {
    /// What shines is at least so far before a wall, m.
    private static final double AHEAD_METRES = 1e-6;

    /// Places of a face each way where its middle can't stand for all: by Gauss's rule of two.
    ///
    /// **Source:** Abramowitz and Stegun, Handbook of Mathematical Functions, 1964, table 25.4.
    private static final double GAUSS = 0.5 / Math.sqrt(3);

    private final Ready ready;
    private final Shadows shadows;
    private final double[] low;
    private final double[] high;
    private final double[] outLow;
    private final double[] outHigh;
    private final double level;
    private final double waterIndex;
    private final double glassIndex;
    private final int water;
    private final int glass;
    private final Layers layers;

    private final double[] place = new double[3];
    private final double[] facing = new double[3];
    private boolean isFacing;
    private final State state = new State();

    private final double[] lamp = new double[6];
    private final double[] moved = new double[3];
    private final double[] aside = new double[3];
    private final double[] here = new double[3];
    private final double[] air = new double[3];
    private final double[] inner = new double[3];
    private final double[] outer = new double[3];
    private final double[] corners = new double[Lamps.CORNERS];
    private double passes;

    Bending(Ready ready, Basin basin, Shadows shadows) {
        this.ready = ready;
        this.shadows = shadows;
        low = numbers(basin.inside().low());
        high = numbers(basin.inside().high());
        outLow = numbers(basin.outside().low());
        outHigh = numbers(basin.outside().high());
        level = Math.clamp(basin.waterLineMetres(), low[2], high[2]);
        waterIndex = basin.water().index();
        glassIndex = basin.glass().index();
        water = ready.media.add(basin.water());
        glass = ready.media.add(basin.glass());
        layers = new Layers(glassIndex);
    }

    private static double[] numbers(Vec vec) {
        return new double[] {vec.x(), vec.y(), vec.z()};
    }

    /// Sets the place to be lit, which has no facing where all its numbers are 0.
    ///
    /// @return whether light that comes there is bent by the walls round it
    boolean begins(double px, double py, double pz, double nx, double ny, double nz, State in) {
        place[0] = px;
        place[1] = py;
        place[2] = pz;
        facing[0] = nx;
        facing[1] = ny;
        facing[2] = nz;
        isFacing = nx != 0 || ny != 0 || nz != 0;
        state.set(in.within, in.medium);
        return in.within < 0 && holds(low, high, px, py, pz);
    }

    /// Whether a light's middle is within the walls too: light from there goes straight.
    boolean isWithin(int light) {
        Lamps lamps = ready.lamps;
        return holds(outLow, outHigh, lamps.middle(light, 0), lamps.middle(light, 1), lamps.middle(light, 2));
    }

    private static boolean holds(double[] low, double[] high, double x, double y, double z) {
        return x > low[0] && x < high[0] && y > low[1] && y < high[1] && z > low[2] && z < high[2];
    }

    /// Gives what comes to the place in the basin from one place of a light, or at one way a ray from its middle,
    /// taken for as large as the whole is.
    ///
    /// @param lux takes it, a channel
    void fall(int light, Falling.Passing passing, Draws draws, double[] lux) {
        draws.next();
        if (!draws.isMiddle()) {
            fall(light, draws.u, draws.v, ready.lamps.area(light), passing, lux);
        } else {
            fallFromMiddle(light, passing, lux);
        }
    }

    /// Adds what comes from one place of a light that stands for an area.
    void fall(int light, double one, double other, double area, Falling.Passing passing, double[] lux) {
        Lamps lamps = ready.lamps;
        lamps.placeOver(light, one, other, lamp);
        for (int way = 0; way < 5; way++) {
            if (finds(way)) {
                double gain = lamps.cosine(light, lamp, air[0], air[1], air[2]);
                if (gain > 0) {
                    add(light, way, gain * area * lamps.bright(light, lamp, air[0], air[1], air[2]), passing, lux);
                }
            }
        }
    }

    private void fallFromMiddle(int light, Falling.Passing passing, double[] lux) {
        Lamps lamps = ready.lamps;
        lamps.place(light, 0.5, 0.5, place[0], place[1], place[2], lamp);
        double x = place[0] - lamp[0];
        double y = place[1] - lamp[1];
        double z = place[2] - lamp[2];
        double square = x * x + y * y + z * z;
        double far = Math.sqrt(square);
        double straight = lamps.middleCosine(light, lamp, x / far, y / far, z / far);
        double bright = lamps.bright(light, lamp, x, y, z);
        double all = lamps.around(light, place[0], place[1], place[2], corners);
        if (!(straight > 0.1 && bright > 0)) {
            if (all > 0) {
                for (int i = 0; i < 4; i++) {
                    double one = 0.5 + ((i & 1) == 0 ? GAUSS : -GAUSS);
                    double other = 0.5 + (i < 2 ? GAUSS : -GAUSS);
                    fall(light, one, other, lamps.area(light) / 4, passing, lux);
                }
            }
            return;
        }
        double area = all * square / (straight * bright);
        for (int way = 0; way < 5; way++) {
            if (finds(way)) {
                double gain = lamps.middleCosine(light, lamp, air[0], air[1], air[2]);
                if (gain > 0) {
                    add(light, way, gain * area * lamps.bright(light, lamp, air[0], air[1], air[2]), passing, lux);
                }
            }
        }
    }

    /// Adds what comes by the way that was found, if nothing stops it.
    private void add(int light, int way, double gives, Falling.Passing passing, double[] lux) {
        double cosine = isFacing ? here[0] * facing[0] + here[1] * facing[1] + here[2] * facing[2] : 1;
        if (!(cosine > 0 && gives > 0) || !comes(way)) {
            return;
        }
        double all = gives * cosine * passes * passing.passes(cosine)
                / (layers.airCosine * layers.middleCosine * layers.spread);
        for (int i = 0; i < 3; i++) {
            lux[i] += all * ready.lamps.colour(light, i) * shadows.through[i];
        }
    }

    private boolean isWet() {
        return place[2] < level;
    }

    /// Finds the way in by a wall (0 to 3: along which axis, and low or high) or from above (4).
    private boolean finds(int way) {
        int axis = way >> 1;
        int sign = (way & 1) == 0 && way < 4 ? -1 : 1;
        return way < 4 ? findsWall(axis, sign) : findsTop();
    }

    private boolean findsWall(int axis, int sign) {
        double face = sign < 0 ? low[axis] : high[axis];
        double back = sign < 0 ? outLow[axis] : outHigh[axis];
        double before = sign * (lamp[axis] - back);
        if (before < AHEAD_METRES) {
            return false;
        }
        double rest = sign * (face - place[axis]);
        double pane = sign * (back - face);
        double square = away(axis, lamp);
        boolean isWet = isWet();
        layers.find(before, pane, rest, isWet ? waterIndex : 1, square);
        cross(axis, sign, rest, pane);
        int side = 1 - axis;
        if (inner[side] < low[side]
                || inner[side] > high[side]
                || inner[2] < (isWet ? low[2] : level)
                || inner[2] > (isWet ? level : high[2])
                || outer[side] < outLow[side]
                || outer[side] > outHigh[side]
                || outer[2] < outLow[2]
                || outer[2] > outHigh[2]) {
            return false;
        }
        passes = layers.passesPane(1);
        return true;
    }

    /// How far aside of the place another is, by an axis; the way there is noted.
    private double away(int axis, double[] other) {
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

    /// Notes where the way crosses, and its directions: to the lamp at the place, from the lamp in the air.
    private void cross(int axis, int sign, double rest, double pane) {
        double out = layers.middleSlope * rest;
        double farther = out + layers.glassSlope * pane;
        double bent = layers.middleSlope * layers.middleCosine;
        for (int i = 0; i < 3; i++) {
            inner[i] = place[i] + aside[i] * out;
            outer[i] = place[i] + aside[i] * farther;
            here[i] = aside[i] * bent;
            air[i] = -aside[i] * layers.sine;
        }
        inner[axis] += sign * rest;
        outer[axis] += sign * (rest + pane);
        here[axis] = sign * layers.middleCosine;
        air[axis] = -sign * layers.airCosine;
    }

    private boolean findsTop() {
        boolean isWet = isWet();
        double top = isWet ? level : high[2];
        if (lamp[2] - top < AHEAD_METRES) {
            return false;
        }
        System.arraycopy(lamp, 0, moved, 0, 3);
        for (int i = 0; i < 3; i++) {
            double far = away(2, moved);
            layers.find(lamp[2] - top, 0, top - place[2], isWet ? waterIndex : 1, far);
            cross(2, 1, top - place[2], 0);
            if (inner[0] < low[0] || inner[0] > high[0] || inner[1] < low[1] || inner[1] > high[1]) {
                return false;
            }
            passes = isWet ? layers.passesSurface() : 1;
            if (!isWet || top >= high[2] || isOverRim()) {
                return true;
            }
            if (!passesRim()) {
                return false;
            }
        }
        return true;
    }

    private double untilWall(int axis) {
        double toward = -air[axis];
        return toward == 0 ? Double.POSITIVE_INFINITY : ((toward > 0 ? high : low)[axis] - inner[axis]) / toward;
    }

    private boolean isOverRim() {
        return (high[2] - inner[2]) / -air[2] <= Math.min(untilWall(0), untilWall(1));
    }

    /// Takes the way on through a wall over the water: what that loses; and the lamp is as if moved toward the wall.
    private boolean passesRim() {
        int axis = untilWall(0) < untilWall(1) ? 0 : 1;
        double until = untilWall(axis);
        double cosine = Math.abs(air[axis]);
        double square = 1 - cosine * cosine;
        double inGlass = Math.sqrt(glassIndex * glassIndex - square);
        int sign = air[axis] < 0 ? 1 : -1;
        double back = sign < 0 ? outLow[axis] : outHigh[axis];
        double pane = sign * (back - (sign < 0 ? low : high)[axis]);
        if (sign * (lamp[axis] - back) < AHEAD_METRES || inner[2] - until * air[2] - air[2] * pane / inGlass > high[2]) {
            return false;
        }
        moved[0] = lamp[0];
        moved[1] = lamp[1];
        moved[2] = lamp[2];
        moved[axis] -= sign * pane * (1 - cosine / inGlass);
        double s = (cosine - inGlass) / (cosine + inGlass);
        double dense = glassIndex * glassIndex;
        double p = (dense * cosine - inGlass) / (dense * cosine + inGlass);
        passes *= ((1 - s * s) / (1 + s * s) + (1 - p * p) / (1 + p * p)) / 2;
        return true;
    }

    /// Whether nothing stops the way that was found; less comes through by what it meets.
    private boolean comes(int way) {
        double[] through = shadows.through;
        through[0] = 1;
        through[1] = 1;
        through[2] = 1;
        takeGlass(apart(inner, outer));
        double far = apart(place, inner);
        if (!shadows.goesOn(place[0], place[1], place[2], here[0], here[1], here[2], far, state.within, state.medium)) {
            return false;
        }
        double out = apart(outer, way < 4 ? lamp : moved);
        return shadows.goesOn(
                outer[0], outer[1], outer[2], -air[0], -air[1], -air[2], out - 2e-6, -1, Media.AIR);
    }

    private void takeGlass(double metres) {
        if (ready.media.takesLight(glass)) {
            for (int i = 0; i < 3; i++) {
                shadows.through[i] *= ready.media.left(glass, i, metres);
            }
        }
    }

    private static double apart(double[] one, double[] other) {
        double x = one[0] - other[0];
        double y = one[1] - other[1];
        double z = one[2] - other[2];
        return Math.sqrt(x * x + y * y + z * z);
    }
}
