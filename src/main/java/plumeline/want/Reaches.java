package plumeline.want;

import java.util.Locale;
import java.util.Optional;
import plumeline.plan.Camera;
import plumeline.plan.Kit;
import plumeline.plan.WantLine;
import plumeline.quantity.Quantity;
import plumeline.stage.Picture;
import plumeline.stage.Scene;

/// The kit can do what the shot asks: the lens focuses that near, has that aperture, the body has that rate.
///
/// Margin in mm from the focus to the lens's nearest one, both from the sensor mark, which lies `sensor_behind` the
/// lens point, f·(1 + m) where not given. An f-number or a rate that the kit lacks fails whatever the margin.
///
/// @param line as written
/// @param camera the shot's camera
record Reaches(WantLine line, Camera camera) implements Want {
    private static final double SAME_RATE = 1e-6;

    /// An engraved f-number is a rounded one; this much beyond the lens's range still counts as its end. Common
    /// practice.
    private static final double SAME_F_NUMBER = 0.005;

    @Override
    public String unit() {
        return "mm";
    }

    @Override
    public double[] parts(Moments moments) {
        Scene scene = moments.at(0);
        Kit.Lens lens = camera.lens();
        double aperture = lens.fNumbers()
                .map(n -> apertureMargin(n, scene.picture().fNumber()))
                .orElse(1000.0);
        if (lens.nearest().isEmpty()) {
            return new double[] {1000, aperture};
        }
        double fromSensor = scene.picture().focusMetres() + sensorBehindMetres(scene.picture());
        return new double[] {
            Parts.MILLIMETRES * (fromSensor - lens.nearest().get().si()), aperture
        };
    }

    /// The way to the nearest focus alone: an f-number in stops is no part of a length, it only passes or fails.
    @Override
    public double margin(double[] parts) {
        return parts[0];
    }

    private double sensorBehindMetres(Picture picture) {
        return camera.findSensorBehind().map(Quantity::si).orElse(picture.imageMetres());
    }

    private static double apertureMargin(Kit.FNumbers numbers, double fNumber) {
        return Math.min(
                fNumber - numbers.least() * (1 - SAME_F_NUMBER), numbers.greatest() * (1 + SAME_F_NUMBER) - fNumber);
    }

    @Override
    public Optional<String> findLack(Moments moments) {
        double fNumber = moments.at(0).picture().fNumber();
        Optional<Kit.FNumbers> numbers = camera.lens().fNumbers();
        if (numbers.isPresent() && apertureMargin(numbers.get(), fNumber) < 0) {
            return Optional.of(String.format(
                    Locale.ROOT,
                    "%s has f/%s to f/%s, not f/%s.",
                    camera.lens().name(),
                    plain(numbers.get().least()),
                    plain(numbers.get().greatest()),
                    plain(fNumber)));
        }
        Optional<Quantity> rate = camera.findRate();
        if (rate.isPresent() && !camera.body().modes().isEmpty() && !hasMode(rate.get())) {
            String modes = camera.body().modes().stream()
                    .map(mode -> mode.rate().toText())
                    .reduce((a, b) -> a + ", " + b)
                    .orElse("");
            return Optional.of(
                    camera.body().name() + " has no mode of " + rate.get().toText() + "; it has " + modes + ".");
        }
        return Optional.empty();
    }

    private boolean hasMode(Quantity rate) {
        return camera.body().modes().stream()
                .anyMatch(mode -> Math.abs(mode.rate().si() - rate.si()) < SAME_RATE);
    }

    private static String plain(double number) {
        return number == Math.rint(number) ? String.valueOf((long) number) : String.format(Locale.ROOT, "%.1f", number);
    }
}
