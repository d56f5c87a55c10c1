package plumeline.geom;

/// Where the spare `g(u) = h_H(u) − h_K(u)` of a hidden part K behind a hider H is least among its neighbours: there
/// the touching points of both lie opposite each other, `g` apart along u. Also the signed distance of a point to a
/// part.
///
/// All kinks of both reaches are looked at; between them `g` is smooth and its slope `(e − k)·u⊥` is brought to zero.
final class Contacts {
    private static final int MOST_STEPS = 40;
    private static final double FINE = 1e-12;

    /// What to do with a least spare: direction, spare, touching point of the hidden part. The hider's lies opposite,
    /// the spare farther along the direction.
    interface Sink {
        void take(double ux, double uy, double spare, double kx, double ky);
    }

    private final Shade hider;
    private final Shade hidden;
    private double ux;
    private double uy;
    private double spare;
    private double kx;
    private double ky;

    private Contacts(Shade hider, Shade hidden) {
        this.hider = hider;
        this.hidden = hidden;
    }

    static void each(Shade hider, Shade hidden, Sink sink) {
        new Contacts(hider, hidden).each(sink);
    }

    private void each(Sink sink) {
        Shade.Node[] own = hider.nodes;
        Shade.Node[] others = hidden.special;
        int n = own.length + others.length;
        // First node once more at the end closes the round.
        double beforeX = 0;
        double beforeY = 0;
        double slopeAfter = 0;
        int a = 0;
        int b = 0;
        double firstX = 0;
        double firstY = 0;
        double firstLeft = 0;
        for (int i = 0; i < n; i++) {
            boolean isOwn = b >= others.length || a < own.length && own[a].angle() <= others[b].angle();
            Shade.Node node = isOwn ? own[a++] : others[b++];
            double left = look(node, isOwn);
            double right = slopeRight;
            if (i == 0) {
                firstX = node.ux();
                firstY = node.uy();
                firstLeft = left;
            } else {
                between(beforeX, beforeY, slopeAfter, node.ux(), node.uy(), left, sink);
            }
            if (left <= 0 && right >= 0) {
                at(node.ux(), node.uy());
                sink.take(ux, uy, spare, kx, ky);
            }
            beforeX = node.ux();
            beforeY = node.uy();
            slopeAfter = right;
        }
        between(beforeX, beforeY, slopeAfter, firstX, firstY, firstLeft, sink);
    }

    private double slopeRight;

    /// Slope of the spare just before a node; just after it in `slopeRight`.
    private double look(Shade.Node node, boolean isOwn) {
        Shade other = isOwn ? hidden : hider;
        other.touch(node.ux(), node.uy());
        double sign = isOwn ? 1 : -1;
        double tx = -node.uy() * sign;
        double ty = node.ux() * sign;
        slopeRight = (node.rx() - other.tx) * tx + (node.ry() - other.ty) * ty;
        return (node.lx() - other.tx) * tx + (node.ly() - other.ty) * ty;
    }

    private void between(double ax, double ay, double slopeA, double bx, double by, double slopeB, Sink sink) {
        if (slopeA > 0 || slopeB < 0 || slopeA == 0 && slopeB == 0) {
            return;
        }
        double low = 0;
        double high = 1;
        double atLow = slopeA;
        double atHigh = slopeB;
        int kept = 0;
        for (int i = 0; i < MOST_STEPS && high - low > FINE; i++) {
            double where =
                    i % 4 == 3 || !(atHigh > atLow) ? (low + high) / 2 : low - atLow * (high - low) / (atHigh - atLow);
            where = Math.clamp(where, low + (high - low) * 1e-3, high - (high - low) * 1e-3);
            double there = slope(ax + where * (bx - ax), ay + where * (by - ay));
            if (Math.abs(there) < 1e-15) {
                low = where;
                high = where;
            } else if (there < 0) {
                low = where;
                atLow = there;
                atHigh = kept < 0 ? atHigh / 2 : atHigh;
                kept = -1;
            } else {
                high = where;
                atHigh = there;
                atLow = kept > 0 ? atLow / 2 : atLow;
                kept = 1;
            }
        }
        double middle = (low + high) / 2;
        at(ax + middle * (bx - ax), ay + middle * (by - ay));
        sink.take(ux, uy, spare, kx, ky);
    }

    private double slope(double x, double y) {
        hider.touch(x, y);
        hidden.touch(x, y);
        return (hidden.tx - hider.tx) * y + (hider.ty - hidden.ty) * x;
    }

    private void at(double x, double y) {
        double size = Math.sqrt(x * x + y * y);
        ux = x / size;
        uy = y / size;
        spare = hider.reach(ux, uy) - hidden.touch(ux, uy);
        kx = hidden.tx;
        ky = hidden.ty;
    }

    /// Signed distance of a point to a part, the largest `u·p − h(u)`: positive outside, negative inside; the direction
    /// goes to `way`.
    static double distance(Shade part, double x, double y, double[] way) {
        Shade.Node[] nodes = part.nodes;
        int best = 0;
        double most = Double.NEGATIVE_INFINITY;
        for (int i = 0; i < nodes.length; i++) {
            double there = nodes[i].ux() * x + nodes[i].uy() * y - nodes[i].reach();
            if (there > most) {
                most = there;
                best = i;
            }
        }
        Shade.Node node = nodes[best];
        double before = (node.lx() - x) * node.uy() - (node.ly() - y) * node.ux();
        double after = (node.rx() - x) * node.uy() - (node.ry() - y) * node.ux();
        way[0] = node.ux();
        way[1] = node.uy();
        if (before >= 0 && after <= 0) {
            return most;
        }
        Shade.Node next =
                nodes[after > 0 ? (best + 1 == nodes.length ? 0 : best + 1) : best == 0 ? nodes.length - 1 : best - 1];
        return refined(part, x, y, node, next, most, way);
    }

    private static double refined(
            Shade part, double x, double y, Shade.Node from, Shade.Node to, double known, double[] way) {
        // The slope falls through zero between both nodes, seen from the better one towards the other.
        double low = 0;
        double high = 1;
        double turn = Math.signum(from.ux() * to.uy() - from.uy() * to.ux());
        double atLow =
                turn * (turn > 0 ? slope(from, from.rx(), from.ry(), x, y) : slope(from, from.lx(), from.ly(), x, y));
        double atHigh = turn * (turn > 0 ? slope(to, to.lx(), to.ly(), x, y) : slope(to, to.rx(), to.ry(), x, y));
        if (atHigh > 0) {
            return known;
        }
        int kept = 0;
        for (int i = 0; i < MOST_STEPS && high - low > FINE; i++) {
            double where =
                    i % 4 == 3 || !(atLow > atHigh) ? (low + high) / 2 : low + atLow * (high - low) / (atLow - atHigh);
            where = Math.clamp(where, low + (high - low) * 1e-3, high - (high - low) * 1e-3);
            double ux = from.ux() + where * (to.ux() - from.ux());
            double uy = from.uy() + where * (to.uy() - from.uy());
            part.touch(ux, uy);
            double there = turn * ((part.tx - x) * uy - (part.ty - y) * ux);
            if (Math.abs(there) < 1e-15) {
                low = where;
                high = where;
            } else if (there > 0) {
                low = where;
                atLow = there;
                atHigh = kept > 0 ? atHigh / 2 : atHigh;
                kept = 1;
            } else {
                high = where;
                atHigh = there;
                atLow = kept < 0 ? atLow / 2 : atLow;
                kept = -1;
            }
        }
        double middle = (low + high) / 2;
        double ux = from.ux() + middle * (to.ux() - from.ux());
        double uy = from.uy() + middle * (to.uy() - from.uy());
        double size = Math.sqrt(ux * ux + uy * uy);
        double found = (ux * x + uy * y - part.reach(ux, uy)) / size;
        if (found < known) {
            return known;
        }
        way[0] = ux / size;
        way[1] = uy / size;
        return found;
    }

    private static double slope(Shade.Node node, double tx, double ty, double x, double y) {
        return (tx - x) * node.uy() - (ty - y) * node.ux();
    }
}
