package plumeline.geom;

import java.util.Arrays;

/// The outline of one convex part as a polygon: corners on the exact outline, from left round by the top as angles
/// rise, with both ends of each straight side among them.
final class Hull {
    private static final double SAME = 1e-13;
    private static final int MOST_STEPS = 24;

    final Seen part;
    final int count;
    final double[] x;
    final double[] y;
    final double[] depth;
    /// The direction in which the outline reaches farthest at each corner, radians; the edge from a corner to the next
    /// is an arc of the outline whose directions run from one's to the other's, or a straight side where both are
    /// the same.
    final double[] angle;

    private Hull(Builder from) {
        part = from.part;
        count = from.count;
        x = Arrays.copyOf(from.x, count);
        y = Arrays.copyOf(from.y, count);
        depth = Arrays.copyOf(from.depth, count);
        angle = Arrays.copyOf(from.angle, count);
    }

    static Hull of(Seen part, int steps) {
        Builder builder = new Builder(part, 3 * steps + 8);
        double[] touch = new double[Seen.TOUCH_SIZE];
        for (int i = 0; i < steps; i++) {
            double angle = 2 * Math.PI * i / steps;
            if (part instanceof Seen.Plain plain) {
                builder.turn(plain, angle - 2 * Math.PI / steps, angle);
            }
            part.reach(Math.cos(angle), Math.sin(angle), touch);
            builder.add(touch, angle);
        }
        return builder.hull();
    }

    private static final class Builder {
        private final Seen part;
        private final double[] x;
        private final double[] y;
        private final double[] depth;
        private final double[] angle;
        private int count;

        Builder(Seen part, int most) {
            this.part = part;
            x = new double[most];
            y = new double[most];
            depth = new double[most];
            angle = new double[most];
        }

        void add(double[] touch, double at) {
            if (count > 0 && near(count - 1, touch)) {
                return;
            }
            x[count] = touch[0];
            y[count] = touch[1];
            depth[count] = touch[2];
            angle[count] = at;
            count++;
        }

        private boolean near(int i, double[] touch) {
            return Math.abs(x[i] - touch[0]) < SAME && Math.abs(y[i] - touch[1]) < SAME;
        }

        /// Adds both ends of the straight side where the outline passes from one disc to the other between two angles.
        void turn(Seen.Plain plain, double from, double to) {
            double low = from;
            double high = to;
            double atLow = difference(plain, low);
            double atHigh = difference(plain, high);
            double sign = atLow;
            if (sign * atHigh >= 0) {
                return;
            }
            // False position with the kept end's weight halved (Illinois), to the last digits in a few steps.
            double side = low;
            for (int i = 0; i < MOST_STEPS && high - low > SAME; i++) {
                double next = (low * atHigh - high * atLow) / (atHigh - atLow);
                double there = difference(plain, next);
                boolean sameSide = Math.abs(next - side) < SAME;
                side = next;
                if (there * atHigh < 0) {
                    low = high;
                    atLow = atHigh;
                } else {
                    atLow /= 2;
                }
                high = next;
                atHigh = there;
                if (there == 0 || sameSide) {
                    break;
                }
            }
            double ux = Math.cos(side);
            double uy = Math.sin(side);
            double[] touch = new double[Seen.TOUCH_SIZE];
            Disc first = sign > 0 ? plain.low() : plain.high();
            Disc second = sign > 0 ? plain.high() : plain.low();
            first.touch(ux, uy, first.reach(ux, uy), touch);
            add(touch, side);
            second.touch(ux, uy, second.reach(ux, uy), touch);
            add(touch, side);
        }

        private static double difference(Seen.Plain plain, double angle) {
            double ux = Math.cos(angle);
            double uy = Math.sin(angle);
            return plain.low().reach(ux, uy) - plain.high().reach(ux, uy);
        }

        Hull hull() {
            while (count > 1 && near(0, new double[] {x[count - 1], y[count - 1]})) {
                count--;
            }
            return new Hull(this);
        }
    }

    /// Where a share of an edge lies.
    double xAlong(int edge, double share) {
        return x[edge] + share * (x[next(edge)] - x[edge]);
    }

    /// Where a share of an edge lies.
    double yAlong(int edge, double share) {
        return y[edge] + share * (y[next(edge)] - y[edge]);
    }

    int next(int i) {
        return i + 1 == count ? 0 : i + 1;
    }

    /// The most by which a point lies outside of any edge's line; negative inside.
    double outside(double px, double py) {
        double most = Double.NEGATIVE_INFINITY;
        for (int i = 0; i < count; i++) {
            int j = next(i);
            double ex = x[j] - x[i];
            double ey = y[j] - y[i];
            double length = Math.sqrt(ex * ex + ey * ey);
            most = Math.max(most, ((px - x[i]) * ey - (py - y[i]) * ex) / length);
        }
        return most;
    }

    /// Distance of a point outside to the polygon; writes the direction from the polygon to the point.
    double distance(double px, double py, double[] way) {
        double least = Double.POSITIVE_INFINITY;
        for (int i = 0; i < count; i++) {
            int j = next(i);
            double ex = x[j] - x[i];
            double ey = y[j] - y[i];
            double share = Math.clamp(((px - x[i]) * ex + (py - y[i]) * ey) / (ex * ex + ey * ey), 0, 1);
            double dx = px - x[i] - share * ex;
            double dy = py - y[i] - share * ey;
            double distance = Math.sqrt(dx * dx + dy * dy);
            if (distance < least) {
                least = distance;
                way[0] = distance > 0 ? dx / distance : 0;
                way[1] = distance > 0 ? dy / distance : 0;
            }
        }
        return least;
    }
}
