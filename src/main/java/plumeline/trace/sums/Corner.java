package plumeline.trace.sums;

/// How light goes through a basin in by one face and out by another that is square to it: Snell's law for a way between
/// two places in the air outside. It is used again and again.
///
/// What a ray has of a direction as long as the index stays along a face that it crosses. Axes here: `a` into the first
/// face, `b` out of the other, `c` along both.
///
/// **Source:** Snell's law, Fresnel's formulas, Malus's law (any optics text); own derivation.
public final class Corner {
    private static final int MOST_STEPS = 24;
    private static final double STILL = 1e-7;

    private final double glass;

    /// Of the first face: air and glass before it, m.
    private double air0;

    private double glass0;
    private double air1;
    private double glass1;
    private double index;

    /// What the ray keeps: along b past the first face, along c throughout; along a past the first.
    private double u;

    private double v;
    private double w;

    /// What it has along a before the first face, and along b past the other.
    private double first;

    private double last;

    /// How far aside it goes along b before the inner side of the first face and in its glass, m for each u and v.
    private double way0;

    private double way0Glass;
    private double way1;
    private double way1Glass;
    private double wayMiddle;

    private double a;
    private double c;
    private double aByU;
    private double aByV;
    private double cByU;
    private double across;

    /// Takes the glass's index.
    ///
    /// @param glass its index, > 1
    public Corner(double glass) {
        this.glass = glass;
    }

    /// Finds the way.
    ///
    /// @param before air before the first face, m
    /// @param pane how thick its pane is, m
    /// @param beyond air past the other face, m
    /// @param otherPane how thick its pane is, m
    /// @param inside index of what is between
    /// @param toA how far the other place is along a, m
    /// @param toB along b, m
    /// @param toC along c, m, ≥ 0
    /// @return whether there is one
    public boolean find(
            double before,
            double pane,
            double beyond,
            double otherPane,
            double inside,
            double toA,
            double toB,
            double toC) {
        air0 = before;
        glass0 = pane;
        air1 = beyond;
        glass1 = otherPane;
        index = inside;
        across = toB - air1 - glass1;
        double least = Math.sqrt(index * index - 1);
        double low = 0;
        double high = Math.sqrt(1 - least * least);
        double far = Math.sqrt(toA * toA + toB * toB + toC * toC);
        v = Math.min(toC / far, (index == 1 ? 0.99 : 0.5) * high);
        u = index == 1 ? toB / far : Math.max(toB / far, (least + Math.sqrt(1 - v * v)) / 2);
        for (int i = 0; i < MOST_STEPS; i++) {
            if (!along(least, toA, far)) {
                return false;
            }
            double off = toC - c;
            if (Math.abs(off) <= STILL * far) {
                return wayMiddle > 0;
            }
            if (off > 0) {
                low = v;
            } else {
                high = v;
            }
            double next = v + off / (way0 + way0Glass + wayMiddle + way1 + way1Glass - cByU * aByV / aByU);
            v = next > low && next < high ? next : (low + high) / 2;
        }
        return false;
    }

    /// Finds u for a v.
    private boolean along(double least, double toA, double far) {
        double low = least;
        double high = Math.sqrt(1 - v * v);
        if (!(u > low && u < high)) {
            u = (low + high) / 2;
        }
        for (int i = 0; i < MOST_STEPS; i++) {
            set();
            double off = toA - a;
            if (Math.abs(off) <= STILL * far) {
                return true;
            }
            if (off > 0) {
                high = u;
            } else {
                low = u;
            }
            double next = u + off / aByU;
            u = next > low && next < high ? next : (low + high) / 2;
        }
        return false;
    }

    private void set() {
        double square = u * u + v * v;
        first = Math.sqrt(1 - square);
        double inGlass = Math.sqrt(glass * glass - square);
        w = Math.sqrt(index * index - square);
        last = Math.sqrt(1 - index * index + u * u);
        double outGlass = Math.sqrt(glass * glass - index * index + u * u);
        way0 = air0 / first;
        way0Glass = glass0 / inGlass;
        double d0 = way0 / (first * first) + way0Glass / (inGlass * inGlass);
        double all0 = way0 + way0Glass;
        wayMiddle = (across - u * all0) / u;
        way1 = air1 / last;
        way1Glass = glass1 / outGlass;
        double d1 = way1 / (last * last) + way1Glass / (outGlass * outGlass);
        double middleByU = -(all0 + u * u * d0 + wayMiddle) / u;
        double rest = wayMiddle + way1 + way1Glass;
        a = air0 + glass0 + w * rest;
        c = v * (all0 + rest);
        aByU = -u / w * rest + w * (middleByU - u * d1);
        aByV = -v / w * rest - w * v * d0;
        cByU = v * (u * d0 + middleByU - u * d1);
    }

    /// How much of a lamp's light comes to a place for each area of both, were nothing lost, 1/m².
    ///
    /// @return 1/m²
    public double gain() {
        double all = way0 + way0Glass + wayMiddle + way1 + way1Glass;
        return 1 / (first * last * Math.abs(aByU * all - aByV * cByU));
    }

    /// What passes both faces, unpolarised; each weakens what swings along and across its own plane of incidence.
    ///
    /// @return share of one
    public double passes() {
        double sine0 = u * u + v * v;
        double sine1 = w * w + v * v;
        double s0 = s(sine0, glass0 > 0);
        double p0 = p(sine0, glass0 > 0);
        double s1 = s(sine1, glass1 > 0);
        double p1 = p(sine1, glass1 > 0);
        double like = w * w * u * u / (sine0 * sine1);
        return (like * (s0 * s1 + p0 * p1) + (1 - like) * (s0 * p1 + p0 * s1)) / 2;
    }

    private double s(double square, boolean isPane) {
        double air = Math.sqrt(1 - square);
        double rest = Math.sqrt(index * index - square);
        if (!isPane) {
            return 1 - mirrored(air, rest);
        }
        double pane = Math.sqrt(glass * glass - square);
        return both(mirrored(air, pane), mirrored(pane, rest));
    }

    private double p(double square, boolean isPane) {
        double air = Math.sqrt(1 - square);
        double dense = index * index;
        double rest = Math.sqrt(dense - square);
        if (!isPane) {
            return 1 - mirrored(dense * air, rest);
        }
        double glassDense = glass * glass;
        double pane = Math.sqrt(glassDense - square);
        return both(mirrored(glassDense * air, pane), mirrored(dense * pane, glassDense * rest));
    }

    private static double both(double one, double other) {
        return (1 - one) * (1 - other) / (1 - one * other);
    }

    private static double mirrored(double one, double other) {
        double amplitude = (one - other) / (one + other);
        return amplitude * amplitude;
    }

    /// What the ray keeps along b past the first face.
    ///
    /// @return it
    public double u() {
        return u;
    }

    /// What it keeps along c throughout.
    ///
    /// @return it
    public double v() {
        return v;
    }

    /// What it keeps along a past the first face.
    ///
    /// @return it
    public double w() {
        return w;
    }

    /// What it has along a before the first face.
    ///
    /// @return it
    public double first() {
        return first;
    }

    /// What it has along b past the other.
    ///
    /// @return it
    public double last() {
        return last;
    }

    /// How far aside it goes before the first face, m for each u and v.
    ///
    /// @return it
    public double way0() {
        return way0;
    }

    /// Likewise in the first pane.
    ///
    /// @return it
    public double way0Glass() {
        return way0Glass;
    }

    /// Likewise past the other face.
    ///
    /// @return it
    public double way1() {
        return way1;
    }

    /// Likewise in the other pane.
    ///
    /// @return it
    public double way1Glass() {
        return way1Glass;
    }

    /// Likewise between the panes.
    ///
    /// @return it
    public double wayMiddle() {
        return wayMiddle;
    }
}
