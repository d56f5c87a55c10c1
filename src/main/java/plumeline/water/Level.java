package plumeline.water;

import plumeline.geom.Vec;

/// Where the surface stands so that a given volume lies under it.
final class Level {
    private static final int MOST_STEPS = 80;
    private static final double SHARE = 1e-12;

    private Level() {}

    /// Newton's steps on volume against level (its slope is the area of the cut), kept between bounds.
    ///
    /// @param form the form
    /// @param up upward unit direction in the body's frame
    /// @param volumeMetres3 what shall lie under the surface, cubic metres; no more than the form has
    /// @return the part under it
    static At find(Form form, Vec up, double volumeMetres3) {
        double low = form.lowestMetres(up);
        double high = form.highestMetres(up);
        Portion whole = form.whole();
        double all = whole.volumeMetres3();
        if (volumeMetres3 >= all) {
            return new At(high, whole);
        }
        if (volumeMetres3 <= 0) {
            return new At(low, Portion.NOTHING);
        }
        double level = low + (high - low) * volumeMetres3 / all;
        Portion under = form.below(up, level);
        for (int i = 0; i < MOST_STEPS && high - low > 1e-15; i++) {
            double over = under.volumeMetres3() - volumeMetres3;
            if (Math.abs(over) <= SHARE * all) {
                break;
            }
            if (over > 0) {
                high = level;
            } else {
                low = level;
            }
            double next = level - over / under.sectionMetres2();
            level = next > low && next < high ? next : (low + high) / 2;
            under = form.below(up, level);
        }
        return new At(level, under);
    }

    /// A level and what is under it.
    record At(double levelMetres, Portion under) {}
}
