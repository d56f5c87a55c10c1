package plumeline.trace;

import java.util.Arrays;
import plumeline.trace.sums.Draws;
import plumeline.trace.sums.Pairs;

/// Opaque places that rays met, gathered so that the light on them is worked out together: the same sums for many
/// places in a row are several times as fast as one by one. For one thread.
///
/// What each place gives rests on the place alone, not on what was gathered with it.
final class Gathered {
    /// Stands for a drop where a part's coat is asked.
    static final int DROP = -1;

    /// Places that are tried give as much as all but for so little, share of one.
    private static final double EVEN = 0.02;

    private final Ready ready;
    private final Falling falling;
    private final Lamps lamps;
    private final Draws draws = new Draws();
    private int count;
    private int[] slots = new int[0];
    private int[] coats = new int[0];
    private State[] states = new State[0];
    private long[] keys = new long[0];
    private int[] indices = new int[0];
    private int[] turned = new int[0];
    private final Pairs pairs = new Pairs();
    private final Rows rows = new Rows();
    private final Bending.Passing passing = cosine -> passes(coat(), cosine);
    private final double[] place = new double[6];
    private final double[] bent = new double[3];
    private final Scope scope;
    private final Beam ways = new Beam();
    private int coat;

    /// Whether any place has a coat that light passes more or less by its angle.
    private boolean isCoated;

    Gathered(Ready ready) {
        this.ready = ready;
        falling = new Falling(ready);
        lamps = ready.lamps;
        scope = ready.scope();
    }

    private void grow() {
        int room = Math.max(64, 2 * count);
        slots = Arrays.copyOf(slots, room);
        coats = Arrays.copyOf(coats, room);
        states = Arrays.copyOf(states, room);
        for (int i = count; i < room; i++) {
            states[i] = new State();
        }
        keys = Arrays.copyOf(keys, room);
        indices = Arrays.copyOf(indices, room);
        turned = Arrays.copyOf(turned, room);
        pairs.grow(room);
        rows.grow(room);
    }

    /// Takes a place.
    ///
    /// @param slot what takes its light
    /// @param coat the part whose coat it is, or a drop
    /// @param red what its light counts, likewise green and blue
    void add(
            int slot,
            int coat,
            Hit at,
            double nx,
            double ny,
            double nz,
            double red,
            double green,
            double blue,
            State in,
            Draws drawn) {
        if (count == slots.length) {
            grow();
        }
        int k = count++;
        isCoated |= coat == DROP || ready.coats.mirrors(coat);
        slots[k] = slot;
        coats[k] = coat;
        states[k].set(in.within, in.medium);
        keys[k] = drawn.fork();
        indices[k] = drawn.ray();
        turned[k] = Integer.reverse(drawn.ray());
        rows.px[k] = at.x;
        rows.py[k] = at.y;
        rows.pz[k] = at.z;
        rows.nx[k] = nx;
        rows.ny[k] = ny;
        rows.nz[k] = nz;
        rows.red[k] = red;
        rows.green[k] = green;
        rows.blue[k] = blue;
    }

    int count() {
        return count;
    }

    /// Adds the light of all places to their slots, three numbers each, and forgets them.
    void settle(double[] light) {
        if (count == 0) {
            return;
        }
        Arrays.fill(rows.sumRed, 0, count, 0);
        Arrays.fill(rows.sumGreen, 0, count, 0);
        Arrays.fill(rows.sumBlue, 0, count, 0);
        ways.from(rows, count);
        for (int i = 0; i < lamps.count(); i++) {
            aim(i);
            if (!ready.mayMeet(scope, ways, rows, count, i)) {
                comeFreely(i);
                continue;
            }
            noteFree(i);
            for (int k = 0; k < count; k++) {
                if (falling.bending.isPresent() && isBent(falling.bending.get(), i, k)) {
                    continue;
                }
                if (rows.all[k] > 0) {
                    come(i, k);
                }
            }
        }
        boolean isAround = falling.around.shines();
        for (int k = 0; k < count; k++) {
            if (isAround) {
                around(k);
            }
            int at = 3 * slots[k];
            light[at] += rows.red[k] * rows.sumRed[k];
            light[at + 1] += rows.green[k] * rows.sumGreen[k];
            light[at + 2] += rows.blue[k] * rows.sumBlue[k];
        }
        count = 0;
        isCoated = false;
    }

    /// Works out what falls with nothing between, and the way to a chosen place of a light.
    private void aim(int light) {
        if (lamps.isPlain(light)) {
            aimInRows(light);
            return;
        }
        for (int k = 0; k < count; k++) {
            all(light, k);
            rows.over[k] = 0;
            if (rows.all[k] > 0) {
                choose(light, k);
            } else {
                rows.all[k] = 0;
            }
        }
    }

    private void all(int light, int k) {
        rows.all[k] = falling.all(light, rows.px[k], rows.py[k], rows.pz[k], rows.nx[k], rows.ny[k], rows.nz[k]);
    }

    private void choose(int light, int k) {
        draws.resume(keys[k], light, indices[k]);
        if (!falling.choose(light, rows, k, draws)) {
            rows.all[k] = 0;
        }
    }

    private void aimInRows(int light) {
        lamps.lux(light, rows, count);
        boolean isPicked = draw(light);
        if (isPicked) {
            rows.keepMiddle(count);
            rows.aimMiddle(count);
            lamps.move(light, rows, count);
        }
        rows.aim(count);
        for (int k = 0; k < count; k++) {
            boolean isCut = rows.least[k] < 0 || rows.widest[k] < 0;
            if (!(rows.most[k] > 0 && rows.z[k] > 0)) {
                rows.all[k] = 0;
            } else if (isCut) {
                all(light, k);
            }
            rows.over[k] = isPicked && !staysInMiddle(k) ? rows.picks.gives[k] - rows.all[k] : 0;
            if (isCut && rows.all[k] > 0 && lamps.isTube(light)) {
                choose(light, k);
            } else if (isPicked && !(rows.picks.gives[k] > 0)) {
                rows.all[k] = 0;
            }
        }
    }

    /// Notes from where the middle of a light is surely free: opaque parts are tried one by one elsewhere only.
    private void noteFree(int light) {
        if (lamps.isPlain(light) && keys[0] != Draws.MIDDLE && !scope.hasBasin) {
            rows.swap();
            ready.mayStop(scope, rows, count);
            System.arraycopy(rows.near, 0, rows.free, 0, count);
            rows.swap();
        } else {
            Arrays.fill(rows.free, 0, count, -1);
        }
        ready.mayStop(scope, rows, count);
    }

    private boolean staysInMiddle(int k) {
        return keys[k] == Draws.MIDDLE && isMiddleSeen(k);
    }

    /// Picks places of a light; where all is drawn from the middle, that where it is seen.
    ///
    /// @return whether any other than the middle is picked
    private boolean draw(int light) {
        Picks picks = rows.picks;
        boolean isMiddle = keys[0] == Draws.MIDDLE;
        boolean isAny = !isMiddle;
        for (int k = 0; isMiddle && k < count; k++) {
            isAny |= rows.most[k] > 0 && rows.z[k] > 0 && !isMiddleSeen(k);
        }
        if (!isAny) {
            return false;
        }
        if (isMiddle) {
            Arrays.fill(picks.across, 0, count, 0.5);
            Arrays.fill(picks.up, 0, count, 0.5);
            Arrays.fill(picks.chance, 0, count, 0.5);
        } else {
            pairs.draw(count, keys, light, turned, picks.across, picks.up, picks.chance);
        }
        picks.pick(count, lamps.even(light), rows);
        for (int k = 0; isMiddle && k < count; k++) {
            if (isMiddleSeen(k)) {
                picks.across[k] = 0.5;
                picks.up[k] = 0.5;
            }
        }
        return true;
    }

    private boolean isMiddleSeen(int k) {
        return rows.least[k] + rows.most[k] > 0;
    }

    /// Adds what a basin bends, where it may.
    private boolean isBent(Bending bending, int light, int k) {
        boolean isInside = bending.isInside(rows.px[k], rows.py[k], rows.pz[k], states[k]);
        if (!isInside && (rows.cross[k] > 0 || !(rows.all[k] > 0))) {
            return false;
        }
        bending.begins(rows.px[k], rows.py[k], rows.pz[k], rows.nx[k], rows.ny[k], rows.nz[k], states[k]);
        coat = coats[k];
        if (isInside && !bending.isWithin(light)) {
            bent[0] = 0;
            bent[1] = 0;
            bent[2] = 0;
            draws.resume(keys[k], light, indices[k]);
            bending.fall(light, passing, draws, bent);
            add(k, 1, bent[0], bent[1], bent[2]);
            return true;
        }
        if (!(rows.all[k] > 0)) {
            return true;
        }
        double far = rows.far[k] + Rows.BEFORE_METRES;
        place[0] = rows.px[k] + far * rows.dx[k];
        place[1] = rows.py[k] + far * rows.dy[k];
        place[2] = rows.pz[k] + far * rows.dz[k];
        if (!bending.mayCross(place)) {
            return false;
        }
        lamps.face(light, place);
        boolean comes =
                keys[k] == Draws.MIDDLE ? bending.comesInHaste(light, place) : bending.comesAcross(light, place);
        double[] through = falling.shadows.through;
        come(light, k, comes ? through[0] : 0, comes ? through[1] : 0, comes ? through[2] : 0);
        return true;
    }

    /// Adds what comes through to a place. One place of a light was chosen of some; where these give more in the mean
    /// than all of it does, what of it is hidden would count for too little or too much. So what they give over all
    /// is added as far as what is hidden differs from whether the light's middle is: nothing where all or none is,
    /// and right in the mean elsewhere.
    private void come(int light, int k, double red, double green, double blue) {
        double all = rows.all[k];
        double over = Math.abs(rows.over[k]) > EVEN * all ? rows.over[k] : 0;
        double free = over != 0 && (rows.free[k] > 0 || falling.isFree(light, scope, rows, k)) ? 1 : 0;
        double passes = passes(coats[k], rows.dx[k] * rows.nx[k] + rows.dy[k] * rows.ny[k] + rows.dz[k] * rows.nz[k]);
        rows.sumRed[k] += lamps.colour(light, 0) * (passes * (all * red + over * (red - free)));
        rows.sumGreen[k] += lamps.colour(light, 1) * (passes * (all * green + over * (green - free)));
        rows.sumBlue[k] += lamps.colour(light, 2) * (passes * (all * blue + over * (blue - free)));
    }

    private void add(int k, double all, double red, double green, double blue) {
        rows.sumRed[k] += all * red;
        rows.sumGreen[k] += all * green;
        rows.sumBlue[k] += all * blue;
    }

    private void come(int light, int k) {
        State in = states[k];
        double x = rows.dx[k];
        double y = rows.dy[k];
        double z = rows.dz[k];
        if (!(rows.near[k] > 0)
                && ready.stops(scope, rows.px[k], rows.py[k], rows.pz[k], x, y, z, rows.far[k], falling.scratch)) {
            come(light, k, 0, 0, 0);
        } else if (rows.cross[k] > 0) {
            come(light, k, 1, 1, 1);
        } else {
            Shadows shadows = falling.shadows;
            shadows.dim(rows.px[k], rows.py[k], rows.pz[k], x, y, z, rows.far[k], in.within, in.medium);
            come(light, k, shadows.through[0], shadows.through[1], shadows.through[2]);
        }
    }

    /// Adds what comes to places to which nothing can stand in the way.
    private void comeFreely(int light) {
        for (int k = 0; isCoated && k < count; k++) {
            if (coats[k] == DROP || ready.coats.mirrors(coats[k])) {
                rows.all[k] *=
                        passes(coats[k], rows.dx[k] * rows.nx[k] + rows.dy[k] * rows.ny[k] + rows.dz[k] * rows.nz[k]);
            }
        }
        rows.addAll(count, lamps.colour(light, 0), rows.sumRed);
        rows.addAll(count, lamps.colour(light, 1), rows.sumGreen);
        rows.addAll(count, lamps.colour(light, 2), rows.sumBlue);
    }

    private int coat() {
        return coat;
    }

    private double passes(int coat, double cosine) {
        return coat == DROP ? ready.coats.dropPasses(cosine) : ready.coats.passed(coat, cosine);
    }

    private void around(int k) {
        draws.resume(keys[k], lamps.count(), indices[k]);
        falling.around(rows, k, coats[k], states[k], draws);
        double[] comes = falling.around.comes;
        add(k, Math.PI, comes[0], comes[1], comes[2]);
    }
}
