package plumeline.geom;

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

    private static final double[] MIDDLES = {Math.PI, 0, -Math.PI / 2, Math.PI / 2};

    private final Shade[] hiders;
    private final Shade[] hidden;
    private final double[] sides = {Sides.NO_LIMIT, Sides.NO_LIMIT, Sides.NO_LIMIT, Sides.NO_LIMIT};
    private final double[] way = new double[2];
    private Shade own;
    private int ownHider;

    private Veil(Shade[] hidden, Shade[] hiders) {
        this.hidden = hidden;
        this.hiders = hiders;
        own = hidden[0];
    }

    static Sides of(List<Seen> hidden, List<Seen> hiders) {
        if (hiders.isEmpty()) {
            return new Sides(-Sides.NO_LIMIT, -Sides.NO_LIMIT, -Sides.NO_LIMIT, -Sides.NO_LIMIT);
        }
        Veil veil = new Veil(Shades.of(hidden), Shades.of(hiders));
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
            double d = Math.sqrt(0.5);
            for (int i = 0; i < 4; i++) {
                double ux = i % 2 == 0 ? -d : d;
                double uy = i < 2 ? -d : d;
                double spare = hider.reach(ux, uy) - part.reach(ux, uy);
                least(i % 2, spare);
                least(i < 2 ? 2 : 3, spare);
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
            for (int i = 0; i < hiders.length; i++) {
                ownHider = i;
                Contacts.each(hiders[i], part, this);
            }
            boolean sticksOut = corners(corners);
            sticksOut |= around();
            if (sticksOut && hiders.length > 2) {
                amidThree(corners);
            }
        }
    }

    @Override
    public void take(double ux, double uy, double spare, double kx, double ky) {
        if (spare >= 0) {
            for (int i = 0; i < hiders.length; i++) {
                if (i != ownHider && hiders[i].holds(kx + spare * ux, ky + spare * uy, COVERED)) {
                    return;
                }
            }
        } else {
            for (int i = 0; i < hiders.length; i++) {
                if (i != ownHider
                        && (hiders[i].holds(kx, ky, 0)
                                || Contacts.distance(hiders[i], kx, ky, way) < -spare - COVERED)) {
                    return;
                }
            }
        }
        offer(spare, ux, uy, ux, uy);
    }

    /// Offers a candidate to the sides that the directions from u to v touch.
    private void offer(double value, double ux, double uy, double vx, double vy) {
        double from = Math.atan2(uy, ux);
        double turn = Math.atan2(ux * vy - uy * vx, ux * vx + uy * vy);
        if (Math.abs(turn) > 0.95 * Math.PI) {
            offer(value, ux, uy, ux, uy);
            offer(value, vx, vy, vx, vy);
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
            double beyond = fromUnion(px, py);
            if (beyond > 0) {
                offer(-beyond, corners.ux[i], corners.uy[i], corners.vx[i], corners.vy[i]);
            }
        }
        return sticksOut;
    }

    /// Distance of a point from the union, 0 or less inside.
    private double fromUnion(double x, double y) {
        double least = Double.POSITIVE_INFINITY;
        for (Shade hider : hiders) {
            least = Math.min(least, Contacts.distance(hider, x, y, way));
        }
        return least;
    }

    private int nearest(double x, double y) {
        int best = 0;
        double least = Double.POSITIVE_INFINITY;
        for (int i = 0; i < hiders.length; i++) {
            double there = Contacts.distance(hiders[i], x, y, way);
            if (there < least) {
                least = there;
                best = i;
            }
        }
        return best;
    }

    /// Walks round the hidden part where it isn't plainly covered, for points equally far from two hiders; whether it
    /// sticks out anywhere.
    private boolean around() {
        boolean sticksOut = false;
        for (Shade.Run run : own.runs) {
            int pieces = run.isSide() ? 1 : Math.max(1, (int) Math.ceil((run.to() - run.from()) / (Math.PI / 10)));
            double at = run.isSide() ? 0 : run.from();
            double step = run.isSide() ? 1 : (run.to() - run.from()) / pieces;
            long covers = covers(run, at);
            for (int i = 0; i < pieces; i++) {
                double next = at + step;
                long nextCovers = covers(run, next);
                if ((covers & nextCovers) == 0) {
                    sticksOut |= covers == 0;
                    sticksOut |= between(run, at, nearest(run, at), next, nearest(run, next), 0);
                }
                at = next;
                covers = nextCovers;
            }
        }
        return sticksOut;
    }

    /// Which hiders cover a place of the hidden outline, a bit for each of the first 64.
    private long covers(Shade.Run run, double where) {
        own.at(run, where);
        double x = own.tx;
        double y = own.ty;
        long bits = 0;
        for (int i = 0; i < Math.min(64, hiders.length); i++) {
            bits |= hiders[i].holds(x, y, 0) ? 1L << i : 0;
        }
        return bits;
    }

    private int nearest(Shade.Run run, double where) {
        own.at(run, where);
        return nearest(own.tx, own.ty);
    }

    /// Looks for a place equally far from two hiders where the nearest one changes; whether it isn't covered.
    private boolean between(Shade.Run run, double from, int fromNearest, double to, int toNearest, int depth) {
        if (fromNearest == toNearest) {
            return false;
        }
        Shade one = hiders[fromNearest];
        Shade other = hiders[toNearest];
        double low = from;
        double high = to;
        double atLow = lead(run, low, one, other);
        double atHigh = lead(run, high, one, other);
        int kept = 0;
        for (int i = 0; i < 50 && high - low > 1e-14 * Math.max(1, Math.abs(low)); i++) {
            double where =
                    i % 4 == 3 || !(atHigh > atLow) ? (low + high) / 2 : low - atLow * (high - low) / (atHigh - atLow);
            where = Math.clamp(where, low, high);
            double there = lead(run, where, one, other);
            if (Math.abs(there) < 1e-14) {
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
        if (nearest == fromNearest || nearest == toNearest || fromUnion(x, y) >= beyond - COVERED) {
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

    /// By how much a place is nearer to the one than to the other.
    private double lead(Shade.Run run, double where, Shade one, Shade other) {
        own.at(run, where);
        double x = own.tx;
        double y = own.ty;
        return Contacts.distance(one, x, y, way) - Contacts.distance(other, x, y, way);
    }

    /// Points equally far from three hiders, inside the hidden part and farther from all others: sought from the part's
    /// middle and from the inward corners that the three make.
    private void amidThree(Corners corners) {
        double cx = (own.reach(1, 0) - own.reach(-1, 0)) / 2;
        double cy = (own.reach(0, 1) - own.reach(0, -1)) / 2;
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
        double beyond = Contacts.distance(a, x, y, one);
        if (beyond > 0
                && Math.abs(Contacts.distance(b, x, y, two) - beyond) < 1e-10
                && own.holds(x, y, 0)
                && fromUnion(x, y) >= beyond - 1e-10) {
            offer(-beyond, one[0], one[1], one[0], one[1]);
            offer(-beyond, two[0], two[1], two[0], two[1]);
            Contacts.distance(c, x, y, way);
            offer(-beyond, way[0], way[1], way[0], way[1]);
        }
    }
}
