package plumeline.colour;

import java.util.ArrayList;
import java.util.List;

/// How a spectrum that was made up for a colour may differ from the real one without being seen by it: waves over the
/// wavelengths, 120 nm long, in two phases a quarter apart, each with what a parabola has to take off it for the
/// colour to stay the same.
///
/// How deep they are was fitted, so that four in five of fourteen painted samples (the test colour samples of CIE
/// 13.3-1995) come to lie within what both phases together, as a root sum of squares, do to L*, a* and b* under glowing
/// bodies, daylight and mixtures of red, green and blue peaks. Surfaces made of few narrow bands, or that glow, may be
/// off by more.
///
/// **Source:** metameric blacks: Wyszecki and Stiles, Color Science (1982), 3.8, from memory; the waves: own.
public final class Metamers {
    /// How deep waves of a surface are, as a share of what it may at most gain or lose, `ρ(1 − ρ)`.
    public static final double SURFACE_DEPTH = 0.24;

    /// How deep waves of a light are, as a share of its own power: for a light's narrow peaks more than all of it, so
    /// that what comes of it is to be taken by slope.
    public static final double LIGHT_DEPTH = 1.5;

    private static final double LONG_METRES = 120e-9;
    private static final double MIDDLE_METRES = 560e-9;
    private static final double HALF_METRES = 200e-9;
    private static final int PHASES = 2;

    private Metamers() {}

    /// Gives the waves of a surface, to be added to its share at each wavelength.
    ///
    /// @param share its share at each wavelength, 0 to 1
    /// @param light the light under which its colour is known
    /// @return the waves, as deep as told; none where it throws back all or nothing
    public static List<Spectrum> ofSurface(Spectrum share, Spectrum light) {
        return waves(share.map(each -> SURFACE_DEPTH * each * (1 - each)), light);
    }

    /// Gives the waves of a light, to be added to its power at each wavelength.
    ///
    /// @param light its power at each wavelength
    /// @return the waves, as deep as its own power
    public static List<Spectrum> ofLight(Spectrum light) {
        return waves(light, Spectrum.of(_ -> 1));
    }

    private static List<Spectrum> waves(Spectrum envelope, Spectrum light) {
        List<Spectrum> parabola = new ArrayList<>();
        double[][] rows = new double[3][3];
        for (int k = 0; k < 3; k++) {
            int power = k;
            Spectrum part =
                    envelope.from(Spectrum.of(metres -> Math.pow((metres - MIDDLE_METRES) / HALF_METRES, power)));
            parabola.add(part);
            double[] seen = seen(light, part);
            for (int i = 0; i < 3; i++) {
                rows[i][k] = seen[i];
            }
        }
        List<Spectrum> waves = new ArrayList<>();
        for (int phase = 0; phase < PHASES; phase++) {
            double quarter = phase * Math.PI / 2;
            Spectrum wave = envelope.from(
                    Spectrum.of(metres -> Math.cos(2 * Math.PI * (metres - MIDDLE_METRES) / LONG_METRES + quarter)));
            double[] shares = Matrix.of(rows).solve(seen(light, wave));
            if (!Double.isFinite(shares[0] + shares[1] + shares[2])) {
                return List.of();
            }
            for (int k = 0; k < 3; k++) {
                wave = wave.plus(parabola.get(k), -shares[k]);
            }
            waves.add(wave);
        }
        return waves;
    }

    private static double[] seen(Spectrum light, Spectrum part) {
        Xyz xyz = light.from(part).xyz();
        return new double[] {xyz.x(), xyz.y(), xyz.z()};
    }
}
