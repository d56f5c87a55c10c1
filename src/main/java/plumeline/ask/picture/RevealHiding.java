package plumeline.ask.picture;

import plumeline.sight.Sides;

/// By how much an upright cylinder on the table is hidden behind another from a level lens point.
///
/// In the picture (tangents, x right, y up) a rim of radius r at height z over the lens, its middle x aside at depth d,
/// reaches in direction (u, v) as far as `(dA + √(r²A² + (d² − r²)r²u²)) / (d² − r²)` with `A = ux + vz`. A cylinder's
/// outline is the hull of both rims: upwards its top rim counts, downwards its bottom rim. Behind a convex outline the
/// margin is the least over all directions of how much farther the hider reaches; a side is the least over its quarter.
///
/// **Source:** own derivation; checked with `sight.Sight` and with polygons.
final class RevealHiding {
    /// Half the directions of an upright quarter, as aside over up: where a rim is seen nearly edge-on its outline
    /// turns sharply near the upright.
    private static final double[] UPRIGHT = {
        -1, -0.4, -0.15, -0.05, -0.015, -0.004, -0.001, 0, 0.001, 0.004, 0.015, 0.05, 0.15, 0.4, 1
    };

    /// An eighth, as up over aside.
    private static final double[] SIDEWAYS = {0, 0.15, 0.4, 0.7, 1};

    private static final int MOST_CUTS = 24;
    private static final double FINE = 1e-10;

    private RevealHiding() {}

    /// A cylinder from the lens point; all in one unit.
    ///
    /// @param x of its axis, to the right of the lens
    /// @param depth of its axis, more than its radius
    /// @param radius its radius
    /// @param top its height over the lens, signed
    /// @param bottom its foot over the lens, signed
    record Upright(double x, double depth, double radius, double top, double bottom) {
        private Rim topRim() {
            return new Rim(x, depth, radius, top, depth * depth - radius * radius);
        }

        /// Looked at upside down.
        private Rim bottomRim() {
            return new Rim(x, depth, radius, -bottom, depth * depth - radius * radius);
        }
    }

    /// One rim; `beyond` is d² − r².
    private record Rim(double x, double depth, double radius, double height, double beyond) {
        double reach(double u, double v) {
            double a = u * x + v * height;
            return (depth * a + radius * Math.sqrt(a * a + beyond * u * u)) / beyond;
        }

        /// How fast the reach changes where a direction changes by (du, dv).
        double change(double u, double v, double du, double dv) {
            double a = u * x + v * height;
            double da = du * x + dv * height;
            double root = Math.sqrt(a * a + beyond * u * u);
            return (depth * da + (root > 0 ? radius * (a * da + beyond * u * du) / root : 0)) / beyond;
        }
    }

    static Sides sides(Upright hider, Upright hidden) {
        Rim hiderTop = hider.topRim();
        Rim hiddenTop = hidden.topRim();
        Rim hiderBottom = hider.bottomRim();
        Rim hiddenBottom = hidden.bottomRim();
        Fan[] up = Fan.ofThree(hiderTop, hiddenTop);
        Fan[] down = Fan.ofThree(hiderBottom, hiddenBottom);
        return new Sides(
                Math.min(up[2].least(SIDEWAYS), down[2].least(SIDEWAYS)),
                Math.min(up[0].least(SIDEWAYS), down[0].least(SIDEWAYS)),
                down[1].least(UPRIGHT),
                up[1].least(UPRIGHT));
    }

    /// Directions (u + s·du, v + s·dv), of which one pair is fixed and of length one.
    private record Fan(Rim hider, Rim hidden, double u, double v, double du, double dv) {
        /// To the right, up, and to the left.
        static Fan[] ofThree(Rim hider, Rim hidden) {
            return new Fan[] {
                new Fan(hider, hidden, 1, 0, 0, 1),
                new Fan(hider, hidden, 0, 1, 1, 0),
                new Fan(hider, hidden, -1, 0, 0, 1)
            };
        }

        /// How much farther the hider reaches.
        double spare(double s) {
            double across = u + s * du;
            double up = v + s * dv;
            return (hider.reach(across, up) - hidden.reach(across, up)) / Math.sqrt(1 + s * s);
        }

        /// Has the sign of the change of [#spare] with s.
        double rise(double s) {
            double across = u + s * du;
            double up = v + s * dv;
            double change = hider.change(across, up, du, dv) - hidden.change(across, up, du, dv);
            return change * (1 + s * s) - s * (hider.reach(across, up) - hidden.reach(across, up));
        }

        double least(double[] samples) {
            double least = spare(samples[0]);
            double before = rise(samples[0]);
            for (int i = 1; i < samples.length; i++) {
                double after = rise(samples[i]);
                least = Math.min(least, spare(samples[i]));
                if (before < 0 && after > 0) {
                    least = Math.min(least, spare(lowest(samples[i - 1], samples[i], before, after)));
                }
                before = after;
            }
            return least;
        }

        /// Where the rise is zero between two directions: false position with halved weights (Illinois), and bisection
        /// every third time.
        private double lowest(double from, double to, double atFrom, double atTo) {
            double low = from;
            double high = to;
            double atLow = atFrom;
            double atHigh = atTo;
            for (int i = 0; i < MOST_CUTS && high - low > FINE; i++) {
                double share = i % 3 == 2 ? 0.5 : atLow / (atLow - atHigh);
                double middle = low + share * (high - low);
                double there = rise(middle);
                if (there == 0) {
                    return middle;
                }
                if (there > 0) {
                    high = middle;
                    atHigh = there;
                    atLow /= i % 3 == 2 ? 1 : 2;
                } else {
                    low = middle;
                    atLow = there;
                    atHigh /= i % 3 == 2 ? 1 : 2;
                }
            }
            return (low + high) / 2;
        }
    }
}
