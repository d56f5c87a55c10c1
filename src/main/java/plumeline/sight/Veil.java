package plumeline.sight;

import java.util.List;

/// By how much one outline lies inside the union of others.
///
/// Every outline is a union of convex parts. Behind a single convex part H the margin is the least of `h_H(u) − h_K(u)`
/// over all directions u, inside and outside alike, and each side the least over its quarter of directions. Behind
/// several parts the candidates are
///
/// - least spares of each pair of parts ([Contacts]): inside, they count where the hider's touching point isn't covered
///   by another part; outside, where no other part is nearer to the hidden one's;
/// - inward corners of the union, where outlines of two parts cross: inside, their distance from the hidden part;
/// - points of the hidden outline equally far from two parts: outside, their distance;
/// - points equally far from three parts: outside, the middle of a gap that the hidden part covers.
///
/// Each is a true distance of some point, none can be passed over by the least margin, and each goes smoothly through
/// zero. A candidate counts for every side that its directions touch, and less and less for sides farther round, so
/// that no side jumps where a contact turns from one to the next.
///
/// **Source:** own derivation.
final class Veil implements Contacts.Sink {
    /// Picture length by which a side that a contact doesn't point to reads more at 22.5° off.
    private static final double OFF_SIDE = 0.02;
    /// A point counts as covered if it lies deeper inside than this.
    private static final double COVERED = 1e-11;

    private static final int UNKNOWN = -1;
    private static final double[] MIDDLES = {Math.PI, 0, -Math.PI / 2, Math.PI / 2};

    private final Shade[] hiders;
    private final Shade[] hidden;
    private final double[] sides = {Sides.NO_LIMIT, Sides.NO_LIMIT, Sides.NO_LIMIT, Sides.NO_LIMIT};
    private final double[] way = new double[2];
    private final double[] bounds;
    private Shade own;
    private int ownHider;
    private double nearestDistance;
    private double leadRise;

    private Veil(Shade[] hidden, Shade[] hiders) {
        this.hidden = hidden;
        this.hiders = hiders;
        bounds = new double[hiders.length];
        own = hidden[0];
    }

    static Sides of(List<Seen> hidden, List<Seen> hiders) {
        if (hiders.isEmpty()) {
            return new Sides(-Sides.NO_LIMIT, -Sides.NO_LIMIT, -Sides.NO_LIMIT, -Sides.NO_LIMIT);
        }
        Veil veil = new Veil(Seen.shades(hidden), Seen.shades(hiders));
        if (veil.hiders.length == 1) {
            veil.behindOne();
        } else {
            veil.behindSeveral();
        }
        return new Sides(veil.sides[0], veil.sides[1], veil.sides[2], veil.sides[3]);
    }

    private void behindOne() {
        Shade hider = hiders[0];
        for (Shade part : hidden) {
            Contacts.each(hider, part, (ux, uy, spare, kx, ky) -> {
                if (Math.abs(ux) >= Math.abs(uy) - 1e-12) {
                    least(ux < 0 ? 0 : 1, spare);
                }
                if (Math.abs(uy) >= Math.abs(ux) - 1e-12) {
                    least(uy < 0 ? 2 : 3, spare);
                }
            });
            for (int i = 1; i < 8; i += 2) {
                int at = i * Nodes.EVEN / 8;
                double spare = hider.nodes.reach[at] - part.nodes.reach[at];
                least(hider.nodes.ux[at] < 0 ? 0 : 1, spare);
                least(hider.nodes.uy[at] < 0 ? 2 : 3, spare);
            }
        }
    }

    private void least(int side, double value) {
        sides[side] = Math.min(sides[side], value);
    }

    private void behindSeveral() {
        Corners corners = new Corners(hiders);
        for (Shade part : hidden) {
            own = part;
            boolean isCovered = false;
            for (int i = 0; i < hiders.length; i++) {
                ownHider = i;
                isCovered |= Contacts.each(hiders[i], part, this) > COVERED;
            }
            boolean sticksOut = corners(corners);
            sticksOut |= !isCovered && around();
            if (sticksOut && hiders.length > 2) {
                amidThree(corners);
            }
        }
    }

    @Override
    public void take(double ux, double uy, double spare, double kx, double ky) {
        if (isOfNoUse(spare)) {
            return;
        }
        for (int i = 0; i < hiders.length; i++) {
            if (i != ownHider
                    && (spare >= 0
                            ? hiders[i].holds(kx + spare * ux, ky + spare * uy, COVERED)
                            : isNearer(hiders[i], kx, ky, -spare - COVERED))) {
                return;
            }
        }
        offer(spare, ux, uy);
    }

    private boolean isNearer(Shade hider, double x, double y, double distance) {
        if (hider.holds(x, y, 0)) {
            return true;
        }
        return Contacts.distanceAtLeast(hider, x, y) < distance && Contacts.refined(hider, x, y, way) < distance;
    }

    /// Whether a candidate is no less than any side already is.
    private boolean isOfNoUse(double value) {
        return value >= sides[0] && value >= sides[1] && value >= sides[2] && value >= sides[3];
    }

    /// Offers a candidate to the sides that a direction touches.
    private void offer(double value, double ux, double uy) {
        offerAcross(0, value, -ux, uy);
        offerAcross(1, value, ux, uy);
        offerAcross(2, value, -uy, ux);
        offerAcross(3, value, uy, ux);
    }

    /// A direction at an angle a to a side's middle is `a − 45°` off its quarter; the tangent of twice that is
    /// `−cos 2a / sin 2a`.
    private void offerAcross(int side, double value, double along, double across) {
        double beyond = across * across - along * along;
        if (along > 0 && beyond <= 0) {
            least(side, value);
        } else if (along > 0) {
            double tangent = beyond / (2 * along * across);
            least(side, value + OFF_SIDE * tangent * tangent);
        }
    }

    /// Offers a candidate to the sides that the directions from u to v touch.
    private void offer(double value, double ux, double uy, double vx, double vy) {
        if (isOfNoUse(value)) {
            return;
        }
        double from = Math.atan2(uy, ux);
        double turn = Math.atan2(ux * vy - uy * vx, ux * vx + uy * vy);
        if (Math.abs(turn) > 0.95 * Math.PI) {
            offer(value, ux, uy);
            offer(value, vx, vy);
            return;
        }
        double middle = from + turn / 2;
        double half = Math.abs(turn) / 2 + Math.PI / 4;
        for (int side = 0; side < 4; side++) {
            double off = Math.abs(Math.IEEEremainder(middle - MIDDLES[side], 2 * Math.PI)) - half;
            if (off <= 0) {
                least(side, value);
            } else if (off < Math.PI / 4) {
                double tangent = Math.tan(2 * off);
                least(side, value + OFF_SIDE * tangent * tangent);
            }
        }
    }

    /// Inward corners of the union; whether the hidden part lies over one.
    private boolean corners(Corners corners) {
        boolean sticksOut = false;
        for (int i = 0; i < corners.count; i++) {
            double distance = Contacts.distance(own, corners.x[i], corners.y[i], way);
            if (distance >= 0) {
                offer(distance, corners.ux[i], corners.uy[i], corners.vx[i], corners.vy[i]);
                continue;
            }
            sticksOut = true;
            double px = corners.x[i] - distance * way[0];
            double py = corners.y[i] - distance * way[1];
            nearest(px, py);
            if (nearestDistance > 0) {
                offer(-nearestDistance, corners.ux[i], corners.uy[i], corners.vx[i], corners.vy[i]);
            }
        }
        return sticksOut;
    }

    /// The nearest hider, the first of several; its distance in `nearestDistance`.
    private int nearest(double x, double y) {
        int best = 0;
        double atLeast = Double.POSITIVE_INFINITY;
        for (int i = 0; i < hiders.length; i++) {
            bounds[i] = Contacts.distanceAtLeast(hiders[i], x, y);
            if (bounds[i] < atLeast) {
                atLeast = bounds[i];
                best = i;
            }
        }
        double least = Contacts.refined(hiders[best], x, y, way);
        int likely = best;
        for (int i = 0; i < hiders.length; i++) {
            if (i != likely && bounds[i] <= least) {
                double there = Contacts.refined(hiders[i], x, y, way);
                if (there < least || there == least && i < best) {
                    least = there;
                    best = i;
                }
            }
        }
        nearestDistance = least;
        return best;
    }

    /// Walks round the hidden part where it isn't plainly covered, for points equally far from two hiders; whether it
    /// sticks out anywhere.
    private boolean around() {
        boolean sticksOut = false;
        for (Shade.Run run : own.runs()) {
            int pieces = run.isSide() ? 1 : Math.max(1, (int) Math.ceil((run.to() - run.from()) / (Math.PI / 10)));
            double at = run.from();
            double step = (run.to() - run.from()) / pieces;
            own.at(run, at);
            double x = own.tx;
            double y = own.ty;
            long covers = covers(x, y);
            int nearest = UNKNOWN;
            for (int i = 0; i < pieces; i++) {
                double next = at + step;
                own.at(run, next);
                double nextX = own.tx;
                double nextY = own.ty;
                long nextCovers = covers(nextX, nextY);
                int nextNearest = UNKNOWN;
                if ((covers & nextCovers) == 0) {
                    sticksOut |= covers == 0;
                    nearest = nearest == UNKNOWN ? nearest(x, y, covers) : nearest;
                    nextNearest = nearest(nextX, nextY, nextCovers);
                    sticksOut |= between(run, at, nearest, next, nextNearest, 0);
                }
                at = next;
                x = nextX;
                y = nextY;
                covers = nextCovers;
                nearest = nextNearest;
            }
        }
        return sticksOut;
    }

    /// Which hiders cover a point, a bit for each of the first 64.
    private long covers(double x, double y) {
        long bits = 0;
        for (int i = 0; i < Math.min(64, hiders.length); i++) {
            bits |= hiders[i].holds(x, y, 0) ? 1L << i : 0;
        }
        return bits;
    }

    private int nearest(double x, double y, long covers) {
        return Long.bitCount(covers) == 1 && hiders.length <= 64 ? Long.numberOfTrailingZeros(covers) : nearest(x, y);
    }

    /// Looks for a place equally far from two hiders where the nearest one changes; whether it isn't covered.
    private boolean between(Shade.Run run, double from, int fromNearest, double to, int toNearest, int depth) {
        if (fromNearest == toNearest) {
            return false;
        }
        Shade one = hiders[fromNearest];
        Shade other = hiders[toNearest];
        double atFrom = lead(run, from, one, other);
        Contacts.Root root = new Contacts.Root(from, to, atFrom, lead(run, to, one, other));
        while (atFrom < 0 && root.isSought()) {
            double there = lead(run, root.at, one, other);
            root.take(there, leadRise);
        }
        double middle = atFrom < 0 ? root.at : from;
        own.at(run, middle);
        double x = own.tx;
        double y = own.ty;
        double beyond = Contacts.distance(one, x, y, way);
        double ux = way[0];
        double uy = way[1];
        Contacts.distance(other, x, y, way);
        double vx = way[0];
        double vy = way[1];
        int nearest = nearest(x, y);
        if (nearest == fromNearest || nearest == toNearest || nearestDistance >= beyond - COVERED) {
            if (beyond > 0) {
                offer(-beyond, ux, uy, vx, vy);
            }
            return beyond > 0;
        }
        if (depth > 6) {
            return false;
        }
        boolean before = between(run, from, fromNearest, middle, nearest, depth + 1);
        boolean after = between(run, middle, nearest, to, toNearest, depth + 1);
        return before || after;
    }

    /// By how much a place is nearer to the one than to the other, as a number below 0; how fast that rises along the
    /// run in `leadRise`.
    private double lead(Shade.Run run, double where, Shade one, Shade other) {
        own.at(run, where);
        double x = own.tx;
        double y = own.ty;
        double there = Contacts.distance(one, x, y, way);
        double ux = way[0];
        double uy = way[1];
        there -= Contacts.distance(other, x, y, way);
        own.along(run, where);
        leadRise = (ux - way[0]) * own.tx + (uy - way[1]) * own.ty;
        return there;
    }

    /// Points equally far from three hiders, inside the hidden part and farther from all others: sought from the part's
    /// middle and from the inward corners that the three make.
    private void amidThree(Corners corners) {
        double[] reach = own.nodes.reach;
        double cx = (reach[Nodes.EVEN / 2] - reach[0]) / 2;
        double cy = (reach[3 * Nodes.EVEN / 4] - reach[Nodes.EVEN / 4]) / 2;
        for (int i = 0; i < hiders.length; i++) {
            for (int j = i + 1; j < hiders.length; j++) {
                for (int k = j + 1; k < hiders.length; k++) {
                    amid(hiders[i], hiders[j], hiders[k], cx, cy);
                    amid(corners, 1L << i | 1L << j | 1L << k, hiders[i], hiders[j], hiders[k]);
                }
            }
        }
    }

    private void amid(Corners corners, long three, Shade a, Shade b, Shade c) {
        double sumX = 0;
        double sumY = 0;
        int n = 0;
        for (int i = 0; i < corners.count; i++) {
            if ((corners.crossing[i] & ~three) == 0) {
                amid(a, b, c, corners.x[i], corners.y[i]);
                sumX += corners.x[i];
                sumY += corners.y[i];
                n++;
            }
        }
        if (n > 1) {
            amid(a, b, c, sumX / n, sumY / n);
        }
    }

    /// Newton's steps to the point equally far from three parts: `u_i·p − r = u_i·p₀ − d_i`.
    private void amid(Shade a, Shade b, Shade c, double startX, double startY) {
        double x = startX;
        double y = startY;
        double[] one = new double[2];
        double[] two = new double[2];
        for (int step = 0; step < 20; step++) {
            double da = Contacts.distance(a, x, y, one);
            double db = Contacts.distance(b, x, y, two);
            double dc = Contacts.distance(c, x, y, way);
            double ex = one[0] - way[0];
            double ey = one[1] - way[1];
            double fx = two[0] - way[0];
            double fy = two[1] - way[1];
            double det = ex * fy - ey * fx;
            if (Math.abs(det) < 1e-9) {
                return;
            }
            double dx = ((dc - da) * fy - (dc - db) * ey) / det;
            double dy = ((dc - db) * ex - (dc - da) * fx) / det;
            double size = Math.sqrt(dx * dx + dy * dy);
            if (!(size < 10)) {
                return;
            }
            x += dx;
            y += dy;
            if (size < 1e-13) {
                break;
            }
        }
        nearest(x, y);
        double beyond = Contacts.distance(a, x, y, one);
        if (beyond > 0
                && Math.abs(Contacts.distance(b, x, y, two) - beyond) < 1e-10
                && own.holds(x, y, 0)
                && nearestDistance >= beyond - 1e-10) {
            offer(-beyond, one[0], one[1]);
            offer(-beyond, two[0], two[1]);
            Contacts.distance(c, x, y, way);
            offer(-beyond, way[0], way[1]);
        }
    }
}
