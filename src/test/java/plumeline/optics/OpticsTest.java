package plumeline.optics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
import org.junit.jupiter.api.Test;

/// Inverses, limits, monotony and ranges of the lens sums.
final class OpticsTest {
    private static final long SEED = 20261125;
    private static final LensModel HUNDRED = LensModel.ofFocalLength(0.1);

    @Test
    void distanceAndMagnification_areInverse() {
        Random random = new Random(SEED);
        for (int i = 0; i < 2000; i++) {
            LensModel lens = lens(random);
            double m = Math.exp(random.nextDouble() * 8 - 6);
            double back = Optics.magnificationAt(lens, Optics.distanceForMagnificationMetres(lens, m));
            assertThat(back).as("seed %d, case %d", SEED, i).isCloseTo(m, within(1e-12 * m * (1 + m) * 10));
        }
    }

    @Test
    void settingFor_itsOwnZone_isRecovered() {
        Random random = new Random(SEED);
        for (int i = 0; i < 2000; i++) {
            Sharpness sharpness = new Sharpness(lens(random), 1 + 30 * random.nextDouble(), 2e-5);
            double focus = sharpness.lens().focalLengthMetres() * (1.3 + 40 * random.nextDouble());
            SharpZone zone = Optics.sharpZone(sharpness, focus);
            FocusSetting found = Optics.settingFor(sharpness.lens(), 2e-5, zone);
            if (zone.far() instanceof FarLimit.Endless && focus > Optics.hyperfocalMetres(sharpness)) {
                assertThat(found.fNumber()).isLessThanOrEqualTo(sharpness.fNumber() * (1 + 1e-9));
            } else {
                assertThat(found.focusMetres()).isCloseTo(focus, within(1e-9 * focus));
                assertThat(found.fNumber()).isCloseTo(sharpness.fNumber(), within(1e-6 * sharpness.fNumber()));
            }
        }
    }

    @Test
    void blurAtBothLimits_isTheLargestAccepted() {
        Sharpness sharpness = new Sharpness(new LensModel(0.1, 1.7), 11, 2e-5);
        SharpZone zone = Optics.sharpZone(sharpness, 0.5);
        assertThat(blur(sharpness, 0.5, zone.nearMetres())).isCloseTo(2e-5, within(1e-15));
        assertThat(blur(sharpness, 0.5, ((FarLimit.At) zone.far()).metres())).isCloseTo(2e-5, within(1e-15));
        assertThat(blur(sharpness, 0.5, 0.5)).isZero();
    }

    @Test
    void farLimit_focusAtHyperfocal_isEndless() {
        Sharpness sharpness = new Sharpness(HUNDRED, 8, 2e-5);
        double hyperfocal = Optics.hyperfocalMetres(sharpness);
        assertThat(Optics.farLimit(sharpness, hyperfocal)).isEqualTo(new FarLimit.Endless());
        assertThat(Optics.farLimit(sharpness, hyperfocal * 1.5)).isEqualTo(new FarLimit.Endless());
        assertThat(Optics.farLimit(sharpness, hyperfocal * (1 - 1e-9))).isInstanceOf(FarLimit.At.class);
    }

    @Test
    void nearLimit_focusAtHyperfocal_isHalfOfIt() {
        Sharpness sharpness = new Sharpness(HUNDRED, 8, 2e-5);
        double hyperfocal = Optics.hyperfocalMetres(sharpness);
        assertThat(Optics.nearLimitMetres(sharpness, hyperfocal)).isCloseTo(hyperfocal / 2, within(1e-9));
    }

    @Test
    void settingFor_endlessZone_isTheHyperfocalSetting() {
        FocusSetting found = Optics.settingFor(HUNDRED, 2e-5, new SharpZone(10, new FarLimit.Endless()));
        Sharpness sharpness = new Sharpness(HUNDRED, found.fNumber(), 2e-5);
        assertThat(found.focusMetres()).isCloseTo(20, within(1e-12));
        assertThat(Optics.hyperfocalMetres(sharpness)).isCloseTo(20, within(1e-9));
    }

    @Test
    void sharpZone_growsWithFNumberAndBlurAndPupil() {
        double last = 0;
        for (double fNumber = 1; fNumber < 64; fNumber *= 1.1) {
            double depth = depth(new Sharpness(HUNDRED, fNumber, 2e-5));
            assertThat(depth).isGreaterThan(last);
            last = depth;
        }
        assertThat(depth(new Sharpness(HUNDRED, 8, 3e-5))).isGreaterThan(depth(new Sharpness(HUNDRED, 8, 2e-5)));
        assertThat(depth(new Sharpness(new LensModel(0.1, 0.5), 8, 2e-5)))
                .isGreaterThan(depth(new Sharpness(HUNDRED, 8, 2e-5)));
    }

    @Test
    void scalingEverything_scalesDistancesOnly() {
        Sharpness small = new Sharpness(new LensModel(0.05, 1.3), 8, 1e-5);
        Sharpness large = new Sharpness(new LensModel(0.5, 1.3), 8, 1e-4);
        assertThat(10 * Optics.nearLimitMetres(small, 0.4)).isCloseTo(Optics.nearLimitMetres(large, 4), within(1e-12));
    }

    @Test
    void diffraction_warnsPastSixteenOnly() {
        assertThat(Optics.softensByDiffraction(16)).isFalse();
        assertThat(Optics.softensByDiffraction(16.01)).isTrue();
    }

    @Test
    void outsideRanges_areRefusedByName() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Optics.magnificationAt(HUNDRED, 0.1))
                .withMessage("focus distance is 0.1; must be finite and greater than 0.1");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new LensModel(0, 1))
                .withMessage("focal length is 0.0; must be finite and greater than 0");
        assertThatIllegalArgumentException().isThrownBy(() -> new LensModel(Double.NaN, 1));
        assertThatIllegalArgumentException().isThrownBy(() -> new Sharpness(HUNDRED, -1, 1e-5));
        assertThatIllegalArgumentException().isThrownBy(() -> SharpZone.of(1, 1));
        assertThatIllegalArgumentException().isThrownBy(() -> blur(new Sharpness(HUNDRED, 8, 1e-5), 1, -0.1));
    }

    private static double blur(Sharpness sharpness, double focusMetres, double pointMetres) {
        FocusedPoint depths = new FocusedPoint(focusMetres, pointMetres);
        return Optics.blurDiameterMetres(sharpness.lens(), sharpness.fNumber(), depths);
    }

    private static double depth(Sharpness sharpness) {
        return Optics.sharpZone(sharpness, 0.96).findDepthMetres().orElse(Double.POSITIVE_INFINITY);
    }

    private static LensModel lens(Random random) {
        return new LensModel(0.01 + 0.2 * random.nextDouble(), 0.4 + 2 * random.nextDouble());
    }
}
