package plumeline.ask.sound;

import java.util.OptionalDouble;
import plumeline.sound.Level;
import plumeline.sound.Loudness;
import plumeline.sound.Sound;
import plumeline.sound.Wav;

/// How far a mix is from its target.
final class Mixing {
    private Mixing() {}

    /// What is asked.
    ///
    /// @param mix the mix as it was metered
    /// @param targetLufs its target, LUFS
    /// @param withinLu how far it may be from there, LU, ≥ 0
    /// @param mostDbtp the highest true peak allowed, dBTP
    record Inputs(Mix mix, double targetLufs, double withinLu, double mostDbtp) {}

    /// A mix.
    ///
    /// @param name as the question names it
    /// @param sound its samples
    /// @param places whether its file says where channels are heard from
    /// @param loudness as it is metered
    record Mix(String name, Sound sound, Wav.Places places, Loudness loudness) {}

    /// What was found of a mix that has a loudness.
    ///
    /// @param integratedLufs its loudness, LUFS
    /// @param truePeakDbtp its true peak, dBTP
    /// @param gainDecibels what brings it to its target, dB
    record Found(double integratedLufs, double truePeakDbtp, double gainDecibels) {
        /// Its true peak with that gain, which moves all of it alike.
        double peakAfterDbtp() {
            return truePeakDbtp + gainDecibels;
        }
    }

    static OptionalDouble value(Level level) {
        return switch (level) {
            case Level.At(double decibels) -> OptionalDouble.of(decibels);
            case Level.None _ -> OptionalDouble.empty();
        };
    }

    /// What is found; nothing where the mix has no loudness.
    static java.util.Optional<Found> find(Inputs inputs) {
        Loudness loudness = inputs.mix().loudness();
        if (loudness.integrated() instanceof Level.At(double lufs)
                && loudness.truePeak() instanceof Level.At(double dbtp)) {
            return java.util.Optional.of(new Found(lufs, dbtp, inputs.targetLufs() - lufs));
        }
        return java.util.Optional.empty();
    }
}
