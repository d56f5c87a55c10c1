package plumeline.optics;

import plumeline.ranges.Ranges;

/// Lens sums of the Gaussian lens with a pupil ratio. Derived in `docs/derivations/lens.md`.
///
/// Letters: f focal length, m magnification, s focus distance from the front principal plane, N engraved f-number,
/// P pupil ratio, c blur-disc diameter, λ wavelength.
public final class Optics {
    /// Wavelength at which diffraction is stated, metres: green, near the eye's best.
    public static final double GREEN_METRES = 550e-9;

    /// First zero of the Airy pattern over λN: j₁,₁/π with j₁,₁ = 3.8317059702 the first zero of the Bessel function
    /// J₁.
    public static final double AIRY_FACTOR = 3.831705970207512 / Math.PI;

    /// Past this working f-number diffraction visibly softens the whole picture (rule of thumb of the trade).
    public static final double DIFFRACTION_F_NUMBER = 16;

    private static final double STOPS_PER_NEPER = 1 / Math.log(2);

    private Optics() {}

    /// Gives the magnification at a focus distance: `m = f/(s − f)`.
    ///
    /// **Source:** Gaussian lens equation (any optics text).
    ///
    /// @param lens the lens
    /// @param focusMetres s, metres, > f
    /// @return m, dimensionless, > 0
    /// @throws IllegalArgumentException where s ≤ f: no real image
    public static double magnificationAt(LensModel lens, double focusMetres) {
        double f = lens.focalLengthMetres();
        Ranges.checkAbove(focusMetres, f, "focus distance");
        return f / (focusMetres - f);
    }

    /// Gives the focus distance for a magnification: `s = f(1 + 1/m)`.
    ///
    /// **Source:** Gaussian lens equation (any optics text).
    ///
    /// @param lens the lens
    /// @param magnification m, dimensionless, > 0
    /// @return s, metres, > f
    public static double distanceForMagnificationMetres(LensModel lens, double magnification) {
        Ranges.checkPositive(magnification, "magnification");
        return lens.focalLengthMetres() * (1 + 1 / magnification);
    }

    /// Gives the distance from the rear principal plane to the sensor: `f(1 + m)`.
    ///
    /// **Source:** Gaussian lens equation (any optics text).
    ///
    /// @param lens the lens
    /// @param magnification m, dimensionless, ≥ 0
    /// @return image distance, metres, ≥ f
    public static double imageDistanceMetres(LensModel lens, double magnification) {
        Ranges.checkNotNegative(magnification, "magnification");
        return lens.focalLengthMetres() * (1 + magnification);
    }

    /// Gives the factor by which close focus slows a lens: `1 + m/P`.
    ///
    /// **Source:** Greivenkamp, Field Guide to Geometrical Optics, SPIE FG01, 2004, p. 29.
    ///
    /// @param lens the lens
    /// @param magnification m, dimensionless, ≥ 0
    /// @return the factor, dimensionless, ≥ 1
    public static double pupilFactor(LensModel lens, double magnification) {
        Ranges.checkNotNegative(magnification, "magnification");
        return 1 + magnification / lens.pupilRatio();
    }

    /// Gives the working f-number: `N(1 + m/P)`.
    ///
    /// **Source:** Greivenkamp, Field Guide to Geometrical Optics, SPIE FG01, 2004, p. 29.
    ///
    /// @param lens the lens
    /// @param fNumber N, as engraved, dimensionless, > 0
    /// @param magnification m, dimensionless, ≥ 0
    /// @return working f-number, dimensionless, ≥ N
    public static double workingFNumber(LensModel lens, double fNumber, double magnification) {
        return Ranges.checkPositive(fNumber, "f-number") * pupilFactor(lens, magnification);
    }

    /// Gives the light lost by focusing close, against the same f-number at infinity: `2 log₂(1 + m/P)`.
    ///
    /// **Source:** illuminance goes with 1/(working f-number)² (any optics text).
    ///
    /// @param lens the lens
    /// @param magnification m, dimensionless, ≥ 0
    /// @return loss, stops, ≥ 0
    public static double lightLossStops(LensModel lens, double magnification) {
        Ranges.checkNotNegative(magnification, "magnification");
        return 2 * STOPS_PER_NEPER * Math.log1p(magnification / lens.pupilRatio());
    }

    /// Gives the diameter of the first dark ring of a point's image at 550 nm: `2 · 1.21967 λ N` for a perfect lens
    /// with a round, evenly filled pupil. A real lens is softer, never sharper.
    ///
    /// **Source:** Airy's formula (any optics text; 1.21967 = 3.83171/π, first zero of J₁).
    ///
    /// @param workingFNumber working f-number, dimensionless, > 0
    /// @return diameter on the sensor, metres
    public static double airyDiameterMetres(double workingFNumber) {
        return airyDiameterMetres(workingFNumber, GREEN_METRES);
    }

    static double airyDiameterMetres(double workingFNumber, double wavelengthMetres) {
        return 2 * AIRY_FACTOR * wavelengthMetres * Ranges.checkPositive(workingFNumber, "working f-number");
    }

    /// Says whether diffraction is worth a warning: past a working f/16.
    ///
    /// @param workingFNumber working f-number, dimensionless, > 0
    /// @return whether it is past f/16
    public static boolean softensByDiffraction(double workingFNumber) {
        return workingFNumber > DIFFRACTION_F_NUMBER;
    }

    /// Gives the focus distance from which on the far limit is endless: `f²/(Nc) + f`, whatever the pupil ratio.
    ///
    /// **Source:** own derivation, `docs/derivations/lens.md`; for P = 1 any text on depth of field.
    ///
    /// @param sharpness lens, f-number and blur
    /// @return hyperfocal distance, metres, > f
    public static double hyperfocalMetres(Sharpness sharpness) {
        double f = sharpness.lens().focalLengthMetres();
        return f * f / (sharpness.fNumber() * sharpness.blurMetres()) + f;
    }

    /// Gives the near limit of the sharp zone: `s − Nc(1 + m/P)/(m²(1 + Nc/(fm)))`, exact for the Gaussian lens.
    ///
    /// **Source:** Jacobson, Photographic Lenses FAQ v1.18, 1997, Q11; own derivation in
    /// `docs/derivations/lens.md`.
    ///
    /// @param sharpness lens, f-number and blur
    /// @param focusMetres s, metres, > f
    /// @return near limit from the front principal plane, metres; 0 or less only where P < 1 and `Nc/f ≥ P/(1 − P)`
    /// @throws IllegalArgumentException where s ≤ f
    public static double nearLimitMetres(Sharpness sharpness, double focusMetres) {
        // Written as L·mD/(mD + c) less the pupil's place: the same, and it keeps its digits far beyond the hyperfocal.
        Cone cone = cone(sharpness, focusMetres);
        double share = cone.discMetres() / (cone.discMetres() + sharpness.blurMetres());
        return cone.pupilToFocusMetres() * share - pupilBehindMetres(sharpness.lens());
    }

    /// Gives the far limit of the sharp zone: `s + Nc(1 + m/P)/(m²(1 − Nc/(fm)))`, exact for the Gaussian lens.
    ///
    /// **Source:** Jacobson, Photographic Lenses FAQ v1.18, 1997, Q11; own derivation in
    /// `docs/derivations/lens.md`.
    ///
    /// @param sharpness lens, f-number and blur
    /// @param focusMetres s, metres, > f
    /// @return the limit; `Endless` where s is the hyperfocal distance or more
    /// @throws IllegalArgumentException where s ≤ f
    public static FarLimit farLimit(Sharpness sharpness, double focusMetres) {
        Cone cone = cone(sharpness, focusMetres);
        double room = cone.discMetres() - sharpness.blurMetres();
        if (focusMetres >= hyperfocalMetres(sharpness) || room <= 0) {
            return new FarLimit.Endless();
        }
        double fromPupilMetres = cone.pupilToFocusMetres() * (cone.discMetres() / room);
        return new FarLimit.At(fromPupilMetres - pupilBehindMetres(sharpness.lens()));
    }

    /// Gives both limits of the sharp zone.
    ///
    /// @param sharpness lens, f-number and blur
    /// @param focusMetres focus distance from the front principal plane, metres, > f
    /// @return the zone
    /// @throws IllegalArgumentException where the focus is not beyond the focal length
    public static SharpZone sharpZone(Sharpness sharpness, double focusMetres) {
        return new SharpZone(nearLimitMetres(sharpness, focusMetres), farLimit(sharpness, focusMetres));
    }

    /// The cone of light to the focus: its length from the entrance pupil, and the entrance pupil's diameter times m.
    private record Cone(double pupilToFocusMetres, double discMetres) {}

    private static Cone cone(Sharpness sharpness, double focusMetres) {
        double f = sharpness.lens().focalLengthMetres();
        double m = magnificationAt(sharpness.lens(), focusMetres);
        return new Cone(f / m + f / sharpness.lens().pupilRatio(), m * f / sharpness.fNumber());
    }

    /// How far the entrance pupil stands behind the front principal plane: `f/P − f`.
    private static double pupilBehindMetres(LensModel lens) {
        return lens.focalLengthMetres() / lens.pupilRatio() - lens.focalLengthMetres();
    }

    /// Gives the blur-disc diameter of a point off the focus: `m (f/N) |e|/(L + e)`, with e its depth past the focus
    /// and
    /// `L = f/m + f/P` the way from the entrance pupil to the focus. Geometry only: diffraction comes on top.
    ///
    /// **Source:** own derivation, `docs/derivations/lens.md` (similar triangles at the entrance pupil).
    ///
    /// @param lens the lens
    /// @param fNumber N, as engraved, dimensionless, > 0
    /// @param depths focus and point, metres
    /// @return blur-disc diameter on the sensor, metres, ≥ 0
    /// @throws IllegalArgumentException where the focus isn't beyond f or the point isn't in front of the entrance
    ///     pupil
    public static double blurDiameterMetres(LensModel lens, double fNumber, FocusedPoint depths) {
        double f = lens.focalLengthMetres();
        double m = magnificationAt(lens, depths.focusMetres());
        double pastFocusMetres = depths.pointMetres() - depths.focusMetres();
        double pupilToFocusMetres = f / m + f / lens.pupilRatio();
        double pupilToPointMetres = Ranges.checkPositive(pupilToFocusMetres + pastFocusMetres, "way from the pupil");
        double pupilMetres = f / Ranges.checkPositive(fNumber, "f-number");
        return m * pupilMetres * Math.abs(pastFocusMetres) / pupilToPointMetres;
    }

    /// Gives the angle of view across one side of the sensor at close focus, seen from the entrance pupil:
    /// `2 atan(x/(2f(1 + m/P)))`.
    ///
    /// **Source:** Jacobson, Photographic Lenses FAQ v1.18, 1997, Q6.
    ///
    /// @param lens the lens
    /// @param magnification m, dimensionless, ≥ 0
    /// @param sensorSideMetres x, width, height or diagonal, metres, > 0
    /// @return full angle, radians, 0 to π
    public static double angleOfViewRadians(LensModel lens, double magnification, double sensorSideMetres) {
        Ranges.checkPositive(sensorSideMetres, "sensor side");
        double reachMetres = lens.focalLengthMetres() * pupilFactor(lens, magnification);
        return 2 * Math.atan(sensorSideMetres / (2 * reachMetres));
    }

    /// Gives the focus distance that is equally blurred at both limits of a zone: the harmonic mean of the limits'
    /// distances from the entrance pupil.
    ///
    /// **Source:** own derivation, `docs/derivations/lens.md`.
    ///
    /// @param lens the lens
    /// @param zone the limits
    /// @return focus distance from the front principal plane, metres
    /// @throws IllegalArgumentException where the near limit isn't in front of the entrance pupil, or the focus
    /// found
    ///     isn't beyond the focal length
    public static double focusCentringMetres(LensModel lens, SharpZone zone) {
        double pupilMetres = pupilBehindMetres(lens);
        double near = Ranges.checkPositive(zone.nearMetres() + pupilMetres, "near limit's way from the pupil");
        double inverse = switch (zone.far()) {
            case FarLimit.At(double far) -> 1 / near + 1 / (far + pupilMetres);
            case FarLimit.Endless() -> 1 / near;
        };
        return Ranges.checkAbove(2 / inverse - pupilMetres, lens.focalLengthMetres(), "focus distance");
    }

    /// Gives the f-number that just makes a whole zone sharp, and where to focus for it. The inverse of [#sharpZone].
    ///
    /// **Source:** own derivation, `docs/derivations/lens.md`.
    ///
    /// @param lens the lens
    /// @param blurMetres largest accepted blur-disc diameter, metres, > 0
    /// @param zone what must be sharp
    /// @return f-number and focus distance
    /// @throws IllegalArgumentException as [#focusCentringMetres]
    public static FocusSetting settingFor(LensModel lens, double blurMetres, SharpZone zone) {
        double f = lens.focalLengthMetres();
        double focusMetres = focusCentringMetres(lens, zone);
        double m = magnificationAt(lens, focusMetres);
        double pupilToFocusMetres = f / m + f / lens.pupilRatio();
        double beforeFocusMetres = focusMetres - zone.nearMetres();
        double fNumber = m
                * f
                * beforeFocusMetres
                / (Ranges.checkPositive(blurMetres, "blur-disc diameter") * (pupilToFocusMetres - beforeFocusMetres));
        return new FocusSetting(fNumber, focusMetres);
    }
}
