package plumeline.mirror;

import java.util.OptionalDouble;
import java.util.stream.DoubleStream;
import plumeline.geom.Vec;
import plumeline.light.Emitter;
import plumeline.light.Patch;
import plumeline.optics.Boundary;
import plumeline.ranges.Ranges;

/// How a body's surface mirrors.
public sealed interface Finish {
    /// Index of varnish, most plastics and glass, dimensionless; 1.45 to 1.6 (common practice).
    double USUAL_INDEX = 1.5;

    /// Finds the share of light that is mirrored.
    ///
    /// @param incidenceRadians to straight out of the surface, 0 to π/2
    /// @return 0 to 1, unpolarised; empty where the surface mirrors nothing that could be told apart
    OptionalDouble findReflectance(double incidenceRadians);

    /// Gives how much brighter a highlight is than the body about it, as a spot meter reads both: `log₂(1 + π L/(ρ
    /// E))`.
    ///
    /// @param mirrored L, luminance that is mirrored, cd/m², ≥ 0
    /// @param albedo ρ, share of the light that the body sends back evenly, 0 to 1, > 0
    /// @param lux E on the body there, lx, > 0
    /// @return stops, ≥ 0
    static double stopsOver(double mirrored, double albedo, double lux) {
        Ranges.checkNotNegative(mirrored, "luminance");
        Ranges.checkAtMost(Ranges.checkPositive(albedo, "albedo"), 1, "albedo");
        Ranges.checkPositive(lux, "illuminance");
        return Math.log1p(Math.PI * mirrored / (albedo * lux)) / Math.log(2);
    }

    /// A mirror of metal: `R₀ + (1 − R₀)(1 − cos i)⁵`. Within a few hundredths for bright metals up to 75 deg; the dip
    /// that metals have at steeper angles isn't in it.
    ///
    /// **Source:** Schlick, Computer Graphics Forum 13 (1994) 233, from memory.
    ///
    /// @param straightOn R₀, share mirrored straight on, 0 to 1
    record Metal(double straightOn) implements Finish {
        /// What polished metal mirrors straight on, 0.55 to 0.95: common practice.
        public static final Metal USUAL = new Metal(0.85);

        /// Checks the range.
        ///
        /// @throws IllegalArgumentException outside it
        public Metal {
            Ranges.checkAtMost(Ranges.checkNotNegative(straightOn, "share"), 1, "share");
        }

        @Override
        public OptionalDouble findReflectance(double incidenceRadians) {
            double rest = 1 - Math.cos(incidenceRadians);
            return OptionalDouble.of(straightOn + (1 - straightOn) * Math.pow(rest, 5));
        }
    }

    /// A smooth clear surface, over whatever: varnish, plastic, glass. It mirrors by Fresnel's formulas.
    ///
    /// @param index its index, dimensionless, ≥ 1
    record Gloss(double index) implements Finish {
        /// A smooth surface of the usual index.
        public static final Gloss USUAL = new Gloss(USUAL_INDEX);

        /// Checks the range.
        ///
        /// @throws IllegalArgumentException outside it
        public Gloss {
            new Boundary(1, index);
        }

        @Override
        public OptionalDouble findReflectance(double incidenceRadians) {
            return OptionalDouble.of(
                    new Boundary(1, index).reflectance(incidenceRadians).mean());
        }
    }

    /// A clear surface of small facets, their slopes spread by `exp(−s²/m²)/(π m²)`: a mirror image that is blurred and
    /// dimmed. Facets that stand before each other are left out, so it holds for m up to about 0.4 and up to 60
    /// deg.
    ///
    /// **Source:** Beckmann and Spizzichino 1963; Cook and Torrance, ACM Trans. Graphics 1 (1982) 7, both from
    /// memory.
    ///
    /// @param index its index, dimensionless, ≥ 1
    /// @param slope m, root mean square slope of the facets, dimensionless, 0.01 to 0.5; satin is about 0.1 to 0.3
    /// (own guess: try the lamp on the product)
    record Satin(double index, double slope) implements Finish {
        /// A satin surface whose facets nobody measured: a guess within 0.1 to 0.3.
        public static final Satin USUAL = new Satin(USUAL_INDEX, 0.2);

        private static final double GRAZES = 1e-3;

        /// Checks the ranges.
        ///
        /// @throws IllegalArgumentException outside them
        public Satin {
            new Boundary(1, index);
            Ranges.check(slope >= 0.01 && slope <= 0.5, "slope", slope, "0.01 to 0.5");
        }

        @Override
        public OptionalDouble findReflectance(double incidenceRadians) {
            return new Gloss(index).findReflectance(incidenceRadians);
        }

        /// Gives how far from its middle a thin straight light's highlight is half as bright, as an angle by which the
        /// surface turns: `m √(ln 2)`. The way of sight turns by twice as much.
        ///
        /// @return rad
        public double halfWidthRadians() {
            return slope * Math.sqrt(Math.log(2));
        }

        /// Gives the share of facets at a place that are turned so as to mirror a light to the camera.
        ///
        /// @param emitter the light
        /// @param patch the place on the surface
        /// @param camera who looks, m
        /// @return 0 to 1
        public double share(Emitter emitter, Patch patch, Vec camera) {
            Vec toCamera = camera.minus(patch.place()).unit();
            Vec one = (Math.abs(patch.facing().z()) < 0.9 ? Vec.UP : new Vec(1, 0, 0))
                    .cross(patch.facing())
                    .unit();
            Vec other = patch.facing().cross(one);
            double[] slopes = Lobe.directions(emitter.outline(patch.place()), patch.place()).stream()
                    .map(toCamera::plus)
                    .flatMapToDouble(half -> {
                        double out = slope * Math.max(GRAZES, half.dot(patch.facing()));
                        return DoubleStream.of(half.dot(one) / out, half.dot(other) / out);
                    })
                    .toArray();
            return Lobe.share(slopes);
        }
    }

    /// A surface in which nothing is mirrored: light by angle.
    record Matte() implements Finish {
        @Override
        public OptionalDouble findReflectance(double incidenceRadians) {
            return OptionalDouble.empty();
        }
    }
}
