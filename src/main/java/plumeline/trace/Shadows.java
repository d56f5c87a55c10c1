package plumeline.trace;

import plumeline.trace.sums.Splits;

/// What of light comes along a straight way: nothing past what is opaque; less by each clear surface (Fresnel), by what
/// clear substances take, and by clouds. Light isn't bent on such a way: bright and dark lines that glass throws, and
/// how water moves a lamp, are left out. For one thread.
final class Shadows {
    private static final int MOST_SURFACES = 48;

    /// What came through by the last way, shares of one a channel.
    final double[] through = new double[3];

    /// The clear part that the last way ended in, or −1.
    int within;

    /// The substance that it ended in.
    int medium;

    private final Ready ready;
    private final Hit hit = new Hit();
    private final double[] span = new double[2];
    private final Nearest all;
    private final Nearest pastBasin;

    Shadows(Ready ready) {
        this.ready = ready;
        all = ready::clearNearest;
        pastBasin = ready::partsNearest;
    }

    /// Follows a way.
    ///
    /// @param far how far it goes, m; may be endless
    /// @param within the clear part it begins in, or −1
    /// @param medium the substance it begins in
    /// @return whether anything comes through
    boolean passes(
            double ox, double oy, double oz, double dx, double dy, double dz, double far, int within, int medium) {
        if (ready.stops(ox, oy, oz, dx, dy, dz, far, hit)) {
            return false;
        }
        dim(ox, oy, oz, dx, dy, dz, far, within, medium);
        return true;
    }

    /// Works out what comes through along a way on which nothing opaque lies.
    void dim(double ox, double oy, double oz, double dx, double dy, double dz, double far, int within, int medium) {
        start(within, medium);
        if (ready.hasClear()) {
            cross(ox, oy, oz, dx, dy, dz, far, all, Faces.MIRROR);
        }
    }

    /// Likewise, but what clear faces mirror isn't lost.
    void take(double ox, double oy, double oz, double dx, double dy, double dz, double far, int within, int medium) {
        start(within, medium);
        if (ready.hasClear()) {
            cross(ox, oy, oz, dx, dy, dz, far, all, Faces.PASS_ALL);
        }
    }

    private void start(int from, int substance) {
        through[0] = 1;
        through[1] = 1;
        through[2] = 1;
        within = from;
        medium = substance;
    }

    /// Follows a piece of a way that a basin bends: what comes through becomes less by it. The basin's own surfaces
    /// don't count.
    boolean goesOn(
            double ox, double oy, double oz, double dx, double dy, double dz, double far, int within, int medium) {
        if (far <= Meets.NEAR_METRES) {
            return true;
        }
        if (ready.stops(ox, oy, oz, dx, dy, dz, far, hit)) {
            return false;
        }
        this.within = within;
        this.medium = medium;
        cross(ox, oy, oz, dx, dy, dz, far, pastBasin, Faces.MIRROR);
        return true;
    }

    private void veil(double ox, double oy, double oz, double dx, double dy, double dz, double far) {
        for (Fog fog : ready.fogs) {
            double thick = fog.thickness(ox, oy, oz, dx, dy, dz, far, span);
            for (int i = 0; thick > 0 && i < 3; i++) {
                through[i] *= Math.exp(-fog.takes(i) * thick);
            }
        }
    }

    /// What clear faces do to light that crosses them.
    private enum Faces {
        /// They mirror some away.
        MIRROR,
        /// As much comes back from elsewhere.
        PASS_ALL
    }

    /// Finds the first clear surface.
    private interface Nearest {
        void find(double ox, double oy, double oz, double dx, double dy, double dz, int within, Hit hit);
    }

    private void cross(
            double ox,
            double oy,
            double oz,
            double dx,
            double dy,
            double dz,
            double far,
            Nearest nearest,
            Faces faces) {
        double x = ox;
        double y = oy;
        double z = oz;
        double left = far;
        for (int i = 0; i < MOST_SURFACES; i++) {
            hit.clear(left);
            nearest.find(x, y, z, dx, dy, dz, within, hit);
            if (ready.takesLight(medium)) {
                takeUpTo(x, y, z, dx, dy, dz);
            }
            if (hit.what == Hit.NOTHING) {
                return;
            }
            ready.place(x, y, z, dx, dy, dz, hit);
            double cosine = dx * hit.nx + dy * hit.ny + dz * hit.nz;
            int inner = ready.inner(hit);
            int outer = ready.outer(hit);
            if (faces == Faces.MIRROR) {
                lose(Math.min(1, Math.abs(cosine)), ready.media.index(inner), ready.media.index(outer));
            }
            medium = cosine < 0 ? inner : outer;
            within = cosine < 0 ? ready.innerPart(hit) : ready.outerPart(hit);
            x = hit.x;
            y = hit.y;
            z = hit.z;
            left -= hit.t;
        }
    }

    /// Takes what the substance takes on the way to what is met, and clouds where they can be.
    private void takeUpTo(double x, double y, double z, double dx, double dy, double dz) {
        for (int channel = 0; channel < 3; channel++) {
            through[channel] *= ready.media.left(medium, channel, hit.t);
        }
        if (ready.mayHoldInk(within, medium)) {
            veil(x, y, z, dx, dy, dz, hit.t);
        }
    }

    /// The angle is taken as the one in the thinner substance.
    private void lose(double cosine, double one, double other) {
        if (one != other) {
            double passes = 1 - Splits.mirrored(cosine, Math.min(one, other), Math.max(one, other));
            through[0] *= passes;
            through[1] *= passes;
            through[2] *= passes;
        }
    }
}
