package plumeline.light;

import java.util.List;
import java.util.OptionalDouble;
import plumeline.ranges.Ranges;

/// What a photometric file says of a lamp.
///
/// @param intensity where its light goes
/// @param opening what of it glows, and how large that is
/// @param watts electrical power with its ballast, watts, ≥ 0; 0 where it isn't told
/// @param lamp what the file says is in it, as written; empty where it says nothing
/// @param statedFlux the flux that the file states, beside what its table adds up to
/// @param tilt what the file says of tilting the lamp
public record Photometry(
        IntensityTable intensity, Opening opening, double watts, String lamp, StatedFlux statedFlux, Tilt tilt) {
    /// Checks the range.
    ///
    /// @throws IllegalArgumentException where the watts are negative or not finite
    public Photometry {
        Ranges.checkNotNegative(watts, "watts");
    }

    /// A flux that a file states. Its table needn't add up to it: a check of the file.
    public sealed interface StatedFlux {
        /// None is stated (absolute photometry in LM-63).
        record None() implements StatedFlux {}

        /// The flux of the bare lamps, before what housing and reflector keep.
        ///
        /// @param lumens lumens, > 0
        record OfLamps(double lumens) implements StatedFlux {}

        /// The flux that leaves the whole, as the table should add up to.
        ///
        /// @param lumens lumens, > 0
        record Leaving(double lumens) implements StatedFlux {}
    }

    /// What a file says of tilting the lamp.
    public sealed interface Tilt {
        /// Tilting changes nothing of the light, as far as the file knows.
        record None() implements Tilt {}

        /// The lamp gives another share of its light when tilted (some discharge lamps).
        ///
        /// @param lampPosition 1 upright while untilted; 2 lying, and staying so when tilted; 3 lying, and
        /// turned up by tilting
        /// @param radians angles of tilt, radians, growing
        /// @param factors at each, what all intensities are times, dimensionless, ≥ 0
        record Factors(int lampPosition, List<Double> radians, List<Double> factors) implements Tilt {
            /// Copies the lists and checks that they are of one length, at least one.
            ///
            /// @throws IllegalArgumentException where they aren't
            public Factors {
                radians = List.copyOf(radians);
                factors = List.copyOf(factors);
                Ranges.check(
                        !radians.isEmpty() && radians.size() == factors.size(),
                        "number of factors",
                        factors.size(),
                        "that of the angles, at least one");
            }

            /// Finds what all intensities are times at a tilt, linear between the angles that are told.
            ///
            /// @param tiltRadians how far the lamp is tilted, radians
            /// @return the factor, dimensionless, ≥ 0; empty outside the angles that are told
            public OptionalDouble findFactor(double tiltRadians) {
                for (int i = 0; i < radians.size(); i++) {
                    if (radians.get(i) == tiltRadians) {
                        return OptionalDouble.of(factors.get(i));
                    }
                    if (i > 0 && radians.get(i - 1) < tiltRadians && tiltRadians < radians.get(i)) {
                        double share = (tiltRadians - radians.get(i - 1)) / (radians.get(i) - radians.get(i - 1));
                        return OptionalDouble.of(factors.get(i - 1) + (factors.get(i) - factors.get(i - 1)) * share);
                    }
                }
                return OptionalDouble.empty();
            }
        }

        /// The lamp was measured tilted (road lamps): the table's axis is the vertical and not the lamp's own.
        ///
        /// @param radians by how much, radians, not 0
        record Measured(double radians) implements Tilt {}
    }
}
