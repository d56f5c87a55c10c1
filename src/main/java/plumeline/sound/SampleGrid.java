package plumeline.sound;

import java.math.BigInteger;
import plumeline.quantity.FrameRate;

/// Which sample a film's frame begins with. Exact: each boundary is placed by itself, none by adding up.
///
/// Frame n begins with sample `floor(n · samples a second / rate + 1/2)`, the nearest, halves up. At 48 kHz and 29.97
/// five frames last 8008 samples: 1602, 1601, 1602, 1601, 1602.
///
/// **Source:** own arithmetic; the run of five is that of digital television's embedded sound (SMPTE 272, from memory).
///
/// @param samplesPerSecond the sound's rate, 1/s, > 0
/// @param rate the film's
public record SampleGrid(int samplesPerSecond, FrameRate rate) {
    /// The rate at which sound for pictures is delivered, 1/s.
    public static final int FOR_PICTURES = 48_000;

    /// Checks the range.
    public SampleGrid {
        if (samplesPerSecond <= 0) {
            throw new IllegalArgumentException("a sound has samples, not " + samplesPerSecond + " a second");
        }
    }

    /// Gives the sample with which a frame begins.
    ///
    /// @param frame counted from 0; negative before the film
    /// @return the sample, counted from 0
    public long sample(long frame) {
        return divide(
                2,
                BigInteger.valueOf(frame).multiply(perFrameAbove()).multiply(BigInteger.TWO),
                perFrameBelow(),
                perFrameBelow());
    }

    /// Gives the frame that a sample belongs to: the last that begins with it or before it.
    ///
    /// @param sample counted from 0
    /// @return the frame, counted from 0
    public long frameAt(long sample) {
        // The last n with floor(n·a/b + 1/2) ≤ s is the last with n·a/b + 1/2 < s + 1, so n < (2s + 1)·b / 2a.
        BigInteger above = BigInteger.valueOf(sample)
                .multiply(BigInteger.TWO)
                .add(BigInteger.ONE)
                .multiply(perFrameBelow());
        return divide(2, above, BigInteger.ONE.negate(), perFrameAbove());
    }

    /// `floor((above + more) / (twice · below))`.
    private static long divide(int twice, BigInteger above, BigInteger more, BigInteger below) {
        BigInteger[] parts = above.add(more).divideAndRemainder(below.multiply(BigInteger.valueOf(twice)));
        return parts[1].signum() < 0 ? parts[0].longValueExact() - 1 : parts[0].longValueExact();
    }

    private BigInteger perFrameAbove() {
        return BigInteger.valueOf(samplesPerSecond).multiply(BigInteger.valueOf(rate.denominator()));
    }

    private BigInteger perFrameBelow() {
        return BigInteger.valueOf(rate.numerator());
    }
}
