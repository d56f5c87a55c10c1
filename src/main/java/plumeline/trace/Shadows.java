package plumeline.trace;

/// What of light comes along a straight way: nothing past what is opaque; less by each clear surface (Fresnel), by what
/// clear substances take, and by clouds. Light isn't bent on such a way: bright and dark lines that glass throws, and
/// how water moves a lamp, are left out. For one thread.
final class Shadows {
    private static final int MOST_SURFACES = 48;

    /// What came through by the last way, shares of one a channel.
    final double[] through = new double[3];

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
        through[0] = 1;
        through[1] = 1;
        through[2] = 1;
        if (ready.hasClear()) {
            cross(ox, oy, oz, dx, dy, dz, far, within, medium, all);
            veil(ox, oy, oz, dx, dy, dz, far);
        }
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
        cross(ox, oy, oz, dx, dy, dz, far, within, medium, pastBasin);
        veil(ox, oy, oz, dx, dy, dz, far);
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
            int within,
            int medium,
            Nearest nearest) {
        double x = ox;
        double y = oy;
        double z = oz;
        double left = far;
        int in = within;
        int substance = medium;
        for (int i = 0; i < MOST_SURFACES; i++) {
            hit.clear(left);
            nearest.find(x, y, z, dx, dy, dz, in, hit);
            boolean isLast = hit.what == Hit.NOTHING;
            if (ready.media.takesLight(substance)) {
                for (int channel = 0; channel < 3; channel++) {
                    through[channel] *= ready.media.left(substance, channel, hit.t);
                }
            }
            if (isLast) {
                return;
            }
            ready.place(x, y, z, dx, dy, dz, hit);
            double cosine = dx * hit.nx + dy * hit.ny + dz * hit.nz;
            int inner = ready.inner(hit);
            int outer = ready.outer(hit);
            lose(Math.min(1, Math.abs(cosine)), ready.media.index(inner), ready.media.index(outer));
            substance = cosine < 0 ? inner : outer;
            in = cosine < 0 ? ready.innerPart(hit) : ready.outerPart(hit);
            x = hit.x;
            y = hit.y;
            z = hit.z;
            left -= hit.t;
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
