package plumeline.time;

import java.math.BigDecimal;
import java.math.BigInteger;
import java.math.MathContext;
import plumeline.quantity.FrameRate;

/// The frames nearest to a music's beats.
///
/// Each beat is placed by itself, `floor(position + 1/2)` with `position = (first + 60 k / tempo) · rate`, never by
/// adding up rounded intervals, which drift. All of it is computed exactly, as tempo, first beat and rate are.
///
/// **Source:** own arithmetic.
public final class Beats {
    private static final BigInteger SIXTY = BigInteger.valueOf(60);

    private final BigDecimal beatsPerMinute;
    private final BigDecimal firstSeconds;
    private final BigInteger unit;
    private final BigInteger first;
    private final BigInteger interval;

    /// Makes beats. Positions are wholes over one common denominator.
    ///
    /// @param beatsPerMinute the tempo, > 0
    /// @param firstSeconds when the first one falls, s of screen time
    /// @param rate the timeline's rate
    public Beats(BigDecimal beatsPerMinute, BigDecimal firstSeconds, FrameRate rate) {
        if (beatsPerMinute.signum() <= 0) {
            throw new IllegalArgumentException("a tempo of " + beatsPerMinute);
        }
        this.beatsPerMinute = beatsPerMinute;
        this.firstSeconds = firstSeconds;
        BigInteger tempoBelow = below(beatsPerMinute);
        BigInteger tempoAbove = above(beatsPerMinute, tempoBelow);
        BigInteger firstBelow = below(firstSeconds);
        BigInteger above = BigInteger.valueOf(rate.numerator());
        BigInteger below = BigInteger.valueOf(rate.denominator());
        unit = below.multiply(tempoAbove).multiply(firstBelow);
        interval = SIXTY.multiply(tempoBelow).multiply(above).multiply(firstBelow);
        first = above(firstSeconds, firstBelow).multiply(above).multiply(tempoAbove);
    }

    /// Gives the same music's beats on another grid.
    ///
    /// @param rate the other timeline's rate, or a sound's
    /// @return the beats
    public Beats at(FrameRate rate) {
        return new Beats(beatsPerMinute, firstSeconds, rate);
    }

    private static BigInteger below(BigDecimal decimal) {
        return BigInteger.TEN.pow(Math.max(0, decimal.scale()));
    }

    private static BigInteger above(BigDecimal decimal, BigInteger below) {
        return decimal.multiply(new BigDecimal(below)).toBigIntegerExact();
    }

    /// Gives the frame nearest to a beat, halves up.
    ///
    /// @param beat 0 for the first, 1 for the next; negative before it
    /// @return the frame, counted from 0
    public long frame(long beat) {
        return nearest(first.add(interval.multiply(BigInteger.valueOf(beat))));
    }

    /// Gives where a beat falls.
    ///
    /// @param beat 0 for the first
    /// @return frames, to the nearest double
    public double position(long beat) {
        return value(first.add(interval.multiply(BigInteger.valueOf(beat))));
    }

    /// Gives the time from beat to beat.
    ///
    /// @return frames, to the nearest double
    public double intervalFrames() {
        return value(interval);
    }

    /// Tells whether beats are whole frames apart.
    ///
    /// @return true where they are
    public boolean isWhole() {
        return interval.mod(unit).signum() == 0;
    }

    /// Gives by how much beats drift that are laid by adding up an interval of whole frames, halves up.
    ///
    /// @param count after how many beats, ≥ 0
    /// @return frames, + where such beats come late
    public double driftFrames(long count) {
        BigInteger whole = BigInteger.valueOf(nearest(interval)).multiply(unit);
        return value(whole.subtract(interval).multiply(BigInteger.valueOf(count)));
    }

    private long nearest(BigInteger position) {
        BigInteger twice = position.add(position).add(unit);
        BigInteger[] parts = twice.divideAndRemainder(unit.add(unit));
        return parts[1].signum() < 0 ? parts[0].longValueExact() - 1 : parts[0].longValueExact();
    }

    private double value(BigInteger position) {
        return new BigDecimal(position)
                .divide(new BigDecimal(unit), MathContext.DECIMAL64)
                .doubleValue();
    }
}
