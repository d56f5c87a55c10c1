package plumeline.trace;

import java.util.Arrays;
import plumeline.scenery.Basin;
import plumeline.trace.sums.Corner;
import plumeline.trace.sums.Draws;
import plumeline.trace.sums.Layers;

/// How a basin bends light on its way from a lamp: to a place in it by each wall, and by the water's surface or the
/// open top; to a place outside through two faces. For one thread.
///
/// A lamp's place and a place to be lit are joined by the one way that Snell's law allows; what comes is the lamp's
/// luminance by how the flux tube spreads on that way, Fresnel's losses of both polarisations taken. Light that comes
/// to the surface through a wall over it is moved aside by that pane as by any. What is mirrored inside is left out.
///
/// **Source:** Snell's law, Fresnel's formulas (any optics text); own derivation.
final class Bending {
    /// What lies on a light or a place doesn't stand before it, m.
    private static final double SHORT_METRES = 2e-6;

    /// Places of a face each way where its middle can't stand for all: by Gauss's rule of two.
    private static final double GAUSS = 0.5 / Math.sqrt(3);

    /// By four walls, over the rim, and by a wall over the water.
    private static final int WAYS = 6;

    /// The pane over the water moves light aside; by how much is found in so many rounds.
    private static final int ROUNDS = 4;

    /// What comes through the coat of a place, by the cosine of where light comes from.
    interface Passing {
        double passes(double cosine);
    }

    private final Ready ready;
    private final Shadows shadows;
    private final Walls walls;
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
    private final Corner corner;
    private final Rim rim;

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

    /// How many of air and water are searched for ways round a corner: air first.
    private int regions = 2;

    private final double[] entry = new double[3];
    private final double[] leave = new double[3];
    private final double[] between = new double[3];
    private final double[] go = new double[3];
    private final double[] gone = new double[3];
    private final double[] total = new double[3];

    Bending(Ready ready, Basin basin, Shadows shadows) {
        this.ready = ready;
        this.shadows = shadows;
        walls = new Walls(basin);
        low = walls.low;
        high = walls.high;
        outLow = walls.outLow;
        outHigh = walls.outHigh;
        level = walls.level;
        waterIndex = basin.water().index();
        glassIndex = basin.glass().index();
        water = ready.media.add(basin.water());
        glass = ready.media.add(basin.glass());
        layers = new Layers(glassIndex);
        corner = new Corner(glassIndex);
        rim = new Rim(walls, glassIndex);
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
        return isInside(px, py, pz, in);
    }

    /// Whether light that comes to a place is bent by the walls round it.
    boolean isInside(double x, double y, double z, State in) {
        return in.within < 0 && Walls.holds(low, high, x, y, z);
    }

    /// Whether a light's middle is within the walls too: light from there goes straight.
    boolean isWithin(int light) {
        Lamps lamps = ready.lamps;
        return Walls.holds(outLow, outHigh, lamps.middle(light, 0), lamps.middle(light, 1), lamps.middle(light, 2));
    }

    /// Gives what comes to the place in the basin from one place of a light, or at one way a ray from its middle,
    /// taken for as large as the whole is.
    ///
    /// @param lux takes it, a channel
    void fall(int light, Passing passing, Draws draws, double[] lux) {
        draws.next();
        if (!draws.isMiddle()) {
            fall(light, draws.u(), draws.v(), ready.lamps.area(light), passing, lux);
        } else {
            fallFromMiddle(light, passing, lux);
        }
    }

    /// Adds what comes from one place of a light that stands for an area.
    void fall(int light, double one, double other, double area, Passing passing, double[] lux) {
        Lamps lamps = ready.lamps;
        lamps.placeOver(light, one, other, lamp);
        for (int way = 0; way < WAYS; way++) {
            if (finds(way)) {
                double gain = lamps.cosine(light, lamp, air[0], air[1], air[2]);
                if (gain > 0) {
                    add(light, way, gain * area * lamps.bright(light, lamp, air[0], air[1], air[2]), passing, lux);
                }
            }
        }
    }

    private void fallFromMiddle(int light, Passing passing, double[] lux) {
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
        for (int way = 0; way < WAYS; way++) {
            if (finds(way)) {
                double gain = lamps.middleCosine(light, lamp, air[0], air[1], air[2]);
                if (gain > 0) {
                    add(light, way, gain * area * lamps.bright(light, lamp, air[0], air[1], air[2]), passing, lux);
                }
            }
        }
    }

    /// Adds what comes by the way that was found, if nothing stops it.
    private void add(int light, int way, double gives, Passing passing, double[] lux) {
        double cosine = isFacing ? here[0] * facing[0] + here[1] * facing[1] + here[2] * facing[2] : 1;
        if (!(cosine > 0 && gives > 0) || !comes(way)) {
            return;
        }
        double all = gives
                * cosine
                * passes
                * passing.passes(cosine)
                / (layers.airCosine() * layers.middleCosine() * layers.spread());
        for (int i = 0; i < 3; i++) {
            lux[i] += all * ready.lamps.colour(light, i) * shadows.through[i];
        }
    }

    private boolean isWet() {
        return place[2] < level;
    }

    /// Finds the way in by a wall (0 to 3: along which axis, and low or high), from above over the rim (4) or by a wall
    /// over the water (5). There may be both of these: a pane moves what is behind it.
    private boolean finds(int way) {
        if (way < 4) {
            return findsWall(way >> 1, (way & 1) == 0 ? -1 : 1);
        }
        boolean isUnderRim = isWet() && level < high[2];
        double top = isWet() ? level : high[2];
        if (lamp[2] - top < Walls.AHEAD_METRES || way == 5 && !isUnderRim) {
            return false;
        }
        System.arraycopy(lamp, 0, moved, 0, 3);
        if (way == 4 && !mayComeFromAbove(top)) {
            return false;
        }
        findTop(top);
        for (int i = 1; way == 5 && i < ROUNDS; i++) {
            rim.move(inner, gone, lamp, moved);
            findTop(top);
        }
        if (inner[0] < low[0] || inner[0] > high[0] || inner[1] < low[1] || inner[1] > high[1]) {
            return false;
        }
        if (isUnderRim && walls.isOverRim(inner, gone) != (way == 4)) {
            return false;
        }
        passes = isWet() ? layers.passesSurface() : 1;
        if (way == 5) {
            passes *= rim.passes(inner, gone, lamp);
        }
        return passes > 0;
    }

    private boolean mayComeFromAbove(double top) {
        double index = isWet() ? waterIndex : 1;
        double far = Walls.away(place, 2, lamp, aside);
        return Walls.isFaced(facing, aside, 2, 1, index)
                && walls.mayComeIn(place, aside, 2, top - place[2], index, lamp[2] - place[2], far);
    }

    private void findTop(double top) {
        layers.find(lamp[2] - top, 0, top - place[2], isWet() ? waterIndex : 1, Walls.away(place, 2, moved, aside));
        cross(2, 1, top - place[2], 0);
        for (int j = 0; j < 3; j++) {
            gone[j] = -air[j];
        }
    }

    private boolean findsWall(int axis, int sign) {
        double face = sign < 0 ? low[axis] : high[axis];
        double back = sign < 0 ? outLow[axis] : outHigh[axis];
        double before = sign * (lamp[axis] - back);
        if (before < Walls.AHEAD_METRES) {
            return false;
        }
        double rest = sign * (face - place[axis]);
        double pane = sign * (back - face);
        double square = Walls.away(place, axis, lamp, aside);
        boolean isWet = isWet();
        double index = isWet ? waterIndex : 1;
        boolean mayComeIn = Walls.isFaced(facing, aside, axis, sign, index)
                && walls.mayComeIn(place, aside, axis, rest, index, before + pane + rest, square);
        if (!mayComeIn) {
            return false;
        }
        layers.find(before, pane, rest, index, square);
        cross(axis, sign, rest, pane);
        int side = 1 - axis;
        if (!Walls.isOn(low, high, side, inner, isWet ? low[2] : level, isWet ? level : high[2])
                || !Walls.isOn(outLow, outHigh, side, outer, outLow[2], outHigh[2])) {
            return false;
        }
        passes = layers.passesPane(1);
        return true;
    }

    /// Notes where the way crosses, and its directions: to the lamp at the place, from the lamp in the air.
    private void cross(int axis, int sign, double rest, double pane) {
        double out = layers.middleSlope() * rest;
        double farther = out + layers.glassSlope() * pane;
        double bent = layers.middleSlope() * layers.middleCosine();
        for (int i = 0; i < 3; i++) {
            inner[i] = place[i] + aside[i] * out;
            outer[i] = place[i] + aside[i] * farther;
            here[i] = aside[i] * bent;
            air[i] = -aside[i] * layers.sine();
        }
        inner[axis] += sign * rest;
        outer[axis] += sign * (rest + pane);
        here[axis] = sign * layers.middleCosine();
        air[axis] = -sign * layers.airCosine();
    }

    /// Whether nothing stops the way that was found; less comes through by what it meets.
    private boolean comes(int way) {
        double[] through = shadows.through;
        through[0] = 1;
        through[1] = 1;
        through[2] = 1;
        takeGlass(Walls.apart(inner, outer));
        double far = Walls.apart(place, inner);
        if (!shadows.goesOn(place[0], place[1], place[2], here[0], here[1], here[2], far, state.within, state.medium)) {
            return false;
        }
        double out = Walls.apart(outer, way < 4 ? lamp : moved);
        return shadows.goesOn(outer[0], outer[1], outer[2], -air[0], -air[1], -air[2], out - 2e-6, -1, Media.AIR);
    }

    private void takeGlass(double metres) {
        if (ready.media.takesLight(glass)) {
            for (int i = 0; i < 3; i++) {
                shadows.through[i] *= ready.media.left(glass, i, metres);
            }
        }
    }

    /// Whether the straight way between two places meets the basin.
    boolean meetsBlock(double px, double py, double pz, double[] other) {
        here[0] = px;
        here[1] = py;
        here[2] = pz;
        return walls.meetsBlock(here, other);
    }

    /// Whether light to the place from another may be bent by the basin's walls that both are outside of.
    boolean mayCross(double[] other) {
        return walls.mayCross(place, other);
    }

    /// Finds what comes from a place of a light to the place outside: straight past the basin, or bent by two of its
    /// faces.
    ///
    /// @param at the light's place and what goes straight out of it
    /// @return whether anything does; the shadows hold it, as shares of what would come straight
    boolean comesAcross(int light, double[] at) {
        regions = 2;
        return comes(light, at);
    }

    /// Likewise, in haste: what water turns by a corner is left out. Beside a tank that may be nearly half of the
    /// light: 250 lx of 564 lx on a table 65 mm from a wall, a panel across and above.
    boolean comesInHaste(int light, double[] at) {
        regions = 1;
        return comes(light, at);
    }

    private boolean comes(int light, double[] at) {
        System.arraycopy(at, 0, lamp, 0, 6);
        Lamps lamps = ready.lamps;
        double x = lamp[0] - place[0];
        double y = lamp[1] - place[1];
        double z = lamp[2] - place[2];
        double square = x * x + y * y + z * z;
        double far = Math.sqrt(square);
        total[0] = 0;
        total[1] = 0;
        total[2] = 0;
        boolean isMet = walls.meetsBlock(place, lamp);
        if (!isMet
                && shadows.passes(
                        place[0],
                        place[1],
                        place[2],
                        x / far,
                        y / far,
                        z / far,
                        far - 2e-6,
                        state.within,
                        state.medium)) {
            System.arraycopy(shadows.through, 0, total, 0, 3);
        }
        double straight = (isFacing ? (x * facing[0] + y * facing[1] + z * facing[2]) / far : 1)
                * lamps.cosine(light, lamp, -x / far, -y / far, -z / far)
                * lamps.bright(light, lamp, -x, -y, -z)
                / square;
        for (int axis = 0; straight > 0 && axis < 2; axis++) {
            int sign = walls.sideways(place, axis, lamp);
            if (sign != 0) {
                addAcross(light, axis, sign, low[2], level, waterIndex, straight);
                addAcross(light, axis, sign, level, high[2], 1, straight);
            }
        }
        if (straight > 0 && isMet) {
            addCorners(light, straight);
        }
        System.arraycopy(total, 0, shadows.through, 0, 3);
        return total[0] + total[1] + total[2] > 0;
    }

    private void addAcross(int light, int axis, int sign, double from, double to, double index, double straight) {
        if (!(from < to)
                || !walls.mayGoAcross(place, lamp, axis, from, to)
                || !findsAcross(axis, sign, from, to, index)) {
            return;
        }
        double cosine = isFacing ? here[0] * facing[0] + here[1] * facing[1] + here[2] * facing[2] : 1;
        double there = ready.lamps.cosine(light, lamp, air[0], air[1], air[2]);
        if (!(cosine > 0 && there > 0) || !comesBetween(place, here, index > 1 ? water : Media.AIR, here, lamp)) {
            return;
        }
        double share = cosine
                * there
                * ready.lamps.bright(light, lamp, air[0], air[1], air[2])
                * layers.passesPane(2)
                / (layers.airCosine() * layers.airCosine() * layers.spread() * straight);
        for (int i = 0; i < 3; i++) {
            total[i] += share * shadows.through[i];
        }
    }

    private boolean findsAcross(int axis, int sign, double from, double to, double index) {
        double near = sign > 0 ? outLow[axis] : outHigh[axis];
        double before = sign * (near - place[axis]);
        double pane = low[axis] - outLow[axis];
        double other = outHigh[axis] - high[axis];
        double wide = high[axis] - low[axis];
        double beyond = sign * (lamp[axis] - place[axis]) - before - pane - wide - other;
        layers.find(before + beyond, pane + other, wide, index, Walls.away(place, axis, lamp, aside));
        double first = sign > 0 ? pane : other;
        double out = before * layers.airSlope();
        double in = out + first * layers.glassSlope();
        double off = in + wide * layers.middleSlope();
        double last = off + (pane + other - first) * layers.glassSlope();
        for (int i = 0; i < 3; i++) {
            entry[i] = place[i] + aside[i] * out;
            inner[i] = place[i] + aside[i] * in;
            outer[i] = place[i] + aside[i] * last;
            leave[i] = place[i] + aside[i] * off;
            here[i] = aside[i] * layers.sine();
            air[i] = -here[i];
            between[i] = aside[i] * layers.middleSlope() * layers.middleCosine();
        }
        entry[axis] = near;
        inner[axis] = sign > 0 ? low[axis] : high[axis];
        leave[axis] = sign > 0 ? high[axis] : low[axis];
        outer[axis] = sign > 0 ? outHigh[axis] : outLow[axis];
        here[axis] = sign * layers.airCosine();
        air[axis] = -here[axis];
        between[axis] = sign * layers.middleCosine();
        int side = 1 - axis;
        return Walls.isOn(low, high, side, inner, from, to)
                && Walls.isOn(low, high, side, leave, from, to)
                && Walls.isOn(outLow, outHigh, side, entry, outLow[2], outHigh[2])
                && Walls.isOn(outLow, outHigh, side, outer, outLow[2], outHigh[2]);
    }

    /// Adds what comes in by one face and leaves by one square to it. The first is a wall: what comes down by the top
    /// is followed the other way.
    private void addCorners(int light, double straight) {
        for (int axis = 0; axis < 2; axis++) {
            for (int sign = -1; sign <= 1; sign += 2) {
                if (walls.isBeyond(place, axis, -sign)) {
                    addCorner(light, straight, place, lamp, axis, sign, 1 - axis, -1);
                    addCorner(light, straight, place, lamp, axis, sign, 1 - axis, 1);
                    addCorner(light, straight, place, lamp, axis, sign, 2, 1);
                }
                if (walls.isBeyond(lamp, axis, -sign)) {
                    addCorner(light, straight, lamp, place, axis, sign, 2, 1);
                }
            }
        }
    }

    private void addCorner(
            int light, double straight, double[] one, double[] other, int axis, int sign, int last, int lastSign) {
        // Light never turns back along any axis.
        if (walls.isBeyond(other, axis, -sign) || walls.isBeyond(one, last, lastSign)) {
            return;
        }
        for (int wet = 0; wet < regions; wet++) {
            double from = wet == 1 ? low[2] : level;
            double to = wet == 1 ? level : high[2];
            boolean isOver = last == 2 ? other[2] - to > Walls.AHEAD_METRES : walls.isBeyond(other, last, lastSign);
            if (from < to
                    && isOver
                    && walls.mayTurn(one, other, axis, sign, last, lastSign, from, to)
                    && findsCorner(one, other, axis, sign, last, lastSign, from, to)) {
                add(light, straight, one, wet == 1 ? water : Media.AIR);
            }
        }
    }

    private boolean findsCorner(
            double[] one, double[] other, int axis, int sign, int last, int lastSign, double from, double to) {
        double near = sign > 0 ? outLow[axis] : outHigh[axis];
        double nearIn = sign > 0 ? low[axis] : high[axis];
        double before = Math.max(0, sign * (near - one[axis]));
        double pane = Math.abs(nearIn - near);
        double otherPane = last == 2 ? 0 : lastSign > 0 ? outHigh[last] - high[last] : low[last] - outLow[last];
        double face = last == 2 ? to : lastSign > 0 ? outHigh[last] : outLow[last];
        boolean isWet = to <= level;
        System.arraycopy(other, 0, moved, 0, 3);
        for (int i = 0; i < 3; i++) {
            boolean isFound = corner.find(
                    before,
                    pane,
                    Math.max(0, lastSign * (moved[last] - face)),
                    otherPane,
                    isWet ? waterIndex : 1,
                    sign * (moved[axis] - one[axis]),
                    lastSign * (moved[last] - one[last]),
                    Math.abs(moved[3 - axis - last] - one[3 - axis - last]));
            if (!isFound) {
                return false;
            }
            follow(one, axis, sign, last, lastSign);
            if (!isOpen(axis, last, from, to)) {
                return false;
            }
            passes = corner.passes();
            if (last < 2 || !isWet || to >= high[2] || walls.isOverRim(leave, gone)) {
                return true;
            }
            passes *= rim.passes(leave, gone, other);
            if (passes == 0) {
                return false;
            }
            rim.move(leave, gone, other, moved);
        }
        return true;
    }

    /// Notes places and directions of the way that was found.
    private void follow(double[] one, int axis, int sign, int last, int lastSign) {
        int third = 3 - axis - last;
        int thirdSign = moved[third] < one[third] ? -1 : 1;
        double first = corner.way0() + corner.way0Glass();
        double index = Math.sqrt(corner.u() * corner.u() + corner.v() * corner.v() + corner.w() * corner.w());
        along(axis, sign, corner.first(), corner.w(), corner.w(), index);
        along(last, lastSign, corner.u(), corner.u(), corner.last(), index);
        along(third, thirdSign, corner.v(), corner.v(), corner.v(), index);
        for (int i = 0; i < 3; i++) {
            entry[i] = one[i] + go[i] * corner.way0();
            inner[i] = one[i] + go[i] * first;
            leave[i] = inner[i] + between[i] * index * corner.wayMiddle();
            outer[i] = leave[i] + gone[i] * corner.way1Glass();
        }
        inner[axis] = sign > 0 ? low[axis] : high[axis];
        leave[axis] = inner[axis] + sign * corner.w() * corner.wayMiddle();
        outer[axis] = leave[axis] + sign * corner.w() * corner.way1Glass();
        if (last < 2) {
            outer[last] = lastSign > 0 ? outHigh[last] : outLow[last];
        }
    }

    private void along(int axis, int sign, double before, double inside, double after, double index) {
        go[axis] = sign * before;
        between[axis] = sign * inside / index;
        gone[axis] = sign * after;
    }

    private boolean isOpen(int axis, int last, double from, double to) {
        int side = 1 - axis;
        if (!Walls.isOn(low, high, side, inner, from, to)
                || !Walls.isOn(outLow, outHigh, side, entry, outLow[2], outHigh[2])) {
            return false;
        }
        return last == 2
                ? leave[0] >= low[0] && leave[0] <= high[0] && leave[1] >= low[1] && leave[1] <= high[1]
                : Walls.isOn(low, high, axis, leave, from, to)
                        && Walls.isOn(outLow, outHigh, axis, outer, outLow[2], outHigh[2]);
    }

    private void add(int light, double straight, double[] one, int medium) {
        boolean isFromPlace = Arrays.equals(one, place);
        for (int i = 0; i < 3; i++) {
            here[i] = isFromPlace ? go[i] : -gone[i];
            air[i] = isFromPlace ? -gone[i] : go[i];
        }
        double cosine = isFacing ? here[0] * facing[0] + here[1] * facing[1] + here[2] * facing[2] : 1;
        double there = ready.lamps.cosine(light, lamp, air[0], air[1], air[2]);
        boolean comes = cosine > 0 && there > 0 && comesBetween(one, go, medium, gone, moved);
        if (!comes) {
            return;
        }
        double share = cosine
                * there
                * ready.lamps.bright(light, lamp, air[0], air[1], air[2])
                * passes
                * corner.gain()
                / straight;
        for (int i = 0; i < 3; i++) {
            total[i] += share * shadows.through[i];
        }
    }

    /// Whether nothing stops a way through both faces, from one end to the other.
    private boolean comesBetween(double[] one, double[] way, int medium, double[] last, double[] other) {
        double[] through = shadows.through;
        through[0] = 1;
        through[1] = 1;
        through[2] = 1;
        takeGlass(Walls.apart(entry, inner) + Walls.apart(leave, outer));
        return goesOn(one, way, Walls.apart(one, entry) - SHORT_METRES, Media.AIR)
                && goesOn(inner, between, Walls.apart(inner, leave), medium)
                && goesOn(outer, last, Walls.apart(outer, other) - SHORT_METRES, Media.AIR);
    }

    private boolean goesOn(double[] from, double[] way, double far, int medium) {
        return shadows.goesOn(from[0], from[1], from[2], way[0], way[1], way[2], far, -1, medium);
    }
}
