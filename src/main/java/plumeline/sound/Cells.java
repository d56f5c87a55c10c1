package plumeline.sound;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/// A sound's power by ear in cells of 10 ms, and what is read off stretches of them.
///
/// **Source:** as [Loudness].
final class Cells {
    private static final int PER_SECOND = 100;
    private static final int HOP = 10;
    private static final int MOMENTARY = 40;
    private static final int SHORT_TERM = 300;

    private static final double OFFSET_DECIBELS = -0.691;
    private static final double ABSOLUTE_GATE_LUFS = -70;
    private static final double RELATIVE_GATE_DECIBELS = -10;
    private static final double RANGE_GATE_DECIBELS = -20;
    private static final double ROUNDING_LU = 1e-9;
    private static final double RANGE_LOW = 0.10;
    private static final double RANGE_HIGH = 0.95;

    /// Sum of the weighted squares of each cell, and how many samples it has.
    private final double[] energies;

    private final int[] counts;

    private Cells(double[] energies, int[] counts) {
        this.energies = energies;
        this.counts = counts;
    }

    static Cells of(Sound sound) {
        int rate = sound.samplesPerSecond();
        // Cell k begins with sample floor(k · rate / 100); the last that is whole ends with the sound or before it.
        int whole = Math.toIntExact(sound.samples() * PER_SECOND / rate);
        List<Speaker> speakers = sound.speakers();
        List<KWeighting> filters = new ArrayList<>();
        speakers.forEach(_ -> filters.add(new KWeighting(rate)));
        double[][] rows = new double[speakers.size()][rate / PER_SECOND + 1];
        double[] energies = new double[whole];
        int[] counts = new int[whole];
        for (int k = 0; k < whole; k++) {
            long first = (long) k * rate / PER_SECOND;
            counts[k] = (int) ((k + 1L) * rate / PER_SECOND - first);
            sound.read(first, counts[k], rows);
            for (int channel = 0; channel < rows.length; channel++) {
                double weight = speakers.get(channel).weight(speakers);
                if (weight > 0) {
                    energies[k] += weight * filters.get(channel).energy(rows[channel], counts[k]);
                }
            }
        }
        return new Cells(energies, counts);
    }

    /// Mean powers of stretches, each some cells after the one before.
    private double[] powers(int length, int hop) {
        int stretches = energies.length < length ? 0 : (energies.length - length) / hop + 1;
        double[] powers = new double[stretches];
        for (int i = 0; i < stretches; i++) {
            double sum = 0;
            long samples = 0;
            for (int k = i * hop; k < i * hop + length; k++) {
                sum += energies[k];
                samples += counts[k];
            }
            powers[i] = sum / samples;
        }
        return powers;
    }

    private static double lufs(double power) {
        return OFFSET_DECIBELS + 10 * StrictMath.log10(power);
    }

    private static double power(double lufs) {
        return StrictMath.pow(10, (lufs - OFFSET_DECIBELS) / 10);
    }

    Level integrated() {
        double[] powers = powers(MOMENTARY, HOP);
        double[] heard = gated(powers, power(ABSOLUTE_GATE_LUFS));
        double[] kept = gated(heard, mean(heard) * StrictMath.pow(10, RELATIVE_GATE_DECIBELS / 10));
        return kept.length == 0 ? none(powers) : new Level.At(lufs(mean(kept)));
    }

    Level mostMomentary() {
        return most(powers(MOMENTARY, 1));
    }

    Level mostShortTerm() {
        return most(powers(SHORT_TERM, 1));
    }

    private static Level most(double[] powers) {
        double most = Arrays.stream(powers).max().orElse(0);
        return most > 0 ? new Level.At(lufs(most)) : none(powers);
    }

    private static Level none(double[] powers) {
        return new Level.None(powers.length == 0 ? Level.Missing.LENGTH : Level.Missing.SOUND);
    }

    Level range() {
        double[] powers = powers(SHORT_TERM, HOP);
        double[] heard = gated(powers, power(ABSOLUTE_GATE_LUFS));
        double gate = mean(heard) * StrictMath.pow(10, RANGE_GATE_DECIBELS / 10);
        double[] kept =
                Arrays.stream(heard).filter(each -> each >= gate).sorted().toArray();
        if (kept.length == 0) {
            return none(powers);
        }
        double apart = lufs(percentile(kept, RANGE_HIGH)) - lufs(percentile(kept, RANGE_LOW));
        return new Level.At(apart < ROUNDING_LU ? 0 : apart);
    }

    /// The value nearest to a share of the way from the first to the last, halves up.
    private static double percentile(double[] rising, double share) {
        return rising[(int) Math.floor((rising.length - 1) * share + 0.5)];
    }

    private static double[] gated(double[] powers, double above) {
        return Arrays.stream(powers).filter(each -> each > above).toArray();
    }

    private static double mean(double[] powers) {
        double sum = 0;
        for (double each : powers) {
            sum += each;
        }
        return powers.length == 0 ? 0 : sum / powers.length;
    }
}
