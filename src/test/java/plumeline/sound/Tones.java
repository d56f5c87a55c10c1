package plumeline.sound;

import java.util.ArrayList;
import java.util.List;

/// Builds test signals of stretches of sines, as the sources of the tests describe them.
final class Tones {
    private final int rate;
    private final List<Speaker> speakers;
    private final List<double[]> stretches = new ArrayList<>();
    private final List<Double> seconds = new ArrayList<>();
    private final double hertz;

    private Tones(int rate, double hertz, List<Speaker> speakers) {
        this.rate = rate;
        this.hertz = hertz;
        this.speakers = speakers;
    }

    /// Both front channels, 48 kHz, 1 kHz.
    static Tones stereo() {
        return of(48_000, 1000, Speaker.LEFT, Speaker.RIGHT);
    }

    static Tones of(int rate, double hertz, Speaker... speakers) {
        return new Tones(rate, hertz, List.of(speakers));
    }

    /// A stretch with the same peak in every channel; −∞ for silence.
    Tones then(double seconds, double dbfs) {
        double[] all = new double[speakers.size()];
        java.util.Arrays.fill(all, dbfs);
        return each(seconds, all);
    }

    Tones silence(double seconds) {
        return then(seconds, Double.NEGATIVE_INFINITY);
    }

    /// A stretch with a peak for each channel.
    Tones each(double seconds, double... dbfs) {
        stretches.add(dbfs);
        this.seconds.add(seconds);
        return this;
    }

    Sound sound() {
        long all = 0;
        for (double each : seconds) {
            all += Math.round(each * rate);
        }
        float[][] rows = new float[speakers.size()][Math.toIntExact(all)];
        int at = 0;
        for (int s = 0; s < stretches.size(); s++) {
            int count = (int) Math.round(seconds.get(s) * rate);
            for (int i = at; i < at + count; i++) {
                double sine = Math.sin(2 * Math.PI * hertz * i / rate);
                for (int c = 0; c < rows.length; c++) {
                    rows[c][i] = (float) (Math.pow(10, stretches.get(s)[c] / 20) * sine);
                }
            }
            at += count;
        }
        return new HeldSound(rate, speakers, rows);
    }

    /// A stereo sine of a peak of 0.5 or the like, that fades in and out over 10 ms.
    static Sound faded(int rate, double perSample, double peak, double phaseDegrees) {
        int count = rate;
        float[] row = new float[count];
        int fade = rate / 100;
        for (int i = 0; i < count; i++) {
            double level = Math.min(1, Math.min(i, count - 1 - i) / (double) fade);
            row[i] = (float) (peak * level * Math.sin(2 * Math.PI * perSample * i + Math.toRadians(phaseDegrees)));
        }
        return new HeldSound(rate, List.of(Speaker.LEFT, Speaker.RIGHT), row, row.clone());
    }

    static double value(Level level) {
        return switch (level) {
            case Level.At(double decibels) -> decibels;
            case Level.None none -> throw new AssertionError(none);
        };
    }
}
