package plumeline.sound;

import java.math.BigDecimal;
import plumeline.quantity.FrameRate;
import plumeline.time.Beats;

/// A music's beats on a film's frames and on its sound's samples, each placed by itself and exactly: the nearest frame
/// and the nearest sample, halves up. A beat's sample is where it sounds; its frame is where a picture may be cut.
///
/// **Source:** own arithmetic, as [Beats].
public final class TempoGrid {
    private final Beats frames;
    private final Beats samples;

    /// Makes a grid.
    ///
    /// @param beatsPerMinute the tempo, > 0
    /// @param firstSeconds when the first beat falls, s of screen time
    /// @param grid the film's rate and the sound's
    public TempoGrid(BigDecimal beatsPerMinute, BigDecimal firstSeconds, SampleGrid grid) {
        frames = new Beats(beatsPerMinute, firstSeconds, grid.rate());
        samples = new Beats(beatsPerMinute, firstSeconds, new FrameRate(grid.samplesPerSecond(), 1));
    }

    private TempoGrid(Beats frames, Beats samples) {
        this.frames = frames;
        this.samples = samples;
    }

    /// Puts a film's beats on its sound's samples too.
    ///
    /// @param beats on the film's frames
    /// @param grid the film's rate and the sound's
    /// @return the grid
    public static TempoGrid of(Beats beats, SampleGrid grid) {
        return new TempoGrid(beats, beats.at(new FrameRate(grid.samplesPerSecond(), 1)));
    }

    /// Gives the frame nearest to a beat.
    ///
    /// @param beat 0 for the first; negative before it
    /// @return the frame, counted from 0
    public long frame(long beat) {
        return frames.frame(beat);
    }

    /// Gives the sample nearest to a beat.
    ///
    /// @param beat 0 for the first; negative before it
    /// @return the sample, counted from 0
    public long sample(long beat) {
        return samples.frame(beat);
    }

    /// Gives the first beat that falls on a sample or after it.
    ///
    /// @param sample counted from 0
    /// @return the beat; negative where beats before the first fall there too
    public long firstFrom(long sample) {
        double interval = samples.intervalFrames();
        long beat = (long) Math.floor((sample - samples.position(0)) / interval) - 1;
        while (sample(beat) < sample) {
            beat++;
        }
        return beat;
    }
}
