package plumeline.flicker;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import java.math.BigInteger;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import plumeline.quantity.FrameRate;
import plumeline.tidy.Outside;

/// Cuts counted by brute force in exact fractions, and the limits' own figures.
@Outside(
        source = "WCAG 2.2, success criterion 2.3.1 and its thresholds (read: their definition as the working group"
                + " publishes it); Recommendation ITU-R BT.1702 (its figures as others restate them); counting",
        kind = "standard")
final class CutFlashesOutsideTest {
    private static final List<FrameRate> RATES = List.of(
            new FrameRate(24000, 1001),
            new FrameRate(24, 1),
            new FrameRate(25, 1),
            new FrameRate(30000, 1001),
            new FrameRate(30, 1),
            new FrameRate(60000, 1001),
            new FrameRate(25, 2),
            new FrameRate(60, 1));

    /// Whether two frames are less than a second apart, in whole numbers: frames · denominator < numerator.
    private static boolean isWithin(FrameRate rate, long from, long to) {
        return BigInteger.valueOf(to - from)
                        .multiply(BigInteger.valueOf(rate.denominator()))
                        .compareTo(BigInteger.valueOf(rate.numerator()))
                < 0;
    }

    private static double counted(FrameRate rate, List<Integer> frames) {
        List<Long> changes = new ArrayList<>();
        long at = 0;
        for (int look = 0; look < frames.size() - 1; look++) {
            at += frames.get(look);
            changes.add(at);
        }
        int most = 0;
        for (long from : changes) {
            most = Math.max(most, (int) changes.stream()
                    .filter(to -> to >= from && isWithin(rate, from, to))
                    .count());
        }
        return most / 2.0;
    }

    @Test
    void randomCuts_agreeWithCounting() {
        Random random = new Random(72);
        for (int i = 0; i < 400; i++) {
            FrameRate rate = RATES.get(random.nextInt(RATES.size()));
            int longest = 1 + random.nextInt(40);
            List<Integer> frames = new ArrayList<>();
            for (int look = 0; look < 1 + random.nextInt(60); look++) {
                frames.add(1 + random.nextInt(longest));
            }
            CutFlashes cuts = new CutFlashes(rate, frames);
            assertThat(cuts.pairs()).as(rate + " " + frames).isEqualTo(counted(rate, frames));
            assertThat(cuts.flashes(List.of(0.0, 1.0))).isEqualTo(cuts.pairs());
        }
    }

    /// The fewest frames a look that keep equal looks to three pairs, found by trying each; endless looks by a long
    /// run.
    @Test
    void leastFrames_areTheFirstThatStay() {
        for (FrameRate rate : RATES) {
            int frames = 1;
            while (counted(rate, Collections.nCopies(400, frames)) > 3) {
                assertThat(CutFlashes.endless(rate, frames, 2).pairs())
                        .isEqualTo(counted(rate, Collections.nCopies(400, frames)));
                frames++;
            }
            assertThat(CutFlashes.leastFrames(rate)).as(rate.toText()).isEqualTo(frames);
        }
    }

    /// Four frames a look at 24 fps, five at 25 and 30 (common practice): three pairs at most.
    @Test
    void leastFrames_areTheCraftsFigures() {
        assertThat(CutFlashes.leastFrames(new FrameRate(24, 1))).isEqualTo(4);
        assertThat(CutFlashes.leastFrames(new FrameRate(25, 1))).isEqualTo(5);
        assertThat(CutFlashes.leastFrames(new FrameRate(30, 1))).isEqualTo(5);
        assertThat(CutFlashes.endless(new FrameRate(24, 1), 4, 2).pairs()).isEqualTo(3);
        assertThat(CutFlashes.endless(new FrameRate(24000, 1001), 4, 2).pairs()).isEqualTo(3);
        assertThat(CutFlashes.endless(new FrameRate(25, 1), 4, 2).pairs()).isEqualTo(3.5);
        assertThat(CutFlashes.endless(new FrameRate(24, 1), 3, 2).pairs()).isEqualTo(4);
    }

    /// WCAG 2.2: 10 % or more of full counts where the darker side is below 0.80.
    @ParameterizedTest
    @CsvSource({
        "0.5, 0.4, 3",
        "0.5, 0.401, 0",
        "0.9, 0.8, 0",
        "0.9, 0.799, 3",
        "1, 0.85, 0",
        "0.1, 0, 3",
        "0.09, 0, 0",
        "0.8, 0.7, 3"
    })
    void luminance_countsByTheStandard(double one, double other, double flashes) {
        assertThat(CutFlashes.endless(new FrameRate(24, 1), 4, 2).flashes(List.of(one, other)))
                .isEqualTo(flashes);
    }

    /// WCAG 2.2: a flash is two opposing transitions between peaks and valleys. Counted here on the list of peaks and
    /// valleys that is left when steps too small, smallest first, are taken out of it.
    @Test
    void swings_areThoseOfPeaksAndValleys() {
        Random random = new Random(73);
        for (int i = 0; i < 300; i++) {
            List<Double> levels = new ArrayList<>();
            for (int look = 0; look < 2 + random.nextInt(12); look++) {
                levels.add(random.nextInt(26) / 32.0);
            }
            List<Integer> frames = Collections.nCopies(levels.size(), 1);
            assertThat(new CutFlashes(new FrameRate(60, 1), frames).flashes(levels))
                    .as(levels.toString())
                    .isEqualTo(transitions(levels) / 2.0);
        }
    }

    private static long transitions(List<Double> levels) {
        List<Double> left = new ArrayList<>(levels);
        while (true) {
            int least = -1;
            for (int k = 0; k + 1 < left.size(); k++) {
                double step = Math.abs(left.get(k + 1) - left.get(k));
                boolean between = k > 0 && (left.get(k) - left.get(k - 1)) * (left.get(k + 1) - left.get(k)) >= 0;
                if (between) {
                    left.remove(k);
                    least = -2;
                    break;
                }
                if (step < 0.1 && (least < 0 || step < Math.abs(left.get(least + 1) - left.get(least)))) {
                    least = k;
                }
            }
            if (least == -1) {
                return left.size() - 1 - brightOnes(left);
            }
            if (least >= 0) {
                drop(left, least);
            }
        }
    }

    /// A small step at an end goes with that end, one within takes both its sides with it.
    private static void drop(List<Double> left, int at) {
        if (at == 0) {
            left.remove(0);
        } else if (at + 2 == left.size()) {
            left.remove(at + 1);
        } else {
            left.remove(at + 1);
            left.remove(at);
        }
    }

    private static long brightOnes(List<Double> left) {
        long bright = 0;
        for (int k = 0; k + 1 < left.size(); k++) {
            bright += Math.min(left.get(k), left.get(k + 1)) >= 0.8 ? 1 : 0;
        }
        return bright;
    }

    /// A quarter of a field of 10 deg is .006 sr (WCAG 2.2); that field is 341 by 256 of 1024 by 768, so that on a
    /// screen of which 341 take 10 deg up to 2.8 % of it may flash; BT.1702's quarter where the picture is small to
    /// the eye.
    @Test
    void area_isAQuarterOfTheField() {
        assertThat(Math.PI / 4 * Math.pow(Math.toRadians(10), 2) / 4)
                .isCloseTo(FlashLimits.FIELD_STERADIANS, within(5e-5));
        double across = 2 * Math.atan(Math.tan(Math.toRadians(5)) * 1024 / 341);
        assertThat(FlashLimits.area(across, 4.0 / 3) * 1024 * 768).isCloseTo(341 * 256 / 4.0, withinPercentage(15));
        assertThat(FlashLimits.area(Math.toRadians(8), 16.0 / 9)).isEqualTo(0.25);
    }

    /// Solid angle counted over the picture, a cosine cubed a patch of a plane at distance 1.
    @Test
    void area_isOfTheSolidAngle() {
        double half = Math.tan(Math.toRadians(20));
        double counted = 0;
        int n = 400;
        for (int i = 0; i < n; i++) {
            for (int j = 0; j < n; j++) {
                double x = half * (2 * (i + 0.5) / n - 1);
                double y = half * 9 / 16 * (2 * (j + 0.5) / n - 1);
                counted += Math.pow(1 + x * x + y * y, -1.5);
            }
        }
        counted *= 4 * half * half * 9 / 16 / n / n;
        assertThat(FlashLimits.area(Math.toRadians(40), 16.0 / 9)).isCloseTo(0.006 / counted, within(1e-6));
    }

    /// WCAG 2.2: R/(R + G + B) of 0.8 or more in either, more than 0.2 apart in CIE 1976 u′v′. Red of sRGB lies at
    /// u′ 0.4507, v′ 0.5229, its white at 0.1978, 0.4683 (from memory of the published primaries): 0.26 apart.
    @Test
    void saturatedRed_isRedAndFarOff() {
        SaturatedRed.Linear red = new SaturatedRed.Linear(1, 0, 0);
        SaturatedRed.Linear white = new SaturatedRed.Linear(1, 1, 1);
        assertThat(SaturatedRed.counts(red, white)).isTrue();
        assertThat(SaturatedRed.counts(white, red)).isTrue();
        assertThat(SaturatedRed.counts(red, new SaturatedRed.Linear(0, 0, 0))).isTrue();
        assertThat(SaturatedRed.counts(red, new SaturatedRed.Linear(0.3, 0, 0))).isFalse();
        assertThat(SaturatedRed.counts(new SaturatedRed.Linear(0.79, 0.21, 0), white))
                .isFalse();
        assertThat(SaturatedRed.counts(new SaturatedRed.Linear(0, 1, 0), new SaturatedRed.Linear(0, 0, 1)))
                .isFalse();
    }

    /// Changes in a row are one sequence until one comes a second or more after the last: 24 frames are a second at 24
    /// and at 24000/1001 fps, 23 are not.
    @Test
    void sequence_endsWithASecondsRest() {
        FrameRate rate = new FrameRate(24000, 1001);
        List<Integer> rest = List.of(12, 12, 12, 24, 12, 12);
        assertThat(new CutFlashes(rate, rest).sequenceSeconds()).isCloseTo(36 * 1001 / 24000.0, within(1e-12));
        assertThat(new CutFlashes(new FrameRate(24, 1), rest).sequenceSeconds()).isEqualTo(1.5);
        CutFlashes through = new CutFlashes(new FrameRate(24, 1), List.of(40, 12, 12, 23, 12, 13));
        assertThat(through.sequenceSeconds()).isEqualTo(3);
        assertThat(through.sequenceSeconds(List.of(0.5, 0.45))).isZero();
    }
}
