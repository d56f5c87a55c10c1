package plumeline.light;

import java.util.Comparator;
import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.DoubleStream;

/// What is engraved on rings and shown in menus, in thirds of a stop.
///
/// **Source:** the usual rounded series of lenses, cameras and meters; common practice.
public final class Thirds {
    /// F-numbers from 1 to 64.
    public static final List<Double> F_NUMBERS = List.of(
            1.0, 1.1, 1.2, 1.4, 1.6, 1.8, 2.0, 2.2, 2.5, 2.8, 3.2, 3.5, 4.0, 4.5, 5.0, 5.6, 6.3, 7.1, 8.0, 9.0, 10.0,
            11.0, 13.0, 14.0, 16.0, 18.0, 20.0, 22.0, 25.0, 29.0, 32.0, 36.0, 40.0, 45.0, 51.0, 57.0, 64.0);

    /// Sensitivities from ISO 25 to 102,400.
    public static final List<Double> SENSITIVITIES = List.of(
            25.0, 32.0, 40.0, 50.0, 64.0, 80.0, 100.0, 125.0, 160.0, 200.0, 250.0, 320.0, 400.0, 500.0, 640.0, 800.0,
            1000.0, 1250.0, 1600.0, 2000.0, 2500.0, 3200.0, 4000.0, 5000.0, 6400.0, 8000.0, 10_000.0, 12_800.0,
            16_000.0, 20_000.0, 25_600.0, 32_000.0, 40_000.0, 51_200.0, 64_000.0, 80_000.0, 102_400.0);

    /// Denominators of shutter times, 1 s to 1/8000 s.
    public static final List<Double> PARTS_OF_A_SECOND = List.of(
            1.0, 1.3, 1.6, 2.0, 2.5, 3.0, 4.0, 5.0, 6.0, 8.0, 10.0, 13.0, 15.0, 20.0, 25.0, 30.0, 40.0, 50.0, 60.0,
            80.0, 100.0, 125.0, 160.0, 200.0, 250.0, 320.0, 400.0, 500.0, 640.0, 800.0, 1000.0, 1250.0, 1600.0, 2000.0,
            2500.0, 3200.0, 4000.0, 5000.0, 6400.0, 8000.0);

    /// Shutter angles from 360 down to 5.6, degrees.
    public static final List<Double> SHUTTER_DEGREES = List.of(
            360.0, 286.0, 227.0, 180.0, 143.0, 113.0, 90.0, 72.0, 57.0, 45.0, 36.0, 28.0, 22.5, 18.0, 14.0, 11.2, 9.0,
            7.0, 5.6);

    /// What differs by less is the same setting.
    private static final double SAME = 1e-9;

    private Thirds() {}

    /// Finds what is nearest by ratio.
    ///
    /// @param series what there is, each > 0
    /// @param value what is sought, in the same unit, > 0
    /// @return one of the series
    public static double nearest(List<Double> series, double value) {
        return series.stream()
                .min(Comparator.comparingDouble(each -> Math.abs(Math.log(each / value))))
                .orElse(value);
    }

    /// Finds the greatest that isn't more.
    ///
    /// @param series what there is
    /// @param most the most, in the same unit
    /// @return one of the series; empty where all are more
    public static OptionalDouble findAtMost(List<Double> series, double most) {
        return series.stream()
                .mapToDouble(Double::doubleValue)
                .filter(each -> each <= most * (1 + SAME))
                .max();
    }

    /// Finds the least that isn't less.
    ///
    /// @param series what there is
    /// @param least the least, in the same unit
    /// @return one of the series; empty where all are less
    public static OptionalDouble findAtLeast(List<Double> series, double least) {
        return series.stream()
                .mapToDouble(Double::doubleValue)
                .filter(each -> each >= least * (1 - SAME))
                .min();
    }

    /// Lists all within two ends, and the ends.
    ///
    /// @param series what there is
    /// @param low the low end, in the same unit
    /// @param high the high end
    /// @return growing, each once
    public static List<Double> between(List<Double> series, double low, double high) {
        return DoubleStream.concat(
                        DoubleStream.of(low, high),
                        series.stream().mapToDouble(Double::doubleValue).filter(each -> each >= low && each <= high))
                .sorted()
                .distinct()
                .boxed()
                .toList();
    }
}
