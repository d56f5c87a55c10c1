package plumeline.want;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import plumeline.optics.Optics;
import plumeline.plan.Camera;
import plumeline.plan.Kit;
import plumeline.plan.WantLine;
import plumeline.quantity.Quantity;
import plumeline.stage.Picture;
import plumeline.stage.Scene;

/// The kit can do what the shot asks: the lens focuses that near, has that aperture, the body has that rate.
///
/// Margin in mm from the focus to the lens's nearest one, both from the sensor mark, which lies `sensor_behind` the
/// lens point, f·(1 + m) where not given. Beyond the lens's f-numbers it is what lacks there, if that is less: the
/// width by which the lens can't open, or close, as an entrance pupil of f/N. A rate that the body lacks has no measure
/// in mm: with it the margin is 0 at most.
///
/// @param line as written
/// @param camera the shot's camera
record Reaches(WantLine line, Camera camera) implements Want {
    private static final double SAME_RATE = 1e-6;
    private static final double LOOSE = 1000;
    private static final double LEAST_F_NUMBER = 0.1;

    /// An engraved f-number is a rounded one; this much beyond the lens's range still counts as its end. Common
    /// practice.
    private static final double SAME_F_NUMBER = 0.005;

    @Override
    public String unit() {
        return "mm";
    }

    @Override
    public double[] parts(Moments moments) {
        Kit.Lens lens = camera.lens();
        double aperture = lens.fNumbers()
                .map(numbers -> Parts.MILLIMETRES
                        * apertureMetres(numbers, moments.at(0).picture()))
                .orElse(LOOSE);
        if (lens.nearest().isEmpty()) {
            return new double[] {LOOSE, aperture};
        }
        double fromSensor = moments.during(line.when()).stream()
                .map(Scene::picture)
                .mapToDouble(picture -> picture.focusMetres() + sensorBehindMetres(picture))
                .min()
                .orElseThrow();
        return new double[] {
            Parts.MILLIMETRES * (fromSensor - lens.nearest().get().si()), aperture
        };
    }

    /// The way to the nearest focus; what the lens's f-numbers or the body's modes lack counts only where it lacks.
    @Override
    public double margin(double[] parts) {
        double margin = Math.min(parts[0], parts[1] < 0 ? parts[1] : parts[0]);
        return lacksMode() ? Math.min(margin, 0) : margin;
    }

    /// Where the lens's nearest focus isn't told.
    @Override
    public Optional<String> findUnknown(Moments moments) {
        return camera.lens().nearest().isPresent()
                ? Optional.empty()
                : Optional.of("Not known: how near " + camera.lens().name() + " focuses. Give its `nearest`.");
    }

    @Override
    public Optional<String> findCaution(Moments moments) {
        List<String> untold = new ArrayList<>();
        if (camera.lens().fNumbers().isEmpty()) {
            untold.add(camera.lens().name() + "'s `f_numbers`");
        }
        if (camera.body().modes().isEmpty() && camera.findRate().isPresent()) {
            untold.add(camera.body().name() + "'s `modes`");
        }
        return untold.isEmpty()
                ? Optional.empty()
                : Optional.of("Not checked, as the plan doesn't give them: " + String.join(", ", untold) + ".");
    }

    private double sensorBehindMetres(Picture picture) {
        double focal = picture.lens().focalLengthMetres();
        return camera.findSensorBehind()
                .map(Quantity::si)
                .orElse(focal * (1 + Optics.magnificationAt(picture.lens(), picture.focusMetres())));
    }

    private static double apertureMetres(Kit.FNumbers numbers, Picture picture) {
        double focal = picture.lens().focalLengthMetres();
        double pupil = focal / Math.max(picture.fNumber(), LEAST_F_NUMBER);
        return Math.min(
                focal / (numbers.least() * (1 - SAME_F_NUMBER)) - pupil,
                pupil - focal / (numbers.greatest() * (1 + SAME_F_NUMBER)));
    }

    @Override
    public Optional<String> findLack(Moments moments) {
        List<String> lacks = new ArrayList<>();
        Picture picture = moments.at(0).picture();
        Optional<Kit.FNumbers> numbers = camera.lens().fNumbers();
        if (numbers.isPresent() && apertureMetres(numbers.get(), picture) < 0) {
            lacks.add(String.format(
                    Locale.ROOT,
                    "%s has f/%s to f/%s, not f/%s.",
                    camera.lens().name(),
                    plain(numbers.get().least()),
                    plain(numbers.get().greatest()),
                    plain(picture.fNumber())));
        }
        Optional<Quantity> rate = camera.findRate();
        if (rate.isPresent() && lacksMode()) {
            String modes = camera.body().modes().stream()
                    .map(mode -> mode.rate().toText())
                    .reduce((a, b) -> a + ", " + b)
                    .orElse("");
            lacks.add(camera.body().name() + " has no mode of " + rate.get().toText() + "; it has " + modes + ".");
        }
        return lacks.isEmpty() ? Optional.empty() : Optional.of(String.join(" ", lacks));
    }

    private boolean lacksMode() {
        Optional<Quantity> rate = camera.findRate();
        List<Kit.Mode> modes = camera.body().modes();
        return rate.isPresent()
                && !modes.isEmpty()
                && modes.stream()
                        .noneMatch(
                                mode -> Math.abs(mode.rate().si() - rate.get().si()) < SAME_RATE);
    }

    private static String plain(double number) {
        return number == Math.rint(number) ? String.valueOf((long) number) : String.format(Locale.ROOT, "%.1f", number);
    }
}
