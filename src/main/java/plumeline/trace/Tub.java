package plumeline.trace;

import java.util.Arrays;
import java.util.Optional;
import plumeline.geom.Bounds;
import plumeline.geom.Vec;
import plumeline.scenery.Basin;

/// A basin's surfaces: its panes from outside, from inside, and its water.
final class Tub {
    private final Case outer;
    private final Case inner;
    private final double middleX;
    private final double middleY;
    private final double middleZ;
    private final double square;
    private final double level;
    private final boolean isWet;

    Tub(Basin basin) {
        inner = new Case(basin.inside(), Optional.empty());
        outer = new Case(basin.outside(), Optional.of(inner));
        Vec low = basin.outside().low();
        Vec high = basin.outside().high();
        middleX = (low.x() + high.x()) / 2;
        middleY = (low.y() + high.y()) / 2;
        middleZ = (low.z() + high.z()) / 2;
        double radius = low.distanceMetres(high) / 2 * (1 + 1e-9);
        square = radius * radius;
        level = basin.waterLineMetres();
        isWet = level > basin.inside().low().z();
    }

    /// The corners of the box that its panes are.
    double[] corners() {
        return Shapes.corners(new double[] {outer.lowX, outer.lowY, outer.lowZ, outer.highX, outer.highY, outer.highZ});
    }

    void meets(double ox, double oy, double oz, double dx, double dy, double dz, Hit hit) {
        double x = middleX - ox;
        double y = middleY - oy;
        double z = middleZ - oz;
        double on = x * dx + y * dy + z * dz;
        double away = x * x + y * y + z * z - square;
        if (away > on * on || (away > 0 && on < 0)) {
            return;
        }
        // Adding 0 makes 0 of −0, so that a wall beside a ray lies endlessly far on its right side.
        double overX = 1 / (dx + 0.0);
        double overY = 1 / (dy + 0.0);
        double overZ = 1 / (dz + 0.0);
        if (outer.meets(Hit.OUTER, ox, oy, oz, dx, dy, dz, overX, overY, overZ, hit)) {
            inner.meets(Hit.INNER, ox, oy, oz, dx, dy, dz, overX, overY, overZ, hit);
            if (isWet && level < inner.highZ) {
                surface(ox, oy, oz, dx, dy, overZ, hit);
            }
        }
    }

    /// Likewise for a ray that begins in a pane.
    void meetsFromPane(double ox, double oy, double oz, double dx, double dy, double dz, Hit hit) {
        double overX = 1 / (dx + 0.0);
        double overY = 1 / (dy + 0.0);
        double overZ = 1 / (dz + 0.0);
        outer.leaves(Hit.OUTER, ox, oy, oz, dx, dy, dz, overX, overY, overZ, hit);
        inner.meets(Hit.INNER, ox, oy, oz, dx, dy, dz, overX, overY, overZ, hit);
    }

    /// Likewise for a ray that begins in the water.
    void meetsFromWater(double ox, double oy, double oz, double dx, double dy, double dz, Hit hit) {
        double overX = 1 / (dx + 0.0);
        double overY = 1 / (dy + 0.0);
        double overZ = 1 / (dz + 0.0);
        inner.leaves(Hit.INNER, ox, oy, oz, dx, dy, dz, overX, overY, overZ, hit);
        if (dz > 0 && level < inner.highZ) {
            surface(ox, oy, oz, dx, dy, overZ, hit);
        }
    }

    private void surface(double ox, double oy, double oz, double dx, double dy, double overZ, Hit hit) {
        double t = (level - oz) * overZ;
        if (t > Meets.NEAR_METRES && t < hit.t && inner.isOver(ox + t * dx, oy + t * dy)) {
            hit.t = t;
            hit.what = Hit.WATER;
            hit.face(0, 0, 1);
        }
    }

    /// An upright box of which the top is open, or open over the opening of another.
    private static final class Case {
        private final double lowX;
        private final double lowY;
        private final double lowZ;
        private final double highX;
        private final double highY;
        private final double highZ;
        private final Case opening;

        Case(Bounds bounds, Optional<Case> opening) {
            lowX = bounds.low().x();
            lowY = bounds.low().y();
            lowZ = bounds.low().z();
            highX = bounds.high().x();
            highY = bounds.high().y();
            highZ = bounds.high().z();
            this.opening = opening.orElse(this);
        }

        boolean isOver(double x, double y) {
            return x > lowX && x < highX && y > lowY && y < highY;
        }

        boolean holds(double x, double y, double z) {
            return isOver(x, y) && z > lowZ && z < highZ;
        }

        /// Tries it.
        ///
        /// @return whether the ray comes into it before `hit.t`
        boolean meets(
                int what,
                double ox,
                double oy,
                double oz,
                double dx,
                double dy,
                double dz,
                double overX,
                double overY,
                double overZ,
                Hit hit) {
            double x1 = ((dx >= 0 ? lowX : highX) - ox) * overX;
            double y1 = ((dy >= 0 ? lowY : highY) - oy) * overY;
            double z1 = ((dz >= 0 ? lowZ : highZ) - oz) * overZ;
            double from = Math.max(x1, Math.max(y1, z1));
            if (from > hit.t) {
                return false;
            }
            double x2 = ((dx >= 0 ? highX : lowX) - ox) * overX;
            double y2 = ((dy >= 0 ? highY : lowY) - oy) * overY;
            double z2 = ((dz >= 0 ? highZ : lowZ) - oz) * overZ;
            double to = Math.min(x2, Math.min(y2, z2));
            if (!(from <= to && to > 0)) {
                return false;
            }
            boolean isMet = from > Meets.NEAR_METRES
                    && met(from, from == z1 ? 2 : from == y1 ? 1 : 0, 1, what, ox, oy, dx, dy, dz, hit);
            if (!isMet && to > Meets.NEAR_METRES && to < hit.t) {
                met(to, to == z2 ? 2 : to == y2 ? 1 : 0, -1, what, ox, oy, dx, dy, dz, hit);
            }
            return true;
        }

        /// Tries where a ray from within leaves it.
        void leaves(
                int what,
                double ox,
                double oy,
                double oz,
                double dx,
                double dy,
                double dz,
                double overX,
                double overY,
                double overZ,
                Hit hit) {
            double x = ((dx >= 0 ? highX : lowX) - ox) * overX;
            double y = ((dy >= 0 ? highY : lowY) - oy) * overY;
            double z = ((dz >= 0 ? highZ : lowZ) - oz) * overZ;
            double to = Math.min(x, Math.min(y, z));
            if (to > Meets.NEAR_METRES && to < hit.t) {
                met(to, to == z ? 2 : to == y ? 1 : 0, -1, what, ox, oy, dx, dy, dz, hit);
            }
        }

        private boolean met(
                double t,
                int axis,
                int against,
                int what,
                double ox,
                double oy,
                double dx,
                double dy,
                double dz,
                Hit hit) {
            if (axis == 2 && dz * against < 0 && opening.isOver(ox + t * dx, oy + t * dy)) {
                return false;
            }
            if (axis == 2 && dz * against < 0 && opening == this) {
                return false;
            }
            hit.t = t;
            hit.what = what;
            double d = axis == 0 ? dx : axis == 1 ? dy : dz;
            double side = d * against > 0 ? -1 : 1;
            hit.face(axis == 0 ? side : 0, axis == 1 ? side : 0, axis == 2 ? side : 0);
            return true;
        }
    }

    /// Whether any of a bundle of ways may.
    boolean mayLieIn(Beam ways) {
        return !ways.missesBall(middleX, middleY, middleZ, Math.sqrt(square));
    }

    /// Notes which of many ways don't come near it.
    void mayCross(Rows rows, int count) {
        Arrays.fill(rows.from, 0, count, 0);
        System.arraycopy(rows.far, 0, rows.to, 0, count);
        Ways.slab(count, outer.lowX, outer.highX, rows.px, rows.dx, rows.from, rows.to);
        Ways.slab(count, outer.lowY, outer.highY, rows.py, rows.dy, rows.from, rows.to);
        Ways.slab(count, outer.lowZ, outer.highZ, rows.pz, rows.dz, rows.from, rows.to);
        Ways.beside(count, 0, rows.from, rows.to, rows.cross);
    }

    /// Whether a ball comes into it.
    boolean isNear(double x, double y, double z, double radius) {
        double outX = Math.max(0, Math.max(outer.lowX - x, x - outer.highX));
        double outY = Math.max(0, Math.max(outer.lowY - y, y - outer.highY));
        double outZ = Math.max(0, Math.max(outer.lowZ - z, z - outer.highZ));
        return outX * outX + outY * outY + outZ * outZ <= radius * radius;
    }

    /// Whether a plane cuts it, or lies on it.
    boolean isCut(double nx, double ny, double nz, double far) {
        double halfX = (outer.highX - outer.lowX) / 2;
        double halfY = (outer.highY - outer.lowY) / 2;
        double halfZ = (outer.highZ - outer.lowZ) / 2;
        double reach = Math.abs(nx) * halfX + Math.abs(ny) * halfY + Math.abs(nz) * halfZ;
        return Math.abs(nx * middleX + ny * middleY + nz * middleZ - far) <= reach + 1e-9;
    }

    /// Whether what is inside is water at a height.
    boolean isWaterAt(double z) {
        return isWet && z < level;
    }

    boolean isInside(double x, double y, double z) {
        return inner.holds(x, y, z);
    }

    boolean isWithin(double x, double y, double z) {
        return outer.holds(x, y, z);
    }
}
