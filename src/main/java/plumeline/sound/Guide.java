package plumeline.sound;

import java.util.List;
import plumeline.quantity.FrameRate;

/// A guide track: beats, cuts, whooshes and placeholders where a film has them, in two channels.
///
/// The same film gives the same samples on every machine. No sample is above −3.5 dBFS: where sounds that meet would
/// be, all of the track is lowered by one figure.
///
/// @param sound two channels, as long as the film
/// @param loweredDecibels by how much all of it was lowered, dB, ≥ 0
public record Guide(Sound sound, double loweredDecibels) {
    private static final double MOST = 0.668;

    /// A sound and where it stands.
    ///
    /// @param sample its first, counted from the film's start; may be before it
    /// @param voice what it is
    /// @param pan where it is heard from
    /// @param gainDecibels louder or softer than its voice, dB
    public record Heard(long sample, Voice voice, Pan pan, double gainDecibels) {}

    /// Makes a track.
    ///
    /// @param grid the sound's rate and the film's
    /// @param frames how long the film is, ≥ 0
    /// @param events its sounds; what is outside the film is left out
    /// @return the track
    public static Guide of(SampleGrid grid, long frames, List<Heard> events) {
        int samples = Math.toIntExact(grid.sample(frames));
        float[] left = new float[samples];
        float[] right = new float[samples];
        for (int i = 0; i < events.size(); i++) {
            add(events.get(i), VoiceSynth.of(events.get(i), i, grid), left, right);
        }
        double peak = Math.max(peak(left), peak(right));
        double factor = peak > MOST ? MOST / peak : 1;
        if (factor < 1) {
            scale(left, factor);
            scale(right, factor);
        }
        return new Guide(
                new HeldSound(grid.samplesPerSecond(), List.of(Speaker.LEFT, Speaker.RIGHT), left, right),
                -20 * StrictMath.log10(factor) + 0.0);
    }

    /// Gives a film's grid for sound as it is delivered for pictures.
    ///
    /// @param rate the film's
    /// @return 48 kHz
    public static SampleGrid grid(FrameRate rate) {
        return new SampleGrid(SampleGrid.FOR_PICTURES, rate);
    }

    private static void add(Heard event, VoiceSynth synth, float[] left, float[] right) {
        double gain = StrictMath.pow(10, event.gainDecibels() / 20);
        long length = synth.samples();
        double toLeft = 0;
        double toRight = 0;
        for (long i = 0; i < length; i++) {
            if (i % VoiceSynth.STEP == 0) {
                double pan = event.pan().at((double) i / length);
                toLeft = gain * Pan.left(pan);
                toRight = gain * Pan.right(pan);
            }
            double value = synth.next();
            long at = event.sample() + i;
            if (at >= 0 && at < left.length) {
                left[(int) at] += (float) (toLeft * value);
                right[(int) at] += (float) (toRight * value);
            }
        }
    }

    private static double peak(float[] row) {
        double peak = 0;
        for (float each : row) {
            peak = Math.max(peak, Math.abs(each));
        }
        return peak;
    }

    private static void scale(float[] row, double factor) {
        for (int i = 0; i < row.length; i++) {
            row[i] = (float) (row[i] * factor);
        }
    }
}
