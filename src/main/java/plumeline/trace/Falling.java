package plumeline.trace;

import java.util.Arrays;
import java.util.Optional;
import plumeline.trace.sums.Draws;

/// Light that falls on a place: of each lamp what falls with nothing between, exact, by the share of it that comes
/// through to there; and the surround. For one thread.
final class Falling {
    /// What falls on a patch, lx a channel.
    final double[] lux = new double[3];

    final Shadows shadows;
    final Around around;
    final Hit scratch = new Hit();
    final Optional<Bending> bending;

    private final Ready ready;
    private final double[] corners = new double[Lamps.CORNERS];
    private final double[] tried = new double[6];
    private final double[] chosen = new double[6];
    private double weight;

    Falling(Ready ready) {
        this.ready = ready;
        shadows = new Shadows(ready);
        around = new Around(ready, shadows);
        bending = ready.basin.map(basin -> new Bending(ready, basin, shadows));
    }

    /// What falls of a light on a place with nothing between, by a luminance of 1, lx.
    double all(int light, double px, double py, double pz, double nx, double ny, double nz) {
        return ready.lamps.lux(light, px, py, pz, nx, ny, nz, corners);
    }

    /// Chooses a place of a light and aims at it; notes by how much what the places that were tried give in the mean is
    /// over what all give.
    ///
    /// @return whether any of it shines there
    boolean choose(int light, Rows rows, int k, Draws draws) {
        weight = 0;
        boolean is = choose(light, rows.px[k], rows.py[k], rows.pz[k], rows.nx[k], rows.ny[k], rows.nz[k], draws);
        rows.aim(k, chosen);
        rows.over[k] =
                weight > 0 ? weight * ready.lamps.areaTo(light, rows.px[k], rows.py[k], rows.pz[k]) - rows.all[k] : 0;
        return is;
    }

    /// Chooses a place of a light: of four in its quarters one by chance, each as likely as what it gives.
    private boolean choose(int light, double px, double py, double pz, double nx, double ny, double nz, Draws draws) {
        Lamps lamps = ready.lamps;
        draws.next();
        double one = draws.u();
        double other = draws.v();
        if (lamps.isPoint(light) || draws.isMiddle()) {
            lamps.place(light, one, other, px, py, pz, chosen);
            if (lamps.isPoint(light) || lamps.brightWeight(light, px, py, pz, nx, ny, nz, chosen) > 0) {
                return true;
            }
        }
        draws.next();
        double pick = draws.u();
        double sum = 0;
        for (int i = 0; i < 4; i++) {
            lamps.place(light, ((i & 1) + one) / 2, ((i >> 1) + other) / 2, px, py, pz, tried);
            double weight = lamps.brightWeight(light, px, py, pz, nx, ny, nz, tried);
            if (weight > 0) {
                sum += weight;
                double share = weight / sum;
                if (pick < share) {
                    System.arraycopy(tried, 0, chosen, 0, 6);
                    pick /= share;
                } else {
                    pick = (pick - share) / (1 - share);
                }
            }
        }
        weight = sum / 4;
        return sum > 0;
    }

    /// Whether nothing opaque stands before the middle of a light; so it is taken too where that is behind the place,
    /// and not where a basin stands before it.
    boolean isFree(int light, Scope scope, Rows rows, int k) {
        double px = rows.px[k];
        double py = rows.py[k];
        double pz = rows.pz[k];
        ready.lamps.place(light, 0.5, 0.5, px, py, pz, tried);
        double x = tried[0] - px;
        double y = tried[1] - py;
        double z = tried[2] - pz;
        double far = Math.sqrt(x * x + y * y + z * z);
        boolean isBehind = x * rows.nx[k] + y * rows.ny[k] + z * rows.nz[k] <= 0;
        return isBehind
                || !(bending.isPresent() && bending.get().meetsBlock(px, py, pz, tried))
                        && !ready.stops(
                                scope, px, py, pz, x / far, y / far, z / far, far - Rows.BEFORE_METRES, scratch);
    }

    /// Follows a way to the surround: straight before the place, or one by chance. What comes is in `around`.
    ///
    /// @param part whose coat it is, or −1
    void around(Rows rows, int k, int part, State in, Draws draws) {
        double nx = rows.nx[k];
        double ny = rows.ny[k];
        double nz = rows.nz[k];
        if (draws.isMiddle()) {
            around.follow(rows.px[k], rows.py[k], rows.pz[k], nx, ny, nz, part, in.within, in.medium, draws);
        } else {
            around.leave(rows.px[k], rows.py[k], rows.pz[k], nx, ny, nz, part, in.within, in.medium, draws);
        }
    }

    /// Sums the light on a patch by many ways a light.
    void fallOnPatch(
            double px, double py, double pz, double nx, double ny, double nz, State state, int samples, long seed) {
        lux[0] = 0;
        lux[1] = 0;
        lux[2] = 0;
        Draws draws = new Draws();
        Lamps lamps = ready.lamps;
        double[] sum = new double[3];
        boolean isBent = bending.isPresent() && bending.get().begins(px, py, pz, nx, ny, nz, state);
        for (int light = 0; light < lamps.count(); light++) {
            if (isBent && !bending.get().isWithin(light)) {
                fallBent(light, lamps.isPoint(light) ? 1 : samples, seed, draws);
                continue;
            }
            double all = lamps.lux(light, px, py, pz, nx, ny, nz, corners);
            if (!(all > 0)) {
                continue;
            }
            double weights = 0;
            Arrays.fill(sum, 0);
            for (int i = 0; i < samples; i++) {
                draws.begin(seed, light, i, samples);
                draws.next();
                lamps.place(light, draws.u(), draws.v(), px, py, pz, chosen);
                double weight = lamps.brightWeight(light, px, py, pz, nx, ny, nz, chosen);
                if (!(weight > 0)) {
                    continue;
                }
                weights += weight;
                if (comes(light, px, py, pz, state)) {
                    for (int channel = 0; channel < 3; channel++) {
                        sum[channel] += weight * shadows.through[channel];
                    }
                }
            }
            for (int channel = 0; weights > 0 && channel < 3; channel++) {
                lux[channel] += all * lamps.colour(light, channel) * sum[channel] / weights;
            }
        }
        addSurround(px, py, pz, nx, ny, nz, state, samples, seed);
    }

    private void fallBent(int light, int samples, long seed, Draws draws) {
        for (int i = 0; i < samples; i++) {
            draws.begin(seed, light, i, samples);
            draws.next();
            bending.orElseThrow().fall(light, draws.u(), draws.v(), ready.lamps.area(light) / samples, _ -> 1, lux);
        }
    }

    private boolean comes(int light, double px, double py, double pz, State state) {
        if (bending.isPresent() && bending.get().mayCross(chosen)) {
            return bending.get().comesAcross(light, chosen);
        }
        double x = chosen[0] - px;
        double y = chosen[1] - py;
        double z = chosen[2] - pz;
        double far = Math.sqrt(x * x + y * y + z * z);
        return shadows.passes(px, py, pz, x / far, y / far, z / far, far - 2e-6, state.within, state.medium);
    }

    private void addSurround(
            double px, double py, double pz, double nx, double ny, double nz, State state, int samples, long seed) {
        if (!around.shines()) {
            return;
        }
        Draws draws = new Draws();
        for (int i = 0; i < samples; i++) {
            draws.begin(seed, -1, i, samples);
            around.leave(px, py, pz, nx, ny, nz, -1, state.within, state.medium, draws);
            for (int channel = 0; channel < 3; channel++) {
                lux[channel] += Math.PI * around.comes[channel] / samples;
            }
        }
    }

    /// Works out the light within a cloud.
    void fill(Fog fog) {
        double[] at = new double[3];
        Lamps lamps = ready.lamps;
        for (int i = 0; i < fog.litPlaces(); i++) {
            if (!fog.isNearInk(i)) {
                continue;
            }
            fog.litPlace(i, at);
            double x = at[0];
            double y = at[1];
            double z = at[2];
            State state = State.at(ready, x, y, z);
            boolean isBent = bending.isPresent() && bending.get().begins(x, y, z, 0, 0, 0, state);
            for (int light = 0; light < lamps.count(); light++) {
                if (isBent && !bending.get().isWithin(light)) {
                    fillBent(fog, i, light);
                    continue;
                }
                double comes = lamps.around(light, x, y, z, corners);
                lamps.place(light, 0.5, 0.5, x, y, z, chosen);
                if (comes > 0 && comes(light, x, y, z, state)) {
                    for (int channel = 0; channel < 3; channel++) {
                        fog.shine(i, channel, comes * lamps.colour(light, channel) * shadows.through[channel]);
                    }
                }
            }
            fillAround(fog, i, x, y, z, state);
        }
    }

    private void fillBent(Fog fog, int index, int light) {
        Arrays.fill(lux, 0);
        Draws draws = new Draws();
        draws.begin(0, 0, 0, 1);
        bending.orElseThrow().fall(light, _ -> 1, draws, lux);
        for (int channel = 0; channel < 3; channel++) {
            fog.shine(index, channel, lux[channel]);
        }
    }

    private void fillAround(Fog fog, int index, double x, double y, double z, State state) {
        if (!around.shines()) {
            return;
        }
        Draws draws = new Draws();
        draws.begin(0, 0, 0, 1);
        for (int side = 0; side < 6; side++) {
            double sign = side < 3 ? 1 : -1;
            double dx = side % 3 == 0 ? sign : 0;
            double dy = side % 3 == 1 ? sign : 0;
            double dz = side % 3 == 2 ? sign : 0;
            around.follow(x, y, z, dx, dy, dz, -1, state.within, state.medium, draws);
            for (int channel = 0; channel < 3; channel++) {
                fog.shine(index, channel, 4 * Math.PI / 6 * around.comes[channel]);
            }
        }
    }
}
