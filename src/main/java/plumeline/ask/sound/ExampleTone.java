package plumeline.ask.sound;

import java.util.List;
import plumeline.answer.Beside;
import plumeline.sound.HeldSound;
import plumeline.sound.Speaker;
import plumeline.sound.Wav;

/// The sound that comes with the question: four seconds of 1 kHz in both channels at −14 LUFS.
final class ExampleTone implements Beside {
    static final String NAME = "example-tone.wav";

    private static final int RATE = 48_000;
    private static final int SECONDS = 4;
    private static final double HERTZ = 1000;

    /// A stereo tone of 1 kHz reads 0.01 LU over the level of its peak.
    private static final double PEAK = 0.19938;

    @Override
    public File find(String name, int mostBytes) {
        if (!name.equals(NAME)) {
            return Beside.NOTHING.find(name, mostBytes);
        }
        float[] row = new float[SECONDS * RATE];
        for (int i = 0; i < row.length; i++) {
            row[i] = (float) (PEAK * StrictMath.sin(2 * Math.PI * HERTZ * i / RATE));
        }
        return File.There.ofOwn(Wav.write24(new HeldSound(RATE, List.of(Speaker.LEFT, Speaker.RIGHT), row, row)));
    }
}
