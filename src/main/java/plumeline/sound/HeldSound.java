package plumeline.sound;

import java.util.List;

/// Sound whose samples are held in memory.
public final class HeldSound implements Sound {
    private final int samplesPerSecond;
    private final List<Speaker> speakers;
    private final float[][] rows;

    /// Takes samples.
    ///
    /// @param samplesPerSecond 1/s, > 0
    /// @param speakers one place a channel
    /// @param rows a row of samples a channel, all as long; not copied, and not to be changed any more
    public HeldSound(int samplesPerSecond, List<Speaker> speakers, float[]... rows) {
        if (samplesPerSecond <= 0 || speakers.isEmpty() || speakers.size() != rows.length) {
            throw new IllegalArgumentException(
                    speakers.size() + " places for " + rows.length + " channels at " + samplesPerSecond);
        }
        for (float[] row : rows) {
            if (row.length != rows[0].length) {
                throw new IllegalArgumentException("channels of " + rows[0].length + " and " + row.length);
            }
        }
        this.samplesPerSecond = samplesPerSecond;
        this.speakers = List.copyOf(speakers);
        this.rows = rows.clone();
    }

    @Override
    public int samplesPerSecond() {
        return samplesPerSecond;
    }

    @Override
    public long samples() {
        return rows[0].length;
    }

    @Override
    public List<Speaker> speakers() {
        return speakers;
    }

    @Override
    public void read(long first, int count, double[][] into) {
        int from = Math.toIntExact(first);
        for (int channel = 0; channel < rows.length; channel++) {
            float[] row = rows[channel];
            double[] out = into[channel];
            for (int i = 0; i < count; i++) {
                out[i] = row[from + i];
            }
        }
    }
}
