package plumeline.cut.cue;

import plumeline.timeline.Span;

/// A sound in its place.
///
/// @param sound what is heard, as the plan has it
/// @param layer the layer it belongs to; empty where not written
/// @param shows the stretch of the film that its sync point lies in
/// @param thing the thing it follows; empty where it follows none
/// @param in where it begins; may be before the film, which then lacks that part
/// @param sync where it meets its instant
/// @param out where it is over: the first frame and sample without it
/// @param ending how that is known
public record CueRow(
        String sound, String layer, Span shows, String thing, Place in, Place sync, Place out, Ending ending) {
    /// How it is known where a sound is over.
    public enum Ending {
        /// The plan says how long it lasts.
        WRITTEN("written"),
        /// The plan doesn't: taken to be where the entry ends in which it meets its instant.
        ASSUMED("assumed");

        private final String word;

        Ending(String word) {
            this.word = word;
        }

        /// Gives what stands in the column `out_is`.
        ///
        /// @return `written` or `assumed`
        public String word() {
            return word;
        }
    }

    /// An instant of a sound.
    ///
    /// @param frame the film's frame in which it falls; of an end the one after the last
    /// @param sample its own sample at 48 kHz, the nearest; of an instant between two frames it isn't the frame's
    /// first
    /// @param pan where it is heard from, −1 at the left edge of the finished picture, 1 at the right
    public record Place(long frame, long sample, double pan) {}

    /// How long it is heard.
    ///
    /// @return samples, ≥ 1
    public long samples() {
        return out.sample() - in.sample();
    }
}
