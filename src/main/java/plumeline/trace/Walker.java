package plumeline.trace;

import java.util.Arrays;
import java.util.Optional;
import plumeline.geom.Aim;
import plumeline.geom.Vec;
import plumeline.trace.sums.Draws;
import plumeline.trace.sums.Splits;

/// Follows rays from a camera through a world and sums the light that comes back along them. For one thread: nothing
/// is made on the way.
///
/// At a clear surface both what is mirrored and what passes is followed; along what passes, luminance changes by
/// `(n₁/n₂)²` (conservation of étendue).
final class Walker {
    /// A ray that counts less than this is let go.
    private static final double CUT = 1.0 / 255;

    private static final int MOST_MIRRORS = 8;
    private static final int MOST_SURFACES = 32;

    private final double[] light = new double[3];

    private final Ready ready;
    private final Gathered straight;
    private final Gathered mirrored;
    private final Hit hit = new Hit();
    private final double[] colour = new double[4];
    private final double[] weight = new double[3];
    private final double[] span = new double[2];
    private final double[] facet = new double[3];
    private final Ray[] rays = new Ray[MOST_MIRRORS + 2];
    private final double[] eye = new double[12];
    private final State eyeState;
    private final Scope all;
    private final Scope block;
    private final Frustum frustum;
    private final double halfX;
    private final double halfY;
    private final double pupil;
    private final double focus;
    private int part;
    private int slot;

    /// @param before one of the same world, which is asked in turn with this one: both gather together
    Walker(Ready ready, Eye camera, Optional<Walker> before) {
        this.ready = ready;
        Optional<Walker> mate = before.filter(other -> other.ready == ready);
        straight = mate.map(other -> other.straight).orElseGet(() -> new Gathered(ready));
        mirrored = mate.map(other -> other.mirrored).orElseGet(() -> new Gathered(ready));
        Arrays.setAll(rays, Ray::new);
        Aim.Frame frame = camera.aim().frame();
        put(0, camera.aim().eye());
        put(3, frame.right());
        put(6, frame.up());
        put(9, frame.forward());
        halfX = camera.widthTangent() / 2;
        halfY = camera.heightTangent() / 2;
        pupil = camera.pupilMetres();
        focus = camera.focusMetres();
        eyeState = State.at(ready, eye[0], eye[1], eye[2]);
        all = ready.whole();
        block = ready.scope();
        frustum = new Frustum(eye, pupil, focus);
    }

    /// Begins a block of pixels: the rays that follow all go through it.
    void begin(Exposing.Tile tile, Plate plate) {
        if (eyeState.medium != Media.AIR || eyeState.within >= 0) {
            all.copyTo(block);
            return;
        }
        double wide = 2 * halfX / plate.width();
        double high = 2 * halfY / plate.height();
        frustum.over(
                tile.left() * wide - halfX,
                (tile.left() + tile.width()) * wide - halfX,
                halfY - (tile.top() + tile.height()) * high,
                halfY - tile.top() * high);
        ready.take(block, frustum);
    }

    private void put(int from, Vec vec) {
        eye[from] = vec.x();
        eye[from + 1] = vec.y();
        eye[from + 2] = vec.z();
    }

    /// Follows a ray of a pixel; the light that falls where it goes is still to be settled.
    ///
    /// @param column pixels from the left
    /// @param row pixels from the top
    /// @param into takes its light, cd/m², three numbers a slot
    void expose(int column, int row, Plate plate, Draws draws, int slot, double[] into) {
        this.slot = slot;
        draws.next();
        double x = (2 * (column + draws.u()) / plate.width() - 1) * halfX;
        double y = (1 - 2 * (row + draws.v()) / plate.height()) * halfY;
        double lensX = 0;
        double lensY = 0;
        if (pupil > 0 && !draws.isMiddle()) {
            draws.next();
            double out = pupil * Math.sqrt(draws.u());
            lensX = out * Math.cos(2 * Math.PI * draws.v());
            lensY = out * Math.sin(2 * Math.PI * draws.v());
        }
        double right = x * focus - lensX;
        double up = y * focus - lensY;
        double dx = right * eye[3] + up * eye[6] + focus * eye[9];
        double dy = right * eye[4] + up * eye[7] + focus * eye[10];
        double dz = right * eye[5] + up * eye[8] + focus * eye[11];
        double over = 1 / Math.sqrt(dx * dx + dy * dy + dz * dz);
        light[0] = 0;
        light[1] = 0;
        light[2] = 0;
        Ray ray = rays[0];
        ray.x = eye[0] + lensX * eye[3] + lensY * eye[6];
        ray.y = eye[1] + lensX * eye[4] + lensY * eye[7];
        ray.z = eye[2] + lensX * eye[5] + lensY * eye[8];
        ray.turn(dx * over, dy * over, dz * over);
        ray.red = 1;
        ray.green = 1;
        ray.blue = 1;
        ray.mirrors = 0;
        ray.in.set(eyeState.within, eyeState.medium);
        follow(ray, draws);
        into[3 * slot] = light[0];
        into[3 * slot + 1] = light[1];
        into[3 * slot + 2] = light[2];
    }

    /// Tells whether it gathers with another.
    boolean isWith(Walker other) {
        return straight == other.straight;
    }

    /// How many places wait to be settled.
    int waiting() {
        return Math.max(straight.count(), mirrored.count());
    }

    /// Adds the light that falls where the rays went since.
    void settle(double[] into) {
        straight.settle(into);
        mirrored.settle(into);
    }

    private void follow(Ray ray, Draws draws) {
        for (int surfaces = 0; surfaces < MOST_SURFACES; surfaces++) {
            ready.nearest(
                    surfaces == 0 && ray.level == 0 ? block : all,
                    ray.x,
                    ray.y,
                    ray.z,
                    ray.dx,
                    ray.dy,
                    ray.dz,
                    ray.in,
                    hit);
            if (ready.takesLight(ray.in.medium)) {
                lose(ray, draws);
            }
            if (hit.what == Hit.NOTHING) {
                double[] around = ready.surround;
                add(ray.red * around[0], ray.green * around[1], ray.blue * around[2]);
                return;
            }
            if (hit.what == Hit.LIGHT) {
                shine(ray);
                return;
            }
            ray.x = hit.x;
            ray.y = hit.y;
            ray.z = hit.z;
            if (!(ready.isOpaque(hit) ? isMirrored(ray, draws) : goesOn(ray, draws))) {
                return;
            }
        }
        rest(ray, 1, ready.media.index(ray.in.medium));
    }

    /// What isn't followed further is taken to come of the surround, as much brighter in a substance as its index's
    /// square: an even world is even in glass too.
    private void rest(Ray ray, double share, double index) {
        double[] around = ready.surround;
        double bright = share * index * index;
        add(bright * ray.red * around[0], bright * ray.green * around[1], bright * ray.blue * around[2]);
    }

    private void add(double r, double g, double b) {
        light[0] += r;
        light[1] += g;
        light[2] += b;
    }

    private void shine(Ray ray) {
        Lamps lamps = ready.lamps;
        double share = lamps.share(hit, ray.dx, ray.dy, ray.dz);
        add(
                ray.red * share * lamps.colour(hit.index, 0),
                ray.green * share * lamps.colour(hit.index, 1),
                ray.blue * share * lamps.colour(hit.index, 2));
    }

    /// Takes what the substance and clouds take on the way to what is met; adds what clouds scatter.
    private void lose(Ray ray, Draws draws) {
        weight[0] = ray.red;
        weight[1] = ray.green;
        weight[2] = ray.blue;
        boolean mayHoldInk = ready.mayHoldInk(ray.in.within, ray.in.medium);
        for (Fog fog : ready.fogs) {
            draws.next();
            if (!mayHoldInk) {
                continue;
            }
            fog.follow(ray.x, ray.y, ray.z, ray.dx, ray.dy, ray.dz, hit.t, draws.u(), span, weight, light);
        }
        for (int i = 0; i < 3; i++) {
            weight[i] *= ready.media.left(ray.in.medium, i, hit.t);
        }
        ray.red = weight[0];
        ray.green = weight[1];
        ray.blue = weight[2];
    }

    /// Lets a ray part at a clear surface: what is mirrored is followed to its end, what passes becomes the ray.
    ///
    /// @return whether it goes on
    private boolean goesOn(Ray ray, Draws draws) {
        double outX = hit.nx;
        double outY = hit.ny;
        double outZ = hit.nz;
        double cosine = -(ray.dx * outX + ray.dy * outY + ray.dz * outZ);
        boolean comesIn = cosine > 0;
        int inner = ready.inner(hit);
        int outer = ready.outer(hit);
        int next = comesIn ? inner : outer;
        int within = comesIn ? ready.innerPart(hit) : ready.outerPart(hit);
        double from = ready.media.index(comesIn ? outer : inner);
        double to = ready.media.index(next);
        if (from == to) {
            ray.in.set(within, next);
            return true;
        }
        boolean isDrop = outer == Media.AIR && isOnDrop(ray, comesIn);
        double nx = isDrop ? facet[0] : outX;
        double ny = isDrop ? facet[1] : outY;
        double nz = isDrop ? facet[2] : outZ;
        cosine = isDrop ? -(ray.dx * nx + ray.dy * ny + ray.dz * nz) : cosine;
        double straight = Math.min(1, Math.abs(cosine));
        double ratio = from / to;
        double behind = 1 - ratio * ratio * (1 - straight * straight);
        double bent = Math.sqrt(Math.max(0, behind));
        double share = behind > 0 ? Splits.mirrored(straight, from, bent, to) : 1;
        double mirrorX = ray.dx + 2 * cosine * nx;
        double mirrorY = ray.dy + 2 * cosine * ny;
        double mirrorZ = ray.dz + 2 * cosine * nz;
        if (share >= 1) {
            ray.turn(mirrorX, mirrorY, mirrorZ);
            if (isDrop) {
                keepSide(ray, comesIn ? 1 : -1, outX, outY, outZ);
            }
            if (++ray.mirrors > MOST_MIRRORS) {
                rest(ray, 1, from);
                return false;
            }
            return true;
        }
        if (share * ray.counts() >= CUT && ray.mirrors < MOST_MIRRORS) {
            Ray parted = rays[ray.level + 1];
            parted.part(ray, share, mirrorX, mirrorY, mirrorZ);
            if (isDrop) {
                keepSide(parted, comesIn ? 1 : -1, outX, outY, outZ);
            }
            follow(parted, draws);
        } else {
            rest(ray, share, from);
        }
        double along = comesIn ? ratio * straight - bent : bent - ratio * straight;
        ray.turn(ratio * ray.dx + along * nx, ratio * ray.dy + along * ny, ratio * ray.dz + along * nz);
        if (isDrop) {
            keepSide(ray, comesIn ? -1 : 1, outX, outY, outZ);
        }
        ray.dim((1 - share) * ratio * ratio);
        ray.in.set(within, next);
        if (ray.counts() < CUT) {
            rest(ray, 1, to);
            return false;
        }
        return true;
    }

    /// Whether a drop sits where a ray meets a clear part's outside; then the facet is its.
    private boolean isOnDrop(Ray ray, boolean comesIn) {
        if (hit.what != Hit.PART || ready.coats.drops(hit.index).isEmpty()) {
            return false;
        }
        part = hit.index;
        facet[0] = hit.nx;
        facet[1] = hit.ny;
        facet[2] = hit.nz;
        return turnToDrop(1) && ray.dx * facet[0] + ray.dy * facet[1] + ray.dz * facet[2] < 0 == comesIn;
    }

    /// Keeps what a drop turned to the wrong side of the surface under it on the right one.
    ///
    /// @param side over 0 for the outer one
    private static void keepSide(Ray ray, int side, double nx, double ny, double nz) {
        double out = ray.dx * nx + ray.dy * ny + ray.dz * nz;
        if (out * side < 0) {
            ray.turn(ray.dx - 2 * out * nx, ray.dy - 2 * out * ny, ray.dz - 2 * out * nz);
        }
    }

    /// Lets a ray meet an opaque place: what it sends back evenly is added, what it mirrors becomes the ray.
    ///
    /// @return whether it goes on
    private boolean isMirrored(Ray ray, Draws draws) {
        double share = opaque(ray, draws);
        ray.turn(facet[0], facet[1], facet[2]);
        ray.dim(share);
        boolean goesOn = share > 0 && ray.counts() >= CUT && ray.mirrors++ < MOST_MIRRORS;
        if (share > 0 && !goesOn) {
            rest(ray, 1, ready.media.index(ray.in.medium));
        }
        return goesOn;
    }

    /// Adds what an opaque place sends back evenly, and tells where it mirrors to.
    ///
    /// @return the share that is mirrored; its way is in `facet`
    private double opaque(Ray ray, Draws draws) {
        double dx = ray.dx;
        double dy = ray.dy;
        double dz = ray.dz;
        Coats coats = ready.coats;
        part = hit.index;
        double cosine = -(dx * hit.nx + dy * hit.ny + dz * hit.nz);
        double side = cosine < 0 ? -1 : 1;
        double nx = side * hit.nx;
        double ny = side * hit.ny;
        double nz = side * hit.nz;
        facet[0] = nx;
        facet[1] = ny;
        facet[2] = nz;
        boolean isDrop = coats.drops(part).isPresent() && (side > 0 || !ready.isClear(part)) && turnToDrop(side);
        if (!isDrop && coats.kind(part) == Coats.SATIN) {
            turnToFacet(dx, dy, dz, draws);
        }
        double onFacet = -(dx * facet[0] + dy * facet[1] + dz * facet[2]);
        if (!(onFacet > 0)) {
            facet[0] = nx;
            facet[1] = ny;
            facet[2] = nz;
            onFacet = side * cosine;
        }
        onFacet = Math.min(1, onFacet);
        double share = isDrop ? coats.dropMirrors(onFacet) : coats.mirrored(part, onFacet);
        coats.colour(part, hit, -cosine, colour);
        double even = (1 - share) / Math.PI;
        double r = ray.red * even * colour[0];
        double g = ray.green * even * colour[1];
        double b = ray.blue * even * colour[2];
        if (r + g + b > 0) {
            Gathered gathered = ray.mirrors == 0 ? straight : mirrored;
            gathered.add(slot, isDrop ? Gathered.DROP : part, hit, nx, ny, nz, r, g, b, ray.in, draws);
        }
        if (share > 0) {
            mirror(dx, dy, dz, onFacet, nx, ny, nz);
        }
        return share;
    }

    /// Turns the facet to where light goes from it. What would go into the surface goes out from another facet.
    private void mirror(double dx, double dy, double dz, double onFacet, double nx, double ny, double nz) {
        double x = dx + 2 * onFacet * facet[0];
        double y = dy + 2 * onFacet * facet[1];
        double z = dz + 2 * onFacet * facet[2];
        double out = x * nx + y * ny + z * nz;
        double back = out < 0 ? -2 * out : 0;
        facet[0] = x + back * nx;
        facet[1] = y + back * ny;
        facet[2] = z + back * nz;
    }

    private boolean turnToDrop(double side) {
        double[] frames = ready.shapes.frames();
        int f = Shapes.FRAME * part + 3;
        double x = facet[0];
        double y = facet[1];
        double z = facet[2];
        for (int i = 0; i < 3; i++) {
            facet[i] = side * (x * frames[f + 3 * i] + y * frames[f + 3 * i + 1] + z * frames[f + 3 * i + 2]);
        }
        boolean isDrop = ready.coats.drops(part).orElseThrow().turn(hit.ownX, hit.ownY, hit.ownZ, facet);
        x = side * facet[0];
        y = side * facet[1];
        z = side * facet[2];
        for (int i = 0; i < 3; i++) {
            facet[i] = x * frames[f + i] + y * frames[f + 3 + i] + z * frames[f + 6 + i];
        }
        return isDrop;
    }

    /// Chooses a facet by its slope; one that is turned away is tilted the other way.
    private void turnToFacet(double dx, double dy, double dz, Draws draws) {
        draws.next();
        if (draws.isMiddle()) {
            return;
        }
        double slope = ready.coats.slope(part) * Math.sqrt(-Math.log(1 - draws.u()));
        double u = slope * Math.cos(2 * Math.PI * draws.v());
        double v = slope * Math.sin(2 * Math.PI * draws.v());
        double nx = facet[0];
        double ny = facet[1];
        double nz = facet[2];
        double sign = nz >= 0 ? 1 : -1;
        double a = -1 / (sign + nz);
        double b = nx * ny * a;
        double x = u * (1 + sign * nx * nx * a) + v * b;
        double y = u * sign * b + v * (sign + ny * ny * a);
        double z = -u * sign * nx - v * ny;
        double tilt = dx * (nx + x) + dy * (ny + y) + dz * (nz + z) < 0 ? 1 : -1;
        double over = 1 / Math.sqrt(1 + slope * slope);
        facet[0] = (nx + tilt * x) * over;
        facet[1] = (ny + tilt * y) * over;
        facet[2] = (nz + tilt * z) * over;
    }
}
