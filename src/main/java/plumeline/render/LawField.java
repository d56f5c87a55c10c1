package plumeline.render;

import java.util.Optional;
import plumeline.geom.Bounds;
import plumeline.geom.Vec;
import plumeline.stage.PlumePlace;

/// A smooth field of ink that goes by a law's front: a head at the front, and behind it what is still on its way from
/// the nozzle (docs/derivations/cloud.md).
///
/// All ink that was let go by then is in it, none before. On the floor the head stays as wide as the law has it and
/// takes up what still comes: how ink spreads along a floor isn't in the law.
///
/// @param place the plume under its nozzle
/// @param front its front by the law
/// @param poured how the ink comes
record LawField(PlumePlace place, FrontTable front, Poured poured) {
    private static final int ACROSS = 48;
    private static final int HIGH = 64;

    /// The stem ends so many half heights over the front: hidden in the head's upper quarter.
    private static final double HEAD_ABOVE = 1.5;

    /// Edges go from whole to nothing within this share of the half-width to either side.
    private static final double EDGE = 0.1;

    /// Stem and head hold this much of neat ink at most, each: where they overlap no more than all.
    private static final double MOST_SHARE = 0.45;

    private static final double LEAST_METRES = 1e-3;

    /// How ink comes out of the nozzle.
    ///
    /// @param metres3 all of it
    /// @param seconds how long it flows, > 0
    /// @param frontShare the front's speed over that of the ink behind it
    /// @param mixing whether what is behind the front mixes with water, or stays a thread
    record Poured(double metres3, double seconds, double frontShare, Mixing mixing) {
        /// What has come so long after the first.
        double metres3(double after) {
            return metres3 * Math.clamp(after / seconds, 0, 1);
        }

        double metres3PerSecond() {
            return metres3 / seconds;
        }
    }

    /// Whether ink mixes with water behind its front.
    enum Mixing {
        /// As wide as the law has its front there.
        PLUME,
        /// As thin as it flows.
        THREAD
    }

    /// A head: an ellipsoid whose lowest point is the front.
    ///
    /// @param middleMetres its middle's depth
    /// @param halfHeightMetres half its height
    /// @param halfWidthMetres half its width
    private record Head(double middleMetres, double halfHeightMetres, double halfWidthMetres) {
        double topMetres() {
            return middleMetres - halfHeightMetres;
        }
    }

    /// Gives the ink at a time.
    ///
    /// @param seconds from the first ink that leaves the nozzle
    /// @return the field; empty while no ink is in the water
    Optional<Field> at(double seconds) {
        double after = seconds - front.startSeconds();
        double ink = poured.metres3(after);
        if (!(ink > 0) || !front.isKnown()) {
            return Optional.empty();
        }
        double low = Math.max(front.depthMetres(seconds), front.startMetres() + LEAST_METRES);
        double wide = front.radiusMetres(low);
        double half = Math.min(wide, (low - front.startMetres()) / 2);
        double stemTop = front.depthMetres(front.startSeconds() + (after - poured.seconds()) / poured.frontShare());
        return Optional.of(new Filling(new Head(low - half, half, wide), stemTop, ink).field());
    }

    /// From when on nothing changes: the last ink has come to where the front ends.
    double stillSeconds() {
        double end = front.seconds(front.endMetres());
        return Math.max(end, poured.seconds() + front.startSeconds() + poured.frontShare() * end);
    }

    /// What is on its way between two depths: ink that left the nozzle `τ` ago is where the front was `τ / s` after it.
    private double stemMetres3(double fromMetres, double toMetres) {
        return toMetres <= fromMetres
                ? 0
                : poured.metres3PerSecond()
                        * poured.frontShare()
                        * (front.seconds(toMetres) - front.seconds(fromMetres));
    }

    /// Whole inside, nothing outside, smooth between; its half where the half-width is.
    ///
    /// @param ratio distance over half-width
    private static double inside(double ratio) {
        double x = Math.clamp((1 + EDGE - ratio) / (2 * EDGE), 0, 1);
        return x * x * (3 - 2 * x);
    }

    /// One field being filled.
    private final class Filling {
        private final double stemTop;
        private final double stemEnd;
        private final double highMetres;
        private final double dz;
        private final double[] inLayer = new double[HIGH];
        private final double inHead;
        private final Head head;
        private final Bounds box;
        private final double dx;
        private final double dy;
        private final float[] shares = new float[ACROSS * ACROSS * HIGH];

        Filling(Head law, double stemTop, double ink) {
            this.stemTop = stemTop;
            stemEnd = law.middleMetres() + (1 - HEAD_ABOVE) * law.halfHeightMetres();
            double over = law.topMetres() - 2 * EDGE * law.halfHeightMetres();
            highMetres = Math.max(0, Math.min(stemTop, over));
            double low = law.middleMetres() + (1 + 2 * EDGE) * law.halfHeightMetres();
            dz = (Math.min(place.floorMetres(), low) - highMetres) / HIGH;
            double inStem = 0;
            for (int k = 0; k < HIGH; k++) {
                inLayer[k] = inLayer(k, law.halfWidthMetres());
                inStem += inLayer[k];
            }
            inHead = ink - inStem;
            double least = Math.sqrt(inHead / (MOST_SHARE * 4 / 3 * Math.PI * law.halfHeightMetres()));
            head = new Head(law.middleMetres(), law.halfHeightMetres(), Math.max(law.halfWidthMetres(), least));
            box = box((1 + 2 * EDGE) * Math.max(head.halfWidthMetres(), widestStem()));
            dx = (box.high().x() - box.low().x()) / ACROSS;
            dy = (box.high().y() - box.low().y()) / ACROSS;
        }

        /// What of the stem is in a layer: no more than it holds there; the rest has run into the head.
        private double inLayer(int k, double headMetres) {
            double from = Math.max(depth(k + 1.0), stemTop);
            double to = Math.min(depth(k), stemEnd);
            double widest = poured.mixing() == Mixing.PLUME ? front.radiusMetres(depth(k + 0.5)) : headMetres;
            double round = round(k);
            return round
                    * round
                    * Math.min(stemMetres3(from, to), MOST_SHARE * Math.PI * widest * widest * Math.max(0, to - from));
        }

        /// How wide the stem still is in a layer: where the last ink has left the nozzle its upper end is half a ball,
        /// and what that leaves out has run into the head.
        private double round(int k) {
            if (poured.mixing() == Mixing.THREAD || stemTop <= front.startMetres()) {
                return 1;
            }
            double under = (depth(k + 0.5) - stemTop) / Math.max(front.radiusMetres(stemTop), dz);
            return Math.sqrt(1 - Math.pow(1 - Math.clamp(under, 0, 1), 2));
        }

        private double widestStem() {
            double widest = 0;
            for (int k = 0; k < HIGH; k++) {
                widest = Math.max(widest, inLayer[k] > 0 ? stemRadiusMetres(k) : 0);
            }
            return widest;
        }

        /// A thread is as thin as it flows.
        private double stemRadiusMetres(int k) {
            return poured.mixing() == Mixing.PLUME
                    ? round(k) * front.radiusMetres(depth(k + 0.5))
                    : Math.sqrt(inLayer[k] / (MOST_SHARE * Math.PI * dz));
        }

        private Bounds box(double wide) {
            Bounds in = place.walls().inside();
            Vec mouth = place.mouth();
            double surface = place.walls().waterLineMetres();
            return new Bounds(
                    new Vec(
                            Math.max(in.low().x(), mouth.x() - wide),
                            Math.max(in.low().y(), mouth.y() - wide),
                            surface - highMetres - HIGH * dz),
                    new Vec(
                            Math.min(in.high().x(), mouth.x() + wide),
                            Math.min(in.high().y(), mouth.y() + wide),
                            surface - highMetres));
        }

        Field field() {
            fillHead();
            for (int k = 0; k < HIGH; k++) {
                if (inLayer[k] > 0) {
                    fillStem(k);
                }
            }
            return new Field(box, ACROSS, ACROSS, HIGH, shares);
        }

        /// The depth so many layers over the lowest edge.
        private double depth(double layers) {
            return highMetres + (HIGH - layers) * dz;
        }

        private void fillHead() {
            float[] weights = new float[shares.length];
            double sum = 0;
            for (int k = 0; k < HIGH; k++) {
                double up = (depth(k + 0.5) - head.middleMetres()) / Math.max(head.halfHeightMetres(), dz);
                for (int n = 0; n < ACROSS * ACROSS; n++) {
                    double weight = inside(Math.hypot(up, asideMetres(n) / head.halfWidthMetres()));
                    weights[k * ACROSS * ACROSS + n] = (float) weight;
                    sum += weight;
                }
            }
            double share = inHead / (sum * dx * dy * dz);
            for (int n = 0; n < shares.length; n++) {
                shares[n] += (float) (share * weights[n]);
            }
        }

        /// How far a cell of a layer is from the nozzle's axis.
        private double asideMetres(int n) {
            double x = box.low().x() + (n % ACROSS + 0.5) * dx - place.mouth().x();
            int row = n / ACROSS;
            double y = box.low().y() + (row + 0.5) * dy - place.mouth().y();
            return Math.hypot(x, y);
        }

        /// One layer of what is on its way; no narrower than a cell.
        private void fillStem(int k) {
            double radius = Math.max(stemRadiusMetres(k), Math.max(dx, dy));
            double sum = 0;
            for (int n = 0; n < ACROSS * ACROSS; n++) {
                sum += inside(asideMetres(n) / radius);
            }
            double share = inLayer[k] / (sum * dx * dy * dz);
            for (int n = 0; n < ACROSS * ACROSS; n++) {
                shares[k * ACROSS * ACROSS + n] += (float) (share * inside(asideMetres(n) / radius));
            }
        }
    }
}
