package plumeline.light;

import java.util.OptionalDouble;
import plumeline.ranges.Ranges;

/// How a lamp's light goes out: luminous intensity by direction, in the lamp's own frame, as seen from so far that the
/// lamp is a point.
public sealed interface Intensity permits Intensity.AllRound, Intensity.Cone, Intensity.CosineBeam, IntensityTable {
    /// Where a beam is taken to end, as a share of its most intense direction: half.
    double BEAM_SHARE = 0.5;

    /// Where a field is taken to end, as a share of the most intense direction: a tenth.
    double FIELD_SHARE = 0.1;

    /// The narrowest beam that a cone or a cosine beam may have, radians, full angle (0.006 degrees).
    double NARROWEST_RADIANS = 1e-4;

    /// Gives the intensity in a direction.
    ///
    /// @param cRadians angle round the axis, radians, finite; repeats every 2π
    /// @param gammaRadians angle from the axis, radians, 0 to π
    /// @return luminous intensity, candelas, ≥ 0
    /// @throws IllegalArgumentException outside these ranges
    double candelas(double cRadians, double gammaRadians);

    /// Gives the intensity of the most intense direction.
    ///
    /// @return luminous intensity, candelas, ≥ 0
    double peakCandelas();

    /// Gives all light that leaves: the integral of the intensity over all directions, `∫∫ I sin γ dγ dC`.
    ///
    /// **Source:** definition of luminous flux and intensity (any text on photometry).
    ///
    /// @return luminous flux, lumens, ≥ 0
    double fluxLumens();

    /// Finds how wide the light is in a plane through the axis: the full angle between the outermost directions, to
    /// either side, that still have a share of the most intense direction of that plane.
    ///
    /// @param cRadians the plane's angle round the axis, radians, finite; it goes on at C + π
    /// @param share the share, dimensionless, over 0, at most 1
    /// @return full angle, radians, 0 to 2π; empty where the light has no such edge or there is none
    /// @throws IllegalArgumentException outside these ranges
    OptionalDouble findWidthRadians(double cRadians, double share);

    /// Finds the beam angle: where the intensity has fallen to half.
    ///
    /// **Source:** beam angle at 50 % of the most intense direction, common practice in lighting.
    ///
    /// @param cRadians the plane's angle round the axis, radians, finite
    /// @return full angle, radians; empty where the light has no such edge
    default OptionalDouble findBeamRadians(double cRadians) {
        return findWidthRadians(cRadians, BEAM_SHARE);
    }

    /// Finds the field angle: where the intensity has fallen to a tenth.
    ///
    /// **Source:** field angle at 10 % of the most intense direction, common practice in lighting.
    ///
    /// @param cRadians the plane's angle round the axis, radians, finite
    /// @return full angle, radians; empty where the light has no such edge
    default OptionalDouble findFieldRadians(double cRadians) {
        return findWidthRadians(cRadians, FIELD_SHARE);
    }

    /// The same in all directions: a bare small bulb, roughly.
    ///
    /// @param peakCandelas luminous intensity, candelas, ≥ 0
    record AllRound(double peakCandelas) implements Intensity {
        /// Checks the range.
        ///
        /// @throws IllegalArgumentException where the intensity is negative or not finite
        public AllRound {
            Ranges.checkNotNegative(peakCandelas, "intensity");
        }

        /// Spreads a flux over all directions: `I = Φ/(4π)`.
        ///
        /// @param lumens luminous flux, lumens, ≥ 0
        /// @return the distribution
        public static AllRound ofLumens(double lumens) {
            return new AllRound(Ranges.checkNotNegative(lumens, "flux") / (4 * Math.PI));
        }

        @Override
        public double candelas(double cRadians, double gammaRadians) {
            LampAngles.check(cRadians, gammaRadians);
            return peakCandelas;
        }

        @Override
        public double fluxLumens() {
            return 4 * Math.PI * peakCandelas;
        }

        @Override
        public OptionalDouble findWidthRadians(double cRadians, double share) {
            LampAngles.checkShare(cRadians, share);
            return OptionalDouble.empty();
        }
    }

    /// The same in all directions up to the edge of a cone round the axis, nothing outside: what lumens and a beam
    /// angle say where nothing else is known. The middle of a real beam is brighter.
    ///
    /// @param peakCandelas luminous intensity, candelas, ≥ 0
    /// @param beamRadians full angle a of the cone, radians, [#NARROWEST_RADIANS] to 2π
    record Cone(double peakCandelas, double beamRadians) implements Intensity {
        /// Checks the ranges.
        ///
        /// @throws IllegalArgumentException outside them
        public Cone {
            Ranges.checkNotNegative(peakCandelas, "intensity");
            Ranges.check(
                    beamRadians >= NARROWEST_RADIANS && beamRadians <= 2 * Math.PI,
                    "beam angle",
                    beamRadians,
                    "1e-4 to 2 pi");
        }

        /// Spreads a flux over the cone: `I = Φ/(2π (1 − cos(a/2)))`.
        ///
        /// **Source:** solid angle of a cone (any text on photometry).
        ///
        /// @param lumens luminous flux, lumens, ≥ 0
        /// @param beamRadians full angle a of the cone, radians, [#NARROWEST_RADIANS] to 2π
        /// @return the distribution
        public static Cone ofLumens(double lumens, double beamRadians) {
            double steradians = new Cone(1, beamRadians).fluxLumens();
            return new Cone(Ranges.checkNotNegative(lumens, "flux") / steradians, beamRadians);
        }

        @Override
        public double candelas(double cRadians, double gammaRadians) {
            LampAngles.check(cRadians, gammaRadians);
            return gammaRadians <= beamRadians / 2 ? peakCandelas : 0;
        }

        @Override
        public double fluxLumens() {
            // 2π(1 − cos(a/2)), written so that it keeps its digits in a narrow beam.
            double sine = Math.sin(beamRadians / 4);
            return 4 * Math.PI * sine * sine * peakCandelas;
        }

        @Override
        public OptionalDouble findWidthRadians(double cRadians, double share) {
            LampAngles.checkShare(cRadians, share);
            boolean edged = peakCandelas > 0 && beamRadians < 2 * Math.PI;
            return edged ? OptionalDouble.of(beamRadians) : OptionalDouble.empty();
        }
    }

    /// A beam that falls off softly from its axis: `I = I₀ cosᵐ γ` up to a right angle from the axis, nothing behind,
    /// with m such that half is left at half the beam angle. m = 1, a beam angle of 120 degrees, is an even flat
    /// surface (Lambert). For a lamp in a reflector or behind a lens it is our guess of the shape, used where only
    /// the beam angle is known: good to a few tenths inside the beam, worth little outside it.
    ///
    /// @param peakCandelas I₀, intensity along the axis, candelas, ≥ 0
    /// @param beamRadians full angle at which half is left, radians, [#NARROWEST_RADIANS] to less than π
    record CosineBeam(double peakCandelas, double beamRadians) implements Intensity {
        /// Checks the ranges.
        ///
        /// @throws IllegalArgumentException outside them
        public CosineBeam {
            Ranges.checkNotNegative(peakCandelas, "intensity");
            Ranges.check(
                    beamRadians >= NARROWEST_RADIANS && beamRadians < Math.PI,
                    "beam angle",
                    beamRadians,
                    "1e-4 to less than pi");
        }

        /// Gives a beam of a flux: `I₀ = Φ (m + 1)/(2π)`.
        ///
        /// **Source:** integral of cosᵐ γ sin γ over a hemisphere.
        ///
        /// @param lumens luminous flux, lumens, ≥ 0
        /// @param beamRadians full angle at which half is left, radians, [#NARROWEST_RADIANS] to less than π
        /// @return the distribution
        public static CosineBeam ofLumens(double lumens, double beamRadians) {
            double ofOneCandela = new CosineBeam(1, beamRadians).fluxLumens();
            return new CosineBeam(Ranges.checkNotNegative(lumens, "flux") / ofOneCandela, beamRadians);
        }

        @Override
        public double candelas(double cRadians, double gammaRadians) {
            LampAngles.check(cRadians, gammaRadians);
            double cosine = gammaRadians < Math.PI / 2 ? Math.cos(gammaRadians) : 0;
            return peakCandelas * Math.pow(cosine, exponent());
        }

        @Override
        public double fluxLumens() {
            return 2 * Math.PI * peakCandelas / (exponent() + 1);
        }

        @Override
        public OptionalDouble findWidthRadians(double cRadians, double share) {
            LampAngles.checkShare(cRadians, share);
            if (peakCandelas == 0) {
                return OptionalDouble.empty();
            }
            // 1 − cos γ at the share, written so that it keeps its digits in a narrow beam.
            double dip = -Math.expm1(Math.log(share) / exponent());
            return OptionalDouble.of(4 * Math.asin(Math.sqrt(dip / 2)));
        }

        /// m, from `cosᵐ(beam/2) = 1/2`.
        private double exponent() {
            return Math.log(BEAM_SHARE) / Math.log(Math.cos(beamRadians / 2));
        }
    }
}
