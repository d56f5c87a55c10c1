package plumeline.water;

import java.util.OptionalDouble;
import java.util.function.DoubleUnaryOperator;

/// A property of matter: known where its law holds, unknown outside.
public sealed interface Figure {
    /// The law holds.
    ///
    /// @param value in the SI unit that the method's name says, finite
    /// @param errorShare the share of itself that it may be off at 95 %, of the law alone, ≥ 0
    record Known(double value, double errorShare) implements Figure {
        /// Checks that it is a number.
        ///
        /// @throws IllegalArgumentException where it isn't
        public Known {
            if (!Double.isFinite(value) || !(errorShare >= 0)) {
                throw new IllegalArgumentException("a figure of " + value + " with an error of " + errorShare);
            }
        }

        @Override
        public OptionalDouble find() {
            return OptionalDouble.of(value);
        }

        @Override
        public Figure map(DoubleUnaryOperator operation) {
            return new Known(operation.applyAsDouble(value), errorShare);
        }
    }

    /// What was given lies outside the law's range.
    ///
    /// @param measure what was given
    /// @param given its value, SI
    /// @param low the least for which the law holds, SI
    /// @param high the most for which the law holds, SI
    record Unknown(Measure measure, double given, double low, double high) implements Figure {
        @Override
        public OptionalDouble find() {
            return OptionalDouble.empty();
        }

        @Override
        public Figure map(DoubleUnaryOperator operation) {
            return this;
        }
    }

    /// What a range is of.
    enum Measure {
        /// Temperature, kelvin.
        TEMPERATURE,
        /// Density, kilograms a cubic metre.
        DENSITY,
        /// Wavelength in a vacuum, metres.
        WAVELENGTH,
        /// Vapour pressure, pascals.
        VAPOUR_PRESSURE,
        /// Share of the mass that is dissolved, fraction of one.
        MASS_SHARE,
        /// Relative humidity, fraction of one.
        HUMIDITY,
        /// Contact angle, radians.
        CONTACT_ANGLE,
        /// Diameter of a drop's wetted base, metres.
        DIAMETER
    }

    /// Finds the value.
    ///
    /// @return the value, SI; empty outside the range
    OptionalDouble find();

    /// Turns a known value into another, with the same share of error.
    ///
    /// @param operation what is done to the value; to be used where it is about proportional
    /// @return the other; an unknown one stays itself
    Figure map(DoubleUnaryOperator operation);
}
