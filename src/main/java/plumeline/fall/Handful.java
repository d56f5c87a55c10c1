package plumeline.fall;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import plumeline.geom.Vec;
import plumeline.ranges.Ranges;

/// Pieces let go about one place, one after another: a seeded cloud, the same for the same seed.
///
/// Each piece starts at a time of its own, the i-th in the i-th part of the whole time; its place lies evenly in a
/// level disc; its drag between the least and the most that its shape has. None minds another.
///
/// @param seed which cloud
/// @param count how many pieces, > 0
/// @param overSeconds the time over which they are let go, s, ≥ 0
/// @param spreadMetres radius of the disc, m, ≥ 0
/// @param fall how a piece falls by its usual drag
public record Handful(long seed, int count, double overSeconds, double spreadMetres, Fall fall) {
    /// Checks the ranges.
    ///
    /// @throws IllegalArgumentException outside them
    public Handful {
        if (count < 1) {
            throw new IllegalArgumentException(count + " pieces");
        }
        Ranges.checkNotNegative(overSeconds, "time");
        Ranges.checkNotNegative(spreadMetres, "spread");
    }

    /// One of the pieces.
    ///
    /// @param startSeconds when it is let go after the first may be, s
    /// @param from where, from the cloud's middle, m, level
    /// @param fall how it falls
    public record Dropped(double startSeconds, Vec from, Fall fall) {
        /// Gives where it is.
        ///
        /// @param seconds time since the cloud's start, s
        /// @param mostMetres where its way ends, m, > 0
        /// @return from the cloud's middle, m, z up; where it is let go before its start
        public Vec at(double seconds, double mostMetres) {
            return from.plus(new Vec(0, 0, Math.copySign(way(seconds - startSeconds, mostMetres), -fall.netNewtons())));
        }

        private double way(double seconds, double mostMetres) {
            if (seconds <= 0 || !fall.moves()) {
                return 0;
            }
            if (fall.at(mostMetres).seconds() <= seconds) {
                return mostMetres;
            }
            double low = 0;
            double high = mostMetres;
            for (int i = 0; i < 30; i++) {
                double middle = (low + high) / 2;
                if (fall.at(middle).seconds() <= seconds) {
                    low = middle;
                } else {
                    high = middle;
                }
            }
            return low;
        }
    }

    /// Gives the pieces.
    ///
    /// @return in the order in which they are let go
    public List<Dropped> pieces() {
        SplittableRandom random = new SplittableRandom(seed);
        List<Dropped> pieces = new ArrayList<>(count);
        for (int i = 0; i < count; i++) {
            double start = overSeconds * (i + random.nextDouble()) / count;
            double away = spreadMetres * Math.sqrt(random.nextDouble());
            double round = 2 * Math.PI * random.nextDouble();
            Drag drag = fall.piece().drag();
            double share = drag.lowShare() * Math.pow(drag.highShare() / drag.lowShare(), random.nextDouble());
            pieces.add(new Dropped(
                    start,
                    new Vec(away * Math.cos(round), away * Math.sin(round), 0),
                    new Fall(fall.piece(), fall.medium(), share * fall.dragShare())));
        }
        return pieces;
    }

    /// Gives where the pieces are that are let go by a time.
    ///
    /// @param seconds time since the cloud's start, s
    /// @param mostMetres where their way ends, m, > 0
    /// @return from the cloud's middle, m, z up
    public List<Vec> at(double seconds, double mostMetres) {
        return pieces().stream()
                .filter(piece -> piece.startSeconds() <= seconds)
                .map(piece -> piece.at(seconds, mostMetres))
                .toList();
    }
}
