package plumeline.render;

import java.util.Optional;
import plumeline.geom.Bounds;
import plumeline.geom.Vec;
import plumeline.light.Disc;
import plumeline.light.Emitter;
import plumeline.light.Panel;
import plumeline.light.Tube;

/// Light on a patch by brute force: very many ways from it, spread evenly by the cosine, followed through a tank by
/// Snell's law, two swings of light along each, until they meet the lamp or are lost. Nothing is mirrored but to and
/// fro in panes; seams and rims let nothing through; a can may stand in the tank, the table's top is at 0.
///
/// @param out the tank's outside, m
/// @param in its inside, m
/// @param level its water line, m
/// @param can an upright cylinder in it: middle of its base, radius, height, m
record TankWays(Bounds out, Bounds in, double level, double[] can) {
    private static final double GLASS = 1.52;
    private static final double WATER = 1.333;
    private static final double NEAR = 1e-9;

    private static final double ACROSS = 0.7548776662466927;
    private static final double DOWN = 0.5698402909980532;

    /// A way as it is followed.
    private static final class Way {
        final double[] at = new double[3];
        final double[] on = new double[3];
        final double[] one = new double[3];
        final double[] other = new double[3];

        double share() {
            return (dot(one, one) + dot(other, other)) / 2;
        }

        void go(double metres) {
            for (int i = 0; i < 3; i++) {
                at[i] += metres * on[i];
            }
        }

        /// Crosses a face square to an axis, perhaps by a pane that is so thick; false where all is thrown back.
        boolean cross(int axis, double from, double paneMetres, double to) {
            double cosine = Math.abs(on[axis]);
            double square = from * from * (1 - cosine * cosine);
            if (square >= to * to) {
                return false;
            }
            double sign = Math.signum(on[axis]);
            double air = from * cosine;
            double pane = Math.sqrt(GLASS * GLASS - square);
            double rest = Math.sqrt(to * to - square);
            double s;
            double p;
            if (paneMetres > 0) {
                s = both(mirrored(air, pane), mirrored(pane, rest));
                p = both(
                        mirrored(GLASS * GLASS * air, from * from * pane),
                        mirrored(to * to * pane, GLASS * GLASS * rest));
            } else {
                s = 1 - mirrored(air, rest);
                p = 1 - mirrored(to * to * air, from * from * rest);
            }
            double[] normal = new double[3];
            normal[axis] = 1;
            double[] across = product(normal, on);
            double length = Math.sqrt(dot(across, across));
            if (length < 1e-9) {
                across = one.clone();
                length = Math.sqrt(dot(one, one));
            }
            for (int i = 0; i < 3; i++) {
                across[i] /= length;
            }
            double[] before = product(across, on);
            for (int i = 0; i < 3; i++) {
                at[i] += i == axis ? sign * paneMetres : from * on[i] / pane * paneMetres;
                on[i] = i == axis ? sign * rest / to : from * on[i] / to;
            }
            double[] after = product(across, on);
            turn(one, across, before, after, s, p);
            turn(other, across, before, after, s, p);
            return true;
        }

        private static void turn(double[] swing, double[] across, double[] before, double[] after, double s, double p) {
            double along = dot(swing, across) * Math.sqrt(s);
            double in = dot(swing, before) * Math.sqrt(p);
            for (int i = 0; i < 3; i++) {
                swing[i] = along * across[i] + in * after[i];
            }
        }
    }

    private static double mirrored(double one, double other) {
        double amplitude = (one - other) / (one + other);
        return amplitude * amplitude;
    }

    private static double both(double one, double other) {
        return (1 - one) * (1 - other) / (1 - one * other);
    }

    private static double dot(double[] one, double[] other) {
        return one[0] * other[0] + one[1] * other[1] + one[2] * other[2];
    }

    private static double[] product(double[] a, double[] b) {
        return new double[] {a[1] * b[2] - a[2] * b[1], a[2] * b[0] - a[0] * b[2], a[0] * b[1] - a[1] * b[0]};
    }

    private static double[] numbers(Vec vec) {
        return new double[] {vec.x(), vec.y(), vec.z()};
    }

    /// Gives the light of a lamp whose face is even, lx, by so many ways.
    double lux(Emitter lamp, Vec place, Vec facing, int ways) {
        Vec right = facing.cross(Math.abs(facing.z()) < 0.9 ? Vec.UP : new Vec(1, 0, 0))
                .unit();
        Vec up = facing.cross(right);
        Way way = new Way();
        double sum = 0;
        for (int i = 0; i < ways; i++) {
            double one = (0.5 + i * ACROSS) % 1;
            double round = 2 * Math.PI * ((0.5 + i * DOWN) % 1);
            double u = Math.sqrt(one) * Math.cos(round);
            double v = Math.sqrt(one) * Math.sin(round);
            Vec on = facing.times(Math.sqrt(1 - one)).plus(right.times(u)).plus(up.times(v));
            Vec swing =
                    on.cross(Math.abs(on.z()) < 0.9 ? Vec.UP : new Vec(1, 0, 0)).unit();
            System.arraycopy(numbers(place), 0, way.at, 0, 3);
            System.arraycopy(numbers(on), 0, way.on, 0, 3);
            System.arraycopy(numbers(swing), 0, way.one, 0, 3);
            System.arraycopy(numbers(on.cross(swing)), 0, way.other, 0, 3);
            sum += reaches(lamp, way) ? way.share() : 0;
        }
        return Math.PI * lamp.luminance() * sum / ways;
    }

    /// Where a way is: outside, in the room over the water, in the water.
    private enum Where {
        OUTSIDE,
        DRY,
        WET
    }

    private boolean reaches(Emitter lamp, Way way) {
        double[] low = numbers(in.low());
        double[] high = numbers(in.high());
        Where where = !holds(low, high, way.at) ? Where.OUTSIDE : way.at[2] < level ? Where.WET : Where.DRY;
        for (int i = 0; i < 12; i++) {
            if (where == Where.OUTSIDE) {
                double table = way.on[2] < 0 ? -way.at[2] / way.on[2] : Double.POSITIVE_INFINITY;
                int[] axis = new int[1];
                double block = entry(way, axis);
                if (meets(lamp, way) < Math.min(table, block)) {
                    return true;
                }
                Optional<Where> next = block < table ? comesIn(way, block, axis[0]) : Optional.empty();
                if (next.isEmpty()) {
                    return false;
                }
                where = next.get();
            } else {
                Optional<Where> next = goesOn(way, where);
                if (next.isEmpty()) {
                    return false;
                }
                where = next.get();
            }
        }
        return false;
    }

    private Optional<Where> comesIn(Way way, double block, int axis) {
        double[] low = numbers(in.low());
        double[] high = numbers(in.high());
        way.go(block);
        if (axis == 2) {
            if (way.on[2] > 0 || !isOver(low, high, way.at)) {
                return Optional.empty();
            }
            if (level < high[2]) {
                return Optional.of(Where.DRY);
            }
            return way.cross(2, 1, 0, WATER) ? Optional.of(Where.WET) : Optional.empty();
        }
        double pane = pane(axis, way.on[axis] > 0);
        double aside = 1 - way.on[axis] * way.on[axis];
        boolean isWet = way.at[2] + pane * way.on[2] / Math.sqrt(GLASS * GLASS - aside) < level;
        way.cross(axis, 1, pane, isWet ? WATER : 1);
        return isOnWall(low, high, axis, way.at) && (way.at[2] < level) == isWet
                ? Optional.of(isWet ? Where.WET : Where.DRY)
                : Optional.empty();
    }

    private Optional<Where> goesOn(Way way, Where where) {
        double[] low = numbers(in.low());
        double[] high = numbers(in.high());
        boolean isWet = where == Where.WET;
        double best = Double.POSITIVE_INFINITY;
        int across = -1;
        for (int j = 0; j < 3; j++) {
            double lowest = j == 2 ? (isWet ? low[2] : Math.max(level, low[2])) : low[j];
            double highest = j == 2 ? (isWet ? Math.min(level, high[2]) : high[2]) : high[j];
            double until = ((way.on[j] > 0 ? highest : lowest) - way.at[j]) / way.on[j];
            if (way.on[j] != 0 && until > -NEAR && until < best) {
                best = until;
                across = j;
            }
        }
        if (across < 0 || meetsCan(way) < best) {
            return Optional.empty();
        }
        way.go(best);
        if (across == 2) {
            return crossesLevel(way, isWet);
        }
        return way.cross(across, isWet ? WATER : 1, pane(across, way.on[across] < 0), 1)
                        && way.at[2] <= high[2]
                        && isOnWall(numbers(out.low()), numbers(out.high()), across, way.at)
                ? Optional.of(Where.OUTSIDE)
                : Optional.empty();
    }

    private Optional<Where> crossesLevel(Way way, boolean isWet) {
        if (way.on[2] < 0 && (isWet || level <= in.low().z())) {
            return Optional.empty();
        }
        if (isWet) {
            Where over = level < in.high().z() ? Where.DRY : Where.OUTSIDE;
            return way.cross(2, WATER, 0, 1) ? Optional.of(over) : Optional.empty();
        }
        if (way.on[2] < 0) {
            way.cross(2, 1, 0, WATER);
            return Optional.of(Where.WET);
        }
        return Optional.of(Where.OUTSIDE);
    }

    private double pane(int axis, boolean isLow) {
        return isLow
                ? numbers(in.low())[axis] - numbers(out.low())[axis]
                : numbers(out.high())[axis] - numbers(in.high())[axis];
    }

    private static boolean holds(double[] low, double[] high, double[] at) {
        return isOver(low, high, at) && at[2] > low[2] && at[2] < high[2];
    }

    private static boolean isOver(double[] low, double[] high, double[] at) {
        return at[0] > low[0] && at[0] < high[0] && at[1] > low[1] && at[1] < high[1];
    }

    private static boolean isOnWall(double[] low, double[] high, int axis, double[] at) {
        int side = 1 - axis;
        return at[side] > low[side] && at[side] < high[side] && at[2] > low[2] && at[2] < high[2];
    }

    /// Where a way comes into the tank's outside.
    private double entry(Way way, int[] axis) {
        double[] low = numbers(out.low());
        double[] high = numbers(out.high());
        double from = NEAR;
        double to = Double.POSITIVE_INFINITY;
        axis[0] = -1;
        for (int i = 0; i < 3; i++) {
            double one = (low[i] - way.at[i]) / way.on[i];
            double other = (high[i] - way.at[i]) / way.on[i];
            if (Math.min(one, other) > from) {
                from = Math.min(one, other);
                axis[0] = i;
            }
            to = Math.min(to, Math.max(one, other));
        }
        return from < to && axis[0] >= 0 ? from : Double.POSITIVE_INFINITY;
    }

    private double meetsCan(Way way) {
        double[] at = {way.at[0] - can[0], way.at[1] - can[1], way.at[2] - can[2]};
        double[] on = way.on;
        double square = on[0] * on[0] + on[1] * on[1];
        double half = at[0] * on[0] + at[1] * on[1];
        double root = half * half - square * (at[0] * at[0] + at[1] * at[1] - can[3] * can[3]);
        if (root > 0) {
            double t = (-half - Math.sqrt(root)) / square;
            double z = at[2] + t * on[2];
            if (t > 1e-7 && z > 0 && z < can[4]) {
                return t;
            }
        }
        double t = (can[4] - at[2]) / on[2];
        double x = at[0] + t * on[0];
        double y = at[1] + t * on[1];
        return on[2] < 0 && t > 1e-7 && x * x + y * y < can[3] * can[3] ? t : Double.POSITIVE_INFINITY;
    }

    private static double meets(Emitter lamp, Way way) {
        double[] middle = numbers(lamp.middle());
        double[] at = {way.at[0] - middle[0], way.at[1] - middle[1], way.at[2] - middle[2]};
        if (lamp instanceof Tube tube) {
            double[] axis = numbers(tube.axis());
            double along = dot(way.on, axis);
            double away = dot(at, axis);
            double square = 1 - along * along;
            double half = dot(at, way.on) - along * away;
            double root =
                    half * half - square * (dot(at, at) - away * away - tube.radiusMetres() * tube.radiusMetres());
            double t = root > 0 ? (-half - Math.sqrt(root)) / square : -1;
            return t > 0 && Math.abs(away + t * along) < tube.lengthMetres() / 2 ? t : Double.POSITIVE_INFINITY;
        }
        double[] facing = numbers(lamp.facing());
        double toward = dot(way.on, facing);
        double t = -dot(at, facing) / toward;
        if (!(toward < 0 && t > 0)) {
            return Double.POSITIVE_INFINITY;
        }
        double[] there = {at[0] + t * way.on[0], at[1] + t * way.on[1], at[2] + t * way.on[2]};
        boolean isOn = switch (lamp) {
            case Panel panel ->
                Math.abs(dot(there, numbers(panel.right()))) < panel.widthMetres() / 2
                        && Math.abs(dot(there, numbers(panel.up()))) < panel.heightMetres() / 2;
            case Disc disc -> dot(there, there) < disc.radiusMetres() * disc.radiusMetres();
            case Tube _ -> false;
        };
        return isOn ? t : Double.POSITIVE_INFINITY;
    }
}
