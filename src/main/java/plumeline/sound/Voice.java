package plumeline.sound;

import java.util.List;

/// What a guide track has for the sounds that are still to be made: easy to tell apart, none of them meant to stay.
public sealed interface Voice {
    /// A beat: a high, short tone, higher on the first of a bar.
    ///
    /// @param beat which
    record Click(Beat beat) implements Voice {}

    /// Which beat of a bar.
    enum Beat {
        /// The first.
        FIRST,
        /// Another.
        OTHER
    }

    /// A cut: a dry tick.
    record Tick() implements Voice {}

    /// Air: noise whose pitch and level follow how fast the picture plays, 1.8 kHz and full level where it is fastest,
    /// an octave lower and 6 dB softer at half of that.
    ///
    /// @param speeds playback speed of each of its film frames, as a share of real time; backward below 0
    record Whoosh(List<Double> speeds) implements Voice {
        /// Copies the list.
        public Whoosh {
            speeds = List.copyOf(speeds);
        }
    }

    /// A pour: bubbling noise that falls in pitch.
    ///
    /// @param samples how long, > 0
    record Pour(long samples) implements Voice {}

    /// Fizz: a high hiss that crackles.
    ///
    /// @param samples how long, > 0
    record Fizz(long samples) implements Voice {}

    /// Anything else: a soft tone.
    ///
    /// @param samples how long, > 0
    record Tone(long samples) implements Voice {}
}
