package plumeline.ask.light;

import java.util.OptionalDouble;
import plumeline.geom.Vec;
import plumeline.light.Exposure;
import plumeline.light.Panel;
import plumeline.light.Patch;
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
    record Inputs(Source source, double metres, double incidenceRadians, Exposure exposure) {}

    /// What was found.
    ///
    /// @param inputs what was asked
    /// @param lux the illuminance of the patch
    /// @param exactMetres the distance at which it is just right; empty where none is
    record Found(Inputs inputs, double lux, OptionalDouble exactMetres) {
        double marginStops() {
            return inputs.exposure.marginStops(lux);
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
