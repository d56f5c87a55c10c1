package plumeline.sight;

/// Where the spare `g(u) = h_H(u) − h_K(u)` of a hidden part K behind a hider H is least among its neighbours: there
/// the touching points of both lie opposite each other, `g` apart along u. Also the signed distance of a point to a
/// part: minus the least spare of a hidden part that is only that point.
///
/// All kinks of both reaches are looked at; between them `g` is smooth and its slope `(e − k)·u⊥` is brought to zero.
/// Along `u = a + w (b − a)` that slope itself rises by `(r_H − r_K) a×b / |u| + (e − k)·(b − a)⊥`, r being the radii
/// of both outlines.
final class Contacts {
    private static final double SAME = 1e-13;

    /// What to do with a least spare: direction, spare, touching point of the hidden part. The hider's lies opposite,
    /// the spare farther along the direction.
    interface Sink {
        void take(double ux, double uy, double spare, double kx, double ky);
    }

    /// A place where a value rises through zero, by Newton's steps that are kept between two places known to be on
    /// either side, halving where these don't get nearer.
    static final class Root {
        private static final int MOST_STEPS = 60;
        /// A step as short as this, of a way of about 1, leaves nothing to a next one.
        private static final double LAST_STEP = 1e-8;

        private static final double ZERO = 1e-15;
        double at;
        private double low;
        private double high;
        private double before;
        private int steps;
        private boolean isSought = true;

        Root(double low, double high, double atLow, double atHigh) {
            this.low = low;
            this.high = high;
            before = high - low;
            // An end that is level is a root itself, but not the one that is sought.
            at = atLow < -ZERO && atHigh > ZERO ? low - atLow * (high - low) / (atHigh - atLow) : (low + high) / 2;
        }

        boolean isSought() {
            return isSought;
        }

        /// Takes what is found at `at`: the value, and how fast it rises.
        void take(double value, double rise) {
            steps++;
            if (value < 0) {
                low = at;
            } else {
                high = at;
            }
            double next = at - value / rise;
            if (Math.abs(value) < ZERO || steps == MOST_STEPS) {
                isSought = false;
            } else if (Math.abs(next - at) < LAST_STEP) {
                at = Math.clamp(next, low, high);
                isSought = false;
            } else if (next > low && next < high && (steps % 3 != 0 || high - low < before / 4)) {
                at = next;
            } else {
                at = (low + high) / 2;
                isSought = high - low > LAST_STEP * LAST_STEP;
            }
            before = steps % 3 == 0 ? high - low : before;
        }
    }

    private final Shade hider;
    private final Shade hidden;
    private final Sink sink;
    private double least = Double.POSITIVE_INFINITY;
    private double slopeLeft;
    private double slopeRight;
    private double beforeX;
    private double beforeY;
    private double slopeBefore;
    private boolean isLevel;
    private double levelX;
    private double levelY;
    private double lastLevelX;
    private double lastLevelY;

    private Contacts(Shade hider, Shade hidden, Sink sink) {
        this.hider = hider;
        this.hidden = hidden;
        this.sink = sink;
    }

    /// Hands over every least spare; gives the least of them.
    static double each(Shade hider, Shade hidden, Sink sink) {
        Contacts contacts = new Contacts(hider, hidden, sink);
        contacts.each();
        return contacts.least;
    }

    private void each() {
        Nodes own = hider.nodes;
        Nodes others = hidden.nodes;
        int n = own.order.length + others.special.length;
        int a = 0;
        int b = 0;
        // From the first node that isn't level once round and to it again.
        int end = n - 1;
        for (int i = 0; i <= end; i++) {
            a = i == n ? 0 : a;
            b = i == n ? 0 : b;
            boolean isOwn = b == others.special.length
                    || a < own.order.length && own.key[own.order[a]] <= others.key[others.special[b]];
            Nodes nodes = isOwn ? own : others;
            int at = isOwn ? own.order[a++] : others.special[b++];
            if (Nodes.isSame(beforeX, beforeY, nodes.ux[at], nodes.uy[at]) && i < n) {
                continue;
            }
            look(nodes, at, isOwn);
            if (slopeLeft == 0 && slopeRight == 0) {
                lookCloser(nodes.ux[at], nodes.uy[at]);
            }
            if (slopeLeft != 0 || slopeRight != 0) {
                end = end < n ? i + n : end;
                pass(nodes.ux[at], nodes.uy[at]);
            } else if (end >= n) {
                level(nodes.ux[at], nodes.uy[at]);
            }
        }
        for (int i = 0; i < Nodes.EVEN && end < n; i++) {
            take(own.ux[i], own.uy[i]);
        }
    }

    /// Passes a node that isn't level, on the way round from the last such one.
    private void pass(double ux, double uy) {
        if (isLevel && slopeBefore <= 0 && slopeLeft >= 0) {
            take(levelX, levelY);
            take(lastLevelX, lastLevelY);
        } else if (!isLevel && (beforeX != 0 || beforeY != 0)) {
            between(beforeX, beforeY, slopeBefore, ux, uy, slopeLeft);
        }
        if (slopeLeft <= 0 && slopeRight >= 0) {
            take(ux, uy);
        }
        isLevel = false;
        beforeX = ux;
        beforeY = uy;
        slopeBefore = slopeRight;
    }

    /// Passes a node where the spare is level on both sides: a top or a bottom, as the next one will tell.
    private void level(double ux, double uy) {
        levelX = isLevel ? levelX : ux;
        levelY = isLevel ? levelY : uy;
        lastLevelX = ux;
        lastLevelY = uy;
        isLevel = true;
    }

    /// Slopes of the spare just before and just after a node.
    private void look(Nodes nodes, int at, boolean isOwn) {
        double ux = nodes.ux[at];
        double uy = nodes.uy[at];
        Shade other = isOwn ? hidden : hider;
        if (at < Nodes.EVEN) {
            other.tx = other.nodes.lx[at];
            other.ty = other.nodes.ly[at];
            other.ox = other.nodes.rx[at];
            other.oy = other.nodes.ry[at];
        } else {
            other.touchRound(ux, uy);
        }
        double sign = isOwn ? 1 : -1;
        slopeLeft = sign * ((nodes.ly[at] - other.ty) * ux - (nodes.lx[at] - other.tx) * uy);
        slopeRight = sign * ((nodes.ry[at] - other.oy) * ux - (nodes.rx[at] - other.ox) * uy);
    }

    /// Tells a top from a bottom where the spare is level, by how it bends: `g'' + g` is the difference of both radii.
    private void lookCloser(double ux, double uy) {
        double spare = hider.touch(ux, uy) - hidden.touch(ux, uy);
        double bend = hider.bend - hidden.bend - spare;
        if (Math.abs(bend) > SAME) {
            slopeLeft = -Math.copySign(Double.MIN_NORMAL, bend);
            slopeRight = -slopeLeft;
        }
    }

    private void between(double ax, double ay, double slopeA, double bx, double by, double slopeB) {
        if (slopeA > 0 || slopeB < 0 || slopeA == 0 && slopeB == 0) {
            return;
        }
        double vx = bx - ax;
        double vy = by - ay;
        double turn = ax * by - ay * bx;
        Root root = new Root(0, 1, slopeA, slopeB);
        while (root.isSought()) {
            double ux = ax + root.at * vx;
            double uy = ay + root.at * vy;
            hider.touch(ux, uy);
            hidden.touch(ux, uy);
            double wx = hider.tx - hidden.tx;
            double wy = hider.ty - hidden.ty;
            root.take(wy * ux - wx * uy, (hider.bend - hidden.bend) * turn + wy * vx - wx * vy);
        }
        take(ax + root.at * vx, ay + root.at * vy);
    }

    private void take(double x, double y) {
        double size = Math.sqrt(x * x + y * y);
        double ux = x / size;
        double uy = y / size;
        double spare = hider.reach(ux, uy) - hidden.touch(ux, uy);
        least = Math.min(least, spare);
        sink.take(ux, uy, spare, hidden.tx, hidden.ty);
    }

    /// Signed distance of a point to a part, the largest `u·p − h(u)`: positive outside, negative inside; the direction
    /// goes to `way`.
    static double distance(Shade part, double x, double y, double[] way) {
        distanceAtLeast(part, x, y);
        return refined(part, x, y, way);
    }

    /// The largest `u·p − h(u)` of all the part's nodes, which `part.nearest` then tells: no more than the distance.
    static double distanceAtLeast(Shade part, double x, double y) {
        Nodes nodes = part.nodes;
        int[] order = nodes.order;
        double start = at(nodes, order[part.nearest], x, y);
        if (start > 0) {
            // Outside there is but one top all round: climb from where the last one was.
            double most = climbed(part, x, y, start, 1);
            return most > start ? most : climbed(part, x, y, start, order.length - 1);
        }
        double most = Double.NEGATIVE_INFINITY;
        for (int i = 0; i < order.length; i++) {
            double there = at(nodes, order[i], x, y);
            if (there > most) {
                most = there;
                part.nearest = i;
            }
        }
        return most;
    }

    private static double climbed(Shade part, double x, double y, double start, int step) {
        int[] order = part.nodes.order;
        int at = part.nearest;
        double most = start;
        for (int i = 0; i < order.length; i++) {
            at = at + step < order.length ? at + step : at + step - order.length;
            double there = at(part.nodes, order[at], x, y);
            // Two nodes may be the same direction but for rounding.
            if (there < most - SAME) {
                break;
            }
            if (there > most) {
                most = there;
                part.nearest = at;
            }
        }
        return most;
    }

    private static double at(Nodes nodes, int i, double x, double y) {
        return nodes.ux[i] * x + nodes.uy[i] * y - nodes.reach[i];
    }

    /// The distance, from what [#distanceAtLeast] found just before.
    static double refined(Shade part, double x, double y, double[] way) {
        Nodes nodes = part.nodes;
        int[] order = nodes.order;
        int n = order.length;
        int place = part.nearest;
        // To the node at which the slope rises through zero, or before which it does since the one before.
        for (int i = 0; i < n && slopeAfter(nodes, order[place], x, y) < 0; i++) {
            place = place + 1 == n ? 0 : place + 1;
        }
        int to = order[place];
        int from = order[place == 0 ? n - 1 : place - 1];
        for (int i = 0; i < n && slopeBefore(nodes, to, x, y) > 0 && slopeAfter(nodes, from, x, y) > 0; i++) {
            place = place == 0 ? n - 1 : place - 1;
            to = from;
            from = order[place == 0 ? n - 1 : place - 1];
        }
        double atFrom = slopeAfter(nodes, from, x, y);
        double atTo = slopeBefore(nodes, to, x, y);
        if (atTo <= 0) {
            way[0] = nodes.ux[to];
            way[1] = nodes.uy[to];
            return at(nodes, to, x, y);
        }
        double vx = nodes.ux[to] - nodes.ux[from];
        double vy = nodes.uy[to] - nodes.uy[from];
        double turn = nodes.ux[from] * nodes.uy[to] - nodes.uy[from] * nodes.ux[to];
        Root root = new Root(0, 1, atFrom, atTo);
        double ux = 0;
        double uy = 0;
        while (root.isSought()) {
            ux = nodes.ux[from] + root.at * vx;
            uy = nodes.uy[from] + root.at * vy;
            part.touch(ux, uy);
            double wx = part.tx - x;
            double wy = part.ty - y;
            root.take(wy * ux - wx * uy, part.bend * turn + wy * vx - wx * vy);
        }
        ux = nodes.ux[from] + root.at * vx;
        uy = nodes.uy[from] + root.at * vy;
        double size = Math.sqrt(ux * ux + uy * uy);
        double found = (ux * x + uy * y - part.reach(ux, uy)) / size;
        way[0] = ux / size;
        way[1] = uy / size;
        return found;
    }

    private static double slopeBefore(Nodes nodes, int i, double x, double y) {
        return (nodes.ly[i] - y) * nodes.ux[i] - (nodes.lx[i] - x) * nodes.uy[i];
    }

    private static double slopeAfter(Nodes nodes, int i, double x, double y) {
        return (nodes.ry[i] - y) * nodes.ux[i] - (nodes.rx[i] - x) * nodes.uy[i];
    }
}
