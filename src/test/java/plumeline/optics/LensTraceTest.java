package plumeline.optics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

/// The lens sums against rays traced by matrices through a thin lens whose stop stands q in front of it (the stop is
/// the
/// entrance pupil, its image through the lens the exit pupil). No formula of the class is used to trace.
final class LensTraceTest {
    private static final double[] FOCAL_METRES = {0.024, 0.05, 0.1};
    private static final double[] STOP_SHARES = {-0.6, 0, 0.35};
    private static final double[] MAGNIFICATIONS = {0.02, 0.116, 0.5, 1.4};

    @Test
    void blur_tracedEdgeRays_agree() {
        everyCase((lens, stopMetres, m) -> {
            double focus = focusByNewton(lens, m);
            for (double shift : new double[] {-0.04, -0.003, 0.002, 0.03}) {
                double point = focus + shift * (focus - stopMetres);
                double traced = tracedBlur(lens, 5.6, stopMetres, new FocusedPoint(focus, point));
                assertThat(Optics.blurDiameterMetres(lens, 5.6, new FocusedPoint(focus, point)))
                        .isCloseTo(traced, within(1e-9 * Math.abs(traced) + 1e-15));
            }
        });
    }

    @Test
    void limits_tracedBlurThere_isTheLargestAccepted() {
        everyCase((lens, stopMetres, m) -> {
            double focus = focusByNewton(lens, m);
            Sharpness sharpness = new Sharpness(lens, 8, 2e-5);
            SharpZone zone = Optics.sharpZone(sharpness, focus);
            FocusedPoint near = new FocusedPoint(focus, zone.nearMetres());
            assertThat(tracedBlur(lens, 8, stopMetres, near)).isCloseTo(2e-5, within(1e-12));
            if (zone.far() instanceof FarLimit.At(double far)) {
                assertThat(tracedBlur(lens, 8, stopMetres, new FocusedPoint(focus, far)))
                        .isCloseTo(2e-5, within(1e-12));
            }
        });
    }

    @Test
    void workingFNumber_tracedCone_agrees() {
        everyCase((lens, stopMetres, m) -> {
            double focus = focusByNewton(lens, m);
            double radius = lens.focalLengthMetres() / 4 / 2;
            Ray edge = new Ray(radius, radius / (focus - stopMetres))
                    .ahead(stopMetres)
                    .bent(lens.focalLengthMetres());
            double traced = 1 / (2 * Math.abs(edge.slope()));
            assertThat(Optics.workingFNumber(lens, 4, m)).isCloseTo(traced, within(1e-9 * traced));
        });
    }

    @Test
    void imageDistance_tracedRays_crossThere() {
        everyCase((lens, stopMetres, m) -> {
            double focus = focusByNewton(lens, m);
            Ray ray = new Ray(0, 0.01).ahead(focus).bent(lens.focalLengthMetres());
            Ray onSensor = ray.ahead(Optics.imageDistanceMetres(lens, m));
            assertThat(onSensor.height()).isCloseTo(0, within(1e-15));
        });
    }

    private interface Case {
        void check(LensModel lens, double stopMetres, double m);
    }

    private static void everyCase(Case check) {
        int count = 0;
        for (double f : FOCAL_METRES) {
            for (double share : STOP_SHARES) {
                for (double m : MAGNIFICATIONS) {
                    // A stop q before the lens is imaged by it f/(f − q) as large.
                    check.check(new LensModel(f, 1 / (1 - share)), share * f, m);
                    count++;
                }
            }
        }
        assertThat(count).isEqualTo(36);
    }

    /// Newton's own form of the lens equation, thing and image counted from the focal points: x·x' = f².
    private static double focusByNewton(LensModel lens, double m) {
        return lens.focalLengthMetres() + lens.focalLengthMetres() / m;
    }

    private static double tracedBlur(LensModel lens, double fNumber, double stopMetres, FocusedPoint depths) {
        double f = lens.focalLengthMetres();
        double sensor = 1 / (1 / f - 1 / depths.focusMetres());
        double radius = f / fNumber / 2;
        double way = depths.pointMetres() - stopMetres;
        Ray edge = new Ray(radius, radius / way);
        return 2 * Math.abs(edge.ahead(stopMetres).bent(f).ahead(sensor).height());
    }

    /// A ray's height and slope, acted on by the two matrices of a thin-lens system.
    private record Ray(double height, double slope) {
        Ray ahead(double metres) {
            return new Ray(height + slope * metres, slope);
        }

        Ray bent(double focalLengthMetres) {
            return new Ray(height, slope - height / focalLengthMetres);
        }
    }
}
