package plumeline.water;

import java.util.function.DoubleSupplier;

/// Where a law holds.
record Range(Figure.Measure measure, double low, double high) {
    /// Rounding in a unit's change, such as degC to K, doesn't put a bound outside.
    private static final double SLACK_SHARE = 1e-12;

    static Range ofCelsius(double lowCelsius, double highCelsius) {
        return new Range(
                Figure.Measure.TEMPERATURE,
                lowCelsius + Laws.ZERO_CELSIUS_KELVIN,
                highCelsius + Laws.ZERO_CELSIUS_KELVIN);
    }

    boolean holds(double value) {
        return value >= low - SLACK_SHARE * Math.abs(low) && value <= high + SLACK_SHARE * Math.abs(high);
    }

    Figure.Unknown refuse(double value) {
        return new Figure.Unknown(measure, value, low, high);
    }

    /// The law's value where it holds.
    Figure figure(double value, double errorShare, DoubleSupplier law) {
        return holds(value) ? new Figure.Known(law.getAsDouble(), errorShare) : refuse(value);
    }
}
