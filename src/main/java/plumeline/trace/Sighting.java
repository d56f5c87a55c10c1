package plumeline.trace;

import plumeline.geom.Vec;

/// Follows sight to the first part, bent by a basin's panes and water. For one thread.
final class Sighting {
    private static final int NOTHING = -1;
    private static final int FIRST_LIGHT = -2;
    private static final int MOST_SURFACES = 32;

    private final Ready ready;
    private final Hit hit = new Hit();
    private double x;
    private double y;
    private double z;
    private double dx;
    private double dy;
    private double dz;
    private double way;
    private final State state = new State();

    Sighting(Ready ready) {
        this.ready = ready;
    }

    Tracer.Seen seen(Vec from, Vec toward) {
        x = from.x();
        y = from.y();
        z = from.z();
        dx = toward.x();
        dy = toward.y();
        dz = toward.z();
        State start = State.at(ready, x, y, z);
        state.set(start.within, start.medium);
        int part = follow();
        double wayMetres = part == NOTHING ? Double.POSITIVE_INFINITY : way;
        int mirrored = NOTHING;
        if (part >= 0 && mirrors(part)) {
            mirror();
            mirrored = follow();
        }
        return new Tracer.Seen(part, mirrored, wayMetres);
    }

    /// A label on a clear part mirrors nothing.
    private boolean mirrors(int part) {
        return ready.isClear(part) ? !ready.isOpaque(hit) : ready.coats.mirrors(part);
    }

    private void mirror() {
        double twice = 2 * (dx * hit.nx + dy * hit.ny + dz * hit.nz);
        dx -= twice * hit.nx;
        dy -= twice * hit.ny;
        dz -= twice * hit.nz;
    }

    private int follow() {
        for (int i = 0; i < MOST_SURFACES; i++) {
            ready.nearest(ready.whole(), x, y, z, dx, dy, dz, state, hit);
            way += hit.t;
            x = hit.x;
            y = hit.y;
            z = hit.z;
            switch (hit.what) {
                case Hit.NOTHING -> {
                    return NOTHING;
                }
                case Hit.LIGHT -> {
                    return FIRST_LIGHT - hit.index;
                }
                case Hit.PART, Hit.ROOM, Hit.LEVEL -> {
                    return hit.index;
                }
                default -> bend();
            }
        }
        return NOTHING;
    }

    private void bend() {
        double cosine = -(dx * hit.nx + dy * hit.ny + dz * hit.nz);
        int inner = ready.inner(hit);
        int outer = ready.outer(hit);
        double from = ready.media.index(cosine > 0 ? outer : inner);
        double to = ready.media.index(cosine > 0 ? inner : outer);
        double ratio = from / to;
        double straight = Math.abs(cosine);
        double square = 1 - ratio * ratio * (1 - straight * straight);
        if (square < 0) {
            mirror();
            return;
        }
        double along = cosine > 0 ? ratio * straight - Math.sqrt(square) : Math.sqrt(square) - ratio * straight;
        dx = ratio * dx + along * hit.nx;
        dy = ratio * dy + along * hit.ny;
        dz = ratio * dz + along * hit.nz;
        state.set(NOTHING, cosine > 0 ? inner : outer);
    }
}
