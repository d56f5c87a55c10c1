package plumeline.assemble;

import java.util.Arrays;
import java.util.List;
import plumeline.sound.SampleGrid;
import plumeline.sound.Sound;
import plumeline.sound.Speaker;

/// Nothing to be heard, in two channels.
///
/// @param samples how long, samples
record Silence(long samples) implements Sound {
    @Override
    public int samplesPerSecond() {
        return SampleGrid.FOR_PICTURES;
    }

    @Override
    public List<Speaker> speakers() {
        return List.of(Speaker.LEFT, Speaker.RIGHT);
    }

    @Override
    public void read(long first, int count, double[][] into) {
        for (double[] row : into) {
            Arrays.fill(row, 0, count, 0);
        }
    }
}
