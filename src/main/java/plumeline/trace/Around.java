package plumeline.trace;

import plumeline.trace.sums.Draws;

/// The light of an even surround that comes to a place by a way. For one thread.
///
/// A way that ends in the surround brings the surround. One that is stopped by an opaque place goes on from there, by
/// the place's paint to any side or mirrored, [#MOST_STOPS] times at most; what then is still on its way is taken to
/// come of the surround unhindered. So among bodies that take nothing all is as bright as the surround, however they
/// stand; and in a room that is shut, sending back `r`, as much as `r` to the power of `MOST_STOPS` of the surround
/// comes from nowhere. A picture of one ray a pixel follows a way to its first stop only: there it is `r`.
///
/// What clear faces mirror brings as much from elsewhere as it takes, so that only what substances and clouds take is
/// lost; in a substance the surround is as much brighter as its index's square. Ways run straight through clear faces.
final class Around {
    static final int MOST_STOPS = 4;

    /// What came by the last way: luminance a channel, cd/m².
    final double[] comes = new double[3];

    private final Ready ready;
    private final Shadows shadows;
    private final Hit hit = new Hit();
    private final double[] way = new double[3];
    private final double[] colour = new double[4];

    Around(Ready ready, Shadows shadows) {
        this.ready = ready;
        this.shadows = shadows;
    }

    /// Whether there is any.
    boolean shines() {
        return ready.surround[0] + ready.surround[1] + ready.surround[2] > 0;
    }

    /// Follows a way that leaves a place, each as likely as the cosine of its angle and what the coat lets through.
    ///
    /// @param part whose coat it is; −1 for none
    void leave(
            double px,
            double py,
            double pz,
            double nx,
            double ny,
            double nz,
            int part,
            int within,
            int medium,
            Draws draws) {
        draws.next();
        turn(nx, ny, nz, part < 0 ? draws.u() : ready.coats.spread(part, draws.u()), draws.v());
        follow(px, py, pz, way[0], way[1], way[2], part, within, medium, draws);
    }

    /// Follows a way.
    ///
    /// @param part whose coat it leaves; −1 for none
    void follow(
            double px,
            double py,
            double pz,
            double dx,
            double dy,
            double dz,
            int part,
            int within,
            int medium,
            Draws draws) {
        boolean isLabelsBack = part >= 0 && part == within;
        double index = isLabelsBack ? 1 : ready.media.index(medium);
        for (int i = 0; i < 3; i++) {
            comes[i] = ready.surround[i] * index * index;
        }
        way[0] = dx;
        way[1] = dy;
        way[2] = dz;
        double x = px;
        double y = py;
        double z = pz;
        int in = within;
        int substance = medium;
        int most = draws.isMiddle() ? 1 : MOST_STOPS;
        for (int stops = 1; ready.stops(x, y, z, way[0], way[1], way[2], Double.POSITIVE_INFINITY, hit); stops++) {
            ready.opaqueNearest(x, y, z, way[0], way[1], way[2], hit);
            lose(x, y, z, hit.t, in, substance);
            if (hit.what == Hit.NOTHING || !(stops < most ? goesOn(draws) : ends())) {
                return;
            }
            x = hit.x;
            y = hit.y;
            z = hit.z;
            in = shadows.within;
            substance = shadows.medium;
        }
        lose(x, y, z, Double.POSITIVE_INFINITY, in, substance);
    }

    private void lose(double x, double y, double z, double far, int within, int medium) {
        shadows.take(x, y, z, way[0], way[1], way[2], far, within, medium);
        for (int i = 0; i < 3; i++) {
            comes[i] *= shadows.through[i];
        }
    }

    /// Notes what an opaque place sends back evenly.
    ///
    /// @return what it mirrors
    private double meet() {
        double on = on();
        double mirrored = ready.coats.mirrored(hit.index, Math.min(1, Math.abs(on)));
        ready.coats.colour(hit.index, hit, on, colour);
        if (on > 0 && ready.isClear(hit.index)) {
            weaken(ready.coats.wallIndex(hit.index));
        }
        return mirrored;
    }

    /// Over 0 where a place is met from behind.
    private double on() {
        return way[0] * hit.nx + way[1] * hit.ny + way[2] * hit.nz;
    }

    /// Ends a way at an opaque place: what comes there is the surround.
    ///
    /// @return false
    private boolean ends() {
        double mirrored = meet();
        for (int i = 0; i < 3; i++) {
            comes[i] *= mirrored + (1 - mirrored) * colour[i];
        }
        return false;
    }

    /// Sends a way on from an opaque place.
    ///
    /// @param draws choose whereto
    /// @return whether anything still comes
    private boolean goesOn(Draws draws) {
        double mirrored = meet();
        double on = on();
        double side = on > 0 ? -1 : 1;
        if (mirrored > 0 && isBelow(mirrored, draws)) {
            way[0] -= 2 * on * hit.nx;
            way[1] -= 2 * on * hit.ny;
            way[2] -= 2 * on * hit.nz;
            return true;
        }
        for (int i = 0; i < 3; i++) {
            comes[i] *= colour[i];
        }
        draws.next();
        double spread = ready.coats.spread(hit.index, draws.u());
        turn(side * hit.nx, side * hit.ny, side * hit.nz, spread, draws.v());
        return comes[0] + comes[1] + comes[2] > 0;
    }

    /// A label's back is told as it looks in the wall that it sticks to.
    private void weaken(double index) {
        for (int i = 0; i < 3; i++) {
            colour[i] /= index * index;
        }
    }

    private static boolean isBelow(double share, Draws draws) {
        draws.next();
        return draws.u() < share;
    }

    /// Turns the way to an angle from straight on, and round.
    ///
    /// @param square of the angle's sine
    /// @param round turns
    private void turn(double nx, double ny, double nz, double square, double round) {
        double out = Math.sqrt(square);
        double angle = 2 * Math.PI * round;
        double cosine = Math.sqrt(1 - square);
        double sign = nz >= 0 ? 1 : -1;
        double a = -1 / (sign + nz);
        double b = nx * ny * a;
        double u = out * Math.cos(angle);
        double v = out * Math.sin(angle);
        way[0] = u * (1 + sign * nx * nx * a) + v * b + cosine * nx;
        way[1] = u * sign * b + v * (sign + ny * ny * a) + cosine * ny;
        way[2] = -u * sign * nx - v * ny + cosine * nz;
    }
}
