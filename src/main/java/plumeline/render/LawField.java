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

    /// The head's lowest three quarters hide where the stem ends.
    private static final double HEAD_ABOVE = 1.5;

    /// Edges go from whole to nothing within this share of the half-width to either side.
    private static final double EDGE = 0.1;

    /// Nothing holds more than neat ink; this much on the mean, so that the middle doesn't either.
    private static final double MOST_SHARE = 0.8;

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
        double deep = front.depthMetres(seconds);
        double start = front.startMetres();
        double half = Math.max(LEAST_METRES, Math.min(front.radiusMetres(deep), (deep - start) / 2));
        double low = Math.max(deep, start + LEAST_METRES);
        double stemEnd = low - HEAD_ABOVE * half;
        double stemTop = front.depthMetres(front.startSeconds() + (after - poured.seconds()) / poured.frontShare());
        double inStem = stemMetres3(stemTop, stemEnd);
        double inHead = ink - inStem;
        double wide = Math.max(
                front.radiusMetres(deep), Math.sqrt(inHead / (MOST_SHARE * 4 / 3 * Math.PI * half)));
        Head head = new Head(low - half, half, wide);
        return Optional.of(new Filling(head, stemTop, stemEnd, inHead).field());
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
        private final Head head;
        private final double stemTop;
        private final double stemEnd;
        private final double inHead;
        private final Bounds box;
        private final double dx;
        private final double dy;
        private final double dz;
        private final float[] shares = new float[ACROSS * ACROSS * HIGH];

        Filling(Head head, double stemTop, double stemEnd, double inHead) {
            this.head = head;
            this.stemTop = stemTop;
            this.stemEnd = stemEnd;
            this.inHead = inHead;
            box = box();
            Vec size = box.high().minus(box.low());
            dx = size.x() / ACROSS;
            dy = size.y() / ACROSS;
            dz = size.z() / HIGH;
        }

        private boolean hasStem() {
            return stemEnd > stemTop;
        }

        private Bounds box() {
            double stem = hasStem() ? Math.max(front.radiusMetres(stemTop), front.radiusMetres(stemEnd)) : 0;
            double wide = (1 + 2 * EDGE) * Math.max(head.halfWidthMetres(), stem);
            double over = head.topMetres() - 2 * EDGE * head.halfHeightMetres();
            double high = Math.max(0, hasStem() ? Math.min(stemTop, over) : over);
            double low = Math.min(
                    place.floorMetres(),
                    head.middleMetres() + (1 + 2 * EDGE) * head.halfHeightMetres());
            Bounds in = place.walls().inside();
            Vec mouth = place.mouth();
            double surface = place.walls().waterLineMetres();
            return new Bounds(
                    new Vec(
                            Math.max(in.low().x(), mouth.x() - wide),
                            Math.max(in.low().y(), mouth.y() - wide),
                            surface - low),
                    new Vec(
                            Math.min(in.high().x(), mouth.x() + wide),
                            Math.min(in.high().y(), mouth.y() + wide),
                            surface - high));
        }

        Field field() {
            fillHead();
            if (hasStem()) {
                for (int k = 0; k < HIGH; k++) {
                    fillStem(k);
                }
            }
            return new Field(box, ACROSS, ACROSS, HIGH, shares);
        }

        private double depth(double layers) {
            return place.walls().waterLineMetres() - box.low().z() - layers * dz;
        }

        private void fillHead() {
            float[] weights = new float[shares.length];
            double sum = 0;
            for (int k = 0; k < HIGH; k++) {
                double up = (depth(k + 0.5) - head.middleMetres()) / Math.max(head.halfHeightMetres(), dz);
                for (int n = 0; n < ACROSS * ACROSS; n++) {
                    double weight = inside(Math.hypot(up, aside(n) / head.halfWidthMetres()));
                    weights[k * ACROSS * ACROSS + n] = (float) weight;
                    sum += weight;
                }
            }
            double share = sum > 0 ? inHead / (sum * dx * dy * dz) : 0;
            for (int n = 0; n < shares.length; n++) {
                shares[n] += (float) (share * weights[n]);
            }
        }

        private double aside(int n) {
            double x = box.low().x() + (n % ACROSS + 0.5) * dx - place.mouth().x();
            double y = box.low().y() + ((n / ACROSS) + 0.5) * dy - place.mouth().y();
            return Math.hypot(x, y);
        }

        /// One layer of what is on its way: no narrower than a cell, no more than neat.
        private void fillStem(int k) {
            double from = Math.max(depth(k + 1.0), stemTop);
            double to = Math.min(depth(k), stemEnd);
            double ink = stemMetres3(from, to);
            if (!(ink > 0)) {
                return;
            }
            double neat = Math.sqrt(ink / (MOST_SHARE * Math.PI * (to - from)));
            double law = poured.mixing() == Mixing.PLUME ? front.radiusMetres(depth(k + 0.5)) : 0;
            double radius = Math.max(Math.max(law, neat), Math.max(dx, dy));
            double sum = 0;
            for (int n = 0; n < ACROSS * ACROSS; n++) {
                sum += inside(aside(n) / radius);
            }
            double share = ink / (sum * dx * dy * dz);
            for (int n = 0; n < ACROSS * ACROSS; n++) {
                shares[k * ACROSS * ACROSS + n] += (float) (share * inside(aside(n) / radius));
            }
        }
    }
}
