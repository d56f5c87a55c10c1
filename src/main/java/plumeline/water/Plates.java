package plumeline.water;

import plumeline.ranges.Ranges;

/// Bends panes: the single series of M. Lévy for thin rectangular plates, derived for a liquid's pressure in
/// `docs/derivations/panes.md`.
public final class Plates {
    private static final int LEAST_TERMS = 24;
    private static final int COLUMNS = 16;
    private static final int ROWS = 48;
    private static final int ZOOMS = 2;
    private static final int ZOOM_STEPS = 6;

    private Plates() {}

    /// Gives the largest stress and deflection of a pane. Stress is `6 M₁/t²` with M₁ the largest principal moment
    /// anywhere on the pane, twisting counted. Thin plate, small deflection, held edges straight and free to turn;
    /// corners held down. Within 0.1 % of that idealised plate; [PaneBending#validity] says whether it is one.
    ///
    /// **Source:** Timoshenko & Woinowsky-Krieger, Theory of Plates and Shells, 2nd ed. 1959, chapter 5 (Lévy's
    /// method, from memory); own derivation for partly wet panes in `docs/derivations/panes.md`.
    ///
    /// @param pane the pane
    /// @param load what presses on it
    /// @param material what it is made of
    /// @return how it bends
    /// @throws IllegalArgumentException where a liquid stands higher than the pane
    public static PaneBending bend(Pane pane, PaneLoad load, Pane.Elasticity material) {
        int terms = (int) Math.ceil(LEAST_TERMS * Math.max(1, pane.widthMetres() / pane.heightMetres() / 2));
        return bend(pane, load, material, Math.min(terms, LEAST_TERMS * 10));
    }

    static PaneBending bend(Pane pane, PaneLoad load, Pane.Elasticity material, int terms) {
        if (load instanceof PaneLoad.Liquid(double depthMetres, double _)) {
            Ranges.checkAtMost(depthMetres, pane.heightMetres() * (1 + 1e-12), "liquid's depth on the pane");
        }
        double nu = material.poisson();
        LevySeries series = new LevySeries(pane, load, nu, terms);
        double a = pane.widthMetres();
        double b = pane.heightMetres();
        // Fewer terms find the place; the deflection's fall off so fast that they are enough for it.
        Peak found = series.peak(towardSide(a), even(0, b, ROWS), (series.countTerms() * 5 + 11) / 12);
        Peak peak = zoom(series, found, a, b);
        double t = pane.thicknessMetres();
        double rigidity = material.youngPascals() * t * t * t / (12 * (1 - nu * nu));
        double deflectionMetres = found.deflection() / rigidity;
        return new PaneBending(
                6 * peak.moment() / (t * t),
                peak.x(),
                peak.y(),
                deflectionMetres,
                PaneBending.validity(pane, deflectionMetres));
    }

    private static Peak zoom(LevySeries series, Peak found, double a, double b) {
        Peak peak = new Peak(0, found.x(), found.y(), 0);
        double dx = a / 2 * Math.PI / 2 / COLUMNS;
        double dy = b / ROWS;
        for (int i = 0; i < ZOOMS; i++) {
            double[] xs = even(Math.max(0, peak.x() - dx), Math.min(a / 2, peak.x() + dx), ZOOM_STEPS);
            double[] ys = even(Math.max(0, peak.y() - dy), Math.min(b, peak.y() + dy), ZOOM_STEPS);
            Peak finer = series.peak(xs, ys, series.countTerms());
            peak = finer.moment() > peak.moment() ? finer : peak;
            dx /= ZOOM_STEPS / 2.0;
            dy /= ZOOM_STEPS / 2.0;
        }
        return peak;
    }

    /// The largest principal moment of some points, where it is, and the largest deflection times rigidity.
    ///
    /// @param moment newton metres a metre
    /// @param x metres from a side
    /// @param y metres above the lower edge
    /// @param deflection metres times newton metres
    record Peak(double moment, double x, double y, double deflection) {}

    /// From a side to the middle, close near the side, where a long pane's moments change most.
    private static double[] towardSide(double widthMetres) {
        double[] xs = new double[COLUMNS + 1];
        for (int i = 0; i <= COLUMNS; i++) {
            xs[i] = widthMetres / 2 * (1 - Math.cos(Math.PI / 2 * i / COLUMNS));
        }
        return xs;
    }

    private static double[] even(double from, double to, int steps) {
        double[] places = new double[steps + 1];
        for (int i = 0; i <= steps; i++) {
            places[i] = from + (to - from) * i / steps;
        }
        return places;
    }
}
