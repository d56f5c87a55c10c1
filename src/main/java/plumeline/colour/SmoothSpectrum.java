package plumeline.colour;

import java.util.Optional;

/// A spectrum made up for a colour of which nothing else is known: as smooth as it goes. The share at a wavelength is
/// `1/2 + x/(2√(1 + x²))` of a parabola x in the wavelength, so that it lies between 0 and 1; the parabola is
/// found by damped Newton steps (Levenberg and Marquardt) in CIELAB. Real surfaces and lights of that colour differ
/// from it, by about what [Metamers] says.
///
/// **Source:** the form: Jakob and Hanika, Computer Graphics Forum 38 (2019) 147, "A low-dimensional function space for
/// efficient spectral upsampling"; the steps: own.
public final class SmoothSpectrum {
    private static final double MIDDLE_METRES = 580e-9;
    private static final double HALF_METRES = 200e-9;
    private static final double NEAR = 1e-6;
    private static final double NEAR_ENOUGH = 0.02;
    private static final int MOST_STEPS = 200;
    private static final double MOST_DAMPING = 1e12;

    /// Of a light's brightest wavelength, how bright the whole of it may be against an even light as bright: tried in
    /// turn, as a narrow light can only be dim.
    private static final double[] LUMINANCES = {0.5, 0.2, 0.08, 0.03, 0.01, 0.003};

    private final Spectrum light;
    private final Chromaticity white;
    private final Lab goal;
    private final double full;

    private SmoothSpectrum(Spectrum light, Xyz colour) {
        this.light = light;
        Xyz all = light.xyz();
        full = all.y();
        white = all.findChromaticity().orElseThrow();
        goal = Lab.of(colour, white);
    }

    /// Finds a surface of a colour.
    ///
    /// @param colour its tristimulus values under the white; Y of the white is 1
    /// @param white the white's chromaticity, as the colour was measured by
    /// @param light the white's spectrum; where its chromaticity is another by rounding, the colour is scaled to it
    /// @return the share that it throws back at each wavelength; empty where no smooth surface has that colour
    public static Optional<Spectrum> findSurface(Xyz colour, Chromaticity white, Spectrum light) {
        Xyz to = light.xyz().findChromaticity().orElseThrow().at(1);
        Xyz from = white.at(1);
        Xyz scaled = new Xyz(colour.x() * to.x() / from.x(), colour.y(), colour.z() * to.z() / from.z());
        return new SmoothSpectrum(light, scaled).solve();
    }

    /// Finds a light of a colour.
    ///
    /// @param colour the colour
    /// @return its power at each wavelength; empty where no light has that colour, or only one too narrow
    public static Optional<Spectrum> findLight(Chromaticity colour) {
        Spectrum even = Spectrum.of(_ -> 1);
        for (double luminance : LUMINANCES) {
            Optional<Spectrum> found = new SmoothSpectrum(even, colour.at(luminance)).solve();
            if (found.isPresent()) {
                return found;
            }
        }
        return Optional.empty();
    }

    private Optional<Spectrum> solve() {
        double[] at = new double[3];
        double[] off = off(at);
        double damping = 1e-3;
        for (int step = 0; step < MOST_STEPS && square(off) > NEAR * NEAR && damping < MOST_DAMPING; step++) {
            double[] next = next(at, off, damping);
            double[] there = off(next);
            boolean better = square(there) < square(off);
            at = better ? next : at;
            off = better ? there : off;
            damping = better ? Math.max(1e-9, damping / 5) : damping * 4;
        }
        return square(off) < NEAR_ENOUGH * NEAR_ENOUGH ? Optional.of(share(at)) : Optional.empty();
    }

    private static Spectrum share(double[] at) {
        return Spectrum.of(metres -> {
            double t = (metres - MIDDLE_METRES) / HALF_METRES;
            double x = at[0] + t * (at[1] + t * at[2]);
            return 0.5 + x / (2 * Math.sqrt(1 + x * x));
        });
    }

    /// What is lacking to the goal in L*, a* and b*.
    private double[] off(double[] at) {
        Lab there = Lab.of(Xyz.DARK.plus(light.from(share(at)).xyz(), 1 / full), white);
        return new double[] {goal.l() - there.l(), goal.a() - there.a(), goal.b() - there.b()};
    }

    /// One damped step: `(JᵀJ + d·diag(JᵀJ)) s = Jᵀ off`.
    private double[] next(double[] at, double[] off, double damping) {
        double[][] slopes = new double[3][];
        for (int k = 0; k < 3; k++) {
            double step = 1e-5 * Math.max(1, Math.abs(at[k]));
            double[] moved = at.clone();
            moved[k] += step;
            double[] there = off(moved);
            slopes[k] =
                    new double[] {(off[0] - there[0]) / step, (off[1] - there[1]) / step, (off[2] - there[2]) / step};
        }
        double[][] rows = new double[3][3];
        double[] right = new double[3];
        for (int i = 0; i < 3; i++) {
            for (int j = 0; j < 3; j++) {
                rows[i][j] = dot(slopes[i], slopes[j]) * (i == j ? 1 + damping : 1);
            }
            rows[i][i] += 1e-12;
            right[i] = dot(slopes[i], off);
        }
        double[] moves = Matrix.of(rows).solve(right);
        return new double[] {at[0] + moves[0], at[1] + moves[1], at[2] + moves[2]};
    }

    private static double dot(double[] one, double[] other) {
        return one[0] * other[0] + one[1] * other[1] + one[2] * other[2];
    }

    private static double square(double[] all) {
        return dot(all, all);
    }
}
