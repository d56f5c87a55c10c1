package plumeline.light;

import plumeline.geom.Vec;
import plumeline.ranges.Ranges;

/// A face that is brightest in its middle, as one is with a lamp behind its cloth: it falls off by stops with the
/// square of the way out, `2^(−s ρ²)`, to s stops at a panel's corners or a disc's edge (ρ = 1). A panel's edges have
/// s/2 in their middles. One shape for all cloths, fitted by one figure: our choice, where nobody measures more.
///
/// @param middle the face's middle, m
/// @param right along its width, of length 1
/// @param up along its height, square to that, of length 1
/// @param halves how far ρ² grows to 1 out along each, m, > 0
/// @param stops s, ≥ 0
public record HotCentre(Vec middle, Vec right, Vec up, Halves halves, double stops) implements Glow {
    private static final int STEPS = 64;

    /// Where along each way ρ² is 1.
    ///
    /// @param acrossMetres along the width, m, > 0
    /// @param alongMetres along the height, m, > 0
    public record Halves(double acrossMetres, double alongMetres) {
        /// Checks the ranges.
        ///
        /// @throws IllegalArgumentException outside them
        public Halves {
            Ranges.checkPositive(acrossMetres, "half across");
            Ranges.checkPositive(alongMetres, "half along");
        }
    }

    /// Checks the ranges.
    ///
    /// @throws IllegalArgumentException outside them
    public HotCentre {
        Directions.check(right, up);
        Ranges.checkNotNegative(stops, "stops");
    }

    /// Gives a panel's.
    ///
    /// @param panel the panel
    /// @param stops how much darker its corners are than its middle, stops, ≥ 0
    /// @return how it glows
    public static HotCentre of(Panel panel, double stops) {
        double root = Math.sqrt(2);
        return new HotCentre(
                panel.middle(),
                panel.right(),
                panel.up(),
                new Halves(root * panel.widthMetres() / 2, root * panel.heightMetres() / 2),
                stops);
    }

    /// Gives a disc's.
    ///
    /// @param disc the disc
    /// @param stops how much darker its edge is than its middle, stops, ≥ 0
    /// @return how it glows
    public static HotCentre of(Disc disc, double stops) {
        Vec one = Directions.squareTo(disc.facing());
        return new HotCentre(
                disc.middle(),
                one,
                disc.facing().cross(one),
                new Halves(disc.radiusMetres(), disc.radiusMetres()),
                stops);
    }

    @Override
    public double share(Vec place, Vec toward) {
        Vec out = place.minus(middle);
        double across = out.dot(right) / halves.acrossMetres();
        double along = out.dot(up) / halves.alongMetres();
        return Math.pow(2, -stops * (across * across + along * along));
    }

    /// Gives the mean of a panel's brightness over a centred rectangle, to 1e-9: by which a whole face's lumens are
    /// those of its middle.
    ///
    /// @param widthMetres the rectangle's width, m, > 0
    /// @param heightMetres its height, m, > 0
    /// @return share, 0 to 1
    public double meanOver(double widthMetres, double heightMetres) {
        return mean(widthMetres / 2 / halves.acrossMetres()) * mean(heightMetres / 2 / halves.alongMetres());
    }

    /// Gives the mean over a disc, `(1 − 2^−s)/(s ln 2)` to its edge.
    ///
    /// @param radiusMetres the disc's radius, m, > 0
    /// @return share, 0 to 1
    public double meanOverDisc(double radiusMetres) {
        double out = radiusMetres / halves.acrossMetres();
        double fall = stops * out * out * Math.log(2);
        return fall < 1e-12 ? 1 : -Math.expm1(-fall) / fall;
    }

    /// The mean of `2^(−s x²)` up to an end, by Simpson's rule.
    private double mean(double end) {
        double sum = 0;
        for (int i = 0; i <= STEPS; i++) {
            double x = end * i / STEPS;
            int weight = i == 0 || i == STEPS ? 1 : i % 2 == 1 ? 4 : 2;
            sum += weight * Math.pow(2, -stops * x * x);
        }
        return sum / (3 * STEPS);
    }
}
