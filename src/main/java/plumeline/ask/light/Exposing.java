package plumeline.ask.light;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import plumeline.geom.Vec;
import plumeline.light.Exposure;
import plumeline.light.Latitude;
import plumeline.light.Opening;
import plumeline.light.Panel;
import plumeline.light.Patch;
import plumeline.light.Photometry;
import plumeline.light.Photometry.Tilt;
import plumeline.light.Thirds;
import plumeline.roots.Roots;

/// What `exposure` finds, in plain SI numbers.
final class Exposing {
    /// Distances for exact exposure are looked for between these, m.
    private static final double NEAREST_METRES = 0.01;

    private static final double FARTHEST_METRES = 100;

    private Exposing() {}

    /// What shines, its middle facing the patch.
    sealed interface Source {
        /// The illuminance of a patch.
        ///
        /// @param metres from the light's middle to the patch
        /// @param incidenceRadians between the light's way and straight out of the patch
        /// @return lx
        double lux(double metres, double incidenceRadians);

        /// As from a point: by the inverse square of the distance.
        ///
        /// @param candela its intensity toward the patch, cd
        record Point(double candela) implements Source {
            @Override
            public double lux(double metres, double incidenceRadians) {
                return candela / (metres * metres) * Math.max(0, Math.cos(incidenceRadians));
            }
        }

        /// A lamp as its photometric file tells, as from a point.
        ///
        /// @param file the file's name
        /// @param photometry what it says
        /// @param offAxisRadians from the file's axis to the patch, seen from the lamp, 0 to π
        /// @param planeRadians the C plane that goes to the patch
        record Lamp(String file, Photometry photometry, double offAxisRadians, double planeRadians) implements Source {
            /// The intensity to the patch, of a lamp that isn't tilted.
            double candela() {
                return photometry.intensity().candelas(planeRadians, offAxisRadians)
                        * findUntiltedFactor().orElse(1);
            }

            /// What all intensities are times untilted; empty where the file doesn't tell.
            OptionalDouble findUntiltedFactor() {
                return photometry.tilt() instanceof Tilt.Factors factors
                        ? factors.findFactor(0)
                        : OptionalDouble.empty();
            }

            /// The longest side of what glows, m; 0 where the file doesn't tell.
            double longestMetres() {
                Opening opening = photometry.opening();
                return Math.max(opening.heightMetres(), Math.max(opening.c0Metres(), opening.c90Metres()));
            }

            @Override
            public double lux(double metres, double incidenceRadians) {
                return new Point(candela()).lux(metres, incidenceRadians);
            }
        }

        /// An even panel that shines to its front alone.
        ///
        /// @param widthMetres its width, m
        /// @param heightMetres its height, along the upright about which the patch turns, m
        /// @param lumens all of its light, lm
        record Flat(double widthMetres, double heightMetres, double lumens) implements Source {
            @Override
            public double lux(double metres, double incidenceRadians) {
                double luminance = lumens / (Math.PI * widthMetres * heightMetres);
                Panel panel = new Panel(
                        new Vec(0, -metres, 0),
                        new Vec(0, 1, 0),
                        new Vec(1, 0, 0),
                        widthMetres,
                        heightMetres,
                        luminance);
                Vec facing = new Vec(Math.sin(incidenceRadians), -Math.cos(incidenceRadians), 0);
                return panel.lux(new Patch(Vec.ZERO, facing));
            }
        }
    }

    /// What is asked.
    ///
    /// @param source what shines
    /// @param metres how far it is
    /// @param incidenceRadians how far the patch is turned from it
    /// @param exposure the camera's setting
    /// @param frame how its shutter counts
    /// @param surface what it lights, and what the camera holds of it
    record Inputs(
            Source source, double metres, double incidenceRadians, Exposure exposure, Frame frame, Surface surface) {}

    /// A frame.
    ///
    /// @param seconds how long it lasts, s
    /// @param shutter how the shutter was given
    /// @param stop what stands before its stop's number: `f/` or `T`
    record Frame(double seconds, Given shutter, String stop) {
        /// How a shutter is given.
        enum Given {
            ANGLE,
            TIME
        }
    }

    /// What is lit, as far as it was said.
    ///
    /// @param reflectance share of one; empty where nobody says
    /// @param latitude what the camera holds at the sensitivity set; empty where nobody says
    record Surface(OptionalDouble reflectance, Optional<Latitude> latitude) {}

    /// What was found.
    ///
    /// @param inputs what was asked
    /// @param lux the illuminance of the patch
    /// @param exactMetres the distance at which it is just right; empty where none is
    record Found(Inputs inputs, double lux, OptionalDouble exactMetres) {
        double marginStops() {
            return inputs.exposure.marginStops(lux);
        }

        /// The f- or T-number in thirds that leaves just enough light; empty where none does.
        OptionalDouble findNumber() {
            return lux > 0
                    ? Thirds.findAtMost(Thirds.F_NUMBERS, inputs.exposure.number() * Math.pow(2, marginStops() / 2))
                    : OptionalDouble.empty();
        }

        /// The sensitivity in thirds that makes it just enough; empty where none does.
        OptionalDouble findSensitivity() {
            return lux > 0
                    ? Thirds.findAtLeast(
                            Thirds.SENSITIVITIES, inputs.exposure.sensitivity() * Math.pow(2, -marginStops()))
                    : OptionalDouble.empty();
        }

        /// The shutter in thirds that makes it just enough, s; empty where a frame is too short for that.
        OptionalDouble findShutterSeconds() {
            double seconds = inputs.exposure.seconds() * Math.pow(2, -marginStops());
            return lux > 0 ? Thirds.findAtLeast(listShutters(), seconds) : OptionalDouble.empty();
        }

        private List<Double> listShutters() {
            double frame = inputs.frame.seconds;
            return switch (inputs.frame.shutter) {
                case ANGLE ->
                    Thirds.SHUTTER_DEGREES.stream()
                            .map(degrees -> degrees / 360 * frame)
                            .toList();
                case TIME ->
                    Thirds.PARTS_OF_A_SECOND.stream()
                            .map(parts -> 1 / parts)
                            .filter(time -> time <= frame)
                            .toList();
            };
        }

        /// Where the surface lands, stops over mid grey; empty where nobody says how it reflects, or no light comes.
        OptionalDouble findLandsStops() {
            return lux > 0 && inputs.surface.reflectance.isPresent()
                    ? OptionalDouble.of(Latitude.landsStops(
                            inputs.surface.reflectance.getAsDouble(), inputs.exposure.constant(), marginStops()))
                    : OptionalDouble.empty();
        }
    }

    static Found answer(Inputs inputs) {
        return new Found(inputs, inputs.source.lux(inputs.metres, inputs.incidenceRadians), findExactMetres(inputs));
    }

    private static OptionalDouble findExactMetres(Inputs inputs) {
        double needed = inputs.exposure.neededLux();
        if (inputs.source.lux(FARTHEST_METRES, inputs.incidenceRadians) >= needed) {
            return OptionalDouble.empty();
        }
        double exact = Roots.end(
                metres -> inputs.source.lux(metres, inputs.incidenceRadians) < needed, FARTHEST_METRES, NEAREST_METRES);
        return exact <= NEAREST_METRES ? OptionalDouble.empty() : OptionalDouble.of(exact);
    }
}
